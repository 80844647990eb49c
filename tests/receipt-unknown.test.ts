import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'

/** Texts written for these tests; words such as "xyz" and "blorp" are in no lexicon by intention. */
const read = (text: string) => translate(`# A receipt\n\n${text}\n`, {file: 'a.md'})
const entries = (text: string): string[] =>
  read(text).receipts[0]!.ingredients.map(({exact, measure, item, text: words}) => `${words} = ${exact ?? ''} ${measure} ${item}`)
const told = (text: string, rule: string): string[] =>
  read(text)
    .messages.filter((message) => message.rule === rule)
    .map(({line, column, reason}) => `${line}:${column} ${reason}`)

describe('a measure that no row knows', () => {
  it('in prose is carried with its number and its name, and told', () => {
    const text = 'Add 3 dsp. of sugar and 2 xyz. of flour, with half a zonk of butter.'
    expect(entries(text)).toEqual([
      '3 dsp. of sugar = 3 dessertspoon sugar',
      '2 xyz. of flour = 2 count flour',
      'half a zonk of butter = 1/2 count butter',
    ])
    expect(told(text, 'measure-unknown')).toEqual([
      '3:25 “xyz.” in “2 xyz. of flour” is no measure that this lexicon knows: the number is carried through without a weight',
      '3:47 “zonk” in “half a zonk of butter” is no measure that this lexicon knows: the number is carried through without a weight',
    ])
    expect(read(text).receipts[0]!.ingredients[1]!.grams).toBeNull()
  })

  it.each([
    'Add 2 xyz flour to it.',
    'Take two xyz of flour.',
    '- 2 xyz. of flour',
    '- 2 xyz flour',
    '- a xyz of flour',
    '- 5 grn saffron',
    'Ingredients.—1 lb. of sugar, 2 xyz. of flour.',
    'Add a schooner of ale.',
    '- 4 eggs\n\nBeat them with 2 xyz. of flour.',
  ])('is told: %j', (text) => expect(told(text, 'measure-unknown')).toHaveLength(1))

  it.each([
    '- 3 bramley apples',
    '- 1 star anise',
    'Bake at 350 F. Butter the tin.',
    'Bake at 350 F. butter the tin.',
    'Serve with a tureen of melted butter.',
    '- 4 oz flour\n\nDredge 2 xyz of flour over.',
    'Cut it in 12 squares. Sugar them.',
    'Boil it 5 minutes. Flour the board.',
  ])('is none in: %j', (text) => expect(told(text, 'measure-unknown')).toEqual([]))
})

describe('a name that no row knows, behind a measure in prose', () => {
  it('is carried, and told', () => {
    const text = 'Add 2 oz. blorp and 3 cups grunge; then 200 g bolmehl.'
    expect(entries(text)).toEqual([
      '2 oz. blorp = 2 ounce blorp',
      '3 cups grunge = 3 cup grunge',
      '200 g bolmehl = 200 gram bolmehl',
    ])
    expect(told(text, 'item-unknown')).toHaveLength(3)
  })
  it.each(['Make it in balls, weighing 3 lb. each.', 'Bake in 2 lb. tins.', 'Use 2 oz. more, or 1/2 pint altogether.'])(
    'is none in: %s',
    (text) => expect(entries(text)).toEqual([]),
  )
})
