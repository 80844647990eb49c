import {isNight, type Program} from './model.js'
import {rules} from './rules.js'
import type {PlanProblem} from './types.js'

/** When the door may be opened: by day, and from now on; and where the next fire drives out what is in. */
export class DoorHours {
  /** Whether it may be opened at each tick, and the next at which it may, or the last there is. */
  awake: Uint8Array
  wakes: Int32Array
  /** The first tick that is not past. */
  now = 0
  /** The present, minutes after lighting. */
  #nowMinutes = 0
  readonly #problem: PlanProblem
  readonly #phase: number
  readonly #ticks: number
  readonly #blocked: Program['blocked']
  readonly #awakeAt = new Map<number, {readonly awake: Uint8Array; readonly wakes: Int32Array}>()

  constructor(problem: PlanProblem, {phase, ticks, blocked}: Pick<Program, 'phase' | 'ticks' | 'blocked'>) {
    this.#problem = problem
    this.#phase = phase
    this.#ticks = ticks
    this.#blocked = blocked
    this.awake = new Uint8Array(ticks)
    this.wakes = new Int32Array(ticks)
  }

  /** Reckon with a lighting time, min after midnight. */
  lightAt(lit: number): void {
    const clock0 = lit + this.#phase
    let known = this.#awakeAt.get(lit)
    if (known === undefined) {
      const awake = new Uint8Array(this.#ticks)
      const wakes = new Int32Array(this.#ticks)
      for (let k = this.#ticks - 1, next = k; k >= 0; k--) {
        awake[k] = isNight(this.#problem, clock0 + k * rules.tick) ? 0 : 1
        if (awake[k]) next = k
        wakes[k] = next
      }
      known = {awake, wakes}
      this.#awakeAt.set(lit, known)
    }
    this.awake = known.awake
    this.wakes = known.wakes
    const now = this.#problem.done?.now
    this.#nowMinutes = (now ?? lit) - lit
    this.now = now === undefined ? 0 : Math.max(0, Math.ceil((now - clock0) / rules.tick))
  }

  /** The first tick from one on at which the door may be opened, and `wall` at the latest. */
  openFrom(k: number, wall: number): number {
    return Math.min(wall, this.wakes[Math.min(k, wall)]!)
  }

  /**
   * The tick at which the next fire begins, or the last there is: nothing stays in any longer that is in at tick `k`. What is in already went in
   * after the fires that were lit by now, though its own tick may begin before the oven was ready.
   */
  wallAfter(k: number): number {
    if (this.#blocked.length === 0) return this.#ticks - 1
    let wall = this.#ticks - 1
    for (const b of this.#blocked) {
      const at = Math.floor((b.from - this.#phase) / rules.tick)
      const over = k < this.now && b.from < this.#nowMinutes && Math.floor((b.to - this.#phase) / rules.tick) <= k
      if (!over && Math.ceil((b.to - this.#phase) / rules.tick) > k && at < wall) wall = at
    }
    return wall
  }

  /** Ticks taken up by fires between one tick and another. */
  blockedIn(ready: number, hotEnd: number): number {
    let ticks = 0
    for (const b of this.#blocked) {
      const from = Math.max(ready, Math.ceil((b.from - this.#phase) / rules.tick))
      ticks += Math.max(0, Math.min(hotEnd, Math.ceil((b.to - this.#phase) / rules.tick)) - from)
    }
    return ticks
  }
}
