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

/** Simpson's rule with half-minute panels. */
export function simpson(g: (m: number) => number, from: number, to: number): number {
  if (to <= from) return 0
  const n = Math.max(2, 2 * Math.round(to - from))
  const h = (to - from) / n
  let sum = g(from) + g(to)
  for (let i = 1; i < n; i++) sum += g(from + i * h) * (i % 2 === 1 ? 4 : 2)
  return (sum * h) / 3
}
