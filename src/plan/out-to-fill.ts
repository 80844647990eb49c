import type {FiringLog, LogRow} from '../oven/log.js'
import type {Dish} from '../scale/types.js'
import {isOf} from './told.js'

/**
 * A log in which only a crust baked blind is out to be filled: what has no filling that is baked, "drawn to fill", is drawn and done, and what
 * is set in after that is set in.
 *
 * @param dishes the day's; of a dish that is none of them the row stays as it was read
 */
export function outToFill(log: FiringLog, dishes: readonly Dish[]): FiringLog {
  const isDrawn = (row: LogRow): boolean => {
    const of = dishes.filter((dish) => isOf(row, dish))
    return row.filling !== undefined && of.length > 0 && of.every(({tending}) => !tending?.some(({fills}) => fills))
  }
  if (!log.rows.some(isDrawn)) return log
  const rows = log.rows.map((row): LogRow => {
    if (!isDrawn(row)) return row
    const {filling, still: _, ...plain} = row
    return {...plain, what: filling === 'out' ? 'drawn' : 'set in'}
  })
  return {...log, rows}
}
