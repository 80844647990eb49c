import {indefinites, toTaste} from '../lexicon/grammar-words.js'
import {Phrases, type View} from './view.js'

/**
 * Words that stand for no amount: before a name (“a little”, “some”) and behind it (“to your taste”, “q. s.”).
 */

/** Before a name: “a little”, “some”. */
export const vague = new Phrases(indefinites)
/** Behind a name: “to your taste”. */
export const taste = new Phrases(toTaste)

/** The token after “to your taste” or “q. s.” at `at`; `at` itself where there is none. */
export function pastTaste(view: View, at: number, to: number): number {
  const {words} = view
  if (words[at] === 'q' && at + 1 < to) {
    // "q. s.", quantum sufficit
    const s = words[at + 1] === 's' ? at + 1 : words[at + 2] === 's' ? at + 2 : -1
    if (s > 0 && s < to) return s + 1
  }
  const next = taste.match(words, at, to)
  return next < 0 ? at : next
}
