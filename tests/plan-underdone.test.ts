import {describe, expect, it} from 'vitest'
import {readDayFolder} from '../src/cli/day-folder.js'
import {check} from '../src/plan/check.js'
import {curveOf, doseNeeded, whereIndex} from '../src/plan/curve.js'
import {eased, easedDay} from '../src/plan/ease.js'
import {floorGrid} from '../src/plan/floor-grid.js'
import {doseBetween} from '../src/plan/keeps.js'
import {jobsOf} from '../src/plan/model.js'
import {planDay} from '../src/plan/planner.js'
import {rules} from '../src/plan/rules.js'
import type {PlanProblem} from '../src/plan/types.js'
import type {Dish, HeatNeed} from '../src/scale/types.js'
import {dish, layoutOn, problem} from './plan-fixtures.js'

/**
 * What may be wanting of a dish's heat once the day has begun. The rules are common practice, no source; here is checked that planner and
 * checker keep them.
 */
describe('eased limits', () => {
  const bread = dish('bread', 1)
  const pie = dish('pie', 1, {cautions: ['meat-temperature']})

  it('let a dish be drawn with nine tenths of its time, or with its shortest where that is less; four fifths where that keeps no plan', () => {
    expect(eased(bread, 'near').enough).toBe(40)
    const {minutes} = dish('gingerbread', 1).need
    const strict = {...dish('gingerbread', 1), need: {...dish('gingerbread', 1).need, minutes: {...minutes, low: minutes.likely}}}
    expect(eased(strict, 'near').enough).toBeCloseTo(0.9 * minutes.likely, 9)
    expect(eased(strict, 'far').enough).toBeCloseTo(0.8 * minutes.likely, 9)
    expect(eased(strict, 'near').startLow - eased(strict, 'far').startLow).toBe(5)
  })

  it('keep the time of what has to be cooked through, unless it stays in through the night, and more of it of what sets by its eggs', () => {
    const exact = (one: Dish): Dish => ({...one, need: {...one.need, minutes: {low: 50, likely: 50, high: 60}}})
    for (const how of ['near', 'far'] as const) expect(eased(exact(pie), how).enough).toBe(50)
    expect(eased(exact({...pie, cautions: []}), 'near').enough).toBe(45)
    expect(eased(exact({...pie, cautions: []}), 'far').enough).toBe(40)
    expect(eased(exact({...pie, cautions: ['warm-cream']}), 'far').enough).toBe(45)
    const beans = exact(dish('beans', 1, {cautions: ['meat-temperature']}))
    for (const how of ['near', 'far'] as const) expect(eased(beans, how).enough).toBe(45)
    expect(eased({...beans, cautions: []}, 'far').enough).toBe(35)
  })

  it('are held to by the checker', () => {
    const exact = (cautions: string[], cut: number, inside = false): string[] => {
      const need: HeatNeed = {...pie.need, minutes: {low: 50, likely: 50, high: 60}}
      const day = problem([{...pie, need, cautions}])
      const plan = planDay(day)
      const [load] = plan.loads
      const [entry] = load!.dishes
      const curve = curveOf(plan.forecast, 20)
      const share = (to: number): number =>
        doseBetween(curve, need, whereIndex(entry!.zone!), load!.at - plan.lit, to - plan.lit) / doseNeeded(need)
      // The first minute at which it has so much of its dose.
      let to = load!.at
      while (share(to) < cut) to++
      const drawn = {...entry!, draw: {low: to, likely: to, high: to}, eased: {start: 0, end: 0, dose: share(to)}}
      const set = inside ? [{dish: pie.id, count: 1, at: load!.at, drawn: null, placed: load!.placed}] : []
      const now = inside ? load!.at + rules.tick : plan.ready
      const begun: PlanProblem = {...day, done: {now, lit: plan.lit, set, plan: null}}
      const early = {...plan, loads: [{...load!, dishes: [inside ? {...drawn, alreadyIn: true} : drawn]}]}
      return check(begun, early).map((v) => v.rule)
    }
    expect(exact([], 0.82)).not.toContain('dose')
    expect(exact([], 0.75)).toContain('dose')
    expect(exact(['warm-cream'], 0.92)).not.toContain('dose')
    expect(exact(['warm-cream'], 0.85)).toContain('dose')
    expect(exact(['meat-temperature'], 0.92)).toContain('dose')
    // What is in the oven gives up hardly anything that it could still have.
    expect(exact([], 0.92)).not.toContain('dose')
    expect(exact([], 0.92, true)).toContain('dose')
    expect(exact([], 0.97, true)).not.toContain('dose')
  })

  it('are hardly those of what is in the oven: it is held to nearly all of its own dose, and what is still to be set in gives more of it', () => {
    const two = dish('bread', 2)
    const placed = [{dish: two.id, number: 1, x: 0, y: 0.3, turn: 0, zone: 'back' as const}]
    const done = {now: 630, lit: 360, set: [{dish: two.id, count: 1, at: 600, drawn: null, placed}], plan: null}
    const begun = easedDay(problem([two], {done}), 'far')
    const needed = jobsOf(begun, floorGrid(begun)).map(({since, dish: {need}}) => [since, doseNeeded(need)])
    expect(needed).toEqual([
      [600, (1 - rules.easeInside) * doseNeeded(two.need)],
      [null, doseNeeded(eased(two, 'far'))],
    ])
    expect(needed[1]![1]).toBeLessThan(needed[0]![1]!)
  })
})

describe('what is in the oven and cannot be done any more', () => {
  const {oven} = readDayFolder('corpus-demo')
  const base = problem([])
  const lit = base.day.fireFrom
  /** A brown bread that wants more than the oven has for it, in it since it was ready, and something set in six hours later. */
  const withLater = (later: Dish): {in: number; out: number} => {
    const long = dish('brown bread', 1)
    const wanting = {...long, need: {...long.need, falling: false, minutes: {low: 900, likely: 900, high: 900}}}
    const option = base.firings[2]!
    const at = lit + option.forecast.ready + 10
    const placed = [{dish: wanting.id, number: 1, x: 0, y: 0.3, turn: 0, zone: 'back' as const}]
    const day: PlanProblem = {
      ...base,
      firings: [option],
      dishes: [wanting, later],
      done: {now: at + 30, lit, set: [{dish: wanting.id, count: 1, at, drawn: null, placed}], plan: null},
    }
    const {layout, jobs} = layoutOn(day, oven)
    const u = jobs.findIndex((j) => j.dish.id === later.id)
    layout.recompute()
    layout.set(u, Math.round((option.forecast.ready + 360) / rules.tick), 1)
    layout.judge()
    expect(layout.isDone(1 - u)).toBe(false)
    const set = layout.violation
    layout.takeOut(u)
    layout.judge()
    return {in: set, out: layout.violation}
  }

  it('is no reason to leave out what takes little from it', () => {
    const {in: set, out} = withLater(dish('apples', 1, {need: {...dish('apples', 1).need, startHigh: 250}}))
    expect(out).toBe(0)
    expect(set).toBe(0)
  })

  it('is not to be spoiled by a great cold load', () => {
    const {in: set} = withLater(dish('apples', 1, {mass: 60, water: 20, need: {...dish('apples', 1).need, startHigh: 250}}))
    expect(set).toBeGreaterThan(200)
  })

  it('has its price for what it is wanting at the last minute of the forecast as well', () => {
    const long = dish('brown bread', 1)
    const wanting = {...long, need: {...long.need, falling: false, minutes: {low: 2000, likely: 2000, high: 2000}, enough: 90}}
    const whole = base.firings[2]!
    const {low, likely, high} = whole.forecast.baking
    const [few, mean, many] = [low, likely, high].map((celsius) => celsius.slice(0, 180)) as [number[], number[], number[]]
    const option = {...whole, forecast: {...whole.forecast, baking: {low: few, likely: mean, high: many}}}
    const at = lit + option.forecast.ready + 60
    const placed = [{dish: wanting.id, number: 1, x: 0, y: 0.3, turn: 0, zone: 'back' as const}]
    const done = {now: at + 30, lit, set: [{dish: wanting.id, count: 1, at, drawn: null, placed}], plan: null}
    const {layout} = layoutOn({...base, firings: [option], dishes: [wanting], done}, oven)
    layout.recompute()
    layout.judge()
    const soonest = Math.max(layout.doneAt(0), layout.s[0]! + 1)
    const costAt = (tick: number): number => {
      layout.hold[0] = tick - soonest
      layout.judge()
      expect(layout.e[0]).toBe(tick)
      return layout.cost
    }
    const last = layout.ticks - 1
    const before = costAt(last - 1)
    expect(before - costAt(last)).toBeLessThan(1)
  })
})
