import {describe, expect, it} from 'vitest'
import {lookUpItem} from '../src/lexicon/index.js'
import {poultry} from '../src/lexicon/poultry.js'
import {translate} from '../src/receipt/translate.js'
import {safeCentre} from '../src/scale/core-heat.js'

const receiptOf = (lines: readonly string[]) => {
  const text = `# Tray of all sorts\n\n${lines.map((line) => `- ${line}`).join('\n')}\n\nBake at 200 °C for 40 minutes.\n`
  return translate(text, {file: 'tray.md'}).receipts[0]!
}
const one = (line: string) => {
  const found = receiptOf([line]).ingredients[0]!
  return {item: lookUpItem(found.item)?.id ?? found.item, grams: found.grams}
}

/** Weights of pieces: USDA SR28, held in `lexicon-pieces.test.ts`; of those it lacks, from memory. Tolerance: the range of the row. */
describe('parts and small ones that are counted weigh what they are, not what the whole thing weighs', () => {
  it.each([
    ['8 chicken thighs', 'chicken thigh', 1192],
    ['4 skinless chicken breast fillets', 'chicken breast', 720],
    ['2 breasts of chicken', 'chicken breast', 360],
    ['6 drumsticks', 'chicken drumstick', 780],
    ['4 duck legs', 'duck leg', 920],
    ['4 Entenkeulen', 'duck leg', 920],
    ['4 Keulen', 'chicken leg', 1060],
    ['4 Hähnchenschnitzel', 'chicken breast', 720],
    ['12 cherry tomatoes', 'cherry tomato', 180],
    ['12 new potatoes', 'new potato', 540],
    ['24 baby carrots', 'baby carrot', 288],
    ['12 button onions', 'button onion', 192],
    ['4 spring onions', 'spring onion', 60],
    ['12 Brussels sprouts', 'brussels sprout', 228],
    ['12 quails’ eggs', 'quail egg', 108],
    ['12 larks', 'lark', 336],
    ['2 heads of garlic', 'garlic', 90],
    ['2 cloves of garlic', 'garlic', 6],
    ['1 chicken', 'chicken', 1500],
    ['4 onions', 'onion', 440],
  ])('%s', (line, item, grams) => {
    const found = one(line)
    expect(found.item).toBe(item)
    expect(found.grams!.likely).toBeCloseTo(grams, 6)
  })

  it('takes peppers that are counted for the vegetable, and those ground, in corns or by the pinch for the spice', () => {
    for (const line of ['8 peppers', '2 large red peppers', 'half a red pepper', '3 bell peppers', '2 ripe peppers, seeded'])
      expect(one(line).item, line).toBe('sweet pepper')
    for (const line of ['8 peppercorns', '1 tsp pepper', '2 grinds pepper', 'a little pepper'])
      expect(one(line).item, line).toBe('pepper')
    expect(one('a pinch of red pepper').item).toBe('cayenne')
    expect(one('2 Paprika').item).toBe('sweet pepper')
  })

  it('asks 74 °C of every part of a bird (FDA Food Code 3-401.11(A)(3))', () => {
    for (const id of poultry) {
      expect(lookUpItem(id)?.id).toBe(id)
      const {title, ingredients} = receiptOf([`500 g ${id}`])
      expect(safeCentre({title, ingredients}, {safe: 63}), id).toBe(74)
    }
  })
})

describe('poultry by its German names is hot through at 74 °C', () => {
  // USDA FSIS: all poultry 165 °F (73.9 °C) at the centre.
  it.each(['4 Keulen', '500 g Putenschnitzel', '500 g Hähnchenschnitzel', '2 Putenfilets', '500 g Hühnerfilet'])('%s', (line) => {
    expect(receiptOf([line]).cautions.map(({id}) => id)).toContain('meat-temperature')
    expect(safeCentre(receiptOf([line]), {safe: 63})).toBe(74)
  })
})
