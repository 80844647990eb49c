import type {OvenEvent} from '../oven/types.js'
import type {ChoiceLimits} from './choices.js'
import {type Curve, curveOf, whereIndex} from './curve.js'
import {eventsOf} from './events.js'
import {type FloorGrid, zoneAt} from './floor-grid.js'
import {endsCool, hadHeat, hasHeat, keeps, stayed} from './keeps.js'
import type {Laid, Refusal} from './laid.js'
import type {Light} from './laying-out.js'
import type {Layout} from './layout.js'
import {choiceAt, disturbances, type Job, keepHalfHour, type Model, modelOf, programOf} from './model.js'
import type {Simulate} from './options.js'
import {partUnder, vesselsOf} from './places.js'
import {rules, weights} from './rules.js'
import type {Seating} from './seating.js'
import type {Settled} from './settled.js'
import {stand} from './stand.js'
import type {Standing} from './standing.js'
import type {FiringOption, PlanProblem} from './types.js'

/** A day to be planned on the simulated oven. */
export interface LoadedDay {
  readonly problem: PlanProblem
  readonly grid: FloorGrid
  readonly jobs: readonly Job[]
  readonly simulate: Simulate
  readonly light: Light
}

/** What of a layout is put to the proof. */
export type Proved = Pick<Layout, 'snapshot' | 'lit' | 'phase' | 'isDone' | 'heldBack' | 'hemmedIn'>

/** A fire, and what is laid out on it. */
export interface Laying<L extends Proved = Layout> {
  readonly option: FiringOption
  readonly index: number
  readonly layout: L
}

/** When and where each job is set in and drawn, ticks; null what is left out. */
type Took = ReadonlyArray<{readonly s: number; readonly e: number; readonly w: number} | null>

/** What a layout comes to on the simulated oven and the true floor. */
export interface Seen {
  readonly laid: Laid[]
  readonly lit: number
  readonly took: Took
  readonly events: readonly OvenEvent[]
  readonly option: FiringOption
  readonly exact: Model
  readonly curve: Curve
  readonly stood: {readonly standing: Standing[]; readonly refused: readonly Refusal[]}
  /** Jobs that do not keep their limits. */
  readonly wrong: ReadonlySet<number>
  /** Those of them in the oven that are burned where some of their vessels stand. */
  readonly burned: readonly number[]
  /** Jobs in the oven that want some of the heat that they are reckoned to have where some of their vessels stand. */
  readonly under: readonly number[]
  /** Jobs in the oven that do not keep theirs either, and can no longer be helped or were given up. */
  readonly givenUp: number
  /** Those of them that need not be so: another time to draw them, or less that is set in after them, would do. */
  readonly amiss: number
  readonly good: boolean
}

/** Layouts on one fire, put to the proof: simulated with their loads, and stood on the true floor. */
export class Proof {
  readonly #day: LoadedDay
  readonly #look: Laying<Proved>
  readonly #seating: Pick<Seating, 'vessels'>
  readonly #given: number | null

  constructor(day: LoadedDay, look: Laying<Proved>, seating: Pick<Seating, 'vessels'>) {
    this.#day = day
    this.#look = look
    this.#seating = seating
    this.#given = day.problem.done?.lit ?? null
  }

  /**
   * What is laid out now.
   *
   * @param giveUp What is in the oven and can no longer be helped is not wrong any more: that alone (`inside`), or too much for the hands
   *   to do at an opening neither.
   */
  see(giveUp: false | 'inside' | 'all' = false): Seen {
    const {problem, grid, jobs, simulate} = this.#day
    const {layout, option: original} = this.#look
    const laid = layout.snapshot()
    const lit = layout.lit
    const laidOut = laid.map((l) => (l.in ? {s: l.s, e: l.e, w: l.w} : null))
    const events = eventsOf(jobs, laidOut, original, layout.phase, layout.lit)
    const option = {...original, forecast: simulate(original, events, false)}
    const curve = curveOf(option.forecast, problem.ambient ?? 20)
    const stood = stand(jobs, laidOut, grid, curve, layout.phase, this.#seating)
    // Each is judged in the part of the floor where its vessels came to stand, if that is one.
    const took = laidOut.map((t, u) => {
      if (!t || jobs[u]!.since !== null) return t
      return {...t, w: partUnder(grid, vesselsOf(jobs[u]!, stood.standing), t.w)}
    })
    const exact = this.#on(
      option,
      lit,
      took.map((must) => (must ? {must, only: true} : {none: true})),
    )
    const wrong = new Set<number>()
    const burned: number[] = []
    const short: number[] = []
    let givenUp = 0
    let amiss = 0
    for (let u = 0; u < jobs.length; u++) {
      const t = took[u]
      const job = jobs[u]!
      if (!t) continue
      if (job.since !== null) {
        // What can no longer be done, or drawn as it should be, is wrong only while there is still something to be tried.
        const to = t.e * rules.tick + layout.phase
        const zones = [...new Set((job.stood ?? []).map((v) => whereIndex(v.zone)))]
        const under = layout.isDone(u) && zones.some((z) => !hasHeat(job, curve, z, to, lit))
        const cool = layout.isDone(u) && zones.some((z) => endsCool(job, curve, z, to))
        const left = stayed(job, curve, zones, to, lit) || (cool && hadHeat(job, curve, zones, to, lit))
        const over = !under && !layout.heldBack(u) && left
        const ill = layout.hemmedIn(u) || under || over || cool
        if (over) burned.push(u)
        if (under) short.push(u)
        if (ill && !giveUp) wrong.add(u)
        else if (ill || !layout.isDone(u)) givenUp++
        if (ill) amiss++
        continue
      }
      const mine = vesselsOf(job, stood.standing)
      // What was to fill the floor and came to stand in two parts of it is drawn by the rules of any other.
      const fills = new Set(mine.map((v) => zoneAt(grid, v.y))).size === grid.zones.length
      const keptBy = (v: Standing): boolean =>
        keeps(
          fills ? job : {dish: job.dish},
          curve,
          zoneAt(grid, v.y),
          t.s * rules.tick + layout.phase,
          t.e * rules.tick + layout.phase,
        )
      if (exact.s[u]!.length === 0 || !mine.every(keptBy)) wrong.add(u)
    }
    for (const u of outOfOrder(jobs, took)) wrong.add(u)
    if (giveUp !== 'all') for (const u of overHands(jobs, took, rules.tick * problem.day.hands)) wrong.add(u)
    return {
      laid,
      lit,
      took,
      events,
      option,
      exact,
      curve,
      stood,
      wrong,
      burned,
      under: short,
      givenUp,
      amiss,
      good: wrong.size === 0 && stood.refused.length === 0,
    }
  }

  /** What was seen to be good. Its range, and what else each dish might have done, are worked out once it is the best. */
  settle(seen: Seen): Settled {
    const {option: original} = this.#look
    let known: Settled | null = null
    const whole = (): Settled => {
      const ranged = {...original, forecast: this.#day.simulate(original, seen.events, true)}
      const final = this.#on(
        ranged,
        seen.lit,
        seen.took.map((must) => (must ? {must} : {})),
      )
      return this.#settledOn(final, seen, ranged)
    }
    return {
      ...this.#settledOn(seen.exact, seen, seen.option),
      whole: () => {
        known ??= whole()
        return known
      },
    }
  }

  #settledOn(model: Model, {took, stood, givenUp, amiss}: Seen, option: FiringOption): Settled {
    const {jobs} = this.#day
    const chosen = Int32Array.from(took, (t, u) => {
      if (!t) return -1
      const o = choiceAt(model, u, t.s, t.e, t.w)
      return o < 0 && jobs[u]!.since !== null ? 0 : o
    })
    const unplaced: Settled['unplaced'][number][] = []
    for (let u = 0; u < jobs.length; u++)
      if (chosen[u]! < 0) unplaced.push({job: jobs[u]!, why: model.s[u]!.length > 0 ? 'floor' : 'time'})
    const cost = costOf(model, chosen)
    return {
      model,
      found: {chosen, cost, unplaced: unplaced.length},
      standing: stood.standing,
      option,
      total: cost + model.constant,
      unplaced,
      ...(givenUp > 0 ? {givenUp, amiss} : {}),
    }
  }

  /** The model of this fire with its loads, at the lighting time at hand. */
  #on(option: FiringOption, lit: number, limits: readonly ChoiceLimits[]): Model {
    const {problem, grid, jobs} = this.#day
    const program = programOf(problem, this.#look.index, jobs, grid, this.#given, false, option, limits)
    return modelOf(problem, program, jobs, grid, lit)
  }
}

/** What is set in yet of what falls from very hot (1), or of white bread and pies (2), by their jobs. */
export function setInOf(order: 1 | 2, jobs: readonly Job[], took: Took): number[] {
  return jobs.flatMap((job, u) => (job.order === order && job.since === null && took[u] ? [u] : []))
}

/** White bread and pies that go in too soon after what is set in very hot to fall. */
function outOfOrder(jobs: readonly Job[], took: Took): number[] {
  const falls = setInOf(1, jobs, took)
  return setInOf(2, jobs, took).filter((c) => falls.some((f) => !keepHalfHour(jobs[c]!, took[c]!.s, jobs[f]!, took[f]!.s)))
}

/** What is set in or drawn at an opening with more to do than the hands have minutes for. */
export function overHands(jobs: readonly Job[], took: Took, most: number): number[] {
  const at = new Map<number, {u: number[]; minutes: number}>()
  const put = (tick: number, u: number): void => {
    const opening = at.get(tick) ?? {u: [], minutes: 0}
    opening.u.push(u)
    opening.minutes += jobs[u]!.handling
    at.set(tick, opening)
  }
  took.forEach((t, u) => {
    if (!t) return
    if (jobs[u]!.since === null) put(t.s, u)
    put(t.e, u)
  })
  return [...at.values()].flatMap(({u, minutes}) => (minutes > most + 1e-9 ? u : []))
}

/** Cost of a solution: its choices and the openings they need; what is left out is not counted. */
export function costOf(m: Model, chosen: Int32Array): number {
  let cost = 0
  const doors = new Set<number>()
  for (let u = 0; u < chosen.length; u++) {
    const o = chosen[u]!
    if (o < 0) continue
    cost += m.cost[u]![o]!
    if (m.jobs[u]!.since === null) doors.add(m.s[u]![o]!)
    doors.add(m.e[u]![o]!)
  }
  const shut = m.jobs.flatMap(({dish, since}, u) => {
    const {closed} = dish.need
    const o = chosen[u]!
    const at = since === null ? m.s[u]![o]! * rules.tick : since - m.clock0
    return closed && o >= 0 ? [{at, shut: closed.likely}] : []
  })
  const opened = Array.from(doors, (k) => k * rules.tick)
  return cost + doors.size * m.opening + weights.shut * disturbances(shut, opened).length
}
