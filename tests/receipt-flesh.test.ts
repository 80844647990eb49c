import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'
import {makeDishes} from '../src/scale/dishes.js'

/**
 * What raw meat a receipt has, however it names it. Receipts invented; FDA Food Code 2022, 3-401.11(A)(3): poultry, and what is stuffed with meat,
 * 165 °F (74 °C).
 */
const oven = {floor: {shape: 'round' as const, diameter: 1.07}, mouth: {width: 0.46, height: 0.28}, vaultHeight: 0.41}
const read = (title: string, list: string, method = 'Bake 1 hour at 180 °C.') => {
  const {receipts, messages} = translate(`# ${title}\n\n${list}\n\n${method}\n`, {file: 'receipts/a.md'})
  const item = {file: 'receipts/a.md', title, amount: '1 times', wantedBy: null, line: 1, column: 1}
  const {sign, raw} = makeDishes({day: {people: 6, items: [item], spare: []}, receipts, oven}).dishes[0]!
  return {receipt: receipts[0]!, messages, sign, raw: raw === true}
}
const isHot = (sign: string): boolean => sign.includes('74 °C at the centre')

describe('parts of birds', () => {
  it.each([
    ['4 Hühnerschenkel', 'chicken leg'],
    ['6 Hähnchenunterschenkel', 'chicken drumstick'],
    ['500 g Hähnchenfilet', 'chicken breast'],
    ['2 Putenunterkeulen', 'turkey drumstick'],
    ['4 Entenschenkel', 'duck leg'],
  ])('have their German names: %s', (line, item) => {
    const {receipt, sign} = read('Ofengericht', `- ${line}\n- 1 kg Kartoffeln`)
    expect(receipt.ingredients[0]).toMatchObject({item, known: true})
    expect(isHot(sign)).toBe(true)
  })

  it.each([
    ['8 thighs', 'chicken thigh'],
    ['8 skinless thighs', 'chicken thigh'],
    ['6 drumsticks', 'chicken drumstick'],
    ['4 wings', 'chicken wing'],
    ['6 Unterkeulen', 'chicken drumstick'],
    ['8 Flügel', 'chicken wing'],
  ])('by themselves in a list are taken as chicken’s, in doubt: %s', (line, item) => {
    const {receipt, sign, messages} = read('Supper in a tin', `- ${line}\n- 1 kg potatoes`)
    expect(receipt.ingredients[0]).toMatchObject({item, known: true, notes: ['no bird is named: taken as chicken’s']})
    expect(receipt.ingredients[0]!.confidence).toBeLessThan(0.6)
    expect(isHot(sign)).toBe(true)
    expect(messages.map(({rule}) => rule)).not.toContain('item-unknown')
  })

  it.each(['6 chicken drumsticks', '4 turkey drumsticks', '2 angel wings', '4 frog thighs'])(
    'but not where more is said: %s',
    (line) => expect(read('Supper in a tin', `- ${line}\n- 1 kg potatoes`).receipt.ingredients[0]!.notes).toEqual([]),
  )
})

describe('raw meat that only the text has put in', () => {
  const paste = '- 500 g flour\n- 200 g butter\n- 2 eggs'
  const teig = '- 500 g Mehl\n- 200 g Butter\n- 2 Eier'
  it.each([
    ['Hühnerpastete', teig, 'Das Huhn zerlegen und in den Teig legen, 1 Stunde bei 180 °C backen.'],
    ['Sonntagspastete', teig, 'Lege die Hühner in den Teig und backe sie 1 Stunde bei 180 °C.'],
    ['Chicken crackers', paste, 'Put in the minced chicken, raw; roll out thin and bake 15 minutes at 180 °C.'],
    ['Harvest paste', paste, 'Line a dish with the paste, lay in the salmon, and bake 1 hour at 180 °C.'],
    ['Goose and bean loaf', `${paste}\n- 200 g cooked goose`, 'Add the chicken with the beans. Bake 1 hour at 180 °C.'],
    // What is not cooked through is raw.
    ['Supper', paste, 'Lay in the half-cooked chicken and bake 1 hour at 180 °C.'],
  ])('has its heat, is kept cold and is warned of: %s', (title, list, method) => {
    const {receipt, sign, raw} = read(title, list, method)
    expect(receipt.fleshTold).toHaveLength(1)
    expect(isHot(sign)).toBe(true)
    expect(raw).toBe(true)
    expect(receipt.cautions.map(({id}) => id)).toContain('meat-temperature')
  })

  it.each([
    ['Crackers', paste, 'Roll out, bake 15 minutes at 180 °C and serve with the cold chicken.'],
    ['Crackers', paste, 'Roll out as for chicken, and bake 15 minutes at 180 °C.'],
    ['Crackers', paste, 'Put in the chicken broth, roll out and bake 15 minutes at 180 °C.'],
    ['Crackers', paste, 'Cut in the shape of a fish and bake 15 minutes at 180 °C.'],
    ['Crackers', paste, 'Work in the trimmings of the paste and bake 15 minutes at 180 °C.'],
    ['Crackers', paste, 'Put in the vegetarian chicken and bake 15 minutes at 180 °C.'],
    ['Supper', paste, 'Lay in the cooked chicken and bake 20 minutes at 180 °C.'],
    ['Supper', `${paste}\n- 300 g cooked chicken`, 'Lay in the chicken and bake 20 minutes at 180 °C.'],
    ['Kräcker', teig, 'Ausrollen, 15 Minuten bei 180 °C backen und zu kaltem Huhn servieren.'],
  ])('is none where it is beside it, cooked, or no meat: %s, %s, %s', (title, list, method) => {
    const {receipt, raw} = read(title, list, method)
    expect(receipt.fleshTold).toBeUndefined()
    expect(raw).toBe(false)
  })

  it('gives the sentence that puts it in', () => {
    const {receipt} = read('Supper', paste, 'Line a dish. Lay in the rabbit. Bake 1 hour at 180 °C.')
    expect(receipt.fleshTold).toMatchObject([{item: 'rabbit', text: 'Lay in the rabbit'}])
  })
})

/** USDA FSIS, Safe Minimum Internal Temperature Chart: leftovers 165 °F (74 °C). Smoked and tinned fish is eaten cold: common practice, no source. */
describe('meat that goes in cooked', () => {
  const dough = '- 1 kg flour\n- 20 g yeast'
  it.each([
    '400 g cooked chicken, cold',
    '400 g pork, boiled tender',
    '400 g pork, boned and boiled',
    '300 g roast beef, sliced',
    '400 g cold mutton',
    '400 g leftover turkey',
    '400 g gekochtes Huhn',
    '400 g Huhn, gekocht',
    '400 g gebratene Pute',
  ])('is not raw, and is heated through: %s', (line) => {
    const {receipt, sign, raw} = read('Stuffed loaf', `${dough}\n- ${line}`)
    expect(receipt.ingredients.find(({cooked}) => cooked !== undefined)?.cooked).toBe('heated')
    expect(raw).toBe(false)
    expect(isHot(sign)).toBe(true)
  })

  it.each(['100 g smoked salmon', '100 g geräucherter Lachs', '1 tin of salmon', '200 g tinned salmon', '200 g salmon, smoked'])(
    'and of fish that is eaten cold wants no heat: %s',
    (line) => {
      const {sign, raw} = read('Stuffed loaf', `${dough}\n- ${line}`)
      expect(raw).toBe(false)
      expect(isHot(sign)).toBe(false)
    },
  )

  it.each([
    '1 boiling fowl',
    '1 kg roasting chicken',
    '400 g chicken, to be boiled',
    '400 g parboiled chicken',
    '400 g chicken, half cooked',
    '400 g half-cooked chicken',
    '400 g chicken, lightly cooked',
    '400 g chicken, raw, not cooked',
    '400 g roast beef, rare',
    '400 g minced beef with boiled potatoes',
    '400 g chicken, boiled potatoes and salt',
    '400 g minced beef, cold',
    '400 g smoked haddock',
    '400 g Huhn, halb gekocht',
  ])('but is where it is not done: %s', (line) => {
    const {sign, raw} = read('Stuffed loaf', `${dough}\n- ${line}`)
    expect(raw).toBe(true)
    expect(isHot(sign)).toBe(true)
  })

  it('is raw where the receipt roasts it', () => {
    expect(read('Roast beef', '- 2 kg roast beef\n- salt').raw).toBe(true)
    expect(read('Pie of roast beef', '- 400 g flour\n- 200 g lard\n- 1 kg roast beef').raw).toBe(true)
  })

  it('fills a pie all the same', () => {
    const {receipt, raw} = read('Farmhouse pie', '- 400 g flour\n- 200 g lard\n- 600 g cooked lamb\n- 1 kg potatoes')
    expect(receipt.kind).toBe('meat pie')
    expect(raw).toBe(false)
  })
})
