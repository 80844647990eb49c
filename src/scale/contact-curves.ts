import type {Body, Stood} from './floor-bodies.js'
import type {Ground} from './floor-shape.js'

/** Where a body's centre can be when it touches something: another vessel, a box, the wall. A vessel stands closest packed where two meet. */

/** The closed curve of centres at which a body touches something, at t in [0, 1). */
export interface Contact {
  readonly at: (t: number) => {x: number; y: number}
  /** Where to look along it: evenly, and at its corners, in order from 0 to 1. */
  readonly stops: readonly number[]
}

/** Samples of a contact curve; corners between samples are found by bisection (`best-place.ts`). */
const samples = 40
const evenly: readonly number[] = Array.from({length: samples + 1}, (_, i) => i / samples)

/** Where a body stands at its clearance from another. */
export function aroundVessel(body: Body, other: Stood): Contact {
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
export function aroundBox(cx: number, cy: number, hx: number, hy: number, r: number): Contact {
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

/** Where a body stands at its half clearance from the wall. */
export function alongWall(ground: Ground, body: Body): Contact {
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
