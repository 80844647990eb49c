import {generator, shuffle} from '../scale/random-numbers.js'
import {choiceAt, type Model} from './model.js'
import {rules} from './rules.js'
import {type Cut, State} from './search-state.js'
import type {TrueFloor} from './seating.js'

/**
 * Large-neighbourhood search on the compact model: take a few dishes out, put each back where it costs least, keep what is better.
 * Deterministic: the random numbers come from a fixed seed and the budget is counted in rounds, not in seconds.
 */

/** A solution: for each job the index of its choice in the model's lists, or −1. */
export interface Found {
  readonly chosen: Int32Array
  readonly cost: number
  readonly unplaced: number
}

/** Share of the rounds, while every dish has a place, that move a stretch of the day as it is; and by how many ticks at most. */
const STRETCH = 0.06
const SHIFT = 3

/** Dishes without a place that are tried in a round, besides those just taken out. */
const WAITING = 4
/** How much more of a rise is put up with while a dish has no place, and how many are a few. */
const WAITING_HEAT = 20
const FEW = 2

export interface SearchOptions {
  readonly rounds: number
  readonly seed?: number
  readonly start?: Int32Array
  readonly cuts?: readonly Cut[]
  readonly stopAt?: number
  readonly refused?: readonly (Set<number> | undefined)[]
  /** Only what is better is kept: no wandering. */
  readonly calm?: boolean
  /** The true floor, which is asked of every solution that would else be taken, beside the floor's figures. */
  readonly under?: FloorUnder
  readonly onRound?: (done: number) => void
}

/** The true floor under the solutions of a search. */
export interface FloorUnder {
  readonly floor: TrueFloor
  /** Lay a solution out on it: for each job the index of its choice, or −1. */
  readonly lay: (chosen: Int32Array) => void
}

/** Cost of a job without a place on the true floor: it may have one yet. */
const UNSEATED = 30

/** Search one model. Deterministic for the same model and options. */
export function search(model: Model, options: SearchOptions): Found {
  const n = model.jobs.length
  const {ticks} = model
  const state = new State(model, options.cuts)
  options.refused?.forEach((r, u) => {
    state.refused[u] = r
  })
  const {s: sets, e: draws, where, old, area} = state
  const random = generator(options.seed ?? 1)
  const pick = (k: number): number => Math.floor(random() * k)
  if (options.start)
    for (let u = 0; u < n; u++) {
      const o = options.start[u] ?? -1
      if (o >= 0 && o < sets[u]!.length && !state.refused[u]?.has(sets[u]![o]!) && state.allows(u, o)) state.add(u, o)
    }
  const fewest = Array.from({length: n}, (_, u) => u).sort(
    (a, b) => sets[a]!.length / area[a]! - sets[b]!.length / area[b]! || a - b,
  )
  const greedy = (list: readonly number[], ban = -1): void => {
    for (const u of list) {
      if (state.chosen[u]! >= 0) continue
      const b = state.best(u, ban)
      if (b.o >= 0) state.add(u, b.o)
    }
  }
  greedy(fewest)
  const {under} = options
  const floor = under?.floor
  under?.lay(state.chosen)
  let bestCost = state.cost + UNSEATED * (floor?.refused(n) ?? 0)
  floor?.keep()
  let bestSeats = floor?.save()
  let best = Int32Array.from(state.chosen)
  let current = Int32Array.from(state.chosen)
  let currentCost = bestCost
  const heat0 = options.calm ? 0 : Math.max(1, 0.6 * model.opening)
  const out: number[] = []
  const moved: number[] = []
  const near: {u: number; d: number}[] = []
  for (let round = 0; round < options.rounds; round++) {
    if (options.onRound && round % 64 === 0) options.onRound(round)
    if (options.stopAt !== undefined && bestCost <= options.stopAt) break
    out.length = 0
    let ban = -1
    let gift = -1
    const kind = random()
    if (n === 0) break
    const size = Math.min(n, 1 + pick(Math.min(8, Math.max(2, Math.ceil(n / 4)))))
    if (state.gone > 0 && kind < 0.35) {
      // Make room for something left out: take out what stands where it wants to be.
      const waiting = []
      for (let u = 0; u < n; u++) if (state.chosen[u]! < 0 && sets[u]!.length > 0) waiting.push(u)
      if (waiting.length > 0) {
        const u = waiting[pick(waiting.length)]!
        // The lists are sorted by cost: what suits the dish best is tried most.
        const o = Math.floor(sets[u]!.length * random() ** 2)
        const s = sets[u]![o]!
        const e = draws[u]![o]!
        const gap = rules.settleIn.minutes / rules.tick
        for (let v = 0; v < n; v++) {
          const p = state.chosen[v]!
          if (p >= 0 && sets[v]![p]! < e && draws[v]![p]! > s - gap) out.push(v)
        }
        shuffle(out, random)
        // Half the time everything in its way goes out: one long bake may want the whole day laid out round it.
        if (random() < 0.5) out.length = Math.min(out.length, size + 2)
        for (const v of out) state.remove(v)
        if (!state.refused[u]?.has(s) && state.allows(u, o)) state.add(u, o)
      }
    } else if (kind < STRETCH) {
      // A stretch of the day moved as it is: what hangs together at its openings can only move together.
      const u = pick(n)
      const o = state.chosen[u]!
      const from = o < 0 ? pick(ticks) : random() < 0.5 ? sets[u]![o]! : draws[u]![o]!
      const to = random() < 0.3 ? ticks : from + pick(1 + Math.ceil(ticks * random() ** 2))
      const by = (random() < 0.5 ? -1 : 1) * (1 + Math.floor(SHIFT * random() ** 2))
      const inside = (t: number): boolean => t >= from && t <= to
      for (let v = 0; v < n; v++) {
        const p = state.chosen[v]!
        if (p < 0) continue
        const s = sets[v]![p]!
        const e = draws[v]![p]!
        const s2 = inside(s) && old[v] === 0 ? s + by : s
        const e2 = inside(e) ? e + by : e
        if (s2 === s && e2 === e) continue
        out.push(v)
        moved.push(choiceAt(model, v, s2, e2, where[v]![p]!))
      }
    } else if (kind < 0.55) {
      // One opening of the door fewer.
      const u = pick(n)
      const o = state.chosen[u]!
      if (o >= 0) {
        ban = random() < 0.5 && old[u] === 0 ? sets[u]![o]! : draws[u]![o]!
        for (let v = 0; v < n; v++) {
          const p = state.chosen[v]!
          if (p >= 0 && (sets[v]![p] === ban || draws[v]![p] === ban)) out.push(v)
        }
        if (out.length > 12) out.length = 0
        // Often the whole opening is moved a little: the door stands open for nothing at the new time while they choose.
        if (random() < 0.7) gift = ban + (random() < 0.5 ? -1 : 1) * (1 + pick(4))
      }
    } else if (kind < 0.7) {
      // Try the door at a new time, with those near it free to use it.
      gift = eventNear(state, random)
      near.length = 0
      for (let v = 0; v < n; v++) {
        const p = state.chosen[v]!
        if (p >= 0) near.push({u: v, d: Math.min(Math.abs(sets[v]![p]! - gift), Math.abs(draws[v]![p]! - gift)) + random() * 6})
      }
      near.sort((a, b) => a.d - b.d)
      for (let i = 0; i < size + 1 && i < near.length; i++) out.push(near[i]!.u)
    } else if (kind < 0.88) {
      // Neighbours in time.
      const u = pick(n)
      const o = state.chosen[u]!
      const t = o >= 0 ? (random() < 0.5 ? sets[u]![o]! : draws[u]![o]!) : pick(ticks)
      near.length = 0
      for (let v = 0; v < n; v++) {
        const p = state.chosen[v]!
        if (p >= 0) near.push({u: v, d: Math.min(Math.abs(sets[v]![p]! - t), Math.abs(draws[v]![p]! - t)) + random() * 3})
      }
      near.sort((a, b) => a.d - b.d)
      for (let i = 0; i < size && i < near.length; i++) out.push(near[i]!.u)
    } else for (let i = 0; i < size; i++) out.push(pick(n))
    for (const v of out) state.remove(v)
    for (let i = 0; i < moved.length; i++) {
      const v = out[i]!
      const o = moved[i]!
      if (o >= 0 && !state.refused[v]?.has(sets[v]![o]!) && state.allows(v, o)) state.add(v, o)
    }
    moved.length = 0
    const todo: number[] = []
    for (let v = 0; v < n; v++) if (state.chosen[v]! < 0) todo.push(v)
    if (todo.length > out.length + WAITING) {
      // Far more than the oven holds: of those that have waited longer only some are tried, or a round takes as long as all their lists.
      const fresh = new Set(out)
      const waited = todo.filter((v) => !fresh.has(v))
      shuffle(waited, random)
      todo.length = 0
      todo.push(...fresh, ...waited.slice(0, WAITING))
    }
    if (gift >= 0 && gift < ticks) state.openings[gift]!++
    else gift = -1
    if (ban >= 0 || random() < 0.7) {
      shuffle(todo, random)
      if (random() < 0.5) todo.sort((a, b) => area[b]! - area[a]! || a - b)
    } else todo.sort((a, b) => sets[a]!.length - sets[b]!.length || a - b)
    greedy(todo, ban)
    if (state.gone > 0 && ban >= 0) greedy(todo)
    // The gift is taken back: if anyone used it, it is paid once.
    if (gift >= 0) {
      state.openings[gift]!--
      state.recount()
    }
    let cost = state.cost
    // Which dish is left out matters little beside that one is: while a few are, the search goes over worse ground.
    const heat = heat0 * (1 - round / options.rounds) * (state.gone > 0 && state.gone <= FEW ? WAITING_HEAT : 1)
    // Metropolis' rule, the chance drawn first where the floor has still to be asked: what costs more than this is refused.
    const certain = cost < currentCost - 1e-9 || (!options.calm && cost <= currentCost)
    const limit = certain && !floor ? Number.POSITIVE_INFINITY : currentCost - Math.max(1e-6, heat) * Math.log(random())
    if (under && cost <= limit) {
      under.lay(state.chosen)
      cost += UNSEATED * under.floor.refused(Math.min(n, Math.floor((limit - cost) / UNSEATED + 1e-9)))
    }
    if (cost <= limit) {
      floor?.keep()
      current = Int32Array.from(state.chosen)
      currentCost = cost
      if (cost < bestCost - 1e-9) {
        bestCost = cost
        best = Int32Array.from(current)
        bestSeats = floor?.save()
      }
    } else {
      for (let v = 0; v < n; v++) if (state.chosen[v]! !== current[v]!) state.remove(v)
      for (let v = 0; v < n; v++) if (state.chosen[v]! < 0 && current[v]! >= 0) state.add(v, current[v]!)
    }
  }
  bestSeats?.()
  let unplaced = 0
  for (let u = 0; u < n; u++) if (best[u]! < 0) unplaced++
  return {chosen: best, cost: bestCost, unplaced}
}

/** So many seeds that come to the same at once are enough. */
const AGREED = 3
/** How many times as many are searched from where a dish has no place. */
const MORE_SEEDS = 5 / 3

/**
 * Search from several seeds and keep the best; where a dish has no place, from more (`MORE_SEEDS`). Against HiGHS on the same models:
 * `bench/plan-highs.ts`.
 */
export function searchWell(model: Model, seeds = 6): Found {
  const rounds = 1000 + 100 * model.jobs.length
  let best = search(model, {rounds, seed: 1})
  let agree = true
  for (let seed = 2; seed <= seeds || (best.unplaced > 0 && seed <= MORE_SEEDS * seeds); seed++) {
    const found = search(model, {rounds, seed})
    agree &&= Math.abs(found.cost - best.cost) < 1e-6
    if (found.cost < best.cost) best = found
    if (agree && seed === AGREED) break
  }
  return best
}

/** A tick a few before or after some opening, or anywhere among the choices of a dish. */
function eventNear(state: State, random: () => number): number {
  const m = state.model
  const u = Math.floor(random() * m.jobs.length)
  const count = m.s[u]!.length
  if (count === 0) return -1
  const o = random() < 0.5 && state.chosen[u]! >= 0 ? state.chosen[u]! : Math.floor(random() * count * (0.1 + 0.9 * random()))
  const t = random() < 0.5 ? m.s[u]![o]! : m.e[u]![o]!
  return t + Math.floor(random() * 7) - 3
}
