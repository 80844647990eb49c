import {lookUpItem} from '../lexicon/index.js'
import type {Dish} from '../scale/types.js'
import {spoils} from './left-in.js'
import {hotUntil, meantFor} from './model.js'
import {rules} from './rules.js'

/** How what is drawn is kept until it is eaten. */

/** Whether it is set by eggs in milk, whatever it is called. */
function isSet({amounts}: Pick<Dish, 'amounts'>): boolean {
  const grams = (group: string | null): number =>
    amounts.reduce(
      (sum, one) => sum + (group === null || lookUpItem(one.item)?.group === group ? (one.grams?.likely ?? 0) : 0),
      0,
    )
  const all = grams(null)
  return all > 0 && grams('egg') >= rules.setByShare * all && grams('dairy') >= rules.setByShare * all
}

/**
 * Whether a dish that is not eaten for hours has to be kept cold until then: what has meat or fish in it, whatever is round it; and of what
 * does not keep, what eggs and milk are in, and beans. What is dried, bread, cakes and fruit under a crust need no cold.
 */
export function wantsCold(dish: Dish): boolean {
  const isOf = (list: readonly string[]): boolean => dish.cautions.some((id) => list.includes(id))
  if (isOf(rules.flesh)) return true
  return spoils(dish) && (isOf(rules.keptCold) || isSet(dish))
}

/** Dishes that are kept alike, and by when they are wanted, minutes after midnight; null where that is not said. */
export interface Kept {
  readonly how: 'keep hot' | 'warm again' | 'keep cold' | 'keep long' | 'kept warm' | 'was cold'
  readonly dishes: readonly string[]
  readonly by: number | null
}

/**
 * How the dishes of one draw are kept until they are eaten. What wants the cold and is drawn more than `rules.standMinutes` before is cooled,
 * and heated through again only where it is eaten hot.
 *
 * @param drawn each with the least baking heat, °C, that its place may have at its draw
 * @param at when they are drawn, and `serve` when the day's meal is, minutes after midnight
 */
export function keepingOf(
  drawn: ReadonlyArray<{readonly dish: Dish; readonly coolest: number}>,
  at: number,
  serve: number,
): Kept[] {
  const out = new Map<string, {how: Kept['how']; dishes: string[]; by: number | null}>()
  const put = (how: Kept['how'], {id}: Dish, by: number | null): void => {
    const key = `${how} ${by}`
    const one = out.get(key) ?? {how, dishes: [], by}
    if (!one.dishes.includes(id)) one.dishes.push(id)
    out.set(key, one)
  }
  for (const {dish, coolest} of drawn) {
    const {by} = meantFor(dish, serve)
    const long = by !== null && by - at > rules.standMinutes && wantsCold(dish)
    // The oven of a dish that stays in through the night may fall lower than food may stand.
    const lukewarm = dish.need.overnight && spoils(dish) && coolest < rules.holdCelsius
    if (long && dish.hot && dish.need.overnight) put('keep long', dish, null)
    else if (long && !dish.hot) put('keep cold', dish, by)
    // Bread, cakes and biscuits keep without warmth: wanted hot, they are warmed through again.
    else if (hotUntil(dish, serve) - at > rules.keepsHot)
      put(spoils(dish) || wantsCold(dish) ? 'keep hot' : 'warm again', dish, by)
    // Nobody said when what was left in through the night is eaten.
    else if (lukewarm || (dish.need.overnight && wantsCold(dish) && (by === null || by < at))) put('kept warm', dish, null)
    if (lukewarm) put('was cold', dish, null)
  }
  return [...out.values()]
}
