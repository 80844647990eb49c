import {type Model, shutTicks} from './model.js'
import {rules, weights} from './rules.js'

/** Cost of a dish that found no place: larger than any lateness the planner would accept for it. */
export const missing = 2000

/** A limit found while placing vessels on the true floor, added to the model. */
export interface Cut {
  /** These jobs may not all be in the oven at once between these ticks. */
  readonly jobs: readonly number[]
  readonly from: number
  readonly to: number
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
