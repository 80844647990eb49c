import {describe, expect, test} from 'vitest'
import {translate} from '../src/receipt/translate.js'

/** Labels over lists as cooks write them: common practice, no source. */

const read = (text: string) => translate(text, {file: 'a.md'}).receipts[0]!
const names = (text: string): string[] => read(text).ingredients.map((one) => `${one.exact} ${one.measure} ${one.item}`)
const filled = (text: string, field: string): unknown => read(text).inferred.find((one) => one.field === field)?.value

describe('the label over the ingredients says how much they make, or in what', () => {
  const LIST = '- 500 g flour\n- 10 g salt\n- 350 g water\n'
  const loaf = (label: string, list = `\n\n${LIST}`): string =>
    `# Plain loaf\n\n${label}${list}\nMix and bake at 220 °C for 30 minutes.\n`
  const ITEMS = ['500 gram flour', '10 gram salt', '350 gram water']

  test.each([
    ['**Ingredients (serves 4)**', 'serves 4', 'persons'],
    ['**Ingredients** (serves 4):', 'serves 4', 'persons'],
    ['**Ingredients (makes 2 loaves)**', 'makes 2 loaves', 'loaves'],
    ['**Ingredients — makes one 9-inch cake**', 'makes one 9-inch cake', 'cake'],
    ['Ingredients for 2 loaves:', 'for 2 loaves', 'loaves'],
    ['**What you need (1 loaf)**', '1 loaf', 'loaf'],
    ['*Zutaten (ergibt 2 Brote)*', 'ergibt 2 Brote', 'loaves'],
    ['**Zutaten (12 Stück)**', '12 Stück', 'pieces'],
    ['**Zutaten für 4 Personen:**', 'für 4 Personen', 'persons'],
  ])('%s', (label, text, of) => {
    expect(names(loaf(label))).toEqual(ITEMS)
    expect(read(loaf(label)).serves).toMatchObject({text, of})
  })

  test.each([
    ['**Ingredients (one 9x13" pan)**', 'oblong 9 x 13 x 2 in'],
    ['**Ingredients (for a 2 lb loaf tin)**', 'loaf 9 x 5 x 3 in'],
    ['## Ingredients (for a 2 lb loaf tin)', 'loaf 9 x 5 x 3 in'],
    ['**Zutaten (26-cm-Springform)**', 'round 26 x 6.4 cm'],
  ])('%s', (label, vessel) => {
    expect(names(loaf(label))).toEqual(ITEMS)
    expect(filled(loaf(label), 'vessel')).toBe(vessel)
  })

  test.each([
    ['## Zutaten für den Teig', 'dough'],
    ['## Ingredients for the icing', 'icing'],
    ['## Ingredients — makes one 9-inch cake', ''],
    ['**Ingredients for the icing:**', 'icing'],
    ['**Zutaten für die Füllung**', 'filling'],
  ])('%s: of part “%s”', (label, part) => {
    expect(new Set(read(loaf(label)).ingredients.map((one) => one.part))).toEqual(new Set([part]))
  })

  test('“Ingredients” run in before so much of a thing is no label', () => {
    const text = '# Cod\n\nINGREDIENTS.—Sufficient water to cover the fish; 5 oz. of salt.\n\nMode.—Bake it.\n'
    expect(names(text)).toEqual(['null indefinite water', 'null indefinite fish', '5 ounce salt'])
  })

  test('a list may stand in the label’s own paragraph, line by line or run in', () => {
    expect(names(loaf('**Ingredients (makes 12)**  \n', '500 g flour  \n10 g salt  \n350 g water\n'))).toEqual(ITEMS)
    expect(names(loaf('Ingredients (serves 4): 500 g flour, 10 g salt, 350 g water.', '\n'))).toEqual(ITEMS)
    expect(names(loaf('INGREDIENTS.—500 g flour, 10 g salt, 350 g water.', '\n'))).toEqual(ITEMS)
    expect(names(loaf('Ingredients for 2 loaves: 500 g flour, 10 g salt, 350 g water.', '\n'))).toEqual(ITEMS)
  })
})
