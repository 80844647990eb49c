import type {Dish} from '../scale/types.js'
import type {Load} from './types.js'

/** Minutes that what is left to cool in the oven for no stated time is taken to stay. Common practice, no source. */
const UNSAID = 30

/** A dish that its receipt leaves in after the bake, drawn before that is over; the receipt's words for it. */
export interface DrawnHot {
  readonly dish: string
  readonly words: string
}

/**
 * What of one draw its receipt would leave in the oven to cool, after the bake, for longer than it has been in.
 *
 * @param drawn each with when it was set in, minutes after midnight
 * @param at when they are drawn, minutes after midnight
 */
export function drawnHot(
  drawn: ReadonlyArray<Pick<Load['dishes'][number], 'dish'> & {readonly at: number}>,
  dishes: ReadonlyMap<string, Pick<Dish, 'need' | 'cooling'>>,
  at: number,
): DrawnHot[] {
  const out = new Map<string, DrawnHot>()
  for (const {dish, at: setIn} of drawn) {
    const {need, cooling} = dishes.get(dish)!
    if (cooling !== undefined && at - setIn < need.minutes.likely + (cooling.minutes ?? UNSAID))
      out.set(dish, {dish, words: cooling.words})
  }
  return [...out.values()]
}
