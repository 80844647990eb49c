import type {FiringLog, LogRow} from '../oven/log.js'
import type {Message} from '../receipt/types.js'
import type {Dish} from '../scale/types.js'
import {isOf, placeIn} from './told.js'

/** A spare receipt that the log says was set in, though the day does not ask for it, and the row that tells. */
export interface SpareBaked {
  readonly dish: Dish
  readonly row: LogRow
}

/** Which of the day's spare receipts were set in by the log. */
export function spareBaked(spare: readonly Dish[], dishes: readonly Dish[], log: FiringLog): SpareBaked[] {
  const isAsked = (row: LogRow): boolean => dishes.some((dish) => isOf(row, dish))
  return spare.flatMap((dish) => {
    const row = log.rows.find((one) => one.what === 'set in' && isOf(one, dish) && !isAsked(one))
    return row ? [{dish, row}] : []
  })
}

/** What the log says was set in and the day has among its spare receipts only: the plan is reckoned without its heat and its place. */
export function spareSetIn(baked: readonly SpareBaked[], log: FiringLog): Message[] {
  return baked.map(
    ({dish, row}): Message => ({
      ...placeIn(log, row.line),
      severity: 'warning',
      rule: 'spare-set-in',
      reason: `${dish.title}: set in, and the day has it among its spare receipts only, so the plan knows nothing of its place and its heat`,
      suggest: 'move its line up into the day’s list, with how much went in, and plan again',
    }),
  )
}
