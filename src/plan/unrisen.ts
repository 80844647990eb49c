import {writeClock} from '../measure/quantity.js'
import type {Message} from '../receipt/types.js'
import {coldRiseOf} from '../scale/cold-rise.js'
import {mayBeShort, mayWait} from './dough.js'
import {doughsOf} from './dough-work.js'
import {lineOf} from './model.js'
import type {Plan, PlanProblem} from './types.js'

/**
 * Doughs that a day planned again sets in before they can have risen, or leaves longer than they hold.
 *
 * @param again the plan made now
 * @param problem what it solves; `done` tells when its doughs were mixed
 * @returns warnings of rules `unrisen` and `over-risen`, one a dish, at the line of the day that asks for it
 */
export function unrisen(again: Plan, problem: PlanProblem): Message[] {
  const told = new Set<string>()
  return doughsOf(problem, again).doughs.flatMap(({dish, load, rise, shape, shaped, cool, slow, lookedAgain}): Message[] => {
    const {dough} = dish
    const at = again.loads.find(({number}) => number === load)?.at
    if (!dough || at === undefined || cool || told.has(dish.id)) return []
    const risen = rise + dough.rise + slow.inBulk
    const proves = shaped - shape + (dough.prove?.likely ?? 0) + slow.proving
    // What stands cold is left there until it is shaped.
    const long = !coldRiseOf(dough) && at - (risen + proves) > mayWait(dish)
    // What is shaped late for want of time before has not proved, though it was mixed long ago.
    const ready = Math.max((dough.prove && !long ? Math.max(risen, shape) : risen) + proves, lookedAgain)
    const short = ready - at > mayBeShort(dish) || at < lookedAgain
    if (!short && !long) return []
    told.add(dish.id)
    const said = {...lineOf(problem.day, dish), severity: 'warning', times: [at, ready]} as const
    return short
      ? [
          {
            ...said,
            rule: 'unrisen',
            reason: `${dish.title}: set in at ${writeClock(at)}, and the dough has not risen and been shaped before ${writeClock(ready)}`,
            suggest: 'stand it warmer; if it has not risen by then, set it in when it has, note that and plan again',
          },
        ]
      : [
          {
            ...said,
            rule: 'over-risen',
            reason: `${dish.title}: set in at ${writeClock(at)}, and the dough has risen and been shaped by ${writeClock(ready)}: it holds for ${dough.hold} min`,
            suggest: 'keep it cool; or knock it down when it is full risen, and shape it later',
          },
        ]
  })
}
