import type {Dish} from '../scale/types.js'
import type {Plan} from './types.js'

/** The most vessels of each line that is to fill the floor, by its line. */
export type AtMost = ReadonlyMap<number, number>

/** A day's dishes with so many of what is to fill the floor, and its plan. */
export interface Filling {
  readonly dishes: readonly Dish[]
  readonly plan: Pick<Plan, 'unplaced'> & {readonly loads: ReadonlyArray<Pick<Plan['loads'][number], 'at' | 'dishes'>>}
  /** Minutes by which dishes come late, added up. */
  readonly late: number
}

/** Minutes later than with one vessel that a full floor is worth. Common practice, no source. */
const WORTH = 60

/** What keeps a floor from being filled: heat or time, hands, or what else stands on it; null where that was not found out. */
export type FillLimit = 'heat' | 'hands' | 'others' | null

/** How many smaller fillings are tried, and how many between one that goes and one that does not. */
const TRIES = {fewer: 3, between: 3} as const
/** Hands with which every day's work gets done. */
const HANDS_ENOUGH = 20

/**
 * How many vessels a day has room, heat, hands and time for of what is to fill the floor: the most of a few numbers that were planned in
 * earnest that are in the oven at once, and whose plan leaves nothing out that it would not leave out with one of them, nor has it later.
 *
 * @param plan plans the day with at most so many of each line, all that stand on the floor where that is null; with `hands` of them, and
 *   with these dishes alone
 * @returns null where all that stand on the floor go
 */
export function floorFilling(
  plan: (atMost: AtMost | null, change?: {readonly hands?: number; readonly alone?: true}) => Filling,
): {readonly atMost: AtMost; readonly limit: FillLimit} | null {
  const all = plan(null)
  const whole: AtMost = countedByLine(all.dishes)
  const one = new Map([...whole.keys()].map((line) => [line, 1]))
  let least: Filling | null = null
  /** The day with one vessel of each: what it leaves out is not for the floor's being filled. */
  const base = (): Filling => {
    least ??= plan(one)
    return least
  }
  const goes = (filling: Filling): boolean => {
    const {dishes, plan, late} = filling
    const {unplaced} = plan
    const lines = new Map(dishes.map(({id, fills}) => [id, fills]))
    for (const {dish} of unplaced) {
      const line = lines.get(dish)
      // Of the only line of the day a vessel less is tried all the same.
      if (line !== undefined && (whole.size === 1 || !hopeless(base()).has(line))) return false
      if (line === undefined && !base().plan.unplaced.some((other) => other.dish === dish)) return false
    }
    return isOneFilling(filling) && (late <= WORTH || late <= base().late + WORTH)
  }
  if (goes(all)) return null
  const first = fewerThatGo(all, whole, plan, goes)
  // What has no place at all is told as such.
  if (first.most === null && !goes(base())) return null
  let most = first.most ?? one
  let {above} = first
  for (let i = 0; i < TRIES.between; i++) {
    const upper = above
    const between = new Map([...most].map(([line, count]) => [line, Math.floor((count + upper.get(line)!) / 2)]))
    if (total(between) <= total(most)) break
    if (goes(plan(between))) most = between
    else above = between
  }
  const barred = whole.size === 1 ? new Set<number>() : hopeless(base())
  const allowed = (counts: AtMost): AtMost => new Map([...counts].filter(([line]) => !barred.has(line)))
  const more = new Map([...most].map(([line, count]) => [line, Math.min(whole.get(line)!, count + 1)]))
  if (total(above) > total(more) && goes(plan(more))) return {atMost: allowed(more), limit: null}
  return {atMost: allowed(most), limit: limitOf(plan, more, goes)}
}

/** Whether all that a line fills the floor with is in the oven at once: drawn for the rest to go in, it was two loads. */
function isOneFilling({dishes, plan}: Filling): boolean {
  const lines = new Map(dishes.map(({id, fills}) => [id, fills]))
  const last = new Map<number, number>()
  for (const {at, dishes: set} of plan.loads)
    for (const {dish} of set) {
      const line = lines.get(dish)
      if (line !== undefined) last.set(line, Math.max(at, last.get(line) ?? at))
    }
  return plan.loads.every(({dishes: set}) =>
    set.every(({dish, draw}) => draw.likely > (last.get(lines.get(dish) ?? Number.NaN) ?? Number.NEGATIVE_INFINITY)),
  )
}

/** Fewer and fewer of each line until they go, and the fewest tried that do not; null where none of a few tries goes. */
function fewerThatGo(
  all: Filling,
  whole: AtMost,
  plan: (atMost: AtMost) => Filling,
  goes: (made: Filling) => boolean,
): {readonly most: AtMost | null; readonly above: AtMost} {
  let above = whole
  let last = all
  for (let i = 0; i < TRIES.fewer && total(above) > above.size; i++) {
    const fewer = fewerThan(above, placedByLine(last))
    last = plan(fewer)
    if (goes(last)) return {most: fewer, above}
    above = fewer
  }
  return {most: null, above}
}

/** Lines of which not even one vessel has a place. */
function hopeless({dishes, plan}: Filling): ReadonlySet<number> {
  const out = new Set(plan.unplaced.map(({dish}) => dish))
  return new Set(dishes.flatMap(({id, fills}) => (fills !== undefined && out.has(id) ? [fills] : [])))
}

/** What keeps one more of each out, of which it is known that they do not go. */
function limitOf(plan: Parameters<typeof floorFilling>[0], more: AtMost, goes: (made: Filling) => boolean): FillLimit {
  const handy = plan(more, {hands: HANDS_ENOUGH})
  if (goes(handy)) return 'hands'
  return handy.dishes.some(({fills}) => fills === undefined) && goes(plan(more, {alone: true})) ? 'others' : 'heat'
}

/** Fewer of each line than were asked for: what was placed of it, and half as many where that were no fewer. */
function fewerThan(asked: AtMost, placed: AtMost): AtMost {
  const found = new Map([...asked].map(([line, count]) => [line, Math.max(1, Math.min(count, placed.get(line) ?? 0))]))
  return total(found) < total(asked)
    ? found
    : new Map([...asked].map(([line, count]) => [line, Math.max(1, Math.floor(count / 2))]))
}

const total = (counts: AtMost): number => [...counts.values()].reduce((sum, count) => sum + count, 0)

function countedByLine(dishes: readonly Dish[]): Map<number, number> {
  const counts = new Map<number, number>()
  for (const {fills, count} of dishes) if (fills !== undefined) counts.set(fills, (counts.get(fills) ?? 0) + count)
  return counts
}

function placedByLine({dishes, plan}: Filling): Map<number, number> {
  const lines = new Map(dishes.map(({id, fills}) => [id, fills]))
  const counts = new Map<number, number>()
  for (const {dish, count} of plan.loads.flatMap((load) => load.dishes)) {
    const line = lines.get(dish)
    if (line !== undefined) counts.set(line, (counts.get(line) ?? 0) + count)
  }
  return counts
}
