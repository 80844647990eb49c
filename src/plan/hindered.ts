import {reachWords, staysOn} from './alone.js'
import {batchesOf} from './batches.js'
import {eased} from './ease.js'
import type {FloorGrid} from './floor-grid.js'
import {isNight, type Job} from './model.js'
import type {Simulate} from './options.js'
import {type PhraseId, phrase} from './phrases.js'
import {PlacesLeft, type Seat} from './places-left.js'
import {rules} from './rules.js'
import type {Settled} from './settled.js'
import type {Standing} from './standing.js'
import type {Phrase, PlanProblem} from './types.js'

/**
 * What hinders a dish in a plan as it stands: not which dishes go together on some day, which takes planning many, but what a baker sees who
 * looks at this one and asks where the dish might still have gone. Told where no smaller conflict is known.
 */
export interface Hindrance {
  readonly rule: 'start heat' | 'dose' | 'night' | 'full' | 'room' | 'hands' | 'heat' | 'dough' | 'late'
  /** Ids of the dishes in the way; empty where all that is baked before it is. */
  readonly others: readonly string[]
  readonly words: Phrase
}

/**
 * What hinders one part of a dish that was left out.
 *
 * @param job The part.
 * @param count How many vessels of the dish are left out in all.
 * @param simulate The oven with its loads; absent where they do not change the curve.
 * @returns Null where nothing was found that does.
 */
export function hinderedBy(
  problem: PlanProblem,
  grid: FloorGrid,
  settled: Settled,
  job: Job,
  count: number,
  simulate?: Simulate,
): Hindrance | null {
  const {model, standing, option} = settled
  // A plan may have been found with its dishes' limits eased already.
  const own = problem.dishes.find(({id}) => id === job.dish.id) ?? job.dish
  const taken: Job = {...job, dish: problem.done ? {...own, need: eased(own, 'far')} : own}
  const same = new Set(problem.dishes.filter((dish) => batchesOf(dish) === batchesOf(own)).map(({id}) => id))
  const another = (id: string): boolean => !same.has(id)
  const told = (id: string, others: readonly string[], values: Phrase['values'] = {}): Phrase =>
    phrase(`${id}${count < job.dish.count ? ' of some' : ''}` as PhraseId, {
      dishes: {unit: 'dishes', dishes: [job.dish.id]},
      others: {unit: 'dishes', dishes: others, whole: true},
      count,
      all: job.dish.count,
      ...values,
    })
  const left = new PlacesLeft(problem, grid, settled, taken)
  const {right} = left
  if (right.length === 0) {
    if (Number.isFinite(left.soonest)) {
      const at = {unit: 'clock', value: model.lit + left.soonest} as const
      return {rule: 'late', others: [], words: told('too late', [], {at})}
    }
    const {risen: _, ...whenever} = taken
    if (job.risen && staysOn(problem, grid, whenever, option, model.lit).stays.length > 0)
      return {rule: 'dough', others: [], words: told('not risen', [])}
    const {rule, words} = reachWords(own, staysOn(problem, grid, {...job, dish: own}, option, model.lit).reach)
    return {
      rule: rule as Hindrance['rule'],
      others: [],
      words: told('as left', [], {reasons: {unit: 'phrases', phrases: [words]}}),
    }
  }
  const clock = (tick: number): {unit: 'clock'; value: number} => ({unit: 'clock', value: model.clock0 + tick * rules.tick})
  const during = (some: readonly Seat[]): Phrase['values'] => ({
    from: clock(Math.min(...some.map(({s}) => s))),
    until: clock(Math.max(...some.map(({s}) => s)) + 1),
  })
  const roomy = left.roomy()
  if (roomy.length === 0) {
    const all = inTheWay(right, standing, (some) => right.some((seat) => left.among(seat, some) !== null))
    const others = all.filter(another)
    if (all.length === 0) return null
    return {rule: 'room', others, words: told(others.length > 0 ? 'floor busy' : 'too many for floor', others, during(right))}
  }
  const handy = left.handy(roomy)
  if (handy.length === 0) {
    const all = roomy.flatMap(({s, e}) => [s, e].flatMap((tick) => (left.handsFull(tick) ? left.busy(tick) : [])))
    const others = [...new Set(all.map((u) => model.jobs[u]!.dish.id))].filter(another)
    return {rule: 'hands', others, words: told(others.length > 0 ? 'hands busy' : 'too many for hands', others, during(roomy))}
  }
  if (!simulate) return null
  const spoiled = left.tried(handy, simulate).map(({tried}) => tried.spoiled)
  const fewest = spoiled.reduce((best, one) => (one.length < best.length ? one : best))
  if (fewest.length === 0) return null
  const others = fewest.filter(another)
  return {rule: 'heat', others, words: told(others.length > 0 ? 'heat spoiled' : 'heat of its own', others, during(handy))}
}

/** When the oven is right for a dish and its place free, and only the baker's sleep in the way: first and last minute after midnight to set it in. */
export interface Nightly {
  readonly from: number
  readonly until: number
  readonly words: Phrase
}

/**
 * Whether it is the night that keeps a part of a dish for the slack oven (drying, above all) out of a plan as it stands: there is a time at
 * which the oven, as the rest leaves it, is right for it and its place is free, and no door is opened then.
 *
 * @param count How many vessels of the dish are left out in all.
 */
export function keptOutByNight(problem: PlanProblem, grid: FloorGrid, settled: Settled, job: Job, count: number): Nightly | null {
  const {model, option, standing} = settled
  if (job.dish.need.startHigh > rules.slackCelsius) return null
  const {asleep: all} = staysOn(problem, grid, job, option, model.lit)
  const asleep = all.filter(({from}) => isNight(problem, model.lit + from))
  const left = new PlacesLeft(problem, grid, settled, job)
  const tick = (minutes: number): number => Math.round((minutes - model.program.phase) / rules.tick)
  // What is baked of it already would go in with it then.
  const others = standing.filter(({dish}) => dish !== job.dish.id)
  const free = asleep.some(({from, first, last, where}) => {
    const seat = {s: tick(from), e: tick(first), where, spare: tick(last) - tick(first)}
    return left.among(seat, others) !== null
  })
  if (!free) return null
  const from = model.lit + Math.min(...asleep.map((stay) => stay.from))
  const until = model.lit + Math.max(...asleep.map((stay) => stay.from))
  const words = phrase(count < job.dish.count ? 'kept out by night of some' : 'kept out by night', {
    dishes: {unit: 'dishes', dishes: [job.dish.id]},
    from: {unit: 'clock', value: from},
    until: {unit: 'clock', value: until},
    count,
    all: job.dish.count,
  })
  return {from, until, words}
}

/** The fewest of the dishes that stand there at its time without which it would have its place: those that stand longest are kept first. */
function inTheWay(
  seats: readonly Seat[],
  standing: readonly Standing[],
  free: (standing: readonly Standing[]) => boolean,
): readonly string[] {
  const stands = new Map<string, number>()
  for (const {dish, from, to} of standing) {
    const met = seats.filter(({s, e}) => from < e && s < to).length
    if (met > 0) stands.set(dish, Math.max(met, stands.get(dish) ?? 0))
  }
  const order = [...stands].sort(([a, m], [b, n]) => n - m || (a < b ? -1 : 1)).map(([dish]) => dish)
  const without = (some: readonly string[]): readonly Standing[] => standing.filter(({dish}) => !some.includes(dish))
  let enough = 1
  while (enough <= order.length && !free(without(order.slice(0, enough)))) enough++
  if (enough > order.length) return []
  let needed = order.slice(0, enough)
  for (const dish of needed) {
    const fewer = needed.filter((one) => one !== dish)
    if (free(without(fewer))) needed = fewer
  }
  return needed
}
