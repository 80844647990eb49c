import {words} from './row.js'
import type {YieldWord} from './schema.js'

const row = (use: YieldWord['use'], id: string, list: string, of?: string): YieldWord => ({
  id: `${use}: ${id}`,
  use,
  words: words(list),
  ...(of === undefined ? {} : {of}),
  source: 'common-practice',
})

/** Words for how much a receipt makes, folded. `src/receipt/yields.ts` and `yield-facts.ts` read them. */
export const yieldWords: readonly YieldWord[] = [
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
    'tin, tins, pan, pans, moulds, molds, ramekins, patties, pattypans, hoops, darioles, kastenformen, springformen, formen, formchen, tortchenformen, kastenformchen',
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
    'shape, shaped, form, formed, mould, mold, moulded, make, made, pour, turn, put, spoon, bake, cut, scrape, work, transfer, tip, ladle, distribute, press, pack, place, share',
  ),
  // With the count just behind: "shape two loaves".
  row('method', 'forms', 'form, shape, mould, mold'),
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

const of = (use: YieldWord['use']): ReadonlyMap<string, string> =>
  new Map(yieldWords.filter((one) => one.use === use).flatMap((one) => one.words.map((word) => [word, one.of ?? word] as const)))
const method = (id: string): ReadonlySet<string> => new Set(yieldWords.find((one) => one.id === `method: ${id}`)!.words)

/** The English noun that a German word for what is made stands for. */
export const germanYields = of('noun')
/** Words for about so much, with their phrase of `hedge-amounts`. */
export const aboutYield = of('about')
/** What a piece becomes, by the words or the id of its kind of dish. */
export const kindPieces = of('piece of a kind')
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
    cut: method('cut'),
    behind: method('behind'),
    ready: method('ready'),
  },
} as const
