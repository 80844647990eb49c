import {alongWall, aroundBox, aroundVessel, type Contact} from './contact-curves.js'
import {apart, type Body, clearOfKept, onFloor, type Stood, together} from './floor-bodies.js'
import type {Ground} from './floor-shape.js'
import {inLane, mayFront} from './lanes.js'
import type {FloorItem} from './types.js'

/**
 * The best place left for one more vessel: of the corners, where it touches two of wall, kept-free strip and other vessels, and of places
 * along what it touches, the one that is liked best.
 */

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

/** Which places are liked: furthest back, along the wall, or as each dish wishes. */
export type Taste = 'back' | 'wall' | 'as wished'

/** How good a place is, higher better. */
function liking(ground: Ground, taste: Taste, body: Body, x: number, y: number): number {
  const wish = taste === 'as wished' ? (body.item.place ?? 'any') : taste
  if (wish === 'wall') return (x / ground.a) ** 2 + (y / ground.b) ** 2 + 0.02 * (y / ground.b) + 0.001 * (x / ground.a)
  if (wish === 'mouth') return -(y + body.by) - 0.01 * Math.abs(x)
  if (wish === 'middle') return -Math.max(0, Math.abs(y) - ground.b / 3) + 0.1 * (y - body.by) - 0.001 * x
  return y - body.by + 0.01 * Math.abs(x) - 0.001 * x
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

/** One for each sort of body, kept while vessels are set in. */
export type Ledgers = Map<string, Ledger>

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
export function bestPlace(
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
