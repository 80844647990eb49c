import {type Ground, headroom, nearestOnEllipse} from '../scale/floor-shape.js'
import type {Vessel} from '../scale/types.js'
import {countBits, nextBit} from './bits.js'
import {type FloorGrid, zoneAt} from './floor-grid.js'
import {before, behind, type Lines, playOf, type Spans, touching} from './spans.js'

/**
 * Where one vessel can stand on the floor: a lattice of places, the orders in which they are filled, and which of them a vessel that
 * stands already bars. The rules of standing and of lanes are those of `scale/floor`.
 */

/** A vessel's outline on the floor, parallel to its axes: the centre and the half extents, m. */
export interface Body {
  readonly x: number
  readonly y: number
  readonly hx: number
  readonly hy: number
  readonly round: boolean
}

/** Rows of places side by side, a step of the lattice apart: each shares everything but x, which rises from `x0`. Numbers a row. */
interface Rows extends Lines {
  /** The first place, and the one after the last. */
  readonly from: Int32Array
  readonly to: Int32Array
  readonly x0: Float64Array
}

/** The places of one vessel, as rows of bits. */
export interface Seats {
  readonly grid: FloorGrid
  /** The x of each place, m, and the number of its row. */
  readonly x: Float64Array
  readonly row: Int32Array
  readonly rows: Rows
  /** The outlines of those that were asked for: few are, of the thousands there are. */
  readonly bodies: (Body | undefined)[]
  readonly words: number
  /** Room for one row of bits. */
  readonly scratch: Int32Array
  /** Those in the back, the middle and the mouth. */
  readonly zones: readonly Int32Array[]
  /** Those that a body bars, by who is carried past whom: the same few bodies come again and again. */
  readonly barred: Map<Body, (Int32Array | undefined)[]>
  readonly orders: Map<Style, (Int32Array | undefined)[]>
  /** The other way about: the number in that order of each place. */
  readonly ranks: Map<Style, (Int32Array | undefined)[]>
}

/** Ways of filling a floor, tried in turn: row by row from the back, round the wall, from the left side, towards the mouth. */
export const styles = ['rows', 'wall', 'left', 'front', 'sides'] as const
export type Style = (typeof styles)[number]
export const strictStyles: readonly Style[] = ['rows', 'wall', 'sides']

type Halves = Pick<Body, 'hx' | 'hy' | 'round'>

/** Half extents of a vessel across and along the depth, m, when turned by 0 or a quarter. */
function halves(vessel: Vessel, turned: boolean): Halves {
  const f = vessel.footprint
  if (f.shape === 'circle') return {hx: f.diameter / 2, hy: f.diameter / 2, round: true}
  return turned ? {hx: f.width / 2, hy: f.length / 2, round: false} : {hx: f.length / 2, hy: f.width / 2, round: false}
}

/** The outline of a vessel that stands at a point, turned by so many radians. */
export function bodyOf(vessel: Vessel, at: {readonly x: number; readonly y: number; readonly turn: number}): Body {
  return {x: at.x, y: at.y, ...halves(vessel, Math.abs(Math.sin(at.turn)) > 0.5)}
}

/** True when a body stands on the floor, under enough vault and clear of what is kept free. */
function inside(ground: Ground, b: Halves, x: number, y: number, share: number): boolean {
  const a0 = ground.a * share
  const b0 = ground.round ? ground.b * share : ground.b
  const c = ground.rules.clearance / 2
  const hx = b.hx + c
  const hy = b.hy + c
  for (const box of ground.keptFree) {
    const dx = Math.max(0, box.x0 - x, x - box.x1)
    const dy = Math.max(0, box.y0 - y, y - box.y1)
    if (b.round ? length(dx, dy) < b.hx - 1e-9 : dx < b.hx - 1e-9 && dy < b.hy - 1e-9) return false
  }
  if (!ground.round) return Math.abs(x) + hx <= a0 + 1e-9 && Math.abs(y) + hy <= b0 + 1e-9
  if (a0 <= 0) return false
  if (!b.round) return ((Math.abs(x) + hx) / a0) ** 2 + ((Math.abs(y) + hy) / b0) ** 2 <= 1 + 1e-9
  if (a0 === b0) return length(x, y) + hx <= a0 + 1e-9
  if ((x / a0) ** 2 + (y / b0) ** 2 > 1) return false
  const near = nearestOnEllipse(a0, b0, x, y)
  return length(near.x - x, near.y - y) >= hx - 1e-9
}

/** As `Math.hypot`, which is many times slower for the care it takes of numbers that no floor has. */
function length(dx: number, dy: number): number {
  return Math.sqrt(dx * dx + dy * dy)
}

/** Free distance between two bodies, m; negative where they overlap. */
export function gap(a: Body, b: Body): number {
  const dx = Math.abs(a.x - b.x)
  const dy = Math.abs(a.y - b.y)
  if (a.round && b.round) return length(dx, dy) - a.hx - b.hx
  if (!a.round && !b.round) return Math.max(dx - a.hx - b.hx, dy - a.hy - b.hy)
  const circle = a.round ? a : b
  const box = a.round ? b : a
  const ox = Math.max(0, dx - box.hx)
  const oy = Math.max(0, dy - box.hy)
  if (ox === 0 && oy === 0) return -circle.hx
  return length(ox, oy) - circle.hx
}

/**
 * True when `other` stands in the lane of `body`: the strip its footprint sweeps straight out, or slantwise to the nearest point of the
 * opening it passes through (the rule of `scale/lanes`).
 *
 * @param slack By how much it may stand in it, m.
 */
export function blocks(ground: Ground, other: Body, body: Body, slack = 0): boolean {
  if (other.y - other.hy >= body.y + body.hy) return false
  const play = playOf(ground, body.hx)
  const ax = body.x
  const ay = body.y
  const dx = Math.min(play, Math.max(-play, ax)) - ax
  const dy = Math.min(ay, ground.opening) - ay
  if (other.round && body.round) {
    const length2 = dx * dx + dy * dy
    const t = length2 < 1e-12 ? 0 : Math.max(0, Math.min(1, ((other.x - ax) * dx + (other.y - ay) * dy) / length2))
    return length(other.x - (ax + t * dx), other.y - (ay + t * dy)) < body.hx + other.hx - slack
  }
  // Boxes: the segment against the box grown by the other's half size; for a circle the grown corner is a little generous.
  const hx = other.hx + body.hx - slack
  const hy = other.hy + body.hy - slack
  let t0 = 0
  let t1 = 1
  if (Math.abs(dx) < 1e-12) {
    if (Math.abs(ax - other.x) >= hx) return false
  } else {
    const a = (other.x - hx - ax) / dx
    const b = (other.x + hx - ax) / dx
    t0 = Math.max(t0, Math.min(a, b))
    t1 = Math.min(t1, Math.max(a, b))
    if (t0 >= t1) return false
  }
  if (Math.abs(dy) < 1e-12) return Math.abs(ay - other.y) < hy
  const a = (other.y - hy - ay) / dy
  const b = (other.y + hy - ay) / dy
  return Math.max(t0, Math.min(a, b)) < Math.min(t1, Math.max(a, b))
}

const seatings = new WeakMap<FloorGrid, {byVessel: WeakMap<Vessel, Seats>; bySize: Map<string, Seats>}>()

/** The places of a vessel on a floor, deepest first; kept, since a day is planned with the same few vessels. */
export function seatsOf(grid: FloorGrid, vessel: Vessel): Seats {
  let mine = seatings.get(grid)
  if (!mine) {
    mine = {byVessel: new WeakMap(), bySize: new Map()}
    seatings.set(grid, mine)
  }
  let seats = mine.byVessel.get(vessel)
  if (seats) return seats
  const f = vessel.footprint
  const size = `${vessel.height} ${f.shape === 'circle' ? f.diameter : `${f.length} ${f.width}`}`
  seats = mine.bySize.get(size) ?? newSeats(grid, vessel)
  mine.bySize.set(size, seats)
  mine.byVessel.set(vessel, seats)
  return seats
}

function newSeats(grid: FloorGrid, vessel: Vessel): Seats {
  const f = vessel.footprint
  const xs: number[] = []
  const rows: (Halves & {from: number; to: number; y: number})[] = []
  const wall = grid.ground.rules.clearance / 2
  const share = headroom(grid.ground, vessel.height)
  const turns = f.shape === 'circle' || f.length === f.width ? [false] : [true, false]
  for (const turned of turns) {
    const h = halves(vessel, turned)
    // Rows are laid off from the edge the vessel can reach, so that equal vessels close up exactly.
    const top = grid.depth / 2 - wall - h.hy
    const side = grid.width / 2 - wall - h.hx
    const deep = Math.floor((2 * top) / grid.step + 1e-9)
    const wide = Math.floor((2 * side) / grid.step + 1e-9)
    const row = (y: number, x0: number, count: number): void => {
      let from = xs.length
      const end = (): void => {
        if (xs.length > from) rows.push({from, to: xs.length, y, ...h})
        from = xs.length
      }
      for (let j = 0; j < count; j++) {
        const x = x0 + j * grid.step
        if (inside(grid.ground, h, x, y, share)) xs.push(x)
        else end()
      }
      end()
    }
    for (let i = 0; i <= deep; i++) row(top - i * grid.step, -side, wide + 1)
    // The exact centre line, for floors on which one more row depends on it.
    for (let i = 0; i <= deep; i++) row(top - i * grid.step, 0, 1)
  }
  const words = (xs.length + 31) >> 5
  const zones = [0, 1, 2].map(() => new Int32Array(words))
  const rowOf = new Int32Array(xs.length)
  rows.forEach(({from, to, y}, r) => {
    setBits(zones[zoneAt(grid, y)]!, from, to - 1)
    rowOf.fill(r, from, to)
  })
  const lines: Rows = {
    from: Int32Array.from(rows, ({from}) => from),
    to: Int32Array.from(rows, ({to}) => to),
    x0: Float64Array.from(rows, ({from}) => xs[from]!),
    y: Float64Array.from(rows, ({y}) => y),
    hx: Float64Array.from(rows, ({hx}) => hx),
    hy: Float64Array.from(rows, ({hy}) => hy),
    round: f.shape === 'circle',
  }
  return {
    grid,
    x: new Float64Array(xs),
    row: rowOf,
    rows: lines,
    bodies: new Array<Body | undefined>(xs.length),
    words,
    scratch: new Int32Array(words),
    zones,
    barred: new Map(),
    orders: new Map(),
    ranks: new Map(),
  }
}

/** The vessel's outline at one of its places: the same each time. */
export function bodyAt(seats: Seats, place: number): Body {
  let body = seats.bodies[place]
  if (!body) {
    const {y, hx, hy, round} = seats.rows
    const row = seats.row[place]!
    body = {x: seats.x[place]!, y: y[row]!, hx: hx[row]!, hy: hy[row]!, round}
    seats.bodies[place] = body
  }
  return body
}

/**
 * The places in the parts of the floor whose heat is right.
 *
 * @param open Where they are written; `seats.scratch` where they are not kept, since making rows of bits costs more than filling them.
 */
export function inZones(seats: Seats, fits: readonly boolean[], open: Int32Array = new Int32Array(seats.words)): Int32Array {
  open.fill(0)
  for (let z = 0; z < 3; z++) if (fits[z]) join(open, seats.zones[z]!)
  return open
}

/** Put places into a row of bits. */
export function join(bits: Int32Array, others: Int32Array): void {
  for (let w = 0; w < bits.length; w++) bits[w]! |= others[w]!
}

/** Take places out of a row of bits; true where some are left. */
export function strike(open: Int32Array, bits: Int32Array): boolean {
  let left = 0
  for (let w = 0; w < open.length; w++) left |= open[w]! &= ~bits[w]!
  return left !== 0
}

/** True where a place is in a row of bits. */
export function isSet(bits: Int32Array, i: number): boolean {
  return ((bits[i >> 5]! >> (i & 31)) & 1) === 1
}

/**
 * Who is carried past whom, a bit each: 1, the first, set in at `s` and drawn at `e`, is carried in or out while the other, set in at `s2` and drawn at `e2`, stands;
 * the other is, while the first stands.
 */
export function pastOf(s: number, e: number, s2: number, e2: number): number {
  return (s2 < s || e < e2 ? 1 : 0) + (s < s2 || e2 < e ? 2 : 0)
}

/** Bodies remembered for one vessel. */
const MOST = 3000

/**
 * The places that a body bars.
 *
 * @param past Who is carried past whom (`pastOf`), the vessel first.
 */
export function barred(seats: Seats, other: Body, past: number): Int32Array {
  let mine = seats.barred.get(other)
  if (!mine) {
    if (seats.barred.size >= MOST) seats.barred.clear()
    mine = []
    seats.barred.set(other, mine)
  }
  const found = mine[past]
  if (found) return found
  const {rows, grid} = seats
  const {ground} = grid
  const bits = newBits(seats.words)
  const spans = spansFor(rows.y.length)
  touching(rows, other, ground.rules.clearance - 1e-9, spans)
  mark(seats, spans, bits)
  if (past & 1) {
    behind(ground, rows, other, spans)
    mark(seats, spans, bits)
  }
  if (past & 2) {
    before(ground, rows, other, spans)
    mark(seats, spans, bits)
  }
  mine[past] = bits
  return bits
}

/** Rows of bits are made out of one piece of so many words: a piece of memory of its own costs more than all that is written into it. */
const PIECE = 16384
let piece = new Int32Array(0)
let used = 0

/** A row of no bits, of so many words. */
function newBits(words: number): Int32Array {
  if (used + words > piece.length) {
    piece = new Int32Array(Math.max(PIECE, words))
    used = 0
  }
  const bits = new Int32Array(piece.buffer, 4 * used, words)
  used += words
  return bits
}

let scratch: Spans = {left: new Float64Array(0), right: new Float64Array(0)}

/** Room for the spans of so many rows, used again and again. */
function spansFor(rows: number): Spans {
  if (scratch.left.length < rows) scratch = {left: new Float64Array(2 * rows), right: new Float64Array(2 * rows)}
  return scratch
}

/** Set the bits of those places of each row that lie within its span. */
function mark({rows, grid}: Seats, {left, right}: Spans, bits: Int32Array): void {
  const {step} = grid
  for (let r = 0; r < rows.y.length; r++) {
    const l = left[r]!
    const h = right[r]!
    const from = rows.from[r]!
    const end = rows.to[r]! - 1
    const first = rows.x0[r]!
    const last = first + (end - from) * step
    if (h <= first || l >= last || l >= h) continue
    const lo = l < first ? from : from + Math.floor((l - first) / step) + 1
    const hi = h > last ? end : from + Math.ceil((h - first) / step) - 1
    if (lo <= hi) setBits(bits, lo, hi)
  }
}

/** Set the bits from one to another, both counted in. */
function setBits(bits: Int32Array, from: number, to: number): void {
  const last = to >> 5
  for (let w = from >> 5; w <= last; w++) {
    const low = w === from >> 5 ? -1 << (from & 31) : -1
    const high = w === last ? -1 >>> (31 - (to & 31)) : -1
    bits[w]! |= low & high
  }
}

const counts = new WeakMap<Seats, number>()

/** How many of one vessel the placer can stand on the empty floor; 0 where not even one fits or it does not pass the mouth. */
export function mostOnFloor(grid: FloorGrid, vessel: Vessel): number {
  const seats = seatsOf(grid, vessel)
  const found = counts.get(seats)
  if (found !== undefined) return found
  let most = 0
  for (const style of strictStyles) {
    const open = inZones(seats, [true, true, true])
    let count = 0
    const list = ordered(seats, style, ANYWHERE)
    for (let k = 0; k < list.length; k++) {
      const i = list[k]!
      if (!isSet(open, i)) continue
      strike(open, barred(seats, bodyAt(seats, i), 0))
      count++
    }
    most = Math.max(most, count)
  }
  counts.set(seats, most)
  return most
}

/** No part of the floor in particular. */
const ANYWHERE = 3

/** What is filled first has the least value. */
function scorer(grid: FloorGrid, style: Style): (x: number, y: number) => number {
  const {depth, width} = grid
  switch (style) {
    case 'rows':
      return (x, y) => -y / depth + x * 0.01
    case 'wall':
      return grid.ground.round
        ? (x, y) => -length(x / width, y / depth) * 2 - (y / depth) * 0.1 + x * 0.01
        : (x, y) => -Math.max(Math.abs(x) / width, Math.abs(y) / depth) - (y / depth) * 0.1 + x * 0.01
    case 'left':
      return (x, y) => x / width - (y / depth) * 0.1
    case 'front':
      return (x, y) => y / depth + Math.abs(x) * 0.1
    case 'sides':
      return (x, y) => -Math.abs(x) / width - (y / depth) * 0.3
  }
}

/** Every scorer's value lies above −`SHIFT`; values nearer than 1/`FINE` are alike. */
const SHIFT = 4
const FINE = 1e9

/** Where fewer of the places than this share are open, they are put in order; else the order is gone through. */
const FEW = 1 / 16

/**
 * Numbers of places among which all that are open are, in the order one way of filling takes them; none where fewer are open than wanted.
 *
 * @param open A bit a place.
 * @param where As for `ordered`.
 */
export function candidates(seats: Seats, open: Int32Array, style: Style, where: number, wanted: number): Int32Array {
  const list = ordered(seats, style, where)
  const count = countBits(open)
  if (count < wanted) return NONE
  if (count > FEW * list.length) return list
  const rank = ranks(seats, style, where, list)
  const few = new Int32Array(count)
  let at = 0
  for (let i = nextBit(open, 0); i >= 0; i = nextBit(open, i + 1)) few[at++] = rank[i]!
  few.sort()
  for (let k = 0; k < count; k++) few[k] = list[few[k]!]!
  return few
}

const NONE = new Int32Array(0)

/** The number in the order of filling of each place. */
function ranks(seats: Seats, style: Style, where: number, list: Int32Array): Int32Array {
  let mine = seats.ranks.get(style)
  if (!mine) {
    mine = []
    seats.ranks.set(style, mine)
  }
  let rank = mine[where]
  if (!rank) {
    rank = new Int32Array(list.length)
    for (let k = 0; k < list.length; k++) rank[list[k]!] = k
    mine[where] = rank
  }
  return rank
}

/**
 * Numbers of the places in the order one way of filling takes them.
 *
 * @param where The part of the floor that is filled before the others, 0 back … 2 mouth; 3 for none.
 */
export function ordered(seats: Seats, style: Style, where: number): Int32Array {
  let mine = seats.orders.get(style)
  if (!mine) {
    mine = []
    seats.orders.set(style, mine)
  }
  const found = mine[where]
  if (found) return found
  const {x, row, rows} = seats
  const n = x.length
  let list: Int32Array
  if (where === ANYWHERE) {
    const value = scorer(seats.grid, style)
    // Numbers sort many times faster than bodies: the value in thousand-millionths, then the place's own number.
    const keys = new Float64Array(n)
    for (let i = 0; i < n; i++) keys[i] = Math.round((value(x[i]!, rows.y[row[i]!]!) + SHIFT) * FINE) * n + i
    keys.sort()
    // Copied by hand: `Int32Array.from` with a function goes through an iterator.
    list = new Int32Array(n)
    for (let i = 0; i < n; i++) list[i] = keys[i]! % n
  } else {
    list = new Int32Array(n)
    let at = 0
    const all = ordered(seats, style, ANYWHERE)
    for (let away = 0; away < 3; away++) {
      const [one, other] = seats.zones.filter((_, z) => Math.abs(z - where) === away)
      if (one)
        for (let k = 0; k < n; k++) {
          const i = all[k]!
          if (isSet(one, i) || (other !== undefined && isSet(other, i))) list[at++] = i
        }
    }
  }
  mine[where] = list
  return list
}
