import {packFloor} from '../scale/floor.js'
import type {FloorItem, Placed, Vessel} from '../scale/types.js'
import {isEmpty} from './bits.js'
import {ACROSS} from './curve.js'
import {type FloorGrid, ROUNDED, rounded, zoneAt} from './floor-grid.js'
import {putOut} from './put-out.js'
import {zoneNames} from './rules.js'
import {
  type Body,
  barred,
  blocks,
  bodyAt,
  candidates,
  gap,
  inZones,
  isSet,
  mostOnFloor,
  ordered,
  type Seats,
  type Style,
  seatsOf,
  strictStyles,
  strike,
  styles,
} from './seats.js'
import {
  barredBefore,
  barredByAll,
  bodiesOf,
  bodyOfSeat,
  carriedPast,
  type Group,
  type Seat,
  type Standing,
  standingAt,
  standingOn,
  type ToPlace,
  together,
} from './standing.js'

/**
 * Places on the floor through the day. Origin at the floor's centre, y towards the back, the mouth at the least y; metres.
 * The rules of standing and of lanes are those of `scale/floor`; this placer works through the day, load by load, on a lattice.
 */

/**
 * Place one load among what already stands. Nothing that stands is moved; nothing is put where it blocks the way of something drawn
 * earlier; every new vessel can be carried to its place.
 *
 * @param standing Vessels in the oven after the draws of this opening.
 * @param load What is set in now.
 * @returns The new vessels, or the dish for which no place was found and how many of it found one.
 */
export function placeLoad(
  grid: FloorGrid,
  standing: readonly Standing[],
  load: readonly ToPlace[],
): {ok: true; placed: Standing[]} | {ok: false; dish: string; first: number; found: number} {
  let worst = {dish: load[0]?.dish.id ?? '', first: load[0]?.first ?? 1, found: 0}
  let score = -1
  // Latest drawn first, so that it gets the depth; large before small.
  const bySize: Order = (a, b) => footprintArea(b.dish.vessel) - footprintArea(a.dish.vessel)
  const orders: Order[] = [
    (a, b) => b.to - a.to || a.where - b.where || bySize(a, b) || compare(a.dish.id, b.dish.id),
    (a, b) => b.to - a.to || bySize(a, b) || a.where - b.where || compare(a.dish.id, b.dish.id),
    (a, b) => bySize(a, b) || b.to - a.to || compare(a.dish.id, b.dish.id),
  ]
  const opens = new Map(load.map((item) => [item, openFor(grid, standing, item)]))
  for (const [item, open] of opens) {
    if (isEmpty(open.free)) return {ok: false, dish: item.dish.id, first: item.first, found: 0}
  }
  const tried = new Set<string>()
  for (const strict of [true, false])
    for (const order of orders) {
      const sorted = [...load].sort(order)
      const key = `${strict} ${sorted.map((l) => load.indexOf(l)).join(' ')}`
      if (tried.has(key)) continue
      tried.add(key)
      for (const style of strict ? strictStyles : styles) {
        const result = tryPlace(
          grid,
          sorted.map((l) => opens.get(l)!),
          style,
          strict,
        )
        if (result.ok) return result
        if (result.total > score) {
          score = result.total
          worst = {dish: result.dish, first: result.first, found: result.found}
        }
      }
    }
  const pushed = packed(grid, standing, load)
  return pushed ? {ok: true, placed: pushed} : {ok: false, ...worst}
}

/** The slower packer of `scale/floor`, which can push vessels apart: for loads the lattice cannot close up. */
function packed(grid: FloorGrid, standing: readonly Standing[], load: readonly ToPlace[]): Standing[] | null {
  // Pushing apart is slow and only pays on a floor filled at once: elsewhere the lattice has the last word.
  if (standing.length > 0 || load.length > 2) return null
  const key = load.map((l) => [l.dish.id, l.first, l.count, l.to - l.from, l.where, l.fits].join(' ')).join(';')
  let mine = packings.get(grid)
  if (!mine) {
    mine = new Map()
    packings.set(grid, mine)
  }
  let found = mine.get(key)
  if (found === undefined) {
    found = packedNow(grid, load)
    mine.set(key, found)
  }
  const shift = load[0]!.from
  return found === null ? null : found.map((v) => ({...v, from: v.from + shift, to: v.to + shift}))
}

const packings = new WeakMap<FloorGrid, Map<string, Standing[] | null>>()

function packedNow(grid: FloorGrid, load: readonly ToPlace[]): Standing[] | null {
  const items: FloorItem[] = []
  const start = load[0]!.from
  for (const l of load)
    for (let i = 0; i < l.count; i++)
      items.push({
        dish: l.dish.id,
        number: l.first + i,
        footprint: l.dish.vessel.footprint,
        height: l.dish.vessel.height,
        in: 0,
        out: l.to - start,
        place: l.where > 2 ? 'any' : zoneNames[l.where as 0 | 1 | 2],
      })
  const result = packFloor({...grid.room, items}, {effort: items.length > 60 ? 'quick' : 'full', moves: false})
  if ('conflict' in result) return null
  const out: Standing[] = []
  for (const p of result.placed) {
    const l = load.find((i) => i.dish.id === p.dish && p.number >= i.first && p.number < i.first + i.count)
    if (!l) continue
    if (!l.fits[zoneAt(grid, p.y)]) return null
    out.push({
      dish: p.dish,
      number: p.number,
      vessel: l.dish.vessel,
      x: p.x,
      y: p.y,
      turn: p.turn,
      from: 0,
      to: l.to - start,
      shifts: false,
    })
  }
  return out
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0
}

function footprintArea(v: Vessel): number {
  return v.footprint.shape === 'circle' ? v.footprint.diameter ** 2 : v.footprint.length * v.footprint.width
}

/** For one dish of a load: which places what already stands leaves open. */
interface Open {
  readonly item: ToPlace
  readonly seats: Seats
  /** A bit a place. */
  readonly free: Int32Array
}

function openFor(grid: FloorGrid, standing: readonly Standing[], item: ToPlace): Open {
  const seats = seatsOf(grid, item.dish.vessel)
  const free = inZones(seats, item.fits)
  // All that stands was set in before.
  for (const s of standing) strike(free, barred(seats, bodyOfSeat(s, s.vessel), carriedPast(item, {...s, from: item.from - 1})))
  return {item, seats, free}
}

function tryPlace(
  grid: FloorGrid,
  load: readonly Open[],
  style: Style,
  strict: boolean,
): {ok: true; placed: Standing[]} | {ok: false; dish: string; first: number; found: number; total: number} {
  const fresh: {body: Body; from: number; to: number; shifts: boolean}[] = []
  const placed: Standing[] = []
  for (const {item, seats, free} of load) {
    let found = 0
    const open = free.slice()
    for (const o of fresh) strike(open, barred(seats, o.body, carriedPast(item, o)))
    for (const i of ordered(seats, style, item.where)) {
      if (found === item.count) break
      if (!isSet(open, i)) continue
      const c = bodyAt(seats, i)
      if (strict && item.where <= 2 && zoneAt(grid, c.y) !== item.where) continue
      fresh.push({body: c, from: item.from, to: item.to, shifts: item.dish.shifts === true})
      placed.push(standingAt(item, found, c))
      found++
      if (found < item.count) strike(open, barred(seats, c, 0))
    }
    if (found < item.count) return {ok: false, dish: item.dish.id, first: item.first, found, total: placed.length}
  }
  return {ok: true, placed}
}

type Order = (a: ToPlace, b: ToPlace) => number

/** Orders in which the vessels of a whole day are given their places. */
const dayOrders: readonly Order[] = [
  (a, b) => a.where - b.where || b.to - b.from - (a.to - a.from),
  (a, b) => b.to - b.from - (a.to - a.from) || a.where - b.where,
  (a, b) => footprintArea(b.dish.vessel) * b.count - footprintArea(a.dish.vessel) * a.count,
  (a, b) => b.to - a.to || a.from - b.from,
]

/** An order in which no two are alike. */
function by(order: Order): (a: Asked, b: Asked) => number {
  return ({item: a}, {item: b}) => order(a, b) || a.from - b.from || compare(a.dish.id, b.dish.id) || a.first - b.first
}

function refusedFirst<A>(refused: readonly A[], items: readonly A[]): A[] {
  return [...refused, ...items.filter((item) => !refused.includes(item))]
}

/** Those of some vessels that belong to one job. */
export function vesselsOf<V extends {readonly dish: string; readonly number: number}>(
  job: Pick<ToPlace, 'dish' | 'first' | 'count'>,
  vessels: readonly V[],
): V[] {
  return vessels.filter((v) => v.dish === job.dish.id && v.number >= job.first && v.number < job.first + job.count)
}

/** The part of the floor in which vessels came to stand, if that is one; another where it is more than one, or they have no place. */
export function partUnder(grid: FloorGrid, vessels: ReadonlyArray<Pick<Standing, 'y'>>, otherwise: number): number {
  const [zone, another] = new Set(vessels.map(({y}) => zoneAt(grid, y)))
  return zone === undefined || another !== undefined ? otherwise : zone
}

/**
 * Place a whole day at once: what stays long or stands deep is given its place with what comes later in mind, which load by load cannot.
 * What finds no place is put first in the next trial (squeaky wheel: Joslin & Clements, J. Artificial Intelligence Research 10 (1999)
 * 353–373).
 *
 * @param fixed Vessels already in the oven, which stay where they are.
 * @param known Places of an earlier plan, kept where they still serve.
 * @param hung They are those of a plan that hangs on the wall: what has to leave its own looks for another where the others are not.
 * @returns The places, and the dishes that found none in the best trial.
 */
export function placeDay(
  grid: FloorGrid,
  fixed: readonly Standing[],
  day: readonly ToPlace[],
  known: ReadonlyMap<ToPlace, readonly Seat[]> = new Map(),
  hung = false,
): {placed: Standing[]; refused: ToPlace[]} {
  let best: Trial | null = null
  const inside = fixed.map((vessel) => [vessel])
  const told = ({placed, refused}: Trial): {placed: Standing[]; refused: ToPlace[]} => ({
    placed: [...placed].flatMap(([{item}, bodies]) => standingOn(item, bodies)),
    refused: refused.map(({item}) => item),
  })
  // A day planned again has its places: it is soon seen whether they will do, and the plan can move instead.
  const again = known.size > 0
  if (again) {
    // Where each was meant to stand comes first: a day planned again should not be laid out anew. What finds no place is given one
    // before the others, which then keep theirs where they still can.
    const keeping = ({item, vessels}: Asked): number =>
      vessels === null ? 0 : hung && !vessels.every(({y}) => item.fits[zoneAt(grid, y)]) ? 1 : 2
    let items = day
      .map((item): Asked => ({item, vessels: known.get(item) ?? null}))
      .sort((a, b) => keeping(b) - keeping(a) || dayOrders[0]!(a.item, b.item) || a.item.from - b.item.from)
    for (let i = 0; i < mended; i++) {
      const result = tryDay(grid, inside, items, dayStyles[i % dayStyles.length]!, fewer(best))
      if (result.refused.length === 0) return told(result)
      if (!best || result.refused.length < best.refused.length) best = result
      items = refusedFirst(result.refused, items)
    }
    best = best && byPuttingOut(grid, inside, items, best, PUT_OUT)
    if (best && best.refused.length === 0) return told(best)
  }
  const asked = day.map((item): Asked => ({item, vessels: null}))
  for (const order of dayOrders) {
    let items = [...asked].sort(by(order))
    for (const style of dayStyles) {
      const result = tryDay(grid, inside, items, style, fewer(best))
      if (result.refused.length === 0) return told(result)
      if (!best || result.refused.length < best.refused.length) best = result
      items = refusedFirst(result.refused, items)
    }
  }
  return best ? told(byPuttingOut(grid, inside, asked, best, PUT_OUT)) : {placed: [], refused: []}
}

/**
 * Refusals after which a trial is given up: it could be no better than the best so far. Where that refuses many, a trial shows which of them
 * to put first in the next, and is gone through.
 */
function fewer(best: Trial | null): number {
  return best && best.refused.length <= NEARLY_ALL ? best.refused.length - 1 : Number.POSITIVE_INFINITY
}

/** A dish to be given its places, and where its vessels stood before. */
interface Asked {
  readonly item: ToPlace
  readonly vessels: readonly Seat[] | null
}

/** A dish of a day of which most stands already: where its vessels stand, and whether they still serve as they stand. */
export interface Settling extends Asked {
  readonly vessels: readonly Standing[] | null
  readonly stays: boolean
}

/**
 * Place a day anew of which most stands already: what has moved, among the rest as it stands.
 *
 * @param fixed Vessels already in the oven, which stay where they are.
 * @param give True where the rest may give way to what finds no place so, which takes longer.
 * @param most Dishes that may be left without a place.
 * @returns For each dish its vessels, or null where it found no place; null for all where more than `most` would find none.
 */
export function settleIn(
  grid: FloorGrid,
  fixed: readonly Standing[],
  day: readonly Settling[],
  give: boolean,
  most = Number.POSITIVE_INFINITY,
): (readonly Standing[] | null)[] | null {
  const inside = fixed.map((vessel) => [vessel])
  const beside: (readonly Standing[])[] = [...inside]
  let items: Asked[] = []
  for (const each of day)
    if (each.stays && each.vessels) beside.push(each.vessels)
    else items.push(each)
  items.sort(by(dayOrders[0]!))
  let best = tryDay(grid, beside, items, 'rows', most)
  for (const style of ['wall', 'sides'] as const) {
    if (best.refused.length === best.hopeless) break
    items = refusedFirst(best.refused, items)
    const result = tryDay(grid, beside, items, style, best.refused.length - 1)
    if (result.refused.length < best.refused.length) best = result
  }
  let gave = false
  if (give && best.refused.length > 0) {
    const placed = new Map(best.placed)
    for (const each of day) if (each.stays && each.vessels) placed.set(each, bodiesOf(each.vessels, each.item.dish.vessel))
    const other = byPuttingOut(grid, inside, day, {...best, placed}, PUT_OUT_SOON)
    gave = other.refused.length < best.refused.length
    if (gave) best = other
  }
  if (best.refused.length > most) return null
  return day.map((each) => {
    if (!gave && each.stays && each.vessels) return each.vessels
    const bodies = best.placed.get(each)
    return bodies ? standingOn(each.item, bodies) : null
  })
}

/**
 * Stand the vessels of one dish beside what stands, none of which is moved; null where they find no place.
 *
 * @param vessels where they are to stand, if all of them can
 */
export function placeOne(
  grid: FloorGrid,
  fixed: readonly Standing[],
  item: ToPlace,
  vessels: readonly Seat[] | null = null,
): readonly Standing[] | null {
  const inside = fixed.map((vessel) => [vessel])
  const asked: Asked = {item, vessels}
  for (const style of dayStyles) {
    const {placed, hopeless} = tryDay(grid, inside, [asked], style)
    const bodies = placed.get(asked)
    if (bodies) return standingOn(item, bodies)
    if (hopeless > 0) return null
  }
  return null
}

/** So few refused are nearly none. */
const NEARLY_ALL = 1
/** Trials that keep the places of an earlier plan. */
const mended = 5
/** Where so few find no place, others are put out for them; dishes that come in so, and while a day is annealed. */
const FEW_OUT = 3
const PUT_OUT = 120
const PUT_OUT_SOON = 12
const dayStyles: readonly Style[] = ['rows', 'wall', 'sides', 'rows', 'left']

/** A trial that leaves few without a place, and what comes of others giving way to them. */
function byPuttingOut(
  grid: FloorGrid,
  fixed: readonly (readonly Standing[])[],
  items: readonly Asked[],
  trial: Trial,
  steps: number,
): Trial {
  if (trial.refused.length === 0 || trial.refused.length > FEW_OUT) return trial
  const before = items.map((asked) => trial.placed.get(asked) ?? null)
  const all = items.map(({item}) => item)
  const after = putOut(grid, groupsOf(fixed), all, before, steps)
  if (after === before) return trial
  const placed = new Map(items.flatMap((asked, i): [Asked, readonly Body[]][] => (after[i] ? [[asked, after[i]]] : [])))
  return {placed, refused: items.filter((asked) => !placed.has(asked)), hopeless: 0}
}

/** Vessels that stand whatever is tried, as groups. */
function groupsOf(fixed: readonly (readonly Standing[])[]): Group[] {
  return fixed.flatMap((vessels): Group[] => {
    const [one] = vessels
    return one ? [{from: one.from, to: one.to, bodies: bodiesOf(vessels, one.vessel), shifts: one.shifts, stood: true}] : []
  })
}

/** What a trial came to: the places of each dish that found them, and the dishes that did not. */
interface Trial {
  readonly placed: ReadonlyMap<Asked, readonly Body[]>
  readonly refused: Asked[]
  /** How many of these what stood before leaves no place, in whatever way the floor is filled. */
  readonly hopeless: number
}

/**
 * Give the vessels of some dishes their places, one dish after another: those where they stood before, where these still serve.
 *
 * @param fixed What stands whatever is tried, vessels of the same times together.
 * @param most Refusals after which the trial is given up.
 */
function tryDay(
  grid: FloorGrid,
  fixed: readonly (readonly Standing[])[],
  items: readonly Asked[],
  style: Style,
  most = Number.POSITIVE_INFINITY,
): Trial {
  const placed = new Map<Asked, readonly Body[]>()
  const refused: Asked[] = []
  let hopeless = 0
  const groups = groupsOf(fixed)
  for (const asked of items) {
    const {item, vessels} = asked
    const before = vessels ? bodiesOf(vessels, item.dish.vessel) : null
    const bodies =
      before?.length === item.count && before.every((body) => serves(grid, groups, item, body))
        ? before
        : seatsAmong(grid, groups, item, style)
    if (bodies && bodies !== 'taken') {
      placed.set(asked, bodies)
      groups.push({from: item.from, to: item.to, bodies, shifts: item.dish.shifts === true, stood: false})
    } else {
      refused.push(asked)
      if (bodies) hopeless++
      if (refused.length > most) break
    }
  }
  return {placed, refused, hopeless}
}

/** True where a body of a dish can stand among what stands at its time. */
function serves(grid: FloorGrid, groups: readonly Group[], item: ToPlace, body: Body): boolean {
  if (!item.fits[zoneAt(grid, body.y)]) return false
  // A plan tells places to a tenth of a millimetre: two that touched may lie so much nearer.
  const clear = grid.ground.rules.clearance - 2 * ROUNDED
  for (const group of groups) {
    if (!together(group, item)) continue
    const past = carriedPast(item, group)
    for (const other of group.bodies)
      if (
        gap(body, other) < clear ||
        ((past & 1) !== 0 && blocks(grid.ground, other, body, 2 * ROUNDED)) ||
        ((past & 2) !== 0 && blocks(grid.ground, body, other, 2 * ROUNDED))
      )
        return false
  }
  return true
}

/**
 * Places for the vessels of a dish among what stands at its time; null where there are not enough, and `taken` where there is none at all
 * beside what stood before the trial.
 */
function seatsAmong(grid: FloorGrid, groups: readonly Group[], item: ToPlace, style: Style): readonly Body[] | 'taken' | null {
  const seats = seatsOf(grid, item.dish.vessel)
  const open = inZones(seats, item.fits, seats.scratch)
  // Most often there is no place at all, which what has been reckoned before may tell, and what stands before what has been placed beside it.
  const anew: Group[] = []
  const beside: Group[] = []
  // In loops by number: going through by an iterator costs several times as much until V8 has compiled it, and again each time it meets
  // another kind of list.
  for (let g = 0; g < groups.length; g++) {
    const group = groups[g]!
    if (!together(group, item)) continue
    if (!group.stood) beside.push(group)
    else {
      const bits = barredBefore(seats, group.bodies, carriedPast(item, group))
      if (!bits) anew.push(group)
      else if (!strike(open, bits)) return 'taken'
    }
  }
  for (let g = 0; g < anew.length; g++)
    if (!strike(open, barredByAll(seats, anew[g]!.bodies, carriedPast(item, anew[g]!)))) return 'taken'
  for (let g = 0; g < beside.length; g++) {
    const {bodies} = beside[g]!
    const past = carriedPast(item, beside[g]!)
    for (let b = 0; b < bodies.length; b++) if (!strike(open, barred(seats, bodies[b]!, past))) return null
  }
  const found: Body[] = []
  const places = candidates(seats, open, style, item.where, item.count)
  for (let k = 0; k < places.length; k++) {
    const i = places[k]!
    if (!isSet(open, i)) continue
    const c = bodyAt(seats, i)
    found.push(c)
    if (found.length === item.count) return found
    strike(open, barred(seats, c, 0))
  }
  return item.count >= mostOnFloor(grid, item.dish.vessel) ? filled(grid, groups, item) : null
}

/** The floor filled with one dish, closer than the lattice stands its vessels; null where anything else stands there at its time. */
function filled(grid: FloorGrid, groups: readonly Group[], item: ToPlace): readonly Body[] | null {
  if (groups.some((group) => together(group, item))) return null
  const vessels = packed(grid, [], [{...item, from: 0, to: 1, where: ACROSS}])
  return vessels && bodiesOf(vessels, item.dish.vessel)
}

/** The vessel as the plan shows it. */
export function placedOf(grid: FloorGrid, s: Standing): Placed {
  return {dish: s.dish, number: s.number, x: rounded(s.x), y: rounded(s.y), turn: s.turn, zone: zoneNames[zoneAt(grid, s.y)]}
}
