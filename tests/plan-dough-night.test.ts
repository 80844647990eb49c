import {describe, expect, it} from 'vitest'
import {coldPlaces, kneading, shapings} from '../src/lexicon/dough-work.js'
import {check, type Violation} from '../src/plan/check.js'
import {doughsSoFar, putByWords} from '../src/plan/dough.js'
import {workOf} from '../src/plan/dough-times.js'
import {planDay} from '../src/plan/planner.js'
import {rules} from '../src/plan/rules.js'
import type {Plan, PlannedDough, PlanProblem, Step} from '../src/plan/types.js'
import type {Dish, DoughTimes} from '../src/scale/types.js'
import {stepWords} from '../src/sheets/phrases.js'
import {books} from '../src/sheets/said.js'
import {styleOf} from '../src/sheets/style-of.js'
import {inBook} from '../src/sheets/words/sentences.js'
import {day, dish, fallingOven, problem} from './plan-fixtures.js'

/*
 * Invented doughs on an invented oven. That nobody kneads at night who need not, that a dough in the cold rises some times as slowly, and that
 * more dough is more work: common practice, no source. That egg and milk stand overnight at 5 °C or colder: FDA Food Code 2022, 3-501.16(A)(2).
 */
const oven = fallingOven(120, 300)
const simulate = (): typeof oven.forecast => oven.forecast
const range = (low: number, high: number) => ({low, likely: (low + high) / 2, high})
const bread = (dough: DoughTimes, more: Partial<Dish> = {}): Dish =>
  dish('bread', 2, {id: 'bread', title: 'Bread', dough, ...more})
const asked = (dishes: readonly Dish[], fireFrom = 300, hands = 1): PlanProblem =>
  problem(dishes, {day: day({fireFrom, hands}), firings: [oven]})
const plan = (p: PlanProblem): Plan => planDay(p, {simulate, effort: 'quick'})
const step = ({steps}: Plan, ...actions: Step['action'][]): Step =>
  steps.find((s) => s.load !== null && s.dishes.includes('bread') && actions.includes(s.action))!
const mixOf = (made: Plan): Step => step(made, 'mix', 'evening before')
const warnings = ({messages}: Plan): string[] => messages.map(({rule}) => rule)
const broken = (p: PlanProblem, made: Plan): Violation['rule'][] => check(p, made).map(({rule}) => rule)
const moved = (made: Plan, by: Partial<Record<Step['action'], number>>): Plan => ({
  ...made,
  steps: made.steps
    .map((s) => (s.load === null || !s.dishes.includes('bread') ? s : {...s, at: s.at + (by[s.action] ?? 0)}))
    .sort((a, b) => a.at - b.at),
})
const byNight = (at: number, from = 300): boolean => {
  const hour = ((at % 1440) + 1440) % 1440
  return hour >= rules.nightFrom || hour < Math.min(from, rules.nightTo)
}
const slow: DoughTimes = {mix: 20, rise: 540, bulk: range(480, 600), shape: 10, hold: 30}

describe('a dough that rises for hours', () => {
  it('is mixed in the evening where its range reaches from there, and nothing is warned of', () => {
    // In the oven some thirteen hours after bedtime.
    const p = asked([bread({...slow, rise: 780, bulk: range(720, 840)})])
    const made = plan(p)
    expect(check(p, made)).toEqual([])
    expect(mixOf(made).action).toBe('mix')
    expect(byNight(mixOf(made).at) || byNight(mixOf(made).at + 20 - 1)).toBe(false)
    const risen = step(made, 'shape').at - mixOf(made).at - 20
    expect(risen).toBeGreaterThanOrEqual(720)
    expect(risen).toBeLessThanOrEqual(840)
    expect(warnings(made)).not.toContain('cold-rise')
  })

  it('stands cold where it has to be stretched, as late mixed as may be, and by how much is warned of', () => {
    const p = asked([bread(slow)], 540)
    const made = plan(p)
    expect(check(p, made)).toEqual([])
    const {at, action} = mixOf(made)
    const risen = step(made, 'shape').at - at - 20
    expect(risen).toBeGreaterThan(600 + 30)
    expect(action).toBe('evening before')
    expect(at + 20).toBe(rules.nightFrom - 1440)
    expect(step(made, 'rise').say).toMatch(/stand it in a cellar or larder of 10–15 °C .* rises slowly until/)
    const [warned, ...more] = made.messages.filter(({rule}) => rule === 'cold-rise')
    expect(more).toEqual([])
    const time = (minutes: number): string =>
      [Math.floor(minutes / 60) > 0 ? `${Math.floor(minutes / 60)} h` : '', minutes % 60 > 0 ? `${minutes % 60} min` : '']
        .filter(Boolean)
        .join(' ')
    expect(warned!.reason).toBe(
      `Bread: its dough rises ${time(risen)} through the night, ${time(risen - 600)} longer than it is meant to; it stands in the cold for that`,
    )
    expect(inBook(warned!.reason, books.de!)).toMatch(/^Bread: der Teig geht .* über Nacht, .* länger als vorgesehen/)
    expect(inBook(warned!.suggest!, books.de!)).not.toBe(null)
    expect(stepWords(step(made, 'rise'), p, styleOf({language: 'de'})).say).toContain(
      'Keller oder eine Speisekammer von 10–15 °C',
    )
    // Unsaid, it is no sound plan.
    expect(broken(p, {...made, messages: []})).toContain('dough')
    const warm = made.steps.map((s) => (s.action === 'rise' ? {...s, words: {...s.words!, say: {id: 'rise', values: {}}}} : s))
    expect(broken(p, {...made, steps: warm})).toContain('dough')
    expect(broken(p, moved(made, {'evening before': -1440}))).toContain('dough')
  })

  it('of an hour or two stands in a refrigerator, if it was not to be mixed at night', () => {
    const short: DoughTimes = {mix: 20, rise: 120, shape: 15, prove: range(40, 50), hold: 30}
    for (const from of [120, 180, 240, 300, 360, 420]) {
      const p = asked([bread(short)], from)
      const made = plan(p)
      expect(check(p, made)).toEqual([])
      const {at, action} = mixOf(made)
      if (action === 'mix') expect(at).toBeGreaterThanOrEqual(Math.min(from, rules.nightTo))
      else expect([step(made, 'rise').words!.say.id, byNight(at)]).toEqual(['rise cold', false])
    }
    const early = plan(asked([bread(short)], 120))
    expect(mixOf(early).action).toBe('mix')
  })

  it('with egg or milk in it stands in no cellar', () => {
    const p = asked([bread(slow)], 540)
    const plain = plan(p)
    const rich = asked([bread({...slow, spoils: true})], 540)
    const made = plan(rich)
    expect(check(rich, made)).toEqual([])
    expect(made.steps.map(({words}) => words?.say.id)).not.toContain('rise cool')
    expect(broken(rich, plain).length > 0).toBe(plain.steps.some(({words}) => words?.say.id === 'rise cool'))
  })

  it('is told to be mixed with cold water only where it has water in it', () => {
    const of = (item: string): Dish['amounts'][number] => ({
      item,
      part: '',
      grams: null,
      millilitres: range(300, 300),
      kitchen: '',
      exact: null,
    })
    const said = (...items: string[]): string | undefined =>
      mixOf(plan(asked([bread(slow, {amounts: items.map(of)})], 540))).words?.say.id
    expect(said('flour', 'water')).toBe('evening before')
    expect(said('flour', 'beer')).toBe('evening before cold')
    const soon: DoughTimes = {mix: 20, rise: 90, shape: 10, prove: range(60, 60), hold: 30, spoils: true}
    const rich = plan(asked([bread(soon, {amounts: [of('water'), of('milk')], wantedBy: 500})]))
    expect(mixOf(rich).words?.say.id).toBe('evening before cold')
  })

  it('is worked by day where its ranges allow it, and the checker finds where it is not', () => {
    const wide: DoughTimes = {mix: 20, rise: 480, bulk: range(240, 720), shape: 10, hold: 30}
    for (const from of [240, 300, 360, 480, 600]) {
      const p = asked([bread(wide)], from)
      const made = plan(p)
      expect(check(p, made)).toEqual([])
      expect(byNight(mixOf(made).at, from)).toBe(false)
    }
    const p = asked([bread(wide)])
    const made = plan(p)
    const at = mixOf(made).at
    const night = moved(made, {mix: 3 * 60 - at, rise: 3 * 60 - at})
    expect(broken(p, night)).toEqual(['night'])
  })
})

describe('one pair of hands', () => {
  const short: DoughTimes = {mix: 30, rise: 65, bulk: range(40, 90), shape: 15, prove: range(30, 60), hold: 20}
  const two = [bread(short), bread(short, {id: 'buns', title: 'Buns'}), bread(short, {id: 'cakes', title: 'Cakes'})]
  const p = asked(two)
  const made = plan(p)
  const fire = made.fires![0]!

  it('rakes out, lights and shapes one after another', () => {
    expect(check(p, made)).toEqual([])
    expect(warnings(made)).not.toContain('hands')
    const busy = [
      [fire.lit, rules.fireWork.light],
      [fire.raked, rules.fireWork.rake],
      ...made.steps.flatMap((s) => (s.action === 'mix' ? [[s.at, 30]] : s.action === 'shape' ? [[s.at, 15]] : [])),
    ].sort((a, b) => a[0]! - b[0]!)
    for (const [i, [from]] of busy.entries()) if (i > 0) expect(from).toBeGreaterThanOrEqual(busy[i - 1]![0]! + busy[i - 1]![1]!)
  })

  it('is found out where it has two things to do and nothing says so', () => {
    for (const at of [fire.raked, fire.lit, step(made, 'load').at - 2]) {
      const by = at - mixOf(made).at
      expect([at, broken(p, moved(made, {mix: by}))]).toEqual([at, expect.arrayContaining(['hands'])])
    }
    const by = fire.raked - mixOf(made).at
    expect(broken({...p, day: {...p.day, hands: 2}}, moved(made, {mix: by}))).not.toContain('hands')
  })

  it('is warned of where there is no other hour', () => {
    const exact: DoughTimes = {mix: 30, rise: 60, shape: 15, hold: 0}
    const many = ['bread', 'buns', 'cakes', 'rusks'].map((id) => bread(exact, {id, title: id}))
    const full = asked(many)
    const tight = plan(full)
    expect(check(full, tight)).toEqual([])
    const same = new Set(tight.loads.map(({at}) => at)).size < many.length
    expect(warnings(tight).includes('hands')).toBe(same)
  })
})

describe('the work at a dough', () => {
  it('grows with it', () => {
    const loaves = (count: number): {mix: number; shape: number} => workOf(dish('bread', count), count)
    expect(loaves(1)).toEqual({mix: 20, shape: 15})
    expect(loaves(8)).toEqual({mix: 20, shape: 15})
    const many = loaves(30)
    expect(many.shape).toBe(30 * shapings.at(-1)!.minutes)
    expect(many.mix).toBe(20 + 5 * Math.round(((30 * 0.9 - kneading.upTo) * kneading.perKilogram) / 5))
    const sheet = {...dish('bread', 6), vessel: dish('biscuits', 1).vessel}
    expect(workOf(sheet, 6).shape).toBe(30)
    expect(workOf(dish('pie', 6), 6)).toEqual({mix: 0, shape: 0})
  })

  it('is reckoned so in the plan, and the checker reckons it again', () => {
    const p = asked([bread({mix: 20, rise: 60, shape: 15, hold: 0}, {count: 4, mass: 4})])
    const made = plan(p)
    expect(check(p, made)).toEqual([])
    const {count} = made.loads[0]!.dishes[0]!
    const {mix, shape} = workOf(p.dishes[0]!, count)
    expect(mix + shape).toBeGreaterThan(35)
    expect(step(made, 'load').at - step(made, 'shape').at).toBe(shape)
    expect(step(made, 'shape').at - mixOf(made).at).toBe(60 + mix)
    expect(broken(p, moved(made, {shape: 5}))).toContain('dough')
  })

  it('takes the hands for as long as the rows say, which are told of their source', () => {
    for (const row of [kneading, ...shapings, ...coldPlaces]) expect(row.source).toBe('common-practice')
    expect(shapings.at(-1)!.vessels).toEqual([])
  })
})

describe('a dough that is mixed and not baked any more', () => {
  const p = asked([bread({mix: 20, rise: 60, shape: 15, hold: 30})])
  const morning = plan(p)
  const left = (dough: Partial<PlannedDough>): {rest: PlanProblem; made: Plan} => {
    const now = morning.loads[0]!.at - 30
    const doughs: PlannedDough[] = [{dish: 'bread', load: 1, mixed: now - 60, cool: false, ...dough}]
    // The fire went out: there is no heat for it any more.
    const cold = fallingOven(120, 120)
    const rest: PlanProblem = {...p, firings: [cold], done: {now, lit: morning.lit, set: [], plan: morning, doughs}}
    return {rest, made: planDay(rest, {simulate: () => cold.forecast, effort: 'quick'})}
  }
  const told = ({steps}: Plan): Step[] => steps.filter((s) => s.action === 'rise' && s.load === null)

  it('is told what to do with, in English and German', () => {
    const {rest, made} = left({})
    expect(made.unplaced.map((u) => u.dish)).toEqual(['bread'])
    expect(check(rest, made)).toEqual([])
    const [one, ...more] = told(made)
    expect(more).toEqual([])
    expect(one!.at).toBe(rest.done!.now)
    expect(one!.say).toMatch(/^Bread: no place is left in the oven, and the dough is mixed. Knock it down, .* refrigerator/)
    expect(stepWords(one!, rest, styleOf({language: 'de'})).say).toMatch(/^Bread: im Ofen ist kein Platz mehr, .* Kühlschrank/)
    expect(told(left({cool: true}).made)[0]!.say).toContain('the dough stands in the cold. Leave it there')
  })

  it.each([false, true])('as it stands, shaped and in the warm, where it rose through the night in the cold: %s', (cool) => {
    const {rest, made} = left({cool, shaped: morning.loads[0]!.at - 50})
    expect(check(rest, made)).toEqual([])
    const [one] = told(made)
    expect(one!.say).toMatch(/^Bread: no place is left in the oven, and the dough is shaped and stands in the warm/)
    expect(one!.say).not.toMatch(/Leave it there/)
    expect(stepWords(one!, rest, styleOf({language: 'de'})).say).toMatch(/geformt und steht warm\. .* Kühlschrank/)
    // It is put by once: from then on it stands in the cold.
    const nothing = {
      mixed: () => [],
      shaped: () => [],
      mixing: () => 25,
      notRisen: () => undefined,
      rising: () => ({inBulk: 0, proving: 0}),
    }
    const later = doughsSoFar(rest.done!.now + 30, made, [], nothing, (at) => at)
    expect(later).toEqual([expect.objectContaining({dish: 'bread', cool: true})])
  })

  it('shaped with raw meat in it, is not knocked down, and thrown away when it stood too long', () => {
    const filled = {...p, dishes: p.dishes.map((one) => ({...one, raw: true as const}))}
    const was: PlannedDough = {dish: 'bread', load: 1, mixed: 0, cool: false, shaped: 60}
    expect(putByWords(filled.dishes[0]!, was, 100)).toBe('put by filled')
    expect(putByWords(p.dishes[0]!, was, 100)).toBe('put by shaped')
  })

  it('stands in the warm still where its receipt has it there before it is put into the cold', () => {
    const [own] = asked([bread({mix: 20, rise: 600, shape: 15, hold: 30, bulkIn: {place: 'refrigerator', warm: 60}})]).dishes
    const was: PlannedDough = {dish: 'bread', load: 1, mixed: 0, cool: false}
    expect(putByWords(own!, was, 30)).toBe('put by')
    expect(putByWords(own!, was, 90)).toBe('put by cold')
  })

  it('and not where it is not mixed yet; the checker misses the line', () => {
    expect(told(left({mixed: null}).made)).toEqual([])
    const {rest, made} = left({})
    expect(broken(rest, {...made, steps: []})).toContain('dough')
  })
})

describe('an oven that is late', () => {
  const p = asked([bread({mix: 20, rise: 60, shape: 15, prove: range(40, 50), hold: 20})], 300, 2)
  const morning = plan(p)
  const at = {mix: mixOf(morning).at, shape: step(morning, 'shape').at}
  /** The rest of the day some time before the bread was to go in, the fire lit so many minutes late. */
  const again = (late: number, shaped: boolean): {rest: PlanProblem; made: Plan} => {
    const doughs: PlannedDough[] = [{dish: 'bread', load: 1, mixed: at.mix, cool: false, ...(shaped ? {shaped: at.shape} : {})}]
    const now = shaped ? at.shape + 20 : at.shape - 5
    const rest: PlanProblem = {...p, done: {now, lit: morning.lit + late, set: [], plan: morning, doughs}}
    return {rest, made: plan(rest)}
  }
  const said = (made: Plan, action: Step['action']): string => step(made, action).words!.say.id

  it('has a shaped dough wait in the cold, and one in bulk rise once more', () => {
    for (const [shaped, action, id] of [
      [true, 'prove', 'prove late'],
      [false, 'rise', 'rise late'],
    ] as const) {
      const {rest, made} = again(150, shaped)
      expect(made.unplaced).toEqual([])
      expect(check(rest, made)).toEqual([])
      expect(said(made, action)).toBe(id)
      expect(step(made, action).ifBehind).toBe(null)
      expect(stepWords(step(made, action), rest, styleOf({language: 'de'})).say).toContain('der Ofen kommt zu spät dafür')
      const plain = made.steps.map((s) => (s.action === action ? {...s, words: {...s.words!, say: {id: action, values: {}}}} : s))
      expect(broken(rest, {...made, steps: plain})).toContain('dough')
      expect(said(again(0, shaped).made, action)).toBe(action)
    }
  })

  it('has what proves back in the warm for what is left of its time', () => {
    const {rest, made} = again(150, true)
    const {warm, until} = step(made, 'prove').words!.say.values as Record<string, {value: number}>
    const proved = rest.done!.now - (at.shape + 15)
    expect(until!.value).toBe(step(made, 'load').at)
    expect(until!.value - warm!.value).toBe(Math.max(15, 45 - proved))
  })
})
