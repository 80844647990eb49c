import {furtherBefore, hedges as hedgeWords} from '../lexicon/grammar-words.js'
import {type Exact, ONE} from './exact.js'
import {one} from './one-number.js'
import {OPENER, Phrases, type View} from './view.js'

/** A number as the text gives it: a range where it does. */
export interface Amount {
  readonly low: Exact
  readonly high: Exact
  /** The token after it. */
  readonly next: number
  readonly hedges: readonly string[]
  /** Only "a", "an", "each", "every": 1 where something that can be counted or measured follows. */
  readonly article: boolean
  /** A fraction below one: "a quarter" before "of mace" takes the measure of the line above. */
  readonly fraction: boolean
  /** In figures. */
  readonly figure: boolean
}

const hedgePhrases = new Phrases(hedgeWords)
const furtherPhrases = new Phrases(furtherBefore)

/** "every", "per", also as German receipts have it: what they govern is one. */
const EVERY = new Set(['every', 'each', 'per', 'another', 'pro', 'jedes', 'jeden', 'jede'])

/** The token after hedges at `at` ("about", "rather more than"), adding them to `into`. */
export function skipHedges(view: View, at: number, end: number, into: string[]): number {
  let i = at
  while (i < end) {
    const next = hedgePhrases.match(view.words, i, end)
    if (next < 0) break
    into.push(view.words.slice(i, next).join(' '))
    i = next
  }
  return i
}

/**
 * A number at token `at`: in figures or words, mixed, a fraction, a range. "from 4 to 5", "six or eight", "nine and twenty", "half a
 * dozen", "one and one-half".
 *
 * @returns null where no number stands there
 */
export function readAmount(view: View, at: number, end: number): Amount | null {
  const {words, tokens} = view
  const hedges: string[] = []
  let i = at
  const between = words[i] === 'between'
  if (between || words[i] === 'from') i++
  i = skipHedges(view, i, end, hedges)
  if (i >= end || !(view.bits[i]! & OPENER)) return null
  if (EVERY.has(words[i]!)) {
    // "each" and "every" govern a measure; a number after them is read instead ("every two pounds").
    const inner = one(view, i + 1, end)
    if (inner !== null)
      return {
        low: inner.value,
        high: inner.value,
        next: inner.next,
        hedges,
        article: false,
        fraction: false,
        figure: inner.figure,
      }
    return {low: ONE, high: ONE, next: i + 1, hedges, article: true, fraction: false, figure: false}
  }
  // "noch 100 g", "a further 50 g"
  const further = furtherPhrases.match(words, i, end)
  const beyond = further > 0 && further < end ? readAmount(view, further, end) : null
  if (beyond !== null && !(beyond.article && words[i] !== 'noch')) return {...beyond, hedges: [...hedges, ...beyond.hedges]}
  if (words[i] === 'the' && i > at) return null
  const first = one(view, i, end)
  if (first === null) return null
  let high = first.value
  let {next} = first
  let {article} = first
  const fraction = first.value.value < 1
  // "two, three, or four"
  let k = next
  if (words[k] === ',' && k + 1 < end) {
    const second = one(view, k + 1, end)
    if (second !== null && !second.article && second.value.value > first.value.value) {
      let m = second.next
      if (words[m] === ',') m++
      if (words[m] === 'or') {
        const third = one(view, m + 1, end)
        if (third !== null && !third.article && third.value.value > second.value.value)
          return {low: first.value, high: third.value, next: third.next, hedges, article: false, fraction, figure: first.figure}
      }
    }
    if (words[k + 1] === 'or') k++
  }
  if (k < end) {
    const word = words[k]
    const dash = word === '-' || (word === '—' && !tokens[k]!.gap && k + 1 < end && !tokens[k + 1]!.gap)
    if (word === 'or' || word === 'to' || word === 'bis' || dash || (between && word === 'and')) {
      const rest: string[] = []
      const from = skipHedges(view, k + 1, end, rest)
      const second = one(view, from, end)
      if (second !== null && !second.article && second.value.value > first.value.value) {
        high = second.value
        next = second.next
        article = false
        hedges.push(...rest)
      }
    }
  }
  return {low: first.value, high, next, hedges, article, fraction: fraction && high.value < 1, figure: first.figure}
}
