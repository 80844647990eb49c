import type {FloorGrid} from './floor-grid.js'
import {
  dearFrom,
  earliness,
  isNight,
  type Job,
  lateness,
  latestLit,
  lighting,
  type Model,
  modelOf,
  type Program,
  priceOfLate,
  programOf,
} from './model.js'
import type {PlanOptions} from './options.js'
import {placeLoad} from './places.js'
import {rules, weights} from './rules.js'
import {type Found, search} from './search.js'
import {missing, State} from './search-state.js'
import {standingAlready} from './seating.js'
import {better, type Settled} from './settled.js'
import {toPlace} from './stand.js'
import type {Standing} from './standing.js'
import type {PlanProblem} from './types.js'

/** A day on curves that its loads do not change: where no simulated oven is at hand. */

/** Other roads tried on given curves while a dish has no place. */
const MORE_ROADS = 3

/** The day on curves that loads do not change: each fire at the lighting time that suits it, the most promising searched in earnest. */
export function settleEmpty(
  problem: PlanProblem,
  grid: FloorGrid,
  jobs: readonly Job[],
  options: PlanOptions,
  tick: (share: number) => void,
): Settled {
  const full = options.effort !== 'quick'
  const n = jobs.length
  const short = Math.min(300, 30 + 4 * n)
  const long = full ? Math.min(2500, 400 + 40 * n) : Math.min(400, 100 + 8 * n)
  const {first, last} = lighting(problem)
  const programs = problem.firings.map((_, i) => programOf(problem, i, jobs, grid, problem.done?.lit ?? null, false))
  tick(0.1)
  const order = programs
    .map((program) => {
      const starts: {lit: number; low: number}[] = []
      const latest = Math.max(first, Math.min(last, latestLit(problem.firings[program.index]!)))
      for (let lit = first; lit <= latest; lit += 30) starts.push({lit, low: quickLow(problem, program, jobs, lit)})
      return {program, starts, low: Math.min(...starts.map((s) => s.low))}
    })
    .sort((a, b) => a.low - b.low || a.program.wood - b.program.wood)
  const looks: {program: Program; lit: number; model: Model; found: Found; total: number}[] = []
  for (const {program, starts, low} of order) {
    if (looks.length >= 2 && looks.some((l) => l.found.unplaced === 0 && l.total < low)) continue
    const look = (lit: number): (typeof looks)[number] => {
      const model = modelOf(problem, program, jobs, grid, lit)
      const found = search(model, {rounds: short})
      return {program, lit, model, found, total: found.cost + model.constant}
    }
    // The latest lighting that costs nothing, with half an hour in hand where there is one.
    const good = starts.filter((s) => s.low <= low + 0.5)
    const latest = good[good.length - 1]!
    let best = look((good.find((s) => s.lit >= latest.lit - 30) ?? latest).lit)
    for (const step of [-120, -60, -30])
      for (let tries = 0; tries < 3 && best.lit + step >= first; tries++) {
        const other = look(best.lit + step)
        if (other.total >= best.total - 0.5) break
        best = other
      }
    looks.push(best)
    tick(0.1 + 0.3 * (looks.length / programs.length))
  }
  looks.sort((a, b) => a.total - b.total || a.program.wood - b.program.wood)
  let best: Settled | null = null
  for (const [i, l] of looks.entries()) {
    // Two fires are searched in earnest; more only while a dish has no place.
    if (best && best.unplaced.length === 0 && (i >= (full ? 2 : 1) || l.total > best.total + 1)) break
    if (best && !full) break
    let placed = searchAndPlace(l.model, grid, l.found.chosen, long, false, 7)
    // What is left out by one road may have its place on another.
    for (let seed = 8; full && seed < 8 + MORE_ROADS && placed.unplaced.some(({why}) => why === 'floor'); seed++) {
      const other = searchAndPlace(l.model, grid, l.found.chosen, long, false, 10 * seed)
      if (other.unplaced.length < placed.unplaced.length) placed = other
    }
    const settled: Settled = {
      ...placed,
      model: l.model,
      option: problem.firings[l.program.index]!,
      total: placed.found.cost + l.model.constant,
    }
    best = better(best, settled)
    tick(0.4 + 0.4 * ((i + 1) / looks.length))
  }
  return best!
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
    for (let o = 0; o < c.s.length; o++) {
      const e = c.e[o]!
      const cost =
        weights.misfit * c.misfit[o]! -
        weights.idle * c.used[o]! +
        priceOfLate(lateness(job, clock0 + e * rules.tick), dearFrom(job)) +
        weights.early * earliness(job, clock0 + e * rules.tick)
      if (cost < best && awake[e] && (job.since !== null || awake[c.s[o]!])) best = cost
    }
    sum += best
  })
  return sum
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
    for (const i of here) if (model.jobs[i.u]!.since !== null) all.push(...standingAlready(model.jobs[i.u]!, i.s, i.e))
    const fresh = here.filter((i) => model.jobs[i.u]!.since === null)
    const inside = all.filter((v) => v.from <= t && v.to > t)
    const result =
      fresh.length === 0
        ? null
        : placeLoad(
            grid,
            inside,
            fresh.map((i) => toPlace(model.jobs[i.u]!, i, model.program.curve, model.program.phase)),
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
