import {choiceAt, type Model, shutTicks} from './model.js'
import {rules, weights} from './rules.js'
import type {TrueFloor} from './seating.js'

/**
 * Large-neighbourhood search on the compact model: take a few dishes out, put each back where it costs least, keep what is better.
 * Deterministic: the random numbers come from a fixed seed and the budget is counted in rounds, not in seconds.
 */

/** Cost of a dish that found no place: larger than any lateness the planner would accept for it. */
export const missing = 2000

/** A solution: for each job the index of its choice in the model's lists, or −1. */
export interface Found {
  readonly chosen: Int32Array
  readonly cost: number
  readonly unplaced: number
}

/** A limit found while placing vessels on the true floor, added to the model. */
export interface Cut {
  /** These jobs may not all be in the oven at once between these ticks. */
  readonly jobs: readonly number[]
  readonly from: number
  readonly to: number
}

/** mulberry32: a small generator good enough to choose neighbourhoods. */
export function generator(seed: number): () => number {
  let a = seed >>> 0
  return () => {
    a = (a + 0x6d2b79f5) >>> 0
    let t = a
    t = Math.imul(t ^ (t >>> 15), t | 1)
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61)
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

/**
 * Minutes from which a door kept shut is reckoned with here: two hours of a rich cake bend the whole day. Shorter ones are left to the layout
 * and to the proof, which pay for all: paid for here too, the twenty minutes of a sponge made a day cheaper by 2 % and left its bread not a minute
 * to spare.
 */
const LONG_SHUT = 60

/** What is in the oven at each tick, kept up to date as dishes come and go. */
export class State {
  readonly chosen: Int32Array
  readonly inside: Float64Array[]
  readonly through: Float64Array[]
  readonly lanes: Int32Array[]
  readonly openings: Int32Array
  readonly hands: Float64Array
  /** Set-ins of each order (`Job.order`) at each tick. */
  readonly orders: readonly Int32Array[]
  /** Jobs of which a receipt wants the door kept shut at each tick. */
  private readonly shutAt: Int32Array
  /** Ticks from its set-in for which a job wants it so, and whether any does. */
  private readonly shut: Int32Array
  private readonly mindful: boolean
  /** Openings up to each tick, for what wants the door kept shut. */
  private readonly opened: Int32Array
  /** Openings while a receipt wants the door kept shut. */
  private disturbed = 0
  /** Crusts (`Job.order` 2) that stay through each tick. */
  readonly crusts: Int32Array
  readonly share: readonly [number, number, number]
  /** What a model says, copied: models and jobs come in many shapes, and what runs on one shape alone runs several times as fast. */
  readonly s: Model['s']
  readonly e: Model['e']
  readonly where: Model['where']
  private readonly price: Model['cost']
  private readonly ticks: number
  private readonly opening: number
  private readonly mostHands: number
  private readonly apart: boolean
  /** Floor of each part, m², and what is left of it beside a lane. */
  private readonly floor: Float64Array
  private readonly narrow: Float64Array
  readonly area: Float64Array
  private readonly handling: Float64Array
  private readonly order: Uint8Array
  /** 1 for each job that is in the oven already. */
  readonly old: Uint8Array
  readonly cutCount: Int32Array
  readonly cutsOf: number[][]
  /** Per job, ticks at which it may not be set in: the true floor refused it there. */
  readonly refused: (Set<number> | undefined)[] = []
  base = 0
  doors = 0
  gone: number

  constructor(
    readonly model: Model,
    readonly cuts: readonly Cut[] = [],
  ) {
    const n = model.jobs.length
    this.chosen = new Int32Array(n).fill(-1)
    this.inside = [0, 1, 2].map(() => new Float64Array(model.ticks))
    this.through = [0, 1, 2].map(() => new Float64Array(model.ticks))
    this.lanes = [0, 1, 2].map(() => new Int32Array(model.ticks))
    this.openings = new Int32Array(model.ticks)
    this.hands = new Float64Array(model.ticks)
    this.until = new Int32Array(4 * model.ticks)
    this.ends = new Uint8Array(4 * model.ticks)
    this.open = new Uint8Array(model.ticks)
    this.taken = new Uint8Array(model.ticks)
    this.crusts = new Int32Array(model.ticks)
    this.shut = Int32Array.from(model.jobs, (job) => ((job.dish.need.closed?.likely ?? 0) < LONG_SHUT ? 0 : shutTicks(job)))
    this.mindful = this.shut.some((ticks) => ticks > 1)
    this.shutAt = new Int32Array(model.ticks)
    this.opened = new Int32Array(model.ticks + 1)
    this.orders = [0, 1, 2].map(() => new Int32Array(model.ticks))
    this.share = [model.floor[0] / model.floorTotal, model.floor[1] / model.floorTotal, model.floor[2] / model.floorTotal]
    this.s = model.s
    this.e = model.e
    this.where = model.where
    this.price = model.cost
    this.ticks = model.ticks
    this.opening = model.opening
    this.mostHands = model.hands
    this.apart = model.apart ?? false
    this.floor = Float64Array.from(model.floor)
    this.narrow = this.floor.map((area) => area * (1 - model.lane))
    this.area = Float64Array.from(model.jobs, (job) => job.area)
    this.handling = Float64Array.from(model.jobs, (job) => job.handling)
    this.order = Uint8Array.from(model.jobs, (job) => job.order)
    this.old = Uint8Array.from(model.jobs, (job) => (job.since === null ? 0 : 1))
    this.gone = n
    this.cutCount = new Int32Array(cuts.length)
    this.cutsOf = model.jobs.map(() => [])
    cuts.forEach((c, i) => {
      for (const u of c.jobs) this.cutsOf[u]!.push(i)
    })
  }

  get cost(): number {
    return this.base + this.doors * this.opening + weights.shut * this.disturbed + this.gone * missing
  }

  private change(u: number, o: number, sign: 1 | -1): void {
    const s = this.s[u]![o]!
    const e = this.e[u]![o]!
    const w = this.where[u]![o]!
    const area = this.area[u]! * sign
    const old = this.old[u] === 1
    const order = this.order[u]!
    for (let z = 0; z < 3; z++) {
      const a = w === 3 ? area * this.share[z]! : w === z ? area : 0
      if (a === 0) continue
      const inside = this.inside[z]!
      const through = this.through[z]!
      for (let t = Math.max(0, s); t < e; t++) inside[t]! += a
      for (let t = Math.max(0, s + 1); t < e; t++) through[t]! += a
    }
    if (order === 2) for (let t = Math.max(0, s + 1); t < e; t++) this.crusts[t]! += sign
    const mindful = this.mindful
    if (mindful && sign === -1) this.keepShut(u, s, -1)
    // Reaching the back needs a lane through the middle and the mouth; reaching the middle, through the mouth.
    const handling = this.handling[u]! * sign
    if (!old) {
      if (w === 0 || w === 3) this.lanes[1]![s]! += sign
      if (w !== 2) this.lanes[2]![s]! += sign
      this.hands[s]! += handling
      this.orders[order]![s]! += sign
      if (sign === 1 ? this.openings[s]!++ === 0 : --this.openings[s]! === 0) {
        this.doors += sign
        if (mindful) this.disturbed += sign * this.shutAt[s]!
      }
    }
    if (w === 0 || w === 3) this.lanes[1]![e]! += sign
    if (w !== 2) this.lanes[2]![e]! += sign
    this.hands[e]! += handling
    if (sign === 1 ? this.openings[e]!++ === 0 : --this.openings[e]! === 0) {
      this.doors += sign
      if (mindful) this.disturbed += sign * this.shutAt[e]!
    }
    if (mindful && sign === 1) this.keepShut(u, s, 1)
    const cuts = this.cutsOf[u]!
    for (let k = 0; k < cuts.length; k++) {
      const i = cuts[k]!
      const c = this.cuts[i]!
      if (s <= c.from && e > c.from) this.cutCount[i]! += sign
    }
    this.base += this.price[u]![o]! * sign
    this.gone -= sign
    this.chosen[u] = sign === 1 ? o : -1
  }

  /** The door that a job wants kept shut from its set-in on. */
  private keepShut(u: number, s: number, sign: 1 | -1): void {
    for (let t = Math.max(0, s + 1); t < s + this.shut[u]! && t < this.ticks; t++) {
      this.shutAt[t]! += sign
      if (this.openings[t]! > 0) this.disturbed += sign
    }
  }

  /** Count the openings again. */
  recount(): void {
    let doors = 0
    let disturbed = 0
    for (let t = 0; t < this.openings.length; t++) {
      if (this.openings[t]! === 0) continue
      doors++
      disturbed += this.shutAt[t]!
    }
    this.doors = doors
    this.disturbed = disturbed
  }

  add(u: number, o: number): void {
    this.change(u, o, 1)
  }

  remove(u: number): number {
    const o = this.chosen[u]!
    if (o >= 0) this.change(u, o, -1)
    return o
  }

  /** True when a set-in at this tick keeps the half hour between what falls from very hot and crusts. */
  private inOrder(order: number, s: number): boolean {
    if (order === 0 || s < 0) return true
    const gap = rules.settleIn.minutes / rules.tick
    const others = this.orders[order === 1 ? 2 : 1]!
    const from = order === 1 ? s : s - gap + 1
    for (let t = Math.max(0, from); t < from + gap && t < others.length; t++) if (others[t]! > 0) return false
    return true
  }

  /** True when nothing is set in to fall while a crust bakes, or where that is not asked. */
  private isApart(order: number, s: number, e: number): boolean {
    if (!this.apart || order === 0) return true
    if (order === 1) return s < 0 || this.crusts[s] === 0
    for (let t = Math.max(0, s + 1); t < e; t++) if (this.orders[1]![t]! > 0) return false
    return true
  }

  /** True when the choice keeps every limit, given what else is in. */
  allows(u: number, o: number): boolean {
    const s = this.s[u]![o]!
    const e = this.e[u]![o]!
    const w = this.where[u]![o]!
    const area = this.area[u]!
    const order = this.order[u]!
    const old = this.old[u] === 1
    const spare = this.mostHands + 1e-9 - this.handling[u]!
    if (!old && (this.hands[s]! > spare || !this.inOrder(order, s))) return false
    if (!this.isApart(order, s, e)) return false
    if (this.hands[e]! > spare) return false
    for (let z = 0; z < 3; z++) {
      const a = w === 3 ? area * this.share[z]! : w === z ? area : 0
      const limit = this.floor[z]! * (1 + 1e-6)
      const narrow = this.narrow[z]!
      const through = this.through[z]!
      if (z > 0 && (w === 3 || w < z)) {
        // Its own lane past what stays.
        if (!old && through[s]! > narrow) return false
        if (through[e]! > narrow) return false
      }
      if (a === 0) continue
      const inside = this.inside[z]!
      const lanes = this.lanes[z]!
      const start = Math.max(0, s)
      if (inside[start]! + a > limit && inside[start]! > 1e-9) return false
      for (let t = start + 1; t < e; t++) {
        if (inside[t]! + a > limit && inside[t]! > 1e-9) return false
        if (lanes[t]! > 0 && through[t]! + a > narrow) return false
      }
    }
    for (const i of this.cutsOf[u]!) {
      const c = this.cuts[i]!
      if (s <= c.from && e > c.from && this.cutCount[i]! >= c.jobs.length - 1) return false
    }
    return true
  }

  /**
   * For each part of the floor, one after another, and tick at which a job may be set in, the last at which it may be drawn; −1 where it
   * may not be set in.
   */
  private readonly until: Int32Array
  /** 1 for each part of the floor and tick at which it may be drawn. */
  private readonly ends: Uint8Array
  /** What a tick allows wherever the job stands: 1 to draw it, 2 to set it in. */
  private readonly open: Uint8Array
  /** What a tick takes in the part of the floor that is looked at: 1 where it could not stay there, 2 where it could not be set in. */
  private readonly taken: Uint8Array

  /** Ask of every tick, once for all choices of a job, whether it may be set in and drawn there, and how long the floor is free then. */
  private sweep(u: number, ban: number): void {
    const area = this.area[u]!
    const order = this.order[u]!
    const {from, to, wheres} = this.span(u)
    const refused = this.refused[u]
    const spare = this.mostHands + 1e-9 - this.handling[u]!
    const {hands, open, taken, until, ends} = this
    for (let t = from; t <= to; t++) {
      if (t === ban || hands[t]! > spare) open[t] = 0
      else if (refused?.has(t) || (order !== 0 && !this.inOrder(order, t))) open[t] = 1
      else open[t] = order === 1 && !this.isApart(1, t, t) ? 1 : 3
    }
    // A crust has to be out when something is set in to fall.
    const barrier = this.apart && order === 2 ? this.orders[1]! : null
    const through1 = this.through[1]!
    const through2 = this.through[2]!
    const narrow1 = this.narrow[1]!
    const narrow2 = this.narrow[2]!
    for (let p = 0; p < wheres.length; p++) {
      const w = wheres[p]!
      const first = w * this.ticks
      taken.fill(0, from, to + 1)
      for (let z = w === 3 ? 0 : w; z <= (w === 3 ? 2 : w); z++) {
        const a = w === 3 ? area * this.share[z]! : area
        const room = this.floor[z]! * (1 + 1e-6) - a
        const beside = this.narrow[z]! - a
        const inside = this.inside[z]!
        const lanes = this.lanes[z]!
        const through = this.through[z]!
        for (let t = from; t <= to; t++) {
          if (inside[t]! > room && inside[t]! > 1e-9) taken[t] = 3
          else if (lanes[t]! > 0 && through[t]! > beside) taken[t]! |= 1
        }
      }
      // The next tick at which it could not stand there while it stays.
      let bad = this.ticks + 1
      for (let t = to; t >= from; t--) {
        // Its own lane past what stays.
        const barred = w !== 2 && (through2[t]! > narrow2 || (w !== 1 && through1[t]! > narrow1))
        const may = barred ? 0 : open[t]!
        ends[first + t] = may & 1
        until[first + t] = may > 1 && taken[t]! < 2 ? bad : -1
        if (taken[t]! > 0 || (barrier && barrier[t]! > 0)) bad = t
      }
    }
  }

  private readonly spans: ({from: number; to: number; wheres: number[]} | undefined)[] = []

  /** First and last tick any choice of the job touches, and the parts of the floor. */
  private span(u: number): {from: number; to: number; wheres: number[]} {
    const found = this.spans[u]
    if (found) return found
    let from = this.ticks
    let to = 0
    const wheres = [false, false, false, false]
    const s = this.s[u]!
    const e = this.e[u]!
    const where = this.where[u]!
    for (let o = 0; o < s.length; o++) {
      from = Math.min(from, Math.max(0, s[o]!))
      to = Math.max(to, e[o]!)
      wheres[where[o]!] = true
    }
    const made = {from, to, wheres: [0, 1, 2, 3].filter((w) => wheres[w])}
    this.spans[u] = made
    return made
  }

  /**
   * The cheapest allowed choice of a job. The lists are sorted by cost, so the scan stops early; one sweep over the ticks tells for
   * every choice at once whether the floor is free while it stays.
   *
   * @param ban A tick at which the door must not be opened by this job, or −1.
   * @returns Index of the choice and the rise in cost; −1 where there is none.
   */
  best(u: number, ban = -1): {o: number; cost: number} {
    const cost = this.price[u]!
    const s = this.s[u]!
    const e = this.e[u]!
    const where = this.where[u]!
    // What is in the oven already stands there, whatever the model makes of its floor.
    const old = this.old[u] === 1
    const cut = this.cutsOf[u]!.length > 0
    const {openings, until, ends, ticks, opening} = this
    let bestO = -1
    let bestCost = missing
    if (cost.length > 0 && cost[0]! < bestCost) this.sweep(u, ban)
    const {mindful, shutAt, opened} = this
    const shut = this.shut[u]!
    if (shut > 1) for (let t = 0; t < ticks; t++) opened[t + 1] = opened[t]! + (openings[t]! > 0 ? 1 : 0)
    for (let o = 0; o < cost.length; o++) {
      const c0 = cost[o]!
      if (c0 >= bestCost) break
      const eo = e[o]!
      const so = s[o]!
      const first = where[o]! * ticks
      if (ends[first + eo] === 0) continue
      if (old ? so === ban : until[first + so]! < eo) continue
      let c = c0 + (old || openings[so]! > 0 ? 0 : opening) + (openings[eo]! > 0 ? 0 : opening)
      if (mindful && c < bestCost) {
        let times = (old || openings[so]! > 0 ? 0 : shutAt[so]!) + (openings[eo]! > 0 ? 0 : shutAt[eo]!)
        if (shut > 1) {
          times += opened[Math.min(ticks, Math.max(0, so + shut))]! - opened[Math.min(ticks, Math.max(0, so + 1))]!
          // Its own draw, where that comes sooner.
          if (openings[eo]! === 0 && eo < so + shut) times++
        }
        c += weights.shut * times
      }
      if (c >= bestCost - 1e-12) continue
      if (cut && !this.allows(u, o)) continue
      bestCost = c
      bestO = o
    }
    return {o: bestO, cost: bestCost}
  }

  /** Set this state to a solution. */
  load(chosen: Int32Array): void {
    for (let u = 0; u < chosen.length; u++) this.remove(u)
    for (let u = 0; u < chosen.length; u++) if (chosen[u]! >= 0) this.add(u, chosen[u]!)
  }
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

function shuffle(list: number[], random: () => number): void {
  for (let i = list.length - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1))
    const t = list[i]!
    list[i] = list[j]!
    list[j] = t
  }
}
