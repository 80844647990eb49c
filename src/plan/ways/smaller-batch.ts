import type {Dish} from '../../scale/types.js'
import {askedAs, withCount} from '../batches.js'
import {phrase} from '../phrases.js'
import type {FiringOption, PlanProblem, Remedy} from '../types.js'
import {spares} from './lack.js'
import type {Trials} from './trials.js'

/** Half of a dish that comes late, of all its batches, where that is far less late. */
export function smallerBatch({dishes}: PlanProblem, slow: Dish, trials: Trials, near: readonly FiringOption[]): Remedy | null {
  const batches = dishes.filter((d) => askedAs(d) === askedAs(slow))
  const all = batches.reduce((sum, d) => sum + d.count, 0)
  if (all <= 1) return null
  const count = Math.ceil(all / 2)
  const half = shared(batches.slice(0, Math.ceil(batches.length / 2)), count)
  const changed = {dishes: dishes.flatMap((d) => (batches.includes(d) ? (half.get(d) ?? []) : d))}
  // Vessels not asked for again are as good as left out, so nothing else may be.
  const tried = trials.whereTrue(trials.plan({firings: near, ...changed}), changed, (lack) => spares(lack, trials.now))
  if (!tried) return null
  return trials.remedy(
    'smaller batch',
    tried.plan,
    phrase('remedy smaller batch', {
      count,
      all,
      dishes: {unit: 'dishes', dishes: batches.map(({id}) => id), whole: true},
      outcome: trials.outcome(tried, false),
    }),
  )
}

/** So many vessels shared out among batches as a day's line is: as evenly as may be, the first the larger. */
function shared(batches: readonly Dish[], count: number): Map<Dish, Dish> {
  const [each, more] = [Math.floor(count / batches.length), count % batches.length]
  return new Map(batches.map((dish, i) => [dish, withCount(dish, each + (i < more ? 1 : 0))]))
}
