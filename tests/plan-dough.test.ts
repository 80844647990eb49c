import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {check} from '../src/plan/check.js'
import {doughsSoFar} from '../src/plan/dough.js'
import {planDay} from '../src/plan/planner.js'
import {rules} from '../src/plan/rules.js'
import type {Plan, PlanProblem, Step} from '../src/plan/types.js'
import {unrisen} from '../src/plan/unrisen.js'
import type {Dish, DoughTimes} from '../src/scale/types.js'
import {stepWords} from '../src/sheets/phrases.js'
import {styleOf} from '../src/sheets/style-of.js'
import {day, dish, fallingOven, problem} from './plan-fixtures.js'

/*
 * Invented doughs. That a loaf proves between shaping and oven, that a sponge works before the dough is made of it, and that nobody gets up
 * at night for either: common practice, no source.
 */
const falling = fallingOven(120, 300)
const simulate = (): typeof falling.forecast => falling.forecast
const bread = (dough: DoughTimes, more: Partial<Dish> = {}): Dish =>
  dish('bread', 2, {id: 'bread', title: 'Bread', dough, ...more})
const range = (low: number, high: number) => ({low, likely: (low + high) / 2, high})
const asked = (dough: DoughTimes, fireFrom = 300, hands = 1): PlanProblem =>
  problem([bread(dough)], {day: day({fireFrom, hands}), firings: [falling]})
const stepsOf = (plan: Plan): Record<string, number> =>
  Object.fromEntries(plan.steps.filter(({dishes}) => dishes.includes('bread')).map(({action, at}) => [action, at]))

const staged = {sponge: range(90, 90), mix: 20, rise: 80, shape: 15, prove: range(40, 50), hold: 30}

describe('a dough of several risings', () => {
  // Somebody else rakes out the coals meanwhile.
  const p = asked(staged, 600, 2)
  const plan = planDay(p, {simulate})

  it('proves after it is shaped, and its sponge works before it is mixed', () => {
    const at = stepsOf(plan)
    expect(check(p, plan)).toEqual([])
    expect(at['prove']).toBe(at['shape']! + 15)
    expect(at['load']! - at['prove']!).toBe(45)
    expect(at['shape']! - at['mix']!).toBe(100)
    expect(at['mix']! - at['sponge']!).toBe(90 + rules.setSponge)
  })

  it('is told so in English and German', () => {
    const said = (action: Step['action'], style = styleOf({})): string =>
      stepWords(plan.steps.find((s) => s.action === action)!, p, style).say
    expect(said('sponge')).toMatch(/^Bread: set the sponge: /)
    expect(said('mix')).toBe('Bread: make the dough with the sponge.')
    expect(said('prove')).toMatch(/^Bread: leave the shaped dough to rise until /)
    expect(said('sponge', styleOf({language: 'de'}))).toMatch(/^Bread: Vorteig ansetzen: /)
    expect(said('prove', styleOf({language: 'de'}))).toMatch(/den geformten Teig bis .* gehen lassen/)
  })

  it('is no sound plan where any of it is amiss', () => {
    const moved = (action: Step['action'], by: number): string[] => {
      const steps = plan.steps.map((s) => (s.action === action ? {...s, at: s.at + by} : s)).sort((a, b) => a.at - b.at)
      return check(p, {...plan, steps}).map(({rule}) => rule)
    }
    expect(moved('shape', 20)).toContain('dough')
    expect(moved('shape', -60)).toContain('dough')
    expect(moved('sponge', 30)).toContain('dough')
    expect(moved('sponge', -120)).toContain('dough')
    const without = (action: Step['action']): string[] =>
      check(p, {...plan, steps: plan.steps.filter((s) => s.action !== action)}).map(({reason}) => reason)
    expect(without('sponge')).toEqual(['Bread: no step sets its sponge'])
  })

  it('has its sponge set once, and the checker finds where it is set twice', () => {
    const reasons = (one: PlanProblem, made: Plan): string[] => check(one, made).map(({reason}) => reason)
    const first = plan.steps.find(({action}) => action === 'sponge')!
    const twice = {...plan, steps: [{...first, at: first.at - 60}, ...plan.steps]}
    expect(reasons(p, twice)).toContain('Bread: its sponge is set 2 times, not 1')
    // Set the evening before, it is not set again on the day, unless it is fed once more.
    const evening = [{does: 'set' as const, words: 'set the sponge over night', items: []}]
    const on = (more: Partial<DoughTimes>): PlanProblem => ({...p, dishes: [bread({...staged, ...more}, {evening})]})
    const misread = planDay(on({}), {simulate})
    expect(reasons(on({}), misread)).toContain('Bread: its sponge is set 2 times, not 1')
    const fed = planDay(on({again: true}), {simulate})
    expect(reasons(on({again: true}), fed)).toEqual([])
    const step = fed.steps.find(({action}) => action === 'sponge')!
    expect(step.say).toMatch(/^Bread: feed the sponge or leaven of the evening before, /)
    expect(stepWords(step, p, styleOf({language: 'de'})).say).toMatch(
      /^Bread: den Vorteig oder Sauerteig vom Vorabend auffrischen/,
    )
    const {sponge: _, ...rest} = staged
    const none: PlanProblem = {...p, dishes: [bread(rest, {evening})]}
    const made = planDay(none, {simulate})
    expect(reasons(none, made)).toEqual([])
    expect(reasons(none, {...made, steps: [first, ...made.steps]})).toContain('Bread: its sponge is set 2 times, not 1')
  })

  it('of a night goes on through it: nobody gets up to set a sponge or to shape', () => {
    const overnight = planDay(asked({...staged, sponge: range(480, 720)}), {simulate})
    expect(stepsOf(overnight)['sponge']).toBeLessThan(rules.nightFrom - 1440)
    expect(check(asked({...staged, sponge: range(480, 720)}), overnight)).toEqual([])
    const cold = {mix: 30, rise: 270, shape: 20, prove: range(720, 960), hold: 240}
    for (const fireFrom of [300, 540, 720]) {
      const proved = planDay(asked(cold, fireFrom), {simulate})
      const {shape, load} = stepsOf(proved)
      expect(check(asked(cold, fireFrom), proved)).toEqual([])
      expect(shape! + 20 <= rules.nightFrom - 1440 || shape! >= fireFrom || shape! >= rules.nightTo).toBe(true)
      expect(load! - shape! - 20).toBeGreaterThanOrEqual(720)
    }
  })

  it('on a day that has begun has what time there is, shared between its risings', () => {
    const at = stepsOf(plan)
    const again = (now: number, told: readonly number[]): {plan: Plan; rest: PlanProblem} => {
      const toCome = plan.loads.flatMap((load) => load.dishes.map((entry) => ({entry, load, placed: load.placed})))
      const doughs = doughsSoFar(
        now,
        plan,
        toCome as never,
        {
          mixed: () => told,
          shaped: () => [],
          mixing: () => 20,
          notRisen: () => undefined,
          rising: () => ({inBulk: 0, proving: 0}),
        },
        (planned) => planned,
      )
      const rest: PlanProblem = {...p, done: {now, lit: plan.lit, set: [], plan, doughs}}
      return {plan: planDay(rest, {simulate, effort: 'quick'}), rest}
    }
    const late = again(at['shape']! - 30, [at['mix']! + 25])
    expect(check(late.rest, late.plan)).toEqual([])
    const steps = stepsOf(late.plan)
    expect(steps['mix']).toBe(at['mix']! + 25)
    // It was not shaped while it was mixed, nor before now.
    expect(steps['shape']).toBeGreaterThanOrEqual(at['shape']! - 30)
    const has = steps['load']! - steps['mix']! - 35
    expect(unrisen(late.plan, late.rest).length > 0).toBe(has < 125 - 12.5)
    // Who mixed late shaped as late.
    const shaped = again(at['shape']! + 30, [at['mix']! + 25])
    expect(check(shaped.rest, shaped.plan)).toEqual([])
    expect(stepsOf(shaped.plan)['shape']).toBe(at['shape']! + 25)
    // Nothing of the plan is known otherwise: nothing is moved.
    const same = again(at['prove']! + 5, [])
    expect(check(same.rest, same.plan)).toEqual([])
    expect(stepsOf(same.plan)['load']).toBe(at['load'])
    expect(stepsOf(same.plan)['shape']).toBe(at['shape'])
    expect(unrisen(same.plan, same.rest)).toEqual([])
  })

  it('of which only the mixing is known had its sponge set before that', () => {
    const day = asked({...staged, sponge: range(60, 120)})
    const morning = planDay(day, {simulate})
    const {mix} = stepsOf(morning)
    const doughs = [{dish: day.dishes[0]!.id, load: morning.loads[0]!.number, mixed: mix!, cool: false}]
    const rest: PlanProblem = {...day, done: {now: mix! + 40, lit: morning.lit, set: [], plan: morning, doughs}}
    const again = planDay(rest, {simulate, effort: 'quick'})
    expect(check(rest, again)).toEqual([])
    expect(stepsOf(again)['sponge']).toBeLessThan(mix!)
  })

  it('keeps its rules whatever its times, in the morning and through the day', () => {
    const minutes = (max: number) => fc.integer({min: 0, max: max / 10}).map((n) => n * 10)
    const times = fc.record(
      {
        sponge: fc.tuple(minutes(600), minutes(200)).map(([low, more]) => range(low + 30, low + 30 + more)),
        mix: fc.constantFrom(10, 20, 30),
        rise: minutes(300),
        shape: fc.constantFrom(5, 10, 20),
        prove: fc.tuple(minutes(900), minutes(240)).map(([low, more]) => range(low + 10, low + 10 + more)),
        hold: minutes(240),
      },
      {requiredKeys: ['mix', 'rise', 'shape', 'hold']},
    )
    let later = 0
    fc.assert(
      fc.property(times, fc.integer({min: 60, max: 144}), fc.integer({min: 0, max: 60}), (dough, from, before) => {
        const p = asked(dough as DoughTimes, from * 5)
        const plan = planDay(p, {simulate, effort: 'quick'})
        expect(check(p, plan)).toEqual([])
        const now = plan.loads[0]!.at - before * 5
        const toCome = plan.loads.flatMap((load) => load.dishes.map((entry) => ({entry, load, placed: load.placed})))
        const doughs = doughsSoFar(
          now,
          plan,
          toCome as never,
          {
            mixed: () => [],
            shaped: () => [],
            mixing: () => 20,
            notRisen: () => undefined,
            rising: () => ({inBulk: 0, proving: 0}),
          },
          (planned) => planned + 20,
        )
        const rest: PlanProblem = {...p, done: {now, lit: plan.lit, set: [], plan, doughs}}
        const again = planDay(rest, {simulate, effort: 'quick'})
        if (again.unplaced.length === 0) {
          later++
          expect(check(rest, again)).toEqual([])
        }
      }),
      {numRuns: 300, seed: 1796},
    )
    expect(later).toBeGreaterThan(200)
  }, 120_000)
})
