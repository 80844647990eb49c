import {usualFiring} from '../../oven/forecast.js'
import type {FiringLog} from '../../oven/log.js'
import {firesOf, inOrder} from '../events.js'
import {isNight} from '../model.js'
import type {PlanOptions} from '../options.js'
import type {OvenSoFar} from '../oven-so-far.js'
import {planDay} from '../planner.js'
import {stillBurning} from '../still-burning.js'
import type {Fired, FiringOption, Plan, PlanProblem, Remedy} from '../types.js'
import {burnWays} from './burn-on.js'
import {doorOpenNow} from './door-open.js'
import {againWays} from './fire-again.js'

/**
 * What a fire would do for the rest of a day: the one that burns, if it burned for longer or was raked out sooner; or, where none burns,
 * another, or the door left open of an oven that is too hot, for which a day planned in haste does not look.
 *
 * @param plan the plan that was followed
 * @param rest the rest of the day
 * @param planned what was planned for that
 */
export function fireWays(
  {oven}: Fired,
  {log, plan, found}: {readonly log: FiringLog; readonly plan: Plan; readonly found: OvenSoFar},
  rest: PlanProblem,
  planned: Plan,
  options: PlanOptions,
): readonly Remedy[] {
  const {start, burned, past, parameters, runs} = found
  const {firing, further = []} = start
  const lit = log.lit!
  const now = rest.done!.now - lit
  const told = log.further?.at(-1)
  const last = told && told.raked === null && further.length === log.further!.length ? further.at(-1)! : null
  const again = last !== null && now < last.minutes + last.firing.burn
  const trying = {...options, simulate: found.simulate}
  if (again || (log.raked === null && !told && rest.done!.now < lit + firing.burn)) {
    const fires = firesOf({further})
    const events = inOrder([...past, ...(again ? fires.slice(0, -1) : fires)])
    const fire = stillBurning(oven, {now, plan, start, again, parameters, events, runs})
    return fire ? burnWays(rest, planned, fire, trying, planDay) : []
  }
  if (burned.length > 0 || options.effort === 'quick') return []
  /** The first fire and another, in place of any that is to come and as late as that would be lit, where it does not burn into the night. */
  const another = (soonest: number, minutes: number): FiringOption | null => {
    const more = usualFiring(oven, minutes)
    const at = soonest + found.waits(soonest - lit)
    if (isNight(rest, at) || isNight(rest, at + more.burn + more.soak)) return null
    const all = [{minutes: at - lit, firing: more}]
    return {firing, further: all, forecast: found.foresee(firesOf({further: all}))}
  }
  return [...againWays(rest, planned, another, trying, planDay), ...doorOpenNow(rest, planned, found, trying, planDay)]
}
