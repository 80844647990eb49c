import {cardinals, fractions} from '../lexicon/grammar-words.js'
import type {TimeWord} from '../lexicon/schema.js'
import {timeUnits, timeWords} from '../lexicon/time-words.js'
import type {Token} from './section.js'
import {timeWordsOf} from './time-parts.js'

/** Minutes of a unit of time. */
export const UNITS: Readonly<Record<string, number>> = Object.fromEntries(
  timeUnits.flatMap(({minutes, words}) => words.map((word) => [word, minutes] as const)),
)

/** Words of one use with the fraction that each stands for. */
const fractionsOf = (use: TimeWord['use']): ReadonlyArray<readonly [string, readonly [number, number]]> =>
  timeWords.flatMap(({use: its, words, value}) => {
    if (its !== use || value === undefined) return []
    const [n, d] = value.split('/').map(Number)
    return words.map((word) => [word, [n!, d!]] as const)
  })

/** Numbers in words. */
export const PLAIN: Readonly<Record<string, number>> = cardinals
const PARTS: Readonly<Record<string, readonly [number, number]>> = {...fractions, ...Object.fromEntries(fractionsOf('part'))}
/** Numbers and a half in one word. */
export const AND_HALF: Readonly<Record<string, number>> = Object.fromEntries(
  fractionsOf('number').map(([word, [n, d]]) => [word, n / d]),
)

/** Words that may stand between a number and its unit. */
export const FILLERS = timeWordsOf('filler')
/** Words that join two ends of a range. */
export const JOINERS = timeWordsOf('joiner')
const QUARTERS = timeWordsOf('quarters')

/** A number before a unit of time. */
export interface Number_ {
  readonly low: number
  readonly high: number
  readonly end: number
  /** Below one: "half", "3/4". */
  readonly fraction: boolean
  /** It is only the article. */
  readonly article: boolean
  /** It stands in figures. */
  readonly figure: boolean
}

function cardinalAt(tokens: readonly Token[], i: number): {value: number; end: number} | null {
  const t = tokens[i]
  if (t === undefined || t.kind !== 'word' || !Object.hasOwn(PLAIN, t.word)) return null
  const value = PLAIN[t.word]!
  const next = tokens[i + 1]
  if (next !== undefined && next.kind === 'word' && next.block === t.block) {
    const and = tokens[i + 2]
    // "five and twenty", "twenty five"
    if (
      value < 10 &&
      next.word === 'and' &&
      and !== undefined &&
      Object.hasOwn(PLAIN, and.word) &&
      PLAIN[and.word]! % 10 === 0 &&
      PLAIN[and.word]! >= 20 &&
      PLAIN[and.word]! < 100
    )
      return {value: value + PLAIN[and.word]!, end: i + 3}
    if (value >= 20 && value % 10 === 0 && value < 100 && Object.hasOwn(PLAIN, next.word) && PLAIN[next.word]! < 10)
      return {value: value + PLAIN[next.word]!, end: i + 2}
  }
  return {value, end: i + 1}
}

/** "half", "a quarter", "three quarters", "one half", "3/4": below one. */
function fractionAt(tokens: readonly Token[], i: number): {value: number; end: number} | null {
  let t = tokens[i]
  if (t === undefined) return null
  if (t.kind === 'number') {
    if (t.den === 1 && t.num < 4 && QUARTERS.has(tokens[i + 1]?.word ?? ''))
      return {value: t.num / 4, end: tokens[i + 2]?.word === '.' ? i + 3 : i + 2}
    return t.den > 1 && t.num < t.den ? {value: t.num / t.den, end: i + 1} : null
  }
  if (t.kind !== 'word') return null
  let top = 1
  let at = i
  if (t.word === 'a' || t.word === 'an') at++
  else if (Object.hasOwn(PLAIN, t.word) && PLAIN[t.word]! < 10) {
    top = PLAIN[t.word]!
    at++
  }
  if (at === i && !/^(?:halfe?|quarter|halben?)$/.test(t.word)) return null
  t = tokens[at]
  if (t?.kind === 'word' && FILLERS.has(t.word)) t = tokens[++at]
  if (t === undefined || t.kind !== 'word' || !Object.hasOwn(PARTS, t.word)) return null
  const [n, d] = PARTS[t.word]!
  // "six quarters of an hour" is how an hour and a half is said of a roast.
  const ofHour = d === 4 && /^(?:of)$/.test(tokens[at + 1]?.word ?? '') && tokens[at + 3]?.word === 'hour'
  return (top * n) / d < 1 || ofHour ? {value: (top * n) / d, end: at + 1} : null
}

/** Minutes of a word for a unit of time; null where it is none. */
export function minutesIn(word: string): number | null {
  return Object.hasOwn(UNITS, word) ? UNITS[word]! : null
}

/** The number that begins at a token, "two", "2 1/2", "a few"; null where none does. */
export function numberAt(tokens: readonly Token[], i: number): Number_ | null {
  const t = tokens[i]
  if (t === undefined) return null
  const whole = (value: number, end: number, figure: boolean, article: boolean): Number_ => {
    // "one and a half", "two and three quarters"
    if (tokens[end]?.word === 'and' && !article) {
      const part = fractionAt(tokens, end + 1)
      if (part !== null && tokens[end + 1]?.kind === 'word') {
        const after = tokens[part.end]
        // "one and a half hours", "one and a quarter, or two hours"
        if (after !== undefined && (Object.hasOwn(UNITS, after.word) || JOINERS.has(after.word) || after.word === ','))
          return {low: value + part.value, high: value + part.value, end: part.end, fraction: false, article: false, figure}
      }
    }
    return {low: value, high: value, end, fraction: false, article, figure}
  }
  if (t.kind === 'number') {
    if (t.den === 0) return null
    const quarters = fractionAt(tokens, i)
    if (t.den === 1 && quarters !== null)
      return {low: quarters.value, high: quarters.value, end: quarters.end, fraction: true, article: false, figure: true}
    if (t.num < t.den) return {low: t.num / t.den, high: t.num / t.den, end: i + 1, fraction: true, article: false, figure: true}
    return whole(t.num / t.den, i + 1, true, false)
  }
  if (t.kind !== 'word') return null
  const part = fractionAt(tokens, i)
  if (part !== null) return {low: part.value, high: part.value, end: part.end, fraction: true, article: false, figure: false}
  if (t.word === 'a' || t.word === 'an') {
    const next = tokens[i + 1]
    if (next?.word === 'few') return {low: 2, high: 5, end: i + 2, fraction: false, article: false, figure: false}
    if (next?.word === 'couple' && tokens[i + 2]?.word === 'of')
      return {low: 2, high: 2, end: i + 3, fraction: false, article: false, figure: false}
    return {low: 1, high: 1, end: i + 1, fraction: false, article: true, figure: false}
  }
  if (t.word === 'another') return {low: 1, high: 1, end: i + 1, fraction: false, article: true, figure: false}
  if (t.word === 'some') return {low: 2, high: 6, end: i + 1, fraction: false, article: true, figure: false}
  if (t.word === 'several') return {low: 3, high: 6, end: i + 1, fraction: false, article: false, figure: false}
  if (t.word === 'few') return {low: 2, high: 5, end: i + 1, fraction: false, article: false, figure: false}
  if (Object.hasOwn(AND_HALF, t.word)) return whole(AND_HALF[t.word]!, i + 1, false, false)
  const cardinal = cardinalAt(tokens, i)
  return cardinal === null ? null : whole(cardinal.value, cardinal.end, false, false)
}
