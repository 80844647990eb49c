import fc from 'fast-check'
import Fraction from 'fraction.js'
import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'
import type {Receipt} from '../src/receipt/types.js'
import {readVessel} from '../src/receipt/vessel.js'
import {readAsked} from '../src/scale/amount-phrase.js'
import {makeDishes} from '../src/scale/dishes.js'
import type {Dish} from '../src/scale/types.js'

/** Dishes in other vessels than their receipts', as the day names them. Lengths in the arithmetic are centimetres. */
const oven = {floor: {shape: 'round' as const, diameter: 2.2}, mouth: {width: 0.8, height: 0.4}, vaultHeight: 0.6}
const read = (text: string): Receipt[] => [...translate(text, {file: 'receipts/x.md'}).receipts]

interface Made {
  readonly dishes: readonly Dish[]
  readonly messages: readonly {readonly rule: string; readonly reason: string; readonly suggest?: string}[]
}
function make(text: string, amount: string | null, bowl?: number): Made {
  const item = {file: 'receipts/x.md', title: 'It', amount, wantedBy: null, line: 5, column: 3}
  const day = {people: 12, items: [item], spare: [], ...(bowl === undefined ? {} : {bowl})}
  return makeDishes({day, receipts: read(text), oven})
}
const one = (text: string, amount: string | null): Dish => make(text, amount).dishes[0]!

const cake = `---
year: 2020
vessel: round 20 cm x 8 cm
---
# Plain butter cake

Makes one cake.

- 225 g butter
- 225 g sugar
- 4 eggs
- 225 g flour

Bake at 180 °C for 60 minutes.
`
const dough = `
Makes 2 loaves.

- 1 kg flour
- 650 g water
- 20 g salt
- 14 g yeast

Knead. Let it rise 2 hours. Bake in a hot oven.
`

describe('a vessel behind an amount', () => {
  const vessel = (text: string): string => {
    const asked = readAsked(text, 12)
    if (!asked.ok) return asked.reason
    const {vessel: in_, kind} = asked.value
    const {across, length, width, height} = in_?.size ?? {height: 0}
    const cm = [across, length, width, height].flatMap((m) => (m === undefined ? [] : [Math.round(m * 100)]))
    return `${kind} ${asked.value.kind === 'count' ? asked.value.count : ''} ${in_?.size.shape ?? 'none'} ${cm.join(' ')}`
  }
  it.each([
    ['in 2 round tins 26 cm x 7 cm', 'count 2 round 26 7'],
    ['2 round 26 cm tins', 'count 2 round 26 6'],
    ['in a 13 x 9 in pan', 'count 1 oblong 33 23 5'],
    ['in 9 x 13 in pan', 'count 1 oblong 23 33 5'],
    ['2 × loaf 9 x 5 x 3 in', 'count 2 loaf 23 13 8'],
    ['two 8-inch square pans', 'count 2 square 20 20 5'],
    ['two 8″ square tins', 'count 2 square 20 20 5'],
    ['für 40 Personen in einer runden Form 26 cm', 'people  round 26 6'],
    ['2 eckige Formen 20 x 30 cm', 'count 2 oblong 20 30 5'],
    ['3 pie plates 9 in x 1 1/2 in', 'count 3 pie plate 23 4'],
    ['for 40 in round 10 in x 2 in', 'people  round 25 5'],
    ['3 kg in loaf tins 8 x 4 x 3 in', 'weight  loaf 20 10 8'],
    ['2 times in square 8 in', 'times  square 20 20 5'],
    ['fill the floor in round 20 cm', 'floor  round 20 6'],
    ['24 biscuits on a sheet 40 x 30 cm', 'count 24 sheet 40 30 5'],
    ['12 loaves', 'count 12 none 0'],
    ['1 1/2 times', 'times  none 0'],
    ['2 tins', 'count 2 none 0'],
  ])('%s', (text, expected) => expect(vessel(text)).toBe(expected))
})

describe('a tin of another size', () => {
  it('filled as deep takes as much more as its floor is larger, and the same time (area by geometry)', () => {
    fc.assert(
      fc.property(fc.integer({min: 14, max: 34}), (across) => {
        const dish = one(cake, `in round ${across} cm x 8 cm`)
        // Ratios are told to a hundredth.
        expect(new Fraction(dish.times).valueOf()).toBeCloseTo((across / 20) ** 2, 1)
        expect(Math.abs(new Fraction(dish.times).valueOf() - (across / 20) ** 2)).toBeLessThan(0.0051)
        expect(dish.need.minutes.likely).toBe(60)
        const weighed = dish.amounts.reduce((sum, {grams}) => sum + (grams?.likely ?? 0), 0)
        expect(dish.mass * 1000).toBeCloseTo(weighed, 6)
      }),
    )
  })
  it('from round to square: 20 cm across is 314 cm², 20 cm square 400 of which a tin with corners loses two hundredths more', () => {
    // By hand: (0.9 · 400) / (0.92 · π · 100) = 1.2456.
    expect(one(cake, '1 square 20 cm x 20 cm x 8 cm').times).toBe('5/4')
    expect(one(cake, '2 square 20 cm x 20 cm x 8 cm').times).toBe('5/2')
  })
  it('too shallow for that depth is filled as high as it may be, and the time goes by what that is', () => {
    // The receipt's own depth by hand: 876 g at 0.95 kg a litre in 0.92 · π · 10² cm² are 3.19 cm; a tin of 3 cm takes 85 % of 3 = 2.55 cm.
    const dish = one(cake, 'in round 20 cm x 3 cm')
    const depth = one(cake, '1 cake').mass / (0.95e-3 * 0.92 * Math.PI * 100)
    expect(new Fraction(dish.times).valueOf()).toBeCloseTo(2.55 / depth, 2)
    // Between the depth itself and its square: Plank's equation, ASHRAE Handbook: Refrigeration (from memory).
    expect(dish.need.minutes.likely / 60).toBeGreaterThan((2.55 / depth) ** 2)
    expect(dish.need.minutes.likely / 60).toBeLessThan(2.55 / depth)
    expect(dish.sized.map(({field, why}) => `${field}: ${why}`).join('\n')).toMatch(
      /vessel: in place of round 20 cm x 8 cm, as the day asks; filled as high as it may be[\s\S]*time: \d+ % thinner .* by its surface as well as by the square/,
    )
  })
  it('for people: as many as are fed by so much of the receipt', () => {
    // A receipt that feeds 8 from a tin of 20 cm feeds 8 · 1.69 = 13.52 from one of 26: three for 40.
    const {dishes} = make(cake.replace('vessel:', 'serves: 8\nvessel:'), 'for 40 in round 26 cm x 8 cm')
    expect(dishes[0]!.count).toBe(3)
    expect(dishes[0]!.times).toBe(new Fraction(3 * 169, 100).toFraction())
    expect(dishes[0]!.feeds.likely).toBeCloseTo(40.56, 6)
  })
  it('so many times the receipt, or a weight, in as many as that takes', () => {
    expect(one(cake, '4 times in round 28 cm x 8 cm')).toMatchObject({count: 2, times: '4'})
    const kilograms = one(cake, '1 cake').mass
    expect(one(cake, `${(4 * kilograms).toFixed(2)} kg in round 28 cm x 8 cm`).count).toBe(2)
  })
  it('a weight goes into as many as leaves each nearest to what is meant, by ratio', () => {
    const each = one(cake, '1 cake').mass
    // 1.3 in one is nearer than 0.65 in each of two (ln 1.3 = 0.26, ln 1/0.65 = 0.43), 1.5 not (0.41 and 0.29).
    expect(one(cake, `${(1.3 * each).toFixed(3)} kg`).count).toBe(1)
    expect(one(cake, `${(1.5 * each).toFixed(3)} kg`).count).toBe(2)
  })
  it('a pie plate by its volume: V = πh/3 (R² + Rr + r²), sides running in by 0.9 of the depth (see scale-vessel)', () => {
    const pie =
      '---\nvessel: pie plate 9 in x 1 1/2 in\n---\n# Apple pie\n\nMakes one pie.\n\n- 400 g flour\n- 200 g lard\n- 700 g apples\n\nBake in a hot oven 45 minutes.\n'
    const plate = (top: number, deep: number): number => {
      const [R, r] = [top / 2, top / 2 - 0.9 * deep]
      return ((Math.PI * deep) / 3) * (R * R + R * r + r * r)
    }
    expect(new Fraction(one(pie, '1 pie plate 10 in x 2 in').times).valueOf()).toBeCloseTo(plate(10, 2) / plate(9, 1.5), 2)
  })
  it('one that does not go in is told how large it may be', () => {
    const {dishes, messages} = make(cake, 'in round 90 cm x 8 cm')
    expect(dishes).toHaveLength(1)
    expect(messages.find(({rule}) => rule === 'scale-mouth')?.suggest).toContain('less than 80 cm wide and 40 cm high')
  })
})

describe('a tin whose depth nothing tells', () => {
  const fruitCake = (tin: string, fruit = 800): string =>
    `# Orchard fruit cake\n\nMakes 1 cake.\n\n- 250 g butter\n- 250 g sugar\n- 5 eggs\n- 300 g flour\n- ${fruit} g raisins\n\nBake in ${tin} at 140 °C for 3 1/2 hours.\n`
  const told = (text: string, amount: string) => {
    const {dishes, messages} = make(text, amount)
    const why = (field: string): string | undefined => dishes[0]!.inferred.find((each) => each.field === field)?.why
    return {dish: dishes[0]!, vessel: why('vessel'), time: why('time'), rules: messages.map(({rule}) => rule)}
  }

  it('is as deep as its kind is baked in', () => {
    const {dish, rules} = told(fruitCake('a round 8 inch tin'), '2 cakes')
    expect(dish.vessel.name).toBe('round 8 x 3 in')
    expect(rules).toEqual([])
    expect(told(fruitCake('a square 8 inch tin'), '1 cake')).toMatchObject({
      dish: {vessel: {name: 'square 8 x 8 x 3 in'}},
      rules: [],
    })
    // Of what is baked shallow it is no deeper, and what a text states stands.
    const brownies =
      '# Brownies\n\nMakes 16.\n\n- 200 g butter\n- 300 g sugar\n- 150 g flour\n\nBake in an 8 inch square pan 25 minutes.\n'
    expect(told(brownies, '16 brownies').dish.vessel.name).toBe('square 8 x 8 x 2 in')
    expect(told(fruitCake('a round 8 x 2 inch tin'), '1 cake').rules).toEqual(['scale-full'])
  })

  it('or as the mixture wants it, which is told', () => {
    const {dish, vessel, rules} = told(fruitCake('a 7 inch tin'), '1 cake')
    expect(dish.vessel.name).toMatch(/^round 7 in x [34]/)
    expect(vessel).toMatch(/^the receipt says no depth; so deep that its 1\.\d+ kg go in$/)
    expect(rules).toEqual([])
    // No tin is as deep as it is wide.
    expect(told(fruitCake('a 6 inch tin', 1000), '1 cake').rules).toEqual(['scale-full'])
    // A name of tins of one depth tells it.
    expect(told(fruitCake('an 8 inch springform tin'), '1 cake').rules).toEqual(['scale-full'])
  })

  it('and of another size is no shallower than that, so what is filled as deep keeps its time', () => {
    for (const tin of ['a round 8 inch tin', 'a round 8 x 2 inch tin', 'a round 8 x 4 inch tin'])
      for (const amount of ['1 cake 12 in', '1 cake in a round 12 in x 5 in tin', '1 cake in a round 10 in tin']) {
        const {vessel, time} = told(fruitCake(tin), amount)
        expect(vessel).toMatch(/in place of/)
        if (/filled as deep/.test(vessel ?? '')) expect(time, `${tin}: ${amount}`).toBeUndefined()
      }
    expect(told(fruitCake('a round 8 x 4 inch tin'), '1 cake 12 in').vessel).toMatch(/filled as deep/)
  })
})

describe('loaves', () => {
  const tin = `---\nyear: 2020\nvessel: loaf 9 x 5 x 3 in\n---\n# White bread\n${dough}`
  const stone = `---\nyear: 2020\nvessel: free-standing loaf 24 cm\n---\n# Wholemeal bread\n${dough.replace('1 kg flour', '1 kg wholemeal flour')}`
  it('of about the same weight take about the same time, in a tin or without, where the receipt gives none (common practice)', () => {
    // The kind’s loaf of white bread stands in no tin, that of wholemeal in one; 0.842 kg against 0.95 is within the tenth of either.
    expect(one(tin, '2 loaves').need.minutes).toEqual({low: 35, likely: 45, high: 60})
    expect(one(stone, '2 loaves').need.minutes).toEqual({low: 40, likely: 50, high: 70})
  })
  it('without a tin of another width are the cube of it in dough, and the square of it in time', () => {
    const timed = stone.replace('Bake in a hot oven.', 'Bake in a hot oven 40 minutes.')
    fc.assert(
      fc.property(fc.integer({min: 18, max: 34}), (across) => {
        const dish = one(timed, `2 free-standing loaves ${across} cm`)
        const wider = across / 24
        expect(Math.abs(new Fraction(dish.times).valueOf() - wider ** 3)).toBeLessThan(0.0051)
        if (Math.abs(wider - 1) > 0.06) expect(dish.need.minutes.likely / 40 / wider ** 2).toBeCloseTo(1, 1)
        else expect(Math.abs(dish.need.minutes.likely / 40 - 1)).toBeLessThan(0.13)
      }),
    )
  })
  it('turned from the bricks into tins keep the time of their weight', () => {
    const timed = stone.replace('Bake in a hot oven.', 'Bake in a hot oven 40 minutes.')
    const dish = one(timed, '2 loaf tins 9 x 5 x 3 in')
    const wanted = 40 * (dish.mass / one(timed, '2 loaves').mass) ** (2 / 3)
    expect(dish.need.minutes.likely).toBeCloseTo(Math.abs(Math.cbrt(dish.mass / 0.842) - 1) > 0.05 ? wanted : 40, 0)
  })
})

describe('what a receipt leaves to the hand or to the bowl', () => {
  const ginger = `---
year: 1842
place: United States
---
# Molasses Gingerbread

One pint of molasses, one tea-cup of butter, one tea-cup of sour milk, two teaspoonfuls of saleratus, and flour enough to make it as stiff as pound cake. Bake in square pans in a moderate oven half an hour. Makes two pans.
`
  it('flour enough weighs too: two pans of gingerbread are not half of them empty', () => {
    const dish = one(ginger, '2 pans')
    const weighed = dish.amounts.reduce((sum, {grams}) => sum + (grams?.likely ?? 0), 0) / 1000
    expect(2 * dish.mass).toBeGreaterThan(1.4 * weighed)
    expect(dish.mass).toBeGreaterThan(0.7)
    expect(dish.mass).toBeLessThan(1.4)
    expect(dish.inferred.find(({field}) => field === 'flour')?.why).toMatch(/no amount of it/)
    expect(dish.amounts.find(({item}) => item === 'flour')?.grams).toBeNull()
  })
  it('flour for the tin is none', () => {
    expect(one(`${cake}\n`, '1 cake').inferred.some(({field}) => field === 'flour')).toBe(false)
    const custard =
      '# Baked custard\n\n- 1 litre milk\n- 8 eggs\n- 200 g sugar\n- a little flour\n\nBake in a slow oven 45 minutes.\n'
    expect(one(custard, '1 dish').inferred.some(({field}) => field === 'flour')).toBe(false)
  })
  it('beans come into no mixing bowl', () => {
    const beans = '# Baked beans\n\n- 2 kg beans\n- 900 g salt pork\n\nBake in a slack oven all night.\n'
    expect(make(beans, '4 crocks', 3).dishes).toHaveLength(1)
  })
  it('a sour, a sponge and a soaker are in the bowl with their dough', () => {
    const rye = (part: string): string =>
      `# Rye bread\n\nMakes 4 loaves.\n\n## ${part}\n\n- 800 g rye flour\n- 800 g water\n\n## Dough\n\n- 1200 g flour\n- 700 g water\n- 40 g salt\n\nBake 50 minutes in a hot oven.\n`
    // 3.54 kg in all: a bowl for 3 kg mixes three of the four loaves at once, though no part comes to more than 2 kg.
    for (const part of ['Sour', 'Levain', 'Sponge', 'Soaker', 'Sauerteig'])
      expect(make(rye(part), '4 loaves', 3).dishes.length, part).toBe(2)
    expect(make(rye('Filling'), '4 loaves', 3).dishes.length).toBe(1)
  })
  it('six tartlet tins stand on one sheet', () => {
    const tarts =
      '# Curd tarts\n\nLine six tartlet tins with paste. Mix half a pound of curds, 2 oz. butter, 3 eggs and 3 oz. sugar; fill and bake in a moderate oven 20 minutes.\n'
    const {dishes} = make(tarts, '6 tarts')
    expect(dishes.map(({count}) => count)).toEqual([1])
  })
  it('a loaf without a tin is called by its own size, and goes from that to another', () => {
    const miche =
      '# Miche\n\nMakes 1 loaf.\n\n- 1 kg flour\n- 700 g water\n- 20 g salt\n- 200 g sourdough\n\nShape one large loaf. Bake at 230 °C for 1 hour.\n'
    const own = one(miche, '2 loaves')
    // By hand: the kind's of 0.95 kg is 24 cm; 24 · (1.92 / 0.95)^(1/3).
    expect(own.vessel).toMatchObject({name: 'free-standing loaf 30 cm', footprint: {diameter: expect.closeTo(0.303, 3)}})
    expect(own.sized).toContainEqual({
      field: 'size',
      value: 'free-standing loaf 30 cm',
      why: 'as large as 1.92 kg of dough make it; free-standing loaf 24 cm is of 950 g',
    })
    const same = one(miche, '4 free-standing loaf 30 cm')
    expect(Number(new Fraction(same.times).valueOf())).toBeCloseTo(4 * (30 / 30.34) ** 3, 1)
    expect(same.need).toEqual(own.need)
    const great = one(miche, '2 free-standing loaf 40 cm')
    expect(new Fraction(great.times).valueOf()).toBeCloseTo(2 * (40 / 30.34) ** 3, 1)
    const density = ({mass, vessel}: Dish): number => (1000 * mass) / vessel.millilitres
    expect(density(great) / density(own)).toBeCloseTo(1, 2)
    // By weight it is as large as so much makes it.
    expect(one(miche, '9 kg')).toMatchObject({count: 5, vessel: {name: 'free-standing loaf 30 cm'}})
    expect(one(miche, '1 kg').vessel.name).toBe('free-standing loaf 24 cm')
    // What the front matter states it is called by, in its own words.
    expect(one(`---\nvessel: free-standing loaf 12 in\n---\n${miche}`, '2 loaves').vessel.name).toBe('free-standing loaf 12 in')
  })
  describe('so many of them as the day names', () => {
    const rolls =
      '---\nvessel: sheet 18 x 13 in\n---\n# Rolls\n\nMakes 12 rolls.\n\n- 500 g flour\n- 300 ml milk\n- 9 g salt\n- 7 g yeast\n\nBake at 190 °C for 18 minutes.\n'
    const bare = ({dishes, messages}: Made): [number, number, string[]] => [
      dishes.reduce((sum, dish) => sum + dish.count, 0),
      dishes.reduce((sum, dish) => sum + new Fraction(dish.times).valueOf(), 0),
      messages.map(({rule}) => rule),
    ]
    it.each([
      [rolls, '24 rolls in 2 sheets 16 in x 12 in', 2, 2, []],
      [rolls, '24 rolls in 1 sheet 16 in x 12 in', 1, 2, ['scale-full']],
      [cake, '2 cakes in 1 round 26 cm x 8 cm', 1, 2, []],
      [cake, '4 times in 1 round 20 cm x 8 cm', 1, 4, ['scale-full']],
      [cake, '900 g in 1 square 20 cm x 8 cm', 1, 1, []],
      [cake, 'half the receipt in 3 round 20 cm x 8 cm', 3, 0.5, ['scale-thin']],
      [cake, 'for 12 in one round 26 cm x 8 cm', 1, 1.31, []],
      [cake, 'for 12 in a round 26 cm x 8 cm', 1, 1.7, []],
    ])('%#: %s', (receipt, amount, count, times, rules) => {
      const [made, oft, said] = bare(make(receipt, amount))
      expect(made).toBe(count)
      expect(oft / times).toBeGreaterThan(0.9)
      expect(oft / times).toBeLessThan(1.1)
      expect(said).toEqual(rules)
    })
    it('what cannot hold it is told at the number, with how many would', () => {
      const place = (column: number) => ({line: 5, column})
      const amountAt = [10, 12, 18, 21, 23, 29, 32, 35, 37].map(place)
      const item = {
        file: 'receipts/x.md',
        title: 'It',
        amount: '4 times in 1 round 20 cm x 8 cm',
        wantedBy: null,
        line: 5,
        column: 3,
      }
      const day = {people: 12, items: [{...item, amountAt}], spare: []}
      const {messages} = makeDishes({day, receipts: read(cake), oven})
      expect(messages).toMatchObject([
        {rule: 'scale-full', column: 21, suggest: expect.stringContaining('write “in 2 round 20 cm x 8 cm” or more')},
      ])
      expect(make(cake, 'fill the floor in 3 round 20 cm x 8 cm').messages).toMatchObject([{rule: 'scale-amount'}])
    })
  })
  it('crust and filling are not mixed together: the heavier of them is what the bowl takes', () => {
    const pie =
      '---\nvessel: pie plate 9 in x 1 1/2 in\n---\n# Apple pie\n\nMakes 2 pies.\n\n## For the pastry\n\n- 600 g flour\n- 300 g butter\n- 100 g water\n\n## For the filling\n\n- 1 kg apples\n- 200 g sugar\n\nBake in a hot oven 45 minutes.\n'
    // One pie is 1.1 kg, of which 0.6 kg are filling: a bowl of 2 kg takes that of three.
    expect(make(pie, '6 pies', 2).dishes.map(({count}) => count)).toEqual([3, 3])
  })
  it('two dozen small rolls that the receipt shapes on a sheet stand on one', () => {
    const rolls = (shape: string): string =>
      `---\nvessel: sheet 40 cm x 30 cm\n---\n# Bridge rolls\n\nMakes 24 rolls.\n\n- 500 g flour\n- 300 ml milk\n- 9 g salt\n- 7 g yeast\n\nLet rise an hour. ${shape} Bake at 220 °C for 12 minutes.\n`
    for (const shape of ['Shape into 24 rolls on a baking sheet.', 'Form 24 rolls.', 'Shape into rolls.'])
      expect([shape, make(rolls(shape), '24 rolls').dishes.map(({count, times}) => [count, times])]).toEqual([shape, [[1, '1']]])
  })

  it('thirty pasties of a receipt that does not say how many it makes are not thirty sheets', () => {
    const pasties = (makes: string): string =>
      `---\nvessel: sheet 40 cm x 30 cm\n---\n# Cheese pasties\n\n- 450 g flour\n- 170 g lard\n- 225 g cheese\n- 450 g potatoes\n\nBake in a hot oven half an hour. ${makes}\n`
    const {dishes, messages} = make(pasties(''), '30 pasties')
    expect(dishes).toEqual([])
    expect(messages).toMatchObject([{rule: 'scale-amount', reason: '“30 pasties”: the receipt does not say how many it makes'}])
    expect(make(pasties(''), '3 sheets').dishes[0]!.count).toBe(3)
    const told = make(pasties('Makes 10 pasties.'), '30 pasties').dishes[0]!
    expect([told.count, told.times, told.feeds.likely]).toEqual([3, '3', 30])
    // 130 g each: one is one person’s (common practice, no source).
    expect(make(pasties('Makes 10 pasties.'), 'for 30').dishes[0]!.times).toBe('3')
  })

  it('are no size where what stands as a unit is none, and what a tin is called may stand there', () => {
    expect(readAsked('in 2 round tins 26 zonks x 7 cm', 12)).toMatchObject({ok: false})
    expect(readVessel('round 26 cm x 7 zonks')).toMatchObject({ok: false, reason: '“zonks” is no unit of length'})
    expect(readVessel('tin 26 zonk')).toMatchObject({ok: false, reason: '“zonk” is no unit of length'})
    expect(readVessel('round 26 zonks x 7 cm')).toMatchObject({ok: false, reason: '“zonks” is no unit of length'})
    expect(readVessel('round 26 cm x 7 cm')).toMatchObject({ok: true})
    expect(readVessel('9-inch x 2-inch round tin')).toMatchObject({ok: true})
    expect(readVessel('9 wide x 5 long x 3 in oblong')).toMatchObject({ok: true})
    expect(readVessel('26 tin x 7 cm')).toMatchObject({ok: true})
  })
})

describe('a vessel that a day names by what it holds', () => {
  const beans =
    '---\nyear: 2000\nplace: United States\n---\n# Baked Beans\n\n- 2 lb navy beans\n- 1/2 lb salt pork\n\nPut in a bean pot and bake at 300 F for 6 hours.\n'
  it.each([
    ['in a 4-quart crock', 1],
    ['2 4-quart crocks', 2],
    ['2 crocks of 4 quarts', 2],
    ['in 2 crocks of 4 quarts', 2],
  ])('%s', (amount, count) => {
    const {dishes, messages} = make(beans, amount)
    // 4 US quarts are 3.785 l (NIST Handbook 44).
    expect(dishes[0]).toMatchObject({count, vessel: {name: 'crock 7 x 7 in'}})
    expect(dishes[0]!.sized.find(({field}) => field === 'size')?.why).toMatch(/holds 3\.79 litres \(3\.79–4\.55\) to the brim/)
    expect(messages.filter(({rule}) => rule === 'scale-amount')).toEqual([])
  })
  it('and a number of cups is none', () => {
    expect(readAsked('8 cups', 4)).toMatchObject({ok: true, value: {kind: 'count', count: 8}})
  })
})

describe('a small dish of its own', () => {
  it.each([
    ['custard cups', 8],
    ['ramekins', 8],
  ])('%s feed one each', (noun, count) => {
    const custards = `# Cup Custards\n\n- 1 quart milk\n- 6 eggs\n- 1/2 cup sugar\n\nPour into ${count} ${noun}. Bake at 325 F for 35 minutes.\n`
    // Common practice, no source.
    expect(one(custards, 'for 12')).toMatchObject({count: 12, feeds: {likely: 12}})
  })
})

describe('a tin of its own depth', () => {
  it('of a Swiss roll is no round one, though it is less than 2 cm deep', () => {
    const roll =
      '# Swiss roll\n\n- 3 eggs\n- 75 g sugar\n- 75 g flour\n\nGrease a Swiss roll tin 33 x 23 cm. Pour in and bake at 200 C for 10 minutes.\n'
    expect(one(roll, 'once').vessel.name).toBe('oblong 33 x 23 x 1.9 cm')
  })
  it('with holes is a tin of small ones, whatever it is for', () => {
    const batter =
      '# Yorkshire pudding\n\n- 140 g flour\n- 4 eggs\n- 200 ml milk\n\nBake in a 12-hole tin at 220 C for 25 minutes.\n'
    expect(one(batter, 'once').vessel.name).toBe('sheet 14 x 11 in')
  })
})
