import {agree} from './agree.js'
import {type Curve, curveOf, whereIndex} from './curve.js'
import {eventsOf} from './events.js'
import type {Layout} from './layout.js'
import type {Job} from './model.js'
import type {LoadedDay} from './proof.js'
import {rules} from './rules.js'
import type {Settled} from './settled.js'
import type {FiringOption} from './types.js'

/** A day that has begun: the plan that was being followed, kept as far as the oven as it now is lets it. */

/** Begin a day planned again where the plan that was being followed left it. */
export function takeUp(layout: Layout, jobs: readonly Job[], curve: Curve): void {
  jobs.forEach(({was, since}, u) => {
    if (!was || since !== null) return
    // A dish that stands in several parts of the floor is done when the coolest of its vessels is.
    const zones = was.placed.map((p) => whereIndex(p.zone))
    const coolest = zones.sort((a, b) => curve.offset[a as 0 | 1 | 2] - curve.offset[b as 0 | 1 | 2])[0]
    layout.setAtClock(u, was.at, coolest ?? was.where)
  })
}

/** °C by which the oven may be off for the plan in hand to be worth mending. */
const FAR = 20

/** How much dearer, what it moves included, a plan in hand may become before the rest of the day is laid out anew. */
const DEARER = {times: 1.5, more: 60} as const

/** What becomes of a plan in hand; `good` where no dish of it is lost and it costs hardly more than it did. */
export interface InHand {
  readonly settled: Settled
  readonly good: boolean
}

/**
 * The plan that is being followed, on the oven as it now is: kept as it stands where it still serves, and moved a little, in one of two
 * ways (see `agree`), where it does not. Null where there is none, or more than one fire to choose from, or the oven is too far off it.
 *
 * @param layoutOf The plan's fire with nothing laid out on it, for what is kept.
 * @param far °C by which the oven may be off the plan.
 * @returns `good` where no dish of it is lost and it costs hardly more than it did, so that nothing else need be looked at.
 */
export function inHand(
  day: LoadedDay,
  layoutOf: (option: FiringOption) => Layout,
  far = FAR,
): ((how: 'waiting' | 'moving') => InHand | null) | null {
  const {problem, jobs, simulate} = day
  const plan = problem.done?.plan
  const [option, another] = problem.firings
  if (!plan || !option || another) return null
  const layout = layoutOf(option)
  takeUp(layout, jobs, curveOf(option.forecast, problem.ambient ?? 20))
  jobs.forEach((job, u) => {
    if (!job.was) layout.bar(u)
  })
  layout.agreeWith(curveOf(plan.forecast, problem.ambient ?? 20))
  layout.judge()
  // What loads take is added up in the layout, and bends a little in the oven: the curve it is judged on is put right first.
  const took = layout.snapshot().map((l) => (l.in ? {s: l.s, e: l.e} : null))
  const events = eventsOf(jobs, took, option, layout.phase, layout.lit)
  const meant = layout.celsius.slice()
  layout.agreeWith(curveOf(simulate(option, events, false), problem.ambient ?? 20))
  const now = Math.max(0, Math.ceil(((problem.done?.now ?? 0) - layout.lit - layout.phase) / rules.tick))
  if (meant.some((celsius, k) => k >= now && Math.abs(layout.celsius[k]! - celsius) > far)) return null
  layout.judge()
  const begun = {laid: layout.snapshot(), lit: layout.lit}
  const extra = jobs.filter((job) => !job.was).length
  return (how) => {
    layout.refuseNone()
    layout.restore(begun.laid, begun.lit)
    const settled = agree(day, {option, index: 0, layout}, {budget: {passes: 8}, gently: how})
    if (!settled) return null
    const lost = settled.unplaced.length - extra
    const dear = settled.total > DEARER.times * plan.score.total + DEARER.more
    return {settled, good: lost <= 0 && !dear}
  }
}
