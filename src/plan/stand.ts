import type {Curve} from './curve.js'
import type {FloorGrid} from './floor-grid.js'
import {keeps} from './keeps.js'
import type {Refusal} from './laid.js'
import type {Job} from './model.js'
import {placeDay} from './places.js'
import {rules} from './rules.js'
import {type Seating, standingAlready} from './seating.js'
import {pastOf} from './seats.js'
import type {Seat, Standing, ToPlace} from './standing.js'

/** Vessels of a layout on the true floor. */

export function toPlace(
  job: Job,
  i: {readonly s: number; readonly e: number; readonly w: number},
  curve: Curve,
  phase: number,
): ToPlace {
  const from = i.s * rules.tick + phase
  const to = i.e * rules.tick + phase
  const ok = (z: number): boolean => keeps(job, curve, z, from, to)
  return {dish: job.dish, first: job.first, count: job.count, from: i.s, to: i.e, where: i.w, fits: [ok(0), ok(1), ok(2)]}
}

/** Stand the vessels of a layout on the floor; what finds no place is named with what stood in its way. */
export function stand(
  jobs: readonly Job[],
  took: ReadonlyArray<{readonly s: number; readonly e: number; readonly w: number} | null>,
  grid: FloorGrid,
  curve: Curve,
  phase: number,
  seating: Pick<Seating, 'vessels'>,
): {standing: Standing[]; refused: Refusal[]} {
  const fixed: Standing[] = []
  const day: {u: number; item: ToPlace}[] = []
  took.forEach((t, u) => {
    if (!t) return
    if (jobs[u]!.since === null) day.push({u, item: toPlace(jobs[u]!, t, curve, phase)})
    else fixed.push(...standingAlready(jobs[u]!, t.s, t.e))
  })
  const known = new Map<ToPlace, readonly Seat[]>()
  for (const {u, item} of day) {
    const {was, count} = jobs[u]!
    if (was && was.placed.length === count) known.set(item, was.placed)
    const seat = seating.vessels(u)
    if (seat) known.set(item, seat)
  }
  const result = placeDay(
    grid,
    fixed,
    day.map((d) => d.item),
    known,
    jobs.some(({was}) => was),
  )
  const standing = [...fixed, ...result.placed]
  const refused = result.refused.map((item): Refusal => {
    const job = day.find((d) => d.item === item)!.u
    const others = took.flatMap((t, u) => (t && u !== job && t.s < item.to && t.e > item.from ? [u] : []))
    const past = others.map((v) => pastOf(item.from, item.to, took[v]!.s, took[v]!.e))
    return {job, others, at: item.from, past}
  })
  return {standing, refused}
}
