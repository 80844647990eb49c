import type {FiringLog} from '../oven/log.js'
import type {Message} from '../receipt/types.js'
import type {Dish} from '../scale/types.js'
import {changed} from './changes.js'
import {ACROSS, curveOf, doseNeeded} from './curve.js'
import {shortest} from './ease.js'
import {type Followed, partsOf} from './followed.js'
import {type InForce, planAt} from './in-force.js'
import {doseBetween} from './keeps.js'
import {notedRaw} from './noted-raw.js'
import {phrase} from './phrases.js'
import {rules} from './rules.js'
import {middleOf, STOOD} from './safe-middle.js'
import {placeIn, rowAt} from './told.js'
import type {Change, PlanProblem} from './types.js'

/** Share of the heat of its receipt's shortest time with less of which a dish was hardly done, whatever the oven's range. */
const HARDLY = 0.6

/** What to do about food with raw meat in it, and whether the oven has the heat for it yet. */
function cookedThrough(dish: Dish, bakes: boolean, seen: boolean): string {
  const middle = middleOf(dish)
  const or = seen ? 'cooked elsewhere, note with its name “cooked through”' : 'or put the time right'
  return bakes
    ? `set it in again now and note that, and do not eat it before it has ${middle}; ${or}`
    : `the oven has no heat left for it: cook it through elsewhere now, and do not eat it before it has ${middle}; ${or}`
}

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
 * had it drawn was seen to be done, whatever a later reading makes of the oven; but not raw meat or fish of which the log says that it was not.
 */
export function drawnEarly(
  {done, firings, ambient}: PlanProblem,
  dishes: ReadonlyMap<string, Dish>,
  log: FiringLog,
  inForce: readonly InForce[],
): {readonly change: Change; readonly message: Message}[] {
  const curve = curveOf(firings[0]!.forecast, ambient ?? 20)
  const told = new Set<string>()
  return done!.set.flatMap(({dish: id, at, drawn, back}) => {
    const dish = dishes.get(id)
    const row = dish && rowAt(log, 'drawn', drawn, dish)
    // Of what was taken out for a fire more is said (`outForFire`).
    if (!dish || !row || drawn === null || row.emptied) return []
    const dose = (from: number, to: number): number => doseBetween(curve, dish.need, ACROSS, from - log.lit!, to - log.lit!)
    const share = dose(at, drawn) / doseNeeded(dish.need, shortest(dish.need))
    // Parts that came out together are told of once.
    const key = `${id} ${drawn}`
    const noted = dish.raw ? notedRaw(log, dish, drawn, done!.set) : null
    const raw = noted?.raw ?? null
    // Nobody eats what was thrown away.
    if (noted?.cooked || (dish.raw && row.whole) || told.has(key)) return []
    if (raw === null && (share >= HARDLY || drawnAsPlanned(inForce, log, id, at, drawn))) return []
    told.add(key)
    const percent = Math.max(0, Math.floor(100 * share))
    if (dish.raw) {
      // What stands outside loses about as fast as it gained.
      const kept = Math.max(0, 1 - (done!.now - drawn) / Math.max(1, drawn - at))
      // Whoever saw it raw knows better than any reckoning what it had.
      const had = raw === null ? share : Math.min(share, HARDLY)
      const wanting = (1 - had * kept) * doseNeeded(dish.need, shortest(dish.need))
      const bakes = dose(done!.now, done!.now + (dish.need.longest ?? dish.need.minutes.high)) >= wanting
      const stood = Math.max(done!.now - drawn, back ? back.again - back.out : 0) > rules.coldMinutes
      const again = bakes && !stood
      const what =
        raw === null ? phrase(again ? 'drawn raw' : 'drawn early', {percent}) : phrase(again ? 'said raw' : 'said raw late')
      return [
        {
          change: changed(id, what, phrase('why log')),
          message: {
            ...placeIn(log, (raw ?? row).line),
            severity: 'warning',
            rule: 'drawn-raw',
            reason:
              raw === null
                ? `${dish.title}: logged as drawn with ${percent} % of its heat, and there is raw meat or fish in it`
                : `${dish.title}: drawn, and noted as not done, and there is raw meat or fish in it`,
            suggest: stood ? STOOD : cookedThrough(dish, bakes, raw !== null),
          },
        },
      ]
    }
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
