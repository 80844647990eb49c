import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'
import {makeDishes} from '../src/scale/dishes.js'

/** Receipts written for these tests. That a pudding in a cloth is boiled is common practice, no source. */
const read = (text: string) => translate(`${text}\n`, {file: 'receipts/a.md'})
const fields = (text: string): string[] => read(text).receipts[0]!.inferred.map(({field}) => field)
const told = (text: string) => read(text).messages.filter(({rule}) => rule === 'not-baked')

const PUDDING = '# Plum pudding\n\n- 1 lb suet\n- 1 lb raisins\n- 1 lb flour\n- 8 eggs\n\n'

describe('a receipt that is boiled and not baked', () => {
  it.each([
    `${PUDDING}Tie it in a cloth and boil it five hours.`,
    `${PUDDING}Butter a mould, and steam for 6 hours.`,
    `${PUDDING}Boil it in a cloth 3 hours. Serve it with sugar and a glass of brandy.`,
    '# Brown bread\n\nA cup of rye meal, a pint of sour milk. Steam three hours.',
    '# Boiled batter pudding\n\nFour eggs, a pint of milk. Boil in a basin an hour.',
  ])('has no heat and no time in the oven, and is told: %j', (text) => {
    expect(fields(text)).not.toContain('oven')
    expect(fields(text)).not.toContain('bake')
    expect(told(text)).toHaveLength(1)
    expect(told(text)[0]!.severity).toBe('warning')
  })

  it.each([
    `${PUDDING}Boil it in a cloth 3 hours.\n\nNote: It may also be baked an hour in a moderate oven.`,
    `${PUDDING}Boil it in a cloth 3 hours. It may be baked an hour in a moderate oven.`,
  ])('that may be baked is still boiled, and baking is offered: %j', (text) => {
    const {oven, times} = read(text).receipts[0]!
    expect(oven.map(({condition}) => condition)).toEqual([true])
    expect(times.map(({of}) => of)).toEqual(['boil', 'other'])
    expect(told(text)[0]!.reason).toContain('a moderate oven')
  })

  /** A pot on the stove is given no degrees; sugar, jam and deep fat are (common practice, no source). */
  it.each([
    ['Bring to the boil, cover and cook at 140 °C for 4 hours.', '4 hours'],
    ['Cook at 140 °C / gas 2 for 4 hours.', '4 hours'],
    ['Cover and cook for 4 hours at gas mark 2.', '4 hours'],
    ['Fry the onions in a pan for 10 minutes, add the beef, cover and cook at 275°F for 4 hours.', '4 hours'],
    ['Alles anbraten, zudecken und bei 140 °C 4 Stunden garen.', '4 Stunden'],
    ['Zudecken und 4 Stunden bei 140 °C schmoren.', '4 Stunden'],
  ])('is baked where it is cooked at an oven’s degrees: %s', (method, time) => {
    const {kind, oven, times} = read(`# Beef stew\n\n- 2 kg beef shin, diced\n- 500 ml stock\n\n${method}`).receipts[0]!
    expect(kind).toBe('stew')
    expect(oven).toHaveLength(1)
    expect(Math.abs(oven[0]!.celsius.low - 140)).toBeLessThan(15)
    expect(times.filter(({of}) => of === 'bake').map(({text}) => text)).toEqual([time])
  })
  it.each([
    ['Beef stew', 'Cover and cook for 4 hours.'],
    ['Beef stew', 'Cook until 95 °C inside, 3 hours.'],
    ['Boiled sugar', 'Cook the syrup at 118 °C for 10 minutes.'],
    ['Fried chicken', 'Heat the oil and cook at 180 °C for 15 minutes.'],
    ['Fritters', 'Fry at 180 °C for 3 minutes.'],
  ])('is not where the heat is the pot’s: %s: %s', (title, method) => {
    const {kind, times} = read(`# ${title}\n\n- 1 kg beef\n- 500 g sugar\n\n${method}`).receipts[0]!
    expect(kind).toBe('not baked')
    expect(times.filter(({of}) => of === 'bake')).toEqual([])
  })
  it('is no dish of a day whatever vessel it states, unless it states its heat and its time as well', () => {
    const made = (front: string) =>
      makeDishes({
        day: {
          people: 8,
          items: [{file: 'receipts/a.md', title: 'a', amount: '2 times', wantedBy: 720, line: 9, column: 3}],
          spare: [],
        },
        receipts: read(`---\n${front}\n---\n# Beef stew\n\n- 2 kg beef shin, diced\n- 500 ml stock\n\nSimmer for 3 hours.`)
          .receipts,
        oven: {floor: {shape: 'round', diameter: 1.07}, mouth: {width: 0.46, height: 0.28}, vaultHeight: 0.41},
      })
    const {dishes, messages} = made('vessel: crock 25 cm x 14 cm')
    expect(dishes).toEqual([])
    expect(messages.map(({rule}) => rule)).toContain('scale-not-baked')
    expect(made('vessel: crock 25 cm x 14 cm\noven: 140 °C\nbake: 4 h').dishes).toHaveLength(1)
  })

  it('is left out of a day, with a message', () => {
    const receipts = read(`${PUDDING}Tie it in a cloth and boil it five hours.`).receipts
    const {dishes, messages} = makeDishes({
      day: {people: 8, items: [{file: 'receipts/a.md', title: 'a', amount: null, wantedBy: 720, line: 9, column: 3}], spare: []},
      receipts,
      oven: {floor: {shape: 'round', diameter: 1.07}, mouth: {width: 0.46, height: 0.28}, vaultHeight: 0.41},
    })
    expect(dishes).toEqual([])
    expect(messages.map(({rule}) => rule)).toContain('scale-not-baked')
  })

  it.each([
    '# Rice pudding\n\nBoil the rice half an hour in a pint of milk; add four eggs and sugar.',
    '# Ginger cake\n\n1 lb flour, 1/2 lb treacle; boil the treacle 25 minutes.',
    `${PUDDING}Boil it an hour, or bake it in a moderate oven 2 hours; then bake it brown.`,
    '# Bread pudding\n\nBoil a quart of milk half an hour; bake an hour.',
    `---\noven: 180 °C\n---\n${PUDDING}Boil it in a cloth 3 hours.`,
    '# Plum cake\n\nBoil the butter and sugar. Stir in 1 lb flour and 4 eggs.',
  ])('is none: %j', (text) => expect(told(text)).toEqual([]))
})
