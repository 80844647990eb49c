import {minutesLateIn} from '../asked.js'
import {fedBy} from '../fed.js'
import {bearable, dueOf, feedsOf} from '../model.js'
import {rules} from '../rules.js'
import type {Plan, PlanProblem} from '../types.js'

/** How much of a day a plan does not give. */
export interface Lack {
  /** Vessels left out. */
  readonly out: number
  /** People whom they were to feed, each dish counted by itself. */
  readonly without: number
  /** Minutes late in all, each dish counted once. */
  readonly late: number
  /** Dishes set in or drawn with less heat than they should have, on a day that has begun. */
  readonly wanting: number
  /** Minutes late in all that what they want is worth (`WANTING`). */
  readonly short: number
}

/**
 * Minutes late in all that a dish is worth which wants some of its heat: for that it does, for each hundredth of its dose, and for each °C by
 * which it is set in or drawn under its least heat. Bread with a seventh of its heat wanting is worse than bread an hour late. Common practice,
 * no source.
 */
const WANTING = {dish: 15, hundredth: 3, celsius: 1} as const

/** What each dish that wants some of its heat is worth, by its part that wants most. */
function wantingOf({loads}: Plan): number[] {
  const worst = new Map<string, number>()
  for (const {dish, eased} of loads.flatMap((load) => load.dishes)) {
    if (!eased) continue
    const worth = WANTING.dish + WANTING.hundredth * 100 * (1 - eased.dose) + WANTING.celsius * Math.max(eased.start, eased.end)
    worst.set(dish, Math.max(worth, worst.get(dish) ?? 0))
  }
  return [...worst.values()]
}

/**
 * When each dish would come too late to be of use, and a day planned in earnest rather leaves it out (`Job.bears`); never where `late` says
 * that it will do.
 */
function uselessFrom(problem: PlanProblem, late: boolean): (dish: string) => number {
  const {done} = problem
  const from = new Map(
    (late ? [] : problem.dishes).map((dish) => {
      const due = dueOf(dish, problem.day.serve)
      if (due === null) return [dish.id, Number.POSITIVE_INFINITY]
      // The fire of a day that has begun is what it is, and says nothing of how soon another would have it.
      return [dish.id, done ? Math.max(due, done.now) + rules.bearable : due + bearable(problem, dish, due)]
    }),
  )
  return (dish) => from.get(dish) ?? Number.POSITIVE_INFINITY
}

/** Vessels of each dish that a plan has not, or, unless `late` says that they will do, too late to be of use. */
export function outOf(problem: PlanProblem, plan: Plan, late: boolean): Map<string, number> {
  const left = new Map(problem.dishes.map((d) => [d.id, d.count]))
  const less = (id: string, count: number): void => void left.set(id, (left.get(id) ?? 0) - count)
  const useless = uselessFrom(problem, late)
  for (const load of plan.loads) for (const d of load.dishes) if (d.draw.likely <= useless(d.dish)) less(d.dish, d.count)
  // What was drawn before the day was planned again stands in no load.
  for (const s of problem.done?.set ?? []) if (s.drawn !== null && !s.instead) less(s.dish, s.count)
  return new Map([...left].filter(([, count]) => count > 0))
}

/**
 * How much of a day a plan does not give.
 *
 * @param late What comes too late to be of use will do.
 */
export function lackOf(problem: PlanProblem, plan: Plan, late: boolean): Lack {
  const left = outOf(problem, plan, late)
  const fed = fedBy(problem)
  const without = problem.dishes.reduce((sum, dish) => sum + feedsOf({dish, fed: fed(dish), count: left.get(dish.id) ?? 0}), 0)
  const wanting = wantingOf(plan)
  return {
    out: [...left.values()].reduce((sum, n) => sum + n, 0),
    // To a thousandth, so that sums in another order are the same.
    without: Math.round(1000 * without) / 1000,
    late: minutesLateIn(problem, plan),
    wanting: wanting.length,
    short: Math.round(wanting.reduce((sum, worth) => sum + worth, 0)),
  }
}

/** True where fewer people go without; or as many, and less is left out; or as much, and it comes less late. */
export const lessThan = (a: Lack, b: Lack): boolean =>
  a.without < b.without || (a.without === b.without && (a.out < b.out || (a.out === b.out && a.late < b.late)))

/** Minutes late in all, and what is worth as many. */
export const lacking = ({late, short}: Lack): number => late + short

/** The same, where what is late and what wants some of its heat count together. */
export const lacksLess = (a: Lack, b: Lack): boolean =>
  a.without < b.without || (a.without === b.without && (a.out < b.out || (a.out === b.out && lacking(a) < lacking(b))))

/** Minutes later in all that a vessel more with its place may cost, or the same people fed by fewer. */
const LATER = 120
/** Share of the minutes late that has to go for leaving something out, or making less, to be worth it. */
const WORTH = 0.5

/** True where a trial lacks less than the day does, and does not make far more of it late. */
export const helps = (tried: Lack, now: Lack): boolean =>
  lessThan(tried, now) && tried.late <= now.late + LATER * Math.max(tried.without < now.without ? 1 : 0, now.out - tried.out)

/** True where a trial that does without something asked for leaves no more out than the day does, and far less of it comes late. */
export const spares = (tried: Lack, now: Lack): boolean =>
  tried.without <= now.without && tried.late <= (1 - WORTH) * now.late && tried.late < now.late
