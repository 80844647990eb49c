import {coldPlaces} from '../lexicon/dough-work.js'
import {fold, isFoodWord} from '../lexicon/index.js'
import {risingWords} from '../lexicon/rising-words.js'
import type {ColdPlace, RisingWord} from '../lexicon/schema.js'
import {type FoundPhrase, phraseAt, phrasesUsed} from './phrases.js'
import type {Token} from './section.js'

/** The words of `lexicon/rising-words` in a text, and the cold place that something is put into. */

export type RisingUse = RisingWord['use']
const TREES = new Map(risingWords.map(({use}) => [use, phrasesUsed(risingWords, use)]))

/** The words of a use that begin at token `k`; null where none do. */
export const risingWordAt = (use: RisingUse, tokens: readonly Token[], k: number): FoundPhrase<RisingWord> | null => {
  const found = phraseAt(TREES.get(use)!, tokens, k)
  // "Sour cream", "sour cherries": no sour.
  return found !== null && use === 'sponge' && tokens[k]!.word === 'sour' && isFoodWord(fold(tokens[found.to]?.word ?? ''))
    ? null
    : found
}

type Place = ColdPlace['id']
const PLACES: readonly Place[] = coldPlaces.map(({id}) => id)

/** What may stand between "in" and the place: "in the bottom of your fridge". */
const BETWEEN = /^(?:the|a|an|your|bottom|of|back|very|den|dem|der|einem|einen|einer|die)$/
const IN = /^(?:in|into|im|ins|an|inside|to)$/
/** What stands before the place is another matter: "take it out of the refrigerator", "not in the fridge". */
export const NOT_THERE = /^(?:not|nicht|never|no|out|without)$/

/** The cold place that token `k` says something is in or put into, "in the refrigerator", "into a cool larder"; null where it says none. */
export function coldPlaceAt(tokens: readonly Token[], k: number): Place | null {
  const place = PLACES.find((one) => risingWordAt(one, tokens, k) !== null)
  if (place === undefined) return null
  let j = k - 1
  while (j >= 0 && BETWEEN.test(tokens[j]!.word)) j--
  return j >= 0 && IN.test(tokens[j]!.word) && !NOT_THERE.test(tokens[j - 1]?.word ?? '') ? place : null
}

/** The cold place that begins at token `k`, whatever stands before it; null where none does. */
export function namedPlaceAt(tokens: readonly Token[], k: number): {readonly place: Place; readonly to: number} | null {
  for (const place of PLACES) {
    const found = risingWordAt(place, tokens, k)
    if (found !== null) return {place, to: found.to}
  }
  return null
}
