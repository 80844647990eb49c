import type {FiringLog, LogRow} from '../oven/log.js'
import {saysCooked, saysRaw} from '../oven/log-outcome.js'
import {slug, slugOf} from '../scale/slug.js'
import type {Dish} from '../scale/types.js'
import {rules} from './rules.js'
import {isOf} from './told.js'
import type {DoneSoFar} from './types.js'

/** What the log itself says of food with raw meat or fish in it when it had been drawn, whatever is reckoned of its heat. */

/** What was noted of a dish that was drawn: the row that says that it was not done, and whether it was cooked through since. */
export interface NotedRaw {
  readonly raw: LogRow | null
  readonly cooked: boolean
}

/** A row that is of a dish, as the words behind its name have it; null of any other. A note is of the dish with whose name it begins. */
function rowOf(row: LogRow, dish: Dish): Pick<LogRow, 'text' | 'note' | 'left'> | null {
  if (row.what === 'drawn' || row.what === 'not drawn') return isOf(row, dish) ? row : null
  if (row.what !== 'note') return null
  const words = `${row.about ?? ''} ${row.text}`.trim().split(/[\s-]+/)
  for (const name of new Set([slugOf(dish.file), dish.id])) {
    const length = name.split('-').length
    if (words.length > length && slug(words.slice(0, length).join(' ')) === slug(name))
      return {text: words.slice(length).join(' '), note: row.note}
  }
  return null
}

/**
 * What the rows of a log, from the one that has a dish drawn, say of whether it was done.
 *
 * @param drawn minutes after midnight
 * @param set what has been set in: while more of the dish is in the oven, what is said later is said of that
 */
export function notedRaw({rows}: FiringLog, dish: Dish, drawn: number, set: DoneSoFar['set']): NotedRaw {
  const inside = (at: number): boolean =>
    set.some((one) => one.dish === dish.id && one.at <= at && (one.drawn === null || one.drawn > at))
  let noted: NotedRaw = {raw: null, cooked: false}
  for (const row of rows) {
    const said = row.at >= drawn ? rowOf(row, dish) : null
    if (!said || (row.what === 'drawn' ? row.at !== drawn : inside(row.at))) continue
    if (saysRaw(said)) noted = {raw: row, cooked: false}
    // What stood in the warm for longer before it was cooked through is not made safe by it.
    else if (saysCooked(said) && row.at - drawn <= rules.coldMinutes) noted = {raw: null, cooked: true}
  }
  return noted
}
