import {describe, expect, it} from 'vitest'
import {check} from '../src/plan/check.js'
import {planDay} from '../src/plan/planner.js'
import type {Plan, PlanProblem, Step} from '../src/plan/types.js'
import {messageWords} from '../src/sheets/said.js'
import {styleOf} from '../src/sheets/style-of.js'
import {day, dish, fallingOven, problem} from './plan-fixtures.js'

/** An invented day on two fires, of an oven that falls as `fallingOven` has it, whatever burns in it. */
const first = fallingOven(120, 285)
const again = {wood: 9, burn: 60, soak: 30}
const asked: PlanProblem = problem([dish('bread', 2), dish('gingerbread', 1)], {
  day: day({serve: 1000, firings: 2}),
  firings: [{...first, further: [{minutes: 900, firing: again}]}],
})
const sound = planDay(asked, {effort: 'quick'})
const second = sound.fires![1]!

const german = styleOf({language: 'de'})

type Fire = NonNullable<Plan['fires']>[number]
const withFire = (i: number, more: Partial<Fire>): Plan => ({
  ...sound,
  fires: sound.fires!.map((fire, j) => (i === j ? {...fire, ...more} : fire)),
})
const later = (minutes: number): Partial<Fire> => ({
  lit: second.lit + minutes,
  raked: second.raked + minutes,
  ready: second.ready + minutes,
})
const moved = (action: Step['action'], minutes: number): Step[] =>
  sound.steps.map((s) => (s.action === action ? {...s, at: s.at + minutes} : s)).sort((a, b) => a.at - b.at)
const curve = (edge: 'low' | 'likely' | 'high', of: (celsius: number) => number): Plan => ({
  ...sound,
  forecast: {...sound.forecast, baking: {...sound.forecast.baking, [edge]: sound.forecast.baking[edge].map(of)}},
})

const breaks: ReadonlyArray<[name: string, rule: string, plan: Plan]> = [
  ...[30, 60, 90, -45].map((minutes): [string, string, Plan] => [
    `a second fire ${minutes} min from where the curve has it`,
    'fire',
    withFire(1, later(minutes)),
  ]),
  ['a second fire raked out at eleven in the evening', 'night', withFire(1, later(120))],
  [
    'a second fire that burns five minutes and does not soak',
    'fire',
    withFire(1, {raked: second.lit + 5, ready: second.lit + 5}),
  ],
  ['a second fire without its soak', 'fire', withFire(1, {ready: second.raked})],
  ['a second fire of no wood', 'fire', withFire(1, {firing: {...again, wood: 0}})],
  ['the first fire told an hour late', 'fire', {...withFire(0, {lit: sound.lit + 60}), steps: moved('light', 60)}],
  ['the first fire told with less wood', 'fire', withFire(0, {firing: {...sound.firing, wood: sound.firing.wood - 10}})],
  ['no fires told at all', 'fire', (({fires: _, ...rest}): Plan => rest)(sound)],
  ['coals raked out an hour early', 'fire', {...withFire(0, {raked: sound.raked - 60}), steps: moved('rake', -60)}],
  ['coals raked out half an hour late', 'fire', {...withFire(0, {raked: sound.raked + 30}), raked: sound.raked + 30}],
  ['no soak', 'fire', {...withFire(0, {ready: sound.raked}), ready: sound.raked}],
  ['a curve of a shorter fire', 'forecast', {...sound, forecast: {...sound.forecast, raked: 60, ready: 90}}],
  ['a curve hotter than the fire makes it', 'forecast', curve('likely', (t) => t + 15)],
  [
    'a range with its low collapsed',
    'forecast',
    {
      ...sound,
      forecast: {
        ...sound.forecast,
        baking: {...sound.forecast.baking, low: sound.forecast.baking.likely, high: sound.forecast.baking.likely},
      },
    },
  ],
  ['a low over the likely', 'forecast', curve('low', (t) => t + 40)],
]

describe('the checker of fires', () => {
  it('finds nothing wrong with the plan it is given', () => {
    expect(sound.fires).toHaveLength(2)
    expect(check(asked, sound)).toEqual([])
  })
  it.each(breaks)('catches %s', (_, rule, plan) => {
    const found = check(asked, plan)
    expect(found.map((v) => v.rule)).toContain(rule)
    for (const {reason} of found) expect(messageWords({severity: 'error', reason}, german)).toMatchObject({foreign: false})
  })
})
