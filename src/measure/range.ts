import type {Range} from '../lexicon/schema.js'

/**
 * Ranges with a likely value. Ends are bounds, not standard deviations: they multiply end by end (interval arithmetic for positive
 * numbers, Moore, Kearfott and Cloud, Introduction to Interval Analysis, ch. 2), and the likely values multiply apart.
 */

/** An exact figure as a range. */
export const exactly = (value: number): Range => ({low: value, likely: value, high: value})

/** The product of two ranges of numbers ≥ 0. */
export const times = (a: Range, b: Range): Range => ({low: a.low * b.low, likely: a.likely * b.likely, high: a.high * b.high})

/** The quotient of two ranges, all of `b` > 0. */
export const over = (a: Range, b: Range): Range => ({low: a.low / b.high, likely: a.likely / b.likely, high: a.high / b.low})

/** The sum of two ranges. */
export const plus = (a: Range, b: Range): Range => ({low: a.low + b.low, likely: a.likely + b.likely, high: a.high + b.high})

/** What is left of a range without a part of the same thing: both are great or small together. */
export const less = (a: Range, part: Range): Range => ({
  low: a.low - part.low,
  likely: a.likely - part.likely,
  high: a.high - part.high,
})

/** A range times a number ≥ 0. */
export const scaled = (a: Range, by: number): Range => ({low: a.low * by, likely: a.likely * by, high: a.high * by})

/** The least range that holds them all, with the first one's likely value. Throws on an empty list. */
export function covering(ranges: readonly Range[]): Range {
  const first = ranges[0]
  if (first === undefined) throw new RangeError('covering: no ranges')
  let {low, high} = first
  for (const range of ranges) {
    if (range.low < low) low = range.low
    if (range.high > high) high = range.high
  }
  return {low, likely: first.likely, high}
}

/** Whether a value lies in the range, ends included, with a relative slack for rounding. */
export const holds = (range: Range, value: number, slack = 1e-9): boolean =>
  value >= range.low - Math.abs(range.low) * slack && value <= range.high + Math.abs(range.high) * slack

/** How wide it is beside its likely value: 0 is exact. */
export const spread = (range: Range): number => (range.likely === 0 ? 0 : (range.high - range.low) / range.likely)
