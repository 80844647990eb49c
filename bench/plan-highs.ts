import highsModule from 'highs'
import {lowerBound} from '../src/plan/bound.js'
import {floorGrid} from '../src/plan/floor-grid.js'
import {jobsOf, modelOf, programOf} from '../src/plan/model.js'
import {searchWell} from '../src/plan/search.js'
import {randomDay} from '../tests/plan-fixtures.js'
import {milp} from './plan-milp.js'

/** The package's types describe its CommonJS form; under Node's modules the default export is the loader itself. */
const loadHighs = highsModule as unknown as typeof highsModule.default

/**
 * The search against HiGHS on the same model: days of 8–30 dishes. `npm run bench plan-highs 40 120` takes 40 days and gives HiGHS 120 s
 * for each (over an hour); 4 days and 20 s where nothing is said. Prints for each day our objective, HiGHS's, our Lagrangian bound and
 * both times; then the median and the worst of the days on which HiGHS found a plan.
 */
export async function run(): Promise<void> {
  const [days = 4, seconds = 20] = process.argv.slice(3).map(Number)
  const ratios: number[] = []
  const times: number[] = []
  for (let i = 0; i < days; i++) {
    const n = 8 + Math.floor((i * 22) / Math.max(1, days - 1))
    const p = randomDay(1000 + i, n)
    const grid = floorGrid(p)
    const jobs = jobsOf(p, grid)
    const model = modelOf(p, programOf(p, 2 + (i % 3), jobs, grid, null, false), jobs, grid, 300)
    const t0 = performance.now()
    const found = searchWell(model)
    const t1 = performance.now()
    const ours = found.cost + model.constant
    const {bound} = lowerBound(model, ours, 260)
    const highs = await loadHighs()
    const t2 = performance.now()
    let theirs = Number.NaN
    let status = 'error'
    try {
      const solved = highs.solve(milp(model), {time_limit: seconds, output_flag: false})
      status = solved.Status
      theirs = solved.ObjectiveValue + model.constant
    } catch (error) {
      status = error instanceof Error ? error.message : 'error'
    }
    const t3 = performance.now()
    if (found.unplaced === 0 && Number.isFinite(theirs)) {
      ratios.push(ours / theirs)
      times.push((t1 - t0) / (t3 - t2))
    }
    console.log(
      `day ${i + 1}: ${n} dishes, ours ${ours.toFixed(2)}${found.unplaced ? ` (${found.unplaced} without a place)` : ''} in ${(t1 - t0).toFixed(0)} ms, ` +
        `HiGHS ${theirs.toFixed(2)} (${status}) in ${((t3 - t2) / 1000).toFixed(1)} s, bound ${bound.toFixed(2)}`,
    )
  }
  const sorted = [...ratios].sort((a, b) => a - b)
  if (sorted.length > 0)
    console.log(
      `over HiGHS: median ${(100 * (sorted[Math.floor(sorted.length / 2)]! - 1)).toFixed(2)} %, worst ${(100 * (sorted[sorted.length - 1]! - 1)).toFixed(2)} %; ` +
        `time ratio, median 1/${(1 / [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)]!).toFixed(0)}`,
    )
}
