import {floorSize, type OvenGeometry} from './geometry.js'
import type {OvenSpec} from './types.js'

/** Stefan–Boltzmann constant, W/(m²·K⁴), CODATA 2018. */
export const SIGMA = 5.670374419e-8

/**
 * View factor between two rectangles at right angles that share an edge.
 *
 * Incropera & DeWitt table 13.2, "perpendicular rectangles with a common edge".
 *
 * @param y depth of the rectangle that looks, m
 * @param z height of the rectangle looked at, m
 * @param x the common edge, m
 * @returns share of what leaves the first that meets the second
 */
export function perpendicularViewFactor(y: number, z: number, x: number): number {
  const w = y / x
  const h = z / x
  const w2 = w * w
  const h2 = h * h
  const s = w2 + h2
  const log =
    Math.log(((1 + w2) * (1 + h2)) / (1 + s)) +
    w2 * Math.log((w2 * (1 + s)) / ((1 + w2) * s)) +
    h2 * Math.log((h2 * (1 + s)) / ((1 + h2) * s))
  return (w * Math.atan(1 / w) + h * Math.atan(1 / h) - Math.sqrt(s) * Math.atan(1 / Math.sqrt(s)) + log / 4) / (Math.PI * w)
}

/**
 * Exchange areas of a grey, diffuse enclosure: q_i = Σ_j G_ij σ (T_j⁴ − T_i⁴) is what surface i gains. From the radiosity equations
 * J = εE + (1−ε)FJ (Incropera & DeWitt §13.3): G_ij = A_i ε_i Σ_k F_ik M_kj ε_j with M = (I − (1−ε)F)⁻¹. Symmetric where A_i F_ij is.
 *
 * @param areas m²
 * @param emissivities 0–1
 * @param factors view factors, row by row
 * @returns G in m², row by row
 */
export function exchangeAreas(
  areas: readonly number[],
  emissivities: readonly number[],
  factors: readonly number[][],
): Float64Array {
  const n = areas.length
  // Gauss–Jordan on [I − (1−ε)F | diag(ε)]; n is at most a handful.
  const m = areas.map((_, i) => {
    const row = new Float64Array(2 * n)
    for (let j = 0; j < n; j++) row[j] = (i === j ? 1 : 0) - (1 - emissivities[i]!) * factors[i]![j]!
    row[n + i] = emissivities[i]!
    return row
  })
  for (let c = 0; c < n; c++) {
    let pivot = c
    for (let r = c + 1; r < n; r++) if (Math.abs(m[r]![c]!) > Math.abs(m[pivot]![c]!)) pivot = r
    ;[m[c], m[pivot]] = [m[pivot]!, m[c]!]
    const row = m[c]!
    const d = row[c]!
    for (let j = c; j < 2 * n; j++) row[j] = row[j]! / d
    for (let r = 0; r < n; r++) {
      const f = m[r]![c]!
      if (r === c || f === 0) continue
      for (let j = c; j < 2 * n; j++) m[r]![j] = m[r]![j]! - f * row[j]!
    }
  }
  const g = new Float64Array(n * n)
  for (let i = 0; i < n; i++)
    for (let j = 0; j < n; j++) {
      let sum = 0
      for (let k = 0; k < n; k++) sum += factors[i]![k]! * m[k]![n + j]!
      g[i * n + j] = areas[i]! * emissivities[i]! * sum
    }
  // Rounding apart the matrix is symmetric; made exactly so, the exchange conserves energy to the last bit.
  for (let i = 0; i < n; i++)
    for (let j = 0; j < i; j++) {
      const mean = (g[i * n + j]! + g[j * n + i]!) / 2
      g[i * n + j] = mean
      g[j * n + i] = mean
    }
  return g
}

/**
 * View factors inside an oven: back, middle and mouth third of the floor, vault, mouth plane.
 *
 * The floor is flat and the mouth plane is flat, so neither sees itself; the mouth meets the floor as two rectangles at right angles of
 * the floor's mean width (reach by reach into the depth); everything else follows from reciprocity and from the sum being one.
 *
 * @returns 5 × 5 factors and the areas, m²
 */
export function ovenViewFactors(oven: OvenSpec, geometry: OvenGeometry): {areas: number[]; factors: number[][]} {
  const {depth} = floorSize(oven.floor)
  const x = geometry.floorArea / depth
  const z = geometry.mouthArea / x
  const [back, middle, front] = geometry.zoneArea
  const reach = (area: number): number => perpendicularViewFactor(z, area / x, x)
  const toFront = reach(front)
  const toMiddle = reach(front + middle) - toFront
  const toBack = reach(front + middle + back) - toFront - toMiddle
  const mouthTo = [toBack, toMiddle, toFront]
  const floors = [back, middle, front]
  const areas = [...floors, geometry.vaultArea, geometry.mouthArea]
  const factors: number[][] = floors.map((area, i) => {
    const toMouth = (geometry.mouthArea * mouthTo[i]!) / area
    return [0, 0, 0, 1 - toMouth, toMouth]
  })
  const mouthToVault = 1 - toBack - toMiddle - toFront
  const vault = floors.map((area, i) => (area * factors[i]![3]!) / geometry.vaultArea)
  const vaultToMouth = (geometry.mouthArea * mouthToVault) / geometry.vaultArea
  const rest = 1 - vault.reduce((a, b) => a + b, 0) - vaultToMouth
  factors.push([...vault, rest, vaultToMouth])
  factors.push([...mouthTo, mouthToVault, 0])
  return {areas, factors}
}
