import type {Dish, Vessel} from '../scale/types.js'
import {type Body, barred, bodyOf, join, pastOf, type Seats} from './seats.js'

/** What stands on the floor through the day: vessels, their outlines and who is in whose way. Metres; minutes or ticks of one clock. */

/** A vessel that stands, or will stand, on the floor. `from` and `to` are the clock times it is set in and drawn. */
export interface Standing {
  readonly dish: string
  readonly number: number
  readonly vessel: Vessel
  readonly x: number
  readonly y: number
  readonly turn: number
  readonly from: number
  readonly to: number
  /** It is shifted aside where something is carried past it. */
  readonly shifts: boolean
}

/** Where a vessel stands, and by what quarter turn. */
export type Seat = Pick<Standing, 'x' | 'y' | 'turn'>

/** Vessels to place at one opening of the door. */
export interface ToPlace {
  readonly dish: Dish
  readonly first: number
  readonly count: number
  readonly from: number
  readonly to: number
  /** Zone the model chose: 0 back … 2 mouth, 3 across. */
  readonly where: number
  /** Zones in which its heat is right. */
  readonly fits: readonly [boolean, boolean, boolean]
}

/** True where two spans of time share some: what is drawn at a minute has made way for what is set in at it. */
export function together(
  a: {readonly from: number; readonly to: number},
  b: {readonly from: number; readonly to: number},
): boolean {
  return a.from < b.to && b.from < a.to
}

/** Who is carried past whom (`pastOf`), what is shifted aside left out. */
export function carriedPast(
  item: ToPlace,
  other: {readonly from: number; readonly to: number; readonly shifts: boolean},
): number {
  return pastOf(item.from, item.to, other.from, other.to) & ~((other.shifts ? 1 : 0) | (item.dish.shifts === true ? 2 : 0))
}

/** The `nth` vessel of an item (from 0) where a body stands. */
export function standingAt(item: ToPlace, nth: number, body: Body): Standing {
  const {vessel} = item.dish
  const f = vessel.footprint
  return {
    dish: item.dish.id,
    number: item.first + nth,
    vessel,
    x: body.x,
    y: body.y,
    turn: f.shape === 'rectangle' && body.hx !== f.length / 2 ? Math.PI / 2 : 0,
    from: item.from,
    to: item.to,
    shifts: item.dish.shifts === true,
  }
}

/** Vessels that come and go together, and their outlines on the floor. */
export interface Group {
  readonly from: number
  readonly to: number
  readonly bodies: readonly Body[]
  readonly shifts: boolean
  /** It stood before this trial, and will be asked for again. */
  readonly stood: boolean
}

/** The vessels of a dish on their places. */
export function standingOn(item: ToPlace, bodies: readonly Body[]): Standing[] {
  const vessels = bodies.map((body, i) => standingAt(item, i, body))
  bodiesAt.set(vessels, bodies)
  for (const [i, vessel] of vessels.entries()) bodyAt.set(vessel, bodies[i]!)
  return vessels
}

const bodyAt = new WeakMap<Seat, Body>()
const bodiesAt = new WeakMap<readonly Seat[], readonly Body[]>()

/** The same body for the same vessel, so that what it bars is reckoned once. */
export function bodyOfSeat(seat: Seat, vessel: Vessel): Body {
  let body = bodyAt.get(seat)
  if (!body) {
    body = bodyOf(vessel, seat)
    bodyAt.set(seat, body)
  }
  return body
}

/** The outlines of the vessels of one dish: the same list for the same vessels, as `bodyOfSeat`. */
export function bodiesOf(vessels: readonly Seat[], vessel: Vessel): readonly Body[] {
  let bodies = bodiesAt.get(vessels)
  if (!bodies) {
    bodies = vessels.map((seat) => bodyOfSeat(seat, vessel))
    bodiesAt.set(vessels, bodies)
  }
  return bodies
}

/** The same where it has been reckoned before. */
export function barredBefore(seats: Seats, bodies: readonly Body[], past: number): Int32Array | undefined {
  return bodies.length === 1 ? seats.barred.get(bodies[0]!)?.[past] : barredTogether.get(bodies)?.get(seats)?.[past]
}

const barredTogether = new WeakMap<readonly Body[], Map<Seats, (Int32Array | undefined)[]>>()

/** The places that any of some bodies bars, as `barred`. */
export function barredByAll(seats: Seats, bodies: readonly Body[], past: number): Int32Array {
  if (bodies.length === 1) return barred(seats, bodies[0]!, past)
  let known = barredTogether.get(bodies)
  if (!known) {
    known = new Map()
    barredTogether.set(bodies, known)
  }
  let mine = known.get(seats)
  if (!mine) {
    mine = []
    known.set(seats, mine)
  }
  let bits = mine[past]
  if (!bits) {
    bits = new Int32Array(seats.words)
    for (const body of bodies) join(bits, barred(seats, body, past))
    mine[past] = bits
  }
  return bits
}
