import {handlingOf} from '../hands.js'
import {phrase} from '../phrases.js'
import {rules} from '../rules.js'
import type {FiringOption, Plan, PlanProblem, Remedy} from '../types.js'
import {helps} from './lack.js'
import type {Trials} from './trials.js'

/** Pairs of hands above which one more is no help that can be had, and share of them that an opening takes where one more may help. */
const MOST_HANDS = 6
const BUSY = 0.75

/** One more pair of hands, where those there are have too little time at some opening of the door. */
export function moreHands(problem: PlanProblem, plan: Plan, trials: Trials, near: readonly FiringOption[]): Remedy | null {
  const {day} = problem
  if (day.hands >= MOST_HANDS || !handsFull(problem, plan)) return null
  const hands = day.hands + 1
  const changed = {day: {...day, hands}}
  const tried = trials.whereTrue(trials.plan({firings: near, ...changed}), changed, (lack) => helps(lack, trials.now))
  if (!tried) return null
  return trials.remedy('more hands', tried.plan, phrase('remedy more hands', {hands, outcome: trials.outcome(tried, false)}))
}

/** True where the hands are what an opening of the door has too little of, or nearly. */
function handsFull({day, dishes}: PlanProblem, plan: Plan): boolean {
  const each = new Map(dishes.map((d) => [d.id, handlingOf(d)]))
  const work = new Map<number, number>()
  for (const load of plan.loads)
    for (const {dish, count, draw} of load.dishes)
      for (const at of [load.at, draw.likely]) work.set(at, (work.get(at) ?? 0) + count * (each.get(dish) ?? 0))
  return Math.max(...work.values()) >= BUSY * rules.tick * day.hands
}
