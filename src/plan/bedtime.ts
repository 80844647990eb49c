import type {Dish} from '../scale/types.js'
import {type Curve, celsiusAt, whereIndex} from './curve.js'
import {wake} from './hands.js'
import {staysIn} from './keeps.js'
import {spoils} from './left-in.js'
import {isNight} from './model.js'
import {rules} from './rules.js'
import {drinks} from './topping-up.js'
import type {Load, PlanProblem} from './types.js'

/** What becomes of a dish that is not done when the baker goes to bed: nobody opens the door for it at night. Times in minutes after midnight. */

const DAY = 1440

/** When the baker goes to bed next after a time. */
export function bedtimeAfter(at: number): number {
  return rules.nightFrom + DAY * (Math.floor((at - rules.nightFrom) / DAY) + 1)
}

/** The time itself where it is by day, or when the baker gets up after it. */
export function byDayFrom(problem: PlanProblem, at: number): number {
  if (!isNight(problem, at)) return at
  const woken = wake(problem)
  return woken + DAY * Math.ceil((at - woken) / DAY)
}

/** What is told of a dish that is not done by bedtime. */
export type ByBedtime = 'till morning' | 'till morning filled' | 'out by night'

/**
 * What may stay in through the night is left in till the morning, filled up where its water boils away; what may not, and food that
 * would stand there too cool to be safe (`rules.holdCelsius`), is not.
 *
 * @param least the heat, °C, that the oven is likely to have at its place in the morning (`morningHeat`)
 */
export function byBedtime(dish: Dish, least: number): ByBedtime {
  const lukewarm = spoils(dish) && least < rules.holdCelsius
  if (!staysIn(dish.need) || lukewarm) return 'out by night'
  return drinks(dish) ? 'till morning filled' : 'till morning'
}

/** The heat, °C, at the place of what stands in the oven through the night after `bedtime`, when the baker opens the door at the latest (`rules.waking`). */
export function morningHeat(
  curve: Curve,
  {zone = 'across'}: Pick<Load['dishes'][number], 'zone'>,
  bedtime: number,
  lit: number,
  which: 'low' | 'likely',
): number {
  return celsiusAt(curve, whereIndex(zone), bedtime - rules.nightFrom + DAY + rules.waking - lit, which)
}
