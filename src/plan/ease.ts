import type {Dish, HeatNeed} from '../scale/types.js'
import {rules} from './rules.js'
import type {PlanProblem} from './types.js'

/**
 * A dish's need as it may be taken once the day has begun and something would else be lost: set in and drawn a little cooler than it
 * should be, and drawn when it has had the dose of its receipt's own shortest time, or most of that of its likely one.
 */
export function eased({need, cautions}: Pick<Dish, 'need' | 'cautions'>): HeatNeed {
  const {likely} = need.minutes
  const through = !need.overnight && cautions.some((id) => rules.cookedThrough.some((one) => one === id))
  return {
    ...need,
    startLow: need.startLow - rules.easeCelsius,
    endLow: need.endLow - rules.easeCelsius,
    enough: Math.min(shortest(need), through ? likely : (1 - rules.easeDose) * likely),
  }
}

/** The minutes of a receipt's own shortest time. */
export function shortest({minutes: {low, likely}}: HeatNeed): number {
  return Math.min(low, likely)
}

/** The rest of a day with every dish's limits eased; what is best for a dish stays what it was. */
export function easedDay(problem: PlanProblem): PlanProblem {
  return {...problem, dishes: problem.dishes.map((dish): Dish => ({...dish, need: eased(dish)}))}
}
