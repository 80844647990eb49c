import type {OvenSpec} from '../oven/types.js'

/** How long fires may burn: what a morning has to choose from. */

/** Lengths of fire considered for an oven that is cold, min. */
const burns = [45, 60, 75, 90, 105, 120, 135, 150, 165, 180, 195, 210, 240, 300] as const
/** The shortest fire of a cold oven, min. */
export const LEAST_COLD = burns[0]
/** Shorter ones for an oven that is warm still, min: more wood is kindled and burns to coals in no less. Common practice, no source. */
const shortBurns = [10, 15, 20, 25, 30] as const
/** Heat over the air, °C, from which the shortest of them will do: an oven fired daily has so much left. Common practice, no source. */
const DAILY = 130

/**
 * Lengths of a first fire considered, the shortest first: the warmer the oven is when it is lit, the shorter. A cold one is not heated
 * through by so short a fire, however little is wanted of it; how hot it makes a warm one, the simulation says.
 *
 * @returns minutes
 */
export function firstBurns({start, ambient}: Pick<OvenSpec, 'start' | 'ambient'>): number[] {
  const warm = Math.min(1, Math.max(0, (start.celsius - ambient) / DAILY))
  const least = LEAST_COLD - warm * (LEAST_COLD - shortBurns[0])
  return [...shortBurns.filter((burn) => burn >= least), ...burns]
}

/** Lengths of a second fire considered, min, on bricks that are warm from the first. Common practice, no source. */
export const againBurns = [20, 30, 45, 60, 75] as const
