import type {Firing, Forecast} from '../oven/types.js'
import type {Report} from './check.js'
import {edges, heatOf} from './check-heat.js'
import {isNight} from './check-night.js'
import type {FiringOption, Plan, PlanProblem} from './types.js'

/** The checker's rules for fires: each is one that was considered, burns and soaks as long as it says, and the curve counts on it at its hour. */

/** Minutes that are rounding, not a break. */
const ROUNDING = 0.01
/** °C by which a plan's curve may lie over that of its fire alone: loads only cool. */
const HOTTER = 3
/** Share of the width of that fire's range that a plan's range has at least. */
const NARROWER = 0.9

const near = (a: number, b: number): boolean => Math.abs(a - b) <= ROUNDING
const same = (a: Firing, b: Firing): boolean =>
  Math.abs(a.wood - b.wood) < 1e-6 && Math.abs(a.burn - b.burn) < 1e-6 && Math.abs(a.soak - b.soak) < 1e-6

/** When the next later fire is lit from a time on, minutes after midnight: nothing stays in then. Infinite where none is. */
export const nextLit = ({fires = []}: Pick<Plan, 'fires'>, at: number): number =>
  Math.min(...fires.flatMap(({lit}, i) => (i > 0 && lit >= at ? [lit] : [])))

/** @param bad called for each rule that is broken */
export function checkFires(problem: PlanProblem, plan: Plan, bad: Report): void {
  if (plan.loads.length === 0 && problem.dishes.length === 0) return
  const {lit, firing, forecast} = plan
  const fires = plan.fires ?? []
  const [first] = fires
  const considered = problem.firings.filter(
    (o) => same(o.firing, firing) && (o.further?.length ?? 0) === Math.max(0, fires.length - 1),
  )
  const option = considered.find((o) => (o.further ?? []).every((f, i) => isAt(plan, f, i + 1)))
  if (considered.length === 0) bad('fire', null, lit, 0, 'the plan burns a fire that was not considered')
  else if (!option && !fires.slice(1).every((fire) => burnsOn(problem, plan, fire)))
    bad('fire', null, fires[1]?.lit ?? lit, 0, 'a later fire is not the one that the curve counts on')
  const sooner = problem.day.fireFrom - lit
  if (problem.done?.lit == null && sooner > ROUNDING) bad('fire', null, lit, sooner, `lit ${sooner} min before fire is allowed`)
  if (problem.done?.lit != null && lit !== problem.done.lit)
    bad('fire', null, lit, Math.abs(lit - problem.done.lit), 'the fire was lit at another time')
  if (
    !first ||
    !near(first.lit, lit) ||
    !near(first.raked, plan.raked) ||
    !near(first.ready, plan.ready) ||
    !same(first.firing, firing)
  )
    bad('fire', null, lit, 0, 'the first fire is not told as it is burned')
  for (const fire of fires) {
    const burned = fire.raked - fire.lit - fire.firing.burn
    if (!near(burned, 0))
      bad('fire', null, fire.raked, burned, `raked out ${Math.abs(burned)} min off the time that the fire burns`)
    const soaked = fire.ready - fire.raked - fire.firing.soak
    if (!near(soaked, 0))
      bad('fire', null, fire.ready, soaked, `ready ${Math.abs(soaked)} min off the time that the heat evens out`)
  }
  for (const [i, fire] of fires.entries())
    if (i > 0 && fire.lit < fires[i - 1]!.raked - ROUNDING)
      bad('fire', null, fire.lit, 0, 'a later fire burns with the one before')
  if (problem.done?.lit == null)
    for (const {raked} of fires.slice(1))
      if (isNight(problem, raked)) bad('night', null, raked, 0, 'a later fire is raked out in the night')
  if (!near(forecast.raked, firing.burn) || !near(forecast.ready, firing.burn + firing.soak))
    bad('forecast', null, lit, 0, 'the curve is of another fire')
  if (option) checkForecast(problem, plan, option, bad)
}

/** Whether the plan has a later fire where an option has it. */
function isAt({lit, fires}: Plan, {minutes, firing}: NonNullable<FiringOption['further']>[number], i: number): boolean {
  const fire = fires?.[i]
  return fire !== undefined && near(fire.lit, lit + minutes) && same(fire.firing, firing)
}

/** °C by which a fire that is lit lifts the curve in ten minutes, and letting the coals out lowers it, at least; and minutes either way. */
const BURNS = {celsius: 60, minutes: 10}

/** Whether the curve leaps when a fire is lit and not before, and falls when it is raked out: where the fires considered are not all known. */
function burnsOn(problem: PlanProblem, plan: Plan, {lit, raked}: NonNullable<Plan['fires']>[number]): boolean {
  const {mean} = heatOf(problem, plan)
  const {celsius, minutes} = BURNS
  return (
    mean(lit + minutes) - mean(lit) >= celsius &&
    mean(lit) - mean(lit - minutes) < celsius &&
    mean(raked) - mean(raked + minutes) >= celsius &&
    mean(raked - minutes) - mean(raked) < celsius
  )
}

/** Loads cool the oven: the curve is nowhere hotter, and its range no narrower, than the fire alone has it. */
function checkForecast({ambient = 20, done}: PlanProblem, {forecast, lit}: Plan, option: FiringOption, bad: Report): void {
  const alone = option.forecast
  const width = ({baking: {low, likely, high}}: Forecast, i: number): number =>
    (high[i]! - low[i]!) / Math.max(1, likely[i]! - ambient)
  const first = Math.ceil(forecast.ready / forecast.step)
  let hotter = 0
  let hotterAt = first
  let sum = 0
  let narrow = -1
  for (let i = first; i < forecast.baking.likely.length; i++) {
    const [low, likely, high] = edges.map((edge) => forecast.baking[edge][i]!) as [number, number, number]
    const by = likely - (alone.baking.likely[i] ?? likely)
    sum += by
    if (by > hotter) {
      hotter = by
      hotterAt = i
    }
    const ordered = low <= likely && likely <= high
    if (narrow < 0 && (!ordered || width(forecast, i) < NARROWER * width(alone, i))) narrow = i
  }
  // A fire of a day that has begun is known with what was set in, and where the door was opened for that the oven is cooler for a while.
  if (done) hotter = sum / Math.max(1, forecast.baking.likely.length - first)
  if (hotter > HOTTER)
    bad(
      'forecast',
      null,
      lit + hotterAt * forecast.step,
      hotter,
      `the curve is ${Math.round(hotter)} °C hotter than the fire alone makes the oven`,
    )
  if (narrow >= 0) bad('forecast', null, lit + narrow * forecast.step, 0, 'the curve’s range is narrower than the oven leaves it')
}
