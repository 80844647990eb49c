import {withoutBatch} from '../plan/batches.js'
import {listed} from '../plan/phrases.js'
import type {Plan, PlanProblem} from '../plan/types.js'
import type {Dish} from '../scale/types.js'
import {dishTitle} from './heat-data.js'
import {vesselName} from './said.js'
import type {Style} from './style.js'
import {say} from './words/index.js'

/** How many vessels of each dish the plan has no place for, by the dish's id; dishes that have all their places are not in it. */
export function leftOut(plan: Plan, problem: PlanProblem): ReadonlyMap<string, number> {
  const {done} = problem
  const out = new Map<string, number>()
  for (const dish of problem.dishes) {
    if (!plan.unplaced.some((one) => one.dish === dish.id)) continue
    // What is out of the oven already may stand in the plan's loads or not; the log knows it in either case.
    const planned = plan.loads
      .flatMap((load) => load.dishes.map((entry) => ({...entry, at: load.at})))
      .filter((entry) => entry.dish === dish.id && (!done || entry.alreadyIn === true || entry.at >= done.now))
    const drawn = done?.set.filter((one) => one.dish === dish.id && one.drawn !== null && !one.instead) ?? []
    const placed = [...planned, ...drawn].reduce((sum, {count}) => sum + count, 0)
    out.set(dish.id, Math.max(1, dish.count - placed))
  }
  return out
}

/** Whether a plan made before the fire is lit sets nothing in, of all that is asked for: its fire is for nothing. */
export const isForNothing = ({loads, unplaced}: Plan, {done}: PlanProblem): boolean =>
  loads.length === 0 && unplaced.length > 0 && (done?.lit ?? null) === null

/** What the plan is good for with something left out: for the rest, or for nothing. */
export const standsLine = (plan: Plan, problem: PlanProblem, {words}: Style): string =>
  words[isForNothing(plan, problem) ? 'plan.forNothing' : 'plan.stands']

/** “Apple pies (6 × pie plate), Scones (2 of 8 × sheet)”: what has no place, batches of one dish together; null where all has one. */
export function leftOutLine(plan: Plan, problem: PlanProblem, style: Style): string | null {
  const out = leftOut(plan, problem)
  const byName = new Map<string, {vessel: string; missing: number; of: number}>()
  for (const dish of problem.dishes) {
    const name = withoutBatch(dishTitle(problem, dish.id))
    const before = byName.get(name)
    byName.set(name, {
      vessel: before?.vessel ?? vesselName(dish.vessel.name, style),
      missing: (before?.missing ?? 0) + (out.get(dish.id) ?? 0),
      of: (before?.of ?? 0) + dish.count,
    })
  }
  const names = [...byName]
    .filter(([, {missing}]) => missing > 0)
    .map(([title, {vessel, missing, of}]) =>
      say(style.words, missing < of ? 'shop.outPart' : 'shop.outAll', {title, missing, of, vessel}),
    )
  return names.length === 0 ? null : say(style.words, 'shop.out', {list: listed(names, style.words['list.and'])})
}

/** What stands at a dish's heading in the weighing-out where not all of it has a place; null where it has. */
export function leftOutMark(dish: Pick<Dish, 'id' | 'count'>, out: ReadonlyMap<string, number>, style: Style): string | null {
  const missing = out.get(dish.id)
  if (missing === undefined) return null
  return missing < dish.count ? say(style.words, 'shop.markPart', {missing, of: dish.count}) : style.words['shop.markAll']
}
