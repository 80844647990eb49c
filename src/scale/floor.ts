import {type Ground, groundOf, headroom, nearestOnEllipse, usableArea, zoneOf} from './floor-shape.js'
import type {FloorConflict, FloorItem, FloorRoom, Move, Packing, Placed, Vessel} from './types.js'

/**
 * Packing vessels on the floor so that nothing has to be moved to reach another.
 *
 * The *lane* of a vessel is the strip its footprint sweeps on the straight way from its place to the opening: straight out where it
 * stands opposite the mouth, otherwise slantwise to the nearest point of the opening it passes through. B is *in front of* A when B's
 * footprint meets A's lane. B may stand in front of A only if it is set in no earlier than A and drawn no later.
 *
 * Two ways are tried in turn. Set in from the back: each vessel takes the furthest-back corner that is left (corners are where it
 * touches two of: wall, kept-free strip, other vessels), those drawn last first. Then, for tight loads, push apart: all vessels start
 * small and overlapping and are pushed off each other and off the wall while they grow. Both are deterministic.
 */
export interface PackOptions {
  /** `quick` leaves out pushing apart and moves: for the planner's inner loop. */
  readonly effort?: 'quick' | 'full'
  /** Look for a packing at the price of a move when there is none without. Default true with full effort. */
  readonly moves?: boolean
}

interface Body {
  readonly item: FloorItem
  /** Half the footprint with half the clearance round it. */
  readonly hx: number
  readonly hy: number
  /** Half the bare footprint. */
  readonly bx: number
  readonly by: number
  readonly circle: boolean
  readonly turn: number
  /** The floor's half-axes under enough vault. */
  readonly a: number
  readonly b: number
  readonly in: number
  readonly out: number
}

interface Stood {
  readonly body: Body
  readonly x: number
  readonly y: number
}

const touch = 1e-7

/** Half sizes of a footprint, turned. */
function halves(footprint: Vessel['footprint'], turn: number): {x: number; y: number} {
  if (footprint.shape === 'circle') return {x: footprint.diameter / 2, y: footprint.diameter / 2}
  const across = Math.abs(Math.sin(turn)) > 0.5
  return across ? {x: footprint.width / 2, y: footprint.length / 2} : {x: footprint.length / 2, y: footprint.width / 2}
}

function bodyOf(ground: Ground, item: FloorItem, turn: number): Body {
  const half = halves(item.footprint, turn)
  const c = ground.rules.clearance / 2
  const share = headroom(ground, item.height)
  return {
    item,
    hx: half.x + c,
    hy: half.y + c,
    bx: half.x,
    by: half.y,
    circle: item.footprint.shape === 'circle',
    turn,
    a: ground.a * share,
    b: ground.round ? ground.b * share : ground.b,
    in: item.in ?? 0,
    out: item.out,
  }
}

/** Both ways a vessel can stand: as it is, and a quarter turned. */
function bodiesOf(ground: Ground, item: FloorItem): Body[] {
  if (item.fixed !== undefined) return [bodyOf(ground, item, item.fixed.turn)]
  const foot = item.footprint
  if (foot.shape === 'circle' || foot.length === foot.width) return [bodyOf(ground, item, 0)]
  return [bodyOf(ground, item, 0), bodyOf(ground, item, Math.PI / 2)]
}

const together = (p: Body, q: Body): boolean => p.in < q.out && q.in < p.out

/** May `front` stand in the lane of `behind`? */
const mayFront = (front: Body, behind: Body): boolean => front.in >= behind.in && front.out <= behind.out

function onFloor(ground: Ground, body: Body, x: number, y: number): boolean {
  if (!ground.round) return Math.abs(x) + body.hx <= body.a + touch && Math.abs(y) + body.hy <= body.b + touch
  if (body.a <= 0) return false
  if (!body.circle) return ((Math.abs(x) + body.hx) / body.a) ** 2 + ((Math.abs(y) + body.hy) / body.b) ** 2 <= 1 + touch
  if (body.a === body.b) return Math.hypot(x, y) + body.hx <= body.a + touch
  if ((x / body.a) ** 2 + (y / body.b) ** 2 > 1) return false
  const near = nearestOnEllipse(body.a, body.b, x, y)
  return Math.hypot(near.x - x, near.y - y) >= body.hx - touch
}

/** Distance of a point from a box around the origin, and 0 inside it. */
function outside(dx: number, dy: number, hx: number, hy: number): number {
  return Math.hypot(Math.max(0, Math.abs(dx) - hx), Math.max(0, Math.abs(dy) - hy))
}

function apart(p: Body, px: number, py: number, q: Body, qx: number, qy: number): boolean {
  const dx = px - qx
  const dy = py - qy
  if (p.circle && q.circle) return dx * dx + dy * dy >= (p.hx + q.hx - touch) ** 2
  if (!p.circle && !q.circle) return Math.abs(dx) >= p.hx + q.hx - touch || Math.abs(dy) >= p.hy + q.hy - touch
  // The half clearance is part of both half sizes, so the rounded corner is measured from the bare box.
  const [round, box] = p.circle ? [p, q] : [q, p]
  return outside(dx, dy, box.bx, box.by) >= round.hx + (box.hx - box.bx) - touch
}

function clearOfKept(ground: Ground, body: Body, x: number, y: number): boolean {
  for (const box of ground.keptFree) {
    const dx = x - (box.x0 + box.x1) / 2
    const dy = y - (box.y0 + box.y1) / 2
    const hx = (box.x1 - box.x0) / 2
    const hy = (box.y1 - box.y0) / 2
    if (
      body.circle
        ? outside(dx, dy, hx, hy) < body.bx - touch
        : Math.abs(dx) < hx + body.bx - touch && Math.abs(dy) < hy + body.by - touch
    )
      return false
  }
  return true
}

/** Where a vessel's centre passes the opening. */
function wayOut(ground: Ground, body: Body, x: number, y: number): {x: number; y: number} {
  const play = Math.max(0, ground.mouth.width / 2 - body.bx)
  return {x: Math.min(play, Math.max(-play, x)), y: Math.min(y, ground.opening)}
}

/** Does `front` stand in the lane of `behind`? The segment of the lane's centre line against the Minkowski sum of both footprints. */
function inLane(ground: Ground, front: Body, fx: number, fy: number, behind: Body, bx: number, by: number): boolean {
  const exit = wayOut(ground, behind, bx, by)
  const slack = 1e-4
  if (!front.circle && !behind.circle) {
    return segmentMeetsBox(bx, by, exit.x, exit.y, fx, fy, front.bx + behind.bx - slack, front.by + behind.by - slack)
  }
  if (front.circle && behind.circle) {
    return segmentDistance(bx, by, exit.x, exit.y, fx, fy) < front.bx + behind.bx - slack
  }
  const [round, box] = front.circle ? [front, behind] : [behind, front]
  // Distance from a segment to a box is least at a corner of the box, at an end of the segment, or nothing.
  if (segmentMeetsBox(bx, by, exit.x, exit.y, fx, fy, box.bx, box.by)) return true
  let least = Math.min(outside(bx - fx, by - fy, box.bx, box.by), outside(exit.x - fx, exit.y - fy, box.bx, box.by))
  for (const sx of [-1, 1])
    for (const sy of [-1, 1]) least = Math.min(least, segmentDistance(bx, by, exit.x, exit.y, fx + sx * box.bx, fy + sy * box.by))
  return least < round.bx - slack
}

function segmentDistance(x0: number, y0: number, x1: number, y1: number, px: number, py: number): number {
  const dx = x1 - x0
  const dy = y1 - y0
  const length = dx * dx + dy * dy
  const t = length === 0 ? 0 : Math.min(1, Math.max(0, ((px - x0) * dx + (py - y0) * dy) / length))
  return Math.hypot(x0 + t * dx - px, y0 + t * dy - py)
}

/** Does a segment pass through the inside of a box (slab test)? */
function segmentMeetsBox(
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  cx: number,
  cy: number,
  hx: number,
  hy: number,
): boolean {
  let low = 0
  let high = 1
  for (const [p, d, c, h] of [
    [x0, x1 - x0, cx, hx],
    [y0, y1 - y0, cy, hy],
  ] as const) {
    if (Math.abs(d) < 1e-12) {
      if (Math.abs(p - c) >= h) return false
      continue
    }
    const t0 = (c - h - p) / d
    const t1 = (c + h - p) / d
    low = Math.max(low, Math.min(t0, t1))
    high = Math.min(high, Math.max(t0, t1))
    if (low >= high) return false
  }
  return true
}

/** May a body stand here beside one that stands? `pardoned`: a vessel that will be moved, so lanes do not mind it. */
function beside(ground: Ground, other: Stood, body: Body, x: number, y: number, pardoned: FloorItem | null): boolean {
  if (!together(body, other.body)) return true
  if (!apart(body, x, y, other.body, other.x, other.y)) return false
  if (other.body.item !== pardoned && !mayFront(other.body, body) && inLane(ground, other.body, other.x, other.y, body, x, y))
    return false
  return body.item === pardoned || mayFront(body, other.body) || !inLane(ground, body, x, y, other.body, other.x, other.y)
}

/** May a body stand here beside all that stand? */
function stands(ground: Ground, stood: readonly Stood[], body: Body, x: number, y: number, pardoned: FloorItem | null): boolean {
  if (!onFloor(ground, body, x, y) || !clearOfKept(ground, body, x, y)) return false
  for (const other of stood) if (!beside(ground, other, body, x, y, pardoned)) return false
  return true
}

type Taste = 'back' | 'wall' | 'as wished'
/** Which way oblong vessels lie: whichever suits each place, or all the same way, in rows. */
type Lie = 'either' | 'across' | 'along'

/** How good a place is, higher better. */
function liking(ground: Ground, taste: Taste, body: Body, x: number, y: number): number {
  const wish = taste === 'as wished' ? (body.item.place ?? 'any') : taste
  if (wish === 'wall') return (x / ground.a) ** 2 + (y / ground.b) ** 2 + 0.02 * (y / ground.b) + 0.001 * (x / ground.a)
  if (wish === 'mouth') return -(y + body.by) - 0.01 * Math.abs(x)
  if (wish === 'middle') return -Math.max(0, Math.abs(y) - ground.b / 3) + 0.1 * (y - body.by) - 0.001 * x
  return y - body.by + 0.01 * Math.abs(x) - 0.001 * x
}

/** The closed curve of centres at which a body touches something, at t in [0, 1). */
interface Contact {
  readonly at: (t: number) => {x: number; y: number}
  /** Where to look along it: evenly, and at its corners, in order from 0 to 1. */
  readonly stops: readonly number[]
}

/** Samples of a contact curve; corners between samples are found by bisection. */
const samples = 40
const evenly: readonly number[] = Array.from({length: samples + 1}, (_, i) => i / samples)

function aroundVessel(body: Body, other: Stood): Contact {
  if (body.circle && other.body.circle) {
    const r = body.hx + other.body.hx
    return {stops: evenly, at: (t) => ({x: other.x + r * Math.cos(2 * Math.PI * t), y: other.y + r * Math.sin(2 * Math.PI * t)})}
  }
  const both = !body.circle && !other.body.circle
  const box = body.circle ? other.body : body
  const hx = both ? body.hx + other.body.hx : box.bx
  const hy = both ? body.hy + other.body.hy : box.by
  const r = both ? 0 : (body.circle ? body.hx : other.body.hx) + (box.hx - box.bx)
  return aroundBox(other.x, other.y, hx, hy, r)
}

/** A box with rounded corners of radius r, by length of its sides and arcs. */
function aroundBox(cx: number, cy: number, hx: number, hy: number, r: number): Contact {
  const arc = (Math.PI / 2) * r
  const side = 2 * (hx + hy) + 2 * arc
  if (side === 0) return {stops: [0], at: () => ({x: cx, y: cy})}
  const corners = [0, 2 * hy, 2 * hy + arc, 2 * hy + arc + 2 * hx].flatMap((s) => [s / (2 * side), 0.5 + s / (2 * side)])
  const at = (t: number): {x: number; y: number} => {
    let s = t * 2 * side
    const back = s >= side
    if (back) s -= side
    const sign = back ? -1 : 1
    let x: number
    let y: number
    if (s < 2 * hy) [x, y] = [hx + r, -hy + s]
    else if (s < 2 * hy + arc) {
      const angle = (s - 2 * hy) / r
      ;[x, y] = [hx + r * Math.cos(angle), hy + r * Math.sin(angle)]
    } else if (s < 2 * hy + arc + 2 * hx) [x, y] = [hx - (s - 2 * hy - arc), hy + r]
    else {
      const angle = Math.PI / 2 + (r > 0 ? (s - 2 * hy - arc - 2 * hx) / r : 0)
      ;[x, y] = [-hx + r * Math.cos(angle), hy + r * Math.sin(angle)]
    }
    return {x: cx + sign * x, y: cy + sign * y}
  }
  return {stops: [...evenly, ...corners].sort((p, q) => p - q), at}
}

function alongWall(ground: Ground, body: Body): Contact {
  if (!ground.round) return aroundBox(0, 0, Math.max(0, body.a - body.hx), Math.max(0, body.b - body.hy), 0)
  const {a, b} = body
  if (body.circle) {
    const at = (t: number): {x: number; y: number} => {
      const c = Math.cos(2 * Math.PI * t)
      const s = Math.sin(2 * Math.PI * t)
      const n = Math.hypot(b * c, a * s)
      const r = body.hx
      return {x: a * c - (r * b * c) / n, y: b * s - (r * a * s) / n}
    }
    return {stops: evenly, at}
  }
  const at = (t: number): {x: number; y: number} => {
    const c = Math.cos(2 * Math.PI * t)
    const s = Math.sin(2 * Math.PI * t)
    return {x: a * c - Math.sign(c) * body.hx, y: b * s - Math.sign(s) * body.hy}
  }
  return {stops: evenly, at}
}

/**
 * Places where one sort of body may stand: the corners and stops found so far. Vessels only ever take places away, and every new corner
 * lies on the new vessel's own contact curve, so each vessel set in is looked at once.
 */
interface Ledger {
  readonly body: Body
  /** How many of those that stand have been looked at. */
  seen: number
  spots: Array<{readonly x: number; readonly y: number}>
}
type Ledgers = Map<string, Ledger>

const sortOf = (body: Body, pardoned: FloorItem | null): string =>
  `${body.circle} ${body.bx} ${body.by} ${body.item.height} ${body.in} ${body.out}${body.item === pardoned ? ' moved' : ''}`

/** The stops and corners of a contact curve where a body may stand. */
function walk(ground: Ground, stood: readonly Stood[], body: Body, curve: Contact, pardoned: FloorItem | null): Ledger['spots'] {
  const spots: Array<{x: number; y: number}> = []
  let before: {t: number; good: boolean} | null = null
  for (const t of curve.stops) {
    const at = curve.at(t)
    const good = stands(ground, stood, body, at.x, at.y, pardoned)
    if (good) spots.push(at)
    if (before !== null && t > before.t && good !== before.good) {
      let [yes, no] = good ? [t, before.t] : [before.t, t]
      let found: {x: number; y: number} | null = null
      for (let step = 0; step < 22; step++) {
        const middle = (yes + no) / 2
        const p = curve.at(middle)
        if (stands(ground, stood, body, p.x, p.y, pardoned)) {
          yes = middle
          found = p
        } else no = middle
      }
      if (found !== null) spots.push(found)
    }
    before = {t, good}
  }
  return spots
}

/** Bring a ledger up to those that stand now. */
function update(ground: Ground, stood: readonly Stood[], ledger: Ledger, pardoned: FloorItem | null): void {
  const {body} = ledger
  const fresh = stood.slice(ledger.seen)
  ledger.spots = ledger.spots.filter(({x, y}) => fresh.every((other) => beside(ground, other, body, x, y, pardoned)))
  for (const other of fresh) {
    if (together(body, other.body)) ledger.spots.push(...walk(ground, stood, body, aroundVessel(body, other), pardoned))
  }
  ledger.seen = stood.length
}

/** A ledger of the floor's own edges: wall, kept-free strip, ash bed. */
function openLedger(ground: Ground, stood: readonly Stood[], body: Body, pardoned: FloorItem | null): Ledger {
  const spots = walk(ground, stood, body, alongWall(ground, body), pardoned)
  for (const box of ground.keptFree) {
    const hx = (box.x1 - box.x0) / 2
    const hy = (box.y1 - box.y0) / 2
    const [x, y] = [(box.x0 + box.x1) / 2, (box.y0 + box.y1) / 2]
    const curve = body.circle ? aroundBox(x, y, hx, hy, body.bx) : aroundBox(x, y, hx + body.bx, hy + body.by, 0)
    spots.push(...walk(ground, stood, body, curve, pardoned))
  }
  return {body, seen: 0, spots}
}

/** The best place left for an item, or null. */
function bestPlace(
  ground: Ground,
  stood: readonly Stood[],
  bodies: readonly Body[],
  taste: Taste,
  pardoned: FloorItem | null,
  ledgers: Ledgers,
): Stood | null {
  let best: Stood | null = null
  let liked = Number.NEGATIVE_INFINITY
  for (const body of bodies) {
    if (body.a <= 0) continue
    const sort = sortOf(body, pardoned)
    let ledger = ledgers.get(sort)
    if (ledger === undefined) {
      ledger = openLedger(ground, stood, body, pardoned)
      ledgers.set(sort, ledger)
    }
    if (ledger.seen < stood.length) update(ground, stood, ledger, pardoned)
    for (const {x, y} of ledger.spots) {
      const score = liking(ground, taste, body, x, y)
      if (score > liked + 1e-9) {
        liked = score
        best = {body, x, y}
      }
    }
  }
  return best
}

const area = (item: FloorItem): number =>
  item.footprint.shape === 'circle' ? (Math.PI / 4) * item.footprint.diameter ** 2 : item.footprint.length * item.footprint.width

const byName = (p: FloorItem, q: FloorItem): number => (p.dish < q.dish ? -1 : p.dish > q.dish ? 1 : p.number - q.number)

/** Drawn last first, then set in first, then largest. */
const backFirst = (p: FloorItem, q: FloorItem): number =>
  q.out - p.out || (p.in ?? 0) - (q.in ?? 0) || area(q) - area(p) || byName(p, q)

const largestFirst = (p: FloorItem, q: FloorItem): number => area(q) - area(p) || backFirst(p, q)

const lying = (bodies: readonly Body[], lie: Lie): readonly Body[] => {
  if (lie === 'either' || bodies.length === 1) return bodies
  return [bodies[lie === 'across' ? 0 : 1]!]
}

function setInFromBack(
  ground: Ground,
  standing: readonly Stood[],
  items: readonly FloorItem[],
  taste: Taste,
  lie: Lie,
  pardoned: FloorItem | null,
): Stood[] | null {
  const stood = [...standing]
  const ledgers: Ledgers = new Map()
  for (const item of items) {
    const place = bestPlace(ground, stood, lying(bodiesOf(ground, item), lie), taste, pardoned, ledgers)
    if (place === null) return null
    stood.push(place)
  }
  return stood
}

/** Small fixed-seed generator (mulberry32, public domain), so that the same input gives the same floor. */
function numbers(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = state
    t = Math.imul(t ^ (t >>> 15), t | 1)
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61)
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

/** Starting places: rings, rows or scattered. */
function startPlaces(ground: Ground, count: number, start: number, random: () => number): Array<{x: number; y: number}> {
  const places: Array<{x: number; y: number}> = []
  if (start === 0 || start === 2) {
    // Rows of a triangular lattice, turned for the second start.
    const pitch = Math.sqrt((4 * ground.a * ground.b) / Math.max(1, count)) * 0.92
    for (let row = 0; places.length < count * 3 && row < 40; row++) {
      for (let k = -20; k <= 20; k++) {
        for (const sign of row === 0 ? [1] : [1, -1]) {
          const u = (k + (row % 2) / 2) * pitch
          const v = sign * row * pitch * 0.866
          const [x, y] = start === 0 ? [u, v] : [v, u]
          if ((x / ground.a) ** 2 + (y / ground.b) ** 2 <= (ground.round ? 1 : 2)) places.push({x, y})
        }
      }
    }
    places.sort((p, q) => Math.hypot(p.x, p.y) - Math.hypot(q.x, q.y))
    if (places.length >= count) return places.slice(0, count)
    places.length = 0
  }
  if (start === 1 || start === 3 || start === 4) {
    // Rings: the outermost as full as its length allows, start 3 with one fewer, start 4 one more.
    let left = count
    const r = Math.sqrt((0.78 * ground.a * ground.b) / Math.max(1, count))
    let ring = Math.min(ground.a, ground.b) - r
    while (left > 0) {
      const full =
        ring <= r * 0.6
          ? 1
          : Math.max(1, Math.floor(Math.PI / Math.asin(Math.min(1, r / ring))) + (start === 3 ? -1 : start === 4 ? 1 : 0))
      const here = Math.min(left, full)
      const turn = random() * 2 * Math.PI
      for (let k = 0; k < here; k++) {
        const angle = turn + (2 * Math.PI * k) / here
        places.push({
          x: (ring * ground.a * Math.cos(angle)) / Math.min(ground.a, ground.b),
          y: (ring * ground.b * Math.sin(angle)) / Math.min(ground.a, ground.b),
        })
      }
      left -= here
      ring = Math.max(0, ring - 2 * r)
    }
    return places
  }
  for (let i = 0; i < count; i++) {
    const radius = Math.sqrt(random()) * 0.8
    const angle = random() * 2 * Math.PI
    places.push({x: ground.a * radius * Math.cos(angle), y: ground.b * radius * Math.sin(angle)})
  }
  return places
}

/** Push overlapping vessels off each other and off the walls while they grow to full size. Null where they do not come free. */
function pushApart(
  ground: Ground,
  standing: readonly Stood[],
  items: readonly FloorItem[],
  start: number,
  rounds: number,
  byDepth: boolean,
): Stood[] | null {
  const random = numbers(0x9e37 + start * 7919 + items.length)
  // Oblong vessels of one dish lie one way on even starts; on odd ones each lies as it falls.
  const lies = new Map<string, number>()
  const bodies = items.map((item) => {
    const ways = bodiesOf(ground, item)
    if (ways.length === 1) return ways[0]!
    const fall = random() < 0.5 ? 1 : 0
    const lie = start === 0 ? 0 : start % 2 === 0 ? (lies.get(item.dish) ?? fall) : fall
    lies.set(item.dish, lie)
    return ways[lie]!
  })
  // By size, the largest come first in the list of places, which goes from the centre out on lattice starts; by depth, those drawn
  // last come first and start furthest back.
  const places = startPlaces(ground, items.length, start, random)
  if (byDepth) places.sort((p, q) => q.y - p.y || p.x - q.x)
  const x = places.map((p) => p.x)
  const y = places.map((p) => p.y)
  const n = bodies.length
  const depths = depthsOf(ground, bodies)
  const extra = 2e-5
  for (let round = 0; round < rounds; round++) {
    const size = Math.min(1, 0.7 + (0.3 * round) / (rounds * 0.6))
    let worst = 0
    // While they are small, those drawn last are drawn backwards and those drawn first to the mouth.
    const pull = byDepth && size < 1 ? 0.5 * (1 - size) : 0
    for (let i = 0; i < n; i++) {
      const p = bodies[i]!
      if (pull > 0) y[i]! += pull * (depths[i]! - y[i]!)
      for (let j = i + 1; j < n; j++) {
        const q = bodies[j]!
        if (!together(p, q)) continue
        const push = overlap(p, x[i]!, y[i]!, q, x[j]!, y[j]!, size, extra)
        if (push === null) continue
        worst = Math.max(worst, Math.hypot(push.x, push.y))
        x[i]! += push.x / 2
        y[i]! += push.y / 2
        x[j]! -= push.x / 2
        y[j]! -= push.y / 2
      }
      for (const other of standing) {
        if (!together(p, other.body)) continue
        const push = overlap(p, x[i]!, y[i]!, other.body, other.x, other.y, size, extra)
        if (push === null) continue
        worst = Math.max(worst, Math.hypot(push.x, push.y))
        x[i]! += push.x
        y[i]! += push.y
      }
      const back = pushIn(ground, p, x[i]!, y[i]!, extra)
      worst = Math.max(worst, Math.hypot(back.x, back.y))
      x[i]! += back.x
      y[i]! += back.y
    }
    if (size === 1 && worst < extra) break
    // Still this far from free with a fifth of the rounds left: it will not come free.
    if (round > 0.8 * rounds && worst > 0.004) return null
  }
  const stood = [...standing]
  for (let i = 0; i < n; i++) stood.push({body: bodies[i]!, x: x[i]!, y: y[i]!})
  return stood
}

/** How far back each would stand if all stood in order of drawing: from the back by the area of those drawn after it. */
function depthsOf(ground: Ground, bodies: readonly Body[]): number[] {
  const all = bodies.reduce((sum, body) => sum + body.hx * body.hy, 0)
  return bodies.map((body) => {
    const behind = bodies.reduce((sum, other) => {
      if (other.out === body.out && other.in === body.in) return sum + (other.hx * other.hy) / 2
      return other.out > body.out || (other.out === body.out && other.in < body.in) ? sum + other.hx * other.hy : sum
    }, 0)
    return ground.b * (1 - (2 * behind) / all) * 0.8
  })
}

/** The shortest push that frees p from q, or null. */
function overlap(
  p: Body,
  px: number,
  py: number,
  q: Body,
  qx: number,
  qy: number,
  size: number,
  extra: number,
): {x: number; y: number} | null {
  const dx = px - qx
  const dy = py - qy
  if (p.circle && q.circle) {
    const reach = (p.hx + q.hx) * size + extra
    const squared = dx * dx + dy * dy
    if (squared >= reach * reach) return null
    const d = Math.sqrt(squared)
    return d < 1e-9 ? {x: reach, y: 0} : {x: (dx / d) * (reach - d), y: (dy / d) * (reach - d)}
  }
  if (!p.circle && !q.circle) {
    const ox = (p.hx + q.hx) * size + extra - Math.abs(dx)
    const oy = (p.hy + q.hy) * size + extra - Math.abs(dy)
    if (ox <= 0 || oy <= 0) return null
    return ox < oy ? {x: Math.sign(dx || 1) * ox, y: 0} : {x: 0, y: Math.sign(dy || 1) * oy}
  }
  const [round, box] = p.circle ? [p, q] : [q, p]
  const reach = (round.hx + box.hx - box.bx) * size + extra
  const gx = Math.abs(dx) - box.bx * size
  const gy = Math.abs(dy) - box.by * size
  if (gx >= reach || gy >= reach) return null
  if (gx > 0 && gy > 0) {
    const d = Math.hypot(gx, gy)
    if (d >= reach) return null
    return {x: (Math.sign(dx || 1) * gx * (reach - d)) / d, y: (Math.sign(dy || 1) * gy * (reach - d)) / d}
  }
  return gx > gy ? {x: Math.sign(dx || 1) * (reach - gx), y: 0} : {x: 0, y: Math.sign(dy || 1) * (reach - gy)}
}

/** The push that brings a body back on the floor and off what is kept free. */
function pushIn(ground: Ground, body: Body, x: number, y: number, extra: number): {x: number; y: number} {
  let nx = x
  let ny = y
  for (const box of ground.keptFree) {
    const dx = nx - (box.x0 + box.x1) / 2
    const dy = ny - (box.y0 + box.y1) / 2
    const ox = (box.x1 - box.x0) / 2 + body.bx + extra - Math.abs(dx)
    const oy = (box.y1 - box.y0) / 2 + body.by + extra - Math.abs(dy)
    if (ox <= 0 || oy <= 0) continue
    if (ox < oy && Math.abs((box.x0 + box.x1) / 2) + 1e-9 > 0 && box.x1 - box.x0 < 1.9 * ground.a) nx += Math.sign(dx || 1) * ox
    else ny += Math.sign(dy || 1) * oy
  }
  if (!ground.round) {
    const mx = Math.max(0, body.a - body.hx - extra)
    const my = Math.max(0, body.b - body.hy - extra)
    nx = Math.min(mx, Math.max(-mx, nx))
    ny = Math.min(my, Math.max(-my, ny))
  } else if (body.circle && body.a === body.b) {
    const most = Math.max(0, body.a - body.hx - extra)
    const d = Math.hypot(nx, ny)
    if (d > most) [nx, ny] = [(nx / d) * most, (ny / d) * most]
  } else if (body.circle) {
    const near = nearestOnEllipse(body.a, body.b, nx, ny)
    const inside = (nx / body.a) ** 2 + (ny / body.b) ** 2 < 1
    const d = Math.hypot(near.x - nx, near.y - ny)
    const reach = body.hx + extra
    if (!inside || d < reach) {
      const gx = near.x / body.a ** 2
      const gy = near.y / body.b ** 2
      const g = Math.hypot(gx, gy)
      ;[nx, ny] = [near.x - (gx / g) * reach, near.y - (gy / g) * reach]
    }
  } else {
    const cx = Math.abs(nx) + body.hx + extra
    const cy = Math.abs(ny) + body.hy + extra
    if ((cx / body.a) ** 2 + (cy / body.b) ** 2 > 1) {
      const near = nearestOnEllipse(body.a, body.b, cx, cy)
      ;[nx, ny] = [nx - Math.sign(nx || 1) * (cx - near.x), ny - Math.sign(ny || 1) * (cy - near.y)]
    }
  }
  return {x: nx - x, y: ny - y}
}

/** Who stands in whose lane against the rule: [front, behind]. */
function blocked(ground: Ground, stood: readonly Stood[]): Array<[Stood, Stood]> {
  const pairs: Array<[Stood, Stood]> = []
  for (const front of stood) {
    for (const behind of stood) {
      if (front === behind || !together(front.body, behind.body) || mayFront(front.body, behind.body)) continue
      if (inLane(ground, front.body, front.x, front.y, behind.body, behind.x, behind.y)) pairs.push([front, behind])
    }
  }
  return pairs
}

/** Vessels of one footprint and height change places so that those drawn last stand furthest back. */
function reorder(standing: number, stood: readonly Stood[]): Stood[] {
  const groups = new Map<string, Stood[]>()
  for (const s of stood.slice(standing)) {
    const key = `${s.body.circle} ${s.body.bx} ${s.body.by} ${s.body.item.height} ${s.body.turn}`
    groups.set(key, [...(groups.get(key) ?? []), s])
  }
  const out = stood.slice(0, standing)
  for (const group of groups.values()) {
    const items = group.map((s) => s.body).sort((p, q) => backFirst(p.item, q.item))
    const spots = [...group].sort((p, q) => q.y - p.y || p.x - q.x)
    spots.forEach((spot, i) => {
      out.push({body: items[i]!, x: spot.x, y: spot.y})
    })
  }
  return out
}

function allStand(ground: Ground, stood: readonly Stood[], standing: number): boolean {
  for (let i = standing; i < stood.length; i++) {
    const s = stood[i]!
    if (!onFloor(ground, s.body, s.x, s.y) || !clearOfKept(ground, s.body, s.x, s.y)) return false
    for (let j = 0; j < i; j++) {
      const o = stood[j]!
      if (together(s.body, o.body) && !apart(s.body, s.x, s.y, o.body, o.x, o.y)) return false
    }
  }
  return true
}

function result(room: FloorRoom, stood: readonly Stood[], standing: number): Placed[] {
  return stood
    .slice(standing)
    .map((s) => ({
      dish: s.body.item.dish,
      number: s.body.item.number,
      x: s.x,
      y: s.y,
      turn: s.body.turn,
      zone: zoneOf(room.floor, s.y),
    }))
    .sort((p, q) => (p.dish < q.dish ? -1 : p.dish > q.dish ? 1 : p.number - q.number))
}

/**
 * Share of a round or oval floor beyond which no search is made: circles in a circle fill 0.803 at the best of up to nineteen
 * (n = 19), and vessels with square corners less.
 */
const densest = 0.83

const nameOf = (item: FloorItem): {dish: string; number: number} => ({dish: item.dish, number: item.number})
const centimetres = (metres: number): string => `${Math.round(metres * 1000) / 10} cm`

/** Why one vessel alone cannot go in, or null. Lengths in the reason are centimetres. */
export function passesMouth(
  room: FloorRoom,
  item: Pick<FloorItem, 'dish' | 'number' | 'footprint' | 'height'>,
): FloorConflict | null {
  const foot = item.footprint
  const narrow = foot.shape === 'circle' ? foot.diameter : Math.min(foot.length, foot.width)
  const items = [{dish: item.dish, number: item.number}]
  if (narrow > room.mouth.width + 1e-9) {
    return {
      rule: 'mouth width',
      reason: `${item.dish}: ${centimetres(narrow)} across, and the mouth is ${centimetres(room.mouth.width)} wide`,
      items,
    }
  }
  if (item.height > room.mouth.height + 1e-9) {
    return {
      rule: 'mouth height',
      reason: `${item.dish}: ${centimetres(item.height)} high, and the mouth is ${centimetres(room.mouth.height)} high`,
      items,
    }
  }
  if (item.height >= room.vaultHeight) {
    return {
      rule: 'vault height',
      reason: `${item.dish}: ${centimetres(item.height)} high, and the vault is ${centimetres(room.vaultHeight)} high`,
      items,
    }
  }
  return null
}

/** Area of a footprint with half the clearance all round, m². */
function areaNeeded(footprint: Vessel['footprint'], clearance: number): number {
  return footprint.shape === 'circle'
    ? (Math.PI / 4) * (footprint.diameter + clearance) ** 2
    : (footprint.length + clearance) * (footprint.width + clearance)
}

/**
 * False only where these vessels cannot stand on the floor together whatever their places: their areas with clearance exceed the
 * usable floor. A bound, not a packing.
 */
export function mayFit(room: FloorRoom, footprints: ReadonlyArray<Vessel['footprint']>): boolean {
  const clearance = room.rules?.clearance ?? groundOf(room).rules.clearance
  // A strip of half the clearance may hang over what is kept free; it is at most that wide along the usable floor's edge.
  const {a, b} = groundOf(room)
  const edge = clearance * 2 * (a + b)
  return footprints.reduce((sum, foot) => sum + areaNeeded(foot, clearance), 0) <= usableArea(room) + edge
}

function standingOf(ground: Ground, items: readonly FloorItem[]): Stood[] {
  return items.flatMap((item) =>
    item.fixed === undefined ? [] : [{body: bodyOf(ground, item, item.fixed.turn), x: item.fixed.x, y: item.fixed.y}],
  )
}

function tryAll(
  ground: Ground,
  standing: readonly Stood[],
  items: readonly FloorItem[],
  effort: 'quick' | 'full',
  pardoned: FloorItem | null,
): Stood[] | null {
  const ordered = [...items].sort(backFirst)
  const wished = items.some((item) => item.place === 'mouth' || item.place === 'middle')
  const bySize = [...items].sort(largestFirst)
  const sameOrder = bySize.every((item, i) => item === ordered[i])
  const oblong = items.some((item) => item.footprint.shape === 'rectangle' && item.footprint.length !== item.footprint.width)
  const attempts: Array<[readonly FloorItem[], Taste, Lie]> = []
  if (wished) attempts.push([ordered, 'as wished', 'either'])
  attempts.push([ordered, 'back', 'either'], [ordered, 'wall', 'either'])
  if (oblong) attempts.push([ordered, 'back', 'across'], [ordered, 'back', 'along'])
  if (!sameOrder) attempts.push([bySize, 'back', 'either'], [bySize, 'wall', 'either'])
  for (const [list, taste, lie] of attempts) {
    const stood = setInFromBack(ground, standing, list, taste, lie, pardoned)
    if (stood !== null) return stood
  }
  if (effort === 'quick') return null
  const inOrder = items.some((item) => item.out !== items[0]!.out || (item.in ?? 0) !== (items[0]!.in ?? 0))
  for (let attempt = 0; attempt < (inOrder ? 26 : 14); attempt++) {
    const byDepth = inOrder && attempt % 4 !== 3
    const stood = pushApart(ground, standing, byDepth ? ordered : bySize, attempt, 700, byDepth)
    if (stood === null || !allStand(ground, stood, standing.length)) continue
    const changed = reorder(standing.length, stood)
    if (allStand(ground, changed, standing.length) && blocked(ground, changed).every(([front]) => front.body.item === pardoned))
      return changed
  }
  return null
}

/**
 * Find a place for every vessel.
 *
 * @param input the oven's room and the vessels; those with `fixed` stand already and stay.
 * @param options how hard to try.
 * @returns places of the vessels that are not fixed, by dish and number; or the conflict. Positions in metres (see `Placed`).
 */
export function packFloor(input: FloorRoom & {readonly items: readonly FloorItem[]}, options: PackOptions = {}): Packing {
  const effort = options.effort ?? 'full'
  const ground = groundOf(input)
  const standing = standingOf(ground, input.items)
  const items = input.items.filter((item) => item.fixed === undefined)
  if (items.length === 0) return {placed: []}
  for (const item of items) {
    const conflict = passesMouth(input, item)
    if (conflict !== null) return {conflict}
  }
  for (const item of items) {
    const known = items.find((other) => sameVessel(other, item))
    if (known !== item) continue
    if (bestPlace(ground, [], bodiesOf(ground, item), 'back', null, new Map()) === null) {
      return {
        conflict: {
          rule: 'too large',
          reason: `${item.dish}: too large, even alone, for this floor under the vault`,
          items: [nameOf(item)],
        },
      }
    }
  }
  const none: Packing = {
    conflict: {rule: 'room', reason: `no place was found for ${items.length} vessels together`, items: items.map(nameOf)},
  }
  const usable = usableArea(input)
  for (const moment of new Set(items.map((item) => item.in ?? 0))) {
    const present = input.items.filter((item) => (item.in ?? 0) <= moment && item.out > moment)
    const footprints = present.map((item) => item.footprint)
    if (!mayFit(input, footprints)) {
      return {
        conflict: {rule: 'area', reason: `${present.length} vessels need more floor than there is`, items: present.map(nameOf)},
      }
    }
    const needed = footprints.map((foot) => areaNeeded(foot, ground.rules.clearance))
    // One vessel may be most of the floor by itself.
    if (ground.round && Math.max(...needed) < usable / 2 && needed.reduce((p, q) => p + q, 0) > densest * usable) return none
  }
  const stood = tryAll(ground, standing, items, effort, null)
  if (stood !== null) return {placed: result(input, stood, standing.length)}
  if (!(options.moves ?? effort === 'full')) return none
  const saved = withMoves(input, ground, standing, items)
  if (saved !== null) {
    const names = saved.moves.map(
      (move) => `${move.dish} ${move.number} to ${move.why} ${move.toReach.dish} ${move.toReach.number}`,
    )
    return {
      conflict: {
        rule: 'reach',
        reason: `they fit, but not with every one in reach: move ${names.join('; ')}`,
        items: saved.moves.flatMap((move) => [{dish: move.dish, number: move.number}, move.toReach]),
        saved,
      },
    }
  }
  return none
}

const sameVessel = (p: FloorItem, q: FloorItem): boolean =>
  p.height === q.height &&
  (p.footprint.shape === 'circle'
    ? q.footprint.shape === 'circle' && p.footprint.diameter === q.footprint.diameter
    : q.footprint.shape === 'rectangle' && p.footprint.length === q.footprint.length && p.footprint.width === q.footprint.width)

/** A packing in which one vessel has to be shifted: the one whose pardon saves the load with the fewest moves. */
function withMoves(
  room: FloorRoom,
  ground: Ground,
  standing: readonly Stood[],
  items: readonly FloorItem[],
): {placed: Placed[]; moves: Move[]} | null {
  let best: {placed: Placed[]; moves: Move[]} | null = null
  const candidates = [...standing.map((s) => s.body.item), ...items]
  const seen: FloorItem[] = []
  for (const item of candidates) {
    // Vessels of one dish are alike: one of them tells for all.
    if (item.fixed === undefined && seen.some((other) => other.dish === item.dish && other.fixed === undefined)) continue
    seen.push(item)
    const stood = tryAll(ground, standing, items, 'quick', item)
    if (stood === null) continue
    const moves = blocked(ground, stood).map(
      ([front, behind]): Move => ({
        ...nameOf(front.body.item),
        toReach: nameOf(behind.body.item),
        why: front.body.in < behind.body.in ? 'set in' : 'draw',
        at: front.body.in < behind.body.in ? behind.body.in : behind.body.out,
      }),
    )
    if (moves.length > 0 && (best === null || moves.length < best.moves.length))
      best = {placed: result(room, stood, standing.length), moves}
    if (best !== null && best.moves.length === 1) break
  }
  return best
}

/**
 * How many vessels of one kind stand on the empty floor at once: what "fill the floor" means, and the planner's measure of a
 * vessel's share of the floor (1 / capacity). 0 where one does not go in.
 */
export function capacityOf(
  room: FloorRoom,
  vessel: Pick<Vessel, 'footprint' | 'height'>,
  effort: 'quick' | 'full' = 'full',
): number {
  const item = (number: number): FloorItem => ({dish: 'x', number, footprint: vessel.footprint, height: vessel.height, out: 1})
  if (passesMouth(room, item(1)) !== null) return 0
  const ground = groundOf(room)
  const bodies = bodiesOf(ground, item(1))
  let most = 0
  const ways: Array<[Taste, Lie]> = [
    ['back', 'either'],
    ['wall', 'either'],
  ]
  if (bodies.length > 1) ways.push(['back', 'across'], ['back', 'along'])
  for (const [taste, lie] of ways) {
    const stood: Stood[] = []
    const ledgers: Ledgers = new Map()
    for (;;) {
      const place = bestPlace(ground, stood, lying(bodies, lie), taste, null, ledgers)
      if (place === null) break
      stood.push(place)
      if (stood.length >= 400) break
    }
    most = Math.max(most, stood.length)
  }
  if (most === 0 || effort === 'quick') return most
  while (most < 60) {
    const more = Array.from({length: most + 1}, (_, i) => item(i + 1))
    if (
      !mayFit(
        room,
        more.map((m) => m.footprint),
      )
    )
      break
    if (tryAll(ground, [], more, 'full', null) === null) break
    most++
  }
  return most
}
