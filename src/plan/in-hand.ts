import {agree} from './agree.js'
import {type Curve, curveOf, whereIndex} from './curve.js'
import {eventsOf} from './events.js'
import type {Laid} from './laid.js'
import type {Layout} from './layout.js'
import type {Job} from './model.js'
import type {LoadedDay} from './proof.js'
import {rules} from './rules.js'
import {better, type Settled} from './settled.js'
import type {FiringOption, Plan, PlanProblem} from './types.js'

/** A day that has begun: the plan that was being followed, kept as far as the oven as it now is lets it. */

/**
 * Begin a day planned again where the plan that was being followed left it.
 *
 * @param later Minutes by which all of it is put off.
 */
export function takeUp(layout: Layout, jobs: readonly Job[], curve: Curve, later = 0): void {
  jobs.forEach(({was, since}, u) => {
    if (!was || since !== null) return
    // A dish that stands in several parts of the floor is done when the coolest of its vessels is.
    const zones = was.placed.map((p) => whereIndex(p.zone))
    const coolest = zones.sort((a, b) => curve.offset[a as 0 | 1 | 2] - curve.offset[b as 0 | 1 | 2])[0]
    layout.setAtClock(u, was.at + later, coolest ?? was.where)
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

/** The plan in hand as it is laid on the oven as it now is. */
interface Begun {
  readonly layout: Layout
  readonly laid: readonly Laid[]
  readonly lit: number
}

/**
 * The plan that is being followed, on the oven as it now is: kept as it stands where it still serves, and moved a little, in one of two
 * ways (see `agree`), where it does not. Where the fire was lit late, all of it put off by as much is tried too: the oven is then as it was
 * meant. Null where there is none, or more than one fire to choose from, or the oven is too far off it.
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
  const {problem, jobs} = day
  const plan = problem.done?.plan
  const [option, another] = problem.firings
  if (!problem.done || !plan || !option || another) return null
  const lit = problem.done.lit ?? plan.lit
  const late = Math.max(0, lit - plan.lit)
  // So it is of a fire that burns for longer than planned, as far as that makes it ready later.
  const ready = Math.max(late, rules.tick * Math.floor((lit + option.forecast.ready - plan.ready) / rules.tick))
  const begun = [...new Set([late, ready, 0])].flatMap(
    (later) => begunOn(day, layoutOf(option), {option, plan, later, far}) ?? [],
  )
  if (begun.length === 0) return null
  const extra = jobs.filter((job) => leftOut(problem, job)).length
  return (how) => {
    const settled = begun.reduce<Settled | null>((best, {layout, laid, lit}) => {
      layout.refuseNone()
      layout.restore(laid, lit)
      const one = agree(day, {option, index: 0, layout}, {budget: {passes: 8}, gently: how})
      return one ? better(best, one) : best
    }, null)
    if (!settled) return null
    const lost = settled.unplaced.length - extra
    const dear = settled.total > DEARER.times * plan.score.total + DEARER.more
    return {settled, good: lost <= 0 && !dear}
  }
}

/** Whether the plan in hand has no place for a job, though it was asked for. */
const leftOut = ({done}: PlanProblem, {was, dish}: Job): boolean => !was && !done?.anew?.has(dish.id)

/** A plan taken up so many minutes later; null where the oven is too far off it. */
function begunOn(
  {problem, jobs, simulate}: LoadedDay,
  layout: Layout,
  {option, plan, later, far}: {readonly option: FiringOption; readonly plan: Plan; readonly later: number; readonly far: number},
): Begun | null {
  const ambient = problem.ambient ?? 20
  takeUp(layout, jobs, curveOf(option.forecast, ambient), later)
  jobs.forEach((job, u) => {
    if (leftOut(problem, job)) layout.bar(u)
  })
  layout.agreeWith(curveOf(plan.forecast, ambient))
  layout.judge()
  // What loads take is added up in the layout, and bends a little in the oven: the curve it is judged on is put right first.
  const took = layout.snapshot().map((l) => (l.in ? {s: l.s, e: l.e} : null))
  const events = eventsOf(jobs, took, option, layout.phase, layout.lit)
  const meant = layout.celsius.slice()
  layout.agreeWith(curveOf(simulate(option, events, false), ambient))
  const now = Math.max(0, Math.ceil(((problem.done?.now ?? 0) - layout.lit - layout.phase) / rules.tick))
  if (meant.some((celsius, k) => k >= now && Math.abs(layout.celsius[k]! - celsius) > far)) return null
  layout.judge()
  return {layout, laid: layout.snapshot(), lit: layout.lit}
}
