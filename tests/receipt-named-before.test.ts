import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'

/** Invented phrases in the usual wording of receipts: common practice, no source. */
const entries = (text: string): string[] =>
  translate(text, {file: 'a.md'}).receipts[0]!.ingredients.map(
    ({text: words, exact, measure, item, hedges}) =>
      `${words.replace(/\s+/g, ' ')}: ${exact ?? '–'} ${measure} ${item}${hedges.length > 0 ? ` (${hedges.join(', ')})` : ''}`,
  )

describe('an amount and its name', () => {
  it.each(['Pick over', 'Look over', 'Pour over', 'Sprinkle over'])('“%s” says nothing of how much', (verb) => {
    expect(entries(`# Beans\n\n${verb} a quart of beans, and bake them.`)).toEqual(['a quart of beans: 1 quart bean'])
  })
  it('but “over a quart” does', () => {
    expect(entries('# Beans\n\nTake over a quart of beans, and bake them.')).toEqual([
      'over a quart of beans: 1 quart bean (over)',
    ])
  })

  it.each([
    ['Mix the flour with warm water, about three pints, and knead it.', 'water, about three pints: 3 pint water (about)'],
    ['Mix the flour with milk, half a pint; bake it.', 'milk, half a pint: 1/2 pint milk'],
  ])('stands behind a name and a comma: %s', (text, said) => {
    expect(entries(`# Bread\n\n${text}`)).toContain(said)
  })
  it('is hedged once, though the words are met twice', () => {
    // A pound is 453.59237 g (Yard and Pound agreement, 1959); “about” is a tenth either way (lexicon/hedge-amounts).
    const grams = translate('# Bread\n\nTake about a pound of flour. Bake.', {file: 'a.md'}).receipts[0]?.ingredients[0]?.grams
    expect(grams?.low).toBeCloseTo(453.59237 * 0.9, 3)
    expect(grams?.high).toBeCloseTo(453.59237 * 1.1, 3)
  })
  it('of another thing is not the name’s', () => {
    expect(entries('# Bread\n\nMix it with milk, two ounces of butter and flour.')).toContain(
      'two ounces of butter: 2 ounce butter',
    )
  })

  it('is not said again by “the beans”', () => {
    const text =
      '# Pork\n\nBoil a quart of pea beans. Score the rind of a pound of salt pork, put the pork in the pot, and bake it with the beans.'
    expect(entries(text)).toEqual(['a quart of pea beans: 1 quart bean', 'a pound of salt pork: 1 pound salted pork'])
  })
  it('is not read from a verb', () => {
    const text = '# Pork\n\n- 1 quart pea beans\n- 1 lb salt pork\n\nScore the pork and bake it with the beans.'
    expect(entries(text)).toHaveLength(2)
  })
  it('counts scores by a number', () => {
    expect(entries('# Oysters\n\nTake two score of oysters and bake them.')).toEqual(['two score of oysters: 40 count oyster'])
  })
  it('is none of a sponge that is set', () => {
    expect(entries('# Bread\n\nSet a sponge over night with a quart of flour. Bake it.')).toEqual([
      'a quart of flour: 1 quart flour',
    ])
  })
})
