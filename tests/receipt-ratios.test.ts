import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'

/** Texts written for these tests; the products are worked out by hand. */
const read = (text: string) => translate(`# A receipt\n\n${text}\n`, {file: 'a.md'})
const entries = (text: string): string[] =>
  read(text).receipts[0]!.ingredients.map(({exact, measure, item}) => `${exact ?? ''} ${measure} ${item}`.trim())
const told = (text: string): string[] =>
  read(text)
    .messages.filter(({rule}) => rule === 'ratio')
    .map(({severity, line, column}) => `${severity} ${line}:${column}`)

describe('an amount for so much of another thing', () => {
  it.each([
    ['Take 6 eggs; to each egg a gill of milk.', ['6 count egg', '6 gill milk']],
    ['Take 6 eggs, and to each egg a gill of milk and an ounce of sugar.', ['6 count egg', '6 gill milk', '6 ounce sugar']],
    ['Take 4 pounds of flour; to every pound of flour half an ounce of salt.', ['4 pound flour', '2 ounce salt']],
    ['A teaspoon of soda to each quart of milk; 2 quarts of milk.', ['2 teaspoon baking soda', '2 quart milk']],
    ['Allow an ounce of sugar per egg. Use 8 eggs.', ['8 ounce sugar', '8 count egg']],
    ['- 3 lb. flour\n- 1/2 oz. of salt to each pound of flour', ['3 pound flour', '3/2 ounce salt']],
    ['- 3 lb. flour\n- 2 oz. butter to the pound of flour', ['3 pound flour', '6 ounce butter']],
    ['- 3 lb. flour\n- to every half pound of flour 2 oz. butter', ['3 pound flour', '12 ounce butter']],
    ['- 32 oz. flour\n- 1 oz. salt to each pound of flour', ['32 ounce flour', '2 ounce salt']],
    ['- 500 g Mehl\n- 2 g Salz pro 100 g Mehl', ['500 gram flour', '10 gram salt']],
    ['- 4 bis 5 Eier\n- für jedes Ei 1 EL Milch', ['4 count egg', '4 tablespoon milk']],
    [
      'Take 4 pounds of flour; to every pound of flour half an ounce of salt, and a teaspoon of soda to each quart of milk. Wet it with 2 quarts of milk.',
      ['4 pound flour', '2 ounce salt', '2 teaspoon baking soda', '2 quart milk'],
    ],
    // The step says again what the list gives.
    ['- 2 lb. flour\n\nTo each pound of flour put 1 oz. salt. Mix 2 lb. flour with it.', ['2 pound flour', '2 ounce salt']],
  ])('%j', (text, found) => {
    expect(entries(text)).toEqual(found)
    expect(told(text)).toEqual([])
  })

  it('says how it was worked out', () => {
    const milk = read('Take 6 eggs; to each egg a gill of milk.').receipts[0]!.ingredients[1]!
    expect(milk.text).toBe('a gill of milk')
    expect(milk.notes[0]).toBe('“a gill of milk” is for “each egg”, and there is “6 eggs”: times 6')
  })

  it('has no amount where the receipt does not say how much there is of the other, and is told', () => {
    const text = 'Take 6 eggs and a pint of milk. To every pound of flour half an ounce of salt.'
    expect(entries(text)).toEqual(['6 count egg', '1 pint milk', 'indefinite flour', 'indefinite salt'])
    expect(told(text)).toEqual(['warning 3:33'])
  })

  it('is the receipt for that much where it begins so, and is told', () => {
    const text = 'To every pound of flour allow 2 oz. of butter and 3 eggs.'
    expect(entries(text)).toEqual(['1 pound flour', '2 ounce butter', '3 count egg'])
    expect(told(text)).toEqual(['info 3:1'])
  })

  it('goes by no eggs but those it names', () => {
    const text =
      'A pound of flour and 20 eggs.\n\nFor the icing, beat the whites of eggs, and to each egg add 5 teaspoonfuls of sugar.'
    expect(entries(text)).toContain('5 teaspoon sugar')
    expect(told(text)).toHaveLength(1)
  })

  it.each(['Half a pound each of flour and sugar.', 'Put a spoonful of jam on each cake.', 'Butter and sugar, 2 oz. each.'])(
    'is none in: %s',
    (text) => expect(told(text)).toEqual([]),
  )
})
