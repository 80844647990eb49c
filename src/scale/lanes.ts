import {type Body, outsideBox, type Stood, together} from './floor-bodies.js'
import type {Ground} from './floor-shape.js'

/**
 * The way out of the oven, so that nothing has to be moved to reach another.
 *
 * The *lane* of a vessel is the strip its footprint sweeps on the straight way from its place to the opening: straight out where it
 * stands opposite the mouth, otherwise slantwise to the nearest point of the opening it passes through. B is *in front of* A when B's
 * footprint meets A's lane. B may stand in front of A only if it is set in no earlier than A and drawn no later.
 */

/** May `front` stand in the lane of `behind`? */
export const mayFront = (front: Body, behind: Body): boolean => front.in >= behind.in && front.out <= behind.out

/** Where a vessel's centre passes the opening. */
function wayOut(ground: Ground, body: Body, x: number, y: number): {x: number; y: number} {
  const play = Math.max(0, ground.mouth.width / 2 - body.bx)
  return {x: Math.min(play, Math.max(-play, x)), y: Math.min(y, ground.opening)}
}

/** Does `front` stand in the lane of `behind`? The segment of the lane's centre line against the Minkowski sum of both footprints. */
export function inLane(ground: Ground, front: Body, fx: number, fy: number, behind: Body, bx: number, by: number): boolean {
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
  let least = Math.min(outsideBox(bx - fx, by - fy, box.bx, box.by), outsideBox(exit.x - fx, exit.y - fy, box.bx, box.by))
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

/** Who stands in whose lane against the rule: [front, behind]. */
export function blocked(ground: Ground, stood: readonly Stood[]): Array<[Stood, Stood]> {
  const pairs: Array<[Stood, Stood]> = []
  for (const front of stood) {
    for (const behind of stood) {
      if (front === behind || !together(front.body, behind.body) || mayFront(front.body, behind.body)) continue
      if (inLane(ground, front.body, front.x, front.y, behind.body, behind.x, behind.y)) pairs.push([front, behind])
    }
  }
  return pairs
}
