import type {Dish} from '../scale/types.js'
import type {Report} from './check.js'
import type {Curves} from './check-figures.js'
import type {Part} from './check-heat.js'
import {forNoMeal, nextDay} from './check-kept.js'
import {isNight} from './check-night.js'
import {rules, weights, zoneNames} from './rules.js'
import type {Load, Plan, PlanProblem} from './types.js'

/**
 * The checker's rules for what a plan says of itself: its score summed again, what is late or left out, and what it suggests. Misfit and idle floor
 * hang on the part of the floor that the search had in mind and on its shares of the floor: they are held to what they can be.
 */

/** What is rounding: of sums, of minutes, and the share by which misfit and idle floor may be off. */
const off = {sum: 1e-6, minutes: 0.01, share: 0.02}

/**
 * @param curves with `openings`: the times, minutes after midnight, at which the door is opened
 * @param bad called for each rule that is broken
 */
export function checkScore(
  problem: PlanProblem,
  plan: Plan,
  dishes: ReadonlyMap<string, Dish>,
  curves: Curves & {readonly openings: ReadonlySet<number>},
  bad: Report,
): void {
  const {score, loads} = plan
  const {openings} = curves
  const wrong = (by: number, reason: string): void => bad('score', null, null, by, reason)
  const set = loads.flatMap((load) =>
    load.dishes.flatMap((entry) => {
      const dish = dishes.get(entry.dish)
      return dish ? [{dish, entry, load}] : []
    }),
  )
  const wood = plan.fires ? plan.fires.reduce((sum, x) => sum + x.firing.wood, 0) : plan.firing.wood
  if (Math.abs(score.wood - wood) > off.sum) wrong(score.wood - wood, 'the wood in the score is not the wood burned')
  const lates = set.map(({dish, entry}) => Math.max(0, entry.draw.likely - latestDraw(dish, problem.day.serve)))
  const late = lates.reduce((sum, one) => sum + one, 0)
  if (Math.abs(score.lateMinutes - late) > off.minutes)
    wrong(score.lateMinutes - late, `${late} min late, ${score.lateMinutes} said`)
  const early = set.reduce(
    (sum, {dish: {wantedHot, wantedBy}, entry}) =>
      sum + (wantedHot && wantedBy !== null ? Math.max(0, wantedBy - rules.keepsHot - entry.draw.likely) : 0),
    0,
  )
  const saidEarly = score.earlyMinutes ?? 0
  if (Math.abs(saidEarly - early) > off.minutes) wrong(saidEarly - early, `${early} min too soon to be hot, ${saidEarly} said`)
  if (score.openings !== openings.size)
    wrong(score.openings - openings.size, `${openings.size} openings of the door, ${score.openings} said`)
  // Openings while a receipt wants the door shut, counted again.
  let unshut = 0
  for (const {dish, load} of set) {
    const shut = dish.need.closed?.likely ?? 0
    for (const t of openings) if (t > load.at && t - load.at < shut) unshut++
  }
  if ((score.disturbed ?? 0) !== unshut)
    wrong((score.disturbed ?? 0) - unshut, `${unshut} openings while a receipt wants the door shut, ${score.disturbed ?? 0} said`)
  const misfits = set.map(({dish, entry, load}) => misfitOf(problem, dish, entry, load, curves))
  const [least, most] = [misfits.reduce((sum, m) => sum + m[0], 0), misfits.reduce((sum, m) => sum + m[1], 0)]
  if (score.misfit < least * (1 - off.share) - set.length || score.misfit > most * (1 + off.share) + set.length)
    wrong(
      score.misfit - least,
      `a misfit of ${Math.round(score.misfit)} °C·min, and it is ${Math.round(least)} to ${Math.round(most)}`,
    )
  // Less than none where more floor is used than is hot, which the score does not say.
  const [idle, idlest] = idleIn(plan, set, curves)
  const about = off.share * (1 + Math.abs(idlest))
  if (score.idle < Math.max(0, idle) - about || score.idle > Math.max(0, idlest) + about)
    wrong(
      score.idle - idle,
      `idle floor of ${tenths(score.idle)} m²·h, and it is ${tenths(Math.max(0, idle))} to ${tenths(idlest)}`,
    )
  const total =
    weights.late * late +
    weights.early * early +
    weights.misfit * score.misfit +
    weights.opening * openings.size +
    weights.shut * unshut +
    weights.idle * score.idle +
    weights.wood * wood
  // A morning that cannot have all in time pays more for a minute beyond what is borne.
  const dearer = weights.tooLate * lates.reduce((sum, one) => sum + Math.max(0, one - rules.bearable), 0)
  const cheaper = score.idle > 0 ? 0 : weights.idle * (Math.max(0, -idle) + about)
  if (score.total > total + dearer + off.sum || score.total < total - cheaper - off.sum)
    wrong(score.total - total, 'the total is not the sum of its parts')
  checkBound(score, wrong)
  checkLate(problem, plan, set, bad)
  checkUnplaced(plan, dishes, bad)
  checkSuggestions(problem, plan, curves, bad)
}

const tenths = (value: number): string => String(Math.round(10 * value) / 10)

/**
 * The last minute after midnight at which a draw costs nothing: what was asked; else the meal, but for what stays in through the night, where
 * the meal is on the day that it is set in, the waking hour of the next. The slack oven's dishes are in no hurry.
 */
function latestDraw(dish: Dish, serve: number): number {
  const {wantedBy, need} = dish
  if (wantedBy !== null) return wantedBy
  if (forNoMeal(need)) return Number.POSITIVE_INFINITY
  return nextDay(dish, serve) ? 24 * 60 + rules.waking : serve
}

type Entry = Load['dishes'][number]
interface SetIn {
  readonly dish: Dish
  readonly entry: Entry
  readonly load: Load
}

/** Parts of the floor by which a set-in may have been judged: that which the search had in mind need not be where its vessels came to stand. */
const parts: readonly Part[] = [...zoneNames, 'across']

/** The least and most misfit that a set-in can have, °C·min. */
function misfitOf(
  {done}: PlanProblem,
  dish: Dish,
  entry: Entry,
  load: Load,
  {heat, doses, needed}: Curves,
): readonly [number, number] {
  const {need} = dish
  const usual = needed(dish, need.minutes.likely)
  const minds = entry.alreadyIn ? 0 : Math.min(need.minutes.likely, rules.misfitMinutes)
  const each = parts.map((part) => {
    const start = Math.abs(heat.inZone(part, load.at) - need.startBest) * minds
    const over = doses.between(part, need.done, load.at, entry.draw.likely) - usual
    // Once the day has begun what is wanting counts too, though a little more or less may be within what was eased.
    const least = done || need.overnight ? 0 : Math.max(0, over - rules.marginDose * usual)
    return [
      start + least,
      start + (done || need.enough !== undefined ? Math.abs(over) + rules.marginDose * usual : Math.max(0, over)),
    ]
  })
  return [Math.min(...each.map((m) => m[0]!)), Math.max(...each.map((m) => m[1]!))]
}

/** The least and most hot floor that can be idle, m²·h, less than 0 where more is used than is hot. */
function idleIn(plan: Plan, set: readonly SetIn[], {heat, doses, needed, shares}: Curves): readonly [number, number] {
  const {area} = shares
  const burning = (plan.fires ?? []).slice(1)
  const first = Math.ceil(plan.ready)
  /** Hours of hot floor since the oven was ready, a value a minute. */
  const hours: number[] = [0]
  for (let m = first; m < Math.floor(heat.end); m++)
    hours.push(
      hours.at(-1)! + (burning.some((b) => m >= b.lit && m < b.ready) || heat.mean(m + 0.5) < rules.hotCelsius ? 0 : 1 / 60),
    )
  const until = (clock: number): number => hours[Math.max(0, Math.min(hours.length - 1, Math.round(clock) - first))]!
  let [least, most] = [0, 0]
  for (const {dish, entry, load} of set) {
    const [own, share] = shares.of(dish, entry)
    // What is done and waits puts its floor to no use.
    const dose = needed(dish, need(dish))
    const done = parts.map((part) => doses.reached(part, 'likely', dish.need.done, load.at, dose, entry.draw.likely))
    const busy = Math.min(...done, entry.draw.likely)
    least += own * Math.max(0, until(Math.min(busy, entry.draw.likely - rules.tick)) - until(load.at))
    most += share * Math.max(0, until(entry.draw.likely) - until(load.at))
  }
  const floor = area * hours.at(-1)!
  return [floor - most, floor - least]
}

const need = ({need: {enough, minutes}}: Dish): number => enough ?? minutes.likely

/** A bound lies under what it bounds, and says how far it may be from the best. */
function checkBound({total, bound = null, gap}: Plan['score'], wrong: (by: number, reason: string) => void): void {
  if (bound !== null && bound > total + off.sum) wrong(bound - total, 'the bound lies above the plan')
  const share = bound === null ? null : total <= 0 ? 0 : Math.max(0, (total - bound) / total)
  if ((share === null) !== (gap === null) || Math.abs((share ?? 0) - (gap ?? 0)) > off.sum)
    wrong((gap ?? 0) - (share ?? 0), 'the gap is not that of the bound')
}

/** What is said to be late is, and all that is. */
function checkLate({day}: PlanProblem, plan: Plan, set: readonly SetIn[], bad: Report): void {
  const late = new Map<string, {wanted: number; drawn: number}>()
  for (const {dish, entry} of set) {
    const {wantedBy, need} = dish
    const forNobody = nextDay(dish, day.serve) || (wantedBy === null && forNoMeal(need))
    const wanted = wantedBy ?? day.serve
    const drawn = Math.max(entry.draw.likely, late.get(dish.id)?.drawn ?? 0)
    if (!forNobody && drawn > wanted) late.set(dish.id, {wanted, drawn})
  }
  const told = plan.late ?? []
  for (const {dish, wanted, drawn} of told) {
    const is = late.get(dish)
    const title = set.find((one) => one.dish.id === dish)?.dish.title ?? dish
    if (!is || is.wanted !== wanted || is.drawn !== drawn) bad('score', dish, drawn, 0, `${title}: said to be late, and not so`)
  }
  for (const [id, {drawn, wanted}] of late)
    if (told.filter(({dish}) => dish === id).length !== 1)
      bad('score', id, drawn, drawn - wanted, `${set.find((one) => one.dish.id === id)!.dish.title}: late, and not said to be`)
}

/** What is left out is of the day, each once, and so many vessels are. */
function checkUnplaced({unplaced, score, loads}: Plan, dishes: ReadonlyMap<string, Dish>, bad: Report): void {
  for (const [i, {dish: id, conflict = []}] of unplaced.entries()) {
    const unknown = [id, ...conflict].find((one) => !dishes.has(one))
    if (unknown !== undefined) bad('dish', unknown, null, 1, `${unknown}: no dish of the day`)
    if (unplaced.findIndex(({dish}) => dish === id) !== i)
      bad('possible', id, null, 1, `${dishes.get(id)?.title ?? id}: left out twice`)
  }
  const {leftOut} = score
  if (!leftOut) return
  const asked = [...dishes.values()].reduce((sum, {count}) => sum + count, 0)
  const baked = loads.reduce((sum, load) => sum + load.dishes.reduce((more, {count}) => more + count, 0), 0)
  if (leftOut.vessels > asked - baked || leftOut.least > leftOut.vessels)
    bad(
      'score',
      null,
      null,
      leftOut.vessels - (asked - baked),
      `${leftOut.vessels} vessels said to be left out, of which ${leftOut.least} must`,
    )
}

/** What is suggested goes in and comes out when the door may be opened and no fire burns. */
function checkSuggestions(problem: PlanProblem, plan: Plan, {heat}: Curves, bad: Report): void {
  const soonest = Math.max(plan.ready, problem.done?.now ?? plan.ready) - off.minutes
  const open = (clock: number): boolean => {
    const onTick = Math.abs(clock / rules.tick - Math.round(clock / rules.tick)) < off.sum
    return onTick && !isNight(problem, clock) && clock >= soonest
  }
  for (const {dish, at, draw, zone, count = 1, words} of plan.suggestions ?? []) {
    const fired = (plan.fires ?? []).slice(1).some((fire) => at < fire.ready && draw > fire.lit)
    const where = zone === 'across' || zoneNames.some((name) => name === zone)
    const said = (['at', 'draw'] as const).every((blank) => {
      const value = words?.values[blank]
      return typeof value !== 'object' || !('value' in value) || value.value === (blank === 'at' ? at : draw)
    })
    if (!open(at) || !open(draw) || draw <= at || draw > heat.end || fired || !where || count < 1 || !said)
      bad('clock', dish, at, 0, `${dish}: suggested for a time at which it cannot be baked`)
  }
}
