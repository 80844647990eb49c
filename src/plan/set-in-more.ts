import {curveOf} from './curve.js'
import {eventsOf} from './events.js'
import {type FloorGrid, zoneAt} from './floor-grid.js'
import {keeps} from './keeps.js'
import {choiceAt, feedsOf, type Job, keepHalfHour, modelOf, programOf} from './model.js'
import type {Simulate} from './options.js'
import {partUnder} from './places.js'
import {type PlaceLeft, PlacesLeft} from './places-left.js'
import {costOf} from './proof.js'
import {rules} from './rules.js'
import {fireOf, goWithout, type Settled, tookIn} from './settled.js'
import type {PlanProblem} from './types.js'

/** Parts left out above which the oven is far too small for the day, and no place is looked for. */
const FEW = 8

/**
 * A morning's plan with what it leaves out set in where there is a place for it after all, among the rest as it stands: each is tried on the
 * simulated oven, and takes nothing from what has its place already. What feeds most comes first.
 */
export function setInMore(problem: PlanProblem, grid: FloorGrid, settled: Settled, simulate: Simulate): Settled {
  let best = settled
  if (settled.unplaced.length > FEW) return best
  const jobs = settled.unplaced.map(({job}) => job).sort((a, b) => feedsOf(b) - feedsOf(a))
  for (const job of jobs) {
    const left = new PlacesLeft(problem, grid, best, job)
    const places = left.handy(left.roomy()).filter(({s}) => inOrder(best, job, s))
    const fits = left.tried(places, simulate).filter(({tried}) => tried.spoiled.length === 0)
    for (const {seat, tried} of fits) {
      const drawn = {...seat, e: tried.e}
      const vessels = left.handsFull(drawn.e) ? null : left.among(drawn, best.standing)
      const more = vessels && withMore(problem, grid, best, job, {...drawn, vessels}, simulate)
      if (!more || goWithout(more) >= goWithout(best)) continue
      best = more
      break
    }
  }
  return best
}

/**
 * A morning's plan with what it leaves out of a dish set in among the rest as that stands, however long after it is wanted that may be.
 *
 * @returns Null where it has no place so either, or is left out for no lateness.
 */
export function lateAmongRest(
  problem: PlanProblem,
  grid: FloorGrid,
  settled: Settled,
  id: string,
  simulate: Simulate,
): Settled | null {
  const late = new Map(
    settled.unplaced
      .filter(({job}) => job.dish.id === id && Number.isFinite(job.bears))
      .map(({job}): [Job, Job] => [job, {...job, bears: Number.POSITIVE_INFINITY}]),
  )
  if (late.size === 0) return null
  const {model, unplaced} = settled
  const more = setInMore(
    problem,
    grid,
    {
      ...settled,
      model: {...model, jobs: model.jobs.map((job) => late.get(job) ?? job)},
      unplaced: unplaced.flatMap(({job, why}) => (late.has(job) ? [{job: late.get(job)!, why}] : [])),
    },
    simulate,
  )
  return more.unplaced.length > 0 ? null : {...more, unplaced: unplaced.filter(({job}) => !late.has(job))}
}

/** True where a part set in at a tick keeps the half hour between what falls from very hot and crusts, with all that is in the plan. */
export function inOrder({model, found}: Settled, job: Job, s: number): boolean {
  return model.jobs.every((other, u) => {
    const o = found.chosen[u]!
    return o < 0 || other.since !== null || keepHalfHour(job, s, other, model.s[u]![o]!)
  })
}

/** The plan with one more part in it; null where something would not keep its rules so. */
function withMore(
  problem: PlanProblem,
  grid: FloorGrid,
  settled: Settled,
  job: Job,
  place: PlaceLeft,
  simulate: Simulate,
): Settled | null {
  const {model, standing, unplaced} = settled
  const {index, phase} = model.program
  const before = model.jobs.includes(job) ? model.jobs : [...model.jobs, job]
  const now = tookIn(settled)
  const where = partUnder(grid, place.vessels, place.where)
  const took = before.map((one, u) => (one === job ? {s: place.s, e: place.e, w: where} : (now[u] ?? null)))
  const original = fireOf(problem, settled)
  const option = {...original, forecast: simulate(original, eventsOf(before, took, original, phase, model.lit), true)}
  // Drawn later than it was tried, it may have come to stand elsewhere.
  const curve = curveOf(option.forecast, problem.ambient ?? 20)
  const minutes = (tick: number): number => tick * rules.tick + phase
  const kept = ({y}: {readonly y: number}): boolean => keeps(job, curve, zoneAt(grid, y), minutes(place.s), minutes(place.e))
  if (!place.vessels.every(kept)) return null
  const limits = took.map((must) => (must ? {must} : {}))
  const program = programOf(problem, index, before, grid, null, false, option, limits)
  const made = modelOf(problem, program, before, grid, model.lit)
  const chosen = Int32Array.from(took, (t, u) => (t ? choiceAt(made, u, t.s, t.e, t.w) : -1))
  if (took.some((t, u) => t && chosen[u]! < 0)) return null
  const out = unplaced.filter((one) => one.job !== job)
  const cost = costOf(made, chosen)
  return {
    model: made,
    found: {chosen, cost, unplaced: out.length},
    standing: [...standing, ...place.vessels],
    option,
    total: cost + made.constant,
    unplaced: out,
  }
}
