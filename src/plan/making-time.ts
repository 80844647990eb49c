import {lookUpKind} from '../lexicon/index.js'
import {makings} from '../lexicon/making-work.js'
import type {Making} from '../lexicon/schema.js'
import type {Dish} from '../scale/types.js'
import {rules} from './rules.js'

/** How long making up what has no dough takes of the hands, and how long it may wait. Lengths in minutes. */

/** Minutes of hands to make up so many vessels of a dish (to five), with what its cautions ask for first, and how long that may wait. */
export function makingOf(
  {kind, mass, first = []}: Pick<Dish, 'kind' | 'mass' | 'first'>,
  count: number,
): {minutes: number; waits: Making['waits']} {
  const {minutes, perKilogram, waits} = makings.find(({kinds}) => kinds.length === 0 || kinds.includes(kind))!
  const before = first.reduce((sum, {takes}) => sum + takes, 0)
  return {minutes: rules.tick * Math.max(1, Math.round((minutes + perKilogram * mass * count + before) / rules.tick)), waits}
}

/** Whether a dish is made up: what has no dough, and is eaten. */
export const isMadeUp = ({dough, kind}: Pick<Dish, 'dough' | 'kind'>): boolean => !dough && !lookUpKind(kind)?.uneaten

/** Minutes for which so many vessels of a dish are made up right before they are set in, since what is beaten or raised by soda falls; 0 of what may wait. */
export function madeRightBefore(dish: Pick<Dish, 'kind' | 'mass' | 'first' | 'dough'>, count: number): number {
  if (!isMadeUp(dish)) return 0
  const {minutes, waits} = makingOf(dish, count)
  return waits > rules.soon ? 0 : minutes
}
