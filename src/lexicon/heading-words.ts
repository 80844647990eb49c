import {words} from './row.js'
import type {HeadingWord} from './schema.js'

const row = (use: HeadingWord['use'], list: string): HeadingWord => ({
  id: use,
  use,
  words: words(list),
  source: 'common-practice',
})

/**
 * What headings and labels inside a receipt say, folded: `src/receipt/heading-words.ts` reads them. A `work` stands alone or before what it is
 * done to ("Shape the loaves"), a `part` may have one word before it ("almond paste"), and a `begins` or `counted` ("Day 2") opens the heading.
 */
export const headingWords: readonly HeadingWord[] = [
  row(
    'ingredients',
    "ingredients, ingredient, ingredients list, ingredient list, list of ingredients, you will need, you'll need, you need, what you need, what you will need, what you'll need, what to get, things you need, zutaten, zutatenliste, die zutaten, das brauchst du, das brauchen sie, das brauchen wir, das braucht ihr, das braucht man, das wird gebraucht, das kommt hinein, du brauchst, sie brauchen, ihr braucht, man braucht, was du brauchst, was sie brauchen, man nehme",
  ),
  row(
    'method',
    "method, methods, direction, directions, instruction, instructions, preparation, procedure, procedures, step, steps, process, the process, schedule, baking schedule, sample schedule, baker's schedule, timeline, timetable, time plan, sample timeline, how to, how to make it, how to make them, how to make this, how to do it, how to bake it, how it's done, how it is done, what to do, what you do, let's bake, let's bake it, let's make it, let's cook, let's go, let's get baking, let's get started, zubereitung, die zubereitung, zubereitungsschritte, anleitung, backanleitung, arbeitsschritte, arbeitsanleitung, arbeitsablauf, herstellung, vorgehen, vorgehensweise, ablauf, ablaufplan, zeitplan, backplan, so geht's, so gehts, so geht es, und so geht's, und so gehts, so wird's gemacht, so wirds gemacht, so wird es gemacht, und so wird's gemacht, los geht's, los gehts, jetzt wird gebacken",
  ),
  row('notes', 'note, notes, tip, tips, hint, hints, hinweis, hinweise, anmerkung, anmerkungen, tipp, tipps'),
  row(
    'nutrition',
    'nutrition, nutrition facts, nutrition information, nutrition info, nutritional information, nutritional info, nutritional value, nutritional values, nutritionals, nutrients, nahrwerte, nahrwert, nahrwertangaben, nahrwertangabe, nahrwerttabelle, nahrwertinformationen, brennwert, brennwerte',
  ),
  row(
    'begins',
    'for, fur, the, to serve, to finish, to decorate, to make, to bake, to assemble, to glaze, ingredients, ingredient, method, am vorabend, am vortag, am backtag, am tag, am nachsten, am abend, am morgen, evening before, night before, day before, next morning, next day',
  ),
  row('counted', 'day, step, stage, phase, part, tag, schritt, teil, etappe'),
  row(
    'parts',
    'crust, paste, pastry, dough, batter, filling, icing, frosting, glaze, topping, sauce, syrup, sponge, crumble, streusel, starter, leaven, levain, poolish, biga, preferment, soaker, custard, meringue, garnish, dressing, stuffing, forcemeat, baking, mixing, shaping, proving, proofing, rising, kneading, serving, assembly, autolyse, equipment, variation, variations, storage, yield, ragu, bechamel, buttercream, ganache, teig, vorteig, hauptteig, sauerteig, quellstuck, bruhstuck, kochstuck, fullung, belag, guss, glasur, creme, boden, backen, vorbereitung, fertigstellung, zusammensetzen, garnitur, servieren, anrichten, aufbewahrung, lagerung, varianten, zubehor, utensilien, zubereiten, herstellen, ansetzen, kneten, formen, stuckgare, stockgare',
  ),
  row(
    'work',
    'assemble, assembling, assembly, autolyse, bake, baking, brush, build, building, bulk, chill, chilling, combine, combining, cook, cooking, cool, cooling, decorate, decorating, divide, dividing, feed, feeding, fill, filling, final proof, final rise, finish, finishing, first proof, first rise, fold, folding, form, forming, garnish, glaze, glazing, heat, ice, icing, knead, kneading, layer, layering, make, making, mix, mixing, prepare, preparing, prep, preshape, pre-shape, proof, proofing, prove, proving, put together, retard, rise, rising, roast, roll, rolling, score, scoring, second proof, second rise, serve, serving, shape, shaping, slice, stretch, toast, top, topping, whisk, backen, kneten, formen, anrichten, servieren',
  ),
  // Behind a word of work: what it is done to, or how it goes on.
  row(
    'objects',
    'the, your, it, them, this, everything, all, in, on, with, until, at, day, and, &, then, or, der, die, das, den',
  ),
  // Before a word for a dish, in a heading about the receipt itself: "About this bread", "Why we love these rolls".
  row('own', 'this, these, my, your, our, it, them, dieses, diese, dieser, unser, unsere, mein, meine, about, why, uber, warum'),
  // What a heading begins with that says where or when, and is the title of no dish: "Into the tin".
  row(
    'places',
    'in, into, on, onto, out, from, after, before, when, while, if, what, im, ins, in den, aus, auf, nach, vor, wenn, wann, was',
  ),
]
