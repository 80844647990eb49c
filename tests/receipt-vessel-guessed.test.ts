import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'

/** What a receipt that gives no size of a vessel is taken to be baked in. Invented texts; common practice, no source. */
const vesselOf = (title: string, text: string) =>
  translate(`# ${title}\n\n- 500 g flour\n- 400 g sugar\n- 400 g butter\n- 8 eggs\n\n${text}\n`, {
    file: 'a.md',
  }).receipts[0]!.inferred.find(({field}) => field === 'vessel')

describe('a vessel of any size by its name', () => {
  it.each([
    ['Seed cake', 'Put it into pans and bake an hour.', 'round 8 in x 3 in'],
    ['Soft gingerbread', 'To be baked in pans.', 'square 9 x 9 x 2 in'],
    ['Queen cakes', 'Put into pans, and bake a quarter of an hour.', 'sheet 14 x 10 in'],
    ['Orchard pudding', 'Pour it into a dish and bake.', 'round 9 in x 3 in'],
    ['Milk bread', 'Raise it with 10 g of yeast, put it into pans, and bake.', 'loaf 9 x 5 x 3 in'],
    // A name that says more is kept to.
    ['Orchard pudding', 'Pour it into a deep dish and bake.', 'pie plate 9 1/2 x 2 1/2 in'],
    ['Orchard pudding', 'Pour it into a stone pan and bake.', 'round 10 x 4 in'],
  ])('%s: “%s” is %s', (title, text, vessel) => {
    expect(vesselOf(title, text)).toMatchObject({value: vessel, size: 'assumed'})
  })

  it('is of a loaf where one loaf is made of what is else baked by the sheetful', () => {
    expect(vesselOf('Saffron buns', 'Makes 1 loaf. Put it into a buttered tin and bake.')?.value).toBe('loaf 9 x 5 x 3 in')
    expect(vesselOf('Saffron buns', 'Makes 12 buns. Put them into a buttered tin and bake.')?.value).toBe('sheet 16 x 12 in')
  })
})

describe('a cake that is baked in far less time than its kind’s tin takes', () => {
  it('lies in a shallow tin, named or not', () => {
    for (const put of ['', 'Put it into a pan. ']) {
      const found = vesselOf('Pound cake', `${put}Bake it 15 minutes.`)
      expect(found?.value).toBe('oblong 11 x 7 x 1 1/2 in')
      expect(found?.why).toMatch(/its 15 min are for a shallower one than usual for pound cake/)
    }
  })
  it('but not where the time is its kind’s, or its size is stated', () => {
    expect(vesselOf('Pound cake', 'Bake it 50 minutes.')?.value).toBe('round 8 in x 3 in')
    expect(vesselOf('Pound cake', 'Put it into an 8 in x 3 in round tin. Bake it 15 minutes.')?.value).toBe('round 8 x 3 in')
  })
})

describe('what is named for something else than the baking', () => {
  it.each([
    [
      'Curd cheesecakes',
      'Put the curd into small jars, and keep it cold. Line some patty-pans with paste, fill and bake.',
      'sheet 14 x 10 in',
    ],
    ['Bagels', 'Bring a pot of water to the boil, boil each a minute, then bake on a tray 20 minutes.', 'sheet 16 x 12 in'],
    ['Bagels', 'Boil each a minute in a big pot of water, then bake 20 minutes.', 'sheet 16 x 12 in'],
    ['Baked beans', 'Put them into a pot, cover and bake.', 'crock 8 x 6 in'],
  ])('%s: %s', (title, text, vessel) => expect(vesselOf(title, text)?.value).toBe(vessel))
})

describe('what is of no known kind', () => {
  it('is baked in what it is put into, and in nothing that it is served on', () => {
    expect(vesselOf('Morning oats', 'Pour it into two ramekins and bake at 180 °C for 20 minutes.')?.value).toBe('round 9 x 5 cm')
    expect(vesselOf('Morning oats', 'Bake at 180 °C for 20 minutes. Serve on hot plates.')).toBeUndefined()
  })
})

describe('small ones', () => {
  it.each([
    ['Savoy biscuits', 'Draw it in strips upon thick cartridge paper, and bake 6 minutes.', 'sponge fingers', 'sheet 16 x 12 in'],
    ['Little raised pork pies', 'Raise the paste, fill and bake an hour.', 'small raised pies', 'sheet 16 x 12 in'],
    ['Small game pies', 'Make it up as other raised pies, and bake.', 'small raised pies', 'sheet 16 x 12 in'],
    ['A little pork pie', 'Raise the paste, fill and bake an hour.', 'meat pie', 'round 9 in x 3 in'],
    ['Raised pork pies', 'Fill and bake two hours.', 'meat pie', 'round 9 in x 3 in'],
  ])('%s: %s', (title, text, kind, vessel) => {
    const {inferred} = translate(`# ${title}\n\n- 1 kg flour\n- 2 kg pork\n\n${text}\n`, {file: 'a.md'}).receipts[0]!
    expect(inferred.find(({field}) => field === 'kind')?.value).toBe(kind)
    expect(inferred.find(({field}) => field === 'vessel')?.value).toBe(vessel)
  })
})

/** Common practice, no source: what is measured, laid over or stood on a sheet is not what a thing is baked in. */
describe('what is no vessel to bake in', () => {
  const vessel = (text: string): string | undefined =>
    translate(text, {file: 'a.md'}).receipts[0]!.inferred.find(({field}) => field === 'vessel')?.value

  it.each([
    [
      'cups in brackets',
      '# Granola\n\n- 300 g rolled oats (≈3 cups)\n- 3 tbsp oil\n\nSpread on a baking tray and bake at 150 °C.',
      /^sheet/,
    ],
    [
      'parchment over a cake',
      '# Christmas cake\n\n- 450 g currants\n- 225 g flour\n- 225 g butter\n- 4 eggs\n\nBake at 140 °C for 4 hours. Cover the top with a double square of parchment.',
      /^round/,
    ],
    [
      'paper cases of buns',
      '# Cinnamon buns\n\n- 500 g flour\n- 20 g fresh yeast\n- 300 g milk\n\nMakes 40 buns. Put in paper cases on a baking sheet. Bake at 250 °C for 8 min.',
      /^sheet/,
    ],
  ])('%s', (_, text, found) => expect(vessel(text)).toMatch(found))

  it('but cups that a custard is baked in are', () => {
    expect(vessel('# Custard\n\n- 1 pint milk\n- 4 eggs\n\nBake it (in 6 cups) at 150 °C for 40 minutes.')).toMatch(/^round 3/)
  })
})
