import {type Body, bodiesOf, type Stood, together} from './floor-bodies.js'
import {type Ground, nearestOnEllipse} from './floor-shape.js'
import {generator} from './random-numbers.js'
import type {FloorItem} from './types.js'

/**
 * Packing a tight load: all vessels start small and overlapping and are pushed off each other and off the wall while they grow. Lanes are
 * minded no further than that those drawn last are drawn backwards. The same input gives the same floor.
 */

/** Push overlapping vessels off each other and off the walls while they grow to full size. Null where they do not come free. */
export function pushApart(
  ground: Ground,
  standing: readonly Stood[],
  items: readonly FloorItem[],
  start: number,
  rounds: number,
  byDepth: boolean,
): Stood[] | null {
  const random = generator(0x9e37 + start * 7919 + items.length)
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
