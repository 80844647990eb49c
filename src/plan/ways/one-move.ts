import type {Dish} from '../../scale/types.js'
import {check} from '../check.js'
import {phrase} from '../phrases.js'
import type {FiringOption, PlanProblem, Remedy} from '../types.js'
import type {Lack} from './lack.js'
import type {Otherwise, Trials} from './trials.js'

/**
 * A dish shifted aside for a moment, once or twice, where that helps: what stands in front of what is drawn first need only be out of the way
 * for as long as that takes.
 */
export function oneMove(
  problem: PlanProblem,
  dish: Dish,
  trials: Trials,
  how: Otherwise & {readonly firings?: readonly FiringOption[]},
  helpful: (lack: Lack) => boolean,
): Remedy | null {
  const {firings, ...otherwise} = how
  const shifted = problem.dishes.map((d) => (d.id === dish.id ? {...d, shifts: true} : d))
  const tried = trials.plan({dishes: shifted, ...(firings ? {firings} : {})}, otherwise)
  const past = check(problem, tried.plan).filter((v) => v.rule === 'reach')
  const [move, then, ...further] = [...new Set(past.map((v) => v.at!))].sort((a, b) => a - b)
  if (move === undefined || further.length > 0 || !helpful(tried.lack)) return null
  return trials.remedy(
    'one move',
    tried.plan,
    phrase(then === undefined ? 'remedy one move' : 'remedy two moves', {
      dishes: {unit: 'dishes', dishes: [dish.id]},
      at: {unit: 'clock', value: move},
      ...(then === undefined ? {} : {again: {unit: 'clock', value: then}}),
      others: {unit: 'dishes', dishes: reached(past, dish.id)},
      outcome: trials.outcome(tried, false),
    }),
  )
}

/** What a dish is shifted aside for: others, or where only some of its own vessels stand before the rest of them, itself. */
function reached(past: readonly {readonly dish?: string | null}[], id: string): string[] {
  const all = [...new Set(past.flatMap(({dish}) => dish ?? []))]
  const others = all.filter((other) => other !== id)
  return others.length > 0 ? others : [id]
}
