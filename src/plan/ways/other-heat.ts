import {mayTakeFire} from '../../scale/need.js'
import type {Dish} from '../../scale/types.js'
import type {Nightly} from '../hindered.js'
import type {PlanOptions} from '../options.js'
import {type PhraseId, phrase} from '../phrases.js'
import type {PhraseValue, PlanProblem, Remedy} from '../types.js'
import type {Lack} from './lack.js'
import type {Trial, Trials} from './trials.js'

/** Degrees beyond a dish's limits to either side at which it is tried: as a cook would take it. Common practice, no source. */
const BEYOND = [12, 25] as const
/** Degrees to which a receipt states its heat. */
const STATED = 5

/**
 * A dish had at another heat than its receipt's: set in before the night in the hotter oven; or with that heat in the front matter of its
 * receipt, which is of all its batches, and of whatever else is in the file. What comes of that is tried as it would be read.
 *
 * @param stated Files whose heat has been tried so already; what is found of this dish's is added.
 */
export function otherHeat(
  problem: PlanProblem,
  dish: Dish,
  trials: Trials,
  {heatStated}: PlanOptions,
  night: Pick<Nightly, 'from'> | undefined,
  gives: (lack: Lack) => boolean,
  stated: Set<string>,
): Remedy | null {
  const canState = heatStated !== undefined && !stated.has(dish.file)
  if (night === undefined && !canState) return null
  const {startLow, startHigh} = dish.need
  const asked = problem.dishes.filter(({file}) => file === dish.file)
  for (const step of BEYOND) {
    const wider = (d: Dish): Dish => ({
      ...d,
      need: {
        ...d.need,
        startLow: d.need.startLow - step,
        startHigh: d.need.startHigh + (mayTakeFire(d.cautions) ? 0 : step),
        endLow: d.need.endLow - step,
      },
    })
    const tried = trials.plan({dishes: problem.dishes.map((d) => (d.id === dish.id ? wider(d) : d))})
    const outside = tried.plan.loads
      .flatMap(({at, dishes}) => dishes.map((d) => ({at, dish: d.dish, celsius: d.celsiusIn.likely})))
      .find((d) => d.dish === dish.id && (d.celsius < startLow || d.celsius > startHigh))
    if (outside === undefined || !gives(tried.lack)) continue
    const own = (id: PhraseId, {plan, ...rest}: Trial, values: Record<string, PhraseValue>): Remedy =>
      trials.remedy('wider heat', plan, phrase(id, {...values, outcome: trials.outcome({plan, ...rest}, false)}))
    if (night !== undefined && outside.at <= night.from)
      return own('remedy before night', tried, {
        dishes: {unit: 'dishes', dishes: [dish.id]},
        celsius: {unit: 'celsius', value: outside.celsius},
        at: {unit: 'clock', value: outside.at},
      })
    if (!canState) continue
    const celsius = STATED * Math.round(outside.celsius / STATED)
    const needs = heatStated(dish.file, celsius)
    if (asked.some(({id}) => !needs.has(id))) continue
    const changed = problem.dishes.map((d) => (d.file === dish.file ? {...d, need: needs.get(d.id)!} : d))
    const written = trials.whereTrue(trials.plan({dishes: changed}), {dishes: changed}, gives)
    if (!written) continue
    stated.add(dish.file)
    return own('remedy state heat', written, {
      dishes: {unit: 'dishes', dishes: asked.map(({id}) => id), whole: true},
      celsius: {unit: 'celsius', value: celsius},
      line: heatLine(celsius),
      file: dish.file,
    })
  }
  return null
}

/** A heat, °C, as front matter states it. */
const heatLine = (celsius: number): string => `oven: ${celsius} °C`
