import {describe, expect, it} from 'vitest'
import {exchangeAreas, ovenViewFactors, perpendicularViewFactor, SIGMA} from '../src/oven/enclosure.js'
import {ovenGeometry} from '../src/oven/geometry.js'
import type {OvenSpec} from '../src/oven/types.js'

const oven: OvenSpec = {
  name: 'test',
  floor: {shape: 'round', diameter: 1.07},
  vaultHeight: 0.41,
  mouth: {width: 0.46, height: 0.28},
  door: {material: 'oak', thickness: 0.05},
  hearth: [{material: 'fire-brick', thickness: 0.06}],
  vault: [{material: 'common-brick', thickness: 0.11}],
  place: 'indoors',
  ambient: 15,
  fuel: {wood: 'oak', moisture: 0.18},
  start: {celsius: 15, damp: false},
}

describe('radiation inside the oven', () => {
  it('two-surface grey enclosure: q = σ(T1⁴ − T2⁴) / ((1−ε1)/ε1A1 + 1/A1F12 + (1−ε2)/ε2A2) (Incropera & DeWitt eq. 13.18)', () => {
    const [a1, a2, e1, e2] = [1, 1.7, 0.9, 0.6]
    const g = exchangeAreas(
      [a1, a2],
      [e1, e2],
      [
        [0, 1],
        [a1 / a2, 1 - a1 / a2],
      ],
    )
    const exact = 1 / ((1 - e1) / (e1 * a1) + 1 / a1 + (1 - e2) / (e2 * a2))
    expect(g[1]! / exact).toBeCloseTo(1, 10)
    const q = g[1]! * SIGMA * (700 ** 4 - 500 ** 4)
    expect(q).toBeCloseTo(SIGMA * (700 ** 4 - 500 ** 4) * exact, 6)
  })

  it('infinite parallel plates: G = A/(1/ε1 + 1/ε2 − 1) (Incropera & DeWitt table 13.3)', () => {
    const g = exchangeAreas(
      [1, 1],
      [0.8, 0.5],
      [
        [0, 1],
        [1, 0],
      ],
    )
    expect(g[1]).toBeCloseTo(1 / (1 / 0.8 + 1 / 0.5 - 1), 10)
  })

  it('perpendicular squares with a common edge: 0.200 (Incropera & DeWitt fig. 13.6; Howell C-14)', () => {
    expect(perpendicularViewFactor(1, 1, 1)).toBeCloseTo(0.20004, 4)
    // Reciprocity: A1·F12 = A2·F21.
    expect(2 * perpendicularViewFactor(2, 0.5, 1)).toBeCloseTo(0.5 * perpendicularViewFactor(0.5, 2, 1), 10)
  })

  it('view factors of an oven are reciprocal, not negative, and sum to one', () => {
    const {areas, factors} = ovenViewFactors(oven, ovenGeometry(oven))
    factors.forEach((row, i) => {
      expect(row.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12)
      row.forEach((f, j) => {
        expect(f).toBeGreaterThanOrEqual(0)
        expect(areas[i]! * f).toBeCloseTo(areas[j]! * factors[j]![i]!, 12)
      })
    })
    // The mouth sees more of the floor near it than of the back.
    expect(factors[4]![2]!).toBeGreaterThan(factors[4]![0]!)
  })

  it('areas of a hemisphere and of a barrel agree with plane geometry', () => {
    const dome = ovenGeometry({
      ...oven,
      floor: {shape: 'round', diameter: 1},
      vaultHeight: 0.5,
      mouth: {width: 1e-6, height: 1e-6},
    })
    expect(dome.vaultArea).toBeCloseTo(2 * Math.PI * 0.25, 2)
    expect(dome.volume).toBeCloseTo(((2 / 3) * Math.PI) / 8, 6)
    expect(dome.vaultSpread(0.5)).toBeCloseTo(4, 2)
    const barrel = ovenGeometry({
      ...oven,
      floor: {shape: 'rectangle', depth: 1, width: 0.8},
      vaultHeight: 0.4,
      mouth: {width: 1e-6, height: 1e-6},
    })
    expect(barrel.vaultArea).toBeCloseTo(Math.PI * 0.4 * 1 + Math.PI * 0.16, 3)
    const [a, b, c] = dome.zoneArea
    expect(a + b + c).toBeCloseTo(Math.PI / 4, 12)
    expect(a).toBeCloseTo(c, 12)
  })
})
