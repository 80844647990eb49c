import type {Dish} from '../scale/types.js'
import {askedAs, withCount} from './batches.js'
import type {FloorGrid} from './floor-grid.js'
import {type Job, jobsOf} from './model.js'
import type {PlanOptions} from './options.js'
import {settleBest} from './settle.js'
import {better, goWithout, type Settled, seeksMore} from './settled.js'
import type {PlanProblem} from './types.js'

/**
 * As many of a dish as the oven bakes. A dish goes in in a few parts of one size each, and where the last of them has no place it is left out
 * whole: twenty loaves of forty, where thirty-six have their place in parts of another size.
 */

/** Dishes left out in part of which fewer are tried, and jobs of a day: where more are left out, the oven is too small for it. */
const FEW = 2
const FEW_JOBS = 30

/** A morning's plan with as many of what it leaves out in part as can be had; the same where that is none more. */
export function asMany(
  problem: PlanProblem,
  grid: FloorGrid,
  settled: Settled,
  options: PlanOptions,
  tick: (share: number) => void,
): Settled {
  if (options.effort === 'quick' || !seeksMore(options, settled) || problem.done || settled.model.jobs.length > FEW_JOBS)
    return settled
  const dishes = [...new Set(settled.unplaced.map(({job}) => job.dish))]
  if (dishes.length > FEW) return settled
  // Of two batches of which nothing is had, what is found for the one is found for the other.
  const none = new Set<string>()
  let best = settled
  for (const dish of dishes) {
    const like = `${askedAs(dish)} ${leftOutOf(best, dish)} of ${dish.count}`
    if (none.has(like)) continue
    const more = moreOf(problem, grid, best, dish, options, tick)
    if (more === best) none.add(like)
    best = more
  }
  return best
}

/** The same with as many of one dish. */
function moreOf(
  problem: PlanProblem,
  grid: FloorGrid,
  settled: Settled,
  dish: Dish,
  options: PlanOptions,
  tick: (share: number) => void,
): Settled {
  const left = leftOutOf(settled, dish)
  const has = dish.count - left
  // What has a place nowhere has none in a smaller part either, or is soon seen to.
  if (left < 2) return settled
  const lost = new Set(settled.unplaced.map(({job}) => job))
  const rest = settled.model.jobs.filter((job) => job.dish !== dish && !lost.has(job))
  const {job, why} = settled.unplaced.find((one) => one.job.dish === dish)!
  const of = (count: number): Job[] =>
    jobsOf({...problem, dishes: [withCount(dish, count)]}, grid).map((part): Job => ({...part, dish, fed: job.fed}))
  const settle = (count: number, how: PlanOptions): Settled => settleBest(problem, grid, [...rest, ...of(count)], how, tick)
  let fits = has
  let not = dish.count
  while (not - fits > 1) {
    const count = (fits + not) >> 1
    if (goWithout(settle(count, {...options, effort: 'quick'})) === 0) fits = count
    else not = count
  }
  // What a quick look has a place for is had in earnest, and half of the rest perhaps.
  const further = (fits + dish.count) >> 1
  let more = further > fits ? settle(further, options) : null
  if (more && goWithout(more) === 0) fits = further
  else if (fits === has) return settled
  else more = settle(fits, options)
  const short: Job = {...job, first: fits + 1, count: dish.count - fits}
  const others = settled.unplaced.filter((one) => one.job.dish !== dish)
  return better(settled, {...more, unplaced: [...more.unplaced, ...others, {job: short, why}]})
}

/** Vessels of a dish that a plan leaves out. */
function leftOutOf({unplaced}: Settled, dish: Dish): number {
  return unplaced.reduce((sum, {job}) => sum + (job.dish === dish ? job.count : 0), 0)
}
