import {nightsOf} from './dough-work.js'
import type {FloorGrid} from './floor-grid.js'
import type {Hours} from './hands.js'
import {wantsCold} from './keeping.js'
import {staysIn} from './keeps.js'
import {choiceAt, isNight, latestLit, modelOf} from './model.js'
import {costOf} from './proof.js'
import {rules} from './rules.js'
import {type Settled, type Took, tookIn} from './settled.js'
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

/**
 * Minutes by which a day may be put off so that something stays in through the night, steps in which that is tried, and minutes before it is wanted
 * that what does not stay in keeps all the same.
 */
const NIGHT = {most: 720, step: 30, inHand: 30} as const

/**
 * A day put off so that what would be done in the evening, is wanted the next day and does not keep may stay in till it is wanted: beans baked
 * all night come hot to breakfast, and need be neither cooled nor heated again.
 *
 * @param awake draws of what stays in moved as late as they are wanted (see `drawnAwake`)
 * @returns The plan as it was where that would cost more, or work at doughs would come into the night for it.
 */
export function putOffForNight(
  problem: PlanProblem,
  grid: FloorGrid,
  settled: Settled,
  awake: (settled: Settled) => Settled,
): Settled {
  const now = awake(settled)
  const out = doneTooEarly(now)
  if (out === 0) return now
  const nights = nightsOf(problem, hoursOf(now))
  const inHand = Math.min(NIGHT.inHand, leastInHand(now))
  // What stays in longer than it needs is the drier for it.
  for (let by = NIGHT.most; by > 0; by -= NIGHT.step) {
    if (!mayBe(problem, settled, by, inHand)) continue
    const later = laterBy(problem, grid, settled, by, true)
    if (!later || later.total > settled.total + 1e-6) continue
    const then = awake(later)
    // What is moved is proved on the oven as it then is.
    if (then === later || then.total > now.total + 1e-6 || doneTooEarly(then) >= out) continue
    const {pieces, cold, clashes} = nightsOf(problem, hoursOf(then))
    if (pieces <= nights.pieces && cold <= nights.cold && clashes <= nights.clashes) return then
  }
  return now
}

/** Whether a day put off by so much has the door opened in no night, but for what may stay in, and leaves so many minutes before what does not is wanted. */
function mayBe(problem: PlanProblem, settled: Settled, by: number, inHand: number): boolean {
  const {jobs, clock0} = settled.model
  return tookIn(settled).every((took, u) => {
    if (!took) return true
    const {dish, due} = jobs[u]!
    const [setIn, drawn] = [took.s, took.e].map((k) => clock0 + k * rules.tick + by)
    if (isNight(problem, setIn!)) return false
    return staysIn(dish.need) || !(isNight(problem, drawn!) || (due !== null && due - drawn! < inHand))
  })
}

/** Jobs that may stay in, and are drawn so long before they are wanted, the day before, that they want the cold till then. */
function doneTooEarly(settled: Settled): number {
  const {jobs, clock0} = settled.model
  const day = (clock: number): number => Math.floor(clock / 1440)
  return tookIn(settled).filter((took, u) => {
    const {dish, due} = jobs[u]!
    if (!took || due === null || !staysIn(dish.need) || !wantsCold(dish)) return false
    const drawn = clock0 + took.e * rules.tick
    return day(drawn) < day(due) && due - drawn > rules.standMinutes
  }).length
}

/** Minutes between a draw and when it is wanted, the fewest of what does not stay in. */
function leastInHand(settled: Settled): number {
  const {jobs, clock0} = settled.model
  const minutes = tookIn(settled).map((took, u) => {
    const {dish, due} = jobs[u]!
    return took && due !== null && !staysIn(dish.need)
      ? Math.max(0, due - clock0 - took.e * rules.tick)
      : Number.POSITIVE_INFINITY
  })
  return Math.min(Number.POSITIVE_INFINITY, ...minutes)
}

/**
 * A plan with all of it so many minutes later; null where something would be done at an hour at which it may not.
 *
 * @param night What may stay in and would be drawn in the night stays in till the morning. The oven is then another from there on, and to be
 *   simulated anew.
 */
function laterBy(problem: PlanProblem, grid: FloorGrid, settled: Settled, by: number, night = false): Settled | null {
  const {program, jobs, lit} = settled.model
  if (lit + by > latestLit(settled.option)) return null
  const model = modelOf(problem, program, jobs, grid, lit + by)
  const choice = (u: number, {s, e, w}: NonNullable<Took>): number => {
    const meant = choiceAt(model, u, s, e, w)
    if (meant >= 0 || !night || !staysIn(jobs[u]!.dish.need)) return meant
    let later = e + 1
    while (later < model.ticks && isNight(problem, model.clock0 + later * rules.tick)) later++
    // Long stays are offered every half hour.
    for (let k = later; k < later + 6; k++) {
      const at = choiceAt(model, u, s, k, w)
      if (at >= 0) return at
    }
    return -1
  }
  const chosen = Int32Array.from(tookIn(settled), (t, u) => (t ? choice(u, t) : -1))
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
