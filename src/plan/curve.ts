import type {Forecast} from '../oven/types.js'
import type {HeatNeed} from '../scale/types.js'
import {rules, zoneNames} from './rules.js'

/** A forecast as the planner reads it: °C against minutes after lighting. */
export interface Curve {
  readonly step: number
  readonly ready: number
  /** Last minute the forecast covers. */
  readonly end: number
  readonly low: readonly number[]
  readonly likely: readonly number[]
  readonly high: readonly number[]
  /** °C the back, middle and mouth are above the mean at `ready`. */
  readonly offset: readonly [number, number, number]
  readonly readyCelsius: number
  readonly ambient: number
}

/**
 * The planner's view of a forecast.
 *
 * @param ambient Air outside the oven, °C.
 */
export function curveOf(forecast: Forecast, ambient: number): Curve {
  const known = curves.get(forecast)
  if (known && known.ambient === ambient) return known
  const made = newCurve(forecast, ambient)
  curves.set(forecast, made)
  return made
}

const curves = new WeakMap<Forecast, Curve>()

/**
 * A thousandth of a degree, below which the planner does not look: engines differ in the last digits of `Math`, and a search must not
 * take another road for those, so that a day has one plan wherever it is planned.
 */
export function seen(celsius: number): number {
  return Math.round(celsius * 1000) / 1000
}

function newCurve(forecast: Forecast, ambient: number): Curve {
  const likely = forecast.baking.likely.map(seen)
  const readyCelsius = sample(likely, forecast.step, forecast.ready)
  return {
    step: forecast.step,
    ready: forecast.ready,
    end: (likely.length - 1) * forecast.step,
    low: forecast.baking.low.map(seen),
    likely,
    high: forecast.baking.high.map(seen),
    offset: [seen(forecast.zones.back), seen(forecast.zones.middle), seen(forecast.zones.mouth)],
    readyCelsius,
    ambient,
  }
}

/** Value of a sampled curve at `minutes`, °C, straight between samples, held at the ends. */
export function sample(values: readonly number[], step: number, minutes: number): number {
  const at = minutes / step
  const i = Math.floor(at)
  if (i < 0) return values[0] ?? Number.NaN
  if (i >= values.length - 1) return values[values.length - 1] ?? Number.NaN
  const a = values[i]!
  return a + (values[i + 1]! - a) * (at - i)
}

/**
 * Baking temperature in a part of the floor, °C. The differences between the parts, given when the oven is ready, shrink with the
 * oven's heat over the air outside. `where` 0…2 are back, middle, mouth; 3 (across) is the mean.
 */
export function celsiusAt(curve: Curve, where: number, minutes: number, which: Edge = 'likely'): number {
  return celsiusIn(curve, edgeOf(curve, which), where, minutes)
}

type Edge = 'low' | 'likely' | 'high'

// Not by name: V8 throws away what it compiled for one name when it is asked for another.

function edgeOf({low, likely, high}: Curve, which: Edge): readonly number[] {
  return which === 'likely' ? likely : which === 'low' ? low : high
}

function celsiusIn(curve: Curve, values: readonly number[], where: number, minutes: number): number {
  const mean = sample(values, curve.step, minutes)
  if (where > 2) return mean
  return mean + curve.offset[where as 0 | 1 | 2] * fade(curve, mean)
}

function fade(curve: Curve, celsius: number): number {
  const share = (celsius - curve.ambient) / Math.max(1, curve.readyCelsius - curve.ambient)
  return Math.min(1.5, Math.max(0, share))
}

/** Cumulative ∫ max(T − done, 0) dt from lighting, °C·min, one value a minute. */
export type DoseTable = Float64Array

const heatsOf = new WeakMap<Curve, (Float64Array | undefined)[]>()

/** °C in a part of the floor at every minute after lighting. */
export function heatTable(curve: Curve, where: number, which: Edge = 'likely'): Float64Array {
  const all = heatsOf.get(curve) ?? []
  heatsOf.set(curve, all)
  const place = edges.length * where + edges.indexOf(which)
  const known = all[place]
  if (known) return known
  const out = new Float64Array(Math.floor(curve.end) + 1)
  const values = edgeOf(curve, which)
  for (let m = 0; m < out.length; m++) out[m] = celsiusIn(curve, values, where, m)
  all[place] = out
  return out
}

/** By curve, by part of the floor and edge of its range, by T_done. */
const tables = new WeakMap<Curve, Map<number, DoseTable>[]>()
const edges: readonly Edge[] = ['low', 'likely', 'high']

/** Dose accumulated since lighting, a value per minute, for one part of the floor and one T_done (trapezoid rule by the minute). */
export function doseTable(curve: Curve, where: number, done: number, which: Edge = 'likely'): DoseTable {
  let all = tables.get(curve)
  if (!all) {
    all = Array.from({length: edges.length * (ACROSS + 1)}, () => new Map<number, DoseTable>())
    tables.set(curve, all)
  }
  const mine = all[edges.length * where + edges.indexOf(which)]!
  const found = mine.get(done)
  if (found) return found
  const heats = heatTable(curve, where, which)
  const out = new Float64Array(heats.length)
  let before = Math.max(0, heats[0]! - done)
  for (let m = 1; m < heats.length; m++) {
    const now = Math.max(0, heats[m]! - done)
    out[m] = out[m - 1]! + (before + now) / 2
    before = now
  }
  mine.set(done, out)
  return out
}

/**
 * The dose a dish needs, °C·min: (reference − done) × minutes; for a dish that wants falling heat and whose time is of no oven that holds its
 * heat (`held`), the same minutes in the usual falling oven from its reference heat on (`rules.usualFall`).
 */
export function doseNeeded(need: HeatNeed, minutes: number = need.enough ?? need.minutes.likely): number {
  if (!need.falling || need.held === true) return (need.reference - need.done) * minutes
  let mine = fallingDoses.get(need)
  if (!mine) {
    mine = new Map()
    fallingDoses.set(need, mine)
  }
  let dose = mine.get(minutes)
  if (dose === undefined) {
    dose = fallingDose(need, minutes)
    mine.set(minutes, dose)
  }
  return dose
}

/** The most a dish may have of its dose, °C·min, unless it stays in (`staysIn`). */
export function mostDose(need: HeatNeed): number {
  return doseNeeded(need, need.longest ?? need.minutes.high)
}

const fallingDoses = new WeakMap<HeatNeed, Map<number, number>>()

function fallingDose(need: HeatNeed, minutes: number): number {
  const {ready, ambient, a, b} = rules.usualFall
  const top = Math.max(ready, need.reference)
  const start = ((top - ambient) / Math.max(1, need.reference - ambient) - 1) / a
  const h0 = start <= 0 ? 0 : start ** (1 / b)
  const at = (m: number): number => Math.max(0, ambient + (top - ambient) / (1 + a * (h0 + m / 60) ** b) - need.done)
  let sum = 0
  const n = Math.max(1, Math.round(minutes))
  const h = minutes / n
  let before = at(0)
  for (let i = 1; i <= n; i++) {
    const now = at(i * h)
    sum += ((before + now) / 2) * h
    before = now
  }
  return sum
}

/** The whole floor, where its three parts are 0 to 2. */
export const ACROSS = 3

/** Number of a part of the floor in the tables: back 0, middle 1, mouth 2, across 3. */
export function whereIndex(where: string): number {
  const i = zoneNames.indexOf(where as (typeof zoneNames)[number])
  return i < 0 ? ACROSS : i
}
