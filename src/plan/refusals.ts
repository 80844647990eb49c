import type {LaidRows, Refusal} from './laid.js'
import {pastOf} from './seats.js'

/** What the true floor refused, so that it is not laid out again. */

/** A refusal in rows of numbers. */
interface Refused {
  readonly job: number
  readonly others: Int32Array
  readonly at: number
  readonly past: Int32Array
}

/** A refusal that is never so: with it V8 knows from the first what the others are made of, and need not compile anew at the first of them. */
const NO_ONE: Refused = {job: 0, at: -1, others: Int32Array.of(0), past: Int32Array.of(4)}

export class Refusals {
  readonly #laid: LaidRows
  readonly #all: Refused[] = [NO_ONE]

  constructor(laid: LaidRows) {
    this.#laid = laid
  }

  /** Take it that the true floor refused some jobs. */
  add(refusals: readonly Refusal[]): void {
    for (const {job, at, others, past} of refusals)
      this.#all.push({job, at, others: Int32Array.from(others), past: Int32Array.from(past)})
  }

  /** Forget all of them. */
  forget(): void {
    this.#all.length = 1
  }

  /** How many of them are laid out again. */
  count(): number {
    let refused = 0
    for (let i = 0; i < this.#all.length; i++) refused += this.#refused(this.#all[i]!) ? 1 : 0
    return refused
  }

  #refused(r: Refused): boolean {
    if (!this.#laid.placed[r.job]) return false
    const t = this.#laid.s[r.job]!
    if (r.others.length === 0) return t === r.at
    const end = this.#laid.e[r.job]!
    for (let i = 0; i < r.others.length; i++) {
      const v = r.others[i]!
      const s = this.#laid.s[v]!
      const e = this.#laid.e[v]!
      if (!this.#laid.placed[v] || s >= end || e <= t) return false
      if ((r.past[i]! & ~pastOf(t, end, s, e)) !== 0) return false
    }
    return true
  }
}
