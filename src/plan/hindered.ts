import {reachWords, staysOn} from './alone.js'
import {curveOf} from './curve.js'
import {eased} from './ease.js'
import {eventsOf} from './events.js'
import {type FloorGrid, zoneAt} from './floor-grid.js'
import {hasDose, keeps} from './keeps.js'
import {isNight, type Job} from './model.js'
import type {Simulate} from './options.js'
import {type PhraseId, phrase} from './phrases.js'
import {placeOne, vesselsOf} from './places.js'
import {rules} from './rules.js'
import type {Settled} from './settled.js'
import type {Standing, ToPlace} from './standing.js'
import type {Phrase, PlanProblem} from './types.js'

/**
 * What hinders a dish in a plan as it stands: not which dishes go together on some day, which takes planning many, but what a baker sees who
 * looks at this one and asks where the dish might still have gone. Told where no smaller conflict is known.
 */
export interface Hindrance {
  readonly rule: 'start heat' | 'dose' | 'night' | 'full' | 'room' | 'hands' | 'heat' | 'dough'
  /** Ids of the dishes in the way; empty where all that is baked before it is. */
  readonly others: readonly string[]
  readonly words: Phrase
}

/** Set in and drawn, ticks, in a part of the floor. */
interface Seat {
  readonly s: number
  readonly e: number
  readonly where: number
  /** Ticks after `e` at which it could be drawn as well. */
  readonly spare: number
}

/** Times at which the oven is simulated with the dish in it as well. */
const SIMULATED = 6
/** Ticks by which it may have to stay longer for the heat that it takes itself. */
const LONGER = 24

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
  const {phase, curve} = model.program
  // A plan may have been found with its dishes' limits eased already.
  const own = problem.dishes.find(({id}) => id === job.dish.id) ?? job.dish
  const taken: Job = {...job, dish: problem.done ? {...own, need: eased(own)} : own}
  const told = (id: string, others: readonly string[], values: Phrase['values'] = {}): Phrase =>
    phrase(`${id}${count < job.dish.count ? ' of some' : ''}` as PhraseId, {
      dishes: {unit: 'dishes', dishes: [job.dish.id]},
      others: {unit: 'dishes', dishes: others, whole: true},
      count,
      all: job.dish.count,
      ...values,
    })
  const {stays} = staysOn(problem, grid, taken, option, model.lit)
  if (stays.length === 0) {
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
  const seats = stays.map(({from, first, last, where}): Seat => {
    const [s, e, l] = [from, first, last].map((minutes) => Math.round((minutes - phase) / rules.tick)) as [number, number, number]
    return {s, e, where, spare: l - e}
  })
  const clock = (tick: number): {unit: 'clock'; value: number} => ({unit: 'clock', value: model.clock0 + tick * rules.tick})
  const during = (some: readonly Seat[]): Phrase['values'] => ({
    from: clock(Math.min(...some.map(({s}) => s))),
    until: clock(Math.max(...some.map(({s}) => s)) + 1),
  })
  const fits = (seat: Seat, among: readonly Standing[]): readonly Standing[] | null => {
    const from = seat.s * rules.tick + phase
    const right = (z: number): boolean =>
      (seat.where > 2 || seat.where === z) && keeps(taken.dish, curve, z, from, seat.e * rules.tick + phase)
    const {dish, first} = taken
    const item: ToPlace = {
      dish,
      first,
      count: job.count,
      from: seat.s,
      to: seat.e,
      where: seat.where,
      fits: [right(0), right(1), right(2)],
    }
    return placeOne(grid, among, item)
  }
  const roomy = seats.flatMap((seat) => {
    const vessels = fits(seat, standing)
    return vessels ? [{...seat, vessels}] : []
  })
  if (roomy.length === 0) {
    const all = inTheWay(seats, standing, (some) => seats.some((seat) => fits(seat, some) !== null))
    const others = all.filter((id) => id !== job.dish.id)
    if (all.length === 0) return null
    return {rule: 'room', others, words: told(others.length > 0 ? 'floor busy' : 'too many for floor', others, during(seats))}
  }
  const busy = (tick: number): readonly number[] =>
    model.jobs.flatMap((one, u) => {
      const o = settled.found.chosen[u]!
      return o >= 0 && ((one.since === null && model.s[u]![o] === tick) || model.e[u]![o] === tick) ? [u] : []
    })
  const work = (tick: number): number => busy(tick).reduce((sum, u) => sum + model.jobs[u]!.handling, job.handling)
  const handy = roomy.filter(({s, e}) => work(s) <= model.hands && work(e) <= model.hands)
  if (handy.length === 0) {
    const all = roomy.flatMap(({s, e}) => [s, e].flatMap((tick) => (work(tick) > model.hands ? busy(tick) : [])))
    const others = [...new Set(all.map((u) => model.jobs[u]!.dish.id))].filter((id) => id !== job.dish.id)
    return {rule: 'hands', others, words: told(others.length > 0 ? 'hands busy' : 'too many for hands', others, during(roomy))}
  }
  if (!simulate) return null
  let least: readonly string[] | null = null
  for (let i = 0; i < Math.min(SIMULATED, handy.length); i++) {
    const seat = handy[Math.floor((i * handy.length) / Math.min(SIMULATED, handy.length))]!
    const spoiled = spoiledBy(problem, grid, settled, taken, seat, simulate)
    if (spoiled.length === 0) return null
    if (!least || spoiled.length < least.length) least = spoiled
  }
  const others = least!.filter((id) => id !== job.dish.id)
  return {rule: 'heat', others, words: told(others.length > 0 ? 'heat spoiled' : 'heat of its own', others, during(handy))}
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

/** Ids of the dishes that would not keep their limits were one more set in, itself among them; those that do not anyhow are not counted. */
function spoiledBy(
  problem: PlanProblem,
  grid: FloorGrid,
  {model, found, standing}: Settled,
  job: Job,
  seat: Seat & {readonly vessels: readonly Standing[]},
  simulate: Simulate,
): readonly string[] {
  const {phase, index} = model.program
  const original = problem.firings[index]!
  const took = model.jobs.map((_, u) => {
    const o = found.chosen[u]!
    return o < 0 ? null : {s: model.s[u]![o]!, e: model.e[u]![o]!}
  })
  const curveWith = (jobs: readonly Job[], some: typeof took) =>
    curveOf(
      {...original.forecast, ...simulate(original, eventsOf(jobs, some, original, phase, model.lit), false)},
      problem.ambient ?? 20,
    )
  const before = curveWith(model.jobs, took)
  const after = curveWith([...model.jobs, job], [...took, seat])
  const minutes = (tick: number): number => tick * rules.tick + phase
  const spoiled = new Set<string>()
  for (const [u, other] of model.jobs.entries()) {
    const t = took[u]
    if (!t) continue
    for (const vessel of vesselsOf(other, standing)) {
      const z = zoneAt(grid, vessel.y)
      const kept = (curve: typeof before): boolean =>
        other.since === null
          ? keeps(other.dish, curve, z, minutes(t.s), minutes(t.e))
          : hasDose(other, curve, z, minutes(t.e), model.lit)
      if (kept(before) && !kept(after)) spoiled.add(other.dish.id)
    }
  }
  const own = seat.vessels.map(({y}) => zoneAt(grid, y))
  const done = (e: number): boolean =>
    !isNight(problem, model.clock0 + e * rules.tick) && own.every((z) => keeps(job.dish, after, z, minutes(seat.s), minutes(e)))
  const draws = Array.from({length: Math.max(seat.spare, LONGER) + 1}, (_, i) => seat.e + i)
  if (!draws.some(done)) spoiled.add(job.dish.id)
  return [...spoiled]
}
