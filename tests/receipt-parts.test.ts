import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'

/** Invented receipts; that the second of two parts leaves out its fruit: common practice, no source. */
const told = (text: string): string[] =>
  translate(`---\nyear: 1880\nplace: England\n---\n# Cream\n\n${text}\n`, {file: 'a.md'}).receipts[0]!.ingredients.map(
    ({item, amount, measure}) => (amount === null ? item : `${amount.low} ${measure} ${item}`),
  )
const listed = (...lines: string[]): string[] => told(`${lines.map((line) => `- ${line}`).join('\n')}\n\nBake half an hour.`)

describe('a second part of the same fruit', () => {
  it.each([
    ['zest of 3 lemons, juice of 2', ['3 count lemon rind', '2 count lemon juice']],
    ['juice of 2 lemons, zest of 1', ['2 count lemon juice', '1 count lemon rind']],
    ['rind of 2 oranges and juice of 3', ['2 count orange rind', '3 count orange juice']],
    ['grated rind of 1 lemon and the juice of 2', ['1 count lemon rind', '2 count lemon juice']],
    ['the juice of two lemons and the grated rind of one', ['2 count lemon juice', '1 count lemon rind']],
    ['zest and juice of 2 lemons', ['2 count lemon rind', '2 count lemon juice']],
    ['Schale von 3 Zitronen, Saft von 2', ['3 count lemon rind', '2 count lemon juice']],
  ])('%s', (line, entries) => {
    expect(listed(line, '1 lb sugar')).toEqual([...entries, '1 pound sugar'])
  })

  it('in a line of its own, and in prose', () => {
    expect(listed('zest of 2 lemons', 'juice of 1')).toEqual(['2 count lemon rind', '1 count lemon juice'])
    expect(told('Take a pound of sugar, the juice of two lemons, the peel of one grated, and four eggs.')).toEqual([
      '1 pound sugar',
      '2 count lemon juice',
      '1 count lemon rind',
      '4 count egg',
    ])
  })

  it('but not of what has no such parts', () => {
    expect(told('Take a pound of flour and the juice of two.')).toEqual(['1 pound flour'])
    expect(told('Take a pound of raisins, a pound of flour, and the juice of two.')).toEqual(['1 pound raisin', '1 pound flour'])
  })
})

/** That the part counts for each fruit of the row: common practice, no source. */
describe('a part of two fruits', () => {
  it.each([
    ['juice of 1 lemon and 2 oranges', ['1 count lemon juice', '2 count orange juice']],
    ['the rind of two lemons and an orange', ['2 count lemon rind', '1 count orange rind']],
    ['the rind of two lemons and one of orange', ['2 count lemon rind', '1 count orange rind']],
    ['juice of 1 lemon and of 2 oranges', ['1 count lemon juice', '2 count orange juice']],
    ['half the rind of a lemon and an orange', ['0.5 count lemon rind', '0.5 count orange rind']],
    ['zest of 1 lemon, 2 oranges and 3 limes', ['1 count lemon rind', '2 count orange rind', '3 count lime rind']],
    [
      'Saft und Schale von 2 Zitronen und einer Orange',
      ['2 count lemon juice', '2 count lemon rind', '1 count orange juice', '1 count orange rind'],
    ],
  ])('%s', (line, entries) => {
    expect(listed('1 lb sugar', line)).toEqual(['1 pound sugar', ...entries])
  })

  it('in prose', () => {
    expect(told('Take half a pound of sugar, the juice of two lemons and an orange, six eggs and a pint of cream.')).toEqual([
      '0.5 pound sugar',
      '2 count lemon juice',
      '1 count orange juice',
      '6 count egg',
      '1 pint cream',
    ])
  })

  it('but not what goes in by itself behind it', () => {
    expect(listed('juice of 1 lemon and 2 apples')).toEqual(['1 count lemon juice', '2 count apple'])
    expect(listed('juice of 1 lemon and 2 oranges, peeled and sliced')).toEqual(['1 count lemon juice', '2 count orange'])
    for (const done of ['geschält', 'geschälte', 'in Scheiben', 'gewürfelt'])
      expect(listed(`Saft von 1 Zitrone und 2 Orangen, ${done}`), done).toEqual(['1 count lemon juice', '2 count orange'])
    expect(listed('juice of 1 lemon and 1 orange rind')).toEqual(['1 count lemon juice', '1 count orange rind'])
    expect(listed('juice of 1 lemon and 200 g sugar')).toEqual(['1 count lemon juice', '200 gram sugar'])
  })
})

/** How lists of our day name what of a fruit goes in: common practice, no source. */
describe('a part of a fruit on a list', () => {
  it.each([
    ['zest 1 lemon', ['1 count lemon rind']],
    ['finely grated zest 2 oranges', ['2 count orange rind']],
    ['zest and juice 1 lime', ['1 count lime rind', '1 count lime juice']],
    ['juice ½ lemon', ['0.5 count lemon juice']],
    ['1 orange, zest and juice', ['1 count orange rind', '1 count orange juice']],
    ['1 unwaxed lemon, zest only', ['1 count lemon rind']],
    ['2 lemons (juice only)', ['2 count lemon juice']],
    ['1 grapefruit: juice', ['1 count grapefruit juice']],
    ['1 large orange, finely grated zest and juice', ['1 count orange rind', '1 count orange juice']],
    ['2 lemons, juiced and zested', ['2 count lemon juice', '2 count lemon rind']],
    ['1 Zitrone, Saft und abgeriebene Schale', ['1 count lemon juice', '1 count lemon rind']],
    ['1 Bio-Zitrone (Abrieb)', ['1 count lemon rind']],
    ['Abrieb 1 Zitrone', ['1 count lemon rind']],
    ['Saft zweier Orangen', ['2 count orange juice']],
  ])('%s', (line, entries) => {
    expect(listed('1 lb sugar', line)).toEqual(['1 pound sugar', ...entries])
  })

  it.each([
    '1 lemon, sliced',
    '2 oranges, peeled and cut into segments',
    '1 lemon, halved, for its juice and to serve',
    'peel 2 oranges',
  ])('but the whole fruit: %s', (line) => {
    expect(listed('1 lb sugar', line).at(-1)).toMatch(/^\d count (?:lemon|orange)$/)
  })
})

describe('a number behind “and” begins an entry of its own', () => {
  it.each([
    ['four pounds of potatoes and two onions', ['4 pound potato', '2 count onion']],
    ['four pounds of potatoes and an onion', ['4 pound potato', '1 count onion']],
    ['a pound of carrots and three turnips', ['1 pound carrot', '3 count turnip']],
    ['three pounds of beef and two kidneys', ['3 pound beef', '2 count kidney']],
    ['four pounds of potatoes and several onions', ['4 pound potato', 'onion']],
    ['two ounces of butter and lard', ['2 ounce butter and lard']],
    ['an ounce of mace and cinnamon', ['1 ounce mace and cinnamon']],
  ])('%s', (words, entries) => {
    expect(told(`Take a pound of flour with ${words}, sliced; add half a pint of water.`)).toEqual([
      '1 pound flour',
      ...entries,
      '0.5 pint water',
    ])
  })
})
