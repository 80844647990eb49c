import {lookUpMeasure} from '../lexicon/index.js'
import type {StatedWeight} from '../measure/convert.js'
import {readAmount, skipHedges} from './amounts.js'
import type {Draft, Entries, Mode} from './entries.js'
import {type Quantity, readQuantity} from './quantities.js'
import {DESCRIBES, FILLING, textOf, type View} from './view.js'

/**
 * The weight a text gives beside a count or a measure: “1 chicken (about 1.8 kg)”, “1 cup (120 g) flour”, “2 onions, 300 g”. The count
 * stays what it is; the weight is what the thing weighs.
 */

/** Words that may stand before the weight. */
const BEFORE = new Set(['or', '=', 'weighing', 'weight', 'total', ',', 'a', 'of'])
/** Words that may stand behind it. */
const BEHIND = new Set([
  'each',
  'apiece',
  'total',
  'in',
  'all',
  'altogether',
  'weight',
  'drained',
  'net',
  'unpeeled',
  'peeled',
  'raw',
])
/** The weight on a label is of one tin. */
const LABELLED = new Set(['tin', 'packet', 'jar', 'bottle', 'becher', 'cake', 'cube', 'square'])

/** The weight that is all of tokens [from, to) but the words about it. */
function weightIn(view: View, from: number, to: number): StatedWeight | null {
  const {words, bits} = view
  let i = from
  while (i < to && i < from + 4 && (BEFORE.has(words[i]!) || bits[i]! & FILLING)) i++
  const hedges: string[] = []
  i = skipHedges(view, i, to, hedges)
  const quantity = i < to ? readQuantity(view, i, to) : null
  if (quantity === null || quantity.dimension !== 'mass' || quantity.article || lookUpMeasure(quantity.measure) === null)
    return null
  let each = false
  let next = quantity.next
  // "(8 oz, 225 g)": the same in another measure.
  if (words[next] === ',' || words[next] === 'or') {
    const again = next + 1 < to ? readQuantity(view, next + 1, to) : null
    if (again !== null && again.dimension === 'mass') next = again.next
  }
  for (; next < to; next++) {
    if (!BEHIND.has(words[next]!)) return null
    each ||= words[next] === 'each' || words[next] === 'apiece'
  }
  return {
    amount: {low: quantity.low.value, high: quantity.high.value},
    measure: quantity.measure,
    each,
    hedges: [...hedges, ...quantity.hedges],
    text: textOf(view, from, to).replace(/\s+/g, ' '),
  }
}

/** Of one or of all: a tin's weight is of one, unless the text says otherwise. */
const ofOne = (stated: StatedWeight, measure: string): StatedWeight =>
  LABELLED.has(measure) && !/\b(?:total|in all|altogether)\b/i.test(stated.text) ? {...stated, each: true} : stated

/** "1 cup (120 g)", "1 cup/120 g": the weight among the quantity's own words; undefined where there is none. */
export function weightInQuantity(view: View, quantity: Quantity, measure: string): StatedWeight | undefined {
  if (quantity.dimension === 'mass') return undefined
  const {words} = view
  for (let i = quantity.measureStart; i < quantity.next; i++) {
    if (words[i] !== '(' && words[i] !== '/' && words[i] !== '=') continue
    const closes = words[i] === '(' && words[quantity.next - 1] === ')'
    const stated = weightIn(view, i + 1, closes ? quantity.next - 1 : quantity.next)
    return stated === null ? undefined : ofOne(stated, measure)
  }
  return undefined
}

/**
 * The weight in a cell of its own, "flour | 1 cup | 120 g": that of the row's entry is set, where it has none.
 *
 * @param cells the row's cells, as token indices from and to
 * @param headed column by column, the measure that its head names: "Grams"
 */
export function weightInCells(
  view: View,
  draft: Draft,
  cells: ReadonlyArray<readonly [number, number]>,
  headed: ReadonlyArray<{readonly id: string; readonly dimension: string} | null>,
): void {
  if (!weightless(draft)) return
  for (const [column, [from, to]] of cells.entries()) {
    if (from >= to) continue
    const head = headed[column] ?? null
    const amount = head?.dimension === 'mass' ? readAmount(view, from, to) : null
    const stated =
      weightIn(view, from, to) ??
      (head !== null && amount !== null && amount.next === to
        ? {
            amount: {low: amount.low.value, high: amount.high.value},
            measure: head.id,
            each: false,
            hedges: [...amount.hedges],
            text: textOf(view, from, to),
          }
        : null)
    if (stated === null) continue
    draft.stated = ofOne(stated, draft.measure)
    draft.start = Math.min(draft.start, from)
    draft.next = Math.max(draft.next, to)
    return
  }
}

/** An entry whose weight is still to be said. */
const weightless = (draft: Draft | undefined): draft is Draft =>
  draft !== undefined &&
  draft.low !== null &&
  draft.stated === undefined &&
  lookUpMeasure(draft.measure)?.dimension !== 'mass' &&
  draft.measure !== 'weight of an egg'

/**
 * "(about 1.8 kg)" or ", 300 g" behind an entry: its weight is set. `at` is at the bracket or the comma.
 *
 * @returns the token after it; −1 where none stands there
 */
export function weightBehind(entries: Entries, at: number, to: number, mode: Mode): number {
  const {words, bits, tokens} = entries.view
  const before = entries.drafts.at(-1)
  if (!weightless(before) || before.next > at || tokens[before.start]!.block !== tokens[at]!.block) return -1
  // Only words of how it is got ready between: "2 onions, chopped (300 g)".
  for (let i = before.next; i < at; i++) if (at - before.next > 5 || !(words[i] === ',' || bits[i]! & DESCRIBES)) return -1
  let close = at + 1
  if (words[at] === '(') {
    while (close < to && close - at < 16 && words[close] !== ')' && words[close] !== '(') close++
    if (close >= to || words[close] !== ')') return -1
  } else {
    if (mode !== 'list') return -1
    while (close < to && close - at < 10 && words[close] !== ',' && words[close] !== ';' && words[close] !== '(') close++
    if (close - at >= 10 || tokens[at + 1]?.block !== tokens[at]!.block) return -1
  }
  const stated = weightIn(entries.view, at + 1, close)
  if (stated === null) return -1
  before.stated = ofOne(stated, before.measure)
  before.next = words[at] === '(' ? close + 1 : close
  return before.next
}
