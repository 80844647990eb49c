import {lengthIn} from '../receipt/time-lengths.js'
import {clausesOf, deedsIn} from './log-clauses.js'
import {noteWordsOf} from './note-words.js'

/** How much longer a dish is to have that was looked at and is not done, by the row that says so. */

const onTop = noteWordsOf('on top')
const offTime = noteWordsOf('off time')

/**
 * The minutes that a row of what is not done, or was put back, gives it yet: "needs 15 min more", "put back for 10 minutes", "noch eine
 * Viertelstunde". "Put back 10 min late" gives it none.
 *
 * @returns the middle of a range; null where the row says nothing of it
 */
export function longerBy(value: string, note: string): number | null {
  for (const clause of clausesOf(`${value}, ${note}`)) {
    const words = clause.toLowerCase().split(' ')
    if (words.some((word) => offTime.includes(word))) continue
    const told =
      words.some((word) => onTop.includes(word)) || deedsIn(clause).some((deed) => deed === 'set in' || deed === 'not drawn')
    const length = told ? lengthIn(clause) : null
    if (length !== null) return (length.low + length.high) / 2
  }
  return null
}
