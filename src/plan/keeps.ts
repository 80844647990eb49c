import type {HeatNeed} from '../scale/types.js'
import {type Curve, celsiusAt, doseNeeded, doseTable, mostDose} from './curve.js'
import type {Job} from './model.js'
import {rules} from './rules.js'

/** Whether a dish keeps its limits on a curve, set in and drawn at given minutes. */

/** True of a dish that takes what the oven has through a day or a night, and may have more than it needs: brown bread, beans, what dries. */
export function staysIn(need: Pick<HeatNeed, 'overnight'>): boolean {
  return need.overnight
}

/** True of what dries in the slack oven or is left there through the night, and of what nobody eats: no serving time binds it. */
export function isSlackWork(need: Pick<HeatNeed, 'startHigh' | 'overnight' | 'noMeal'>): boolean {
  return need.startHigh <= rules.slackCelsius && (need.overnight || need.noMeal === true)
}

/** True of cooked food that may not stand long under the safe holding temperature; not of what keeps without warmth and is left in to cool. */
export function keptWarm(need: Pick<HeatNeed, 'done' | 'cools'>): boolean {
  return need.done >= rules.holdCelsius && need.cools !== true
}

/**
 * True when a dish set in and drawn at these minutes keeps its limits in one part of the floor.
 *
 * @param job Its `spread`, where it fills the floor, is how much more than the most that it may have of its dose the hottest of it bears.
 */
export function keeps(
  {dish, spread = 1}: Pick<Job, 'dish' | 'spread'>,
  curve: Curve,
  z: number,
  from: number,
  to: number,
): boolean {
  const {need} = dish
  const c = celsiusAt(curve, z, from)
  if (c < need.startLow || c > need.startHigh) return false
  if (celsiusAt(curve, z, to) < need.endLow) return false
  const dose = doseNeeded(need)
  const got = doseBetween(curve, need, z, from, to)
  if (got < dose * (1 - rules.doseWanting)) return false
  if (staysIn(need)) return true
  // Over-baked only where the next opening but one would already have been late.
  return got <= spread * mostDose(need) || doseBetween(curve, need, z, from, to - rules.tick - rules.staySlack) < dose
}

/** °C by which what is in the oven may end under its least heat for rounding's sake. */
const ROUGHLY = 0.3

/** True when what is in the oven has the dose it needs at a minute, in a part of the floor, and is not too cool; what rounding takes is granted. */
export function hasDose(job: Job, curve: Curve, z: number, to: number, lit: number): boolean {
  return !endsCool(job, curve, z, to) && hasHeat(job, curve, z, to, lit)
}

/** True when what is in the oven has had the heat it needs at a minute, in a part of the floor, however cool that is by then. */
export function hasHeat({dish: {need}, since}: Job, curve: Curve, z: number, to: number, lit: number): boolean {
  return doseBetween(curve, need, z, since! - lit, to) >= doseNeeded(need) * (1 - 2 * rules.doseWanting)
}

/** True when all of what is in the oven had its heat an opening before a minute: what has not, waits for it, however cool. */
export function hadHeat({dish: {need}, since}: Job, curve: Curve, zones: readonly number[], to: number, lit: number): boolean {
  return zones.every((z) => doseBetween(curve, need, z, since! - lit, to - rules.tick) >= doseNeeded(need))
}

/** True when what is in the oven is drawn from a part of the floor that is too cool for it by then; what rounding takes is granted. */
export function endsCool({dish: {need}}: Job, curve: Curve, z: number, to: number): boolean {
  return celsiusAt(curve, z, to) < need.endLow - ROUGHLY
}

/** True when what is in the oven is over-baked, all its vessels, for the sake of the next opening but one (see `keeps`). */
export function stayed({dish: {need}, since}: Job, curve: Curve, zones: readonly number[], to: number, lit: number): boolean {
  if (staysIn(need)) return false
  const from = since! - lit
  const has = (z: number, until: number): number => doseBetween(curve, need, z, from, until)
  return (
    zones.some((z) => has(z, to) > mostDose(need)) &&
    zones.every((z) => has(z, to - rules.tick - rules.staySlack) >= doseNeeded(need))
  )
}

/** °C·min between two minutes after lighting. */
export function doseBetween(curve: Curve, need: HeatNeed, z: number, from: number, to: number): number {
  const table = doseTable(curve, z, need.done)
  const at = (m: number): number => table[Math.max(0, Math.min(table.length - 1, Math.round(m)))]!
  return at(to) - at(from)
}
