import {words} from './row.js'

/**
 * Words for how much a receipt makes, as German receipts have them, folded; each with the noun that stands for it. Common practice, no
 * source. `src/receipt/yields.ts` reads them beside the English ones.
 */
export const germanYields: Readonly<Record<string, string>> = {
  person: 'persons',
  personen: 'persons',
  portion: 'persons',
  portionen: 'persons',
  gaste: 'persons',
  esser: 'persons',
  stuck: 'pieces',
  stucke: 'pieces',
  stucken: 'pieces',
  stk: 'pieces',
  brot: 'loaf',
  brote: 'loaves',
  broten: 'loaves',
  laib: 'loaf',
  laibe: 'loaves',
  laiben: 'loaves',
  brotchen: 'rolls',
  semmeln: 'rolls',
  wecken: 'rolls',
  kuchen: 'cake',
  torte: 'cake',
  torten: 'cakes',
  platzchen: 'biscuits',
  kekse: 'biscuits',
  lebkuchen: 'cakes',
  pasteten: 'pies',
  pastete: 'pie',
  stollen: 'loaves',
  zopf: 'loaf',
  zopfe: 'loaves',
  zopfen: 'loaves',
  baguettes: 'baguettes',
  brezeln: 'rolls',
  brotlaibe: 'loaves',
  brotlaiben: 'loaves',
  pizzen: 'pizzas',
  fladen: 'flatbreads',
  springform: 'tin',
  kastenform: 'tin',
  kastenformen: 'tins',
  backform: 'tin',
  gugelhupfform: 'tin',
  form: 'tin',
  formen: 'tins',
  blech: 'tray',
  backblech: 'tray',
  bleche: 'trays',
}

/** Said before or behind a yield that is not exact; the value is the phrase of `hedge-amounts` that tells how far off it may be. */
export const aboutYield: ReadonlyMap<string, string> = new Map([
  ...words('about, around, approximately, approx, roughly, circa, ca, etwa, ungefahr, rund, some, say, perhaps').map(
    (word) => [word, 'about'] as const,
  ),
  ...words('nearly, almost, knapp').map((word) => [word, 'nearly'] as const),
])

const set = (list: string): ReadonlySet<string> => new Set(words(list))

/** What a piece becomes that a dough is divided into, by the words that name its kind of dish, or by the kind's id. Common practice, no source. */
export const kindPieces: Readonly<Record<string, string>> = {
  'white bread': 'loaves',
  'rye bread': 'loaves',
  'wholemeal bread': 'loaves',
  'sourdough bread': 'loaves',
  'soda bread': 'loaves',
  'flat bread': 'flatbreads',
  pizza: 'pizzas',
  pizzas: 'pizzas',
  rolls: 'rolls',
  buns: 'buns',
}

/**
 * How a method says what its dough or batter comes to, where the receipt states no yield: "divide into six loaves", "pour into two tins".
 * Only things that are baked as they are shaped; balls, layers and rounds may be anything. Common practice, no source.
 */
export const methodYields = {
  /** Before the count. */
  into: set('into, in, zu'),
  between: set('between, among, auf'),
  things: set(
    'loaf, loaves, rolls, buns, pies, tarts, tartlets, turnovers, farls, scones, biscuits, cookies, cakes, crumpets, muffins, cobs, baps, baguettes, bagels, bannocks, flatbreads, pizzas, pasties, manchets, wigs, wiggs, brote, broten, laib, laibe, laiben, brotlaibe, brotlaiben, brotchen, semmeln, wecken, zopfe, zopfen, stollen, fladen, brezeln',
  ),
  /** What is whole as it is named: "raise the paste into six pies", where "divide the paste in two" is not. */
  filled: set('pies, tarts, tartlets, turnovers, pasties'),
  ones: set('roll, bun, cob, bap, baguette, bagel, pizza, flatbread'),
  vessels: set('tin, tins, pan, pans, moulds, molds, ramekins, kastenformen, springformen, formen'),
  /** What is done with pieces that make one loaf together, or no loaf. */
  together: set(
    'plait, plaits, plaited, braid, braided, strand, strands, rope, ropes, twist, strang, strange, flechten, zopf, topknot, knob, lid, larger, smaller, half, filling, layers, sheet, sheets',
  ),
  pieces: set('pieces, parts, portions, balls, stucke, teile, teilstucke, portionen, teiglinge, stucken'),
  verbs: {
    divide: set('divide, divided, portion, scale, split, teilen, aufteilen, unterteilen, portionieren'),
    shape: set('shape, shaped, form, formed, mould, mold, moulded, make, made, pour, turn, put, spoon, bake, cut, scrape, work'),
    /** With the count just behind: "shape two loaves". */
    forms: set('form, shape, mould, mold'),
    cut: set('cut, halve, halved, halves, schneiden, halbieren, abstechen'),
    behind: set(
      'teilen, aufteilen, unterteilen, portionieren, formen, verteilen, fullen, geben, wirken, backen, geteilt, geformt',
    ),
  },
} as const
