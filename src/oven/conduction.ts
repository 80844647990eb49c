import type {Material} from '../lexicon/schema.js'

/**
 * Transient conduction in depth: finite volumes around graded nodes, backward Euler in time (unconditionally stable, never overshoots),
 * properties linear in temperature, and enthalpy as the state so that heat is conserved to rounding. Layer joints are nodes.
 *
 * Patankar, Numerical Heat Transfer and Fluid Flow, ch. 4; Incropera & DeWitt §5.10.
 */

/** A layer of the wall with its properties as straight lines in °C: value = at0 + slope·T. */
export interface ColumnLayer {
  readonly thickness: number
  readonly conductivity: readonly [at0: number, slope: number]
  /** ρc, J/(m³·K). */
  readonly capacity: readonly [at0: number, slope: number]
  /** Heat to drive off the water in it, J/m³. */
  readonly latent?: number
}

export interface ColumnOptions {
  readonly layers: readonly ColumnLayer[]
  /** Area of the face, m². */
  readonly area: number
  /** Area at depth x by the area of the face. */
  readonly spread?: (x: number) => number
  /** Conductance at the far side, W/(m²·K): 0 is adiabatic. */
  readonly outside: number
  /** First node's distance from the face, m, the growth of the spacing, and its largest value. */
  readonly first?: number
  readonly growth?: number
  readonly largest?: number
  readonly celsius: number
}

/** Water leaves brick at its boiling point; pores hold it a little longer, which is within the range of the figure. */
const BOILING = 100

/** Straight line through the points of a property table by least squares. */
function line(points: ReadonlyArray<{celsius: number; value: number}>): [number, number] {
  const n = points.length
  const mx = points.reduce((s, p) => s + p.celsius, 0) / n
  const my = points.reduce((s, p) => s + p.value, 0) / n
  let sxy = 0
  let sxx = 0
  for (const p of points) {
    sxy += (p.celsius - mx) * (p.value - my)
    sxx += (p.celsius - mx) ** 2
  }
  const slope = sxx > 0 ? sxy / sxx : 0
  return [my - slope * mx, slope]
}

/**
 * A material's row as a layer.
 *
 * @param thickness m
 * @param water share of the dry mass that is water to be driven off
 */
export function columnLayer(material: Material, thickness: number, water = 0): ColumnLayer {
  const density = material.density.likely
  const heat: [number, number] = material.heatAt ? line(material.heatAt) : [material.heat.likely, 0]
  return {
    thickness,
    conductivity: material.conductivityAt ? line(material.conductivityAt) : [material.conductivity.likely, 0],
    capacity: [heat[0] * density, heat[1] * density],
    // 2.26 MJ/kg at 100 °C (steam tables) and 0.33 MJ/kg to warm the water to it.
    latent: water * density * 2.59e6,
  }
}

/** A wall in one dimension, from its hot face outwards. */
export class Column {
  readonly size: number
  /** Depth of the nodes, m. */
  readonly depth: Float64Array
  /** Temperatures, °C. */
  readonly celsius: Float64Array
  /** Enthalpy above 0 °C, J. */
  readonly enthalpy: Float64Array
  /** Heat still needed to drive off a node's water, J. */
  readonly latent: Float64Array
  /** Factor on the conductance of each interval. */
  readonly factor: Float64Array
  /** Heat passed out of the far side since the start, J. */
  lost = 0
  /** Heat gone with steam since the start, J. */
  steam = 0
  /** After `eliminate`: face temperature T obeys `diagonal`·T = `right` + heat flow into the face (W). */
  diagonal = 0
  right = 0
  /** W/K at the far side. */
  outside: number

  /** Conductance from each node sideways to the outside, W/K. */
  readonly #side: Float64Array
  readonly #g0: Float64Array
  readonly #g1: Float64Array
  readonly #c0: Float64Array
  readonly #c1: Float64Array
  readonly #g: Float64Array
  readonly #b: Float64Array
  readonly #r: Float64Array
  #ambient = 0
  #wet: boolean

  constructor(options: ColumnOptions) {
    const {layers, area} = options
    const spread = options.spread ?? (() => 1)
    const first = options.first ?? 0.004
    const growth = options.growth ?? 1.3
    const largest = options.largest ?? 0.03
    const depths = [0]
    const owners: number[] = []
    let wish = first
    let base = 0
    layers.forEach((layer, l) => {
      // Spacings grow from the face; in each layer they are stretched a little so that the joint falls on a node.
      const steps: number[] = []
      let sum = 0
      while (sum < layer.thickness * 0.999) {
        steps.push(wish)
        sum += wish
        wish = Math.min(wish * growth, largest)
      }
      const stretch = layer.thickness / sum
      let at = base
      for (const step of steps) {
        at += step * stretch
        depths.push(at)
        owners.push(l)
      }
      base += layer.thickness
      depths[depths.length - 1] = base
    })
    const n = depths.length
    this.size = n
    this.depth = Float64Array.from(depths)
    this.celsius = new Float64Array(n).fill(options.celsius)
    this.enthalpy = new Float64Array(n)
    this.latent = new Float64Array(n)
    this.factor = new Float64Array(n - 1).fill(1)
    this.#side = new Float64Array(n)
    this.#g0 = new Float64Array(n - 1)
    this.#g1 = new Float64Array(n - 1)
    this.#c0 = new Float64Array(n)
    this.#c1 = new Float64Array(n)
    this.#g = new Float64Array(n)
    this.#b = new Float64Array(n)
    this.#r = new Float64Array(n)
    for (let i = 0; i < n - 1; i++) {
      const layer = layers[owners[i]!]!
      const a = depths[i]!
      const b = depths[i + 1]!
      const middle = (a + b) / 2
      const dx = b - a
      const across = (area * spread(middle)) / dx
      this.#g0[i] = layer.conductivity[0] * across
      this.#g1[i] = layer.conductivity[1] * across
      for (const [node, from] of [
        [i, a],
        [i + 1, middle],
      ] as const) {
        const volume = area * spread(from + dx / 4) * (dx / 2)
        this.#c0[node] = this.#c0[node]! + layer.capacity[0] * volume
        this.#c1[node] = this.#c1[node]! + layer.capacity[1] * volume
        this.latent[node] = this.latent[node]! + (layer.latent ?? 0) * volume
      }
    }
    this.#wet = this.latent.some((l) => l > 0)
    this.outside = options.outside * area * spread(base)
    this.setCelsius(() => options.celsius)
  }

  /** Set the temperature profile by depth. */
  setCelsius(profile: (x: number) => number): void {
    for (let i = 0; i < this.size; i++) {
      const t = profile(this.depth[i]!)
      this.celsius[i] = t
      this.enthalpy[i] = (this.#c0[i]! + (this.#c1[i]! * t) / 2) * t
    }
  }

  /**
   * Let heat leave sideways from the node nearest a depth (not from the face).
   *
   * @param depth m
   * @param conductance W/K
   */
  addBridge(depth: number, conductance: number): void {
    let node = 1
    while (node < this.size - 1 && this.depth[node]! < depth - 1e-9) node++
    this.#side[node] = this.#side[node]! + conductance
  }

  /** Heat held above 0 °C, J. */
  stored(): number {
    let sum = 0
    for (let i = 0; i < this.size; i++) sum += this.enthalpy[i]!
    return sum
  }

  /** Heat held above a temperature, J. */
  storedAbove(celsius: number): number {
    let sum = 0
    for (let i = 0; i < this.size; i++) sum += this.enthalpy[i]! - (this.#c0[i]! + (this.#c1[i]! * celsius) / 2) * celsius
    return sum
  }

  /** Heat capacity at the present temperatures, J/K. */
  capacity(): number {
    let sum = 0
    for (let i = 0; i < this.size; i++) sum += this.#c0[i]! + this.#c1[i]! * this.celsius[i]!
    return sum
  }

  /**
   * First half of a step: fold everything behind the face into one equation for the face.
   *
   * @param dt seconds
   * @param ambient °C beyond the far side
   */
  eliminate(dt: number, ambient: number): void {
    const n = this.size
    const t = this.celsius
    const g = this.#g
    const b = this.#b
    const r = this.#r
    this.#ambient = ambient
    for (let i = 0; i < n - 1; i++) g[i] = (this.#g0[i]! + (this.#g1[i]! * (t[i]! + t[i + 1]!)) / 2) * this.factor[i]!
    let c = (this.#c0[n - 1]! + this.#c1[n - 1]! * t[n - 1]!) / dt
    const side = this.#side
    let bNext = c + this.outside + side[n - 1]! + g[n - 2]!
    let rNext = c * t[n - 1]! + (this.outside + side[n - 1]!) * ambient
    b[n - 1] = bNext
    r[n - 1] = rNext
    for (let i = n - 2; i > 0; i--) {
      c = (this.#c0[i]! + this.#c1[i]! * t[i]!) / dt
      const gi = g[i]!
      const ratio = gi / bNext
      bNext = c + side[i]! + g[i - 1]! + gi * (1 - ratio)
      rNext = c * t[i]! + side[i]! * ambient + ratio * rNext
      b[i] = bNext
      r[i] = rNext
    }
    c = (this.#c0[0]! + this.#c1[0]! * t[0]!) / dt
    const ratio = g[0]! / bNext
    this.diagonal = c + g[0]! * (1 - ratio)
    this.right = c * t[0]! + ratio * rNext
  }

  /**
   * Second half: from the face temperature to the whole profile, moving enthalpy by the fluxes so that nothing is lost.
   *
   * @param dt seconds, as in `eliminate`
   * @param face °C
   * @param gain heat flow into the face, W
   */
  substitute(dt: number, face: number, gain: number): void {
    const n = this.size
    const g = this.#g
    const h = this.enthalpy
    const side = this.#side
    let flowIn = gain
    let here = face
    let aside = 0
    for (let i = 0; i < n - 1; i++) {
      const next = (g[i]! * here + this.#r[i + 1]!) / this.#b[i + 1]!
      const out = g[i]! * (here - next)
      const leak = side[i]! * (here - this.#ambient)
      aside += leak
      h[i] = h[i]! + dt * (flowIn - out - leak)
      flowIn = out
      here = next
    }
    const out = (this.outside + side[n - 1]!) * (here - this.#ambient)
    h[n - 1] = h[n - 1]! + dt * (flowIn - out)
    this.lost += dt * (out + aside)
    if (this.#wet) this.#boil()
    for (let i = 0; i < n; i++) {
      const c1 = this.#c1[i]!
      const c0 = this.#c0[i]!
      // h = c0·T + c1·T²/2 solved in the form that stays exact as c1 → 0.
      this.celsius[i] = (2 * h[i]!) / (c0 + Math.sqrt(Math.max(c0 * c0 + 2 * c1 * h[i]!, c0 * c0 * 0.04)))
    }
  }

  /** Heat above the boiling point drives off water first. */
  #boil(): void {
    let left = 0
    for (let i = 0; i < this.size; i++) {
      const latent = this.latent[i]!
      if (latent <= 0) continue
      const excess = this.enthalpy[i]! - (this.#c0[i]! + (this.#c1[i]! * BOILING) / 2) * BOILING
      if (excess > 0) {
        const used = Math.min(excess, latent)
        this.enthalpy[i] = this.enthalpy[i]! - used
        this.latent[i] = latent - used
        this.steam += used
      }
      left += this.latent[i]!
    }
    this.#wet = left > 0
  }
}
