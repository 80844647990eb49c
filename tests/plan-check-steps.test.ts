import {describe, expect, it} from 'vitest'
import {check} from '../src/plan/check.js'
import {phrase} from '../src/plan/phrases.js'
import {planDay} from '../src/plan/planner.js'
import type {Phrase, PhraseValue, Plan, PlanProblem, Step} from '../src/plan/types.js'
import {messageWords} from '../src/sheets/said.js'
import {styleOf} from '../src/sheets/style-of.js'
import {day, dish, problem} from './plan-fixtures.js'

/** An invented day: a dough that proves, beans put to soak, a custard long before its meal, and a cake that wants the door shut. */
const german = styleOf({language: 'de'})
const {need} = dish('gingerbread', 1)
const asked: PlanProblem = problem(
  [
    dish('bread', 2, {
      id: 'bread',
      title: 'Bread',
      wantedBy: 800,
      dough: {
        mix: 20,
        rise: 90,
        shape: 15,
        prove: {low: 30, likely: 40, high: 50},
        hold: 30,
        sponge: {low: 60, likely: 90, high: 120},
      },
    }),
    dish('beans', 1, {id: 'beans', title: 'Beans', evening: [{does: 'soak', words: 'soak them', items: []}]}),
    dish('gingerbread', 1, {id: 'cake', title: 'Cake', need: {...need, closed: {low: 10, likely: 15, high: 20}}}),
    dish('custard', 1, {id: 'custard', title: 'Custard', wantedBy: 1440 + 700, cautions: ['warm-cream']}),
  ],
  {day: day({serve: 1100, fireFrom: 360})},
)
const sound = planDay(asked, {effort: 'quick'})

const sorted = (steps: readonly Step[]): Plan => ({...sound, steps: [...steps].sort((a, b) => a.at - b.at)})
/** Steps of some kind changed; all of them where no dish is named. */
const changed = (action: Step['action'], change: (step: Step) => Step, id?: string): Plan =>
  sorted(sound.steps.map((s) => (s.action === action && (id === undefined || s.dishes.includes(id)) ? change(s) : s)))
const without = (action: Step['action']): Plan => sorted(sound.steps.filter((s) => s.action !== action))
const again = (action: Step['action'], minutes: number): Plan => {
  const step = sound.steps.find((s) => s.action === action)!
  return sorted([...sound.steps, {...step, at: step.at + minutes}])
}
const moved = (action: Step['action'], minutes: number): Plan => changed(action, (s) => ({...s, at: s.at + minutes}))
const blank = (phrase: Phrase, name: string, value: PhraseValue): Phrase => ({
  ...phrase,
  values: {...phrase.values, [name]: value},
})
/** A step that says something else, in its words and in their figures. */
const says = (action: Step['action'], name: string, change: (value: PhraseValue) => PhraseValue): Plan =>
  changed(action, (s) => ({...s, words: {...s.words!, say: blank(s.words!.say, name, change(s.words!.say.values[name]!))}}))
const plus =
  (by: number) =>
  (value: PhraseValue): PhraseValue =>
    typeof value === 'object' && 'value' in value ? {...value, value: value.value + by} : value

const breaks: ReadonlyArray<[name: string, reason: RegExp, plan: Plan]> = [
  ['a second draw ten minutes before', /a step draws it when the plan does not/, again('draw', -10)],
  ['a second draw half an hour before', /a step draws it when the plan does not/, again('draw', -30)],
  [
    'a draw of fewer than the plan draws',
    /a step tells of 1 where the plan has 2/,
    changed(
      'draw',
      (step) => ({
        ...step,
        words: {
          ...step.words!,
          say: blank(step.words!.say, 'dishes', {
            unit: 'phrases',
            phrases: [
              phrase('some of', {
                dishes: {unit: 'dishes', dishes: ['bread']},
                count: {unit: 'count', value: 1},
                all: {unit: 'count', value: 2},
              }),
            ],
          }),
        },
      }),
      'bread',
    ),
  ],
  ['a second load two hours after', /a step sets it in when the plan does not/, again('load', 120)],
  [
    'a load of what the day does not have',
    /no dish of the day/,
    changed('load', (s) => ({...s, dishes: [...s.dishes, 'goose']})),
  ],
  [
    'a load that says another place',
    /not those of its figures/,
    changed('load', (s) => ({...s, say: 'Set in load 9: all at the mouth.'})),
  ],
  ['a load with another number', /says other places/, says('load', 'load', () => 9)],
  ['less wood to light with', /other wood than is burned/, says('light', 'wood', plus(-5))],
  ['a longer fire', /another time than the fire has/, says('light', 'burn', plus(30))],
  ['more wood to feed', /other wood than is burned/, says('feed', 'wood', plus(2))],
  ['no feeding', /no step feeds the fire/, without('feed')],
  ['no soak', /no step lets the heat even out/, without('soak')],
  ['no test', /no step tests the heat/, without('test')],
  ['a test of another heat', /is not that of the oven/, says('test', 'celsius', plus(80))],
  ['no door kept shut', /no step (?:keeps|shuts) the door/, without('shut')],
  ['a second shutting', /a step shuts the door when/, again('shut', 5)],
  ['a second fire to light', /a fire that the plan does not have/, again('light', 300)],
  [
    'steps all of 20 °C',
    /a step says 20 °C/,
    sorted(sound.steps.map((s) => (s.celsius ? {...s, celsius: {low: 20, likely: 20, high: 20}} : s))),
  ],
  ['draws that say no heat', /does not say how hot/, changed('draw', (s) => ({...s, celsius: null}))],
  [
    'a draw to be looked for at another time',
    /another time to look for it/,
    changed('draw', (s) => ({
      ...s,
      words: {...s.words!, ifAhead: blank(s.words!.ifAhead!, 'early', {unit: 'clock', value: 60})},
    })),
  ],
  [
    'a draw of no words',
    /not those of its figures/,
    changed('draw', ({words: _, ...s}) => ({...s, say: 'Draw.', ifBehind: null})),
  ],
  [
    'a custard drawn a day before it is eaten, and no word of that',
    /how it is kept until it is eaten/,
    changed(
      'draw',
      (s) => ({...s, words: {...s.words!, ifBehind: {id: 'behind draw', values: {late: s.words!.ifBehind!.values['late']!}}}}),
      'custard',
    ),
  ],
  ['a step that says it is past', /whether it is past/, changed('light', (s) => ({...s, past: true}))],
  ['no shaped dough left to rise', /no step leaves its shaped dough to rise/, without('prove')],
  ['a dough left to rise an hour late', /its dough is told to rise at another time/, moved('rise', 60)],
  ['a dough left to rise until another hour', /its dough is told to rise at another time/, says('rise', 'until', plus(120))],
  ['a shaped dough left to rise an hour late', /its shaped dough is told to rise/, moved('prove', 60)],
  ['a dough that proves before it is shaped', /its shaped dough is told to rise/, moved('prove', -40)],
  ['a sponge that works until another hour', /its sponge is told to work until/, says('sponge', 'until', plus(60))],
  ['a dough shaped twice', /told of twice/, again('shape', 5)],
  ['no beans put to soak', /no step of the evening before/, without('evening before')],
  [
    'beans put to soak when they go in',
    /evening before is told at another time/,
    changed('evening before', ({untimed: _, ...s}) => ({
      ...s,
      at: sound.loads.find((l) => l.dishes.some((d) => d.dish === 'beans'))!.at,
    })),
  ],
  ['beans put to soak twice', /that no receipt has/, again('evening before', 0)],
]

describe('the checker of steps', () => {
  it('finds nothing wrong with the plan it is given', () => {
    expect(sound.unplaced).toEqual([])
    expect(new Set(sound.steps.map((s) => s.action)).size).toBe(15)
    expect(check(asked, sound)).toEqual([])
  })
  it.each(breaks)('catches %s', (_, reason, plan) => {
    const found = check(asked, plan)
    expect(found.map((v) => v.reason).filter((text) => reason.test(text))).not.toEqual([])
    for (const one of found) expect(messageWords({severity: 'error', reason: one.reason}, german)).toMatchObject({foreign: false})
  })
})
