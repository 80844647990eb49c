import type {FiringLog} from '../oven/log.js'
import {slugOf} from '../scale/slug.js'
import type {DayAmount, Dish} from '../scale/types.js'
import {withCount, withoutBatch} from './batches.js'
import {changed} from './changes.js'
import type {Followed} from './followed.js'
import {setInOf} from './longer.js'
import {english, phrase} from './phrases.js'
import {rowAt} from './told.js'
import type {Change, Day, DoneSoFar, Load, Phrase, Plan, PlannedDough} from './types.js'

/**
 * What a day asks for, changed since its fire was lit. What was set in stays as it was asked for then; what is not set in yet is planned as
 * the day asks for it now.
 */

/** One line of a day's list, and its dishes. */
export interface AskedLine {
  readonly item: DayAmount
  /** As the line alone has them. */
  readonly dishes: readonly Dish[]
}

/** A line that is in force on a day that has begun. */
interface InForceLine extends AskedLine {
  /** What stands for its dishes among all that the day has to do with. */
  readonly ids: readonly string[]
}

/** What is asked for at some time of a day that has begun. */
export interface Asking {
  readonly day: Day
  /** All that is asked for, and what was and is in the oven though nobody asks for it any more. */
  readonly dishes: readonly Dish[]
  readonly lines: readonly InForceLine[]
}

/** What `day.md` asks for since some time of a day that has begun. */
export interface AskedSince {
  /** Minutes after midnight. */
  readonly from: number
  readonly day: Day
  readonly lines: readonly AskedLine[]
  /** The dishes of a line of which there are so many vessels already. */
  readonly besides: (item: DayAmount, had: number) => readonly Dish[]
}

/** Dishes by the lines of a day that ask for them, in their order. */
export function linesOf(
  {items}: Pick<Day, 'items'>,
  dishes: readonly Dish[],
  lines: ReadonlyMap<string, {readonly line: number}>,
): AskedLine[] {
  return items.flatMap((item) => {
    const own = dishes.filter(({id}) => lines.get(id)?.line === item.line)
    return own.length > 0 ? [{item, dishes: own}] : []
  })
}

/** What a day asks for, as it stood when its fire was lit. */
export function askedFirst(day: Day, dishes: readonly Dish[], lines: readonly AskedLine[]): Asking {
  return {day, dishes, lines: lines.map((line) => ({...line, ids: line.dishes.map(({id}) => id)}))}
}

/**
 * Whether two days ask for the same: receipts, amounts, hours, hands, people. What only fills idle floor may be another.
 */
export function sameAsked(a: Day, b: Day): boolean {
  const asks = ({people, fireFrom, serve, hands, firings, bowl, items}: Day): string =>
    JSON.stringify([
      people,
      fireFrom,
      serve,
      hands,
      firings,
      bowl,
      items.map(({file, title, amount, wantedBy, hot}) => [file, title, amount, wantedBy, hot]),
    ])
  return asks(a) === asks(b)
}

/** How far a day has come when what it asks for is changed. */
interface SoFar {
  readonly set: DoneSoFar['set']
  readonly drawn: readonly Load[]
  readonly toCome: readonly Followed[]
  readonly doughs: readonly PlannedDough[]
  readonly log: FiringLog
  readonly plan: Plan
}

/** What is asked for from now on, and what the day's past is to that. */
export interface AskedAnew extends Pick<SoFar, 'set' | 'drawn' | 'toCome' | 'plan'> {
  readonly asking: Asking
  /** Dishes that no plan had before, or not so many of. */
  readonly fresh: ReadonlySet<string>
}

/**
 * The day as it is asked for from now on.
 *
 * Of a line that asks for the same the dishes stay, wanted when it says now. Of one that asks for another number what was set in stays, what is
 * mixed is set in as far as it is asked for, and only the difference is made. What is not asked for any more stays in the oven till it is done;
 * what is not set in is dropped, and so is what was only taken to be in, since the log does not tell of it.
 */
export function askedAnew(before: Asking, to: AskedSince, so: SoFar): AskedAnew {
  const byId = new Map(before.dishes.map((dish) => [dish.id, dish]))
  const pairs = paired(before.lines, to.lines)
  const kept = new Set(pairs.flatMap(({old}) => old?.ids ?? []))
  const isIn = (one: SoFar['set'][number]): boolean => {
    const {dish: id, drawn, lost} = one
    const dish = byId.get(id)
    return (
      kept.has(id) ||
      drawn !== null ||
      lost === true ||
      dish === undefined ||
      rowAt(so.log, 'set in', setInOf(one), dish) !== undefined
    )
  }
  const set = so.set.filter(isIn)
  const had = (id: string): number => set.reduce((sum, s) => (s.dish === id ? sum + s.count : sum), 0)
  const used = new Set(before.dishes.map(({id}) => id))
  const fresh = new Set<string>()
  const asked: Dish[] = []
  const lines = pairs.map(({old, line}): InForceLine => {
    const own = old ? changedLine(old, line, to, {...so, had, byId}) : {stay: [], more: line.dishes}
    const more = own.more.map((dish) => {
      const id = freeId(dish.id, used)
      used.add(id)
      fresh.add(id)
      return {...dish, id}
    })
    // More of what was asked for had no place in any plan either.
    for (const {id, count} of own.stay) if (count > (byId.get(id)?.count ?? 0)) fresh.add(id)
    asked.push(...own.stay, ...more)
    return {...line, ids: [...own.stay, ...more].map(({id}) => id)}
  })
  // What nobody asks for any more is behind the rest: it is only to be baked till it is done.
  const rest = before.dishes.flatMap((dish) => {
    const count = asked.some(({id}) => id === dish.id) ? 0 : had(dish.id)
    return count > 0 ? [withCount(dish, count)] : []
  })
  const dishes = [...asked, ...rest]
  const known = new Set(dishes.map(({id}) => id))
  return {
    asking: {day: to.day, dishes, lines},
    fresh,
    set,
    drawn: so.drawn.flatMap((load) => withOnly(load, known)),
    toCome: so.toCome.filter(({entry}) => known.has(entry.dish)),
    plan: {
      ...so.plan,
      loads: so.plan.loads.flatMap((load) => withOnly(load, known)),
      unplaced: so.plan.unplaced.filter(({dish}) => known.has(dish)),
    },
  }
}

/** A load with no dishes but some. */
function withOnly(load: Load, some: ReadonlySet<string>): Load[] {
  const dishes = load.dishes.filter(({dish}) => some.has(dish))
  if (dishes.length === load.dishes.length) return [load]
  return dishes.length === 0 ? [] : [{...load, dishes, placed: load.placed.filter(({dish}) => some.has(dish))}]
}

/** An id like one, that no other dish has. */
function freeId(id: string, used: ReadonlySet<string>): string {
  if (!used.has(id)) return id
  const stem = stemOf(id)
  let number = 2
  while (used.has(`${stem}-${number}`)) number++
  return `${stem}-${number}`
}

const stemOf = (id: string): string => id.replace(/-\d+$/, '')

const countOf = (dishes: readonly Dish[]): number => dishes.reduce((sum, {count}) => sum + count, 0)

/** Each line of a day with the one in force that it was, most alike first. */
function paired(
  before: readonly InForceLine[],
  lines: readonly AskedLine[],
): {readonly old: InForceLine | null; readonly line: AskedLine}[] {
  const left = [...before]
  const found = new Map<AskedLine, InForceLine>()
  const alike: ((old: InForceLine, line: AskedLine) => boolean)[] = [
    (a, b) => a.item.title === b.item.title && a.item.amount === b.item.amount && a.item.wantedBy === b.item.wantedBy,
    (a, b) => a.item.title === b.item.title && a.item.amount === b.item.amount,
    (a, b) => a.item.title === b.item.title && a.item.wantedBy === b.item.wantedBy,
    (a, b) => a.item.title === b.item.title,
    () => true,
  ]
  for (const are of alike)
    for (const line of lines) {
      if (found.has(line)) continue
      const at = left.findIndex((old) => ofOneReceipt(old, line) && are(old, line))
      if (at >= 0) found.set(line, left.splice(at, 1)[0]!)
    }
  return lines.map((line) => ({old: found.get(line) ?? null, line}))
}

const ofOneReceipt = (a: AskedLine, b: AskedLine): boolean =>
  a.item.file === b.item.file && stemOf(a.dishes[0]!.id) === stemOf(b.dishes[0]!.id)

/** What makes vessels of two dishes the same to the oven. */
const madeAs = ({mass, water, vessel, need, dough}: Dish): string =>
  JSON.stringify([mass, water, vessel.footprint, vessel.height, need, dough])

/** Dishes of a line in force as the line now wants them: those that stay, under their own ids, and those to be made besides. */
function changedLine(
  old: InForceLine,
  line: AskedLine,
  {besides}: AskedSince,
  {doughs, had, byId}: Pick<SoFar, 'doughs'> & {readonly had: (id: string) => number; readonly byId: ReadonlyMap<string, Dish>},
): {readonly stay: readonly Dish[]; readonly more: readonly Dish[]} {
  const own = old.ids.flatMap((id) => byId.get(id) ?? [])
  const [first] = line.dishes
  const asNow = (dish: Dish): Dish => wantedAs(dish, first!)
  const bothFill = old.dishes.every(({fills}) => fills !== undefined) && line.dishes.every(({fills}) => fills !== undefined)
  const sizes = (dishes: readonly Dish[]): string => JSON.stringify(dishes.map((dish) => [madeAs(dish), dish.count, dish.times]))
  if (bothFill || sizes(old.dishes) === sizes(line.dishes)) return {stay: own.map(asNow), more: []}

  const isBegun = (id: string): boolean =>
    had(id) > 0 || doughs.some(({dish, mixed, sponge}) => dish === id && (mixed !== null || typeof sponge === 'number'))
  const alike = madeAs(own[0]!) === madeAs(first!)
  if (!old.ids.some(isBegun) && alike)
    // Nothing is made of it yet: all of it is made as it is asked for now, in the places it had.
    return {
      stay: line.dishes.slice(0, own.length).map((dish, i) => ({...dish, id: own[i]!.id})),
      more: line.dishes.slice(own.length),
    }
  const gone = own.reduce((sum, {id, mass}) => sum + had(id) * mass, 0)
  const done = alike ? own.reduce((sum, {id}) => sum + had(id), 0) : Math.ceil(gone / first!.mass - EVEN)
  let left = Math.max(0, countOf(line.dishes) - done)
  const stay = own.flatMap((dish): Dish[] => {
    // What is made otherwise now is made anew; what is mixed as before is set in as that was to be.
    // The log may have set in more of it than was asked for till now.
    const waits = alike ? Math.min(left, Math.max(0, dish.count - had(dish.id))) : 0
    left -= waits
    const count = had(dish.id) + waits
    return count > 0 ? [asNow(withCount(dish, count))] : []
  })
  return {stay, more: left > 0 ? besides(line.item, countOf(line.dishes) - left) : []}
}

/** Share of a vessel that is none. */
const EVEN = 0.02

/** A dish wanted as another of its receipt is. */
function wantedAs(dish: Dish, {title, wantedBy, hot, wantedHot}: Dish): Dish {
  const {hot: _, wantedHot: __, ...rest} = dish
  return {
    ...rest,
    title: withoutBatch(title) + dish.title.slice(withoutBatch(dish.title).length),
    wantedBy,
    ...(hot ? {hot} : {}),
    ...(wantedHot ? {wantedHot} : {}),
  }
}

/**
 * What is asked for otherwise than when the fire was lit, a dish told once.
 *
 * @param set what has been set in
 */
export function changesAsked(first: Asking, now: Asking, set: DoneSoFar['set']): Change[] {
  const keyOf = ({item, dishes}: AskedLine): string => `${item.file} ${stemOf(dishes[0]!.id)}`
  const sum = (lines: readonly InForceLine[], key: string): number =>
    lines.reduce((all, line) => (keyOf(line) === key ? all + countOf(line.dishes) : all), 0)
  const out: Change[] = []
  const put = (dish: string | null, what: Phrase): void => {
    out.push(changed(dish, what, phrase('why day'), {speaker: english((id) => id)}))
  }
  for (const key of new Set([...first.lines, ...now.lines].map(keyOf))) {
    const line = now.lines.find((one) => keyOf(one) === key)
    const [was, is] = [sum(first.lines, key), sum(now.lines, key)]
    if (line === undefined) {
      const old = first.lines.find((one) => keyOf(one) === key)!
      const its = set.filter(({dish}) => old.ids.includes(dish))
      const title = old.item.title || slugOf(old.item.file)
      const inside = its.find(({drawn}) => drawn === null)
      if (its.length === 0) put(null, phrase('not asked', {title}))
      // What is out is behind the day, and may well be struck off its list.
      else if (inside) put(inside.dish, phrase('not asked and in'))
    } else if (was === 0) put(line.ids[0]!, phrase('asked anew'))
    else if (was !== is)
      put(line.ids[0]!, phrase('asked otherwise', {count: {unit: 'count', value: is}, all: {unit: 'count', value: was}}))
  }
  return out
}
