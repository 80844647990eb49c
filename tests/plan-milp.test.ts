import highsModule from 'highs'
import {describe, expect, it} from 'vitest'
import {milp} from '../bench/plan-milp.js'
import {lowerBound} from '../src/plan/bound.js'
import {floorGrid} from '../src/plan/floor-grid.js'
import {jobsOf, modelOf, programOf} from '../src/plan/model.js'
import {searchWell} from '../src/plan/search.js'
import {day, randomDay} from './plan-fixtures.js'

/** The package's types describe its CommonJS form; under Node's modules the default export is the loader itself. */
const loadHighs = highsModule as unknown as typeof highsModule.default

/**
 * The model as a mixed-integer program, solved by HiGHS (npm package `highs`, an independent solver), against the planner's search and
 * its bound. Tolerance: 1 % of the proven optimum, the median; larger days are in `npm run bench`.
 */
describe('the model solved by HiGHS', () => {
  for (const [seed, n] of [
    [3, 4],
    [5, 3],
    [8, 4],
  ] as const)
    it(`proves the search within 1 % and the bound below, day ${seed}`, async () => {
      const p = randomDay(seed, n, {day: day({hands: 1, serve: 780})})
      const grid = floorGrid(p)
      const jobs = jobsOf(p, grid)
      const model = modelOf(p, programOf(p, 2, jobs, grid, null, false), jobs, grid, 300)
      const highs = await loadHighs()
      const solved = highs.solve(milp(model), {time_limit: 40, mip_rel_gap: 1e-4, output_flag: false})
      expect(solved.Status).toBe('Optimal')
      const best = solved.ObjectiveValue + model.constant
      const found = searchWell(model)
      const ours = found.cost + model.constant
      expect(found.unplaced).toBe(0)
      expect(ours).toBeGreaterThanOrEqual(best - 0.02 * Math.abs(best) * 0.01 - 0.01)
      expect(ours).toBeLessThanOrEqual(best * 1.01 + 1e-6)
      const bound = lowerBound(model, ours, 300)
      expect(bound).toBeLessThanOrEqual(best + 0.01)
    }, 60_000)
})
