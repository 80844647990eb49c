import {nextBit} from './bits.js'
import type {FloorGrid} from './floor-grid.js'
import type {JobFigures} from './job-figures.js'
import type {LaidRows} from './laid.js'
import {broken} from './layout-prices.js'

/**
 * How much the hands have to do at each opening, what of the floor stands in the way then, and how full its parts are from one opening to
 * the next.
 */

/** Share of a part of the floor from which it is thought crowded. */
const ROOMY = 0.8
/** Weight of floor that stands in the way at an opening, against a crowded tick. */
const IN_THE_WAY = 5

export class Crowding {
  /** How crowded the floor was when last judged, in shares of its parts times ticks; no whole number at first, as the cost of a layout. */
  crowded = Number.NaN
  readonly #jobs: JobFigures
  readonly #laid: LaidRows
  readonly #floor: readonly [number, number, number]
  readonly #share: readonly [number, number, number]
  readonly #narrow: readonly [number, number, number]
  readonly #hands: number
  // Scratch of one evaluation.
  readonly #handsAt: Float64Array
  /** A bit a tick: at which something is set in or drawn. */
  readonly #marks: Int32Array
  readonly #rise: Float64Array[]
  readonly #started: Float64Array[]
  readonly #lanes: Int32Array[]

  /**
   * @param free Share of a part of the floor that may be taken up when something is carried through it.
   * @param hands Minutes that hands have at one tick.
   */
  constructor(jobs: JobFigures, laid: LaidRows, grid: FloorGrid, ticks: number, free: number, hands: number) {
    this.#jobs = jobs
    this.#laid = laid
    this.#floor = grid.zones
    this.#share = [grid.zones[0] / grid.area, grid.zones[1] / grid.area, grid.zones[2] / grid.area]
    this.#narrow = [grid.zones[0] * free, grid.zones[1] * free, grid.zones[2] * free]
    this.#hands = hands
    this.#handsAt = new Float64Array(ticks + 1)
    this.#marks = new Int32Array((ticks >> 5) + 1)
    this.#rise = [0, 1, 2].map(() => new Float64Array(ticks + 1))
    this.#started = [0, 1, 2].map(() => new Float64Array(ticks + 1))
    this.#lanes = [0, 1, 2].map(() => new Int32Array(ticks + 1))
  }

  /**
   * Judge what is laid.
   *
   * @param soFar What is broken already.
   * @param from Tick of the first set-in.
   * @param granted Share of a part of the floor that may be taken up.
   * @returns What is broken with that.
   */
  judge(soFar: number, from: number, granted: number): number {
    const {s, e, w, placed} = this.#laid
    let violation = soFar
    const jobs = this.#jobs
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
    for (let u = 0; u < jobs.fixed.length; u++) {
      if (!placed[u]) continue
      const start = Math.max(0, s[u]!)
      const end = e[u]!
      const where = w[u]!
      const area = jobs.area[u]!
      const fixed = jobs.fixed[u] === 1
      marks[start >> 5]! |= 1 << (start & 31)
      marks[end >> 5]! |= 1 << (end & 31)
      if (!fixed) hands[start] = hands[start]! + jobs.handling[u]!
      hands[end] = hands[end]! + jobs.handling[u]!
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
    const most = granted + 1e-6
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
    let since = from
    for (let k = nextBit(marks, from); k >= 0; k = nextBit(marks, k + 1)) {
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
    this.crowded = crowd + IN_THE_WAY * passed
    return violation
  }
}
