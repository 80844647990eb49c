import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'
import type {Receipt} from '../src/receipt/types.js'
import {kindOf} from '../src/scale/kind-figures.js'
import {heatNeed} from '../src/scale/need.js'

/** Invented receipts. What is set in when the oven has come down to so many degrees is set in at those: common practice, no source. */
const read = (method: string, title = 'Soured milk overnight in the cooling oven'): Receipt =>
  translate(`# ${title}\n\n- 2 litres milk\n\n${method}\n`, {file: 'milk.md'}).receipts[0]!
const needOf = (receipt: Receipt) => {
  const kind = kindOf(receipt, () => {})
  return heatNeed(receipt, kind, kind.title).need
}

describe('degrees that the oven has come down to', () => {
  it.each([
    ['Pour it into jars and leave it in the oven when that has cooled to about 45 °C for 8 to 10 hours or overnight.', 45],
    ['Put it in the oven once it has fallen to 60 °C, and leave it overnight.', 60],
    ['In den Ofen stellen, sobald er auf 45 °C abgekühlt ist, und über Nacht stehen lassen.', 45],
  ])('are those it is set in at: %s', (method, celsius) => {
    const receipt = read(method)
    expect(receipt.oven.filter(({fallenTo}) => fallenTo === true).map((phrase) => phrase.celsius.low)).toEqual([celsius])
    const need = needOf(receipt)
    expect(need.startBest).toBe(celsius)
    // 5 °C at 45, for a culture is killed a little above 50 °C: common practice, no source.
    expect(need.startHigh).toBeCloseTo(celsius + 0.2 * (celsius - 20), 6)
    expect(need.overnight).toBe(true)
    expect(need.reference).toBe(celsius)
  })

  it('are not what a thing drawn from it has cooled to, nor the milk', () => {
    for (const method of [
      'Bake in a hot oven for an hour. Take it from the oven, and when it has cooled to 50 °C cut it.',
      'Heat the milk to 85 °C, and when it has cooled to 45 °C stir. Bake in a slow oven.',
    ])
      expect(read(method, 'Pudding').oven.filter(({fallenTo}) => fallenTo === true)).toEqual([])
  })

  it('are of a second stage where it bakes before', () => {
    const need = needOf(
      read('Bake at 240 °C for 20 minutes, and when the oven has fallen to 180 °C for 30 minutes more.', 'Rye loaf'),
    )
    expect(need.startBest).toBe(240)
  })
})
