import {describe, expect, it} from 'vitest'
import {kinds} from '../src/lexicon/kinds.js'
import {translate} from '../src/receipt/translate.js'
import {makeDishes} from '../src/scale/dishes.js'
import {signIn} from '../src/sheets/phrases.js'
import {styleOf} from '../src/sheets/style-of.js'

/** Receipts written for these tests. That a shoulder is tough at 63 °C and tender at about 90: common practice, no source. */
const oven = {floor: {shape: 'round' as const, diameter: 1.07}, mouth: {width: 0.46, height: 0.28}, vaultHeight: 0.41}
const row = kinds.find(({id}) => id === 'roast meat')!
const signOf = (title: string, list: string, method: string): string => {
  const {receipts} = translate(`# ${title}\n\n${list}\n\n${method}\n`, {file: 'receipts/a.md'})
  const item = {file: 'receipts/a.md', title, amount: '1 times', wantedBy: null, line: 1, column: 1}
  return makeDishes({day: {people: 6, items: [item], spare: []}, receipts, oven}).dishes[0]!.sign
}

describe('the sign that a joint is done', () => {
  it.each([
    ['Slow shoulder of lamb', '- 2 kg shoulder of lamb\n- salt', 'Bake covered at 150 °C for 4 hours.'],
    ['Schweinebraten', '- 2 kg Schweineschulter\n- Salz', 'Bei 160 °C 3 Stunden braten.'],
    ['Roast lamb, the long way', '- 2 kg leg of lamb\n- salt', 'Roast at 140 °C for 5 hours.'],
    ['Roast pork', '- 3 kg pork shoulder\n- salt', 'Roast at 105 °C for 9 hours.'],
  ])('of a tough cut baked long is that it is tender, not that it is safe: %s', (...receipt) => {
    expect(signOf(...receipt)).toBe(row.tender!.sign)
  })
  it.each([
    ['Roast beef', '- 2.5 kg sirloin of beef\n- salt', 'Roast at 190 °C for 1 hour 40 minutes.'],
    ['Roast shoulder of lamb', '- 1.5 kg shoulder of lamb\n- salt', 'Roast at 190 °C for 80 minutes.'],
    ['Baked ham', '- 6 kg ham', 'Bake at 160 °C for 4 hours.'],
    ['Roast beef, very gently', '- 2.5 kg sirloin of beef\n- salt', 'Roast at 80 °C for 6 hours.'],
  ])('of any other is its kind’s: %s', (...receipt) => {
    expect(signOf(...receipt)).toBe(row.sign)
  })
  it('is said in German', () => {
    expect(signIn('roast meat', row.tender!.sign, styleOf({language: 'de'}))).toMatch(/Gabel geht hinein/)
  })
})
