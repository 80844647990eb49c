import type {Range} from '../lexicon/schema.js'
import {burningRate} from './fire.js'
import {floorArea} from './geometry.js'
import {type Factors, OvenRuns, type Trace} from './simulate.js'
import type {Band3, Firing, Forecast, OvenEvent, OvenParameters, OvenSpec} from './types.js'

/** Low and high are the 10 % and 90 % points of what is likely: this many standard deviations either way. */
export const SPREAD = 1.2816
/** What the model itself leaves out (one-dimensional walls, uneven fires, wind), as a share of the heat above ambient. */
const STRUCTURE = 0.05
const KEYS = ['stored', 'loss', 'coupling'] as const

const logNormal = (sigma: number): Range => ({low: Math.exp(-SPREAD * sigma), likely: 1, high: Math.exp(SPREAD * sigma)})

/** How far an oven may be from its drawing before anything was measured (from the ovens of `docs/oven.md`). */
export const PRIOR: OvenParameters = {stored: logNormal(0.2), loss: logNormal(0.45), coupling: logNormal(0.32)}

/** The parameters without their ranges. */
export function likelyOnly(p: OvenParameters): OvenParameters {
  const at = (v: number): {low: number; likely: number; high: number} => ({low: v, likely: v, high: v})
  return {stored: at(p.stored.likely), loss: at(p.loss.likely), coupling: at(p.coupling.likely)}
}

export interface ForecastOptions {
  readonly firing: Firing
  /** Of the drawing where absent. */
  readonly parameters?: OvenParameters
  /** Doors, loads and further fires, minutes from lighting. */
  readonly events?: readonly OvenEvent[]
  /** From lighting; 24 where absent. */
  readonly hours?: number
  /** Earlier simulations of the same oven, which days that begin alike go on from: the result is the same, and sooner there. */
  readonly runs?: OvenRuns
}

/** Standard deviations of the logarithms of the parameters. */
export function deviations(parameters: OvenParameters): [number, number, number] {
  const sigma = (r: Range): number => Math.log(Math.max(r.high, 1e-3) / Math.max(r.low, 1e-3)) / (2 * SPREAD)
  return [sigma(parameters.stored), sigma(parameters.loss), sigma(parameters.coupling)]
}

/** The likely parameters as plain factors. */
export function likelyFactors(parameters: OvenParameters): Factors {
  return {stored: parameters.stored.likely, loss: parameters.loss.likely, coupling: parameters.coupling.likely}
}

/** The likely baking heat so many minutes after lighting, °C. */
export function bakingAt({baking: {likely}, step}: Forecast, minutes: number): number {
  return likely[Math.max(0, Math.min(likely.length - 1, Math.round(minutes / step)))]!
}

/**
 * What an oven's fire usually is: its own burning rate, and a soak that grows with the oven.
 *
 * @param burn minutes
 */
export function usualFiring(oven: OvenSpec, burn: number): Firing {
  return {wood: (burningRate(oven) * burn) / 60, burn, soak: usualSoak(oven)}
}

/**
 * The closed wait after raking out: half an hour for a household oven, up to an hour for a large one (common practice, no source).
 *
 * @returns minutes, in fives
 */
export function usualSoak(oven: OvenSpec): number {
  return 5 * Math.round(Math.min(60, 20 + 14 * floorArea(oven.floor)) / 5)
}

/**
 * The falling oven against the clock.
 *
 * One simulation at the likely parameters and one more for each uncertain parameter moved by a standard deviation give the curve and,
 * to first order, its range: σ² = dᵀRd + structure² on the logarithm of the heat above ambient.
 *
 * @returns curves every five minutes from lighting, °C
 */
export function forecast(oven: OvenSpec, options: ForecastOptions): Forecast {
  const parameters = options.parameters ?? PRIOR
  const runs = options.runs ?? new OvenRuns(oven, 0)
  const run = (factors: Factors): Trace =>
    runs.simulate({firing: options.firing, factors, events: options.events ?? [], hours: options.hours ?? 24})
  const likely = likelyFactors(parameters)
  const main = run(likely)
  const sigmas = deviations(parameters)
  const moved = KEYS.map((key, i) => (sigmas[i]! > 1e-4 ? run({...likely, [key]: likely[key] * Math.exp(sigmas[i]!)}) : main))
  const correlation = parameters.correlation
  const band = (pick: (t: Trace) => Float64Array, ground = oven.ambient): Band3 => {
    const centre = pick(main)
    const others = moved.map(pick)
    const d = new Float64Array(3)
    const low: number[] = []
    const mid: number[] = []
    const high: number[] = []
    for (let i = 0; i < centre.length; i++) {
      const above = Math.max(centre[i]! - ground, 1)
      for (let k = 0; k < 3; k++) d[k] = (others[k]![i]! - centre[i]!) / above
      let variance = STRUCTURE * STRUCTURE
      for (let a = 0; a < 3; a++)
        for (let b = 0; b < 3; b++) variance += d[a]! * d[b]! * (a === b ? 1 : (correlation?.[a]?.[b] ?? 0))
      const spread = SPREAD * Math.min(Math.sqrt(Math.max(variance, 0)), 1)
      const heat = centre[i]! - ground
      mid.push(centre[i]!)
      low.push(ground + heat * Math.exp(-spread))
      high.push(ground + heat * Math.exp(spread))
    }
    return {low, likely: mid, high}
  }
  const at = Math.min(Math.round(main.ready / main.step), main.floor.length - 1)
  const zone = (z: Float64Array): number => z[at]! - main.floor[at]!
  return {
    step: main.step,
    firing: options.firing,
    raked: main.raked,
    ready: main.ready,
    floor: band((t) => t.floor),
    vault: band((t) => t.vault),
    air: band((t) => t.air),
    baking: band((t) => t.baking),
    heat: band((t) => t.heat, 0),
    zones: {back: zone(main.back), middle: zone(main.middle), mouth: zone(main.mouth)},
    balance: main.balance,
  }
}

export interface FiringFor {
  readonly firing: Firing
  /** Wood and burning time, with the range that the parameters leave. */
  readonly wood: Range
  readonly burn: Range
  /** Baking temperature at the end of the soak, °C, at the likely parameters. */
  readonly reached: number
  /** False where even the longest fire falls short; `firing` is then the longest. */
  readonly possible: boolean
}

export interface FiringWish {
  /** Baking temperature wanted at the end of the soak, °C. */
  readonly startCelsius: number
  readonly parameters?: OvenParameters
  /** Minutes; the usual soak where absent. */
  readonly soak?: number
  /** Minutes. */
  readonly longest?: number
}

/**
 * How long a fire, and how much wood, brings the oven to a heat.
 *
 * @returns the fire at the likely parameters, to the nearest minute, and the range of burning time and wood
 */
export function firingFor(oven: OvenSpec, wish: FiringWish): FiringFor {
  const parameters = wish.parameters ?? PRIOR
  const soak = wish.soak ?? usualSoak(oven)
  const longest = wish.longest ?? 720
  const rate = burningRate(oven) / 60
  const runs = new OvenRuns(oven, 0)
  const likely = likelyFactors(parameters)
  const reach = (burn: number, factors: Factors): number => {
    const minutes = Math.ceil((burn + soak) / 5) * 5
    const trace = runs.simulate({firing: {wood: rate * burn, burn, soak: minutes - burn}, factors, hours: minutes / 60})
    return trace.baking[trace.baking.length - 1]!
  }
  const solve = (factors: Factors, from: number): {burn: number; reached: number; possible: boolean} => {
    // Heat grows close to the square root of the burning time: the secant on log–log meets it in a few steps.
    let low = 10
    let high = longest
    let burn = Math.min(Math.max(from, low), high)
    let reached = reach(burn, factors)
    for (let i = 0; i < 14 && Math.abs(reached - wish.startCelsius) > 1; i++) {
      if (reached < wish.startCelsius) low = burn
      else high = burn
      if (high - low < 1) break
      const above = Math.max(reached - oven.ambient, 1)
      const wanted = Math.max(wish.startCelsius - oven.ambient, 1)
      const guess = burn * (wanted / above) ** 1.5
      const next =
        guess > low && guess < high ? guess : low === burn && guess >= high && high === longest ? longest : (low + high) / 2
      if (Math.abs(next - burn) < 0.2) break
      burn = next
      reached = reach(burn, factors)
      if (burn === longest && reached < wish.startCelsius) return {burn, reached, possible: false}
    }
    return {burn, reached, possible: reached > wish.startCelsius - 8}
  }
  const main = solve(likely, 120)
  const [sigma] = deviations(parameters)
  const spread = Math.exp(SPREAD * sigma)
  const easy = solve({...likely, stored: likely.stored * spread}, main.burn / spread)
  const hard = solve({...likely, stored: likely.stored / spread}, main.burn * spread)
  const burn = Math.round(main.burn)
  const range = (f: number): Range => ({
    low: Math.min(easy.burn, main.burn) * f,
    likely: main.burn * f,
    high: Math.max(hard.burn, main.burn) * f,
  })
  return {
    firing: {wood: rate * burn, burn, soak},
    wood: range(rate),
    burn: range(1),
    reached: main.reached,
    possible: main.possible,
  }
}
