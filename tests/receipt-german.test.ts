import {describe, expect, it} from 'vitest'
import {fleshWords} from '../src/lexicon/flesh-words.js'
import {preparations, soldAs} from '../src/lexicon/grammar-words.js'
import {wordsUsed} from '../src/lexicon/row.js'
import {saysCutUp} from '../src/receipt/cut-up.js'
import {pastSoldAs} from '../src/receipt/nouns.js'
import {fold} from '../src/receipt/section.js'
import {readSections} from '../src/receipt/sections.js'
import {translate} from '../src/receipt/translate.js'
import {makeView, PREPARED} from '../src/receipt/view.js'

/** Invented lists as German-language households write them. What an item is called there: from memory. */
const list = (...lines: string[]) =>
  translate(`# Kuchen\n\n${lines.map((line) => `- ${line}`).join('\n')}\n\nBacken.\n`, {file: 'a.md'})
const items = (...lines: string[]): string[] => list(...lines).receipts[0]!.ingredients.map(({item}) => item)

/** A text's words are read without their umlauts, and the tables have them as they are written. */
describe('words that tell how a thing is got ready', () => {
  it.each(preparations.filter((word) => !/[ -]/.test(word) && fold(word) !== word.toLowerCase()))('%s', (word) => {
    const [section] = readSections(`# Kuchen\n\n- 200 g ${word} Butter\n`, 'a.md', 0, {})
    const view = makeView(section!)
    expect(view.bits[view.words.indexOf(fold(word))]! & PREPARED).toBe(PREPARED)
  })

  it.each(soldAs.filter((word) => fold(word) !== word.toLowerCase()))('%s, of meat as it is sold', (word) => {
    const [section] = readSections(`# Braten\n\n- 1 Huhn ${word}\n`, 'a.md', 0, {})
    const view = makeView(section!)
    const at = view.words.indexOf(fold(word))
    expect(pastSoldAs(view, at, at + 1)).toBe(at + 1)
  })

  it.each(wordsUsed(fleshWords, 'cut up'))('%s, of what does not go in whole', (word) => {
    expect([saysCutUp(word), saysCutUp(fold(word))]).toEqual([true, true])
  })
})

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

  it('of bread that goes in, and not of what is baked', () => {
    expect(items('500 g Brot', '3 Scheiben Roggenbrot', '100 g Weißbrot', '4 Weizentortillas', '2 Maistortillas')).toEqual([
      'bread',
      'rye bread',
      'bread',
      'tortilla',
      'corn tortilla',
    ])
    const {receipts} = translate(
      '# Landbrot\n\n- 500 g Roggenmehl\n- 400 g Wasser\n\nZu einem Brot formen. Das Brot 60 Minuten backen, ein Brot wiegt 900 g.\n',
      {file: 'a.md'},
    )
    expect(receipts[0]!.ingredients.map(({item}) => item)).toEqual(['rye flour', 'water'])
    expect(receipts[0]!.allergens).toEqual(['rye'])
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

  // Directive 95/2/EC, annex III part B: sulphites in candied, crystallised or glacé fruit, vegetables, angelica and citrus peel. From memory.
  it.each(['Orangeat', 'Zitronat', 'candied lemon peel', 'candied orange peel', 'citron', 'candied angelica', 'candied ginger'])(
    'tell the sulphites of what is candied: %s',
    (name) => expect(list(`50 g ${name}`).receipts[0]!.allergens).toEqual(['sulphites']),
  )

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
