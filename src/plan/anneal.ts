import {generator} from '../scale/random-numbers.js'
import type {LaidOut} from './laid.js'
import type {Layout} from './layout.js'
import {HARD} from './layout-prices.js'
import {rules} from './rules.js'
import type {TrueFloor} from './seating.js'

/**
 * Simulated annealing of a layout (Kirkpatrick, Gelatt & Vecchi, Science 220 (1983) 671–680), the work counted in rounds and the random
 * numbers from a fixed seed: the same day gives the same layout.
 */

export interface Annealing {
  /** Judgements made. */
  readonly rounds: number
  /** Cost accepted upwards at first, falling to `cool` at the end. */
  readonly heat: number
  readonly cool: number
  readonly seed: number
  /** Earliest and latest lighting, min; equal where it is given. */
  readonly firstLit: number
  readonly lastLit: number
  /** Price of what is broken, at first and at the end. */
  readonly strict: readonly [number, number]
  /** Share of the moves that leave a dish out. */
  readonly leave?: number
  /** All where absent; small ones keep each dish's part of the floor and about its time. */
  readonly moves?: 'small'
  /** The true floor, where what it refuses is to be paid for. */
  readonly seating?: TrueFloor
  /** Another layout is wanted, better or not: the best of the second half is returned, not what it began with. */
  readonly anew?: boolean
}

/**
 * Anneal what is laid.
 *
 * @returns The best found, as the layout has it afterwards.
 */
export function anneal(layout: Layout, options: Annealing): LaidOut {
  // Taken apart once: V8 looks at the shape of what a loop reads from, and no two callers give the same.
  const {rounds, cool, firstLit, lastLit, strict: strictness, leave = 0, moves, seating, anew = false} = options
  const [mild, severe] = strictness
  const last = Math.min(lastLit, layout.latestLit)
  const {n} = layout
  layout.follow('loosely')
  layout.judge()
  const change = new Change(layout, generator(options.seed), {
    small: moves === 'small',
    leave,
    lights: last > firstLit ? {first: firstLit, last} : null,
  })
  if (change.movable.length === 0) {
    layout.follow('closely')
    return layout.found()
  }
  const hard = Math.max(HARD, severe)
  let cost = layout.cost
  let violation = layout.violation
  let unseated = seating ? seating.refused() : 0
  seating?.keep()
  let best = layout.keepBest(null)
  let bestPrice = anew ? Number.POSITIVE_INFINITY : cost + hard * (violation + UNSEATED * unseated)
  let bestSeats = seating?.save()
  const cooling = (cool / options.heat) ** (1 / rounds)
  let heat = options.heat
  const remember = (): void => {
    cost = layout.cost
    violation = layout.violation
    layout.commit()
  }
  remember()
  for (let round = 0; round < rounds; round++, heat *= cooling) {
    const strict = mild + (severe - mild) * (round / rounds)
    if (!change.make(strict)) continue
    // Metropolis' rule, the chance drawn first: what rises by more than this is refused.
    const limit = cost + strict * (violation + UNSEATED * unseated) - heat * Math.log(change.random())
    let ok = layout.judgeWithin(limit, strict)
    if (ok && seating) {
      const most = Math.floor((limit - layout.cost - strict * layout.violation) / (strict * UNSEATED) + 1e-9)
      const refused = seating.refused(Math.min(n, most))
      ok = layout.cost + strict * (layout.violation + UNSEATED * refused) <= limit
      if (ok) {
        seating.keep()
        unseated = refused
      }
    }
    if (ok) {
      remember()
      const now = cost + hard * (violation + UNSEATED * unseated)
      if (now < bestPrice - 1e-9 && (!anew || 2 * round >= rounds)) {
        bestSeats = seating?.save()
        bestPrice = now
        best = layout.keepBest(best)
      }
    } else layout.rollBack()
    if (round % AFRESH === AFRESH - 1) {
      layout.recompute()
      layout.judge()
      remember()
    }
  }
  layout.takeBest(best)
  bestSeats?.()
  layout.follow('closely')
  layout.judge()
  return layout.found()
}

/** How a layout may be changed. */
interface Freedom {
  readonly small: boolean
  readonly leave: number
  readonly lights: {readonly first: number; readonly last: number} | null
}

/** The changes that annealing tries. */
class Change {
  readonly movable: readonly number[]

  constructor(
    readonly layout: Layout,
    readonly random: () => number,
    readonly how: Freedom,
  ) {
    this.movable = layout.movable()
  }

  /**
   * Make one change, of a kind drawn by lot.
   *
   * @param strict Price of what is broken.
   * @returns False where nothing was changed.
   */
  make(strict: number): boolean {
    const {layout, random, movable} = this
    const {small, leave, lights} = this.how
    layout.begun()
    const lit = layout.lit
    const kind = small ? SMALL[0] + random() * (SMALL[1] - SMALL[0]) : random()
    const leaves = random() < leave
    const u = movable[this.#pick(movable.length)]!
    if (!layout.placed[u]) this.#bringIn(u)
    else if (leaves) {
      layout.note(u)
      layout.takeOut(u)
    } else if (kind < RESEAT) this.#reseat(u, strict)
    else if (kind < 0.22 || (small && kind > 0.8)) {
      // A little earlier or later.
      layout.note(u)
      layout.set(u, this.#within(u, layout.s[u]! + this.#step(3, 9)), layout.w[u]!)
    } else if (kind < 0.42) this.#moveTo(u)
    else if (kind < 0.52) this.#elsewhere(u)
    else if (kind < 0.68) {
      // The whole opening moves.
      const t = random() < 0.5 ? layout.s[u]! : layout.e[u]!
      this.#shift(this.#step(3, 8), (s) => s === t)
    } else if (kind < 0.8) {
      // All from here on.
      const t = layout.s[u]!
      this.#shift(this.#step(4, 12), (s) => s >= t)
    } else if (kind < 0.92) this.#swap(u)
    else if (kind < 0.94 && lights) {
      const by = (random() < 0.5 ? -1 : 1) * (1 + this.#pick(random() < 0.5 ? 3 : 24)) * rules.tick
      layout.lit = Math.max(lights.first, Math.min(lights.last, layout.lit + by))
    } else this.#meet(u)
    return layout.touched || layout.lit !== lit
  }

  #pick(k: number): number {
    return Math.floor(this.random() * k)
  }

  /** Ticks earlier or later: most often a few. */
  #step(few: number, many: number): number {
    const {random} = this
    return (random() < 0.5 ? -1 : 1) * (1 + this.#pick(random() < 0.7 ? few : many))
  }

  /** A tick at which a job may be set in, as near as may be. */
  #within(u: number, k: number): number {
    const {layout} = this
    return Math.max(layout.from[u]!, layout.now, Math.min(layout.to[u]!, k))
  }

  /** Another dish's opening, or anywhere in its range. */
  #anyTick(u: number): number {
    const {layout, random} = this
    if (random() < 0.55) {
      const v = this.#pick(layout.n)
      if (layout.placed[v]) return random() < 0.5 ? layout.s[v]! : layout.e[v]!
    }
    return layout.from[u]! + this.#pick(layout.to[u]! - layout.from[u]! + 1)
  }

  #anyPart(u: number): number {
    const ws = this.layout.wheres[u]!
    return ws[this.#pick(ws.length)]!
  }

  #bringIn(u: number): void {
    this.layout.note(u)
    const at = this.#within(u, this.#anyTick(u))
    this.layout.set(u, at, this.#anyPart(u))
  }

  /** The best of many places for one dish, or for all parts of it together. */
  #reseat(u: number, strict: number): void {
    const {layout, random} = this
    const {dishOf} = layout
    const parts = random() < 0.5 ? [u] : this.movable.filter((v) => dishOf[v] === dishOf[u])
    for (const v of parts) layout.note(v)
    let least = Number.POSITIVE_INFINITY
    let at = layout.s[u]!
    let where = layout.w[u]!
    const bakes = Math.max(1, layout.e[u]! - layout.s[u]!)
    for (let i = 0; i < SEATS; i++) {
      let k = this.#anyTick(u)
      if (i % 3 === 2) k -= bakes
      k = this.#within(u, k)
      const w = this.#anyPart(u)
      for (const v of parts) layout.set(v, k, w)
      if (layout.judgeWithin(least, strict)) {
        least = layout.cost + strict * layout.violation
        at = k
        where = w
      }
    }
    for (const v of parts) layout.set(v, at, where)
  }

  #moveTo(u: number): void {
    const {layout, random} = this
    layout.note(u)
    const at = this.#within(u, this.#anyTick(u))
    layout.set(u, at, random() < 0.6 ? layout.w[u]! : this.#anyPart(u))
  }

  /** In another part of the floor, or waiting otherwise for its draw. */
  #elsewhere(u: number): void {
    const {layout, random} = this
    layout.note(u)
    if (layout.wheres[u]!.length > 1 && random() < 0.8) layout.set(u, layout.s[u]!, this.#anyPart(u))
    else layout.hold[u] = random() < 0.5 ? 0 : this.#pick(5)
  }

  /** All that is set in at some ticks moves. */
  #shift(by: number, which: (s: number) => boolean): void {
    const {layout} = this
    for (const v of this.movable)
      if (layout.placed[v] && which(layout.s[v]!)) {
        layout.note(v)
        layout.set(v, this.#within(v, layout.s[v]! + by), layout.w[v]!)
      }
  }

  /** Two change places. */
  #swap(u: number): void {
    const {layout, movable} = this
    const v = movable[this.#pick(movable.length)]!
    if (v === u || !layout.placed[v]) return
    layout.note(u)
    layout.note(v)
    const su = layout.s[u]!
    const sv = layout.s[v]!
    layout.set(u, this.#within(u, sv), layout.w[u]!)
    layout.set(v, this.#within(v, su), layout.w[v]!)
  }

  /** Drawn when the door is open for another, alone or with all that went in with it. */
  #meet(u: number): void {
    const {layout, random} = this
    const v = this.#pick(layout.n)
    if (!layout.placed[v] || v === u) return
    const t = layout.s[u]!
    const by = (random() < 0.5 ? layout.s[v]! : layout.e[v]!) - layout.e[u]!
    const whole = random() < 0.5
    for (const x of this.movable)
      if (x === u || (whole && layout.placed[x] && layout.s[x] === t)) {
        layout.note(x)
        layout.set(x, this.#within(x, layout.s[x]! + by), layout.w[x]!)
      }
  }
}

/** Price of a job without a place on the true floor, as that of what is broken. */
const UNSEATED = 1.5
/** Rounds after which the curve is added up afresh: rounding adds up too. */
const AFRESH = 2000
/** The moves that keep a day much as it is: an opening, or all from it on, and beyond 0.8 a single dish, a little earlier or later. */
const SMALL = [0.52, 1] as const
/** Share of the moves that look for the best of so many places. */
const RESEAT = 0.02
const SEATS = 20
