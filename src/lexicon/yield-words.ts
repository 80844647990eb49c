import {words, wordsUsed} from './row.js'
import type {YieldWord} from './schema.js'

const row = (use: YieldWord['use'], id: string, list: string, of?: string): YieldWord => ({
  id: `${use}: ${id}`,
  use,
  words: words(list),
  ...(of === undefined ? {} : {of}),
  source: 'common-practice',
})

/** Words for how much a receipt makes, folded. `src/receipt/yield-….ts` read them. */
export const yieldWords: readonly YieldWord[] = [
  // What opens a yield that is stated, by how it is read.
  row('opens', 'makes', 'makes, yield, yields, ergibt'),
  // "Gives a pint of juice" tells no yield.
  row('opens', 'gives', 'gives, produces'),
  // "This will make two loaves", not "make two pies of it".
  row('opens', 'make', 'make'),
  row('opens', 'give', 'give'),
  // Before a colon or "for" only.
  row('opens', 'quantity', 'quantity, quantities, menge, mengen'),
  row('opens', 'amount', 'amount, amounts'),
  // Before a colon, at the head of a line or a sentence: "Batch: 2 loaves".
  row('opens', 'labels', 'batch, output, number, ansatz, ertrag, ausbeute, anzahl, stuckzahl'),
  row('opens', 'labels of people', 'portionen, personen'),
  // Behind one who gets it: "you will get two loaves", „man erhält zwei Brote“.
  row('opens', 'gets', 'get, obtain, erhalt, erhalten, bekommt, bekommen'),
  // Of people, where no thing is named: "Serves 6."
  row('opens', 'serves', 'serves, serving, servings, feeds, portions'),
  row('opens', 'serve', 'serve'),
  // Said of one thing that goes in, too: "half an ounce of cloves is enough for two cakes".
  row('opens', 'sufficient', 'sufficient, enough'),
  row('opens', 'suffices', 'suffice, suffices'),
  row('opens', 'reicht', 'reicht'),
  // "Cuts into three dozen squares": of the whole, where "cut it into squares" is a step.
  row('opens', 'cuts', 'cuts, divides'),
  // At the head of a line only, but before people.
  row('opens', 'for', 'for, fur'),
  row('opens', 'fills', 'fill, fills, feed, dine, genug, ergeben, reichen'),
  // Between what opens a yield and its count: "sufficient to make", "for a company of".
  row(
    'opened',
    'leads',
    'for, to, make, makes, fill, into, :, —, be, sufficient, a, company, of, up, it, them, this, serve, serves, party, dinner, yield, yields, portions, servings, will, quantity, fur',
  ),
  row('opened', 'company', 'company, party, dinner'),
  // Before "make": it is no order.
  row('opened', 'will make', 'will, should, to, may, would, can, quantity, quantities, ingredients'),
  // Before "to make": advice. "It is more economical to make two at one time."
  row(
    'opened',
    'advised',
    'economical, cheaper, better, best, well, easy, easier, usual, possible, convenient, worth, wise, good',
  ),
  // Before "serving": what is in one, or costs it.
  row('opened', 'of one', 'per, pro, each, je'),
  row('opened', 'is', 'is, are, be, was, suffice, suffices'),
  row('opened', 'gets', 'you, we, one, will, should, may, can, man, sie, wir, ihr'),
  // "Batch size: 24 rolls"
  row('opened', 'label tails', 'size'),
  // What is "for two loaves": "This recipe is for", „Die Mengen sind für“. The receipt itself, what it is made up to, and the words before either.
  row(
    'opened',
    'receipts',
    'recipe, recipes, receipt, formula, quantity, quantities, amount, amounts, ingredients, rezept, menge, mengen, zutaten',
  ),
  row('opened', 'mixtures', 'dough, mixture, batter, teig, masse'),
  row(
    'opened',
    'pointing',
    'this, these, that, it, all, above, given, das, dies, dieser, diese, dieses, diesem, diesen, obige, obiger, obigen',
  ),
  row('opened', 'articles', 'the, a, an, der, die, den, ein, eine, here, hier'),
  row('opened', 'are', 'is, are, ist, sind'),
  // "Two loaves from this amount"
  row('opened', 'from', 'from, aus'),
  // What heads a list: "Zutaten für 12 Stück".
  row('opened', 'heads', 'ingredients, zutaten, dough, teig, batter, pastry'),
  // Whom it feeds.
  row(
    'person',
    'persons',
    'person, persons, people, servings, serving, portions, portion, guests, eaters, diners, company, children, hands',
  ),
  // What one makes or fills: a yield counts these, never pounds or eggs.
  row(
    'thing',
    'breads',
    'loaf, loaves, manchets, flatbread, flatbreads, pizza, pizzas, pitta, pittas, pita, pitas, naan, naans, cob, cobs, baguette, baguettes, bannock, bannocks, farls, breadsticks',
  ),
  row('thing', 'rolls', 'bun, buns, roll, rolls, wigs, wiggs, bap, baps, bagel, bagels, croissants'),
  row(
    'thing',
    'cakes',
    'cake, cakes, gingerbreads, scones, scone, muffins, muffin, crumpets, pancakes, fritters, oatcake, oatcakes, brownies, cupcakes',
  ),
  row(
    'thing',
    'biscuits',
    'biscuit, biscuits, cookies, cookie, rusks, wafers, macaroons, crackers, jumbles, drops, kisses, meringues',
  ),
  row(
    'thing',
    'pies',
    'pie, pies, tart, tarts, tartlets, tartlet, puffs, patties, cheesecakes, cheesecake, turnovers, pasties, pasty, crusts, quiche, quiches',
  ),
  row('thing', 'puddings', 'pudding, puddings, dumplings, dumpling, custards, custard, creams, entremets, entree'),
  row(
    'thing',
    'pieces',
    'pieces, slices, balls, squares, bars, fingers, wedges, triangles, layers, rounds, batches, dozen, quartern',
  ),
  row(
    'thing',
    'vessels',
    'dishes, mould, moulds, mold, molds, bottles, tins, pans, jars, jar, tin, pan, crocks, bowls, trays, tray, ramekins, ramekin',
  ),
  // Of these only where nothing else is counted: "three pints. Serves 6."
  row('measure', 'measures', 'cup, cups, pint, pints, quart, quarts, glasses, plate, plates, dish'),
  // Between a count and what it counts: how large, of what kind.
  row(
    'describing',
    'sizes',
    'large, small, good, sized, size, moderate, moderately, medium, middling, middle, common, ordinary, little, big, nice, very, fine, half, handsome, tolerable, plain, rather, great, rich, light, free, standing, standard, single, double',
  ),
  row('describing', 'shapes', 'round, flat, long, square, plaited, dariole, tin, inch, drop'),
  row('describing', 'weights', 'quartern, pound, two, gallon, peck, penny, twopenny, lb, .'),
  row(
    'describing',
    'kinds',
    'jelly, bread, tea, mince, apple, fruit, sponge, queen, pudding, pie, baking, cottage, household, white, brown, wheaten, french, milk, coburg, soda, cheese, plum, ginger, custard, breakfast',
  ),
  row(
    'describing',
    'german sizes',
    'kleine, kleinen, kleiner, kleines, grosse, grossen, grosser, grosses, große, großen, großer, großes, mittlere, mittleren, runde, runden, runder, rundes, lange, langen, flache, flachen, dunne, dunnen',
  ),
  row('describing', 'small words', 'of, the, these, such, or'),
  // Before a count, between its two numbers, and twelve of something.
  row('count', 'before', 'from, up, to, between, at, least'),
  row('count', 'range', 'or, to, -, —, and, bis, oder'),
  // "Between six and eight", where "two and three" is no range.
  row('count', 'of two', 'between, from'),
  row('count', 'dozen', 'dozen, doz, dutzend'),
  // "Two 800 g loaves", "one (9 x 5-inch) loaf", "10 x 350 g", "2 Brote à 1 kg".
  row('size', 'units', 'inch, inches, in, cm, mm, g, gram, grams, kg, lb, lbs, oz, ounce, ounces, pound, pounds, pfund, "'),
  row('size', 'weights', 'g, kg, gram, grams, oz, lb, lbs'),
  row('size', 'volumes', 'ml, millilitre, millilitres, milliliter, milliliters, cl, dl, l, litre, litres, liter, liters'),
  row('size', 'by', 'x, ×, by, -'),
  row('size', 'times', 'x, ×, a'),
  row('size', 'apiece', 'a, je, zu, of, each'),
  row('size', 'each', 'each, je'),
  // Behind a bare number: "eight, each the size of a fist".
  row('size', 'goes on', 'each, of, about'),
  // As German receipts have them, each with the English noun that stands for it.
  row('noun', 'persons', 'person, personen, portion, portionen, gaste, esser', 'persons'),
  row('noun', 'pieces', 'stuck, stucke, stucken, stk', 'pieces'),
  row('noun', 'loaf', 'brot, laib, zopf', 'loaf'),
  row('noun', 'loaves', 'brote, broten, laibe, laiben, stollen, zopfe, zopfen, brotlaibe, brotlaiben', 'loaves'),
  row('noun', 'rolls', 'brotchen, semmeln, wecken, brezeln', 'rolls'),
  row('noun', 'cake', 'kuchen, torte', 'cake'),
  row('noun', 'cakes', 'torten, lebkuchen', 'cakes'),
  row('noun', 'biscuits', 'platzchen, kekse', 'biscuits'),
  row('noun', 'pies', 'pasteten', 'pies'),
  row('noun', 'pie', 'pastete', 'pie'),
  row('noun', 'baguettes', 'baguettes', 'baguettes'),
  row('noun', 'pizzas', 'pizzen', 'pizzas'),
  row('noun', 'flatbreads', 'fladen', 'flatbreads'),
  row('noun', 'tin', 'springform, kastenform, backform, gugelhupfform, form', 'tin'),
  row('noun', 'tins', 'kastenformen, formen, formchen, tortchenformen, kastenformchen', 'tins'),
  row('noun', 'tray', 'blech, backblech', 'tray'),
  row('noun', 'trays', 'bleche, blechen, backbleche, backblechen', 'trays'),
  row('noun', 'jar', 'weckglas, einmachglas, sturzglas', 'jar'),
  row(
    'noun',
    'jars',
    'glaser, glasern, weckglaser, weckglasern, einmachglaser, einmachglasern, sturzglaser, sturzglasern',
    'jars',
  ),
  row('noun', 'billets', 'billet, billets, logs, scheit, scheite, scheiten, holzscheite', 'billets'),
  // Said before or behind a yield that is not exact; `of` is the phrase of `hedge-amounts` that tells how far off it may be.
  row(
    'about',
    'about',
    'about, around, approximately, approx, roughly, circa, ca, etwa, ungefahr, rund, some, say, perhaps',
    'about',
  ),
  row('about', 'nearly', 'nearly, almost, knapp', 'nearly'),
  // What a piece becomes that a dough is divided into, by the words that name its kind of dish, or by the kind's id.
  row('piece of a kind', 'loaves', 'white bread, rye bread, wholemeal bread, sourdough bread, soda bread', 'loaves'),
  row('piece of a kind', 'flatbreads', 'flat bread', 'flatbreads'),
  row('piece of a kind', 'pizzas', 'pizza, pizzas', 'pizzas'),
  row('piece of a kind', 'rolls', 'rolls', 'rolls'),
  row('piece of a kind', 'buns', 'buns', 'buns'),
  // How a method says what its dough or batter comes to, where the receipt states no yield: "divide into six loaves", "pour into two tins".
  // Before the count.
  row('method', 'into', 'into, in, zu'),
  row('method', 'between', 'between, among, auf'),
  // Only things that are baked as they are shaped; balls, layers and rounds may be anything.
  row(
    'method',
    'things',
    'loaf, loaves, rolls, buns, pies, tarts, tartlets, turnovers, farls, scones, biscuits, cookies, cakes, crumpets, muffins, cobs, baps, baguettes, bagels, bannocks, flatbreads, pizzas, pasties, manchets, wigs, wiggs, brote, broten, laib, laibe, laiben, brotlaibe, brotlaiben, brotchen, semmeln, wecken, zopfe, zopfen, stollen, fladen, brezeln',
  ),
  // What is whole as it is named: "raise the paste into six pies", where "divide the paste in two" is not.
  row('method', 'filled', 'pies, tarts, tartlets, turnovers, pasties'),
  row('method', 'ones', 'roll, bun, cob, bap, baguette, bagel, pizza, flatbread'),
  row(
    'method',
    'vessels',
    'tin, tins, pan, pans, moulds, molds, ramekins, patties, pattypans, hoops, darioles, jars, glaser, glasern, weckglaser, weckglasern, einmachglaser, einmachglasern, sturzglaser, sturzglasern, kastenformen, springformen, formen, formchen, tortchenformen, kastenformchen',
  ),
  // Between a count and its vessels: "two greased 9-inch cake pans".
  row(
    'method',
    'describing',
    'greased, ungreased, buttered, floured, oiled, lined, prepared, papered, well, lightly, generously, and, deep, shallow, fluted, straight, sided, individual, metal, glass, earthen, earthenware, non, stick, nonstick, paper, same, cake, layer, sandwich, loaf, pie, tart, bread, bun, baking, muffin, cupcake, popover, custard, pudding, springform, spring, form, bottomed, gefettete, gefetteten, gebutterte, gebutterten, ausgebutterte, ausgebutterten, vorbereitete, vorbereiteten',
  ),
  // A cup is one that is baked in where one of these stands before it.
  row('method', 'baked cups', 'muffin, cupcake, popover, custard, pudding, baking, greased, buttered, lined, prepared, paper'),
  // "A 12-hole tin": so many are made in it; of cups only where a tin for small cakes is named.
  row('method', 'holes', 'hole, holes, holed, well, wells, mulden, mulde'),
  row('method', 'small cakes', 'muffin, cupcake, bun, popover, tart, tartlet, patty'),
  // What is done with pieces that make one loaf together, or no loaf.
  row(
    'method',
    'together',
    'plait, plaits, plaited, braid, braided, strand, strands, rope, ropes, twist, strang, strange, flechten, zopf, topknot, knob, lid, larger, smaller, half, filling, layers, sheet, sheets',
  ),
  // "Pile it in a 25 cm circle": what is heaped into one shape is one.
  row('method', 'heaps', 'pile, heap, spoon, spread, dollop, mound, swirl, pipe, haufen, streichen, verteilen'),
  row('method', 'wholes', 'circle, disc, disk, round, oval, ring, wreath, nest, kreis'),
  row('method', 'pieces', 'pieces, parts, portions, balls, stucke, teile, teilstucke, portionen, teiglinge, stucken'),
  row('method', 'divide', 'divide, divided, portion, scale, split, teilen, aufteilen, unterteilen, portionieren'),
  row(
    'method',
    'shape',
    'shape, shaped, form, formed, mould, mold, moulded, make, made, fill, pour, turn, put, spoon, bake, cut, scrape, work, transfer, tip, ladle, distribute, press, pack, place, share',
  ),
  // With the count just behind: "shape two loaves".
  row('method', 'forms', 'form, shape, mould, mold'),
  // … where it heads its clause, and does not say what one may do: "it is cheaper to make two tarts".
  row('method', 'makes', 'make'),
  row('method', 'cut', 'cut, halve, halved, halves, schneiden, halbieren, abstechen'),
  // What is done to vessels before they are filled: "line six tartlet tins". German verbs stand behind.
  row(
    'method',
    'ready',
    'line, butter, grease, oil, flour, dust, prepare, fill, einfetten, fetten, ausfetten, buttern, ausbuttern, auslegen, mehlen',
  ),
  // German verbs, behind what they shape.
  row(
    'method',
    'behind',
    'teilen, aufteilen, unterteilen, portionieren, formen, verteilen, fullen, geben, wirken, backen, geteilt, geformt',
  ),
]

const named = (use: YieldWord['use']): ReadonlyMap<string, string> =>
  new Map(yieldWords.filter((one) => one.use === use).flatMap((one) => one.words.map((word) => [word, one.of ?? word] as const)))
const used = (...uses: ReadonlyArray<YieldWord['use']>): ReadonlySet<string> =>
  new Set(uses.flatMap((use) => wordsUsed(yieldWords, use)))
const only = (use: YieldWord['use'], ...ids: readonly string[]): ReadonlySet<string> =>
  new Set(ids.flatMap((id) => yieldWords.find((one) => one.id === `${use}: ${id}`)!.words))
const method = (id: string): ReadonlySet<string> => only('method', id)

/** The words of a stated yield, by what they are in it. */
export const statedWords = {
  opens: {
    any: used('opens'),
    /** Before a bare number: "Makes 24." */
    number: only('opens', 'makes', 'gives', 'quantity'),
    /** Before so many of a weight each: "Yield 10 x 350 g". */
    weighed: only('opens', 'makes', 'quantity'),
    made: only('opens', 'make'),
    /** In its base form, which may be an order. */
    verb: only('opens', 'make', 'give'),
    gives: only('opens', 'gives', 'give', 'gets'),
    quantity: only('opens', 'quantity', 'amount'),
    labels: only('opens', 'labels', 'labels of people'),
    peopleLabels: only('opens', 'labels of people'),
    gets: only('opens', 'gets'),
    serves: only('opens', 'serves'),
    serve: only('opens', 'serve'),
    suffices: only('opens', 'sufficient', 'suffices'),
    /** With "for" behind, of people where nothing is named. */
    sufficesFor: only('opens', 'sufficient', 'reicht'),
    cuts: only('opens', 'cuts'),
    for: only('opens', 'for'),
  },
  leads: only('opened', 'leads'),
  company: only('opened', 'company'),
  willMake: only('opened', 'will make'),
  advised: only('opened', 'advised'),
  ofOne: only('opened', 'of one'),
  is: only('opened', 'is'),
  heads: only('opened', 'heads'),
  gets: only('opened', 'gets'),
  labelTails: only('opened', 'label tails'),
  receipts: only('opened', 'receipts'),
  subjects: only('opened', 'receipts', 'mixtures'),
  mixtures: only('opened', 'mixtures'),
  pointing: only('opened', 'pointing'),
  articles: only('opened', 'articles'),
  are: only('opened', 'are'),
  from: only('opened', 'from'),
  persons: used('person'),
  things: used('thing', 'measure'),
  measures: used('measure'),
  describing: used('describing'),
  count: {
    before: only('count', 'before'),
    range: only('count', 'range'),
    ofTwo: only('count', 'of two'),
    dozen: only('count', 'dozen'),
  },
  size: {
    units: only('size', 'units', 'volumes'),
    weights: only('size', 'weights'),

    by: only('size', 'by'),
    times: only('size', 'times'),
    apiece: only('size', 'apiece'),
    each: only('size', 'each'),
    goesOn: only('size', 'goes on'),
  },
} as const
/** The English noun that a German word for what is made stands for. */
export const germanYields = named('noun')
/** Words for about so much, with their phrase of `hedge-amounts`. */
export const aboutYield = named('about')
/** What a piece becomes, by the words or the id of its kind of dish. */
export const kindPieces = named('piece of a kind')
/** The words of a method, by what they are in it. */
export const methodYields = {
  into: method('into'),
  between: method('between'),
  things: method('things'),
  filled: method('filled'),
  ones: method('ones'),
  vessels: method('vessels'),
  describing: method('describing'),
  bakedCups: method('baked cups'),
  holes: method('holes'),
  smallCakes: method('small cakes'),
  together: method('together'),
  pieces: method('pieces'),
  heaps: method('heaps'),
  wholes: method('wholes'),
  verbs: {
    divide: method('divide'),
    shape: method('shape'),
    forms: method('forms'),
    makes: method('makes'),
    cut: method('cut'),
    behind: method('behind'),
    ready: method('ready'),
  },
} as const
