import type {Dish} from '../scale/types.js'
import {barred, servedBy} from './alone.js'
import {hoursLate} from './asked.js'
import {batchesOf} from './batches.js'
import {celsiusAt} from './curve.js'
import {easedDay} from './ease.js'
import type {FloorGrid} from './floor-grid.js'
import type {Hindrance} from './hindered.js'
import {type Job, passes} from './model.js'
import type {PlanOptions} from './options.js'
import {rules} from './rules.js'
import type {Settled} from './settled.js'
import type {FiringOption, Phrase, Plan, PlanProblem} from './types.js'

/** A dish of which something is left out, and of how many vessels. */
export interface Missing {
  readonly job: Job
  readonly count: number
}

/** Plans a day again; the planner gives itself, so that this module need not know it. */
export type Replan = (problem: PlanProblem, options: PlanOptions) => Plan

/**
 * What is at fault where dishes do not go together: what of the day, if there were more of it, would have room for them all.
 * - `alone`: one vessel of the dish, with nothing else in the oven, finds a limit in its way on every fire
 * - `fire`: no one fire, whenever it is lit, is right for one vessel of each
 * - `late`: they all have a place, and something comes so late that it is of little use
 * - `heat`: on the curve of the empty oven they all have a place, and not as they cool it
 * - `room`, `hands`: with smaller vessels, or more hands, they all have a place
 * - `together`: none of these by itself
 * - `all`: no smaller set than all that is baked was found
 */
export type Why = 'alone' | 'fire' | 'late' | 'heat' | 'room' | 'hands' | 'together' | 'all'

/** Dishes that do not go together. */
export interface Conflict {
  /** Ids: the dish left out, its other batches, and then the others. */
  readonly dishes: readonly string[]
  /** Ids of the others. */
  readonly others: readonly string[]
  readonly why: Why
  /** The limit in the way of a dish that is so alone. */
  readonly alone?: {readonly rule: string; readonly words: Phrase}
}

/** Dishes for which days are planned to find what they do not go with, and days planned shortly for each: on the simulated oven, and else. */
const EXPLAINED = {simulated: {dishes: 2, quick: 9}, given: {dishes: 12, quick: 24}} as const

/** A vessel on a floor that has room for all: its size, as a share of what it is. */
const SMALL = 0.3
/** Hands enough for any opening of the door. */
const HANDS_ENOUGH = 20

/**
 * The smallest sets of dishes that do not go together, one for each dish left out: it (whole, with its other batches) and the fewest of
 * the others, as much of them as is baked, of which none can be taken away. The others alone do go together, since the plan has them.
 *
 * What finds a limit in its way on every fire needs no others. Else the set is found by QuickXplain (Junker, AAAI 2004, 167–172) on the
 * simulated oven, in so many days planned shortly; and because a day planned shortly may miss a place, what is found is planned in earnest:
 * where that has room for all of it, all that is baked is named. Without an oven to simulate, and once a fire burns, it is judged on the
 * fires' own curves, which takes milliseconds.
 *
 * @param hindered What hinders dishes in the plan as it stands, where that is to do instead.
 */
export function conflictsOf(
  asked: PlanProblem,
  grid: FloorGrid,
  missing: readonly Missing[],
  settled: Settled,
  options: PlanOptions,
  replan: Replan,
  hindered: ReadonlyMap<string, Hindrance> = new Map(),
): Map<string, Conflict> {
  const found = new Map<string, Conflict>()
  const lost = new Map(missing.map(({job, count}) => [job.dish.id, count]))
  // Once the day has begun what would be lost is taken with its limits eased.
  const problem = asked.done ? easedDay(asked, 'far') : asked
  const baked = (some: Batches): Dish[] => some.flatMap((d) => partOf(d, d.count - (lost.get(d.id) ?? 0)))
  const {simulate} = options
  const onCurves: PlanOptions = {bare: true, ...(options.cancelled ? {cancelled: options.cancelled} : {})}
  const given = !simulate || problem.done !== undefined
  const shortly: PlanOptions = {...onCurves, effort: 'quick', ...(given ? {} : {simulate})}
  // The plan at hand without the rest has much of the room already that the dish wants, and what comes of going on from it is soon seen.
  const inEarnest: PlanOptions = given ? onCurves : {...shortly, from: settled}
  // As the day without the rest would be planned.
  const asADay: PlanOptions | null = given ? null : {...onCurves, inTime: true, simulate}
  const known = new Map<string, {readonly possible: boolean; readonly inTime: boolean}>()
  const planned = (some: readonly Batches[], how: PlanOptions, change: Partial<PlanProblem> = {}) => {
    const day = {...problem, dishes: some.flat(), ...change}
    // The same dishes are asked about again, whatever order they come in.
    const key = JSON.stringify([
      day.dishes.map(({id, count, vessel}) => `${id} ${count} ${JSON.stringify(vessel.footprint)}`).sort(),
      how.effort ?? '',
      how.simulate !== undefined,
      how.from !== undefined,
      day.day.hands,
      day.firings.length === 1 ? problem.firings.indexOf(day.firings[0]!) : -1,
    ])
    const before = known.get(key)
    if (before) return before
    const plan = replan(day, how)
    const made = {possible: plan.possible, inTime: plan.possible && !hoursLate(day, plan)}
    known.set(key, made)
    return made
  }
  const goes = (...day: Parameters<typeof planned>): boolean => planned(...day).inTime
  // On given curves a day planned shortly is searched on one fire only.
  const fires = given ? problem.firings.map((option) => ({firings: [option]})) : [{}]
  const goesShortly = (some: readonly Batches[], change: Partial<PlanProblem> = {}): boolean =>
    fires.some((fire) => goes(some, shortly, {...fire, ...change}))
  const effort = given ? EXPLAINED.given : EXPLAINED.simulated
  // What no one fire serves is told without planning.
  const served = servedOnce(problem, grid)
  const fireFails = (some: readonly Batches[]): boolean => !onOneFire(problem, served, some.flat())
  const whyOf = (own: Batches, others: readonly Batches[]): Why => {
    const all = [own, ...others]
    if (planned(all, inEarnest).possible) return 'late'
    if (!given && goes(all, {...onCurves, effort: 'quick'})) return 'heat'
    if (goesShortly(all.map(smaller))) return 'room'
    if (goesShortly(all, {day: {...problem.day, hands: HANDS_ENOUGH}})) return 'hands'
    return 'together'
  }
  for (const {job, count} of missing) {
    const {id, count: all} = job.dish
    const some = [problem, asked].map(({dishes}) => dishes.find((d) => d.id === id)!)
    const alone = count < all || !barred(problem, grid, some[0]!) ? null : barred(asked, grid, some[1]!)
    if (alone) found.set(id, {dishes: [id], others: [], why: 'alone', alone})
  }
  const groups = new Map<string, Dish[]>()
  // What does not pass the mouth is in nobody's way.
  for (const dish of problem.dishes)
    if (!found.has(dish.id) && !passes(grid, dish)) groups.set(batchesOf(dish), [...(groups.get(batchesOf(dish)) ?? []), dish])
  const before = hotBefore(settled, groups)
  let explained = 0
  for (const [key, own] of groups) {
    if (!own.some((d) => lost.has(d.id))) continue
    const put = (some: readonly Batches[], why: Why): void => {
      const ids = some.flat().map((d) => d.id)
      for (const {id} of own)
        if (lost.has(id))
          found.set(id, {dishes: [id, ...own.flatMap((d) => (d.id === id ? [] : [d.id])), ...ids], others: ids, why})
    }
    // What goes in at a like heat is the likelier in its way.
    const apart = (one: Batches): number => Math.abs(one[0]!.need.startBest - own[0]!.need.startBest)
    const rest = [...groups]
      .filter(([name]) => name !== key)
      .map(([, one]) => baked(one))
      .filter((one) => one.length > 0)
      .sort((a, b) => apart(a) - apart(b))
    if (explained >= effort.dishes) {
      put(rest, 'all')
      continue
    }
    const told = [...found.values()].find(
      ({dishes, others, why}) => why !== 'all' && others.length > 0 && dishes.includes(own[0]!.id),
    )
    if (told) {
      const others = [...groups.values()].filter((one) => one !== own && one.some((d) => told.dishes.includes(d.id)))
      put(others, told.why)
      continue
    }
    const inPlan = own.filter((d) => lost.has(d.id)).map(({id}) => ({id, others: hindered.get(id)?.others}))
    if (inPlan.every(({others}) => others !== undefined)) {
      for (const {id, others = []} of inPlan) found.set(id, {dishes: [id, ...others], others, why: 'all'})
      continue
    }
    explained++
    if (fireFails([own, ...rest])) {
      const few = fireFails([own]) ? [] : quickXplain([own], [], rest, fireFails)
      if (few.length > 0 && !goes([own, ...few], inEarnest)) {
        put(few, 'fire')
        continue
      }
    }
    let left: number = effort.quick
    let days: number = AS_DAYS
    const fits = (some: readonly Batches[]): boolean | null => {
      if (goes([own, ...some], inEarnest)) return true
      // With all the rest it was planned so: that is the day.
      if (asADay === null || some.length === rest.length) return false
      return days-- > 0 ? goes([own, ...some], asADay) : null
    }
    // Where no more may be planned, what is left is taken to go together, and so is kept.
    const fails = (more: readonly Batches[]): boolean => left-- > 0 && !goesShortly(more)
    // What goes in when the oven has become too cool for it takes nothing from it.
    const others = rest.filter((one) => before(own, one))
    const smallest = fails([own]) ? [] : fails([own, ...others]) ? quickXplain([own], [], others, fails) : rest
    const set = grown(smallest, [...others, ...rest.filter((one) => !others.includes(one))], fits, (some) =>
      goes([own, ...some], shortly),
    )
    if (!set) put(rest, 'all')
    else put(set, whyOf(own, set))
  }
  return found
}

/** Sets of dishes that are planned as a day of their own is, for each dish left out: such a plan takes about as long as the day's. */
const AS_DAYS = 3

/**
 * A set that was found in days planned shortly, grown by one after another of the rest for as long as it fits when it is planned as a day is;
 * and then without those that need not be in it, since it does not fit without them either.
 *
 * @param fits Whether the dish left out goes with so many, planned in earnest; null where no more is planned so.
 * @param soon Whether a day planned shortly has shown so already.
 * @returns Null where the dish goes with all the rest, or with so many that no set was found in so few days.
 */
function grown(
  smallest: readonly Batches[],
  rest: readonly Batches[],
  fits: (some: readonly Batches[]) => boolean | null,
  soon: (some: readonly Batches[]) => boolean,
): readonly Batches[] | null {
  let set = smallest
  for (let fit = fits(set); fit !== false; fit = fits(set)) {
    const next = rest.find((one) => !set.includes(one))
    if (fit === null || !next) return null
    set = [...set, next]
  }
  if (set.length === smallest.length) return set
  for (const one of set.slice(0, -1)) {
    const without = set.filter((other) => other !== one)
    if (!soon(without) && fits(without) === false) set = without
  }
  return set
}

/** Whether something of a dish is set in while the oven is still hot enough for another. */
function hotBefore(
  {model, found: kept}: Settled,
  groups: ReadonlyMap<string, Batches>,
): (own: Batches, other: Batches) => boolean {
  const setIn = new Map<string, number>()
  model.jobs.forEach((job, u) => {
    const o = kept.chosen[u]!
    if (o < 0) return
    const at = job.since === null ? model.s[u]![o]! * rules.tick + model.program.phase : job.since - model.lit
    setIn.set(job.dish.id, Math.min(at, setIn.get(job.dish.id) ?? at))
  })
  const {curve} = model.program
  const hotUntil = new Map<string, number>()
  for (const [key, own] of groups) {
    const {startLow, minutes} = own[0]!.need
    let last = curve.end
    while (last > curve.ready && celsiusAt(curve, 3, last) < startLow) last -= rules.tick
    hotUntil.set(key, last + minutes.likely)
  }
  return (own, other) => other.some((d) => (setIn.get(d.id) ?? Number.POSITIVE_INFINITY) < hotUntil.get(batchesOf(own[0]!))!)
}

/** When a fire may be lit for one vessel of a dish, reckoned once for each. */
function servedOnce(problem: PlanProblem, grid: FloorGrid): (dish: Dish, option: FiringOption) => ReadonlySet<number> {
  const known = new Map<string, ReadonlySet<number>>()
  return (dish, option) => {
    const key = `${problem.firings.indexOf(option)} ${dish.id}`
    const lit = known.get(key) ?? servedBy(problem, grid, dish, option).lit
    known.set(key, lit)
    return lit
  }
}

/** Whether some fire, lit at some time, is right for one vessel of each of these dishes, were it alone in the oven. */
function onOneFire(problem: PlanProblem, served: ReturnType<typeof servedOnce>, dishes: readonly Dish[]): boolean {
  return problem.firings.some((option) => {
    let lit: number[] | null = null
    for (const dish of dishes) {
      const mine = served(dish, option)
      lit = lit ? lit.filter((at) => mine.has(at)) : [...mine]
      if (lit.length === 0) return false
    }
    return true
  })
}

/** The same dishes in vessels that leave the floor free. */
function smaller(some: Batches): Batches {
  return some.map((dish): Dish => {
    const {footprint} = dish.vessel
    const less =
      footprint.shape === 'circle'
        ? {...footprint, diameter: SMALL * footprint.diameter}
        : {...footprint, length: SMALL * footprint.length, width: SMALL * footprint.width}
    return {...dish, vessel: {...dish.vessel, footprint: less}}
  })
}

/** The batches of one dish. */
type Batches = readonly Dish[]

/** So many vessels of a dish. */
function partOf(dish: Dish, count: number): Dish[] {
  return count > 0 ? [{...dish, count}] : []
}

/**
 * The fewest of `some` that fail together with `base`, which fails with all of them.
 *
 * @param added What came to `base` last: where that is nothing new, `base` alone need not be tried.
 */
function quickXplain(
  base: readonly Batches[],
  added: readonly Batches[],
  some: readonly Batches[],
  fails: (dishes: readonly Batches[]) => boolean,
): readonly Batches[] {
  if (added.length > 0 && fails(base)) return []
  if (some.length <= 1) return some
  const half = some.length >> 1
  const first = some.slice(0, half)
  const second = some.slice(half)
  const ofSecond = quickXplain([...base, ...first], first, second, fails)
  const ofFirst = quickXplain([...base, ...ofSecond], ofSecond, first, fails)
  return [...ofFirst, ...ofSecond]
}
