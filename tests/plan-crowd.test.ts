import {describe, expect, it} from 'vitest'
import {check} from '../src/plan/check.js'
import {crowdedOut} from '../src/plan/crowd.js'
import {floorGrid} from '../src/plan/floor-grid.js'
import {jobsOf} from '../src/plan/model.js'
import type {Simulate} from '../src/plan/options.js'
import {planDay} from '../src/plan/planner.js'
import {scoreLines} from '../src/sheets/plan-text.js'
import {plainStyle} from '../src/sheets/style.js'
import {randomDay} from './plan-fixtures.js'

/** A day of far more than the oven holds, on an oven that its loads do not cool. Invented days; no outside fact is asked. */
const simulate: Simulate = ({forecast}) => forecast

describe('a day of far more than the oven holds', () => {
  const far = randomDay(11, 150)
  it('is first looked at on given curves, and what has no place there is not laid out', () => {
    const grid = floorGrid(far)
    const jobs = jobsOf(far, grid)
    const out = crowdedOut(far, grid, jobs, {simulate}, () => {})
    expect(out.size).toBeGreaterThan(jobs.length / 4)
    expect(out.size).toBeLessThan(jobs.length)
    // Neither a day that nearly fits, nor one that has begun, nor one on given curves is thinned.
    const few = randomDay(11, 12)
    expect(crowdedOut(few, grid, jobsOf(few, grid), {simulate}, () => {}).size).toBe(0)
    expect(crowdedOut(far, grid, jobs, {}, () => {}).size).toBe(0)
  })

  it('has a plan for some of it that keeps every rule, and every other dish is told', () => {
    const plan = planDay(far, {simulate})
    expect(plan.possible).toBe(false)
    expect(check(far, plan)).toEqual([])
    const baked = new Map<string, number>()
    for (const load of plan.loads) for (const d of load.dishes) baked.set(d.dish, (baked.get(d.dish) ?? 0) + d.count)
    const short = far.dishes.filter(({id, count}) => (baked.get(id) ?? 0) < count).map(({id}) => id)
    expect(plan.unplaced.map(({dish}) => dish).sort()).toEqual(short.sort())
    expect(baked.size).toBeGreaterThan(5)
    const reasons = plan.unplaced.filter(({words}) => words?.id === 'far too much')
    expect(reasons.length).toBeGreaterThan(40)
    for (const {reason, remedies} of reasons) {
      expect(reason).toMatch(/: far more is asked for than this oven bakes in a day$/)
      expect(remedies).toEqual([])
    }
    expect(plan.ways).toBeUndefined()
    // How many of them no plan could take is proved, and told.
    const {leftOut} = plan.score
    const vessels = far.dishes.reduce((sum, {id, count}) => sum + count - (baked.get(id) ?? 0), 0)
    expect(leftOut!.vessels).toBe(vessels)
    expect(leftOut!.least).toBeGreaterThan(0)
    expect(leftOut!.least).toBeLessThanOrEqual(vessels)
    const said = scoreLines(plan, far, plainStyle)
    expect(said).toContain(
      `Vessels left out for want of a place: ${vessels}. Any plan on this fire leaves out at least ${leftOut!.least} (under this model).`,
    )
  }, 120_000)
})
