import type {Dish} from '../scale/types.js'

/** What is said of food with raw meat or fish in it that left the oven before it was done. */

/** Least safe temperature of the middle, °C, where nothing says more: what is stuffed with meat, or holds it (FDA Food Code 3-401.11(A)(3)). */
const SAFE = 74

/** Two hours in the warm are the most for food (USDA FSIS danger zone, `rules.coldMinutes`). */
export const STOOD = 'do not eat it unless it was cooked through within two hours; put the time right if it is wrong'

/** The least temperature in which a dish with raw meat or fish is safe to eat, in words. */
export function middleOf({core}: Pick<Dish, 'core'>): string {
  const celsius = core ?? SAFE
  return `${celsius} °C (${Math.round(celsius * 1.8 + 32)} °F) in the middle`
}
