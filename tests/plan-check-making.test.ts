import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {check} from '../src/plan/check.js'
import {planDay} from '../src/plan/planner.js'
import {rules} from '../src/plan/rules.js'
import {stepsOf} from '../src/plan/steps.js'
import type {Load, Phrase, Plan, PlanProblem, Step} from '../src/plan/types.js'
import type {Dish} from '../src/scale/types.js'
import {messageWords} from '../src/sheets/said.js'
import {styleOf} from '../src/sheets/style-of.js'
import {day, dish, problem} from './plan-fixtures.js'

/** Invented days. How long what is made up may wait: common practice, no source. */
const german = styleOf({language: 'de'})
const plan = planDay(problem([dish('bread', 1, {id: 'bread'})], {}), {effort: 'quick'})
const [whole] = plan.loads as [Load]
const made = (id: string, kind: string, mass = 1): Dish => dish('gingerbread', 1, {id, title: id, kind, mass, dough: null})

interface Laid {
  readonly asked: PlanProblem
  readonly plan: Plan
}

/** A day with loads at given times, and its steps; the oven is no matter here. */
function laid(dishes: readonly Dish[], loads: ReadonlyArray<{at: number; ids: readonly string[]}>, hands = 1): Laid {
  const asked = problem(dishes, {day: {...day({fireFrom: 300}), hands}})
  const set = loads.map(({at, ids}, i) => ({
    ...whole,
    at,
    number: i + 1,
    dishes: ids.map((id) => ({...whole.dishes[0]!, dish: id, count: 1, draw: {low: at + 60, likely: at + 60, high: at + 60}})),
  }))
  const day1: Plan = {...plan, loads: set}
  return {asked, plan: {...day1, ...stepsOf(asked, day1)}}
}

const broken = ({asked, plan: of}: Laid): string[] =>
  check(asked, of).flatMap(({reason}) => (/made up|makes it up|asks for first/.test(reason) ? [reason] : []))
const withSteps = ({asked, plan: of}: Laid, change: (step: Step) => Step | readonly Step[]): Laid => ({
  asked,
  plan: {...of, steps: of.steps.flatMap((s) => (s.action === 'mix' ? change(s) : s)).sort((a, b) => a.at - b.at)},
})
const moved =
  (minutes: number) =>
  (s: Step): Step => ({...s, at: s.at + minutes})
const early = (say: Phrase): Phrase => ({...say, id: 'make up early'})

const noon = laid([made('custard', 'custard'), made('cake', 'gingerbread')], [{at: 1000, ids: ['custard', 'cake']}])
const dawn = laid([made('cake', 'gingerbread')], [{at: rules.nightTo + 5, ids: ['cake']}])

const beaten = laid([made('cake', 'sponge')], [{at: rules.nightTo + 5, ids: ['cake']}])
const pies = laid([made('pie', 'fruit pie')], [{at: rules.nightTo + 5, ids: ['pie']}])

const raw = laid([{...made('beans', 'beans'), first: [{say: 'boil them', takes: 30}]}], [{at: 1000, ids: ['beans']}])

const breaks: ReadonlyArray<[name: string, reason: RegExp, day: Laid]> = [
  ['custard made up ten hours early', /min too soon/, withSteps(noon, moved(-600))],
  ['custard made up two hours early', /min too soon/, withSteps(noon, moved(-120))],
  ['custard made up at two in the morning', /made up at night/, withSteps(noon, (s) => ({...s, at: 120}))],
  [
    'custard made up three days before, before the night',
    /is told at another time/,
    withSteps(noon, (s) => ({...s, at: s.at - 3 * 1440, words: {...s.words!, say: early(s.words!.say)}})),
  ],
  [
    'custard made up the evening before, with all the day to do it',
    /could be by day/,
    withSteps(noon, (s) => ({...s, at: rules.nightFrom - 1440 - 30, words: {...s.words!, say: early(s.words!.say)}})),
  ],
  ['what goes in at dawn made up at noon the day before', /is told at another time/, withSteps(dawn, (s) => ({...s, at: -720}))],
  [
    'what does not keep made up before the night, and nothing said of it',
    /does not keep till it is set in/,
    {...beaten, plan: {...beaten.plan, messages: beaten.plan.messages.filter(({rule}) => rule !== 'made-stale')}},
  ],
  [
    'what a caution asks for first, not told',
    /what its caution asks for first is not told/,
    withSteps(raw, (s) => {
      const {first: _, ...values} = s.words!.say.values
      return {...s, words: {...s.words!, say: {id: 'make up', values}}}
    }),
  ],
  ['what is made up twice', /made up twice/, withSteps(noon, (s) => [{...s, at: s.at - 5}, s])],
  ['what is made up for no load', /not set in then/, withSteps(noon, (s) => [s, {...s, load: 7}])],
  [
    'what is to be ready at another time',
    /for another time than it is set in/,
    withSteps(noon, (s) => {
      const {say} = s.words!
      return {...s, words: {...s.words!, say: {...say, values: {...say.values, at: {unit: 'clock', value: 700}}}}}
    }),
  ],
]

describe('the checker of what is made up', () => {
  it('finds nothing wrong with what the plan has by day and before the night', () => {
    expect(broken(noon)).toEqual([])
    expect(broken(dawn)).toEqual([])
    expect(broken(raw)).toEqual([])
    expect(broken(beaten)).toEqual([])
    const stale = ({plan: {messages}}: Laid): readonly string[] =>
      messages.flatMap((m) => (m.rule === 'made-stale' ? [m.reason] : []))
    expect(stale(beaten)).toHaveLength(1)
    // The German has its words; what keeps wants no warning.
    for (const one of beaten.plan.messages.filter((m) => m.rule === 'made-stale'))
      expect(messageWords(one, german)).toMatchObject({foreign: false})
    expect(stale(pies)).toEqual([])
    expect(pies.plan.steps.find((s) => s.action === 'mix')!.words!.say.id).toBe('make up early')
    expect(dawn.plan.steps.find((s) => s.action === 'mix')!.words!.say.id).toBe('make up early')
  })
  it.each(breaks)('catches %s', (_, reason, laidOut) => {
    const found = broken(laidOut)
    expect(found.filter((text) => reason.test(text))).not.toEqual([])
    for (const text of found) expect(messageWords({severity: 'error', reason: text}, german)).toMatchObject({foreign: false})
  })
  it('finds nothing wrong on 150 random days, from dawn on', () => {
    const kinds = ['gingerbread', 'fruit pie', 'beans', 'biscuits', 'drying fruit', 'custard', 'fruit cake', 'none such']
    const one = fc.record({kind: fc.constantFrom(...kinds), mass: fc.integer({min: 1, max: 40}), load: fc.nat(3)})
    const days = fc.record({
      dishes: fc.array(one, {minLength: 1, maxLength: 9}),
      from: fc.integer({min: 60, max: 150}),
      gaps: fc.array(fc.integer({min: 2, max: 24}), {minLength: 4, maxLength: 4}),
      hands: fc.integer({min: 1, max: 3}),
      dough: fc.boolean(),
    })
    fc.assert(
      fc.property(days, ({dishes, from, gaps, hands, dough}) => {
        const all = dishes.map(({kind, mass}, i) =>
          dough && i === 0 ? dish('bread', 1, {id: 'd0', title: 'd0'}) : made(`d${i}`, kind, mass / 10),
        )
        let at = rules.tick * from
        const loads = gaps.flatMap((gap, n) => {
          at += rules.tick * gap
          const ids = dishes.flatMap(({load}, i) => (load === n ? [`d${i}`] : []))
          return ids.length > 0 ? [{at, ids}] : []
        })
        expect(broken(laid(all, loads, hands))).toEqual([])
      }),
      {numRuns: 150, seed: 7},
    )
  })
})
