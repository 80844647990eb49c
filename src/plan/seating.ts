import type {FloorGrid} from './floor-grid.js'
import type {Layout} from './layout.js'
import type {Job} from './model.js'
import {type Settling, settleIn, vesselsOf} from './places.js'
import type {Standing, ToPlace} from './standing.js'

/** The vessels of a job that is in the oven already, standing between two ticks. */
export function standingAlready(job: Job, from: number, to: number): Standing[] {
  return (job.stood ?? []).map((p) => ({
    dish: job.dish.id,
    number: p.number,
    vessel: job.dish.vessel,
    x: p.x,
    y: p.y,
    turn: p.turn,
    from,
    to,
    shifts: job.dish.shifts === true,
  }))
}

/** When and in which part of the floor each job stands. */
export type TimesOf = Pick<Layout, 'placed' | 's' | 'e' | 'w' | 'fits'>

/** The floor itself, on which what is laid out finds its places or does not. */
export interface TrueFloor {
  /**
   * How many jobs find no place as they are now laid out.
   *
   * @param most So many may: if there are more, how many is not looked for, and any number above it is returned.
   */
  refused(most?: number): number
  /** Keep the places tried last. */
  keep(): void
  /** @returns What brings the places kept now back. */
  save(): () => void
}

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
  #calls = 0

  constructor(
    readonly grid: FloorGrid,
    readonly jobs: readonly Job[],
    readonly layout: TimesOf,
  ) {
    this.#seats = jobs.map(() => null)
    this.#trial = this.#seats
  }

  refused(most = Number.POSITIVE_INFINITY): number {
    const {layout, jobs} = this
    const trial: (Seated | null)[] = []
    let same = true
    let anew = false
    for (const [u, job] of jobs.entries()) {
      const seat = layout.placed[u] ? this.#as(job, u) : null
      trial.push(seat)
      if (seat === this.#seats[u]) continue
      same = false
      // Drawn at another time, what is in the oven already bars other ways, and whoever stands is looked at anew.
      if (job.since !== null) anew = true
    }
    if (same) {
      this.#trial = this.#seats
      return 0
    }
    const fixed: Standing[] = []
    const asked: number[] = []
    const day: Settling[] = []
    for (const [u, {since}] of jobs.entries()) {
      const meant = trial[u]
      if (!meant) continue
      if (since !== null) {
        fixed.push(...meant.vessels)
        continue
      }
      const seat = this.#seats[u] ?? null
      asked.push(u)
      day.push({item: meant.item, vessels: seat?.vessels ?? null, stays: !anew && meant === seat})
    }
    const placed = settleIn(this.grid, fixed, day, this.#calls++ % SELDOM === 0, most)
    if (!placed) return most + 1
    let count = 0
    asked.forEach((u, i) => {
      const vessels = placed[i]!
      trial[u] = vessels ? {item: trial[u]!.item, vessels} : null
      if (!vessels) count++
    })
    this.#trial = trial
    return count
  }

  /** The seat of a job that is laid out as when it was found, or an empty one for its new times. */
  #as(job: Job, u: number): Seated {
    const {layout} = this
    const from = layout.s[u]!
    const to = layout.e[u]!
    const where = layout.w[u]!
    const seat = this.#seats[u]
    if (seat && seat.item.from === from && seat.item.to === to && seat.item.where === where) return seat
    return {item: this.#item(u, from, to, where), vessels: job.since === null ? [] : standingAlready(job, from, to)}
  }

  keep(): void {
    this.#seats = this.#trial
  }

  save(): () => void {
    const seats = this.#seats
    return () => {
      this.#seats = seats
    }
  }

  /** Take over places found elsewhere for what is laid out. */
  take(laid: ReadonlyArray<{readonly s: number; readonly e: number; readonly w: number}>, standing: readonly Standing[]): void {
    this.#seats = this.jobs.map((job, u) => {
      const vessels = vesselsOf(job, standing)
      const {s, e, w} = laid[u]!
      return vessels.length < job.count ? null : {item: this.#item(u, s, e, w), vessels}
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
