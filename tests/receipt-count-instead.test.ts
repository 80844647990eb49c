import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'

/** Invented receipts. Ten eggs of the time before 1900 weigh about a pound (`egg` of the lexicon), and an apple about a third of one. */
const read = (list: string) =>
  translate(`---\nyear: 1800\n---\n# Cake\n\nTake ${list}, and mix.\n`, {file: 'cake.md'}).receipts[0]!.ingredients.map(
    ({item, amount, measure, notes}) => [item, amount, measure, notes],
  )

describe('an amount told in two ways', () => {
  it.each([
    ['one pound or ten eggs, one pound of flour', 'egg', 1, 'pound', 'ten eggs'],
    ['1 lb. or 10 eggs, 1 lb. of flour', 'egg', 1, 'pound', '10 eggs'],
    ['two pounds, or six large apples, and flour', 'apple', 2, 'pound', 'six large apples'],
    ['half a pound or eight ounces of butter, and flour', 'butter', 0.5, 'pound', 'eight ounces'],
  ])('is one amount and no range: %s', (list, item, number, measure, other) => {
    expect(read(list)[0]).toEqual([item, {low: number, high: number}, measure, [other]])
  })

  it.each([
    ['a pound or two of plums, and flour', 'plum', 1, 2],
    ['one pound or two of flour, and salt', 'flour', 1, 2],
    ['1 lb. or 12 oz. of butter, and flour', 'butter', 0.75, 1],
  ])('and a range stays one: %s', (list, item, low, high) => {
    expect(read(list)[0]!.slice(0, 3)).toEqual([item, {low, high}, 'pound'])
  })
})

describe('Spanish onions', () => {
  it('are large ones: 200 to 450 g each, common practice, no source', () => {
    const [onions] = translate('# Stuffed onions\n\n- 4 Spanish onions\n', {file: 'x.md'}).receipts[0]!.ingredients
    expect(onions!.item).toBe('spanish onion')
    expect(onions!.grams).toMatchObject({low: 800, likely: 1200, high: 1800})
  })
})

describe('a pike', () => {
  it('is baked as other fish are, and done at 63 °C', () => {
    expect(translate('# Pike\n\n- 1 pike\n\nBake an hour.\n', {file: 'x.md'}).receipts[0]!.kind).toBe('baked fish')
  })
})
