import type {Model} from './model.js'

/**
 * A proven lower bound on the compact model by Lagrangian relaxation. Prices are put on floor (per m² and tick of each part) and on
 * openings (each dish pays its share of an opening it uses); with any non-negative prices, letting every dish choose for itself and
 * taking back the price of the whole floor bounds every plan from below. Held & Karp, Mathematical Programming 1 (1971) 6–25, for the
 * subgradient; Fisher, Management Science 27 (1981) 1–18, for the method. Hands, lanes and cuts are left out, which only lowers it.
 */
export interface Prices {
  /** Per part of the floor, a value per tick. */
  readonly floor: readonly [Float64Array, Float64Array, Float64Array]
  /** Per job, a value per tick. */
  readonly openings: readonly Float64Array[]
}

/** Prices to begin from: floor free, each opening shared by everyone who might use it. */
export function firstPrices(model: Model): Prices {
  const n = model.jobs.length
  const users = new Int32Array(model.ticks)
  const touch = model.s.map((s, u) => {
    const mine = new Uint8Array(model.ticks)
    for (let o = 0; o < s.length; o++) {
      if (model.jobs[u]!.since === null) mine[s[o]!] = 1
      mine[model.e[u]![o]!] = 1
    }
    for (let t = 0; t < mine.length; t++) users[t]! += mine[t]!
    return mine
  })
  const openings = Array.from({length: n}, (_, u) => {
    const p = new Float64Array(model.ticks)
    for (let t = 0; t < p.length; t++) if (touch[u]![t]) p[t] = model.opening / users[t]!
    return p
  })
  return {floor: [new Float64Array(model.ticks), new Float64Array(model.ticks), new Float64Array(model.ticks)], openings}
}

/**
 * Value of the relaxation at given prices, and what each dish chooses.
 *
 * @param without What it costs to leave each dish out; where nothing is said, only a dish without any choice is, and costs nothing.
 */
export function relax(model: Model, prices: Prices, chosen: Int32Array, sums: Float64Array, without?: ArrayLike<number>): number {
  const T = model.ticks
  const share = [model.floor[0] / model.floorTotal, model.floor[1] / model.floorTotal, model.floor[2] / model.floorTotal]
  const prefix = [0, 1, 2, 3].map(() => new Float64Array(T + 1))
  let value = model.constant
  for (let t = 0; t < T; t++) {
    let mixed = 0
    for (let z = 0; z < 3; z++) {
      const p = prices.floor[z]![t]!
      prefix[z]![t + 1] = prefix[z]![t]! + p
      mixed += p * share[z]!
      value -= p * model.floor[z]!
    }
    prefix[3]![t + 1] = prefix[3]![t]! + mixed
  }
  sums.fill(0)
  for (let u = 0; u < model.jobs.length; u++) {
    const s = model.s[u]!
    const e = model.e[u]!
    const w = model.where[u]!
    const c = model.cost[u]!
    const pay = prices.openings[u]!
    const area = model.jobs[u]!.area
    const old = model.jobs[u]!.since !== null
    let best = without?.[u] ?? Number.POSITIVE_INFINITY
    let bestO = -1
    for (let o = 0; o < s.length; o++) {
      if (c[o]! >= best) break
      const line = prefix[w[o]!]!
      const so = s[o]!
      const eo = e[o]!
      const v = c[o]! + area * (line[eo]! - line[Math.max(0, so)]!) + pay[eo]! + (old ? 0 : pay[so]!)
      if (v < best) {
        best = v
        bestO = o
      }
    }
    chosen[u] = bestO
    if (bestO >= 0 || without) value += best
    for (let t = 0; t < T; t++) sums[t]! += pay[t]!
  }
  for (let t = 0; t < T; t++) value += Math.min(0, model.opening - sums[t]!)
  return value
}

/**
 * Improve the bound.
 *
 * @param upper Cost of a plan in hand; sets the length of the steps.
 * @param rounds Number of steps; the work is the same every time.
 * @param without What it costs to leave each dish out, where it may be.
 */
export function lowerBound(
  model: Model,
  upper: number,
  rounds: number,
  start: Prices = firstPrices(model),
  without?: ArrayLike<number>,
): {bound: number; prices: Prices} {
  const n = model.jobs.length
  const T = model.ticks
  const copy = (p: Prices): Prices => ({
    floor: [Float64Array.from(p.floor[0]), Float64Array.from(p.floor[1]), Float64Array.from(p.floor[2])],
    openings: p.openings.map((o) => Float64Array.from(o)),
  })
  const now = copy(start)
  const chosen = new Int32Array(n)
  const sums = new Float64Array(T)
  let best = relax(model, now, chosen, sums, without)
  let bestPrices = copy(now)
  let pace = 1
  let stale = 0
  const usage = [0, 1, 2].map(() => new Float64Array(T))
  const share = [model.floor[0] / model.floorTotal, model.floor[1] / model.floorTotal, model.floor[2] / model.floorTotal]
  // Floor prices and opening prices differ in scale: the floor's slack is measured in shares of the part.
  for (let round = 0; round < rounds; round++) {
    for (const u of usage) u.fill(0)
    for (let u = 0; u < n; u++) {
      const o = chosen[u]!
      if (o < 0) continue
      const w = model.where[u]![o]!
      const s = Math.max(0, model.s[u]![o]!)
      const e = model.e[u]![o]!
      for (let z = 0; z < 3; z++) {
        const a = w === 3 ? model.jobs[u]!.area * share[z]! : w === z ? model.jobs[u]!.area : 0
        if (a > 0) for (let t = s; t < e; t++) usage[z]![t]! += a
      }
    }
    let norm = 0
    for (let z = 0; z < 3; z++) {
      const scale = 1 / model.floor[z]!
      for (let t = 0; t < T; t++) {
        const g = usage[z]![t]! * scale - 1
        usage[z]![t] = g
        if (g > 0 || now.floor[z]![t]! > 0) norm += g * g
      }
    }
    const open = new Uint8Array(T)
    for (let t = 0; t < T; t++) open[t] = sums[t]! > model.opening + 1e-12 ? 1 : 0
    for (let u = 0; u < n; u++) {
      const o = chosen[u]!
      const s = o >= 0 && model.jobs[u]!.since === null ? model.s[u]![o]! : -1
      const e = o >= 0 ? model.e[u]![o]! : -1
      const pay = now.openings[u]!
      for (let t = 0; t < T; t++) {
        const g = (t === s || t === e ? 1 : 0) - open[t]!
        if (g > 0 || (g < 0 && pay[t]! > 0)) norm += g * g
      }
    }
    if (norm < 1e-12) break
    const value = best
    const step = (pace * Math.max(1e-3 * Math.abs(upper), upper - value)) / norm
    for (let z = 0; z < 3; z++) {
      const scale = 1 / model.floor[z]!
      const p = now.floor[z]!
      for (let t = 0; t < T; t++) p[t] = Math.max(0, p[t]! + step * usage[z]![t]! * scale)
    }
    for (let u = 0; u < n; u++) {
      const o = chosen[u]!
      const s = o >= 0 && model.jobs[u]!.since === null ? model.s[u]![o]! : -1
      const e = o >= 0 ? model.e[u]![o]! : -1
      const pay = now.openings[u]!
      for (let t = 0; t < T; t++) {
        const g = (t === s || t === e ? 1 : 0) - open[t]!
        if (g !== 0) pay[t] = Math.max(0, pay[t]! + step * g)
      }
    }
    const got = relax(model, now, chosen, sums, without)
    if (got > best + 1e-9) {
      if (got > best + 1e-4 * Math.abs(best)) stale = 0
      best = got
      bestPrices = copy(now)
    } else if (++stale >= 8) {
      pace *= 0.7
      stale = 0
      if (pace < 1e-4) break
    }
  }
  return {bound: best, prices: bestPrices}
}

/**
 * Vessels that every plan on this curve has to leave out, whatever it costs: the same bound with nothing priced but what is left out.
 *
 * @param left Vessels that a plan in hand leaves out.
 * @param rounds Number of steps.
 */
export function leastLeftOut(model: Model, left: number, rounds: number): number {
  const free = {...model, cost: model.cost.map((c) => new Float64Array(c.length)), opening: 0, constant: 0}
  const without = model.jobs.map(({count}) => count)
  const {bound} = lowerBound(free, left, rounds, firstPrices(free), without)
  return Math.max(0, Math.min(left, Math.ceil(bound - 1e-6)))
}
