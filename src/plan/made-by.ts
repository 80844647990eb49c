import type {Dish} from '../scale/types.js'
import type {Window} from './dough.js'
import {isMadeUp, makingOf} from './making-time.js'
import type {Plan, PlanProblem, Step} from './types.js'

/** The steps of a plan that make a dish up. */
const makingsIn = ({steps}: Plan, {id}: Dish): readonly Step[] =>
  steps.filter(({action, dishes}) => action === 'mix' && dishes.includes(id))

/**
 * When a part of what has no dough can be made up, on a day that has begun. What the plan that was followed had made up by now is ready for its
 * load, or will be; what it has made up later is begun now at the soonest.
 *
 * @param load the load of it in that plan
 * @param count how many vessels of it
 * @returns minutes after midnight; null where nothing keeps it from being set in
 */
export function madeUpBy({done}: PlanProblem, dish: Dish, load: number | undefined, count: number): Window | null {
  if (!done?.plan || load === undefined || !isMadeUp(dish)) return null
  const step = makingsIn(done.plan, dish).find((one) => one.load === load)
  if (!step || step.at <= done.now) return null
  return {least: Number.NEGATIVE_INFINITY, from: done.now + makingOf(dish, count).minutes, to: Number.POSITIVE_INFINITY}
}

/** Before which nothing of a dish is made up, minutes after midnight: by now the plan that was followed had not begun it. */
export function notMadeBefore({done}: PlanProblem, dish: Dish): number {
  const steps = done?.plan ? makingsIn(done.plan, dish) : []
  return steps.length > 0 && steps.every(({at}) => at > done!.now) ? done!.now : Number.NEGATIVE_INFINITY
}
