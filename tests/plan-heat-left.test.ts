import {describe, expect, it} from 'vitest'
import {readDayFolder} from '../src/cli/day-folder.js'
import {forecast} from '../src/oven/forecast.js'
import {makePlan} from '../src/plan/make.js'
import {balanceLines} from '../src/sheets/plan-text.js'
import {plainStyle} from '../src/sheets/style.js'
import {inFolder, smallDay} from './page-day.js'

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
