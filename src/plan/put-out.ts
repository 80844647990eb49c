import {generator} from '../scale/random-numbers.js'
import {isEmpty, nextBit} from './bits.js'
import type {FloorGrid} from './floor-grid.js'
import {type Body, barred, bodyAt, inZones, isSet, type Seats, seatsOf, strike} from './seats.js'
import {barredByAll, carriedPast, type Group, type ToPlace, together} from './standing.js'

/** The places of each dish of a day; null where it has none. */
export type Places = ReadonlyArray<readonly Body[] | null>

/** By how much less willingly a dish is put out again, each time that it has come in. */
const DEARER = 0.2

/**
 * Find places for what has none by putting others out of theirs: each that is without takes the places for which least has to give way,
 * and what gives way looks for others in its turn. What has come in gives way the less willingly the oftener it did (an ejection pool with
 * penalties: Nagata & Bräysy, Operations Research Letters 37 (2009) 333–338).
 *
 * @param fixed What stands whatever is tried.
 * @param items The dishes, at their times.
 * @param places The places each has now.
 * @param steps Dishes that come in, at most.
 * @returns The places when fewest had none; `places` itself where it was never fewer.
 */
export function putOut(
  grid: FloorGrid,
  fixed: readonly Group[],
  items: readonly ToPlace[],
  places: Places,
  steps: number,
): Places {
  const random = generator(7)
  const now = places.slice()
  const open = openBeside(grid, fixed, items)
  const out = now.flatMap((bodies, i) => (bodies ? [] : [i]))
  // What has no place though all others were out will not come in.
  if (out.every((u) => isEmpty(open(u)))) return places
  const weight = new Float64Array(items.length).fill(1)
  let best = places
  let least = out.length
  for (let step = 0; step < steps && least > 0; step++) {
    const [u] = out.splice(Math.floor(random() * out.length), 1) as [number]
    // Filled from another side every time: what always goes into the same corner is always in the same dish's way.
    const angle = 2 * Math.PI * random()
    const taken = comeIn(grid, items, now, u, open(u).slice(), weight, {x: Math.cos(angle), y: Math.sin(angle)})
    if (!taken) {
      out.push(u)
      continue
    }
    for (const v of taken.gaveWay) {
      now[v] = null
      out.push(v)
    }
    now[u] = taken.bodies
    weight[u]! += DEARER
    if (out.length < least) {
      least = out.length
      best = now.slice()
    }
  }
  return best
}

/** For each dish the places open to it beside what stands whatever is tried, a bit each; worked out when they are first asked for. */
function openBeside(grid: FloorGrid, fixed: readonly Group[], items: readonly ToPlace[]): (u: number) => Int32Array {
  const known = new Map<number, Int32Array>()
  return (u) => {
    const before = known.get(u)
    if (before) return before
    const item = items[u]!
    const seats = seatsOf(grid, item.dish.vessel)
    const open = inZones(seats, item.fits)
    for (const group of fixed) if (together(group, item)) strike(open, barredByAll(seats, group.bodies, carriedPast(item, group)))
    known.set(u, open)
    return open
  }
}

/**
 * The places one dish takes, and which of the others give way; null where it has too few.
 *
 * @param open The places open to it; struck out as they are taken.
 */
function comeIn(
  grid: FloorGrid,
  items: readonly ToPlace[],
  now: Places,
  u: number,
  open: Int32Array,
  weight: Float64Array,
  towards: {readonly x: number; readonly y: number},
): {bodies: Body[]; gaveWay: number[]} | null {
  if (isEmpty(open)) return null
  const item = items[u]!
  const seats = seatsOf(grid, item.dish.vessel)
  let beside = items.flatMap((other, v): Beside[] => {
    const bodies = now[v]
    if (!bodies || v === u || !together(other, item)) return []
    const past = carriedPast(item, {from: other.from, to: other.to, shifts: other.dish.shifts === true})
    return [{job: v, weight: weight[v]!, bits: barredByAll(seats, bodies, past)}]
  })
  beside.sort((a, b) => a.weight - b.weight || a.job - b.job)
  const bodies: Body[] = []
  const gaveWay: number[] = []
  while (bodies.length < item.count) {
    const at = furthest(seats, lightest(seats, open, beside), towards)
    if (at < 0) return null
    bodies.push(bodyAt(seats, at))
    gaveWay.push(...beside.filter(({bits}) => isSet(bits, at)).map(({job}) => job))
    beside = beside.filter(({bits}) => !isSet(bits, at))
    strike(open, barred(seats, bodyAt(seats, at), 0))
  }
  return {bodies, gaveWay}
}

/** A dish that stands at the time, and the places it bars, a bit each; the lightest first. */
interface Beside {
  readonly job: number
  readonly weight: number
  readonly bits: Int32Array
}

let room = {once: new Int32Array(0), more: new Int32Array(0), mask: new Int32Array(0)}

/** Rows of bits that are written anew each time. */
function roomFor(words: number): typeof room {
  if (room.mask.length !== words) room = {once: new Int32Array(words), more: new Int32Array(words), mask: new Int32Array(words)}
  return room
}

/** Of the open places those for which least has to give way: nothing, or the lightest single dish, or what weighs least together. */
function lightest(seats: Seats, open: Int32Array, beside: readonly Beside[]): Int32Array {
  const {words} = seats
  const {once, more, mask} = roomFor(words)
  once.fill(0)
  more.fill(0)
  for (const {bits} of beside)
    for (let w = 0; w < words; w++) {
      more[w]! |= once[w]! & bits[w]!
      once[w]! |= bits[w]!
    }
  let some = 0
  for (let w = 0; w < words; w++) some |= mask[w] = open[w]! & ~once[w]!
  if (some !== 0) return mask
  for (const {bits} of beside) {
    for (let w = 0; w < words; w++) some |= mask[w] = open[w]! & bits[w]! & ~more[w]!
    if (some !== 0) return mask
  }
  // From here on nothing is in the mask.
  const sum = new Float64Array(seats.x.length)
  for (const {bits, weight} of beside) for (let i = nextBit(bits, 0); i >= 0; i = nextBit(bits, i + 1)) sum[i]! += weight
  let least = Number.POSITIVE_INFINITY
  for (let i = nextBit(open, 0); i >= 0; i = nextBit(open, i + 1)) least = Math.min(least, sum[i]!)
  for (let i = nextBit(open, 0); i >= 0; i = nextBit(open, i + 1)) if (sum[i]! <= least + 1e-9) mask[i >> 5]! |= 1 << (i & 31)
  return mask
}

/** The place that lies furthest in one direction; −1 where there is none. */
function furthest(seats: Seats, mask: Int32Array, towards: {readonly x: number; readonly y: number}): number {
  let best = -1
  let far = Number.NEGATIVE_INFINITY
  for (let i = nextBit(mask, 0); i >= 0; i = nextBit(mask, i + 1)) {
    const reach = towards.x * seats.x[i]! + towards.y * seats.rows.y[seats.row[i]!]!
    if (reach > far) {
      far = reach
      best = i
    }
  }
  return best
}
