import {describe, expect, it} from 'vitest'
import {loadHeat} from '../src/oven/simulate.js'
import type {OvenEvent} from '../src/oven/types.js'
import {celsiusAt, curveOf} from '../src/plan/curve.js'
import {planDay} from '../src/plan/planner.js'
import {rules} from '../src/plan/rules.js'
import type {FiringOption, Phrase, Plan, PlanProblem} from '../src/plan/types.js'
import type {Dish, HeatNeed} from '../src/scale/types.js'
import {day, dish, fallingOven, problem} from './plan-fixtures.js'

/** Invented days planned shortly, in which one thing is in a dish's way. That what is said of it is so is asked: no outside fact. */
const option: FiringOption = (() => {
  const falling = fallingOven(120, 300)
  return {...falling, forecast: {...falling.forecast, zones: {back: 0, middle: 0, mouth: 0}}}
})()
const narrow = {floor: {shape: 'rectangle', depth: 0.62, width: 0.3}, mouth: {width: 0.29, height: 0.28}} as const
const needing = (id: string, need: Partial<HeatNeed>, more: Partial<Dish> = {}): Dish => {
  const one = dish('pie', 1, {id, title: id, ...more})
  return {...one, need: {...one.need, endLow: 60, ...need}}
}
const asked = (dishes: readonly Dish[], more: Partial<PlanProblem> = {}): PlanProblem =>
  problem(dishes, {firings: [option], day: day({hands: 6}), ...more})
const shortly = (p: PlanProblem, simulate?: Parameters<typeof planDay>[1]): Plan => planDay(p, {effort: 'quick', ...simulate})
const told = (plan: Plan, id: string): {rule: string; said: string; others: readonly string[]; words: Phrase; reason: string} => {
  const {rule, words, conflict, reason} = plan.unplaced.find((one) => one.dish === id)!
  return {rule, said: words!.id, others: conflict!.slice(1), words: words!, reason}
}
const clock = ({values}: Phrase, name: string): number => (values[name] as {value: number}).value
/** Minutes after midnight at which the empty oven has fallen to a heat. */
const fallsTo = (celsius: number, lit: number): number => {
  const curve = curveOf(option.forecast, 20)
  let m = curve.ready
  while (celsiusAt(curve, 3, m) > celsius) m++
  return lit + m
}

describe('a dish left out is told what hinders it in the plan as it stands', () => {
  it('who has the floor, and from when to when the oven is right for it', () => {
    const long = {startLow: 240, startBest: 250, startHigh: 300, minutes: {low: 200, likely: 200, high: 220}}
    const p = asked([needing('Stands long', long), needing('Left', {startLow: 190, startBest: 210, startHigh: 230})], narrow)
    const plan = shortly(p)
    const {rule, said, others, words, reason} = told(plan, 'Left')
    expect({rule, said, others}).toEqual({rule: 'room', said: 'floor busy', others: ['Stands long']})
    expect(Math.abs(clock(words, 'from') - fallsTo(230, plan.lit))).toBeLessThanOrEqual(rules.tick)
    expect(Math.abs(clock(words, 'until') - fallsTo(190, plan.lit))).toBeLessThanOrEqual(rules.tick)
    expect(reason).toMatch(
      /^Left: the oven is right for it only from \d+:\d\d to \d+:\d\d, and then there is no place for it beside Stands long$/,
    )
  })

  it('names only those without which it would have its place', () => {
    const brief = {startLow: 228, startBest: 230, startHigh: 234, minutes: {low: 20, likely: 20, high: 22}}
    const p = asked(
      [
        needing('Stands long', {startLow: 250, startBest: 260, startHigh: 300, minutes: {low: 200, likely: 200, high: 220}}, {}),
        needing('Left', brief),
        needing('Later', {
          startLow: 60,
          startBest: 70,
          startHigh: 80,
          endLow: 30,
          done: 40,
          minutes: {low: 20, likely: 20, high: 60},
        }),
      ],
      narrow,
    )
    expect(told(shortly(p), 'Left').others).toEqual(['Stands long'])
  })

  it('that there are too few hands then', () => {
    const brief = {startLow: 228, startBest: 230, startHigh: 233, minutes: {low: 20, likely: 20, high: 21}}
    const many = needing('Many', brief, {
      count: 18,
      vessel: {...dish('pie', 1).vessel, footprint: {shape: 'circle', diameter: 0.08}},
    })
    const few = needing('Few', brief, {count: 3, vessel: many.vessel})
    const p = asked([many, few], {day: day({hands: 1})})
    const plan = shortly(p)
    const [out] = plan.unplaced
    const one = told(plan, out!.dish)
    expect(one.rule).toBe('hands')
    expect(one.reason).toMatch(/the hands are full then with|more than the hands can set in/)
    expect(shortly({...p, day: day({hands: 9})}).possible).toBe(true)
  })

  describe('on an oven that loads cool', () => {
    /** Each vessel takes so many degrees from the oven ever after. */
    const cooling =
      (each: number) =>
      (fire: FiringOption, events: readonly OvenEvent[]): FiringOption['forecast'] => {
        const {forecast} = fire
        const at = (m: number): number =>
          events
            .filter((e) => e.kind === 'load' && e.minutes < m)
            .reduce((sum, e) => sum + (e.kind === 'load' ? loadHeat(e.mass, e.water) * each : 0), 0)
        const less = (some: readonly number[]): number[] => some.map((t, i) => t - at(i * forecast.step))
        const {low, likely, high} = forecast.baking
        return {...forecast, baking: {low: less(low), likely: less(likely), high: less(high)}}
      }

    const simulate = cooling(28 / loadHeat(14, 0.1))
    const takesMuch = {mass: 14}
    const alone = (p: PlanProblem): boolean[] =>
      p.dishes.map((one) => planDay({...p, dishes: [one]}, {simulate, bare: true}).possible)

    it('that it would take heat which others cannot spare', () => {
      const stays = {startLow: 228, startBest: 232, startHigh: 236, endLow: 182, minutes: {low: 45, likely: 45, high: 50}}
      const meanwhile = {startLow: 214, startBest: 218, startHigh: 224, minutes: {low: 60, likely: 60, high: 90}}
      const p = asked([needing('Dear', stays, {count: 4, mass: 0.5}), needing('Heavy', meanwhile, takesMuch)], {
        floor: {shape: 'round', diameter: 2},
        day: day({hands: 6, serve: 1200}),
      })
      expect(alone(p)).toEqual([true, true])
      const plan = shortly(p, {simulate})
      // And what is left out for want of a place takes nothing with it that has one.
      expect(plan.unplaced.map((one) => one.dish)).toEqual(['Heavy'])
      const {rule, said, others, words} = told(plan, 'Heavy')
      expect({rule, said, others}).toEqual({rule: 'heat', said: 'heat spoiled', others: ['Dear']})
      expect(clock(words, 'until')).toBeGreaterThan(clock(words, 'from'))
    })

    it('that the rest leaves the oven too cool for it', () => {
      const first = {startLow: 232, startBest: 235, startHigh: 240, endLow: 150, minutes: {low: 40, likely: 40, high: 44}}
      const then = {startLow: 215, startBest: 218, startHigh: 222, endLow: 150, minutes: {low: 60, likely: 60, high: 66}}
      const p = asked([needing('Then', then), needing('Heavy', first, takesMuch)])
      expect(alone(p)).toEqual([true, true])
      const {rule, said, others, reason} = told(shortly(p, {simulate}), 'Then')
      expect({rule, said, others}).toEqual({rule: 'start heat', said: 'as left', others: ['Heavy']})
      expect(reason).toMatch(/^Then: to be set in between 215 °C .* and 222 °C .*, as the rest leaves the oven$/)
    })
  })
})
