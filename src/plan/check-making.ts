import {lookUpKind} from '../lexicon/index.js'
import {makings} from '../lexicon/making-work.js'
import type {Report} from './check.js'
import type {Told} from './check-dough.js'
import {workOfDay} from './check-dough.js'
import {rules} from './rules.js'
import type {Plan, PlanProblem} from './types.js'

/** The checker's rule for what is made up without a dough: a step says so in time, and there are hands for it. It shares no code with the planner. */

/** Work to be done some time between two clock times, minutes after midnight. */
interface Due {
  readonly dish: string
  readonly title: string
  readonly from: number
  readonly to: number
  readonly minutes: number
}

/**
 * @param doughs the doughs that the steps tell of
 * @param bad called for each rule that is broken
 */
export function checkMakings(problem: PlanProblem, plan: Plan, doughs: readonly Told[], bad: Report): void {
  const due = dueIn(problem, plan, bad)
  if (plan.messages.some(({rule, reason}) => rule === 'hands' && reason.includes('to be made up while the hands are full')))
    return
  const other = workOfDay(problem, plan, doughs)
  const known = new Map<number, number>()
  /** Minutes of hands that other work leaves until the next clock time. */
  const leftAt = (t: number): number => {
    const before = known.get(t)
    if (before !== undefined) return before
    const taken = other.reduce((sum, w) => sum + Math.max(0, Math.min(w.to, t + rules.tick) - Math.max(w.from, t)), 0)
    const left = Math.max(0, problem.day.hands * rules.tick - taken)
    known.set(t, left)
    return left
  }
  const now = problem.done?.now ?? Number.NEGATIVE_INFINITY
  for (const from of new Set(due.map((one) => one.from).filter((at) => at >= now)))
    for (const to of new Set(due.map((one) => one.to))) {
      const mine = due.filter((one) => one.from >= from && one.to <= to)
      if (mine.length === 0) continue
      let left = 0
      for (let t = from; t < to; t += rules.tick) left += leftAt(t)
      const over = mine.reduce((sum, {minutes}) => sum + minutes, 0) - left
      // What cannot be is told once.
      if (over <= 0.01) continue
      bad('hands', mine[0]!.dish, from, over, `${mine[0]!.title}: it is made up while the hands are full`)
      return
    }
}

/** What the steps have made up by day, and by when. */
function dueIn(problem: PlanProblem, plan: Plan, bad: Report): Due[] {
  return plan.loads.flatMap((load) => {
    const fresh = [...new Set(load.dishes.filter((d) => !d.alreadyIn).map((d) => d.dish))]
    return fresh.flatMap((id): Due[] => {
      const dish = problem.dishes.find((d) => d.id === id)
      if (!dish || dish.dough || lookUpKind(dish.kind)?.uneaten) return []
      const step = plan.steps.find((s) => s.action === 'mix' && s.load === load.number && s.dishes.includes(id))
      if (!step || step.at >= load.at) {
        bad('steps', id, load.at, 0, `${dish.title}: no step makes it up before it goes in`)
        return []
      }
      if (step.words?.say.id === 'make up early') return []
      const count = load.dishes.reduce((sum, d) => sum + (d.dish === id && !d.alreadyIn ? d.count : 0), 0)
      const row = makings.find(({kinds}) => kinds.includes(dish.kind)) ?? makings.at(-1)!
      const fives = Math.round((row.minutes + row.perKilogram * dish.mass * count) / rules.tick)
      return [{dish: id, title: dish.title, from: step.at, to: load.at, minutes: rules.tick * Math.max(1, fives)}]
    })
  })
}
