import {worthStaying} from './choices.js'
import type {DoorHours} from './door-hours.js'
import {amissBy} from './dough.js'
import type {JobFigures} from './job-figures.js'
import type {LaidRows} from './laid.js'
import {broken} from './layout-prices.js'
import type {LoadedCurve} from './loaded-curve.js'
import {rules, weights} from './rules.js'
import {missing} from './search-state.js'

/**
 * What each job has of the oven's heat on the curve at hand, given when it is set in and where, and without regard to the doors opened for
 * others: when it is done, what that costs and what it breaks.
 */

/** Share of what it could have that something in the oven keeps whatever is set in after it, and the price of all that it is wanting. */
const MOST_OF = 0.95
const UNDONE = missing / 2
/** Minutes that a dough set in before it can be bread counts as earlier than it is: a minute is as little bread as an hour. */
const UNRISEN_FROM = 20
/** Minutes by which the heats at both ends of a tick are weighed where a dose is added up (trapezium rule). */
export const HALF_TICK = rules.tick / 2

export class JobHeat {
  /**
   * What is known of each job from the curve up to the tick at which it is done, until the curve changes before that tick. Four numbers a
   * job in one row, for which V8 has one shape: that tick, the dose by then (°C·min), its cost and what it breaks, doors and draw aside.
   */
  readonly own: Float64Array
  /** Jobs of which that is to be found out anew, whatever the curve does. */
  readonly stale: Uint8Array
  /**
   * The tick by which what stays and may be drawn with less than its dose has all of it, one past the last where it never has; the tick at
   * which any other is done.
   */
  readonly full: Int32Array
  /** The dose with which something in the oven breaks nothing, °C·min (see `reach`). */
  readonly #least: Float64Array
  /** The dose with which each was last judged to be done: its goal, and less only of what is drawn too cool. */
  readonly #enough: Float64Array
  readonly #jobs: JobFigures
  readonly #laid: LaidRows
  readonly #curve: LoadedCurve
  readonly #celsius: Float64Array
  readonly #ticks: number
  readonly #hours: DoorHours

  constructor(jobs: JobFigures, laid: LaidRows, curve: LoadedCurve, hours: DoorHours) {
    const n = jobs.fixed.length
    this.#jobs = jobs
    this.#laid = laid
    this.#curve = curve
    this.#celsius = curve.celsius
    this.#ticks = curve.celsius.length
    this.#hours = hours
    this.own = new Float64Array(4 * n)
    this.stale = new Uint8Array(n).fill(1)
    this.full = new Int32Array(n)
    this.#least = new Float64Array(n)
    this.#enough = Float64Array.from(jobs.goal)
  }

  /**
   * What is known of one job without the others' doors: when it is done, and how well its heat suits it.
   *
   * @param clock0 The first tick, min after midnight.
   */
  bake(u: number, clock0: number): void {
    const jobs = this.#jobs
    const T = this.#celsius
    const w = this.#laid.w[u]!
    const a = jobs.scale[4 * u + w]!
    const shift = jobs.shift[4 * u + w]!
    const b = shift - jobs.done[u]!
    const start = Math.max(0, this.#laid.s[u]!)
    const wall = this.#hours.wallAfter(start)
    let goal = jobs.goal[u]!
    let cost = 0
    let violation = 0
    // What is in already and too cool to end in is drawn as soon as it is done: no more is kept in hand for it.
    const coolest = jobs.fixed[u] && !jobs.stays[u] ? jobs.end[u]! - jobs.done[u]! : Number.NEGATIVE_INFINITY
    if (!jobs.fixed[u]) {
      const t = a * T[start]! + shift
      const hottest = this.#hottest(u, w, t, T[start]!)
      violation = this.#outside(u, t, hottest)
      cost = weights.misfit * Math.abs((t + hottest) / 2 - jobs.best[u]!) * jobs.misfit[u]!
      const risen = jobs.risen[u]
      if (risen) {
        const clock = clock0 + start * rules.tick
        cost += amissBy(risen, clock)
        if (clock < risen.least) violation += broken.unrisen * (UNRISEN_FROM + risen.least - clock)
      }
    }
    let dose = 0
    let k = start
    let before = a * T[k]! + b
    if (before < 0) before = 0
    while (dose < goal && k < wall) {
      k++
      let now = a * T[k]! + b
      if (now < 0) now = 0
      dose += HALF_TICK * (before + now)
      before = now
      if (now < coolest && dose >= jobs.needed[u]!) goal = Math.min(goal, dose)
    }
    this.stale[u] = 0
    this.#enough[u] = goal
    if (dose < goal) {
      if (!jobs.fixed[u]) violation += Math.min(missing, 200 + missing * (1 - dose / goal))
      else {
        // What is in the oven is not to be spoiled for what is set in after it; what the oven cannot give it any more breaks nothing.
        if (dose < this.#least[u]!) violation += Math.min(missing, 200 + missing * (1 - dose / this.#least[u]!))
        cost += UNDONE * (1 - dose / goal)
        // Whatever comes later changes how long it had best stay.
        this.stale[u] = 1
        ;({k, dose} = this.#longestUse(u, worthStaying(dose, goal), wall))
      }
    }
    const own = this.own
    this.full[u] = k
    if (jobs.scant[u]) this.full[u] = this.#fullFrom(k, dose, jobs.wanted[u]!, a, b)
    own[4 * u] = k
    own[4 * u + 1] = dose
    own[4 * u + 2] = cost
    own[4 * u + 3] = violation
  }

  /**
   * What is broken by the heat alone if a job is set in with the floor's mean at `mean` °C, in a part of the floor: no more than `judge`
   * finds broken then.
   */
  outsideAt(u: number, w: number, mean: number): number {
    const t = this.#jobs.scale[4 * u + w]! * mean + this.#jobs.shift[4 * u + w]!
    return this.#outside(u, t, this.#hottest(u, w, t, mean))
  }

  /** True where a job has the dose it needs when it is drawn, as the layout has it. */
  isDone(u: number): boolean {
    return this.own[4 * u + 1]! >= this.#enough[u]!
  }

  /** Keep no more than the margin above each dish's lower limit and dose: what was in hand is needed to place the day at all. */
  spendInHand(): void {
    const jobs = this.#jobs
    jobs.low.set(jobs.lowest)
    jobs.goal.set(jobs.leastGoal)
    this.stale.fill(1)
  }

  /** What the dishes in the oven are to have: what they need, or most of what they would have if nothing were set in after them. */
  reach(): void {
    const jobs = this.#jobs
    for (let u = 0; u < this.#least.length; u++) {
      if (!jobs.fixed[u]) continue
      const a = jobs.scale[4 * u + this.#laid.w[u]!]!
      const b = jobs.shift[4 * u + this.#laid.w[u]!]! - jobs.done[u]!
      const start = Math.max(0, this.#laid.s[u]!)
      const wall = this.#hours.wallAfter(start)
      const {empty} = this.#curve
      let most = 0
      for (let k = start + 1; k <= wall; k++)
        most += HALF_TICK * (Math.max(0, a * empty[k - 1]! + b) + Math.max(0, a * empty[k]! + b))
      this.#least[u] = Math.min(jobs.goal[u]!, MOST_OF * most)
    }
  }

  /** °C·min that a job has had by a tick. */
  doseBy(u: number, t: number): number {
    const jobs = this.#jobs
    const T = this.#celsius
    const a = jobs.scale[4 * u + this.#laid.w[u]!]!
    const b = jobs.shift[4 * u + this.#laid.w[u]!]! - jobs.done[u]!
    let dose = this.own[4 * u + 1]!
    for (let k = this.own[4 * u]! + 1; k <= t; k++)
      dose += HALF_TICK * (Math.max(0, a * T[k - 1]! + b) + Math.max(0, a * T[k]! + b))
    return dose
  }

  /** The price of what something that stays is wanting of its dose when it is drawn. */
  priceOfWanting(u: number, t: number): number {
    if (!this.#jobs.scant[u] || t >= this.full[u]!) return 0
    return weights.misfit * (this.#jobs.wanted[u]! - this.doseBy(u, t))
  }

  /** The last tick at which a job may be drawn, from when it was last judged to be done: before it is over-baked, or what stays grows too cold. */
  lastDraw(u: number): number {
    const jobs = this.#jobs
    const T = this.#celsius
    const a = jobs.scale[4 * u + this.#laid.w[u]!]!
    const b = jobs.shift[4 * u + this.#laid.w[u]!]!
    let t = this.own[4 * u]!
    if (jobs.stays[u]) {
      while (t + 1 < this.#ticks && a * T[t + 1]! + b >= jobs.end[u]! + jobs.endMargin) t++
      return t
    }
    let dose = this.own[4 * u + 1]!
    const heat = (k: number): number => Math.max(0, a * T[k]! + b - jobs.done[u]!)
    while (t + 1 < this.#ticks && dose + HALF_TICK * (heat(t) + heat(t + 1)) <= jobs.longest[u]!) {
      dose += HALF_TICK * (heat(t) + heat(t + 1))
      t++
    }
    return t
  }

  /** True where a job as it is set in and drawn would keep its limits, with what is kept inside them, in a part of the floor (0 back … 2 mouth). */
  fits(u: number, z: number): boolean {
    const jobs = this.#jobs
    const T = this.#celsius
    const a = jobs.scale[4 * u + z]!
    const shift = jobs.shift[4 * u + z]!
    const start = Math.max(0, this.#laid.s[u]!)
    const end = this.#laid.e[u]!
    const t = a * T[start]! + shift
    if (t < jobs.lowest[u]! || t > jobs.high[u]! || a * T[end]! + shift < jobs.end[u]! + jobs.endMargin) return false
    const b = shift - jobs.done[u]!
    let dose = 0
    let last = 0
    for (let k = start + 1; k <= end; k++) {
      last = HALF_TICK * (Math.max(0, a * T[k - 1]! + b) + Math.max(0, a * T[k]! + b))
      dose += last
    }
    const goal = jobs.needed[u]!
    if (dose < goal * (1 - rules.doseWanting)) return false
    return jobs.stays[u] === 1 || dose <= jobs.longest[u]! || dose - last < goal
  }

  /** The hottest that a job finds where it is set in; what stands across the floor finds all its parts. */
  #hottest(u: number, w: number, t: number, mean: number): number {
    return w === 3 ? t + this.#jobs.hotter[u]! * (mean - this.#jobs.ambient) : t
  }

  /** What is broken by setting a job in at a heat. */
  #outside(u: number, t: number, hottest: number): number {
    const jobs = this.#jobs
    let out = 0
    if (t < jobs.low[u]!) out += broken.celsius * (jobs.low[u]! - t)
    if (hottest > jobs.high[u]!) out += broken.celsius * (hottest - jobs.high[u]!)
    return out
  }

  /**
   * How long something in the oven that cannot be done any more is left in: until it has had all that does it good, but not through a
   * night in which it would grow too cold.
   */
  #longestUse(u: number, most: number, wall: number): {k: number; dose: number} {
    const jobs = this.#jobs
    const T = this.#celsius
    const awake = this.#hours.awake
    const a = jobs.scale[4 * u + this.#laid.w[u]!]!
    const shift = jobs.shift[4 * u + this.#laid.w[u]!]!
    const b = shift - jobs.done[u]!
    const start = Math.max(0, this.#laid.s[u]!)
    const doses = [0]
    let k = start
    while (doses[k - start]! < most && k < wall) {
      k++
      doses.push(doses[k - 1 - start]! + HALF_TICK * (Math.max(0, a * T[k - 1]! + b) + Math.max(0, a * T[k]! + b)))
    }
    const good = k
    k = this.#hours.openFrom(k, wall)
    const early = k - rules.coldMinutes / rules.tick
    if (k > good && jobs.food[u] && a * T[Math.max(start, early)]! + shift < rules.holdCelsius) {
      k = good
      while (k > Math.max(start, this.#hours.now) && !awake[k]) k--
    }
    return {k, dose: doses[Math.min(k, good) - start]!}
  }

  /** The tick by which a dose is had, counted on from one at which part of it is; one past the last where it never is. */
  #fullFrom(tick: number, had: number, wanted: number, a: number, b: number): number {
    const T = this.#celsius
    const last = this.#ticks - 1
    let dose = had
    let k = tick
    let before = Math.max(0, a * T[k]! + b)
    while (dose < wanted && k < last) {
      k++
      const now = Math.max(0, a * T[k]! + b)
      dose += HALF_TICK * (before + now)
      before = now
    }
    return dose < wanted ? this.#ticks : k
  }
}
