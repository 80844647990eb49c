import type {FloorGrid} from './floor-grid.js'
import {settleEmpty} from './given-curves.js'
import {goneOnWith, settleLoaded} from './loaded.js'
import type {Job} from './model.js'
import type {PlanOptions} from './options.js'
import {setInMore} from './set-in-more.js'
import type {Settled} from './settled.js'
import type {PlanProblem} from './types.js'

/** The best found for some jobs: on the simulated oven where there is one, else on the fires' own curves. */
export function settleBest(
  problem: PlanProblem,
  grid: FloorGrid,
  jobs: readonly Job[],
  options: PlanOptions,
  tick: (share: number) => void,
): Settled {
  const settled = options.simulate
    ? settleLoaded(problem, grid, jobs, options, options.simulate, tick)
    : settleEmpty(problem, grid, jobs, options, tick)
  const whole: Settled = {...(settled.whole?.() ?? settled), ...(settled.eased ? {eased: true} : {})}
  return options.simulate && !problem.done ? setInMore(problem, grid, whole, options.simulate) : whole
}

/** The best found for some jobs by going on from a plan of them, or of jobs much like them; anew where that cannot be. */
export function settleFrom(
  from: Settled,
  problem: PlanProblem,
  grid: FloorGrid,
  jobs: readonly Job[],
  options: PlanOptions,
  tick: (share: number) => void,
): Settled {
  const {simulate} = options
  const settled = simulate ? goneOnWith(problem, grid, jobs, from, options, simulate, tick) : null
  if (!settled) return settleBest(problem, grid, jobs, options, tick)
  const whole = settled.whole?.() ?? settled
  return problem.done ? whole : setInMore(problem, grid, whole, simulate!)
}
