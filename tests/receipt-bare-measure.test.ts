import {describe, expect, it} from 'vitest'
import {NO_NUMBER} from '../src/receipt/bare-measure.js'
import {translate} from '../src/receipt/translate.js'

/** Invented sentences in the manner of books of before 1850, which leave out “a” before a measure: common practice, no source. */
const ingredients = (text: string) =>
  translate(`---\nyear: 1800\nplace: United States\n---\n# A rusk\n\n${text}\n`, {file: 'a.md'}).receipts[0]!.ingredients
const read = (text: string): string[] => ingredients(text).map(({exact, measure, item}) => `${exact ?? '–'} ${measure} ${item}`)

describe('a measure without a number is one', () => {
  it.each([
    ['Rub half pound butter into four pound flour, add pint milk, pint emptins; bake.', ['1 pint milk', '1 pint emptins']],
    ['One quart milk, twelve eggs, gill emptins; bake it.', ['1 gill emptins']],
    ['Take 14 ounces flour, spoonful rose water; bake.', ['1 spoon rose-water']],
    ['1 pint milk, pint water, pound flour, teaspoon salt. Bake.', ['1 pint water', '1 pound flour', '1 teaspoon salt']],
    ['Take 1 pint milk and spoonful of yeast; bake.', ['1 spoon yeast']],
    ['- 2 eggs\n- teaspoon salt\n- cup sugar\n- pound flour', ['1 teaspoon salt', '1 cup sugar', '1 pound flour']],
    [
      '- 2 Eier\n- TL Salz\n- Messerspitze Zimt\n- Handvoll Nüsse',
      ['1 teaspoon salt', '1 point of a knife cinnamon', '1 handful nut'],
    ],
  ])('%j', (text, entries) => expect(read(text)).toEqual(expect.arrayContaining(entries)))

  it('and is said to be, and less sure', () => {
    const [milk, emptins] = ingredients('To a pound of flour add pint milk, a pint of emptins; bake.').slice(1)
    expect(milk!.notes).toContain(NO_NUMBER)
    expect(milk!.confidence).toBeLessThan(0.6)
    expect(emptins!.notes).not.toContain(NO_NUMBER)
    expect(emptins!.confidence).toBeGreaterThan(0.9)
  })

  it('“do.” behind it is of the same measure', () => {
    expect(read('Take 14 ounces flour, spoonful rose water, one do. cinnamon; bake.')).toEqual([
      '14 ounce flour',
      '1 spoon rose-water',
      '1 spoon cinnamon',
    ])
  })
})

describe('what only looks like a measure is none', () => {
  it.each([
    'Pound almonds with rose water, and bake them.',
    'Blanch the almonds and pound almonds and sugar together; bake.',
    'Bake it in pint moulds, or in a pint basin.',
    'Serve the cup cakes and the pound cake.',
    'Stir it with a teaspoon, and bake.',
    'Use pint bottles.',
    'Cup flour in your hands and throw it on; bake.',
  ])('%s', (text) => {
    expect(ingredients(text).filter(({exact}) => exact !== null)).toEqual([])
  })
  it('a step of a list that begins with the verb', () => {
    expect(read('- 2 eggs\n\n1. Pound almonds\n2. Bake.').filter((entry) => entry.includes('almond'))).not.toContain(
      '1 pound almond',
    )
  })
})
