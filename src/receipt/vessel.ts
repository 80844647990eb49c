import {foldAll} from '../lexicon/index.js'
import {wordsUsed} from '../lexicon/row.js'
import type {Range, VesselRow, VesselWord} from '../lexicon/schema.js'
import {vesselWords} from '../lexicon/vessel-words.js'
import {vessels} from '../lexicon/vessels.js'
import {parseLength} from '../measure/quantity.js'
import {phraseTree} from './phrases.js'
import {plainSection} from './section.js'
import {asLargeAs} from './vessel-capacity.js'
import {type HeldVessel, heldAt, heldMillilitres, holdingAt, type MeasuredBy} from './vessel-volumes.js'

/** The shapes vessels come in. */
export type VesselShape = 'round' | 'square' | 'oblong' | 'loaf' | 'pie plate' | 'crock' | 'free-standing' | 'sheet'

/** A vessel as stated: inside measures at the top, metres. A circle has `across`; the others `length` and `width`. */
export interface VesselSize {
  readonly shape: VesselShape
  readonly across?: number
  readonly length?: number
  readonly width?: number
  readonly height: number
}

/** How deep each shape is where neither its depth nor a kind that has one is said, metres. Common practice, no source. */
const depths: Readonly<Record<VesselShape, number>> = {
  round: 0.06,
  square: 0.05,
  oblong: 0.05,
  loaf: 0.075,
  'pie plate': 0.038,
  crock: 0.18,
  'free-standing': 0.1,
  sheet: 0.05,
}
/** Longer loaf tins are no wider than the usual one, metres: 30 cm by 11. Common practice, no source. */
const widestLoaf = 0.127
/** Height of a free-standing loaf by its width. Common practice, no source: a well-raised hearth loaf is 0.35–0.45 as high as wide. */
const loafRise = 0.4

export type VesselResult =
  /**
   * `unknown`: a word that names no vessel known here, where only the sizes told the shape. `depthFrom`: source id of a depth that is not said,
   * where the sizes are. `anyDepth`: no size says how deep it is, and its name is of tins of any depth ("8-inch round tin").
   */
  | {
      readonly ok: true
      readonly value: VesselSize
      readonly name: string
      readonly unknown?: string
      readonly depthFrom?: string
      readonly anyDepth?: true
      /** What it holds to the brim, ml, where that is said and its sizes are reckoned from it. */
      readonly holds?: Range
      /** Id of the measure in which that is said. */
      readonly measure?: string
    }
  | {readonly ok: false; readonly reason: string; readonly suggest: string}

const spaced = (text: string): string => ` ${foldAll(text).join(' ')} `
const spelled = vessels
  .flatMap((row) => row.spellings.map((spelling) => ({row, words: spaced(spelling)})))
  .sort((p, q) => q.words.length - p.words.length)

/** The row of `lexicon/vessels` with the longest name in a text. */
const rowIn = (text: string): VesselRow | null => longestIn(text)?.row ?? null
const longestIn = (text: string): (typeof spelled)[number] | undefined => {
  const words = spaced(text)
  return spelled.find((one) => words.includes(one.words))
}
/** The shapes' own names; they say more than a vessel's name ("square cake tin"). */
const shapeNames = vesselWords.flatMap(({shape, words}) => (shape ? words.map((name) => ({shape, words: spaced(name)})) : []))
const nameIn = (text: string): VesselShape | null => {
  const words = spaced(text)
  return shapeNames.find((one) => words.includes(one.words))?.shape ?? null
}
/** A row's shape and its own sizes, in the order `sized` reads them. */
const sizesOf = (row: VesselRow): number[] =>
  [...(row.diameter !== undefined ? [row.diameter] : [row.length, row.width]), row.height].filter((size) => size !== undefined)

const example = 'write “round 9 in x 2 in”, “loaf 9 x 5 x 3 in” or “free-standing loaf 24 cm”'
const dimensions =
  /(\d{1,4}[ -]\d{1,2}\/\d{1,2}|\d{1,4}\/\d{1,2}|\d{1,4}(?:\.\d{1,3}|,\d{1,2}(?!\d))?)\s*-?\s*(inch(?:es)?|in\b\.?|["″”]|cm|mm|centimetres?|centimeters?|ft|feet|foot|m\b)?/g

/**
 * Read a vessel as front matter states it: "round 9 in x 2 in", "9-inch square tin", "loaf 9 x 5 x 3 in", "free-standing loaf 24 cm".
 * A figure without a unit takes the unit of the next figure that has one. Inside measures. One told by what it holds ("crock 4 quarts") is
 * as deep for its width as usual.
 *
 * @param by year and place of a measure of volume
 */
export function readVessel(text: string, by: MeasuredBy = UNKNOWN): VesselResult {
  const plain = text
    .toLowerCase()
    .replace(/[½¼¾⅓⅔⅛]/g, (c) => ` ${{'½': '1/2', '¼': '1/4', '¾': '3/4', '⅓': '1/3', '⅔': '2/3', '⅛': '1/8'}[c] ?? c}`)
    .replace(/×/g, ' x ')
    .replace(/\bby\b/g, ' x ')
    .replace(/\s+/g, ' ')
    .trim()
  if (plain.length > 80) return {ok: false, reason: 'this is too long to be a vessel', suggest: example}
  // "2 lb loaf tin": what a tin is called by is no size of it.
  const measured = plain.replace(
    /\b(?:\d+(?:[./]\d+)?|\d+ \d\/\d)[ -]?(?:lbs?|pounds?|oz|ounces?|kg|g|quarts?|qt|pints?|litres?|l|gallons?|cups?)\b/g,
    ' ',
  )
  const found = [...measured.matchAll(dimensions)].map((m) => ({number: m[1] ?? '', unit: m[2] ?? ''}))
  const row = rowIn(plain)
  const rowShape = row === null || row.shape === 'none' ? null : row.shape
  const named = nameIn(plain)
  const held = found.length === 0 ? heldIn(plain) : null
  if (held !== null) {
    const brim = heldMillilitres(held, by)
    const size = brim === null ? null : sizeHolding(held.row, named, brim.millilitres.likely)
    if (size === null) return {ok: false, reason: `“${text}” holds what no vessel does`, suggest: example}
    return {ok: true, value: size, name: text.trim(), depthFrom: held.row.source, holds: brim!.millilitres, measure: held.measure}
  }
  if (found.length === 0 && row !== null && rowShape !== null && (named === null || named === rowShape)) {
    const own = sized(rowShape, sizesOf(row))
    if (own !== null) return {ok: true, value: own, name: text.trim()}
  }
  const shape = named ?? rowShape
  if (shape === null && found.length === 0) return {ok: false, reason: `“${text}” is no vessel known here`, suggest: example}
  const odd = oddUnit(measured)
  if (odd !== null) return {ok: false, reason: `“${odd}” is no unit of length`, suggest: example}
  const sizes: number[] = []
  for (let i = 0; i < found.length; i++) {
    const unit = found.slice(i).find((f) => f.unit !== '')?.unit ?? found.findLast((f) => f.unit !== '')?.unit
    if (unit === undefined) return {ok: false, reason: `the sizes of “${text}” have no unit`, suggest: example}
    const metres = parseLength(`${found[i]!.number.replace('-', ' ')} ${unit.replace('.', '')}`)
    if (!metres.ok) return {ok: false, reason: metres.reason, suggest: example}
    if (metres.value < SHALLOWEST || metres.value > 2) {
      return {ok: false, reason: `${found[i]!.number} ${unit} is no size for a vessel`, suggest: example}
    }
    sizes.push(metres.value)
  }
  const dish = isPlainDish(plain)
  const box = dish ? 'oblong' : boxOf(sizes)
  const kind = boxed(sizes, named, row, dish || isPlainTin(plain)) ? box : (shape ?? 'round')
  const deep = row?.shape === kind ? depthOf(row, sizes) : undefined
  const value = sized(kind, sizes, deep)
  if (value === null) return {ok: false, reason: `“${text}” has ${sizes.length} sizes, too many for ${kind}`, suggest: example}
  const unknown = shape === null ? oddWord(measured) : null
  const depthFrom = deep === undefined ? 'common-practice' : row!.source
  const any = isAnyDepth(kind, sizes) && (row === null || ANY_SHAPE.has(row.id) || SQUARE.has(row.id))
  return {
    ok: true,
    value,
    name: text.trim(),
    depthFrom,
    ...(unknown === null ? {} : {unknown}),
    ...(any ? {anyDepth: true as const} : {}),
  }
}

/** No side of a vessel is less, m: a Swiss roll tin is 3/4 in deep. Common practice, no source. */
const SHALLOWEST = 0.01

const UNKNOWN: MeasuredBy = {year: null, place: null}

/** "Crock 4 quarts", "4-quart crock": the vessel and what it holds; null where the text says nothing of that. */
function heldIn(text: string): HeldVessel | null {
  const {tokens} = plainSection(text)
  for (let at = 0; at < tokens.length; at++) {
    const held = heldAt(tokens, at) ?? holdingAt(tokens, at)
    if (held !== null) return held
  }
  return null
}

/** No vessel to bake in holds less, or more, ml. Common practice, no source. */
const BRIM = {least: 20, most: 60_000} as const

/**
 * The size of a vessel that holds so much to the brim, with its sides in the proportion of its kind's; null where none holds so much, or
 * no size of it is known.
 *
 * @param shape another than that of its row, where its name says one ("square tin")
 */
export function sizeHolding(row: VesselRow, shape: VesselShape | null, millilitres: number): VesselSize | null {
  if (row.shape === 'none' || !(millilitres >= BRIM.least && millilitres <= BRIM.most)) return null
  const other = shape !== null && shape !== row.shape
  const like = sized(shape ?? row.shape, other ? [] : sizesOf(row))
  return like === null ? null : asLargeAs(like, millilitres, other ? undefined : row.millilitres)
}

/** The shape a vessel's own words name, beside its row's: "square tin". */
export const shapeNamed = (text: string): VesselShape | null => nameIn(text.toLowerCase())

/** Square tins are sold shallow for what is cut into pieces, and deep for cakes. */
const SQUARE: ReadonlySet<string> = new Set(['square-pan', 'small-square-pan'])

/** Whether these are the sizes of a round or a square tin without its depth. */
const isAnyDepth = (shape: VesselShape, [across, second, ...more]: readonly number[]): boolean =>
  across !== undefined &&
  more.length === 0 &&
  ((shape === 'round' && second === undefined) || (shape === 'square' && (second === undefined || second === across)))

/** Names of many shapes: "round" is only the likelier. */
const ANY_SHAPE: ReadonlySet<string> = new Set(['pudding-dish', 'earthen-pan', 'tin-kettle', 'cake-tin', 'skillet'])

/** Tins of no shape of their own; deep dishes and kettles are named otherwise. */
const PLAIN_TINS: ReadonlySet<string> = new Set(wordsUsed(vesselWords, 'plain tin').map(spaced))
const PLAIN_DISHES: ReadonlySet<string> = new Set(wordsUsed(vesselWords, 'plain dish').map(spaced))
const isPlainTin = (text: string): boolean => PLAIN_TINS.has(longestIn(text)?.words ?? '')
const isPlainDish = (text: string): boolean => PLAIN_DISHES.has(longestIn(text)?.words ?? '')
/** No round tin or plain dish of the usual widths is deeper, metres: what is more is a breadth, as in "30 x 12 cm". Common practice, no source. */
const DEEPEST_TIN = 0.09

/** Where no word tells the shape, three sizes are a box's, and of two the second is a width where no dish is so deep: "9 x 13 in". */
function boxed(sizes: readonly number[], named: VesselShape | null, row: VesselRow | null, plain: boolean): boolean {
  if (named !== null || (row !== null && row.shape !== 'round' && row.shape !== 'none')) return false
  if (sizes.length === 3) return true
  const [first = 0, second = 0] = sizes
  if (sizes.length === 2 && second > DEEPEST_TIN && (row === null || plain || SQUARE.has(row.id))) return true
  return (
    sizes.length === 2 && second >= 0.12 && second > 0.5 * first && (row === null || ANY_SHAPE.has(row.id) || SQUARE.has(row.id))
  )
}

/** A tin no wider than a loaf tin and no more than half as wide as long is one, whatever it is called: "tin 30 x 11 cm". Common practice, no source. */
const boxOf = ([first = 0, second = 0]: readonly number[]): VesselShape =>
  Math.min(first, second) <= widestLoaf && 2 * Math.min(first, second) <= Math.max(first, second) ? 'loaf' : 'oblong'

/** The words of one use in a vessel's size. */
export const vesselWordsOf = (use: VesselWord['use']): ReadonlySet<string> => new Set(wordsUsed(vesselWords, use))

/** What is shaped or cut out by hand, which no tin holds: “roll it out, cut it into cakes”. */
export const BY_HAND = phraseTree([...vesselWordsOf('by hand')], (phrase) => [phrase])

/** Words of measures, which name no vessel. */
const measureWords: ReadonlySet<string> = new Set(
  (['unit', 'long unit', 'times', 'way', 'depth', 'small'] as const).flatMap((use) => [...vesselWordsOf(use)]),
)
const vesselNouns: ReadonlySet<string> = new Set([...vesselWordsOf('noun'), ...vesselWordsOf('number of')])

/** Whether a word is one that a vessel's name or its sizes are written with. */
export function isVesselWord(word: string): boolean {
  const seen = known.get(word)
  if (seen !== undefined) return seen
  const is = measureWords.has(word) || vesselNouns.has(word) || nameIn(word) !== null || rowIn(word) !== null
  if (known.size < MOST_KNOWN) known.set(word, is)
  return is
}
const known = new Map<string, boolean>()
/** So that no text can make the table grow without end. */
const MOST_KNOWN = 20_000

/** The first word of a vessel's sizes that is no measure. */
const oddWord = (text: string): string | null => (text.match(/[a-z]+/g) ?? []).find((word) => !measureWords.has(word)) ?? null

/** What stands behind a size as its unit would, and is none: "26 zonks x 7 cm", "26 cm x 7 zonks". What a vessel is called may stand there. */
function oddUnit(text: string): string | null {
  const behind = Array.from(text.matchAll(/\d[ -]?([a-z]+)/g), ([, word]) => word!)
  return behind.find((word) => !isVesselWord(word)) ?? null
}

const usual: Readonly<Record<VesselShape, readonly number[]>> = {
  round: [0.229],
  square: [0.229],
  oblong: [0.33, 0.229],
  loaf: [0.229, 0.127],
  'pie plate': [0.229],
  crock: [0.229],
  'free-standing': [0.24],
  sheet: [0.406, 0.305],
}

/** How deep a vessel of a kind is by its width, metres: as its kind's usual one, and one that is narrower by as much shallower. */
function depthOf({diameter, length, height}: VesselRow, [across = 0]: readonly number[]): number | undefined {
  const usual = diameter ?? length
  if (height === undefined || usual === undefined) return undefined
  return Math.round(1000 * height * Math.min(1, across / usual)) / 1000
}

/** Give the sizes their meaning: a round one is across × deep, a box long × wide × deep, a square one may name its side once. */
function sized(shape: VesselShape, given: readonly number[], deep?: number): VesselSize | null {
  const sizes = given.length === 0 ? usual[shape] : given
  const [p = 0, q, r] = sizes
  const depth = deep ?? depths[shape]
  switch (shape) {
    case 'round':
    case 'pie plate':
    case 'crock':
      return sizes.length > 2 ? null : {shape, across: p, height: q ?? depth}
    case 'free-standing':
      return sizes.length > 2 ? null : {shape, across: p, height: q !== undefined && q < p ? q : p * loafRise}
    case 'square':
      if (sizes.length > 3) return null
      return sizes.length === 3
        ? {shape, length: p, width: q!, height: r!}
        : {shape, length: p, width: p, height: q === undefined || q === p ? depth : q}
    case 'oblong':
    case 'loaf':
    case 'sheet':
      if (sizes.length > 3) return null
      return {shape, length: p, width: q ?? (shape === 'loaf' ? Math.min(widestLoaf, p * 0.55) : p * 0.7), height: r ?? depth}
  }
}
