import type {Placed} from '../scale/types.js'
import {ACROSS, whereIndex} from './curve.js'
import type {Load, PlanProblem} from './types.js'

/** A part of a dish as a plan has it; times in minutes after midnight. */
export interface Followed {
  readonly count: number
  readonly at: number
  readonly draw: number
  /** Where it was to stand: 0 back … 2 mouth, 3 across. */
  readonly where: number
  readonly placed: readonly Placed[]
  readonly load: Load
  readonly entry: Load['dishes'][number]
}

/** Every part that the loads of a plan consist of, in their order. The vessels of a load are listed as its dishes are, part by part. */
export function partsOf(loads: readonly Load[]): Followed[] {
  return loads.flatMap((load) => {
    const next = new Map<string, number>()
    return load.dishes.map((entry): Followed => {
      const {dish, count, draw, zone} = entry
      const first = next.get(dish) ?? 0
      next.set(dish, first + count)
      return {
        count,
        at: load.at,
        draw: draw.likely,
        where: zone === undefined ? ACROSS : whereIndex(zone),
        placed: load.placed.filter((p) => p.dish === dish).slice(first, first + count),
        load,
        entry,
      }
    })
  })
}

/** The parts of each dish, to be taken out one by one. */
export function partsByDish(loads: readonly Load[]): Map<string, Followed[]> {
  const parts = new Map<string, Followed[]>()
  for (const part of partsOf(loads)) {
    const {dish} = part.entry
    parts.set(dish, [...(parts.get(dish) ?? []), part])
  }
  return parts
}

/**
 * The parts of a dish in the plan that was being followed, when a day is planned again.
 *
 * @returns `set`: for each entry of `done.set` of this dish, in its order, what the plan had of it; `rest`: what is still to be set in.
 *   Both empty of plans where none was followed.
 */
export function followed(
  problem: Pick<PlanProblem, 'done'>,
  dish: string,
): {set: readonly (Followed | undefined)[]; rest: readonly Followed[]} {
  const loads = (problem.done?.plan?.loads ?? []).filter((load) => load.dishes.some((d) => d.dish === dish))
  const rest = partsOf(loads).filter(({entry}) => entry.dish === dish)
  const set = (problem.done?.set ?? []).flatMap((s) => (s.dish === dish ? [take(rest, s.count, s.at)] : []))
  return {set, rest}
}

/** A part in two: so many vessels of it, and what is left; null where nothing is. */
export function share<P extends Pick<Followed, 'count' | 'placed'>>(part: P, count: number): [P, P | null] {
  if (part.count <= count) return [part, null]
  const {placed} = part
  return [
    {...part, count, placed: placed.slice(0, count)},
    {...part, count: part.count - count, placed: placed.slice(count)},
  ]
}

/** Take out of a list the part most like one of so many vessels at such a time; of a larger one, so many of its vessels. */
export function take(parts: Followed[], count: number, at: number): Followed | undefined {
  let best = -1
  for (let i = 0; i < parts.length; i++) {
    const unlike = (p: Followed): number => (p.count === count ? 0 : 1e6) + Math.abs(p.at - at)
    if (best < 0 || unlike(parts[i]!) < unlike(parts[best]!)) best = i
  }
  if (best < 0) return undefined
  const [some, rest] = share(parts[best]!, count)
  parts.splice(best, 1, ...(rest ? [rest] : []))
  return some
}
