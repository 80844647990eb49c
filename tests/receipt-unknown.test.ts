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

describe('receipts as newcomers write them', () => {
  it.each([
    ['Take 7 heaping tablesps. of meal.', ['7 heaping tablesps. of meal = 7 tablespoon indian meal']],
    ['Take 7 heaping tblspnz. of meal.', ['7 heaping tblspnz. of meal = 7 count indian meal']],
    ['- 1 shot of grappa', ['1 shot of grappa = 1 count grappa']],
    ['- dab of butter', ['dab of butter =  indefinite butter']],
    ['- 1 Spritzer Zitronensaft', ['1 Spritzer Zitronensaft = 1 dash lemon juice']],
    ['- 1 Xyz Zitronensaft', ['1 Xyz Zitronensaft = 1 count lemon juice']],
    [
      '300 g Mehl, 150 g Bolmehl und 600 ml Wasser verkneten.',
      ['300 g Mehl = 300 gram flour', '150 g Bolmehl = 150 gram bolmehl', '600 ml Wasser = 600 millilitre water'],
    ],
    ['- 12-oz. package (2 cups) chocolate chips', ['12-oz. package (2 cups) chocolate chips = 12 ounce chocolate chip']],
    ['- 1 gestr. TL Zimt', ['1 gestr. TL Zimt = 1 teaspoon cinnamon']],
    [
      '2 Tassen Mehl und einen Teelöffel Salz verkneten.',
      ['2 Tassen Mehl = 2 tasse flour', 'einen Teelöffel Salz = 1 teaspoon salt'],
    ],
    [
      '1 kg Mehl, 1 Pckg. Lebkuchengewürz dazugeben.',
      ['1 kg Mehl = 1 kilogram flour', '1 Pckg. Lebkuchengewürz = 1 packet spice'],
    ],
    [
      'Cream 1/2 lb. butter; add 1 teasp. baking pdr., 2 oz. peel.',
      ['1/2 lb. butter = 1/2 pound butter', '1 teasp. baking pdr = 1 teaspoon baking pdr', '2 oz. peel = 2 ounce candied peel'],
    ],
    ['- 1 env. active dry yeast', ['1 env. active dry yeast = 1 packet dry yeast']],
    [
      '| Pastry | |\n|---|---|\n| flour | 165 g |\n| **Filling** | |\n| cream | 500 ml |',
      ['flour | 165 g = 165 gram flour', 'cream | 500 ml = 500 millilitre cream'],
    ],
    ['- 4 eggs\n\nHeat the oven to 180C/160C fan/gas 4.', ['4 eggs = 4 count egg']],
  ])('%j', (text, found) => expect(entries(text)).toEqual(found))

  it('a part’s name over its list needs no mark', () => {
    const text = '**For the muffins**\n\n- 2 cups flour\n\n**Streusel**\n\n- 1/3 cup flour'
    expect(read(text).receipts[0]!.ingredients.map(({part}) => part)).toEqual(['muffins', 'streusel'])
  })

  it('a pot that is heated is not baked', () => {
    const text = 'Heat a Dutch oven in a 475-degree oven for 30 minutes. Bake covered 20 min., then uncovered 15 min. more.'
    expect(read(text).receipts[0]!.times.map(({minutes, of}) => `${minutes.low} ${of}`)).toEqual([
      '30 other',
      '20 bake',
      '15 bake',
    ])
  })

  it('what stands on a baking sheet is baked no longer', () => {
    const text = 'Bake 10 minutes. Cool on baking sheets for 2 minutes.'
    expect(read(text).receipts[0]!.times.map(({minutes, of}) => `${minutes.low} ${of}`)).toEqual(['10 bake', '2 stand'])
  })

  it('Reg. 7 is a gas mark', () => {
    // Gas mark 7 is 425 °F, 218 °C (from memory).
    expect(read('Bake Reg. 7 for 12 mins.').receipts[0]!.oven.map(({celsius}) => Math.round(celsius.low))).toEqual([218])
  })

  it.each([
    ['Marmorkuchen', 'pound cake'],
    ['Bauernbrot', 'rye bread'],
    ['Lemon drizzle loaf', 'pound cake'],
    // Names of the trade for loaves without a tin, common practice, no source.
    ['Wheat cob', 'white bread'],
    ['Cobs', 'white bread'],
    ['Batch loaf', 'white bread'],
    ['Half-quartern loaf', 'white bread'],
    ['Brown cob', 'wholemeal bread'],
    ['Rye cob', 'rye bread'],
    ['Pain de campagne', 'sourdough bread'],
    ['Stottie cakes', 'oven-bottom bread'],
    ['Barley bannocks', 'soda bread'],
    ['Selkirk bannock', 'raised cake'],
    ['Barm cakes', 'rolls'],
    ['Manchets', 'rolls'],
    ['Holzofenbrot', 'rye bread'],
    ['Batch of cookies', 'small cakes'],
    ['Corn on the cob', 'roast vegetables'],
  ])('the kind of %s', (title, kind) =>
    expect(translate(`# ${title}\n\n- 500 g flour\n\nBake 1 hour.\n`, {file: 'a.md'}).receipts[0]!.kind).toBe(kind),
  )

  it('what names a loaf in a title names none in a text', () => {
    const text =
      '# Succotash\n\n- 6 ears of corn\n\nCut the corn from the cob, scrape the cob, and bake half an hour in a hot oven.\n'
    expect(translate(text, {file: 'a.md'}).receipts[0]!.kind).toBeNull()
  })
})

/** Common practice, no source: a baker's list in grams leaves the unit out here and there. */
describe('a number without a measure in a list in grams', () => {
  it('is read in grams, doubtful and told', () => {
    const text = '- 500 flour\n- 350 water\n- 10 g salt\n- 5 yeast\n- 100 raisins\n- 2 eggs'
    expect(entries(text)).toEqual([
      '500 flour = 500 gram flour',
      '350 water = 350 gram water',
      '10 g salt = 10 gram salt',
      '5 yeast = 5 gram yeast',
      '100 raisins = 100 gram raisin',
      '2 eggs = 2 count egg',
    ])
    expect(told(text, 'measure-taken')).toEqual([
      '3:3 “500 flour” has no measure: it is read in grams, as the rest of the list is',
      '4:3 “350 water” has no measure: it is read in grams, as the rest of the list is',
      '6:3 “5 yeast” has no measure: it is read in grams, as the rest of the list is',
      '7:3 “100 raisins” has no measure: it is read in grams, as the rest of the list is',
    ])
    expect(told(text, 'measure-unknown')).toEqual([])
    const [flour, , salt] = read(text).receipts[0]!.ingredients
    expect([flour!.takenAs, flour!.grams?.likely, flour!.notes]).toEqual([
      'gram',
      500,
      ['no measure is written: read in grams, as the rest of the list is'],
    ])
    expect(flour!.confidence).toBeLessThan(0.6)
    expect(salt).not.toHaveProperty('takenAs')
  })

  it('is read in grams where nothing is measured and the numbers are large', () => {
    const text = '- Flour 300\n- Butter 200\n- Sugar 100\n- 2 eggs\n- 1 tsp salt'
    expect(entries(text).slice(0, 4)).toEqual([
      'Flour 300 = 300 gram flour',
      'Butter 200 = 200 gram butter',
      'Sugar 100 = 100 gram sugar',
      '2 eggs = 2 count egg',
    ])
    expect(told(text, 'measure-taken')[0]).toBe(
      '3:3 “Flour 300” has no measure, nor has the rest of the list: it is read in grams, since the numbers are so large',
    )
    const [flour] = read(text).receipts[0]!.ingredients
    expect([flour!.takenAs, flour!.takenBy]).toEqual(['gram', 'size'])
    expect(flour!.confidence).toBeLessThan(0.6)
  })

  it('is read in a row of amounts as well', () => {
    expect(entries('500 flour, 350 water, 10 g salt. Bake at 230 °C; then 200 butter the tin.')).toEqual([
      '500 flour = 500 gram flour',
      '350 water = 350 gram water',
      '10 g salt = 10 gram salt',
    ])
    // An index has figures before names.
    expect(entries('11 Lard, 15 Leaven, 17 Vinegar.').every((entry) => entry.includes('indefinite'))).toBe(true)
  })

  it.each([
    // Nothing says that it is grams: baker's percentages, pounds, parts.
    '- 100 flour\n- 65 water\n- 2 salt',
    '- 2 flour\n- 1 lb sugar',
    '- 2 cups milk\n- 10 g salt\n- 500 flour',
    '- 1 flour\n- 10 g salt',
    '- 4 flour\n- 2 sugar\n- 1 butter',
    '- 100 flour\n- 120 water\n- 2 salt',
    // Beside millilitres a liquid may be in either.
    '- 250 ml milk\n- 500 g flour\n- 100 water',
  ])('is carried through and reported where that is not sure: %j', (text) => {
    expect(told(text, 'measure-taken')).toEqual([])
    expect(told(text, 'measure-unknown').length).toBeGreaterThan(0)
  })
})
