import {lookUpMeasure} from '../lexicon/index.js'
import {skipHedges} from './amounts.js'
import type {Exact} from './exact.js'
import {ratio} from './fixed-ratios.js'
import {readMeasure} from './named-measure.js'
import {type One, one} from './one-number.js'
import {itemHere, type View} from './view.js'

/** A number of pieces no more than so many times the measure, and more than its weight allows, is of the measure: "a pound or two of plums". */
const MOST_TIMES = 4
/** Pieces that weigh between half and twice the measure are the same amount, told by another way. */
const LIKE_WEIGHT = 2
const GRAMS_PER_POUND = lookUpMeasure('pound')!.sizes[0]!.size.likely

/**
 * "One pound or ten eggs": where the second number is one of pieces, told in place of the measure, and no greater number of measures.
 *
 * @param second the number behind "or", which has no measure of its own
 * @param low how many of the measure stand before "or"
 * @returns the token after the pieces' name; −1 where it is no such number
 */
export function countInstead(view: View, second: One, end: number, low: Exact, measure: string): number {
  if (second.next >= end || second.value.value < 2) return -1
  const item = itemHere(view, second.next) ?? (second.next + 1 < end ? itemHere(view, second.next + 1) : null)
  const piece = item?.row.pieces.find((one) => one.measure === 'count')
  if (item === null || piece === undefined) return -1
  const share = ratio(measure, 'pound')
  if (share !== null) {
    const times = (second.value.value * piece.grams.likely) / (low.value * share.value * GRAMS_PER_POUND)
    if (times >= 1 / LIKE_WEIGHT && times <= LIKE_WEIGHT) return item.next
  }
  return second.value.value >= MOST_TIMES * low.value ? item.next : -1
}

/** An alternative in brackets or after a slash: "(250 g)", "/ 9 oz". Returns the token after it, else `at`. */
export function pastAlternative(view: View, at: number, end: number, notes: string[]): number {
  const {words, tokens} = view
  let i = at
  if (words[i] === '(') {
    let close = i + 1
    while (close < end && close - i < 14 && words[close] !== ')') close++
    if (words[close] !== ')' || close >= end) return at
    let start = i + 1
    const hedges: string[] = []
    start = skipHedges(view, start, close, hedges)
    while (start < close && (words[start] === 'or' || words[start] === '=' || words[start] === 'a')) start++
    const amount = one(view, start, close)
    if (amount === null || readMeasure(view, amount.next, close, amount.figure, []) === null) return at
    notes.push(view.section.source.slice(tokens[i]!.start, tokens[close]!.end))
    return close + 1
  }
  while (words[i] === '/' || words[i] === '=') {
    const amount = one(view, i + 1, end)
    if (amount === null) return i
    const measure = readMeasure(view, amount.next, end, true, [])
    if (measure === null) return i
    notes.push(view.section.source.slice(tokens[i + 1]!.start, tokens[measure.next - 1]!.end))
    i = measure.next
    // "1 lb 2 oz" after the slash
    const more = one(view, i, end)
    if (more?.figure) {
      const small = readMeasure(view, more.next, end, true, [])
      if (small !== null && ratio(small.id, measure.id) !== null) i = small.next
    }
  }
  return i
}
