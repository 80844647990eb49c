import type {Model} from './model.js'

/**
 * A proven lower bound on the compact model by Lagrangian relaxation. Prices are put on floor (for each part and tick) and on openings (each
 * dish pays its share of an opening it uses); with any non-negative prices, letting every dish choose for itself and taking back the price of
 * the whole floor bounds every plan from below. Hands, lanes and the half hour are left out, which only lowers it: on five days they moved
 * the linear program by less than a hundredth. The prices are set by the volume algorithm, which follows the mean of what the dishes chose and so comes
 * to the linear program's own value, where plain subgradients stay some hundredths below.
 *
 * Fisher, Management Science 27 (1981) 1–18, for the method; Barahona & Anbil, Mathematical Programming 87 (2000) 385–399, for the algorithm.
 *
 * @param upper Cost of a plan in hand; sets the length of the steps.
 * @param rounds Number of steps; the work is the same every time.
 * @param without What it costs to leave each dish out, where it may be; where nothing is said, only one without any choice is, for nothing.
 * @returns What no plan is below.
 */
export function lowerBound(model: Model, upper: number, rounds: number, without?: ArrayLike<number>): number {
  const relaxed = new Relaxation(model, without)
  const {size, slope} = relaxed
  const centre = relaxed.firstPrices()
  const trial = new Float64Array(size)
  let best = relaxed.value(centre)
  const mean = Float64Array.from(slope)
  let pace = FIRST_PACE
  let most = FIRST_SHARE
  let failed = 0
  let checked = best
  for (let round = 1; round <= rounds; round++) {
    const norm = squared(mean, centre)
    if (norm < 1e-12) break
    const step = (pace * Math.max(1e-3 * Math.abs(upper), BEYOND * upper - best)) / norm
    setOut(trial, centre, mean, step)
    const got = relaxed.value(trial)
    const {mm, ms, ss} = productsOf(mean, slope, trial)
    // The share of what is chosen anew that leaves the mean the least to find fault with.
    const apart = mm - 2 * ms + ss
    const share = Math.max(most / 10, Math.min(most, apart > 1e-12 ? (mm - ms) / apart : most))
    if (got > best) {
      best = got
      centre.set(trial)
      failed = 0
      if (ms > 0) pace = Math.min(2, pace * FASTER)
    } else if (++failed === PATIENCE) {
      pace *= SLOWER
      failed = 0
    }
    blend(mean, slope, share)
    if (round % LOOK_AFTER === 0) {
      if (best - checked < 0.01 * Math.abs(checked)) most = Math.max(1e-5, most / 2)
      checked = best
    }
  }
  return best
}

// The loops over all prices stand alone, or V8 compiles the whole method anew whenever one of its turns is taken for the first time.

/** Sum of the squares of what there is to mend: no price falls below nothing. */
function squared(mean: Float64Array, centre: Float64Array): number {
  let sum = 0
  for (let k = 0; k < mean.length; k++) if (mean[k]! > 0 || centre[k]! > 0) sum += mean[k]! * mean[k]!
  return sum
}

/** Set prices a step from the best so far. */
function setOut(trial: Float64Array, centre: Float64Array, mean: Float64Array, step: number): void {
  for (let k = 0; k < trial.length; k++) trial[k] = Math.max(0, centre[k]! + step * mean[k]!)
}

/** Products of mean and slope with themselves and each other, over what can be mended. */
function productsOf(mean: Float64Array, slope: Float64Array, trial: Float64Array): {mm: number; ms: number; ss: number} {
  let mm = 0
  let ms = 0
  let ss = 0
  for (let k = 0; k < mean.length; k++) {
    const m = mean[k]!
    const s = slope[k]!
    if (trial[k]! === 0 && m <= 0 && s <= 0) continue
    mm += m * m
    ms += m * s
    ss += s * s
  }
  return {mm, ms, ss}
}

/** Let the mean follow what is chosen now. */
function blend(mean: Float64Array, slope: Float64Array, share: number): void {
  for (let k = 0; k < mean.length; k++) mean[k] = share * slope[k]! + (1 - share) * mean[k]!
}

/** Length of the first step, as a share of what is thought to be wanting, and by how much the plan in hand is taken for dearer than it is. */
const FIRST_PACE = 0.1
const BEYOND = 1.05
/** How much longer steps get that lead on as the last did, and how much shorter after so many without gain. */
const FASTER = 1.3
const SLOWER = 0.66
const PATIENCE = 6
/** Share that what is chosen anew has in the mean at first, at most; halved after so many steps that gained less than a hundredth. */
const FIRST_SHARE = 0.1
const LOOK_AFTER = 40

/** What every dish would choose at given prices. */
class Relaxation {
  /** Prices: of each part of the floor at each tick, the whole part; then each job's share of the openings it might use. */
  readonly size: number
  /** How the value rises with each price, at the prices last asked for. */
  readonly slope: Float64Array
  readonly #model: Model
  readonly #without: ArrayLike<number> | undefined
  /** For each job's choices, the places of the prices of its openings; −1 where it needs none. */
  readonly #in: readonly Int32Array[]
  readonly #out: readonly Int32Array[]
  /** The tick of each price of an opening. */
  readonly #ticks: Int32Array
  readonly #sums: Float64Array
  readonly #lines: readonly Float64Array[]

  constructor(model: Model, without?: ArrayLike<number>) {
    const T = model.ticks
    this.#model = model
    this.#without = without
    const ticks: number[] = []
    const outs: Int32Array[] = []
    this.#in = model.jobs.map(({since}, u) => {
      const at = new Int32Array(T + 1).fill(-1)
      const place = (t: number): number => {
        if (at[t]! < 0) at[t] = 3 * T + ticks.push(t) - 1
        return at[t]!
      }
      outs.push(Int32Array.from(model.e[u]!, place))
      return Int32Array.from(model.s[u]!, (t) => (since === null ? place(t) : -1))
    })
    this.#out = outs
    this.#ticks = Int32Array.from(ticks)
    this.size = 3 * T + ticks.length
    this.slope = new Float64Array(this.size)
    this.#sums = new Float64Array(T + 1)
    this.#lines = [0, 1, 2, 3].map(() => new Float64Array(T + 1))
  }

  /** Prices to begin from: floor free, each opening shared by everyone who might use it. */
  firstPrices(): Float64Array {
    const {ticks: T, opening} = this.#model
    const users = new Int32Array(T + 1)
    for (const t of this.#ticks) users[t]!++
    const prices = new Float64Array(this.size)
    this.#ticks.forEach((t, k) => {
      prices[3 * T + k] = opening / users[t]!
    })
    return prices
  }

  /** Value at given prices. */
  value(prices: Float64Array): number {
    const {jobs, s, e, where, cost, ticks: T, opening, floor, floorTotal, constant} = this.#model
    const {slope} = this
    const lines = this.#lines
    const sums = this.#sums
    let value = constant
    for (let t = 0; t < T; t++) {
      const back = prices[t]!
      const middle = prices[T + t]!
      const mouth = prices[2 * T + t]!
      lines[0]![t + 1] = lines[0]![t]! + back
      lines[1]![t + 1] = lines[1]![t]! + middle
      lines[2]![t + 1] = lines[2]![t]! + mouth
      lines[3]![t + 1] = lines[3]![t]! + back + middle + mouth
    }
    value -= lines[3]![T]!
    sums.fill(0)
    for (let k = 3 * T; k < this.size; k++) sums[this.#ticks[k - 3 * T]!]! += prices[k]!
    for (let t = 0; t <= T; t++) value += Math.min(0, opening - sums[t]!)
    slope.fill(0)
    for (let k = 3 * T; k < this.size; k++) if (sums[this.#ticks[k - 3 * T]!]! > opening) slope[k] = -1
    for (let u = 0; u < jobs.length; u++) {
      const {area} = jobs[u]!
      const mine = where[u]!
      const cheap = cost[u]!
      const from = s[u]!
      const until = e[u]!
      const ins = this.#in[u]!
      const outs = this.#out[u]!
      let best = this.#without?.[u] ?? Number.POSITIVE_INFINITY
      let which = -1
      // Choices stand by what they cost, and prices only add to it.
      for (let o = 0; o < cheap.length && cheap[o]! < best; o++) {
        const w = mine[o]!
        const line = lines[w]!
        const i = ins[o]!
        const v =
          cheap[o]! +
          (area / (w === 3 ? floorTotal : floor[w]!)) * (line[until[o]!]! - line[Math.max(0, from[o]!)]!) +
          prices[outs[o]!]! +
          (i < 0 ? 0 : prices[i]!)
        if (v >= best) continue
        best = v
        which = o
      }
      if (which >= 0 || this.#without) value += best
      if (which < 0) continue
      slope[outs[which]!]! += 1
      if (ins[which]! >= 0) slope[ins[which]!]! += 1
      const w = mine[which]!
      const begin = Math.max(0, from[which]!)
      const end = until[which]!
      for (let z = w === 3 ? 0 : w; z <= (w === 3 ? 2 : w); z++) {
        // What is taken from a tick on, summed up below.
        const part = area / (w === 3 ? floorTotal : floor[z]!)
        slope[z * T + begin]! += part
        if (end < T) slope[z * T + end]! -= part
      }
    }
    for (let z = 0; z < 3; z++) {
      let taken = 0
      for (let t = z * T; t < (z + 1) * T; t++) {
        taken += slope[t]!
        slope[t] = taken - 1
      }
    }
    return value
  }
}

/**
 * Vessels that every plan on this curve has to leave out, whatever it costs: the same bound with nothing priced but what is left out.
 *
 * @param left Vessels that a plan in hand leaves out.
 * @param rounds Number of steps.
 */
export function leastLeftOut(model: Model, left: number, rounds: number): number {
  const free = {...model, cost: model.cost.map((c) => new Float64Array(c.length)), opening: 0, constant: 0}
  const bound = lowerBound(
    free,
    left,
    rounds,
    model.jobs.map(({count}) => count),
  )
  return Math.max(0, Math.min(left, Math.ceil(bound - 1e-6)))
}
