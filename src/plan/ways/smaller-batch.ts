import type {Dish} from '../../scale/types.js'
import {withCount} from '../batches.js'
import {phrase} from '../phrases.js'
import type {FiringOption, PlanProblem, Remedy} from '../types.js'
import {spares} from './lack.js'
import type {Trials} from './trials.js'

/** Half of a dish that comes late, where that is far less late. */
export function smallerBatch({dishes}: PlanProblem, slow: Dish, trials: Trials, near: readonly FiringOption[]): Remedy | null {
  if (slow.count <= 1) return null
  const count = Math.ceil(slow.count / 2)
  const tried = trials.plan({firings: near, dishes: dishes.map((d) => (d === slow ? withCount(d, count) : d))})
  // Vessels not asked for again are as good as left out, so nothing else may be.
  if (!spares(tried.lack, trials.now)) return null
  return trials.remedy(
    'smaller batch',
    tried.plan,
    phrase('remedy smaller batch', {
      count,
      all: slow.count,
      dishes: {unit: 'dishes', dishes: [slow.id]},
      outcome: trials.outcome(tried, false),
    }),
  )
}
