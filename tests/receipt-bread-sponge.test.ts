import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'

/** Invented receipts. A sponge in bread is its first dough, of yeast, flour and water: common practice, no source. */
const read = (title: string, text: string) =>
  translate(`# ${title}\n\n${text}\n`, {file: 'x.md'}).receipts[0]!.ingredients.map(({item, amount}) => [
    item,
    amount?.low ?? null,
  ])

describe('a sponge', () => {
  it('is the first dough where yeast goes in, and no cake', () => {
    const items = read('Bread', 'Take a gill of yeast to two quarts of sponge, and stir in flour. Some do not set a soft sponge.')
    expect(items).toContainEqual(['sponge of yeast', 2])
    expect(items.map(([item]) => item)).not.toContain('sponge cake')
    expect(items.filter(([item]) => item === 'sponge of yeast')).toHaveLength(1)
  })

  it('is a cake in a pudding without any', () => {
    expect(read('Trifle', 'Take half a pound of stale sponge and a pint of cream.').map(([item]) => item)).toContain(
      'sponge cake',
    )
  })
})
