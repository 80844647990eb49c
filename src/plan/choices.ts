import {ACROSS, type Curve, celsiusAt, doseNeeded, doseTable, heatTable, mostDose} from './curve.js'
import type {FloorGrid} from './floor-grid.js'
import {keptWarm, staysIn} from './keeps.js'
import type {Job, Program} from './model.js'
import {rules} from './rules.js'

/** What a job may do on one curve: when it is set in, where, and when it is drawn (`docs/planning.md`). */

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

/** What is set in at one time, and what follows from that. */
interface SetIn {
  /** Tick, and minutes after lighting: of what is in the oven the very minute. */
  readonly tick: number
  readonly from: number
  /** Minutes after lighting by which the oven is wanted for another fire. */
  readonly wall: number
  /** Dose that the place had by then, °C·min. */
  readonly base: number
  /** First tick at which it is done. */
  readonly first: number
  /** Misfit of the heat that it meets, °C·min. */
  readonly misfit: number
}

/** What one job could do in one part of the floor, on one curve. */
class Offering {
  readonly #curve: Curve
  readonly #phase: number
  readonly #ticks: number
  readonly #blocked: Program['blocked']
  readonly #where: number
  /** When what has to be offered is set in and drawn, ticks, and whether it is to stand here; the draw is −1 where nothing has to be. */
  readonly #mustHere: boolean
  readonly #mustIn: number
  readonly #mustOut: number
  readonly #only: boolean
  readonly #area: number
  /** °C it is best set in at, and minutes for which being off that counts. */
  readonly #startBest: number
  readonly #minds: number
  /** Whether its receipt has a range, within which its likely time is best. */
  readonly #ranged: boolean
  readonly #low: number
  readonly #high: number
  readonly #end: number
  /** Doses, °C·min: the receipt's; the same, and that of its likely time, with what the planner keeps inside; and the most it may have. */
  readonly #dose: number
  readonly #goal: number
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
    const more = margins ? 1 + rules.marginDose : 1
    this.#curve = curve
    this.#phase = program.phase
    this.#ticks = program.ticks
    this.#blocked = program.blocked
    this.#where = where
    this.#mustHere = limits.must?.w === where
    this.#mustIn = limits.must?.s ?? -1
    this.#mustOut = limits.must?.e ?? -1
    this.#only = limits.only ?? false
    this.#area = job.area
    this.#startBest = need.startBest
    this.#minds = Math.min(need.minutes.likely, rules.misfitMinutes)
    this.#ranged = need.enough !== undefined
    this.#low = need.startLow + tight
    this.#high = need.startHigh - tight
    this.#end = need.endLow + Math.min(1, inside)
    this.#dose = doseNeeded(need)
    this.#goal = this.#dose * more
    this.#usual = doseNeeded(need, need.minutes.likely) * more
    this.#longest = mostDose(need) * (where === ACROSS ? (job.spread ?? 1) : 1)
    this.#stays = staysIn(need)
    this.#table = doseTable(curve, where, need.done)
    this.#heats = heatTable(curve, where)
    this.#hot = hotTable(curve)
    this.#coldFrom = keptWarm(need) ? lastAbove(curve, this.#heats) : Number.POSITIVE_INFINITY
  }

  /**
   * Offer every draw of what is set in at a tick.
   *
   * @param from That tick in minutes after lighting; of what is in the oven the very minute.
   * @param fresh False where it is in the oven already.
   */
  from(tick: number, from: number, fresh: boolean): void {
    const celsius = this.#heatAt(from)
    if (fresh && (celsius < this.#low || celsius > this.#high)) return
    const table = this.#table
    const phase = this.#phase
    const blocked = this.#blocked
    const base = this.#doseBy(from)
    const goal = base + this.#goal
    if (table[table.length - 1]! < goal) return
    let reached = Math.max(this.#reached, Math.max(0, Math.floor(from)))
    while (table[reached]! < goal) reached++
    this.#reached = reached
    const first = Math.max(tick + 1, Math.ceil((reached - phase) / rules.tick - 1e-9))
    const best = Math.abs(celsius - this.#startBest) * this.#minds
    const wall = blocked.length === 0 ? undefined : blocked.find((b) => b.to > from)?.from
    const setIn = {tick, from, wall: wall ?? Number.POSITIVE_INFINITY, base, first, misfit: fresh ? best : 0}
    const musted = this.#mustHere && this.#mustIn === tick && this.#enough(setIn, this.#mustOut) ? this.#mustOut : -1
    // Long stays are offered less finely the longer they last.
    let met = false
    for (let t = first, n = 0; !this.#only && t < this.#ticks; t += n < 6 ? 1 : 6, n++) {
      if (!this.#offer(setIn, t)) break
      if (t === musted) met = true
    }
    if (musted >= 0 && !met) this.#offer(setIn, musted)
  }

  /** Offer the one draw of what is in the oven and cannot keep every rule. */
  asLongAsGood(tick: number, since: number): void {
    const phase = this.#phase
    const table = this.#table
    const base = this.#doseBy(since)
    const goal = base + Math.min(this.#dose, worthStaying(table[table.length - 1]! - base, this.#dose))
    const good = table.findIndex((d) => d >= goal)
    const to = this.#mustOut >= 0 ? this.#mustOut : Math.max(tick + 1, Math.ceil((good - phase) / rules.tick - 1e-9))
    const minute = to * rules.tick + phase
    const off = this.#stays ? 0 : Math.abs(this.#doseBy(minute) - base - this.#usual)
    offered.add(tick, to, this.#where, off, this.#usedBy(since, minute), to)
  }

  /** @returns False where that draw, and every later one, breaks a rule. */
  #offer({tick, from, wall, base, first, misfit}: SetIn, t: number): boolean {
    const phase = this.#phase
    const to = t * rules.tick + phase
    if (to > wall || this.#heatAt(to) < this.#end || to - this.#coldFrom > rules.coldMinutes) return false
    const got = this.#doseBy(to)
    if (!this.#stays && t - first > rules.staySlack / rules.tick && got > base + this.#longest) return false
    // A dish that is done and only waits puts the heat under it to no use.
    const busy = Math.min(to, first * rules.tick + phase)
    offered.add(tick, t, this.#where, misfit + this.#offDose(base, got), this.#usedBy(from, busy), first)
    return true
  }

  /** By how much a dose is not what it should be. What stays may have more than it needs, but not less for nothing. */
  #offDose(base: number, got: number): number {
    const usual = base + this.#usual
    if (this.#ranged) return this.#stays ? Math.max(0, usual - got) : Math.abs(got - usual)
    return this.#stays ? 0 : Math.max(0, got - (base + this.#goal))
  }

  #enough({base, first}: SetIn, t: number): boolean {
    return t >= first || this.#doseBy(t * rules.tick + this.#phase) - base >= this.#dose * (1 - rules.doseWanting)
  }

  #heatAt(minute: number): number {
    return this.#heats[minute] ?? celsiusAt(this.#curve, this.#where, minute)
  }

  #doseBy(minute: number): number {
    const table = this.#table
    return table[Math.max(0, Math.min(table.length - 1, minute))]!
  }

  /** m²·h of hot floor between two minutes. */
  #usedBy(from: number, busy: number): number {
    const hot = this.#hot
    return (
      this.#area *
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

/** Last minute at which cooked food still keeps at the safe holding temperature, by the heat of where it stands, a value a minute. */
function lastAbove(curve: Curve, heats: Float64Array): number {
  let m = Math.floor(curve.end)
  while (m > 0 && heats[m]! < rules.holdCelsius) m -= rules.tick
  return m
}
