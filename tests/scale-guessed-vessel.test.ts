import Fraction from 'fraction.js'
import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'
import {makeDishes} from '../src/scale/dishes.js'

/** Vessels of which the receipt gives no size, and the time in them. Invented receipts; common practice, no source. */
const oven = {floor: {shape: 'round' as const, diameter: 1.4}, mouth: {width: 0.5, height: 0.3}, vaultHeight: 0.43}

function planned(text: string, amount: string, people = 24) {
  const {receipts} = translate(text, {file: 'a.md'})
  const item = {file: 'a.md', title: receipts[0]!.title, amount, wantedBy: null, line: 1, column: 1}
  const {dishes, messages} = makeDishes({day: {people, items: [item], spare: []}, receipts, oven})
  return {dish: dishes[0]!, messages}
}

describe('a vessel whose size only its name tells', () => {
  const carrots = '# Carrot pudding\n\n- 150 g carrots\n- 5 eggs\n- 60 g sugar\n- 60 g butter\n\nBake it in a deep dish.\n'
  it('is no larger than what comes into it fills', () => {
    const {dish} = planned(carrots, '2 dishes')
    expect(dish).toMatchObject({count: 2, times: '2'})
    const {footprint} = dish.vessel
    expect(footprint.shape === 'circle' && footprint.diameter).toBeLessThan(0.19)
    expect(dish.inferred.find(({field}) => field === 'vessel')?.why).toMatch(
      /^the receipt says no size; so large that its .* fill it$/,
    )
    // In a dish of nine and a half inches it would be a tenth of an hour.
    expect(dish.need.minutes.low).toBeGreaterThan(20)
  })
  it('stays as it is where its size is stated, or something that fills it has no weight', () => {
    expect(planned(carrots.replace('a deep dish', 'a 9 in x 3 in round dish'), '2 dishes').dish.vessel.name).toBe(
      'round 9 x 3 in',
    )
    expect(planned(carrots.replace('- 150 g carrots', '- carrots'), '2 dishes').dish.vessel.name).toBe(
      'pie plate 9 1/2 x 2 1/2 in',
    )
  })
  it('does not stretch the time of its kind', () => {
    const pie = (dish: string): string => `# Plum pie\n\n- 2 kg plums\n- 300 g flour\n- 100 g butter\n\nBake it in a ${dish}.\n`
    expect(planned(pie('deep pie dish'), '1 pie').dish.need.minutes.high).toBeLessThanOrEqual(60)
    // One that is so deep by its stated size does.
    expect(planned(pie('pie dish 9 in x 2 1/2 in'), '1 pie').dish.need.minutes.high).toBeGreaterThan(90)
  })
})

describe('what nothing but its seasoning is weighed of', () => {
  it('is taken to fill its vessel, and keeps its time', () => {
    const text =
      '# Apple pie\n\nSlice your apples, and put in a wine-glass of brandy and a lemon. Lay them in a crust and bake.\n'
    const {dish} = planned(text, '4 pies')
    expect(dish).toMatchObject({count: 4, times: '4'})
    expect(dish.need.minutes.low).toBeGreaterThan(30)
    expect(dish.inferred.find(({field}) => field === 'amount')?.why).toMatch(/^nothing that fills it can be weighed/)
  })
  it.each(['1/8 times', '1/20 times'])('no order cuts a time below that of half the depth: %s', (amount) => {
    const text =
      '# Seed cake\n\n- 400 g flour\n- 300 g butter\n- 300 g sugar\n- 6 eggs\n\nBake in a round 9 in x 3 in tin 60 minutes.\n'
    const {dish, messages} = planned(text, amount)
    // Plank's equation (ASHRAE Handbook: Refrigeration; from memory): two fifths of an hour and a little more.
    expect(dish.need.minutes.likely).toBeGreaterThan(24)
    expect(dish.need.minutes.likely).toBeLessThan(30)
    expect(messages).toMatchObject([{rule: 'scale-thin'}])
  })
})

describe('in one piece, or many', () => {
  it('what is heaped into one circle is one, and lies on one sheet', () => {
    const text =
      '# Pavlova\n\nServes 9\n\n- 6 egg whites\n- 350 g sugar\n\nPile it on to a baking tray in a rough 25 cm circle. Bake at 120 °C for 90 minutes.\n'
    expect(planned(text, '1 pavlova').dish).toMatchObject({count: 1, times: '1', feeds: {likely: 9}})
    expect(planned(text, 'for 18').dish).toMatchObject({count: 2, times: '2'})
  })
  it('small raised pies come by the dozen', () => {
    const text = '# Little raised pork pies\n\n- 1 kg flour\n- 250 g lard\n- 1900 g pork\n\nFill them and bake 75 minutes.\n'
    const {dish} = planned(text, '12 pies')
    expect(dish.count).toBe(1)
    const times = new Fraction(dish.times).valueOf()
    expect(times).toBeGreaterThan(0.8)
    expect(times).toBeLessThan(1.2)
  })
  it('one loaf in a bracketed tin is one', () => {
    const text =
      '# Brioche\n\n1 loaf (900g / 2lb tin)\n\n- 375 g flour\n- 7 g yeast\n- 7 g salt\n- 4 eggs\n- 75 ml milk\n- 190 g butter\n\nRise 2 hours. Into the buttered tin, prove an hour. 180 °C for 35 minutes.\n'
    const {dish} = planned(text, '2 loaves')
    expect(dish).toMatchObject({count: 2, times: '2'})
    expect(dish.vessel.name).toBe('loaf 9 x 5 x 3 in')
  })
})

describe('water left to the hand', () => {
  const bread = (water: string): string =>
    `# Brown bread\n\nMakes 2 loaves.\n\n- 3 kg rye meal\n- 200 ml yeast\n${water}\nKnead it stiff. Put it into bread pans, and bake four hours.\n`
  it('weighs too, so that a dough far too large for its tins is told', () => {
    const {dish, messages} = planned(bread('- warm water\n'), '2 loaves')
    expect(messages).toMatchObject([{rule: 'scale-full'}])
    expect(dish.inferred.find(({field}) => field === 'water')?.value).toMatch(/^about 1\.8 kg$/)
  })
  it('is none where it is weighed, or where nothing is said of it', () => {
    for (const water of ['- 1500 ml water\n', ''])
      expect(planned(bread(water), '2 loaves').dish.inferred.filter(({field}) => field === 'water')).toEqual([])
    expect(
      planned(bread('- 1500 ml water\n- water for the pan\n'), '2 loaves').dish.inferred.filter(({field}) => field === 'water'),
    ).toEqual([])
  })
})
