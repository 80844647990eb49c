import Qty from 'js-quantities'
import {unit} from 'mathjs'
import {describe, expect, it} from 'vitest'
import {doneness} from '../src/lexicon/doneness.js'
import {hedges, ovenTests, ovenWords} from '../src/lexicon/oven-words.js'
import {donenessSchema, hedgeSchema, ovenWordSchema, vesselSchema} from '../src/lexicon/schema.js'
import {sources} from '../src/lexicon/sources.js'
import {vessels} from '../src/lexicon/vessels.js'
import {bandOf, celsiusOfFahrenheit, celsiusOfGasMark, readHeat, readHeatWords} from '../src/receipt/heat.js'
import {plainSection} from '../src/receipt/section.js'

const known = new Set(sources.map((source) => source.id))

describe('tables of heat', () => {
  it('keep to their schemas and name sources that exist', () => {
    for (const row of [...ovenWords, ...ovenTests]) {
      ovenWordSchema.parse(row)
      expect(known, row.id).toContain(row.source)
      expect(row.celsius.low, row.id).toBeLessThan(row.celsius.high)
      if (row.from !== undefined && row.to !== undefined) expect(row.from).toBeLessThanOrEqual(row.to)
    }
    for (const row of hedges) {
      hedgeSchema.parse(row)
      expect(known).toContain(row.source)
    }
    for (const row of doneness) {
      donenessSchema.parse(row)
      expect(known, row.id).toContain(row.source)
    }
    for (const row of vessels) {
      vesselSchema.parse(row)
      expect(known, row.id).toContain(row.source)
    }
  })

  it('have an id of its own for every row', () => {
    for (const table of [[...ovenWords, ...ovenTests], doneness, vessels, hedges]) {
      const ids = table.map((row) => row.id)
      expect(new Set(ids).size).toBe(ids.length)
    }
  })

  it('are as large as a scholar needs: 80 phrases of oven and doneness, 60 vessels', () => {
    expect(ovenWords.length + ovenTests.length + doneness.length).toBeGreaterThanOrEqual(80)
    expect(vessels.length).toBeGreaterThanOrEqual(60)
  })

  it('give every vessel the sizes of its shape', () => {
    for (const row of vessels) {
      if (row.shape === 'none') continue
      const circle = row.diameter !== undefined
      expect(circle || (row.length !== undefined && row.width !== undefined), row.id).toBe(true)
      if (row.shape !== 'sheet') expect(row.height, row.id).toBeGreaterThan(0)
      for (const size of [row.diameter, row.length, row.width]) if (size !== undefined) expect(size, row.id).toBeGreaterThan(0.04)
    }
  })
})

describe('temperatures against other libraries', () => {
  it.each([175, 200, 225, 250, 275, 300, 325, 350, 375, 400, 425, 450, 475, 500, 550])(
    '%d °F as mathjs and js-quantities have it',
    (f) => {
      expect(celsiusOfFahrenheit(f)).toBeCloseTo(unit(f, 'degF').toNumber('degC'), 6)
      expect(celsiusOfFahrenheit(f)).toBeCloseTo(Qty(f, 'tempF').to('tempC').scalar, 6)
      const read = readHeat(plainSection(`Bake at ${f} °F in the oven.`))[0]!
      expect(read.celsius.low).toBe(Math.round(unit(f, 'degF').toNumber('degC')))
    },
  )

  /** The scale printed in British cookery books and on cookers; from memory. Makers round to 5 or 10 °C. */
  it.each([
    [0.25, 225, 110],
    [0.5, 250, 130],
    [1, 275, 140],
    [2, 300, 150],
    [3, 325, 160],
    [4, 350, 180],
    [5, 375, 190],
    [6, 400, 200],
    [7, 425, 220],
    [8, 450, 230],
    [9, 475, 240],
  ])('gas mark %d is %d °F, printed as %d °C', (mark, fahrenheit, printed) => {
    expect(celsiusOfGasMark(mark)).toBeCloseTo(celsiusOfFahrenheit(fahrenheit), 6)
    expect(Math.abs(celsiusOfGasMark(mark)! - printed)).toBeLessThanOrEqual(9)
  })

  it('marks off the scale are none', () => {
    for (const mark of [0, 0.3, 11, -1, Number.NaN]) expect(celsiusOfGasMark(mark)).toBeNull()
  })
})

describe('oven words against the common published table (shared figures)', () => {
  // cool 200, very slow 250, slow 300–325, moderately slow 325–350, moderate 350–375, moderately hot 375–400, hot 400–450, very hot 450–500 °F
  it.each([
    ['a cool oven', 200, 200],
    ['a very slow oven', 250, 250],
    ['a slow oven', 300, 325],
    ['a moderately slow oven', 325, 350],
    ['a moderate oven', 350, 375],
    ['a moderately hot oven', 375, 400],
    ['a hot oven', 400, 450],
    ['a very hot oven', 450, 500],
  ])('%s of 1950 holds %d–%d °F', (words, low, high) => {
    const read = readHeatWords(words, {year: 1950})!
    expect(read.celsius.low).toBeLessThanOrEqual(Math.round(celsiusOfFahrenheit(high)))
    expect(read.celsius.high).toBeGreaterThanOrEqual(Math.round(celsiusOfFahrenheit(low)))
    // and is no vaguer than a band of 75 °F
    expect(read.celsius.high - read.celsius.low).toBeLessThanOrEqual(42)
  })

  // US home-economics bulletins, from memory: slow 250–325, moderate 325–400, hot 400–450, very hot 450–500 °F
  it.each([
    ['a slow oven', 250, 325],
    ['a moderate oven', 325, 400],
  ])('%s of 1930 is %d–%d °F', (words, low, high) => {
    const read = readHeatWords(words, {year: 1930})!
    expect(read.celsius).toEqual({low: Math.round(celsiusOfFahrenheit(low)), high: Math.round(celsiusOfFahrenheit(high))})
  })

  it('a brick oven called hot is 400–500 °F (common practice, no source)', () => {
    expect(readHeatWords('a hot oven', {year: 1829})!.celsius).toEqual({low: 204, high: 260})
  })

  it('without a year a word covers all its times', () => {
    const any = readHeatWords('a slow oven')!
    const old = readHeatWords('a slow oven', {year: 1829})!
    const late = readHeatWords('a slow oven', {year: 1990})!
    expect(any.celsius.low).toBe(Math.min(old.celsius.low, late.celsius.low))
    expect(any.celsius.high).toBe(Math.max(old.celsius.high, late.celsius.high))
  })

  it('the bands of the design hold their middles', () => {
    for (const [f, band] of [
      [450, 'hot'],
      [360, 'moderate'],
      [290, 'slow'],
      [210, 'slack'],
    ] as const)
      expect(bandOf(celsiusOfFahrenheit(f), celsiusOfFahrenheit(f))).toBe(band)
  })
})

describe('modern ovens', () => {
  it('a fan oven is 20 °C lower than a still one, and says so', () => {
    const read = readHeat(plainSection('Preheat the oven to 160 °C fan.'))[0]!
    expect(read.celsius).toEqual({low: 180, high: 180})
    expect(read.sources).toContain('fan-oven')
    expect(read.notes?.join()).toMatch(/fan/)
  })

  it('one heat named three ways is one phrase that agrees', () => {
    const found = readHeat(plainSection('Heat the oven to 180°C/160°C fan/gas 4.'))
    expect(found).toHaveLength(1)
    expect(found[0]!.celsius.low).toBeGreaterThanOrEqual(176)
    expect(found[0]!.celsius.high).toBeLessThanOrEqual(181)
    expect(found[0]!.disagree).toBeUndefined()
  })

  it('a figure without a scale is read by place, year and size', () => {
    const at = (text: string, facts: object) => readHeat(plainSection(text, facts))[0]!.celsius.low
    expect(at('Bake at 400 degrees in the oven.', {})).toBe(204)
    expect(at('Bake at 200 degrees in the oven.', {place: 'uk', year: 1995})).toBe(200)
    expect(at('Bake at 275 degrees in the oven.', {place: 'us'})).toBe(135)
    expect(at('Bake at 180 degrees in the oven.', {})).toBe(180)
  })

  it('two steps of heat are two phrases', () => {
    const found = readHeat(plainSection('Bake at 450 °F for 15 minutes, then at 350 °F for half an hour.'))
    expect(found.map((phrase) => phrase.text)).toEqual(['450 °F', '350 °F'])
  })
})
