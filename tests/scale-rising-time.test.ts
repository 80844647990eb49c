import {describe, expect, it} from 'vitest'
import type {Dish} from '../src/scale/types.js'
import {loavesIn, oneLine} from './loaves-day.js'

/** How long dough of another weight bakes than its receipt's. Minutes; of published tables of loaves none is cited: common practice, no source. */
const dish = (text: string, amount: string): Dish => oneLine(text, amount).dishes[0]!
const minutes = (text: string, amount: string): number => dish(text, amount).need.minutes.likely
const why = (text: string, amount: string): string => dish(text, amount).sized.find((one) => one.field === 'time')?.why ?? ''

const tin = loavesIn('loaf 9 x 5 x 3 in')
const bricks = loavesIn('free-standing loaf 22 cm')

describe('dough that rises', () => {
  it.each([
    ['2 loaves of 400 g dough', 0.5],
    ['2 loaves of 1200 g dough', 1.5],
  ])('in a tin goes by the cube root of its weight, as it does without one: %s', (amount, share) => {
    expect(minutes(tin, amount)).toBeCloseTo(40 * share ** (2 / 3), 0)
    expect(minutes(bricks, amount)).toBeCloseTo(minutes(tin, amount), 0)
    expect(why(tin, amount)).toContain(`each is ${Math.round(100 * share)} % as heavy as its time was given for`)
  })
  it('in a tin of other sides too: a loaf of twice the weight is no slab twice as thick', () => {
    // A loaf of 1.6 kg bakes about an hour where one of 800 g bakes 40 minutes: common practice, no source.
    const large = minutes(tin, '4 loaves in 2 loaf tins 13 x 4 x 4 in')
    expect(large).toBeGreaterThan(55)
    expect(large).toBeLessThan(70)
  })
  it('in a flat pan goes by what lies over the same floor', () => {
    const flat = '2 loaves in 2 oblong tins 13 x 9 x 2 in'
    expect(why(tin, flat)).toMatch(/^3\d % as deep before it rises as its time was given for/)
    // Flat bread of 800 g on a large pan bakes about 20 minutes: common practice, no source.
    expect(minutes(tin, flat)).toBeGreaterThan(15)
    expect(minutes(tin, flat)).toBeLessThan(26)
    expect(oneLine(tin, flat).messages.map(({rule}) => rule)).toContain('scale-thin')
  })
  it('keeps its time as deep in a wider pan', () => {
    expect(minutes(loavesIn('square 8 in x 2 in'), '2 square tins 10 in x 2 in')).toBe(40)
  })
  it('that hardly covers its tin is told to dry', () => {
    const {messages} = oneLine(tin, '2 loaves of 150 g dough')
    expect(messages.find(({rule}) => rule === 'scale-thin')?.reason).toMatch(/1\d % as deep in loaf 9 x 5 x 3 in .* dries soon$/)
  })
})

describe('what does not rise with yeast', () => {
  it('goes by its depth, between that and its square where it is thinner', () => {
    const cake =
      '---\nvessel: square 8 in x 2 in\n---\n# Butter cake\n\nMakes one cake.\n\n- 225 g butter\n- 225 g sugar\n- 4 eggs\n- 225 g flour\n\nBake at 180 °C for 40 minutes.\n'
    expect(minutes(cake, '1 1/2 times')).toBeGreaterThan(40 * 0.75 ** 2)
    expect(minutes(cake, '1 1/2 times')).toBeLessThan(40 * 0.75)
  })
})
