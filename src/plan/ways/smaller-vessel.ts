import type {Dish} from '../../scale/types.js'
import type {Replan} from '../conflict.js'
import type {PlanOptions} from '../options.js'
import {phrase} from '../phrases.js'
import type {Phrase, Plan, PlanProblem, Remedy} from '../types.js'
import type {Lack} from './lack.js'
import {Trials} from './trials.js'

/** Dishes whose vessels do not go in, for each of which a smaller one is tried. */
const SMALLER = 4

/**
 * What would give dishes their place whose vessels do not go into the oven: vessels of the same shape that do, holding as much. Each is tried by
 * planning the day with it, shortly, and offered only where fewer people go without than by the plan.
 *
 * @param lone The dishes that do not go in.
 * @returns The way out of each that has one, by its id.
 */
export function inSmallerVessels(
  problem: PlanProblem,
  plan: Plan,
  lone: readonly Dish[],
  options: PlanOptions,
  replan: Replan,
): Map<string, Remedy> {
  const out = new Map<string, Remedy>()
  const trials = new Trials(problem, plan, options, replan)
  let tries = 0
  for (const {id, instead} of lone) {
    if (!instead || out.has(id) || tries === SMALLER) continue
    const {amount, dishes, of} = instead
    const rest = problem.dishes.filter((dish) => !of.includes(dish.id))
    if (dishes.some((dish) => rest.some((other) => other.id === dish.id))) continue
    tries++
    // What is to fill the floor puts nothing else out: there are as many of it as then have a place.
    const filling = rest.filter(({fills}) => fills !== undefined)
    const day = problem.dishes.flatMap((d) => (d.id === of[0] ? dishes : of.includes(d.id) || filling.includes(d) ? [] : [d]))
    const gives = ({without}: Lack): boolean => without < trials.now.without
    const shortly = trials.plan({dishes: day})
    const tried = filling.length === 0 ? trials.whereTrue(shortly, {dishes: day}, gives) : gives(shortly.lack) ? shortly : null
    if (!tried) continue
    const outcome = trials.outcome(tried, false)
    const {phrases} = outcome
    const words = phrase('remedy smaller vessel', {
      dishes: {unit: 'dishes', dishes: [...of], whole: true},
      amount,
      outcome: filling.length === 0 ? outcome : {...outcome, phrases: [...phrases.filter(isNoWood), refilled(filling)]},
    })
    const remedy = trials.remedy('smaller vessel', tried.plan, words)
    for (const one of of) out.set(one, remedy)
  }
  return out
}

const isNoWood = ({id}: Phrase): boolean => !/ wood$/.test(id)

const refilled = (filling: readonly Dish[]): Phrase =>
  phrase('outcome filled', {dishes: {unit: 'dishes', dishes: filling.map(({id}) => id), whole: true}})
