import {staysOn} from './alone.js'
import {type Curve, curveOf} from './curve.js'
import {eventsOf} from './events.js'
import {type FloorGrid, zoneAt} from './floor-grid.js'
import {hasDose, keeps} from './keeps.js'
import {isNight, type Job, lateness} from './model.js'
import type {Simulate} from './options.js'
import {placeOne, vesselsOf} from './places.js'
import {rules} from './rules.js'
import {fireOf, type Settled, tookIn} from './settled.js'
import type {Standing, ToPlace} from './standing.js'
import type {PlanProblem} from './types.js'

/** Where in a plan as it stands one more part of a dish could still go. */

/** Set in and drawn, ticks, in a part of the floor. */
export interface Seat {
  readonly s: number
  readonly e: number
  readonly where: number
  /** Ticks after `e` at which it could be drawn as well. */
  readonly spare: number
}

/** The same with the places of its vessels among the rest. */
export interface PlaceLeft extends Seat {
  readonly vessels: readonly Standing[]
}

/** Times at which the oven is simulated with the dish in it as well. */
const SIMULATED = 6
/** Ticks by which it may have to stay longer for the heat that it takes itself. */
const LONGER = 24

/** What is left in a plan for one more part of a dish, narrower from one to the next. */
export class PlacesLeft {
  /** Where the heat of the oven, as the plan leaves it, is right for it by day. */
  readonly right: readonly Seat[]
  /** When it could be done at the soonest, whenever that is, minutes after lighting; infinite if never. */
  readonly soonest: number
  readonly #problem: PlanProblem
  readonly #grid: FloorGrid
  readonly #settled: Settled
  readonly #job: Job
  /** The oven's curve as the plan leaves it, once it has been asked for. */
  #before: Curve | null = null

  constructor(problem: PlanProblem, grid: FloorGrid, settled: Settled, job: Job) {
    const {model, option} = settled
    const {phase} = model.program
    const {stays} = staysOn(problem, grid, job, option, model.lit)
    this.#problem = problem
    this.#grid = grid
    this.#settled = settled
    this.#job = job
    this.soonest = stays.reduce((least, {first}) => Math.min(least, first), Number.POSITIVE_INFINITY)
    const tick = (minutes: number): number => Math.round((minutes - phase) / rules.tick)
    // What comes later than that is of little use.
    const inTime = stays.filter(({first}) => lateness(job, model.lit + first) <= job.bears)
    this.right = inTime.map(
      ({from, first, last, where}): Seat => ({
        s: tick(from),
        e: tick(first),
        where,
        spare: tick(last) - tick(first),
      }),
    )
  }

  /** Its vessels at a place, among what stands; null where there is no room for them. */
  among(seat: Seat, standing: readonly Standing[]): readonly Standing[] | null {
    const {curve, phase} = this.#settled.model.program
    const {dish, first, count} = this.#job
    const {s, e, where} = seat
    const right = (z: number): boolean =>
      (where > 2 || where === z) && keeps(this.#job, curve, z, s * rules.tick + phase, e * rules.tick + phase)
    const item: ToPlace = {dish, first, count, from: s, to: e, where, fits: [right(0), right(1), right(2)]}
    return placeOne(this.#grid, standing, item)
  }

  /** Those of `right` with room on the floor. */
  roomy(): PlaceLeft[] {
    return this.right.flatMap((seat) => {
      const vessels = this.among(seat, this.#settled.standing)
      return vessels ? [{...seat, vessels}] : []
    })
  }

  /** Jobs that are set in or drawn at a tick. */
  busy(tick: number): readonly number[] {
    const {model, found} = this.#settled
    return model.jobs.flatMap((one, u) => {
      const o = found.chosen[u]!
      return o >= 0 && ((one.since === null && model.s[u]![o] === tick) || model.e[u]![o] === tick) ? [u] : []
    })
  }

  /** True where the hands at an opening would not do for this one as well. */
  handsFull(tick: number): boolean {
    const {model} = this.#settled
    const work = this.busy(tick).reduce((sum, u) => sum + model.jobs[u]!.handling, this.#job.handling)
    return work > model.hands
  }

  /** Those of some places with hands for them. */
  handy<S extends Seat>(seats: readonly S[]): S[] {
    return seats.filter(({s, e}) => !this.handsFull(s) && !this.handsFull(e))
  }

  /**
   * What comes of it at a few of some places, spread evenly among them, on the simulated oven.
   *
   * @param later ticks by which others may be drawn later for it, but not past the time at which they are wanted
   */
  tried(seats: readonly PlaceLeft[], simulate: Simulate, later = 0): {readonly seat: PlaceLeft; readonly tried: Tried}[] {
    if (seats.length === 0) return []
    const few = Math.min(SIMULATED, seats.length)
    const {model} = this.#settled
    const took = tookIn(this.#settled)
    const fire = fireOf(this.#problem, this.#settled)
    const {phase} = model.program
    const curveWith = (jobs: readonly Job[], some: Parameters<typeof eventsOf>[1]): Curve =>
      curveOf(simulate(fire, eventsOf(jobs, some, fire, phase, model.lit), false), this.#problem.ambient ?? 20)
    this.#before ??= curveWith(model.jobs, took)
    const before = this.#before
    return Array.from({length: few}, (_, i) => {
      const seat = seats[Math.floor((i * seats.length) / few)]!
      const after = curveWith([...model.jobs, this.#job], [...took, seat])
      return {seat, tried: triedIn(this.#problem, this.#grid, this.#settled, this.#job, seat, before, after, later)}
    })
  }
}

/** What comes of one more being set in: when it would be drawn, tick, and ids of the dishes that would not keep their limits then. */
interface Tried {
  readonly e: number
  /** Itself among them; those that do not keep them anyhow are not counted. */
  readonly spoiled: readonly string[]
}

/**
 * One more part of a dish set in at a place that is left.
 *
 * @param before The oven's curve without it.
 * @param after The same with it.
 * @param later Ticks by which the others may be drawn later for it.
 */
function triedIn(
  problem: PlanProblem,
  grid: FloorGrid,
  settled: Settled,
  job: Job,
  seat: PlaceLeft,
  before: Curve,
  after: Curve,
  later: number,
): Tried {
  const {model, standing} = settled
  const {phase} = model.program
  const took = tookIn(settled)
  const minutes = (tick: number): number => tick * rules.tick + phase
  const spoiled = new Set<string>()
  for (const [u, other] of model.jobs.entries()) {
    const t = took[u]
    if (!t) continue
    // What stands across the floor has its draw by the floor's own mean as well (see `keeps`).
    const zones = [...new Set([...vesselsOf(other, standing).map(({y}) => zoneAt(grid, y)), ...(t.w > 2 ? [t.w] : [])])]
    for (const z of zones) {
      const kept = (curve: Curve, e: number): boolean =>
        other.since === null ? keeps(other, curve, z, minutes(t.s), minutes(e)) : hasDose(other, curve, z, minutes(e), model.lit)
      const inTime = (e: number): boolean => e === t.e || lateness(other, model.lit + minutes(e)) === 0
      const draws = Array.from({length: later + 1}, (_, i) => t.e + i).filter(inTime)
      if (kept(before, t.e) && !draws.some((e) => kept(after, e))) spoiled.add(other.dish.id)
    }
  }
  const own = seat.vessels.map(({y}) => zoneAt(grid, y))
  const done = (e: number): boolean =>
    !isNight(problem, model.clock0 + e * rules.tick) && own.every((z) => keeps(job, after, z, minutes(seat.s), minutes(e)))
  const draws = Array.from({length: Math.max(seat.spare, LONGER) + 1}, (_, i) => seat.e + i)
  const e = draws.find(done)
  if (e === undefined) spoiled.add(job.dish.id)
  return {e: e ?? seat.e, spoiled: [...spoiled]}
}
