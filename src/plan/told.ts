import type {FiringLog, LogRow} from '../oven/log.js'
import {slugOf} from '../scale/slug.js'
import type {Dish} from '../scale/types.js'
import {type Followed, partsByDish, partsOf, share} from './followed.js'
import {type BackIn, inAfterAll, longerFrom, putBackBy, standsAgain} from './told-back.js'
import {asItWas, isLeftOut, leftOut, setInAt} from './told-left-out.js'
import {taken, vesselsIn} from './told-parts.js'
import type {Load, Plan, Returned} from './types.js'

/** What the log tells of the parts of a plan: when each was set in and drawn, and how many vessels of it. */

/** Where a message about a log points: one of its lines, or its head. */
export function placeIn(log: FiringLog, line = 1): {readonly file: string; readonly line: number; readonly column: number} {
  return {file: `firings/${log.date}.md`, line, column: 1}
}

/** Rows of a log in the order in which they were noted, as far as can be told. */
export const inTurn = (a: LogRow, b: LogRow): number => a.at - b.at || a.line - b.line

/** A part of a dish as the plan that was followed had it, with what the log says became of it. Times in minutes after midnight. */
export interface Told extends Followed {
  /** When it was set in and drawn, where the log says so. */
  readonly saidIn?: number
  readonly saidOut?: number
  /** Only some vessels of the part it belongs to were set in, and it is of the others. */
  readonly waits?: true
  /** When others of the part it belongs to were drawn, and it was not; or when it was set in, where no plan says when it is drawn. */
  readonly stays?: number
  /** When it was lost before it had been set in. */
  readonly lostAt?: number
  /** It was lost, in the oven or before; `instead` where as much of it was made and set in since, which counts in its place. */
  readonly gone?: 'lost' | 'instead'
  /**
   * No plan knows of it yet, since it was made again after a loss, or had no place in the plan that was followed: when it is done is what was
   * lost or set in with it would have had, or its receipt's time, and where it stands nobody told.
   */
  readonly again?: true
  /** It was looked at then and was not done: and for how many minutes more it was to stay, where the log says so. */
  readonly longer?: {readonly at: number; readonly minutes?: number}
  /** It had been drawn and was set in again: `saidIn` is then from when on its heat counts. */
  readonly back?: Returned
}

/** Whether a row of the log is of a dish. */
export function isOf(row: LogRow, dish: Dish): boolean {
  return row.dish === dish.id || row.dish === slugOf(dish.file)
}

/** The row that tells that a dish was set in or drawn at a time, minutes after midnight; undefined where the log does not. */
export function rowAt(log: FiringLog, what: LogRow['what'], at: number | null, dish: Dish): LogRow | undefined {
  return log.rows.find((row) => row.what === what && row.at === at && isOf(row, dish))
}

/**
 * The number of vessels a row tells of, no more than are baked; null where it tells of none, or of more of something else than are baked
 * ("24 biscuits" of two sheets).
 */
export function countOf({count, pieces}: LogRow, baked: number): number | null {
  return count === undefined || (pieces && count > baked) ? null : Math.min(count, baked)
}

/** Dishes that the log calls alike: the parts of a plan they have, how many vessels they are in all, and the rows of the log. */
export interface Alike {
  readonly same: readonly Dish[]
  readonly parts: readonly Followed[]
  /** What the day asks for of them and these parts leave out. */
  readonly leftOut: readonly Told[]
  readonly baked: number
  readonly rows: readonly LogRow[]
  /** When later fires were lit, minutes after midnight. */
  readonly fires: readonly number[]
}

/**
 * The dishes as the log calls them, by their ids: each by its own name where some row has that, else by its receipt's, which other dishes
 * of the day may share.
 *
 * @param more what the day asks for since: as many as that may be told of
 */
function alikeIn(
  parts: readonly Followed[],
  log: FiringLog,
  dishes: ReadonlyMap<string, Dish>,
  more: readonly Dish[] = [],
): Map<string, Alike> {
  const named = new Map<string, Dish[]>()
  for (const dish of dishes.values()) {
    const name = log.rows.some((row) => row.dish === dish.id) ? dish.id : slugOf(dish.file)
    named.set(name, [...(named.get(name) ?? []), dish])
  }
  const out = new Map<string, Alike>()
  for (const [name, same] of named) {
    const since = more.filter(({id, file}) => id === name || slugOf(file) === name)
    const asked = vesselsIn(same)
    const baked = Math.max(asked, vesselsIn(since))
    const alike: Alike = {
      same,
      parts: parts.filter((p) => same.some(({id}) => id === p.entry.dish)),
      leftOut: same.flatMap((dish, i) => {
        const wanted = dish.count + (i === same.length - 1 ? baked - asked : 0)
        const lacks = wanted - vesselsIn(parts.filter((p) => p.entry.dish === dish.id))
        return lacks > 0 ? [leftOut(dish, lacks)] : []
      }),
      baked,
      rows: log.rows.filter((row) => row.dish === name),
      fires: (log.further ?? []).map(({lit}) => lit),
    }
    for (const {id} of same) out.set(id, alike)
  }
  return out
}

/**
 * The parts of a plan with what the log tells of each, those of which only some vessels were set in or drawn in two. Dishes of one receipt
 * that the log calls alike take turns, as they were planned. What the plan had no place for and the log says was set in is in the oven too,
 * as far as the day asks for so many.
 *
 * @param more what the day asks for since
 */
export function toldOf(
  plan: Pick<Plan, 'loads'>,
  log: FiringLog,
  dishes: ReadonlyMap<string, Dish>,
  more: readonly Dish[] = [],
): Told[] {
  const parts = partsOf(plan.loads)
  const out: Told[] = []
  const alikes = alikeIn(parts, log, dishes, more)
  const counted = new Set<Alike>()
  for (const alike of alikes.values()) {
    if (counted.has(alike)) continue
    const {rows, baked} = alike
    const numbered = rows.some(
      (row) =>
        row.what === 'not drawn' ||
        row.left !== undefined ||
        row.lost !== undefined ||
        row.emptied !== undefined ||
        countOf(row, baked) !== null,
    )
    const returned = numbered || putBack(alike).size > 0
    if (!(returned || (alike.leftOut.length > 0 && rows.length > 0))) continue
    out.push(...byCount(alike).told)
    counted.add(alike)
  }
  for (const part of parts) {
    const alike = alikes.get(part.entry.dish)
    if (alike && counted.has(alike)) continue
    // What goes in twice is told of twice: its first row is of the first time planned, its second of the second.
    const nth = (what: LogRow['what'], planned: (p: Followed) => number): number | undefined => {
      if (!alike) return undefined
      const which = new Set(alike.parts.map(planned).filter((t) => t < planned(part))).size
      return alike.rows.filter((row) => row.what === what)[which]?.at
    }
    const saidIn = nth('set in', (p) => p.at)
    const saidOut = nth('drawn', (p) => p.draw)
    out.push({...part, ...(saidIn === undefined ? {} : {saidIn}), ...(saidOut === undefined ? {} : {saidOut})})
  }
  return out
}

/** The loads of the morning's plan with what of them the log says was set in and another plan leaves out altogether. */
export function missingOf(plan: Plan, morning: Plan, log: FiringLog, dishes: ReadonlyMap<string, Dish>): Load[] {
  const has = partsByDish(plan.loads)
  const setIn = (id: string): boolean => {
    const dish = dishes.get(id)
    const rows = dish ? log.rows.filter((row) => row.what === 'set in' && isOf(row, dish)) : []
    if (rows.length === 0) return false
    // Several dishes of a day may go by one name: what the plan has of it went in first.
    const named = [...dishes.values()].filter((other) => rows.some((row) => isOf(row, other)))
    const planned = named.flatMap(({id: other}) => has.get(other) ?? []).reduce((sum, {count}) => sum + count, 0)
    return planned === 0 || rows.reduce((sum, {count}) => sum + (count ?? 0), 0) > planned
  }
  return morning.loads.flatMap((load) => {
    const lost = load.dishes.filter((d) => !has.has(d.dish) && setIn(d.dish))
    return lost.length === 0
      ? []
      : [{...load, dishes: lost, placed: load.placed.filter((p) => lost.some((d) => d.dish === p.dish))}]
  })
}

/** More vessels that the log says were set in than the day asks for of the dishes it calls alike. */
export interface Beyond {
  readonly dish: Dish
  readonly said: number
  readonly asked: number
  /** The row with which they are too many. */
  readonly row: LogRow
}

/** Dishes of which the log says more were set in than the day asks for, not counting what was made again after a loss or set in again. */
export function beyondAsked(log: FiringLog, dishes: ReadonlyMap<string, Dish>): Beyond[] {
  return [...new Set(alikeIn([], log, dishes).values())].flatMap((alike): Beyond[] => {
    const {same, baked: asked, rows} = alike
    const back = putBack(alike)
    let [said, lost] = [0, 0]
    for (const row of rows) {
      lost += row.lost ?? 0
      if (row.what !== 'set in' || row.count === undefined || (row.pieces && row.count > asked)) continue
      // More put back than there are is told of by itself.
      if (back.has(row) && row.back === 'sure' && row.count > asked) continue
      said += row.count - (back.get(row)?.count ?? 0)
      if (said > asked + lost) return [{dish: same[0]!, said, asked, row}]
    }
    return []
  })
}

/** More vessels that a row of the log says were drawn, or put back, than the day asks for of the dishes it calls alike. */
export interface TooMany {
  readonly dish: Dish
  readonly what: 'drawn' | 'put back'
  readonly said: number
  readonly asked: number
  readonly row: LogRow
}

/** Rows that have more drawn at once, or put back, than there are: all there are is taken for what they say. */
export function moreThanThereAre(log: FiringLog, dishes: ReadonlyMap<string, Dish>): TooMany[] {
  return [...new Set(alikeIn([], log, dishes).values())].flatMap(({same, baked: asked, rows}) =>
    rows.flatMap((row): TooMany[] => {
      const {count: said = 0, pieces} = row
      const back = row.what === 'set in' && row.back === 'sure'
      const what = row.what === 'drawn' ? 'drawn' : back ? 'put back' : null
      return what === null || pieces || said <= asked ? [] : [{dish: same[0]!, what, said, asked, row}]
    }),
  )
}

/** What the log says was lost of the dishes it calls alike. */
export interface Loss {
  readonly dish: Dish
  /** Vessels lost, of how many, and of those how many were made again and set in since. */
  readonly lost: number
  readonly all: number
  readonly again: number
  /** When the first of these were set in, minutes after midnight; null where none were. */
  readonly againAt: number | null
}

/** How many vessels the log says were lost of the dishes it calls alike; none of what was not lost. */
export function lossesOf(plan: Plan, log: FiringLog, dishes: ReadonlyMap<string, Dish>): Loss[] {
  return [...new Set(alikeIn(partsOf(plan.loads), log, dishes).values())].flatMap((alike): Loss[] => {
    const {same, baked: all, rows} = alike
    if (rows.every((row) => row.lost === undefined)) return []
    const {told, lost: gone} = byCount(alike)
    const again = vesselsIn(told.filter((part) => part.gone === 'instead'))
    // What was made again and lost as well is lost once of what the day asks.
    const lost = Math.min(gone, all)
    const first = Math.min(...told.flatMap((part) => (part.gone === 'instead' ? [part.saidOut ?? part.lostAt ?? part.at] : [])))
    const since = told.flatMap(({saidIn, gone}) => (saidIn !== undefined && !gone && saidIn >= first ? [saidIn] : []))
    if (lost === 0) return []
    return [{dish: same[0]!, lost, all, again: Math.min(again, lost), againAt: since.length > 0 ? Math.min(...since) : null}]
  })
}

/**
 * The parts of what the log calls alike, by its numbers. A row takes so many vessels of those whose turn it is; one without a number takes all
 * that were planned for one time. What is left of a part of which some were set in waits, and what is left of one of which some were drawn
 * stays in the oven, till it was to be drawn where that is still to come: the log would have told of them too.
 */
function byCount(alike: Alike): {told: Told[]; lost: number} {
  const back = putBack(alike)
  const {told, lost} = countedBy(alike, madeAgain(alike, back), back)
  const had = told.flatMap((part) => asItWas(part, dishIn(alike, part)))
  return {told: alike.same.reduce(withInstead, had), lost}
}

const dishIn = ({same}: Alike, {entry}: Told): Dish => same.find(({id}) => id === entry.dish)!

/**
 * What was made again by each row that tells of more being set in than there was left to set in, after some had been lost: a part like the
 * one that was lost, of which no plan knows.
 */
function madeAgain(alike: Alike, back: ReadonlyMap<LogRow, BackIn>): ReadonlyMap<LogRow, readonly Told[]> {
  const {rows, baked} = alike
  const again = new Map<LogRow, readonly Told[]>()
  for (const [i, row] of rows.entries()) {
    const earlier = rows.slice(0, i)
    if (row.what !== 'set in' || earlier.every(({lost}) => lost === undefined)) continue
    const {told} = countedBy({...alike, rows: earlier}, again, back)
    const waiting = vesselsIn(told.filter((p) => p.saidIn === undefined && p.saidOut === undefined && !p.gone))
    const gone = told.filter((p) => p.gone)
    taken(gone, vesselsIn([...again.values()].flat()))
    const returned = back.get(row)?.count ?? 0
    const known = countOf(row, baked)
    const said = known === null ? (returned > 0 ? 0 : null) : known - returned
    const wanted = said === null ? (waiting > 0 ? 0 : baked) : said - waiting
    const made = taken(gone, wanted).map((part): Told => {
      const {saidOut: _, lostAt: __, gone: ___, ...like} = part
      const {minutes} = dishIn(alike, part).need
      const draw = {low: row.at + minutes.low, likely: row.at + minutes.likely, high: row.at + minutes.high}
      // Nobody was told when to draw it: it is in until the log says that it is not.
      return {...like, at: row.at, draw: draw.likely, entry: {...part.entry, draw}, saidIn: row.at, again: true, stays: row.at}
    })
    if (made.length > 0) again.set(row, made)
  }
  return again
}

/** What was drawn and set in again, by the row that tells of that. */
function putBack(alike: Alike): ReadonlyMap<LogRow, BackIn> {
  const {rows, baked} = alike
  const back = new Map<LogRow, BackIn>()
  for (const [i, row] of rows.entries()) {
    const earlier = rows.slice(0, i)
    if (row.what !== 'set in' || earlier.every(({what}) => what !== 'drawn')) continue
    const {told} = countedBy({...alike, rows: earlier}, new Map(), back)
    const returned = putBackBy(row, countOf(row, baked), told, (part) => dishIn(alike, part).need)
    if (returned) back.set(row, returned)
  }
  return back
}

/** The parts of a dish with those lost ones marked in whose place others were made and set in: all above what the day asks for. */
function withInstead(told: readonly Told[], dish: Dish): Told[] {
  let more = vesselsIn(told.filter(({entry}) => entry.dish === dish.id)) - dish.count
  return told.flatMap((part): Told[] => {
    if (part.entry.dish !== dish.id || !part.gone || more <= 0) return [part]
    const [instead, rest] = share(part, more)
    more -= instead.count
    return [{...instead, gone: 'instead'}, ...(rest ? [rest] : [])]
  })
}

/**
 * The parts by the numbers of the rows.
 *
 * @param again what was made again, by the row that tells of its being set in
 * @param back what was set in again, by that row
 */
function countedBy(
  alike: Alike,
  again: ReadonlyMap<LogRow, readonly Told[]>,
  back: ReadonlyMap<LogRow, BackIn>,
): {told: Told[]; lost: number} {
  const {parts, rows, baked, fires} = alike
  const done: Told[] = []
  let gone = 0
  // What was lost when others were set in is drawn at that time in a plan made since: it comes last.
  const before: Told[] = [...[...parts].sort((a, b) => a.at - b.at || b.draw - a.draw), ...alike.leftOut]
  const inside: Told[] = []
  for (const row of rows) {
    if (row.what !== 'set in') continue
    const [due] = before
    const returned = back.get(row)
    const number = countOf(row, baked)
    const said = returned ? Math.max(0, (number ?? 0) - returned.count) : number
    const made = again.get(row) ?? []
    const here = turn(before, (p) => p.at)
    // All of it is all that was to go in then: later loads are not lost with it.
    const lost = row.whole ? Math.min(row.lost ?? 0, said ?? here) : (row.lost ?? 0)
    const count = row.whole ? 0 : Math.max(0, (said ?? here - lost) - (said === null ? 0 : vesselsIn(made)))
    gone += lost
    const these = taken(before, count)
    const beside = these.find((part) => !isLeftOut(part))
    inside.push(...these.map((part) => setInAt(part, row.at, dishIn(alike, part), beside)))
    done.push(...taken(before, lost).map((part): Told => ({...part, lostAt: row.at, gone: 'lost'})))
    if (said !== null && !(returned && said === 0))
      before.splice(0, before.length, ...before.map((p): Told => (p.at === due?.at ? {...p, waits: true} : p)))
  }
  const inTurnOut = (): Told[] => inside.sort((a, b) => Number(a.waits ?? false) - Number(b.waits ?? false) || a.draw - b.draw)
  inside.push(...before)
  inTurnOut()
  for (const row of rows) {
    const returned = back.get(row)
    if (returned) {
      inside.push(...standsAgain(row, returned, done, {needOf: (part) => dishIn(alike, part).need, fires}))
      inTurnOut()
    }
    if (again.has(row)) {
      inside.push(...again.get(row)!)
      inTurnOut()
    }
    if (row.emptied) {
      const out = inside.filter(isEmptied(row, rows))
      inside.splice(0, inside.length, ...inside.filter((part) => !out.includes(part)))
      done.push(...taken(out, vesselsIn(out)).map((part): Told => ({...part, saidOut: row.at})))
    } else if (row.what === 'drawn') {
      const [due] = inside
      const said = countOf(row, baked)
      // Of what is planned, a row too many tells of nothing that was left out.
      const spare = due !== undefined && isLeftOut(due) && parts.length > 0
      const out = outBy(row, said, spare ? 0 : turn(inside, (p) => p.draw))
      const lost = row.whole ? out : (row.lost ?? 0)
      gone += lost
      const drawn = taken(inside, out)
      done.push(...taken(drawn, lost).map((part): Told => ({...part, saidOut: row.at, gone: 'lost'})))
      done.push(...drawn.map((part): Told => ({...part, saidOut: row.at})))
      const left = (p: Told): boolean => !p.waits && p.draw === due?.draw
      if (said !== null || row.left)
        inside.splice(0, inside.length, ...inside.map((p): Told => (left(p) ? {...p, stays: row.at, ...longerFrom(row)} : p)))
    }
    if (row.what === 'not drawn') {
      inside.push(...inAfterAll(row, countOf(row, baked), inside, done))
      inTurnOut()
      inside.splice(0, inside.length, ...inside.flatMap(leftBy(row, inside, countOf(row, baked))))
    }
    if (row.what === 'lost') {
      const stood = inside.filter((p) => !p.waits && (p.saidIn ?? p.at) <= row.at)
      // Not set in by then: first what other rows leave over.
      const others = inside.filter((p) => !stood.includes(p)).sort((a, b) => rank(a) - rank(b))
      const here = stood.reduce((sum, p) => sum + p.count, 0)
      // All of it is all that stands in the oven, or what was to go in next.
      const all = here > 0 ? here : turn(others, (p) => p.at)
      const lost = row.whole ? Math.min(row.lost ?? 0, all) : (row.lost ?? 0)
      gone += lost
      const drawn = taken(stood, lost)
      done.push(...drawn.map((part): Told => ({...part, saidOut: row.at, gone: 'lost'})))
      const more = lost - drawn.reduce((sum, p) => sum + p.count, 0)
      done.push(...taken(others, more).map(({saidIn: _, ...part}): Told => ({...part, lostAt: row.at, gone: 'lost'})))
      inside.splice(0, inside.length, ...stood, ...others)
    }
  }
  return {told: [...done, ...inside], lost: gone}
}

/**
 * What was taken out when a fire was lit: what the log has in the oven by then and the plan had there still. What the plan had drawn before may
 * have been: it was in till then if the log says that it was put back after.
 */
function isEmptied({at}: LogRow, rows: readonly LogRow[]): (part: Told) => boolean {
  const isBack = rows.find((row) => row.what === 'set in' && row.at >= at)?.back !== undefined
  return ({saidIn, draw, stays, waits}) =>
    saidIn !== undefined && saidIn <= at && !waits && (isBack || stays !== undefined || draw >= at)
}

/** How many a row tells to be drawn, of those whose turn it is: "drawn, 2 of 4 not done" is two, and so is "4 of 4 drawn, 2 not done". */
function outBy({left}: LogRow, said: number | null, due: number): number {
  if (!left) return said ?? due
  if (said === null) return Math.max(0, Math.min(due, left.of ?? due) - left.count)
  return said + left.count > (left.of ?? due) ? Math.max(0, said - left.count) : said
}

/**
 * What a row tells was looked at and not drawn, of the parts that were in the oven by then: those to be drawn next or before, or as many of
 * them as it says.
 */
function leftBy(row: LogRow, inside: readonly Told[], said: number | null): (part: Told) => Told[] {
  const isIn = (p: Told): boolean => !p.waits && (p.saidIn ?? p.at) <= row.at
  const due = inside.find(isIn)
  let left = said ?? Number.POSITIVE_INFINITY
  return (part) => {
    if (!isIn(part) || part.draw > Math.max(due?.draw ?? 0, row.at) || left <= 0) return [part]
    const [some, rest] = share(part, Math.min(left, part.count))
    left -= some.count
    return [{...some, stays: row.at, ...longerFrom(row)}, ...(rest ? [rest] : [])]
  }
}

/** Which of what was not in the oven yet was lost: what the log leaves over, what it does not tell of, what was set in later. */
const rank = (part: Told): number => (part.waits ? 0 : part.saidIn === undefined ? 1 : 2)

/** Vessels of the parts whose turn it is: those planned for the time of the first. */
function turn(parts: readonly Told[], planned: (part: Told) => number): number {
  const [first] = parts
  return first ? parts.reduce((sum, p) => (planned(p) === planned(first) ? sum + p.count : sum), 0) : 0
}
