import type {Dish, HeatNeed} from '../scale/types.js'
import {rules} from './rules.js'
import type {PlanProblem} from './types.js'

/** How far limits are eased. */
export type Ease = keyof typeof rules.ease

/**
 * A dish's need as it may be taken once the day has begun and something would else be lost: set in and drawn a little cooler than it
 * should be, and drawn when it has had the dose of its receipt's own shortest time, or most of that of its likely one.
 */
export function eased({need, cautions}: Pick<Dish, 'need' | 'cautions'>, how: Ease): HeatNeed {
  const {likely} = need.minutes
  const {celsius} = rules.ease[how]
  return {
    ...need,
    startLow: need.startLow - celsius,
    endLow: need.endLow - celsius,
    enough: Math.min(shortest(need), (1 - wanting({need, cautions}, how)) * likely),
  }
}

/** A dish in the oven as it is held to its dose, or nearly all of it: what is still to be set in may be eased for it, and hardly it for that. */
export function inOven(dish: Dish): Dish {
  const {need} = dish
  if (need.enough === undefined) return dish
  return {...dish, need: {...need, enough: Math.max(need.enough, (1 - rules.easeInside) * need.minutes.likely)}}
}

/** Share of its dose that may be wanting. */
function wanting({need, cautions}: Pick<Dish, 'need' | 'cautions'>, how: Ease): number {
  const isOf = (list: readonly string[]): boolean => cautions.some((id) => list.includes(id))
  const through = isOf(rules.cookedThrough)
  if (need.overnight) return rules.ease[through ? 'near' : how].night
  if (through) return 0
  return rules.ease[isOf(rules.setByEggs) ? 'near' : how].dose
}

/** The minutes of a receipt's own shortest time. */
export function shortest({minutes: {low, likely}}: HeatNeed): number {
  return Math.min(low, likely)
}

/** The rest of a day with every dish's limits eased; what is best for a dish stays what it was. */
export function easedDay(problem: PlanProblem, how: Ease): PlanProblem {
  return {...problem, dishes: problem.dishes.map((dish): Dish => ({...dish, need: eased(dish, how)}))}
}
