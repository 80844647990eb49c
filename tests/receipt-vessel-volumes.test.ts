import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'
import type {Receipt} from '../src/receipt/types.js'
import {readVessel} from '../src/receipt/vessel.js'
import {brimVolume} from '../src/receipt/vessel-capacity.js'

/** Vessels told by what they hold. Invented texts. Gallons of 231 in³ and 4.54609 l: NIST Handbook 44, appendix C, and the Weights and Measures Act 1985. */
const receiptOf = (text: string, front = ''): Receipt =>
  translate(`${front}# Orchard pudding\n\n- 500 g apples\n- 300 ml cream\n- 4 eggs\n\n${text}\n`, {file: 'a.md'}).receipts[0]!
const vesselOf = (receipt: Receipt) => receipt.inferred.find(({field}) => field === 'vessel')
const litres = (value: string): number => {
  const read = readVessel(value)
  return read.ok ? brimVolume(read.value) * 1000 : Number.NaN
}
const US_QUART = 0.946353
const IMPERIAL_QUART = 1.136523
const us = '---\nyear: 2000\nplace: United States\n---\n\n'
const uk = '---\nyear: 2000\nplace: England\n---\n\n'

describe('a vessel named with what it holds', () => {
  it.each([
    ['Put all in a 3-quart casserole, cover and bake at 350 F for an hour.', us, 'crock', 3 * US_QUART],
    ['Turn into a greased 2-quart casserole dish and bake at 350 F.', us, 'crock', 2 * US_QUART],
    ['Turn into a greased 2-quart casserole dish and bake at 180 C.', uk, 'crock', 2 * IMPERIAL_QUART],
    ['Bake in a buttered two-quart baking dish at 350 F for 50 minutes.', us, 'round', 2 * US_QUART],
    ['Grease a 2-litre baking dish, fill it and bake an hour.', uk, 'round', 2],
    ['Bake in a 1.5 litre soufflé dish at 190 C for 35 minutes.', uk, 'round', 1.5],
    ['Bake in a soufflé dish (1.5 litre) at 190 C for 35 minutes.', uk, 'round', 1.5],
    ['Bake overnight in a crock that holds 4 quarts.', us, 'crock', 4 * US_QUART],
    ['Bake overnight in a half-gallon stone crock.', us, 'crock', 2 * US_QUART],
    ['Put into a 2- to 3-quart dish and bake.', us, 'round', 2.5 * US_QUART],
    ['Divide between six 150 ml ramekins. Bake at 160 C for 25 minutes.', uk, 'round', 0.15],
    ['Pour into 8 (1-cup) ramekins and bake.', us, 'round', US_QUART / 4],
    // An ounce of a small dish is a fluid one.
    ['Pour into six 6-ounce custard cups and bake.', us, 'round', (6 * US_QUART) / 32],
  ])('%s', (text, front, shape, holds) => {
    const receipt = receiptOf(text, front)
    const vessel = vesselOf(receipt)!
    expect(vessel.value.startsWith(shape)).toBe(true)
    // To the quarter inch, or to the millimetre.
    expect(Math.abs(litres(vessel.value) / holds - 1)).toBeLessThan(0.06)
    expect(vessel.why).toMatch(/it holds .* to the brim/)
    expect(vessel.size).toBeUndefined()
    expect(receipt.ingredients.map(({item}) => item)).toEqual(['apple', 'cream', 'egg'])
  })

  it('has the sides of its kind’s in their proportion', () => {
    const {value} = vesselOf(receiptOf('Bake in a 1.5 litre soufflé dish at 190 C.', uk))!
    const read = readVessel(value)
    const usual = readVessel('souffle dish')
    if (!read.ok || !usual.ok) throw new Error('no vessel')
    expect(read.value.height / read.value.across!).toBeCloseTo(usual.value.height / usual.value.across!, 2)
  })

  it('counts as many as the method has of it', () => {
    expect(receiptOf('Divide between six 150 ml ramekins and bake.').vessels).toMatchObject({count: 6})
    expect(receiptOf('Put in a 3-quart casserole and bake.').vessels).toMatchObject({count: 1})
  })

  it('is shown with a range where no place tells which quart', () => {
    expect(vesselOf(receiptOf('Put in a 3-quart casserole and bake.'))!.why).toMatch(/2\.84 litres \(2\.84–3\.4\d\)/)
  })

  it.each([
    // What it is boiled or mixed in, and what is measured, is none.
    ['Boil the apples in a 4-quart saucepan. Bake in a pie plate.', 'pie plate'],
    ['Bake in a 9 x 13 in (3-quart) baking dish.', 'oblong 9 x 13'],
    ['Pour on 1 pint of milk, put it in a pie plate and bake.', 'pie plate'],
  ])('but not in “%s”', (text, begins) => {
    expect(vesselOf(receiptOf(text, us))!.value.startsWith(begins)).toBe(true)
  })

  it('leaves foods measured so in their list', () => {
    const {receipts} = translate(
      '# Stew\n\n- 1 pint pot cheese\n- 1 quart jar tomatoes\n- 2 cups pan drippings\n\nBake an hour.\n',
      {
        file: 'a.md',
      },
    )
    expect(receipts[0]!.ingredients).toHaveLength(3)
  })
})

describe('front matter that states what a vessel holds', () => {
  it.each([
    ['crock 4 quarts', us, 4 * US_QUART],
    ['4-quart bean pot', us, 4 * US_QUART],
    ['crock 4 quarts', uk, 4 * IMPERIAL_QUART],
    ['1.5 litre souffle dish', uk, 1.5],
    ['crock 4 litres', uk, 4],
  ])('vessel: %s', (vessel, front, holds) => {
    const receipt = receiptOf('Bake an hour.', front.replace('---\n\n', `vessel: ${vessel}\n---\n\n`))
    expect(Math.abs(litres(vesselOf(receipt)!.value) / holds - 1)).toBeLessThan(0.06)
  })

  it('is a wine quart before 1826', () => {
    const old = receiptOf('Bake an hour.', '---\nyear: 1800\nplace: England\nvessel: crock 4 quarts\n---\n\n')
    expect(vesselOf(old)!.why).toMatch(/3\.79 litres/)
  })

  it('and what a tin is called by is still no measure of it', () => {
    const named = readVessel('1 lb loaf tin')
    expect(named.ok && named.holds).toBeFalsy()
    expect(readVessel('crock 900 quarts')).toMatchObject({ok: false})
  })
})

describe('small dishes of a dish of no known kind', () => {
  it('are ramekins, whatever its title calls them', () => {
    const {receipts} = translate(
      '# Chocolate pots\n\nMakes 6.\n\n- 200 g dark chocolate\n- 4 eggs\n\nDivide between six ramekins. Bake at 180 C for 14 minutes.\n',
      {file: 'a.md'},
    )
    expect(receipts[0]!.kind).toBeNull()
    expect(vesselOf(receipts[0]!)?.value).toBe('round 9 x 5 cm')
  })
})
