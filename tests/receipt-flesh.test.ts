import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'
import {makeDishes} from '../src/scale/dishes.js'

/**
 * What raw meat a receipt has, however it names it. Receipts invented; FDA Food Code 2022, 3-401.11(A)(3): poultry, and what is stuffed with meat,
 * 165 °F (74 °C).
 */
const oven = {floor: {shape: 'round' as const, diameter: 1.07}, mouth: {width: 0.46, height: 0.28}, vaultHeight: 0.41}
const read = (title: string, list: string, method = 'Bake 1 hour at 180 °C.') => {
  const {receipts, messages} = translate(`# ${title}\n\n${list}\n\n${method}\n`, {file: 'receipts/a.md'})
  const item = {file: 'receipts/a.md', title, amount: '1 times', wantedBy: null, line: 1, column: 1}
  const {sign, raw} = makeDishes({day: {people: 6, items: [item], spare: []}, receipts, oven}).dishes[0]!
  return {receipt: receipts[0]!, messages, sign, raw: raw === true}
}
const isHot = (sign: string): boolean => sign.includes('74 °C at the centre')

describe('parts of birds', () => {
  it.each([
    ['4 Hühnerschenkel', 'chicken leg'],
    ['6 Hähnchenunterschenkel', 'chicken drumstick'],
    ['500 g Hähnchenfilet', 'chicken breast'],
    ['2 Putenunterkeulen', 'turkey drumstick'],
    ['4 Entenschenkel', 'duck leg'],
  ])('have their German names: %s', (line, item) => {
    const {receipt, sign} = read('Ofengericht', `- ${line}\n- 1 kg Kartoffeln`)
    expect(receipt.ingredients[0]).toMatchObject({item, known: true})
    expect(isHot(sign)).toBe(true)
  })

  it.each([
    ['8 thighs', 'chicken thigh'],
    ['8 skinless thighs', 'chicken thigh'],
    ['6 drumsticks', 'chicken drumstick'],
    ['4 wings', 'chicken wing'],
    ['6 Unterkeulen', 'chicken drumstick'],
    ['8 Flügel', 'chicken wing'],
  ])('by themselves in a list are taken as chicken’s, in doubt: %s', (line, item) => {
    const {receipt, sign, messages} = read('Supper in a tin', `- ${line}\n- 1 kg potatoes`)
    expect(receipt.ingredients[0]).toMatchObject({item, known: true, notes: ['no bird is named: taken as chicken’s']})
    expect(receipt.ingredients[0]!.confidence).toBeLessThan(0.6)
    expect(isHot(sign)).toBe(true)
    expect(messages.map(({rule}) => rule)).not.toContain('item-unknown')
  })

  it.each(['6 chicken drumsticks', '4 turkey drumsticks', '2 angel wings', '4 frog thighs'])(
    'but not where more is said: %s',
    (line) => expect(read('Supper in a tin', `- ${line}\n- 1 kg potatoes`).receipt.ingredients[0]!.notes).toEqual([]),
  )
})
