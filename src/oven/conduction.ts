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
  /** Heat passed out of the far side since the start, J. */
  lost = 0
  /** Heat gone with steam since the start, J. */
  steam = 0
  /** After `eliminate`: face temperature T obeys `diagonal`·T = `right` + heat flow into the face (W). */
  diagonal = 0
  right = 0
  /** W/K at the far side. */
  #outside = 0

  /** Conductance from each node sideways to the outside, W/K. */
  readonly #side: Float64Array
  /** Conductance of each interval: #g0 + #g1·(sum of the two temperatures). */
  readonly #g0: Float64Array
  readonly #g1: Float64Array
  /** As drawn. */
  readonly #drawn0: Float64Array
  readonly #drawn1: Float64Array
  readonly #drawnSide: Float64Array
  readonly #drawnOutside: number
  readonly #c0: Float64Array
  readonly #c1: Float64Array
  /** Enthalpy at the boiling point. */
  readonly #boiling: Float64Array
  readonly #g: Float64Array
  /** After `eliminate`: each node's temperature is #share·(that before it) + #own. */
  readonly #share: Float64Array
  readonly #own: Float64Array
  #ambient = 0

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
    this.#side = new Float64Array(n)
    this.#drawnSide = new Float64Array(n)
    this.#drawn0 = new Float64Array(n - 1)
    this.#drawn1 = new Float64Array(n - 1)
    this.#g0 = new Float64Array(n - 1)
    this.#g1 = new Float64Array(n - 1)
    this.#c0 = new Float64Array(n)
    this.#c1 = new Float64Array(n)
    this.#g = new Float64Array(n)
    this.#share = new Float64Array(n)
    this.#own = new Float64Array(n)
    for (let i = 0; i < n - 1; i++) {
      const layer = layers[owners[i]!]!
      const a = depths[i]!
      const b = depths[i + 1]!
      const middle = (a + b) / 2
      const dx = b - a
      const across = (area * spread(middle)) / dx
      this.#drawn0[i] = layer.conductivity[0] * across
      this.#drawn1[i] = (layer.conductivity[1] * across) / 2
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
    this.#boiling = this.#c0.map((c0, i) => (c0 + (this.#c1[i]! * BOILING) / 2) * BOILING)
    this.#drawnOutside = options.outside * area * spread(base)
    this.scale(0, 1, 1)
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
    this.#drawnSide[node] = this.#drawnSide[node]! + conductance
    this.scale(0, 1, 1)
  }

  /**
   * Scale what the wall was drawn with; a second call begins again at the drawing.
   *
   * @param store depth up to which heat is stored by day, m
   * @param inside factor on the conductance of the store
   * @param behind factor on that of what lies behind it, on what leaks sideways and on the far side's film
   */
  scale(store: number, inside: number, behind: number): void {
    const n = this.size
    for (let i = 0; i < n - 1; i++) {
      const by = (this.depth[i]! + this.depth[i + 1]!) / 2 < store ? inside : behind
      this.#g0[i] = this.#drawn0[i]! * by
      this.#g1[i] = this.#drawn1[i]! * by
    }
    for (let i = 0; i < n; i++) this.#side[i] = this.#drawnSide[i]! * behind
    this.#outside = this.#drawnOutside * behind
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

  /** Numbers in a saved state. */
  get stateSize(): number {
    return 3 * this.size + 2
  }

  /** Write what changes as the wall heats and cools into `into` from index `at`. */
  saveState(into: Float64Array, at: number): void {
    const n = this.size
    into.set(this.celsius, at)
    into.set(this.enthalpy, at + n)
    into.set(this.latent, at + 2 * n)
    into[at + 3 * n] = this.lost
    into[at + 3 * n + 1] = this.steam
  }

  /** Go back to a state saved from a wall of the same layers. */
  loadState(from: Float64Array, at: number): void {
    const n = this.size
    this.celsius.set(from.subarray(at, at + n))
    this.enthalpy.set(from.subarray(at + n, at + 2 * n))
    this.latent.set(from.subarray(at + 2 * n, at + 3 * n))
    this.lost = from[at + 3 * n]!
    this.steam = from[at + 3 * n + 1]!
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
    const g0 = this.#g0
    const g1 = this.#g1
    const c0 = this.#c0
    const c1 = this.#c1
    const side = this.#side
    const share = this.#share
    const own = this.#own
    const rate = 1 / dt
    this.#ambient = ambient
    // From the far side inwards; `before` is the conductance towards the face, `behind` what the nodes behind let through.
    let here = t[n - 1]!
    let gain = 0
    let behind = this.#outside
    let pull = this.#outside * ambient
    for (let i = n - 1; i > 0; i--) {
      const inner = t[i - 1]!
      const before = g0[i - 1]! + g1[i - 1]! * (inner + here)
      const c = (c0[i]! + c1[i]! * here) * rate
      const inverse = 1 / (c + side[i]! + before + behind)
      const part = before * inverse
      gain = (c * here + side[i]! * ambient + pull) * inverse
      g[i - 1] = before
      share[i] = part
      own[i] = gain
      behind = before * (1 - part)
      pull = before * gain
      here = inner
    }
    const c = (c0[0]! + c1[0]! * here) * rate
    this.diagonal = c + behind
    this.right = c * here + pull
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
    const ambient = this.#ambient
    const t = this.celsius
    const g = this.#g
    const h = this.enthalpy
    const c0 = this.#c0
    const c1 = this.#c1
    const side = this.#side
    const share = this.#share
    const own = this.#own
    const boiling = this.#boiling
    let flowIn = gain
    let here = face
    let aside = 0
    for (let i = 0; i < n; i++) {
      let next = 0
      let out = 0
      if (i < n - 1) {
        next = share[i + 1]! * here + own[i + 1]!
        out = g[i]! * (here - next)
      } else {
        out = this.#outside * (here - ambient)
        aside += out
      }
      const leak = side[i]! * (here - ambient)
      aside += leak
      let held = h[i]! + dt * (flowIn - out - leak)
      if (held > boiling[i]! && this.latent[i]! > 0) held = this.#boil(i, held)
      h[i] = held
      // h = c0·T + c1·T²/2 solved in the form that stays exact as c1 → 0.
      const a = c0[i]!
      t[i] = (2 * held) / (a + Math.sqrt(Math.max(a * a + 2 * c1[i]! * held, a * a * 0.04)))
      flowIn = out
      here = next
    }
    this.lost += dt * aside
  }

  /** Heat above the boiling point drives off water first; returns the enthalpy left. */
  #boil(node: number, held: number): number {
    const used = Math.min(held - this.#boiling[node]!, this.latent[node]!)
    this.latent[node] = this.latent[node]! - used
    this.steam += used
    return held - used
  }
}
