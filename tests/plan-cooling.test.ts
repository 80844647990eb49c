import {describe, expect, it} from 'vitest'
import {drawnHot} from '../src/plan/cooling.js'
import {planDay} from '../src/plan/planner.js'
import {stepsOf} from '../src/plan/steps.js'
import {stepWords} from '../src/sheets/phrases.js'
import {styleOf} from '../src/sheets/style-of.js'
import {dish, problem} from './plan-fixtures.js'

/** An invented day. That meringues stay in the oven till it is cold: common practice, no source. */
const base = dish('bread', 1)
const need = {
  ...base.need,
  startLow: 95,
  startBest: 110,
  startHigh: 135,
  endLow: 20,
  done: 75,
  reference: 110,
  minutes: {low: 80, likely: 80, high: 80},
  longest: 480,
  falling: true,
  held: true as const,
  overnight: true,
  cools: true as const,
}
const meringues = (wantedBy: number) =>
  dish('bread', 1, {
    id: 'meringues',
    title: 'Meringues',
    kind: 'meringue',
    dough: null,
    need,
    wantedBy,
    keeps: true,
    cooling: {words: 'leave in the cooling oven overnight', minutes: 480},
  })

describe('what its receipt leaves in the oven to cool', () => {
  it('stays in till it is wanted the next day, and nobody opens the door for it before', () => {
    const plan = planDay(problem([meringues(1440 + 540)], {}), {effort: 'quick'})
    const [entry] = plan.loads.flatMap(({dishes}) => dishes)
    expect(entry!.draw.likely).toBeGreaterThan(1440 + 300)
    expect(plan.score.openings).toBe(2)
    expect(plan.messages.filter(({severity}) => severity === 'error')).toEqual([])
    expect(plan.steps.find(({action}) => action === 'draw')?.ifBehind).not.toMatch(/leaves it in after the bake/)
  })

  it('is let cool slowly where it is drawn sooner, and that is told in the receipt’s words', () => {
    const day = problem([meringues(1440 + 540)], {})
    const plan = planDay(day, {effort: 'quick'})
    const [load] = plan.loads
    const soon = load!.at + 100
    const sooner = {...load!, dishes: [{...load!.dishes[0]!, draw: {low: soon, likely: soon, high: soon}}]}
    const step = stepsOf(day, {...plan, loads: [sooner]}).steps.find(({action}) => action === 'draw')!
    expect(step.ifBehind).toContain('the receipt leaves it in after the bake (“leave in the cooling oven overnight”)')
    expect(stepWords(step, day, styleOf({language: 'de'})).ifBehind).toContain('langsam unter einem Tuch auskühlen lassen')
    const dishes = new Map(day.dishes.map((one) => [one.id, one]))
    expect(drawnHot([{dish: 'meringues', at: 900}], dishes, 900 + 80 + 479)).toHaveLength(1)
    expect(drawnHot([{dish: 'meringues', at: 900}], dishes, 900 + 80 + 480)).toEqual([])
  })
})
