import {fuels} from '../lexicon/fuels.js'
import type {Fuel} from '../lexicon/schema.js'
import {floorArea} from './geometry.js'
import type {OvenSpec} from './types.js'

/** Heat to warm and boil a kilogram of water from 25 °C into the flue, MJ: what moisture costs a fire (steam tables). */
const WATER = 2.44
/** Stages of a fire as shares of its length: kindled at the mouth, pushed back at full flame, spread as coals. */
const KINDLED = 0.12
const FLAMING = 0.78
/** Power at raking by the power in full flame. */
const COALS = 0.4
/** Share of the wood's heat that leaves as charcoal with the rake. From memory: about a tenth of the wood's mass as coals, half of it burnt out. */
const RAKED_COALS = 0.06
/**
 * Share that leaves as smoke, tar and carbon monoxide: in a hot oven, and how much more in a cold one, whose walls quench the flame and
 * gather soot until they are past the heat at which soot burns off (from memory: open wood fires burn 80–95 % of their fuel's heat).
 */
const SMOKE = 0.04
const SMOKE_COLD = 0.12
/** °C of the vault's face at which its soot burns off, and the walls are white (from memory: 315–370 °C). */
export const SOOT_CLEARS = 340
/** Kilograms of air that a kilogram of dry wood needs, and the excess an open mouth draws. */
const STOICHIOMETRIC = 6.1
const EXCESS = 2

/**
 * The row of a fuel.
 *
 * @returns the row of that id, or mixed hardwood
 */
export function fuelById(id: string): Fuel {
  return fuels.find((f) => f.id === id) ?? fuels.find((f) => f.id === 'hardwood')!
}

/**
 * Net heating value of wood as it is burnt: Q = Q_dry·(1 − w) − 2.44·w.
 *
 * EN ISO 18125 §12 (basis conversion): the water has to be boiled off and goes up the flue.
 *
 * @param dry MJ/kg of dry wood
 * @param moisture water as a share of the wet mass
 * @returns MJ/kg
 */
export function netHeatingValue(dry: number, moisture: number): number {
  return dry * (1 - moisture) - WATER * moisture
}

/**
 * Heat in the wood of this oven's fuel.
 *
 * @returns MJ/kg
 */
export function woodHeat(oven: OvenSpec): number {
  return netHeatingValue(fuelById(oven.fuel.wood).netDryMegajoules.likely, oven.fuel.moisture)
}

/**
 * The most wood that can burn inside an oven: what its mouth feeds with air, 0.092·A·√H kg/s (Kawagoe's rule for
 * ventilation-controlled fires; Drysdale, An Introduction to Fire Dynamics, ch. 10). More burns outside, before the mouth.
 *
 * @returns kg/s
 */
export function mostBurning(oven: OvenSpec): number {
  return 0.092 * oven.mouth.width * oven.mouth.height * Math.sqrt(oven.mouth.height)
}

/** Times what a mouth can feed with air that a fire burns at most, some of it outside, before the mouth. Common practice, no source. */
const OUTSIDE = 3

/**
 * More wood than this cannot have burned in an oven in a time: what is stated to have been is a slip.
 *
 * @param minutes
 * @returns kg
 */
export function mostWood(oven: OvenSpec, minutes: number): number {
  return OUTSIDE * mostBurning(oven) * 60 * minutes
}

/**
 * What an oven usually burns: about 10 kg an hour on each square metre of floor (household and village ovens of `docs/oven.md`), and no
 * more than four fifths of what its mouth can feed with air.
 *
 * @returns kg/h
 */
export function burningRate(oven: OvenSpec): number {
  return Math.min(10 * floorArea(oven.floor), 0.8 * mostBurning(oven) * 3600)
}

/** One moment of a fire. */
export interface Flame {
  /** Share of the wood burning per share of the time: 1 on average. */
  readonly power: number
  /** Where it stands: shares of back, middle, mouth. */
  readonly place: readonly [number, number, number]
}

const MEAN_POWER = KINDLED / 2 + (FLAMING - KINDLED) + ((1 - FLAMING) * (1 + COALS)) / 2

/**
 * A fire through its burn.
 *
 * @param share of the burn gone by, 0–1
 */
export function flameAt(share: number): Flame {
  const s = Math.min(Math.max(share, 0), 1)
  const raw = s < KINDLED ? s / KINDLED : s < FLAMING ? 1 : 1 - ((1 - COALS) * (s - FLAMING)) / (1 - FLAMING)
  // Drawn gradually from the mouth to the back, then spread even.
  const back = s < KINDLED ? 0.1 : s < 0.35 ? 0.1 + (0.35 * (s - KINDLED)) / (0.35 - KINDLED) : s < FLAMING ? 0.45 : 0.36
  const mouth = s < KINDLED ? 0.6 : s < 0.35 ? 0.6 - (0.42 * (s - KINDLED)) / (0.35 - KINDLED) : s < FLAMING ? 0.18 : 0.27
  return {power: raw / MEAN_POWER, place: [back, 1 - back - mouth, mouth]}
}

/**
 * Share of the wood's heat that is set free in the oven.
 *
 * @param vault °C of the vault's face
 */
export function burntShare(vault: number): number {
  const cold = Math.min(Math.max((SOOT_CLEARS - vault) / (SOOT_CLEARS - 20), 0), 1)
  return 1 - RAKED_COALS - SMOKE - SMOKE_COLD * cold
}

/**
 * Flue gas for each kilogram of wood.
 *
 * @param moisture water as a share of the wet mass
 * @returns kg/kg
 */
export function gasPerWood(moisture: number): number {
  return 1 + EXCESS * STOICHIOMETRIC * (1 - moisture)
}
