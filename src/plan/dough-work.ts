import type {ColdPlace} from '../lexicon/schema.js'
import {coldRiseOf} from '../scale/cold-rise.js'
import type {Dish} from '../scale/types.js'
import {mixesFrom, slownessOf} from './dough.js'
import {bestTimes, bulkOf, type Packing, type Sought, spongePlaceFor, type Times, tasksOf, workOf} from './dough-times.js'
import {fireAndDoor, Hands, type Hours, intoNight, type Task} from './hands.js'
import {rules} from './rules.js'
import type {Plan, PlannedDough, PlanProblem} from './types.js'

/** When the doughs of a plan are worked: counted back from their loads, with the hands there are. */

/** When each dish is mixed, left to rise and shaped, counted back from its load. Times in minutes after midnight. */
export interface Dough {
  readonly dish: Dish
  readonly load: number
  readonly at: number
  /** When its sponge is set; null where it has none. */
  readonly sponge: number | null
  readonly mix: number
  readonly rise: number
  readonly shape: number
  /** When it is shaped and left to prove. */
  readonly shaped: number
  /** Mixed the evening before, kept cool. */
  readonly cool: boolean
  /** Minutes by which it rises more slowly than its receipt says, and when what was seen not to have risen is looked at again; −∞ where nothing was. */
  readonly slow: ReturnType<typeof slownessOf>
  readonly lookedAgain: number
  /** Where it stands through the night; null where it does not, or it is not known. */
  readonly cold: ColdPlace | null
  /** Where its sponge works through the night; null where it does not. */
  readonly spongeIn: ColdPlace | null
  /** Minutes by which it rises longer than its receipt says, where it stands cold for that. */
  readonly beyond: number
  /** Which of the dish's batches it is, in the order they are set in, and for how many vessels; null where the dish is one batch. */
  readonly batch: {readonly number: number; readonly of: number; readonly count: number} | null
  /** What it was in the plan that was followed until now. */
  readonly was: PlannedDough | undefined
}

/** Which of a dough's waits is longer than it holds, which an oven that is late makes of them on a day that has begun. */
export function waitsLong({dish: {dough}, at, rise, shape, shaped, cool, slow}: Dough): {rise: boolean; prove: boolean} {
  const {high} = bulkOf(dough!)
  return {
    rise: !cool && !coldRiseOf(dough!) && shape - rise > high + slow.inBulk + (dough!.bulkHold ?? dough!.hold),
    prove: at - shaped > (dough!.prove?.high ?? 0) + slow.proving + dough!.hold,
  }
}

/** Work at a dough for which no hands are free. */
export interface Clash {
  readonly at: number
  readonly dish: Dish
}

/** A dough that is still to be set in. */
interface Wanted {
  readonly dish: Dish
  readonly load: number
  readonly at: number
  readonly count: number
  readonly batch: Dough['batch']
  readonly was: PlannedDough | undefined
}

/** A dough with the hours it was given. */
interface Laid {
  readonly wanted: Wanted
  readonly sought: Sought
  times: Times
  tasks: Task[]
}

/** How often the hours of doughs are looked for again, each among those of all others; and in how many orders they are laid. */
const ROUNDS = 6
const ORDERS = 12
const PACKINGS: readonly Packing[] = ['likely', 'late', 'early']

/**
 * Doughs counted back from their loads, sharing the hands: where two tasks would meet, or one would be at night, a dough is worked at another
 * hour of its receipt's ranges, or as far from them as it holds. Where hands are wanting still, the doughs that want them are seen to first
 * (squeaky wheel: Joslin & Clements, Journal of Artificial Intelligence Research 10 (1999) 353–373).
 *
 * @returns The doughs, the clashes that remain, minutes at which more hands are needed than there are, and the hands with all that work.
 */
export function doughsOf(problem: PlanProblem, plan: Hours): {doughs: Dough[]; clashes: Clash[]; hands: Hands} {
  const {done} = problem
  const busy = fireAndDoor(plan, new Map(problem.dishes.map((d) => [d.id, d])))
  const lay = (order: readonly Wanted[], packing: Packing): {made: Laid[]; hands: Hands; price: number; clashing: Wanted[]} => {
    const hands = new Hands(problem.day.hands, busy)
    const made = laidIn(problem, hands, order, packing)
    const clashing = made.filter(({tasks}) => tasks.some((task) => clashesIn(hands, task))).map(({wanted}) => wanted)
    // Hours in haste have no price of their own.
    const price = made.reduce((sum, {times}) => sum + (Number.isFinite(times.price) ? times.price : 0), 1e6 * clashing.length)
    return {made, hands, price, clashing}
  }
  const first = wantedOf(problem, plan)
  let best = lay(first, 'likely')
  let last = best
  let order = first
  for (let i = 1; i < ORDERS && last.clashing.length > 0; i++) {
    const {clashing} = last
    order = [...clashing, ...order.filter((one) => !clashing.includes(one))]
    last = lay(order, PACKINGS[i % PACKINGS.length]!)
    if (last.price < best.price) best = last
  }
  const {hands} = best
  // Told in the order of the loads, whatever was seen to first.
  const made = first.map((wanted) => best.made.find((one) => one.wanted === wanted)!)
  const doughs = made.map(({wanted: {dish, load, at, count, batch, was}, times}): Dough => {
    const work = workOf(dish, count)
    const slow = slownessOf(was)
    // Its hours were sought as if it had been mixed so much later.
    const mix = times.mix - slow.inBulk
    const rise = mix + work.mix
    const shape = Math.max(times.shape, rise)
    const cool = times.cold !== null || (was?.mixed != null && was.cool)
    const {high} = bulkOf(dish.dough!)
    return {
      dish,
      load,
      at,
      sponge: times.sponge,
      mix,
      rise,
      shape,
      shaped: shape + work.shape,
      cool,
      slow,
      lookedAgain: was?.behind?.until ?? Number.NEGATIVE_INFINITY,
      cold: times.cold,
      spongeIn: times.sponge === null ? null : spongePlaceFor(dish.dough!, mix - times.sponge - rules.setSponge),
      beyond: cool ? Math.max(0, shape - rise - high) : 0,
      batch,
      was,
    }
  })
  const clashes = made.flatMap(({wanted: {dish}, tasks}) => {
    // What was begun before is past changing.
    const full = tasks.find((task) => task.from >= (done?.now ?? task.from) && clashesIn(hands, task))
    return full ? [{at: full.from, dish}] : []
  })
  return {doughs, clashes, hands}
}

/** The hours of doughs, given out in an order; then each put as near its likely ones as the others let it. */
function laidIn(problem: PlanProblem, hands: Hands, order: readonly Wanted[], packing: Packing): Laid[] {
  const {done} = problem
  const soonest = done?.doughs ? rules.tick * Math.ceil(done.now / rules.tick) : Number.NEGATIVE_INFINITY
  const made = order.map((wanted): Laid => {
    const {dish, at, count, was} = wanted
    const sought: Sought = {
      dish,
      at,
      count,
      soonest,
      mixesFrom: done?.doughs ? mixesFrom(dish.dough!, was, soonest) : soonest,
      mixed: was?.mixed == null ? null : was.mixed + slownessOf(was).inBulk,
      cool: was?.cool ?? false,
      sponge: was?.sponge ?? spongeBefore(dish, was),
    }
    const times = timesFor(problem, hands, sought, was, packing)
    const tasks = tasksOf(dish, count, times)
    for (const task of tasks) hands.take(task)
    return {wanted, sought, times, tasks}
  })
  // What was laid first knew nothing of the rest; what comes later may leave room behind.
  const again = (which: (one: Laid) => boolean, how: Packing): void => {
    for (let round = 0; round < ROUNDS; round++) {
      let moved = false
      for (const one of made) {
        const {dish, count, was} = one.wanted
        if (was?.shaped !== undefined) continue
        for (const task of one.tasks) hands.giveBack(task)
        if (which(one)) {
          const times = timesFor(problem, hands, one.sought, was, how)
          moved ||= times.mix !== one.times.mix || times.shape !== one.times.shape || times.sponge !== one.times.sponge
          one.times = times
          one.tasks = tasksOf(dish, count, times)
        }
        for (const task of one.tasks) hands.take(task)
      }
      if (!moved) break
    }
  }
  const blocked = ({tasks}: Laid): boolean =>
    tasks.some(({from, minutes}) => !hands.free(from, minutes) || intoNight(problem, from, minutes) > 0)
  again(blocked, packing)
  if (packing !== 'likely') again(() => true, 'likely')
  return made
}

/** What the doughs of a day cost in sleep and in hands. */
export interface Nights {
  /** Pieces of work in the night; and minutes before five at which the first in a morning begins, though the day may begin before. */
  readonly pieces: number
  readonly early: number
  /** Doughs and sponges that stand in the cold through the night instead. */
  readonly cold: number
  /** Pieces of work for which no hands are free. */
  readonly clashes: number
}

/** Count the work of a day's doughs that is done in the night, and what is done so that it need not be. */
export function nightsOf(problem: PlanProblem, plan: Hours): Nights {
  const {doughs, clashes} = doughsOf(problem, plan)
  const work = doughs.flatMap(({sponge, mix, rise, shape, shaped}) =>
    [
      ...(sponge === null ? [] : [{from: sponge, minutes: rules.setSponge}]),
      {from: mix, minutes: rise - mix},
      {from: shape, minutes: shaped - shape},
    ].filter(({minutes}) => minutes > 0),
  )
  const count = (holds: (task: Task) => boolean): number => work.filter(holds).length
  return {
    pieces: count(({from, minutes}) => intoNight(problem, from, minutes) > 0),
    early: Math.max(0, ...work.map(({from}) => rules.nightTo - (from - 1440 * Math.floor(from / 1440)))),
    cold: doughs.reduce((sum, {cold, spongeIn}) => sum + (cold ? 1 : 0) + (spongeIn ? 1 : 0), 0),
    clashes: clashes.length,
  }
}

/** Dishes left out of a day planned again of which a dough is mixed already, with the first of those. */
export function leftOver(problem: PlanProblem, plan: Plan): {dish: Dish; was: PlannedDough}[] {
  const out = new Set(plan.unplaced.map(({dish}) => dish))
  const used = new Set(wantedOf(problem, plan).map(({was}) => was))
  const mixed = (problem.done?.doughs ?? []).filter((was) => was.mixed !== null && out.has(was.dish) && !used.has(was))
  return problem.dishes.flatMap((dish) => {
    const [was] = mixed.filter((one) => one.dish === dish.id)
    return dish.dough && was ? [{dish, was}] : []
  })
}

/** Whether the hands are full with other things while a task of theirs is done. */
function clashesIn(hands: Hands, task: Task): boolean {
  hands.giveBack(task)
  const full = !hands.free(task.from, task.minutes)
  hands.take(task)
  return full
}

/** The doughs of a plan's loads, those set in last first. */
function wantedOf(problem: PlanProblem, plan: Hours): Wanted[] {
  const byId = new Map(problem.dishes.map((d) => [d.id, d]))
  const wanted: Wanted[] = []
  // What is set in at once is one dough, though it be drawn at two times.
  const batches = new Map<string, {load: Hours['loads'][number]; count: number; fresh: boolean}[]>()
  for (const load of [...plan.loads].sort((a, b) => a.at - b.at))
    for (const d of load.dishes) {
      const own = batches.get(d.dish) ?? []
      batches.set(d.dish, own)
      // Of a load that was noted as it went in, some may be in and the rest be set in at the same hour.
      const fresh = !d.alreadyIn
      const same = own.find((one) => one.load === load && one.fresh === fresh)
      if (same) same.count += d.count
      else own.push({load, count: d.count, fresh})
    }
  for (const [id, own] of batches) {
    const dish = byId.get(id)
    if (!dish?.dough) continue
    const planned = problem.done?.doughs?.filter((d) => d.dish === id) ?? []
    let nth = 0
    own.forEach(({load, count, fresh}, i) => {
      if (!fresh) return
      const batch = own.length === 1 ? null : {number: i + 1, of: own.length, count}
      // What is planned is not set in yet: where fewer are baked than were, those mixed first are.
      const was = planned[Math.min(nth++, planned.length - 1)]
      wanted.push({dish, load: load.number, at: load.at, count, batch, was})
    })
  }
  return wanted.sort((a, b) => b.at - a.at || (a.dish.id < b.dish.id ? -1 : 1))
}

/** When the sponge of a dough was set that is known to be mixed and no more; null where it is not mixed, or wants none. */
function spongeBefore({dough}: Dish, was: PlannedDough | undefined): number | null {
  return was?.mixed == null || !dough?.sponge ? null : was.mixed - rules.setSponge - dough.sponge.likely
}

/** The hours of one dough: the best there are, or what is left of them on a day that has begun. */
function timesFor(problem: PlanProblem, hands: Hands, sought: Sought, was: PlannedDough | undefined, packing: Packing): Times {
  if (was?.shaped !== undefined && was.mixed !== null)
    return {sponge: sought.sponge, mix: was.mixed, shape: was.shaped, cold: null, price: 0}
  return bestTimes(problem, hands, sought, packing) ?? inHaste(problem, hands, sought)
}

/** On a day that has begun, what has less than its time has less of both risings, and none of it before now. */
function inHaste(
  problem: PlanProblem,
  hands: Hands,
  {dish, at, count, soonest, mixesFrom: from, mixed, cool, sponge: set}: Sought,
): Times {
  const dough = dish.dough!
  const work = workOf(dish, count)
  const now = problem.done?.now ?? soonest
  const prove = dough.prove?.likely ?? 0
  const rises = (mixed ?? from) + work.mix
  const has = at - work.shape - rises
  const whole = dough.rise + prove
  const short = rules.tick * Math.floor((rises + (has * dough.rise) / Math.max(1, whole)) / rules.tick)
  let shape = prove > 0 ? Math.max(has < whole ? short : at - work.shape - prove, now) : at - work.shape
  shape = Math.min(at - work.shape, shape)
  // It is not shaped, for want of hands later, before it can be bread.
  const bread = cool ? soonest : (mixed ?? soonest) + work.mix + rules.leastRise * dough.rise
  const most = work.shape > 0 ? Math.min(dough.hold, Math.max(0, shape - bread)) : 0
  for (let wait = 0; wait <= most; wait += rules.tick)
    if (hands.free(shape - wait, work.shape)) {
      shape -= wait
      break
    }
  const mix = mixed ?? Math.max(from, shape - dough.rise - work.mix)
  const sponge = dough.sponge ? (set ?? Math.max(soonest, mix - dough.sponge.likely - rules.setSponge)) : null
  return {sponge, mix, shape, cold: null, price: Number.POSITIVE_INFINITY}
}
