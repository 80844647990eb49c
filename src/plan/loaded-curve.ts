import {type Curve, sample} from './curve.js'
import {rules} from './rules.js'

/**
 * A day's curve as its loads make it: the empty oven's, less what each load takes from it ever after (`response.ts`), moved along as the
 * loads are. Times are ticks of the curve's clock.
 */
export class LoadedCurve {
  /** °C, a tick. */
  readonly celsius: Float64Array
  /** The same without the loads. */
  readonly empty: Float64Array
  /** The first tick after which it may differ from what was last judged on it. */
  changed = -1
  /** From where each job's pull is reckoned once it changes gently: no more than the lag from where it is set in. */
  readonly far: Int32Array
  readonly #ticks: number
  readonly #phase: number
  readonly #drop: readonly Float64Array[]
  /** So many ticks after a set-in its pull changes gently. */
  readonly #gentle: Int32Array
  readonly #gives: Float64Array
  #lag = 0

  /** @param drop How far each job pulls the curve down, °C, tick by tick after it is set in; empty for what is in the oven already. */
  constructor(curve: Curve, ticks: number, phase: number, drop: readonly Float64Array[]) {
    this.#ticks = ticks
    this.#phase = phase
    this.#drop = drop
    this.celsius = new Float64Array(ticks)
    this.empty = new Float64Array(ticks)
    this.far = new Int32Array(drop.length)
    this.#gentle = Int32Array.from(drop, gentleFrom)
    this.take(curve)
    // An oven hardly hotter than the load can give it little (as `oven/simulate`).
    this.#gives = Float64Array.from(this.empty, (t) => Math.min(1, Math.max(0, (t - 60) / 60)))
  }

  #at(curve: Curve, k: number): number {
    return sample(curve.likely, curve.step, k * rules.tick + this.#phase)
  }

  /** Take another empty oven's curve; the loaded one is then to be added up afresh. */
  take(curve: Curve): void {
    for (let k = 0; k < this.#ticks; k++) this.empty[k] = this.#at(curve, k)
  }

  /** Move the empty oven's curve so that the loaded one, added up afresh, agrees with a simulated one. */
  agreeWith(curve: Curve): void {
    for (let k = 0; k < this.#ticks; k++) this.empty[k] = this.empty[k]! + this.#at(curve, k) - this.celsius[k]!
  }

  /** How what a load takes follows its set-in: to the tick, or its long slow end only in steps. It is then to be added up afresh. */
  follow(how: 'closely' | 'loosely'): void {
    this.#lag = how === 'loosely' ? LAG : 0
  }

  /** The empty oven's curve, for the loads to be put on afresh. */
  clear(): void {
    this.celsius.set(this.empty)
    this.changed = -1
  }

  /** Put a job's pull on, as it is set in at a tick. */
  putOn(u: number, s: number): void {
    this.#since(s)
    this.far[u] = s
    this.#pull(u, s, -1)
  }

  /** Take a job's pull off, which is set in at a tick. */
  takeOff(u: number, s: number): void {
    this.#since(s)
    this.#catchUp(u, s)
    this.#pull(u, s, 1)
  }

  /** Set a job in at another tick: its pull is taken off there and put on here in one pass. */
  move(u: number, from: number, to: number): void {
    const near = Math.abs(to - this.far[u]!) <= this.#lag
    if (!near) {
      this.#catchUp(u, from)
      this.far[u] = to
    }
    this.#since(Math.min(from, to))
    this.#repull(u, from, to, 0, near ? this.far[u]! + this.#gentle[u]! : this.#ticks)
  }

  #since(tick: number): void {
    if (tick < this.changed) this.changed = tick
  }

  #pull(u: number, s: number, sign: 1 | -1): void {
    const drop = this.#drop[u]!
    const T = this.celsius
    const m = Math.min(drop.length, this.#ticks - s)
    const gives = sign * this.#gives[s]!
    for (let i = 1, k = s + 1; i < m; i++, k++) T[k] = T[k]! + gives * drop[i]!
  }

  /** Let what a job takes long afterwards follow it to where it is set in now. */
  #catchUp(u: number, s: number): void {
    const far = this.far[u]!
    if (s === far) return
    this.far[u] = s
    this.#repull(u, far, s, far + this.#gentle[u]!, this.#ticks)
  }

  /** Between two ticks, take a job's pull off as it was from one set-in, and put it on as from another. */
  #repull(u: number, from: number, to: number, first: number, last: number): void {
    const drop = this.#drop[u]!
    const T = this.celsius
    const off = this.#gives[from]!
    const on = this.#gives[to]!
    const both = Math.max(from, to)
    const lo = Math.min(from, to)
    const end = Math.min(last, this.#ticks, lo + drop.length)
    const one = from < to ? off : -on
    for (let k = Math.max(first, lo + 1), i = k - lo; k <= both && k < end; k++, i++) T[k] = T[k]! + one * drop[i]!
    for (let k = Math.max(first, both + 1), i = k - from, j = k - to; k < end; k++, i++, j++)
      T[k] = T[k]! + off * drop[i]! - on * drop[j]!
    const rest = Math.min(last, this.#ticks, both + drop.length)
    const other = from < to ? -on : off
    for (let k = Math.max(first, end, both + 1), i = k - both; k < rest; k++, i++) T[k] = T[k]! + other * drop[i]!
  }
}

/**
 * Followed loosely, what a load takes from the curve follows its set-in in steps of half an hour only, from where it changes by less than
 * so many °C a tick: a twentieth of a degree at most, and the greater part of the work of a small move.
 */
const GENTLE = 0.008
const LAG = 6

/** Ticks after which a pull changes gently to its end. */
function gentleFrom(pull: Float64Array): number {
  let k = pull.length
  while (k > 1 && Math.abs(pull[k - 1]! - pull[k - 2]!) < GENTLE) k--
  return k
}
