import {describe, expect, it} from 'vitest'
import {planDay} from '../src/plan/planner.js'
import {stepsOf} from '../src/plan/steps.js'
import type {Load} from '../src/plan/types.js'
import type {Dish} from '../src/scale/types.js'
import {stepWords} from '../src/sheets/phrases.js'
import {styleOf} from '../src/sheets/style-of.js'
import {messageLine} from '../src/sheets/translation-text.js'
import {dish, loadsLike, problem} from './plan-fixtures.js'

/** An invented day. That a receipt's stirring is done where the door is open anyway: common practice, no source. */
const german = styleOf({language: 'de'})
const bake = {...dish('bread', 4).need, minutes: {low: 120, likely: 120, high: 120}}
const dayOf = (tending: NonNullable<Dish['tending']>) =>
  problem(
    [
      dish('bread', 4, {id: 'oats', title: 'Oats', dough: null, need: bake, tending}),
      dish('bread', 4, {id: 'pies', title: 'Pies', dough: null}),
    ],
    {},
  )
const plan = planDay(dayOf([]), {effort: 'quick'})
const [whole] = plan.loads as [Load]
const load = loadsLike(plan)
function told(tending: NonNullable<Dish['tending']>, ...loads: Load[]) {
  const day = dayOf(tending)
  const {steps, messages} = stepsOf(day, {...plan, loads: loads.map((one, i) => ({...one, number: i + 1}))})
  const tended = steps.filter(({action}) => action === 'tend')
  return {
    day,
    tended,
    at: tended.map(({at, words}) => [at - whole.at, words!.say.id]),
    warned: messages.filter(({rule}) => rule === 'tend'),
  }
}

describe('what a receipt has done as it bakes', () => {
  it('is done at its time, by its share of the stay, at an opening of its own', () => {
    const {at, tended, warned, day} = told([{words: 'stirring after the first half hour', after: 30}], load('oats', 0, 240))
    expect(at).toEqual([[60, 'tend alone']])
    expect(tended[0]!.say).toContain('do as the receipt says (“stirring after the first half hour”)')
    expect(stepWords(tended[0]!, day, german).say).toContain('Tür einen Augenblick öffnen')
    expect(warned).toEqual([])
  })

  it('at each of its times, however near they are', () => {
    const words = 'stir after 30 minutes and again after 40'
    const twice = [
      {words, after: 30},
      {words, after: 40},
    ]
    expect(told(twice, load('oats', 0, 240)).at).toEqual([
      [60, 'tend alone'],
      [80, 'tend alone'],
    ])
  })

  it('or where the door is opened near it', () => {
    const half = [{words: 'turning it half way', share: 0.5}]
    expect(told(half, load('oats', 0, 240), load('pies', 110, 300)).at).toEqual([[110, 'tend']])
    expect(told(half, load('oats', 0, 240), load('pies', 30, 300)).at).toEqual([[120, 'tend alone']])
  })

  it('is done whenever the door is opened, where it is often', () => {
    const often = [{words: 'basting it often'}]
    const {at, warned} = told(often, load('oats', 0, 240), load('pies', 60, 150))
    expect(at).toEqual([
      [60, 'tend'],
      [150, 'tend'],
    ])
    expect(warned).toEqual([])
  })

  it('and what is wanted oftener than the door is opened is told as it goes in, and warned of', () => {
    const {at, warned} = told([{words: 'stirring every 20 minutes', every: 20}], load('oats', 0, 120), load('pies', 60, 150))
    expect(at).toEqual([
      [0, 'tend oftener'],
      [60, 'tend'],
    ])
    expect(warned).toHaveLength(1)
    expect(warned[0]!.reason).toBe(
      'Oats: its receipt says “stirring every 20 minutes”, 5 times as it bakes, and the plan has the door open for 1 of them',
    )
    expect(messageLine(warned[0]!, german)).toContain('5-mal beim Backen, und der Plan hat die Tür für 1 davon offen')
    const never = told([{words: 'basting it often'}], load('oats', 0, 120))
    expect(never.at).toEqual([[0, 'tend oftener']])
    expect(never.warned[0]!.reason).toContain('and the plan does not open the door for it')
  })

  it('passes the checker in a whole plan', () => {
    const made = planDay(
      dayOf([
        {words: 'stirring every 20 minutes', every: 20},
        {words: 'turning it half way', share: 0.5},
      ]),
      {
        effort: 'quick',
      },
    )
    expect(made.messages.filter(({severity}) => severity === 'error')).toEqual([])
    expect(made.steps.some(({action}) => action === 'tend')).toBe(true)
  })
})
