import {loadHeat} from '../oven/simulate.js'
import type {Forecast, OvenEvent} from '../oven/types.js'
import type {Dish} from '../scale/types.js'
import {seen} from './curve.js'
import type {Job} from './model.js'
import {rules} from './rules.js'
import type {FiringOption} from './types.js'

/**
 * How far a load and an open door pull the baking temperature down, tick by tick afterwards. Conduction is linear and a load takes its
 * heat on a fixed course, so the pulls of several loads add up (Duhamel's superposition, Carslaw & Jaeger, Conduction of Heat in Solids,
 * 2nd ed. §1.14); radiation bends that by a few per cent, which the planner corrects by simulating what it has laid out.
 */
export interface Response {
  /** °C below the empty oven's curve at 0, 1, 2 … ticks after this job is set in, its door work included. */
  of(job: Job, ambient: number): Float64Array
}

/** A load to measure with: enough to stand clear of rounding, not enough to bend the curve. */
const probe = {mass: 4, water: 0.8, minutes: rules.tick, after: 60, door: 2} as const

/**
 * Measure the response of an oven by simulating one short load and one opening of the door an hour after it is ready.
 *
 * @param ambient Air outside the oven, °C.
 */
export function responseOf(
  option: FiringOption,
  simulate: (option: FiringOption, events: readonly OvenEvent[], exact: boolean) => Forecast,
  fires: readonly OvenEvent[],
  ambient: number,
): Response {
  const {step} = option.forecast
  const at = Math.ceil((option.forecast.ready + probe.after) / rules.tick) * rules.tick
  // Not the option's own curve: on a day that has begun what is in the oven already is in that.
  const empty = simulate(option, fires, false).baking.likely
  const sorted = (more: OvenEvent): OvenEvent[] => [...fires, more].sort((a, b) => a.minutes - b.minutes)
  const pullOf = (event: OvenEvent, share: number): Float64Array => {
    const {likely} = simulate(option, sorted(event), false).baking
    const per = rules.tick / step
    const from = at / step
    const covered = Math.min(empty.length, likely.length) - 1
    const length = Math.ceil(covered / per) + 1
    const out = new Float64Array(length)
    for (let k = 0; k < length; k++) {
      const i = Math.min(covered, from + k * per)
      out[k] = (seen(empty[i]!) - seen(likely[i]!)) / share
    }
    return out
  }
  const heat = pullOf(
    {minutes: at, kind: 'load', mass: probe.mass, water: probe.water, bake: probe.minutes},
    loadHeat(probe.mass, probe.water),
  )
  const door = pullOf({minutes: at, kind: 'door', open: probe.door}, probe.door)
  const doorLevel = Math.max(1, empty[Math.min(empty.length - 1, at / step)]! - ambient)
  // A job is laid out on many fires, in the same air.
  const known = new WeakMap<Job, {air: number; pull: Float64Array}>()
  return {
    of(job, air) {
      const before = known.get(job)
      if (before?.air === air) return before.pull
      const {dish} = job
      const {minutes, startBest} = dish.need
      const energy = loadHeat(dish.mass, dish.water) * job.count
      const parts = Math.max(1, Math.round(bakeOf(job) / rules.tick))
      const out = new Float64Array(heat.length)
      for (let j = 0; j < parts; j++) {
        // As `oven/simulate`: most at first, a straight fall from 1.6 to 0.4 of the mean.
        const share = ((1.6 - (1.2 * (j + 0.5)) / parts) / parts) * energy
        for (let i = j; i < out.length; i++) out[i]! += share * heat[i - j]!
      }
      // The door lets out in proportion to the heat over the air outside; drawing finds the oven a little cooler.
      const level = (job.handling * Math.max(0, startBest - air)) / doorLevel
      const later = Math.max(1, Math.round(minutes.likely / rules.tick))
      for (let i = 0; i < out.length; i++) out[i]! += level * (door[i]! + (i >= later ? 0.8 * door[i - later]! : 0))
      known.set(job, {air, pull: out})
      return out
    },
  }
}

/** Minutes over which a job's water leaves: about as long as it bakes, not as long as it stays. */
export function bakeOf(job: Pick<Job, 'dish'>): number {
  return Math.max(rules.tick, 1.2 * job.dish.need.minutes.likely)
}

/** A number of a dish's vessels as the oven sees them set in, so many minutes after lighting. */
export function loadEvent(dish: Dish, count: number, minutes: number): OvenEvent {
  return {minutes, kind: 'load', mass: dish.mass * count, water: dish.water * count, bake: bakeOf({dish})}
}

/**
 * The door's openings, from the minutes of hands wanted at each: open for as long, to the quarter minute, and half a minute at least.
 *
 * @param hands By minutes after lighting.
 */
export function doorEvents(hands: ReadonlyMap<number, number>): OvenEvent[] {
  return [...hands].map(([minutes, wanted]) => ({minutes, kind: 'door', open: Math.max(0.5, Math.round(wanted * 4) / 4)}))
}
