import {clausesOf, says} from './log-clauses.js'
import {countAt} from './log-counts.js'
import {deedOf} from './log-deeds.js'
import {outcomeOf} from './log-outcome.js'
import {noteWordsOf} from './note-words.js'

/** What a dish's row says was put back into the oven, or was left there, since it was not done. */

const returned = noteWordsOf('put back')
const again = noteWordsOf('again')

/**
 * Whether what is set in was in the oven before: `sure` by "put back" or by "raw in the middle", `again` where it may be the next batch as well; null
 * where nothing says so.
 */
export function backIn(text: string, note: string): 'sure' | 'again' | null {
  if (says(text, returned) || outcomeOf({text, note}) === 'underdone') return 'sure'
  return says(`${text}, ${note}`, again) ? 'again' : null
}

/** Whether a clause tells that something is in the oven, again or yet. */
function isIn(clause: string): boolean {
  const deed = deedOf(clause)?.deed
  return deed === 'set in' || deed === 'not drawn'
}

/** Whether a row of what was not drawn says that it is in the oven, "still in", "not drawn": "not done" may be said of what stands outside as well. */
export const isStillIn = (words: string, note: string): boolean =>
  clausesOf(`${words}, ${note}`).some(
    (clause) => deedOf(clause)?.deed === 'not drawn' && outcomeOf({text: clause, note: ''}) === 'plain',
  )

/**
 * Whether what stands behind "drawn" says that it is in the oven again: "not done, back in the oven", "raw in the middle, put back 10 min". That it was
 * not done is not enough, since much is drawn so for want of time.
 *
 * @param behind the words behind "drawn", as far as the row's own cell has them
 */
export const isPutBack = (behind: string, note: string): boolean =>
  clausesOf(`${behind}, ${note}`).some((clause) => {
    if (deedOf(clause)?.deed === 'set in') return true
    // "Raw in the middle put back 10 min" has no mark before what was done.
    const at = clause.split(' ').findIndex((_, i, all) => i > 0 && deedOf(all.slice(i).join(' '))?.deed === 'set in')
    return at > 0 && countAt(clause) === null && says(clause.split(' ').slice(at).join(' '), returned)
  })

/** "2 of 4 not done", "4 noch nicht fertig", "2 put back" behind "drawn": how many are in the oven yet; null where nothing says so. */
export function leftIn(behind: string, note: string): {readonly count: number; readonly of?: number} | null {
  for (const clause of clausesOf(`${behind}, ${note}`)) {
    const found = countAt(clause)
    if (found === null || found.count === 0) continue
    const rest = found.rest.trim()
    // What is counted may be named: "2 loaves not done".
    if (![rest, rest.replace(/^\p{L}+ /u, '')].some(isIn)) continue
    const of = / ?(?:of|von) (?:the |den )?(\d{1,3})\b/i.exec(clause.slice(0, clause.length - found.rest.length))?.[1]
    return {count: found.count, ...(of === undefined ? {} : {of: Number(of)})}
  }
  return null
}
