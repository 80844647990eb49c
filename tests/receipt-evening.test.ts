import {describe, expect, it} from 'vitest'
import {planDay} from '../src/plan/planner.js'
import {stepsOf} from '../src/plan/steps.js'
import type {Load, Plan} from '../src/plan/types.js'
import {translate} from '../src/receipt/translate.js'
import type {Dish} from '../src/scale/types.js'
import {calendar} from '../src/sheets/calendar.js'
import {stepWords} from '../src/sheets/phrases.js'
import {styleOf} from '../src/sheets/style-of.js'
import {stepsCsv} from '../src/sheets/tables.js'
import {dish, problem} from './plan-fixtures.js'

/** Invented receipts in the usual wording; that beans are soaked and sponges set the evening before: common practice, no source. */
const read = (text: string) => translate(text, {file: 'a.md'}).receipts[0]!
const told = (text: string) =>
  (read(text).evening ?? []).map(({does, text: words, items, hour}) => ({
    does,
    words: words.replace(/\s+/g, ' '),
    of: items.map((i) => read(text).ingredients[i]!.text),
    hour,
  }))

const rye = `# Rye bread

For the sponge:

- 300 g rye flour
- 300 g water
- 30 g sourdough starter

For the dough:

- 700 g wheat flour
- 380 g water
- 20 g salt

Mix the sponge the evening before and let it rise overnight. Next morning add the rest, knead, and let rise 2 hours. Bake at 230 °C for 50 minutes.
`
const brot = `# Roggenbrot

Sauerteig:

- 300 g Roggenmehl
- 300 g Wasser
- 30 g Anstellgut

Hauptteig:

- 700 g Roggenmehl
- 20 g Salz

Den Sauerteig am Vorabend gegen 20 Uhr ansetzen. Am Morgen verkneten, 1 Stunde gehen lassen und bei 230 °C 50 Minuten backen.
`

describe('what a receipt has done the evening before', () => {
  it.each([
    ['# Baked beans\n\nSoak a quart of beans over night. Bake in a slow oven eight hours.', 'soak', ['a quart of beans']],
    [
      '# Peas\n\n- 500 g dried peas\n- 1 ham bone\n\nSoak the peas overnight in cold water. Bake slowly.',
      'soak',
      ['500 g dried peas'],
    ],
    ['# Beans\n\n- 500 g dried beans\n\nPut them in cold water over night. Bake slowly.', 'soak', ['500 g dried beans']],
    [
      '# Fruit cake\n\n- 450 g raisins\n- 225 g currants\n- 450 g flour\n- 200 ml tea\n\nSteep the fruit in the tea overnight. Bake at 150 °C.',
      'soak',
      ['450 g raisins', '225 g currants'],
    ],
    ['# Linsen\n\n- 500 g weiße Bohnen\n\nDie Bohnen über Nacht einweichen. Langsam backen.', 'soak', ['500 g weiße Bohnen']],
    [
      '# Bread\n\nSet a sponge over night with two quarts of flour, a pint of water and a gill of yeast. In the morning add salt. Bake.',
      'set',
      ['two quarts of flour', 'a pint of water', 'a gill of yeast'],
    ],
    [rye, 'set', ['300 g rye flour', '300 g water', '30 g sourdough starter']],
    [brot, 'set', ['300 g Roggenmehl', '300 g Wasser', '30 g Anstellgut']],
  ])('%s', (text, does, of) => {
    const [one, ...more] = told(text as string)
    expect(one).toMatchObject({does, of})
    expect(more).toEqual([])
    expect((text as string).replace(/\s+/g, ' ')).toContain(one!.words)
  })

  it('has an hour only where the receipt says one', () => {
    expect(told(brot)[0]!.hour).toBe(20 * 60)
    expect(told(rye)[0]!.hour).toBeUndefined()
  })

  it('takes the hour from where it is said', () => {
    const text =
      '# Ciabatta\n\nBiga (night before):\n\n- 300 g flour\n- 180 g water\n\nDough:\n\n- 200 g flour\n\nMake the biga the night before at 9 pm. Mix the dough. Bake at 240 °C.'
    expect(told(text)).toMatchObject([{does: 'set', of: ['300 g flour', '180 g water'], hour: 21 * 60}])
  })

  it('has fruit steeped in spirits', () => {
    const text =
      '# Cake\n\n- 500 g raisins\n- 150 ml brandy\n- 300 g flour\n\nThe day before, put the raisins in a bowl with the brandy, cover and leave. Bake at 150 °C.'
    expect(told(text)).toMatchObject([{does: 'soak', of: ['500 g raisins', '150 ml brandy']}])
  })

  it('does not count the night of a sponge as the rising of the dough', () => {
    expect(
      read(rye)
        .times.filter(({of}) => of === 'rise')
        .map(({minutes}) => minutes.low),
    ).toEqual([120])
  })

  it.each([
    '# Peas\n\n- 500 g split peas\n\nThe peas need not be soaked over night. Bake slowly.',
    '# Bread\n\n- 1 kg flour\n- 20 g yeast\n\nKnead the dough and let it rise over night. Bake.',
    '# Sourdough\n\n- 1 kg flour\n- 100 g starter\n\nAdd the starter, knead the dough and leave it overnight in the fridge. Bake.',
    '# Beans\n\n- 500 g beans\n\nBake in a slow oven, and leave them in the oven overnight.',
  ])('nothing in: %s', (text) => {
    expect(told(text)).toEqual([])
  })
})

// That gingerbread and batters are mixed a night before they are baked: common practice, no source.
describe('what stands a night before it is baked', () => {
  const cake = (method: string): string =>
    `# Gingerbread\n\n- 500 g treacle\n- 600 g flour\n- 200 g butter\n- 10 g ginger\n\n${method}\n`
  const words = (method: string): string[] => told(cake(method)).map((one) => `${one.does}: ${one.words}`)
  it.each([
    ['Beat all together, let it stand all night, and next day bake it one hour.', 'Beat all together, let it stand all night'],
    [
      'Mix the batter. Cover and leave overnight in the refrigerator, then bake at 180 °C for an hour.',
      'Cover and leave overnight in the refrigerator',
    ],
    ['Alles mischen und über Nacht stehen lassen. Bei 180 °C 40 Minuten backen.', 'Alles mischen und über Nacht stehen lassen'],
  ])('is mixed the evening before: %s', (method, said) => {
    expect(words(method)).toEqual([`stand: ${said}`])
  })
  it.each([
    'Beat all together. Chill 2 hours, or overnight, and bake for 40 minutes.',
    'Mix all and bake 40 minutes. Leave overnight before cutting.',
    'Mix all, let it stand one hour and bake 40 minutes.',
    'If it is mixed in the evening it may stand all night. Bake 40 minutes.',
  ])('is not: %s', (method) => {
    expect(words(method)).toEqual([])
  })
  it('is no dough, which rises in that night', () => {
    const text =
      '# Rolls\n\n- 1 kg flour\n- 600 g water\n- 10 g yeast\n\nMix, leave overnight. Shape, prove 1 hour, bake 20 minutes.\n'
    expect(told(text)).toEqual([])
  })
})

describe('the evening before in the steps of the day', () => {
  const amounts: Dish['amounts'] = [
    {item: 'bean', part: '', grams: {low: 900, likely: 900, high: 900}, millilitres: null, kitchen: '900 g', exact: '900 gram'},
  ]
  const made = (evening: NonNullable<Dish['evening']>, at?: number) => {
    const day = problem([{...dish('beans', 1, {id: 'beans', title: 'Beans'}), amounts, evening}], {})
    const plan = planDay(day, {effort: 'quick'})
    const moved: Plan =
      at === undefined
        ? plan
        : {...plan, loads: plan.loads.map((load: Load) => ({...load, at: load.number === 1 ? at : load.at}))}
    return {day, plan: {...moved, steps: stepsOf(day, moved).steps}}
  }
  const soak = {does: 'soak', words: 'Soak the beans over night', items: [0]} as const
  const evenings = (plan: Plan) => plan.steps.filter(({action}) => action === 'evening before')

  it('say what, how much and by whose words, in English and German, at no invented hour', () => {
    const {day, plan} = made([soak])
    const [step, ...more] = evenings(plan)
    expect(more).toEqual([])
    expect(step!.say).toBe('Beans: put to soak 900 g beans (“Soak the beans over night”).')
    expect(stepWords(step!, day, styleOf({language: 'de'})).say).toBe(
      'Beans: einweichen: 900 g getrocknete Bohnen („Soak the beans over night“).',
    )
    expect(step!.untimed).toBe(true)
    expect(Math.floor(step!.at / 1440)).toBe(-1)
    expect(stepsCsv(plan, day, styleOf({}))).toContain(',,evening before,evening before,')
    // RFC 5545 §3.6.1: an event of a whole day ends on the next.
    const ics = calendar(plan, day, styleOf({}))
    const date = (days: number): string =>
      new Date(Date.parse(`${day.day.date}T00:00:00Z`) + days * 86400000).toISOString().slice(0, 10).replaceAll('-', '')
    expect(ics).toContain(`DTSTART;VALUE=DATE:${date(-1)}\r\nDTEND;VALUE=DATE:${date(0)}`)
  })

  it('have what stands overnight mixed, with milk or egg in it in the refrigerator (FDA Food Code 2022, 3-501.16(A)(2))', () => {
    const stand = {does: 'stand', words: 'let it stand all night', items: []} as const
    const {day, plan} = made([stand])
    const rich = {...day, dishes: day.dishes.map((one) => ({...one, amounts: [{...amounts[0]!, item: 'egg'}]}))}
    const [cool] = evenings(plan)
    const [cold] = evenings({...plan, steps: stepsOf(rich, plan).steps})
    expect(cool!.say).toMatch(/^Beans: mix what is to stand overnight, .* in the cool \(“let it stand all night”\)/)
    expect(cold!.say).toMatch(/set it in the refrigerator, at 5 °C/)
    expect(stepWords(cold!, rich, styleOf({language: 'de'})).say).toMatch(/in den Kühlschrank stellen, bei 5 °C oder kälter/)
  })

  it('come the evening before the load, not before the day of the fire', () => {
    const {plan} = made([soak], 1440 + 8 * 60)
    expect(Math.floor(evenings(plan)[0]!.at / 1440)).toBe(0)
  })

  it('keep the hour that the receipt says', () => {
    const [step] = evenings(made([{...soak, hour: 20 * 60}]).plan)
    expect(step!.at).toBe(-4 * 60)
    expect(step!.untimed).toBeUndefined()
  })

  it('are none where the receipt says nothing', () => {
    expect(evenings(made([]).plan)).toEqual([])
  })
})

describe('the words of a soaking', () => {
  it('are those of its own line in a list of plain lines, which have no stops', () => {
    const [one] = told(
      '# Peas in a pot\n\n2 lb streaky bacon\n1 pint of split peas, soaked over night\n3 spoons treacle\n\nBake all day in a crock.\n',
    )
    expect(one).toMatchObject({does: 'soak', words: '1 pint of split peas, soaked over night'})
    const [prose] = told(
      '# Peas in a pot\n\nTake a pint of dried peas, and soak them over night in\n3 quarts of cold water. Bake all day in a crock.\n',
    )
    expect(prose!.words).toContain('in 3 quarts of cold water')
  })
})

/** That dry food keeps, and that what dries wants the damp out: common practice, no source. */
describe('what dries in the oven', () => {
  const dayOf = (more: Partial<Dish>) =>
    problem(
      [
        {
          ...dish('beans', 1, {
            id: 'apples',
            title: 'Apples',
            cautions: ['beans-boil'],
            ...(more.keeps ? {} : {hot: true as const}),
          }),
          ...more,
        },
      ],
      {},
    )
  // Of one plan, whenever it is wanted: else it would be left in till then.
  const plan = planDay(dayOf({}), {effort: 'quick'})
  const steps = (more: Partial<Dish>) => stepsOf(dayOf(more), plan).steps
  const draw = (more: Partial<Dish>) => steps(more).find(({action}) => action === 'draw')!
  it('is not to be kept warm when it is drawn', () => {
    expect(draw({}).ifBehind).toMatch(/57 °C/)
    expect(draw({keeps: true}).ifBehind).not.toMatch(/57 °C/)
    // FDA Food Code 2022, 3-501.14: to 21 °C within two hours, to 5 °C within four more; 3-403.11: heated again to 74 °C.
    const {at} = draw({})
    expect(draw({wantedBy: at + 120}).ifBehind).toMatch(/Done: Apples, wanted at .* 57 °C/)
    expect(draw({wantedBy: at + 600}).ifBehind).toMatch(/21 °C .* two hours .* 5 °C .* four more, .* 74 °C/)
    expect(draw({wantedBy: at + 600, keeps: true}).ifBehind).not.toMatch(/74 °C/)
  })
  it('has the door left as the receipt says', () => {
    const said = steps({keeps: true, ajar: 'leaving the door an inch open'}).filter(({action}) => action === 'shut')
    expect(said.map(({say}) => say)).toEqual([
      'Leave the door a little open, as the receipt asks (“leaving the door an inch open”). In it stays: Apples.',
    ])
  })
})
