import type {Dish} from '../scale/types.js'
import type {Load} from './types.js'

/**
 * Shares of the shortest and longest time of its receipt beyond which a dish's stay in the oven is told of: the dose decides (design §4), and
 * a cook who has read the receipt would take the hour of the draw for a mistake. Common practice, no source.
 */
const told = {shorter: 2 / 3, longer: 3 / 2} as const

/** How long a dish is in and which time of its receipt that stands for, minutes. */
export interface OtherTime {
  readonly dish: string
  readonly stay: number
  readonly said: number
}

/**
 * What of one draw was in far shorter or longer than its receipt says, because it finds another heat than that time was given for. What stays
 * in through the night is the better for it, and a time that is ours, or ours for another depth, is no receipt's.
 *
 * @param drawn each with when it was set in, minutes after midnight
 * @param at when they are drawn, minutes after midnight
 */
export function otherTimes(
  drawn: ReadonlyArray<Pick<Load['dishes'][number], 'dish'> & {readonly at: number}>,
  dishes: ReadonlyMap<string, Pick<Dish, 'need' | 'inferred'>>,
  at: number,
): OtherTime[] {
  const out = new Map<string, OtherTime>()
  for (const {dish, at: setIn} of drawn) {
    const {need, inferred} = dishes.get(dish)!
    if (out.has(dish) || inferred.some(({field}) => field === 'bake' || field === 'time')) continue
    const stay = at - setIn
    const {low, high} = need.minutes
    if (stay < told.shorter * low) out.set(dish, {dish, stay, said: low})
    else if (stay > told.longer * high && !need.overnight) out.set(dish, {dish, stay, said: high})
  }
  return [...out.values()]
}
