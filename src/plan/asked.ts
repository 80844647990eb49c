import {askedAs} from './batches.js'
import {bearable, meantFor} from './model.js'
import type {Late, Plan, PlanProblem} from './types.js'

/** What a plan gives otherwise than the day asked for it, besides what has no place; ids of dishes, each once. */
export interface Amiss {
  /** Drawn after they are wanted. */
  readonly late: readonly Late[]
  /** Drawn with less heat than their receipt's shortest time gives. */
  readonly underdone: readonly string[]
  /** Drawn cooler than they should be, or with some less heat than their receipt's shortest time gives, which they may be left in for. */
  readonly scant: readonly string[]
  /** Of which the log says that some were dropped, burnt or else lost. */
  readonly lost: readonly string[]
  /** Nobody said when they are wanted, and they are ready after the meal. */
  readonly afterMeal: readonly string[]
}

/** The dishes that come otherwise than the day asked, as a plan has them. */
export function amiss({day, dishes}: PlanProblem, plan: Plan): Amiss {
  const byId = new Map(dishes.map((d) => [d.id, d]))
  const late = new Map<string, Late>()
  const afterMeal = new Set<string>()
  for (const {dish: id, draw} of plan.loads.flatMap((load) => load.dishes)) {
    const dish = byId.get(id)
    if (!dish) continue
    const {by: wanted, unsaid} = meantFor(dish, day.serve)
    const drawn = draw.likely
    if (wanted === null || drawn <= wanted) continue
    if (unsaid) afterMeal.add(id)
    else if (drawn > (late.get(id)?.drawn ?? 0)) late.set(id, {dish: id, wanted, drawn})
  }
  const told = (...ids: readonly string[]): string[] => {
    const found = (plan.changes ?? []).flatMap(({dish, words}) =>
      dish !== null && words && ids.includes(words.what.id) ? [dish] : [],
    )
    return [...new Set(found)]
  }
  const underdone = told(
    'eased unfinished',
    'drawn early',
    'drawn raw',
    'said raw',
    'said raw late',
    'put back in vain',
    'out for fire',
  )
  return {
    late: [...late.values()],
    underdone,
    scant: told('eased short', 'eased end').filter((id) => !underdone.includes(id)),
    lost: told('lost', 'lost, some made again'),
    afterMeal: [...afterMeal],
  }
}

/** Minutes by which dishes are drawn after they are wanted, added up as a person counts: each dish that the day asks for once, however many parts or batches, by its last. */
export function minutesLate({dishes}: Pick<PlanProblem, 'dishes'>, late: readonly Late[]): number {
  const most = new Map<string, number>()
  for (const {dish: id, wanted, drawn} of late) {
    const dish = dishes.find((d) => d.id === id)
    const name = dish ? askedAs(dish) : id
    most.set(name, Math.max(most.get(name) ?? 0, drawn - wanted))
  }
  return [...most.values()].reduce((sum, minutes) => sum + minutes, 0)
}

/** The same of a whole plan: what comes too late to be of use, and counts as left out, is late as well. */
export function minutesLateIn(problem: PlanProblem, plan: Plan): number {
  return minutesLate(problem, amiss(problem, plan).late)
}

/** True where something of a morning's plan comes so late that it is of little use (`rules.bearable`). */
export function hoursLate(problem: PlanProblem, plan: Plan): boolean {
  if (problem.done) return false
  const byId = new Map(problem.dishes.map((d) => [d.id, d]))
  return amiss(problem, plan).late.some(({dish, wanted, drawn}) => drawn - wanted > bearable(problem, byId.get(dish)!, wanted))
}

/** True where every dish has its place, comes when it is wanted and is done: what the day asked for. */
export function asAsked(problem: PlanProblem, plan: Plan): boolean {
  const {late, underdone} = amiss(problem, plan)
  return plan.possible && late.length === 0 && underdone.length === 0
}
