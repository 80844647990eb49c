import type {FiringLog} from '../oven/log.js'
import type {Message} from '../receipt/types.js'
import type {Dish} from '../scale/types.js'
import {changed} from './changes.js'
import {ACROSS, curveOf, doseNeeded, doseTable} from './curve.js'
import {shortest} from './ease.js'
import {type Followed, partsOf} from './followed.js'
import {type InForce, planAt} from './in-force.js'
import {phrase} from './phrases.js'
import {rules} from './rules.js'
import {placeIn, rowAt} from './told.js'
import type {Change, PlanProblem} from './types.js'

/** Share of the heat of its receipt's shortest time with less of which a dish was hardly done, whatever the oven's range. */
const HARDLY = 0.6

/** Whether the plan that was followed then had a dish that was set in at `at` drawn no later than it was. */
function drawnAsPlanned(inForce: readonly InForce[], log: FiringLog, dish: string, at: number, drawn: number): boolean {
  const plan = planAt(inForce, drawn)
  const shift = log.lit! - plan.lit
  const late = (part: Followed): number => at - (part.at + shift)
  const parts = partsOf(plan.loads).filter(({entry}) => entry.dish === dish)
  const [nearest] = parts.sort((a, b) => Math.abs(late(a)) - Math.abs(late(b)))
  // What was set in late is not done the sooner for it.
  return nearest !== undefined && drawn >= nearest.entry.draw.low + shift + Math.max(0, late(nearest)) - rules.tick
}

/**
 * What the log says was drawn far too early: a slip of the pen, or food that must not be eaten as it is. What was drawn when the plan then
 * had it drawn was seen to be done, whatever a later reading makes of the oven.
 */
export function drawnEarly(
  {done, firings, ambient}: PlanProblem,
  dishes: ReadonlyMap<string, Dish>,
  log: FiringLog,
  inForce: readonly InForce[],
): {readonly change: Change; readonly message: Message}[] {
  const curve = curveOf(firings[0]!.forecast, ambient ?? 20)
  return done!.set.flatMap(({dish: id, at, drawn}) => {
    const dish = dishes.get(id)
    const row = dish && rowAt(log, 'drawn', drawn, dish)
    if (!dish || !row || drawn === null) return []
    const table = doseTable(curve, ACROSS, dish.need.done)
    const dose = (minutes: number): number => table[Math.max(0, Math.min(table.length - 1, Math.round(minutes - log.lit!)))]!
    const share = (dose(drawn) - dose(at)) / doseNeeded(dish.need, shortest(dish.need))
    if (share >= HARDLY || drawnAsPlanned(inForce, log, id, at, drawn)) return []
    const percent = Math.max(0, Math.floor(100 * share))
    return [
      {
        change: changed(id, phrase('drawn early', {percent}), phrase('why log')),
        message: {
          ...placeIn(log, row.line),
          severity: 'warning',
          rule: 'drawn-early',
          reason: `${dish.title}: logged as drawn with ${percent} % of its heat`,
          suggest: 'put the time right, or bake it on in another oven unless it is done',
        },
      },
    ]
  })
}
