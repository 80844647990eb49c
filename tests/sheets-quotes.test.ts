import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'
import {oursLine} from '../src/sheets/said.js'
import {styleOf} from '../src/sheets/style-of.js'

/** A receipt of our own. German quotation marks: „ and “ (Amtliche Regelung der deutschen Rechtschreibung, § 89; from memory). */
describe('words quoted from a receipt', () => {
  const {inferred} = translate('# Landbrot\n\n- 500 g Mehl\n- 10 g Salz\n- 300 g Wasser\n\nBei 220 °C 50 Minuten backen.\n', {
    file: 'receipts/a.md',
  }).receipts[0]!
  const line = (language: 'en' | 'de'): string =>
    oursLine(inferred.find(({why}) => why.startsWith('read as'))!, styleOf({language}))
  it('are its own, the unit as it writes it', () => {
    expect(line('en')).toContain('for it says “g”, “220 °C”')
  })
  it('stand in German marks on a German sheet', () => {
    expect(line('de')).toContain('denn es sagt „g“, „220 °C“')
  })
})
