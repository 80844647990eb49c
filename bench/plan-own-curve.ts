import {fileURLToPath} from 'node:url'
import {readDayFolder} from '../src/cli/day-folder.js'
import {floorGrid} from '../src/plan/floor-grid.js'
import {jobsOf} from '../src/plan/model.js'
import {problemOf} from '../src/plan/problem.js'
import {settleBest} from '../src/plan/settle.js'
import {tookIn} from '../src/plan/settled.js'
import {simulator} from '../src/plan/simulator.js'
import {keptInHand, within} from '../src/plan/within.js'
import {randomDay} from '../tests/plan-fixtures.js'
import {highsOn} from './highs-on.js'

/**
 * Plans on the simulated oven against HiGHS on the curve that each plan's own loads have made, among plans that keep as much in hand. What
 * HiGHS finds there is no plan yet: it would change the curve, its floor is reckoned by area, and it knows nothing of what the layout prefers
 * beyond the objective (nothing set in to fall among crusts), so that it may be out of reach, or the plan may be below it.
 * `npm run bench plan-own-curve 20 60` takes 20 days of 5–15 dishes and gives HiGHS 60 s for each; 3 days and 20 s where nothing is said.
 */
export async function run(): Promise<void> {
  const [days = 3, seconds = 20] = process.argv.slice(3).map(Number)
  const {oven, day} = readDayFolder(fileURLToPath(new URL('../corpus-demo', import.meta.url)))
  const over: number[] = []
  const overProved: number[] = []
  for (let i = 0; i < days; i++) {
    const n = 5 + Math.floor((i * 11) / Math.max(1, days))
    const {dishes} = randomDay(2000 + i, n)
    const problem = problemOf({oven, day}, dishes)
    const simulate = simulator({oven})
    const grid = floorGrid(problem)
    const t0 = performance.now()
    const settled = settleBest(problem, grid, jobsOf(problem, grid), {simulate}, () => {})
    const ms = performance.now() - t0
    if (settled.unplaced.length > 0) {
      console.log(`day ${i + 1}: ${n} dishes, ${settled.unplaced.length} without a place`)
      continue
    }
    const {model} = within(settled.model, tookIn(settled), keptInHand(settled.model, settled.found.chosen))
    const {best: theirs, proved, status} = await highsOn(model, seconds)
    over.push(settled.total / theirs - 1)
    overProved.push(settled.total / proved - 1)
    console.log(
      `day ${i + 1}: ${n} dishes, ours ${settled.total.toFixed(1)} in ${ms.toFixed(0)} ms, HiGHS ${theirs.toFixed(1)} (${status}), its bound ${proved.toFixed(1)}`,
    )
  }
  const middle = (list: number[]): string =>
    `median ${(100 * [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)]!).toFixed(1)} %, worst ${(100 * Math.max(...list)).toFixed(1)} %`
  if (over.length > 0) console.log(`over HiGHS's best: ${middle(over)}; over its bound: ${middle(overProved)}`)
}
