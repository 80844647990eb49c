import type {Placed} from '../scale/types.js'
import {whereIndex} from './curve.js'
import type {PlanProblem} from './types.js'

/** A part of a dish as the plan has it that was being followed; times in minutes after midnight. */
export interface Followed {
  readonly count: number
  readonly at: number
  readonly draw: number
  /** Where it was to stand: 0 back … 2 mouth, 3 across. */
  readonly where: number
  readonly placed: readonly Placed[]
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
  const rest: Followed[] = []
  for (const load of problem.done?.plan?.loads ?? []) {
    // The vessels of a load are listed as its dishes are, part by part.
    const placed = load.placed.filter((p) => p.dish === dish)
    let next = 0
    for (const d of load.dishes) {
      if (d.dish !== dish) continue
      const mine = placed.slice(next, next + d.count)
      next += d.count
      const where = d.zone === undefined ? 3 : whereIndex(d.zone)
      rest.push({count: d.count, at: load.at, draw: d.draw.likely, where, placed: mine})
    }
  }
  const set = (problem.done?.set ?? []).flatMap((s) => (s.dish === dish ? [take(rest, s.count, s.at)] : []))
  return {set, rest}
}

/** Take out of a list the part most like one of so many vessels at such a time. */
export function take<P extends {readonly count: number; readonly at: number}>(
  parts: P[],
  count: number,
  at: number,
): P | undefined {
  let best = -1
  for (let i = 0; i < parts.length; i++) {
    const unlike = (p: P): number => (p.count === count ? 0 : 1e6) + Math.abs(p.at - at)
    if (best < 0 || unlike(parts[i]!) < unlike(parts[best]!)) best = i
  }
  return best < 0 ? undefined : parts.splice(best, 1)[0]
}
