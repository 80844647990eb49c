/**
 * A layout as data: what is laid, while it is changed and as a copy to go back to, what it was judged to be worth, and what the true floor
 * refused.
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

/** What is laid while it is changed: a row of numbers each, one number a job. */
export interface LaidRows {
  /** Ticks at which each is set in and drawn. */
  readonly s: Int32Array
  readonly e: Int32Array
  /** Part of the floor: 0 back … 2 mouth, 3 across all of it. */
  readonly w: Uint8Array
  readonly hold: Uint8Array
  readonly placed: Uint8Array
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
