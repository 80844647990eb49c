import Fraction from 'fraction.js'
import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'
import {makeDishes} from '../src/scale/dishes.js'
import type {Dish, FloorRoom} from '../src/scale/types.js'

/** The way out for a vessel that does not go into the oven: one of its shape that does, in so many as hold as much. By arithmetic; sizes invented. */
const inch = 0.0254
const round = (diameter: number, width: number, height: number): FloorRoom => ({
  floor: {shape: 'round', diameter: diameter * inch},
  mouth: {width: width * inch, height: height * inch},
  vaultHeight: 15 * inch,
})
/** Its mouth is 6 in high. */
const low = round(48, 18, 6)
/** Its mouth is 14 in wide. */
const narrow = round(30, 14, 9)

const beans = (vessel: string): string =>
  `---\nyear: 1840\nvessel: ${vessel}\nserves: 10\n---\n# Baked beans\n\nA quart of beans, a pound of pork, water to cover. Bake it eight hours in a hot oven. Makes one crock.\n`
const loaves = (vessel: string): string =>
  `---\nvessel: ${vessel}\n---\n# White bread\n\nMakes 2 loaves.\n\n- 1 kg flour\n- 650 g water\n- 20 g salt\n- 10 g yeast\n\nBake in a hot oven 45 minutes.\n`
const shortbread = (vessel: string): string =>
  `---\nvessel: ${vessel}\n---\n# Shortbread\n\nMakes 24 pieces.\n\n- 300 g flour\n- 200 g butter\n- 100 g sugar\n\nBake in a slow oven 40 minutes.\n`

interface Made {
  readonly dishes: readonly Dish[]
  readonly messages: readonly {readonly rule: string; readonly reason: string; readonly suggest?: string}[]
}
function make(text: string, amount: string | null, oven: FloorRoom): Made {
  const item = {file: 'receipts/x.md', title: 'It', amount, wantedBy: null, line: 5, column: 3}
  const {receipts} = translate(text, {file: 'receipts/x.md'})
  return makeDishes({day: {people: 12, items: [item], spare: []}, receipts, oven})
}
const suggested = ({messages}: Made): string | null => {
  const way = messages.find(({rule, reason}) => rule === 'scale-mouth' || reason.includes('does not go into this oven'))
  return /^write “([^”]+)”/.exec(way?.suggest ?? '')?.[1] ?? null
}
const times = ({dishes}: Made): number => dishes.reduce((sum, {times}) => sum + new Fraction(times).valueOf(), 0)

describe('a vessel that does not go into the oven', () => {
  it('is offered in its own shape, as large as passes, and in so many as hold as much', () => {
    // 5 in and its lid pass 6 in; 2 × 7 / 5 is 2.8 crocks.
    expect(suggested(make(beans('crock 9 in x 7 in'), '2 crocks', low))).toBe('2 crocks in 3 crocks 9 in x 5 in')
    // 13 in and a rim pass 14 in.
    expect(suggested(make(shortbread('sheet 16 in x 20 in'), '1 sheet', narrow))).toBe('1 sheet in 2 sheets 20 in x 13 in')
    expect(suggested(make(shortbread('sheet 60 cm x 50 cm'), '2 sheets', low))).toBe('2 sheets in 3 sheets 60 cm x 45 cm')
    expect(suggested(make(loaves('loaf 9 x 5 x 5 in'), '2 loaves', low))).toBe('2 loaves in 3 loaf tins 9 in x 5 in x 4 in')
    // A loaf of 20 cm is (20 / 24)³ of one of 24 cm: 2 of these are 3.5 of those.
    const door = {...low, mouth: {width: 0.2, height: 0.2}}
    expect(suggested(make(loaves('free-standing loaf 24 cm'), '2 loaves', door))).toBe('2 loaves in 4 free-standing loaves 20 cm')
  })

  it('and one to each of what goes in whole, which is not divided among more', () => {
    const door = {...low, mouth: {width: 0.28, height: 0.25}}
    const goose = '# Roast goose\n\n- 1 goose, about 5 kg\n- salt\n\nRoast in a hot oven for 2 1/2 hours.\n'
    expect(suggested(make(goose, '1 goose', door))).toMatch(/^1 goose in 1 oblong tin /)
    expect(suggested(make(goose, '2 geese', door))).toMatch(/^2 geese in 2 oblong tins /)
  })

  it('and of dough in a pot that it hardly fills, where the day names no vessel', () => {
    const garden = {...low, mouth: {width: 0.38, height: 0.23}, vaultHeight: 0.36}
    const pot = loaves('crock 9 in x 11 in').replace('Makes 2 loaves', 'Makes 1 loaf')
    const {dishes, messages} = make(pot, '2 loaves', garden)
    expect(suggested({dishes, messages})).toMatch(/^2 loaves in \d crocks 9 in x \d in$/)
    // It does not say that the smaller pots are too full.
    expect(make(pot, suggested({dishes, messages})!, garden).messages.filter(({rule}) => rule === 'scale-full')).toEqual([])
  })

  it('and what is offered goes in, is read as it is meant and makes as much', () => {
    let tried = 0
    const texts = [
      [beans('crock 9 in x 7 in'), low],
      [beans('crock 23 cm x 18 cm'), low],
      [shortbread('sheet 24 in x 20 in'), narrow],
      [loaves('loaf 9 x 5 x 5 in'), low],
      [loaves('round 15 in x 4 in'), narrow],
      [loaves('square 16 in x 3 in'), narrow],
    ] as const
    for (const [text, oven] of texts)
      for (const amount of [
        '2 times',
        'for 30',
        null,
        '3 kg',
        '3 kg in 2 round tins 15 in x 6 in',
        '2 round tins 15 in x 6 in',
      ]) {
        const first = make(text, amount, oven)
        const way = suggested(first)
        if (way === null) continue
        tried++
        const then = make(text, way, oven)
        const said = `${amount}: ${way}`
        expect(
          then.messages.filter(({rule}) => /mouth|full|amount|thin/.test(rule)),
          said,
        ).toEqual([])
        expect(
          then.dishes.every(({instead}) => instead === undefined),
          said,
        ).toBe(true)
        // What is for so many people is no more than they need, where whole vessels of the receipt's were.
        const share = times(then) / times(first)
        expect(share, said).toBeLessThan(1.16)
        if (amount !== null && !amount.startsWith('for')) expect(share, said).toBeGreaterThan(0.84)
        const [dish] = first.dishes
        expect(
          dish!.instead!.dishes.map(({count, vessel}) => [count, vessel.name]),
          said,
        ).toEqual(then.dishes.map(({count, vessel}) => [count, vessel.name]))
      }
    expect(tried).toBeGreaterThan(20)
  })

  it('which is to fill the floor does so in one that goes in', () => {
    expect(suggested(make(beans('crock 9 in x 7 in'), 'fill the floor', low))).toBe('fill the floor in crock 9 in x 5 in')
  })

  it('is not offered at less than half its size', () => {
    const made = make(beans('crock 9 in x 16 in'), '2 crocks', low)
    expect(suggested(made)).toBeNull()
    expect(made.messages.find(({rule}) => rule === 'scale-mouth')!.suggest).toBe(
      'name a vessel less than 45 cm wide and 15 cm high behind the amount, or state it in the receipt’s front matter',
    )
  })
})
