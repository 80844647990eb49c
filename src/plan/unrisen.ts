import {writeClock} from '../measure/quantity.js'
import type {Message} from '../receipt/types.js'
import {lineOf} from './model.js'
import type {Plan, PlanProblem} from './types.js'

/** Dough may be short of its time by this share and this many minutes: less than a warmer corner makes good. Common practice, no source. */
const SHORT = {share: 0.1, minutes: 10} as const

/** When the doughs of one dish are mixed, minutes after midnight, in order. */
const mixings = ({steps}: Plan, id: string): number[] =>
  steps.flatMap((step) => (step.action === 'mix' && step.dishes.includes(id) ? [step.at] : []))

/**
 * Doughs that a day planned again sets in before they can have risen: they were mixed when the plan that then hung on the wall had it, or
 * are not mixed yet, and no change of plan makes them rise sooner.
 *
 * @param again the plan made now
 * @param problem what it solves; `done` holds the time it was made at and the plan followed until then
 * @param morning the plan of the morning
 * @param firstChange when the day was first planned again, minutes after midnight: what was mixed before was mixed as the morning had it
 * @param shift minutes by which the fire was lit later than the morning's plan had it
 * @returns warnings of rule `unrisen`, at the line of the day that asks for the dish
 */
export function unrisen(
  again: Plan,
  {day, dishes, done}: PlanProblem,
  morning: Plan,
  firstChange: number,
  shift: number,
): Message[] {
  const {now, plan: followed = null} = done!
  return dishes.flatMap((dish): Message[] => {
    const {dough} = dish
    const early = mixings(morning, dish.id)
    // None: a dough of the evening before, which is kept cool and can wait.
    if (!dough || early.length === 0) return []
    const later = followed ? mixings(followed, dish.id) : []
    const sets = again.loads
      .filter((load) => load.dishes.some((d) => d.dish === dish.id && !d.alreadyIn))
      .map((load) => load.at)
      .sort((a, b) => a - b)
    for (const [i, at] of sets.entries()) {
      // What is already in was mixed first, so the two are counted from their ends.
      const fromEnd = (of: readonly number[]): number => of[Math.max(0, of.length - sets.length + i)] ?? Number.POSITIVE_INFINITY
      const first = fromEnd(early) + Math.max(0, shift)
      const mixed = Math.min(now, first < firstChange ? first : fromEnd(later))
      const ready = mixed + dough.mix + dough.rise + dough.shape
      if (ready - at <= Math.max(SHORT.minutes, SHORT.share * dough.rise)) continue
      return [
        {
          ...lineOf(day, dish),
          severity: 'warning',
          rule: 'unrisen',
          reason: `${dish.title}: set in at ${writeClock(at)}, and the dough has not risen and been shaped before ${writeClock(ready)}`,
          times: [at, ready],
          suggest: 'stand it warmer; if it has not risen by then, set it in when it has, note that and plan again',
        },
      ]
    }
    return []
  })
}
