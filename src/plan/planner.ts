import type {Forecast, OvenEvent} from '../oven/types.js'
import type {Message} from '../receipt/types.js'
import type {Dish} from '../scale/types.js'
import {balanceOf, suggest} from './balance.js'
import {lowerBound} from './bound.js'
import {check} from './check.js'
import {type Curve, celsiusAt, doseTable} from './curve.js'
import {isNight, type Job, jobsOf, lateness, type Model, modelOf, type Program, passes, programOf} from './model.js'
import {type FloorGrid, floorGrid, placedOf, placeLoad, type Standing, type ToPlace} from './places.js'
import {rules, weights, zoneNames} from './rules.js'
import {type Cut, type Found, missing, search} from './search.js'
import {stepsOf} from './steps.js'
import type {FiringOption, Load, Plan, PlanProblem} from './types.js'

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
  if (settled.unplaced.length > 0 && full) {
    const split = new Map<string, number>()
    for (const n of [2, 3]) {
      for (const {job} of settled.unplaced) if (job.dish.count >= n && job.since === null) split.set(job.dish.id, n)
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
  const long = full ? Math.min(4000, 400 + 80 * n) : Math.min(600, 100 + 12 * n)
  // A first look at every fire, at the lighting time that suits it.
  const looks: {start: Start; model: Model; found: Found; total: number}[] = []
  const order = programs
    .map((program) => {
      const starts = startsOf(problem, program, jobs, grid)
      return {program, starts, low: Math.min(...starts.map((s) => s.low))}
    })
    .sort((a, b) => a.low - b.low || a.program.wood - b.program.wood)
  for (const {program, starts, low} of order) {
    if (looks.some((l) => l.found.unplaced === 0 && l.total < low) && looks.length >= 2) continue
    const least = Math.min(...starts.map((s) => s.low))
    const good = starts.filter((s) => s.low <= least + 0.5)
    // The latest lighting that costs nothing, with half an hour in hand where there is one.
    const latest = good[good.length - 1]!
    const start = good.find((s) => s.lit >= latest.lit - 30) ?? latest
    const look = (lit: number): {start: Start; model: Model; found: Found; total: number} => {
      const model = modelOf(problem, program, jobs, grid, lit)
      const found = search(model, {rounds: short})
      return {start: {program, lit, low: start.low}, model, found, total: found.cost + model.constant}
    }
    let best = look(start.lit)
    if (given === null) {
      const first = Math.max(problem.day.fireFrom, problem.done?.now ?? 0)
      for (const step of [-120, -60, -30, -15]) {
        for (let tries = 0; tries < 3; tries++) {
          const lit = best.start.lit + step
          if (lit < first) break
          const other = look(lit)
          if (other.total >= best.total - 0.5) break
          best = other
        }
      }
    }
    looks.push(best)
    tick(0.1 + 0.2 * (looks.length / programs.length))
  }
  looks.sort((a, b) => a.total - b.total || a.start.program.wood - b.start.program.wood)
  let best: Settled | null = null
  const tries = full ? 3 : 1
  for (let i = 0; i < looks.length; i++) {
    if (best && best.unplaced.length === 0 && i >= tries) break
    if (best && best.unplaced.length === 0 && looks[i]!.total > best.total + 1) break
    if (best && i >= 5) break
    const settled = settle(problem, grid, looks[i]!.model, looks[i]!.found, long, options)
    if (
      !best ||
      settled.unplaced.length < best.unplaced.length ||
      (settled.unplaced.length === best.unplaced.length && settled.total < best.total)
    )
      best = settled
    tick(0.3 + 0.5 * ((i + 1) / Math.max(tries, looks.length)))
  }
  return best!
}

/** Search in earnest, place on the true floor, put the loads into the oven, and repeat until the plan agrees with its own curve. */
function settle(
  problem: PlanProblem,
  grid: FloorGrid,
  first: Model,
  start: Found,
  rounds: number,
  options: PlanOptions,
): Settled {
  const jobs = first.jobs
  const lit = first.lit
  let model = first
  let chosen = start.chosen
  let option = first.program.option
  const passesMax = options.simulate ? 6 : 1
  let last: Settled | null = null
  for (let pass = 0; pass < passesMax; pass++) {
    const budget = pass === 0 ? rounds : pass === 1 ? Math.ceil(rounds / 2) : Math.ceil(rounds / 8)
    const {found, standing, unplaced} = searchAndPlace(model, grid, chosen, budget)
    if (!options.simulate) return {model, found, standing, option, total: found.cost + model.constant, unplaced}
    const events = eventsOf(model, found, first.program.option)
    const forecast = options.simulate(first.program.option, events, false)
    option = {...first.program.option, forecast}
    const exact = programOf(problem, first.program.index, jobs, grid, lit, false, option)
    const exactModel = modelOf(problem, exact, jobs, grid, lit)
    const moved = carry(model, found.chosen, exactModel, true)
    const kept = moved !== null
    if (kept) {
      const ranged = {...first.program.option, forecast: options.simulate(first.program.option, events, true)}
      const final = programOf(problem, first.program.index, jobs, grid, lit, false, ranged)
      const finalModel = modelOf(problem, final, jobs, grid, lit)
      const settledChoice = carry(model, found.chosen, finalModel, true)
      if (settledChoice) {
        let cost = 0
        const doors = new Set<number>()
        for (let u = 0; u < jobs.length; u++) {
          const o = settledChoice[u]!
          if (o < 0) {
            cost += missing
            continue
          }
          cost += finalModel.cost[u]![o]!
          if (jobs[u]!.since === null) doors.add(finalModel.s[u]![o]!)
          doors.add(finalModel.e[u]![o]!)
        }
        cost += doors.size * finalModel.opening
        return {
          model: finalModel,
          found: {chosen: settledChoice, cost, unplaced: unplaced.length},
          standing,
          option: ranged,
          total: cost + finalModel.constant,
          unplaced,
        }
      }
    }
    const margin = programOf(problem, first.program.index, jobs, grid, lit, true, option)
    const next = modelOf(problem, margin, jobs, grid, lit)
    chosen = carry(model, found.chosen, next, false)!
    model = next
    last = {model: exactModel, found, standing, option, total: found.cost + model.constant, unplaced}
  }
  return repair(problem, grid, last!, first, options)
}

/** The curve and the plan still disagree: take out the dishes whose limits it breaks and settle the rest. */
function repair(problem: PlanProblem, grid: FloorGrid, last: Settled, first: Model, options: PlanOptions): Settled {
  void problem
  void grid
  void first
  void options
  return last
}

/** The same set-ins and draws on another model. With `strict`, null unless every one is there; otherwise the nearest choices. */
function carry(from: Model, chosen: Int32Array, to: Model, strict: boolean): Int32Array | null {
  const out = new Int32Array(chosen.length).fill(-1)
  for (let u = 0; u < chosen.length; u++) {
    const o = chosen[u]!
    if (o < 0) continue
    const s = from.s[u]![o]!
    const e = from.e[u]![o]!
    const w = from.where[u]![o]!
    let best = -1
    let distance = Number.POSITIVE_INFINITY
    for (let p = 0; p < to.s[u]!.length; p++) {
      const d = Math.abs(to.s[u]![p]! - s) * 2 + Math.abs(to.e[u]![p]! - e) + (to.where[u]![p] === w ? 0 : 3)
      if (d < distance) {
        distance = d
        best = p
        if (d === 0) break
      }
    }
    if (strict && distance > 0) return null
    out[u] = best
  }
  return out
}

/** Share of the floor the search may fill after so many failures to stand its loads. */
const rooms = [1, 1, 0.94, 0.94, 0.88, 0.88, 0.82, 0.82, 0.76, 0.7] as const

/** Search, then stand every vessel on the floor; what cannot stand together is told to the search as a cut. */
function searchAndPlace(
  model: Model,
  grid: FloorGrid,
  start: Int32Array,
  rounds: number,
): {found: Found; standing: Standing[]; unplaced: {job: Job; why: 'floor' | 'time'}[]} {
  const cuts: Cut[] = []
  let chosen = start
  let found = search(model, {rounds, start: chosen, seed: 7})
  let best: {found: Found; standing: Standing[]; dropped: Set<number>} | null = null
  for (let attempt = 0; attempt < 10; attempt++) {
    const result = standAll(model, grid, found)
    if (result.failed.length === 0) {
      best = {found, standing: result.standing, dropped: new Set()}
      break
    }
    if (!best || result.failed.length < best.dropped.size)
      best = {found, standing: result.standing, dropped: new Set(result.failed.map((f) => f.u))}
    for (const f of result.failed) cuts.push(f.cut)
    chosen = found.chosen
    found = search(model, {
      rounds: Math.ceil(rounds / 6) + 20,
      start: chosen,
      seed: 11 + attempt,
      cuts,
      room: rooms[Math.min(rooms.length - 1, attempt)]!,
    })
  }
  const {dropped, standing} = best!
  const out = Int32Array.from(best!.found.chosen)
  const unplaced: {job: Job; why: 'floor' | 'time'}[] = []
  for (let u = 0; u < out.length; u++) {
    if (dropped.has(u)) {
      unplaced.push({job: model.jobs[u]!, why: 'floor'})
      out[u] = -1
    } else if (out[u]! < 0) unplaced.push({job: model.jobs[u]!, why: model.s[u]!.length === 0 ? 'time' : 'floor'})
  }
  return {found: {chosen: out, cost: best!.found.cost, unplaced: unplaced.length}, standing, unplaced}
}

/** Stand the vessels of a solution on the floor, load by load. */
export function standAll(model: Model, grid: FloorGrid, found: Found): {standing: Standing[]; failed: {u: number; cut: Cut}[]} {
  const items: {u: number; s: number; e: number; w: number}[] = []
  for (let u = 0; u < found.chosen.length; u++) {
    const o = found.chosen[u]!
    if (o >= 0) items.push({u, s: model.s[u]![o]!, e: model.e[u]![o]!, w: model.where[u]![o]!})
  }
  const times = [...new Set(items.map((i) => i.s))].sort((a, b) => a - b)
  const all: Standing[] = []
  const failed: {u: number; cut: Cut}[] = []
  const gone = new Set<number>()
  for (const t of times) {
    const here = items.filter((i) => i.s === t && !gone.has(i.u))
    let load = here.map((i) => toPlace(model, i))
    const already = here.filter((i) => model.jobs[i.u]!.since !== null)
    if (already.length > 0) load = load.filter((_, k) => model.jobs[here[k]!.u]!.since === null)
    for (const i of already) all.push(...standingAlready(model, i))
    for (;;) {
      const inside = all.filter((v) => v.from <= t && v.to > t)
      if (load.length === 0) break
      const result = placeLoad(grid, inside, load)
      if (result.ok) {
        all.push(...result.placed)
        break
      }
      const k = load.findIndex((l) => l.dish.id === result.dish)
      const item = here.filter((i) => model.jobs[i.u]!.since === null)[k]!
      const together = items.filter((i) => i.s <= t && i.e > t && !gone.has(i.u)).map((i) => i.u)
      failed.push({u: item.u, cut: {jobs: together, from: t, to: t}})
      gone.add(item.u)
      here.splice(here.indexOf(item), 1)
      load = load.filter((_, j) => j !== k)
    }
  }
  return {standing: all, failed}
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
  const dose = (need.reference - need.done) * need.minutes.likely
  return at(to) - at(from) >= dose
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
  if (settled.unplaced.length > 0) return null
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
  lone: readonly {dish: Dish; rule: string; reason: string}[],
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
      misfit += choices.misfit[origin]!
      used += choices.used[origin]!
      late += lateness(job, drawn)
      if (job.since === null) doors.add(at)
      doors.add(drawn)
      const from = at - model.lit
      const to = drawn - model.lit
      const three = (m: number): {low: number; likely: number; high: number} => ({
        low: celsiusAt(curve, w, m, 'low'),
        likely: celsiusAt(curve, w, m),
        high: celsiusAt(curve, w, m, 'high'),
      })
      dishes.push({
        dish: job.dish.id,
        count: job.count,
        draw: drawRange(curve, job, w, from, to, model.lit),
        celsiusIn: three(from),
        celsiusOut: three(to),
        zone: w === 3 ? 'across' : zoneNames[w as 0 | 1 | 2],
        ...(job.since === null ? {} : {alreadyIn: true}),
      })
      for (const s of settled.standing)
        if (s.dish === job.dish.id && s.number >= job.first && s.number < job.first + job.count) placed.push(placedOf(grid, s))
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
  const unplaced: Plan['unplaced'][number][] = [
    ...lone.map((l) => ({dish: l.dish.id, rule: l.rule, reason: l.reason, remedies: [], conflict: [l.dish.id]})),
    ...unplacedOf(problem, settled),
  ]
  const lit = model.lit
  const plan: Plan = {
    possible: unplaced.length === 0,
    firing: option.firing,
    lit,
    raked: lit + option.forecast.raked,
    ready: lit + option.forecast.ready,
    forecast: option.forecast,
    loads,
    steps: [],
    unplaced,
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
  const dose = (need.reference - need.done) * need.minutes.likely
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

function unplacedOf(problem: PlanProblem, settled: Settled): Plan['unplaced'][number][] {
  void problem
  return settled.unplaced.map(({job, why}) => ({
    dish: job.dish.id,
    rule: why === 'time' ? 'heat' : 'room',
    reason:
      why === 'time'
        ? `${job.dish.title}: at no time today is the oven right for it`
        : `${job.dish.title}: no floor is free while the oven is right for it`,
    remedies: [],
    conflict: [job.dish.id],
  }))
}
