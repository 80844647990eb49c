import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'

/** Invented lists as German-language households write them. What an item is called there: from memory. */
const list = (...lines: string[]) =>
  translate(`# Kuchen\n\n${lines.map((line) => `- ${line}`).join('\n')}\n\nBacken.\n`, {file: 'a.md'})
const items = (...lines: string[]): string[] => list(...lines).receipts[0]!.ingredients.map(({item}) => item)

describe('German names of ingredients', () => {
  it('of syrups boiled from beet, apples and cane', () => {
    expect(items('100 g Zuckerrübensirup', '2 EL Rübenkraut', '1 EL Apfelkraut', '50 g Melasse', '1 EL Ahornsirup')).toEqual([
      'sugar beet syrup',
      'sugar beet syrup',
      'apple syrup',
      'molasses',
      'maple syrup',
    ])
  })

  it('of bacon', () => {
    expect(items('100 g Speck', '80 g gewürfelter Speck', '2 Scheiben Bauernspeck')).toEqual(['bacon', 'bacon', 'bacon'])
  })

  it('of cracked grain, seeds and fresh cheese', () => {
    expect(items('300 g Roggenschrot', '50 g Sonnenblumenkerne', '250 g Magerquark', '200 g Topfen')).toEqual([
      'cracked rye',
      'sunflower seed',
      'quark',
      'quark',
    ])
  })

  it('tell the allergens that they hold (Regulation (EU) 1169/2011, annex II)', () => {
    const {allergens} = list('100 g Mandelkerne', '20 g Sesam', '300 g Roggenschrot', '250 g Quark', '1 Sellerie', '200 g Lachs')
      .receipts[0]!
    expect([...allergens].sort()).toEqual(['celery', 'fish', 'milk', 'nuts', 'rye', 'sesame'])
  })

  it('leave a word that no row has as it is, and report it', () => {
    const {receipts, messages} = list('100 g Kräuselmehlbeere')
    expect(receipts[0]!.ingredients[0]).toMatchObject({known: false})
    expect(messages.map(({rule}) => rule)).toContain('item-unknown')
  })
})

describe('drinks that stand for milk', () => {
  it('carry their own allergens (Regulation (EU) 1169/2011, annex II)', () => {
    const allergens = (line: string): readonly string[] => list(line).receipts[0]!.allergens
    expect(allergens('200 ml soya milk')).toEqual(['soybeans'])
    expect(allergens('200 ml almond milk')).toEqual(['nuts'])
    expect(allergens('200 ml Hafermilch')).toEqual(['oats'])
  })
})
