import {describe, expect, it} from 'vitest'
import {check} from '../src/plan/check.js'
import {planDay} from '../src/plan/planner.js'
import type {Plan} from '../src/plan/types.js'
import {messageWords} from '../src/sheets/said.js'
import {styleOf} from '../src/sheets/style-of.js'
import {day, dish, problem} from './plan-fixtures.js'

/** An invented day, of which the cake comes late and one pie goes in no oven. */
const german = styleOf({language: 'de'})
const pie = dish('pie', 1)
const asked = problem(
  [
    dish('bread', 2, {id: 'bread', title: 'Bread'}),
    dish('brown bread', 1, {id: 'brown', title: 'Brown bread'}),
    dish('gingerbread', 1, {id: 'cake', title: 'Cake', wantedBy: 470}),
    {...pie, id: 'pie', title: 'Pie', vessel: {...pie.vessel, height: 0.9}},
  ],
  {day: day({serve: 1000})},
)
const sound = planDay(asked, {effort: 'quick'})
const scored = (more: Partial<Plan['score']>): Plan => ({...sound, score: {...sound.score, ...more}})
const {score} = sound
const balance = sound.balance!
const [first] = sound.loads
const suggestion = {dish: 'spare', at: sound.ready + 60, draw: sound.ready + 90, zone: 'back', say: ''}
const suggested = (more: Partial<typeof suggestion>): Plan => ({...sound, suggestions: [{...suggestion, ...more}]})

const breaks: ReadonlyArray<[name: string, reason: RegExp, plan: Plan]> = [
  ['a misfit of none', /a misfit of/, scored({misfit: 0, total: score.total - 0.004 * score.misfit})],
  ['a misfit of none in the old total', /not the sum of its parts/, scored({misfit: 0})],
  ['idle floor of none', /idle floor of/, scored({idle: 0, total: score.total - 3 * score.idle})],
  ['idle floor of none in the old total', /not the sum of its parts/, scored({idle: 0})],
  ['a total with a hundred more', /not the sum of its parts/, scored({total: score.total + 100})],
  ['a total with ten less', /not the sum of its parts/, scored({total: score.total - 10})],
  ['a bound above the plan', /the bound lies above/, scored({bound: score.total + 1})],
  ['no gap under a bound', /the gap is not that/, scored({bound: score.total / 2, gap: 0})],
  ['a gap without a bound', /the gap is not that/, scored({bound: null, gap: 0.1})],
  ['more vessels left out than are', /vessels said to be left out/, scored({leftOut: {vessels: 3, least: 1}})],
  [
    'a late list invented',
    /said to be late, and not so/,
    {...sound, late: [...sound.late!, {dish: 'bread', wanted: 600, drawn: 700}]},
  ],
  ['a late list left out', /late, and not said to be/, (({late: _, ...rest}): Plan => rest)(sound)],
  [
    'a late dish by too little',
    /said to be late, and not so/,
    {...sound, late: sound.late!.map((one) => ({...one, drawn: one.wanted + 5}))},
  ],
  [
    'an unknown dish left out',
    /goose: no dish of the day/,
    {...sound, unplaced: [...sound.unplaced, {dish: 'goose', rule: 'room', reason: '', remedies: []}]},
  ],
  [
    'an unknown dish in the way',
    /goose: no dish of the day/,
    {...sound, unplaced: sound.unplaced.map((u) => ({...u, conflict: ['goose']}))},
  ],
  ['a dish left out twice', /left out twice/, {...sound, unplaced: [...sound.unplaced, ...sound.unplaced]}],
  ['a suggestion before the oven is ready', /cannot be baked/, suggested({at: sound.lit, draw: sound.lit + 5})],
  ['a suggestion at night', /cannot be baked/, suggested({draw: 1440 + 120})],
  ['a suggestion drawn before it goes in', /cannot be baked/, suggested({draw: sound.ready + 30})],
  [
    'a balance of ten times the floor',
    /other floor than is told/,
    {...sound, balance: balance.map((b) => ({...b, floor: 10 * b.floor}))},
  ],
  ['a balance of ten times the use', /use other floor/, {...sound, balance: balance.map((b) => ({...b, used: 10 * b.used}))}],
  ['a balance of twice the heat', /take other heat/, {...sound, balance: balance.map((b) => ({...b, heat: 2 * b.heat + 1}))}],
  ['a balance an hour off', /told at another time/, {...sound, balance: balance.map((b) => ({...b, from: b.from + 60}))}],
  [
    'heat left of no simulation',
    /holds other heat/,
    {...sound, balance: balance.map((b) => ({...b, left: {low: 1, likely: 2, high: 3}}))},
  ],
  ['no balance', /is not told/, {...sound, balance: []}],
  ['an end hotter than the curve', /not what the curve has then/, {...sound, left: {...sound.left!, celsius: 300}}],
]

describe('the checker of what a plan says of itself', () => {
  it('finds nothing wrong with the plan it is given', () => {
    expect(sound.late!.map((one) => one.dish)).toEqual(['cake'])
    expect(sound.unplaced.map((one) => one.dish)).toEqual(['pie'])
    expect(first).toBeDefined()
    expect(check(asked, sound)).toEqual([])
    expect(check(asked, suggested({}))).toEqual([])
  })
  it.each(breaks)('catches %s', (_, reason, plan) => {
    const found = check(asked, plan)
    expect(found.map((v) => v.reason).filter((text) => reason.test(text))).not.toEqual([])
    for (const one of found) expect(messageWords({severity: 'error', reason: one.reason}, german)).toMatchObject({foreign: false})
  })
})
