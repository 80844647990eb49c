import {readVessel, type VesselSize} from '../receipt/vessel.js'
import {topArea} from '../receipt/vessel-capacity.js'
import {type KindFigures, setsAsCustard} from './kind-figures.js'
import {isFree, isSheet, vesselOf} from './vessel.js'

/** How full a vessel is filled before baking, share of its depth. Common practice, no source: tins of dough not half, of batter two thirds. */
const filled = {dough: 0.5, batter: 0.62, 'pie plate': 1, crock: 0.85, custard: 0.85}
/** The most of its depth that is filled: what rises needs room, a pie is heaped. Common practice, no source. */
export const fullest = {dough: 0.75, batter: 0.85, 'pie plate': 1.5, crock: 1, custard: 1}
/** Weight of a filling, kg/litre: dough and batter as mixed, before they rise. From memory. */
const heaviness = {dough: 1.1, batter: 0.95, other: 1.03}

/** A round tin so deep at the most, m, is filled to its rim with what has a crust of paste. Common practice, no source. */
const deepestTart = 0.05

/** How a vessel is filled with what is of a kind: the row of the tables above. */
export function fillingOf(size: VesselSize, kind: KindFigures): keyof typeof filled {
  if (size.shape === 'pie plate' || size.shape === 'crock') return size.shape
  // A tart or a quiche comes up to the rim of its tin, as a pie does.
  if (kind.filled === true && size.shape === 'round' && size.height <= deepestTart) return 'pie plate'
  if (kind.dough !== undefined) return 'dough'
  return setsAsCustard(kind) ? 'custard' : 'batter'
}

/** How much more than a vessel takes is told: what is weighed has icing and crust in it that do not fill it. Common practice, no source. */
export const plainly = 1.25

/** Share of its depth that is filled before baking. */
export const fillOf = (size: VesselSize, kind: KindFigures): number => filled[fillingOf(size, kind)]

/** Kilograms of mixture a vessel takes at the most; without limit for what stands in none. */
export function takes(size: VesselSize, kind: KindFigures): number {
  if (isSheet(size) || isFree(size)) return Number.POSITIVE_INFINITY
  const filling = fillingOf(size, kind)
  return (holds(size, kind) / filled[filling]) * fullest[filling]
}

/** The sheet of 16 × 12 in that the pieces of a kind are reckoned on, m². */
const usualSheet = 0.4064 * 0.3048

const LOAF = /^(?:free-standing )?loaf /

/** Kilograms of mixture a vessel takes when filled as usual. */
export function holds(size: VesselSize, kind: KindFigures): number {
  if (isSheet(size)) {
    const usual = readVessel(kind.vessel)
    if (kind.onSheet !== undefined) return kind.onSheet * (topArea(size) / usualSheet)
    // What is not a loaf lies as thick on a sheet as in its own vessel.
    return usual.ok && !LOAF.test(kind.vessel) ? kind.mass.likely * (topArea(size) / topArea(usual.value)) : kind.mass.likely
  }
  if (isFree(size)) {
    // Volume as the cube of the width, from the kind's own loaf where it is one, else from a loaf of 24 cm weighing 0.95 kg.
    const usual = readVessel(kind.vessel)
    const [across, mass] = usual.ok && isFree(usual.value) ? [usual.value.across ?? 0.24, kind.mass.likely] : [0.24, 0.95]
    return mass * ((size.across ?? across) / across) ** 3
  }
  const fill = fillOf(size, kind)
  const litres = vesselOf(size, fill, '').millilitres / 1000
  return (
    litres *
    (kind.dough !== undefined
      ? heaviness.dough
      : size.shape === 'crock' || fillingOf(size, kind) === 'pie plate' || kind.safe !== undefined
        ? heaviness.other
        : heaviness.batter)
  )
}
