import type {Range} from '../lexicon/schema.js'

/**
 * Rounding for the kitchen. A figure is rounded to a step that a kitchen can weigh or measure and that is not finer than its range
 * supports, so that no digit is invented; the ends of a range are rounded outward, so that it never shrinks.
 */

/** What a kitchen scale or jug can tell apart, by size: steps up to and including the limit. From memory of kitchen scales and jugs. */
const KITCHEN_STEPS: ReadonlyArray<readonly [upTo: number, step: number]> = [
  [1, 0.05],
  [5, 0.1],
  [20, 0.5],
  [1000, 1],
  [2500, 5],
  [10000, 10],
  [Number.POSITIVE_INFINITY, 50],
]

/** The finest step a kitchen can measure at this size, g or mL. */
export function kitchenStep(value: number): number {
  for (const row of KITCHEN_STEPS) if (value <= row[0]) return row[1]
  return 50
}

/** The greatest of 1, 2, 5 × 10ⁿ that is ≤ x; 0 for 0. */
function niceStep(x: number): number {
  if (!(x > 0)) return 0
  const power = 10 ** Math.floor(Math.log10(x) + 1e-12)
  const lead = x / power + 1e-9
  return power * (lead >= 5 ? 5 : lead >= 2 ? 2 : 1)
}

/** The step a range supports: not finer than about an eighth of its width, nor than the kitchen can measure. */
export const supportedStep = (range: Range): number => Math.max(kitchenStep(range.likely), niceStep((range.high - range.low) / 8))

/** Decimals needed to write multiples of `step`. */
const decimals = (step: number): number => (step >= 1 ? 0 : step >= 0.1 ? 1 : 2)
const tidy = (value: number, step: number): number => (step >= 1 ? Math.round(value) : Number(value.toFixed(decimals(step))))

/** A range rounded for the kitchen: likely to the nearest step, ends outward. An exact figure keeps equal ends. */
export function kitchenRange(range: Range): Range {
  const step = supportedStep(range)
  const nearest = (x: number): number => tidy(Math.round(x / step) * step, step)
  const likely = range.likely > 0 && nearest(range.likely) === 0 ? tidy(step, step) : nearest(range.likely)
  if (range.low === range.high) return {low: likely, likely, high: likely}
  return {
    low: Math.min(likely, tidy(Math.floor(range.low / step + 1e-9) * step, step)),
    likely,
    high: Math.max(likely, tidy(Math.ceil(range.high / step - 1e-9) * step, step)),
  }
}

/** Words for the two units, and for the larger ones above a thousand. */
const LARGER = {g: 'kg', mL: 'L'} as const

/**
 * As printed: "125 g", "15 mL (14–18)", "1.2 kg (1–1.5)". The part in brackets is left out where the range is narrower than the step,
 * or where `bounds` is false.
 */
export function kitchenText(range: Range, unit: 'g' | 'mL', options: {readonly bounds?: boolean} = {}): string {
  const {low, likely, high} = kitchenRange(range)
  const large = likely >= 2000
  const show = (value: number): string => String(large ? Number((value / 1000).toPrecision(4)) : value)
  const name = large ? LARGER[unit] : unit
  const bounds = options.bounds !== false && low !== high
  return `${show(likely)} ${name}${bounds ? ` (${show(low)}–${show(high)})` : ''}`
}

/** Spoons and cups of the United States, mL. NIST Handbook 44 App. C. */
const US_TEASPOON = 4.92892159375
const US_TABLESPOON = 14.78676478125
const US_CUP = 236.5882365

/** The parts of each that a set of measures holds. */
const SPOONS: ReadonlyArray<readonly [millilitres: number, text: string]> = [
  [US_TEASPOON / 8, '1/8 tsp'],
  [US_TEASPOON / 4, '1/4 tsp'],
  [US_TEASPOON / 2, '1/2 tsp'],
  [(US_TEASPOON * 3) / 4, '3/4 tsp'],
  [US_TEASPOON, '1 tsp'],
  [US_TEASPOON * 1.5, '1 1/2 tsp'],
  [US_TEASPOON * 2, '2 tsp'],
  [US_TABLESPOON, '1 tbsp'],
  [US_TABLESPOON * 1.5, '1 1/2 tbsp'],
  [US_TABLESPOON * 2, '2 tbsp'],
  [US_TABLESPOON * 3, '3 tbsp'],
]
const CUP_PARTS: ReadonlyArray<readonly [share: number, text: string]> = [
  [0, ''],
  [1 / 4, '1/4'],
  [1 / 3, '1/3'],
  [1 / 2, '1/2'],
  [2 / 3, '2/3'],
  [3 / 4, '3/4'],
  [1, ''],
]

/** The nearest measure of a set of US cups and spoons: "1 1/2 tsp", "2/3 cup", "3 1/4 cups". Empty for none. */
export function usMeasure(millilitres: number): string {
  if (!(millilitres > 0)) return ''
  if (millilitres < US_CUP * 0.23) {
    let best = SPOONS[0]!
    for (const spoon of SPOONS) {
      if (Math.abs(Math.log(millilitres / spoon[0])) < Math.abs(Math.log(millilitres / best[0]))) best = spoon
    }
    return best[1]
  }
  const cups = millilitres / US_CUP
  const whole = Math.floor(cups)
  let best = CUP_PARTS[0]!
  for (const part of CUP_PARTS) {
    if (Math.abs(cups - whole - part[0]) < Math.abs(cups - whole - best[0])) best = part
  }
  if (whole === 0 && best[0] === 0) best = CUP_PARTS[1]!
  const count = best[0] === 1 ? whole + 1 : whole
  const text = [count === 0 ? '' : String(count), best[0] === 1 ? '' : best[1]].filter((part) => part !== '').join(' ')
  return `${text} ${count > 1 || (count === 1 && best[1] !== '' && best[0] < 1) ? 'cups' : 'cup'}`
}

/** To six significant digits: for figures kept as data, below which nothing here is known. */
export function significant(value: number): number {
  if (value === 0) return 0
  // A whole number over a power of ten divides to the nearest double: the same as writing the digits and reading them again.
  const power = 5 - Math.floor(Math.log10(Math.abs(value)))
  if (!(power >= 0 && power <= 20)) return Number(value.toPrecision(6))
  const by = TENS[power]!
  return Math.round(value * by) / by
}
const TENS: readonly number[] = Array.from({length: 21}, (_, power) => 10 ** power)

/** Each of a range's figures to six significant digits. */
export function significantRange(range: Range): Range {
  const likely = significant(range.likely)
  if (range.low === range.high) return {low: likely, likely, high: likely}
  return {low: significant(range.low), likely, high: significant(range.high)}
}
