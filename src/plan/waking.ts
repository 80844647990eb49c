import {celsiusAt, curveOf, mostDose} from './curve.js'
import {eventsOf} from './events.js'
import {type FloorGrid, zoneAt} from './floor-grid.js'
import {doseBetween, keeps, keptWarm, staysIn} from './keeps.js'
import {choiceAt, type Job, type Model, modelOf, programOf} from './model.js'
import type {Simulate} from './options.js'
import {vesselsOf} from './places.js'
import {costOf} from './proof.js'
import {rules} from './rules.js'
import {fireOf, type Settled, type Took, tookIn} from './settled.js'
import type {PlanProblem} from './types.js'

/**
 * What stays in the oven through the night, drawn at the hour at which it is wanted rather than as soon as the door may be opened: to the
 * objective it is all the same, and to the baker it is three hours' sleep, and a breakfast that is warm.
 */

/** Share more of its dose that a dish may have for being left in till it is wanted, where that is more than its receipt's longest time gives. */
const MORE = 0.25
/** Share of the plan's score that it may cost to leave in what is by its receipt the better for remaining in the oven over night. */
const REMAINS = 0.03
/** Ticks by which a later draw that some limit is in the way of is tried sooner. */
const SOONER = 30 / rules.tick

/**
 * A plan with the draws of what stays overnight, or is done the evening before and wanted the next day, moved as late as they are wanted, where nobody said when to a waking hour (`rules.waking`),
 * as far as their own limits go. An opening is moved whole, and past no other, so that who stands before whom stays as it was; or what is
 * drawn at it joins the next one, if the hands allow. Each is tried on the simulated oven.
 *
 * @returns The plan as it was where nothing can be moved so, or it would cost more: more than a little (`REMAINS`) of what its receipt has remain there.
 */
export function drawnAwake(problem: PlanProblem, grid: FloorGrid, settled: Settled, simulate: Simulate | undefined): Settled {
  let best = settled
  const tried = new Set<number>()
  for (;;) {
    const group = nextGroup(best, tried)
    if (!group) return best
    tried.add(group.at)
    for (const to of group.to) {
      const moved = movedTo(problem, grid, best, group.jobs, to, simulate)
      const asked = group.jobs.some((u) => best.model.jobs[u]!.dish.need.remains === true)
      if (!moved || moved.total > best.total + (asked ? REMAINS * best.total : 1e-6)) continue
      best = moved
      tried.add(to)
      break
    }
  }
}

/** What is drawn at one opening, the tick of that, and the ticks to which it could be put off, the latest first. */
interface Group {
  readonly at: number
  readonly jobs: readonly number[]
  readonly to: readonly number[]
}

/** The last opening not tried yet at which something that was left in overnight is drawn, and nothing else is done. */
function nextGroup(settled: Settled, tried: ReadonlySet<number>): Group | null {
  const {model} = settled
  const took = tookIn(settled)
  const doors = new Set(took.flatMap((t, u) => (t ? [...(model.jobs[u]!.since === null ? [t.s] : []), t.e] : [])))
  const draws = [...new Set(took.flatMap((t) => (t ? [t.e] : [])))].sort((a, b) => b - a)
  for (const at of draws) {
    if (tried.has(at)) continue
    const drawn = took.flatMap((t, u) => (t?.e === at ? [u] : []))
    if (took.some((t, u) => t?.s === at && model.jobs[u]!.since === null)) continue
    const latest = Math.min(...drawn.map((u) => wantedAt(model, u, took[u]!)))
    if (latest <= at) continue
    // What stands before what, and what is drawn first, stays as it is.
    const next = Math.min(...[...doors].filter((k) => k > at))
    const most = Math.min(latest, Number.isFinite(next) && next <= latest ? next : latest, model.ticks - 1)
    const to = [most, ...(most === next ? [most - 1] : [])]
    for (let k = at + SOONER * Math.floor((most - 1 - at) / SOONER); k > at; k -= SOONER) to.push(k)
    // What would come out the evening before is left in for the morning, or drawn as it was.
    const day = (k: number): number => Math.floor((model.clock0 + k * rules.tick) / 1440)
    const evening = drawn.some((u) => day(took[u]!.s) === day(at))
    const later = to.filter((k) => k > at && (!evening || day(k) > day(at)))
    if (later.length > 0) return {at, jobs: drawn, to: later}
  }
  return null
}

/** The tick by which a job is wanted that was left in overnight or might be, or a waking hour; −1 of what neither was nor might. */
function wantedAt(model: Model, u: number, {s, e}: NonNullable<Took>): number {
  const {dish, due, since} = model.jobs[u]!
  const clock = (k: number): number => model.clock0 + k * rules.tick
  const midnight = 1440 * Math.floor(clock(e) / 1440)
  if (!staysIn(dish.need)) return -1
  if ((since ?? clock(s)) >= midnight) {
    // Done before the night and wanted the day after: the oven keeps it warm, where else it is cooled and heated again.
    return due !== null && due >= midnight + 1440 ? Math.floor((due - model.clock0) / rules.tick) : -1
  }
  return Math.floor(((due ?? midnight + rules.waking) - model.clock0) / rules.tick)
}

/** The plan with some jobs drawn at another tick, on the oven as it is then; null where something would not keep its rules so. */
function movedTo(
  problem: PlanProblem,
  grid: FloorGrid,
  settled: Settled,
  moved: readonly number[],
  to: number,
  simulate: Simulate | undefined,
): Settled | null {
  const {model, standing} = settled
  const {jobs, lit} = model
  const {index, phase} = model.program
  const was = tookIn(settled)
  const took = was.map((t, u) => (t && moved.includes(u) ? {...t, e: to} : t))
  const work = took.reduce(
    (sum, t, u) => (t && (t.e === to || (t.s === to && jobs[u]!.since === null)) ? sum + jobs[u]!.handling : sum),
    0,
  )
  if (work > model.hands) return null
  const fire = fireOf(problem, settled)
  const option = simulate ? {...fire, forecast: simulate(fire, eventsOf(jobs, took, fire, phase, lit), true)} : settled.option
  const curve = curveOf(option.forecast, problem.ambient ?? 20)
  const spoiled = (job: Job, u: number): boolean => {
    const t = took[u]
    // What was drawn before is as it was; and what is in the oven already was judged with what had happened to it.
    if (!t || (t.e < to && !moved.includes(u))) return false
    const from = job.since === null ? t.s * rules.tick + phase : job.since - lit
    const until = t.e * rules.tick + phase
    const {need} = job.dish
    return vesselsOf(job, standing).some((v) => {
      const z = zoneAt(grid, v.y)
      if (job.since === null ? !keeps(job, curve, z, from, until) : celsiusAt(curve, z, until) < need.endLow) return true
      if (!moved.includes(u)) return false
      // Warm food is not left to the two hours it may stand cooler, nor anything until it has had much more than its receipt ever gives it.
      const before = doseBetween(curve, need, z, from, was[u]!.e * rules.tick + phase)
      const most = Math.max(mostDose(need), (1 + MORE) * before)
      // What could as well be drawn in the evening is not even left to an oven that may fall so low.
      const evening = was[u]!.e * rules.tick + phase + lit < 1440 * Math.floor((until + lit) / 1440)
      const least = celsiusAt(curve, z, until, evening ? 'low' : 'likely')
      const cold = keptWarm(need) && least < rules.holdCelsius
      return cold || doseBetween(curve, need, z, from, until) > most
    })
  }
  if (jobs.some(spoiled)) return null
  const limits = took.map((must) => (must ? {must} : {}))
  const program = programOf(problem, index, jobs, grid, problem.done?.lit ?? null, false, option, limits)
  const made = modelOf(problem, program, jobs, grid, lit)
  const chosen = Int32Array.from(took, (t, u) => (t ? choiceAt(made, u, t.s, t.e, t.w) : -1))
  if (took.some((t, u) => t && chosen[u]! < 0)) return null
  const vessels = new Set(moved.flatMap((u) => vesselsOf(jobs[u]!, standing)))
  const cost = costOf(made, chosen)
  return {
    ...settled,
    model: made,
    found: {...settled.found, chosen, cost},
    standing: standing.map((v) => (vessels.has(v) ? {...v, to} : v)),
    option,
    total: cost + made.constant,
  }
}
