import type {Replan} from '../conflict.js'
import type {PlanOptions} from '../options.js'
import {phrase} from '../phrases.js'
import type {Settled} from '../settled.js'
import type {FiringOption, Phrase, Plan, PlanProblem, Remedy} from '../types.js'
import {helps, lessThan} from './lack.js'
import {beforeLast, Trials} from './trials.js'

/** Minutes late, at the worst, from which on another fire is tried. */
export const FIRE_AGAIN = 60

/** By how much less a plan has to come to for another fire to be worth the trouble. */
const WORTH_A_FIRE = 3

/**
 * Another fire later in the day, where that has more of it, or more of it in time: the day as it will be planned when it may be fired twice, or
 * if it is a large one, a short trial.
 *
 * @param firings Of two fires, to choose from in a short trial.
 */
export function fireLater(plan: Plan, trials: Trials, firings: () => readonly FiringOption[]): Remedy | null {
  const {now} = trials
  const earnest = trials.firedTwice()
  const some = earnest ? [] : firings()
  if (!earnest && some.length === 0) return null
  const tried = earnest ?? trials.plan({firings: some})
  const fire = tried.plan.fires?.[1]
  // Where something is left out, another fire is for having that.
  if (!fire || !helps(tried.lack, now) || (now.out > 0 && tried.lack.without >= now.without)) return null
  const {phrases} = trials.outcome(tried, true)
  return trials.remedy('second fire', tried.plan, secondFire(fire, beforeLast(phrases, otherFirst(plan, tried.plan))))
}

/** That the first fire is another than in the plan, or lit at another hour; nothing where it is the same. */
function otherFirst(plan: Plan, {firing, lit}: Plan): Phrase[] {
  if (firing.burn === plan.firing.burn && lit === plan.lit) return []
  return [phrase('outcome first fire', {minutes: {unit: 'minutes', value: firing.burn}, at: {unit: 'clock', value: lit}})]
}

/**
 * A second fire for what a day that is to be fired once wants hot: where that does not come hot, or only by burning far more wood in one fire.
 *
 * @returns Null where nothing is wanted hot, or one fire does about as well.
 */
export function fireForHot(
  problem: PlanProblem,
  plan: Plan,
  options: PlanOptions,
  replan: Replan,
  from: Settled | null = null,
): Remedy | null {
  if (problem.day.firings > 1 || !problem.dishes.some(({wantedHot}) => wantedHot)) return null
  const firings = options.secondFires?.(plan.firing) ?? []
  if (firings.length === 0) return null
  const trials = new Trials(problem, plan, options, replan, from)
  const tried = trials.plan({firings})
  const fire = tried.plan.fires?.[1]
  const hotIn = new Set(problem.dishes.flatMap(({id, wantedHot}) => (wantedHot ? [id] : [])))
  // What has no place with two fires either is no reason for a second.
  if (!tried.plan.loads.some(({dishes}) => dishes.some(({dish}) => hotIn.has(dish)))) return null
  if (!fire || lessThan(trials.now, tried.lack) || tried.plan.score.total > plan.score.total - WORTH_A_FIRE) return null
  const [early, now] = [tried.plan.score.earlyMinutes ?? 0, plan.score.earlyMinutes ?? 0]
  const outcome = trials.outcome(tried, true).phrases.filter(({id}) => id !== 'outcome all')
  const hot = early >= now ? [] : [phrase(early === 0 ? 'outcome hot' : 'outcome hotter')]
  return trials.remedy('second fire', tried.plan, secondFire(fire, [...hot, ...outcome]))
}

/** A second fire, and what comes of it. */
function secondFire({firing, lit}: NonNullable<Plan['fires']>[number], phrases: readonly Phrase[]): Phrase {
  return phrase('remedy second fire', {
    minutes: {unit: 'minutes', value: firing.burn},
    at: {unit: 'clock', value: lit},
    outcome: {unit: 'phrases', phrases},
  })
}
