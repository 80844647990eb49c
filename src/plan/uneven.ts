import {curveOf, mostDose, whereIndex} from './curve.js'
import {doseBetween, staysIn} from './keeps.js'
import {rules} from './rules.js'
import type {Load, Plan, PlanProblem} from './types.js'

/** A dish of which what stands in one part of the floor comes out darker than the longest time of its receipt makes it. */
export interface Uneven {
  readonly dish: string
  /** When it is drawn, minutes after midnight. */
  readonly draw: number
  /** The parts of the floor where it had most of its dose, and least. */
  readonly hottest: Load['placed'][number]['zone']
  readonly coolest: Load['placed'][number]['zone']
}

/** What filled the floor and is drawn when the coolest of it is done, with the hottest beyond its receipt's longest (`rules.spread`). */
export function unevenly(
  {dishes, ambient = 20}: PlanProblem,
  {forecast, lit}: Pick<Plan, 'forecast' | 'lit'>,
  load: Load,
): Uneven[] {
  const curve = curveOf(forecast, ambient)
  // Parts of one dish that go in together and are drawn together are one floor full.
  const drawn = load.dishes.filter(
    ({dish, draw}, i, all) => all.findIndex((one) => one.dish === dish && one.draw.likely === draw.likely) === i,
  )
  return drawn.flatMap(({dish: id, draw, alreadyIn}): Uneven[] => {
    const {need} = dishes.find((one) => one.id === id)!
    const zones = [...new Set(load.placed.flatMap((v) => (v.dish === id ? [v.zone] : [])))]
    if (alreadyIn || staysIn(need) || zones.length < 3) return []
    const doses = zones
      .map((zone) => ({zone, dose: doseBetween(curve, need, whereIndex(zone), load.at - lit, draw.likely - lit)}))
      .sort((a, b) => b.dose - a.dose)
    const [most] = doses
    // As the checker grants what is summed another way.
    return most!.dose > mostDose(need) * (1 + rules.doseWanting)
      ? [{dish: id, draw: draw.likely, hottest: most!.zone, coolest: doses.at(-1)!.zone}]
      : []
  })
}
