import {lowerBound} from '../src/plan/bound.js'
import {floorGrid} from '../src/plan/floor-grid.js'
import {jobsOf, modelOf, programOf} from '../src/plan/model.js'
import {searchWell} from '../src/plan/search.js'
import {randomDay} from '../tests/plan-fixtures.js'
import {highsOn} from './highs-on.js'

/**
 * The search against HiGHS on the same model: days of 8–30 dishes. `npm run bench plan-highs 40 120` takes 40 days and gives HiGHS 120 s
 * for each (over an hour); 4 days and 20 s where nothing is said. Both may leave a dish out, at the same price. Prints for each day our
 * objective, HiGHS's best and its bound, our Lagrangian bound and both times; then the median and the worst of the days on which HiGHS
 * found a plan, and of those on which it proved that none is better.
 */
export async function run(): Promise<void> {
  const [days = 4, seconds = 20] = process.argv.slice(3).map(Number)
  const ratios: number[] = []
  const proven: number[] = []
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
    const bound = lowerBound(model, ours, 260)
    const t2 = performance.now()
    const {best: theirs, proved, status} = await highsOn(model, seconds)
    const t3 = performance.now()
    if (Number.isFinite(theirs)) {
      ratios.push(ours / theirs)
      if (status === 'Optimal') proven.push(ours / theirs)
    }
    times.push((t1 - t0) / (t3 - t2))
    console.log(
      `day ${i + 1}: ${n} dishes, ours ${ours.toFixed(2)}${found.unplaced ? ` (${found.unplaced} without a place)` : ''} in ${(t1 - t0).toFixed(0)} ms, ` +
        `HiGHS ${theirs.toFixed(2)} (${status}) in ${((t3 - t2) / 1000).toFixed(1)} s, its bound ${proved.toFixed(2)}, ours ${found.unplaced ? 'none, with a dish left out' : bound.toFixed(2)}`,
    )
  }
  const over = (list: readonly number[]): string => {
    const sorted = [...list].sort((a, b) => a - b)
    if (sorted.length === 0) return 'none'
    const percent = (ratio: number): string => `${(100 * (ratio - 1)).toFixed(2)} %`
    return `${sorted.length} days, median ${percent(sorted[Math.floor(sorted.length / 2)]!)}, worst ${percent(sorted[sorted.length - 1]!)}`
  }
  const slow = [...times].sort((a, b) => a - b)
  const part = (share: number): string => `1/${(1 / share).toFixed(0)}`
  console.log(
    `over HiGHS's best: ${over(ratios)}; over what it proved optimal: ${over(proven)}; ` +
      `of its time, median ${part(slow[Math.floor(slow.length / 2)]!)}, worst ${part(slow[slow.length - 1]!)}`,
  )
}
