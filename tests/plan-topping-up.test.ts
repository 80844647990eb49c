import {describe, expect, it} from 'vitest'
import {planDay} from '../src/plan/planner.js'
import {stepsOf} from '../src/plan/steps.js'
import type {Load} from '../src/plan/types.js'
import {stepWords} from '../src/sheets/phrases.js'
import {styleOf} from '../src/sheets/style-of.js'
import {dish, loadsLike, problem} from './plan-fixtures.js'

/** An invented day. That beans are topped up with hot water through their hours in the oven: common practice, no source. */
const day = problem(
  [
    dish('bread', 4, {id: 'bread', title: 'Bread'}),
    dish('bread', 4, {id: 'beans', title: 'Beans', kind: 'beans', dough: null}),
    dish('bread', 4, {id: 'pies', title: 'Pies', kind: 'fruit pie', dough: null}),
  ],
  {},
)
const plan = planDay(day, {effort: 'quick'})
const [whole] = plan.loads as [Load]
const load = loadsLike(plan)
const steps = (...loads: Load[]) =>
  stepsOf(day, {...plan, loads: loads.map((one, i) => ({...one, number: i + 1}))}).steps.filter(({action}) => action === 'top up')

describe('what boils its water away', () => {
  it('is topped up where the door is opened for others, not at once after it went in, and not at its draw', () => {
    const told = steps(load('beans', 0, 240), load('bread', 30, 90), load('pies', 90, 225))
    expect(told.map(({at, dishes}) => [at - whole.at, dishes])).toEqual([[90, ['beans']]])
    expect(told[0]!.say).toBe(
      'Beans: while the door is open, look in, and top up with boiling water where it has sunk under what is in it.',
    )
    expect(stepWords(told[0]!, day, styleOf({language: 'de'})).say).toContain('mit kochendem Wasser auffüllen')
  })

  it('is filled up at the last opening before it is left for the night, if that is where it goes in', () => {
    const [last, ...more] = steps(load('bread', 0, 60), load('beans', 60, 900))
    expect(more).toEqual([])
    expect(last!.at - whole.at).toBe(60)
    expect(last!.words!.say.values['until']).toEqual({unit: 'clock', value: whole.at + 900})
    const [noon, night] = steps(load('beans', 0, 900), load('bread', 90, 150), load('pies', 150, 900))
    expect([noon!.at - whole.at, night!.at - whole.at]).toEqual([90, 150])
    expect(night!.say).toContain('fill up with boiling water')
  })

  it('is no pie', () => {
    expect(steps(load('pies', 0, 240), load('bread', 90, 150))).toEqual([])
  })
})
