import {cardinals} from '../lexicon/grammar-words.js'
import {hedgeAmounts} from '../lexicon/hedge-amounts.js'
import type {Range} from '../lexicon/schema.js'
import {aboutYield, statedWords} from '../lexicon/yield-words.js'
import type {Token} from './section.js'

/** The numbers of a yield: "two", "5 or 6", "about three dozen", "a dozen and a half". */

const words = statedWords.count

/** A number of things as a receipt says it. */
export interface Count {
  readonly low: number
  readonly high: number
  /** The token behind it. */
  readonly end: number
  /** The word that says it is no exact number. */
  readonly about: string | null
}

/** One number at token `i`, and the token behind it; null where none stands there. */
export function numberAt(tokens: readonly Token[], i: number): {value: number; end: number; dozens: boolean} | null {
  const t = tokens[i]
  if (t === undefined) return null
  let value: number
  let end = i + 1
  if (t.kind === 'number') {
    if (t.den === 0) return null
    value = t.num / t.den
  } else if (t.kind === 'word' && (t.word === 'a' || t.word === 'an')) value = 1
  else if (t.kind === 'word' && t.word === 'half' && tokens[i + 1]?.word === 'a') {
    value = 0.5
    end++
  } else if (t.kind === 'word' && Object.hasOwn(cardinals, t.word)) {
    value = cardinals[t.word]!
    const next = tokens[end]
    if (
      value >= 20 &&
      value % 10 === 0 &&
      next?.kind === 'word' &&
      Object.hasOwn(cardinals, next.word) &&
      cardinals[next.word]! < 10
    ) {
      value += cardinals[next.word]!
      end++
    }
  } else if (t.kind === 'word' && words.dozen.has(t.word)) return {value: 12, end, dozens: false}
  else return null
  const dozens = words.dozen.has(tokens[end]?.word ?? '')
  if (dozens) {
    value *= 12
    end++
    // "a dozen and a half", "a dozen and half"
    const half = tokens[end]?.word === 'and' ? (tokens[end + 1]?.word === 'a' ? end + 2 : end + 1) : -1
    if (half > 0 && tokens[half]?.word === 'half') {
      value *= 1.5
      end = half + 1
    }
  }
  return {value, end, dozens}
}

/** The count at token `i`, with what says that it is not exact: "from two to three", "about 40"; null where none stands there. */
export function count(tokens: readonly Token[], i: number): Count | null {
  let at = i
  let about: string | null = null
  while (
    at < i + 4 &&
    (aboutYield.has(tokens[at]?.word ?? '') ||
      words.before.has(tokens[at]?.word ?? '') ||
      (about !== null && tokens[at]?.word === '.'))
  ) {
    if (aboutYield.has(tokens[at]!.word)) about = tokens[at]!.word
    at++
  }
  const first = numberAt(tokens, at)
  if (first === null) return null
  if (words.range.has(tokens[first.end]?.word ?? '')) {
    const second = numberAt(tokens, first.end + 1)
    if (
      second !== null &&
      second.value > first.value &&
      (tokens[first.end]!.word !== 'and' || words.ofTwo.has(tokens[at - 1]?.word ?? ''))
    ) {
      // "2-3 dozen": the dozen is said of both.
      const low = second.dozens && !first.dozens && first.value * 12 < second.value ? first.value * 12 : first.value
      return {low, high: second.value, end: second.end, about}
    }
  }
  return {low: first.value, high: first.value, end: first.end, about}
}

/** "24 rolls (about)", "20 or so": behind a yield that ends before token `at`. The token after it; `at` where nothing of the kind is said. */
export function pastAbout(tokens: readonly Token[], at: number): number {
  const word = (n: number): string => (tokens[n]?.block === tokens[at]?.block ? (tokens[n]?.word ?? '') : '')
  if (word(at) === 'or' && word(at + 1) === 'so') return at + 2
  const open = word(at) === '(' || word(at) === ','
  const inside = open ? at + 1 : at
  if (!aboutYield.has(word(inside)) || word(inside) === 'some') return at
  let end = inside + 1
  if (word(at) !== '(') return tokens[end]?.kind === 'mark' || word(end) === '' ? end : at
  if (word(end) === '.') end++
  return word(end) === ')' ? end + 1 : at
}

/** How far off a yield may be that is said with this word. */
const factorOf = (word: string): Range => {
  const phrase = aboutYield.get(word) ?? 'about'
  return hedgeAmounts.find(({phrases}) => phrases.includes(phrase))!.factor
}

/**
 * The numbers that a count stands for, widened where it is said to be no exact one.
 *
 * @param hedged a word behind it says so
 */
export function rangeOf(c: Count, hedged: boolean): {readonly low: number; readonly high: number} {
  const word = c.about ?? (hedged ? 'about' : null)
  const factor = word === null ? null : factorOf(word)
  // Things come whole, and what is under one is as it stands.
  const low = factor === null || c.low < 1 ? c.low : Math.max(1, Math.round(c.low * factor.low))
  const high = factor === null || c.high < 1 ? c.high : Math.max(low, Math.round(c.high * factor.high))
  return {low, high}
}
