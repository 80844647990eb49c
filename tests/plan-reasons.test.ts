import {toHtml} from 'hast-util-to-html'
import {describe, expect, it} from 'vitest'
import {barred, barredByItself} from '../src/plan/alone.js'
import {floorGrid} from '../src/plan/floor-grid.js'
import type {Simulate} from '../src/plan/options.js'
import {planDay} from '../src/plan/planner.js'
import {rules} from '../src/plan/rules.js'
import type {Plan, PlanProblem} from '../src/plan/types.js'
import {generator} from '../src/scale/random-numbers.js'
import type {Dish, HeatNeed} from '../src/scale/types.js'
import {daySheet, heatSheet} from '../src/sheets/day-sheet.js'
import {planText, scoreLines} from '../src/sheets/plan-text.js'
import {plainStyle} from '../src/sheets/style.js'
import {day, dish, fallingOven, fires, problem, randomDay} from './plan-fixtures.js'

/** Invented days that cannot be done. What is asked is that what a plan says of them is so when it is tried: no outside fact. */
const needing = (id: string, kind: string, need: Partial<HeatNeed>, count = 1): Dish => {
  const one = dish(kind, count, {id})
  return {...one, need: {...one.need, ...need}}
}
const why = (plan: Plan, id: string): {rule: string; said: string; reason: string; conflict: readonly string[]} => {
  const one = plan.unplaced.find((u) => u.dish === id)!
  return {rule: one.rule, said: one.words!.id, reason: one.reason, conflict: one.conflict!}
}
const goes = (p: PlanProblem, dishes: readonly Dish[], more: Partial<PlanProblem> = {}): boolean =>
  (['quick', 'full'] as const).some((effort) => planDay({...p, ...more, dishes}, {bare: true, effort}).possible)
const hottest = 20 + 320

describe('a dish that no fire can bake', () => {
  it('is told the limit of the fire that comes nearest, not of the one that suits the rest', () => {
    const bread = {startLow: 250, startBest: 260, startHigh: 300, endLow: 240, minutes: {low: 150, likely: 150, high: 160}}
    const p = problem([dish('gingerbread', 2), needing('long', 'bread', bread)])
    const plan = planDay(p)
    // The rest wants a fire that never reaches 250 °C; others do.
    expect(plan.forecast.baking.likely.every((t) => t < 250)).toBe(true)
    expect(why(plan, 'long')).toMatchObject({rule: 'dose', said: 'not done', conflict: ['long']})
  })

  it('is told its own limit, though another line asks for the same receipt that can be baked', () => {
    const hot = {startLow: hottest + 10, startBest: hottest + 20, startHigh: hottest + 40}
    const plan = planDay(problem([dish('biscuits', 1), needing('biscuits-2', 'biscuits', hot), dish('pie', 1)]))
    expect(why(plan, 'biscuits-2')).toMatchObject({rule: 'start heat', said: 'not hot enough', conflict: ['biscuits-2']})
  })

  it('is told no two heats that are shown alike', () => {
    const hot = {startLow: hottest + 2, startBest: hottest + 20, startHigh: hottest + 40}
    const plan = planDay(problem([needing('biscuits-2', 'biscuits', hot)]))
    expect(why(plan, 'biscuits-2')).toMatchObject({rule: 'start heat', said: 'not quite hot enough'})
    expect(plan.unplaced[0]!.reason).toMatch(/°F\) or more; the oven falls a few degrees short of that$/)
  })

  it('is told that the curve ends where the present is behind all that is reckoned of the oven, and no heat that is none', () => {
    const p = problem([dish('biscuits', 1)])
    const lit = p.day.fireFrom
    const done = {lit, now: lit + 9 * 1440, set: [], plan: null}
    const late = {...p, done}
    const {rule, words} = barred(late, floorGrid(p), p.dishes[0]!)!
    expect([rule, words.id]).toEqual(['start heat', 'curve ended'])
    expect(JSON.stringify(words)).not.toMatch(/null|Infinity/)
  })

  it('is told what cuts it off: the cold of the oven, a second fire, the end of the day, the time food may stand, the night', () => {
    const long = {low: 900, likely: 900, high: 950}
    const told = (one: Dish, more: Partial<PlanProblem> = {}): string => {
      const p = problem([one], more)
      const words = barred(p, floorGrid(p), one)!.words
      expect(goes(p, [one]), words.id).toBe(false)
      return words.id
    }
    expect(told(needing('a', 'pie', {endLow: 180, minutes: long}))).toBe('not done')
    expect(
      told(needing('b', 'pie', {endLow: 10, done: 15, reference: 205, minutes: {low: 3000, likely: 3000, high: 3000}})),
    ).toBe('not done at end')
    expect(
      told(needing('c', 'fruit cake', {endLow: 20, done: 57, reference: 142, minutes: {low: 2000, likely: 2000, high: 2000}})),
    ).toBe('not done before cold')
    // The second burns until the oven would be cold.
    const again = {wood: 20, burn: 1800, soak: 30}
    const twice = fires().map((f) => ({...f, further: [{minutes: f.firing.burn + 180, firing: again}]}))
    expect(told(needing('d', 'pie', {endLow: 60, minutes: {low: 240, likely: 240, high: 250}}), {firings: twice})).toBe(
      'not done before fire',
    )
    const late = {done: {now: 1050, lit: 1020, set: [], plan: null}, firings: [fallingOven(180, 340)]}
    expect(told(dish('custard', 1), late)).toBe('in the night')
    expect(told(needing('f', 'pie', {startLow: 10, startBest: 12, startHigh: 14, endLow: 5, done: 5, reference: 12}))).toBe(
      'not in range',
    )
  })

  it('is told that its own load leaves it too little heat, and not that there is too much of it', () => {
    // The empty oven would do; with a load in it this one is as cold as if it had been fired for an hour less.
    const option = fallingOven(180, 300)
    const simulate: Simulate = ({forecast}, events) =>
      events.some(({kind}) => kind === 'load') ? fallingOven(180, 240).forecast : forecast
    const joint = needing('joint', 'pie', {
      startLow: 200,
      startBest: 210,
      startHigh: 300,
      endLow: 170,
      minutes: {low: 150, likely: 150, high: 160},
    })
    const p = problem([joint], {firings: [option]})
    expect(barred(p, floorGrid(p), joint)).toBe(null)
    const plan = planDay(p, {simulate})
    expect(plan.loads).toEqual([])
    expect(why(plan, 'joint')).toMatchObject({rule: 'dose', said: 'not done', conflict: ['joint']})
    expect(barredByItself(p, floorGrid(p), joint, ({forecast}) => forecast)).toBe(null)
    // Nothing is in that plan, so that no fire is lit for it, and less of one joint is no way out.
    const text = planText({plan, problem: p, oven: {name: 'Oven'} as never}).replace(/\s+/g, ' ')
    expect(text).toContain('Nothing that is asked for has a place: do not light a fire for this plan.')
    for (const untrue of ['Fire lit', 'Wood:', 'can be followed', 'ask for less', 'Score:']) expect(text).not.toContain(untrue)
    expect(scoreLines(plan, p, plainStyle)).toEqual([])
    const view = {plan, problem: p, oven: {name: 'Oven'} as never}
    expect(toHtml(daySheet(view, plainStyle))).not.toMatch(/Readings to write in/)
    const heat = toHtml(heatSheet(view, plainStyle))
    expect(heat).toContain('do not light a fire for this plan')
    expect(heat).not.toContain('<svg')
  })

  it('bars nothing that can be baked', () => {
    for (let seed = 1; seed <= 30; seed++) {
      const p = randomDay(seed, 1)
      expect(barred(p, floorGrid(p), p.dishes[0]!) === null, `${seed}`).toBe(goes(p, [{...p.dishes[0]!, count: 1}]))
    }
  }, 60_000)
})

describe('dishes that do not go together', () => {
  it('for want of a fire that is right for all are said to be so, and not to want the same floor', () => {
    const p = problem([dish('brown bread', 1), dish('fruit cake', 1), dish('bread', 1)], {
      day: day({fireFrom: 720, serve: 1200}),
      firings: [fires()[0]!, fires()[4]!],
    })
    const plan = planDay(p)
    const {rule, said, reason, conflict} = why(plan, 'fruit-cake-1')
    expect({rule, said}).toEqual({rule: 'fire', said: 'no one fire'})
    expect(reason).toBe('Fruit cake and Bread: no one fire, whenever it is lit, is right for them all')
    const set = p.dishes.filter((d) => conflict.includes(d.id))
    expect(goes(p, set)).toBe(false)
    for (const one of set) expect(goes(p, [one]), one.id).toBe(true)
    // However wide the floor is, and however many hands there are.
    expect(goes(p, set, {floor: {shape: 'round', diameter: 3}, day: {...p.day, hands: 9}})).toBe(false)
  })

  it('are none of those that do not pass the mouth, which are in nobody’s way', () => {
    const wide = dish('pie', 1, {id: 'wide'})
    const tooWide = {...wide, vessel: {...wide.vessel, footprint: {shape: 'circle' as const, diameter: 0.6}}}
    const slack = {startLow: 90, startBest: 100, startHigh: 110}
    const last = {...tooWide, need: {...tooWide.need, ...slack}}
    const p = problem([last, dish('brown bread', 1), dish('fruit cake', 1), dish('bread', 1)], {
      day: day({fireFrom: 720, serve: 1200}),
      firings: [fires()[0]!, fires()[4]!],
    })
    const plan = planDay(p)
    expect(why(plan, 'wide').rule).toBe('mouth width')
    expect(why(plan, 'fruit-cake-1').reason).toBe('Fruit cake and Bread: no one fire, whenever it is lit, is right for them all')
    for (const one of plan.unplaced) if (one.dish !== 'wide') expect(one.conflict).not.toContain('wide')
  })

  it('for want of hands are said to be so', () => {
    const brief = needing('c', 'custard', {startLow: 150, startBest: 151, startHigh: 152}, 90)
    const p = problem([brief], {day: day({hands: 1}), floor: {shape: 'round', diameter: 3.5}})
    expect(why(planDay(p), 'c')).toMatchObject({rule: 'hands', said: 'too many for hands of some', conflict: ['c']})
    expect(goes(p, [brief], {day: day({hands: 20})})).toBe(true)
  })

  it('and one that is alone in the plan, of which there is too much, is not said to be in the way of anything else', () => {
    const p = problem([dish('bread', 40)], {day: day({hands: 9})})
    expect(why(planDay(p), 'bread-1')).toMatchObject({rule: 'room', said: 'too many for floor of some', conflict: ['bread-1']})
    const shortly = why(planDay(p, {effort: 'quick'}), 'bread-1')
    expect(shortly.reason).toMatch(/^\d+ of 40 of Bread: more than the floor holds while the oven is right for it$/)
  })

  it('are what the plan says they are, on 24 days that are too full, too late, or of dishes hard to bake', () => {
    let said = 0
    for (let seed = 1; seed <= 24; seed++) {
      const random = generator(seed)
      const base = randomDay(300 + seed, 5)
      const slow = ['brown bread', 'fruit cake', 'bread', 'custard', 'beans'].map((kind) =>
        dish(kind, 1 + Math.floor(3 * random())),
      )
      const hard = base.dishes.map((d, i): Dish => {
        const {need} = d
        if (i % 2 === 1) return d
        if (random() < 0.4) return {...d, need: {...need, startLow: need.startBest - 1, startHigh: need.startBest + 1}}
        return {...d, need: {...need, endLow: need.startLow - 3, minutes: {low: 60, likely: 100 + 90 * random(), high: 200}}}
      })
      const late = day({fireFrom: 600 + 60 * Math.floor(6 * random()), serve: 1260})
      const p = [
        {...base, dishes: hard},
        {...base, dishes: slow, day: late, firings: [fires()[0]!, fires()[4]!]},
      ][seed % 2]!
      for (const {dish: id, rule, conflict, reason} of planDay(p).unplaced) {
        said++
        const set = p.dishes.filter((d) => conflict!.includes(d.id))
        const one = p.dishes.find((d) => d.id === id)!
        expect(goes(p, set), reason).toBe(rule === 'late')
        if (rule === 'late')
          expect(planDay({...p, dishes: set}, {bare: true}).score.lateMinutes, reason).toBeGreaterThan(rules.bearable)
        expect(goes(p, [{...one, count: 1}]), reason).toBe(!['start heat', 'dose', 'night'].includes(rule))
        if (rule === 'fire') expect(goes(p, set, {floor: {shape: 'round', diameter: 3}}), reason).toBe(false)
      }
    }
    expect(said).toBeGreaterThan(12)
  }, 180_000)
})
