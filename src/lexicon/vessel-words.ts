import {words} from './row.js'
import type {VesselWord} from './schema.js'

const row = (use: VesselWord['use'], list: string): VesselWord => ({id: use, use, words: words(list), source: 'common-practice'})
const shaped = (shape: NonNullable<VesselWord['shape']>, list: string): VesselWord => ({
  id: `shape: ${shape}`,
  use: 'shape',
  shape,
  words: words(list),
  source: 'common-practice',
})

/**
 * Words in which receipts and bake days give a vessel's size and how many there are of it, folded. `src/receipt/vessel.ts`,
 * `vessel-sizes.ts` and `vessel-count.ts` read them.
 */
export const vesselWords: readonly VesselWord[] = [
  row('unit', 'inch, inches, in, cm, cms, mm, centimetre, centimetres, centimeter, centimeters, zoll, "'),
  row('long unit', 'ft, feet, foot, m'),
  row('times', 'x, ×, by, mal'),
  row('way', 'across, wide, broad, long, diameter, square, ø, durchmesser, breit, lang, length, width'),
  // Measures of what a vessel holds, by their ids in `measures.ts`: "a 3-quart casserole".
  row('volume', 'quart, pint, gill, gallon, cup, fluid ounce, millilitre, centilitre, decilitre, litre'),
  // Between a vessel and what it holds: "a crock that holds about 4 quarts".
  row(
    'holding',
    '(, of, about, holding, holds, hold, that, which, to, will, containing, contains, with, capacity, von, mit, ca, etwa, inhalt',
  ),
  row('depth', 'deep, high, tall, depth, height, tief, hoch, hohe, tiefe'),
  row('small', 'and, of, about, a, an, the, each, in, at, least, und, etwa'),
  row(
    'noun',
    'tin, tins, pan, pans, dish, dishes, tray, trays, sheet, sheets, plate, plates, mould, moulds, mold, molds, skillet, skillets, hoop, hoops, ring, rings, casserole, casseroles, crock, crocks, springform, springformen, kastenform, kastenformen, form, formen, backform, backformen, auflaufform, tarteform, gugelhupfform, blech, backblech',
  ),
  // „Eine 26er Springform“: German tins that are called by their width, in centimetres.
  row('by its width', 'springform, springformen, kastenform, kastenformen, backform, tarteform, gugelhupfform, form'),
  // Sold in every shape: of two figures a large second is its breadth, and no depth.
  row('plain tin', 'tin, tins, pan, pans, cake tin, cake tins, cake pan, cake pans'),
  // … and dishes, which no bread is baked in.
  row('plain dish', 'dish, baking dish, bake dish, gratin dish, buttered dish'),
  // "2-inch rounds on a baking sheet": what leads from a size to another thing.
  row(
    'elsewhere',
    'a, an, and, apart, at, by, each, for, from, half, in, into, of, on, onto, or, over, the, then, thick, to, upon, with, your, ein, eine, einem, einen, einer, der, die, das, dem, den, auf',
  ),
  // "A 12 hole tin": how much a vessel takes, or what for, and no length.
  row(
    'number of',
    'hole, holes, holed, cup, cups, well, wells, section, sections, egg, eggs, muffin, bun, cake, loaf, pie, tart, baking, roasting, small, large, little, deep, shallow, greased, buttered, floured, lined, non, nonstick, heavy, round, square, oblong, person, portion, er, er-form, mulden, piece, tier',
  ),
  // "Six small pies, six inches across": what is baked in a shape of its own.
  row(
    'thing',
    'pie, pies, loaf, loaves, cake, cakes, pasty, pasties, tart, tarts, cob, cobs, pizza, pizzas, kuchen, torte, torten, fladen, laib, laibe, brot, brote',
  ),
  // How many vessels a method bakes in: one where one of these stands before it, unless it is one of several.
  row('article', 'a, an, one, your, my, ein, eine, einen, einem, einer'),
  row('definite', 'the, this, die, der, das, den, dem'),
  // German vessels, more than one of them; English ones tell it by their end.
  row('several', 'formen, springformen, kastenformen, backformen, auflaufformen, bleche, blechen, backbleche, backblechen'),
  // Small ones that stand on a sheet.
  row('small tins', 'tins, pans, dishes, moulds, molds, rings'),
  // "Bake on a sheet", "on tins": what lies under the things, and no paste that is rolled out into a sheet.
  row('upon', 'on, upon, onto, auf'),
  // By which pieces get a shape of their own, and stand on a sheet.
  row(
    'by hand',
    'cut out, cut them out, cut it out, cut into rounds, cut in rounds, cut into biscuits, cut into shapes, cut into cakes, cut in cakes, cut it into cakes, cut it in cakes, cut them into cakes, cut it into small cakes, cut it in small cakes, cut into small cakes, cut it into little cakes, cut it into round cakes, cut into round cakes, cut it into rounds, cut it into shapes, cut it into what shapes, cut it with, stamp out, cutter, cutters, drop spoonfuls, drop teaspoonfuls, drop tablespoonfuls, drop by spoonfuls, drop by the spoonful, drop from a spoon, drop them, roll into balls, shape into balls, form into balls, make into balls, small balls, ausstechen, ausgestochen, ausstecher, häufchen, kugeln formen',
  ),
  // What is baked so by its name, each by itself.
  row(
    'piece on a sheet',
    'biscuit, cookie, pasty, turnover, scone, roll, bun, rusk, bap, bagel, pretzel, cracker, oatcake, macaroon, meringue, jumble, teacake, croissant, eclair, hand pie',
  ),
  // "A 12 hole tin", "ein 12er-Blech": a number of these is of one vessel.
  row('holes', 'hole, holes, holed, cup, cups, well, wells, er, mulde, mulden'),
  // "Two or three dishes"
  row('either number', 'or, to, -, —, oder, bis, and'),
  // "No. 2 tins"
  row('numbered', '/, no, number, nr'),
  // One to each piece, or one of several.
  row('apart', 'each, every, apiece, another, other, second, separate, several, some, je, jede, jeden, jeweils, mehrere'),
  row('into', 'in, into, within, inside, on, upon, between, among, amongst, im, ins'),
  // What is done to a vessel before it is filled, and what it then is.
  row(
    'made ready',
    'line, butter, grease, oil, flour, dust, prepare, fill, paper, einfetten, fetten, ausfetten, buttern, ausbuttern, auslegen',
  ),
  row(
    'made ready by',
    'buttered, greased, lined, floured, oiled, papered, prepared, gefettete, gefetteten, gebutterte, gebutterten, ausgebutterte, ausgebutterten',
  ),
  row('how made ready', 'well, lightly, thickly'),
  row('part of one', 'bottom, bottoms, side, sides, inside, edge, edges, middle'),
  // What may stand between the two: "butter the bottom and sides of a dish".
  row(
    'beside made ready',
    'and, or, lightly, well, the, some, a, few, bottom, side, sides, inside, edge, edges, of, thickly, puff, paste',
  ),
  // By which a thing comes into the vessel it is baked in, where a word of baking follows.
  row(
    'puts',
    'put, pour, divide, share, turn, place, lay, layer, pack, press, spoon, spread, arrange, set, transfer, tip, ladle, pile, scrape, heap, empty, drop, geben, fullen, legen, schichten, einfullen',
  ),
  row('bakes', 'bake, bakes, baked, oven, ovens, ouen, roast, roasted, backen, gebacken, ofen, backofen'),
  // What is done in a vessel that is none to bake in.
  row(
    'works',
    'boil, boiled, boiling, simmer, stew, scald, melt, dissolve, fry, steam, steamed, poach, mix, beat, whisk, whip, knead, rub, soak, steep, rise, serve, served, cream, heat, warm, kochen, schmelzen, ruhren, verruhren, kneten, gehen, servieren',
  ),
  // The shapes' own names, which say more than a vessel's name ("square cake tin"): of several the first of these.
  shaped('free-standing', 'free standing, freestanding, freigeschoben'),
  shaped('pie plate', 'pie plate'),
  shaped('square', 'square, quadratisch, quadratische, quadratischen, quadratischer'),
  shaped('oblong', 'oblong, rectangular, rechteckig, rechteckige, rechteckigen, rechteckiger, eckig, eckige, eckigen, eckiger'),
  shaped('round', 'round, rund, runde, runden, runder, rundes'),
  shaped('crock', 'crock'),
  shaped('sheet', 'sheet'),
  shaped('loaf', 'loaf'),
]
