import type {Dish} from '../../scale/types.js'
import {askedAs} from '../batches.js'
import {phrase} from '../phrases.js'
import type {FiringOption, PlanProblem, Remedy} from '../types.js'
import {spares} from './lack.js'
import type {Trials} from './trials.js'

/**
 * A dish that the day wants hot wanted by that hour instead, in all its batches, where far less then comes late: what is baked in time can be
 * warmed again.
 */
export function notHot({dishes}: PlanProblem, hot: Dish, trials: Trials, near: readonly FiringOption[]): Remedy | null {
  const batches = dishes.filter((d) => d.wantedHot && d.wantedBy === hot.wantedBy && askedAs(d) === askedAs(hot))
  const changed = {dishes: dishes.map((d) => (batches.includes(d) ? byThen(d) : d))}
  const tried = trials.whereTrue(trials.plan({firings: near, ...changed}), changed, (lack) => spares(lack, trials.now))
  if (!tried || hot.wantedBy === null) return null
  return trials.remedy(
    'not hot',
    tried.plan,
    phrase('remedy not hot', {
      dishes: {unit: 'dishes', dishes: batches.map(({id}) => id), whole: true},
      at: {unit: 'clock', value: hot.wantedBy},
      outcome: trials.outcome(tried, false),
    }),
  )
}

/** A dish wanted by its hour, and not hot then. */
function byThen({wantedHot: _, ...dish}: Dish): Dish {
  return dish
}

/** One dish of each of the day's lines that want it hot. */
export function wantedHotOf({dishes}: PlanProblem): Dish[] {
  const hot = dishes.filter((d) => d.wantedHot)
  return hot.filter((d, i) => hot.findIndex((other) => askedAs(other) === askedAs(d)) === i)
}
