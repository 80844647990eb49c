import type {Placed} from '../scale/types.js'
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

/** Each entry of a load with its own vessels: where a dish is in several entries, its places stand in their order. */
export function withVessels({
  dishes,
  placed,
}: Pick<Load, 'dishes' | 'placed'>): {readonly entry: Load['dishes'][number]; readonly vessels: readonly Placed[]}[] {
  const used = new Map<string, number>()
  return dishes.map((entry) => {
    const from = used.get(entry.dish) ?? 0
    used.set(entry.dish, from + entry.count)
    return {entry, vessels: placed.filter((one) => one.dish === entry.dish).slice(from, from + entry.count)}
  })
}

/**
 * Where the vessels of a dish of a load stand, so that steps, tables, sheets and map tell it alike: by their places, or where a load has
 * none by the part of the floor it was planned for.
 *
 * @param drawn only of those that are drawn then, minutes after midnight
 */
export function standsAt(load: Pick<Load, 'dishes' | 'placed'>, dish: string, drawn?: number): StandsAt {
  const its = withVessels(load).filter(
    ({entry}) => entry.dish === dish && (drawn === undefined || Math.abs(entry.draw.likely - drawn) < 1),
  )
  const placed = its.flatMap(({vessels}) => vessels)
  return told(
    placed.length > 0 ? placed.map(({zone}) => zone) : its.flatMap(({entry}) => (entry.zone === undefined ? [] : [entry.zone])),
  )
}

/** The parts of the floor in what `standsAt` tells. */
export const partsOf = (where: StandsAt): readonly string[] => where.split(' and ')

/** How far from the back that is, 0 at the back to 2 at the mouth: what stands deepest is set in first. */
export function depthOf(where: StandsAt): number {
  const its = partsOf(where).map((part) => zoneNames.indexOf(part as Zone))
  return its.includes(-1) ? 1 : its.reduce((sum, part) => sum + part, 0) / its.length
}
