import {batchesOf} from './batches.js'
import {fedBy} from './fed.js'
import type {FloorGrid} from './floor-grid.js'
import {hinderedBy} from './hindered.js'
import {type Job, priceOfLate} from './model.js'
import type {PlanOptions} from './options.js'
import {setInMore} from './set-in-more.js'
import {settleBest, settleFrom} from './settle.js'
import {better, compared, goWithout, lacksNothing, lateBy, type Settled, seeksMore, tooLate} from './settled.js'
import type {FiringOption, PlanProblem} from './types.js'

/** A morning's day that cannot all be had in time: on which fire, and what is rather left out. */

/** A day, and the jobs of which it is made. */
export interface Laid {
  readonly jobs: readonly Job[]
  readonly settled: Settled
  /** Far more than the oven holds: most of what is left out was never laid out. */
  readonly crowded?: true
}

/** The day on a shorter fire where that has it sooner, and without what cannot be had in time, so that as few as may be go without. */
export function inTime(
  problem: PlanProblem,
  grid: FloorGrid,
  laid: Laid,
  options: PlanOptions,
  tick: (share: number) => void,
): Settled {
  let {jobs, settled} = laid
  if (options.simulate && !lacksNothing(settled)) settled = onShorterFire(problem, grid, jobs, settled, options, tick)
  if (goWithout(settled) === 0) return settled
  // Where not all can be had in time, whom each dish feeds says which; on another day it is not looked at.
  const now = weighed({jobs, settled})
  jobs = now.jobs
  settled = now.settled
  const goneOn = (from: Settled): Settled => better(from, settleFrom(from, problem, grid, jobs, options, tick))
  // Going on from a plan finds more in a fraction of the time of laying the day out anew, and begins where that has got to.
  settled = goneOn(settled)
  if (goWithout(settled) === 0) return settled
  if (jobs.length <= ANEW) settled = better(settled, goneOn(settleBest(problem, grid, jobs, options, tick)))
  const without: Without = (some, from, how, elseAnew = false) => {
    const left = new Set(some.map(({job}) => job))
    const rest = jobs.filter((job) => !left.has(job))
    const told = (again: Settled): Settled => ({...again, unplaced: [...again.unplaced, ...some]})
    const on = from && told(settleFrom(from, problem, grid, rest, how, tick))
    if (on && (!elseAnew || rest.length > FEW_ANEW || goWithout(on) < goWithout(from))) return on
    const anew = told(settleBest(problem, grid, rest, how, tick))
    return on ? better(on, anew) : anew
  }
  let fuller = withoutTooLate(settled, without, options)
  if (goWithout(fuller) > 0 && seeksMore(options, fuller)) fuller = builtUp(fuller, jobs, without, options)
  // One that is left out alone is so already.
  const dishes = dishesOf(settled.unplaced)
  if (fuller === settled && dishes.length > 1) fuller = putBack(settled, dishes, without, options)
  const last = exchanged(problem, grid, fuller, without, options)
  // What was left out for the sake of the rest may have a place among it as it came to be.
  return options.simulate ? setInMore(problem, grid, last, options.simulate) : last
}

/** Jobs of a day up to which it is laid out anew with both priced. */
const ANEW = 45
/** Jobs up to which the best of shorter fires is laid out in earnest. */
const FEW_IN_EARNEST = 20
/** Jobs up to which a day without some of them is laid out anew. */
const FEW_ANEW = 12

/** The same day, its jobs priced as where not all can be had in time. */
function weighed({jobs, settled}: Laid): Laid {
  const copies = new Map(jobs.map((job): [Job, Job] => [job, {...job, weighed: true}]))
  const own = (job: Job): Job => copies.get(job) ?? job
  const {model} = settled
  const dearer = model.jobs.reduce((sum, job, u) => {
    const late = lateBy(settled, u)
    return sum + priceOfLate(late, job.bears) - priceOfLate(late, Number.POSITIVE_INFINITY)
  }, 0)
  return {
    jobs: jobs.map(own),
    settled: {
      ...settled,
      model: {...model, jobs: model.jobs.map(own)},
      unplaced: settled.unplaced.map(({job, why}) => ({job: own(job), why})),
      total: settled.total + dearer,
    },
  }
}

/** Dishes put back one by one: where more are left out, the oven is too small for the day. */
const FEW_BACK = 3

/** Plans the day with some of its jobs left out, which are told as such. */
/** @param from A plan to go on from; anew where there is none. */
type Without = (some: Settled['unplaced'], from: Settled | null, options: PlanOptions, elseAnew?: boolean) => Settled

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
    const whole = without(others, best, options, true)
    if (goWithout(whole) < goWithout(best)) best = whole
  }
  return best
}

/** Batches of which a day is built up anew where not all can be had; with how many of them that is begun. */
const BUILT_UP = 8
const BEGUN_WITH = 3

/**
 * A day that cannot all be had, built up anew: far too much may stand in its own way, and a dish be set in by halves for the sake of another.
 * Begun with each of those batches that by themselves feed most, then one more at a time for as long as fewer go without.
 */
function builtUp(from: Settled, jobs: readonly Job[], without: Without, options: PlanOptions): Settled {
  const batches = new Map(jobs.map(({dish}) => [dish.id, batchesOf(dish)]))
  if (batches.size > BUILT_UP) return from
  const quick: PlanOptions = {...options, effort: 'quick'}
  const plans = new Map<string, Settled>()
  const planOf = (some: ReadonlySet<string>): Settled => {
    const key = [...batches.keys()].filter((id) => some.has(id)).join(' ')
    const known = plans.get(key)
    if (known) return known
    const out = jobs.flatMap((job) => (some.has(job.dish.id) ? [] : [{job, why: 'time' as const}]))
    const plan = without(out, null, quick)
    plans.set(key, plan)
    return plan
  }
  // One batch of a dish is as another.
  const firsts = [...batches].filter(([, of], i, all) => all.findIndex(([, other]) => other === of) === i).map(([id]) => id)
  const ranked = firsts.sort((a, b) => compared(planOf(new Set([a])), planOf(new Set([b]))))
  const all = ranked.flatMap((name) => [...batches].flatMap(([id, of]) => (of === batches.get(name) ? [id] : [])))
  let best = planOf(new Set(ranked.slice(0, 1)))
  for (const first of ranked.slice(0, BEGUN_WITH)) {
    const had = new Set([first])
    let none: string | undefined
    for (const next of all) {
      // What has no place for one batch has none for its like.
      if (had.has(next) || batches.get(next) === none) continue
      if (goWithout(planOf(new Set([...had, next]))) < goWithout(planOf(had))) had.add(next)
      else none = batches.get(next)
    }
    best = better(best, planOf(had))
  }
  return better(from, better(best, without(best.unplaced, best, options)))
}

/** Dishes that are left out for a trial instead of what is. */
const EXCHANGED = 3

/**
 * Where what is left out would feed more than one of the dishes that are not, the day without that one instead: those first that are in its
 * way, then those that feed fewest.
 */
function exchanged(problem: PlanProblem, grid: FloorGrid, from: Settled, without: Without, options: PlanOptions): Settled {
  const gone = goWithout(from)
  const lost = new Set(dishesOf(from.unplaced))
  if (lost.size === 0 || lost.size > FEW_BACK) return from
  const {jobs} = from.model
  const fed = fedBy(problem)
  const fewer = problem.dishes.filter((dish) => !lost.has(dish.id) && fed(dish) < gone)
  if (fewer.length === 0) return from
  const inTheWay = new Set(
    from.unplaced.flatMap(({job}) => hinderedBy(problem, grid, from, job, job.count, options.simulate)?.others ?? []),
  )
  const first = (id: string): number => (inTheWay.has(id) ? 0 : 1)
  const others = fewer.sort((a, b) => first(a.id) - first(b.id) || fed(a) - fed(b)).slice(0, EXCHANGED)
  const quick: PlanOptions = {...options, effort: 'quick'}
  let best = from
  for (const {id} of others) {
    const instead = jobs.flatMap((job) => (job.dish.id === id ? [{job, why: 'floor' as const}] : []))
    const tried = without(instead, from, quick)
    if (goWithout(tried) < goWithout(best)) best = tried
  }
  return best === from ? from : better(best, without(best.unplaced, best, options))
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
    for (const some of ways) if (best === before) best = better(best, without(some, best, quick, true))
    if (best === before) break
    out = more
  }
  if (best === from) return from
  // On the day as it is now some of it may come soon enough.
  best = putBack(best, dishesOf(out), without, quick)
  // That it is better so was soon seen; how it is best done takes as long as any day.
  return better(best, without(best.unplaced, best, options))
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
  // A larger day is rather gone on with.
  if (!found || jobs.length > FEW_IN_EARNEST) return best
  return better(best, settleBest({...problem, firings: [found]}, grid, jobs, options, tick))
}
