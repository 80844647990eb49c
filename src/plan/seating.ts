import type {FloorGrid} from './floor-grid.js'
import type {Layout, TrueFloor} from './layout.js'
import type {Job} from './model.js'
import {type Standing, settleIn, type ToPlace} from './places.js'

/** One job's vessels, and the times and the part of the floor for which they were placed. */
interface Seated {
  readonly item: ToPlace
  readonly vessels: readonly Standing[]
}

/** In one of so many trials what stands may give way to what finds no place. */
const SELDOM = 8

/**
 * The true floor under a layout while it is annealed: every vessel has its place, and what a change of the layout moves is placed anew,
 * among the rest as it stands, and now and then with all of it free to give way.
 */
export class Seating implements TrueFloor {
  #seats: readonly (Seated | null)[]
  #trial: readonly (Seated | null)[]
  /** When what was in the oven already is drawn, for which the seats were found. */
  #drawn: readonly (number | undefined)[] = []
  #drawnTrial: readonly (number | undefined)[] = []
  #calls = 0

  constructor(
    readonly grid: FloorGrid,
    readonly jobs: readonly Job[],
    readonly layout: Layout,
  ) {
    this.#seats = jobs.map(() => null)
    this.#trial = this.#seats
  }

  refused(): number {
    const {layout, jobs} = this
    const fixed: Standing[] = []
    const day: {u: number; item: ToPlace; vessels: readonly Standing[] | null; stays: boolean}[] = []
    const drawn = [...this.#drawn]
    let same = true
    let other = false
    for (let u = 0; u < jobs.length; u++) {
      const job = jobs[u]!
      const seat = this.#seats[u] ?? null
      if (!layout.placed[u]) {
        if (seat) same = false
        continue
      }
      const [from, to, where] = [layout.s[u]!, layout.e[u]!, layout.w[u]!]
      if (job.since !== null) {
        for (const p of job.stood ?? []) fixed.push({...p, vessel: job.dish.vessel, from, to})
        // Drawn at another time it bars other ways, and whoever stands is looked at anew.
        if (this.#drawn[u] !== to) other = true
        drawn[u] = to
        continue
      }
      const stays = seat !== null && seat.item.from === from && seat.item.to === to && seat.item.where === where
      if (!stays) same = false
      const item = stays ? seat.item : this.#item(u, from, to, where)
      day.push({u, item, vessels: seat?.vessels ?? null, stays})
    }
    this.#drawnTrial = drawn
    if (same && !other) {
      this.#trial = this.#seats
      return 0
    }
    const asked = other ? day.map((d) => ({...d, stays: false})) : day
    const placed = settleIn(this.grid, fixed, asked, this.#calls++ % SELDOM === 0)
    const trial: (Seated | null)[] = jobs.map(() => null)
    let count = 0
    day.forEach(({u, item}, i) => {
      const vessels = placed[i]!
      if (vessels) trial[u] = {item, vessels}
      else count++
    })
    this.#trial = trial
    return count
  }

  keep(): void {
    this.#seats = this.#trial
    this.#drawn = this.#drawnTrial
  }

  save(): () => void {
    const seats = this.#seats
    const drawn = this.#drawn
    return () => {
      this.#seats = seats
      this.#drawn = drawn
    }
  }

  /** Take over places found elsewhere for what is laid out. */
  take(laid: ReadonlyArray<{readonly s: number; readonly e: number; readonly w: number}>, standing: readonly Standing[]): void {
    this.#drawn = this.jobs.map((job, u) => (job.since === null ? undefined : laid[u]!.e))
    this.#seats = this.jobs.map(({dish, first, count}, u) => {
      const vessels = standing.filter((v) => v.dish === dish.id && v.number >= first && v.number < first + count)
      const {s, e, w} = laid[u]!
      return vessels.length < count ? null : {item: this.#item(u, s, e, w), vessels}
    })
  }

  #item(u: number, from: number, to: number, where: number): ToPlace {
    const {dish, first, count} = this.jobs[u]!
    const {layout} = this
    return {dish, first, count, from, to, where, fits: [layout.fits(u, 0), layout.fits(u, 1), layout.fits(u, 2)]}
  }

  /** Where the vessels of a job stand; null where they have no place. */
  vessels(u: number): readonly Standing[] | null {
    return this.#seats[u]?.vessels ?? null
  }
}
