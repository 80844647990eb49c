import Fraction from 'fraction.js'
import {asked} from '../lexicon/asked-words.js'
import {bundles, cardinals, fractions} from '../lexicon/grammar-words.js'
import {aboutYield} from '../lexicon/yield-words.js'
import {readAmount} from '../receipt/amounts.js'
import {fold, plainSection} from '../receipt/section.js'
import {makeView} from '../receipt/view.js'

/** A number as a day's line begins with it, and what stands behind it. */
export interface AskedNumber {
  readonly value: Fraction
  /** Above `value` where a range is written. */
  readonly high: Fraction
  readonly rest: string
}

/** So many words at most make a number that stands in `asked-words`. */
const MOST_WORDS = 3
const TIMES_MARK = /^[x×*]$/

/** How many words at the head of some are a phrase of a table; 0 where none is. */
export function phraseLength(words: readonly string[], has: (phrase: string) => boolean, most = MOST_WORDS): number {
  for (let n = Math.min(most, words.length); n > 0; n--) if (has(words.slice(0, n).map(fold).join(' '))) return n
  return 0
}

/**
 * A number at the head of a text, in figures or words, English or German: "two and a half dozen", "a hundred and twenty", "anderthalb".
 *
 * @param text in lower case, with single blanks
 * @returns null where none stands there, or one that is more or less than it says ("over 12")
 */
export function numberAt(text: string): AskedNumber | null {
  const words = text.split(' ')
  const own = phraseLength(words, (phrase) => asked.numbers.has(phrase))
  if (own > 0) {
    const value = new Fraction(asked.numbers.get(words.slice(0, own).map(fold).join(' '))!)
    return {...inBundles(value, value, words.slice(own).join(' '))}
  }
  const view = makeView(plainSection(text))
  // "2 x 400 g" is two of something, and no 800.
  const mark = view.words.findIndex((word) => TIMES_MARK.test(word))
  const read = readAmount(view, 0, mark > 0 ? mark : view.tokens.length)
  if (read === null || !read.hedges.every((hedge) => aboutYield.has(fold(hedge)))) return null
  const next = view.tokens[read.next]
  const rest = next === undefined ? '' : text.slice(next.start).replace(/^[.-] ?/, '')
  return inBundles(new Fraction(read.low.num, read.low.den), new Fraction(read.high.num, read.high.den), rest)
}

/** "2 Dutzend", which receipts know from their yields only. */
function inBundles(value: Fraction, high: Fraction, rest: string): AskedNumber {
  const dozens = /^dutzend\b ?/.exec(rest)
  return dozens === null ? {value, high, rest} : {value: value.mul(12), high: high.mul(12), rest: rest.slice(dozens[0].length)}
}

/** Whether a word is one of a number, so that no noun of what is baked may hold it. */
export function isNumberWord(word: string): boolean {
  const plain = fold(word)
  return [cardinals, fractions, bundles].some((table) => Object.hasOwn(table, plain)) || asked.numbers.has(plain)
}
