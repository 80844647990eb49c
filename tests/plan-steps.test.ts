import {describe, expect, it} from 'vitest'
import {planDay} from '../src/plan/planner.js'
import {stepsOf} from '../src/plan/steps.js'
import type {Load, Plan} from '../src/plan/types.js'
import {stepWords} from '../src/sheets/phrases.js'
import {styleOf} from '../src/sheets/style-of.js'
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
const inLoads = (...loads: Array<Pick<Load, 'at' | 'dishes'>>): Plan => ({
  ...plan,
  loads: loads.map((load, i) => ({...whole, ...load, number: i + 1})),
})
const doughSteps = (made: Plan) =>
  stepsOf(day, made).steps.filter(
    (step) => ['mix', 'evening before', 'rise', 'shape'].includes(step.action) && step.dishes.includes('bread'),
  )

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
