import type {Firing, OvenEvent} from './types.js'

/** A stretch of time, minutes from lighting. */
export interface Span {
  readonly from: number
  readonly to: number
}
/** A fire: kg of wood. */
export interface Burn extends Span {
  readonly wood: number
}
/** A load: J in all. */
export interface LoadSpan extends Span {
  readonly heat: number
}

/** What happens when, from a firing and the events after it. */
export interface Schedule {
  readonly burns: readonly Burn[]
  /** The mouth is open. */
  readonly open: readonly Span[]
  /** The floor is swabbed. */
  readonly swabs: readonly Span[]
  readonly loads: readonly LoadSpan[]
  /** Every moment at which something begins or ends, in order. */
  readonly breaks: readonly number[]
}

/** Minutes with the mouth open while coals are raked and the floor is swept. */
export const RAKING = 5
/** Specific heats of dough and of crust and crumb, J/(kg·K), and heat of evaporation at 100 °C with the steam's warming to the oven, J/kg. */
const DOUGH_HEAT = 2900
export const EVAPORATION = 2.257e6 + 1.9e3 * 60
/** Crumb temperature of a baked loaf, °C. */
const DONE = 97

/**
 * Heat a load takes up: warming to the crumb's end temperature, and the water that leaves.
 *
 * @param mass kg of dough or batter
 * @param water kg lost
 * @param celsius as set in
 * @returns J
 */
export function loadHeat(mass: number, water: number, celsius = 25): number {
  return mass * DOUGH_HEAT * Math.max(DONE - celsius, 0) + water * EVAPORATION
}

/**
 * Lay out a day.
 *
 * @param end minutes from lighting
 */
export function scheduleOf(firing: Firing, events: readonly OvenEvent[], end: number): Schedule {
  const burns: Burn[] = firing.burn > 0 && firing.wood > 0 ? [{from: 0, to: firing.burn, wood: firing.wood}] : []
  const open: Span[] = firing.burn > 0 ? [{from: firing.burn, to: firing.burn + Math.min(RAKING, firing.soak)}] : []
  const loads: LoadSpan[] = []
  for (const e of events) {
    if (e.kind === 'door') open.push({from: e.minutes, to: e.minutes + e.open})
    else if (e.kind === 'load') {
      loads.push({from: e.minutes, to: e.minutes + Math.max(e.bake, 1), heat: loadHeat(e.mass, e.water, e.celsius)})
    } else if (e.firing.burn > 0 && e.firing.wood > 0) {
      burns.push({from: e.minutes, to: e.minutes + e.firing.burn, wood: e.firing.wood})
      open.push({from: e.minutes + e.firing.burn, to: e.minutes + e.firing.burn + RAKING})
    }
  }
  const swabs = burns.map((b) => ({from: b.to, to: b.to + RAKING}))
  const breaks = [...burns, ...open, ...loads, ...swabs]
    .flatMap((s) => [s.from, s.to])
    .filter((t) => t > 0 && t < end)
    .sort((a, b) => a - b)
  return {burns, open, swabs, loads, breaks}
}

/** The first span that holds a moment. A plain loop: a closure over the clock would put every step's figures on the heap. */
export function spanAt<T extends Span>(spans: readonly T[], time: number): T | undefined {
  for (const span of spans) if (time > span.from && time < span.to) return span
  return undefined
}
