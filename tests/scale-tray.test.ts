import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'
import {makeDishes} from '../src/scale/dishes.js'
import type {Dish} from '../src/scale/types.js'

/** What is poured on a sheet, and what lies on it in pieces. Areas by arithmetic; how full and how high a rim is: common practice, no source. */
const oven = {floor: {shape: 'round' as const, diameter: 2.2}, mouth: {width: 0.8, height: 0.4}, vaultHeight: 0.6}

function one(text: string, amount: string | null): Dish {
  const receipts = [...translate(text, {file: 'receipts/x.md'}).receipts]
  const item = {file: 'receipts/x.md', title: '', amount, wantedBy: null, line: 5, column: 3}
  return makeDishes({day: {people: 12, items: [item], spare: []}, receipts, oven}).dishes[0]!
}
const times = (text: string): number => {
  const [over = '', under = '1'] = text.split('/')
  return Number(over) / Number(under)
}

const batter = `
- 250 g flour
- 400 g sugar
- 225 g butter
- 240 ml water
- 2 eggs
- 120 ml buttermilk
- 1 tsp baking soda
`
const sheetCake = (where: string): string =>
  `# Orchard Sheet Cake\n\nServes 24.\n${batter}\nBake in ${where} at 350 F for 20 minutes.\n`
const inSheet = sheetCake('an 18x13x1 inch sheet pan')
const loafCake = `# Pound Cake

Makes one 9 x 5 in loaf.

- 225 g butter
- 225 g sugar
- 4 eggs
- 225 g flour

Bake in a 9x5 inch loaf tin at 325 F for 65 minutes.
`

describe('a batter poured on a sheet', () => {
  it('goes into another tin by its area and its depth, in the same time', () => {
    const dish = one(inSheet, 'in oblong 9 in x 13 in x 2 in')
    // 9 × 13 of 18 × 13 square inches.
    expect(times(dish.times)).toBeCloseTo(0.5, 2)
    expect(dish.need.minutes.likely).toBeCloseTo(20, 5)
    const square = one(inSheet, 'in 2 square 9 in x 2 in')
    expect(times(square.times)).toBeCloseTo((2 * 81) / (18 * 13), 1)
  })

  it('is the same whether the receipt calls it a sheet or a tin', () => {
    const stated = one(`---\nvessel: oblong 18 in x 13 in x 1 in\n---\n${sheetCake('a pan')}`, 'in oblong 9 in x 13 in x 2 in')
    expect(one(inSheet, 'in oblong 9 in x 13 in x 2 in').times).toBe(stated.times)
  })

  it('never goes over the rim: a weight gets more sheets', () => {
    const dish = one(inSheet, '5 kg')
    // 18 × 13 × 1 in are 3.83 litres to the brim, and a batter of less than a kilogram a litre rises in it.
    expect(dish.count).toBeGreaterThanOrEqual(2)
    expect(dish.mass).toBeLessThan(3.83 * 0.95)
  })

  it('is no deeper than the rim where a deep tin’s cake is asked for on one, and then bakes shorter', () => {
    const dish = one(loafCake, 'in a sheet 18 x 13 in')
    expect(dish.mass).toBeLessThan(3.83 * 0.95)
    expect(times(dish.times)).toBeLessThan(3.5)
    expect(dish.need.minutes.likely).toBeLessThan(65 * 0.75)
    expect(dish.sized.some(({field}) => field === 'time')).toBe(true)
  })

  it('is so on a sheet of any size, and on one whose size the day does not say', () => {
    for (const amount of ['in 1 sheet 16 x 12 in', 'in a sheet 33 x 24 cm', '2 cakes in 2 sheets']) {
      const dish = one(loafCake, amount)
      expect(dish.mass, amount).toBeLessThan(16 * 12 * 0.01639 * 0.95)
    }
  })

  it('bakes shorter on sheets that it fills less, which is told', () => {
    const dish = one(inSheet, '1 1/2 times')
    expect(dish.count).toBe(2)
    expect(dish.need.minutes.likely).toBeLessThan(19)
    expect(dish.sized.find(({field}) => field === 'time')?.why).toMatch(/25 % thinner/)
  })
})

describe('a dough that covers its sheet', () => {
  const kuchen = `# Apfelkuchen vom Blech

Ergibt 1 Blech (20 Stück).

- 500 g Mehl
- 250 ml Milch
- 80 g Zucker
- 80 g Butter
- 1 Ei
- 1 Würfel Hefe
- 1,5 kg Äpfel

Aus den Zutaten einen Hefeteig bereiten, 1 Stunde gehen lassen, auf einem gefetteten Blech (40 x 30 cm) ausrollen, mit den Äpfeln belegen und bei 200 °C 35 Minuten backen.
`
  it('bakes shorter where it lies thinner, as a raised dough in a flat pan', () => {
    const half = one(kuchen, 'half the receipt')
    expect(half.need.minutes.likely).toBeCloseTo(35 * 0.5 ** (2 / 3), 0)
    expect(half.sized.some(({field}) => field === 'time')).toBe(true)
    expect(one(kuchen, '2 times').need.minutes.likely).toBe(35)
  })

  it('is on the one sheet that its method names, though its kind lies thinner', () => {
    const focaccia = `# Focaccia

- 800 g flour
- 600 ml water
- 16 g salt
- 7 g dry yeast
- 90 ml olive oil

Leave the dough to rise 2 hours. Stretch it on an oiled baking sheet 40 x 30 cm, leave 45 minutes, and bake at 230 °C for 22 minutes.
`
    expect(one(focaccia, '1 times')).toMatchObject({count: 1, times: '1'})
    expect(one(focaccia, '1 times').need.minutes.likely).toBe(22)
    expect(one(focaccia, '2 sheets')).toMatchObject({count: 2, times: '2'})
  })

  it('goes by its area into a flat tin', () => {
    expect(times(one(kuchen, 'in oblong 20 cm x 30 cm x 5 cm').times)).toBeCloseTo(0.5, 2)
  })
})

describe('what lies on a sheet in pieces', () => {
  const biscuits = `# Butter Biscuits

Makes 30 biscuits.

- 250 g flour
- 125 g butter
- 100 g sugar
- 1 egg

Roll out, cut and bake on a baking sheet 33 x 24 cm at 180 °C for 12 minutes.
`
  it('keeps its time however many there are', () => {
    for (const amount of ['30 biscuits', '45 biscuits', '100 biscuits', 'half the receipt'])
      expect(one(biscuits, amount).need.minutes.likely, amount).toBe(12)
  })

  it('lies no thicker on a larger sheet', () => {
    const dish = one(biscuits, 'in 1 sheet 66 x 24 cm')
    expect(times(dish.times)).toBeCloseTo(2 * times(one(biscuits, 'in 1 sheet 33 x 24 cm').times), 1)
  })
})
