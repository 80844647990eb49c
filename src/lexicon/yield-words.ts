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
  stk: 'pieces',
  brot: 'loaf',
  brote: 'loaves',
  laib: 'loaf',
  laibe: 'loaves',
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
