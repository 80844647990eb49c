import {describe, expect, it} from 'vitest'
import {conflictsOf} from '../src/plan/conflict.js'
import {floorGrid} from '../src/plan/floor-grid.js'
import {settleLoaded} from '../src/plan/loaded.js'
import {jobsOf} from '../src/plan/model.js'
import type {PlanOptions, Simulate} from '../src/plan/options.js'
import {planDay} from '../src/plan/planner.js'
import {settleFrom} from '../src/plan/settle.js'
import {goWithout, type Settled, tookIn} from '../src/plan/settled.js'
import type {Plan, PlanProblem} from '../src/plan/types.js'
import {day, dish, fires, problem} from './plan-fixtures.js'

/** Days gone on with from a plan of them, on an invented oven: that the planner agrees with itself is asked, no outside fact. */
const simulate: Simulate = ({forecast}) => forecast
const quick: PlanOptions = {simulate, effort: 'quick'}
const settle = (p: PlanProblem): Settled => {
  const grid = floorGrid(p)
  const settled = settleLoaded(p, grid, jobsOf(p, grid), quick, simulate, () => {})
  return settled.whole?.() ?? settled
}
const dishes = [dish('bread', 4), dish('pie', 2), dish('gingerbread', 1), dish('beans', 1), dish('custard', 6)]
const whole = problem(dishes, {firings: fires(), day: day({hands: 4})})

describe('a day gone on with from a plan', () => {
  it('keeps the plan where nothing is new', () => {
    const plan = settle(whole)
    const grid = floorGrid(whole)
    expect(plan.unplaced).toEqual([])
    const again = settleFrom(plan, whole, grid, jobsOf(whole, grid), quick, () => {})
    expect(tookIn(again)).toEqual(tookIn(plan))
    expect(again.option.firing).toEqual(plan.option.firing)
  })

  it('brings in what is new, on the fire of the plan', () => {
    const before = settle({...whole, dishes: dishes.slice(0, -1)})
    expect(before.unplaced).toEqual([])
    const grid = floorGrid(whole)
    const settled = settleFrom(before, whole, grid, jobsOf(whole, grid), quick, () => {})
    expect(settled.unplaced).toEqual([])
    expect(settled.option.firing).toEqual(before.option.firing)
  })

  it('is laid out anew where the plan was on another fire', () => {
    const before = settle({...whole, firings: whole.firings.slice(-1)})
    const others = {...whole, firings: whole.firings.slice(0, -1)}
    const grid = floorGrid(others)
    const settled = settleFrom(before, others, grid, jobsOf(others, grid), quick, () => {})
    expect(others.firings.map(({firing}) => firing)).toContain(settled.option.firing)
  })
})

describe('what does not go together', () => {
  it('is so when it is planned as a day of its own, and is told with what else has to be away', () => {
    const three = [dish('bread', 4), dish('pie', 2), dish('gingerbread', 1)]
    const p = problem(three, {firings: fires(), day: day({hands: 4})})
    const settled = settle(p)
    const missing = [{job: settled.model.jobs.find((job) => job.dish.id === 'bread-1')!, count: 2}]
    // A stand-in for the planner, which in haste misses the place that bread and gingerbread have beside each other.
    const replan =
      (fit: (ids: readonly string[], hasty: boolean) => boolean) =>
      (asked: PlanProblem, {effort}: PlanOptions): Plan => {
        const ids = asked.dishes.map(({id}) => id)
        return {...planDay({...p, dishes: [dish('bread', 1)]}, {bare: true}), possible: fit(ids, effort === 'quick')}
      }
    const others = (fit: (ids: readonly string[], hasty: boolean) => boolean): readonly string[] =>
      conflictsOf(p, floorGrid(p), missing, settled, {simulate}, replan(fit)).get('bread-1')!.others
    const [bread, pie, gingerbread] = three.map(({id}) => id) as [string, string, string]
    const both = (ids: readonly string[], hasty: boolean): boolean => hasty && ids.includes(gingerbread) && ids.includes(bread)
    expect([...others((ids, hasty) => ids.length < 3 && !both(ids, hasty))].sort()).toEqual([gingerbread, pie])
    // One that need not be away is named no more.
    expect(others((ids, hasty) => !(ids.includes(pie) || both(ids, hasty)))).toEqual([pie])
    // And what does not go together in earnest either is told as it was.
    expect(others((ids) => !(ids.includes(gingerbread) && ids.includes(bread)))).toEqual([gingerbread])
  })

  it('is asked of no set of dishes twice', () => {
    const crowd = problem([dish('bread', 30), dish('pie', 12), dish('beans', 4)], {firings: fires(), day: day({hands: 1})})
    const settled = settle(crowd)
    expect(goWithout(settled)).toBeGreaterThan(0)
    const missing = [...new Set(settled.unplaced.map(({job}) => job.dish.id))].map((id) => {
      const parts = settled.unplaced.filter(({job}) => job.dish.id === id)
      return {job: parts[0]!.job, count: parts.reduce((sum, {job}) => sum + job.count, 0)}
    })
    const planned: string[] = []
    const replan = (p: PlanProblem, options: PlanOptions): Plan => {
      const some = p.dishes.map(({id, count, vessel}) => [id, count, vessel.footprint])
      const how = [options.effort, options.from !== undefined, options.simulate !== undefined, p.day.hands, p.firings.length]
      planned.push(JSON.stringify([some.sort(), how]))
      return planDay(p, options)
    }
    conflictsOf(crowd, floorGrid(crowd), missing, settled, quick, replan)
    expect(planned.length).toBeGreaterThan(0)
    expect(planned).toEqual([...new Set(planned)])
  })
})
