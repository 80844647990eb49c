import {type Deed, deedOf} from './log-deeds.js'
import {wordsIn} from './log-outcome.js'

/** What the words of a log's row say, clause by clause. */

/** The clauses of some words, without what joins them. */
export const clausesOf = (words: string): string[] =>
  words
    .split(/[,;:()]| (?:and|but|und|aber) /)
    .map((clause) => clause.trim().replace(/^(?:and|but|und|aber) /, ''))
    .filter((clause) => clause !== '')

/** All that a clause tells to have been done: "raw in the middle put back 10 min" has no mark before it. */
export function deedsIn(clause: string): Deed[] {
  const words = clause.split(' ')
  return words.flatMap((_, i) => deedOf(words.slice(i).join(' '))?.deed ?? [])
}

/** Whether some words are among those of a text, as whole words. */
export function says(text: string, phrases: readonly string[]): boolean {
  const small = ` ${wordsIn(text).join(' ')} `
  return phrases.some((phrase) => small.includes(` ${phrase} `))
}
