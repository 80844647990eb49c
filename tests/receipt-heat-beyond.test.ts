import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'

/** That no oven bakes at 900 °C is common practice, no source; a hot pizza oven is at about 480 °C (from memory). */
const read = (text: string) => translate(`# A cake\n\n${text}\n`, {file: 'a.md'})
const told = (text: string): string[] =>
  read(text)
    .messages.filter(({rule}) => rule === 'heat-beyond')
    .map(({line, column, severity}) => `${severity} ${line}:${column}`)

describe('a heat beyond any oven', () => {
  it.each([
    ['Bake at 900 °C for 20 minutes.', 'warning 3:9'],
    ['Bake at 1200 °F for 20 minutes.', 'warning 3:9'],
    ['Bake at 900 degrees centigrade for 20 minutes.', 'warning 3:9'],
    ['Bake an hour, gas mark 19.', 'warning 3:15'],
    ['Bake at 180 °C.\n\nNote: or bake at 900 °C for 10 minutes.', 'warning 5:18'],
    ['Bake it.\n\nNote: at 900 °C.', 'warning 5:10'],
  ])('is refused, with its place: %j', (text, place) => {
    expect(told(text)).toEqual([place])
    expect(read(text).receipts[0]!.oven.every(({celsius}) => celsius.high < 480)).toBe(true)
  })

  it.each(['Bake at 250 °C.', 'Bake at 480 °F.', 'Gas mark 9.', '900 c. flour', 'Bake 900 cakes.', '1000 g flour'])(
    'is none in: %s',
    (text) => expect(told(text)).toEqual([]),
  )
})
