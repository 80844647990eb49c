import {nightsOf} from './dough-work.js'
import type {FloorGrid} from './floor-grid.js'
import type {Hours} from './hands.js'
import {choiceAt, modelOf} from './model.js'
import {costOf} from './proof.js'
import {rules} from './rules.js'
import {type Settled, tookIn} from './settled.js'
import type {PlanProblem} from './types.js'

/**
 * A day put off so that its doughs are worked by day: where all of it is done before it is wanted, the fire can as well be lit later, and to the
 * objective it is all the same.
 */

/** A day is put off by no more than this, minutes: a dough of the longest ranges is worked by day by then. Common practice, no source. */
const MOST = 360

/**
 * The day lit later by as little as leaves the least work at its doughs in the night, and then the fewest in the cold for it, while that costs no
 * more. Fires, loads and draws keep their distances, so that the oven is the same.
 *
 * @returns The plan as it was where nobody gets up for it, or nothing is gained so.
 */
export function putOff(problem: PlanProblem, grid: FloorGrid, settled: Settled): Settled {
  let best = settled
  let least = nightsOf(problem, hoursOf(settled))
  for (let by = rules.tick; by <= MOST && least.pieces + least.cold > 0; by += rules.tick) {
    const later = laterBy(problem, grid, settled, by)
    if (!later || later.total > settled.total + 1e-6) break
    const nights = nightsOf(problem, hoursOf(later))
    if (nights.clashes > least.clashes) continue
    // Nobody gets up sooner before five to spare a dough its night in the cold.
    const warmer = nights.cold < least.cold && nights.early <= least.early
    if (nights.pieces < least.pieces || (nights.pieces === least.pieces && warmer)) {
      best = later
      least = nights
    }
  }
  return best
}

/** A plan with all of it so many minutes later; null where something would be done at an hour at which it may not. */
function laterBy(problem: PlanProblem, grid: FloorGrid, settled: Settled, by: number): Settled | null {
  const {program, jobs, lit} = settled.model
  const model = modelOf(problem, program, jobs, grid, lit + by)
  const chosen = Int32Array.from(tookIn(settled), (t, u) => (t ? choiceAt(model, u, t.s, t.e, t.w) : -1))
  if (chosen.some((o, u) => o < 0 && settled.found.chosen[u]! >= 0)) return null
  const cost = costOf(model, chosen)
  const {whole} = settled
  return {
    ...settled,
    model: settled.model.apart === undefined ? model : {...model, apart: settled.model.apart},
    found: {...settled.found, chosen, cost},
    total: cost + model.constant,
    // What is told with its range is that of the same hours.
    ...(whole ? {whole: () => laterBy(problem, grid, whole(), by) ?? whole()} : {}),
  }
}

/** When a plan lights its fires, and sets in and draws its dishes: what its doughs are counted back from. */
function hoursOf(settled: Settled): Hours {
  const {
    model: {jobs, lit, clock0},
    option: {firing, forecast, further = []},
  } = settled
  const loads = new Map<number, Hours['loads'][number]['dishes'][number][]>()
  tookIn(settled).forEach((took, u) => {
    if (!took) return
    const {dish, count} = jobs[u]!
    const draw = {likely: clock0 + took.e * rules.tick}
    const at = clock0 + took.s * rules.tick
    loads.set(at, [...(loads.get(at) ?? []), {dish: dish.id, count, draw}])
  })
  return {
    loads: Array.from(loads, ([at, dishes], i) => ({number: i + 1, at, dishes})),
    fires: [
      {lit, raked: lit + forecast.raked, ready: lit + forecast.ready, firing},
      ...further.map((f) => ({
        lit: lit + f.minutes,
        raked: lit + f.minutes + f.firing.burn,
        ready: lit + f.minutes + f.firing.burn + f.firing.soak,
        firing: f.firing,
      })),
    ],
  }
}
