import type {Dish} from '../scale/types.js'
import type {Window} from './dough.js'
import {isMadeUp, makingOf} from './making-time.js'
import type {DoneSoFar, Plan, PlanProblem, Step} from './types.js'

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
  if (!done?.plan || !isMadeUp(dish)) return null
  if (load === undefined) {
    if (!isBeyond(done, dish)) return null
  } else {
    const step = makingsIn(done.plan, dish).find((one) => one.load === load)
    if (!step || step.at <= done.now) return null
  }
  return {least: Number.NEGATIVE_INFINITY, from: done.now + makingOf(dish, count).minutes, to: Number.POSITIVE_INFINITY}
}

/** Before which nothing of a dish is made up, minutes after midnight: by now the plan that was followed had not begun it, or had none of it. */
export function notMadeBefore({done}: PlanProblem, dish: Dish): number {
  if (!done?.plan) return Number.NEGATIVE_INFINITY
  const steps = makingsIn(done.plan, dish)
  const notYet = isBeyond(done, dish) || (steps.length > 0 && steps.every(({at}) => at > done.now))
  return notYet ? done.now : Number.NEGATIVE_INFINITY
}

/** Whether all of a dish that the plan that was followed had is set in: what is left was asked for since, or had no place, and nobody has begun it. */
function isBeyond({plan, set}: DoneSoFar, {id}: Dish): boolean {
  const of = (some: ReadonlyArray<{readonly dish: string; readonly count: number}>): number =>
    some.reduce((sum, one) => (one.dish === id ? sum + one.count : sum), 0)
  return of(plan?.loads.flatMap(({dishes}) => dishes) ?? []) <= of(set)
}
