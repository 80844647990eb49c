import {beforeAll, describe, expect, it} from 'vitest'
import {readDayFolder} from '../src/cli/day-folder.js'
import type {FiringLog} from '../src/oven/log.js'
import {curveOf} from '../src/plan/curve.js'
import {floorGrid} from '../src/plan/floor-grid.js'
import {Layout} from '../src/plan/layout.js'
import {type MadePlan, makePlan, planAgain, simulator} from '../src/plan/make.js'
import {blockedBy, jobsOf, laneShare, phaseOf, ticksOf, woodOf} from '../src/plan/model.js'
import {responseOf} from '../src/plan/response.js'
import {generator} from '../src/plan/search.js'

/** The demo's day, invented, planned once; and again after readings. What is asked is that the plan agrees with itself: no outside fact. */
const read = readDayFolder('corpus-demo')
let made: MadePlan
beforeAll(() => {
  made = makePlan({oven: read.oven, day: read.day, receipts: read.receipts})
})

/** The plan after a floor reading so many minutes after lighting, that many degrees off what the plan expects. */
function afterReading(minutes: number, off: number): ReturnType<typeof planAgain> {
  const {plan, problem} = made
  const at = plan.lit + minutes
  const value = plan.forecast.floor.likely[Math.round(minutes / plan.forecast.step)]! + off
  const log: FiringLog = {
    date: read.day.date,
    lit: plan.lit,
    raked: plan.raked,
    wood: null,
    rows: [],
    readings: [{minutes, kind: 'floor', value}],
    doors: [],
  }
  return planAgain({oven: read.oven, day: read.day, now: at}, problem, plan, log)
}
const checked = ({plan}: {plan: MadePlan['plan']}): string[] =>
  plan.messages.filter((m) => m.rule.startsWith('checker')).map((m) => m.reason)
const parts = (plan: MadePlan['plan']): number => plan.loads.reduce((n, load) => n + load.dishes.length, 0)

describe('a day planned again', () => {
  it('thinks no less of an oven that did as planned, its doors opened as planned', () => {
    // After some loads are in: what their set-ins let out is in the plan, and has to be in the day so far.
    const minutes = made.plan.loads[3]!.at - made.plan.lit + 20
    const again = afterReading(minutes, 0)
    expect(again.said).toEqual(['The readings agree with what was expected; the range is narrower.'])
    expect(again.plan.possible).toBe(true)
    expect(checked(again)).toEqual([])
  })

  it('keeps every dish when the floor is 5 °C cooler than planned', () => {
    const again = afterReading(made.plan.ready - made.plan.lit + 90, -5)
    expect(again.plan.unplaced.map((u) => u.dish)).toEqual([])
    expect(checked(again)).toEqual([])
  })

  it('still bakes most of the day in an oven 60 °C colder than planned', () => {
    const again = afterReading(made.plan.ready - made.plan.lit - 15, -60)
    expect(parts(again.plan)).toBeGreaterThan(parts(made.plan) / 2)
    expect(checked(again)).toEqual([])
  })
})

describe('a layout', () => {
  it('judges what it kept of its jobs as it judges them afresh, whatever was moved', () => {
    const {problem} = made
    const grid = floorGrid(problem)
    const jobs = jobsOf(problem, grid)
    const option = problem.firings[Math.floor(problem.firings.length / 2)]!
    const curve = curveOf(option.forecast, 20)
    const phase = phaseOf(null)
    const program = {curve, phase, ticks: ticksOf(curve, phase), blocked: blockedBy(option), wood: woodOf(option)}
    const response = responseOf(option, simulator({oven: read.oven}), [], 20)
    const layout = new Layout(problem, grid, jobs, program, response, laneShare(problem, grid), {
      lit: problem.day.fireFrom,
      margin: 2,
      inHand: 6,
      marginDose: 0.01,
    })
    layout.begin()
    const random = generator(5)
    for (let i = 0; i < 300; i++) {
      const u = Math.floor(random() * layout.n)
      if (random() < 0.15) layout.takeOut(u)
      else layout.set(u, 40 + Math.floor(random() * 120), layout.w[u]!)
      if (random() < 0.6) layout.judge()
      if (i % 10 !== 9) continue
      layout.judge()
      const kept = [layout.cost, layout.violation]
      layout.restore(layout.snapshot(), layout.lit)
      layout.judge()
      expect(layout.cost).toBeCloseTo(kept[0]!, 6)
      expect(layout.violation).toBeCloseTo(kept[1]!, 6)
    }
  })
})
