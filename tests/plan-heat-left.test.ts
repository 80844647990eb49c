import {describe, expect, it} from 'vitest'
import {readDayFolder} from '../src/cli/day-folder.js'
import {forecast} from '../src/oven/forecast.js'
import {balanceOf} from '../src/plan/balance.js'
import {floorGrid} from '../src/plan/floor-grid.js'
import {settleLoaded} from '../src/plan/loaded.js'
import {makePlan} from '../src/plan/make.js'
import {jobsOf} from '../src/plan/model.js'
import type {Simulate} from '../src/plan/options.js'
import {planDay} from '../src/plan/planner.js'
import {balanceLines} from '../src/sheets/plan-text.js'
import {plainStyle} from '../src/sheets/style.js'
import {inFolder, smallDay} from './page-day.js'
import {dish, fallingOven, problem} from './plan-fixtures.js'

const flat: Simulate = ({forecast: curve}) => curve

describe('the floor used', () => {
  it('is no more than there is, however close together the log has what stands on it', () => {
    const p = problem([dish('pie', 2)], {firings: [fallingOven(120, 300)]})
    const grid = floorGrid(p)
    const settled = settleLoaded(p, grid, jobsOf(p, grid), {simulate: flat, effort: 'quick'}, flat, () => {})
    const plan = planDay(p, {bare: true, effort: 'quick'})
    const {model} = settled
    const usedWith = (area: number): number => {
      const jobs = model.jobs.map((job) => ({...job, area}))
      const {balance} = balanceOf(p, grid, {...settled, model: {...model, jobs}}, plan)
      for (const {used, floor} of balance!) expect(used).toBeLessThanOrEqual(floor + 1e-9)
      return balance!.reduce((sum, {used}) => sum + used, 0)
    }
    expect(usedWith(grid.area)).toBeGreaterThan(0)
    expect(usedWith(1.25 * grid.area)).toBeCloseTo(usedWith(grid.area), 9)
    expect(usedWith(grid.area / (2 * model.jobs.length))).toBeLessThan(usedWith(grid.area))
  })
})

/** The heat that the oven holds, against the first law of thermodynamics: what the fire gave is in the flue, in the loads, lost or held. */
describe('the heat left in the oven', () => {
  const planned = () =>
    inFolder(smallDay, async (folder) => {
      const {oven, day, receipts} = readDayFolder(folder)
      return {...makePlan({oven, day, receipts}), oven}
    })

  it('is what the fire gave less the flue, the loads and what was lost', async () => {
    const {oven, plan} = await planned()
    const {heat, balance} = forecast(oven, {firing: plan.firing, hours: 12})
    const {likely} = heat!
    expect(likely.at(-1)! - likely[0]!).toBeCloseTo(balance.stored, 6)
    const {fire, flue, loads, lost} = balance
    expect((likely.at(-1)! - likely[0]!) / (fire - flue - loads - lost)).toBeCloseTo(1, 2)
    const raked = plan.firing.burn / 5
    for (let i = raked + 1; i < likely.length; i++) expect(likely[i]).toBeLessThan(likely[i - 1]!)
  })

  it('is told for each band with its range, less in each that the oven falls to', async () => {
    const {plan} = await planned()
    const left = plan.balance!.map((row) => row.left!)
    expect(left.length).toBeGreaterThan(1)
    for (const [i, {low, likely, high}] of left.entries()) {
      expect(low).toBeLessThan(likely)
      expect(high).toBeGreaterThan(likely)
      if (i > 0) expect(likely).toBeLessThan(left[i - 1]!.likely)
    }
    // The oven gives up at least what goes into the food between two bands.
    for (const [i, {heat}] of plan.balance!.entries())
      if (i > 0) expect(left[i - 1]!.likely - left[i]!.likely).toBeGreaterThan(heat)
    expect(balanceLines(plan, plainStyle)[0]).toMatch(/ MJ into the food, \d+ MJ \(\d+–\d+\) left in the oven at the end$/)
  })
})
