import {kinds} from '../lexicon/kinds.js'
import type {Dish} from '../scale/types.js'
import type {Plan, PlanProblem} from './types.js'

/** When a dish whose water boils away is topped up. Minutes; common practice, no source. */
const TOPPING = {
  /** It has boiled nothing away sooner after it was set in or topped up. */
  every: 60,
  /** Not looked at again where it is drawn so soon. */
  drawn: 30,
  /** Left alone for longer it is filled up first, however lately that was done. */
  long: 240,
} as const

const DRINKS: ReadonlySet<string> = new Set(kinds.flatMap(({id, drinks}) => (drinks ? [id] : [])))

/** True of a dish whose water boils away as it bakes. */
export const drinks = ({kind}: Pick<Dish, 'kind'>): boolean => DRINKS.has(kind ?? '')

/** What is topped up at one opening of the door; `until` is when somebody next looks in, where that is hours away. */
export interface ToppedUp {
  readonly at: number
  readonly dishes: readonly string[]
  readonly until: number | null
}

/**
 * When the dishes whose water boils away are topped up: where the door is opened for others while they stand in, and before they are left
 * alone for hours, at the last opening before, if it is that at which they are set in.
 *
 * @param openings when the door is opened, minutes after midnight, each once and in order
 */
export function toppingUp(problem: PlanProblem, plan: Pick<Plan, 'loads'>, openings: readonly number[]): ToppedUp[] {
  const drinking = new Set(problem.dishes.flatMap((dish) => (drinks(dish) ? [dish.id] : [])))
  const out = new Map<string, {at: number; dishes: string[]; until: number | null}>()
  for (const load of plan.loads)
    for (const {dish, draw, alreadyIn} of load.dishes) {
      if (!drinking.has(dish)) continue
      let filled = load.at
      for (const [i, at] of openings.entries()) {
        const next = openings[i + 1]
        if (at < load.at || at >= draw.likely || next === undefined) continue
        const long = next - at >= TOPPING.long
        const fresh = at === load.at && alreadyIn !== true
        if (!long && (fresh || at - filled < TOPPING.every || draw.likely - at <= TOPPING.drawn)) continue
        filled = at
        const until = long ? next : null
        const key = `${at} ${until}`
        const one = out.get(key) ?? {at, dishes: [], until}
        if (!one.dishes.includes(dish)) one.dishes.push(dish)
        out.set(key, one)
      }
    }
  return [...out.values()]
}
