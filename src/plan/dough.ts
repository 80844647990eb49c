import {coldProveOf, coldRiseOf} from '../scale/cold-rise.js'
import type {Dish, DoughTimes} from '../scale/types.js'
import {bulkOf, workOf} from './dough-times.js'
import type {Followed} from './followed.js'
import type {PhraseId} from './phrases.js'
import {rules, weights} from './rules.js'
import type {Plan, PlannedDough, PlanProblem, Step} from './types.js'

/** The doughs of a day that has begun. What was mixed stays mixed when it was, and no change of plan makes it rise sooner. */

/** What is said of a dough that has no place any more. */
const PUT_BY = ['put by', 'put by cold', 'put by shaped', 'put by filled'] as const

/**
 * What is said of a dough that has no place any more: one that rises in the warm, one that stands in the cold, and one that is shaped and in the
 * warm, whatever it rose in.
 *
 * @param was that is mixed
 * @param now minutes after midnight
 */
export function putByWords({dough, raw}: Dish, was: PlannedDough, now: number): (typeof PUT_BY)[number] {
  if (was.shaped !== undefined) {
    if (dough && coldProveOf(dough)) return 'put by cold'
    return raw ? 'put by filled' : 'put by shaped'
  }
  const chilled = dough ? coldRiseOf(dough) : null
  return was.cool || (chilled && now >= was.mixed! + chilled.warm) ? 'put by cold' : 'put by'
}

/** The load of a dough that was put by. */
const NO_LOAD = 0

/** Dough may be short of its time by this share and this many minutes: less than a warmer corner makes good. Common practice, no source. */
const SHORT = {share: 0.1, minutes: 10} as const

/** Minutes beyond what a dough holds that a cooler corner makes good. Common practice, no source. */
const LONG = 10

/** Minutes that a dough rises, in bulk and shaped. */
function risingOf({dough}: Pick<Dish, 'dough'>): number {
  return (dough?.rise ?? 0) + (dough?.prove?.likely ?? 0)
}

/** Minutes by which a dough may be short of its rising. */
export function mayBeShort(dish: Dish): number {
  const {dough} = dish
  const rising = risingOf(dish)
  const within = dough ? dough.rise - bulkOf(dough).low + (dough.prove ? dough.prove.likely - dough.prove.low : 0) : 0
  return Math.min(Math.max(SHORT.minutes, SHORT.share * rising, within), (1 - rules.leastRise) * rising)
}

/** Minutes for which a risen and shaped dough may wait to be set in. */
export function mayWait({dough}: Dish): number {
  if (!dough) return LONG
  return LONG + dough.hold + bulkOf(dough).high - dough.rise + (dough.prove ? dough.prove.high - dough.prove.likely : 0)
}

/** Minutes after midnight between which a dough is fit to be set in, and before which it is not set in at all. */
export interface Window {
  readonly least: number
  readonly from: number
  readonly to: number
}

const ALWAYS: Window = {least: Number.NEGATIVE_INFINITY, from: Number.NEGATIVE_INFINITY, to: Number.POSITIVE_INFINITY}

/** What the log tells of the doughs of a dish that are not set in yet, those first that were worked first. Minutes after midnight. */
export interface ToldDoughs {
  /** When they were mixed. */
  readonly mixed: (dish: string) => readonly number[]
  /** When the shaping of so many vessels began. */
  readonly shaped: (dish: string, count: number) => readonly number[]
  /** Minutes that the mixing of so many vessels takes. */
  readonly mixing: (dish: string, count: number) => number
  /** When one was last looked at, and had not risen. */
  readonly notRisen: (dish: string) => number | undefined
  /** Minutes from when the work at so many vessels of a dish begins until it has risen, in bulk and proving. */
  readonly rising: (dish: string, count: number) => {readonly inBulk: number; readonly proving: number}
}

/** Minutes after which a dough that had not risen is looked at again. Common practice, no source. */
const LOOK_AGAIN = 20

/** Whether a step's work is done for a load. */
const isFor = ({load, further}: Step, number: number): boolean => load === number || further?.includes(number) === true

/** Whether a step tells of all of a dish, not of one batch of it. */
function toldWhole({words}: Step): boolean {
  const who = words?.say.values['dishes']
  return typeof who === 'object' && who.unit === 'dishes'
}

/** How what has no dough is mixed. */
const MADE_UP: readonly PhraseId[] = ['make up', 'make up several', 'make up early']

/**
 * The doughs that the plan being followed has for what is not set in yet.
 *
 * @param now minutes after midnight
 * @param plan the plan that was being followed
 * @param toCome its parts that are not set in yet
 * @param told what the log says of them
 * @param presumed when something is taken to have been done that the plan has at a time; both minutes after midnight
 */
export function doughsSoFar(
  now: number,
  plan: Plan,
  toCome: readonly Followed[],
  told: ToldDoughs,
  presumed: (planned: number) => number,
): PlannedDough[] {
  const seen = new Set<string>()
  const counted = new Map<string, number>()
  const putBy = plan.steps.flatMap(({words, dishes: [dish]}): PlannedDough[] => {
    const since = PUT_BY.some((id) => id === words?.say.id) ? words!.say.values['mixed'] : undefined
    return dish !== undefined && typeof since === 'object' && since.unit === 'clock'
      ? [{dish, load: NO_LOAD, mixed: since.value, cool: true}]
      : []
  })
  const fresh = toCome.flatMap(({entry: {dish}, load}): PlannedDough[] => {
    const key = `${dish} ${load.number}`
    if (seen.has(key)) return []
    seen.add(key)
    const step = plan.steps.find(
      (one) =>
        (one.action === 'mix' || one.action === 'evening before') &&
        isFor(one, load.number) &&
        one.dishes.includes(dish) &&
        !MADE_UP.some((id) => id === one.words?.say.id),
    )
    if (!step) return []
    const nth = counted.get(dish) ?? 0
    counted.set(dish, nth + 1)
    const count = toCome.reduce(
      (sum, one) => (one.entry.dish === dish && one.load.number === load.number ? sum + one.count : sum),
      0,
    )
    const said = told.mixed(dish)[nth]
    const saidShaped = told.shaped(dish, count)[nth]
    const doneBy = (action: Step['action'], late = 0): number | null | undefined => {
      const other = plan.steps.find((one) => one.action === action && isFor(one, load.number) && one.dishes.includes(dish))
      if (!other) return undefined
      const at = (other.past ? other.at : presumed(other.at)) + late
      return at <= now ? at : null
    }
    const cool = step.action === 'evening before'
    const at = cool || step.past ? step.at : presumed(step.at)
    const presumedMixed = said ?? (at <= now ? at : null)
    // What is shaped was mixed before.
    const mixed = saidShaped === undefined ? presumedMixed : Math.min(presumedMixed ?? at, saidShaped - told.mixing(dish, count))
    const sponge = doneBy('sponge')
    // Who mixed late shapes as late.
    const late = said === undefined ? 0 : Math.max(0, said - at)
    const workedShaped = mixed === null ? null : (saidShaped ?? doneBy('shape', late))
    // What had not risen when it was looked at was slower than its time: as if it had been worked so much later.
    const looked = told.notRisen(dish)
    const notBefore = looked === undefined ? Number.NEGATIVE_INFINITY : looked + LOOK_AGAIN
    const {inBulk, proving} = told.rising(dish, count)
    const begun = typeof workedShaped === 'number' ? workedShaped : mixed
    const slow = begun === null ? 0 : Math.max(0, notBefore - (begun + (typeof workedShaped === 'number' ? proving : inBulk)))
    return [
      {
        dish,
        load: load.number,
        mixed,
        // What was to be mixed on the day and was mixed before it stood cold through the night; what rises so long by its receipt did not.
        cool: said === undefined ? cool : said < 0 && (cool || step.at >= 0),
        ...(toldWhole(step) ? {whole: true as const} : {}),
        ...(sponge === undefined ? {} : {sponge}),
        ...(typeof workedShaped === 'number' ? {shaped: workedShaped} : {}),
        ...(begun !== null && looked !== undefined ? {behind: {slow, until: notBefore}} : {}),
      },
    ]
  })
  return [...putBy, ...fresh]
}

/**
 * When a part of a dish can be set in with its dough risen and shaped, or so nearly that a warmer corner makes it good, and before it has
 * waited too long: its dough was mixed when the plan being followed had it, or is mixed now at the soonest. Always where nothing is known
 * of it; what was kept cool overnight is shaped when it is wanted, and can wait.
 *
 * @param load the load of it in the plan that was being followed
 * @param count how many vessels of it
 */
export function risenWithin({done}: PlanProblem, dish: Dish, load: number | undefined, count: number): Window {
  const {dough} = dish
  if (!dough || !done?.doughs) return ALWAYS
  const own = done.doughs.find((d) => d.dish === dish.id && d.load === (load ?? NO_LOAD))
  const mixed = own?.mixed ?? null
  if (own?.cool && mixed === null) return ALWAYS
  const work = workOf(dish, count)
  // What has stood cold through the night has risen by the morning.
  const slow = slownessOf(own)
  const risen = own?.cool ? done.now : (mixed ?? mixesFrom(dough, own, done.now)) + work.mix + dough.rise + slow.inBulk
  const prove = dough.prove?.likely ?? 0
  // What is not shaped yet proves from now on at the soonest.
  const shaped = own?.shaped !== undefined ? own.shaped + slow.proving : prove > 0 ? Math.max(risen, done.now) : risen
  const ready = shaped + work.shape + prove
  // Nor can what has still to be shaped be in the oven before that is done, and it has proved as long as it must.
  const toShape = own?.shaped === undefined && !own?.cool ? done.now + work.shape : Number.NEGATIVE_INFINITY
  const provesLeast = Math.min(dough.prove?.low ?? 0, Math.max(0, prove - SHORT.minutes))
  return {
    least: Math.max(
      toShape + rules.leastRise * prove,
      ready - (1 - rules.leastRise) * (own?.shaped === undefined && !own?.cool ? risingOf(dish) : prove),
      own?.behind && !own.behind.early ? own.behind.until : Number.NEGATIVE_INFINITY,
    ),
    // What was seen not to have risen is no sooner fit than it is looked at again.
    from: Math.max(
      toShape + provesLeast,
      ready - Math.min(mayBeShort(dish), own?.cool ? (1 - rules.leastRise) * prove : Number.POSITIVE_INFINITY),
      own?.behind?.until ?? Number.NEGATIVE_INFINITY,
    ),
    to: mixed === null || own?.cool ? ALWAYS.to : ready + mayWait(dish) + waitsUnshaped(dish, own),
  }
}

/** Minutes for which a dough that rises cold waits the longer, until it is shaped. */
function waitsUnshaped({dough}: Dish, own: PlannedDough | undefined): number {
  return !dough || own?.shaped !== undefined || !coldRiseOf(dough) ? 0 : Math.max(0, (dough.bulkHold ?? dough.hold) - dough.hold)
}

/** Minutes by which a dough rises more slowly than its receipt says: in bulk, or where it is shaped by now, since then. */
export function slownessOf(own: PlannedDough | undefined): {readonly inBulk: number; readonly proving: number} {
  const slow = own?.behind?.slow ?? 0
  return own?.shaped === undefined ? {inBulk: slow, proving: 0} : {inBulk: 0, proving: slow}
}

/** When the dough of what is not mixed yet can be at the soonest: its sponge, if it has one, has to work first. */
export function mixesFrom(dough: DoughTimes, own: PlannedDough | undefined, now: number): number {
  const {sponge} = dough
  if (!sponge) return now
  const set = own?.sponge ?? null
  return set === null ? now + rules.setSponge + sponge.low : Math.max(now, set + rules.setSponge + rules.leastRise * sponge.low)
}

/**
 * The doughs of a day as they are planned where not all has a place so: what had not risen may be set in before it is looked at again, rather than
 * be lost. Null where there is none.
 */
export function soonerThanLooked(doughs: readonly PlannedDough[]): PlannedDough[] | null {
  if (!doughs.some(({behind}) => behind)) return null
  return doughs.map((one) => (one.behind ? {...one, behind: {...one.behind, early: true}} : one))
}

/** The price of setting a dough in at a clock time: each minute before it has risen, and each after it held. */
export function amissBy({from, to}: Window, clock: number): number {
  return weights.unrisen * Math.max(0, from - clock) + weights.overRisen * Math.max(0, clock - to)
}
