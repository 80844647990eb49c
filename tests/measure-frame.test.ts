import {describe, expect, it} from 'vitest'
import {frameRows} from '../src/lexicon/frame-words.js'
import {lookUpItem, lookUpMeasure, lookUpSource} from '../src/lexicon/index.js'
import {type FrameInput, frameOf, MODERN_YEAR} from '../src/measure/frame.js'

const input = (texts: readonly string[], oven: readonly string[] = [], more: Partial<FrameInput> = {}): FrameInput => ({
  year: null,
  place: null,
  ingredients: texts.map((text) => {
    const [measure = 'count', item = '', words = ''] = text.split('|')
    return {measure, item, text: words}
  }),
  oven: oven.map((text) => ({text})),
  ...more,
})

describe('the frame of a receipt without year and place', () => {
  it('leaves what is stated', () => {
    expect(frameOf(input(['gram|flour|200 g flour'], ['gas mark 4'], {year: 1920, place: 'Boston'}))).toEqual({
      year: 1920,
      place: 'Boston',
      told: null,
    })
  })
  it('reads grams and gas mark as modern and British', () => {
    const frame = frameOf(input(['gram|sugar|225 g caster sugar', 'count|egg|4 eggs'], ['180 °C / gas mark 4']))
    expect(frame).toMatchObject({year: MODERN_YEAR, place: 'England'})
    expect(frame.told).toMatch(/modern British receipt, for it says “caster sugar”/)
  })
  it('reads cups with °F as modern and American', () => {
    expect(frameOf(input(['cup|flour|2 cups all-purpose flour'], ['375 °F']))).toMatchObject({
      year: MODERN_YEAR,
      place: 'America',
    })
  })
  it('leaves the place open where words of both countries stand', () => {
    expect(frameOf(input(['cup|flour|2 cups all-purpose flour', 'gram|sugar|100 g caster sugar']))).toMatchObject({
      year: MODERN_YEAR,
      place: null,
    })
  })
  it('leaves an old receipt open', () => {
    expect(frameOf(input(['pound|flour|a pound of flour', 'gill|yeast|a gill of yeast'], ['a quick oven']))).toEqual({
      year: null,
      place: null,
      told: null,
    })
  })
  it('is not fooled by a modern word beside old ones', () => {
    expect(
      frameOf(input(['teacup|sugar|a tea-cup of sugar', 'teaspoon|saleratus|a teaspoonful of saleratus'], ['about 350 degrees'])),
    ).toMatchObject({year: null})
  })
  it('does not tell the place of a dated old receipt from modern words', () => {
    expect(frameOf(input(['cup|molasses|a cup of molasses'], [], {year: 1850}))).toEqual({year: 1850, place: null, told: null})
  })
  it('finds a word only where it stands as a word: “dessertspoonful” is no “tsp”', () => {
    expect(frameOf(input(['dessertspoon|caper|3 dessertspoonfuls of capers'])).told).toBeNull()
    expect(frameOf(input(['teaspoon|caper|3 tsps capers'])).told).toMatch(/“tsp”/)
    expect(frameOf(input(['teaspoon|caper|3tsp capers'])).told).toMatch(/“tsp”/)
  })
  it('names only measures, items and sources there are', () => {
    for (const row of frameRows) {
      expect(lookUpSource(row.source)).not.toBeNull()
      if (row.in === 'measure') for (const word of row.words) expect(lookUpMeasure(word), word).not.toBeNull()
      if (row.in === 'item') for (const word of row.words) expect(lookUpItem(word)?.id, word).toBe(word)
    }
  })
})
