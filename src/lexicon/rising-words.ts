import {words} from './row.js'
import type {RisingWord} from './schema.js'

const row = (id: string, use: RisingWord['use'], phrases: string): RisingWord => ({
  id,
  use,
  phrases: words(phrases),
  source: 'common-practice',
})

/**
 * What receipts say of the stages of a dough: a sponge that works before the dough is made, the rising in bulk, the shaping, and the
 * proving of what is shaped. `src/receipt/rising.ts` reads them.
 */
export const risingWords: readonly RisingWord[] = [
  row(
    'leaven',
    'leaven',
    'yeast, yest, yeest, barm, balm, emptins, leaven, levain, starter, sourdough, sponge, spunge, preferment, poolish, biga, hefe, trockenhefe, frischhefe, backhefe, germ, sauerteig, anstellgut, vorteig, roggensauer',
  ),
  row(
    'sponge',
    'sponge',
    'sponge, spunge, preferment, poolish, biga, levain, sour, rye sour, vorteig, sauerteig, sauer, roggensauer, weizensauer, vollsauer, grundsauer',
  ),
  row('set', 'sets', 'make, made, set, start, build, prepare, begin, for the, fur den, ansetzen, angesetzt'),
  row(
    'stir',
    'stirs',
    'stir, mix, feed, refresh, beat, whisk, combine, anruhren, verruhren, ruhren, mischen, vermischen, vermengen, ansetzen, angesetzt',
  ),
  // What goes in only after a wait: "mix flour and water, rest 40 minutes, add the levain".
  row(
    'add',
    'adds',
    'add, adds, adding, added, mix in, work in, stir in, knead in, fold in, pour in, put in, incorporate, sprinkle over, sprinkle on, zugeben, hinzufugen, dazugeben, einarbeiten, unterkneten, unterruhren',
  ),
  // "Mix the sponge with the rest of the flour": that is the dough.
  row(
    'rest',
    'rest',
    'rest, remaining, remainder, other ingredients, everything else, all else, ubrigen, ubrige, restlichen, restliche, restliches, ubrigem, anderen zutaten',
  ),
  // What is done to a dough before it is left: "knead and cover overnight".
  row(
    'worked',
    'worked',
    'knead, kneads, kneaded, mix, mixed, stir, stirred, combine, work, worked, beat, beaten, wrap, wrapped, cover, covered, put, place, placed, set aside, kneten, verkneten, geknetet, mischen, vermischen, vermengen, verruhren, abdecken, zudecken, zugedeckt, abgedeckt, stellen',
  ),
  row('autolyse', 'autolyse', 'autolyse, autolysis, autolyze, autolyseteig'),
  // "Let the sour stand 14 hours", "den Vorteig 12 Stunden reifen lassen"
  row('let', 'lets', 'let, leave, allow, lass, lasse, lassen'),
  row('main', 'main', 'dough, main dough, final dough, bread dough, second dough, teig, hauptteig, brotteig'),
  row(
    'knead',
    'kneads',
    'knead, kneads, kneaded, kneading, wet up, work up, make up the dough, kneten, verkneten, geknetet, durchkneten',
  ),
  row(
    'shape',
    'shapes',
    'shape, shapes, shaped, shaping, mould up, mould it, mould them, mould into, mold up, mold it, mold them, mold into, roll out, roll it out, roll them out, roll up, plait, braid, divide, scale, scaled, preshape, pre-shape, final shape, spread the dough, press the dough, stretch the dough, formen, formt, geformt, wirken, rundwirken, langwirken, teilen, rund schleifen, ausrollen, flechten',
  ),
  // "Prove 45 minutes in the tins" is no shaping; "when risen put it in tins" is.
  row(
    'put',
    'puts',
    'put, place, set, lay, turn, drop, fill, tip, pour, transfer, pack, press, stretch, spread, pull, pat, ease, slide, lift, divide, shape, shaped, make, made, form, mould, mold, roll, legen, setzen, geben, fullen, stellen, store',
  ),
  // What a dough is made into: "make up into 24 rolls". It may be something else that is put there.
  row(
    'make',
    'makes',
    'make, makes, made, make it, make up, form, forms, formed, cut, work, roll, rolled, turn, mould, mold, machen',
  ),
  row('into', 'into', 'in, into, to, on, onto, upon, zu, auf, aufs, ins'),
  row(
    'piece',
    'pieces',
    'loaf, loaves, roll, rolls, bun, buns, round, rounds, ball, balls, cake, cakes, piece, pieces, bap, baps, cob, cobs, batch, batches, brick, bricks, twist, twists, plait, plaits, stick, sticks, baton, batons, knot, knots, cottage loaf, manchet, manchets, muffin, muffins, bagel, bagels, crescent, crescents, parcel, parcels, pocket, pockets, turnover, turnovers, pasty, pasties, wreath, wreaths, laib, laibe, brotchen, kugel, kugeln, strang, strange, zopf, zopfe, tasche, taschen, hornchen, packchen, kranz, kranze',
  ),
  row(
    'vessel',
    'vessels',
    'tin, tins, pan, pans, pattipan, pattipans, mould, moulds, mold, molds, hoop, hoops, basket, baskets, banneton, bannetons, tray, trays, sheet, sheets, baking sheet, baking sheets, form, kastenform, garkorb, garkorbchen, garkorbe, blech, bleche, backblech, backbleche',
  ),
  // What makes pieces of the dough, or fills them or their tins: "form 12 buns", "half fill two tins", "Taschen füllen".
  row('form', 'forms', 'form, fill, half fill, half-fill, stuff, mould, mold, fullen, befullen, gefullt'),
  // "Wrap it round the sausages", "stretch it over the tin"; but wrapped in a cloth it only rises.
  row('wrap', 'wraps', 'wrap, wind, twist, roll, stretch, drape, pull, ease, press, pat'),
  row('around', 'around', 'round, around, over, across'),
  row('cloth', 'cloth', 'cloth, towel, tea towel, film, foil, paper, cling film, wrap, itself, blanket, napkin, bowl, basin'),
  // A pan that flour or milk goes into is no tin for the dough.
  row('mixed', 'mixed', 'flour, meal, milk, water, yeast, barm, sugar, butter, mehl, milch, wasser, hefe, zucker'),
  row(
    'rises',
    'rises',
    'rise, rises, risen, rising, prove, proves, proved, proving, proof, proofed, proofing, ferment, double, doubled, light, swell, gehen, aufgehen, aufgegangen, gare, stuckgare, stockgare',
  ),
  row(
    'proves',
    'proves',
    'second rise, second rising, second prove, second proving, second proof, final rise, final rising, final prove, final proving, final proof, last rise, last rising, last prove, last proving, last proof, zweite gare, zweite gehzeit, stuckgare, endgare',
  ),
  row(
    'soaks',
    'soaks',
    'soak, soaks, soaked, soaking, steep, steeped, steeping, infuse, infused, macerate, plump, chill, chilled, cool, cooled, einweichen, quellen',
  ),
  row('dough', 'dough', 'dough, flour, paste, mix and rest, mix and leave, mix and let, mix all, mix everything, teig, mehl'),
  row('chilled', 'chilled', 'dough, loaf, loaves, rolls, buns, teig, teigling, teiglinge'),
  // Cold places: "overnight in the refrigerator", "8 hours in a cool larder"; and what puts a dough into the first.
  row('refrigerator', 'refrigerator', 'refrigerator, fridge, icebox, ice box, kuhlschrank, kuhlung'),
  row(
    'cellar',
    'cellar',
    'cellar, larder, pantry, cool cellar, cold cellar, cool larder, cold larder, cool pantry, cold pantry, cool place, cold place, cool room, cold room, cool spot, keller, kuhlen keller, speisekammer, kuhlen speisekammer, kuhlen ort, kalten ort, kuhlen raum, kalten raum, kuhlen platz',
  ),
  row('chill', 'chills', 'refrigerate, refrigerates, refrigerated, refrigerating, chill, chilled'),
  row('bake', 'bakes', 'bake, bakes, baked, backen, gebacken, set them in the oven, set it in the oven, put into the oven'),
]
