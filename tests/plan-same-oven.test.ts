import {expect, it} from 'vitest'
import {readDayFolder} from '../src/cli/day-folder.js'
import {makePlan} from '../src/plan/make.js'
import {planDay} from '../src/plan/planner.js'
import {simulator} from '../src/plan/simulator.js'

/** The demo's day, invented. That the same day gives the same plan is asked of the planner: no outside fact. */
it('a day is planned alike, whatever day was planned in the same oven before it', {timeout: 120_000}, () => {
  const {oven, day, receipts} = readDayFolder('corpus-demo')
  const {problem} = makePlan({oven, day, receipts})
  const bare = (of: typeof problem, simulate: ReturnType<typeof simulator>) => planDay(of, {bare: true, simulate})
  const used = simulator({oven})
  const fewer = {...problem, firings: problem.firings.slice(0, Math.ceil(problem.firings.length / 2))}
  planDay(fewer, {effort: 'quick', bare: true, simulate: used})
  expect(bare(problem, used)).toEqual(bare(problem, simulator({oven})))
})
