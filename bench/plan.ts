import {planDay} from '../src/plan/planner.js'
import {randomDay} from '../tests/plan-fixtures.js'

/** How planning time grows with the number of dishes: the curve that must stay under n². Days of the tests, quick effort, least of three. */
export async function run(): Promise<void> {
  const sizes = [8, 15, 30, 60, 120]
  planDay(randomDay(7, 15), {effort: 'quick'})
  let before: {n: number; ms: number} | null = null
  for (const n of sizes) {
    const problem = randomDay(40 + n, n)
    let ms = Number.POSITIVE_INFINITY
    for (let i = 0; i < 3; i++) {
      const start = performance.now()
      planDay(problem, {effort: 'quick'})
      ms = Math.min(ms, performance.now() - start)
    }
    const power: string = before ? `, grows with n^${(Math.log(ms / before.ms) / Math.log(n / before.n)).toFixed(2)}` : ''
    console.log(`${n} dishes: ${ms.toFixed(0)} ms${power}`)
    before = {n, ms}
  }
}
