import {nextBit} from './bits.js'
import type {DoorHours} from './door-hours.js'
import type {JobFigures} from './job-figures.js'
import {HALF_TICK, type JobHeat} from './job-heat.js'
import type {LaidRows} from './laid.js'
import {rules, weights} from './rules.js'

/** When each job is drawn: at the cheapest moment after it is done, given when the door is opened for the others. */

/** Most ticks after it is done in which a draw is looked for, for a dish that does not stay. */
const WINDOW = 24
/** On a day planned again a draw is moved only where that saves so much, if it is about as well baked at its old time. */
const KEPT = 3
const ABOUT = 0.1

export class Draws {
  /** How many are set in or drawn at each tick, and a bit a tick at which there are any: the door is opened. */
  readonly openings: Int32Array
  readonly doors: Int32Array
  /** How many receipts want the door kept shut at each tick. */
  readonly shutAt: Int32Array
  /** How far from the dose it should have each is drawn, °C·min; −1 where it stays longer than it may. */
  readonly offDose: Float64Array
  /** The last tick at which each may be drawn, of what was seen to be burned at a later one. */
  readonly drawBy: Int32Array
  /** The first tick at which each may be drawn, of what was seen to want some of its heat at a sooner one. */
  readonly drawFrom: Int32Array
  readonly #jobs: JobFigures
  readonly #laid: LaidRows
  readonly #heat: JobHeat
  readonly #celsius: Float64Array
  readonly #ticks: number
  readonly #hours: DoorHours

  constructor(jobs: JobFigures, laid: LaidRows, heat: JobHeat, celsius: Float64Array, hours: DoorHours) {
    const n = jobs.fixed.length
    const ticks = celsius.length
    this.#jobs = jobs
    this.#laid = laid
    this.#heat = heat
    this.#celsius = celsius
    this.#ticks = ticks
    this.#hours = hours
    this.openings = new Int32Array(ticks + 1)
    this.doors = new Int32Array((ticks >> 5) + 1)
    this.shutAt = new Int32Array(ticks + 1)
    this.offDose = new Float64Array(n)
    this.drawBy = new Int32Array(n).fill(ticks)
    this.drawFrom = new Int32Array(n)
  }

  /** How many receipts want the door kept shut at each tick. */
  keepShut(): void {
    const jobs = this.#jobs
    const at = this.shutAt
    at.fill(0)
    for (let i = 0; i < jobs.mindful.length; i++) {
      const u = jobs.mindful[i]!
      if (!this.#laid.placed[u]) continue
      const end = Math.min(this.#ticks, this.#laid.s[u]! + jobs.shut[u]!)
      for (let k = Math.max(0, this.#laid.s[u]! + 1); k < end; k++) at[k]!++
    }
  }

  /**
   * Draw one job when that is cheapest, instead of when it was to be drawn so far.
   *
   * @param clock0 The first tick, min after midnight.
   */
  drawAnew(u: number, clock0: number): void {
    this.#leaveIn(u)
    this.#drawAt(u, this.#draw(u, clock0))
  }

  /**
   * What would be burned while it waits for what stands in its way is let out: that is drawn with it as soon as all of it is done. No
   * sooner can it be reached, burned or not.
   */
  letOut(u: number, clock0: number): void {
    if (!this.hemmedIn(u) && (this.#jobs.stays[u] || this.offDose[u]! >= 0)) return
    const front = this.#inTheWay(u)
    let t = Math.max(this.#heat.own[4 * u]!, this.#laid.s[u]! + 1, this.#hours.now)
    for (const v of front) t = Math.max(t, this.#heat.own[4 * v]!)
    t = this.#hours.openFrom(t, this.#ticks - 1)
    for (const v of front) {
      if (this.#laid.e[v]! <= t) continue
      this.#leaveIn(v)
      this.#drawAt(v, t)
      this.offDose[v] = Math.abs(this.#heat.doseBy(v, t) - this.#jobs.wanted[v]!)
    }
    if (t <= this.#heat.lastDraw(u)) {
      this.drawAnew(u, clock0)
      return
    }
    this.#leaveIn(u)
    this.#drawAt(u, t)
    this.offDose[u] = -1
  }

  /** True where a job is drawn before something in the oven that stands in its way out. */
  hemmedIn(u: number): boolean {
    const others = this.#jobs.inFront[u]!
    for (let i = 0; i < others.length; i++) if (this.#laid.e[others[i]!]! > this.#laid.e[u]!) return true
    return false
  }

  /** True where a job is drawn as soon as what stands in its way in the oven is done, and could not be sooner. */
  heldBack(u: number): boolean {
    const at = this.#laid.e[u]!
    return this.#inTheWay(u).some((v) => this.#laid.e[v] === at && this.#heat.own[4 * v]! >= at)
  }

  /** Take it that what is in the oven was burned where some of its vessels stand: it is drawn sooner, if it may be. */
  drawSooner(u: number): void {
    this.drawBy[u] = this.#laid.e[u]! - 1
    // What it was seen to want before was on another curve.
    if (this.drawFrom[u]! > this.drawBy[u]!) this.drawFrom[u] = 0
  }

  /** Take it that what is in the oven wanted some of its heat where it stands: it is drawn later, if it may be. */
  drawLater(u: number): void {
    this.drawFrom[u] = this.#laid.e[u]! + 1
  }

  /** The cheapest draw of one job, given the openings of the others. */
  #draw(u: number, clock0: number): number {
    const jobs = this.#jobs
    const shutAt = this.shutAt
    const O = this.openings
    const {awake, now: present} = this.#hours
    const doors = this.doors
    const done = this.#heat.own[4 * u]!
    const soonest = Math.max(done, this.#laid.s[u]! + 1)
    let may = Math.max(soonest, this.drawFrom[u]!)
    // What stands in its way in the oven is drawn before it, or with it.
    const inFront = jobs.inFront[u]!
    for (let i = 0; i < inFront.length; i++) may = Math.max(may, this.#laid.e[inFront[i]!]!)
    let first = Math.max(may, soonest + this.#laid.hold[u]!)
    const due = jobs.due[u]!
    const hotFrom = jobs.hotFrom[u]!
    const wall = this.#hours.wallAfter(Math.max(0, this.#laid.s[u]!))
    const T = this.#celsius
    const a = jobs.scale[4 * u + this.#laid.w[u]!]!
    // What is in already has its draw alone to end in time: it waits for another's no longer than it is hot enough.
    const coolest = jobs.fixed[u] ? jobs.end[u]! - jobs.shift[4 * u + this.#laid.w[u]!]! : Number.NEGATIVE_INFINITY
    if (!jobs.stays[u]) while (first > may && !(a * T[first]! >= coolest)) first--
    if (jobs.stays[u]) {
      let k = this.#hours.openFrom(Math.max(first, present), wall)
      if (clock0 + k * rules.tick < hotFrom && !(jobs.again && jobs.was[u])) {
        // What is wanted hot stays till then, or as long as it stays hot enough.
        const hot = jobs.end[u]! + jobs.endMargin - jobs.shift[4 * u + this.#laid.w[u]!]!
        for (let t = k + 1; t <= wall && a * T[t]! >= hot && clock0 + (t - 1) * rules.tick < hotFrom; t++) if (awake[t]) k = t
      }
      if (O[k]! > 0 && !jobs.again) return k
      const at = weights.late * Math.max(0, clock0 + k * rules.tick - due)
      const b = jobs.shift[4 * u + this.#laid.w[u]!]!
      const least = jobs.end[u]! + jobs.endMargin
      if (jobs.again && jobs.was[u]) return this.#drawAgain(u, k, wall, clock0)
      // It stays until the door is opened for another, as long as it stays hot and nobody waits for it.
      for (let t = nextBit(doors, k + 1); t >= 0 && t <= wall; t = nextBit(doors, t + 1)) {
        if (!awake[t]) continue
        if (a * T[t]! + b < least) break
        return weights.late * Math.max(0, clock0 + t * rules.tick - due) - at < weights.opening ? t : k
      }
      return k
    }
    const b = jobs.shift[4 * u + this.#laid.w[u]!]! - jobs.done[u]!
    const wanted = jobs.wanted[u]!
    const longest = jobs.longest[u]!
    let dose = this.#heat.own[4 * u + 1]!
    let before = a * T[done]! + b
    if (before < 0) before = 0
    let best = -1
    let bestCost = Number.POSITIVE_INFINITY
    let bestOff = -1
    const last = Math.min(wall, done + WINDOW - 1)
    for (let t = done; t <= last; t++) {
      if (t > done) {
        let now = a * T[t]! + b
        if (now < 0) now = 0
        dose += HALF_TICK * (before + now)
        before = now
        if (t > done + 1 && dose > longest) break
        if (best >= 0 && a * T[t]! < coolest) break
      }
      const off = Math.abs(dose - wanted)
      const over = weights.misfit * off
      if (t > this.drawBy[u]! && best >= 0) break
      // It only gets dearer from here on.
      if (over >= bestCost && dose >= wanted && clock0 + t * rules.tick >= hotFrom) break
      if (t < first || !awake[t] || t < present) continue
      const late = clock0 + t * rules.tick - due
      const early = hotFrom - (clock0 + t * rules.tick)
      const was = jobs.again ? jobs.was[u] : undefined
      const by = was ? Math.abs(clock0 + t * rules.tick - was.draw) : 0
      const moved = was && by === 0 && off <= ABOUT * wanted ? -KEPT : weights.moved * by
      const cost =
        over +
        moved +
        (late > 0 ? weights.late * late : 0) +
        (early > 0 ? weights.early * early : 0) +
        (O[t]! > 0 ? 0 : weights.opening + weights.shut * shutAt[t]!)
      if (cost < bestCost) {
        bestCost = cost
        bestOff = off
        best = t
      }
    }
    this.offDose[u] = bestOff
    if (best >= 0) return best
    // Rather than be burned it waits for nothing.
    return this.#hours.openFrom(Math.max(soonest, this.drawFrom[u]!, present), wall)
  }

  /**
   * The cheapest draw of what may stay, on a day planned again: as soon as it may be, when the door is open for another, or when it was to
   * be drawn.
   */
  #drawAgain(u: number, first: number, wall: number, clock0: number): number {
    const jobs = this.#jobs
    const T = this.#celsius
    const a = jobs.scale[4 * u + this.#laid.w[u]!]!
    const coolest = jobs.end[u]! + jobs.endMargin - jobs.shift[4 * u + this.#laid.w[u]!]!
    const {draw} = jobs.was[u]!
    const meant = Math.round((draw - clock0) / rules.tick)
    let best = first
    let least = this.#priceAgain(u, first, draw, clock0)
    if (meant > first && meant <= wall && this.#hours.awake[meant] && a * T[meant]! >= coolest) {
      const price = this.#priceAgain(u, meant, draw, clock0)
      if (price < least) {
        least = price
        best = meant
      }
    }
    if (jobs.scant[u]) {
      const full = this.#heat.full[u]!
      if (full > first && full <= wall && this.#hours.awake[full] && a * T[full]! >= coolest) {
        const price = this.#priceAgain(u, full, draw, clock0)
        if (price < least) {
          least = price
          best = full
        }
      }
    }
    for (let t = nextBit(this.doors, first + 1); t >= 0 && t <= wall; t = nextBit(this.doors, t + 1)) {
      if (a * T[t]! < coolest) break
      if (!this.#hours.awake[t]) continue
      const price = this.#priceAgain(u, t, draw, clock0)
      if (price < least || (price === least && t < best)) {
        least = price
        best = t
      }
    }
    return best
  }

  /** What a draw of a job that was meant to be drawn at another time costs. */
  #priceAgain(u: number, t: number, meant: number, clock0: number): number {
    const clock = clock0 + t * rules.tick
    return (
      weights.late * Math.max(0, clock - this.#jobs.due[u]!) +
      weights.early * Math.max(0, this.#jobs.hotFrom[u]! - clock) +
      weights.moved * Math.abs(clock - meant) +
      this.#heat.priceOfWanting(u, t) +
      (this.openings[t]! > 0 ? 0 : weights.opening + weights.shut * this.shutAt[t]!)
    )
  }

  /** What has to be out of the oven for a job to be drawn: what stands in its way, and in the way of that. */
  #inTheWay(u: number): number[] {
    const front = [...this.#jobs.inFront[u]!]
    for (let i = 0; i < front.length; i++)
      for (const v of this.#jobs.inFront[front[i]!]!) if (v !== u && !front.includes(v)) front.push(v)
    return front
  }

  /** Take back the draw of a job. */
  #leaveIn(u: number): void {
    const was = this.#laid.e[u]!
    if (was >= 0 && --this.openings[was]! === 0) this.doors[was >> 5]! &= ~(1 << (was & 31))
  }

  #drawAt(u: number, t: number): void {
    this.#laid.e[u] = t
    this.openings[t]!++
    this.doors[t >> 5]! |= 1 << (t & 31)
  }
}
