import type {Draft} from './entries.js'
import {risingWordAt} from './rising-words.js'
import {sentenceAt} from './sentences.js'
import type {View} from './view.js'

/** Words between "into" and what is made: "into about 24 even rolls" is four. */
const REACH = 4

/** The last word of a title as one thing: "Bridge rolls" are made of a roll each. */
const nounOf = (title: string): string =>
  title
    .toLowerCase()
    .match(/\p{L}+/gu)
    ?.at(-1) ?? ''
const isNoun = (item: string, noun: string): boolean => noun === item || noun === `${item}s` || noun === `${item}es`

/**
 * Whether a counted thing in the method is what the receipt makes, and nothing that goes into it: "shape into 24 rolls", "form 24 rolls", and
 * beside a list of ingredients what the title is called by ("set the 24 rolls on a sheet").
 *
 * @param listed the receipt has a list of its ingredients
 */
export function isWhatIsMade({tokens}: View, d: Draft, title: string, listed: boolean): boolean {
  if (d.inList || d.low === null || d.measure !== 'count') return false
  if (listed && isNoun(d.item, nounOf(title))) return true
  const [first] = sentenceAt(tokens, d.start)
  if (d.start > first && risingWordAt('shapes', tokens, d.start - 1) !== null) return true
  for (let k = d.start; k >= first && k >= d.start - REACH; k--) {
    if (risingWordAt('into', tokens, k) === null) continue
    if (!/^(?:into|zu)$/.test(tokens[k]!.word)) return false
    for (let j = k - 1; j >= first; j--)
      if (risingWordAt('shapes', tokens, j) !== null || risingWordAt('makes', tokens, j) !== null) return true
    return false
  }
  return false
}
