import type {Range} from '../lexicon/schema.js'
import type {Dish, DoughTimes} from '../scale/types.js'
import {mixesFrom} from './dough.js'
import {rules} from './rules.js'
import type {Load, Plan, PlannedDough, PlanProblem} from './types.js'

/** When the doughs of a plan are worked: counted back from their loads, with the hands there are. */

/** When a dough is mixed the evening before, to be kept cool. */
const evening = rules.evening - 1440

interface Task {
  readonly from: number
  readonly minutes: number
}

/** When each dough is mixed, left to rise and shaped, counted back from its load. */
export interface Dough {
  readonly dish: Dish
  readonly load: number
  readonly at: number
  /** When its sponge is set; null where it has none. */
  readonly sponge: number | null
  readonly mix: number
  readonly rise: number
  readonly shape: number
  /** Mixed the evening before, kept cool. */
  readonly cool: boolean
  /** Which of the dish's batches it is, in the order they are set in, and for how many vessels; null where the dish is one batch. */
  readonly batch: {readonly number: number; readonly of: number; readonly count: number} | null
}

/** Minutes after midnight at which the baker's day begins. */
function wake(problem: PlanProblem): number {
  return Math.min(rules.nightTo, problem.day.fireFrom)
}

/**
 * Doughs counted back from their loads, sharing the hands: where two tasks would meet, one is done earlier, as far as the dough holds.
 *
 * @returns The doughs and the clashes that remain: minutes at which more hands are needed than there are.
 */
export function doughsOf(problem: PlanProblem, plan: Plan): {doughs: Dough[]; clashes: {at: number; dish: string}[]} {
  const byId = new Map(problem.dishes.map((d) => [d.id, d]))
  const {done} = problem
  const busy: Task[] = []
  const door = new Map<number, number>()
  for (const load of plan.loads)
    for (const d of load.dishes) {
      const dish = byId.get(d.dish)
      if (!dish) continue
      const each = d.count * (dish.mass > rules.heavy ? rules.handlingHeavy : rules.handlingLight)
      if (!d.alreadyIn) door.set(load.at, (door.get(load.at) ?? 0) + each)
      door.set(d.draw.likely, (door.get(d.draw.likely) ?? 0) + each)
    }
  for (const [from, minutes] of door) busy.push({from, minutes: Math.min(rules.tick, minutes)})
  const free = (from: number, minutes: number): boolean => {
    // Most tasks under way at once while this one lasts: counted at every start inside it.
    const here = busy.filter((t) => t.from < from + minutes && t.from + t.minutes > from)
    const points = [from, ...here.map((t) => t.from).filter((t) => t > from)]
    return points.every((p) => here.filter((t) => t.from <= p && t.from + t.minutes > p).length < problem.day.hands)
  }
  const doughs: Dough[] = []
  const clashes: {at: number; dish: string}[] = []
  const wanted: {dish: Dish; load: number; at: number; batch: Dough['batch']; was: PlannedDough | undefined}[] = []
  // What is set in at once is one dough, though it be drawn at two times.
  const batches = new Map<string, {load: Load; count: number; fresh: boolean}[]>()
  for (const load of [...plan.loads].sort((a, b) => a.at - b.at))
    for (const d of load.dishes) {
      const own = batches.get(d.dish) ?? []
      batches.set(d.dish, own)
      const same = own.find((one) => one.load === load)
      if (same) same.count += d.count
      else own.push({load, count: d.count, fresh: !d.alreadyIn})
    }
  for (const [id, own] of batches) {
    const dish = byId.get(id)
    if (!dish?.dough) continue
    const planned = done?.doughs?.filter((d) => d.dish === id) ?? []
    own.forEach(({load, count, fresh}, i) => {
      const batch = own.length === 1 ? null : {number: i + 1, of: own.length, count}
      // What is in already was mixed first, so the two are counted from their ends.
      const was = planned[Math.max(0, planned.length - own.length + i)]
      if (fresh) wanted.push({dish, load: load.number, at: load.at, batch, was})
    })
  }
  wanted.sort((a, b) => b.at - a.at || (a.dish.id < b.dish.id ? -1 : 1))
  const soonest = done?.doughs ? rules.tick * Math.ceil(done.now / rules.tick) : Number.NEGATIVE_INFINITY
  for (const {dish, load, at, batch, was} of wanted) {
    const dough = dish.dough!
    const prove = provesFor(problem, dough, at)
    let shape = at - dough.shape - prove
    if (was?.shaped !== undefined) shape = was.shaped
    else if (prove > 0 && done) {
      // On a day that has begun, what has less than its time has less of both risings, and none of it before now.
      const from = (was?.mixed ?? mixesFrom(dough, was, soonest)) + dough.mix
      const has = at - dough.shape - from
      const short = rules.tick * Math.floor((from + (has * dough.rise) / (dough.rise + prove)) / rules.tick)
      shape = Math.min(at - dough.shape, Math.max(has < dough.rise + prove ? short : shape, done.now))
    }
    let clash = false
    if (dough.shape > 0 && was?.shaped === undefined) {
      // On a day that has begun a dough is not shaped, for want of hands later, before it can be bread.
      const bread = was?.cool ? soonest : (was?.mixed ?? soonest) + dough.mix + rules.leastRise * dough.rise
      const most = Math.min(dough.hold, Math.max(0, shape - bread))
      let wait = 0
      while (wait <= most && !free(shape - wait, dough.shape)) wait += 5
      if (wait > most) clash = true
      else shape -= wait
      busy.push({from: shape, minutes: dough.shape})
    }
    const waited = Math.max(0, at - dough.shape - prove - shape)
    let mix = shape - dough.rise - dough.mix
    let cool = false
    if (was && was.mixed !== null) {
      mix = was.mixed
      cool = was.cool
    } else if (soonest < evening && mix < wake(problem) && coolBy(shape, dough)) {
      mix = evening
      cool = true
    } else if (dough.mix > 0) {
      let earlier = 0
      while (waited + earlier <= dough.hold && !free(mix - earlier, dough.mix)) earlier += 5
      if (waited + earlier > dough.hold) clash = true
      else mix -= earlier
      mix = Math.max(mix, done?.doughs ? mixesFrom(dough, was, soonest) : soonest)
      busy.push({from: mix, minutes: dough.mix})
    }
    const sponge = dough.sponge ? (was?.sponge ?? spongeAt(problem, dough.sponge, mix, soonest)) : null
    if (sponge !== null && sponge !== was?.sponge) busy.push({from: sponge, minutes: rules.setSponge})
    const rise = mix + dough.mix
    doughs.push({dish, load, at, sponge, mix, rise, shape: Math.max(shape, rise), cool, batch})
    if (clash) clashes.push({at: mix, dish: dish.id})
  }
  return {doughs, clashes}
}

/** Whether nobody works from a clock time on for some minutes. */
function asleep(problem: PlanProblem, from: number, minutes: number): boolean {
  return from + minutes > rules.nightFrom - 1440 && from < wake(problem)
}

/** Whether a dough mixed in the evening and kept cool is neither short of its rising when it is shaped nor over-proved. */
function coolBy(shape: number, dough: DoughTimes): boolean {
  const risen = shape - (evening + dough.mix)
  return risen >= dough.rise && risen <= rules.coolRise * dough.rise
}

/** Minutes that a dough set in at `at` proves: its likely time, or the nearest in its range for which nobody gets up at night. */
function provesFor(problem: PlanProblem, {prove, shape, hold}: DoughTimes, at: number): number {
  if (!prove) return 0
  const atNight = (minutes: number): boolean => asleep(problem, at - shape - minutes, shape)
  if (!atNight(prove.likely)) return prove.likely
  let best = prove.likely
  let off = Number.POSITIVE_INFINITY
  for (let minutes = prove.low; minutes <= prove.high + hold; minutes += rules.tick)
    if (!atNight(minutes) && Math.abs(minutes - prove.likely) < off) {
      best = minutes
      off = Math.abs(minutes - prove.likely)
    }
  return best
}

/** When the sponge of a dough mixed at `mix` is set: so that it works its likely time, or before the night or after it rather than in it. */
function spongeAt(problem: PlanProblem, sponge: Range, mix: number, soonest: number): number {
  const at = mix - sponge.likely - rules.setSponge
  if (!asleep(problem, at, rules.setSponge)) return Math.max(soonest, at)
  const works = (from: number): number => mix - from - rules.setSponge
  const best = [rules.nightFrom - 1440 - rules.setSponge, wake(problem)]
    .filter((from) => works(from) >= sponge.low && works(from) <= rules.spongeHolds * sponge.high)
    .sort((a, b) => Math.abs(a - at) - Math.abs(b - at))[0]
  return Math.max(soonest, best ?? at)
}
