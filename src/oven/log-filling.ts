import type {LogRow} from './log.js'
import {says} from './log-clauses.js'
import {noteWordsOf} from './note-words.js'

/** What a log tells of a crust baked blind that is taken out to be filled: it is not done, and bakes on. */

const toFill = noteWordsOf('to fill')

/** Minutes within which what is set in again after that is taken to be the filled one. Common practice, no source. */
const FILLED_WITHIN = 60

/** Whether a row of a draw says that it is out to be filled: "drawn to fill", "zum Füllen herausgenommen". */
export const isToFill = (words: string, note: string): boolean => says(`${words} ${note}`, toFill)

/**
 * Whether what is set in is what an earlier row has out to be filled.
 *
 * @param rows those before it
 * @param at minutes after midnight
 */
export function isFilledSince(rows: readonly LogRow[], dish: string | undefined, at: number): boolean {
  const last = rows.findLast((row) => row.dish === dish && /^(?:set in|drawn|not drawn|lost)$/.test(row.what))
  return last?.filling === 'out' && at >= last.at && at - last.at <= FILLED_WITHIN
}
