import type {FiringLog} from '../oven/log.js'
import type {Message} from '../receipt/types.js'
import {setInOf} from './longer.js'
import {orderOf} from './model.js'
import {rules} from './rules.js'
import {placeIn, rowAt} from './told.js'
import type {PlanProblem} from './types.js'

/**
 * White bread and pies that the log has set in too soon after what falls from very hot. It is done, so nothing is left out for it.
 *
 * @returns A warning of rule `half-hour` for each dish, at the row of the log that tells of it.
 */
export function halfHourWanting({done, dishes}: PlanProblem, log: FiringLog): Message[] {
  const set = (done?.set ?? []).flatMap((part) => {
    const {dish: id, lost} = part
    const at = setInOf(part)
    const dish = dishes.find((one) => one.id === id)
    const row = dish && lost !== true ? rowAt(log, 'set in', at, dish) : undefined
    return dish && row ? [{dish, at, row, order: orderOf(dish)}] : []
  })
  return set.flatMap(({dish, at, row, order}): Message[] => {
    if (order !== 2) return []
    const soon = set.find((other) => other.order === 1 && at >= other.at && at - other.at < rules.settleIn.minutes)
    if (!soon) return []
    return [
      {
        ...placeIn(log, row.line),
        severity: 'warning',
        rule: 'half-hour',
        reason: `${dish.title}: set in ${at - soon.at} min after ${soon.dish.title}; half an hour is due`,
        suggest: 'look at it early: the oven is hottest then; or put the time right',
      },
    ]
  })
}
