import {countBits, nextBit} from './bits.js'
import {Crowding} from './crowding.js'
import type {Curve} from './curve.js'
import {DoorHours} from './door-hours.js'
import {amissBy} from './dough.js'
import {Draws} from './draws.js'
import type {FloorGrid} from './floor-grid.js'
import {type JobFigures, jobFigures, type Margins} from './job-figures.js'
import {JobHeat} from './job-heat.js'
import type {Best, Laid, LaidOut, LaidRows, Refusal} from './laid.js'
import {AMONG_CRUSTS, broken, deeperBy} from './layout-prices.js'
import {LoadedCurve} from './loaded-curve.js'
import {type Job, type LayoutFire, laterThanMeant, priceOfLate} from './model.js'
import {Refusals} from './refusals.js'
import type {Response} from './response.js'
import {rules, weights} from './rules.js'
import {missing} from './search-state.js'
import type {PlanProblem} from './types.js'

/**
 * A day laid out on an oven that its own loads cool. What is decided is when and where each dish is set in; the curve follows from the
 * set-ins (`response.ts`), when each dish is done follows from the curve, and when it is drawn is the cheapest moment after that. Limits
 * are paid for while searching, more dearly as the search goes on, so that no dish is lost on the way to a day that holds them all.
 * How it is searched for is in `anneal.ts`, how one is mended by single moves in `mend.ts`; here is what a layout is and what it is worth,
 * put together from what each job has of the heat (`job-heat.ts`), when it is drawn (`draws.ts`) and how crowded the floor is
 * (`crowding.ts`).
 */

export interface LayoutOptions extends Margins {
  readonly lit: number
}

/** All of the floor; no whole number, as `cost`. */
const WHOLE = 1 - 1e-9
/** Price of a crowded part of the floor (see `tight`). */
const EASY = 0.4
/** The same where the true floor is asked: a floor fitted to the last hand's breadth has no room for a day that runs late. */
const ROOM = 1

export class Layout {
  readonly n: number
  readonly ticks: number
  readonly s: Int32Array
  readonly e: Int32Array
  readonly w: Uint8Array
  readonly hold: Uint8Array
  readonly placed: Uint8Array
  /** Jobs that are in the oven already, which can only be drawn. */
  readonly fixed: Uint8Array
  /** The dish of which each job is a part. */
  readonly dishOf: readonly string[]
  /** When each job was to be set in and drawn, min after midnight, in a plan that was being followed. */
  readonly was: readonly ({readonly at: number; readonly draw: number} | undefined)[]
  /** Ticks between which a set-in may be tried, and the parts of the floor. */
  readonly from: Int32Array
  readonly to: Int32Array
  readonly wheres: readonly (readonly number[])[]
  /** The loaded mean curve, °C a tick. */
  readonly celsius: Float64Array
  lit: number
  /** The latest it may be lit (`latestLit`). */
  readonly latestLit: number
  /** Price of a part of the floor over four fifths full, a tick: the fuller, the less likely the true floor grants it. */
  tight = EASY
  /** Share of a part of the floor that may be taken up; less once the true floor has refused. */
  full: number = WHOLE
  /** What the last evaluation found; no whole number at first, or V8 gives every layout a new shape when the first is judged. */
  cost = Number.NaN
  violation = Number.NaN

  readonly phase: number
  readonly #curve: LoadedCurve
  readonly #jobs: JobFigures
  readonly #hours: DoorHours
  readonly #heat: JobHeat
  readonly #draws: Draws
  readonly #crowding: Crowding
  readonly #refusals: Refusals
  readonly #barred: Uint8Array
  #lastHot = Number.MAX_SAFE_INTEGER
  readonly #ready: number
  readonly #hotArea: number
  readonly #wood: number
  /** What was committed, and of each job that was noted since how it stood. */
  readonly #kept: {
    readonly celsius: Float64Array
    readonly e: Int32Array
    readonly own: Float64Array
    readonly full: Int32Array
    readonly s: Int32Array
    readonly w: Uint8Array
    readonly far: Int32Array
    readonly hold: Uint8Array
    readonly placed: Uint8Array
    lit: number
  }
  readonly #touched: number[] = []

  constructor(
    problem: PlanProblem,
    grid: FloorGrid,
    jobs: readonly Job[],
    program: LayoutFire,
    response: Response | null,
    lane: number,
    options: LayoutOptions,
  ) {
    const n = jobs.length
    const {curve, phase, ticks} = program
    this.n = n
    this.ticks = ticks
    this.lit = options.lit
    this.latestLit = program.latestLit
    this.phase = phase
    this.#hotArea = grid.area
    this.#wood = program.wood
    this.s = new Int32Array(n)
    this.e = new Int32Array(n)
    this.w = new Uint8Array(n)
    this.hold = new Uint8Array(n)
    this.placed = new Uint8Array(n)
    // How far each job pulls the curve down, tick by tick after it is set in.
    const drop = jobs.map((j) => (j.since === null && response ? response.of(j, curve.ambient) : new Float64Array(0)))
    this.#curve = new LoadedCurve(curve, ticks, phase, drop)
    this.celsius = this.#curve.celsius
    this.#ready = Math.max(0, Math.ceil((curve.ready - phase) / rules.tick - 1e-9))
    this.#jobs = jobFigures(jobs, grid, curve, options)
    const {fixed, dishOf, was, wheres} = this.#jobs
    this.fixed = fixed
    this.dishOf = dishOf
    this.was = was
    this.wheres = wheres
    this.#barred = new Uint8Array(n)
    const laid: LaidRows = {s: this.s, e: this.e, w: this.w, hold: this.hold, placed: this.placed}
    this.#hours = new DoorHours(problem, program)
    this.#heat = new JobHeat(this.#jobs, laid, this.#curve, this.#hours)
    this.#draws = new Draws(this.#jobs, laid, this.#heat, this.celsius, this.#hours)
    // Where something is shifted aside for what is carried past it, the true floor alone says what is in the way.
    const free = jobs.some((job) => job.dish.shifts) ? 1 : 1 - lane
    this.#crowding = new Crowding(this.#jobs, laid, grid, ticks, free, rules.tick * problem.day.hands)
    this.#refusals = new Refusals(laid)
    this.#kept = {
      celsius: new Float64Array(ticks),
      e: new Int32Array(n),
      own: new Float64Array(4 * n),
      full: new Int32Array(n),
      s: new Int32Array(n),
      w: new Uint8Array(n),
      far: new Int32Array(n),
      hold: new Uint8Array(n),
      placed: new Uint8Array(n),
      lit: options.lit,
    }
    this.from = new Int32Array(n)
    this.to = new Int32Array(n)
    for (let u = 0; u < n; u++) {
      let from = ticks
      let to = 0
      for (let k = this.#ready; k < ticks; k++) {
        const empty = this.#curve.empty[k]!
        const t = empty + Math.abs(curve.offset[0])
        if (t < this.#jobs.low[u]! || empty - Math.abs(curve.offset[2]) > this.#jobs.high[u]! + 90) continue
        from = Math.min(from, k)
        to = Math.max(to, k)
      }
      this.from[u] = from
      this.to[u] = to
      this.w[u] = this.wheres[u]![0]!
      if (jobs[u]!.since !== null) {
        this.s[u] = Math.floor((jobs[u]!.since! - options.lit - phase) / rules.tick)
        this.w[u] = jobs[u]!.stands
        this.placed[u] = 1
      }
    }
    this.#heat.reach()
  }

  /** True where a job can be set in at some time on the empty oven. */
  possible(u: number): boolean {
    return this.fixed[u] === 1 || this.from[u]! <= this.to[u]!
  }

  /** Keep no more than the margin above each dish's lower limit and dose: what was in hand is needed to place the day at all. */
  spendInHand(): void {
    this.#heat.spendInHand()
  }

  /** Forget what the floor refused and what simulations corrected. */
  startAgain(curve: Curve): void {
    this.trustFloor(EASY)
    this.barNone()
    this.#curve.take(curve)
    this.#heat.reach()
  }

  /** Forget what the floor refused, and what was kept free for it: the floor itself is asked. */
  trustFloor(tight = ROOM): void {
    this.refuseNone()
    this.tight = tight
    this.full = WHOLE
  }

  /** Take it that the true floor refused some jobs. */
  refuse(refusals: readonly Refusal[]): void {
    this.#refusals.add(refusals)
  }

  /** Forget what the true floor refused, and what was burned. */
  refuseNone(): void {
    this.#refusals.forget()
    this.#draws.drawBy.fill(this.ticks)
    this.#draws.drawFrom.fill(0)
  }

  /** Take it that what is in the oven was burned where some of its vessels stand: it is drawn sooner, if it may be. */
  drawSooner(u: number): void {
    this.#draws.drawSooner(u)
  }

  /** As `Draws.drawLater`. */
  drawLater(u: number): void {
    this.#draws.drawLater(u)
  }

  /** Make the loaded curve at hand agree with a simulated one: the empty oven's is moved by the difference. */
  agreeWith(curve: Curve): void {
    this.recompute()
    this.#curve.agreeWith(curve)
    this.#heat.reach()
    this.recompute()
  }

  /**
   * How what a load takes from the curve follows its set-in: to the tick, or, while there is much to try, its long slow end only in steps.
   * The curve is added up afresh.
   */
  follow(how: 'closely' | 'loosely'): void {
    this.#curve.follow(how)
    this.recompute()
  }

  /** The loaded curve from the set-ins, afresh. */
  recompute(): void {
    this.#curve.clear()
    for (let u = 0; u < this.n; u++) if (this.placed[u]) this.#putOn(u)
  }

  #putOn(u: number): void {
    this.#heat.stale[u] = 1
    if (!this.fixed[u]) this.#curve.putOn(u, this.s[u]!)
  }

  set(u: number, s: number, w: number): void {
    if (this.placed[u] && s !== this.s[u] && !this.fixed[u]) {
      this.#curve.move(u, this.s[u]!, s)
      this.#heat.stale[u] = 1
      this.s[u] = s
      this.w[u] = w
      return
    }
    if (this.placed[u]) {
      this.w[u] = w
      this.#heat.stale[u] = 1
      return
    }
    this.s[u] = s
    this.w[u] = w
    this.placed[u] = 1
    this.#putOn(u)
  }

  /** Set a job in at a clock time, min after midnight; across the floor where it is too much for that part of it. */
  setAtClock(u: number, clock: number, w: number): void {
    const k = Math.round((clock - this.lit - this.phase) / rules.tick)
    const ws = this.wheres[u]!
    if (k >= 0 && k < this.ticks) this.set(u, k, ws.includes(w) ? w : ws[ws.length - 1]!)
  }

  takeOut(u: number): void {
    if (!this.placed[u]) return
    this.#heat.stale[u] = 1
    if (!this.fixed[u]) this.#curve.takeOff(u, this.s[u]!)
    this.placed[u] = 0
  }

  /** The jobs that can be set in at another time. */
  movable(): number[] {
    return Array.from({length: this.n}, (_, u) => u).filter((u) => !this.fixed[u] && !this.#barred[u] && this.possible(u))
  }

  /** The first tick that is not past, at the lighting time last judged. */
  get now(): number {
    return this.#hours.now
  }

  /** Keep what is laid and what was judged of it, to go back to. */
  commit(): void {
    this.#kept.celsius.set(this.celsius)
    this.#kept.e.set(this.e)
    this.#kept.own.set(this.#heat.own)
    this.#kept.full.set(this.#heat.full)
  }

  /** Begin a change of what was committed. */
  begun(): void {
    this.#touched.length = 0
    this.#kept.lit = this.lit
  }

  /** Note a job as it stands, before it is changed. */
  note(u: number): void {
    if (this.#touched.includes(u)) return
    this.#touched.push(u)
    const {s, w, far, hold, placed} = this.#kept
    s[u] = this.s[u]!
    w[u] = this.w[u]!
    far[u] = this.#curve.far[u]!
    hold[u] = this.hold[u]!
    placed[u] = this.placed[u]!
  }

  /** True where a job has been noted. */
  get touched(): boolean {
    return this.#touched.length > 0
  }

  /** Undo a change: what was noted since `begun`, and the lighting. */
  rollBack(): void {
    const {s, w, far, hold, placed} = this.#kept
    for (let i = 0; i < this.#touched.length; i++) {
      const u = this.#touched[i]!
      this.#curve.far[u] = far[u]!
      this.hold[u] = hold[u]!
      this.s[u] = s[u]!
      this.w[u] = w[u]!
      this.placed[u] = placed[u]!
      this.#heat.stale[u] = 0
    }
    this.celsius.set(this.#kept.celsius)
    this.e.set(this.#kept.e)
    this.#heat.own.set(this.#kept.own)
    this.#heat.full.set(this.#kept.full)
    this.#curve.changed = this.ticks
    this.lit = this.#kept.lit
  }

  /** A copy of what is laid, in the arrays of one that is no longer wanted. */
  keepBest(into: Best | null): Best {
    const {s, w, hold, placed, lit} = this
    if (!into) return {s: s.slice(), w: w.slice(), hold: hold.slice(), placed: placed.slice(), lit}
    into.s.set(s)
    into.w.set(w)
    into.hold.set(hold)
    into.placed.set(placed)
    into.lit = lit
    return into
  }

  /** Lay out such a copy; the curve and what is judged of it are then to be worked out. */
  takeBest({s, w, hold, placed, lit}: Best): void {
    this.lit = lit
    this.s.set(s)
    this.w.set(w)
    this.hold.set(hold)
    this.placed.set(placed)
  }

  /** True where a job may be set in at a tick, at the lighting time at hand: by day, and made up by day. */
  byDay(u: number, k: number): boolean {
    this.#hours.lightAt(this.lit)
    const {awake} = this.#hours
    return awake[k] === 1 && awake[Math.max(0, k - this.#jobs.making[u]!)] === 1
  }

  /**
   * What is broken by the heat alone if a job is set in with the floor's mean at `mean` °C, in a part of the floor: no more than `judge`
   * finds broken then.
   */
  outsideAt(u: number, w: number, mean: number): number {
    return this.#heat.outsideAt(u, w, mean)
  }

  /** Judge what is laid: draws, cost and broken limits. */
  judge(): void {
    this.judgeWithin(Number.POSITIVE_INFINITY, 0)
  }

  /**
   * Judge what is laid, no further than until it is dearer than a limit: most of what annealing tries is refused, and most of that is
   * soon known, since nothing that is added up makes a day cheaper.
   *
   * @param strict Price of what is broken.
   * @returns False where it is dearer; draws, cost and broken limits are then not known.
   */
  judgeWithin(limit: number, strict: number): boolean {
    this.#hours.lightAt(this.lit)
    const {n, ticks, s, e, w, placed, celsius: T} = this
    const jobs = this.#jobs
    const heat = this.#heat
    const draws = this.#draws
    const {awake, now} = this.#hours
    const O = draws.openings
    // What is seldom broken is multiplied and not branched to: V8 throws away what it compiled when a branch is first taken.
    const {night} = broken
    const clock0 = this.lit + this.phase
    const own = heat.own
    let cost = weights.wood * this.#wood
    let violation = 0
    const doorsAt = draws.doors
    O.fill(0)
    doorsAt.fill(0)
    let setIns = 0
    for (let u = 0; u < n; u++)
      if (placed[u] && !this.fixed[u]) {
        const at = s[u]!
        if (O[at]!++ === 0) setIns++
        doorsAt[at >> 5]! |= 1 << (at & 31)
      }
    // The door is opened at least for what is set in.
    const within = limit - weights.opening * setIns
    for (let u = 0; u < n; u++) {
      cost += (1 - placed[u]!) * missing * jobs.worth[u]!
      if (!placed[u]) continue
      if (heat.stale[u] || heat.full[u]! > this.#curve.changed) heat.bake(u, clock0)
      cost += own[4 * u + 2]!
      violation += own[4 * u + 3]!
      const start = Math.max(0, s[u]!)
      violation +=
        (1 - this.fixed[u]!) * night * (2 - awake[start]! * awake[Math.max(0, start - jobs.making[u]!)]! - (start < now ? 0 : 1))
      if (cost + strict * violation > within) return false
    }
    this.#curve.changed = ticks
    e.fill(-1)
    if (jobs.mindful.length > 0) draws.keepShut()
    // The draws, each at its cheapest; a second time round, knowing the others'.
    for (let round = 0; round < 2; round++) for (let u = 0; u < n; u++) if (placed[u]) draws.drawAnew(u, clock0)
    // Those that wait for others follow these, one behind the other.
    for (let i = 0; i < jobs.behind.length; i++)
      for (let j = 0; j < jobs.behind.length; j++) if (draws.hemmedIn(jobs.behind[j]!)) draws.drawAnew(jobs.behind[j]!, clock0)
    for (let i = 0; i < jobs.behind.length; i++) draws.letOut(jobs.behind[i]!, clock0)
    let usedTicks = 0
    let lo = ticks
    const hotEnd = this.#hotEnd()
    for (let u = 0; u < n; u++) {
      if (!placed[u]) continue
      const start = Math.max(0, s[u]!)
      const end = e[u]!
      const where = w[u]!
      const fixed = this.fixed[u] === 1
      if (start < lo) lo = start
      // Cost and limits of the draw.
      const late = clock0 + end * rules.tick - jobs.due[u]!
      if (late > 0) cost += priceOfLate(late, jobs.bears[u]!)
      const early = jobs.hotFrom[u]! - (clock0 + end * rules.tick)
      if (early > 0) cost += weights.early * early
      if (!jobs.stays[u]) {
        const off = draws.offDose[u]!
        if (off >= 0) cost += weights.misfit * off
        else if (!fixed || draws.hemmedIn(u)) violation += broken.over
      } else cost += heat.priceOfWanting(u, end)
      const was = this.was[u]
      if (was)
        cost +=
          weights.moved *
          (Math.abs(clock0 + end * rules.tick - was.draw) + (fixed ? 0 : Math.abs(clock0 + start * rules.tick - was.at)))
      if (!fixed) {
        const a = jobs.scale[4 * u + where]!
        const b = jobs.shift[4 * u + where]!
        const least = jobs.end[u]! + jobs.endMargin
        const out = a * T[end]! + b
        if (out < least) violation += broken.celsius * (least - out)
        if (!awake[end]) violation += broken.night
        if (jobs.food[u]) {
          const early = end - rules.coldMinutes / rules.tick
          if (early > start && a * T[early]! + b < rules.holdCelsius)
            violation += broken.hold * (1 + rules.holdCelsius - a * T[early]! - b)
        }
      }
      const until = Math.min(end, own[4 * u]!, hotEnd)
      const from = Math.max(start, this.#ready)
      if (until > from) usedTicks += jobs.area[u]! * (until - from)
      cost += deeperBy(start, end, where)
    }
    const hotTicks = hotEnd - this.#ready - this.#hours.blockedIn(this.#ready, hotEnd)
    cost += weights.idle * ((hotTicks * this.#hotArea - usedTicks) * (rules.tick / 60))
    cost += weights.opening * countBits(doorsAt)
    if (jobs.mindful.length > 0)
      for (let k = nextBit(doorsAt, 0); k >= 0; k = nextBit(doorsAt, k + 1)) cost += weights.shut * draws.shutAt[k]!
    if (cost + strict * violation > limit) return false
    violation = this.#crowding.judge(violation, lo, this.full)
    const gap = rules.settleIn.minutes / rules.tick
    for (const f of jobs.falls) {
      if (!placed[f]) continue
      for (const c of jobs.crusts) {
        const d = s[c]! - s[f]!
        // Set in among crusts that bake already is no better: not forbidden, but avoided.
        if (placed[c] && d < 0 && e[c]! > s[f]!) cost += AMONG_CRUSTS
        if (placed[c] && d >= 0 && d < gap) violation += broken.order * (0.3 + (0.7 * Math.min(d + 1, gap - d)) / gap)
      }
    }
    violation += broken.refusal * this.#refusals.count()
    cost += this.tight * this.#crowding.crowded
    this.cost = cost
    this.violation = violation
    return cost + strict * violation <= limit
  }

  /** The tick from which the floor is no longer hot for good. */
  #hotEnd(): number {
    const T = this.celsius
    let k = Math.min(this.#lastHot + 12, this.ticks - 1)
    if (T[k]! >= rules.hotCelsius) k = this.ticks - 1
    while (k > this.#ready && T[k]! < rules.hotCelsius) k--
    this.#lastHot = k
    return k
  }

  /** True where a job is drawn as soon as what stands in its way in the oven is done, and could not be sooner. */
  heldBack(u: number): boolean {
    return this.#draws.heldBack(u)
  }

  /** True where a job has the dose it needs when it is drawn, as the layout has it. */
  isDone(u: number): boolean {
    return this.#heat.isDone(u)
  }

  /** What it costs that a job's dough has not risen when it is set in, or has waited too long (`amissBy`). */
  unfitBy(u: number): number {
    const risen = this.#jobs.risen[u]
    return risen === undefined ? 0 : amissBy(risen, this.lit + this.phase + this.s[u]! * rules.tick)
  }

  /** Minutes by which a job is drawn later than it is wanted, beyond what the plan that was followed had. */
  laterThanMeant(u: number): number {
    return laterThanMeant({due: this.#jobs.due[u]!, was: this.was[u]}, this.lit + this.phase + this.e[u]! * rules.tick)
  }

  /** True where a job is drawn before something in the oven that stands in its way out. */
  hemmedIn(u: number): boolean {
    return this.#draws.hemmedIn(u)
  }

  /** True where a job as it is set in and drawn would keep its limits, with what is kept inside them, in a part of the floor (0 back … 2 mouth). */
  fits(u: number, z: number): boolean {
    return this.#heat.fits(u, z)
  }

  snapshot(): Laid[] {
    return Array.from({length: this.n}, (_, u) => ({
      in: this.placed[u] === 1,
      s: this.s[u]!,
      e: this.e[u]!,
      w: this.w[u]!,
      hold: this.hold[u]!,
    }))
  }

  /** What is laid, and what it was judged to cost and to break. */
  found(): LaidOut {
    return {laid: this.snapshot(), lit: this.lit, cost: this.cost, violation: this.violation}
  }

  restore(laid: readonly Laid[], lit: number): void {
    this.lit = lit
    laid.forEach((l, u) => {
      this.s[u] = l.s
      this.w[u] = l.w
      this.e[u] = l.e
      this.hold[u] = l.hold
      this.placed[u] = l.in ? 1 : 0
    })
    this.recompute()
  }

  /** Put every job that is not fixed where it suits best on the curve at hand, the hungriest for heat first. */
  begin(): void {
    this.recompute()
    const order = Array.from({length: this.n}, (_, u) => u).sort((a, b) => this.#jobs.best[b]! - this.#jobs.best[a]! || a - b)
    this.#hours.lightAt(this.lit)
    for (const u of order) {
      if (this.fixed[u] || !this.possible(u)) continue
      let at = -1
      let off = Number.POSITIVE_INFINITY
      const w = this.wheres[u]![0]!
      for (let k = Math.max(this.from[u]!, this.#hours.now); k <= this.to[u]!; k++) {
        if (!this.byDay(u, k)) continue
        const d = Math.abs(this.#jobs.scale[4 * u + w]! * this.celsius[k]! + this.#jobs.shift[4 * u + w]! - this.#jobs.best[u]!)
        if (d < off) {
          off = d
          at = k
        }
      }
      if (at >= 0) this.set(u, at, w)
    }
  }

  /** The tick at which a job is done on the curve at hand, or could be no more; see `isDone`. */
  doneAt(u: number): number {
    this.#heat.bake(u, this.lit + this.phase)
    return this.#heat.own[4 * u]!
  }

  /** The last tick at which a job may be drawn, from when it was last judged to be done: before it is over-baked, or what stays grows too cold. */
  lastDraw(u: number): number {
    return this.#heat.lastDraw(u)
  }

  /** Leave a job out for good, so that no annealing puts it back. */
  bar(u: number): void {
    if (this.fixed[u]) return
    this.takeOut(u)
    this.#barred[u] = 1
    this.judge()
  }

  /** Take back every `bar`. */
  barNone(): void {
    this.#barred.fill(0)
  }
}
