import convertUnits from 'convert-units'
import Qty from 'js-quantities'
import {unit} from 'mathjs'
import {describe, expect, it} from 'vitest'
import {lookUpMeasure} from '../src/lexicon/index.js'
import {convert} from '../src/measure/convert.js'

/**
 * Sizes of measures against what is published.
 *
 * | check | source | tolerance |
 * | --- | --- | --- |
 * | US customary weight and capacity | NIST Handbook 44 App. C | 1 in 10⁶ (the tables print 6–8 digits) |
 * | the same | NIST SP 811 App. B.8 | 1 in 10⁵ (7 digits, rounded) |
 * | imperial | Weights and Measures Act 1824; 4.54609 L by the Act of 1985 | 1 in 10⁶; the Act's own 277.274 in³ to 6 in 10⁴ (water weighed anew since: now 277.419) |
 * | wine, ale gallon, Winchester bushel | 231, 282, 2150.42 in³ | exact |
 * | second libraries | mathjs, js-quantities | 1 in 10⁵ |
 * | third library | convert-units | 1 in 10⁵ (it rounds a pound to 453.592 g) |
 */
interface Ask {
  readonly year?: number
  readonly place?: string
  readonly item?: string
}
const one = (measure: string, ask: Ask = {}): ReturnType<typeof convert> =>
  convert({
    amount: {low: 1, high: 1},
    exact: '1',
    measure,
    item: ask.item ?? 'water',
    year: ask.year ?? 2000,
    place: ask.place ?? 'America',
    hedges: [],
  })
const millilitres = (measure: string, ask?: Ask): number => one(measure, ask).millilitres?.likely ?? Number.NaN
const grams = (measure: string): number => one(measure).grams?.likely ?? Number.NaN
const near = (got: number, want: number, relative: number): void =>
  expect(Math.abs(got / want - 1), `${got} for ${want}`).toBeLessThanOrEqual(relative)
const IN3 = 16.387064

describe('weight', () => {
  // NIST Handbook 44 App. C, avoirdupois, apothecaries' and troy: 1 lb = 453.59237 g, 1 oz = 28.349523125 g, 1 grain = 64.79891 mg,
  // 1 pennyweight = 1.55517384 g, 1 dram (apothecaries) = 3.8879346 g, 1 scruple = 1.2959782 g.
  it.each([
    ['pound', 453.59237],
    ['ounce', 28.349523125],
    ['grain', 0.06479891],
    ['pennyweight', 1.55517384],
    ['drachm', 3.8879346],
    ['scruple', 1.2959782],
    ['gram', 1],
    ['kilogram', 1000],
    ['milligram', 0.001],
  ])('a %s is %d g: NIST Handbook 44 App. C', (measure, want) => near(grams(measure), want, 5e-6))

  // NIST SP 811 App. B.8: pound (avoirdupois) 4.535924 E-01 kg, ounce (avoirdupois) 2.834952 E-02 kg, grain 6.479891 E-05 kg, pennyweight 1.555174 E-03 kg.
  it.each([
    ['pound', 453.5924],
    ['ounce', 28.34952],
    ['grain', 0.06479891],
    ['pennyweight', 1.555174],
  ])('a %s is %d g: NIST SP 811 App. B.8', (measure, want) => near(grams(measure), want, 1e-5))

  it.each([
    ['pound', 'lb'],
    ['ounce', 'oz'],
  ] as const)('a %s agrees with mathjs, js-quantities and convert-units', (measure, name) => {
    near(grams(measure), unit(1, name === 'lb' ? 'lbm' : 'oz').toNumber('g'), 1e-5)
    near(grams(measure), Qty(1, name).to('g').scalar, 1e-5)
    near(grams(measure), convertUnits(1).from(name).to('g'), 1e-5)
  })
})

describe('capacity in America', () => {
  // NIST Handbook 44 App. C, liquid measure: gallon 3.785411784 L, quart 946.352946 mL, pint 473.176473 mL, gill 118.29411825 mL,
  // fluid ounce 29.5735295625 mL, fluid dram 3.6966911953 mL; dry measure: bushel 35.239072 L, peck 8.809768 L.
  it.each([
    ['gallon', 3785.411784],
    ['quart', 946.352946],
    ['pint', 473.176473],
    ['gill', 118.29411825],
    ['fluid ounce', 29.5735295625],
    ['fluid drachm', 3.6966911953],
    ['cup', 236.5882365],
    ['tablespoon', 14.78676478],
    ['teaspoon', 4.928921594],
    ['bushel', 35239.07],
    ['peck', 8809.768],
  ])('a %s is %d mL: NIST Handbook 44 App. C', (measure, want) => near(millilitres(measure), want, 5e-6))

  // NIST SP 811 App. B.8, m³: gallon (US) 3.785412 E-03, pint (US liquid) 4.731765 E-04, gill (US) 1.182941 E-04, cup (US) 2.365882 E-04,
  // tablespoon 1.478676 E-05, teaspoon 4.928922 E-06, bushel (US) 3.523907 E-02, peck (US) 8.809768 E-03.
  it.each([
    ['gallon', 3785.412],
    ['pint', 473.1765],
    ['gill', 118.2941],
    ['cup', 236.5882],
    ['tablespoon', 14.78676],
    ['teaspoon', 4.928922],
    ['bushel', 35239.07],
    ['peck', 8809.768],
  ])('a %s is %d mL: NIST SP 811 App. B.8', (measure, want) => near(millilitres(measure), want, 1e-5))

  it.each([
    ['gallon', 'gallon', 'gallon', 'gal'],
    ['quart', 'quart', 'quart', 'qt'],
    ['pint', 'pint', 'pint', 'pnt'],
    ['cup', 'cup', 'cup', 'cup'],
    ['tablespoon', 'tablespoon', 'tablespoon', 'Tbs'],
    ['teaspoon', 'teaspoon', 'teaspoon', 'tsp'],
  ] as const)('a %s agrees with mathjs, js-quantities and convert-units', (measure, math, quantities, units) => {
    // mathjs and the rest round these to three to six digits: a teaspoon is 5 mL there.
    const loose = measure === 'teaspoon' || measure === 'tablespoon' ? 0.02 : 5e-4
    near(millilitres(measure), unit(1, math).toNumber('ml'), loose)
    near(millilitres(measure), Qty(1, quantities).to('ml').scalar, 5e-4)
    near(millilitres(measure), convertUnits(1).from(units).to('ml'), 1e-5)
  })
})

describe('capacity by year and place', () => {
  it('the wine gallon of Queen Anne (1706) holds 231 cubic inches', () =>
    near(millilitres('gallon', {year: 1750, place: 'England', item: 'brandy'}), 231 * IN3, 1e-6))
  it('the ale gallon holds 282 cubic inches', () =>
    near(millilitres('gallon', {year: 1750, place: 'England', item: 'beer'}), 282 * IN3, 1e-6))
  it('the Winchester bushel is a cylinder 18 1/2 in wide and 8 in deep (1701): 2150.42 cubic inches', () => {
    const got = millilitres('bushel', {year: 1750, place: 'England', item: 'salt'})
    near(got, 2150.42 * IN3, 1e-6)
    near(got, Math.PI * (18.5 / 2) ** 2 * 8 * IN3, 1e-5)
  })
  it('the imperial gallon is 4.54609 L, the Act of 1824 said 277.274 cubic inches', () => {
    const got = millilitres('gallon', {year: 1861, place: 'London', item: 'milk'})
    near(got, 4546.09, 1e-6)
    near(got, 277.274 * IN3, 6e-4)
  })
  it('the Act came into force in 1826', () => {
    near(millilitres('pint', {year: 1825, place: 'England', item: 'brandy'}), 473.176, 1e-5)
    near(millilitres('pint', {year: 1826, place: 'England', item: 'brandy'}), 568.261, 1e-5)
  })
  it('America kept the wine pint', () => near(millilitres('pint', {year: 1850, place: 'Boston'}), 473.176, 1e-5))

  it('covers wine and ale measure for milk in England before 1826, where either may be meant', () => {
    const range = one('pint', {year: 1780, place: 'England', item: 'milk'}).millilitres
    near(range?.low ?? 0, 473.176, 1e-5)
    near(range?.high ?? 0, (282 * IN3) / 8, 1e-5)
  })

  it('covers both countries where the place is not stated, and says which line settles it', () => {
    const got = convert({
      amount: {low: 1, high: 1},
      exact: '1',
      measure: 'pint',
      item: 'milk',
      year: 1861,
      place: null,
      hedges: [],
    })
    expect(got.millilitres?.low).toBeCloseTo(473.176, 2)
    expect(got.millilitres?.high).toBeCloseTo(568.261, 2)
    expect(got.notes.join(' ')).toMatch(/`place: America` or `place: England`/)
    expect(got.sources).toEqual(expect.arrayContaining(['nist-hb44', 'wma-1824']))
  })

  it('asks for the year where it decides and the place does not', () => {
    const got = convert({
      amount: {low: 1, high: 1},
      exact: '1',
      measure: 'pint',
      item: 'brandy',
      year: null,
      place: 'England',
      hedges: [],
    })
    expect(got.millilitres).toEqual({low: 473.176, likely: 568.261, high: 568.261})
    expect(got.notes.join(' ')).toMatch(/`year:`/)
    expect(got.notes.join(' ')).not.toMatch(/`place:/)
  })

  it('asks nothing where year and place are stated', () => {
    const got = one('pint', {year: 1861, place: 'London', item: 'milk'})
    expect(got.notes).toEqual([])
    expect(got.millilitres?.low).toBe(got.millilitres?.high)
  })

  it('says that a place is not known rather than guess it', () => {
    const got = convert({
      amount: {low: 1, high: 1},
      exact: '1',
      measure: 'pint',
      item: 'milk',
      year: 1861,
      place: 'Erewhon',
      hedges: [],
    })
    expect(got.notes.join(' ')).toMatch(/Erewhon/)
  })

  // Australian metric kitchen measures: tablespoon 20 mL, cup 250 mL (from memory of the standard).
  it('an Australian tablespoon is 20 mL and cup 250 mL', () => {
    expect(millilitres('tablespoon', {year: 2010, place: 'Australia'})).toBe(20)
    expect(millilitres('cup', {year: 2010, place: 'Australia'})).toBe(250)
  })
  it('metric units are exact', () => {
    expect([millilitres('millilitre'), millilitres('centilitre'), millilitres('decilitre'), millilitres('litre')]).toEqual([
      1, 10, 100, 1000,
    ])
  })
})

describe('household measures of the two period tables', () => {
  const middle = (measure: string, year: number): number => millilitres(measure, {year, place: 'Boston'})
  const inside = (measure: string, year: number, value: number): void => {
    const range = one(measure, {year, place: 'Boston'}).millilitres
    expect(range?.low ?? Number.NaN).toBeLessThanOrEqual(value)
    expect(range?.high ?? Number.NaN).toBeGreaterThanOrEqual(value)
  }
  const GILL = 118.29411825

  // Project Gutenberg 9624 (1837): four tablespoons, or half a gill, to a wine-glass.
  it('four table-spoons, or half a gill, make a wine-glass (1837)', () => {
    near(middle('wineglass', 1837), GILL / 2, 0.02)
    near(4 * middle('tablespoon', 1837), middle('wineglass', 1837), 0.02)
    inside('tablespoon', 1837, GILL / 8)
  })
  // The same: four wine-glasses to a half-pint tumbler.
  it('four wine-glasses make a half-pint tumbler (1837)', () => {
    near(4 * middle('wineglass', 1837), middle('tumbler', 1837), 0.02)
    near(middle('tumbler', 1837), middle('pint', 1837) / 2, 0.01)
  })
  // The same: ten eggs to a pound.
  it('ten eggs weigh about a pound (1837)', () => {
    near(10 * (one('weight of an egg', {year: 1837, item: 'sugar'}).grams?.likely ?? 0), 453.59237, 0.01)
  })
  // The same: a quart of flour, or of sugar, weighs about a pound.
  it.each(['flour', 'sugar', 'loaf sugar', 'powdered sugar'])(
    'a quart of %s weighs about a pound (1837): the range holds it',
    (item) => {
      const range = one('quart', {year: 1837, place: 'Boston', item}).grams
      expect(range?.low ?? Number.NaN).toBeLessThanOrEqual(453.59)
      expect(range?.high ?? Number.NaN).toBeGreaterThanOrEqual(453.59)
    },
  )
  // Project Gutenberg 42450 (1879): eight large tablespoons to a gill.
  it('eight large table-spoons make a gill (1879)', () => {
    inside('tablespoon', 1879, GILL / 8)
    near(8 * middle('tablespoon', 1879), GILL, 0.02)
  })
})

describe('the row of a measure', () => {
  it('states sizes in grams or millilitres only where it has a size', () => {
    for (const id of ['count', 'slice', 'pennyworth', 'inch']) expect(lookUpMeasure(id)?.sizes).toEqual([])
  })
})
