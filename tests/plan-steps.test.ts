import {toHtml} from 'hast-util-to-html'
import {describe, expect, it} from 'vitest'
import {kinds} from '../src/lexicon/kinds.js'
import {planDay} from '../src/plan/planner.js'
import {rules} from '../src/plan/rules.js'
import {stepsOf} from '../src/plan/steps.js'
import type {Load, Phrase, Plan} from '../src/plan/types.js'
import {daySheet} from '../src/sheets/day-sheet.js'
import {floorMap} from '../src/sheets/floor-map.js'
import {numbered} from '../src/sheets/heat-data.js'
import {stepWords} from '../src/sheets/phrases.js'
import {zoneWord} from '../src/sheets/plan-text.js'
import {plainStyle} from '../src/sheets/style.js'
import {styleOf} from '../src/sheets/style-of.js'
import {stepsCsv} from '../src/sheets/tables.js'
import {oven} from './fixtures-sheets.js'
import {dish, problem} from './plan-fixtures.js'

/** An invented day. That what is set in at once is one dough: common practice, no source. */
const day = problem([dish('bread', 8, {id: 'bread', title: 'Bread'})], {})
const plan = planDay(day, {effort: 'quick'})
const [whole] = plan.loads as [Load]
const of = (count: number, minutes: number): Load['dishes'][number] => ({
  ...whole.dishes[0]!,
  count,
  draw: {low: whole.at + minutes, likely: whole.at + minutes, high: whole.at + minutes},
})
const inLoads = (...loads: Array<Pick<Load, 'at' | 'dishes'> & Partial<Pick<Load, 'placed'>>>): Plan => ({
  ...plan,
  loads: loads.map((load, i) => ({...whole, placed: [], ...load, number: i + 1})),
})
const doughSteps = (made: Plan) =>
  stepsOf(day, made).steps.filter(
    (step) => ['mix', 'evening before', 'rise', 'shape'].includes(step.action) && step.dishes.includes('bread'),
  )

describe('the heat', () => {
  it('is tested before what is set in, and once where loads go in within ten minutes', () => {
    const at = (minutes: number, number: number) => ({at: whole.at + minutes, dishes: [of(number, minutes + 45)]})
    const tests = (...loads: Array<ReturnType<typeof at>>) =>
      stepsOf(day, inLoads(...loads))
        .steps.filter(({action}) => action === 'test')
        .map((step) => [step.load, step.at - whole.at])
    expect(tests(at(0, 5), at(5, 3))).toEqual([[1, 0]])
    expect(tests(at(0, 2), at(10, 2), at(20, 2), at(30, 2))).toEqual([
      [1, 0],
      [3, 20],
    ])
    expect(tests(at(0, 5), at(15, 3))).toEqual([
      [1, 0],
      [2, 15],
    ])
    // What stood in the oven already was not tested for.
    const [standing] = [{at: whole.at, dishes: [{...of(5, 45), alreadyIn: true as const}]}]
    expect(tests(standing, at(5, 3))).toEqual([[2, 5]])
  })
})

describe('the doughs of one dish', () => {
  it('are told apart by number, count and load, in English and German', () => {
    const steps = doughSteps(inLoads({at: whole.at, dishes: [of(5, 45)]}, {at: whole.at + 60, dishes: [of(3, 105)]}))
    expect(steps).toHaveLength(6)
    expect(new Set(steps.map(({say, action}) => `${action} ${say}`)).size).toBe(6)
    const said = steps.filter(({action}) => action === 'shape').map(({say}) => say)
    expect(said).toEqual([
      'Bread, batch 1 of 2 (5 for load 1): shape the dough.',
      'Bread, batch 2 of 2 (3 for load 2): shape the dough.',
    ])
    const german = styleOf({language: 'de'})
    expect(steps.filter(({action}) => action === 'shape').map((step) => stepWords(step, day, german).say)).toEqual([
      'Bread, Teig 1 von 2 (5 für Schuss 1): den Teig formen.',
      'Bread, Teig 2 von 2 (3 für Schuss 2): den Teig formen.',
    ])
  })

  it('a dish of one batch keeps its plain name', () => {
    for (const {say} of doughSteps(plan)) expect(say).toMatch(/^Bread: /)
  })

  it('what goes in at once is one dough, though it is drawn at two times', () => {
    const steps = doughSteps(inLoads({at: whole.at, dishes: [of(5, 45), of(3, 55)]}))
    expect(steps.map(({action}) => action)).toHaveLength(3)
    for (const {say} of steps) expect(say).toMatch(/^Bread: /)
  })
})

describe('what a load is tested against', () => {
  const limits = (celsius: number): [number, number, number] => {
    const entry = {...of(8, 45), celsiusIn: {low: celsius, likely: celsius, high: celsius}}
    const {words, celsius: heat} = stepsOf(day, inLoads({at: whole.at, dishes: [entry]})).steps.find(
      ({action}) => action === 'load',
    )!
    const said = (one: Phrase | null): number => (one!.values['celsius'] as {value: number}).value
    return [said(words!.ifBehind), heat!.likely, said(words!.ifAhead)]
  }
  const {need} = day.dishes[0]!

  it('is the heat of the oven, which stands 10 °C over that of a place at the mouth', () => {
    const mean = limits(need.startLow + 5)[1]
    const [least, , most] = limits(mean - 10)
    expect(least).toBeCloseTo(need.startLow + 10, 6)
    expect(most).toBeCloseTo(need.startHigh + 10, 6)
  })

  it('is never such that what is likely would be waited out, though the plan sets it in too hot or too cool', () => {
    for (const celsius of [need.startHigh + 20, need.startLow - 20]) {
      const [least, mean, most] = limits(celsius)
      expect(least).toBeLessThanOrEqual(mean)
      expect(most).toBeGreaterThanOrEqual(mean)
    }
  })
})

/** That a dough which has hardly risen is no bread, whoever else wants the hands: common practice, no source. */
describe('a dough that was mixed before the day was planned again', () => {
  const bread = {...dish('bread', 1, {id: 'bread', title: 'Bread'}), dough: {mix: 20, rise: 80, shape: 20, hold: 60}} as const
  // The bun is seen to first, by its name.
  const bun = {...bread, id: 'bath-bun', title: 'Bun'}
  const mixed = 400
  // Set in when the bread has had no more than it needs, and both are to be shaped then by one pair of hands.
  const at = mixed + 20 + rules.leastRise * 80 + 10 + 20
  const two = problem([bread, bun], {
    done: {
      now: mixed + 30,
      lit: 300,
      set: [],
      plan: null,
      doughs: [
        {dish: 'bread', load: 1, mixed, cool: false},
        {dish: 'bath-bun', load: 1, mixed: mixed - 60, cool: false},
      ],
    },
  })
  const load = {...whole, at, dishes: ['bread', 'bath-bun'].map((id) => ({...whole.dishes[0]!, dish: id, count: 1}))}
  const shapeAt = (id: string): number =>
    stepsOf(two, {...plan, loads: [load]}).steps.find((s) => s.action === 'shape' && s.dishes.includes(id))!.at

  it('is not shaped before it can be bread', () => {
    expect(shapeAt('bread')).toBeGreaterThanOrEqual(mixed + 20 + rules.leastRise * 80)
  })
})

/** That nobody rises at night to make up what goes in at dawn: common practice, no source. */
describe('what is made up for the first load of a day', () => {
  const slices = problem([dish('gingerbread', 1, {id: 'cake', title: 'Cake'})])
  const madeUp = (at: number): string[] => {
    const load = {...whole, at, dishes: [{...whole.dishes[0]!, dish: 'cake', count: 1}]}
    const {steps} = stepsOf(slices, {...plan, loads: [load]})
    return steps.flatMap((s) => (s.action === 'mix' ? [`${s.at} ${s.say}`] : []))
  }
  const dawn = 1440 + slices.day.fireFrom

  it('is made up the evening before where the baker would sleep half an hour before', () => {
    const [step] = madeUp(dawn)
    expect(step).toMatch(/Cake: make up before the night, and keep cool/)
    const at = Number.parseInt(step!, 10)
    expect(at).toBeLessThan(rules.nightFrom)
    expect(at).toBeGreaterThan(rules.nightFrom - 60)
  })
  it('and else by day', () => {
    const [step] = madeUp(dawn + 60)
    expect(step).toMatch(/Cake: make up, ready to set in at 6:00 next day\.$/)
    expect(Number.parseInt(step!, 10)).toBeGreaterThanOrEqual(dawn)
  })
})

/** Titles and signs invented; that nobody can tell whose a bare list of signs is, needs no source. */
describe('the signs of what is drawn at once', () => {
  const dishes = [
    dish('bread', 2, {id: 'bread', title: 'Household bread', sign: 'sounds hollow'}),
    dish('gingerbread', 1, {id: 'cake', title: 'Gingerbread (1/2)', sign: 'a straw comes out dry; springs back'}),
    dish('gingerbread', 1, {id: 'cake-2', title: 'Gingerbread (2/2)', sign: 'a straw comes out dry; springs back'}),
    dish('gingerbread', 1, {id: 'plum', title: 'Plum cake', sign: 'a straw comes out dry; springs back'}),
    dish('gingerbread', 1, {id: 'mystery', title: 'Mystery', sign: ''}),
  ]
  const both = problem(dishes, {})
  const drawn = (...ids: readonly string[]) => {
    const made = inLoads({at: whole.at, dishes: ids.map((dish) => ({...of(1, 60), dish}))})
    return stepsOf(both, made).steps.find(({action}) => action === 'draw')!
  }
  it('each stand behind whose they are, where they differ', () => {
    expect(drawn('bread', 'cake', 'plum').sign).toBe(
      'Household bread: sounds hollow; Gingerbread and Plum cake: a straw comes out dry; springs back',
    )
    expect(drawn('bread', 'mystery').sign).toBe('Household bread: sounds hollow')
  })
  it('stand alone where they are of one dish, or the same for all', () => {
    expect(drawn('bread').sign).toBe('sounds hollow')
    expect(drawn('cake', 'cake-2', 'plum').sign).toBe('a straw comes out dry; springs back')
    expect(drawn('mystery').sign).toBe(null)
  })
  it('in the words of the sheets too, in English and German', () => {
    const step = drawn('bread', 'cake', 'plum')
    expect(stepWords(step, both, styleOf({})).sign).toMatch(/^Household bread: .*; Gingerbread and Plum cake: /)
    const [one, other] = kinds.filter(({sign}, i) => sign !== '' && kinds.findIndex((k) => k.sign === sign) === i)
    const known = both.dishes.map((d) => ({
      ...d,
      kind: (d.id === 'bread' ? one! : other!).id,
      sign: (d.id === 'bread' ? one! : other!).sign,
    }))
    const german = stepWords(step, {...both, dishes: known}, styleOf({language: 'de'})).sign
    const english = stepWords(step, {...both, dishes: known}, styleOf({})).sign
    expect(english).toBe(`Household bread: ${one!.sign}; Gingerbread and Plum cake: ${other!.sign}`)
    expect(german).not.toContain(one!.sign)
    expect(german).toMatch(/^Household bread: .+; Gingerbread und Plum cake: ./)
  })
})

/** That what would burn is not kept waiting for what may stay: common practice, no source. */
describe('what goes in or comes out together', () => {
  const at = (zone: NonNullable<Load['dishes'][number]['zone']>, high: number, id = 'bread'): Load['dishes'][number] => ({
    ...of(2, 60),
    dish: id,
    zone,
    draw: {low: whole.at + 60, likely: whole.at + 60, high: whole.at + high},
  })
  const said = (action: string, ...dishes: Load['dishes'][number][]) => {
    const step = stepsOf(two, inLoads({at: whole.at, dishes})).steps.find((one) => one.action === action)!
    return {english: step, german: () => stepWords(step, two, styleOf({language: 'de'})).say}
  }
  const two = problem(
    [
      dish('bread', 8, {id: 'bread', title: 'Bread'}),
      dish('brown', 4, {id: 'brown', title: 'Brown bread', need: {...dish('bread', 4, {}).need, falling: true, overnight: true}}),
    ],
    {},
  )

  it('is said once where it goes to two parts of the floor', () => {
    const {english, german} = said('load', at('back', 90), at('middle', 90))
    expect(english.say).toBe('Set in load 1: Bread (4 of 8) at the back and the middle.')
    expect(german()).toContain('Bread (4 von 8): hinten und Mitte')
    expect(said('load', at('back', 90), at('middle', 90), at('mouth', 90)).english.say).toContain('Bread (6 of 8) over the floor')
  })

  it('stands where its vessels do, told alike by the hours, the tables and the sheets, whatever part it was planned for', () => {
    const one = whole.placed[0]!
    const placed = (['back', 'back', 'middle'] as const).map((zone, i) => ({...one, dish: 'bread', number: i + 1, zone}))
    const made = inLoads({at: whole.at, dishes: [at('middle', 90), {...at('across', 90), count: 1}], placed})
    expect(stepsOf(two, made).steps.find(({action}) => action === 'load')!.say).toBe(
      'Set in load 1: Bread (3 of 8) at the back and the middle.',
    )
    const [row] = numbered(made, two)
    expect(zoneWord(row!.zone, plainStyle)).toBe('back and middle')
    expect(zoneWord(row!.zone, styleOf({language: 'de'}))).toBe('hinten und Mitte')
    const mouth = inLoads({at: whole.at, dishes: [at('across', 90)], placed: [{...one, dish: 'bread', number: 1, zone: 'mouth'}]})
    expect(stepsOf(two, mouth).steps.find(({action}) => action === 'load')!.say).toContain('Bread (2 of 8) at the mouth')
    expect(numbered(mouth, two)[0]!.zone).toBe('mouth')
  })

  // How many come out, and where they stand, is told in one way everywhere: common practice, no source.
  it('in parts is told with how many and where, by step, table, map, day sheet and CSV alike', () => {
    const one = whole.placed[0]!
    const drawn = (
      zone: NonNullable<Load['dishes'][number]['zone']>,
      count: number,
      minutes: number,
    ): Load['dishes'][number] => ({
      ...of(count, minutes),
      zone,
    })
    const placed = (['back', 'middle', 'middle', 'middle', 'back'] as const).map((zone, i) => ({
      ...one,
      dish: 'bread',
      number: i + 1,
      zone,
    }))
    const made = inLoads(
      {at: whole.at, dishes: [drawn('back', 1, 45), drawn('middle', 3, 50), drawn('back', 1, 45)], placed},
      {at: whole.at + 15, dishes: [drawn('mouth', 3, 75)], placed: [6, 7, 8].map((number) => ({...one, number, zone: 'mouth'}))},
    )
    const {steps} = stepsOf(day, made)
    const told = (action: string): string[] => steps.filter((step) => step.action === action).map(({say}) => say)
    expect(told('load')).toEqual([
      'Set in load 1: Bread (5 of 8) at the back and the middle.',
      'Set in load 2: Bread (3 of 8) at the mouth.',
    ])
    expect(told('draw')).toEqual(['Draw Bread (2 of 8, back).', 'Draw Bread (3 of 8, middle).', 'Draw Bread (3 of 8, mouth).'])
    const german = styleOf({language: 'de'})
    expect(steps.filter(({action}) => action === 'draw').map((step) => stepWords(step, day, german).say)[0]).toContain(
      'Bread (2 von 8, hinten)',
    )
    const whole2: Plan = {...made, steps}
    expect(
      numbered(whole2, day).map(({load, count, zone, placed: its}) => [load, count, zone, its.map((v) => v.number)]),
    ).toEqual([
      [1, 2, 'back', [1, 5]],
      [1, 3, 'middle', [2, 3, 4]],
      [2, 3, 'mouth', [6, 7, 8]],
    ])
    const rows = stepsCsv(whole2, day, plainStyle)
      .split('\r\n')
      .map((line) => line.split(','))
    const column = (name: string): number => rows[0]!.indexOf(name)
    const counts = (action: string): number[] =>
      rows.filter((row) => row[column('action')] === action).map((row) => Number(row[column('count')]))
    expect(counts('draw')).toEqual([2, 3, 3])
    expect(counts('load')).toEqual([2, 3, 3])
    expect(counts('test')).toEqual([5, 3])
    const sheet = toHtml(daySheet({plan: whole2, problem: day, oven}, plainStyle))
    for (const said of ['Bread (2, back)', 'Bread (3, middle)', 'Bread (3, mouth)']) expect(sheet).toContain(said)
    const map = toHtml(floorMap(made.loads[0]!, whole2, day, {style: plainStyle}))
    expect([...map.matchAll(/>(\d)<\/text>/g)].map(([, number]) => number)).toEqual(['1', '2', '2', '2', '1'])
  })

  // That what dries wants the steam let out: common practice, no source.
  it('dries on with the door ajar where it is not done, if its receipt wants it so, and only if all that is drawn then does', () => {
    const [first, brown] = two.dishes as [(typeof two.dishes)[number], (typeof two.dishes)[number]]
    const drying = {...two, dishes: [first, {...brown, ajar: 'with the door ajar'}]}
    const behind = (...dishes: Load['dishes'][number][]): string | null =>
      stepsOf(drying, inLoads({at: whole.at, dishes})).steps.find(({action}) => action === 'draw')!.ifBehind
    expect(behind(at('middle', 90, 'brown'))).toMatch(/^Not done: leave the door ajar/)
    expect(behind(at('middle', 90, 'brown'), at('back', 90))).toMatch(/^Not done: shut the door/)
  })

  it('is waited for no longer than the first that would burn', () => {
    const clock = (minutes: number): unknown => ({unit: 'clock', value: whole.at + minutes})
    const lateOf = (...dishes: Load['dishes'][number][]): unknown =>
      said('draw', ...dishes).english.words?.ifBehind?.values['late']
    expect(lateOf(at('back', 90), at('middle', 75))).toEqual(clock(75))
    expect(lateOf(at('back', 90), at('middle', 70, 'brown'))).toEqual(clock(90))
    expect(lateOf(at('middle', 240, 'brown'))).toEqual(clock(240))
  })
})

describe('a stay that is not the time of its receipt', () => {
  const {need} = dish('bread', 8, {})
  const behindOf = (minutes: number, more: Partial<ReturnType<typeof dish>> = {}) => {
    const one = problem([dish('bread', 8, {id: 'bread', title: 'Bread', ...more})], {})
    return stepsOf(one, inLoads({at: whole.at, dishes: [of(8, minutes)]})).steps.find(({action}) => action === 'draw')!
  }
  const {low, high} = need.minutes

  it('is told of at the draw where it is under two thirds or over one and a half of it, in both languages', () => {
    const long = Math.ceil(1.6 * high)
    expect(behindOf(high).ifBehind).not.toContain('of its receipt')
    expect(behindOf(Math.ceil(0.7 * low)).ifBehind).not.toContain('of its receipt')
    expect(behindOf(Math.floor(0.6 * low)).words?.ifBehind?.values['kept']).toMatchObject({
      phrases: [{id: 'other time', values: {stay: {value: Math.floor(0.6 * low)}, said: {value: low}}}],
    })
    const step = behindOf(long)
    expect(step.ifBehind).toContain('of its receipt')
    expect(stepWords(step, day, styleOf({language: 'de'})).ifBehind).toContain('des Rezepts')
  })

  it('is not, where it is left in for the night or the time is none of the receipt’s', () => {
    const long = Math.ceil(1.6 * high)
    expect(behindOf(long, {need: {...need, overnight: true}}).ifBehind).not.toContain('of its receipt')
    for (const field of ['bake', 'time'])
      expect(behindOf(long, {inferred: [{field, value: '', why: ''}]}).ifBehind).not.toContain('of its receipt')
  })
})

describe('a dough for which the hands are too few', () => {
  it('asks for one pair more than the day has', () => {
    const ids = ['one', 'two', 'three', 'four', 'five']
    const doughs = problem(
      ids.map((id) => dish('bread', 2, {id, title: id, dough: {mix: 20, rise: 60, shape: 20, hold: 5}})),
      {},
    )
    const dishes = ids.map((id) => ({...of(2, 45), dish: id}))
    for (const hands of [1, 2]) {
      const {messages} = stepsOf({...doughs, day: {...doughs.day, hands}}, inLoads({at: whole.at, dishes}))
      expect(messages.length).toBeGreaterThan(0)
      for (const {suggest} of messages) expect(suggest).toContain(`"hands: ${hands + 1}"`)
    }
  })
})
