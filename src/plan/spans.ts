import type {Ground} from '../scale/floor-shape.js'
import type {Body} from './seats.js'

/**
 * Which x a standing vessel bars to another, line by line of the places where that may stand: bodies and lanes bulge nowhere inwards, so
 * on each line it is one open interval, told by its ends. The rules are those of `gap` and `blocks` (`seats.ts`), solved for x.
 *
 * Tangents from a point to a circle: Euclid, Elements III.17. What a disc sweeps along a segment is the segment's Minkowski sum with it
 * (de Berg, Cheong, van Kreveld & Overmars, Computational Geometry, 3rd ed., 13.3).
 */

/** Lines of places of one vessel: the y of its middle and its half extents, m, a number a line. */
export interface Lines {
  readonly y: Float64Array
  readonly hx: Float64Array
  readonly hy: Float64Array
  readonly round: boolean
}

/** The ends of the intervals, m, in the order of the lines; empty where the left end is beyond the right. */
export interface Spans {
  readonly left: Float64Array
  readonly right: Float64Array
}

/** Half the width in which the middle of a body passes the mouth, m. */
export function playOf(ground: Ground, hx: number): number {
  return Math.max(0, ground.mouth.width / 2 - hx)
}

/** Where a vessel would stand nearer to a body than `clear`, m. */
export function touching(lines: Lines, other: Body, clear: number, spans: Spans): void {
  const {x, y, hx, hy, round} = other
  for (let r = 0; r < lines.y.length; r++) {
    const dy = Math.abs(lines.y[r]! - y)
    const myX = lines.hx[r]!
    const myY = lines.hy[r]!
    let half = -1
    if (lines.round && round) {
      const reach = myX + hx + clear
      if (dy < reach) half = Math.sqrt(reach * reach - dy * dy)
    } else if (lines.round || round) {
      const reach = (round ? hx : myX) + clear
      const over = Math.max(0, dy - (round ? myY : hy))
      if (over < reach) half = (round ? myX : hx) + Math.sqrt(reach * reach - over * over)
    } else if (dy - myY - hy < clear) half = myX + hx + clear
    spans.left[r] = half > 0 ? x - half : Number.POSITIVE_INFINITY
    spans.right[r] = half > 0 ? x + half : Number.NEGATIVE_INFINITY
  }
}

/** Where a body stands in the lane on which a vessel would be carried to the mouth. */
export function behind(ground: Ground, lines: Lines, other: Body, spans: Spans): void {
  const {x, y} = other
  const discs = lines.round && other.round
  for (let r = 0; r < lines.y.length; r++) {
    spans.left[r] = Number.POSITIVE_INFINITY
    spans.right[r] = Number.NEGATIVE_INFINITY
    const from = lines.y[r]!
    if (y - other.hy >= from + lines.hy[r]!) continue
    const play = playOf(ground, lines.hx[r]!)
    const exit = Math.min(from, ground.opening)
    const hx = lines.hx[r]! + other.hx
    const hy = lines.hy[r]! + other.hy
    const low = Math.max(exit, y - hy)
    const high = Math.min(from, y + hy)
    if (discs) {
      if (low > high) continue
      spans.right[r] = pastDisc(x, y, hx, play, exit, from, low, high)
      spans.left[r] = -pastDisc(-x, y, hx, play, exit, from, low, high)
      continue
    }
    const deep = from - exit
    if (deep < NOTHING ? Math.abs(from - y) >= hy : low >= high) continue
    const nearest = deep < NOTHING ? 0 : (low - exit) / deep
    const farthest = deep < NOTHING ? 1 : (high - exit) / deep
    spans.right[r] = pastEdge(x + hx, play, nearest, farthest)
    spans.left[r] = -pastEdge(hx - x, play, nearest, farthest)
  }
}

/**
 * The greatest x from which a lane passes left of an upright edge at `edge`. At a share s of the way from the mouth to x, the lane from
 * beyond the mouth's play p runs at p + s (x − p).
 */
function pastEdge(edge: number, play: number, nearest: number, farthest: number): number {
  if (edge > play) return nearest > 0 ? play + (edge - play) / nearest : Number.POSITIVE_INFINITY
  if (edge < -play) return -play + (edge + play) / farthest
  return edge
}

/** The same for a disc's right side between two heights: the lane through the mouth's edge touches it, or ends beside it. */
function pastDisc(
  x: number,
  y: number,
  reach: number,
  play: number,
  exit: number,
  from: number,
  low: number,
  high: number,
): number {
  const side = (at: number): number => x + Math.sqrt(Math.max(0, reach * reach - (at - y) * (at - y)))
  const most = side(Math.min(high, Math.max(low, y)))
  if (most <= play && most >= -play) return most
  const corner = most > play ? play : -play
  const deep = from - exit
  if (deep < NOTHING) return most > play ? Number.POSITIVE_INFINITY : most
  if (most > play && low === exit && side(exit) > play) return Number.POSITIVE_INFINITY
  const vx = x - corner
  const vy = y - exit
  const length = Math.sqrt(Math.max(0, vx * vx + vy * vy - reach * reach))
  // The vector to the middle, turned towards the right by the angle whose sine is reach over its length.
  const ux = vx * length + vy * reach
  const uy = vy * length - vx * reach
  const touch = exit + (length * uy) / (vx * vx + vy * vy)
  const slope = touch <= high ? ux / uy : (side(high) - corner) / (high - exit)
  return corner + deep * slope
}

/** Where a vessel would stand in the lane of a body. */
export function before(ground: Ground, lines: Lines, other: Body, spans: Spans): void {
  const {x, y} = other
  const play = playOf(ground, other.hx)
  const dx = Math.min(play, Math.max(-play, x)) - x
  const dy = Math.min(y, ground.opening) - y
  const discs = lines.round && other.round
  for (let r = 0; r < lines.y.length; r++) {
    spans.left[r] = Number.POSITIVE_INFINITY
    spans.right[r] = Number.NEGATIVE_INFINITY
    const at = lines.y[r]!
    if (at - lines.hy[r]! >= y + other.hy) continue
    const hx = lines.hx[r]! + other.hx
    if (discs) {
      spans.right[r] = besideLane(x, y, dx, dy, hx, at)
      spans.left[r] = -besideLane(-x, y, -dx, dy, hx, at)
      continue
    }
    const hy = lines.hy[r]! + other.hy
    let one = x
    let two = x + dx
    if (dy > -NOTHING) {
      if (Math.abs(y - at) >= hy) continue
    } else {
      const low = Math.max(y + dy, at - hy)
      const high = Math.min(y, at + hy)
      if (low >= high) continue
      one = x + (dx * (high - y)) / dy
      two = x + (dx * (low - y)) / dy
    }
    spans.left[r] = Math.min(one, two) - hx
    spans.right[r] = Math.max(one, two) + hx
  }
}

/** The greatest x at one height no further than `reach` from a segment that begins at a point and goes by (dx, dy ≤ 0); −∞ where none is. */
function besideLane(x: number, y: number, dx: number, dy: number, reach: number, at: number): number {
  let most = Math.max(discSide(x, y, reach, at), discSide(x + dx, y + dy, reach, at))
  if (dy < -NOTHING) {
    // The side of the strip, the segment moved by `reach` at right angles.
    const length = Math.sqrt(dx * dx + dy * dy)
    const share = (at - y - (reach * dx) / length) / dy
    if (share >= 0 && share <= 1) most = Math.max(most, x - (reach * dy) / length + share * dx)
  }
  return most
}

/** The right side of a disc at one height; −∞ above and below it. */
function discSide(x: number, y: number, reach: number, at: number): number {
  const up = Math.abs(at - y)
  return up < reach ? x + Math.sqrt(reach * reach - up * up) : Number.NEGATIVE_INFINITY
}

/** Lengths below this are none, m (as `blocks`). */
const NOTHING = 1e-12
