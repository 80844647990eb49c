import type {Dish} from '../scale/types.js'
import {ACROSS, curveOf, doseNeeded} from './curve.js'
import {doseBetween} from './keeps.js'
import {rules} from './rules.js'
import type {Told} from './told.js'
import type {DoneSoFar, Plan} from './types.js'

/** What was looked at and not done: the one who looks knows more of it than the plan does. */

type SetIn = DoneSoFar['set'][number]

/**
 * From when on the heat of a dish counts that was found not to be done: late enough for it to have its heat when it was said to want no more,
 * or, where no time was said, when it is to be looked at again; never later than when it was looked at.
 *
 * @param at from when on it would count but for that, minutes after midnight
 * @param plan the one that was followed: its forecast is the oven's
 * @param lit when the fire was lit, minutes after midnight
 * @returns null where it would not have had its heat by then anyhow
 */
export function countsFrom(
  {need}: Dish,
  at: number,
  {at: looked, minutes = rules.lookEvery}: NonNullable<Told['longer']>,
  plan: Pick<Plan, 'forecast'>,
  {lit, ambient}: {readonly lit: number; readonly ambient: number},
): Pick<SetIn, 'at' | 'longer'> | null {
  const curve = curveOf(plan.forecast, ambient)
  const until = looked + minutes
  const wanted = doseNeeded(need)
  const done = (from: number): boolean => doseBetween(curve, need, ACROSS, from - lit, until - lit) > wanted
  if (!done(at)) return null
  let from = at
  while (from < looked && done(from)) from++
  return {at: from, longer: {setIn: at, looked, until}}
}

/** When what is in a load was set in, minutes after midnight: what is reckoned to want longer than its hour tells was set in before that. */
export const loadedAt = (at: number, dish: string, done: DoneSoFar | undefined): number =>
  done?.set.find((one) => one.dish === dish && one.at === at)?.longer?.setIn ?? at

/** When something was set in, by the log or as it is taken to have been. */
export const setInOf = ({at, longer}: Pick<SetIn, 'at' | 'longer'>): number => longer?.setIn ?? at
