import {lookUpMeasure} from '../lexicon/index.js'
import {readAmount} from './amounts.js'
import {isWhole, lack, partAt} from './egg-parts.js'
import type {Draft, Entries, Mode} from './entries.js'
import {HALF} from './exact.js'
import {COUNTED} from './item-classes.js'
import {readNoun} from './nouns.js'
import {readQuantity} from './quantities.js'
import {textOf, type View} from './view.js'

/**
 * What stands behind an entry and is said of it: what of it is meant for what (“500 g flour (50 g for dusting)”), more of it (“, plus 20 g
 * for the tin”), what of it is left out, and what one weighs (“a ham of about ten pounds weight”).
 */

/** Behind a figure: no amount, but how long. */
const STRETCH = /^(?:min|mins|minutes?|h|hrs?|hours?|days?)$/

/** How many tokens a remark in brackets may have. */
const LONGEST = 16

/** The entry that ends right before `at`, at most a few tokens back in the same block; undefined where none does. */
function justBefore(entries: Entries, at: number, within: number): Draft | undefined {
  const {tokens} = entries.view
  const before = entries.drafts.at(-1)
  if (before === undefined || before.low === null || before.next > at || before.next < at - within) return undefined
  return tokens[before.start]!.block === tokens[at]!.block ? before : undefined
}

const weighedOrPoured = ({measure}: Draft): boolean => {
  const dimension = lookUpMeasure(measure)?.dimension
  return dimension === 'mass' || dimension === 'volume'
}

/** "900 g flour (800 g white, 100 g rye)": do the amounts in the brackets make up the entry's own? `at` is at the bracket. */
function isSum(view: View, at: number, to: number, whole: Draft): boolean {
  let sum = 0
  let parts = 0
  let i = at + 1
  while (i < to && i < at + LONGEST && view.words[i] !== ')') {
    const quantity = view.tokens[i]!.kind === 'number' ? readQuantity(view, i, to) : null
    if (quantity === null) {
      i++
      continue
    }
    if (quantity.measure !== whole.measure) return false
    sum += quantity.high.value
    parts++
    i = quantity.next
  }
  return parts > 1 && Math.abs(sum - whole.high!.value) < 1e-9
}

/** "(100 g for the sauce)", "(1 for the glaze)": a share of the entry before, carried as its note. `at` is at the bracket; else −1. */
export function shareOf(entries: Entries, at: number, to: number): number {
  const {words} = entries.view
  const before = justBefore(entries, at, 5)
  if (before === undefined) return -1
  const quantity = readQuantity(entries.view, at + 1, to)
  if (quantity === null || STRETCH.test(words[quantity.next] ?? '')) return -1
  const share = /^(?:for|reserved|kept|to|of)$/.test(words[quantity.next] ?? '')
  // "900 g flour (800 white, 100 rye)", "80 g yolks (4)": so many of the same.
  const same = quantity.measure === 'count' && quantity.figure && weighedOrPoured(before)
  if (!share && !same && !isSum(entries.view, at, to, before)) return -1
  let close = quantity.next
  while (close < to && close - at < LONGEST && words[close] !== ')' && words[close] !== '(') close++
  if (words[close] !== ')' || close >= to) return -1
  before.notes = [...before.notes, textOf(entries.view, at, close + 1).replace(/\s+/g, ' ')]
  before.next = close + 1
  return close + 1
}

/** How far behind "milk enough for the cakes you wish to make" its amount may stand, tokens. */
const FAR = 10

/**
 * "flour enough, about a quart and a pint", "milk enough for the batter (half a pint, or more)", "flour to roll it out, say a pound": how
 * much that is. `at` is at the comma, the dash or the bracket; the token after the amount, else −1.
 */
export function howMuch(entries: Entries, at: number, to: number): number {
  const {words, tokens} = entries.view
  const before = entries.drafts.at(-1)
  if (before === undefined || before.low !== null || before.next > at || at - before.next > FAR) return -1
  if (tokens[before.start]!.block !== tokens[at]!.block || before.row === null) return -1
  for (let i = before.next; i < at; i++) if (/^[.;:(]$/.test(words[i]!)) return -1
  const enough =
    /^(?:enough|sufficient)$/.test(words[before.next - 1]!) || before.hedges.some((one) => /enough|sufficient/.test(one))
  if (before.next < at && !(enough || /^(?:to|enough|sufficient)$/.test(words[before.next]!))) return -1
  const open = words[at] === '(' || words[at + 1] === '('
  const from = words[at] !== '(' && open ? at + 2 : at + 1
  const quantity = from < to ? readQuantity(entries.view, from, to) : null
  const dimension = quantity === null ? undefined : lookUpMeasure(quantity.measure)?.dimension
  if (quantity === null || (dimension !== 'mass' && dimension !== 'volume')) return -1
  if (!open && !enough && quantity.hedges.length === 0) return -1
  const next = quantity.next >= to ? undefined : tokens[quantity.next]
  const ends =
    next === undefined ||
    next.block !== tokens[at]!.block ||
    next.kind === 'mark' ||
    /^(?:or|to|will|for|in|as|is)$/.test(next.word)
  if (!ends) return -1
  Object.assign(before, {
    low: quantity.low,
    high: quantity.high,
    measure: quantity.measure,
    measureText: quantity.measureText,
    hedges: [...quantity.hedges],
    next: words[quantity.next] === ')' && quantity.next < to ? quantity.next + 1 : quantity.next,
    bare: false,
  })
  entries.last = before
  return before.next
}

/** ", plus 20 g for the tin", "+ 2 tbsp to brush": more of the entry before. `at` is at "plus" or "+"; the token after it, else −1. */
export function moreOf(entries: Entries, at: number, to: number, mode: Mode): number {
  const {words, tokens} = entries.view
  const before = justBefore(entries, at, 6)
  if (before === undefined || mode === 'method') return -1
  let from = at + 1
  if (words[from] === 'another' || words[from] === 'about') from++
  const quantity = from < to ? readQuantity(entries.view, from, to) : null
  if (quantity === null || quantity.article) return -1
  let next = quantity.next
  if (words[next] === 'extra' || words[next] === 'more') next++
  if (words[next] !== 'for' && words[next] !== 'to') return -1
  let end = next + 1
  while (end < to && end - next < 6 && tokens[end]!.kind === 'word') end++
  entries.push(
    {
      start: at,
      next: quantity.next,
      low: quantity.low,
      high: quantity.high,
      measure: quantity.measure,
      measureText: quantity.measureText,
      item: before.item,
      row: before.row,
      known: before.known,
      hedges: [...quantity.hedges],
      notes: [textOf(entries.view, next, end).replace(/\s+/g, ' ')],
      confidence: 0.8,
    },
    mode,
  )
  return end
}

/** "leave out two whites", "leaving out four of the whites": no more goes in. `at` is at "out"; the token after it, else −1. */
export function leftOut(entries: Entries, at: number, to: number): number {
  const {words} = entries.view
  if (!/^(?:leave|leaving|left)$/.test(words[at - 1] ?? '')) return -1
  let i = at + 1
  const amount = i < to && words[i] !== 'half' ? readAmount(entries.view, i, to) : null
  if (amount !== null) i = amount.next
  const half = words[i] === 'half'
  if (half) i++
  while (i < to && /^(?:of|the|them|their|all)$/.test(words[i]!)) i++
  const white = /^(?:whites?|yolks?|yelks?)$/.exec(words[i] ?? '')
  if ((amount === null && !half) || white === null) return -1
  // "Add the eggs, leaving out two of the whites", of those that the list counts.
  const eggs = entries.drafts.filter((draft) => draft.item === 'egg')
  const egg = eggs.findLast(({low}) => low !== null) ?? eggs.at(-1)
  if (egg === undefined) return -1
  const text = textOf(entries.view, at - 1, i + 1)
  const count = half && egg.low !== null ? egg.low.times(HALF) : (amount?.low ?? null)
  const whole =
    count !== null && isWhole(egg) && count.value <= egg.low!.value && (amount === null || amount.low.equals(amount.high))
  if (whole) lack(egg, partAt(words[i])!, count, text)
  else egg.notes = [...egg.notes, text.replace(/\s+/g, ' ')]
  return i + 1
}

/** "a turkey of 12 lbs.", "a fowl weighing four pounds", "a ham of about ten pounds weight": the token after it, else −1. */
export function weighing(entries: Entries, at: number, to: number): number {
  const {words} = entries.view
  // "a breast of veal, of about five pounds"
  const before = justBefore(entries, at, words[at] === 'weighing' || words[at - 1] === ',' ? 2 : 0)
  if (before === undefined || before.measure !== 'count' || before.stated !== undefined) return -1
  if (before.row === null || !COUNTED.has(before.row.group)) return -1
  const quantity = at + 1 < to ? readQuantity(entries.view, at + 1, to) : null
  if (quantity === null || quantity.dimension !== 'mass' || lookUpMeasure(quantity.measure) === null) return -1
  const weight = /^(?:weight|in|each|apiece)$/.test(words[quantity.next] ?? '')
  // "a leg of ten pounds of …": another thing.
  if (!weight && quantity.next < to && entries.view.tokens[quantity.next]!.kind === 'word') {
    const noun = readNoun(entries.view, words[quantity.next] === 'of' ? quantity.next + 1 : quantity.next, to, false)
    if (noun !== null || words[quantity.next] === 'of') return -1
  }
  const each = words[quantity.next] === 'each' || words[quantity.next] === 'apiece'
  const end = weight ? (words[quantity.next] === 'in' ? quantity.next + 2 : quantity.next + 1) : quantity.next
  before.stated = {
    amount: {low: quantity.low.value, high: quantity.high.value},
    measure: quantity.measure,
    each: each || before.low!.value > 1,
    hedges: [...quantity.hedges],
    text: textOf(entries.view, at + 1, end).replace(/\s+/g, ' '),
  }
  before.next = Math.min(end, to)
  return before.next
}
