import {doughWeights} from '../lexicon/dough-weights.js'
import {lookUpItem} from '../lexicon/index.js'
import type {BakersShare, Entries, Mode} from './entries.js'
import {Exact} from './exact.js'
import {readNoun} from './nouns.js'
import {linesApart} from './section.js'
import {Phrases, textOf, type View} from './view.js'

/**
 * Baker's percentages as they are written: "Flour 100 %", "70 % water", "72–75 %", a column headed "Baker's %". What they weigh is reckoned in
 * `formula.ts`.
 */

const signs = new Phrases(doughWeights.percent)
const notOfFlour = new Phrases(doughWeights.notOfFlour)
const hydration = new Phrases(doughWeights.hydration)
const ofFlour = new Phrases(doughWeights.ofFlour)
const columns = new Phrases(doughWeights.column)
const HUNDREDTH = Exact.of(1, 100)
/** No share is larger: it is no percentage of the flour. Common practice, no source. */
const MOST = 500

/** Stands between the two figures of a range. */
const RANGE = /^(?:-|—|to|bis)$/

const plainNumber = ({tokens}: View, at: number, to: number): Exact | null => {
  const token = at < to ? tokens[at]! : undefined
  return token?.kind === 'number' && token.den > 0 ? Exact.of(token.num, token.den) : null
}

/** A percentage at token `at`, in figures, with its range: "70 %", "72–75 %", "65 % to 70 %"; and the token after it. */
export function percentAt(view: View, at: number, to: number): (BakersShare & {readonly next: number}) | null {
  const low = plainNumber(view, at, to)
  if (low === null) return null
  let next = signs.match(view.words, at + 1, to)
  const dash = next > 0 ? next : at + 1
  let high = low
  if (dash < to && RANGE.test(view.words[dash]!)) {
    const other = plainNumber(view, dash + 1, to)
    const end = other === null ? -1 : signs.match(view.words, dash + 2, to)
    if (other !== null && end > 0 && other.value > low.value) {
      high = other
      next = end
    }
  }
  if (next < 0 || high.value > MOST || low.value <= 0) return null
  return {low: low.times(HUNDREDTH), high: high.times(HUNDREDTH), next}
}

/** The same in a table's cell whose column is headed by the sign: "70", "72–75". All of tokens [from, to). */
export function percentCell(view: View, from: number, to: number): BakersShare | null {
  const signed = percentAt(view, from, to)
  if (signed !== null) return signed.next === to ? signed : null
  const low = plainNumber(view, from, to)
  if (low === null || low.value <= 0 || low.value > MOST) return null
  if (to - from === 1) return {low: low.times(HUNDREDTH), high: low.times(HUNDREDTH)}
  const high = to - from === 3 && RANGE.test(view.words[from + 1]!) ? plainNumber(view, from + 2, to) : null
  return high === null || high.value <= low.value ? null : {low: low.times(HUNDREDTH), high: high.times(HUNDREDTH)}
}

/** Does this head, tokens [from, to), stand over a column of percentages? */
export function headsPercent(view: View, from: number, to: number): boolean {
  for (let i = from; i < to; i++) if (view.words[i] === '%' || columns.match(view.words, i, to) > 0) return true
  return false
}

/** Does a percentage stand anywhere in the text? Most receipts have none, and are not looked through for them. */
export const hasPercent = ({words}: View): boolean => words.some((_, i) => signs.match(words, i, words.length) > 0)

/** The token after "of the flour" at `at`; `at` where it does not stand there. */
const pastOfFlour = (view: View, at: number, to: number): number => Math.max(at, ofFlour.match(view.words, at, to))

/** Marks that may stand between a name and its percentage. */
const BETWEEN = /^(?:[,:()|=—-]|at|zu|mit)$/

/** Is the percentage that ends before `next` one by itself, or one of the thing ("hydration") or of what follows ("70 % dark chocolate")? */
function closes({words, tokens, section}: View, next: number, to: number): boolean {
  if (next >= to || tokens[next]!.kind !== 'word') return true
  return /^(?:and|und)$/.test(words[next]!) || linesApart(section, tokens[next - 1]!, tokens[next]!)
}

/** Longest remark in brackets between a name and its percentage, tokens. */
const ASIDE = 8

/**
 * "Levain (at 100 %) 20 %", "Starter (100 % hydration): 20 %", "Sauerteig (TA 200) 20 %": the first is how wet it is. The token after the
 * brackets, where a percentage stands behind them; else `at`.
 */
function pastHydration(view: View, at: number, to: number): number {
  const {words} = view
  const open = words[at] === ',' ? at + 1 : at
  let close = open
  if (words[open] === '(') {
    while (close < to && close - open < ASIDE && words[close] !== ')') close++
    if (words[close] !== ')' || close >= to) return at
    close++
  } else {
    // "Starter, 100 % hydration: 20 %", "Levain at 100 % hydration 20 %"
    const from = /^(?:at|mit)$/.test(words[open] ?? '') ? open + 1 : open
    const wet = percentAt(view, from, to)
    close = wet === null ? -1 : hydration.match(words, wet.next, to)
    if (close < 0) return at
  }
  let i = close
  while (i < to && i - close < 3 && BETWEEN.test(words[i]!)) i++
  return percentAt(view, i, to) === null ? at : close
}

/** "Flour 100 %", "Water: 72–75 %", in prose too: a name with its percentage behind it. The token after it, else −1. */
function nameAndPercent(entries: Entries, at: number, to: number, mode: Mode): number {
  const {view} = entries
  const noun = readNoun(view, at, to, false)
  if (noun === null || noun.start - at > 2) return -1
  const aside = pastHydration(view, noun.next, to)
  let i = aside
  while (i < to && i - aside < 3 && BETWEEN.test(view.words[i]!)) i++
  const share = percentAt(view, i, to)
  if (share === null || notOfFlour.match(view.words, share.next, to) > 0) return -1
  const next = pastOfFlour(view, share.next, to)
  if (!closes(view, next, to)) return -1
  const end = view.words[next] === ')' && view.words[i - 1] === '(' ? next + 1 : next
  entries.push(
    {
      start: at,
      next: end,
      item: noun.item,
      row: noun.row,
      known: noun.known,
      prepared: noun.prepared,
      percent: {low: share.low, high: share.high},
      bare: true,
      confidence: 0.9,
      notes: aside > noun.next ? [wordsOf(view, view.words[noun.next] === ',' ? noun.next + 1 : noun.next, aside)] : [],
    },
    mode,
  )
  return end
}

/** Said of the water that a hydration stands for. */
export const HYDRATION = 'the hydration: the water, as a share of the flour'
const water = lookUpItem('water')

/** "Hydration: 75 %", "75 % hydration" by itself in its line or clause: the water. The token after it, else −1. */
function hydrationAt(entries: Entries, at: number, to: number, mode: Mode): number {
  const {view} = entries
  const {words, tokens, section} = view
  const before = tokens[at - 1]
  const alone =
    before === undefined ||
    before.block !== tokens[at]!.block ||
    /^[,.;|]$/.test(before.word) ||
    linesApart(section, before, tokens[at]!)
  if (!alone || mode === 'method') return -1
  let i = at
  const named = hydration.match(words, at, to)
  if (named > 0) i = BETWEEN.test(words[named] ?? '') ? named + 1 : named
  const share = percentAt(view, i, to)
  if (share === null) return -1
  const next = named > 0 ? share.next : hydration.match(words, share.next, to)
  if (next < 0 || !closes(view, next, to)) return -1
  const {low, high} = share
  entries.push(
    {start: at, next, item: 'water', row: water, percent: {low, high}, bare: true, notes: [HYDRATION], confidence: 0.8},
    mode,
  )
  return next
}

/** What goes into doughs: "70 % water" in prose is a share, where "a 70 % chocolate" is none. */
const DOUGH: ReadonlySet<string> = new Set(['flour', 'meal', 'liquid', 'salt', 'leaven', 'fat', 'sugar', 'dairy', 'seed'])

/** The entry that a percentage at `at` stands right behind, in its line. */
function entryBefore({view, drafts}: Entries, at: number): Entries['drafts'][number] | undefined {
  const before = drafts.at(-1)
  const {tokens, words, section} = view
  if (before === undefined || before.next > at || at - before.next > 3) return undefined
  if (tokens[before.start]!.block !== tokens[at]!.block) return undefined
  for (let i = before.next; i < at; i++) if (!BETWEEN.test(words[i]!)) return undefined
  return linesApart(section, tokens[before.next - 1]!, tokens[at]!) ? undefined : before
}

/**
 * A percentage at `at`, or a name with one behind it: an entry, or more said of the one before.
 *
 * @returns the token after it; −1 where none stands there
 */
export function bakersPercent(entries: Entries, at: number, to: number, mode: Mode): number {
  const {view} = entries
  const hydrated = hydrationAt(entries, at, to, mode)
  if (hydrated > 0) return hydrated
  if (view.tokens[at]!.kind === 'word') return mode === 'method' ? -1 : nameAndPercent(entries, at, to, mode)
  const share = percentAt(view, at, to)
  if (share === null) return -1
  // "cream (35 % fat)": said of the cream, and no fat that goes in.
  const own = notOfFlour.match(view.words, share.next, to)
  if (own > 0) return own
  const {low, high} = share
  const next = pastOfFlour(view, share.next, to)
  const before = entryBefore(entries, at)
  if (before !== undefined && closes(view, next, to)) {
    if (before.percent === undefined) before.percent = {low, high}
    if (before.low === null && before.inList) before.next = next
    return next
  }
  if (mode === 'method' || (before !== undefined && before.low !== null)) return -1
  const from = view.words[next] === 'of' || view.words[next] === '|' ? next + 1 : next
  const listed = mode === 'list'
  const noun = from < to ? readNoun(view, from, to, listed, listed) : null
  if (noun === null || noun.start - from > 2) return -1
  if (!listed && !(DOUGH.has(noun.row?.group ?? '') && closes(view, noun.next, to))) return -1
  const {item, row, known, prepared} = noun
  entries.push(
    {start: at, next: noun.next, item, row, known, prepared, percent: {low, high}, bare: true, confidence: known ? 0.9 : 0.6},
    mode,
  )
  return noun.next
}

/** The words of a percentage for a note: "70 %". */
export const percentText = ({low, high}: BakersShare): string => {
  const hundred = Exact.of(100)
  const figure = (share: Exact): string => String(Math.round(share.times(hundred).value * 100) / 100)
  return `${low.equals(high) ? figure(low) : `${figure(low)}–${figure(high)}`} %`
}

/** The words of tokens [from, to) on one line. */
export const wordsOf = (view: View, from: number, to: number): string => textOf(view, from, to).replace(/\s+/g, ' ')
