import {words, wordsUsed} from './row.js'
import type {AskedWord} from './schema.js'

const row = (use: AskedWord['use'], id: string, list: string, value?: string): AskedWord => ({
  id: `${use}: ${id}`,
  use,
  words: words(list),
  ...(value === undefined ? {} : {value}),
  source: 'common-practice',
})

const shaped = (shape: NonNullable<AskedWord['shape']>, list: string): AskedWord => ({
  id: `named: ${shape}`,
  use: 'named',
  shape,
  words: words(list),
  source: 'common-practice',
})

/** Words and phrases, folded, of how much a day asks of a receipt, English and German. `src/scale/amount-phrase.ts` reads them. */
export const askedWords: readonly AskedWord[] = [
  // Numbers only where an amount is asked for: in a receipt "sieben" sifts, and "halb" may be how a thing is done.
  row('number', '7', 'sieben', '7'),
  row(
    'number',
    '1/2',
    'halb, halbe, halber, halbes, halben, halbem, ein halb, ein halbes, eine halbe, ein halber, einen halben',
    '1/2',
  ),
  row('number', '1/4', 'ein viertel', '1/4'),
  row('number', '1/3', 'ein drittel, drittel', '1/3'),
  row('number', '2/3', 'zwei drittel, zweidrittel', '2/3'),
  row('number', '3/4', 'drei viertel, dreiviertel', '3/4'),
  row('number', '3/2', 'anderthalb, eineinhalb, einundeinhalb', '3/2'),
  row('number', '5/2', 'zweieinhalb, zweiundeinhalb', '5/2'),
  row('number', '7/2', 'dreieinhalb, dreiundeinhalb', '7/2'),
  row('number', '9/2', 'viereinhalb, vierundeinhalb', '9/2'),
  row('number', '2', 'a pair of, pair of, a brace of', '2'),
  row('number', '12', 'dutzend, ein dutzend', '12'),
  row('number', '13', "baker's dozen, baker’s dozen, a baker's dozen, a baker’s dozen, long dozen, a long dozen", '13'),
  row('number', '6', 'ein halbes dutzend, halbes dutzend', '6'),
  // “A few pies” say no number, and a German “ein paar” are not two.
  row('no number', 'few', 'a few, few, some, several, ein paar, einige, etliche'),
  // Before a number of people.
  row('for', 'for', 'for, to feed, feeds, serves, enough for, fur, reicht fur, genug fur'),
  row('persons', 'persons', 'people, persons, person, guests, guest, servings, serving, portions, portion, helpings, helping'),
  row('persons', 'personen', 'personen, leute, gaste, esser, portionen'),
  row('everyone', 'everyone', 'all, everyone, everybody, the day, all of us, alle, jeden, alle zusammen'),
  // Behind a number.
  row('times', 'times', 'times, x, ×, mal, fach, faches'),
  row(
    'receipt',
    'receipt',
    'receipt, receipts, recipe, recipes, batch, batches, quantity, rezept, rezepte, ansatz, ansatze, menge',
  ),
  // So many times the receipt, without a number.
  row(
    'so often',
    '1',
    'once, whole, full, as written, as it stands, receipt, recipe, einmal, ganz, ganze, ganzes, wie geschrieben, wie im rezept, rezept',
    '1',
  ),
  row('so often', '2', 'twice, double, as much again, zweimal, doppelt, doppelte, das doppelte', '2'),
  row('so often', '3', 'thrice, treble, triple, dreimal, dreifach, dreifache, das dreifache', '3'),
  row('so often', '4', 'quadruple, viermal, vierfach, vierfache, das vierfache', '4'),
  row('so often', '3/2', 'half again, half as much again, half again as much, anderthalbmal', '3/2'),
  // As many as stand on the floor at once; „Böden“ are of cakes too, and a number of them counts those.
  row('floor', 'boden', 'boden fullen, boden voll, ganzer boden, ganzen boden'),
  row(
    'floor noun',
    'floor',
    'floor, floors, oven, ovens, hearth, hearths, ovenful, ovenfuls, ovensful, oven full, ovens full, ovenload, ovenloads, oven load, oven loads, oven-load, oven-loads',
  ),
  row(
    'floor noun',
    'herd',
    'herd, herde, herds, herdes, ofen, ofens, backofen, ofenfullung, ofenfullungen, ofenladung, ofenladungen, herdfullung, herdfullungen',
  ),
  row(
    'floor whole',
    'whole',
    'full, whole, entire, complete, voll, volle, voller, vollen, volles, ganz, ganze, ganzer, ganzen, ganzes',
  ),
  row('floor fill', 'fill', 'fill, fill up, fullen, fulle, voll, voll machen'),
  // A weight of these is one before baking; of anything else it is one of what comes out of the oven.
  row('mixture', 'mixture', 'dough, batter, paste, mixture, teig, masse, ruhrteig, brotteig, bread dough'),
  // Before or behind what each of several weighs or measures.
  row('each', 'each', 'each, apiece, of, at, à, a, zu, je, weighing, across, wide, in diameter'),
  // Units of what each weighs or measures, and of a weight in all.
  row(
    'mass',
    'mass',
    'kg, kgs, kilo, kilos, kilogram, kilograms, kilogramme, kilogrammes, g, gram, grams, gramme, grammes, gramm, lb, lbs, pound, pounds, oz, ounce, ounces, pfund, pfd',
  ),
  row('length', 'length', 'in, inch, inches, cm, mm, m, ft, foot, feet, zoll'),
  // Measures in which a receipt's items come, and no amount of what is baked: cups, plates and jars are vessels as well, and counted.
  row('measure', 'measure', 'gallon, quart, pint, gill, peck, bushel, litre, liter, decilitre, millilitre, stone'),
  // In one; what a vessel is cut into is never a vessel itself.
  row('vessel', 'vessel', 'tin, pan, tray, sheet, vessel, dish, plate, crock, pot, jar, basin, mould, mold'),
  // What comes out of one tin where several are put together.
  row('layer', 'layer', 'layer, half, boden'),
  row('cut', 'cut', 'piece, slice, square, finger, wedge'),
  // Small vessels that stand in another, each with one of what the receipt is called.
  row('small vessel', 'small vessel', 'cup, teacup, custard cup, ramekin, dariole, glass, tumbler, pot, mould, mold, tin, pan'),
  // What is counted, beyond what receipts make and the names of vessels and kinds.
  row(
    'counted',
    'counted',
    'batch, ball, bap, bar, baguette, bagel, batard, bloomer, boule, braid, bun, cob, drop, frame, half, layer, manchet, plait, portion, quarter, quartern, ring, row, stick, twist, wheel',
  ),
  // Before what is counted: how large each is to be, and no figure.
  row(
    'size',
    'size',
    'large, larger, small, smaller, big, bigger, little, tiny, huge, mini, great, gross, grosse, grosser, grosses, grossen, klein, kleine, kleiner, kleines, kleinen',
  ),
  // What names a vessel by its shape where no size is said, or a loaf by what it stands in; of several words the last, in the singular.
  shaped(
    'free-standing',
    'free standing loaf, free standing bread, freestanding loaf, freestanding bread, hearth loaf, hearth bread, cob, boule, freigeschobene laibe, freigeschobener laib, freigeschobene brote, freigeschobenes brot',
  ),
  shaped(
    'loaf',
    'loaf tin, loaf pan, bread tin, bread pan, tin loaf, tin bread, pan loaf, pan bread, kastenform, kastenformen, kastenbrot, kastenbrote',
  ),
  shaped('pie plate', 'pie plate, pie dish, pie tin, pie pan'),
  shaped('crock', 'crock, bean pot, stone jar'),
  shaped('sheet', 'sheet, baking sheet, cookie sheet, tray, baking tray, blech, bleche, blechen, backblech, backbleche'),
  // Of no shape of their own.
  row('any tin', 'tin', 'tin, pan, form, formen, backform, backformen'),
  // Behind “on” or “auf”: where a loaf stands without a tin.
  row(
    'bare',
    'bricks',
    'bricks, bare bricks, brick, hearth, bare hearth, floor, bare floor, oven floor, floor of oven, stone, stones, bare stone, sole, stein, steine, steinen, herd, ofenboden, schamotte',
  ),
  row('bread', 'bread', 'loaf, bread, brot, brote, laib, laibe'),
  // “8 loaves, wanted by 1 pm”, “6 pies, hot at 6 pm”, „8 Laibe, gewünscht bis 13 Uhr“
  row('wanted', 'wanted', 'wanted, ready, needed, gewünscht, gebraucht, fertig'),
  row('hot', 'hot', 'hot, heiß, heiss'),
  row('wanted by', 'by', 'by, at, for, bis, um'),
  // … and by itself before an hour.
  row('wanted by alone', 'by', 'by, bis'),
  // Before an hour: not by when it is wanted, but from when.
  row(
    'not before',
    'not before',
    'not before, not until, not till, no earlier than, not earlier than, after, from, nicht vor, nicht früher als, frühestens um, frühestens, ab, nach',
  ),
  row('article', 'article', 'a, an, the, der, die, das, den, dem, einem, einer, eine, ein'),
]

const of = (use: AskedWord['use']): readonly AskedWord[] => askedWords.filter((one) => one.use === use)
const setOf = (use: AskedWord['use']): ReadonlySet<string> => new Set(wordsUsed(askedWords, use))
const valuesOf = (use: AskedWord['use']): ReadonlyMap<string, string> =>
  new Map(of(use).flatMap(({words: all, value = '1'}) => all.map((word) => [word, value] as const)))

/** The phrases by their use; those of numbers with the fraction they stand for. */
export const asked = {
  numbers: valuesOf('number'),
  soOften: valuesOf('so often'),
  for: setOf('for'),
  persons: setOf('persons'),
  everyone: setOf('everyone'),
  times: setOf('times'),
  receipt: setOf('receipt'),
  floor: setOf('floor'),
  floorNoun: setOf('floor noun'),
  floorWhole: setOf('floor whole'),
  floorFill: setOf('floor fill'),
  mixture: setOf('mixture'),
  each: setOf('each'),
  noNumber: setOf('no number'),
  mass: setOf('mass'),
  length: setOf('length'),
  measure: setOf('measure'),
  vessel: setOf('vessel'),
  smallVessel: setOf('small vessel'),
  cut: setOf('cut'),
  layer: setOf('layer'),
  counted: setOf('counted'),
  size: setOf('size'),
  named: new Map(of('named').flatMap(({words: all, shape}) => all.map((word) => [word, shape!] as const))),
  anyTin: setOf('any tin'),
  bare: setOf('bare'),
  bread: setOf('bread'),
  wanted: setOf('wanted'),
  hot: setOf('hot'),
  wantedBy: setOf('wanted by'),
  wantedByAlone: setOf('wanted by alone'),
  notBefore: setOf('not before'),
  article: setOf('article'),
} as const
