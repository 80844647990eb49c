import {countBits, nextBit} from './bits.js'
import {wheresOf, worthStaying} from './choices.js'
import {type Curve, doseNeeded, mostDose, whereIndex} from './curve.js'
import {amissBy} from './dough.js'
import type {FloorGrid} from './floor-grid.js'
import {keptWarm, staysIn} from './keeps.js'
import {LoadedCurve} from './loaded-curve.js'
import {dearFrom, feedsOf, isNight, type Job, laterThanMeant, type Program, priceOfLate, shutTicks} from './model.js'
import type {Response} from './response.js'
import {rules, weights} from './rules.js'
import {missing} from './search.js'
import {blocks, bodyOf, pastOf} from './seats.js'
import type {PlanProblem} from './types.js'

/**
 * A day laid out on an oven that its own loads cool. What is decided is when and where each dish is set in; the curve follows from the
 * set-ins (`response.ts`), when each dish is done follows from the curve, and when it is drawn is the cheapest moment after that. Limits
 * are paid for while searching, more dearly as the search goes on, so that no dish is lost on the way to a day that holds them all.
 * How it is searched for is in `anneal.ts`, how one is mended by single moves in `mend.ts`; here is what a layout is and what it is worth.
 */

/** Where a job stands and when it is set in and drawn; ticks of the curve's clock. `in` false: left out. */
export interface Laid {
  readonly in: boolean
  readonly s: number
  readonly e: number
  readonly w: number
  /** Ticks it waits after it is done before a draw is looked for. */
  readonly hold: number
}

/** A copy of a layout. */
export interface Best {
  readonly s: Int32Array
  readonly w: Uint8Array
  readonly hold: Uint8Array
  readonly placed: Uint8Array
  lit: number
}

/** What is laid out, when the fire is lit, what it costs and what it breaks. */
export interface LaidOut {
  readonly laid: Laid[]
  readonly lit: number
  readonly cost: number
  readonly violation: number
}

/** Jobs that the true floor refused together: the others all share some time with the first. */
export interface Refusal {
  readonly job: number
  readonly others: readonly number[]
  /** The tick, which counts only where nothing else was in the way. */
  readonly at: number
  /** Who had to be carried past whom (`pastOf`), for each of the others: less of that may be granted. */
  readonly past: readonly number[]
}

/** The same in rows of numbers. */
interface Refused {
  readonly job: number
  readonly others: Int32Array
  readonly at: number
  readonly past: Int32Array
}

/** A refusal that is never so: with it V8 knows from the first what the others are made of, and need not compile anew at the first of them. */
const NO_ONE: Refused = {job: 0, at: -1, others: Int32Array.of(0), past: Int32Array.of(4)}

export interface LayoutOptions {
  readonly lit: number
  /** °C kept inside a dish's limits, and above its lower one. */
  readonly margin: number
  readonly inHand: number
  readonly marginDose: number
  /** The same beyond it for what stays in the falling oven. */
  readonly inHandDose: number
  /** Each job stands where it did in the plan being followed. */
  readonly asPlaced?: boolean
}

/** Most ticks after it is done in which a draw is looked for, for a dish that does not stay. */
const WINDOW = 24
/** Cost of each kind of broken limit, in the objective's units. */
const broken = {
  celsius: 3,
  floor: 8,
  lane: 30,
  hands: 12,
  order: 60,
  night: 60,
  over: 150,
  refusal: 80,
  hold: 0.5,
  unrisen: 0.5,
} as const

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
  /** Price of a part of the floor over four fifths full, a tick: the fuller, the less likely the true floor grants it. */
  tight = EASY
  /** Share of a part of the floor that may be taken up; less once the true floor has refused. */
  full: number = WHOLE
  /** What the last evaluation found; no whole number at first, or V8 gives every layout a new shape when the first is judged. */
  cost = Number.NaN
  violation = Number.NaN

  readonly #curve: LoadedCurve
  /** A part's temperature from the mean's: four of either a job, the last for what stands across. */
  readonly #scale: Float64Array
  readonly #shift: Float64Array
  readonly #hotter: Float64Array
  readonly #ambient: number
  readonly #goal: Float64Array
  /** The last tick at which each may be drawn, of what was seen to be burned at a later one. */
  readonly #drawBy: Int32Array
  /** The same with nothing in hand. */
  readonly #leastGoal: Float64Array
  /** The dose with which something in the oven breaks nothing, °C·min (see `#reach`). */
  readonly #least: Float64Array
  readonly #longest: Float64Array
  readonly #needed: Float64Array
  /** The dose it should have: no more than it needs, unless its limits are eased. */
  readonly #wanted: Float64Array
  readonly #low: Float64Array
  readonly #lowest: Float64Array
  readonly #high: Float64Array
  readonly #best: Float64Array
  readonly #end: Float64Array
  readonly #done: Float64Array
  readonly #misfit: Float64Array
  /** When each job's dough is fit to be set in, on a day that has begun. */
  readonly #risen: readonly Job['risen'][]
  readonly #due: Float64Array
  /** Clock minutes before which what is wanted hot is drawn too soon. */
  readonly #hotFrom: Float64Array
  readonly #bears: Float64Array
  readonly #worth: Float64Array
  readonly #stays: Uint8Array
  /** What stays and may be drawn with less than its dose, which then has its price. */
  readonly #scant: Uint8Array
  /** The tick by which that has all of its dose, one past the last where it never has; the tick at which any other is done. */
  readonly #full: Int32Array
  readonly #barred: Uint8Array
  readonly #food: Uint8Array
  readonly #area: Float64Array
  readonly #handling: Float64Array
  readonly #floor: readonly [number, number, number]
  readonly #share: readonly [number, number, number]
  readonly #narrow: readonly [number, number, number]
  readonly #hands: number
  readonly phase: number
  readonly #endMargin: number
  readonly #blocked: Program['blocked']
  readonly #problem: PlanProblem
  /** For each job the others that stand in its way out, all of them in the oven already; and those that have any. */
  readonly #inFront: number[][]
  readonly #behind: number[]
  /** True where some job has a place in a plan that was being followed. */
  readonly #again: boolean
  /** Whether the door may be opened at each tick, and the next at which it may, or the last there is. */
  #awake: Uint8Array
  #wakes: Int32Array
  readonly #awakeAt = new Map<number, {readonly awake: Uint8Array; readonly wakes: Int32Array}>()
  #now = 0
  #lastHot = Number.MAX_SAFE_INTEGER
  readonly #refusals: Refused[] = [NO_ONE]
  readonly #ready: number
  readonly #hotArea: number
  readonly #wood: number
  // Scratch of one evaluation.
  readonly #openings: Int32Array
  /** Jobs of which a receipt wants the door kept shut after they are set in, for how many ticks, and how many want it at each tick. */
  readonly #mindful: readonly number[]
  readonly #shut: Int32Array
  readonly #shutAt: Int32Array
  readonly #handsAt: Float64Array
  /** A bit a tick: at which something is set in or drawn, and at which the door is opened. */
  readonly #marks: Int32Array
  readonly #doors: Int32Array
  readonly #rise: Float64Array[]
  readonly #started: Float64Array[]
  readonly #lanes: Int32Array[]
  // What is known of each job from the curve up to the tick at which it is done, until the curve changes before that tick. Four numbers a
  // job in one row, for which V8 has one shape: that tick, the dose by then (°C·min), its cost and what it breaks, doors and draw aside.
  readonly #own: Float64Array
  readonly #stale: Uint8Array
  /** How far from the dose it should have each is drawn, °C·min; −1 where it stays longer than it may. */
  readonly #offDose: Float64Array
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
  readonly #falls: number[] = []
  readonly #crusts: number[] = []

  constructor(
    problem: PlanProblem,
    grid: FloorGrid,
    jobs: readonly Job[],
    program: Pick<Program, 'curve' | 'phase' | 'ticks' | 'blocked' | 'wood'>,
    response: Response | null,
    lane: number,
    options: LayoutOptions,
  ) {
    const n = jobs.length
    const {curve, phase, ticks} = program
    this.n = n
    this.ticks = ticks
    this.lit = options.lit
    this.#problem = problem
    this.phase = phase
    this.#blocked = program.blocked
    this.#floor = grid.zones
    this.#share = [grid.zones[0] / grid.area, grid.zones[1] / grid.area, grid.zones[2] / grid.area]
    // Where something is shifted aside for what is carried past it, the true floor alone says what is in the way.
    const free = jobs.some((job) => job.dish.shifts) ? 1 : 1 - lane
    this.#narrow = [grid.zones[0] * free, grid.zones[1] * free, grid.zones[2] * free]
    this.#hands = rules.tick * problem.day.hands
    this.#hotArea = grid.area
    this.#wood = program.wood
    this.#endMargin = options.margin > 0 ? 1 : 0
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
    // A part's own temperature is the mean's, straight: T + offset · (T − air)/(T_ready − air).
    const share = curve.offset.map((offset) => offset / Math.max(1, curve.readyCelsius - curve.ambient))
    this.#scale = new Float64Array(4 * n)
    this.#shift = new Float64Array(4 * n)
    this.#hotter = new Float64Array(n)
    jobs.forEach((job, u) => {
      // What stands across the floor is judged by its coolest part, and set in by its hottest: by those in which it stands, where known.
      const placed = job.stood ?? (options.asPlaced ? job.was?.placed : undefined) ?? []
      // One vessel that no part is large enough for stands in the middle: it is judged where its centre lies.
      const zones = placed.length > 0 ? placed.map((p) => whereIndex(p.zone)) : job.count === 1 ? [1] : [0, 1, 2]
      const its = zones.map((z) => share[z]!)
      const coolest = Math.min(...its)
      ;[...share, coolest].forEach((k, w) => {
        this.#scale[4 * u + w] = 1 + k
        this.#shift[4 * u + w] = -k * curve.ambient
      })
      this.#hotter[u] = Math.max(...its) - coolest
    })
    this.#ambient = curve.ambient
    const make = (f: (job: Job) => number): Float64Array => Float64Array.from(jobs, f)
    const slack = (job: Job, celsius: number): number =>
      Math.min(celsius, Math.max(0, (job.dish.need.startHigh - job.dish.need.startLow) / 4))
    this.#needed = make((j) => doseNeeded(j.dish.need))
    // Aimed at alike in the morning and once the day has begun, or what is kept would be drawn the sooner for it.
    this.#wanted = make((j) => doseNeeded(j.dish.need, j.dish.need.minutes.likely) * (1 + rules.marginDose))
    this.#least = new Float64Array(n)
    this.#longest = make((j) => (j.spread ?? 1) * mostDose(j.dish.need))
    this.#low = make((j) => j.dish.need.startLow + slack(j, options.inHand))
    this.#lowest = make((j) => j.dish.need.startLow + slack(j, options.margin))
    this.#high = make((j) => j.dish.need.startHigh - slack(j, options.margin))
    this.#best = make((j) => j.dish.need.startBest)
    this.#end = make((j) => j.dish.need.endLow)
    this.#done = make((j) => j.dish.need.done)
    this.#misfit = make((j) => Math.min(j.dish.need.minutes.likely, rules.misfitMinutes))
    this.#risen = jobs.map((j) => j.risen)
    const mean = jobs.reduce((sum, j) => sum + feedsOf(j), 0) / Math.max(1, n)
    this.#worth = make((j) => (j.weighed ? Math.min(2, Math.max(0.5, feedsOf(j) / Math.max(1, mean))) : 1))
    this.#bears = make(dearFrom)
    this.#due = make((j) => j.due ?? Number.POSITIVE_INFINITY)
    this.#hotFrom = make((j) => j.hotFrom)
    this.#area = make((j) => j.area)
    this.#handling = make((j) => j.handling)
    this.#full = new Int32Array(n)
    this.#stays = Uint8Array.from(jobs, (j) => (staysIn(j.dish.need) ? 1 : 0))
    this.#drawBy = new Int32Array(n).fill(this.ticks)
    this.#leastGoal = this.#needed.map((dose) => dose * (1 + options.marginDose))
    this.#goal = this.#leastGoal.map((dose, u) => dose + (this.#stays[u] ? options.inHandDose * this.#needed[u]! : 0))
    this.#scant = this.#stays.map((stays, u) => (jobs[u]!.dish.need.enough === undefined ? 0 : stays))
    this.#food = Uint8Array.from(jobs, (j) => (keptWarm(j.dish.need) ? 1 : 0))
    this.#barred = new Uint8Array(n)
    this.dishOf = jobs.map((j) => j.dish.id)
    this.fixed = Uint8Array.from(jobs, (j) => (j.since === null ? 0 : 1))
    this.wheres = jobs.map((j) => wheresOf(j, grid))
    jobs.forEach((j, u) => {
      if (j.since !== null) return
      if (j.order === 1) this.#falls.push(u)
      if (j.order === 2) this.#crusts.push(u)
    })
    this.#inFront = inFront(jobs, grid)
    this.#behind = this.#inFront.flatMap((others, u) => (others.length > 0 ? [u] : []))
    this.was = jobs.map((j) => j.was)
    this.#again = jobs.some((j) => j.was)
    this.#awake = new Uint8Array(ticks)
    this.#wakes = new Int32Array(ticks)
    this.#openings = new Int32Array(ticks + 1)
    this.#shut = Int32Array.from(jobs, shutTicks)
    this.#mindful = jobs.flatMap((_, u) => (this.#shut[u]! > 1 ? [u] : []))
    this.#shutAt = new Int32Array(ticks + 1)
    this.#handsAt = new Float64Array(ticks + 1)
    this.#marks = new Int32Array((ticks >> 5) + 1)
    this.#doors = new Int32Array((ticks >> 5) + 1)
    this.#rise = [0, 1, 2].map(() => new Float64Array(ticks + 1))
    this.#started = [0, 1, 2].map(() => new Float64Array(ticks + 1))
    this.#lanes = [0, 1, 2].map(() => new Int32Array(ticks + 1))
    this.#own = new Float64Array(4 * n)
    this.#stale = new Uint8Array(n).fill(1)
    this.#offDose = new Float64Array(n)
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
        if (t < this.#low[u]! || empty - Math.abs(curve.offset[2]) > this.#high[u]! + 90) continue
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
    this.#reach()
  }

  /** True where a job can be set in at some time on the empty oven. */
  possible(u: number): boolean {
    return this.fixed[u] === 1 || this.from[u]! <= this.to[u]!
  }

  /** Keep no more than the margin above each dish's lower limit and dose: what was in hand is needed to place the day at all. */
  spendInHand(): void {
    this.#low.set(this.#lowest)
    this.#goal.set(this.#leastGoal)
    this.#stale.fill(1)
  }

  /** What the dishes in the oven are to have: what they need, or most of what they would have if nothing were set in after them. */
  #reach(): void {
    for (let u = 0; u < this.n; u++) {
      if (!this.fixed[u]) continue
      const a = this.#scale[4 * u + this.w[u]!]!
      const b = this.#shift[4 * u + this.w[u]!]! - this.#done[u]!
      const start = Math.max(0, this.s[u]!)
      const wall = this.#blocked.length > 0 ? this.#wallAfter(start) : this.ticks - 1
      const {empty} = this.#curve
      let most = 0
      for (let k = start + 1; k <= wall; k++)
        most += HALF_TICK * (Math.max(0, a * empty[k - 1]! + b) + Math.max(0, a * empty[k]! + b))
      this.#least[u] = Math.min(this.#goal[u]!, MOST_OF * most)
    }
  }

  /** Forget what the floor refused and what simulations corrected. */
  startAgain(curve: Curve): void {
    this.trustFloor(EASY)
    this.barNone()
    this.#curve.take(curve)
    this.#reach()
  }

  /** Forget what the floor refused, and what was kept free for it: the floor itself is asked. */
  trustFloor(tight = ROOM): void {
    this.refuseNone()
    this.tight = tight
    this.full = WHOLE
  }

  /** Take it that the true floor refused some jobs. */
  refuse(refusals: readonly Refusal[]): void {
    for (const {job, at, others, past} of refusals)
      this.#refusals.push({job, at, others: Int32Array.from(others), past: Int32Array.from(past)})
  }

  /** Forget what the true floor refused, and what was burned. */
  refuseNone(): void {
    this.#refusals.length = 1
    this.#drawBy.fill(this.ticks)
  }

  /** Take it that what is in the oven was burned where some of its vessels stand: it is drawn sooner, if it may be. */
  drawSooner(u: number): void {
    this.#drawBy[u] = this.e[u]! - 1
  }

  /** Make the loaded curve at hand agree with a simulated one: the empty oven's is moved by the difference. */
  agreeWith(curve: Curve): void {
    this.recompute()
    this.#curve.agreeWith(curve)
    this.#reach()
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
    this.#stale[u] = 1
    if (!this.fixed[u]) this.#curve.putOn(u, this.s[u]!)
  }

  set(u: number, s: number, w: number): void {
    if (this.placed[u] && s !== this.s[u] && !this.fixed[u]) {
      this.#curve.move(u, this.s[u]!, s)
      this.#stale[u] = 1
      this.s[u] = s
      this.w[u] = w
      return
    }
    if (this.placed[u]) {
      this.w[u] = w
      this.#stale[u] = 1
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
    this.#stale[u] = 1
    if (!this.fixed[u]) this.#curve.takeOff(u, this.s[u]!)
    this.placed[u] = 0
  }

  /** The jobs that can be set in at another time. */
  movable(): number[] {
    return Array.from({length: this.n}, (_, u) => u).filter((u) => !this.fixed[u] && !this.#barred[u] && this.possible(u))
  }

  /** The first tick that is not past, at the lighting time last judged. */
  get now(): number {
    return this.#now
  }

  /** Keep what is laid and what was judged of it, to go back to. */
  commit(): void {
    this.#kept.celsius.set(this.celsius)
    this.#kept.e.set(this.e)
    this.#kept.own.set(this.#own)
    this.#kept.full.set(this.#full)
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
      this.#stale[u] = 0
    }
    this.celsius.set(this.#kept.celsius)
    this.e.set(this.#kept.e)
    this.#own.set(this.#kept.own)
    this.#full.set(this.#kept.full)
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

  /** True where the door may be opened at a tick, at the lighting time at hand. */
  awake(k: number): boolean {
    this.#wake()
    return this.#awake[k] === 1
  }

  #wake(): void {
    const clock0 = this.lit + this.phase
    let known = this.#awakeAt.get(this.lit)
    if (known === undefined) {
      const awake = new Uint8Array(this.ticks)
      const wakes = new Int32Array(this.ticks)
      for (let k = this.ticks - 1, next = k; k >= 0; k--) {
        awake[k] = isNight(this.#problem, clock0 + k * rules.tick) ? 0 : 1
        if (awake[k]) next = k
        wakes[k] = next
      }
      known = {awake, wakes}
      this.#awakeAt.set(this.lit, known)
    }
    this.#awake = known.awake
    this.#wakes = known.wakes
    const now = this.#problem.done?.now
    this.#now = now === undefined ? 0 : Math.max(0, Math.ceil((now - clock0) / rules.tick))
  }

  /** The first tick from one on at which the door may be opened, and `wall` at the latest. */
  #openFrom(k: number, wall: number): number {
    return Math.min(wall, this.#wakes[Math.min(k, wall)]!)
  }

  #wallAfter(k: number): number {
    let wall = this.ticks - 1
    for (const b of this.#blocked) {
      const at = Math.floor((b.from - this.phase) / rules.tick)
      if (Math.ceil((b.to - this.phase) / rules.tick) > k && at < wall) wall = at
    }
    return wall
  }

  /** What is known of one job without the others' doors: when it is done, and how well its heat suits it. */
  #bake(u: number): void {
    const T = this.celsius
    const w = this.w[u]!
    const a = this.#scale[4 * u + w]!
    const shift = this.#shift[4 * u + w]!
    const b = shift - this.#done[u]!
    const start = Math.max(0, this.s[u]!)
    const wall = this.#blocked.length > 0 ? this.#wallAfter(start) : this.ticks - 1
    const goal = this.#goal[u]!
    let cost = 0
    let violation = 0
    if (!this.fixed[u]) {
      const t = a * T[start]! + shift
      const hottest = this.#hottest(u, w, t, T[start]!)
      violation = this.#outside(u, t, hottest)
      cost = weights.misfit * Math.abs((t + hottest) / 2 - this.#best[u]!) * this.#misfit[u]!
      const risen = this.#risen[u]
      if (risen) {
        const clock = this.lit + this.phase + start * rules.tick
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
    }
    this.#stale[u] = 0
    if (dose < goal) {
      if (!this.fixed[u]) violation += Math.min(missing, 200 + missing * (1 - dose / goal))
      else {
        // What is in the oven is not to be spoiled for what is set in after it; what the oven cannot give it any more breaks nothing.
        if (dose < this.#least[u]!) violation += Math.min(missing, 200 + missing * (1 - dose / this.#least[u]!))
        cost += UNDONE * (1 - dose / goal)
        // Whatever comes later changes how long it had best stay.
        this.#stale[u] = 1
        ;({k, dose} = this.#longestUse(u, worthStaying(dose, goal), wall))
      }
    }
    const own = this.#own
    this.#full[u] = k
    if (this.#scant[u]) this.#full[u] = this.#fullFrom(k, dose, this.#wanted[u]!, a, b)
    own[4 * u] = k
    own[4 * u + 1] = dose
    own[4 * u + 2] = cost
    own[4 * u + 3] = violation
  }

  /** The hottest that a job finds where it is set in; what stands across the floor finds all its parts. */
  #hottest(u: number, w: number, t: number, mean: number): number {
    return w === 3 ? t + this.#hotter[u]! * (mean - this.#ambient) : t
  }

  /** What is broken by setting a job in at a heat. */
  #outside(u: number, t: number, hottest: number): number {
    let out = 0
    if (t < this.#low[u]!) out += broken.celsius * (this.#low[u]! - t)
    if (hottest > this.#high[u]!) out += broken.celsius * (hottest - this.#high[u]!)
    return out
  }

  /**
   * What is broken by the heat alone if a job is set in with the floor's mean at `mean` °C, in a part of the floor: no more than `judge`
   * finds broken then.
   */
  outsideAt(u: number, w: number, mean: number): number {
    const t = this.#scale[4 * u + w]! * mean + this.#shift[4 * u + w]!
    return this.#outside(u, t, this.#hottest(u, w, t, mean))
  }

  /**
   * How long something in the oven that cannot be done any more is left in: until it has had all that does it good, but not through a
   * night in which it would grow too cold.
   */
  #longestUse(u: number, most: number, wall: number): {k: number; dose: number} {
    const T = this.celsius
    const awake = this.#awake
    const a = this.#scale[4 * u + this.w[u]!]!
    const shift = this.#shift[4 * u + this.w[u]!]!
    const b = shift - this.#done[u]!
    const start = Math.max(0, this.s[u]!)
    const doses = [0]
    let k = start
    while (doses[k - start]! < most && k < wall) {
      k++
      doses.push(doses[k - 1 - start]! + HALF_TICK * (Math.max(0, a * T[k - 1]! + b) + Math.max(0, a * T[k]! + b)))
    }
    const good = k
    k = this.#openFrom(k, wall)
    const early = k - rules.coldMinutes / rules.tick
    if (k > good && this.#food[u] && a * T[Math.max(start, early)]! + shift < rules.holdCelsius) {
      k = good
      while (k > Math.max(start, this.#now) && !awake[k]) k--
    }
    return {k, dose: doses[Math.min(k, good) - start]!}
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
    this.#wake()
    const {n, ticks, s, e, w, placed, celsius: T} = this
    const O = this.#openings
    const awake = this.#awake
    const now = this.#now
    // What is seldom broken is multiplied and not branched to: V8 throws away what it compiled when a branch is first taken.
    const {night} = broken
    const clock0 = this.lit + this.phase
    const own = this.#own
    let cost = weights.wood * this.#wood
    let violation = 0
    const doorsAt = this.#doors
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
      cost += (1 - placed[u]!) * missing * this.#worth[u]!
      if (!placed[u]) continue
      if (this.#stale[u] || this.#full[u]! > this.#curve.changed) this.#bake(u)
      cost += own[4 * u + 2]!
      violation += own[4 * u + 3]!
      const start = Math.max(0, s[u]!)
      violation += (1 - this.fixed[u]!) * night * (2 - awake[start]! - (start < now ? 0 : 1))
      if (cost + strict * violation > within) return false
    }
    this.#curve.changed = ticks
    e.fill(-1)
    if (this.#mindful.length > 0) this.#keepShut()
    // The draws, each at its cheapest; a second time round, knowing the others'.
    for (let round = 0; round < 2; round++) for (let u = 0; u < n; u++) if (placed[u]) this.#drawAnew(u, clock0)
    // Those that wait for others follow these, one behind the other.
    for (let i = 0; i < this.#behind.length; i++)
      for (let j = 0; j < this.#behind.length; j++) if (this.hemmedIn(this.#behind[j]!)) this.#drawAnew(this.#behind[j]!, clock0)
    for (let i = 0; i < this.#behind.length; i++) this.#letOut(this.#behind[i]!, clock0)
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
      const late = clock0 + end * rules.tick - this.#due[u]!
      if (late > 0) cost += priceOfLate(late, this.#bears[u]!)
      const early = this.#hotFrom[u]! - (clock0 + end * rules.tick)
      if (early > 0) cost += weights.early * early
      if (!this.#stays[u]) {
        const off = this.#offDose[u]!
        if (off >= 0) cost += weights.misfit * off
        else if (!fixed || this.hemmedIn(u)) violation += broken.over
      } else cost += this.#priceOfWanting(u, end)
      const was = this.was[u]
      if (was)
        cost +=
          weights.moved *
          (Math.abs(clock0 + end * rules.tick - was.draw) + (fixed ? 0 : Math.abs(clock0 + start * rules.tick - was.at)))
      if (!fixed) {
        const a = this.#scale[4 * u + where]!
        const b = this.#shift[4 * u + where]!
        const least = this.#end[u]! + this.#endMargin
        const out = a * T[end]! + b
        if (out < least) violation += broken.celsius * (least - out)
        if (!awake[end]) violation += broken.night
        if (this.#food[u]) {
          const early = end - rules.coldMinutes / rules.tick
          if (early > start && a * T[early]! + b < rules.holdCelsius)
            violation += broken.hold * (1 + rules.holdCelsius - a * T[early]! - b)
        }
      }
      const until = Math.min(end, own[4 * u]!, hotEnd)
      const from = Math.max(start, this.#ready)
      if (until > from) usedTicks += this.#area[u]! * (until - from)
      cost += deeperBy(start, end, where)
    }
    const hotTicks = hotEnd - this.#ready - this.#hotBlocked(hotEnd)
    cost += weights.idle * ((hotTicks * this.#hotArea - usedTicks) * (rules.tick / 60))
    cost += weights.opening * countBits(doorsAt)
    if (this.#mindful.length > 0)
      for (let k = nextBit(doorsAt, 0); k >= 0; k = nextBit(doorsAt, k + 1)) cost += weights.shut * this.#shutAt[k]!
    if (cost + strict * violation > limit) return false
    const hands = this.#handsAt
    const marks = this.#marks
    // Not taken apart by patterns: that makes an iterator at every judgement.
    const rise0 = this.#rise[0]!
    const rise1 = this.#rise[1]!
    const rise2 = this.#rise[2]!
    const started1 = this.#started[1]!
    const started2 = this.#started[2]!
    const lanes1 = this.#lanes[1]!
    const lanes2 = this.#lanes[2]!
    for (let u = 0; u < n; u++) {
      if (!placed[u]) continue
      const start = Math.max(0, s[u]!)
      const end = e[u]!
      const where = w[u]!
      const area = this.#area[u]!
      const fixed = this.fixed[u] === 1
      marks[start >> 5]! |= 1 << (start & 31)
      marks[end >> 5]! |= 1 << (end & 31)
      if (!fixed) hands[start] = hands[start]! + this.#handling[u]!
      hands[end] = hands[end]! + this.#handling[u]!
      if (where === 0 || where === 3) {
        const part = where === 3 ? area * this.#share[0] : area
        rise0[start] = rise0[start]! + part
        rise0[end] = rise0[end]! - part
        if (!fixed) lanes1[start] = lanes1[start]! + 1
        lanes1[end] = lanes1[end]! + 1
      }
      if (where === 1 || where === 3) {
        const part = where === 3 ? area * this.#share[1] : area
        rise1[start] = rise1[start]! + part
        rise1[end] = rise1[end]! - part
        if (!fixed) started1[start] = started1[start]! + part
      }
      if (where === 2 || where === 3) {
        const part = where === 3 ? area * this.#share[2] : area
        rise2[start] = rise2[start]! + part
        rise2[end] = rise2[end]! - part
        if (!fixed) started2[start] = started2[start]! + part
      }
      if (where !== 2) {
        if (!fixed) lanes2[start] = lanes2[start]! + 1
        lanes2[end] = lanes2[end]! + 1
      }
    }
    const spare = this.#hands + 1e-9
    const most = this.full + 1e-6
    const floor0 = this.#floor[0]
    const floor1 = this.#floor[1]
    const floor2 = this.#floor[2]
    const narrow1 = this.#narrow[1]
    const narrow2 = this.#narrow[2]
    let crowd = 0
    let passed = 0
    let inside0 = 0
    let inside1 = 0
    let inside2 = 0
    let over = 0
    let full = 0
    let since = lo
    for (let k = nextBit(marks, lo); k >= 0; k = nextBit(marks, k + 1)) {
      if (over > 0) violation += broken.floor * over * (k - since)
      if (full > 0) crowd += full * (k - since)
      since = k
      if (hands[k]! > spare) violation += broken.hands * (0.5 + hands[k]! - spare)
      inside0 += rise0[k]!
      inside1 += rise1[k]!
      inside2 += rise2[k]!
      full = Math.max(0, inside0 / floor0 - ROOMY) + Math.max(0, inside1 / floor1 - ROOMY) + Math.max(0, inside2 / floor2 - ROOMY)
      over = Math.max(0, inside0 / floor0 - most) + Math.max(0, inside1 / floor1 - most) + Math.max(0, inside2 / floor2 - most)
      // What stands nearer the mouth than what is reached for is in the way, even where a lane is left.
      if (lanes1[k]! > 0) {
        const through = inside1 - started1[k]!
        passed += through / floor1
        if (through > narrow1 + 1e-9) violation += 2 + (broken.lane * (through - narrow1)) / floor1
      }
      if (lanes2[k]! > 0) {
        const through = inside2 - started2[k]!
        passed += through / floor2
        if (through > narrow2 + 1e-9) violation += 2 + (broken.lane * (through - narrow2)) / floor2
      }
      hands[k] = 0
      rise0[k] = 0
      rise1[k] = 0
      rise2[k] = 0
      started1[k] = 0
      started2[k] = 0
      lanes1[k] = 0
      lanes2[k] = 0
    }
    marks.fill(0)
    const gap = rules.settleIn.minutes / rules.tick
    for (const f of this.#falls) {
      if (!placed[f]) continue
      for (const c of this.#crusts) {
        const d = s[c]! - s[f]!
        // Set in among crusts that bake already is no better: not forbidden, but avoided.
        if (placed[c] && d < 0 && e[c]! > s[f]!) cost += AMONG_CRUSTS
        if (placed[c] && d >= 0 && d < gap) violation += broken.order * (0.3 + (0.7 * Math.min(d + 1, gap - d)) / gap)
      }
    }
    let refused = 0
    for (let i = 0; i < this.#refusals.length; i++) refused += this.#refused(this.#refusals[i]!) ? 1 : 0
    violation += broken.refusal * refused
    cost += this.tight * (crowd + IN_THE_WAY * passed)
    this.cost = cost
    this.violation = violation
    return cost + strict * violation <= limit
  }

  /** How many receipts want the door kept shut at each tick. */
  #keepShut(): void {
    const at = this.#shutAt
    at.fill(0)
    for (let i = 0; i < this.#mindful.length; i++) {
      const u = this.#mindful[i]!
      if (!this.placed[u]) continue
      const end = Math.min(this.ticks, this.s[u]! + this.#shut[u]!)
      for (let k = Math.max(0, this.s[u]! + 1); k < end; k++) at[k]!++
    }
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

  #hotBlocked(hotEnd: number): number {
    let ticks = 0
    for (const b of this.#blocked) {
      const from = Math.max(this.#ready, Math.ceil((b.from - this.phase) / rules.tick))
      ticks += Math.max(0, Math.min(hotEnd, Math.ceil((b.to - this.phase) / rules.tick)) - from)
    }
    return ticks
  }

  #refused(r: Refused): boolean {
    if (!this.placed[r.job]) return false
    const t = this.s[r.job]!
    if (r.others.length === 0) return t === r.at
    const end = this.e[r.job]!
    for (let i = 0; i < r.others.length; i++) {
      const v = r.others[i]!
      const s = this.s[v]!
      const e = this.e[v]!
      if (!this.placed[v] || s >= end || e <= t) return false
      if ((r.past[i]! & ~pastOf(t, end, s, e)) !== 0) return false
    }
    return true
  }

  /**
   * What would be burned while it waits for what stands in its way is let out: that is drawn with it as soon as all of it is done. No
   * sooner can it be reached, burned or not.
   */
  #letOut(u: number, clock0: number): void {
    if (!this.hemmedIn(u) && (this.#stays[u] || this.#offDose[u]! >= 0)) return
    const front = this.#inTheWay(u)
    let t = Math.max(this.#own[4 * u]!, this.s[u]! + 1, this.#now)
    for (const v of front) t = Math.max(t, this.#own[4 * v]!)
    t = this.#openFrom(t, this.ticks - 1)
    for (const v of front) {
      if (this.e[v]! <= t) continue
      this.#leaveIn(v)
      this.#drawAt(v, t)
      this.#offDose[v] = Math.abs(this.#doseBy(v, t) - this.#wanted[v]!)
    }
    if (t <= this.lastDraw(u)) {
      this.#drawAnew(u, clock0)
      return
    }
    this.#leaveIn(u)
    this.#drawAt(u, t)
    this.#offDose[u] = -1
  }

  /** True where a job is drawn as soon as what stands in its way in the oven is done, and could not be sooner. */
  heldBack(u: number): boolean {
    const at = this.e[u]!
    return this.#inTheWay(u).some((v) => this.e[v] === at && this.#own[4 * v]! >= at)
  }

  /** What has to be out of the oven for a job to be drawn: what stands in its way, and in the way of that. */
  #inTheWay(u: number): number[] {
    const front = [...this.#inFront[u]!]
    for (let i = 0; i < front.length; i++)
      for (const v of this.#inFront[front[i]!]!) if (v !== u && !front.includes(v)) front.push(v)
    return front
  }

  /** The tick by which a dose is had, counted on from one at which part of it is; one past the last where it never is. */
  #fullFrom(tick: number, had: number, wanted: number, a: number, b: number): number {
    const T = this.celsius
    const last = this.ticks - 1
    let dose = had
    let k = tick
    let before = Math.max(0, a * T[k]! + b)
    while (dose < wanted && k < last) {
      k++
      const now = Math.max(0, a * T[k]! + b)
      dose += HALF_TICK * (before + now)
      before = now
    }
    return dose < wanted ? this.ticks : k
  }

  /** The price of what something that stays is wanting of its dose when it is drawn. */
  #priceOfWanting(u: number, t: number): number {
    if (!this.#scant[u] || t >= this.#full[u]!) return 0
    return weights.misfit * (this.#wanted[u]! - this.#doseBy(u, t))
  }

  /** °C·min that a job has had by a tick. */
  #doseBy(u: number, t: number): number {
    const T = this.celsius
    const a = this.#scale[4 * u + this.w[u]!]!
    const b = this.#shift[4 * u + this.w[u]!]! - this.#done[u]!
    let dose = this.#own[4 * u + 1]!
    for (let k = this.#own[4 * u]! + 1; k <= t; k++)
      dose += HALF_TICK * (Math.max(0, a * T[k - 1]! + b) + Math.max(0, a * T[k]! + b))
    return dose
  }

  /** Take back the draw of a job. */
  #leaveIn(u: number): void {
    const was = this.e[u]!
    if (was >= 0 && --this.#openings[was]! === 0) this.#doors[was >> 5]! &= ~(1 << (was & 31))
  }

  #drawAt(u: number, t: number): void {
    this.e[u] = t
    this.#openings[t]!++
    this.#doors[t >> 5]! |= 1 << (t & 31)
  }

  /** Draw one job when that is cheapest, instead of when it was to be drawn so far. */
  #drawAnew(u: number, clock0: number): void {
    this.#leaveIn(u)
    this.#drawAt(u, this.#draw(u, clock0))
  }

  /** True where a job has the dose it needs when it is drawn, as the layout has it. */
  isDone(u: number): boolean {
    return this.#own[4 * u + 1]! >= this.#goal[u]!
  }

  /** What it costs that a job's dough has not risen when it is set in, or has waited too long (`amissBy`). */
  unfitBy(u: number): number {
    const risen = this.#risen[u]
    return risen === undefined ? 0 : amissBy(risen, this.lit + this.phase + this.s[u]! * rules.tick)
  }

  /** Minutes by which a job is drawn later than it is wanted, beyond what the plan that was followed had. */
  laterThanMeant(u: number): number {
    return laterThanMeant({due: this.#due[u]!, was: this.was[u]}, this.lit + this.phase + this.e[u]! * rules.tick)
  }

  /** True where a job is drawn before something in the oven that stands in its way out. */
  hemmedIn(u: number): boolean {
    const others = this.#inFront[u]!
    for (let i = 0; i < others.length; i++) if (this.e[others[i]!]! > this.e[u]!) return true
    return false
  }

  /** The cheapest draw of one job, given the openings of the others. */
  #draw(u: number, clock0: number): number {
    const shutAt = this.#shutAt
    const O = this.#openings
    const awake = this.#awake
    const doors = this.#doors
    const done = this.#own[4 * u]!
    const soonest = Math.max(done, this.s[u]! + 1)
    let first = soonest + this.hold[u]!
    // What stands in its way in the oven is drawn before it, or with it.
    const inFront = this.#inFront[u]!
    for (let i = 0; i < inFront.length; i++) first = Math.max(first, this.e[inFront[i]!]!)
    const due = this.#due[u]!
    const hotFrom = this.#hotFrom[u]!
    const wall = this.#blocked.length > 0 ? this.#wallAfter(Math.max(0, this.s[u]!)) : this.ticks - 1
    const T = this.celsius
    const a = this.#scale[4 * u + this.w[u]!]!
    if (this.#stays[u]) {
      let k = this.#openFrom(Math.max(first, this.#now), wall)
      if (clock0 + k * rules.tick < hotFrom && !(this.#again && this.was[u])) {
        // What is wanted hot stays till then, or as long as it stays hot enough.
        const hot = this.#end[u]! + this.#endMargin - this.#shift[4 * u + this.w[u]!]!
        for (let t = k + 1; t <= wall && a * T[t]! >= hot && clock0 + (t - 1) * rules.tick < hotFrom; t++) if (awake[t]) k = t
      }
      if (O[k]! > 0 && !this.#again) return k
      const at = weights.late * Math.max(0, clock0 + k * rules.tick - due)
      const b = this.#shift[4 * u + this.w[u]!]!
      const least = this.#end[u]! + this.#endMargin
      if (this.#again && this.was[u]) return this.#drawAgain(u, k, wall, clock0)
      // It stays until the door is opened for another, as long as it stays hot and nobody waits for it.
      for (let t = nextBit(doors, k + 1); t >= 0 && t <= wall; t = nextBit(doors, t + 1)) {
        if (!awake[t]) continue
        if (a * T[t]! + b < least) break
        return weights.late * Math.max(0, clock0 + t * rules.tick - due) - at < weights.opening ? t : k
      }
      return k
    }
    const b = this.#shift[4 * u + this.w[u]!]! - this.#done[u]!
    const wanted = this.#wanted[u]!
    const longest = this.#longest[u]!
    let dose = this.#own[4 * u + 1]!
    let before = a * T[done]! + b
    if (before < 0) before = 0
    let best = -1
    let bestCost = Number.POSITIVE_INFINITY
    let bestOff = -1
    const last = Math.min(wall, done + WINDOW - 1)
    // What is in already has its draw alone to end in time.
    const coolest = this.fixed[u] ? this.#end[u]! - this.#done[u]! : Number.NEGATIVE_INFINITY
    for (let t = done; t <= last; t++) {
      if (t > done) {
        let now = a * T[t]! + b
        if (now < 0) now = 0
        dose += HALF_TICK * (before + now)
        before = now
        if (t > done + 1 && dose > longest) break
        if (best >= 0 && a * T[t]! + b < coolest) break
      }
      const off = Math.abs(dose - wanted)
      const over = weights.misfit * off
      if (t > this.#drawBy[u]! && best >= 0) break
      // It only gets dearer from here on.
      if (over >= bestCost && dose >= wanted && clock0 + t * rules.tick >= hotFrom) break
      if (t < first || !awake[t] || t < this.#now) continue
      const late = clock0 + t * rules.tick - due
      const early = hotFrom - (clock0 + t * rules.tick)
      const was = this.#again ? this.was[u] : undefined
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
    this.#offDose[u] = bestOff
    if (best >= 0) return best
    // Rather than be burned it waits for nothing.
    return this.#openFrom(Math.max(soonest, this.#now), wall)
  }

  /**
   * The cheapest draw of what may stay, on a day planned again: as soon as it may be, when the door is open for another, or when it was to
   * be drawn.
   */
  #drawAgain(u: number, first: number, wall: number, clock0: number): number {
    const T = this.celsius
    const a = this.#scale[4 * u + this.w[u]!]!
    const coolest = this.#end[u]! + this.#endMargin - this.#shift[4 * u + this.w[u]!]!
    const {draw} = this.was[u]!
    const meant = Math.round((draw - clock0) / rules.tick)
    let best = first
    let least = this.#priceAgain(u, first, draw, clock0)
    if (meant > first && meant <= wall && this.#awake[meant] && a * T[meant]! >= coolest) {
      const price = this.#priceAgain(u, meant, draw, clock0)
      if (price < least) {
        least = price
        best = meant
      }
    }
    if (this.#scant[u]) {
      const full = this.#full[u]!
      if (full > first && full <= wall && this.#awake[full] && a * T[full]! >= coolest) {
        const price = this.#priceAgain(u, full, draw, clock0)
        if (price < least) {
          least = price
          best = full
        }
      }
    }
    for (let t = nextBit(this.#doors, first + 1); t >= 0 && t <= wall; t = nextBit(this.#doors, t + 1)) {
      if (a * T[t]! < coolest) break
      if (!this.#awake[t]) continue
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
      weights.late * Math.max(0, clock - this.#due[u]!) +
      weights.early * Math.max(0, this.#hotFrom[u]! - clock) +
      weights.moved * Math.abs(clock - meant) +
      this.#priceOfWanting(u, t) +
      (this.#openings[t]! > 0 ? 0 : weights.opening + weights.shut * this.#shutAt[t]!)
    )
  }

  /** True where a job as it is set in and drawn would keep its limits, with what is kept inside them, in a part of the floor (0 back … 2 mouth). */
  fits(u: number, z: number): boolean {
    const T = this.celsius
    const a = this.#scale[4 * u + z]!
    const shift = this.#shift[4 * u + z]!
    const start = Math.max(0, this.s[u]!)
    const end = this.e[u]!
    const t = a * T[start]! + shift
    if (t < this.#lowest[u]! || t > this.#high[u]! || a * T[end]! + shift < this.#end[u]! + this.#endMargin) return false
    const b = shift - this.#done[u]!
    let dose = 0
    let last = 0
    for (let k = start + 1; k <= end; k++) {
      last = HALF_TICK * (Math.max(0, a * T[k - 1]! + b) + Math.max(0, a * T[k]! + b))
      dose += last
    }
    const goal = this.#needed[u]!
    if (dose < goal * (1 - rules.doseWanting)) return false
    return this.#stays[u] === 1 || dose <= this.#longest[u]! || dose - last < goal
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
    const order = Array.from({length: this.n}, (_, u) => u).sort((a, b) => this.#best[b]! - this.#best[a]! || a - b)
    this.#wake()
    for (const u of order) {
      if (this.fixed[u] || !this.possible(u)) continue
      let at = -1
      let off = Number.POSITIVE_INFINITY
      const w = this.wheres[u]![0]!
      for (let k = Math.max(this.from[u]!, this.#now); k <= this.to[u]!; k++) {
        if (!this.#awake[k]) continue
        const d = Math.abs(this.#scale[4 * u + w]! * this.celsius[k]! + this.#shift[4 * u + w]! - this.#best[u]!)
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
    this.#bake(u)
    return this.#own[4 * u]!
  }

  /** The last tick at which a job may be drawn, from when it was last judged to be done: before it is over-baked, or what stays grows too cold. */
  lastDraw(u: number): number {
    const T = this.celsius
    const a = this.#scale[4 * u + this.w[u]!]!
    const b = this.#shift[4 * u + this.w[u]!]!
    let t = this.#own[4 * u]!
    if (this.#stays[u]) {
      while (t + 1 < this.ticks && a * T[t + 1]! + b >= this.#end[u]! + this.#endMargin) t++
      return t
    }
    let dose = this.#own[4 * u + 1]!
    const heat = (k: number): number => Math.max(0, a * T[k]! + b - this.#done[u]!)
    while (t + 1 < this.ticks && dose + HALF_TICK * (heat(t) + heat(t + 1)) <= this.#longest[u]!) {
      dose += HALF_TICK * (heat(t) + heat(t + 1))
      t++
    }
    return t
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

/** For each job that is in the oven already, the others in it that stand in its way out. */
function inFront(jobs: readonly Job[], grid: FloorGrid): number[][] {
  const bodies = jobs.map(({dish, stood}) => (stood ?? []).map((v) => bodyOf(dish.vessel, v)))
  const lies = (v: number, u: number): boolean =>
    bodies[v]!.some((other) => bodies[u]!.some((body) => blocks(grid.ground, other, body)))
  return jobs.map((job, u) =>
    job.since === null ? [] : jobs.flatMap((other, v) => (v !== u && other.since !== null && lies(v, u) ? [v] : [])),
  )
}

/** Share of what it could have that something in the oven keeps whatever is set in after it, and the price of all that it is wanting. */
const MOST_OF = 0.95
const UNDONE = missing / 2
/** Minutes that a dough set in before it can be bread counts as earlier than it is: a minute is as little bread as an hour. */
const UNRISEN_FROM = 20
/** All of the floor; no whole number, as `cost`. */
const WHOLE = 1 - 1e-9
const HALF_TICK = rules.tick / 2
/** On a day planned again a draw is moved only where that saves so much, if it is about as well baked at its old time. */
const KEPT = 3
const ABOUT = 0.1
/** Share of a part of the floor from which it is thought crowded. */
const ROOMY = 0.8
const EASY = 0.4
/** The same where the true floor is asked: a floor fitted to the last hand's breadth has no room for a day that runs late. */
const ROOM = 1
/** Price of setting in what falls from very hot while white bread or pies bake (the 1829 order the other way about). */
export const AMONG_CRUSTS = 30
/** A stay is long from so many ticks, and it costs so much for each part of the floor by which it is nearer the mouth than the back. */
const LONG = 24
const DEEPER = 1.5

/** What it costs that a long bake stands nearer the mouth than the back: no rule, but the heat lasts longest there. */
export function deeperBy(start: number, end: number, where: number): number {
  return end - start >= LONG && where < 3 ? DEEPER * where : 0
}

/** Weight of floor that stands in the way at an opening, against a crowded tick. */
const IN_THE_WAY = 5
/** Price of a broken limit when layouts are compared: no saving is worth one. */
export const HARD = 60
/** And when dishes are left out so that nothing stays broken. */
export const FIRM = 500
