import type {Dish} from '../../scale/types.js'
import {phrase} from '../phrases.js'
import type {Plan, PlanProblem, Remedy} from '../types.js'
import {type Trials, trialOf} from './trials.js'

/**
 * A dish had all the same, hours after it is wanted.
 *
 * @param late The plan with it set in among the rest.
 */
export function hoursLater(problem: PlanProblem, {id}: Dish, trials: Trials, late: Plan): Remedy {
  const drawn = late.loads.flatMap((l) => l.dishes.filter((d) => d.dish === id).map((d) => d.draw.likely))
  const words = phrase('remedy late', {
    dishes: {unit: 'dishes', dishes: [id]},
    at: {unit: 'clock', value: Math.max(...drawn)},
    outcome: trials.outcome(trialOf(problem, late, true), false),
  })
  return trials.remedy('late', late, words)
}
