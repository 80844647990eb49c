import {feedsOf, type Job, lateness, type Model} from './model.js'
import type {PlanOptions} from './options.js'
import {rules} from './rules.js'
import type {Found} from './search.js'
import type {Standing} from './standing.js'
import type {FiringOption, PlanProblem} from './types.js'

/** What the search settled on, before it is written as a plan. */
export interface Settled {
  readonly model: Model
  readonly found: Found
  readonly standing: readonly Standing[]
  readonly option: FiringOption
  readonly total: number
  readonly unplaced: readonly {readonly job: Job; readonly why: 'floor' | 'time'}[]
  /** The same with its range and with all that each dish might have done, where it is told without. */
  readonly whole?: () => Settled
  /** Jobs in the oven whose limits it does not keep; and those of them that need not be so, if less were set in after them. */
  readonly givenUp?: number
  readonly amiss?: number
  /** True where it keeps its dishes' eased limits only (see `ease.ts`). */
  readonly eased?: boolean
}

/**
 * The day of two that spoils less of what is in the oven, then leaves fewer people without what was to be baked for them, then gives less up,
 * and of those the cheaper.
 */
export function better(best: Settled | null, other: Settled): Settled {
  if (!best) return other
  return (lacks(other, best) || other.total - best.total) < 0 ? other : best
}

/** Below 0 where the first of two is the better. */
export const compared = (a: Settled, b: Settled): number => lacks(a, b) || a.total - b.total

/** The same of two that do not cost alike, so that what they cost is not compared; the first where there is nothing else between them. */
export function fuller(best: Settled, other: Settled): Settled {
  return lacks(other, best) < 0 ? other : best
}

/** By how much one lacks more than another, in what first tells them apart; what they cost aside. */
function lacks(one: Settled, other: Settled): number {
  const amiss = (one.amiss ?? 0) - (other.amiss ?? 0)
  return amiss || goWithout(one) - goWithout(other) || (one.givenUp ?? 0) - (other.givenUp ?? 0)
}

/**
 * People whom what has no place in the day was to feed, or comes so late that it is of little use, each dish counted by itself: a batch of
 * rolls that feeds as many as a pie is as much to lose, however many they are. To a thousandth, so that sums in another order are the same.
 */
export function goWithout(settled: Settled): number {
  const lost = [...settled.unplaced.map(({job}) => job), ...tooLate(settled)]
  const people = lost.reduce((sum, job) => sum + feedsOf(job), 0)
  return Math.round(1000 * people) / 1000
}

/** Whether more is to be sought for a plan that leaves something out: not for a trial, but where it is to be what the day will be. */
export const seeksMore = ({bare, asTold}: PlanOptions, settled: Settled): boolean =>
  !bare || (asTold !== undefined && goWithout(settled) <= asTold)

/** What comes so late that it is of little use. */
export function tooLate(settled: Settled): Job[] {
  return settled.model.jobs.filter((job, u) => lateBy(settled, u) > job.bears)
}

/** Minutes by which a job is drawn after it is due; 0 where it is left out. */
export function lateBy({model, found}: Settled, u: number): number {
  const o = found.chosen[u]!
  return o < 0 ? 0 : lateness(model.jobs[u]!, model.clock0 + model.e[u]![o]! * rules.tick)
}

/** Whether everything has its place, and in time. */
export function lacksNothing(settled: Settled): boolean {
  return settled.unplaced.length === 0 && settled.model.jobs.every((_, u) => lateBy(settled, u) === 0)
}

/** Whether the day wants anything hot at its time. */
export const wantsHot = ({model}: Settled): boolean => model.jobs.some(({hotFrom}) => hotFrom > Number.NEGATIVE_INFINITY)

/** When a job is set in and drawn, ticks, and where; null where it is left out. */
export type Took = {readonly s: number; readonly e: number; readonly w: number} | null

/** What each job of a solution does. */
export function tookIn({model, found}: Pick<Settled, 'model' | 'found'>): Took[] {
  return Array.from(found.chosen, (o, u) => (o < 0 ? null : {s: model.s[u]![o]!, e: model.e[u]![o]!, w: model.where[u]![o]!}))
}

/** Whether a fire is that of a plan. */
export function sameFire({option}: Settled): (other: FiringOption) => boolean {
  // A day may have been planned on a few of its fires only, which are then numbered otherwise.
  return ({firing, further}) => firing === option.firing && further === option.further
}

/** The fire of a plan as it is without its loads. */
export function fireOf({firings}: PlanProblem, settled: Settled): FiringOption {
  return firings.find(sameFire(settled)) ?? firings[settled.model.program.index]!
}
