import {describe, expect, it} from 'vitest'
import {Column, type ColumnLayer} from '../src/oven/conduction.js'

/*
 * Conduction in depth against closed forms.
 *
 * | case | source | tolerance |
 * | --- | --- | --- |
 * | semi-infinite solid, face held | Carslaw & Jaeger §2.4; Incropera & DeWitt eq. 5.57 | 0.5 % of the step |
 * | semi-infinite solid, constant flux | Carslaw & Jaeger §2.9; Incropera & DeWitt eq. 5.59 | 0.5 % of the face's rise |
 * | semi-infinite solid, convection | Incropera & DeWitt eq. 5.60 | 0.5 % of the step |
 * | slab, convection, one side insulated | Carslaw & Jaeger §3.11; Incropera & DeWitt §5.5 | 0.5 % of the step |
 * | lumped limit, Bi ≪ 0.1 | Incropera & DeWitt §5.1 | 0.5 % |
 * | steady composite wall | Incropera & DeWitt §3.1 | 0.1 % |
 * | order in space | method of refinement | ≥ 1.8 |
 */

/** Complementary error function, Abramowitz & Stegun 7.1.5 and 7.1.14: series and continued fraction. */
function erfc(x: number): number {
  if (x < 0) return 2 - erfc(-x)
  if (x < 3) {
    // A&S 7.1.5
    let term = x
    let sum = x
    for (let n = 1; n < 80; n++) {
      term *= (-x * x) / n
      sum += term / (2 * n + 1)
    }
    return 1 - (2 / Math.sqrt(Math.PI)) * sum
  }
  // A&S 7.1.14, continued fraction
  let f = 0
  for (let n = 60; n > 0; n--) f = n / 2 / (x + f)
  return Math.exp(-x * x) / Math.sqrt(Math.PI) / (x + f)
}

const BRICK = {k: 0.72, c: 1920 * 835}
const ALPHA = BRICK.k / BRICK.c
const brick = (thickness: number): ColumnLayer => ({thickness, conductivity: [BRICK.k, 0], capacity: [BRICK.c, 0]})

/** March a column with a face law: heat flow into the face (W) as a + b·T. */
function march(column: Column, seconds: number, dt: number, law: (t: number) => readonly [number, number], ambient = 20): number {
  let face = column.celsius[0]!
  for (let n = 0; n < Math.round(seconds / dt); n++) {
    column.eliminate(dt, ambient)
    const [a, b] = law((n + 1) * dt)
    face = (column.right + a) / (column.diagonal - b)
    column.substitute(dt, face, a + b * face)
  }
  return face
}

const at = (column: Column, x: number): number => {
  let i = 1
  while (column.depth[i]! < x) i++
  const [x0, x1] = [column.depth[i - 1]!, column.depth[i]!]
  return column.celsius[i - 1]! + ((column.celsius[i]! - column.celsius[i - 1]!) * (x - x0)) / (x1 - x0)
}

const fine = {first: 0.001, growth: 1.05, largest: 0.01}
const deep = (): Column => new Column({layers: [brick(0.8)], area: 1, outside: 0, celsius: 20, ...fine})

describe('conduction in depth agrees with closed forms', () => {
  it('semi-infinite solid with its face held: T = Ts + (Ti − Ts)·erf(x / 2√(αt)) within 0.5 %', () => {
    const column = deep()
    const hold = 1e9
    march(column, 3600, 5, () => [hold * 320, -hold])
    for (const x of [0.01, 0.02, 0.04, 0.06, 0.1]) {
      const exact = 20 + 300 * erfc(x / (2 * Math.sqrt(ALPHA * 3600)))
      expect(Math.abs(at(column, x) - exact)).toBeLessThan(0.005 * 300)
    }
  })

  it('semi-infinite solid under constant flux: face rises by 2q√(αt/π)/k within 0.5 %', () => {
    const column = deep()
    const q = 5000
    const face = march(column, 7200, 5, () => [q, 0])
    const exact = (2 * q * Math.sqrt((ALPHA * 7200) / Math.PI)) / BRICK.k
    expect(Math.abs(face - 20 - exact) / exact).toBeLessThan(0.005)
    for (const x of [0.02, 0.05, 0.1]) {
      const s = 2 * Math.sqrt(ALPHA * 7200)
      const rise = exact * Math.exp(-((x / s) ** 2)) - ((q * x) / BRICK.k) * erfc(x / s)
      expect(Math.abs(at(column, x) - 20 - rise)).toBeLessThan(0.005 * exact)
    }
  })

  it('semi-infinite solid in a stream: Incropera & DeWitt eq. 5.60 within 0.5 %', () => {
    const column = deep()
    const h = 40
    march(column, 3600, 5, () => [h * 500, -h])
    const root = Math.sqrt(ALPHA * 3600)
    for (const x of [0, 0.02, 0.05]) {
      const exact =
        erfc(x / (2 * root)) -
        Math.exp((h * x) / BRICK.k + (h * h * ALPHA * 3600) / BRICK.k ** 2) * erfc(x / (2 * root) + (h * root) / BRICK.k)
      const found = (x === 0 ? column.celsius[0]! : at(column, x)) - 20
      expect(Math.abs(found / 480 - exact)).toBeLessThan(0.005)
    }
  })

  it('slab in a stream with an insulated back: the series of Incropera & DeWitt §5.5 within 0.5 %', () => {
    const L = 0.114
    const h = 25
    const column = new Column({layers: [brick(L)], area: 1, outside: 0, celsius: 300, ...fine})
    const seconds = 4 * 3600
    march(column, seconds, 10, () => [h * 20, -h])
    const bi = (h * L) / BRICK.k
    const fo = (ALPHA * seconds) / L ** 2
    let face = 0
    let back = 0
    for (let n = 0; n < 30; n++) {
      // ζ·tan ζ = Bi, a root in each (nπ, nπ + π/2)
      let low = n * Math.PI + 1e-12
      let high = n * Math.PI + Math.PI / 2 - 1e-12
      for (let i = 0; i < 80; i++) {
        const mid = (low + high) / 2
        if (mid * Math.tan(mid) < bi) low = mid
        else high = mid
      }
      const zeta = (low + high) / 2
      const c = ((4 * Math.sin(zeta)) / (2 * zeta + Math.sin(2 * zeta))) * Math.exp(-zeta * zeta * fo)
      face += c * Math.cos(zeta)
      back += c
    }
    expect(Math.abs((column.celsius[0]! - 20) / 280 - face)).toBeLessThan(0.005)
    expect(Math.abs((column.celsius[column.size - 1]! - 20) / 280 - back)).toBeLessThan(0.005)
  })

  it('lumped limit: a thin iron plate cools as exp(−hAt/ρVc) within 0.5 %', () => {
    const plate: ColumnLayer = {thickness: 0.005, conductivity: [60, 0], capacity: [7850 * 434, 0]}
    const column = new Column({layers: [plate], area: 2, outside: 10, celsius: 200, ...fine})
    march(column, 1200, 1, () => [2 * 15 * 20, -2 * 15])
    const exact = Math.exp((-(10 + 15) * 1200) / (0.005 * 7850 * 434))
    expect(Math.abs((column.celsius[0]! - 20) / 180 / exact - 1)).toBeLessThan(0.005)
  })

  it('steady composite wall: face minus ambient is q·(ΣL/k + 1/h) within 0.1 %', () => {
    const layers: ColumnLayer[] = [brick(0.1), {thickness: 0.05, conductivity: [0.065, 0], capacity: [280 * 920, 0]}]
    const column = new Column({layers, area: 1, outside: 8, celsius: 20, ...fine})
    const face = march(column, 3e6, 2000, () => [200, 0])
    expect(Math.abs((face - 20) / (200 * (0.1 / 0.72 + 0.05 / 0.065 + 1 / 8)) - 1)).toBeLessThan(0.001)
  })

  it('a shell that widens: steady flow through a spherical wall, q = 4πk·ΔT/(1/r1 − 1/r2), within 0.2 %', () => {
    // Incropera & DeWitt eq. 3.40
    const r1 = 0.5
    const r2 = 0.9
    const column = new Column({
      layers: [brick(r2 - r1)],
      area: 4 * Math.PI * r1 * r1,
      spread: (x) => ((r1 + x) / r1) ** 2,
      outside: 1e6,
      celsius: 20,
      ...fine,
    })
    const q = 500
    const face = march(column, 2e7, 20000, () => [q, 0])
    const exact = (q * (1 / r1 - 1 / r2)) / (4 * Math.PI * BRICK.k)
    expect(Math.abs((face - 20) / exact - 1)).toBeLessThan(0.002)
  })

  it('is of second order in space (at least 1.8)', () => {
    // Slab with a smooth start T = 20 + 100·cos(πx/2L) and face adiabatic, back held: decays as exp(−(π/2)²Fo), exactly.
    const L = 0.1
    const seconds = 1800
    const error = (n: number): number => {
      const column = new Column({
        layers: [brick(L)],
        area: 1,
        outside: 1e12,
        celsius: 20,
        first: L / n,
        growth: 1,
        largest: L / n,
      })
      column.setCelsius((x) => 20 + 100 * Math.cos((Math.PI * x) / (2 * L)))
      march(column, seconds, 0.25, () => [0, 0])
      const exact = 100 * Math.exp(-((Math.PI / 2) ** 2) * ((ALPHA * seconds) / L ** 2))
      return Math.abs(column.celsius[0]! - 20 - exact)
    }
    const order = Math.log2(error(5) / error(10))
    expect(order).toBeGreaterThan(1.8)
  })

  it('keeps heat to rounding with properties that change with temperature and with water to boil off', () => {
    const wet: ColumnLayer = {thickness: 0.1, conductivity: [0.7, 0.0003], capacity: [1.6e6, 900], latent: 5e7}
    const column = new Column({layers: [wet, brick(0.1)], area: 1, outside: 8, celsius: 20})
    const before = column.stored()
    let put = 0
    for (let n = 0; n < 500; n++) {
      column.eliminate(60, 20)
      const q = n < 200 ? 6000 : -300
      const face = (column.right + q) / column.diagonal
      column.substitute(60, face, q)
      put += q * 60
    }
    expect(column.steam).toBeGreaterThan(1e6)
    expect(Math.abs(column.stored() - before + column.lost + column.steam - put) / put).toBeLessThan(1e-9)
  })

  it('stays bounded with a step of a whole day (unconditionally stable)', () => {
    const column = deep()
    const face = march(column, 86400 * 5, 86400, () => [1e9 * 500, -1e9])
    expect(face).toBeCloseTo(500, 3)
    for (const t of column.celsius) {
      expect(t).toBeGreaterThanOrEqual(20)
      expect(t).toBeLessThanOrEqual(500.001)
    }
  })
})
