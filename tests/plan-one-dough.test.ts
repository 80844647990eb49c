import {describe, expect, it} from 'vitest'
import {check} from '../src/plan/check.js'
import {doughsSoFar, type ToldDoughs} from '../src/plan/dough.js'
import {partsOf} from '../src/plan/followed.js'
import {planDay} from '../src/plan/planner.js'
import {stepsOf} from '../src/plan/steps.js'
import type {Load, Plan, PlannedDough, PlanProblem, Step} from '../src/plan/types.js'
import {stepWords} from '../src/sheets/phrases.js'
import {plainStyle} from '../src/sheets/style.js'
import {styleOf} from '../src/sheets/style-of.js'
import {inOvenNow} from '../src/sheets/to-do.js'
import {dish, problem} from './plan-fixtures.js'

/** An invented day planned again once its dough was mixed. That a dough mixed at once is one, however it goes in: common practice, no source. */
const bread = dish('bread', 6, {
  id: 'bread',
  title: 'Bread',
  dough: {mix: 20, rise: 90, shape: 15, prove: {low: 20, likely: 40, high: 60}, hold: 60},
})
const asked = problem([bread], {})
const morning = planDay(asked, {effort: 'quick'})
const [whole] = morning.loads as [Load]
const now = whole.at - 100
const mixed = morning.steps.find((s) => s.action === 'mix')!.at
const told: ToldDoughs = {
  mixed: () => [],
  shaped: () => [],
  mixing: () => 20,
  notRisen: () => undefined,
  rising: () => ({inBulk: 110, proving: 55}),
}
const soFar = (plan: Plan, at = now): PlannedDough[] => doughsSoFar(at, plan, partsOf(plan.loads), told, (planned) => planned)

/** The rest of the day with its bread in loads of so many, 20 minutes apart. */
function rest(doughs: readonly PlannedDough[], counts: readonly number[], at = now): {today: PlanProblem; plan: Plan} {
  const today: PlanProblem = {...asked, done: {now: at, lit: morning.lit, set: [], plan: morning, doughs}}
  const loads = counts.map((count, i): Load => {
    const at = whole.at + 20 * i
    const draw = {low: at + 40, likely: at + 40, high: at + 40}
    return {...whole, number: i + 1, at, placed: [], dishes: [{...whole.dishes[0]!, count, draw}]}
  })
  const plan = {...morning, loads}
  const {steps, messages} = stepsOf(today, plan)
  return {today, plan: {...plan, steps, messages}}
}

const ofDough = ({steps}: Plan): Step[] => steps.filter((s) => ['mix', 'rise', 'shape', 'prove'].includes(s.action))
const wrong = ({today, plan}: ReturnType<typeof rest>): string[] =>
  check(today, plan).flatMap(({rule, reason}) => (rule === 'dough' ? [reason] : []))

describe('a dough that was mixed for one load and is baked in three', () => {
  const doughs = soFar(morning)
  const again = rest(doughs, [2, 2, 2])

  it('is told to be mixed once, and shaped part by part', () => {
    expect(morning.loads).toHaveLength(1)
    expect(doughs).toMatchObject([{dish: 'bread', mixed, whole: true}])
    const said = ofDough(again.plan).filter(({action}) => action !== 'prove')
    expect(said.map(({action, load, further}) => [action, load, further])).toEqual([
      ['mix', 1, [2, 3]],
      ['rise', 1, [2, 3]],
      ['shape', 1, undefined],
      ['shape', 2, undefined],
      ['shape', 3, undefined],
    ])
    expect(said.map(({say}) => say.replace(/ until.*/, ''))).toEqual([
      'Bread: mix the dough.',
      'Bread: leave the dough to rise',
      'Bread, part 1 of 3 (2 for load 1): shape the dough.',
      'Bread, part 2 of 3 (2 for load 2): shape the dough.',
      'Bread, part 3 of 3 (2 for load 3): shape the dough.',
    ])
    const shapes = said.filter(({action}) => action === 'shape')
    expect(said[1]!.words!.say.values['until']).toEqual({unit: 'clock', value: Math.min(...shapes.map(({at}) => at))})
    expect(stepWords(shapes[1]!, again.today, styleOf({language: 'de'})).say).toBe(
      'Bread, Teil 2 von 3 (2 für Schuss 2): den Teig formen.',
    )
  })

  it('is so told again when the day is planned once more', () => {
    const once = soFar(again.plan)
    expect(once.map(({load, mixed: at, whole: all}) => [load, at, all])).toEqual([1, 2, 3].map((n) => [n, mixed, true]))
  })

  it('is held to that by the checker', () => {
    expect(wrong(again)).toEqual([])
    const steps = again.plan.steps.map((s) => (s.action === 'rise' ? {...s, at: s.at + 30} : s))
    expect(wrong({...again, plan: {...again.plan, steps}})).toContain('Bread: its dough is told to rise at another time')
    // Nobody mixes one dough for three loads that the plan of the morning has not.
    const {done: _, ...fresh} = again.today
    expect(wrong({today: fresh, plan: again.plan})).toContain('Bread: its dough is told of twice')
  })
})

it('a dough that was shaped before is told to be shaped once, and to prove for each load', () => {
  const later = whole.at - 45
  const again = rest(soFar(morning, later), [2, 4], later)
  expect(ofDough(again.plan).map(({say}) => say.replace(/ until.*/, ''))).toEqual([
    'Bread: mix the dough.',
    'Bread: leave the dough to rise',
    'Bread: shape the dough.',
    'Bread, part 1 of 2 (2 for load 1): leave the shaped dough to rise',
    'Bread, part 2 of 2 (4 for load 2): leave the shaped dough to rise',
  ])
  expect(wrong(again)).toEqual([])
})

it('doughs that were mixed for two loads are told apart, and so is what is not mixed yet', () => {
  const [own] = soFar(morning) as [PlannedDough]
  const {whole: _, ...part} = own
  const twice = rest(
    [
      {...part, mixed: mixed - 5},
      {...part, load: 2},
    ],
    [3, 3],
  )
  expect(ofDough(twice.plan).flatMap(({action, say}) => (action === 'mix' ? [say] : []))).toEqual([
    'Bread, batch 1 of 2 (3 for load 1): mix the dough.',
    'Bread, batch 2 of 2 (3 for load 2): mix the dough.',
  ])
  const {steps} = rest([{...own, mixed: null}], [3, 3]).plan
  expect(steps.flatMap(({action, say}) => (action === 'mix' ? [say] : []))).toHaveLength(2)
})

describe('a load of which some is in, and the rest goes in at the same hour', () => {
  it('has the rest of its dough, as it was mixed and shaped, and says how many are in', () => {
    const at = whole.at
    const doughs: PlannedDough[] = [{dish: 'bread', load: 1, mixed, cool: false, whole: true, shaped: at - 55}]
    const done = {now: at, lit: morning.lit, set: [{dish: 'bread', count: 2, at, drawn: null, placed: []}], plan: morning, doughs}
    const today: PlanProblem = {...asked, done}
    const [entry] = whole.dishes as [Load['dishes'][number]]
    const loads = [
      {
        ...whole,
        placed: [],
        dishes: [
          {...entry, count: 2, alreadyIn: true},
          {...entry, count: 4},
        ],
      },
    ]
    const {steps, messages} = stepsOf(today, {...morning, loads})
    const plan = {...morning, loads, steps, messages}
    expect(ofDough(plan).map(({action, at: when}) => [action, when])).toContainEqual(['mix', mixed])
    expect(ofDough(plan).map(({action}) => action)).toContain('shape')
    expect(wrong({today, plan})).toEqual([])
    expect(inOvenNow(plan, today, plainStyle)).toContain('(2 of 6, since')
  })
})
