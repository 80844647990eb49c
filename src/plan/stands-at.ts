import {type Zone, zoneNames} from './rules.js'
import type {Load} from './types.js'

/** The parts of the floor where vessels stand, back first: all three are told as “across”, none as “any”. */
export type StandsAt = Zone | 'across' | 'any' | `${Zone} and ${Zone}`

/** Parts of the floor as they are told; what is none of them says nothing. */
export function told(parts: Iterable<string>): StandsAt {
  const all = new Set(parts)
  const [one, two, three] = zoneNames.filter((zone) => all.has(zone))
  if (all.has('across') || three !== undefined) return 'across'
  return one === undefined ? 'any' : two === undefined ? one : `${one} and ${two}`
}

/**
 * Where the vessels of a dish of a load stand, so that steps, tables, sheets and map tell it alike: by their places, or where a load has
 * none by the part of the floor it was planned for.
 */
export function standsAt(load: Pick<Load, 'dishes' | 'placed'>, dish: string): StandsAt {
  const placed = load.placed.filter((one) => one.dish === dish)
  return told(
    placed.length > 0
      ? placed.map(({zone}) => zone)
      : load.dishes.flatMap((one) => (one.dish === dish && one.zone !== undefined ? [one.zone] : [])),
  )
}

/** The parts of the floor in what `standsAt` tells. */
export const partsOf = (where: StandsAt): readonly string[] => where.split(' and ')

/** How far from the back that is, 0 at the back to 2 at the mouth: what stands deepest is set in first. */
export function depthOf(where: StandsAt): number {
  const its = partsOf(where).map((part) => zoneNames.indexOf(part as Zone))
  return its.includes(-1) ? 1 : its.reduce((sum, part) => sum + part, 0) / its.length
}
