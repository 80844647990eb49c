import {describe, expect, it} from 'vitest'
import {askedWords} from '../src/lexicon/asked-words.js'
import {germanYields, statedWords} from '../src/lexicon/yield-words.js'
import {translate} from '../src/receipt/translate.js'
import type {Receipt, Yield} from '../src/receipt/types.js'
import {makeDishes} from '../src/scale/dishes.js'
import {countsPeople} from '../src/scale/makes.js'

/** Whom a yield's noun counts: the rows of the lexicon by which a day's line says it too. Invented receipts. */
const oven = {floor: {shape: 'round' as const, diameter: 1.2}, mouth: {width: 0.5, height: 0.3}, vaultHeight: 0.5}

describe('who is fed', () => {
  it('is told by the lexicon’s rows, English and German, however they are written', () => {
    const rows = askedWords.filter(({use}) => use === 'persons').flatMap(({words}) => words)
    expect(rows.filter((word) => !countsPeople(word))).toEqual([])
    expect(['Persons', 'Gäste', 'Portionen'].filter((word) => !countsPeople(word))).toEqual([])
  })

  it('and by no word for what is made', () => {
    expect([...statedWords.things].filter(countsPeople)).toEqual([])
    expect(new Set([...germanYields.values()].filter(countsPeople))).toEqual(new Set(['persons']))
  })

  it('and counts no vessels, whatever language the yield’s noun is in', () => {
    const text =
      '# Plum cake\n\n- 250 g flour\n- 200 g sugar\n- 200 g butter\n- 4 eggs\n- 300 g plums\n\nBake it an hour. Serves 20.\n'
    const receipt: Receipt = translate(text, {file: 'receipts/x.md'}).receipts[0]!
    const madeOf = (of: string) => {
      const serves: Yield = {...receipt.serves!, of}
      const item = {file: 'receipts/x.md', title: 'Plum cake', amount: 'for 40', wantedBy: null, line: 5, column: 3}
      return makeDishes({day: {people: 40, items: [item], spare: []}, receipts: [{...receipt, serves}], oven}).dishes
    }
    expect(receipt.serves).toMatchObject({low: 20, of: 'persons'})
    for (const of of ['persons', 'Gäste', 'guests'])
      expect(madeOf(of)).toMatchObject([{count: 2, times: '2', feeds: {low: 40, high: 40}}])
    // Twenty cakes are none of them.
    expect(madeOf('cakes')[0]!.times).not.toBe('2')
  })
})

describe('what the method’s own vessels count', () => {
  const made = (text: string, amount: string | null) => {
    const {receipts} = translate(text, {file: 'receipts/x.md'})
    const item = {file: 'receipts/x.md', title: receipts[0]!.title, amount, wantedBy: null, line: 5, column: 3}
    const {dishes, messages} = makeDishes({day: {people: 8, items: [item], spare: []}, receipts, oven})
    return {
      dish: dishes[0]!,
      why: dishes[0]!.inferred.find(({field}) => field === 'makes')?.why,
      rules: messages.map(({rule}) => rule),
    }
  }
  const pie = (method: string, more = '') =>
    `# Orchard pie\n\n${more}\n\n- 320 g flour\n- 220 g butter\n- 90 ml water\n- 1.4 kg apples\n- 150 g sugar\n\n${method}\n`

  it('is what the receipt makes, however much comes into each', () => {
    const {dish, why, rules} = made(
      pie('Line a 9-inch pie plate with half the paste, fill it, cover it and bake it 50 minutes.'),
      '1 pie',
    )
    expect(dish).toMatchObject({count: 1, times: '1'})
    expect(why).toBe('its method says “a 9-inch pie plate”')
    expect(rules).not.toContain('scale-full')
    expect(made(pie('Line two 9-inch pie plates with paste, fill them, cover and bake 50 minutes.'), '1 pie').dish.times).toBe(
      '1/2',
    )
    expect(made(pie('Put the apples in a deep dish, cover them with paste, and bake it an hour.'), '2 pies').dish.times).toBe('2')
  })

  it('and is told by the weight where it stands for one of several', () => {
    const {dish, why} = made(pie('Bake in pie plates 50 minutes.'), '1 pie')
    expect(dish.times).toBe('1/2')
    expect(why).toMatch(/does not say how much it makes/)
  })

  it('beside those it feeds and the pieces it is cut into', () => {
    expect(made(pie('Line a 9-inch pie plate, fill it, and bake 50 minutes.', 'Serves 8.'), 'for 16').dish).toMatchObject({
      count: 2,
      times: '2',
    })
    const cake =
      '# Plain cake\n\nMakes 24 squares.\n\n- 500 g flour\n- 500 g sugar\n- 500 g butter\n- 8 eggs\n\nPour into a 9 inch square tin and bake 40 minutes.\n'
    expect(made(cake, '24 squares').dish.count).toBe(1)
  })

  it('and what is far too much for it is told, or taken for more of them', () => {
    const cake = (flour: number) =>
      `# Rich fruit cake\n\n- ${flour} g flour\n- ${flour} g butter\n- ${flour} g sugar\n- ${4 * flour} g currants\n- 6 eggs\n\nTurn it into a 10 x 2 1/4 inch round tin and bake 4 hours.\n`
    expect(made(cake(550), '1 cake')).toMatchObject({dish: {count: 1, times: '1'}, rules: ['scale-full']})
    const far = made(cake(2000), null)
    expect(far.why).toMatch(
      /^its method says “a 10 x 2 1\/4 inch round tin”, and that is too small for it; its \d+(?:\.\d+)? kg at about/,
    )
  })

  it('a tart comes up to the rim of its tin, and a cake does not', () => {
    const text = (title: string) =>
      `# ${title}\n\n- 250 g flour\n- 125 g butter\n- 250 g sugar\n- 6 eggs\n- 400 ml cream\n\nBake in a 9 inch tart tin 30 minutes.\n`
    expect(made(text('Lemon tart'), null).rules).not.toContain('scale-full')
    expect(made(text('Lemon cake'), null).rules).toContain('scale-full')
  })
})

describe('several vessels to one', () => {
  const batter = '- 220 g butter\n- 220 g sugar\n- 4 eggs\n- 220 g self-raising flour\n'
  const cake = (makes: string, method: string) => `# Garden sandwich cake\n\n${makes}\n\n${batter}\n${method}\n`
  const twoTins = 'Divide between two greased 8-inch sandwich tins and bake at 180 °C for 25 minutes.'
  const planned = (text: string, amount: string | null, people = 8) => {
    const {receipts} = translate(text, {file: 'receipts/x.md'})
    const item = {file: 'receipts/x.md', title: receipts[0]!.title, amount, wantedBy: null, line: 5, column: 3}
    const {dishes, messages} = makeDishes({day: {people, items: [item], spare: []}, receipts, oven})
    return {dish: dishes[0]!, messages}
  }

  // Count of tins, and how many times the receipt.
  it.each([
    ['2 cakes', 4, '2'],
    ['2 sponges', 4, '2'],
    ['4 tins', 4, '2'],
    ['4 layers', 4, '2'],
    ['4 × 8 inch tins', 4, '2'],
    ['2 times', 4, '2'],
    ['half the receipt', 1, '1/2'],
    ['for 30', 8, '4'],
    // The second cake is made whole.
    ['for 12', 4, '2'],
    [null, 2, '1'],
  ])('are what “%s” comes to', (amount, count, times) => {
    expect(planned(cake('Makes 1 cake. Serves 8.', twoTins), amount).dish).toMatchObject({count, times})
  })

  it('and what was asked for is still counted in what is made', () => {
    const {dish} = planned(cake('Makes 1 cake. Serves 8.', twoTins), '2 cakes')
    expect(dish.sized).toContainEqual({field: 'count', value: '4 × round 8 x 1 1/2 in', why: '2 cakes, in 4 vessels'})
    expect(dish.sized).toContainEqual(
      expect.objectContaining({field: 'makes', why: 'its method says “two greased 8-inch sandwich tins”'}),
    )
  })

  it('hold what the receipt puts into them, at its time', () => {
    const one = planned(cake('Makes 1 cake. Serves 8.', twoTins), '1 cake').dish
    const two = planned(cake('Makes 1 cake. Serves 8.', twoTins), '2 cakes').dish
    expect(two.mass).toBeCloseTo(one.mass, 6)
    expect(two.need.minutes.likely).toBe(25)
  })

  it('are as many of another size, and share what the day puts into fewer', () => {
    const text = cake('Makes 1 cake. Serves 8.', twoTins)
    expect(planned(text, '2 10-inch cakes').dish.count).toBe(4)
    expect(planned(text, '2 cakes in 2 round 10 in x 3 in tins').dish).toMatchObject({count: 2, times: '2'})
    expect(planned(text, '2 cakes of 1 kg').dish.count).toBe(4)
  })

  it('make one of what is put together from its tins, where no count is stated', () => {
    const text = `# Victoria sandwich\n\nServes 8.\n\n${batter}\n${twoTins}\n`
    expect(planned(text, '2 cakes').dish).toMatchObject({count: 4, times: '2'})
    expect(planned(text, '4 tins').dish).toMatchObject({count: 4, times: '2'})
  })

  it('and one each where as many are made as it has tins', () => {
    expect(planned(cake('Makes 2 cakes.', twoTins), '2 cakes').dish).toMatchObject({count: 2, times: '1'})
  })

  it('are told of where nothing says how many', () => {
    const {dish, messages} = planned(cake('Makes 1 cake.', 'Divide between sandwich tins and bake 25 minutes.'), '2 cakes')
    expect(dish).toMatchObject({count: 2, times: '2'})
    expect(messages).toMatchObject([{rule: 'scale-full', severity: 'warning'}])
    expect(messages[0]!.reason).toMatch(
      /bakes in “sandwich tins” and does not say how many: planned in one, with 1[23]\d % of what/,
    )
  })

  it('are sheets where loaves that would stand by themselves lie several to one', () => {
    const text =
      '# Stollen\n\nMakes 2 stollen.\n\n- 1 kg flour\n- 400 g butter\n- 200 g sugar\n- 40 g yeast\n- 350 ml milk\n- 500 g raisins\n\nKnead, and leave to rise 1 hour. Shape two stollen, lay them on a baking sheet, leave 30 minutes, and bake at 180 °C for 60 minutes.\n'
    expect(planned(text, '6 stollen').dish).toMatchObject({count: 3, times: '3'})
  })
})

describe('how many lie on a sheet', () => {
  const rolls = (sheet: string, makes = 24, flour = 900): string =>
    `# Dinner rolls\n\nMakes ${makes} rolls.\n\n- ${flour} g flour\n- 500 g milk\n- 10 g yeast\n\nKnead, and let it rise. Shape into balls and set them on ${sheet}; bake at 190 °C for 20 minutes.\n`
  const sheets = (text: string, amount: string) => {
    const {receipts} = translate(text, {file: 'receipts/x.md'})
    const item = {file: 'receipts/x.md', title: 'Rolls', amount, wantedBy: null, line: 5, column: 3}
    const [dish] = makeDishes({day: {people: 8, items: [item], spare: []}, receipts, oven}).dishes
    return [dish!.count, dish!.inferred.findLast(({field}) => field === 'makes')?.why]
  }
  it('is the receipt’s word where it says the sheet’s size and how many it makes', () => {
    const one = 'its method says “one baking sheet 18 x 13 in”'
    expect(sheets(rolls('one baking sheet 18 x 13 in'), '24 rolls')).toEqual([1, one])
    expect(sheets(rolls('one baking sheet 18 x 13 in'), '48 rolls')).toEqual([2, one])
    expect(sheets(rolls('a baking sheet 18 x 13 in'), '24 rolls')[0]).toBe(1)
    expect(sheets(rolls('two baking sheets 12 x 9 in'), '24 rolls')[0]).toBe(2)
    expect(sheets(rolls('einem Blech 46 x 33 cm').replace('on einem', 'auf einem'), '24 rolls')[0]).toBe(1)
  })

  it('and by its weight where no size is said, or a sheet may be one after another', () => {
    expect(sheets(rolls('one baking sheet'), '24 rolls')[0]).toBe(2)
    expect(sheets(rolls('a baking sheet 12 x 9 in'), '24 rolls')[0]).toBeGreaterThan(1)
    expect(sheets(rolls('one baking sheet 18 x 13 in', 120, 4500), '120 rolls')[0]).toBeGreaterThan(2)
  })
})
