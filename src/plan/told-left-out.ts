import type {Dish} from '../scale/types.js'
import type {Told} from './told.js'

/** What the day asks for and the plan that was followed has no place for, until the log tells that it was set in all the same. */

/** Vessels of a dish that no plan sets in: behind all that is planned, at no time. */
export function leftOut(dish: Dish, count: number): Told {
  const {need} = dish
  const at = Number.POSITIVE_INFINITY
  return {
    count,
    at,
    draw: at,
    where: 0,
    placed: [],
    load: {number: 0, at, dishes: [], placed: []},
    entry: {
      dish: dish.id,
      count,
      draw: {low: at, likely: at, high: at},
      celsiusIn: {low: need.startLow, likely: need.startBest, high: need.startHigh},
      celsiusOut: {low: need.endLow, likely: need.endLow, high: need.startHigh},
    },
    again: true,
  }
}

/** Whether a part is of what no plan sets in, and the log has not told of yet. */
export const isLeftOut = ({at}: Told): boolean => at === Number.POSITIVE_INFINITY

/**
 * A part that the log says was set in, at a time in minutes after midnight.
 *
 * @param beside what was set in with it and the plan does know of: it is done when that is
 */
export function setInAt(part: Told, at: number, dish: Dish, beside: Told | undefined): Told {
  if (!isLeftOut(part)) return {...part, saidIn: at}
  if (beside) {
    const {entry, load, at: planned, draw, where} = beside
    return {...part, at: planned, draw, where, load, entry: {...entry, dish: dish.id}, saidIn: at}
  }
  // Nobody was told when to draw it: it is in until the log says that it is not.
  return {...withTimes(part, at, dish), saidIn: at, stays: at}
}

/** A part that no plan sets in, at the times that it had: what was not set in at all is left out. */
export function asItWas(part: Told, dish: Dish): Told[] {
  if (!isLeftOut(part)) return [part]
  const {lostAt, saidOut, again: _, ...lost} = part
  if (lostAt !== undefined) return [{...withTimes(lost, lostAt, dish), lostAt}]
  // Nobody knows where it stood either, and it is out.
  return saidOut === undefined ? [] : [{...withTimes(lost, saidOut - dish.need.minutes.likely, dish), saidOut}]
}

/** A part set in at a time, with its receipt's time for it. */
function withTimes(part: Told, at: number, {need: {minutes}}: Dish): Told {
  const draw = {low: at + minutes.low, likely: at + minutes.likely, high: at + minutes.high}
  return {...part, at, draw: draw.likely, load: {...part.load, at}, entry: {...part.entry, draw}}
}
