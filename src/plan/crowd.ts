import type {FloorGrid} from './floor-grid.js'
import {settleEmpty} from './given-curves.js'
import type {Job} from './model.js'
import type {PlanOptions} from './options.js'
import type {PlanProblem} from './types.js'

/** A day of far more than the oven holds: what the search on given curves has no place for is not laid out at all. */

/**
 * Jobs from which on that is asked, and the share of them that has to be without a place: an oven that its loads cool holds less than one
 * that they do not, so that where so many are without even there, no laying out brings them all in, and it takes as long as they are many.
 */
const MANY = 100
const SHARE = 0.25

/** The jobs of a morning's day that have no place even in an oven that its loads do not cool; none where they are not far too many. */
export function crowdedOut(
  problem: PlanProblem,
  grid: FloorGrid,
  jobs: readonly Job[],
  options: PlanOptions,
  tick: (share: number) => void,
): ReadonlySet<Job> {
  if (!options.simulate || problem.done || jobs.length < MANY) return new Set()
  const {unplaced} = settleEmpty(problem, grid, jobs, {effort: 'quick'}, (share) => tick(share / 2))
  return unplaced.length < SHARE * jobs.length ? new Set() : new Set(unplaced.map(({job}) => job))
}
