import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'

/** Texts written for these tests in the manner of household receipts; what each says is by hand. */
const read = (text: string): string[] =>
  translate(`# A receipt\n\n${text}\n`, {file: 'a.md'}).receipts[0]!.ingredients.map(({exact, measure, item, part}) =>
    `${exact ?? ''} ${measure} ${item}${part === '' ? '' : ` [${part}]`}`.trim(),
  )
const one = (text: string): {notes: readonly string[]; text: string; stated: number | undefined} => {
  const {notes, text: words, stated} = translate(`# A receipt\n\n${text}\n`, {file: 'a.md'}).receipts[0]!.ingredients[0]!
  return {notes, text: words, stated: stated?.amount.low}
}

describe('lines of a name with its amount behind it', () => {
  const four = ['500 gram flour', '320 gram water', '10 gram salt']
  it.each([
    'Flour 500 g\nWater 320 g\nSalt 10 g',
    'Flour: 500 g\nWater: 320 g\nSalt: 10 g',
    'flour ..... 500 g\nwater ... 320 g\nsalt …… 10 g',
    'Flour - 500 g\nWater - 320 g\nSalt - 10 g',
    '- Flour: 500 g\n- Water: 320 g\n- Salt: 10 g',
  ])('%j', (text) => expect(read(`${text}\n\nBake 40 minutes.`)).toEqual(four))

  it('wrapped prose that ends a line with an amount is prose', () => {
    expect(read('Take of sugar one pound\nand beat it with the whites of\nsix eggs; bake it in a hoop.')).toEqual([
      '1 pound sugar',
      '6 count egg white',
    ])
  })
})

describe('tables', () => {
  it.each([
    // The measure heads the column.
    [
      '| Ingredient | Grams | Baker’s % |\n|---|---|---|\n| Flour | 450 | 90 |\n| Starter (100%) | 100 | 20 |',
      ['450 gram flour', '100 gram starter'],
    ],
    ['| | Weight (g) | oz |\n|---|---|---|\n| Flour | 500 | 17.6 |\n| eggs | 2 | |', ['500 gram flour', '2 count egg']],
    // The measure has a column of its own.
    [
      '| Qty | Unit | What |\n|---|---|---|\n| 2 | cups | flour |\n| 4–5 | Tbsp | ice water |\n| 3 | | eggs |',
      ['2 cup flour', '4 tablespoon water', '3 count egg'],
    ],
    ['| What | Qty | Unit |\n|---|---|---|\n| flour | 2 | cups |\n| salt | 1/2 | tsp |', ['2 cup flour', '1/2 teaspoon salt']],
    // A row that is an entry is no head.
    ['| flour | 4 oz |\n|---|---|\n| sugar | 2 oz |', ['4 ounce flour', '2 ounce sugar']],
  ])('%j', (text, entries) => expect(read(text)).toEqual(entries))
})

describe('what is said of an entry beside it', () => {
  it.each([
    ['- 2 onions (100 g for the sauce)', ['2 count onion'], '(100 g for the sauce)'],
    ['- 3 eggs (1 for the glaze)', ['3 count egg'], '(1 for the glaze)'],
    ['- 500 g flour (50 g reserved)', ['500 gram flour'], '(50 g reserved)'],
    ['Take 5 eggs (leave out 2 whites).', ['5 count egg'], 'leave out 2 whites'],
    ['Beat ten eggs, leaving out four of the whites.', ['10 count egg'], 'leaving out four of the whites'],
  ])('%s', (text, entries, note) => {
    expect(read(text)).toEqual(entries)
    expect(one(text).notes).toContain(note)
  })

  it.each([
    ['- 200 g butter, plus 20 g for the tin', ['200 gram butter', '20 gram butter']],
    ['- 30 g olive oil + 40 g for the pan', ['30 gram salad oil', '40 gram salad oil']],
    ['- 1 egg, plus 1 for glazing', ['1 count egg', '1 count egg']],
    ['- 500 g flour, plus extra for dusting', ['500 gram flour']],
  ])('more of it: %s', (text, entries) => expect(read(text)).toEqual(entries))

  it.each([
    ['Roast a turkey of 12 lbs.', 12],
    ['Take a ham of about ten pounds weight, and soak it.', 10],
    ['Take a fowl weighing four pounds.', 4],
    ['Take two ducks of 5 lb each.', 5],
  ])('what it weighs: %s', (text, pounds) => {
    expect(one(text).stated).toBe(pounds)
    expect(read(text)).toHaveLength(1)
  })
})

describe('forms of an entry', () => {
  it.each([
    ['- finely grated zest of 1 lemon', ['1 count lemon rind']],
    ['- thinly pared rind of one orange', ['1 count orange rind']],
    ['- finely grated zest and juice of 2 lemons', ['2 count lemon rind', '2 count lemon juice']],
    ['One teaspoon heaping of soda.', ['1 teaspoon baking soda']],
    ['- 1/2 c each: rye meal, corn meal, graham flour', ['1/2 cup rye meal', '1/2 cup indian meal', '1/2 cup wholemeal flour']],
    [
      'To a pound of flour and three ounces of salt put as much water, blood-warm, as will make a dough.',
      ['1 pound flour', '3 ounce salt', 'indefinite water'],
    ],
    ['- 1 cup sour milk\n\nSteam it in two 1-lb. coffee cans.', ['1 cup sour milk']],
    // A stretch of time and a time of day are no entries.
    ['- 500 g flour\n\n1. 08:00 mix, autolyse 30 min\n2. 08:30 fold every 30 min', ['500 gram flour']],
    // Many weights in a paragraph are no index.
    [
      'Base: 250g plain flour, 75g caster sugar, 175g butter\nCaramel: 100g butter, 100g light muscovado sugar\nTopping: 200g plain or milk chocolate, broken, and 30 g butter, 40 g honey, 50 g raisins',
      [
        '250 gram flour [base]',
        '75 gram sugar [base]',
        '175 gram butter [base]',
        '100 gram butter [caramel]',
        '100 gram brown sugar [caramel]',
        '200 gram chocolate [topping]',
        '30 gram butter [topping]',
        '40 gram honey [topping]',
        '50 gram raisin [topping]',
      ],
    ],
  ])('%j', (text, entries) => expect(read(text)).toEqual(entries))
})
