import {describe, expect, it} from 'vitest'
import {lookUpItem} from '../src/lexicon/index.js'
import {isFlesh} from '../src/receipt/flesh.js'
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

describe('cuts by the names of a shop', () => {
  const heat = (sign: string): boolean => /(?:63|74) °C/.test(sign)
  it.each([
    ['2 kg pork loin', 'loin of pork'],
    ['4 lamb shanks', 'lamb shank'],
    ['2 kg silverside', 'silverside'],
    ['2 kg topside', 'topside'],
    ['1 gammon joint, 2 kg', 'gammon joint'],
    ['1 kg beef short ribs', 'beef short rib'],
    ['600 g Schweinelende', 'pork fillet'],
    ['4 Lammhaxen', 'lamb shank'],
    ['1 Tafelspitz, 1,5 kg', 'beef roasting joint'],
    ['1 Schweinshaxe', 'pork knuckle'],
  ])('are raw meat, kept cold: %s', (line, item) => {
    const {receipt, sign, raw, messages} = read('Supper in a tin', `- ${line}\n- 1 kg potatoes`)
    expect(receipt.ingredients[0]!.grams).not.toBeNull()
    expect(lookUpItem(receipt.ingredients[0]!.item)).toEqual(lookUpItem(item))
    expect([heat(sign), raw]).toEqual([true, true])
    expect(receipt.cautions.map(({id}) => id)).toContain('meat-temperature')
    expect(messages.map(({rule}) => rule)).not.toContain('item-unknown')
  })

  // 21 U.S.C. 343(w)(1) and 321(qq): fish is a major food allergen.
  it.each([
    ['4 cod fillets', 'cod fillet', 600],
    ['4 skinless, boneless salmon fillets', 'salmon fillet', 600],
    ['2 tuna steaks', 'tuna steak', 340],
    ['4 Lachsfilets', 'salmon fillet', 600],
    ['800 g Kabeljau', 'cod', 800],
    ['2 kg monkfish', 'monkfish', 2000],
  ])('are fish, and an allergen: %s', (line, item, grams) => {
    const {receipt, sign, raw} = read('Supper in a tin', `- ${line}\n- 1 kg potatoes`)
    expect(lookUpItem(receipt.ingredients[0]!.item)?.group).toBe(lookUpItem(item)!.group)
    expect(receipt.ingredients[0]!.grams?.likely).toBe(grams)
    expect(receipt.allergens).toEqual(['fish'])
    expect([heat(sign), raw]).toEqual([true, true])
  })

  it.each([
    ['8 boneless, skinless chicken thighs', 'chicken thigh', 8],
    ['4 skin-on, bone-in chicken thighs', 'chicken thigh', 4],
    ['2 bone-in pork chops', 'pork chop', 2],
    ['4 küchenfertige Forellen', 'trout', 4],
    ['2 firm, ripe pears', 'pear', 2],
  ])('are found behind the words of how they are sold: %s', (line, item, count) => {
    const {receipt} = read('Supper in a tin', `- ${line}\n- 1 kg potatoes`)
    expect(receipt.ingredients).toHaveLength(2)
    expect(receipt.ingredients[0]).toMatchObject({item, amount: {low: count, high: count}})
  })

  it.each([
    ['1 kg lamb cushion', 'lamb'],
    ['500 g diced venison shoulder', 'venison'],
    ['400 g veal collar', 'veal'],
    ['500 g Rindergulasch', 'beef'],
    ['300 g Putengeschnetzeltes', 'turkey'],
    ['400 g Hirschragout', 'venison'],
    ['4 goat cutlets', 'lamb'],
    ['300 g trout goujons', 'trout'],
  ])('are by a word of their name, where no row has it: %s', (line, id) => {
    const {receipt, sign, raw, messages} = read('Supper in a tin', `- ${line}\n- 1 kg potatoes`)
    expect(lookUpItem(receipt.ingredients[0]!.item)).toMatchObject({id, pieces: []})
    expect([heat(sign), raw]).toEqual([true, true])
    expect(messages.map(({reason}) => reason).join()).toContain('it is taken as the meat or fish that its name has')
  })

  it.each([
    'chicken stock cube',
    'beef dripping',
    "lamb's lettuce",
    'cod liver oil',
    'beef tomato',
    'steak seasoning',
    'duck egg',
    'oyster mushroom',
    'crab apple',
    'coconut meat',
    'turkey red',
    'goat cheese',
    'rinderfond',
    'entenfett',
    'leberwurst',
    'rinde',
    'rehydrated mushroom',
  ])('and no flesh is: %s', (name) => expect(isFlesh(name)).toBe(false))

  it('but what is made of fish is none for whoever must not have it', () => {
    for (const name of ['fish soup', 'fischsoße', 'salmon paste']) expect(lookUpItem(name)?.allergens).toEqual(['fish'])
  })

  it('with one rib of a joint told from the joint', () => {
    const grams = (line: string) => read('Roast beef', `- ${line}`).receipt.ingredients[0]!.grams!.likely
    expect(grams('1 rib of beef')).toBe(1830)
    expect(grams('a rib of beef')).toBe(5500)
    expect(grams('1 rib roast')).toBe(5500)
  })

  it('and meat in a tray bake, which is no cake then', () => {
    expect(read('Tray bake', '- 8 chicken thighs\n- 500 g potatoes').receipt.kind).toBe('roast vegetables')
    expect(read('Tray bake', '- 200 g flour\n- 200 g butter\n- 200 g sugar\n- 4 eggs').receipt.kind).toBe('tray cakes')
  })
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
