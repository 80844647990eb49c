import {coldPlaces, kneading, shapings, warmDough} from '../lexicon/dough-work.js'
import type {ColdPlace, Range} from '../lexicon/schema.js'
import {coldProveOf, coldRiseOf, mostWarm} from '../scale/cold-rise.js'
import type {Dish, DoughTimes} from '../scale/types.js'
import {type Hands, intoNight, type Task, wake} from './hands.js'
import {rules} from './rules.js'
import type {PlanProblem} from './types.js'

/** How long one dough is worked and rises, and the best hours for it before its load. Times in minutes after midnight, lengths minutes. */

/** Minutes of hands that a dough of so many vessels takes: more of it takes longer (`lexicon/dough-work`). Common practice, no source. */
export function workOf(
  {dough, mass, vessel}: Pick<Dish, 'dough' | 'mass' | 'vessel'>,
  count: number,
): {mix: number; shape: number} {
  const own = dough ?? {mix: 0, shape: 0}
  const each = shapings.find(({vessels}) => vessels.length === 0 || vessels.some((word) => vessel.name.includes(word)))
  const toFive = (minutes: number): number => 5 * Math.round(minutes / 5)
  const more = Math.max(0, mass * count - kneading.upTo) * kneading.perKilogram
  return {
    mix: own.mix === 0 ? 0 : own.mix + toFive(more),
    shape: own.shape === 0 ? 0 : Math.max(own.shape, toFive(count * (each?.minutes ?? 0))),
  }
}

/** Minutes that a dough rises in bulk: its receipt's range, or its one time. */
export function bulkOf({rise, bulk}: DoughTimes): Range {
  return bulk ?? {low: rise, likely: rise, high: rise}
}

/** The cold place in which a dough that is to rise so long, minutes, is neither short of its rising nor over-proved; null where none is. */
function coldPlaceFor(dough: DoughTimes, risen: number): ColdPlace | null {
  const {low, high} = bulkOf(dough)
  return coldPlaces.find((p) => (p.safe || !dough.spoils) && risen >= p.slower.low * low && risen <= p.slower.high * high) ?? null
}

/** The cold place in which the sponge of a dough that works so long, minutes, is neither short of its time nor spent; null where it works in the warm. */
export function spongePlaceFor({sponge, spoils}: DoughTimes, works: number): ColdPlace | null {
  if (!sponge || works <= rules.spongeHolds * sponge.high) return null
  const {low, high} = sponge
  return coldPlaces.find((p) => (p.safe || !spoils) && works >= p.slower.low * low && works <= p.slower.high * high) ?? null
}

/** The mildest cold place for what is in a dough. */
export function mildestFor({spoils}: DoughTimes): ColdPlace {
  return coldPlaces.find(({safe}) => safe || !spoils)!
}

/** When a dough is worked. */
export interface Times {
  /** When its sponge is set; null where it has none. */
  readonly sponge: number | null
  readonly mix: number
  readonly shape: number
  /** Where it rises through the night, mixed the evening before; null where it rises as its receipt says. */
  readonly cold: ColdPlace | null
  /** What the hours cost, to be compared. */
  readonly price: number
}

/** A dough whose hours are sought. */
export interface Sought {
  readonly dish: Dish
  /** When it is set in, and how many vessels of it. */
  readonly at: number
  readonly count: number
  /** Nothing is done before. */
  readonly soonest: number
  /** The dough is not made before. */
  readonly mixesFrom: number
  /** What is done already. */
  readonly mixed: number | null
  readonly cool: boolean
  readonly sponge: number | null
}

/**
 * What is paid for hours that are not as they should be: hands that are not free, night work, and by the minute what is other than the receipt's
 * likely time, within its range and beyond it. Getting up is worse than any change within the ranges and than any night in the cold, and no hands
 * worse than getting up.
 */
const PRICE = {
  clash: 4000,
  clashMinute: 40,
  night: 700,
  nightMinute: 2,
  interrupted: 15,
  cold: 200,
  coldMinute: 0.5,
  rise: {within: 0.3, beyond: 1},
  prove: {within: 0.2, beyond: 1.05},
} as const

/** The evening's hours in which a dough is mixed to stand cold through the night, minutes after midnight. Common practice, no source. */
const EVENING = {from: 17 * 60, to: rules.nightFrom} as const

/** The likely length, and from it outwards every fifth minute as far as a range goes. */
function* lengths(likely: number, low: number, high: number): Generator<number> {
  yield likely
  for (let off = rules.tick; likely + off <= high || likely - off >= low; off += rules.tick) {
    if (likely + off <= high) yield likely + off
    if (likely - off >= low) yield likely - off
  }
}

/** However wide a range is, no length in it is as bad as getting up at night. */
const MOST_WITHIN = 100

/** What lengths within a range are rather taken: the likely ones; or the shortest or the longest, so that no hours are lost between two doughs. */
export type Packing = 'likely' | 'late' | 'early'
const PACK = 0.02

const away = (
  length: number,
  {low, likely, high}: Range,
  {within, beyond}: {within: number; beyond: number},
  packing: Packing,
): number => {
  const inside = Math.min(length, Math.max(likely, high))
  const off =
    packing === 'likely' ? within * Math.abs(inside - likely) : PACK * (packing === 'late' ? inside - low : high - inside)
  return Math.min(MOST_WITHIN, off) + beyond * Math.max(0, length - high)
}

/**
 * The best hours for one dough, while the hands do what they do: mixed, shaped and its sponge set by day where its ranges, the waits it holds or
 * a night in the cold allow it.
 *
 * @returns null where there is no time for it as its receipt has it, which is only so on a day that has begun
 */
export function bestTimes(problem: PlanProblem, hands: Hands, sought: Sought, packing: Packing = 'likely'): Times | null {
  const warm = search(problem, hands, sought, packing, false)
  // A leaven that is set the evening before leaves no time for another night; what rises cold by its receipt stands no colder.
  if (sought.mixed !== null || sought.dish.evening?.some(({does}) => does === 'set') || coldRiseOf(sought.dish.dough!))
    return warm
  const work = workOf(sought.dish, sought.count)
  const atNight = (from: number, minutes: number): boolean => minutes > 0 && intoNight(problem, from, minutes) > 0
  const byDay =
    warm !== null &&
    !atNight(warm.mix, work.mix) &&
    !atNight(warm.shape, work.shape) &&
    (warm.sponge === null || sought.sponge !== null || !atNight(warm.sponge, rules.setSponge))
  return byDay ? warm : search(problem, hands, sought, packing, true)
}

/** @param overnight whether it may rise through the night in the cold */
function search(problem: PlanProblem, hands: Hands, sought: Sought, packing: Packing, overnight: boolean): Times | null {
  const {dish, at, count, soonest, mixed} = sought
  const dough = dish.dough!
  const work = workOf(dish, count)
  const bulk = bulkOf(dough)
  const proves = dough.prove ?? {low: 0, likely: 0, high: 0}
  const bulkHold = dough.bulkHold ?? dough.hold
  const chilled = coldRiseOf(dough)
  const most = mostWarm(dough)
  const longest = dough.spoils ? warmDough.minutes : Number.POSITIVE_INFINITY
  const provesWarm = coldProveOf(dough) === null
  const priceOf = new Map<string, number>()
  const workPrice = (from: number, minutes: number): number => {
    if (minutes === 0) return 0
    const key = `${from} ${minutes}`
    const known = priceOf.get(key)
    if (known !== undefined) return known
    const night = intoNight(problem, from, minutes)
    const clash = hands.wanting(from, minutes)
    const brief = clash === 0 && hands.wanting(from, minutes, true) > 0
    const price =
      (clash > 0 ? PRICE.clash + PRICE.clashMinute * clash : brief ? PRICE.interrupted : 0) +
      (night > 0 ? PRICE.night + PRICE.nightMinute * night : 0)
    priceOf.set(key, price)
    return price
  }
  /** What it costs to get up to stand a dough in the cold that has risen warm since a time. */
  const nightMove = (rises: number, risen: number): number => {
    if (!chilled || chilled.warm === 0 || chilled.warm >= risen) return 0
    return intoNight(problem, rises + chilled.warm - rules.tick, rules.tick) > 0 ? PRICE.night : 0
  }
  const sponges = new Map<number, {at: number; price: number}>()
  const spongeFor = (mix: number): {at: number; price: number} => {
    const known = sponges.get(mix)
    if (known) return known
    const warm = bestSponge(dough.sponge!, mix, sought, workPrice)
    const cold = overnight && warm.price >= PRICE.night ? coldSponge(dough, mix, sought, workPrice) : null
    const best = cold && cold.price < warm.price ? cold : warm
    sponges.set(mix, best)
    return best
  }
  let best: Times | null = null
  const offer = (mix: number, shape: number, cold: ColdPlace | null, price: number): void => {
    if (best && price >= best.price) return
    const all = price + (mixed === null ? workPrice(mix, work.mix) : 0)
    if (best && all >= best.price) return
    const sponge = mixed === null && dough.sponge ? spongeFor(mix) : null
    const whole = all + (sponge?.price ?? 0)
    if (!best || whole < best.price) best = {sponge: sponge?.at ?? sought.sponge, mix, shape, cold, price: whole}
  }
  for (const proved of lengths(proves.likely, proves.low, proves.high + dough.hold)) {
    const shape = at - work.shape - proved
    if (shape < soonest) continue
    const price = workPrice(shape, work.shape) + away(proved, proves, PRICE.prove, packing)
    if (best && price >= (best as Times).price) continue
    // What waits in the cold before it is shaped takes nothing from what it holds after that.
    const waits = chilled ? bulkHold : dough.hold - Math.max(0, proved - proves.high)
    const warm = provesWarm ? proved : 0
    if (mixed !== null) {
      const risen = shape - mixed - work.mix
      if (sought.cool) {
        if (risen >= bulk.low) offer(mixed, shape, coldPlaceFor(dough, risen) ?? mildestFor(dough), price)
      } else if (risen >= bulk.low && risen <= bulk.high + Math.min(bulkHold, waits))
        offer(mixed, shape, null, price + away(risen, bulk, PRICE.rise, packing))
      continue
    }
    for (const risen of lengths(bulk.likely, bulk.low, bulk.high + Math.min(bulkHold, waits))) {
      const mix = shape - risen - work.mix
      const stands = chilled?.warm ?? risen
      if (stands > longest || stands + warm > most) continue
      if (mix >= sought.mixesFrom)
        offer(mix, shape, null, price + away(risen, bulk, PRICE.rise, packing) + nightMove(mix + work.mix, risen))
    }
    if (!overnight || warm > most) continue
    const eve = 1440 * Math.floor(shape / 1440) - 1440
    if (shape < eve + 1440 + wake(problem)) continue
    for (let mix = eve + EVENING.to - work.mix; mix >= Math.max(eve + EVENING.from, sought.mixesFrom); mix -= rules.tick) {
      const risen = shape - mix - work.mix
      const place = risen > bulk.high ? coldPlaceFor(dough, risen) : null
      if (place) offer(mix, shape, place, price + PRICE.cold + PRICE.coldMinute * (risen - bulk.high))
    }
  }
  return best
}

/** When the sponge of a dough made at `mix` is set: so that it works its likely time, or as near it as hands and night let it. */
function bestSponge(
  sponge: Range,
  mix: number,
  {soonest, sponge: set}: Sought,
  workPrice: (from: number, minutes: number) => number,
): {at: number; price: number} {
  if (set !== null) return {at: set, price: away(mix - set - rules.setSponge, sponge, PRICE.prove, 'likely')}
  const longest = rules.spongeHolds * sponge.high
  let best = {at: Math.max(soonest, mix - sponge.likely - rules.setSponge), price: Number.POSITIVE_INFINITY}
  for (const works of lengths(sponge.likely, sponge.low, longest)) {
    const at = mix - works - rules.setSponge
    if (at < soonest) continue
    const apart = away(works, sponge, PRICE.prove, 'likely')
    // Lengths go outwards, so none that follows is cheaper.
    if (apart >= best.price && works > sponge.high) break
    const price = apart + workPrice(at, rules.setSponge)
    if (price < best.price) best = {at, price}
  }
  return best
}

/** When the sponge of a dough made at `mix` is set the evening before, to work through the night in the cold; null where no place is right for that. */
function coldSponge(
  dough: DoughTimes,
  mix: number,
  {mixesFrom, sponge: set}: Sought,
  workPrice: (from: number, minutes: number) => number,
): {at: number; price: number} | null {
  if (set !== null || Number.isFinite(mixesFrom)) return null
  const eve = 1440 * Math.floor(mix / 1440) - 1440
  let best: {at: number; price: number} | null = null
  for (let at = eve + EVENING.to - rules.setSponge; at >= eve + EVENING.from; at -= rules.tick) {
    const works = mix - at - rules.setSponge
    if (!spongePlaceFor(dough, works)) continue
    const price = PRICE.cold + PRICE.coldMinute * (works - dough.sponge!.high) + workPrice(at, rules.setSponge)
    if (!best || price < best.price) best = {at, price}
  }
  return best
}

/** The work at a dough, as tasks of the hands. */
export function tasksOf(dish: Dish, count: number, {sponge, mix, shape}: Times): Task[] {
  const work = workOf(dish, count)
  return [
    ...(sponge === null ? [] : [{from: sponge, minutes: rules.setSponge}]),
    {from: mix, minutes: work.mix},
    {from: shape, minutes: work.shape},
  ].filter(({minutes}) => minutes > 0)
}
