import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {kinds} from '../src/lexicon/kinds.js'
import {makings} from '../src/lexicon/making-work.js'
import {check} from '../src/plan/check.js'
import {floorGrid} from '../src/plan/floor-grid.js'
import {makingOf} from '../src/plan/making-time.js'
import {jobsOf, modelOf, programOf} from '../src/plan/model.js'
import {planDay} from '../src/plan/planner.js'
import {rules} from '../src/plan/rules.js'
import {stepsOf} from '../src/plan/steps.js'
import type {Load, Plan, PlanProblem} from '../src/plan/types.js'
import type {Dish} from '../src/scale/types.js'
import {stepWords} from '../src/sheets/phrases.js'
import {styleOf} from '../src/sheets/style-of.js'
import {day, dish, problem} from './plan-fixtures.js'

/** An invented day. How long making up takes and what may wait made up: common practice, no source. */
const plan = planDay(problem([dish('bread', 2, {id: 'bread'})], {}), {effort: 'quick'})
const [whole] = plan.loads as [Load]

/** A dish with no dough, of a kind, so many kilograms a vessel. */
const made = (id: string, kind: string, mass = 1, more: Partial<Dish> = {}): Dish =>
  dish('gingerbread', 1, {id, title: id, kind, mass, dough: null, ...more})

/** The model of a day on its longest fire, lit so that the slack oven falls into the night. */
function modelFor(asked: PlanProblem) {
  const grid = floorGrid(asked)
  const jobs = jobsOf(asked, grid)
  const index = asked.firings.length - 1
  return {jobs, model: modelOf(asked, programOf(asked, index, jobs, grid, null, false), jobs, grid, asked.day.fireFrom)}
}

/** The steps of a day with loads at given times, and what is said of hands. */
function stepsFor(dishes: readonly Dish[], loads: ReadonlyArray<{at: number; ids: readonly string[]}>, hands = 1) {
  const asked: PlanProblem = problem(dishes, {day: {...day({}), hands}})
  const laid: Plan = {
    ...plan,
    loads: loads.map(({at, ids}, i) => ({
      ...whole,
      at,
      number: i + 1,
      dishes: ids.map((id) => ({
        ...whole.dishes[0]!,
        dish: id,
        count: dishes.find((d) => d.id === id)!.count,
        draw: {low: at + 60, likely: at + 60, high: at + 60},
      })),
    })),
  }
  const {steps, messages} = stepsOf(asked, laid)
  return {asked, laid: {...laid, steps, messages}, made: steps.filter(({action}) => action === 'mix'), messages}
}
const LATE = 1000

describe('what does not keep, made up', () => {
  const night = (kind: string): PlanProblem => {
    const heats = {startLow: 42, startBest: 60, startHigh: 80, endLow: 30, done: 30, reference: 45}
    const need = {...dish('apples', 1).need, ...heats, minutes: {low: 30, likely: 30, high: 60}}
    return problem([made('slack', kind, 1, {need, wantedBy: 1440 + 720})], {})
  }
  it('is not set in at the end of the night before it can be made up by day, and what keeps may be', () => {
    for (const [kind, keeps] of [
      ['meringue', false],
      ['custard', true],
    ] as const) {
      const asked = night(kind)
      const {jobs, model} = modelFor(asked)
      const own = jobs[0]!
      expect(own.making).toBe(keeps ? 0 : makingOf(own.dish, own.dish.count).minutes)
      const clocks = Array.from(model.s[0]!, (s) => model.clock0 + s * rules.tick).filter((at) => at >= 1440)
      expect(Math.min(...clocks)).toBe(1440 + rules.nightTo + own.making!)
    }
  })

  it('is so planned, and made up right before', () => {
    const found = planDay(night('meringue'), {effort: 'quick'})
    const [load] = found.loads
    const step = found.steps.find(({action}) => action === 'mix')!
    expect(step.words!.say.id).toBe('make up')
    expect(load!.at - step.at).toBe(makingOf(night('meringue').dishes[0]!, 1).minutes)
    expect(found.messages.filter(({rule}) => rule === 'made-stale')).toEqual([])
  })
})

describe('what is made up for a load', () => {
  it('names only kinds that there are, and has a row for every other', () => {
    for (const row of makings) for (const id of row.kinds) expect(kinds.map((k) => k.id)).toContain(id)
    expect(makings.at(-1)!.kinds).toEqual([])
    expect(makings.slice(0, -1).every((row) => row.kinds.length > 0)).toBe(true)
  })

  it('is not wood to season: sticks are only laid in', () => {
    const {made: steps} = stepsFor([made('wood', 'drying wood', 10)], [{at: LATE, ids: ['wood']}])
    expect(steps).toEqual([])
  })

  it('is begun so long before as it takes, more of it sooner', () => {
    const [little, much] = [made('one', 'gingerbread', 1), made('two', 'gingerbread', 5)]
    for (const one of [little, much]) {
      const {made: steps} = stepsFor([one], [{at: LATE, ids: [one.id]}])
      expect(steps.map(({at}) => at)).toEqual([LATE - makingOf(one, 1).minutes])
    }
    expect(makingOf(much, 1).minutes).toBeGreaterThan(makingOf(little, 1).minutes)
  })

  // Beans that are not boiled first: FDA, Bad Bug Book, phytohaemagglutinin; how long it takes, common practice, no source.
  it('has told what a caution asks for first, with the time it takes, and whose it is', () => {
    const work = {say: 'boil the beans', takes: 30}
    const beans = made('beans', 'beans', 1, {first: [work]})
    const [alone] = stepsFor([beans], [{at: LATE, ids: ['beans']}]).made
    expect(alone!.say).toBe('beans: make up, ready to set in at 16:40. First boil the beans.')
    expect(makingOf(beans, 1).minutes).toBe(makingOf(made('other', 'beans'), 1).minutes + work.takes)
    expect(alone!.at).toBe(LATE - makingOf(beans, 1).minutes)
    const [both] = stepsFor([beans, made('pie', 'fruit pie')], [{at: LATE, ids: ['beans', 'pie']}]).made
    expect(both!.say).toMatch(/make up in this order, ready to set in at 16:40\. First for beans boil the beans\.$/)
    const german = stepWords(both!, problem([beans, made('pie', 'fruit pie')]), styleOf({language: 'de'})).say
    expect(german).toContain('Zuvor für beans')
  })

  // Raw meat is held at 41 °F (5 °C) or below: FDA Food Code 2022, 3-501.16(A)(2).
  it('stands cold until it is set in where raw meat or fish is in it', () => {
    const dishes = [made('rolls', 'sausage rolls', 1, {raw: true}), made('apple pie', 'fruit pie')]
    const asked = [{at: LATE, ids: ['rolls', 'apple pie']}]
    const [step] = stepsFor(dishes, asked).made
    expect(step!.ifAhead).toMatch(/^Raw meat or fish: keep rolls in the refrigerator, at 5 °C \(41 °F\) or colder, until set in/)
    const german = stepWords(step!, problem(dishes), styleOf({language: 'de'})).ifAhead
    expect(german).toMatch(/^Rohes Fleisch oder roher Fisch: rolls bis zum Einschießen im Kühlschrank/)
    const [pie] = stepsFor([dishes[1]!], [{at: LATE, ids: ['apple pie']}]).made
    expect(pie!.ifAhead).toBeNull()
  })

  it('is made one after the other by one pair of hands, what may wait first, and side by side by two', () => {
    const dishes = [made('batter', 'gingerbread'), made('pie', 'fruit pie'), made('beans', 'beans')]
    const ids = dishes.map(({id}) => id)
    const takes = dishes.reduce((sum, one) => sum + makingOf(one, 1).minutes, 0)
    const [alone] = stepsFor(dishes, [{at: LATE, ids}]).made
    expect(alone!.at).toBe(LATE - takes)
    expect(alone!.dishes.at(-1)).toBe('batter')
    expect(alone!.say).toBe('pie, beans and batter: make up in this order, ready to set in at 16:40.')
    const german = stepWords(alone!, problem(dishes), styleOf({language: 'de'})).say
    expect(german).toBe('pie, beans und batter: der Reihe nach fertig machen zum Einschießen um 16:40.')
    const [two] = stepsFor(dishes, [{at: LATE, ids}], 2).made
    expect(two!.at).toBeGreaterThan(alone!.at)
    expect(two!.at).toBeLessThanOrEqual(LATE - takes / 2)
  })

  it('leaves the last minutes to what may not wait, of whatever load', () => {
    const dishes = [made('scones', 'biscuits', 2), made('apples', 'drying fruit', 2)]
    const {made: steps} = stepsFor(dishes, [
      {at: LATE, ids: ['scones']},
      {at: LATE + 20, ids: ['apples']},
    ])
    const at = (id: string): number => steps.find((s) => s.dishes.includes(id))!.at
    // What is dried waits four hours, so it makes room for the scones.
    expect(at('scones')).toBe(LATE - makingOf(dishes[0]!, 1).minutes)
    expect(at('apples')).toBeLessThan(at('scones') + makingOf(dishes[0]!, 1).minutes)
  })

  it('is put down for a dough that is to be shaped', () => {
    const bread = dish('bread', 4, {id: 'bread', dough: {mix: 20, rise: 60, shape: 30, hold: 0}})
    const cake = made('cake', 'gingerbread')
    const alone = stepsFor([cake], [{at: LATE, ids: ['cake']}]).made[0]!.at
    const {made: steps, messages} = stepsFor([bread, cake], [{at: LATE, ids: ['bread', 'cake']}])
    // The loaf is shaped in the last half hour, so the cake is made before that; it waits longer than a batter should, which is said.
    expect(steps.find((s) => s.dishes.includes('cake'))!.at).toBe(alone - 30)
    expect(messages.map(({rule, reason}) => [rule, reason.replace(/\(.*\)/, '')])).toEqual([
      ['hands', 'cake: it is to be made up while the hands are full '],
    ])
  })

  it('asks for as many hands as would do, once for all that is in haste', () => {
    const dishes = Array.from({length: 8}, (_, i) => made(`batter-${i}`, 'gingerbread'))
    const load = [{at: LATE, ids: dishes.map(({id}) => id)}]
    const {messages} = stepsFor(dishes, load)
    expect(messages).toHaveLength(1)
    const {reason, suggest} = messages[0]!
    expect(reason).toMatch(/^\d+ dishes are to be made up while the hands are full, the first about \d+:\d\d: .*; …$/)
    const enough = Number(/hands: (\d+)/.exec(suggest!)![1])
    expect(stepsFor(dishes, load, enough - 1).messages).toHaveLength(1)
    expect(stepsFor(dishes, load, enough).messages).toEqual([])
    const crowd = Array.from({length: 60}, (_, i) => made(`batter-${i}`, 'gingerbread', 3))
    const {messages: none} = stepsFor(crowd, [{at: LATE, ids: crowd.map(({id}) => id)}])
    expect(none[0]!.suggest).toBe('make up beforehand what keeps, ask for less, or for many more hands')
  })

  it('is caught by the checker where it is begun too late for the hands, or not said', () => {
    const dishes = [made('pie', 'fruit pie'), made('beans', 'beans')]
    const {asked, laid} = stepsFor(dishes, [{at: LATE, ids: ['pie', 'beans']}])
    const broken = (steps: Plan['steps']): string[] =>
      check(asked, {...laid, steps})
        .filter(({reason}) => reason.includes('made up') || reason.includes('makes it up'))
        .map(({rule}) => rule)
    expect(broken(laid.steps)).toEqual([])
    expect(broken(laid.steps.map((s) => (s.action === 'mix' ? {...s, at: s.at + 10} : s)))).toEqual(['hands'])
    expect(broken(laid.steps.filter((s) => s.action !== 'mix'))).toEqual(['steps', 'steps'])
  })

  it('never takes more hands than there are, and is always said: 200 random days', () => {
    const names = ['gingerbread', 'fruit pie', 'beans', 'biscuits', 'drying fruit', 'custard', 'fruit cake', 'none such']
    const one = fc.record({
      kind: fc.constantFrom(...names),
      mass: fc.integer({min: 1, max: 30}),
      load: fc.integer({min: 0, max: 3}),
    })
    const days = fc.record({
      dishes: fc.array(one, {minLength: 1, maxLength: 9}),
      gaps: fc.array(fc.integer({min: 2, max: 24}), {minLength: 4, maxLength: 4}),
      hands: fc.integer({min: 1, max: 3}),
      dough: fc.boolean(),
    })
    fc.assert(
      fc.property(days, ({dishes, gaps, hands, dough}) => {
        const all = dishes.map(({kind, mass}, i) =>
          dough && i === 0 ? dish('bread', 3, {id: 'd0', title: 'd0'}) : made(`d${i}`, kind, mass / 10),
        )
        let at = 600
        const loads = gaps.flatMap((gap, n) => {
          at += rules.tick * gap
          const ids = dishes.flatMap(({load}, i) => (load === n ? [`d${i}`] : []))
          return ids.length > 0 ? [{at, ids}] : []
        })
        const {asked, laid} = stepsFor(all, loads, hands)
        const faults = check(asked, laid).filter(({reason}) => reason.includes('made up') || reason.includes('makes it up'))
        expect(faults).toEqual([])
        for (const step of laid.steps) if (step.action === 'mix') expect(step.at % rules.tick).toBe(0)
      }),
      {numRuns: 200, seed: 5},
    )
  })
})
