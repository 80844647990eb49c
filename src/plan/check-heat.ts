import type {Placed} from '../scale/types.js'
import type {Plan, PlanProblem} from './types.js'

/** The checker's own reading of a plan's curves: nothing of it is the planner's. Times are minutes after midnight, heats °C. */

/** A part of the floor, or all of it. */
export type Part = Placed['zone'] | 'across'
export type Edge = 'low' | 'likely' | 'high'
/** What has a range, each of it. */
export const edges: readonly Edge[] = ['low', 'likely', 'high']

/** The heat of a plan's oven. */
export interface Heat {
  /** The baking heat of the whole floor, and of a part of it. */
  readonly mean: (clock: number, edge?: Edge) => number
  readonly inZone: (zone: Part, clock: number, edge?: Edge) => number
  /** When the forecast ends. */
  readonly end: number
}

export function heatOf({ambient = 20}: Pick<PlanProblem, 'ambient'>, {forecast: f, lit}: Pick<Plan, 'forecast' | 'lit'>): Heat {
  const mean = (clock: number, edge: Edge = 'likely'): number => interpolate(f.baking[edge], f.step, clock - lit)
  const atReady = interpolate(f.baking.likely, f.step, f.ready)
  const inZone = (zone: Part, clock: number, edge: Edge = 'likely'): number => {
    const t = mean(clock, edge)
    if (zone === 'across') return t
    return t + f.zones[zone] * Math.min(1.5, Math.max(0, (t - ambient) / Math.max(1, atReady - ambient)))
  }
  return {mean, inZone, end: lit + (f.baking.likely.length - 1) * f.step}
}

/** A curve read straight between its samples. */
export function interpolate(values: readonly number[], step: number, minutes: number): number {
  const last = values.length - 1
  if (minutes <= 0) return values[0] ?? 0
  if (minutes >= last * step) return values[last] ?? 0
  const left = Math.trunc(minutes / step)
  const share = (minutes - left * step) / step
  return values[left]! * (1 - share) + values[left + 1]! * share
}

/** Simpson's rule with panels of two minutes: the curves are straight between samples five minutes apart. */
export function simpson(g: (m: number) => number, from: number, to: number): number {
  if (to <= from) return 0
  const n = Math.max(2, 2 * Math.round((to - from) / 2))
  const h = (to - from) / n
  let sum = g(from) + g(to)
  for (let i = 1; i < n; i++) sum += g(from + i * h) * (i % 2 === 1 ? 4 : 2)
  return (sum * h) / 3
}

/** Doses reached on the edges of a plan's curve, summed over its own samples by the trapezoid rule and kept. */
export class Doses {
  readonly #heat: Heat
  readonly #from: number
  readonly #step: number
  readonly #count: number
  readonly #sums = new Map<string, Float64Array>()
  readonly #heats = new Map<string, Float64Array>()

  constructor(heat: Heat, {lit, forecast}: Plan) {
    this.#heat = heat
    this.#from = lit
    this.#step = forecast.step
    this.#count = forecast.baking.likely.length
  }

  /** When a dish that is set in at `at` has so much, at `until` at the latest. */
  reached(part: Part, edge: Edge, done: number, at: number, dose: number, until: number): number {
    const sums = this.#sumsOf(part, edge, done)
    const start = (at - this.#from) / this.#step
    const base = interpolated(sums, start)
    const last = Math.min(sums.length - 1, Math.ceil((until - this.#from) / this.#step))
    for (let i = Math.max(0, Math.ceil(start)); i <= last; i++) {
      if (sums[i]! - base < dose) continue
      const before = i === 0 ? 0 : sums[i - 1]!
      const share = sums[i]! > before ? (base + dose - before) / (sums[i]! - before) : 1
      return Math.min(until, this.#from + (i - 1 + share) * this.#step)
    }
    return until
  }

  /** The dose in a part of the floor between two times, by the likely curve. */
  between(part: Part, done: number, from: number, to: number): number {
    const sums = this.#sumsOf(part, 'likely', done)
    return interpolated(sums, (to - this.#from) / this.#step) - interpolated(sums, (from - this.#from) / this.#step)
  }

  #sumsOf(part: Part, edge: Edge, done: number): Float64Array {
    const key = `${part} ${edge} ${done}`
    const known = this.#sums.get(key)
    if (known) return known
    const heats = this.#heatsOf(part, edge)
    const out = new Float64Array(heats.length)
    for (let i = 1; i < out.length; i++)
      out[i] = out[i - 1]! + (this.#step * (Math.max(0, heats[i - 1]! - done) + Math.max(0, heats[i]! - done))) / 2
    this.#sums.set(key, out)
    return out
  }

  #heatsOf(part: Part, edge: Edge): Float64Array {
    const key = `${part} ${edge}`
    const known = this.#heats.get(key)
    if (known) return known
    const out = Float64Array.from({length: this.#count}, (_, i) => this.#heat.inZone(part, this.#from + i * this.#step, edge))
    this.#heats.set(key, out)
    return out
  }
}

function interpolated(sums: Float64Array, at: number): number {
  const i = Math.max(0, Math.min(sums.length - 1, Math.floor(at)))
  const next = sums[i + 1] ?? sums[i]!
  return sums[i]! + (next - sums[i]!) * Math.max(0, Math.min(1, at - i))
}
