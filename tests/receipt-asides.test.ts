import {describe, expect, it} from 'vitest'
import {asides} from '../src/lexicon/grammar-words.js'
import {translate} from '../src/receipt/translate.js'

const amounts = (text: string) =>
  translate(`---\nyear: 1806\nplace: England\n---\n# Household bread\n\n${text}\n`, {file: 'x.md'}).receipts[0]!.ingredients.map(
    ({item, measure, amount}) => `${amount === null ? '' : `${amount.low} ${measure} `}${item}`,
  )

/** Invented sentences; common practice, no source. */
describe('an amount behind what is said by the way', () => {
  it.each([...asides].filter((words) => !/nach|wenn|oder/.test(words)))('is of what stands before it: “%s”', (aside) => {
    expect(
      amounts(
        `To a peck of flour put salt; wet it with warm water ${aside}, about three quarts; work it well and bake it an hour.`,
      ),
    ).toContain('3 quart water')
    expect(
      amounts(
        `To a peck of flour put salt; wet it with warm water, ${aside}, about three quarts; work it well and bake it an hour.`,
      ),
    ).toContain('3 quart water')
  })

  it.each([
    ['Take a pound of flour, sugar, if you please a quarter of a pound, and 2 eggs.', '0.25 pound sugar'],
    ['Take a pound of flour, currants (if you like) half a pound; 2 eggs.', '0.5 pound currant'],
    ['Ein Pfund Mehl, Zucker, wenn man will ein Viertelpfund, und 2 Eier.', '1 viertelpfund sugar'],
    ['Ein Pfund Mehl, Zucker, wenn man will, 100 g, und 2 Eier.', '100 gram sugar'],
  ])('in brackets, or with the second comma left out: %s', (text, entry) => {
    expect(amounts(text)).toContain(entry)
  })

  it('is another’s where that is named', () => {
    expect(amounts('To a peck of flour put sugar as you like, a quart of milk, and bake it an hour.')).toEqual([
      '1 peck flour',
      'sugar',
      '1 quart milk',
    ])
    expect(amounts('To a peck of flour put butter, if you have it, a pound of sugar, and bake it an hour.')).toContain(
      '1 pound sugar',
    )
  })
})
