import {passesMouth} from '../scale/floor.js'
import type {Dish, HeatNeed, Placed} from '../scale/types.js'
import {type Curve, celsiusAt, curveOf, doseNeeded, doseTable, heatTable, mostDose, whereIndex} from './curve.js'
import {amissBy, risenWithin, type Window} from './dough.js'
import type {FloorGrid} from './floor-grid.js'
import {type Followed, followed} from './followed.js'
import {handlingOf, wake} from './hands.js'
import {staysIn} from './keeps.js'
import {phrase} from './phrases.js'
import {rules, weights} from './rules.js'
import {mostOnFloor} from './seats.js'
import type {Day, FiringOption, Phrase, PlanProblem} from './types.js'

/**
 * The compact model: on one curve, every dish has a list of *choices* (set in at tick s, drawn at tick e, in one part of the floor),
 * each with its cost; the floor, the hands and the lanes limit which can be taken together; every opening of the door costs once.
 * The same model as a mixed-integer program is `bench/plan-milp.ts`; `docs/planning.md` states it.
 */
export interface Job {
  readonly dish: Dish
  /** First vessel of this part, and how many vessels: a dish too large for the floor is set in in parts. */
  readonly first: number
  readonly count: number
  /** m² of floor: its share of the usable floor, by how many such vessels fill it. */
  readonly area: number
  /** Minutes of hands to set it in, or to draw it. */
  readonly handling: number
  /** Set in very hot to fall (1), a crust that waits half an hour for those (2), or neither (0). */
  readonly order: 0 | 1 | 2
  /** Minutes after midnight; null where nobody waits for it. */
  readonly due: number | null
  /** Minutes after it is due beyond which it is of little use: infinite where it could not be had sooner, or the day has begun. */
  readonly bears: number
  /** Where not all can be had in time: leaving it out is priced by whom it feeds, and so is each minute beyond what is borne. */
  readonly weighed?: boolean
  /** Already set in at this clock time. */
  readonly since: number | null
  /** Where it stands when already in: 0 … 3. */
  readonly stands: number
  /** Its vessels' places when already in. */
  readonly stood?: readonly Placed[]
  /** What the plan has of it that was being followed, when a day is planned again. */
  readonly was?: Followed
  /** When its dough is fit to be set in, on a day that has begun. */
  readonly risen?: Window
}

/** Choices of one job on one curve, in ticks after the first tick of the curve's clock; sorted by nothing in particular. */
export interface Choices {
  readonly s: Int32Array
  readonly e: Int32Array
  readonly where: Uint8Array
  /** °C·min. */
  readonly misfit: Float64Array
  /** m²·h of hot floor used, until the dish is done. */
  readonly used: Float64Array
  /** Earliest tick the dish is done. */
  readonly first: Int32Array
}

/** A curve with the choices on it, at one phase of the 5-minute clock against the lighting. */
export interface Program {
  readonly index: number
  readonly option: FiringOption
  readonly curve: Curve
  /** Minutes from lighting to tick 0 … 4: lit + phase is a clock tick. */
  readonly phase: number
  /** Number of ticks. */
  readonly ticks: number
  readonly choices: readonly Choices[]
  /** kg over all fires. */
  readonly wood: number
  /** m²·h of hot floor there is. */
  readonly hotFloor: number
  /** Spans of minutes after lighting in which a further fire burns and soaks. */
  readonly blocked: ReadonlyArray<{readonly from: number; readonly to: number}>
}

/** A program at one lighting time: what the search works on. */
export interface Model {
  readonly program: Program
  /** Clock minutes of lighting, and of tick 0. */
  readonly lit: number
  readonly clock0: number
  readonly ticks: number
  readonly jobs: readonly Job[]
  readonly floor: readonly [number, number, number]
  readonly floorTotal: number
  /** Share of a part's floor that is kept free as a lane while something behind it is reached. */
  readonly lane: number
  /** Hand minutes in one opening. */
  readonly hands: number
  /** True where nothing is set in very hot to fall while a crust bakes (`Job.order`), which is no rule but better. */
  readonly apart?: boolean
  /** Choices allowed at this lighting time, cheapest first. */
  readonly s: readonly Int32Array[]
  readonly e: readonly Int32Array[]
  readonly where: readonly Uint8Array[]
  readonly cost: readonly Float64Array[]
  /** Index of each choice in the program's list. */
  readonly origin: readonly Int32Array[]
  /** Wood and idle floor before any dish: added to every total. */
  readonly constant: number
  readonly opening: number
}

/** Where the day asks for a dish. */
export function lineOf({items}: Day, {file, title, wantedBy}: Dish): {file: string; line: number; column: number} {
  // One receipt may be asked for on several lines.
  const mine = items.filter((one) => one.file === file)
  const named = mine.filter((one) => title === one.title || title.startsWith(`${one.title} (`))
  const item = named.find((one) => one.wantedBy === wantedBy) ?? named[0] ?? mine[0]
  return {file: 'day.md', line: item?.line ?? 1, column: item?.column ?? 1}
}

/** When a dish is wanted, minutes after midnight: null for the kinds that the serving time does not bind. */
export function dueOf(dish: Dish, serve: number): number | null {
  if (dish.wantedBy !== null) return dish.wantedBy
  if (dish.need.overnight || dish.need.startHigh <= rules.slackCelsius) return null
  return serve
}

/** When a dish is meant to be ready: by when it is wanted, else for the meal where it is none of the slack oven's; `unsaid` where nobody said. */
export function meantFor(dish: Dish, serve: number): {readonly by: number | null; readonly unsaid: boolean} {
  const due = dueOf(dish, serve)
  const unsaid = due === null && dish.need.startHigh > rules.slackCelsius
  return {by: unsaid ? serve : due, unsaid}
}

/** When what is eaten hot is wanted, minutes after midnight; −∞ where it is not eaten hot, or nobody waits for it. */
export function hotUntil(dish: Dish | undefined, serve: number): number {
  return dish?.hot ? (dueOf(dish, serve) ?? Number.NEGATIVE_INFINITY) : Number.NEGATIVE_INFINITY
}

/** Which side of the half hour of `rules.settleIn` a dish stands on. */
function orderOf(dish: Dish): 0 | 1 | 2 {
  const {need} = dish
  const r = rules.settleIn
  if (need.falling) return need.startBest >= r.veryHot ? 1 : 0
  return need.startBest >= r.crust && need.minutes.likely >= r.crustMinutes ? 2 : 0
}

/**
 * White bread and pies wait until what is set in very hot to fall has been in half an hour (`rules.settleIn`).
 *
 * @param s When a job is set in, ticks, and `other` when another is.
 * @returns False where one of the two goes in too soon after the other.
 */
export function keepHalfHour(job: Job, s: number, another: Job, other: number): boolean {
  if (job.order === 0 || another.order === 0 || job.order === another.order) return true
  const waits = job.order === 2 ? s - other : other - s
  return waits < 0 || waits >= rules.settleIn.minutes / rules.tick
}

/** Why a vessel cannot go in at all: null where it can. */
export function passes(grid: FloorGrid, dish: Dish): {rule: string; reason: string; words: Phrase} | null {
  const conflict = passesMouth(grid.room, {
    dish: dish.title,
    number: 1,
    footprint: dish.vessel.footprint,
    height: dish.vessel.height,
  })
  if (conflict) {
    const {footprint, height} = dish.vessel
    const narrow = footprint.shape === 'circle' ? footprint.diameter : Math.min(footprint.length, footprint.width)
    const {mouth, vaultHeight} = grid.room
    const [id, size, room] =
      conflict.rule === 'mouth width'
        ? (['mouth width', narrow, mouth.width] as const)
        : conflict.rule === 'mouth height'
          ? (['mouth height', height, mouth.height] as const)
          : (['vault height', height, vaultHeight] as const)
    const words = phrase(id, {
      dishes: {unit: 'dishes', dishes: [dish.id]},
      size: {unit: 'metres', value: size},
      room: {unit: 'metres', value: room},
    })
    return {rule: conflict.rule, reason: conflict.reason, words}
  }
  if (mostOnFloor(grid, dish.vessel) === 0)
    return {
      rule: 'too large',
      reason: `one ${dish.vessel.name} does not fit on this floor`,
      words: phrase('too large', {vessel: dish.vessel.name}),
    }
  return null
}

/**
 * The jobs of a day: one a dish, or several where it fills more than the floor or more than one opening's hands.
 *
 * @param split How many parts each dish is set in in, at least (used when whole dishes do not fit together).
 */
export function jobsOf(problem: PlanProblem, grid: FloorGrid, split: ReadonlyMap<string, number> = new Map()): Job[] {
  const jobs: Job[] = []
  for (const dish of problem.dishes) {
    if (passes(grid, dish)) continue
    const already = problem.done?.set.filter((d) => d.dish === dish.id) ?? []
    let first = 1
    const most = mostOnFloor(grid, dish.vessel)
    const each = grid.area / most
    const due = dueOf(dish, problem.day.serve)
    const bears = due === null || problem.done ? Number.POSITIVE_INFINITY : bearable(problem, dish, due)
    const before = followed(problem, dish.id)
    already.forEach((past, i) => {
      const base = first
      if (past.drawn === null) {
        const zones = past.placed.map((p) => whereIndex(p.zone))
        const stands = zones.length > 0 && zones.every((z) => z === zones[0]) ? zones[0]! : 3
        jobs.push({
          dish,
          first,
          count: past.count,
          area: past.count * each,
          handling: past.count * handlingOf(dish),
          order: orderOf(dish),
          due,
          bears,
          since: past.at,
          stands,
          stood: past.placed.map((v, nth) => ({...v, number: base + nth})),
          ...(before.set[i] ? {was: before.set[i]} : {}),
        })
      }
      first += past.count
    })
    const left = dish.count - (first - 1)
    if (left <= 0) continue
    const byHands = Math.max(1, Math.floor((rules.tick * problem.day.hands) / handlingOf(dish)))
    // Half a floor at most in one part: two parts can still go in and come out together. A floor that is filled is filled at once: its
    // vessels stand closer than parts that are set in one by one.
    const filled = left > most && left <= Math.min(byHands, dish.atOnce ?? 0)
    const inOne = Math.max(...grid.zones.map((zone) => Math.floor((zone * 1.001) / each)))
    const share = inOne > 0 && !problem.done && tooUneven(problem, dish) ? Math.min(inOne, most / 2) : most / 2
    const half = filled ? left : Math.max(1, Math.floor(share))
    const parts = Math.min(left, Math.max(split.get(dish.id) ?? 1, Math.ceil(left / Math.min(half, byHands))))
    const evenly = Array.from({length: parts}, (_, p) => Math.floor(left / parts) + (p < left % parts ? 1 : 0))
    // What is followed keeps its parts, unless it lacks some.
    const kept = before.rest.map((r) => r.count)
    const counts = kept.length >= parts && kept.reduce((sum, c) => sum + c, 0) === left ? kept : evenly
    let at = first
    counts.forEach((count, p) => {
      const was = before.rest[p]
      jobs.push({
        dish,
        first: at,
        count,
        area: Math.min(grid.area * 0.9999999, count * each),
        handling: count * handlingOf(dish),
        order: orderOf(dish),
        due,
        bears,
        since: null,
        stands: 3,
        ...(dish.dough && problem.done ? {risen: risenWithin(problem, dish, was?.load.number, count)} : {}),
        ...(was ? {was} : {}),
      })
      at += count
    })
  }
  return jobs
}

/**
 * Whether there is a fire after which the back and the mouth differ by more than a dish's range, so that it has no place across the floor:
 * it goes in then in parts that stand in one part of the floor each.
 */
function tooUneven({firings, ambient}: PlanProblem, {need}: Dish): boolean {
  const range = need.startHigh - need.startLow
  const kept = Math.min(rules.inHandCelsius, range / 4) + Math.min(rules.marginCelsius, range / 4)
  return firings.some(({forecast}) => {
    const curve = curveOf(forecast, ambient ?? 20)
    const share = (need.startBest - curve.ambient) / Math.max(1, curve.readyCelsius - curve.ambient)
    return (Math.max(...curve.offset) - Math.min(...curve.offset)) * Math.min(1, share) > range - kept
  })
}

/** Parts of the floor a job may stand in. */
export function wheresOf(job: Job, grid: FloorGrid): number[] {
  if (job.since !== null) return [job.stands]
  const byPlace = {back: [0, 1], middle: [1, 0, 2], mouth: [2, 1], any: [0, 1, 2]}[job.dish.place]
  const out = byPlace.filter((z) => job.area <= grid.zones[z as 0 | 1 | 2] * 1.001)
  if (out.length === 0 || job.area > 0.2 * grid.area) out.push(3)
  return out
}

/** What narrows a job's choices. */
export interface ChoiceLimits {
  /** A choice that is offered, if it keeps the rules, even where the list is coarser; with `only`, nothing else is. */
  readonly must?: {readonly s: number; readonly e: number; readonly w: number}
  readonly only?: boolean
  /** No choice at all. */
  readonly none?: boolean
  /** Not set in before this tick. */
  readonly from?: number
}

/**
 * Everything one job could do on one curve, before the clock is known.
 *
 * @param margins False gives the rules' own limits; true stays a little inside them (see `rules.marginCelsius`).
 */
export function choicesOf(
  job: Job,
  program: Omit<Program, 'choices'>,
  grid: FloorGrid,
  margins: boolean,
  sinceMinutes: number | null,
  limits: ChoiceLimits = {},
): Choices {
  const {curve, phase} = program
  const {must, only, from: earliest = 0} = limits
  const wheres = limits.none ? [] : only && must ? [must.w] : wheresOf(job, grid)
  if (must && !limits.none && !wheres.includes(must.w)) wheres.push(must.w)
  offered.clear()
  for (const w of wheres) {
    const here = new Offering(job, program, margins, limits, w)
    if (sinceMinutes !== null) {
      const k = Math.floor((sinceMinutes - phase) / rules.tick)
      here.from(k, sinceMinutes, false)
      // What has to be has been judged by the parts of the floor in which its vessels stand, which says more.
      if (must ? offered.drawnAt(must.e) : offered.count > 0) continue
      // It is in the oven, and no draw keeps every rule: it stays as long as that does it good.
      here.asLongAsGood(k, sinceMinutes)
      continue
    }
    const first = Math.max(0, earliest, Math.ceil((curve.ready - phase) / rules.tick - 1e-9))
    for (let k = only && must ? Math.max(first, must.s) : first; k < program.ticks; k++) {
      const from = k * rules.tick + phase
      if (!program.blocked.some((b) => from >= b.from && from < b.to)) here.from(k, from, true)
      if (only && must) break
    }
  }
  return offered.taken()
}

/** Choices as they are found, in arrays that are used again for the next job: making them anew was a tenth of a plan's time. */
class Offered {
  count = 0
  #s = new Int32Array(1024)
  #e = new Int32Array(1024)
  #where = new Uint8Array(1024)
  #misfit = new Float64Array(1024)
  #used = new Float64Array(1024)
  #first = new Int32Array(1024)

  clear(): void {
    this.count = 0
  }

  add(s: number, e: number, where: number, misfit: number, used: number, first: number): void {
    const n = this.count++
    if (n === this.#s.length) this.#grow()
    this.#s[n] = s
    this.#e[n] = e
    this.#where[n] = where
    this.#misfit[n] = misfit
    this.#used[n] = used
    this.#first[n] = first
  }

  /** Whether one of them is drawn at a tick. */
  drawnAt(e: number): boolean {
    return this.#e.subarray(0, this.count).includes(e)
  }

  taken(): Choices {
    const n = this.count
    return {
      s: this.#s.slice(0, n),
      e: this.#e.slice(0, n),
      where: this.#where.slice(0, n),
      misfit: this.#misfit.slice(0, n),
      used: this.#used.slice(0, n),
      first: this.#first.slice(0, n),
    }
  }

  #grow(): void {
    const twice = <T extends Int32Array | Uint8Array | Float64Array>(old: T, made: T): T => {
      made.set(old)
      return made
    }
    const size = 2 * this.#s.length
    this.#s = twice(this.#s, new Int32Array(size))
    this.#e = twice(this.#e, new Int32Array(size))
    this.#where = twice(this.#where, new Uint8Array(size))
    this.#misfit = twice(this.#misfit, new Float64Array(size))
    this.#used = twice(this.#used, new Float64Array(size))
    this.#first = twice(this.#first, new Int32Array(size))
  }
}

const offered = new Offered()

/** What one job could do in one part of the floor, on one curve. */
class Offering {
  readonly #job: Job
  readonly #program: Omit<Program, 'choices'>
  readonly #limits: ChoiceLimits
  readonly #where: number
  readonly #margins: boolean
  readonly #low: number
  readonly #high: number
  readonly #end: number
  readonly #dose: number
  readonly #usual: number
  readonly #longest: number
  readonly #stays: boolean
  /** The dose so far and the heat, a value a minute after lighting; hours of hot floor. */
  readonly #table: Float64Array
  readonly #heats: Float64Array
  readonly #hot: Float64Array
  /** From when on cooked food no longer keeps warm there, minutes after lighting. */
  readonly #coldFrom: number
  /** Minute by which the dose of the last set-in that was tried is reached: a later one reaches its own no sooner. */
  #reached = 0

  constructor(job: Job, program: Omit<Program, 'choices'>, margins: boolean, limits: ChoiceLimits, where: number) {
    const {need} = job.dish
    const {curve} = program
    const inside = margins ? rules.marginCelsius : 0
    const tight = Math.min(inside, Math.max(0, (need.startHigh - need.startLow) / 4))
    this.#job = job
    this.#program = program
    this.#limits = limits
    this.#where = where
    this.#margins = margins
    this.#low = need.startLow + tight
    this.#high = need.startHigh - tight
    this.#end = need.endLow + (margins ? Math.min(1, inside) : 0)
    this.#dose = doseNeeded(need)
    this.#usual = doseNeeded(need, need.minutes.likely)
    this.#longest = mostDose(need)
    this.#stays = staysIn(need)
    this.#table = doseTable(curve, where, need.done)
    this.#heats = heatTable(curve, where)
    this.#hot = hotTable(curve)
    this.#coldFrom = need.done >= rules.holdCelsius ? lastAbove(curve, where) : Number.POSITIVE_INFINITY
  }

  /**
   * Offer every draw of what is set in at a tick.
   *
   * @param from That tick in minutes after lighting; of what is in the oven the very minute.
   * @param fresh False where it is in the oven already.
   */
  from(k: number, from: number, fresh: boolean): void {
    const {need} = this.#job.dish
    const celsius = Number.isInteger(from) ? this.#heats[from]! : celsiusAt(this.#program.curve, this.#where, from)
    if (fresh && (celsius < this.#low || celsius > this.#high)) return
    const table = this.#table
    const {ticks, phase, blocked} = this.#program
    const {must, only} = this.#limits
    const wall =
      blocked.length === 0 ? Number.POSITIVE_INFINITY : (blocked.find((b) => b.to > from)?.from ?? Number.POSITIVE_INFINITY)
    const base = this.#doseBy(from)
    const more = this.#margins ? 1 + rules.marginDose : 1
    const goal = base + this.#dose * more
    if (table[table.length - 1]! < goal) return
    let reached = Math.max(this.#reached, Math.max(0, Math.floor(from)))
    while (table[reached]! < goal) reached++
    this.#reached = reached
    const first = Math.max(k + 1, Math.ceil((reached - phase) / rules.tick - 1e-9))
    const best = Math.abs(celsius - need.startBest) * Math.min(need.minutes.likely, rules.misfitMinutes)
    const musted = must && must.s === k && must.w === this.#where && this.#enough(must.e, first, base) ? must.e : -1
    if (only) {
      if (musted >= 0) this.#offer(k, musted, first, from, wall, base, goal, base + this.#usual * more, fresh ? best : 0)
      return
    }
    // Long stays are offered less finely the longer they last.
    let met = false
    for (let t = first, n = 0; t < ticks; t += n < 6 ? 1 : 6, n++) {
      if (!this.#offer(k, t, first, from, wall, base, goal, base + this.#usual * more, fresh ? best : 0)) break
      if (t === musted) met = true
    }
    if (musted >= 0 && !met) this.#offer(k, musted, first, from, wall, base, goal, base + this.#usual * more, fresh ? best : 0)
  }

  /** Offer the one draw of what is in the oven and cannot keep every rule. */
  asLongAsGood(k: number, since: number): void {
    const {phase} = this.#program
    const {must} = this.#limits
    const table = this.#table
    const base = this.#doseBy(since)
    const goal = base + Math.min(this.#dose, worthStaying(table[table.length - 1]! - base, this.#dose))
    const good = table.findIndex((d) => d >= goal)
    const to = must?.e ?? Math.max(k + 1, Math.ceil((good - phase) / rules.tick - 1e-9))
    const got = this.#doseBy(to * rules.tick + phase)
    const off = this.#stays ? 0 : Math.abs(got - base - this.#usual * (this.#margins ? 1 + rules.marginDose : 1))
    offered.add(k, to, this.#where, off, this.#usedBy(since, to * rules.tick + phase), to)
  }

  /** @returns False where that draw, and every later one, breaks a rule. */
  #offer(
    k: number,
    t: number,
    first: number,
    from: number,
    wall: number,
    base: number,
    goal: number,
    wanted: number,
    best: number,
  ): boolean {
    const {phase} = this.#program
    const to = t * rules.tick + phase
    if (to > wall) return false
    const celsius = to < this.#heats.length ? this.#heats[to]! : celsiusAt(this.#program.curve, this.#where, to)
    if (celsius < this.#end) return false
    if (to - this.#coldFrom > rules.coldMinutes) return false
    const got = this.#doseBy(to)
    if (!this.#stays && t - first > rules.staySlack / rules.tick && got > base + this.#longest) return false
    const {enough} = this.#job.dish.need
    // What stays may have more than it needs, but not less for nothing.
    const off = this.#stays
      ? enough === undefined
        ? 0
        : Math.max(0, wanted - got)
      : enough === undefined
        ? Math.max(0, got - goal)
        : Math.abs(got - wanted)
    // A dish that is done and only waits puts the heat under it to no use.
    const busy = Math.min(to, first * rules.tick + phase)
    offered.add(k, t, this.#where, best + off, this.#usedBy(from, busy), first)
    return true
  }

  #enough(t: number, first: number, base: number): boolean {
    return t >= first || this.#doseBy(t * rules.tick + this.#program.phase) - base >= this.#dose * (1 - rules.doseWanting)
  }

  #doseBy(minute: number): number {
    const table = this.#table
    return table[Math.max(0, Math.min(table.length - 1, minute))]!
  }

  /** m²·h of hot floor between two minutes. */
  #usedBy(from: number, busy: number): number {
    const hot = this.#hot
    return (
      this.#job.area *
      (hot[Math.min(hot.length - 1, Math.floor(busy))]! - hot[Math.max(0, Math.min(hot.length - 1, Math.ceil(from)))]!)
    )
  }
}

/** The dose for which a dish that cannot be done is left in: most of what it can still have, or nearly all where that is nearly enough. */
export function worthStaying(most: number, needed: number): number {
  return Math.max(0.97 * most, Math.min(0.99 * needed, 0.995 * most))
}

const hotTables = new WeakMap<Curve, Float64Array>()

/** Hours the floor has been hot since the oven was ready, a value a minute. */
export function hotTable(curve: Curve): Float64Array {
  const found = hotTables.get(curve)
  if (found) return found
  const minutes = Math.floor(curve.end)
  const out = new Float64Array(minutes + 1)
  for (let m = 1; m <= minutes; m++)
    out[m] = out[m - 1]! + (m > curve.ready && celsiusAt(curve, 3, m - 0.5) >= rules.hotCelsius ? 1 / 60 : 0)
  hotTables.set(curve, out)
  return out
}

/** Last minute at which cooked food standing there still keeps at the safe holding temperature. */
function lastAbove(curve: Curve, where: number): number {
  let m = Math.floor(curve.end)
  while (m > 0 && celsiusAt(curve, where, m) < rules.holdCelsius) m -= rules.tick
  return m
}

/** Spans in which further fires occupy the oven, minutes after lighting. */
export function blockedBy(option: FiringOption): {from: number; to: number}[] {
  return (option.further ?? []).map((f) => ({from: f.minutes, to: f.minutes + f.firing.burn + f.firing.soak}))
}

/** kg of wood over all fires. */
export function woodOf(option: FiringOption): number {
  return option.firing.wood + (option.further ?? []).reduce((sum, f) => sum + f.firing.wood, 0)
}

/** Minutes from lighting to the first tick of the 5-minute clock; 0 while the fire is not lit, since it is lit on a tick. */
export function phaseOf(lit: number | null): number {
  return lit === null ? 0 : ((-lit % rules.tick) + rules.tick) % rules.tick
}

/** Ticks that a curve covers. */
export function ticksOf(curve: Curve, phase: number): number {
  return Math.floor((curve.end - phase) / rules.tick) + 1
}

/** Prepare one firing option: its curve and every job's choices on it. */
export function programOf(
  problem: PlanProblem,
  index: number,
  jobs: readonly Job[],
  grid: FloorGrid,
  lit: number | null,
  margins: boolean,
  option: FiringOption = problem.firings[index]!,
  limits: ReadonlyArray<(ChoiceLimits & {readonly exact?: boolean}) | undefined> = [],
): Program {
  const curve = curveOf(option.forecast, problem.ambient ?? 20)
  const phase = phaseOf(lit)
  const hot = hotTable(curve)
  const blocked = blockedBy(option)
  let hotHours = hot[hot.length - 1]!
  for (const b of blocked)
    hotHours -= Math.max(0, hot[Math.min(hot.length - 1, Math.floor(b.to))]! - hot[Math.min(hot.length - 1, Math.floor(b.from))]!)
  const base = {
    index,
    option,
    curve,
    phase,
    ticks: ticksOf(curve, phase),
    wood: woodOf(option),
    hotFloor: hotHours * grid.area,
    blocked,
  }
  // Dishes alike in everything the choices read share them.
  const memo = new Map<string, Choices>()
  const choices = jobs.map((job, u) => {
    const limit = limits[u]
    const since = job.since === null ? null : job.since - (lit ?? 0)
    const key = JSON.stringify([job.dish.need, job.area, job.dish.place, since, job.stands, limit])
    let c = memo.get(key)
    if (!c) {
      c = choicesOf(job, base, grid, margins && !limit?.exact, since, limit)
      memo.set(key, c)
    }
    return c
  })
  return {...base, choices}
}

/** True where the baker is asleep. */
export function isNight(problem: PlanProblem, clock: number): boolean {
  const m = ((clock % 1440) + 1440) % 1440
  return m >= rules.nightFrom || m < wake(problem)
}

/** People whom what a job makes is to feed, by the likely figure. */
export function feedsOf({dish, count}: Pick<Job, 'dish' | 'count'>): number {
  return (dish.feeds.likely * count) / Math.max(1, dish.count)
}

/** Minutes late. */
export function lateness(job: Job, drawn: number): number {
  return job.due === null ? 0 : Math.max(0, drawn - job.due)
}

/** What so many minutes late cost, and beyond what is borne. */
export function priceOfLate(late: number, bears: number): number {
  return weights.late * late + (late > bears ? weights.tooLate * (late - bears) : 0)
}

/** Minutes late beyond which a job's lateness is dearer: infinite where all may yet be had in time. */
export function dearFrom({weighed, bears}: Job): number {
  return weighed ? bears : Number.POSITIVE_INFINITY
}

/** Minutes after it is due that a dish may come before it is of little use; from when it could be had at the soonest, if that is later. */
export function bearable(problem: PlanProblem, dish: Dish, due: number): number {
  const soonest = soonestOf(problem, dish)
  return Number.isFinite(soonest) ? rules.bearable + Math.max(0, soonest - due) : Number.POSITIVE_INFINITY
}

/** When a dish could be had at the soonest, with nothing else in the oven and any fire, minutes after midnight; infinite if never. */
export function soonestOf({day, firings, ambient}: PlanProblem, {need}: Dish): number {
  return day.fireFrom + Math.min(...firings.map(({forecast}) => soonestDone(need, curveOf(forecast, ambient ?? 20))))
}

const soonestOn = new WeakMap<HeatNeed, WeakMap<Curve, number>>()

/** Minutes after lighting at which a dish is done at the soonest; infinite if never. */
function soonestDone(need: HeatNeed, curve: Curve): number {
  const mine = soonestOn.get(need) ?? new WeakMap<Curve, number>()
  soonestOn.set(need, mine)
  const known = mine.get(curve)
  if (known !== undefined) return known
  const dose = doseNeeded(need)
  let soonest = Number.POSITIVE_INFINITY
  for (const where of [0, 1, 2]) {
    const table = doseTable(curve, where, need.done)
    let from = Math.ceil(curve.ready)
    while (from < curve.end && celsiusAt(curve, where, from) > need.startHigh) from++
    if (from >= curve.end || celsiusAt(curve, where, from) < need.startLow) continue
    const done = table.findIndex((had, minute) => minute > from && had - table[from]! >= dose)
    if (done > 0) soonest = Math.min(soonest, done)
  }
  mine.set(curve, soonest)
  return soonest
}

/** The model of one program at one lighting time. */
export function modelOf(problem: PlanProblem, program: Program, jobs: readonly Job[], grid: FloorGrid, lit: number): Model {
  const clock0 = lit + program.phase
  const now = problem.done?.now ?? Number.NEGATIVE_INFINITY
  const night = new Uint8Array(program.ticks)
  for (let k = 0; k < program.ticks; k++) night[k] = isNight(problem, clock0 + k * rules.tick) ? 1 : 0
  const nowTick = Math.ceil((now - clock0) / rules.tick)
  const S: Int32Array[] = []
  const E: Int32Array[] = []
  const W: Uint8Array[] = []
  const C: Float64Array[] = []
  const O: Int32Array[] = []
  jobs.forEach((job, u) => {
    const c = program.choices[u]!
    const ids = new Uint32Array(c.s.length)
    let count = 0
    const cost = new Float64Array(c.s.length)
    // Where the day is planned again, a move away from the plan that was being followed costs a little.
    const {was} = job
    for (let o = 0; o < c.s.length; o++) {
      const s = c.s[o]!
      const e = c.e[o]!
      if (job.since === null && (s < nowTick || night[s])) continue
      if (job.risen && clock0 + s * rules.tick < job.risen.least) continue
      if (e < nowTick || night[e]) continue
      const drawn = clock0 + e * rules.tick
      cost[o] = weights.misfit * c.misfit[o]! + priceOfLate(lateness(job, drawn), dearFrom(job)) - weights.idle * c.used[o]!
      if (job.risen) cost[o]! += amissBy(job.risen, clock0 + s * rules.tick)
      if (was)
        cost[o]! +=
          weights.moved * (Math.abs(drawn - was.draw) + (job.since === null ? Math.abs(clock0 + s * rules.tick - was.at) : 0))
      ids[count++] = o
    }
    const kept = ids.subarray(0, count).sort((a, b) => cost[a]! - cost[b]! || a - b)
    if (count === 0 && job.since !== null) {
      // It should have been drawn by now, or only at night: it is drawn as soon as it can be.
      const s = Math.floor((job.since - clock0) / rules.tick)
      let e = Math.max(nowTick, s + 1, c.e[0] ?? 0)
      while (e < program.ticks - 1 && night[e]) e++
      S.push(Int32Array.of(s))
      E.push(Int32Array.of(e))
      W.push(Uint8Array.of(job.stands))
      C.push(Float64Array.of(0))
      O.push(Int32Array.of(-1))
      return
    }
    const picked = pick(c, cost, kept)
    S.push(picked.s)
    E.push(picked.e)
    W.push(picked.where)
    C.push(picked.cost)
    O.push(Int32Array.from(kept))
  })
  return {
    program,
    lit,
    clock0,
    ticks: program.ticks,
    jobs,
    floor: grid.zones,
    floorTotal: grid.area,
    lane: laneShare(problem, grid),
    hands: rules.tick * problem.day.hands,
    s: S,
    e: E,
    where: W,
    cost: C,
    origin: O,
    constant: weights.wood * program.wood + weights.idle * program.hotFloor,
    opening: weights.opening,
  }
}

/**
 * A model with some of its choices only.
 *
 * @param kept For each job the indices of those that stay, in their new order: the cheapest first.
 */
export function choosing(model: Model, kept: readonly Uint32Array[], cost: readonly Float64Array[] = model.cost): Model {
  const picked = kept.map((by, u) => pick({s: model.s[u]!, e: model.e[u]!, where: model.where[u]!}, cost[u]!, by))
  const origin = kept.map((by, u) => {
    const from = model.origin[u]!
    const out = new Int32Array(by.length)
    for (let i = 0; i < by.length; i++) out[i] = from[by[i]!]!
    return out
  })
  return {
    ...model,
    s: picked.map((one) => one.s),
    e: picked.map((one) => one.e),
    where: picked.map((one) => one.where),
    cost: picked.map((one) => one.cost),
    origin,
  }
}

interface Picked {
  readonly s: Int32Array
  readonly e: Int32Array
  readonly where: Uint8Array
  readonly cost: Float64Array
}

/** Some of a job's choices, in the order of their indices. In loops: `from` of a typed array goes by an iterator, several times as long. */
function pick({s, e, where}: Omit<Picked, 'cost'>, cost: Float64Array, by: Uint32Array): Picked {
  const n = by.length
  const out: Picked = {s: new Int32Array(n), e: new Int32Array(n), where: new Uint8Array(n), cost: new Float64Array(n)}
  for (let i = 0; i < n; i++) {
    const o = by[i]!
    out.s[i] = s[o]!
    out.e[i] = e[o]!
    out.where[i] = where[o]!
    out.cost[i] = cost[o]!
  }
  return out
}

/** For each job of a model where its choices stand, or how often one has been looked for. */
const choicesAt = new WeakMap<Model, (Map<number, number> | number)[]>()
/** Looked for so often they are better kept by what they are. */
const OFTEN = 4

/** The choice of a job that is set in and drawn at given ticks in a part of the floor; −1 where it has none. */
export function choiceAt(model: Model, u: number, s: number, e: number, where: number): number {
  let known = choicesAt.get(model)
  if (!known) {
    known = model.jobs.map(() => 0)
    choicesAt.set(model, known)
  }
  let mine = known[u]!
  const [ins, outs, parts] = [model.s[u]!, model.e[u]!, model.where[u]!]
  if (typeof mine === 'number') {
    if (mine < OFTEN) {
      known[u] = mine + 1
      for (let o = ins.length - 1; o >= 0; o--) if (ins[o] === s && outs[o] === e && parts[o] === where) return o
      return -1
    }
    mine = new Map()
    for (let o = 0; o < ins.length; o++) mine.set((ins[o]! * model.ticks + outs[o]!) * 4 + parts[o]!, o)
    known[u] = mine
  }
  return mine.get((s * model.ticks + e) * 4 + where) ?? -1
}

/**
 * Openings of the door while a receipt wants it kept shut.
 *
 * @param dishes When each is set in and for how long from then the door is to be kept shut, min.
 * @param openings When the door is opened, min, each once.
 * @returns For each such opening which of the dishes it disturbs and when.
 */
export function disturbances<D extends {readonly at: number; readonly shut: number}>(
  dishes: readonly D[],
  openings: Iterable<number>,
): {readonly dish: D; readonly at: number}[] {
  const all = [...openings].sort((a, b) => a - b)
  return dishes.flatMap((dish) => all.filter((t) => t > dish.at && t < dish.at + dish.shut).map((at) => ({dish, at})))
}

/** Share of the floor's width that a lane to the mouth takes: the mean vessel against the floor's width. */
export function laneShare(problem: PlanProblem, grid: FloorGrid): number {
  const widths = problem.dishes.map((d) =>
    d.vessel.footprint.shape === 'circle' ? d.vessel.footprint.diameter : d.vessel.footprint.width,
  )
  if (widths.length === 0) return 0
  const mean = widths.reduce((a, b) => a + b, 0) / widths.length
  return Math.min(0.5, Math.max(0.1, (mean + grid.ground.rules.clearance) / grid.width))
}

/** Earliest and latest lighting considered, min after midnight. */
export function lighting(problem: PlanProblem): {first: number; last: number} {
  const given = problem.done?.lit ?? null
  if (given !== null) return {first: given, last: given}
  const first = Math.ceil(Math.max(problem.day.fireFrom, problem.done?.now ?? 0) / rules.tick) * rules.tick
  return {first, last: first + 10 * 60}
}
