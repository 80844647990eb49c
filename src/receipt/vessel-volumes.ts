import {cardinals} from '../lexicon/grammar-words.js'
import {itemAt, measureAt} from '../lexicon/index.js'
import {wordsUsed} from '../lexicon/row.js'
import type {Range, VesselRow} from '../lexicon/schema.js'
import {vesselWords} from '../lexicon/vessel-words.js'
import {vessels} from '../lexicon/vessels.js'
import {convert} from '../measure/convert.js'
import {type FoundPhrase, phraseAt, phraseTree} from './phrases.js'
import type {Token} from './section.js'
import type {TokenSpan} from './stays.js'

/** Vessels told by how much they hold: "a 3-quart casserole", "six 150 ml ramekins", "a crock holding 4 quarts". */

/** A vessel, how much it holds, and all the words that say so. */
export interface HeldVessel extends TokenSpan {
  readonly row: VesselRow
  /** The tokens of its name, in [from, to). */
  readonly name: TokenSpan
  readonly amount: {readonly low: number; readonly high: number}
  /** Id of a row of `lexicon/measures`. */
  readonly measure: string
}

/** Year and place by which a measure's size is chosen; null where they are not known, and the range covers both. */
export interface MeasuredBy {
  readonly year: number | null
  readonly place: string | null
  readonly told?: string | null
}

const VESSELS = phraseTree(vessels, (row: VesselRow) => row.spellings)
const MEASURES: ReadonlySet<string> = new Set(wordsUsed(vesselWords, 'volume'))
const ELSEWHERE: ReadonlySet<string> = new Set(wordsUsed(vesselWords, 'elsewhere'))
const ARTICLES: ReadonlySet<string> = new Set(['a', 'an'])
const TO: ReadonlySet<string> = new Set(['to', 'or', '-', '—'])
const HOLDING: ReadonlySet<string> = new Set(wordsUsed(vesselWords, 'holding'))
/** Words that describe a vessel between what it holds and its name: "3-quart shallow buttered baking dish". */
const MOST_DESCRIBING = 4
/** Words between a vessel and what it holds: "that holds about". */
const MOST_HOLDING = 4
/** Tokens of a bracket with another measure of it: "(3½ pint)". */
const LONGEST_BRACKET = 6
/** What is no wider is sold by the fluid ounce, and its "6-oz" is no weight, m. Common practice, no source. */
const SMALL = 0.11

/** A number of measures at `at`: "3", "two", "a", "half", "2 to 3". */
function numberAt(
  tokens: readonly Token[],
  at: number,
): {readonly low: number; readonly high: number; readonly to: number} | null {
  const one = plainNumber(tokens[at])
  if (one === null) return null
  let next = tokens[at + 1]?.word === '-' && TO.has(tokens[at + 2]?.word ?? '') ? at + 2 : at + 1
  if (TO.has(tokens[next]?.word ?? '')) {
    const other = plainNumber(tokens[next + 1])
    if (other !== null && other > one) return {low: one, high: other, to: next + 2}
  }
  next = tokens[at + 1]?.word === '-' ? at + 2 : at + 1
  return {low: one, high: one, to: next}
}

function plainNumber(token: Token | undefined): number | null {
  if (token === undefined) return null
  if (token.kind === 'number') return token.den === 0 ? null : token.num / token.den
  if (token.kind !== 'word') return null
  return token.word === 'half' ? 0.5 : ARTICLES.has(token.word) ? 1 : (cardinals[token.word] ?? null)
}

/** A volume at `at`, as "3 quarts" or "150 ml"; an ounce is one too, where what it is of is small. */
export function volumeAt(
  tokens: readonly Token[],
  at: number,
): {readonly amount: HeldVessel['amount']; readonly measure: string; readonly to: number} | null {
  const number = numberAt(tokens, at)
  const first = tokens[number?.to ?? -1]
  if (number === null || first === undefined || first.kind !== 'word' || first.block !== tokens[at]!.block) return null
  const stems: string[] = []
  for (let i = number.to; i < number.to + 3 && tokens[i]?.block === first.block && tokens[i]!.kind === 'word'; i++)
    stems.push(tokens[i]!.stem)
  const found = measureAt(stems)
  if (found === null || !(MEASURES.has(found.row.id) || found.row.id === 'ounce') || !(number.low > 0)) return null
  const to = number.to + found.length
  const {low, high} = number
  // "2 qt. dish"
  const stopped = tokens[to]?.word === '.' && tokens[to - 1]!.word.length <= 3
  return {amount: {low, high}, measure: found.row.id, to: stopped ? to + 1 : to}
}

/** Whether a food stands at `at`, or behind "of" there: what is measured, and no vessel. */
function isOfFood(tokens: readonly Token[], at: number, block: number): boolean {
  const from = tokens[at]?.word === 'of' ? at + 1 : at
  const stems: string[] = []
  for (let i = from; i < from + 4 && tokens[i]?.block === block && tokens[i]!.kind === 'word'; i++) stems.push(tokens[i]!.stem)
  return (from > at && stems.length > 0) || itemAt(stems) !== null
}

/** The vessel's name that begins at `at`; null where none does, or it is one that holds nothing. */
function nameAt(tokens: readonly Token[], at: number): FoundPhrase<VesselRow> | null {
  const found = phraseAt(VESSELS, tokens, at)
  return found === null || /^(?:none|sheet|free-standing)$/.test(found.row.shape) ? null : found
}

/** "An ounce" of a small vessel is a fluid ounce; null where the measure is no vessel's. */
function measureOf(measure: string, {diameter}: VesselRow): string | null {
  if (measure !== 'ounce') return measure
  return diameter !== undefined && diameter <= SMALL ? 'fluid ounce' : null
}

/** "A 3-quart casserole", "150 ml ramekins": the vessel whose volume stands at `at`; null where none does. */
export function heldAt(tokens: readonly Token[], at: number): HeldVessel | null {
  const volume = volumeAt(tokens, at)
  if (volume === null) return null
  const {block} = tokens[at]!
  let i = volume.to
  if (tokens[i]?.word === '(') {
    const end = tokens.slice(i, i + LONGEST_BRACKET).findIndex(({word}) => word === ')')
    if (end < 0) return null
    i += end + 1
  }
  if (tokens[i]?.word === '-') i++
  for (let n = 0; n <= MOST_DESCRIBING; n++, i++) {
    const token = tokens[i]
    // "8 (1-cup) ramekins"
    if (n === 0 && token?.word === ')' && tokens[at - 1]?.word === '(') continue
    if (token === undefined || token.block !== block || token.kind !== 'word') return null
    const name = nameAt(tokens, i)
    if (name !== null) {
      const measure = measureOf(volume.measure, name.row)
      if (measure === null || isOfFood(tokens, name.to, block)) return null
      return {row: name.row, from: at, to: name.to, name: {from: i, to: name.to}, amount: volume.amount, measure}
    }
    if (ELSEWHERE.has(token.word) || phraseAt(VESSELS, tokens, i) !== null || isOfFood(tokens, i, block)) return null
  }
  return null
}

/** "A casserole (3 quart)", "a crock that holds 4 quarts": the vessel named at `at`, with its volume behind it; null where none is. */
export function holdingAt(tokens: readonly Token[], at: number): HeldVessel | null {
  const name = nameAt(tokens, at)
  if (name === null) return null
  const {block} = tokens[at]!
  let i = name.to
  while (i < name.to + MOST_HOLDING && tokens[i]?.block === block && HOLDING.has(tokens[i]!.word)) i++
  const volume = tokens[i]?.block === block ? volumeAt(tokens, i) : null
  const measure = volume === null ? null : measureOf(volume.measure, name.row)
  if (volume === null || measure === null || isOfFood(tokens, volume.to, block)) return null
  const to = tokens[volume.to]?.word === ')' ? volume.to + 1 : volume.to
  return {row: name.row, from: at, to, name: {from: at, to: name.to}, amount: volume.amount, measure}
}

/**
 * What a vessel holds to the brim by the measure its text gives.
 *
 * @returns millilitres, and the sources of the measure; null where its size is not known
 */
export function heldMillilitres(
  {amount, measure}: Pick<HeldVessel, 'amount' | 'measure'>,
  {year, place, told = null}: MeasuredBy,
): {readonly millilitres: Range; readonly sources: readonly string[]} | null {
  const {millilitres, sources} = convert({amount, exact: null, measure, item: 'water', year, place, hedges: [], told})
  return millilitres === null ? null : {millilitres, sources}
}

/** A volume as it is told: “2.84 litres”, “2.84 litres (2.84–3.41)”, “150 ml”. */
export function volumeText({low, likely, high}: Range): string {
  const small = likely < 1000
  const text = (ml: number): string => (small ? String(Number(ml.toPrecision(2))) : String(Number((ml / 1000).toPrecision(3))))
  const range = text(low) === text(high) ? '' : ` (${text(low)}–${text(high)})`
  return `${text(likely)} ${small ? 'ml' : 'litres'}${range}`
}
