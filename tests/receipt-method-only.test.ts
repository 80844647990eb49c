import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'
import {makeDishes} from '../src/scale/dishes.js'

/**
 * What only the method names. Receipts invented. Annex II of Regulation (EU) 1169/2011 lists what must be told of: wheat, eggs, fish, milk, nuts.
 */
const read = (title: string, list: string, method: string) =>
  translate(`# ${title}\n\n${list}\n\n${method}\n`, {file: 'receipts/a.md', year: 1861, place: 'England'}).receipts[0]!
const filling = '- 500 g chicken breast\n- 300 ml water'
const fruit = '- 500 g apples\n- 50 g sugar'

describe('what only the method has put in', () => {
  it.each([
    [
      'Chicken pie',
      filling,
      'Cover with ready-rolled puff pastry, glaze with beaten egg and bake 30 minutes at 200 °C.',
      'egg,milk,wheat',
    ],
    ['Gratin', '- 1 kg potatoes', 'Scatter with grated Parmesan and flaked almonds and bake an hour at 180 °C.', 'milk,nuts'],
    ['Apple tart', fruit, 'Line a 23 cm tin with shortcrust pastry, fill it and bake 40 minutes at 190 °C.', 'wheat'],
    ['Apple dish', fruit, 'Put it into a pie-dish lined with puff-paste, and bake 30 minutes.', 'milk,wheat'],
    ['Supper', '- 1 kg potatoes', 'Lay in the salmon and bake 40 minutes at 180 °C.', 'fish'],
    [
      'Apfelspeise',
      fruit,
      'Mit Blätterteig bedecken, mit verquirltem Ei bestreichen, 30 Minuten bei 200 °C backen und warm servieren.',
      'egg,milk,wheat',
    ],
    [
      'Kartoffeln',
      '- 1 kg Kartoffeln',
      'Mit geriebenem Käse und Mandelblättchen bestreuen und 1 Stunde bei 180 °C backen.',
      'milk,nuts',
    ],
  ])('is an entry, and its allergens are told: %s: %s, %s', (title, list, method, allergens) => {
    const receipt = read(title, list, method)
    expect(receipt.allergens).toEqual(allergens.split(','))
    expect(receipt.ingredients.slice(2).every(({amount}) => amount === null)).toBe(true)
  })

  // Crusts: common practice, no source.
  it.each([
    'Put into a pie-dish, cover with a crust and bake two hours.',
    'Lay a good crust over it, and bake an hour.',
    'Put a crust over all, and bake an hour.',
    'Put on the top crust and bake an hour.',
    'Line a dish with a thin paste, fill it, and bake an hour.',
    'Mit einem Teigdeckel bedecken und eine Stunde backen.',
  ])('is wheat, where it is a crust: %s', (method) => expect(read('Apple dish', fruit, method).allergens).toEqual(['wheat']))

  it.each([
    'Bake 40 minutes at 190 °C and serve with cream.',
    'Bake 40 minutes at 190 °C. Melted butter should be served with it.',
    'Bake 40 minutes at 190 °C, without butter.',
    'Lay a butter paper over it and bake 40 minutes at 190 °C.',
    'Beat with an egg whisk and bake 40 minutes at 190 °C.',
    'Cut into pieces the size of an egg and bake 40 minutes at 190 °C.',
    'Let it cool till it is milk-warm, and bake 40 minutes at 190 °C.',
    'Fill egg-cups with it and bake 40 minutes at 190 °C.',
    'Pound it to a smooth paste and bake 40 minutes at 190 °C.',
    'Bake 40 minutes at 190 °C until a crust forms.',
    'Cover it with a crust of sugar and bake 40 minutes at 190 °C.',
    'Beat it to a paste. Lay it in a dish and bake 40 minutes at 190 °C.',
    'Cover with paper to keep the crust from burning and bake 40 minutes at 190 °C.',
    'Strew with flowers and bake 40 minutes at 190 °C.',
    '40 Minuten bei 190 °C backen, mit Sahne servieren.',
    'Ohne Butter 40 Minuten bei 190 °C backen.',
    'The flavour may be varied with almonds. Bake 40 minutes at 190 °C.',
  ])('but not what it is served with, likened to or worked with: %s', (method) => {
    const receipt = read('Apples in the oven', fruit, method)
    expect(receipt.allergens).toEqual([])
    expect(receipt.ingredients).toHaveLength(2)
  })

  it('nor what the list has under another name', () => {
    const {ingredients} = read(
      'Peel cake',
      '- 200 g flour\n- 50 g candied lemon-peel',
      'Add the candied peel and bake 40 minutes at 190 °C.',
    )
    expect(ingredients).toHaveLength(2)
  })
})

describe('eggs that are named only as a weight', () => {
  const list = 'INGREDIENTS.--The weight of 8 eggs in pounded loaf sugar, the weight of 5 in flour.'
  const method =
    '_Mode_.--Take the weight of 8 in sugar, and of 5 in flour. Put the eggs into a basin, beat them with the sugar, dredge in the flour, and bake in a quick oven for 1-1/2 hour.'

  it('go in, so many as the greatest weight names', () => {
    const receipt = read('Sponge-cake', list, method)
    const eggs = receipt.ingredients.find(({item}) => item === 'egg')!
    // Of 1861 an egg out of the shell weighs 40 g here, as ten to a pound in it (Child, 1837).
    expect(eggs).toMatchObject({amount: null, reckoned: '8', grams: {likely: 320}})
    expect(eggs.notes).toContain('so many as the greatest of the weights that are told by eggs')
    expect(receipt.allergens).toEqual(['egg', 'wheat'])
    expect(receipt.ingredients.filter(({item}) => item.endsWith('sugar'))).toHaveLength(1)
  })

  it('and are scaled and weighed with the rest', () => {
    const receipt = read('Sponge-cake', list, method)
    const item = {file: 'receipts/a.md', title: 'Sponge-cake', amount: '2 times', wantedBy: null, line: 1, column: 1}
    const oven = {floor: {shape: 'round' as const, diameter: 1.07}, mouth: {width: 0.46, height: 0.28}, vaultHeight: 0.41}
    const {amounts} = makeDishes({day: {people: 6, items: [item], spare: []}, receipts: [receipt], oven}).dishes[0]!
    const eggs = amounts.find(({item}) => item === 'egg')!
    expect(eggs.grams?.likely).toBeCloseTo(640, 0)
    expect(eggs.kitchen).toMatch(/^\d+/)
  })

  it('as whole eggs where only their yolks are handled, and as their parts where both are', () => {
    const of = (text: string) =>
      read(
        'Sponge cake',
        'Take the weight of six eggs in sugar, the weight of four in flour.',
        `${text} Bake in a quick oven for an hour.`,
      )
        .ingredients.filter(({item}) => item.startsWith('egg'))
        .map(({item, reckoned}) => `${reckoned} ${item}`)
    expect(of('Beat the yolks well, and mix all.')).toEqual(['6 egg'])
    expect(of('Beat the yolks and the whites apart.').sort()).toEqual(['6 egg white', '6 egg yolk'])
    expect(of('Mix all.')).toEqual([])
  })
})
