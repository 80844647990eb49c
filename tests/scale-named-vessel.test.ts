import {describe, expect, it} from 'vitest'
import {askedWords} from '../src/lexicon/asked-words.js'
import {namedVessel} from '../src/scale/named-vessel.js'
import {loavesIn, oneLine} from './loaves-day.js'

/** Vessels that a day names without a size. What is usual of a shape: common practice, no source. */
const made = (text: string, amount: string): string =>
  oneLine(text, amount)
    .dishes.map(({count, vessel}) => `${count} × ${vessel.name}`)
    .join(', ')
const rules = (text: string, amount: string): string[] => oneLine(text, amount).messages.map(({rule}) => rule)

const tin = loavesIn('loaf 9 x 5 x 3 in')
const bricks = loavesIn('free-standing loaf 22 cm')
const ginger = `---
vessel: oblong 12 x 8 x 2 in
---
# Dark gingerbread

Makes 1 cake.

- 450 g flour
- 225 g butter
- 225 g sugar
- 350 g treacle
- 300 ml milk
- 2 eggs

Bake at 160 °C for 50 minutes.
`
const pie = `---
vessel: pie plate 9 in x 1 1/2 in
---
# Plum pie

Makes 1 pie.

- 250 g flour
- 120 g butter
- 600 g plums

Bake at 200 °C for 45 minutes.
`

describe('loaves without a tin', () => {
  it.each([
    '2 free-standing loaves',
    '2 cobs',
    '2 hearth loaves',
    '2 round loaves',
    '2 loaves on the bricks',
    '2 freigeschobene Laibe',
    '2 Laibe auf dem Stein',
  ])('need no size, and are of the receipt’s dough: %s', (amount) => {
    const [dish] = oneLine(tin, amount).dishes
    expect(dish!.vessel.name).toMatch(/^free-standing loaf 2\d cm$/)
    expect(dish).toMatchObject({count: 2, times: '1', need: {minutes: {likely: 40}}})
    expect(dish!.mass).toBeCloseTo(0.8, 1)
    expect(rules(tin, amount)).toEqual([])
  })
  it('are those of a receipt that has none in a tin', () => expect(made(bricks, '4 cobs')).toBe(made(bricks, '4 loaves')))
})

describe('a vessel of another shape than the receipt’s', () => {
  it.each([
    [bricks, '4 tin loaves', '4 × loaf 23 cm x 12.5 cm x 7.5 cm'],
    [bricks, '4 tins', '4 × loaf 23 cm x 12.5 cm x 7.5 cm'],
    [bricks, '4 loaves in tins', '4 × loaf 23 cm x 12.5 cm x 7.5 cm'],
    [bricks, '4 Kastenformen', '4 × loaf 23 cm x 12.5 cm x 7.5 cm'],
    [ginger, '2 square tins', '2 × square 9 in x 2 in'],
    [ginger, '2 square cakes', '2 × square 9 in x 2 in'],
    [ginger, 'in 2 square tins', '2 × square 9 in x 2 in'],
    [ginger, '2 runde Formen', '2 × round'],
    [ginger, '3 crocks', '3 × crock'],
    [ginger, '2 pie plates', '2 × pie plate 9 in x 1 1/2 in'],
    [tin, '6 loaves in 2 square tins', '2 × square 9 in x 2 in'],
  ])('is the usual one of it, and that is told with what to write: %#', (text, amount, expected) => {
    const {messages} = oneLine(text, amount)
    expect(made(text, amount)).toContain(expected)
    const told = messages.find(({rule}) => rule === 'scale-shape')
    expect(told?.severity).toBe('warning')
    const offered = /“([^”]+)”$/.exec(told?.suggest ?? '')?.[1] ?? ''
    // What is offered is the same, and nothing more is asked.
    expect(made(text, offered)).toContain(expected)
    expect(rules(text, offered)).not.toContain('scale-shape')
  })
  it('is taken without a question where the receipt names no vessel', () => {
    const silent = bricks.slice(bricks.indexOf('# '))
    expect(made(silent, '2 loaves')).toMatch(/^2 × free-standing loaf/)
    expect(made(silent, '2 tins')).toMatch(/^2 × loaf/)
    expect(rules(silent, '2 tins')).toEqual([])
  })
  it('sheets of loaves do not say how many, and are asked about', () => {
    expect(made(bricks, '3 sheets')).toBe(made(bricks, '3 loaves'))
    expect(oneLine(bricks, '3 sheets').messages[0]).toMatchObject({
      rule: 'scale-shape',
      suggest: 'write how many of what it makes, such as “3 loaves”',
    })
  })
  it('without a number is refused, and both are asked for', () => {
    const {dishes, messages} = oneLine(bricks, 'in loaf tins')
    expect(dishes).toEqual([])
    expect(messages[0]).toMatchObject({severity: 'error', reason: '“in loaf tins” says neither how many nor their size'})
    expect(made(bricks, 'in 2 loaf tins 9 x 5 x 3 in')).toMatch(/^2 × loaf/)
  })
})

describe('loaves in vessels that take several of them', () => {
  it('are of their own dough, and as many vessels as that fills, which is told with what to write', () => {
    const loaves = oneLine(bricks, '8 loaves').dishes[0]!
    const {dishes, messages} = oneLine(bricks, '8 loaves, in crocks')
    const [dish] = dishes
    expect(dish!.vessel.name).toMatch(/^crock/)
    expect(dish!.times).toBe(loaves.times)
    expect(dish!.count * dish!.mass).toBeCloseTo(loaves.count * loaves.mass, 1)
    expect(dish!.count).toBeLessThan(4)
    const told = messages.find(({rule}) => rule === 'scale-shape')
    const offered = /“([^”]+)”$/.exec(told?.suggest ?? '')?.[1] ?? ''
    expect(offered).toMatch(/^8 loaves in \d crocks? /)
    expect(oneLine(bricks, offered).dishes[0]).toMatchObject({count: dish!.count, times: dish!.times})
    expect(rules(bricks, offered)).toEqual([])
  })
  it('but each is in a vessel of its own that takes about one', () => {
    expect(oneLine(bricks, '4 loaves in tins').dishes[0]!.count).toBe(4)
    expect(oneLine(bricks, '4 crocks').dishes[0]!.count).toBe(4)
  })
})

describe('words that only name the dish, or the receipt’s own vessel', () => {
  it.each([
    [tin, '4 loaves'],
    [tin, '4 tins'],
    [tin, '4 loaf tins'],
    [tin, '4 tin loaves'],
    [tin, '4 oblong tins'],
    [tin, '4 loaves in tins'],
    [tin, '4 loaves in 4 tins'],
    [bricks, '4 loaves'],
    [bricks, '4 round loaves'],
    [bricks, '4 hearth loaves'],
    [ginger, '2 cakes'],
    [ginger, '2 tins'],
    [ginger, '2 pans'],
    [ginger, '2 trays'],
    [ginger, '2 dishes'],
    [ginger, '2 oblong tins'],
    [pie, '3 pies'],
    [pie, '3 round pies'],
    [pie, '3 plates'],
    [pie, '3 tins'],
    [pie, '3 pie dishes'],
  ])('change nothing: %#', (text, amount) => {
    const {dishes, messages} = oneLine(text, amount)
    const count = Number.parseInt(amount, 10)
    expect(messages.filter(({rule}) => rule === 'scale-shape')).toEqual([])
    expect(dishes).toHaveLength(1)
    expect(dishes[0]).toMatchObject({count, vessel: {name: oneLine(text, `${count} times`).dishes[0]!.vessel.name}})
  })
  it('nor do those by which the receipt is called', () => {
    const named = bricks.replace('# Wheaten bread', '# Tin loaves')
    expect(made(named, '4 tin loaves')).toBe(made(named, '4 loaves'))
  })
})

it('every name of a shape is read as it, in the singular and behind a word of size', () => {
  for (const {shape, words} of askedWords)
    for (const word of shape === undefined ? [] : words) expect(namedVessel(`large ${word}`), word).toMatchObject({shape})
})
