import type {Dish} from '../scale/types.js'
import {lowerBound} from './bound.js'
import {type FloorGrid, floorGrid} from './floor-grid.js'
import {settleEmpty} from './given-curves.js'
import {settleLoaded} from './loaded.js'
import {type Job, jobsOf, lateness, passes} from './model.js'
import {PlanCancelled, type PlanOptions} from './options.js'
import {vesselsOf} from './places.js'
import {rules} from './rules.js'
import {setInMore} from './set-in-more.js'
import {better, goWithout, type Settled, tooLate} from './settled.js'
import type {Standing} from './standing.js'
import type {FiringOption, Plan, PlanProblem} from './types.js'
import {write} from './written.js'

/**
 * Plan a bake day.
 *
 * @param problem The day as data; times in minutes after midnight, lengths m, temperatures °C.
 * @returns The best plan found, checked, with its distance from a proven bound; where some dishes cannot be baked, `possible` is
 *   false, `unplaced` names them and the plan is for the rest.
 * @throws PlanCancelled when `options.cancelled` said so.
 */
export function planDay(problem: PlanProblem, options: PlanOptions = {}): Plan {
  const grid = floorGrid(problem)
  const full = options.effort !== 'quick'
  const tick = (share: number): void => {
    if (options.cancelled?.()) throw new PlanCancelled()
    options.progress?.(share)
  }
  tick(0)
  if (problem.firings.length === 0) throw new RangeError('no firing to plan with')
  const lone = problem.dishes.flatMap((dish) => {
    const why = passes(grid, dish)
    return why ? [{dish, ...why}] : []
  })
  let jobs = jobsOf(problem, grid)
  let settled = settleBest(problem, grid, jobs, options, tick)
  // What did not fit whole may fit in two batches.
  if (settled.unplaced.length > 0 && full && !problem.done) {
    const split = new Map<string, number>()
    for (const {job, why} of settled.unplaced)
      if (why === 'floor' && job.count >= 2 && job.since === null)
        split.set(job.dish.id, 2 * Math.ceil(job.dish.count / job.count))
    if (split.size > 0 && split.size <= FEW_SPLIT) {
      const parts = jobsOf(problem, grid, split)
      const again = settleBest(problem, grid, parts, {...options, effort: 'quick'}, tick)
      const before = settled
      if (goWithout(again) < goWithout(settled)) settled = again
      // That it can be done was soon seen; how it is best done takes as long as any day.
      if (again.unplaced.length === 0) settled = better(again, settleBest(problem, grid, parts, options, tick))
      if (settled !== before) jobs = parts
    }
  }
  if (full && !options.bare && !problem.done) {
    if (options.simulate && (settled.unplaced.length > 0 || minutesLate(settled) > 0))
      settled = onShorterFire(problem, grid, jobs, settled, options, tick)
    // Where not all can be had in time, whom each dish feeds says which; on another day it is not looked at.
    if (goWithout(settled) > 0) {
      const weighed = new Map(jobs.map((job) => [job, {...job, weighed: true}]))
      const own = (job: Job): Job => weighed.get(job) ?? job
      jobs = [...weighed.values()]
      settled = {
        ...settled,
        model: {...settled.model, jobs: settled.model.jobs.map(own)},
        unplaced: settled.unplaced.map(({job, why}) => ({job: own(job), why})),
      }
      settled = better(settled, settleBest(problem, grid, jobs, options, tick))
    }
    const without: Without = (some, how) => {
      const left = new Set(some.map(({job}) => job))
      const rest = jobs.filter((job) => !left.has(job))
      const again = settleBest(problem, grid, rest, how, tick)
      return {...again, unplaced: [...again.unplaced, ...some]}
    }
    const dishes = dishesOf(settled.unplaced)
    const inTime = withoutTooLate(settled, without, options)
    // One that is left out alone is so already.
    settled = inTime === settled && dishes.length > 1 ? putBack(settled, dishes, without, options) : inTime
  }
  if (!problem.done) settled = inOrder(settled)
  tick(0.85)
  const bound = full ? boundOf(problem, settled) : null
  tick(0.95)
  const plan = write(problem, grid, settled, lone, bound, options, planDay)
  tick(1)
  return plan
}

/**
 * The batches and parts of one dish in the order in which they go in: to the search they are alike, to the baker the first dough is the
 * first to be mixed, and all of a dough is set in before the next where their parts allow it.
 */
function inOrder(settled: Settled): Settled {
  const {model, found} = settled
  const {jobs} = model
  const takes = jobs.slice()
  const at = (u: number, of: readonly Int32Array[]): number => of[u]![found.chosen[u]!]!
  const byTime = (a: number, b: number): number => at(a, model.s) - at(b, model.s) || at(a, model.e) - at(b, model.e) || a - b
  const alike = (some: readonly number[], keyOf: (job: Job) => unknown): number[][] => {
    const groups = new Map<string, number[]>()
    for (const u of some) {
      const key = JSON.stringify(keyOf(jobs[u]!))
      groups.set(key, [...(groups.get(key) ?? []), u])
    }
    return [...groups.values()]
  }
  const placed = jobs.flatMap((_, u) => (found.chosen[u]! < 0 ? [] : [u]))
  // What batches of one dish have in common.
  const batched = alike(placed, ({dish}) => [dish.file, dish.vessel, dish.need, dish.mass, dish.wantedBy])
  for (const group of batched) {
    const whole = batchByBatch(group.map((u) => jobs[u]!))
    const sorted = [...group].sort(byTime)
    const inTime = sorted.map((u) => jobs[u]!)
    const parts = whole && (takenInTurn(whole, inTime) ?? takenInTurn([...whole].reverse(), inTime))
    if (parts) for (const [i, u] of sorted.entries()) takes[u] = parts[i]!
    // Where their parts are of other sizes, those alike at least keep their order.
    else
      for (const same of alike(group, ({count}) => count))
        for (const [i, u] of [...same].sort(byTime).entries()) takes[u] = jobs[same[i]!]!
  }
  const standing = jobs.flatMap((job, u): Standing[] => {
    const {dish, first} = takes[u]!
    return vesselsOf(job, settled.standing).map((v) => ({...v, dish: dish.id, number: v.number - job.first + first}))
  })
  return {...settled, model: {...model, jobs: takes}, standing}
}

/** The batches of some parts, all of whose vessels are among these; null where some are not. */
function batchByBatch(parts: readonly Job[]): Dish[] | null {
  const dishes = [...new Set(parts.map(({dish}) => dish))]
  const has = (dish: Dish): number => parts.reduce((sum, part) => (part.dish === dish ? sum + part.count : sum), 0)
  return dishes.every((dish) => has(dish) === dish.count) ? dishes : null
}

/** Parts in the order of the clock, the first of them of the first batch, and so on; null where a batch would end amid a part. */
function takenInTurn(dishes: readonly Dish[], parts: readonly Job[]): Job[] | null {
  const out: Job[] = []
  let batch = 0
  let first = 1
  for (const part of parts) {
    const dish = dishes[batch]
    if (!dish || first + part.count - 1 > dish.count) return null
    out.push({...part, dish, first})
    first += part.count
    if (first <= dish.count) continue
    batch++
    first = 1
  }
  return out
}

/** Dishes that are tried in two batches: where more are left out, the oven is too small for the day. */
const FEW_SPLIT = 2

/** Dishes put back one by one: where more are left out, the oven is too small for the day. */
const FEW_BACK = 3

/** Plans the day with some of its jobs left out, which are told as such. */
type Without = (some: Settled['unplaced'], options: PlanOptions) => Settled

/**
 * Where something is left out, a day without it and without the rest of what is left out was never looked at by itself: each dish left out is
 * put back alone, and the plan taken that leaves least out.
 */
function putBack(from: Settled, dishes: readonly string[], without: Without, options: PlanOptions): Settled {
  let best = from
  if (dishes.length > FEW_BACK) return best
  for (const id of dishes) {
    const others = best.unplaced.filter(({job}) => job.dish.id !== id)
    if (others.length === best.unplaced.length) continue
    const whole = without(others, options)
    if (goWithout(whole) < goWithout(best)) best = whole
  }
  return best
}

const dishesOf = (some: Settled['unplaced']): string[] => [...new Set(some.map(({job}) => job.dish.id))]

/** Times that what comes too late is left out, since the rest may then come too late no more, or something else. */
const LATE_OUT = 3

/** The day without what would come too late to be of use: what was baked before it for its sake may be had sooner, or on a shorter fire. */
function withoutTooLate(from: Settled, without: Without, options: PlanOptions): Settled {
  const quick: PlanOptions = {...options, effort: 'quick'}
  let best = from
  let out: Settled['unplaced'] = []
  for (let i = 0; i < LATE_OUT; i++) {
    const late = tooLate(best)
    if (late.length === 0) break
    const more = [...out, ...late.map((job) => ({job, why: 'time' as const}))]
    // What had no place beside it may have one now; failing that the rest is planned without both.
    const others = best.unplaced.filter(({job}) => !more.some((one) => one.job === job))
    const ways = others.length > 0 ? [more, [...more, ...others]] : [more]
    const before = best
    for (const some of ways) if (best === before) best = better(best, without(some, quick))
    if (best === before) break
    out = more
  }
  if (best === from) return from
  // On the day as it is now some of it may come soon enough.
  best = putBack(best, dishesOf(out), without, quick)
  // That it is better so was soon seen; how it is best done takes as long as any day.
  return better(best, without(best.unplaced, options))
}

/** Minutes by which the dishes of a day are drawn after they are wanted, summed. */
function minutesLate({model, found}: Settled): number {
  return model.jobs.reduce((sum, job, u) => {
    const o = found.chosen[u]!
    return o < 0 ? sum : sum + lateness(job, model.clock0 + model.e[u]![o]! * rules.tick)
  }, 0)
}

/**
 * Where the day is late or something is left out, a shorter fire is ready sooner, and a short look may have passed it over: fires are tried
 * one after the other, each shorter than the last, for as long as the day grows better, and the best is laid out in earnest.
 */
function onShorterFire(
  problem: PlanProblem,
  grid: FloorGrid,
  jobs: readonly Job[],
  settled: Settled,
  options: PlanOptions,
  tick: (share: number) => void,
): Settled {
  let best = settled
  let found: FiringOption | null = null
  const shorter = problem.firings
    .filter((f) => !f.further && !settled.option.further && f.firing.burn < settled.option.firing.burn)
    .sort((a, b) => b.firing.burn - a.firing.burn)
  for (const option of shorter) {
    const tried = settleBest({...problem, firings: [option]}, grid, jobs, {...options, effort: 'quick'}, tick)
    if (goWithout(tried) > goWithout(best) || better(best, tried) === best) break
    best = tried
    found = option
  }
  return found ? better(best, settleBest({...problem, firings: [found]}, grid, jobs, options, tick)) : settled
}

function settleBest(
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

/** The least any plan could cost under the model, of this fire and lighting time, with this plan's loads in the oven. */
function boundOf(problem: PlanProblem, settled: Settled): number | null {
  // A plan made again also pays for what it moves, so the two would not be alike.
  if (settled.unplaced.length > 0 || problem.done?.plan) return null
  const n = settled.model.jobs.length
  const rounds = n > 150 ? 40 : n > 60 ? 120 : 160
  const mine = lowerBound(settled.model, settled.total, rounds)
  return Math.min(mine.bound, settled.total)
}
