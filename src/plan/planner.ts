import type {Forecast, OvenEvent} from '../oven/types.js'
import type {Message} from '../receipt/types.js'
import type {Dish} from '../scale/types.js'
import {balanceOf, suggest} from './balance.js'
import {lowerBound} from './bound.js'
import {check} from './check.js'
import {conflictOf, remediesOf, whyNot} from './conflict.js'
import {type Curve, celsiusAt, doseNeeded, doseTable} from './curve.js'
import {
  type ChoiceLimits,
  isNight,
  type Job,
  jobsOf,
  lateness,
  type Model,
  modelOf,
  type Program,
  passes,
  programOf,
} from './model.js'
import {english, phrase, speak} from './phrases.js'
import {type FloorGrid, floorGrid, placedOf, placeLoad, type Standing, type ToPlace, zoneAt} from './places.js'
import {rules, weights, zoneNames} from './rules.js'
import {type Found, missing, State, search} from './search.js'
import {stepsOf} from './steps.js'
import type {FiringOption, Load, Phrase, Plan, PlanProblem, Remedy} from './types.js'

export interface PlanOptions {
  /**
   * The oven with loads and door openings in it, minutes after lighting. Without it the plan stands on the empty oven's curve.
   * `exact` asks for the range as well as the likely curve.
   */
  readonly simulate?: (option: FiringOption, events: readonly OvenEvent[], exact: boolean) => Forecast
  /** Less searching, no bound: for trying remedies and suggestions. */
  readonly effort?: 'quick' | 'full'
  /** Dishes to fill idle floor with. */
  readonly spare?: readonly Dish[]
  /** Firings with one fire more than the day has, for a plan that cannot be done: tried as a remedy. */
  readonly secondFires?: (plan: Plan) => readonly FiringOption[]
  /** Share of the work done, 0 … 1. */
  readonly progress?: (share: number) => void
  /** Asked now and then; true stops the work and throws `PlanCancelled`. */
  readonly cancelled?: () => boolean
}

/** Thrown when `cancelled` said so. */
export class PlanCancelled extends Error {
  constructor() {
    super('planning was stopped')
    this.name = 'PlanCancelled'
  }
}

/** What the search settled on, before it is written as a plan. */
export interface Settled {
  readonly model: Model
  readonly found: Found
  readonly standing: readonly Standing[]
  readonly option: FiringOption
  readonly total: number
  readonly unplaced: readonly {readonly job: Job; readonly why: 'floor' | 'time'}[]
}

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
  let settled = settleBest(problem, grid, jobsOf(problem, grid), options, tick)
  // What did not fit whole may fit in two or three batches.
  if (settled.unplaced.length > 0 && full && !options.simulate) {
    const split = new Map<string, number>()
    for (const n of [2]) {
      for (const {job, why} of settled.unplaced)
        if (why === 'floor' && job.count >= n && job.since === null)
          split.set(job.dish.id, n * Math.ceil(job.dish.count / job.count))
      if (split.size === 0) break
      const again = settleBest(problem, grid, jobsOf(problem, grid, split), options, tick)
      if (again.unplaced.length < settled.unplaced.length) settled = again
      if (settled.unplaced.length === 0) break
    }
  }
  tick(0.85)
  const bound = full ? boundOf(problem, grid, settled, options) : null
  tick(0.95)
  const plan = write(problem, grid, settled, lone, bound, options)
  tick(1)
  return plan
}

interface Start {
  readonly program: Program
  readonly lit: number
  readonly low: number
}

/** Lighting times to consider for one program, latest useful first, by the cost of every dish taken alone. */
function startsOf(problem: PlanProblem, program: Program, jobs: readonly Job[], grid: FloorGrid): Start[] {
  const given = problem.done?.lit ?? null
  const out: Start[] = []
  const first = Math.max(problem.day.fireFrom, problem.done?.now ?? 0)
  const lits: number[] = []
  if (given !== null) lits.push(given)
  else for (let lit = Math.ceil(first / rules.tick) * rules.tick; lit <= first + 10 * 60; lit += 30) lits.push(lit)
  for (const lit of lits) out.push({program, lit, low: quickLow(problem, program, jobs, lit)})
  return out
}

/** Cost when every dish takes its cheapest choice and the door is opened for nothing: below any plan of this fire and lighting time. */
function quickLow(problem: PlanProblem, program: Program, jobs: readonly Job[], lit: number): number {
  const clock0 = lit + program.phase
  const awake = new Uint8Array(program.ticks)
  for (let k = 0; k < program.ticks; k++) awake[k] = isNight(problem, clock0 + k * rules.tick) ? 0 : 1
  let sum = weights.wood * program.wood + weights.idle * program.hotFloor
  jobs.forEach((job, u) => {
    const c = program.choices[u]!
    let best = missing
    const due = job.due === null ? Number.POSITIVE_INFINITY : job.due - clock0
    for (let o = 0; o < c.s.length; o++) {
      const e = c.e[o]!
      const cost = weights.misfit * c.misfit[o]! - weights.idle * c.used[o]! + weights.late * Math.max(0, e * rules.tick - due)
      if (cost < best && awake[e] && (job.since !== null || awake[c.s[o]!])) best = cost
    }
    sum += best
  })
  return sum
}

interface Look {
  readonly program: Program
  readonly lit: number
  readonly model: Model
  readonly found: Found
  readonly total: number
}

function settleBest(
  problem: PlanProblem,
  grid: FloorGrid,
  jobs: readonly Job[],
  options: PlanOptions,
  tick: (share: number) => void,
): Settled {
  const full = options.effort !== 'quick'
  const given = problem.done?.lit ?? null
  const programs = problem.firings.map((_, i) => programOf(problem, i, jobs, grid, given, false))
  tick(0.1)
  const n = jobs.length
  const short = Math.min(300, 30 + 4 * n)
  const long = full ? Math.min(3000, 400 + 60 * n) : Math.min(400, 100 + 8 * n)
  const firstLit = Math.ceil(Math.max(problem.day.fireFrom, problem.done?.now ?? 0) / rules.tick) * rules.tick
  const order = programs
    .map((program) => {
      const starts = startsOf(problem, program, jobs, grid)
      return {program, starts, low: Math.min(...starts.map((s) => s.low))}
    })
    .sort((a, b) => a.low - b.low || a.program.wood - b.program.wood)
  // A first look at every fire that could be best, at the lighting time that suits it, with its loads in the oven.
  const looks: Look[] = []
  const lookAt = ({program, starts, low}: (typeof order)[number]): Look => {
    const good = starts.filter((s) => s.low <= low + 0.5)
    // The latest lighting that costs nothing, with half an hour in hand where there is one.
    const latest = good[good.length - 1]!
    const start = good.find((s) => s.lit >= latest.lit - 30) ?? latest
    const look = (from: Program, lit: number): Look => {
      const model = modelOf(problem, from, jobs, grid, lit)
      const found = search(model, {rounds: short})
      return {program: from, lit, model, found, total: found.cost + model.constant}
    }
    let best = look(program, start.lit)
    if (options.simulate) {
      const forecast = options.simulate(program.option, eventsOf(best.model, best.found, program.option), false)
      best = look(programOf(problem, program.index, jobs, grid, given, false, {...program.option, forecast}), start.lit)
    }
    if (given === null)
      for (const step of [-120, -60, -30]) {
        for (let tries = 0; tries < 3; tries++) {
          const lit = best.lit + step
          if (lit < firstLit) break
          const other = look(best.program, lit)
          if (other.total >= best.total - 0.5) break
          best = other
        }
      }
    return best
  }
  const later: typeof order = []
  for (const candidate of order) {
    if (looks.length >= 2 && looks.some((l) => l.found.unplaced === 0 && l.total < candidate.low)) {
      later.push(candidate)
      continue
    }
    looks.push(lookAt(candidate))
    tick(0.1 + 0.3 * (looks.length / programs.length))
  }
  looks.sort((a, b) => a.total - b.total || a.program.wood - b.program.wood)
  let best: Settled | null = null
  const tried: {look: Look; unplaced: number}[] = []
  const tries = full ? 2 : 1
  const queue: {wood: number; total: number; look: () => Look}[] = [
    ...looks.map((l) => ({wood: l.program.wood, total: l.total, look: () => l})),
    ...later.map((c) => ({wood: c.program.wood, total: c.low, look: () => lookAt(c)})),
  ]
  const all = queue.length
  let failed = 0
  for (let i = 0; queue.length > 0; i++) {
    // A fire that looked good before its loads went in may cool too far under them: then a hotter one comes next.
    const next =
      best && best.unplaced.length > 0
        ? Math.max(
            0,
            queue.findIndex((q) => q.wood > failed),
          )
        : 0
    const candidate = queue.splice(next, 1)[0]!
    // Two fires are tried in earnest; more only while a dish has no place.
    if (best && best.unplaced.length === 0 && (i >= tries || candidate.total > best.total + 1)) break
    if (best && !full) break
    const l = candidate.look()
    let settled = settle(problem, grid, l, long, options)
    // What was lost on the way may fit when the day is begun again on the curve it led to.
    const hotter = queue.some((q) => q.wood > l.program.wood)
    for (let again = 0; again < (hotter ? 0 : 2) && full && options.simulate && settled.unplaced.length > 0; again++) {
      const program = programOf(problem, l.program.index, jobs, grid, given, true, settled.option)
      const model = modelOf(problem, program, jobs, grid, l.lit)
      const from = Int32Array.from(settled.found.chosen, (o, u) =>
        o < 0 ? -1 : nearest(model, u, settled.model.s[u]![o]!, settled.model.e[u]![o]!, settled.model.where[u]![o]!),
      )
      const other = settle(
        problem,
        grid,
        {program, lit: l.lit, model, found: {chosen: from, cost: 0, unplaced: 0}, total: 0},
        long,
        options,
      )
      if (other.unplaced.length < settled.unplaced.length) settled = other
      else break
    }
    tried.push({look: l, unplaced: settled.unplaced.length})
    if (settled.unplaced.length > 0) failed = Math.max(failed, l.program.wood)
    if (
      !best ||
      settled.unplaced.length < best.unplaced.length ||
      (settled.unplaced.length === best.unplaced.length && settled.total < best.total)
    )
      best = settled
    tick(0.4 + 0.4 * ((i + 1) / all))
  }
  tried.sort((a, b) => a.unplaced - b.unplaced || b.look.program.wood - a.look.program.wood)
  // Whether plan and curve come to agree with every dish in hangs on the road taken: other roads are tried before a dish is given up.
  for (let i = 0; i < 8 && full && options.simulate && best!.unplaced.length > 0 && problem.done === undefined; i++) {
    const l = tried[i % Math.min(3, tried.length)]!.look
    const seed = 101 + 100 * i
    const found = search(l.model, {rounds: short, seed})
    const other = settle(problem, grid, {...l, found}, long, options, seed)
    if (other.unplaced.length < best!.unplaced.length) best = other
  }
  return best!
}

/**
 * Search in earnest, stand everything on the true floor, put the loads into the oven, and agree with the curve that gives. A load only
 * changes the oven after it, so what is right up to the first set-in that no longer fits is kept, and the rest is searched again.
 */
function settle(problem: PlanProblem, grid: FloorGrid, first: Look, rounds: number, options: PlanOptions, seed = 7): Settled {
  const {lit} = first
  const {jobs, program} = first.model
  const original = problem.firings[program.index]!
  const n = jobs.length
  const given = problem.done?.lit ?? null
  const on = (option: FiringOption, margins: boolean, limits: (ChoiceLimits & {exact?: boolean})[]): Model =>
    modelOf(problem, programOf(problem, program.index, jobs, grid, given, margins, option, limits), jobs, grid, lit)
  let model = first.model
  let start = first.found.chosen
  const dropped = new Set<number>()
  const fails = new Int32Array(n)
  const failedAt = new Int32Array(n).fill(-1)
  const least = new Int32Array(n)
  let last: Settled | null = null
  for (let pass = 0; pass < 16; pass++) {
    const {found, standing, unplaced} = searchAndPlace(
      model,
      grid,
      start,
      pass === 0 ? rounds : Math.min(rounds, 30 + 3 * n),
      pass > 0,
      seed,
    )
    const settled = (m: Model, c: Int32Array, option: FiringOption): Settled => {
      const cost = costOf(m, c)
      return {model: m, found: {chosen: c, cost, unplaced: unplaced.length}, standing, option, total: cost + m.constant, unplaced}
    }
    if (!options.simulate) return settled(model, found.chosen, original)
    const took = Array.from({length: n}, (_, u) => {
      const o = found.chosen[u]!
      return o < 0 ? null : {s: model.s[u]![o]!, e: model.e[u]![o]!, w: model.where[u]![o]!}
    })
    const events = eventsOf(model, found, original)
    const option = {...original, forecast: options.simulate(original, events, false)}
    const only = took.map((must) => (must ? {must, only: true} : {none: true}))
    const exact = on(option, false, only)
    const {curve, phase} = exact.program
    let earliest = Number.POSITIVE_INFINITY
    const wrong = new Set<number>()
    for (let u = 0; u < n; u++) {
      const t = took[u]
      if (!t) continue
      const job = jobs[u]!
      const mine = standing.filter((v) => v.dish === job.dish.id && v.number >= job.first && v.number < job.first + job.count)
      const ok =
        exact.s[u]!.length > 0 &&
        (job.since !== null ||
          mine.every((v) => keeps(job.dish, curve, zoneAt(grid, v.y), t.s * rules.tick + phase, t.e * rules.tick + phase)))
      if (!ok) {
        wrong.add(u)
        earliest = Math.min(earliest, t.s)
      }
    }
    if (wrong.size === 0) {
      // All agree: the curve with its range, and every choice there is on it, for the bound.
      const ranged = {...original, forecast: options.simulate(original, events, true)}
      const final = on(
        ranged,
        false,
        took.map((must) => (must ? {must} : {})),
      )
      const out = Int32Array.from(took, (t, u) => (t ? find(final, u, t.s, t.e, t.w) : -1))
      return settled(final, out, ranged)
    }
    last = settled(
      exact,
      Int32Array.from(took, (t, u) => (t && exact.s[u]!.length > 0 ? 0 : -1)),
      option,
    )
    // What is wrong again at the same time goes in later; late in the day of trying it is left out, so that the rest can be right.
    for (const u of wrong) {
      const at = took[u]!.s
      fails[u] = at === failedAt[u] ? fails[u]! + 1 : 1
      failedAt[u] = at
      if (fails[u]! >= 2) least[u] = at + 1
      if (pass >= 9) dropped.add(u)
    }
    if (pass >= 9) for (const x of unplaced) dropped.add(jobs.indexOf(x.job))
    model = on(
      option,
      true,
      took.map((t, u) =>
        dropped.has(u)
          ? {none: true}
          : t && !wrong.has(u) && t.s < earliest
            ? {must: t, only: true, exact: true}
            : {from: Math.max(earliest, least[u]!), ...(t && !wrong.has(u) ? {must: t} : {})},
      ),
    )
    start = Int32Array.from(took, (t, u) => (t ? nearest(model, u, t.s, t.e, t.w) : -1))
  }
  return last!
}

function find(m: Model, u: number, s: number, e: number, w: number): number {
  const S = m.s[u]!
  const E = m.e[u]!
  const W = m.where[u]!
  for (let o = 0; o < S.length; o++) if (S[o] === s && E[o] === e && W[o] === w) return o
  return -1
}

function nearest(m: Model, u: number, s: number, e: number, w: number): number {
  let best = -1
  let distance = Number.POSITIVE_INFINITY
  for (let p = 0; p < m.s[u]!.length; p++) {
    const d = Math.abs(m.s[u]![p]! - s) * 2 + Math.abs(m.e[u]![p]! - e) + (m.where[u]![p] === w ? 0 : 3)
    if (d < distance) {
      distance = d
      best = p
      if (d === 0) break
    }
  }
  return best
}

/** Cost of a solution: its choices and the openings they need; what is left out is not counted. */
function costOf(m: Model, chosen: Int32Array): number {
  let cost = 0
  const doors = new Set<number>()
  for (let u = 0; u < chosen.length; u++) {
    const o = chosen[u]!
    if (o < 0) continue
    cost += m.cost[u]![o]!
    if (m.jobs[u]!.since === null) doors.add(m.s[u]![o]!)
    doors.add(m.e[u]![o]!)
  }
  return cost + doors.size * m.opening
}

/**
 * Search, then stand every vessel on the true floor, load by load. A dish the floor refuses at one time is set in at its next best; the
 * refusals are told to the search, which tries again with them in mind.
 */
function searchAndPlace(
  model: Model,
  grid: FloorGrid,
  start: Int32Array,
  rounds: number,
  calm: boolean,
  seed: number,
): {found: Found; standing: Standing[]; unplaced: {job: Job; why: 'floor' | 'time'}[]} {
  const n = model.jobs.length
  const refused: (Set<number> | undefined)[] = []
  let chosen = start
  let best: {chosen: Int32Array; standing: Standing[]; cost: number} | null = null
  for (let attempt = 0; attempt < 4; attempt++) {
    const again = calm || attempt > 0
    let found = search(model, {
      rounds: attempt === 0 ? rounds : Math.ceil(rounds / 5),
      start: chosen,
      seed: seed + attempt,
      calm: again,
      refused,
    })
    // Small corrections are enough while everything has a place; where something has none, look further.
    if (again && found.unplaced > model.s.filter((s) => s.length === 0).length) {
      const wider = search(model, {rounds: 60 + 10 * n, start: found.chosen, seed: seed + 24 + attempt, refused})
      if (wider.cost < found.cost) found = wider
    }
    const before = refused.reduce((sum, r) => sum + (r?.size ?? 0), 0)
    const stood = standAll(model, grid, found, refused)
    if (!best || stood.cost < best.cost - 1e-9) best = stood
    chosen = stood.chosen
    if (refused.reduce((sum, r) => sum + (r?.size ?? 0), 0) === before) break
  }
  const unplaced: {job: Job; why: 'floor' | 'time'}[] = []
  for (let u = 0; u < n; u++)
    if (best!.chosen[u]! < 0) unplaced.push({job: model.jobs[u]!, why: model.s[u]!.length === 0 ? 'time' : 'floor'})
  return {found: {chosen: best!.chosen, cost: best!.cost, unplaced: unplaced.length}, standing: best!.standing, unplaced}
}

/** Stand the vessels of a solution on the floor in the order of the clock; what is refused goes in at its next best time. */
function standAll(
  model: Model,
  grid: FloorGrid,
  found: Found,
  refused: (Set<number> | undefined)[],
): {chosen: Int32Array; standing: Standing[]; cost: number} {
  const n = model.jobs.length
  const state = new State(model)
  for (let u = 0; u < n; u++) {
    state.refused[u] = refused[u]
    if (found.chosen[u]! >= 0) state.add(u, found.chosen[u]!)
  }
  let all: Standing[] = []
  let clock = Number.NEGATIVE_INFINITY
  for (let guard = 0; guard < 60 + 20 * n; guard++) {
    // The next load after the clock.
    let t = Number.POSITIVE_INFINITY
    for (let u = 0; u < n; u++) {
      const o = state.chosen[u]!
      if (o < 0) continue
      const s = model.s[u]![o]!
      if (s > clock && s < t) t = s
    }
    if (t === Number.POSITIVE_INFINITY) break
    const here: {u: number; s: number; e: number; w: number}[] = []
    for (let u = 0; u < n; u++) {
      const o = state.chosen[u]!
      if (o >= 0 && model.s[u]![o] === t) here.push({u, s: t, e: model.e[u]![o]!, w: model.where[u]![o]!})
    }
    for (const i of here) if (model.jobs[i.u]!.since !== null) all.push(...standingAlready(model, i))
    const fresh = here.filter((i) => model.jobs[i.u]!.since === null)
    const inside = all.filter((v) => v.from <= t && v.to > t)
    const result =
      fresh.length === 0
        ? null
        : placeLoad(
            grid,
            inside,
            fresh.map((i) => toPlace(model, i)),
          )
    if (result === null || result.ok) {
      if (result?.ok) all.push(...result.placed)
      clock = t
      continue
    }
    // Whichever of the load can most cheaply go in at another time is moved; if none can, something that stands already.
    const blamed =
      fresh.find((i) => model.jobs[i.u]!.dish.id === result.dish && model.jobs[i.u]!.first === result.first) ?? fresh[0]!
    let victim = blamed
    let least = Number.POSITIVE_INFINITY
    const weigh = (i: {u: number; s: number; e: number; w: number}): void => {
      const o = state.chosen[i.u]!
      const before = state.cost
      const set = new Set(refused[i.u] ?? [])
      set.add(i.s)
      state.remove(i.u)
      state.refused[i.u] = set
      const next = state.best(i.u)
      if (next.o >= 0) state.add(i.u, next.o)
      const rise = state.cost - before - (i.u === blamed.u ? 1e-3 : 0)
      state.remove(i.u)
      state.refused[i.u] = refused[i.u]
      state.add(i.u, o)
      if (rise < least) {
        least = rise
        victim = i
      }
    }
    for (const i of fresh) weigh(i)
    if (least > missing / 4)
      for (let u = 0; u < n; u++) {
        const o = state.chosen[u]!
        if (o < 0 || model.jobs[u]!.since !== null) continue
        const s = model.s[u]![o]!
        if (s < t && model.e[u]![o]! > t) weigh({u, s, e: model.e[u]![o]!, w: model.where[u]![o]!})
      }
    const set = refused[victim.u] ?? new Set<number>()
    set.add(victim.s)
    refused[victim.u] = set
    state.refused[victim.u] = set
    state.remove(victim.u)
    const next = state.best(victim.u)
    if (next.o >= 0) state.add(victim.u, next.o)
    const first = Math.min(victim.s, next.o >= 0 ? model.s[victim.u]![next.o]! : victim.s)
    if (first < t) {
      // An earlier load changes: stand everything again from there.
      clock = first - 1
      all = all.filter((v) => v.from < first)
    }
  }
  return {chosen: Int32Array.from(state.chosen), standing: all, cost: state.cost}
}

function standingAlready(model: Model, i: {u: number; s: number; e: number}): Standing[] {
  const job = model.jobs[i.u]!
  return (job.stood ?? []).map((p) => ({
    dish: job.dish.id,
    number: p.number,
    vessel: job.dish.vessel,
    x: p.x,
    y: p.y,
    turn: p.turn,
    from: i.s,
    to: i.e,
  }))
}

function toPlace(model: Model, i: {u: number; s: number; e: number; w: number}): ToPlace {
  const job = model.jobs[i.u]!
  const {curve, phase} = model.program
  const from = i.s * rules.tick + phase
  const to = i.e * rules.tick + phase
  const ok = (z: number): boolean => keeps(job.dish, curve, z, from, to)
  return {dish: job.dish, first: job.first, count: job.count, from: i.s, to: i.e, where: i.w, fits: [ok(0), ok(1), ok(2)]}
}

/** True when a dish set in and drawn at these minutes keeps its limits in one part of the floor. */
function keeps(dish: Dish, curve: Curve, z: number, from: number, to: number): boolean {
  const {need} = dish
  const c = celsiusAt(curve, z, from)
  if (c < need.startLow || c > need.startHigh) return false
  if (celsiusAt(curve, z, to) < need.endLow) return false
  const table = doseTable(curve, z, need.done)
  const at = (m: number): number => table[Math.max(0, Math.min(table.length - 1, Math.round(m)))]!
  const dose = doseNeeded(need)
  const got = at(to) - at(from)
  if (got < dose * 0.995) return false
  if (need.falling || need.overnight) return true
  // Over-baked only where the next opening but one would already have been late.
  return got <= doseNeeded(need, need.minutes.high) || at(to - rules.tick - rules.staySlack) - at(from) < dose
}

/** The loads and openings of a solution as the oven sees them, minutes after lighting. */
export function eventsOf(model: Model, found: Found, option: FiringOption): OvenEvent[] {
  const {phase} = model.program
  const open = new Map<number, number>()
  const events: OvenEvent[] = (option.further ?? []).map((f) => ({minutes: f.minutes, kind: 'fire', firing: f.firing}))
  for (let u = 0; u < found.chosen.length; u++) {
    const o = found.chosen[u]!
    if (o < 0) continue
    const job = model.jobs[u]!
    const s = model.s[u]![o]! * rules.tick + phase
    const e = model.e[u]![o]! * rules.tick + phase
    const from = job.since === null ? s : job.since - model.lit
    // While it bakes the water leaves over the time the dose takes, not over a night's stay.
    const bake = Math.min(e - from, 1.5 * job.dish.need.minutes.high)
    events.push({
      minutes: from,
      kind: 'load',
      mass: job.dish.mass * job.count,
      water: job.dish.water * job.count,
      bake: Math.max(5, bake),
    })
    open.set(from, (open.get(from) ?? 0) + job.handling)
    open.set(e, (open.get(e) ?? 0) + job.handling)
  }
  for (const [minutes, hands] of open) events.push({minutes, kind: 'door', open: Math.max(0.5, Math.round(hands * 4) / 4)})
  return events.sort((a, b) => a.minutes - b.minutes || (a.kind < b.kind ? -1 : a.kind > b.kind ? 1 : 0))
}

/** The least any plan could cost under the model: over every fire and lighting time, with this plan's loads in the oven. */
function boundOf(problem: PlanProblem, grid: FloorGrid, settled: Settled, options: PlanOptions): number | null {
  void options
  // A plan made again also pays for what it moves, so the two would not be alike.
  if (settled.unplaced.length > 0 || problem.done?.plan) return null
  const n = settled.model.jobs.length
  const rounds = n > 150 ? 40 : n > 60 ? 120 : 260
  const mine = lowerBound(settled.model, settled.total, rounds)
  const least = Math.min(mine.bound, settled.total)
  void problem
  void grid
  return least
}

function write(
  problem: PlanProblem,
  grid: FloorGrid,
  settled: Settled,
  lone: readonly {dish: Dish; rule: string; reason: string; words?: Phrase}[],
  bound: number | null,
  options: PlanOptions,
): Plan {
  const {model, found, option} = settled
  const {curve, phase} = model.program
  const jobs = model.jobs
  const clock = (k: number): number => model.clock0 + k * rules.tick
  const byStart = new Map<number, number[]>()
  for (let u = 0; u < jobs.length; u++) {
    const o = found.chosen[u]!
    if (o < 0) continue
    const at = jobs[u]!.since ?? clock(model.s[u]![o]!)
    byStart.set(at, [...(byStart.get(at) ?? []), u])
  }
  const loads: Load[] = []
  let misfit = 0
  let late = 0
  let used = 0
  const doors = new Set<number>()
  for (const at of [...byStart.keys()].sort((a, b) => a - b)) {
    const dishes: Load['dishes'][number][] = []
    const placed = []
    for (const u of byStart.get(at)!) {
      const job = jobs[u]!
      const o = found.chosen[u]!
      const w = model.where[u]![o]!
      const origin = model.origin[u]![o]!
      const choices = model.program.choices[u]!
      const drawn = clock(model.e[u]![o]!)
      misfit += choices.misfit[origin] ?? 0
      used += choices.used[origin] ?? 0
      late += lateness(job, drawn)
      if (job.since === null) doors.add(at)
      doors.add(drawn)
      const from = at - model.lit
      const to = drawn - model.lit
      const mine = settled.standing.filter(
        (v) => v.dish === job.dish.id && v.number >= job.first && v.number < job.first + job.count,
      )
      const zones = new Set(mine.map((v) => zoneAt(grid, v.y)))
      // Shown where its vessels stand: the model's part of the floor is a wish the true floor may not grant.
      const shown = zones.size === 1 ? [...zones][0]! : zones.size === 0 ? w : 3
      const three = (m: number): {low: number; likely: number; high: number} => ({
        low: celsiusAt(curve, shown, m, 'low'),
        likely: celsiusAt(curve, shown, m),
        high: celsiusAt(curve, shown, m, 'high'),
      })
      dishes.push({
        dish: job.dish.id,
        count: job.count,
        draw: drawRange(curve, job, w, from, to, model.lit),
        celsiusIn: three(from),
        celsiusOut: three(to),
        zone: shown === 3 ? 'across' : zoneNames[shown as 0 | 1 | 2],
        ...(job.since === null ? {} : {alreadyIn: true}),
      })
      for (const v of mine) placed.push(placedOf(grid, v))
    }
    loads.push({number: loads.length + 1, at, dishes, placed})
  }
  void phase
  const idle = Math.max(0, model.program.hotFloor - used)
  const total =
    weights.late * late +
    weights.misfit * misfit +
    weights.opening * doors.size +
    weights.idle * (model.program.hotFloor - used) +
    weights.wood * model.program.wood
  const messages: Message[] = []
  if (problem.dishes.length === 0)
    messages.push({
      file: 'day.md',
      line: 1,
      column: 1,
      severity: 'info',
      rule: 'no-dish',
      reason: 'no dish to bake',
      suggest: 'add a link to a receipt',
    })
  const loneOnes: Plan['unplaced'][number][] = [
    ...lone.map((l) => ({
      dish: l.dish.id,
      rule: l.rule,
      reason: l.reason,
      remedies: [],
      conflict: [l.dish.id],
      ...(l.words ? {words: l.words} : {}),
    })),
  ]
  const lit = model.lit
  const plan: Plan = {
    possible: loneOnes.length === 0 && settled.unplaced.length === 0,
    firing: option.firing,
    lit,
    raked: lit + option.forecast.raked,
    ready: lit + option.forecast.ready,
    forecast: option.forecast,
    loads,
    steps: [],
    unplaced: loneOnes,
    score: {
      lateMinutes: late,
      misfit,
      openings: doors.size,
      idle,
      wood: model.program.wood,
      total,
      gap: bound === null ? null : total <= 0 ? 0 : Math.max(0, (total - bound) / total),
      bound,
    },
    fires: [
      {lit, raked: lit + option.forecast.raked, ready: lit + option.forecast.ready, firing: option.firing},
      ...(option.further ?? []).map((f) => ({
        lit: lit + f.minutes,
        raked: lit + f.minutes + f.firing.burn,
        ready: lit + f.minutes + f.firing.burn + f.firing.soak,
        firing: f.firing,
      })),
    ],
    messages,
  }
  const balanced: Plan = {
    ...plan,
    unplaced: [...loneOnes, ...unplacedOf(problem, settled, plan, options)],
    ...balanceOf(problem, grid, settled, plan),
    suggestions: suggest(problem, grid, settled, options.spare ?? []),
  }
  const {steps, messages: more} = stepsOf(problem, balanced)
  const whole: Plan = {...balanced, steps, messages: [...balanced.messages, ...more]}
  const broken = check(problem, whole)
  if (broken.length > 0)
    return {
      ...whole,
      messages: [
        ...whole.messages,
        ...broken.map(
          (v): Message => ({file: 'day.md', line: 1, column: 1, severity: 'error', rule: `checker-${v.rule}`, reason: v.reason}),
        ),
      ],
    }
  return whole
}

/** When to look, when it is likely done, when at the latest: by the hot, the likely and the cool curve. */
function drawRange(
  curve: Curve,
  job: Job,
  where: number,
  from: number,
  to: number,
  lit: number,
): {low: number; likely: number; high: number} {
  const {need} = job.dish
  const dose = doseNeeded(need)
  const done = (which: 'low' | 'likely' | 'high'): number => {
    const table = doseTable(curve, where, need.done, which)
    const base = table[Math.max(0, Math.min(table.length - 1, Math.round(from)))]!
    for (let m = Math.round(from); m < table.length; m++) if (table[m]! - base >= dose) return m
    return table.length - 1
  }
  const likely = to
  const early = done('high')
  const slow = done('low')
  const longStay = to - done('likely') > 2 * rules.tick
  const low = longStay ? likely : Math.min(likely, early)
  const high = Math.max(likely, Math.min(slow, likely + Math.max(20, need.minutes.likely)))
  return {low: lit + low, likely: lit + likely, high: lit + high}
}

/** What was left out, a line a dish: why, with what it conflicts, and what would help. */
function unplacedOf(problem: PlanProblem, settled: Settled, plan: Plan, options: PlanOptions): Plan['unplaced'][number][] {
  const parts = new Map<string, {job: Job; count: number; why: 'floor' | 'time'}>()
  for (const {job, why} of settled.unplaced) {
    const before = parts.get(job.dish.id)
    parts.set(job.dish.id, {job, count: (before?.count ?? 0) + job.count, why: before?.why === 'floor' ? 'floor' : why})
  }
  const full = options.effort !== 'quick'
  const missing = [...parts.values()]
  const remedies = full && missing.length > 0 ? remediesOf(problem, plan, missing, options, planDay) : new Map()
  return missing.map(({job, count}, i) => {
    const {dish} = job
    const conflict = full && i < 4 ? conflictOf(problem, dish, settled, planDay) : [dish.id]
    const alone = whyNot(dish, settled.model.program.curve, settled.option)
    const others = conflict.slice(1)
    const rule = others.length + 1 >= problem.dishes.length && others.length > 3 ? 'heat' : 'room'
    const words =
      others.length === 0
        ? alone.words
        : phrase(`${rule === 'heat' ? 'heat' : 'floor'} taken${count < dish.count ? ' of some' : ''}`, {
            dishes: {unit: 'dishes', dishes: [dish.id]},
            others: {unit: 'dishes', dishes: others},
            count,
            all: dish.count,
          })
    const reason = speak(
      words,
      english((id) => problem.dishes.find((d) => d.id === id)?.title ?? id),
    )
    const tried: Remedy[] = remedies.get(dish.id) ?? []
    return {
      dish: dish.id,
      rule: others.length === 0 ? alone.rule : rule,
      reason,
      words,
      remedies: tried.map((r) => r.say),
      conflict,
      tried,
    }
  })
}
