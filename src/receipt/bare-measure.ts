import {looseMeasures, strictMeasures} from '../lexicon/grammar-words.js'
import {named} from './amount-and-name.js'
import {pastSize} from './between.js'
import type {Entries, Mode} from './entries.js'
import {ONE} from './exact.js'
import {readNoun} from './nouns.js'
import type {Quantity} from './quantities.js'
import {linesApart} from './section.js'
import {DESCRIBES, FILLING, itemHere, measureHere, textOf, type View} from './view.js'

/**
 * A measure without a number before it, which counts as one: “add pint milk, gill emptins”, “- teaspoon salt”; and a thing told by its size
 * alone, “9-inch pie shell”.
 */

/** Said of an amount that has no number. */
export const NO_NUMBER = 'no number is written: taken as one'

const LOOSE: ReadonlySet<string> = new Set(looseMeasures)
const STRICT: ReadonlySet<string> = new Set(strictMeasures)

/** Shorter words are measures in a list only: "pt", "tl". */
const LEAST_LETTERS = 4
/** How sure a measure without a number is one: below what is shown as doubtful in prose. */
const IN_PROSE = 0.55
const IN_LIST = 0.75

/** Before what goes in. */
const PUT_IN = /^(?:[,;:.—(]|and|&|with|add|adding|take|put|in|to|then|stir|beat|mix|plus|und|mit|dazu)$/

/** One of the measure at token `start`, or of the thing whose size ends before `next`. */
const oneOf = (view: View, start: number, next: number, of: {measure: string; dimension: Quantity['dimension']}): Quantity => ({
  low: ONE,
  high: ONE,
  next,
  hedges: [],
  article: of.measure !== 'count',
  fraction: false,
  figure: false,
  ...of,
  measureText: of.measure === 'count' ? '' : textOf(view, start, next),
  measureStart: start,
  notes: [NO_NUMBER],
})

/** Whether an entry with an amount ends right before the mark, or the "and", at `at`. */
function followsAmount({view, drafts}: Entries, at: number): boolean {
  const last = drafts.at(-1)
  if (last === undefined || last.low === null || view.tokens[last.start]!.block !== view.tokens[at]!.block) return false
  return (
    /^(?:[,;]|and|&|und)$/.test(view.words[at]!) && (last.next === at || (last.next === at - 1 && view.words[at - 1] === ','))
  )
}

/** Does a block, or a line of one, begin at `at`? */
const beginsLine = ({tokens, section}: View, at: number): boolean =>
  at === 0 || tokens[at - 1]!.block !== tokens[at]!.block || linesApart(section, tokens[at - 1]!, tokens[at]!)

/** May a measure without a number begin at `at`, behind what stands there? */
function mayBegin(entries: Entries, at: number, mode: Mode, strict: boolean): boolean {
  const {words, tokens} = entries.view
  const opens = at === 0 || tokens[at - 1]!.block !== tokens[at]!.block
  // "1. Pound almonds": a step.
  if (mode === 'list' && beginsLine(entries.view, at)) return !(strict && tokens[at]!.capital)
  if (strict) return !opens && followsAmount(entries, at - 1)
  return opens || PUT_IN.test(words[at - 1]!)
}

/** Does a name begin at `at`, with nothing but words of how it is got ready before it? Not so in "pint bottle of stout", "pint of the milk". */
function beginsName(view: View, at: number, to: number): boolean {
  let i = at
  while (i < to && i - at < 3 && itemHere(view, i) === null && view.bits[i]! & DESCRIBES) i++
  return i < to && itemHere(view, i) !== null
}

/** "pint milk", "gill emptins", "spoonful of rose water" at `at`: one of it. The token after it, else −1. */
export function bareMeasure(entries: Entries, at: number, to: number, mode: Mode): number {
  const {view} = entries
  const {words, tokens, bits} = view
  let from = at
  while (from < to && from - at < 2 && bits[from]! & FILLING && measureHere(view, from) === null) from++
  const found = from < to && !tokens[from]!.joined ? measureHere(view, from) : null
  if (found === null || found.next >= to || tokens[found.next]!.joined || words[found.next] === '|') return -1
  const {id, dimension} = found.row
  const word = words[found.next - 1]!
  const filled = word.endsWith('ful') || word.endsWith('full')
  const strict = STRICT.has(id) && !filled
  if (!(LOOSE.has(id) || strict || (STRICT.has(id) && filled))) return -1
  if ((mode !== 'list' && word.length < LEAST_LETTERS) || word.length < 2) return -1
  // "pints milk": a number was lost.
  if (word.endsWith('s') && !word.endsWith('ss')) return -1
  // "pound cake", "cup cake": a name of its own.
  const called = itemHere(view, from)
  if (called !== null && called.next > found.next) return -1
  if (!mayBegin(entries, at, mode, strict)) return -1
  const name = words[found.next] === 'of' ? found.next + 1 : found.next
  const noun = readNoun(view, name, to, false)
  if (noun?.row == null || !beginsName(view, name, to) || /^(?:made dish|bread)$/.test(noun.row.group)) return -1
  const quantity = oneOf(view, from, found.next, {measure: id, dimension})
  return unsure(entries, () => named(entries, at, quantity, noun, to, mode, words.slice(at, from)), mode)
}

/** Reads an entry without a number, and is less sure of it. */
function unsure(entries: Entries, read: () => number, mode: Mode): number {
  const {length} = entries.drafts
  const next = read()
  for (const draft of entries.drafts.slice(length))
    draft.confidence = Math.min(draft.confidence, mode === 'list' ? IN_LIST : IN_PROSE)
  return next
}

/** “9-inch pie shell”, “unbaked 23 cm pastry case” at the head of a line, its figure at `at`: one of that size. The token after it, else −1. */
export function sizedOne(entries: Entries, at: number, to: number): number {
  const {view} = entries
  const {bits} = view
  let start = at
  while (!beginsLine(view, start) && at - start < 3 && bits[start - 1]! & (DESCRIBES | FILLING)) start--
  if (!beginsLine(view, start)) return -1
  const next = pastSize(view, at, to)
  const noun = next > 0 && next < to ? readNoun(view, next, to, true, true) : null
  if (noun === null || noun.start !== next) return -1
  const quantity = oneOf(view, at, next, {measure: 'count', dimension: 'count'})
  return unsure(entries, () => named(entries, start, quantity, noun, to, 'list', []), 'list')
}
