import type {Dish} from '../../scale/types.js'
import {phrase} from '../phrases.js'
import {rules} from '../rules.js'
import type {FiringOption, Plan, PlanProblem, Remedy} from '../types.js'
import type {Lack} from './lack.js'
import type {Trials} from './trials.js'

/**
 * A dish left out for the sake of others.
 *
 * @param helpful Whether what the day then lacks, besides that dish, makes it worth it.
 */
export function leftOut(
  {dishes}: PlanProblem,
  id: string,
  trials: Trials,
  near: readonly FiringOption[],
  helpful: (lack: Lack) => boolean,
): Remedy | null {
  const changed = {dishes: dishes.filter((d) => d.id !== id)}
  const tried = trials.whereTrue(trials.plan({firings: near, ...changed}), changed, helpful)
  if (!tried) return null
  const words = phrase('remedy leave out', {dishes: {unit: 'dishes', dishes: [id]}, outcome: trials.outcome(tried, false)})
  return trials.remedy('leave out', tried.plan, words)
}

/** Dishes that stand in the oven while another waits for it, those that take most of its time and floor first. */
export function inTheWay(problem: PlanProblem, plan: Plan, late: string): string[] {
  const size = new Map(problem.dishes.map((d) => [d.id, areaOf(d)]))
  const starts = plan.loads.filter((l) => l.dishes.some((d) => d.dish === late)).map((l) => l.at)
  const start = Math.max(...starts)
  const taken = new Map<string, number>()
  for (const load of plan.loads)
    for (const d of load.dishes) {
      if (d.dish === late || load.at > start) continue
      const minutes = Math.max(rules.tick, Math.min(start, d.draw.likely) - load.at)
      taken.set(d.dish, (taken.get(d.dish) ?? 0) + minutes * d.count * (size.get(d.dish) ?? 0))
    }
  return [...taken].sort((a, b) => b[1] - a[1]).map(([id]) => id)
}

/** Dishes that are set in only when all of some are out, and are not in the oven before, the last drawn first. */
export function bakedAfter({loads}: Pick<Plan, 'loads'>, some: ReadonlySet<string>): string[] {
  const all = loads.flatMap(({at, dishes}) => dishes.map(({dish, draw}) => ({dish, at, out: draw.likely})))
  const out = Math.max(...all.flatMap((one) => (some.has(one.dish) ? [one.out] : [])))
  const before = new Set(all.flatMap(({dish, at}) => (at < out ? [dish] : [])))
  const after = all.filter(({dish}) => !before.has(dish)).sort((a, b) => b.out - a.out)
  return [...new Set(after.map(({dish}) => dish))]
}

/** m² that one vessel of a dish takes. */
function areaOf({vessel: {footprint}}: Dish): number {
  return footprint.shape === 'circle' ? (Math.PI / 4) * footprint.diameter ** 2 : footprint.length * footprint.width
}
