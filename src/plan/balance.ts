import type {Dish} from '../scale/types.js'
import {batchesOf} from './batches.js'
import {celsiusAt, doseTable} from './curve.js'
import type {FloorGrid} from './floor-grid.js'
import {dueOf, jobsOf, modelOf, programOf} from './model.js'
import type {Simulate} from './options.js'
import {english, phrase, speak} from './phrases.js'
import {placeOne} from './places.js'
import {PlacesLeft} from './places-left.js'
import {rules, weights, zoneNames} from './rules.js'
import {State} from './search-state.js'
import {inOrder} from './set-in-more.js'
import type {Settled} from './settled.js'
import type {BandBalance, Plan, PlanProblem} from './types.js'

const bandFeet = (['hot', 'moderate', 'slow', 'slack'] as const).map((band) => ({band, foot: rules.bandFeet[band]}))

/** Floor and heat used in each band the oven falls through, and what heat it leaves each with; and how hot it is at the end. */
export function balanceOf(problem: PlanProblem, grid: FloorGrid, settled: Settled, plan: Plan): Pick<Plan, 'balance' | 'left'> {
  const {model} = settled
  const {curve} = model.program
  const byId = new Map(problem.dishes.map((d) => [d.id, d]))
  const end = Math.floor(curve.end)
  const inBand = (c: number): number => bandFeet.findIndex((b) => c >= b.foot)
  const rows = bandFeet.map((b) => ({
    band: b.band,
    from: Number.POSITIVE_INFINITY,
    to: Number.NEGATIVE_INFINITY,
    floor: 0,
    used: 0,
    heat: 0,
  }))
  const which = new Int8Array(end + 1).fill(-1)
  for (let m = Math.ceil(curve.ready); m < end; m++) {
    if (model.program.blocked.some((b) => m >= b.from && m < b.to)) continue
    const i = inBand(celsiusAt(curve, 3, m + 0.5))
    which[m] = i
    const row = rows[i]
    if (!row) continue
    row.from = Math.min(row.from, m)
    row.to = Math.max(row.to, m + 1)
    row.floor += grid.area / 60
  }
  let last = plan.ready
  const stands = new Float64Array(end + 1)
  for (const job of model.jobs) {
    const u = model.jobs.indexOf(job)
    const o = settled.found.chosen[u]!
    if (o < 0) continue
    const from = job.since === null ? model.s[u]![o]! * rules.tick + model.program.phase : job.since - model.lit
    const to = model.e[u]![o]! * rules.tick + model.program.phase
    last = Math.max(last, to + model.lit)
    const dish = byId.get(job.dish.id)!
    const table = doseTable(curve, 3, dish.need.done)
    const whole = table[Math.min(end, Math.floor(to))]! - table[Math.max(0, Math.floor(from))]!
    const heat = (job.count * (dish.mass * rules.load.heat * rules.load.rise + dish.water * rules.load.steam)) / 1e6
    for (let m = Math.max(0, Math.floor(from)); m < Math.min(end, to); m++) {
      const row = rows[which[m]!]
      if (!row) continue
      row.used += job.area / 60
      stands[m]! += job.area
      if (whole > 0) row.heat += (heat * (table[m + 1]! - table[m]!)) / whole
    }
  }
  // A floor holds no more than it is: of what the log has closer together than it was reckoned with, each takes less.
  for (const [m, area] of stands.entries()) {
    const row = rows[which[m]!]
    if (row && area > grid.area) row.used -= (area - grid.area) / 60
  }
  const balance: BandBalance[] = rows
    .filter((r) => r.floor > 0)
    .map((r) => ({...r, from: model.lit + r.from, to: model.lit + r.to, ...leftAt(plan.forecast, r.to)}))
  return {balance, left: {at: last, celsius: celsiusAt(curve, 3, last - model.lit)}}
}

/** What the oven holds so many minutes after lighting, MJ above the air round it. */
function leftAt({heat, step}: Plan['forecast'], minutes: number): Pick<BandBalance, 'left'> {
  if (!heat) return {}
  const at = (of: readonly number[]): number => {
    const i = Math.max(0, Math.min(of.length - 1, minutes / step))
    const before = of[Math.floor(i)]!
    return before + (i % 1) * ((of[Math.ceil(i)] ?? before) - before)
  }
  return {left: {low: at(heat.low), likely: at(heat.likely), high: at(heat.high)}}
}

/** Times and parts of the floor that are tried for a spare receipt, and ticks between two. */
const TRIED = 12
const APART = 3
/** Places of one that are simulated at most. */
const SIMULATED = 3
/** Ticks by which the rest may be drawn later for it: what a cook would not call late. Common practice, no source. */
const LATER = 3
/** What a minute beyond the meal costs, beside the weights of the plan: a spare receipt may come late, but not without need. */
const AFTER_MEAL = 0.2
/** Shares of a spare receipt that are tried where there is no room for all of it. */
const SHARES = [1, 3 / 4, 1 / 2, 1 / 4, 0] as const

/** A spare receipt's place beside a plan: how many of its vessels, when, and where. */
interface Room {
  readonly count: number
  readonly s: number
  readonly e: number
  readonly where: number
  readonly placed: NonNullable<ReturnType<typeof placeOne>>
}

/**
 * Spare receipts that would go in beside the plan without moving anything, making anything late or taking the heat that the rest needs; as many
 * vessels of each as there is room for.
 *
 * @param simulate the oven; without it heat is not looked at
 */
export function suggest(
  problem: PlanProblem,
  grid: FloorGrid,
  settled: Settled,
  spare: readonly Dish[],
  simulate?: Simulate,
): NonNullable<Plan['suggestions']> {
  const out: NonNullable<Plan['suggestions']>[number][] = []
  const speaker = english((id) => spare.find((d) => d.id === id)?.title ?? id)
  const standing = [...settled.standing]
  // What a larger batch has no room for is not asked again.
  const full = new Set<string>()
  for (const dish of spare) {
    const whole = batchesOf(dish)
    if (full.has(whole)) continue
    const counts = new Set(SHARES.map((share) => Math.max(1, Math.floor(share * dish.count))))
    const found = [...counts].reduce<Room | null>(
      (room, count) => room ?? roomFor(problem, grid, settled, {...dish, count}, standing, simulate),
      null,
    )
    if (found === null || found.count < dish.count) full.add(whole)
    if (found === null) continue
    const all = spare.reduce((sum, other) => sum + (batchesOf(other) === whole ? other.count : 0), 0)
    const at = settled.model.clock0 + found.s * rules.tick
    const draw = settled.model.clock0 + found.e * rules.tick
    const zone = found.where === 3 ? 'across' : zoneNames[found.where as 0 | 1 | 2]
    const some = found.count < dish.count
    const words = phrase(some ? 'suggest some' : 'suggest', {
      ...(some ? {count: found.count, all} : {}),
      dishes: {unit: 'dishes', dishes: [dish.id]},
      at: {unit: 'clock', value: at},
      draw: {unit: 'clock', value: draw},
    })
    out.push({dish: dish.id, ...(some ? {count: found.count} : {}), at, draw, zone, say: speak(words, speaker), words})
    standing.push(...found.placed)
  }
  return out
}

/** Where so many vessels of a spare receipt go in at once: at the heat they like best, at openings that are there already, before the meal. */
function roomFor(
  problem: PlanProblem,
  grid: FloorGrid,
  settled: Settled,
  dish: Dish,
  standing: Settled['standing'],
  simulate?: Simulate,
): Room | null {
  const alone: PlanProblem = {
    ...problem,
    dishes: [{...dish, wantedBy: dish.wantedBy ?? 1e6}],
    firings: [settled.option],
  }
  const jobs = jobsOf(alone, grid)
  const job = jobs[0]
  if (!job || jobs.length > 1) return null
  const program = programOf(alone, 0, jobs, grid, settled.model.lit, true, settled.option)
  const model = modelOf(alone, program, jobs, grid, settled.model.lit)
  const state = new State(settled.model)
  state.load(settled.found.chosen)
  const meal = dueOf(dish, problem.day.serve) ?? Number.POSITIVE_INFINITY
  const opening = (t: number): number => (state.hands[t]! > 0 ? 0 : weights.opening)
  const cost = Float64Array.from(model.s[0]!, (s, o) => {
    const e = model.e[0]![o]!
    const late = Math.max(0, model.clock0 + e * rules.tick - meal)
    return model.cost[0]![o]! + opening(s) + opening(e) + AFTER_MEAL * late
  })
  const tried: {s: number; w: number}[] = []
  let simulated = 0
  let left: PlacesLeft | null = null
  for (const o of [...cost.keys()].sort((p, q) => cost[p]! - cost[q]! || p - q)) {
    if (tried.length >= TRIED) break
    const s = model.s[0]![o]!
    const e = model.e[0]![o]!
    const where = model.where[0]![o]!
    // Where it found no place it hardly finds one a little earlier or later.
    if (tried.some((t) => t.w === where && Math.abs(t.s - s) < APART)) continue
    // Across the floor it may stand wherever there is room: the true floor says.
    const parts = where === 3 ? [0, 1, 2] : [where]
    const room = parts.reduce((sum, z) => sum + model.floor[z as 0 | 1 | 2], 0) * (1 + 1e-6) - job.area
    const inside = (t: number): number => parts.reduce((sum, z) => sum + state.inside[z]![t]!, 0)
    let free = true
    for (let t = s; t < e && free; t++) free = inside(t) <= room
    if (!free) continue
    if (state.hands[s]! + job.handling > model.hands || state.hands[e]! + job.handling > model.hands) continue
    tried.push({s, w: where})
    const fits = [where === 0 || where === 3, where === 1 || where === 3, where === 2 || where === 3] as const
    const placed = placeOne(grid, standing, {dish, first: 1, count: job.count, from: s, to: e, where, fits})
    if (!placed) continue
    if (!simulate) return {count: job.count, s, e, where, placed}
    if (!inOrder(settled, job, s)) continue
    if (simulated++ >= SIMULATED) break
    // What it takes from the oven must not spoil the rest, and it may have to stay a little longer for it itself.
    left ??= new PlacesLeft(alone, grid, settled, job)
    const [trial] = left.tried([{s, e, where, spare: 0, vessels: placed}], simulate, LATER)
    if (!trial || trial.tried.spoiled.length > 0 || left.handsFull(trial.tried.e)) continue
    if (trial.tried.e === e) return {count: job.count, s, e, where, placed}
    const longer = left.among({s, e: trial.tried.e, where, spare: 0}, standing)
    if (longer) return {count: job.count, s, e: trial.tried.e, where, placed: [...longer]}
  }
  return null
}
