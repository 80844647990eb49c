import convert from 'convert-units'
import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {kinds} from '../src/lexicon/kinds.js'
import {vessels} from '../src/lexicon/vessels.js'
import {readVessel, type VesselSize} from '../src/receipt/vessel.js'
import {brimVolume, topArea} from '../src/receipt/vessel-capacity.js'
import {spreadOf, vesselOf} from '../src/scale/vessel.js'

const size = (text: string): VesselSize => {
  const read = readVessel(text)
  if (!read.ok) throw new Error(read.reason)
  return read.value
}
const cups = (cubicMetres: number): number =>
  convert(cubicMetres * 1000)
    .from('l')
    .to('cup')
const squareInches = (squareMetres: number): number => squareMetres / 0.0254 ** 2

describe('vessels as front matter states them', () => {
  const inch = 0.0254
  const cases: ReadonlyArray<[string, Partial<VesselSize>]> = [
    ['round 9 in x 2 in', {shape: 'round', across: 9 * inch, height: 2 * inch}],
    ['9-inch round tin', {shape: 'round', across: 9 * inch}],
    ['23 cm round tin', {shape: 'round', across: 0.23}],
    ['loaf 9 x 5 x 3 in', {shape: 'loaf', length: 9 * inch, width: 5 * inch, height: 3 * inch}],
    ['loaf tin 23 × 13 × 7 cm', {shape: 'loaf', length: 0.23, width: 0.13, height: 0.07}],
    ['square 9 x 9 x 2 in', {shape: 'square', length: 9 * inch, width: 9 * inch, height: 2 * inch}],
    ['square 9 in x 2 in', {shape: 'square', length: 9 * inch, width: 9 * inch, height: 2 * inch}],
    // A tin of no named shape is no deeper than about 9 cm: common practice, no source.
    ['tin 30 x 12 cm', {shape: 'loaf', length: 0.3, width: 0.12}],
    ['30 x 11 cm tin', {shape: 'loaf', length: 0.3, width: 0.11}],
    ['25 x 10 cm cake tin', {shape: 'loaf', length: 0.25, width: 0.1}],
    ['15 x 10 cm tin', {shape: 'oblong', length: 0.15, width: 0.1}],
    ['9 x 2 inch tin', {shape: 'round', across: 9 * inch, height: 2 * inch}],
    ['23 x 7 cm cake tin', {shape: 'round', across: 0.23, height: 0.07}],
    ['9 x 3 1/2 inch tin', {shape: 'round', across: 9 * inch, height: 3.5 * inch}],
    ['20 x 10 cm round tin', {shape: 'round', across: 0.2, height: 0.1}],
    ['20 x 10 cm deep cake tin', {shape: 'round', across: 0.2, height: 0.1}],
    // … nor is a plain dish, which no loaf is baked in: common practice, no source.
    ['dish 30 x 12 cm', {shape: 'oblong', length: 0.3, width: 0.12}],
    ['gratin dish 28 x 10 cm', {shape: 'oblong', length: 0.28, width: 0.1}],
    ['dish 9 x 3 in', {shape: 'round', across: 9 * inch, height: 3 * inch}],
    ['pudding dish 20 x 10 cm', {shape: 'round', across: 0.2, height: 0.1}],
    ['earthen pan 30 x 12 cm', {shape: 'round', across: 0.3, height: 0.12}],
    ['8 in square cake tin', {shape: 'square', length: 8 * inch, width: 8 * inch}],
    ['oblong 13 by 9 by 2 inches', {shape: 'oblong', length: 13 * inch, width: 9 * inch, height: 2 * inch}],
    ['9 x 13 in pan', {shape: 'oblong', length: 9 * inch, width: 13 * inch}],
    ['baking dish 30 x 20 x 6 cm', {shape: 'oblong', length: 0.3, width: 0.2, height: 0.06}],
    ['cake tin 20 x 9 cm', {shape: 'round', across: 0.2, height: 0.09}],
    ['round 24,5 cm', {shape: 'round', across: 0.245}],
    ['pie plate 9 in x 1 1/2 in', {shape: 'pie plate', across: 9 * inch, height: 1.5 * inch}],
    ['crock 9 in x 8 in', {shape: 'crock', across: 9 * inch, height: 8 * inch}],
    ['free-standing loaf 24 cm', {shape: 'free-standing', across: 0.24}],
    ['sheet 16 x 12 in', {shape: 'sheet', length: 16 * inch, width: 12 * inch}],
    // As deep as tins of the kind are, narrower ones the shallower by as much (common practice, no source).
    ['23 cm tart tin', {shape: 'round', across: 0.23, height: 0.032}],
    ['15 cm tart tin', {shape: 'round', across: 0.15, height: 0.021}],
    ['8 in sandwich tin', {shape: 'round', across: 8 * inch, height: 0.038}],
    ['10 in tube pan', {shape: 'round', across: 10 * inch, height: 0.102}],
    ['Quicheform 28 cm', {shape: 'round', across: 0.28, height: 0.03}],
  ]
  for (const [text, want] of cases) {
    it(text, () => {
      const read: Partial<Record<string, unknown>> = {...size(text)}
      for (const [key, value] of Object.entries(want)) {
        if (typeof value === 'number') expect(read[key], key).toBeCloseTo(value, 5)
        else expect(read[key], key).toBe(value)
      }
    })
  }
  it('every kind’s own vessel can be read, and every vessel of the lexicon with a shape', () => {
    for (const kind of kinds) if (kind.vessel !== 'none') expect(readVessel(kind.vessel), kind.id).toMatchObject({ok: true})
    for (const row of vessels) if (row.shape !== 'none') expect(readVessel(row.spellings[0]!), row.id).toMatchObject({ok: true})
  })
  it('sizes without a unit, and sizes no vessel has, are refused with what to write', () => {
    for (const text of [
      'round 9',
      'loaf 9 x 5 x 3',
      'round 900 in',
      'spaceship',
      'round 1 mm',
      'round 9 in x 2 in x 3 in x 4 in',
      'y'.repeat(99),
    ]) {
      expect(readVessel(text), text).toMatchObject({ok: false})
    }
  })
})

/**
 * Tins brim-full, US cups, as US home-economics tables of pan substitution give them (from memory; the tables differ among themselves
 * by half a cup). Ours come from the inside measures at the top and a share for the slope of the sides.
 */
describe('what vessels hold, against published tables of tins (from memory)', () => {
  const table: ReadonlyArray<[string, number]> = [
    ['round 8 in x 2 in', 6],
    ['round 9 in x 1 1/2 in', 6],
    ['round 9 in x 2 in', 8],
    ['square 8 x 8 x 2 in', 8],
    ['square 9 x 9 x 2 in', 10],
    ['oblong 13 x 9 x 2 in', 14.5],
    ['loaf 8 1/2 x 4 1/2 x 2 1/2 in', 6],
    ['loaf 9 x 5 x 3 in', 8],
    ['pie plate 9 in x 1 1/4 in', 4],
  ]
  for (const [text, want] of table) {
    it(`${text}: ${want} cups within 10 %`, () => {
      const got = cups(brimVolume(size(text)))
      expect(got / want).toBeGreaterThan(0.9)
      expect(got / want).toBeLessThan(1.1)
    })
  }
  it('areas by geometry: a 9 in round is 63.6 in², an 8 in square 64: the well-known exchange', () => {
    expect(squareInches(topArea(size('round 9 in x 2 in')))).toBeCloseTo(63.617, 2)
    expect(squareInches(topArea(size('square 8 x 8 x 2 in')))).toBeCloseTo(64, 3)
  })
  it('a pie plate is a frustum: V = πh/3 (R² + Rr + r²), by hand 69.4 in³ for 9 × 1 1/2 in', () => {
    // R = 4.5, r = 4.5 − 0.9 × 1.5 = 3.15 in: π × 1.5 / 3 × (20.25 + 14.175 + 9.9225) = 69.66 in³.
    expect(brimVolume(size('pie plate 9 in x 1 1/2 in')) / 0.0254 ** 3).toBeCloseTo(69.66, 1)
  })
})

describe('a free-standing loaf', () => {
  const loaf = size('free-standing loaf 24 cm')
  it('of 24 cm is about 2.8 L: 0.95 kg at 3 mL a gram, as hearth bread comes out (2.5–4 mL/g, trade handbooks, from memory)', () => {
    const perGram = (brimVolume(loaf) * 1e6) / 950
    expect(perGram).toBeGreaterThan(2.5)
    expect(perGram).toBeLessThan(4)
  })
  it('grows as the cube root of its weight, so eight times the dough is twice as wide and its time four times', () => {
    fc.assert(
      fc.property(fc.double({min: 0.2, max: 5, noNaN: true}), (ratio) => {
        const grown = spreadOf(loaf, ratio)
        expect(brimVolume(grown) / brimVolume(loaf)).toBeCloseTo(ratio, 6)
        expect(vesselOf(grown, 1, '').halfThickness / vesselOf(loaf, 1, '').halfThickness).toBeCloseTo(Math.cbrt(ratio), 6)
      }),
    )
  })
})

describe('a vessel on the floor', () => {
  it('takes its rim and walls with it, and its thickness is the least of depth and width', () => {
    const crock = vesselOf(size('crock 8 in x 6 in'), 0.85, 'crock')
    expect(crock.footprint).toMatchObject({shape: 'circle'})
    if (crock.footprint.shape === 'circle') expect(crock.footprint.diameter).toBeCloseTo(8 * 0.0254 + 0.02, 6)
    expect(crock.height).toBeGreaterThan(6 * 0.0254)
    expect(crock.halfThickness).toBeCloseTo((6 * 0.0254 * 0.85) / 2, 6)
    const tall = vesselOf({shape: 'crock', across: 0.1, height: 0.3}, 0.9, 'jar')
    expect(tall.halfThickness).toBeCloseTo(0.05, 6)
  })
})
