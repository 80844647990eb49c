import type {Dish} from '../scale/types.js'
import {withoutBatch} from './batches.js'
import {type Curve, celsiusAt, doseNeeded, doseTable} from './curve.js'
import {blockedBy, type Job} from './model.js'
import type {PlanOptions} from './options.js'
import {english, type PhraseId, phrase, speak} from './phrases.js'
import {rules} from './rules.js'
import type {Settled} from './settled.js'
import type {FiringOption, Phrase, PhraseValue, Plan, PlanProblem} from './types.js'

/** A dish of which something is left out, and of how many vessels. */
export interface Missing {
  readonly job: Job
  readonly count: number
}

/** Plans a day again; the planner gives itself, so that this module need not know it. */
export type Replan = (problem: PlanProblem, options: PlanOptions) => Plan

/**
 * Why a dish has no choice on a curve: the limit that fails it, with the figures.
 *
 * @param from Minutes after lighting before which it is too late to set anything in.
 * @param awake Whether the door may be opened at a minute after lighting.
 */
export function whyNot(
  dish: Dish,
  curve: Curve,
  option: FiringOption,
  from = curve.ready,
  awake: (minutes: number) => boolean = () => true,
): {rule: string; reason: string; words: Phrase} {
  const {need} = dish
  const degrees = (value: number): PhraseValue => ({unit: 'celsius', value})
  const because = (rule: string, id: PhraseId, values: Record<string, PhraseValue> = {}): ReturnType<typeof whyNot> => {
    const words = phrase(id, {dishes: {unit: 'dishes', dishes: [dish.id]}, ...values})
    return {
      rule,
      reason: speak(
        words,
        english(() => dish.title),
      ),
      words,
    }
  }
  const blocked = blockedBy(option)
  let hottest = Number.NEGATIVE_INFINITY
  let coolest = Number.POSITIVE_INFINITY
  let inRange = false
  let bestDose = 0
  let byDay = 0
  const wanted = doseNeeded(need)
  const table = doseTable(curve, 3, need.done)
  for (let m = Math.ceil(Math.max(from, curve.ready) / rules.tick) * rules.tick; m < curve.end; m += rules.tick) {
    if (blocked.some((b) => m >= b.from && m < b.to)) continue
    const t = celsiusAt(curve, 3, m)
    hottest = Math.max(hottest, t)
    coolest = Math.min(coolest, t)
    if (t < need.startLow || t > need.startHigh) continue
    inRange = true
    let last = m
    let lastAwake = m
    for (let e = m; e < curve.end; e += rules.tick) {
      if (celsiusAt(curve, 3, e) < need.endLow || blocked.some((b) => e > b.from && m < b.from)) break
      last = e
      if (awake(e)) lastAwake = e
    }
    const share = (until: number): number =>
      (table[Math.min(table.length - 1, until)]! - table[Math.min(table.length - 1, m)]!) / Math.max(1, wanted)
    bestDose = Math.max(bestDose, share(last))
    if (awake(m)) byDay = Math.max(byDay, share(lastAwake))
  }
  if (hottest < need.startLow)
    return because('start heat', 'not hot enough', {celsius: degrees(need.startLow), hottest: degrees(hottest)})
  if (!inRange)
    return because('start heat', 'not in range', {
      celsius: degrees(need.startLow),
      high: degrees(need.startHigh),
      coolest: degrees(coolest),
    })
  if (bestDose < 1) return because('dose', 'not done', {percent: Math.floor(100 * bestDose), celsius: degrees(need.endLow)})
  return byDay < 1 ? because('night', 'in the night') : because('full', 'all taken')
}

/**
 * Why dishes do not go together: one alone has no place, or there is too much of it; there is not the room, or the heat, for them; or no
 * smaller set than all was found.
 */
export interface Conflict {
  /** Ids: the dish left out, its other batches, and then the others. */
  readonly dishes: readonly string[]
  /** Ids of the others. */
  readonly others: readonly string[]
  readonly why: 'alone' | 'many' | 'room' | 'heat' | 'all'
}

/** Dishes for which days are planned to find what they do not go with, and days planned shortly for each. */
const EXPLAINED = {dishes: 2, quick: 9} as const

/**
 * The smallest sets of dishes that do not go together, one for each dish left out: it (whole, with its other batches) and the fewest of
 * the others, as much of them as is baked, of which none can be taken away. The others alone do go together, since the plan has them.
 *
 * Found by QuickXplain (Junker, AAAI 2004, 167–172) on the simulated oven, in so many days planned shortly; and because a day planned
 * shortly may miss a place, what is found is planned in earnest: where that has room for all of it, all that goes in before the oven is too cool for it is named. Without an
 * oven to simulate, and once a fire burns, it is judged on the plan's own curve, which takes milliseconds.
 */
export function conflictsOf(
  problem: PlanProblem,
  missing: readonly Missing[],
  settled: Settled,
  options: PlanOptions,
  replan: Replan,
): Map<string, Conflict> {
  const found = new Map<string, Conflict>()
  const lost = new Map(missing.map(({job, count}) => [job.dish.id, count]))
  const groups = new Map<string, Dish[]>()
  for (const dish of problem.dishes) groups.set(batchesOf(dish), [...(groups.get(batchesOf(dish)) ?? []), dish])
  const {simulate} = options
  const bare: PlanOptions = {bare: true, ...(options.cancelled ? {cancelled: options.cancelled} : {})}
  const oneFire = (firing: FiringOption, some: readonly Batches[]): boolean =>
    !replan({...problem, firings: [firing], dishes: some.flat()}, {...bare, effort: 'quick'}).possible
  const empty = problem.firings.find((f) => f.firing.burn === settled.option.firing.burn && f.further === settled.option.further)
  const given = !simulate || problem.done
  const simulated = given ? {} : {simulate}
  const onOne = given ? {firings: [settled.option]} : {}
  const {model, found: kept} = settled
  const setIn = new Map<string, number>()
  model.jobs.forEach((job, u) => {
    const o = kept.chosen[u]!
    if (o < 0) return
    const at = job.since === null ? model.s[u]![o]! * rules.tick + model.program.phase : job.since - model.lit
    setIn.set(job.dish.id, Math.min(at, setIn.get(job.dish.id) ?? at))
  })
  const {curve} = model.program
  const hotUntil = (own: Batches): number => {
    const {startLow, minutes} = own[0]!.need
    let last = curve.end
    while (last > curve.ready && celsiusAt(curve, 3, last) < startLow) last -= rules.tick
    return last + minutes.likely
  }
  let explained = 0
  for (const key of new Set(missing.map(({job}) => batchesOf(job.dish)))) {
    const own = groups.get(key)!
    // What goes in when the oven has become too cool for it takes nothing from it; what goes in at a like heat is the likelier in its way.
    const apart = (some: Batches): number => Math.abs(some[0]!.need.startBest - own[0]!.need.startBest)
    const others = [...groups]
      .flatMap(([name, some]): Batches[] =>
        name === key ? [] : [some.flatMap((d) => partOf(d, d.count - (lost.get(d.id) ?? 0)))],
      )
      .filter((some) => some.some((d) => (setIn.get(d.id) ?? Number.POSITIVE_INFINITY) < hotUntil(own)))
      .sort((a, b) => apart(a) - apart(b))
    const put = (some: readonly Batches[], why: Conflict['why']): void => {
      const ids = some.flat().map((d) => d.id)
      for (const {id} of own)
        if (lost.has(id))
          found.set(id, {dishes: [id, ...own.flatMap((d) => (d.id === id ? [] : [d.id])), ...ids], others: ids, why})
    }
    const told = [...found.values()].find(({dishes, why}) => why !== 'all' && dishes.includes(own[0]!.id))
    if (told) {
      put(
        [...groups.values()].filter((some) => some !== own && some.some((d) => told.dishes.includes(d.id))),
        told.why,
      )
      continue
    }
    let smallest: readonly Batches[] = others
    let proved = true
    if (given) {
      const fails = (some: readonly Batches[]): boolean => oneFire(settled.option, some)
      proved = fails([own, ...others])
      if (proved) smallest = fails([own]) ? [] : quickXplain([own], [], others, fails)
    } else if (explained++ < EXPLAINED.dishes) {
      let left: number = EXPLAINED.quick
      // Where no more may be planned, what is left is taken to go together, and so is kept.
      const fails = (some: readonly Batches[]): boolean =>
        left-- > 0 && !replan({...problem, dishes: some.flat()}, {...bare, ...simulated, effort: 'quick'}).possible
      smallest = fails([own]) ? [] : quickXplain([own], [], others, fails)
      proved = !replan({...problem, dishes: [own, ...smallest].flat()}, {...bare, ...simulated}).possible
      if (!proved) smallest = others
    } else proved = false
    // It is the heat that is wanting, and not the room, where all would go into the oven as it is without them.
    const heat = proved && smallest.length > 0 && !given && empty && !oneFire(empty, [own, ...smallest])
    const single = own.reduce((sum, d) => sum + d.count, 0) === 1
    const one = [{...own[0]!, count: 1}]
    const alone = single || !replan({...problem, dishes: one, ...onOne}, {...bare, ...simulated, effort: 'quick'}).possible
    put(smallest, !proved ? 'all' : smallest.length > 0 ? (heat ? 'heat' : 'room') : alone ? 'alone' : 'many')
  }
  return found
}

/** The batches of one dish. */
type Batches = readonly Dish[]

/** What batches of one dish have in common. */
function batchesOf({file, title}: Dish): string {
  return `${file} ${withoutBatch(title)}`
}

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
