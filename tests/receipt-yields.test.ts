import {describe, expect, it} from 'vitest'
import {plainSection} from '../src/receipt/section.js'
import {translate} from '../src/receipt/translate.js'
import {readYields} from '../src/receipt/yield-facts.js'
import {makeDishes} from '../src/scale/dishes.js'
import {translationText} from '../src/sheets/translation-text.js'

/** Invented phrases in the usual wording of receipts: common practice, no source. */
describe('a receipt that says how much it makes and how many it feeds', () => {
  it.each(['Makes 2 loaves. Serves 12.', 'Serves 12. Makes 2 loaves.'])('keeps both: %s', (text) => {
    const {serves, feeds} = readYields(plainSection(text))
    expect([serves?.low, serves?.of, feeds?.low, feeds?.of]).toEqual([2, 'loaves', 12, 'persons'])
    expect(text.slice(feeds!.start, feeds!.end)).toBe(feeds!.text)
  })

  it('keeps both in German', () => {
    const {serves, feeds} = readYields(plainSection('Ergibt 2 Brote. Für 12 Personen.'))
    expect([serves?.low, serves?.of, feeds?.low]).toEqual([2, 'loaves', 12])
  })

  it('keeps both where the vessel is what is made', () => {
    const {serves, feeds} = readYields(plainSection('For one 40 x 30 cm tray: enough for 12 people.'))
    expect([serves?.low, serves?.of, feeds?.low]).toEqual([1, 'tray', 12])
  })

  it('takes the people where only a measure is made beside', () => {
    const {serves, feeds} = readYields(plainSection('Makes 3 pints. Serves 6.'))
    expect([serves?.low, serves?.of, feeds]).toEqual([6, 'persons', undefined])
  })

  it('prints both', () => {
    const {receipts, messages} = translate('# Bread\n\nMakes 2 loaves. Serves 12.\n\n- 1 kg flour\n', {file: 'a.md'})
    expect(translationText({format: 1, receipts, messages}, {sources: []})).toContain('Makes 2 loaves; Serves 12')
  })

  it('is scaled by the count and feeds by the people', () => {
    const source =
      '# Bread\n\nMakes 2 loaves. Serves 12.\n\n- 1 kg flour\n- 650 g water\n- 20 g yeast\n\nBake at 230 °C for 40 minutes.\n'
    const {receipts} = translate(source, {file: 'bread.md'})
    const {dishes} = makeDishes({
      day: {
        people: 8,
        items: [{file: 'bread.md', title: 'Bread', amount: '4 loaves', wantedBy: null, line: 1, column: 1}],
        spare: [],
      },
      receipts,
      oven: {floor: {shape: 'round', diameter: 1.07}, mouth: {width: 0.46, height: 0.28}, vaultHeight: 0.41},
    })
    expect(dishes[0]?.count).toBe(4)
    expect(dishes[0]?.times).toBe('2')
    expect(dishes[0]?.feeds.likely).toBeCloseTo(24)
  })
})

describe('a count that only the method gives', () => {
  it.each([
    ['Knead it. Divide into six loaves and prove them.', 6, 'loaves'],
    ['Let it rise, then make it up into four loaves.', 4, 'loaves'],
    ['Shape the dough into two round loaves.', 2, 'loaves'],
    ['Divide the dough into 12 equal pieces and shape each into a roll.', 12, 'rolls'],
    ['Divide the batter between two 20 cm tins.', 2, 'tins'],
    ['Den Teig in zwei Laibe teilen.', 2, 'laibe'],
    ['Zu zwei runden Laiben formen.', 2, 'laiben'],
    ['Den Teig in 12 Stücke teilen und zu Brötchen formen.', 12, 'brotchen'],
  ])('%s', (text, low, of) => {
    const {serves} = readYields(plainSection(text as string))
    expect(serves).not.toBeNull()
    expect(serves?.low).toBe(low)
    const english: Record<string, string> = {laibe: 'loaves', laiben: 'loaves', brotchen: 'rolls'}
    expect(serves?.of).toBe(english[of as string] ?? of)
    expect((text as string).slice(serves!.start, serves!.end)).toBe(serves!.text)
  })

  it.each([
    'Divide each half into 6 rolls.',
    'Shape into two rolls, chill, and cut them into slices.',
    'Cut the pork into 4 pieces.',
    'Shape each piece into a loaf.',
    'Divide the paste into two parts; roll one out.',
  ])('none in: %s', (text) => {
    expect(readYields(plainSection(text)).serves).toBeNull()
  })

  it('yields to what the receipt states', () => {
    expect(readYields(plainSection('Makes 3 loaves. Divide into six loaves.')).serves?.low).toBe(3)
  })
})
