import {writeClock, writeDuration} from '../measure/quantity.js'
import type {Message} from '../receipt/types.js'
import type {Dish} from '../scale/types.js'
import {hotUntil, lineOf, meantFor} from './model.js'
import {rules} from './rules.js'
import type {Day, FiringOption, Load, PlanProblem} from './types.js'

/** What is drawn after it is wanted, or hours before it is eaten hot, and what the day or its log could say to have it otherwise. */

/** A dish that comes out after it is wanted, or after the meal where nobody said when, is named: the total alone hides it. */
export function afterTime(dish: Dish, drawn: number, day: Day): Message | null {
  const {by: meant, unsaid: stays} = meantFor(dish, day.serve)
  if (meant === null || drawn <= meant) return null
  return {
    ...lineOf(day, dish),
    severity: stays ? 'info' : 'warning',
    rule: stays ? 'after-meal' : 'late',
    reason: stays
      ? `${dish.title}: in past the serving time, and ready for the next day`
      : `${dish.title}: drawn ${writeDuration(drawn - meant)} later than wanted`,
    suggest: stays ? 'write beside its link when it is wanted, if it is for this meal' : 'ask for it later, or make less',
  }
}

/**
 * What is eaten hot and stands for hours first is named: nobody sees from a draw alone that it is hours before the meal. What the day wants
 * hot is named as soon as it is hot no longer.
 *
 * @param fire when another fire may be lit for it on a day that has begun, minutes after midnight; null where none may
 */
export function tooSoon(
  dish: Dish,
  drawn: number,
  {day, done}: Pick<PlanProblem, 'day' | 'done'>,
  fire: number | null,
): Message | null {
  const wanted = hotUntil(dish, day.serve)
  if (wanted - drawn <= (dish.wantedHot ? rules.keepsHot : rules.coldMinutes)) return null
  const keep = 'keep it hot, or cool it quickly and heat it through'
  const again = done && dish.wantedHot ? fire : null
  const other = !dish.wantedHot
    ? `write “hot at ${writeClock(wanted)}” behind its link as a wish: it is then drawn for its meal if it can be, and other dishes may come late or lose their place for it`
    : done
      ? again === null
        ? null
        : `light another fire for it when the oven is empty: note “fire again at ${writeClock(again)}”`
      : day.firings < 2
        ? 'write “firings: 2” in the day’s front matter, so that a second fire may be lit for it'
        : 'ask for it sooner, or for the rest later'
  return {
    ...lineOf(day, dish),
    severity: 'warning',
    rule: 'stands',
    reason: `${dish.title}: drawn ${writeDuration(wanted - drawn)} before it is wanted, and eaten hot`,
    ...(dish.wantedHot ? (again === null ? {} : {times: [again]}) : {times: [wanted]}),
    suggest: other === null ? keep : `${keep}; or ${other}`,
  }
}

/** Minutes for which an oven falls from a short fire to the heat of a dish, where there is time for that. Common practice, no source. */
const FALLS = 90

/**
 * When another fire may be lit for a dish of a day that has begun: once all else is drawn, with time left for the shortest such fire, its soak
 * and the dish's bake, and no sooner than it takes to have it hot for its meal; null where that is too late or by night, or the day has another
 * fire, for none beyond that is planned ahead.
 *
 * @returns minutes after midnight
 */
export function anotherFire(
  {day, done}: Pick<PlanProblem, 'day' | 'done'>,
  loads: readonly Load[],
  {firing, further = []}: Pick<FiringOption, 'firing' | 'further'>,
): (dish: Dish) => number | null {
  return (dish) => {
    if (!done || further.length > 0) return null
    const latest = hotUntil(dish, day.serve) - dish.need.minutes.high - firing.soak - rules.fireAgain.burns[0]
    const others = loads.flatMap(({at, dishes}) =>
      dishes.flatMap((d) => (d.dish !== dish.id && at < latest ? [d.draw.likely] : [])),
    )
    const empty = Math.max(rules.tick * Math.ceil(done.now / rules.tick), ...others)
    if (empty > latest) return null
    const hour = Math.max(empty, rules.tick * Math.floor((latest - FALLS) / rules.tick))
    const ofDay = hour % 1440
    return ofDay < rules.waking || ofDay >= rules.nightFrom ? null : hour
  }
}
