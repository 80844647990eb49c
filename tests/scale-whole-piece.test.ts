import Fraction from 'fraction.js'
import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'
import {makeDishes} from '../src/scale/dishes.js'
import type {Dish, FloorRoom} from '../src/scale/types.js'

/** Birds, joints and fish that go in whole: a tin each, as high as they are. Receipts invented; sizes are common practice, no source. */
const oven = (high: number): FloorRoom => ({
  floor: {shape: 'rectangle', width: 1.4, depth: 1.8},
  mouth: {width: 0.6, height: high},
  vaultHeight: 0.5,
})
function make(text: string, amount: string | null, people = 12, room = oven(0.3)) {
  const item = {file: 'receipts/x.md', title: 'It', amount, wantedBy: null, line: 5, column: 3}
  const {receipts} = translate(text, {file: 'receipts/x.md'})
  const made = makeDishes({day: {people, items: [item], spare: []}, receipts, oven: room})
  return {...made, dish: made.dishes[0]!}
}
const turkey = (list = '1 turkey, about 6 kg', more = ''): string =>
  `# Roast turkey\n\nServes 12.\n\n- ${list}\n- 100 g butter\n\nRoast at 180 °C for 3 1/2 hours${more}.\n`
const ham = '# Baked ham\n\nServes 12.\n\n- 1 ham, about 4 kg\n- 100 g brown sugar\n\nBake at 160 °C for 4 hours.\n'
const stands = ({vessel: {footprint, height}}: Dish) => ({...footprint, height})
const whys = ({sized}: Dish): string => sized.map(({field, value, why}) => `${field}: ${value} (${why})`).join('\n')

describe('what goes in whole', () => {
  it('is one to a tin, as large and as high as it is', () => {
    const {dish} = make(turkey(), null)
    expect(dish.count).toBe(1)
    const {height, ...foot} = stands(dish)
    expect(height).toBeGreaterThan(0.18)
    expect(height).toBeLessThan(0.22)
    expect(foot).toMatchObject({shape: 'rectangle'})
    if (foot.shape === 'rectangle') expect([foot.length > 0.38, foot.width > 0.28]).toEqual([true, true])
    expect(whys(dish)).toContain('height: 20 cm (what goes in whole is of 6 kg each')
    expect(make(ham, null).dish).toMatchObject({count: 1, times: '1'})
    expect(make(ham, null).dish.vessel.height).toBeGreaterThan(0.14)
  })

  it('comes through a mouth that is as high as it, and through no lower one', () => {
    expect(make(turkey(), null, 12, oven(0.21)).messages.filter(({rule}) => rule === 'scale-mouth')).toEqual([])
    const {messages, dish} = make(turkey(), null, 12, oven(0.18))
    const told = messages.find(({rule}) => rule === 'scale-mouth')
    expect(told?.reason).toContain('20 cm high')
    expect(told?.suggest).toContain('as high in any tin')
    expect(dish.instead).toBeUndefined()
  })

  it('is asked for in whole pieces, which is said', () => {
    for (const [amount, people, many] of [
      [null, 20, 2],
      ['2 turkeys', 12, 2],
      ['half the receipt', 12, 1],
      ['1 1/2 times', 12, 2],
      ['8 kg', 12, 1],
      ['10 kg', 12, 2],
      ['for 20 in 3 oblong 18 x 14 x 3 in', 12, 2],
    ] as const) {
      const {dish} = make(turkey(), amount, people)
      expect([amount, dish.count, new Fraction(dish.times).valueOf()]).toEqual([amount, many, many])
      expect(dish.vessel.height).toBeGreaterThan(0.18)
    }
    expect(whys(make(turkey(), 'half the receipt').dish)).toContain('what goes in whole is not divided: 1 of it')
  })

  it('has as many tins as the receipt has of it, or as its method says', () => {
    const two = turkey('2 ducks, 2 kg each')
    expect(make(two, null).dish).toMatchObject({count: 2, times: '1'})
    expect(make(two, '3 ducks').dish).toMatchObject({count: 3, times: '3/2'})
    const together = make(turkey('2 ducks, 2 kg each', '. Lay both in a roasting tin and bake them'), null).dish
    expect(together.count).toBe(1)
  })

  it('stands as high in a tin whose size the receipt or the day says', () => {
    const stated = `---\nvessel: oblong 18 x 14 x 2 in\n---\n${turkey()}`
    expect(make(stated, null).dish.vessel).toMatchObject({name: 'oblong 18 x 14 x 2 in'})
    expect(make(stated, null).dish.vessel.height).toBeGreaterThan(0.18)
    const other = make(ham, 'in round 16 in x 2 in').dish
    expect(other).toMatchObject({count: 1, times: '1', vessel: {name: 'round 16 in x 2 in'}})
    expect(other.vessel.height).toBeGreaterThan(0.14)
  })

  it('is not what is cut up, small, or of no number', () => {
    for (const list of [
      '2 kg chicken thighs',
      '12 quails, 150 g each',
      '1 turkey, 6 kg, cut into pieces',
      '1 turkey (6 kg), jointed',
    ])
      expect(whys(make(turkey(list), null).dish)).not.toContain('whole')
    const method = turkey().replace('Roast at', 'Cut the turkey into joints. Roast at')
    expect(whys(make(method, null).dish)).not.toContain('whole')
    // At the table
    const carved = turkey(undefined, '; then slice the turkey into a warm dish')
    expect(whys(make(carved, null).dish)).toContain('whole')
    expect(whys(make(turkey('a 6 kg turkey'), null).dish)).toContain('what goes in whole is of 6 kg each')
  })

  it('is what is cut on its outside only (common practice, no source)', () => {
    for (const list of [
      '1 turkey, 6 kg, skin cut in diamonds',
      '1 turkey of 6 kg, cut in diamonds',
      '1 turkey (6 kg), neck and feet cut off',
      '1 Truthahn (6 kg), Haut in Rauten geschnitten',
    ])
      expect(whys(make(turkey(list), null).dish)).toContain('whole')
    for (const says of [
      'Score the skin in diamonds.',
      'Cut the turkey in a diamond pattern.',
      'Cut the skin of the turkey in squares.',
    ])
      expect(whys(make(turkey().replace('Roast at', `${says} Roast at`), null).dish)).toContain('whole')
    expect(whys(make(turkey('1 turkey, 6 kg, skin cut off and cut into cubes'), null).dish)).not.toContain('whole')
    expect(whys(make(turkey('1 turkey (6 kg), the meat cut off the bones'), null).dish)).not.toContain('whole')
  })

  it('takes longer by its weight where its receipt gives no time: as the 2/3 power (common practice, no source)', () => {
    const timed = (list: string): number =>
      make(`# Roast turkey\n\nServes 12.\n\n- ${list}\n\nRoast in a moderate oven till done.\n`, null).dish.need.minutes.likely
    expect(timed('1 turkey, 8 kg') / timed('1 turkey, 4 kg')).toBeCloseTo(2 ** (2 / 3), 1)
  })

  it('is of an assumed weight, with its range and source, where the receipt gives none', () => {
    const joint = (words: string, method = 'Bake it in a moderate oven.') =>
      make(`# Baked leg of mutton\n\nTake ${words}, and rub it with salt. ${method}\n`, null)
    const told = joint('a leg of mutton')
    const weight = told.dish.sized.find(({field}) => field === 'weight')!
    expect(weight.value).toMatch(/^[\d.]+ kg to [\d.]+ kg$/)
    expect(weight.why).toMatch(/gives no weight of “a leg of mutton”.*\(memory\); planned for [\d.]+ kg$/)
    const said = told.messages.filter(({rule}) => rule === 'scale-weight')
    expect(said.map(({severity, reason}) => [severity, reason.includes('planned for')])).toEqual([['warning', true]])
    // Of a light leg to a heavy one: as the 2/3 power of the weight (common practice, no source).
    const [low, high] = [...weight.value.matchAll(/[\d.]+/g)].map(([n]) => Number(n))
    const planned = Number(/planned for ([\d.]+)/.exec(weight.why)![1])
    const {minutes} = told.dish.need
    expect(minutes.low).toBeLessThanOrEqual(minutes.likely * (low! / planned) ** (2 / 3) * 1.01)
    expect(minutes.high).toBeGreaterThanOrEqual(minutes.likely * (high! / planned) ** (2 / 3) * 0.99)

    const weighed = joint('a leg of mutton of 4 kg')
    expect(weighed.messages.map(({rule}) => rule)).not.toContain('scale-weight')
    expect(weighed.dish.sized.map(({field}) => field)).not.toContain('weight')
    // Its own time was given for its own joint.
    expect(joint('a leg of mutton', 'Bake it three hours in a moderate oven.').dish.need.minutes).toEqual(
      joint('a leg of mutton of 4.3 kg', 'Bake it three hours in a moderate oven.').dish.need.minutes,
    )
  })

  it('and of no weight at all where no table has one either, which is told', () => {
    const {messages} = make('# Roast meat\n\nTake a haunch of venison, and rub it with salt. Bake it in a moderate oven.\n', null)
    expect(messages.find(({rule}) => rule === 'scale-weight')?.reason).toMatch(/gives no weight of “a haunch of venison”/)
  })
})

/** A standing rib weighs some 1.8 kg, and a joint of three some 5.5 kg (from memory). */
describe('the ribs of a joint of beef', () => {
  const roast = (list: string) => make(`# Roast beef\n\nServes 12.\n\n- ${list}\n- salt\n\nRoast at 180 °C for 2 hours.\n`, null)
  const kilograms = ({dish}: ReturnType<typeof roast>): number =>
    Number(/what goes in whole is of ([\d.]+) kg/.exec(whys(dish))?.[1])

  it.each([
    ['3 ribs of beef', 5.5],
    ['2 ribs of beef', 3.7],
    ['three ribs of beef', 5.5],
    ['3 ribs of beef, about 6 kg', 6],
    ['3 ribs', 5.5],
    // A joint by itself, of which no number is told.
    ['rib of beef', 5.5],
    ['ribs of beef', 5.5],
    ['a fore rib', 5.5],
    ['1 fore rib of beef', 5.5],
    ['a three-rib joint of beef', 5.5],
    ['saddle of mutton', 4.8],
  ])('are one joint, as high as a round one: %s', (list, mass) => {
    const made = roast(list)
    expect(made.dish.count).toBe(1)
    expect(kilograms(made)).toBeCloseTo(mass, 1)
    expect(made.dish.vessel.height).toBeGreaterThan(0.14)
  })

  it('are several where joints are counted', () => {
    expect(roast('2 sirloins of beef').dish.count).toBe(2)
    expect(roast('2 saddles of mutton').dish.count).toBe(2)
  })
})
