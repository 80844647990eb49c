import {words} from './row.js'
import type {GrammarTable} from './schema.js'

/**
 * The small words of receipts: numbers, hedges, and what ends or bends the name of an ingredient. Common practice, no source. A new
 * word is a new entry; `src/receipt/view.ts` looks each word of a text up here once.
 */

const tensOfGerman: Readonly<Record<string, number>> = {
  zwanzig: 20,
  dreissig: 30,
  dreißig: 30,
  vierzig: 40,
  funfzig: 50,
  sechzig: 60,
  siebzig: 70,
  achtzig: 80,
  neunzig: 90,
}
const onesOfGerman = 'ein zwei drei vier funf sechs sieben acht neun'.split(' ')
/** "zwanzig", "fünfundzwanzig": the ones stand before the tens, in one word. */
const germanTens: Readonly<Record<string, number>> = Object.fromEntries(
  Object.entries(tensOfGerman).flatMap(([ten, n]) => [
    [ten, n],
    ...onesOfGerman.map((one, i) => [`${one}und${ten}`, n + i + 1] as const),
  ]),
)

/** Number words. "a" and "an" are 1 only where a measure or a countable item follows. */
export const cardinals: Readonly<Record<string, number>> = {
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  thirteen: 13,
  fourteen: 14,
  fifteen: 15,
  sixteen: 16,
  seventeen: 17,
  eighteen: 18,
  nineteen: 19,
  twenty: 20,
  thirty: 30,
  forty: 40,
  fourty: 40,
  fifty: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  ninety: 90,
  hundred: 100,
  // German household receipts.
  ein: 1,
  eine: 1,
  einen: 1,
  einem: 1,
  einer: 1,
  zwei: 2,
  zweier: 2,
  drei: 3,
  dreier: 3,
  vier: 4,
  funf: 5,
  sechs: 6,
  acht: 8,
  neun: 9,
  zehn: 10,
  elf: 11,
  zwolf: 12,
  dreizehn: 13,
  vierzehn: 14,
  funfzehn: 15,
  sechzehn: 16,
  siebzehn: 17,
  achtzehn: 18,
  neunzehn: 19,
  ...germanTens,
  hundert: 100,
  // Old and scanned spellings.
  tow: 2,
  twoo: 2,
  foure: 4,
  fower: 4,
  fiue: 5,
  fyve: 5,
  sixe: 6,
  seaven: 7,
  seuen: 7,
  eightene: 18,
  tenne: 10,
  twelue: 12,
  twentie: 20,
  thirtie: 30,
  fortie: 40,
}

/** Fractions in words, singular or plural. */
export const fractions: Readonly<Record<string, readonly [number, number]>> = {
  half: [1, 2],
  halfe: [1, 2],
  halves: [1, 2],
  third: [1, 3],
  thirds: [1, 3],
  quarter: [1, 4],
  quarters: [1, 4],
  fourth: [1, 4],
  fourths: [1, 4],
  fifth: [1, 5],
  fifths: [1, 5],
  sixth: [1, 6],
  sixths: [1, 6],
  eighth: [1, 8],
  eighths: [1, 8],
  eighthes: [1, 8],
  tenth: [1, 10],
  tenths: [1, 10],
  sixteenth: [1, 16],
  // In every ending: "ein halber Liter", "einen halben Liter", "einem halben".
  halbe: [1, 2],
  halber: [1, 2],
  halbes: [1, 2],
  halben: [1, 2],
  halbem: [1, 2],
  drittel: [1, 3],
  viertel: [1, 4],
  dreiviertel: [3, 4],
  achtel: [1, 8],
  // A number and a half in one word.
  anderthalb: [3, 2],
  eineinhalb: [3, 2],
  zweieinhalb: [5, 2],
  dreieinhalb: [7, 2],
}

/** Words for a number of things. */
export const bundles: Readonly<Record<string, number>> = {
  dozen: 12,
  dozens: 12,
  doz: 12,
  dozn: 12,
  score: 20,
  scores: 20,
  couple: 2,
  hundred: 100,
  gross: 144,
  thousand: 1000,
  cople: 2,
  dutzend: 12,
}

/** Before a number: it is not exact. Longest first where one begins another. */
export const hedges: readonly string[] = words(
  'rather more than, a little more than, something more than, somewhat more than, rather less than, a little less than, somewhat less than, not quite, not more than, not less than, no more than, no less than, more than, less than, upwards of, as many as, as much as, at least, at most, about, nearly, near, almost, scarcely, hardly, barely, just, fully, full, quite, roughly, approximately, approx, circa, ca, etwa, ungefahr, rund, around, say, perhaps, over, under, above, rather over, rather under, rather better than, better than, only, or so, some',
)

/** Between the number and the measure or item: how it is filled, or its size. */
export const fillings: readonly string[] = words(
  'heaped, heaping, heaped-up, gestr, gestrichen, gestrichener, gestrichene, gehauft, gehaufter, gehaufte, rounded, rounding, level, levelled, leveled, scant, scanty, short, full, brimming, good, good-sized, generous, liberal, bare, small, smallish, little, large, great, big, middling, middle-sized, middling-sized, moderate, moderate-sized, medium, medium-sized, lg, lge, med, sm, xl, ordinary, common, common-sized, fair, fair-sized, tolerable, very, fine, nice, whole, entire, largest, smallest, thin, thick, single, best, packed, firmly, lightly, tightly, well, filled, coffee-house, average, average-sized, sized, extra, additional, more, further, weitere, weiterer, weiteres, weiteren, zusatzliche, zusatzlicher, zusatzliches, zusatzlichen, hen, even, smooth, ripe',
)

/** Behind an amount, or the name of what it is of: so much of it beside what stood before ("two pints more of water", "2 further eggs"). */
export const furthers: readonly string[] = words(
  'more, further, additional, mehr, weitere, weiterer, weiteres, weiteren, zusatzliche, zusatzlicher, zusatzliches, zusatzlichen',
)

/** The same before an amount ("noch 100 g", "a further 50 g"). */
export const furtherBefore: readonly string[] = words(
  'a further, an additional, an extra, further, additional, extra, noch, noch mal, noch einmal, nochmal, nochmals, weitere, weiteren, zusatzlich',
)

/** Begins what only some bakings want: "a gill more of milk, if it is too thick". */
export const onlyIf: readonly string[] = words(
  'if, should, unless, in case, when needed, when wanted, as needed, as required, as wanted, falls, wenn, bei bedarf, sofern, nach bedarf',
)

/** Ways an item is got ready: kept out of its name, said with it. */
export const preparations: readonly string[] = words(
  'firm, crisp, floury, waxy, mealy, starchy, meaty, unbaked, fertig, fertiger, fertige, fertiges, unblemished, unwaxed, untreated, festkochende, mehligkochende, reife, feste, fester, lg, lge, med, sm, xl, mehr, weich, weiche, zerlassen, zerlassene, flüssig, flüssige, gehackt, gehackte, gemahlen, gemahlene, sifted, powdered, pounded, beaten, beat, ground, grated, chopped, minced, sliced, shred, shredded, melted, clarified, washed, picked, stoned, seeded, dried, dry, fine, finely, well, very, fresh, freshly, newly, whole, good, nice, best, rich, warm, hot, cold, boiling, boiled, lukewarm, tepid, scalded, cooked, stewed, roast, roasted, baked, mashed, strained, blanched, peeled, pared, cored, quartered, cut, small, large, great, thin, thinly, thick, coarse, coarsely, softened, soft, hard, unsalted, salted, toasted, crushed, bruised, broken, split, sour, sweet, ripe, unripe, green, clean, clear, pure, rolled, superfine, common, ordinary, plain, lightly, roughly, freshly, diced, drained, rinsed, frozen, chilled, cool, cooled, heaped, packed, juicy, tender, young, old, new, stale, light, dark, dissolved, mixed, whipped, whisked, separated, halved, cubed, slivered, flaked, crumbled, rubbed, extra, fair, spring, little, middling, medium, moderate, moderate-sized, sized, candied, preserved, pickled, potted, smoked, corned, made, prepared, flavoured, flavored, seasoned, sweetened, unsweetened, thickened, raw, ready, free-range, organic, fat, lean, tart, fried, browned, buttered, skimmed, creamed, scraped, trimmed, heavy, strong, weak, mild, moist, smooth, powder’d, sifted, beate, searced, searst, finely-sifted, lauwarm, lauwarme, lauwarmen, lauwarmes, weiche, kalte, kalter, kaltes, warme, warmes, warmer, gemahlene, gemahlener, gehackte, geriebene, frische, frischer, flüssige, geschälte, große, grosse, kleine, mittelgroße, abgeriebene, cleaned, fully, nicely, perfectly, quite, rather, not, too, somewhat, slightly, generous, room, temperature, optional, sharp, delicate, excellent, choice, prime, select, handsome, real, genuine, genuine, light-brown, usual, plump, bought, such, several, certain, proper, single, double, hulled, shelled, unshelled, bottled, tinned, canned, fleshy, instant, quick, quick-cooking, old-fashioned, natural, sliced, liquid, dessicated, middling-sized, hot-house, fashioned, fast, acting, action, active, raising, strained, English, French, home-made, homemade, store, unbeaten, undrained, coarsely, lukewarme, warme, faire, thicke, thinne, olde, newe, beaten, blanch’d, ston’d, wash’d, pick’d, beat’n',
)

/** How meat, fish and fruit are sold, said before their name or behind it. */
export const soldAs: readonly string[] = words(
  'boneless, skinless, boned, deboned, unboned, filleted, trimmed, untrimmed, unskinned, rindless, dressed, gutted, oven-ready, firm, entbeint, ausgelöst, ausgelöste, ausgelöster, ausgelöstes, parierte, pariert, küchenfertig, küchenfertige, küchenfertiger, küchenfertiges',
)

/** Words that cannot stand inside the name of an ingredient: they end it. */
export const enders: readonly string[] = words(
  'the, a, an, fullen, einfullen, pro, jedes, jeden, jede, fur, auf, mit, bis, von, dazugeben, hinzugeben, hinzufugen, zugeben, unterruhren, unterkneten, einkneten, einruhren, einarbeiten, unterheben, verkneten, vermischen, verruhren, vermengen, erwarmen, zur, aus, nach, of, and, or, with, in, into, to, for, from, by, on, upon, at, as, at, till, until, if, when, while, whilst, then, than, that, which, who, whose, this, these, those, it, its, them, their, they, he, she, his, her, you, your, we, our, us, i, my, is, are, was, were, be, been, being, will, would, shall, should, may, might, must, can, could, do, does, did, done, has, have, had, having, so, but, not, nor, no, over, under, through, between, among, round, around, about, before, after, up, down, out, off, all, any, some, each, every, both, either, neither, other, another, enough, sufficient, more, most, less, least, much, many, few, too, also, again, there, here, where, how, what, once, twice, together, just, only, even, instead, per, except, without, within, against, during, because, unless, whichever, whatever, according, off, along, near, like, unlike, such, same, equal, let, allow, make, makes, making, made, take, takes, taking, taken, put, puts, putting, add, adds, adding, added, mix, mixes, mixing, stir, stirs, stirring, stirred, beat, pour, pours, pouring, poured, boil, boils, bake, bakes, baking, roast, roll, roul, rub, rubs, rubbing, lay, lays, laying, laid, set, sets, serve, serves, served, serving, cut, cover, strain, sift, grate, chop, mince, pound, season, sweeten, wet, knead, keep, turn, wash, pare, peel, core, slice, fill, give, gives, get, gets, got, go, goes, come, comes, stand, stands, rise, rises, cool, work, works, send, eat, eats, use, uses, using, used, bring, dissolve, simmer, stew, fry, melt, heat, warm, sprinkle, dredge, strew, dust, throw, drop, squeeze, break, separate, whip, whisk, skim, scald, soak, steep, tie, wrap, place, spread, brush, flavour, flavor, flavoured, thicken, garnish, answer, answers, improve, improves, require, requires, required, become, becomes, begin, begins, prefer, preferred, find, found, see, say, think, know, seem, seems, look, looks, need, needs, want, wants, call, called, adding, being, first, last, next, soon, gradually, gently, slowly, quickly, constantly, thoroughly, always, never, sometimes, often, generally, usually, immediately, directly, carefully, separately, alternately, equally, additional, till, untill, untyll, tyll, unto, therein, thereto, thereof, therewith, thereon, wherein, same, size, bigness, weight, worth, quantity, quantities, proportion, hour, hours, minute, minutes, day, days, night, morning, week, weeks, month, months, year, years, time, times, person, persons, people, inch, inches, degree, degrees, way, ways, side, sides, part, parts, half, halves, third, thirds, quarter, quarters, dozen, dish, dishes, pan, pans, pot, pots, tin, tins, oven, fire, bag, cloth, sieve, spoon, knife, fork, mould, moulds, mold, board, bottom, top, middle, centre, plate, plates, paper, board, kettle, stewpan, saucepan, skillet, griddle, basin, bowl, jar, jars, tub, crock, hoop, hoops, cups, glass, viz, namely, or, &c, etc, ye, yt, ym, wch, thy, thou, thee, afterwards, afterward, likewise, already, almost, perhaps, very, ad, suit, suits, plus, type, minus, chilly, must, feet, foot, yard, yards, mile, miles, acre, acres, shilling, shillings, pence, stuck, left, contain, contains, appear, appears, kind, kinds, sort, sorts, one, ones, la, le, les, au, aux, sold, bought, cost, costs, eaten, seen, visit, necessary, however, wide, long, deep, high, broad, time, und, oder, je, für, vom, zum, der, die, das, den, dem, des, ein, eine, einen, einem, einer, eines, im, am, ins, bei, bereiten, kneten, backen, geben',
)

/** Things made of or filled with an item whose name stands before theirs: "bread pan", "milk jug" are no entry. */
export const notFood: readonly string[] = words(
  'pan, pans, tin, tins, dish, dishes, board, boards, bag, bags, cloth, cloths, knife, pot, pots, plate, plates, paper, papers, mould, moulds, mold, molds, cup, cups, bowl, bowls, basin, jar, jars, glaser, glasern, weckglaser, weckglasern, einmachglaser, einmachglasern, spoon, spoons, cutter, cutters, brush, sieve, oven, tub, barrel, barrels, boat, box, tray, beater, boiler, kettle, strainer, bottle, bottles, cask, press, mill, grater, merchant, maker, trade, shop, store, tree, trees, season, time, size, sized, shape, shaped, coloured, colored, colour, color, like, house, day, fashion, course, table, muslin, consistency, mixture, stage, whisk, whisks, timer',
)

/** Heads that take their stuff after "of": "essence of almonds", "a round of beef". */
export const ofHeads: readonly string[] = words(
  'essence, oil, spirit, spirits, tincture, carbonate, bicarbonate, bi-carbonate, cream, flour, flower, flowers, extract, syrup, sirup, jelly, conserve, marmalade, remains, root, salt, salts, sugar, powder, gum, balm, milk, butter, spirits, water, vinegar, cordial, seed, seeds, buds, tops, heart, hearts, crumb, crumbs, pulp, meat, flesh, stock, broth, liver, feet, tongue, tongues, juice, preserve, wine, candied, caul',
)

/** Joints: a piece of a beast that is counted ("a leg of mutton" is one). */
export const joints: readonly string[] = words(
  'round, leg, loin, neck, breast, shoulder, knuckle, fillet, rump, shin, haunch, quarter, fore-quarter, hind-quarter, forequarter, hindquarter, side, sirloin, brisket, saddle, chine, flank, tail, tail-end, head, aitchbone, aitch-bone, scrag, buttock, ribs, rib, cheek, best end, middle, thick flank, silverside, hock, hand, spare-rib, sparerib, chump, joint, shank, rack, belly',
)

/** What is done with a fruit whole, behind it: "the juice of a lemon and two oranges, sliced". */
export const usedWhole: readonly string[] = words(
  'peeled, pared, sliced, chopped, quartered, segmented, segments, slices, cut, in, geschält, geschälte, geschnitten, gewürfelt, geviertelt, filetiert, gehackt, scheiben, filets, spalten',
)

/** What was made of a fruit, behind it on a list: "1 lemon, zested and juiced". The value is the part that goes in, as in `partsOf`. */
export const fruitParts: Readonly<Record<string, string>> = {
  zested: 'rind',
  juiced: 'juice',
  squeezed: 'juice',
  ausgepresst: 'juice',
  abgerieben: 'rind',
}

/** Parts of a thing that are asked for by the thing's count: "the juice of two lemons". The value is the canonical word. */
export const partsOf: Readonly<Record<string, string>> = {
  juice: 'juice',
  juyce: 'juice',
  ioyce: 'juice',
  iuice: 'juice',
  rind: 'rind',
  rinds: 'rind',
  rinde: 'rind',
  ryne: 'rind',
  peel: 'rind',
  peels: 'rind',
  peal: 'rind',
  pill: 'rind',
  peele: 'rind',
  zest: 'rind',
  schale: 'rind',
  abrieb: 'rind',
  saft: 'juice',
  outside: 'rind',
  skin: 'rind',
  skins: 'rind',
  parings: 'rind',
  paring: 'rind',
  yellow: 'rind',
  pulp: 'pulp',
  crumb: 'crumb',
  crumbs: 'crumb',
  crum: 'crumb',
  crums: 'crumb',
  crummes: 'crumb',
  crumme: 'crumb',
  soft: 'crumb',
  inside: 'crumb',
  white: 'white',
  whites: 'white',
  whits: 'white',
  yolk: 'yolk',
  yolks: 'yolk',
  yelk: 'yolk',
  yelks: 'yolk',
  yolke: 'yolk',
  yolkes: 'yolk',
  yoke: 'yolk',
  yokes: 'yolk',
  kernels: 'kernel',
  marrow: 'marrow',
  liver: 'liver',
  livers: 'liver',
  seeds: 'seed',
  flesh: 'flesh',
  meat: 'meat',
  giblets: 'giblets',
}

/** No amount, but the item goes in: "a little", "some". Longest first. */
export const indefinites: readonly string[] = words(
  'ein paar, einige, ein wenig, ein bisschen, a very little, a little more, a very few, a little, a few, a good deal of, a good many, a great many, a small quantity of, a large quantity of, a sufficient quantity of, a proper quantity of, a good quantity of, a due quantity of, the usual quantity of, a quantity of, any quantity of, sufficient quantity of, a sufficiency of, a bit of, a dab of, dab of, dabs of, a dot of, dots of, a small bit of, a little bit of, bits of, a dust of, a dusting of, a speck of, speck of, specks of, a few grains of, few grains of, a sprinkling of, a sprinkle of, a grating of, a few gratings of, a suspicion of, a taste of, a touch of, a soupcon of, a squeeze of, a dash of, a scrape of, a scraping of, a shake of, a drizzle of, a splash of, a glug of, a little of, some of, some few, some more, some little, small pieces of, little pieces of, bits of, plenty of, a plenty of, lots of, seasoning of, a seasoning of, flavouring of, flavoring of, a flavouring of, a mixture of, enough of, enough, sufficient, sufficient of, some, several, any, a few drops of, few drops of, a layer of, layers of, a very small quantity of, remains of, what, the remains of, a proportion of, a proportionate quantity of, rather more, additional, extra, few, little, a small piece of, a small lump of, handfuls of, pieces of, lumps of, slices of, drops of, a drop of, sprigs of, leaves of, etwas',
)

/** After an item: it goes in by the cook's judgment. */
export const toTaste: readonly string[] = words(
  'to taste, to your taste, to the taste, to suit, to suit your taste, to suit the taste, at taste, to liking, to your liking, to your palate, to the palate, as you like, as you please, if you like, if liked, at pleasure, at discretion, according to taste, agreeable to taste, agreeably to your taste, as may be required, as required, as needed, enough, sufficient, q s, quantum sufficit, quantum suff, in proportion, ad libitum, ad lib, for dusting, for sprinkling, for frying, for rolling, for seasoning',
)

/** Ids of measures that are one where no number stands before them: “add pint milk, gill emptins”. */
export const looseMeasures: readonly string[] = words(
  'pint, quart, gill, gallon, ounce, fluid ounce, drachm, teaspoon, tablespoon, dessertspoon, saltspoon, teacup, coffeecup, breakfastcup, wineglass, handful, pinch, point of a knife, litre, halbliter, viertelliter, achtelliter, dreiviertelliter, pfund, halbpfund, viertelpfund',
)

/** The same of words that are verbs or things too: only right behind another amount, or filled (“cupful”). */
export const strictMeasures: readonly string[] = words('pound, cup, spoon, peck, tumbler, glass, tasse, becher, bowl, saucer')

/** Verbs that "over" belongs to: "pick over a quart of beans" is no more than a quart. */
export const overVerbs: ReadonlySet<string> = new Set(
  words(
    'pick, picked, picking, look, looked, looking, pour, poured, pouring, strew, strewed, strewn, strewing, scatter, scattered, scattering, sprinkle, sprinkled, sprinkling, sift, sifted, sifting, grate, grated, grating, spread, spreading, spoon, spooned, drizzle, drizzled, brush, brushed, dust, dusted, grind, shake, shaking, squeeze, squeezed, dredge, turn, turned, go, crumble, crumbled, dot, lay, laid, throw, tip, ladle',
  ),
)

/** First words of a step, never of an entry: a line that begins with one tells what to do. */
export const stepVerbs: readonly string[] = words(
  'mix, stir, beat, put, add, take, pour, boil, bake, roast, roll, rub, lay, set, serve, cut, cover, strain, sift, grate, chop, mince, pound, season, sweeten, wet, knead, keep, turn, wash, pare, peel, core, slice, fill, let, bring, dissolve, simmer, stew, fry, melt, heat, warm, sprinkle, dredge, strew, dust, throw, drop, squeeze, break, separate, whip, whisk, skim, scald, soak, steep, tie, wrap, place, spread, brush, preheat, combine, fold, grease, line, butter, flour, cool, make, prepare, work, remove, leave, transfer, turn, cream, divide, shape, form, press, chill, garnish, return, reduce, blend, toss, drain, cook, brown, decorate, tip, arrange, dot, draw, raise, stand, scrape, then, when, after, before, while, if, in, meanwhile, once, repeat, allow, have, pick, bruise, blanch, stone, weigh, clean, procure, choose, begin, proceed, gather, whisk, prick, stamp, weigh, ice, do',
)

/** Introduces something the mixture is compared with, or something it is served with: what follows is no entry. */
export const notEntering: readonly string[] = words(
  'like, as, than, resembling, without, no, not, instead, serve, served, eat, eaten, send, garnish, garnished',
)

/** Names of parts of a receipt that are mixed apart. The value is the part's name. */
export const partNames: Readonly<Record<string, string>> = {
  crust: 'crust',
  paste: 'paste',
  pastry: 'pastry',
  dough: 'dough',
  batter: 'batter',
  filling: 'filling',
  icing: 'icing',
  iceing: 'icing',
  frosting: 'icing',
  glaze: 'glaze',
  brushing: 'glaze',
  wash: 'glaze',
  bestreichen: 'glaze',
  bestreuen: 'topping',
  bestauben: 'topping',
  glazing: 'glaze',
  topping: 'topping',
  sauce: 'sauce',
  gravy: 'gravy',
  syrup: 'syrup',
  sirup: 'syrup',
  sponge: 'sponge',
  custard: 'custard',
  meringue: 'meringue',
  stuffing: 'stuffing',
  forcemeat: 'forcemeat',
  dressing: 'dressing',
  garnish: 'garnish',
  starter: 'starter',
  leaven: 'leaven',
  poolish: 'poolish',
  streusel: 'streusel',
  crumble: 'crumble',
  jelly: 'jelly',
  pickle: 'pickle',
  brine: 'brine',
  ferment: 'ferment',
  levain: 'leaven',
  biga: 'sponge',
  preferment: 'sponge',
  soaker: 'soaker',
  sauerteig: 'leaven',
  roggensauer: 'leaven',
  roggensauerteig: 'leaven',
  weizensauer: 'leaven',
  weizensauerteig: 'leaven',
  vorteig: 'sponge',
  quellstuck: 'soaker',
  bruhstuck: 'soaker',
  kochstuck: 'soaker',
  hauptteig: 'dough',
  brotteig: 'dough',
  hefeteig: 'dough',
  murbeteig: 'dough',
  knetteig: 'dough',
  ruhrteig: 'dough',
  nudelteig: 'dough',
  boden: 'crust',
  teig: 'dough',
  fullung: 'filling',
  belag: 'topping',
  glasur: 'glaze',
  guss: 'glaze',
  base: 'base',
  cake: 'cake',
  pudding: 'pudding',
  pie: 'pie',
  liquor: 'liquor',
  cream: 'cream',
}

/** What begins an example of a thing in brackets, with the stops of abbreviations as words. */
export const examplePhrases: readonly string[] = words(
  'e . g ., e . g, e g, eg, such as, for example, ideally, preferably, z . b ., z . b, z b, zb, zum beispiel, etwa, am besten, vorzugsweise',
)

/** Names of parts that stand over their list without a mark: none is a thing one buys. */
export const partsAlone: readonly string[] = words(
  'streusel, topping, filling, frosting, icing, crust, glaze, crumble, poolish, stuffing, sponge, starter, leaven, levain, biga, preferment, soaker, sauerteig, vorteig, quellstuck, bruhstuck, kochstuck, hauptteig',
)

/** In a note below a receipt: what follows is another way of making it, not more of what goes in. */
export const otherWays: readonly string[] = words(
  'instead, or take, or use, or put, or add, some use, some take, some put, some add, some prefer, some like, others use, others take, others put, others add, you may use, you may take, you may put, you may add, you may substitute, may be used, may be substituted, may be left out, may be taken, substitute, substituted, lighter, richer, plainer, cheaper, sweeter, stiffer, softer, larger, smaller, poorer, for a light, for a rich, for a plain, for a cheap, for a large, for a small, alternatively, in place of, if preferred, if you prefer, if you like, if liked, or else, variation',
)

/** What a note below a receipt or beside it begins with, or the heading over some: what follows is beside the receipt's own text. */
export const noteLabels: readonly string[] = words(
  'note, notes, nb, n . b, tip, tips, hint, hints, remark, remarks, obs, variation, variations, variant, variants, storage, storing, reheating, to reheat, make ahead, freezing, to freeze, leftovers, tipp, tipps, hinweis, hinweise, anmerkung, anmerkungen, variante, varianten, abwandlung',
)

/** Behind an oven's figure without a scale ("bake at 180 uncovered"): how it is baked, or where, and no scale of heat. */
export const behindHeat: readonly string[] = words(
  'top, bottom, middle, centre, center, rack, shelf, steam, static, conventional, setting, heat, hot, high, low, uncovered, covered, lid, oder, ober, unterhitze, oberhitze, gas, electric, backen, gebacken, goldbraun, goldgelb, knusprig, braun, fertig, weiter, weitere, noch, ca, etwa, dann, brown, golden, crisp, firm, risen, set, done, ready, straight, overnight, please, thereabouts, max, maximum, minimum, min, mins, std',
)

/** What a dough's own beginning is called, as an ingredient. */
export const preferments: readonly string[] = words(
  'biga, poolish, levain, preferment, sponge, vorteig, sauerteig, starter, leaven',
)

/** What flour becomes before it is filled, shaped or poured. */
export const pastes: readonly string[] = words('paste, pastry, crust, dough, batter')

/** What is done with paste that goes over a dish, under it or round it: "cover with a crust", "lay on a crust". */
export const pasteWork: readonly string[] = words(
  'cover, covers, covered, covering, line, lines, lined, lining, top, topped, lid, enclose, enclosed, inclose, inclosed, wrap, wrapped, put, lay, laid, place, roll, rolled, under, beneath, raise, raised',
)

/** A receipt with one of these words cooks what goes into it. */
export const cookingWords: readonly string[] = words(
  "bake, bakes, baked, baking, bak'd, oven, boil, boiled, boiling, simmer, fry, fried, roast, stew, steam, scald, poach, toast, griddle",
)

/** Work in a pot or a pan: a heat beside it is no oven's. */
export const potWork: readonly string[] = words(
  'fry, fried, frying, boil, boiling, boiled, griddle, skillet, steam, steamed, frittieren, ausbacken, pfanne, kochen',
)

/** What is done with bread that goes into a dish, where a loaf that is baked is only named. */
export const breadWork: readonly string[] = words(
  'grate, grated, slice, sliced, slices, crumb, crumbs, crumbed, crumble, crumbled, soak, soaked, steep, steeped, toast, toasted, cut, pare, pared, rasp, rasped, break, broken, stale, old, thin, buttered, take, lay, add, reiben, gerieben, scheiben, einweichen, eingeweicht',
)

/**
 * What is said by the way between a thing and its amount: “with warm water as you would have it, about three quarts”, “milk, or thereabouts, a
 * quart”.
 */
export const asides: readonly string[] = words(
  'as you would have it, as you will have it, as you would for bread, as you like, as you please, as you think fit, as you think best, as you think proper, as you see fit, as you wish, as you want it, as you choose, as much as you like, as much as you please, as much as you think fit, as much as it will take, as much as it needs, as much as is needful, as much as will do, as is needful, as is wanted, as needed, as required, or thereabouts, or so, more or less, if you have it, if you can get it, if you like, if you please, if liked, nach belieben, wenn vorhanden, mehr oder weniger, je nach mehl, wenn man will, wenn man mag, wer will, wer mag, wenn sie mogen, wenn du magst, wenn gewunscht, falls gewunscht, nach geschmack',
)

/** Verbs of drying: beside degrees they are done in an oven, and elsewhere on a cloth or in the sun. */
export const dryingVerbs: readonly string[] = words('dry, dries, dried, drying, dehydrate, trocknen, trocknet, dorren, dorrt')

/** Before "dry", what is done with a cloth and takes no heat. */
export const pattedDry: readonly string[] = words('pat, patted, wipe, wiped, rub, rubbed, shake, shaken, spin, tupfen')

/** What is done to an oven's heat, before "to 210 °C". */
export const heatChanges: readonly string[] = words(
  'lower, lowered, lowering, reduce, reduced, reducing, drop, dropping, turn, turned, turning, raise, increase, reduzieren, reduziert, senken, zurückschalten, herunterschalten, runterschalten, herunterdrehen, zurückdrehen, erhöhen',
)

/** Before a heat that the dish is to have none of: "do not put it into a fierce oven", "avoid a hot oven". */
export const warningsAgainst: readonly string[] = words(
  "not, never, nor, don't, without, avoid, avoiding, no, beware of, not bear, nicht",
)

/** Between such a word and the heat: what is done with the dish, and small words. */
export const warnedUses: readonly string[] = words(
  'be, put, set, bake, baked, place, placed, bear, stand, use, have, allow, it, them, the, this, these, cakes, cake, bread, loaf, loaves, pies, pie, pudding, in, into, to, a, an, any, such, ever, with, bei, in, im, den, backen',
)

/** Behind such a heat: what it does to the dish. */
export const heatHarms: readonly string[] = words(
  'spoils, spoil, will spoil, would spoil, burns, will burn, would burn, scorches, will scorch, would scorch, ruins, will ruin, would ruin, hardens, will harden, would harden',
)

/** What says that a heat is gone: before it, behind it, and what may stand between it and the words before. */
export const heatGone: Readonly<Record<'before' | 'later' | 'between', readonly string[]>> = {
  before: words('taken off, takes off, take off, took off, has lost, have lost, had lost, loses, past, abated'),
  later: words(
    'is spent, be spent, is gone, is gone off, be gone, be gone off, has gone, has gone off, has passed, has passed off, has passed over, is passed, is off, off the oven, be over, is over, be past, is past, is taken off, be taken off, has been taken off, is a little abated, is a little spent',
  ),
  between: words('the, a, an, its, their, some, first, few, minutes, of, part, much, most, all, little, worst, strength'),
}

/** What says that an oven has come down to so many degrees when a thing is set in, and what that the thing has been drawn from it. */
export const fallenTo: Readonly<Record<'verbs' | 'when' | 'drawn', readonly string[]>> = {
  verbs: words('fallen, falls, cooled, cools, sunk, sinks, dropped, drops, abgekuhlt, gefallen, gesunken, abgesunken'),
  when: words('when, once, soon, after, sobald, wenn'),
  drawn: words('from, out, remove, removed, draw, drawn, taken, slice, serve, herausnehmen, aus'),
}

/** What an oven that is fired with wood, or as hot as one, is called beside a kitchen's: "2 minutes in a wood-fired oven". */
export const woodOvens: readonly string[] = words(
  'wood fired, woodfired, wood burning, wood oven, brick oven, masonry oven, bread oven, stone oven, clay oven, pizza oven, holzofen, holzbackofen, steinofen, steinbackofen, lehmofen, pizzaofen',
)

/** Every list of this file with its source: each is one row, since none of its words has a figure or a source of its own. */
export const grammarTables: readonly GrammarTable[] = (
  [
    ['cardinals', Object.keys(cardinals)],
    ['fractions', Object.keys(fractions)],
    ['bundles', Object.keys(bundles)],
    ['hedges', hedges],
    ['fillings', fillings],
    ['furthers', [...furthers, ...furtherBefore]],
    ['onlyIf', onlyIf],
    ['preparations', preparations],
    ['soldAs', soldAs],
    ['usedWhole', usedWhole],
    ['enders', enders],
    ['notFood', notFood],
    ['ofHeads', ofHeads],
    ['joints', joints],
    ['partsOf', Object.keys(partsOf)],
    ['indefinites', indefinites],
    ['toTaste', toTaste],
    ['bareMeasures', [...looseMeasures, ...strictMeasures]],
    ['overVerbs', [...overVerbs]],
    ['stepVerbs', stepVerbs],
    ['notEntering', notEntering],
    ['partNames', Object.keys(partNames)],
    ['partsAlone', partsAlone],
    ['examplePhrases', examplePhrases],
    ['otherWays', otherWays],
    ['noteLabels', noteLabels],
    ['behindHeat', behindHeat],
    ['preferments', preferments],
    ['pastes', pastes],
    ['pasteWork', pasteWork],
    ['cookingWords', cookingWords],
    ['potWork', potWork],
    ['breadWork', breadWork],
    ['asides', asides],
    ['dryingVerbs', dryingVerbs],
    ['pattedDry', pattedDry],
    ['heatChanges', heatChanges],
    ['woodOvens', woodOvens],
    ['fallenTo', [...fallenTo.verbs, ...fallenTo.when, ...fallenTo.drawn]],
    ['warningsAgainst', warningsAgainst],
    ['warnedUses', warnedUses],
    ['heatHarms', heatHarms],
    ['heatGone', [...heatGone.before, ...heatGone.later, ...heatGone.between]],
  ] as const
).map(([id, list]) => ({id, words: [...list], source: 'common-practice'}))
