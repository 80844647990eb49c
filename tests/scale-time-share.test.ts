import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'
import {makeDishes} from '../src/scale/dishes.js'
import {timeShare} from '../src/scale/time-share.js'

describe('the time of what is made thicker or thinner', () => {
  it('is that of Plank’s equation for a slab where it is thinner (ASHRAE Handbook: Refrigeration; from memory)', () => {
    const plank = (d: number): number => (0.5 * d) / 20 + (0.125 * d * d) / 0.5
    for (const was of [0.02, 0.05, 0.1])
      for (const r of [0.5, 0.7, 0.95]) expect(timeShare(r, was), `${r} of ${was}`).toBeCloseTo(plank(r * was) / plank(was), 9)
  })
  it('leaves two fifths to what is half as deep, and never less than the square or more than the depth', () => {
    expect(timeShare(0.5, 0.05)).toBeGreaterThanOrEqual(0.4)
    for (const was of [0.01, 0.05, 0.15]) {
      expect(timeShare(0.5, was)).toBeGreaterThan(0.25)
      expect(timeShare(0.5, was)).toBeLessThan(0.5)
    }
  })
  it('is the square where it is thicker, or takes its own shape (Fourier number: Incropera & DeWitt)', () => {
    expect(timeShare(1.5, 0.05)).toBeCloseTo(2.25, 9)
    expect(timeShare(1, 0.05)).toBe(1)
    expect(timeShare(0.8)).toBeCloseTo(0.64, 9)
  })
})

describe('a dish that fills its tin to half', () => {
  const custard = `---
vessel: round 22 cm x 6 cm
---
# Baked custard

Makes one dish.

- 1 litre milk
- 8 eggs
- 120 g sugar

Bake at 160 °C for 50 minutes.
`
  const oven = {floor: {shape: 'round' as const, diameter: 2.2}, mouth: {width: 0.8, height: 0.4}, vaultHeight: 0.6}
  const make = (amount: string) => {
    const receipts = [...translate(custard, {file: 'receipts/x.md'}).receipts]
    const item = {file: 'receipts/x.md', title: '', amount, wantedBy: null, line: 5, column: 3}
    return makeDishes({day: {people: 12, items: [item], spare: []}, receipts, oven})
  }
  it('keeps two fifths of its time, and is to be looked at early', () => {
    const {dishes, messages} = make('half the receipt')
    expect(dishes[0]!.need.minutes.likely / 50).toBeGreaterThanOrEqual(0.39)
    const thin = messages.find(({rule}) => rule === 'scale-thin')
    expect(thin?.reason).toMatch(/is 50 % as deep .*look at it early, and draw it by its sign/)
  })
  it('is offered a smaller tin, in which it is as deep and takes as long', () => {
    const offered = make('half the receipt').messages.find(({rule}) => rule === 'scale-thin')?.suggest
    const line = /^write “([^”]*)”/.exec(offered ?? '')?.[1] ?? ''
    const {dishes, messages} = make(line)
    expect(messages.filter(({rule}) => rule === 'scale-thin')).toEqual([])
    expect(dishes[0]!.need.minutes.likely).toBeGreaterThan(45)
    expect(dishes[0]!.need.minutes.likely).toBeLessThan(55)
  })
})
