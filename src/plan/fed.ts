import type {Dish} from '../scale/types.js'
import {askedAs} from './batches.js'
import type {PlanProblem} from './types.js'

/**
 * People expected whom each dish feeds, by the likely figure: no more than the day expects, all batches of a line together. Bread
 * for forty on a day for fourteen is what fourteen have, and half of it missed by seven.
 */
export function fedBy({
  day,
  dishes,
}: Pick<PlanProblem, 'dishes'> & {readonly day: {readonly people: number}}): (dish: Dish) => number {
  const all = new Map<string, number>()
  for (const dish of dishes) {
    const line = askedAs(dish)
    all.set(line, (all.get(line) ?? 0) + dish.feeds.likely)
  }
  return (dish) => dish.feeds.likely * Math.min(1, day.people / Math.max(1, all.get(askedAs(dish)) ?? dish.feeds.likely))
}
