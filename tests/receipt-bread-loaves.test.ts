import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'

/**
 * A loaf called by its weight goes in where it is grated, sliced or soaked, and is baked elsewhere. Invented texts. Weights of the Assize of
 * Bread (quartern loaf 4 lb 5 oz 8 dr, half-quartern 2 lb 2 oz 12 dr, peck loaf 17 lb 6 oz): from memory.
 */
const read = (text: string, title = 'Orchard pudding') => translate(`# ${title}\n\n${text}\n`, {file: 'x.md'}).receipts[0]!
const breadOf = (text: string) => read(text).ingredients.find(({item}) => / loaf/.test(item))
const POUND = 453.592
const OUNCE = POUND / 16

describe('a loaf of a named weight that goes in', () => {
  it.each([
    ['Take half a quartern loaf grated, three pints of milk and six eggs, and bake it in a dish.', 34.75],
    ['Lay in half a quartern loaf sliced and buttered, pour over a pint of milk, and bake it in a dish.', 34.75],
    ['Soak a quartern loaf in three pints of milk, and bake it in a dish.', 69.5],
    ['Cut a stale half-quartern loaf in slices, add a pint of milk, and bake it in a dish.', 34.75],
    ['Slice a four pound loaf thin, pour on a pint of milk, and bake it in a dish.', 64],
    ['A peck loaf, six eggs and a gallon of milk, mixed and baked in a dish.', 278],
  ])('%s', (text, ounces) => {
    const bread = breadOf(text)
    expect(bread?.known).toBe(true)
    expect(Math.abs(bread!.grams!.likely / OUNCE - ounces) / ounces).toBeLessThan(0.01)
    expect(bread!.grams!.low).toBeLessThan(bread!.grams!.likely)
    expect(bread!.grams!.high).toBeGreaterThan(bread!.grams!.likely)
    // It is no vessel: the dish is.
    expect(read(text).inferred.find(({field}) => field === 'vessel')?.value).toMatch(/^round 9 in x 3 in/)
  })

  it('and of its crumb there is less', () => {
    const crumb = breadOf('The crumb of a quartern loaf, grated, and a quart of milk; bake it in a dish.')
    expect(crumb).toMatchObject({item: 'quartern loaf crumb', amount: {low: 1, high: 1}})
    expect(crumb!.grams!.high).toBeLessThan(4 * POUND)
  })

  it('where it is later sold by weight, four pounds are inside its range', () => {
    const {low, high} = breadOf('Grate a quartern loaf, add a pint of milk, and bake it.')!.grams!
    expect(low).toBeLessThanOrEqual(4 * POUND)
    expect(high).toBeGreaterThanOrEqual(4 * POUND)
  })
})

describe('a loaf of a named weight that is baked', () => {
  it.each([
    ['Knead four pounds of flour. Make it into four pound loaves, and bake them.'],
    ['Knead four pounds of flour. Make it up in quartern loaves, and bake them.'],
    ['Knead four pounds of flour. Bake quartern loaves two hours.'],
    ['Knead four pounds of flour. A quartern loaf takes two hours in the oven.'],
    ['Knead four pounds of flour. Bake a quartern loaf two hours, cut across the top.'],
  ])('%s', (text) => {
    const bread = read(text, 'Household bread')
    expect(bread.ingredients.map(({item}) => item)).toEqual(['flour'])
    expect(bread.inferred.find(({field}) => field === 'vessel')?.value).toBe('free-standing loaf 30 cm')
  })
})
