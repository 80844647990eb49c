import {type Ground, headroom, nearestOnEllipse} from './floor-shape.js'
import type {FloorItem, Vessel} from './types.js'

/**
 * A vessel as the packer sees it, a body on the floor: its outline turned as it stands, the clearance round it, the floor under enough
 * vault for it, and whether two of them, or one and the wall, are far enough apart. Metres; centres by the floor's axes.
 */

/** One way in which a vessel can stand, wherever that is. */
export interface Body {
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

/** A body and where its centre is. */
export interface Stood {
  readonly body: Body
  readonly x: number
  readonly y: number
}

/** What may be lacking where two touch: rounding. */
const touch = 1e-7

/** Half sizes of a footprint, turned. */
function halves(footprint: Vessel['footprint'], turn: number): {x: number; y: number} {
  if (footprint.shape === 'circle') return {x: footprint.diameter / 2, y: footprint.diameter / 2}
  const across = Math.abs(Math.sin(turn)) > 0.5
  return across ? {x: footprint.width / 2, y: footprint.length / 2} : {x: footprint.length / 2, y: footprint.width / 2}
}

/** A vessel turned by an angle, radians. */
export function bodyOf(ground: Ground, item: FloorItem, turn: number): Body {
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
export function bodiesOf(ground: Ground, item: FloorItem): Body[] {
  if (item.fixed !== undefined) return [bodyOf(ground, item, item.fixed.turn)]
  const foot = item.footprint
  if (foot.shape === 'circle' || foot.length === foot.width) return [bodyOf(ground, item, 0)]
  return [bodyOf(ground, item, 0), bodyOf(ground, item, Math.PI / 2)]
}

/** Are both in the oven at some time? */
export const together = (p: Body, q: Body): boolean => p.in < q.out && q.in < p.out

/** Is a body with its half clearance on the floor, under enough vault? */
export function onFloor(ground: Ground, body: Body, x: number, y: number): boolean {
  if (!ground.round) return Math.abs(x) + body.hx <= body.a + touch && Math.abs(y) + body.hy <= body.b + touch
  if (body.a <= 0) return false
  if (!body.circle) return ((Math.abs(x) + body.hx) / body.a) ** 2 + ((Math.abs(y) + body.hy) / body.b) ** 2 <= 1 + touch
  if (body.a === body.b) return Math.hypot(x, y) + body.hx <= body.a + touch
  if ((x / body.a) ** 2 + (y / body.b) ** 2 > 1) return false
  const near = nearestOnEllipse(body.a, body.b, x, y)
  return Math.hypot(near.x - x, near.y - y) >= body.hx - touch
}

/** Distance of a point from a box around the origin, and 0 inside it. */
export function outsideBox(dx: number, dy: number, hx: number, hy: number): number {
  return Math.hypot(Math.max(0, Math.abs(dx) - hx), Math.max(0, Math.abs(dy) - hy))
}

/** Have two bodies the clearance between them? */
export function apart(p: Body, px: number, py: number, q: Body, qx: number, qy: number): boolean {
  const dx = px - qx
  const dy = py - qy
  if (p.circle && q.circle) return dx * dx + dy * dy >= (p.hx + q.hx - touch) ** 2
  if (!p.circle && !q.circle) return Math.abs(dx) >= p.hx + q.hx - touch || Math.abs(dy) >= p.hy + q.hy - touch
  // The half clearance is part of both half sizes, so the rounded corner is measured from the bare box.
  const [round, box] = p.circle ? [p, q] : [q, p]
  return outsideBox(dx, dy, box.bx, box.by) >= round.hx + (box.hx - box.bx) - touch
}

/** Is a body off what is kept free? No clearance is asked there. */
export function clearOfKept(ground: Ground, body: Body, x: number, y: number): boolean {
  for (const box of ground.keptFree) {
    const dx = x - (box.x0 + box.x1) / 2
    const dy = y - (box.y0 + box.y1) / 2
    const hx = (box.x1 - box.x0) / 2
    const hy = (box.y1 - box.y0) / 2
    if (
      body.circle
        ? outsideBox(dx, dy, hx, hy) < body.bx - touch
        : Math.abs(dx) < hx + body.bx - touch && Math.abs(dy) < hy + body.by - touch
    )
      return false
  }
  return true
}
