import {writeClock} from '../measure/quantity.js'
import type {Message} from '../receipt/types.js'
import {dueOf, lineOf, soonestOf} from './model.js'
import {rules} from './rules.js'
import type {Plan, PlanProblem} from './types.js'

/**
 * Dishes that are wanted before any fire of the day could have them ready, in an oven that has nothing else to do. What to write is when the
 * plan has them, and the fire with which the day was tried; other dishes cool an oven that has to fall, so that one may be had sooner than
 * by itself, and then that it cannot be is not said.
 */
export function tooEarly(problem: PlanProblem, plan: Plan): Message[] {
  const {day, dishes} = problem
  const earlier = plan.ways?.find(({kind, works, late}) => kind === 'earlier fire' && works && late < 0)?.words.values['from']
  const fire = typeof earlier === 'object' && earlier.unit === 'clock' ? earlier.value : null
  return dishes.flatMap((dish): Message[] => {
    const wanted = dueOf(dish, day.serve)
    const drawn = plan.loads.flatMap((load) => load.dishes.flatMap((d) => (d.dish === dish.id ? [d.draw.likely] : [])))
    if (wanted === null || drawn.length === 0) return []
    const soonest = rules.tick * Math.ceil(soonestOf(problem, dish) / rules.tick)
    const last = Math.max(...drawn)
    if (!Number.isFinite(soonest) || wanted >= soonest || last < soonest) return []
    const key = dish.wantedBy === null ? 'serve:' : dish.wantedHot ? 'hot at' : 'wanted by'
    const later = `“${key} ${writeClock(last)}”`
    return [
      {
        ...lineOf(day, dish),
        severity: 'warning',
        rule: 'too-early',
        reason: `${dish.title}: wanted by ${writeClock(wanted)}; lit at ${writeClock(day.fireFrom)}, no fire has that ready before ${writeClock(soonest)}`,
        times: [wanted, day.fireFrom, soonest, last, ...(fire === null ? [] : [fire])],
        suggest:
          fire === null ? `write ${later} or later` : `write ${later} or later, or “fire from: ${writeClock(fire)}” or earlier`,
      },
    ]
  })
}
