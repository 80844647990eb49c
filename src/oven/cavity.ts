import {SIGMA} from './enclosure.js'

/** 0 °C in kelvin. */
export const KELVIN = 273.15

/** The unknowns of a step: three strips of floor, vault, door, and the air or flame between them. */
export const BACK = 0
export const MIDDLE = 1
export const FRONT = 2
export const VAULT = 3
export const DOOR = 4
export const AIR = 5

/** Change of a temperature, °C, after which Newton's method has arrived. */
const SMALL = 0.03

/** What the step's balance of the air needs. */
export interface AirTerms {
  /** Capacity of the air over the step, W/K, and its temperature before, °C. */
  readonly inertia: number
  readonly before: number
  /** Heat set free in it, W. */
  readonly heat: number
  /** Heat carried out for each degree above ambient, W/K. */
  readonly flow: number
  readonly ambient: number
}

/**
 * The heat exchange inside an oven for one step: each face obeys its wall's folded equation (`Column.eliminate`), exchanges radiation
 * with the others and heat with the air, and all six temperatures are found together by Newton's method. One object is used for a whole
 * simulation; its arrays are filled by the caller before `solve`.
 */
export class Cavity {
  /** Temperatures, °C, of the five faces and the air; the start of the iteration and its result. */
  readonly celsius = new Float64Array(6)
  /** Each wall's folded equation: diagonal·T = right + heat into the face. */
  readonly diagonal = new Float64Array(5)
  readonly right = new Float64Array(5)
  /** Heat put straight on a face, W. */
  readonly direct = new Float64Array(5)
  /** Convection to the air, W/K, and area that sees flame times its emissivity, m². */
  readonly film = new Float64Array(5)
  readonly gas = new Float64Array(5)
  /** After `solve`: heat into each face, W. */
  readonly gains = new Float64Array(5)

  readonly #power = new Float64Array(6)
  readonly #slope = new Float64Array(6)
  readonly #matrix = new Float64Array(42)

  #radiate(): void {
    const x = this.celsius
    const power = this.#power
    const slope = this.#slope
    for (let f = 0; f < 6; f++) {
      const kelvin = x[f]! + KELVIN
      const cube = SIGMA * kelvin * kelvin * kelvin
      slope[f] = 4 * cube
      power[f] = cube * kelvin
    }
  }

  /**
   * Solve the step.
   *
   * @param exchange radiation exchange areas, 5 × 5, m²
   * @param shade share of it that passes the flame
   * @param walls 5 with the door shut; 4 with the mouth open, whose plane is then black and at ambient
   * @returns net heat into the air, W
   */
  solve(exchange: Float64Array, shade: number, walls: number, air: AirTerms): number {
    const x = this.celsius
    const m = this.#matrix
    const p = this.#power
    const s = this.#slope
    const {film, gas, direct, diagonal: own, right, gains} = this
    const {inertia, before, heat, flow, ambient} = air
    if (walls < 5) x[DOOR] = ambient
    for (let iteration = 0; iteration < 12; iteration++) {
      this.#radiate()
      // Residuals r and Jacobian J, solved as J·δ = −r.
      const here = x[AIR]!
      const airPower = p[AIR]!
      const airSlope = s[AIR]!
      let airResidual = inertia * (here - before) - heat + flow * (here - ambient)
      let airDiagonal = inertia + flow
      for (let f = 0; f < walls; f++) {
        const o = f * 7
        const row = f * 5
        const face = x[f]!
        const power = p[f]!
        let residual = own[f]! * face - right[f]! - direct[f]!
        let seen = 0
        for (let j = 0; j < 5; j++) {
          if (j === f) continue
          const g = exchange[row + j]! * shade
          residual += g * (power - p[j]!)
          seen += g
          m[o + j] = -g * s[j]!
        }
        const inflow = film[f]! * (here - face) + gas[f]! * (airPower - power)
        const toAir = film[f]! + gas[f]! * airSlope
        const toFace = film[f]! + gas[f]! * s[f]!
        m[o + f] = own[f]! + seen * s[f]! + toFace
        m[o + AIR] = -toAir
        m[o + 6] = inflow - residual
        airResidual += inflow
        airDiagonal += toAir
        m[AIR * 7 + f] = -toFace
      }
      if (walls < 5) {
        // The open mouth stays as it is: an empty row for its plane.
        m.fill(0, DOOR * 7, DOOR * 7 + 7)
        m[DOOR * 7 + DOOR] = 1
        m[AIR * 7 + DOOR] = 0
      }
      m[AIR * 7 + AIR] = airDiagonal
      m[AIR * 7 + 6] = -airResidual
      // Newton's error after a change δ is about (3/2T)·δ², T⁴ being all that is curved: less than 1e-5 °C after the last.
      if (step(m, x) < SMALL) break
    }
    // The flows at the solution; moved exactly, they conserve heat whatever the iteration left over.
    this.#radiate()
    let toAir = heat - flow * (x[AIR]! - ambient)
    for (let f = 0; f < walls; f++) {
      const power = p[f]!
      let gain = direct[f]!
      for (let j = 0; j < 5; j++) if (j !== f) gain += exchange[f * 5 + j]! * shade * (p[j]! - power)
      const inflow = film[f]! * (x[AIR]! - x[f]!) + gas[f]! * (p[AIR]! - power)
      gains[f] = gain + inflow
      toAir -= inflow
    }
    return toAir
  }

  /** Radiation out of the open mouth after `solve`, W. */
  throughMouth(exchange: Float64Array, shade: number): number {
    let sum = 0
    for (let f = 0; f < 4; f++) sum += exchange[f * 5 + DOOR]! * shade * (this.#power[f]! - this.#power[DOOR]!)
    return sum
  }
}

/**
 * Solve the 6 × 6 system in place by Gaussian elimination with the diagonal as pivot (the matrix is diagonally dominant: every face
 * exchanges with others what it loses to them, and has a capacity besides), and add the solution to `x`.
 *
 * @returns the largest change
 */
function step(m: Float64Array, x: Float64Array): number {
  for (let c = 0; c < 5; c++) {
    const co = c * 7
    const inverse = 1 / m[co + c]!
    for (let r = c + 1; r < 6; r++) {
      const ro = r * 7
      const f = m[ro + c]! * inverse
      if (f === 0) continue
      for (let j = c + 1; j < 7; j++) m[ro + j] = m[ro + j]! - f * m[co + j]!
    }
  }
  let largest = 0
  for (let r = 5; r >= 0; r--) {
    const ro = r * 7
    let sum = m[ro + 6]!
    for (let j = r + 1; j < 6; j++) sum -= m[ro + j]! * m[j * 7 + 6]!
    const d = sum / m[ro + r]!
    m[ro + 6] = d
    const size = Math.abs(d)
    if (size > largest) largest = size
    x[r] = x[r]! + d
  }
  return largest
}
