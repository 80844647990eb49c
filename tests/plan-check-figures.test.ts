import {describe, expect, it} from 'vitest'
import {check} from '../src/plan/check.js'
import {planDay} from '../src/plan/planner.js'
import type {Load, Plan} from '../src/plan/types.js'
import {messageWords} from '../src/sheets/said.js'
import {styleOf} from '../src/sheets/style-of.js'
import {day, dish, problem} from './plan-fixtures.js'

/** An invented day. */
const asked = problem([dish('bread', 2), dish('gingerbread', 1), dish('beans', 1)], {day: day({serve: 1000})})
const sound = planDay(asked, {effort: 'quick'})

const german = styleOf({language: 'de'})

type Entry = Load['dishes'][number]
/** The first set-in of a dish changed. */
const withEntry = (id: string, change: (entry: Entry) => Partial<Entry>): Plan => ({
  ...sound,
  loads: sound.loads.map((l) => ({...l, dishes: l.dishes.map((d) => (d.dish === id ? {...d, ...change(d)} : d))})),
})
const hotter = ({low, likely, high}: Entry['celsiusIn']): Entry['celsiusIn'] => ({low, likely: likely + 80, high: high + 80})

const breaks: ReadonlyArray<[name: string, rule: string, plan: Plan]> = [
  ['a set-in said to be 80 °C hotter', 'forecast', withEntry('bread-1', (d) => ({celsiusIn: hotter(d.celsiusIn)}))],
  ['a draw said to be 80 °C hotter', 'forecast', withEntry('bread-1', (d) => ({celsiusOut: hotter(d.celsiusOut)}))],
  ['a draw range a day long', 'draw range', withEntry('bread-1', ({draw}) => ({draw: {...draw, high: draw.high + 1440}}))],
  [
    'a draw range of no width',
    'draw range',
    withEntry('bread-1', ({draw: {likely}}) => ({draw: {low: likely, likely, high: likely}})),
  ],
  [
    'a draw looked for as soon as it is set in',
    'draw range',
    withEntry('bread-1', ({draw}) => ({
      draw: {...draw, low: sound.loads.find((l) => l.dishes.some((d) => d.dish === 'bread-1'))!.at},
    })),
  ],
  ['what stands in one part said to stand across', 'zone', withEntry('gingerbread-1', () => ({zone: 'across'}))],
  [
    'two vessels with one number',
    'count',
    {...sound, loads: sound.loads.map((l) => ({...l, placed: l.placed.map((p) => ({...p, number: 1}))}))},
  ],
  ['loads with one number', 'count', {...sound, loads: sound.loads.map((l) => ({...l, number: 1}))}],
]

describe('the checker of what is said of set-ins and draws', () => {
  it('finds nothing wrong with the plan it is given', () => {
    expect(sound.loads.length).toBeGreaterThan(1)
    expect(check(asked, sound)).toEqual([])
  })
  it.each(breaks)('catches %s', (_, rule, plan) => {
    const found = check(asked, plan)
    expect(found.map((v) => v.rule)).toContain(rule)
    for (const {reason} of found) expect(messageWords({severity: 'error', reason}, german)).toMatchObject({foreign: false})
  })
})
