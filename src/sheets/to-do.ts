import {loadedAt} from '../plan/longer.js'
import {listed} from '../plan/phrases.js'
import type {Plan, PlanProblem, Step} from '../plan/types.js'
import {clock} from './figures.js'
import {dishTitle, numbered} from './heat-data.js'
import type {Style} from './style.js'
import {say} from './words/index.js'

/** What of a day that has begun is still before the cook. */

/** Work on a dish before it goes in. */
const PREPARES: ReadonlySet<Step['action']> = new Set(['sponge', 'mix', 'rise', 'shape', 'prove'])

/**
 * The steps that a sheet made in the course of the day shows: those to come, and of those past the work on what is not set in yet, since
 * that may still be going on, or have been missed. In the morning, all.
 */
export function stepsToDo(plan: Plan): readonly Step[] {
  const toCome = new Set(plan.loads.flatMap(({dishes}) => dishes.flatMap((d) => (d.alreadyIn === true ? [] : [d.dish]))))
  return plan.steps.filter((step) => !step.past || (PREPARES.has(step.action) && step.dishes.some((id) => toCome.has(id))))
}

/** The steps to do, in the course of the day those begun before apart, each group with what is said above it. */
export function stepGroups(
  plan: Plan,
  {done}: PlanProblem,
  style: Style,
): readonly {readonly lead: string | null; readonly steps: readonly Step[]}[] {
  const steps = stepsToDo(plan)
  const begun = steps.filter(({past}) => past)
  const rest = steps.filter(({past}) => !past)
  const groups =
    done && begun.length > 0
      ? [
          {lead: style.words['plan.begun'], steps: begun},
          {lead: say(style.words, 'plan.fromNow', {time: clock(done.now, style)}), steps: rest},
        ]
      : [{lead: null, steps}]
  return groups.filter((group) => group.steps.length > 0)
}

/** What stands in the oven when the day is planned again, and since when, in words; null in the morning, and until the oven is ready. */
export function inOvenNow(plan: Plan, problem: PlanProblem, style: Style): string | null {
  const {done} = problem
  if (!done) return null
  const {words} = style
  const time = clock(done.now, style)
  const already = new Set(
    plan.loads.flatMap(({number, dishes}) => dishes.flatMap((d) => (d.alreadyIn === true ? [`${number} ${d.dish}`] : []))),
  )
  const inside = numbered(plan, problem).filter(({load, id}) => already.has(`${load} ${id}`))
  if (inside.length === 0) return done.now < plan.ready ? null : say(words, 'plan.noneInNow', {time})
  // The rest of a load may be set in at the same hour, and be one number with what is in.
  const within = plan.loads.flatMap(({at, dishes}) =>
    dishes.flatMap((d) => (d.alreadyIn === true ? [{title: dishTitle(problem, d.dish), from: at, count: d.count}] : [])),
  )
  const sum = (some: readonly {readonly count: number}[]): number => some.reduce((all, {count}) => all + count, 0)
  const dishes = inside.map(({id, title, from}) => {
    const since = {dish: title, time: clock(loadedAt(from, id, done), style)}
    const count = sum(within.filter((one) => one.title === title && one.from === from))
    // Who set all of it in sees that the log has not said so.
    const all = sum(problem.dishes.filter(({id}) => dishTitle(problem, id) === title))
    return count < all ? say(words, 'plan.partInSince', {...since, count, all}) : say(words, 'plan.inSince', since)
  })
  return say(words, 'plan.inNow', {time, dishes: listed([...new Set(dishes)], words['list.and'])})
}
