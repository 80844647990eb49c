import {writeClock, writeDuration} from '../measure/quantity.js'
import type {FiringLog} from '../oven/log.js'
import type {Message} from '../receipt/types.js'
import type {Dish} from '../scale/types.js'
import {ACROSS, curveOf, doseNeeded} from './curve.js'
import {shortest} from './ease.js'
import {doseBetween, staysIn} from './keeps.js'
import {rules} from './rules.js'
import {middleOf} from './safe-middle.js'
import {placeIn, rowAt} from './told.js'
import type {DoneSoFar, Plan, PlanProblem, Returned} from './types.js'

/** Food with raw meat or fish in it that was drawn and set in again, and that the oven makes safe to eat no more. */

/** How often the longest time of its receipt something set in again may take till it has its heat. Common practice, no source. */
const TIMES = 2

/**
 * Why a dish that was drawn and set in again is not to be baked on; null where it is. Two hours in the warm are the most (USDA FSIS danger
 * zone, `rules.coldMinutes`); and what is not done before the night, or in twice its longest time, stands lukewarm for hours.
 *
 * @param at from when on its heat counts, minutes after midnight
 * @param plan the one that was followed: its forecast is the oven's
 * @param lit when the fire was lit, minutes after midnight
 */
export function inVain(
  {raw, need}: Dish,
  at: number,
  {out, again}: Returned,
  plan: Pick<Plan, 'forecast'>,
  {lit, ambient}: {readonly lit: number; readonly ambient: number},
): DoneSoFar['set'][number]['inVain'] | null {
  if (!raw) return null
  if (again - out > rules.coldMinutes) return 'stood'
  const longest = again + TIMES * (need.longest ?? need.minutes.high)
  const until = need.overnight || staysIn(need) ? longest : Math.min(longest, rules.nightFrom)
  const had = doseBetween(curveOf(plan.forecast, ambient), need, ACROSS, at - lit, Math.max(at, until) - lit)
  return had < doseNeeded(need, shortest(need)) ? 'no heat' : null
}

/** That such food is to come out and be cooked elsewhere, or not eaten, each dish once. */
export function backInVain({done}: PlanProblem, dishes: ReadonlyMap<string, Dish>, log: FiringLog): Message[] {
  const told = new Set<string>()
  return (done?.set ?? []).flatMap(({dish: id, back, inVain: why}): Message[] => {
    const dish = dishes.get(id)
    if (!dish || !back || why === undefined || told.has(id)) return []
    told.add(id)
    const middle = middleOf(dish)
    const {line} = rowAt(log, 'set in', back.again, dish) ?? {}
    const place = {...placeIn(log, line), severity: 'warning', rule: 'drawn-raw'} as const
    return why === 'stood'
      ? [
          {
            ...place,
            reason: `${dish.title}: out of the oven for ${writeDuration(back.again - back.out)} before it was set in again, and there is raw meat or fish in it`,
            suggest: `take it out now: if it stood in the warm, do not eat it; if it was kept cold, cook it through elsewhere now, and do not eat it before it has ${middle}`,
          },
        ]
      : [
          {
            ...place,
            reason: `${dish.title}: set in again at ${writeClock(back.again)}, and the oven has no heat left to cook it through; there is raw meat or fish in it`,
            suggest: `take it out now, cook it through elsewhere, and do not eat it before it has ${middle}`,
            times: [back.again],
          },
        ]
  })
}
