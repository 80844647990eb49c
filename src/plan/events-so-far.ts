import type {OvenEvent} from '../oven/types.js'
import type {Dish} from '../scale/types.js'
import {inOrder} from './events.js'
import {handlingOf} from './hands.js'
import {doorEvents, loadEvent} from './response.js'
import type {DoneSoFar} from './types.js'

/** What has been set in and drawn by now, as the oven sees it: minutes after lighting. */
export interface EventsSoFar {
  readonly past: readonly OvenEvent[]
  /** Those of loads already drawn, which are no longer the planner's: they stay in the oven's history. */
  readonly gone: readonly OvenEvent[]
}

/**
 * The loads and openings so far.
 *
 * @param set what has been set in; nothing of what was lost before that
 * @param dishes those of the day, by their ids
 * @param lit minutes after midnight
 * @param doors the openings that the log notes
 */
export function eventsSoFar(
  set: DoneSoFar['set'],
  dishes: ReadonlyMap<string, Dish>,
  lit: number,
  doors: readonly OvenEvent[],
): EventsSoFar {
  const loads = (of: DoneSoFar['set']): OvenEvent[] =>
    of.flatMap((s) => {
      const dish = dishes.get(s.dish)
      return dish ? [loadEvent(dish, s.count, s.at - lit)] : []
    })
  const drawn = set.filter((s) => s.drawn !== null)
  const inside = set.filter((s) => s.drawn === null)
  const doorsGone = doors.filter((d) => !inside.some((s) => Math.abs(s.at - lit - d.minutes) <= SAME_OPENING))
  return {
    past: inOrder([...loads(set), ...openingsOf(set, dishes, lit, doors)]),
    gone: [...loads(drawn), ...openingsOf(drawn, dishes, lit, doorsGone)],
  }
}

/** Minutes within which a door that the log notes is the opening at which something was set in or drawn. */
const SAME_OPENING = 2.5

/** The door's openings so far: those the log notes, and those at which something was set in or drawn, for as long as the hands need. */
function openingsOf(
  set: DoneSoFar['set'],
  dishes: ReadonlyMap<string, Dish>,
  lit: number,
  noted: readonly OvenEvent[],
): OvenEvent[] {
  const hands = new Map<number, number>()
  for (const s of set) {
    const dish = dishes.get(s.dish)
    if (!dish) continue
    for (const at of s.drawn === null ? [s.at] : [s.at, s.drawn])
      hands.set(at - lit, (hands.get(at - lit) ?? 0) + handlingOf(dish) * s.count)
  }
  const own = doorEvents(hands).filter((e) => !noted.some((d) => Math.abs(d.minutes - e.minutes) <= SAME_OPENING))
  return [...noted, ...own]
}
