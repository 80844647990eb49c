import {describe, expect, test} from 'vitest'
import {translate} from '../src/receipt/translate.js'

/** Lines of times as recipes print them: common practice, no source. */

const read = (line: string, end = 'Bake at 180 °C.') =>
  translate(`# Zopf\n\n${line}\n\n- 500 g flour\n- 250 ml milk\n\n${end}\n`, {file: 'a.md'}).receipts[0]!
const times = (line: string, end?: string): string[] => read(line, end).times.map(({of, minutes}) => `${of} ${minutes.low}`)

describe('a label says what its time is for', () => {
  test.each([
    ['Zubereitung: 30 Min. · Ruhezeit: 1 Std. 30 Min. · Backzeit: 35 Min.', ['other 30', 'stand 90', 'bake 35']],
    ['Zubereitung: 30 Min. Ruhezeit: 90 Min. Backzeit: 35 Min.', ['other 30', 'stand 90', 'bake 35']],
    ['Arbeitszeit ca. 20 Minuten, Gehzeit 1 Std., Backzeit 35 Min.', ['other 20', 'rise 60', 'bake 35']],
    ['Prep time: 20 min · Rest time: 1 h 30 min · Cook time: 35 min', ['other 20', 'stand 90', 'bake 35']],
    ['**Prep:** 20 min | **Chill:** 2 h | **Bake:** 35 min', ['other 20', 'stand 120', 'bake 35']],
    ['Hands-on time: 20 min. Proving: 2 h. Bake time: 40 min.', ['other 20', 'rise 120', 'bake 40']],
    ['- Vorbereitung: 20 Min\n- Teigruhe: 12 Std.\n- Backzeit: 50 Min', ['other 20', 'rise 720', 'bake 50']],
    ['| Prep time | 20 min |\n|---|---|\n| Rest time | 1 h |\n| Bake time | 40 min |', ['other 20', 'stand 60', 'bake 40']],
  ])('%s', (line, expected) => {
    expect(times(line)).toEqual(expected)
    expect(read(line).ingredients.map((one) => one.item)).toEqual(['flour', 'milk'])
  })

  test('a rest of such a line is not counted beside the steps that give it', () => {
    expect(times('Prep time: 20 min · Rest time: 1 h', 'Let it rise 1 hour. Bake 35 minutes.')).toEqual([
      'other 20',
      'other 60',
      'rise 60',
      'bake 35',
    ])
  })

  test('“Zubereitung:” over the method is no label of its time', () => {
    expect(times('A plait.', 'Zubereitung: 30 Minuten bei 180 °C backen.')).toEqual(['bake 30'])
  })
})
