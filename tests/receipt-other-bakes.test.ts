import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'

/** Invented receipts. A bake told for two ovens has a heat and a time for each: common practice, no source. */
const read = (method: string) => {
  const {receipts, messages} = translate(`# Flat loaves\n\n- 500 g flour\n- 320 g water\n\n${method}\n`, {file: 'loaves.md'})
  const {oven, times} = receipts[0]!
  return {
    heats: oven
      .filter(({condition, known}) => condition !== true && known !== false)
      .map(({celsius}) => Math.round((celsius.low + celsius.high) / 2)),
    minutes: times.filter(({of}) => of === 'bake').map(({minutes}) => [minutes.low, minutes.high]),
    told: messages.map(({rule}) => rule),
  }
}

describe('a bake told in two ways', () => {
  it.each([
    ['Bake on the floor, 2 to 3 minutes at 430 °C (or 7-9 mins at 240 in a normal oven).', 430, [2, 3]],
    ['Bake 3 minutes at 400 °C, or 9 minutes at 250 °C.', 400, [3, 3]],
    ['Bake at 220 °C for 20 minutes or at 180 °C for 35 minutes.', 220, [20, 20]],
    ['Bake at 250 °C for 10 minutes (in a wood-fired oven 2 minutes at 420 °C).', 420, [2, 2]],
    ['Bake at 250 °C for 10 minutes. In a brick oven, 2 minutes at 420 °C.', 420, [2, 2]],
    ['Bei 250 °C 10 Minuten backen oder im Holzofen bei 400 °C 2 Minuten.', 400, [2, 2]],
  ])('keeps each time with its own heat: %s', (method, heat, minutes) => {
    expect(read(method)).toEqual({heats: [heat], minutes: [minutes], told: ['note-other-way']})
  })

  it.each([
    ['Bake at 220 °C for 15 minutes, then 30 minutes at 180 °C.', [220, 180]],
    ['Bake at 230 °C for 15 minutes, lower to 200 °C for 20 minutes or until brown.', [230, 200]],
    ['Bake at 180 °C for 30 minutes, or 30 minutes at 350 °F.', [180, 177]],
  ])('stages and the same heat told twice are none: %s', (method, heats) => {
    expect(read(method).heats).toEqual(heats)
    expect(read(method).told).not.toContain('note-other-way')
  })
})
