import type {Vessel} from './types.js'

/** Figures as a reason says them. */

/** Two whole figures, or one where they are alike. */
export const span = (low: number, high: number): string =>
  Math.round(low) === Math.round(high) ? String(Math.round(low)) : `${Math.round(low)}–${Math.round(high)}`

/** A weight, as grams below one kilogram. */
export const kilograms = (kg: number): string => (kg < 1 ? `${Math.round(kg * 100) * 10} g` : `${Math.round(kg * 100) / 100} kg`)

/** Whole centimetres, no more than it is. */
export const centimetres = (metres: number): string => `${Math.floor(metres * 100)} cm`

/** A share in whole per cent. */
export const percentOf = (share: number): string => `${Math.round(share * 100)} %`

/** How wide, long and high a vessel stands. */
export const sizes = (vessel: Vessel): string => {
  const cm = (m: number): string => `${Math.round(m * 100)}`
  const foot = vessel.footprint
  return `${foot.shape === 'circle' ? cm(foot.diameter) : `${cm(foot.length)} × ${cm(foot.width)}`} cm, ${cm(vessel.height)} cm high`
}
