import type {FloorShape} from '../oven/types.js'
import type {FloorRoom, Placed, PlacementFault, Vessel} from './types.js'

/**
 * The check of a placement, for the plan's checker. It shares no code with the packer (`floor.ts` and what that draws in): outlines here
 * are convex polygons with a rounding radius, told apart by separating axes, and the floor is tested by points along each outline.
 */
interface Point {
  readonly x: number
  readonly y: number
}

/** The points within `radius` of a convex polygon (or of a point, or a segment). */
interface Outline {
  readonly corners: readonly Point[]
  readonly radius: number
}

/** When a vessel is on the floor, in minutes of one clock. */
export interface Stay {
  readonly in: number
  readonly out: number
}

/** What the checker forgives, metres: a millimetre is less than a peel is sure of. */
const forgiven = 0.001

interface Standing {
  readonly placed: Placed
  readonly vessel: Pick<Vessel, 'footprint' | 'height'>
  readonly outline: Outline
  readonly stay: Stay
}

/**
 * Every rule of the floor that a placement breaks.
 *
 * - *overlap*: two vessels there at the same time stand closer than the clearance;
 * - *off the floor*: an outline with half the clearance leaves the floor;
 * - *kept free*: a vessel stands on the strip inside the mouth or on the ash bed;
 * - *mouth*, *vault*: it does not pass the one, or the other is too low over it (half an ellipse springing from the floor);
 * - *reach*: another stands in its lane (the strip its outline sweeps on the straight way to the nearest point of the opening it can
 *   pass) when it is set in or drawn.
 *
 * @param room the oven's floor, mouth, vault and what is kept free (metres)
 * @param placed vessels of every load that may meet on the floor
 * @param vessels footprint and height by dish id
 * @param stay when each stands there; without it, all together and drawn together
 * @returns faults in the order of `placed`; empty where the placement keeps every rule
 */
export function placementFaults(
  room: FloorRoom,
  placed: readonly Placed[],
  vessels: ReadonlyMap<string, Pick<Vessel, 'footprint' | 'height'>>,
  stay: (vessel: Placed) => Stay = () => ({in: 0, out: 1}),
): PlacementFault[] {
  const faults: PlacementFault[] = []
  const clearance = room.rules?.clearance ?? 0.025
  const standing: Standing[] = []
  for (const one of placed) {
    const vessel = vessels.get(one.dish)
    if (vessel === undefined) {
      faults.push({rule: 'unknown vessel', vessels: [named(one)], by: 0, reason: `no dish is called “${one.dish}”`})
      continue
    }
    standing.push({placed: one, vessel, outline: outlineOf(one, vessel), stay: stay(one)})
  }
  const areas = keptFree(room)
  for (const one of standing) {
    const who = `${one.placed.dish} ${one.placed.number}`
    const off = outOf(room.floor, one.outline, clearance / 2)
    if (off > forgiven) faults.push(fault('off the floor', [one], off, `${who} is ${cm(off)} over the edge of the floor`))
    for (const area of areas) {
      const deep = depth(one.outline, area.outline)
      if (deep > forgiven) faults.push(fault('kept free', [one], deep, `${who} stands ${cm(deep)} on ${area.name}`))
    }
    const foot = one.vessel.footprint
    const wide = (foot.shape === 'circle' ? foot.diameter : Math.min(foot.length, foot.width)) - room.mouth.width
    if (wide > forgiven) faults.push(fault('mouth', [one], wide, `${who} is ${cm(wide)} too wide for the mouth`))
    const high = one.vessel.height - room.mouth.height
    if (high > forgiven) faults.push(fault('mouth', [one], high, `${who} is ${cm(high)} too high for the mouth`))
    const low = one.vessel.height - vaultOver(room, one.outline)
    if (low > 2 * forgiven) faults.push(fault('vault', [one], low, `the vault is ${cm(low)} too low over ${who}`))
  }
  for (let i = 0; i < standing.length; i++) {
    for (let j = i + 1; j < standing.length; j++) {
      const p = standing[i]!
      const q = standing[j]!
      if (Math.max(p.stay.in, q.stay.in) >= Math.min(p.stay.out, q.stay.out)) continue
      const gap = distance(p.outline, q.outline)
      if (gap < clearance - forgiven) {
        const by = clearance - gap
        faults.push(
          fault(
            'overlap',
            [p, q],
            by,
            `${p.placed.dish} ${p.placed.number} and ${q.placed.dish} ${q.placed.number} stand ${cm(by)} too close`,
          ),
        )
      }
      for (const [front, behind] of [
        [p, q],
        [q, p],
      ] as const) {
        const why = front.stay.in < behind.stay.in ? 'set in' : front.stay.out > behind.stay.out ? 'drawn' : null
        if (why === null) continue
        const deep = depth(laneOf(room, behind), front.outline)
        if (deep > forgiven) {
          const [f, b] = [front.placed, behind.placed]
          faults.push(
            fault('reach', [front, behind], deep, `${f.dish} ${f.number} stands in the way when ${b.dish} ${b.number} is ${why}`),
          )
        }
      }
    }
  }
  return faults
}

const named = (placed: Placed): {dish: string; number: number} => ({dish: placed.dish, number: placed.number})
const cm = (metres: number): string => `${(metres * 100).toFixed(1)} cm`
const fault = (rule: PlacementFault['rule'], who: readonly Standing[], by: number, reason: string): PlacementFault => ({
  rule,
  vessels: who.map((one) => named(one.placed)),
  by,
  reason,
})

function outlineOf(placed: Placed, vessel: Pick<Vessel, 'footprint'>): Outline {
  const foot = vessel.footprint
  if (foot.shape === 'circle') return {corners: [{x: placed.x, y: placed.y}], radius: foot.diameter / 2}
  const c = Math.cos(placed.turn)
  const s = Math.sin(placed.turn)
  const corner = (u: number, v: number): Point => ({
    x: placed.x + (c * u * foot.length - s * v * foot.width) / 2,
    y: placed.y + (s * u * foot.length + c * v * foot.width) / 2,
  })
  return {corners: [corner(1, 1), corner(-1, 1), corner(-1, -1), corner(1, -1)], radius: 0}
}

/** The y of the opening: the front edge of a rectangle; the chord as long as the mouth is wide on a round or oval floor. */
function openingLine(room: FloorRoom): number {
  const {floor, mouth} = room
  if (floor.shape === 'rectangle') return -floor.depth / 2
  const [width, depth] = floor.shape === 'round' ? [floor.diameter, floor.diameter] : [floor.width, floor.depth]
  const sine = Math.min(1, mouth.width / width)
  return (-depth / 2) * Math.cos(Math.asin(sine))
}

function laneOf(room: FloorRoom, one: Standing): Outline {
  const {corners, radius} = one.outline
  const reach = Math.max(...corners.map((p) => p.x - one.placed.x)) + radius
  const free = room.mouth.width / 2 - reach
  const x = free <= 0 ? 0 : Math.sign(one.placed.x) * Math.min(Math.abs(one.placed.x), free)
  const y = Math.min(one.placed.y, openingLine(room))
  const moved = corners.map((p) => ({x: p.x + x - one.placed.x, y: p.y + y - one.placed.y}))
  return {corners: hull([...corners, ...moved]), radius}
}

/** Convex hull, anticlockwise (Andrew's monotone chain). */
function hull(points: readonly Point[]): Point[] {
  const sorted = [...points].sort((p, q) => p.x - q.x || p.y - q.y)
  const chain = (list: readonly Point[]): Point[] => {
    const out: Point[] = []
    for (const p of list) {
      while (out.length >= 2) {
        const [a, b] = [out[out.length - 2]!, out[out.length - 1]!]
        if ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x) > 1e-15) break
        out.pop()
      }
      out.push(p)
    }
    out.pop()
    return out
  }
  const both = [...chain(sorted), ...chain(sorted.reverse())]
  return both.length === 0 ? [points[0]!] : both
}

const edges = (corners: readonly Point[]): Array<readonly [Point, Point]> => {
  if (corners.length === 1) return [[corners[0]!, corners[0]!]]
  return corners.map((p, i) => [p, corners[(i + 1) % corners.length]!] as const)
}

function pointToEdge(p: Point, [a, b]: readonly [Point, Point]): number {
  const length = (b.x - a.x) ** 2 + (b.y - a.y) ** 2
  const t = length === 0 ? 0 : Math.max(0, Math.min(1, ((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / length))
  return Math.hypot(a.x + t * (b.x - a.x) - p.x, a.y + t * (b.y - a.y) - p.y)
}

/** How far two convex polygons would have to be moved to come apart; negative or zero where an axis separates them. */
function penetration(p: readonly Point[], q: readonly Point[]): number {
  let least = Number.POSITIVE_INFINITY
  for (const [a, b] of [...edges(p), ...edges(q)]) {
    const length = Math.hypot(b.x - a.x, b.y - a.y)
    if (length === 0) continue
    const n = {x: (b.y - a.y) / length, y: (a.x - b.x) / length}
    const span = (list: readonly Point[]): [number, number] => {
      const along = list.map((c) => c.x * n.x + c.y * n.y)
      return [Math.min(...along), Math.max(...along)]
    }
    const [pl, ph] = span(p)
    const [ql, qh] = span(q)
    least = Math.min(least, ph - ql, qh - pl)
  }
  return least === Number.POSITIVE_INFINITY ? 0 : least
}

/** Distance between the bare polygons, 0 where they meet. */
function cornersApart(p: readonly Point[], q: readonly Point[]): number {
  if (p.length > 1 || q.length > 1) if (penetration(p, q) > 0) return 0
  let least = Number.POSITIVE_INFINITY
  for (const c of p) for (const e of edges(q)) least = Math.min(least, pointToEdge(c, e))
  for (const c of q) for (const e of edges(p)) least = Math.min(least, pointToEdge(c, e))
  return least
}

const distance = (p: Outline, q: Outline): number => cornersApart(p.corners, q.corners) - p.radius - q.radius

/** How deep two outlines overlap; 0 or less where they do not. */
function depth(p: Outline, q: Outline): number {
  const apart = cornersApart(p.corners, q.corners)
  if (apart > 0) return p.radius + q.radius - apart
  return penetration(p.corners, q.corners) + p.radius + q.radius
}

function keptFree(room: FloorRoom): Array<{name: string; outline: Outline}> {
  const {floor} = room
  const [width, deep] = floor.shape === 'round' ? [floor.diameter, floor.diameter] : [floor.width, floor.depth]
  const box = (x0: number, x1: number, y0: number, y1: number): Outline => ({
    corners: [
      {x: x0, y: y0},
      {x: x1, y: y0},
      {x: x1, y: y1},
      {x: x0, y: y1},
    ],
    radius: 0,
  })
  const out: Array<{name: string; outline: Outline}> = []
  const strip = room.rules?.mouthFree ?? 0.1
  const half = Math.min(room.mouth.width, width) / 2
  if (strip > 0) out.push({name: 'the strip inside the mouth', outline: box(-half, half, -deep / 2, openingLine(room) + strip)})
  const bed = room.rules?.ashBed
  if (bed !== undefined && bed.width > 0) {
    const [w, d] = [width / 2, deep / 2]
    const outline =
      bed.side === 'back'
        ? box(-w, w, d - bed.width, d)
        : bed.side === 'left'
          ? box(-w, bed.width - w, -d, d)
          : box(w - bed.width, w, -d, d)
    out.push({name: 'the ash bed', outline})
  }
  return out
}

/** Points all along an outline grown by `more`. */
function along(outline: Outline, more: number): Point[] {
  const r = outline.radius + more
  if (outline.corners.length === 1) {
    const c = outline.corners[0]!
    return Array.from({length: 180}, (_, i) => ({
      x: c.x + r * Math.cos((i * Math.PI) / 90),
      y: c.y + r * Math.sin((i * Math.PI) / 90),
    }))
  }
  // A box keeps its square corners when it grows: each corner goes out along both its edges.
  const n = outline.corners.length
  return outline.corners.map((c, i) => {
    const before = outline.corners[(i + n - 1) % n]!
    const after = outline.corners[(i + 1) % n]!
    const u = Math.hypot(c.x - before.x, c.y - before.y)
    const v = Math.hypot(c.x - after.x, c.y - after.y)
    return {
      x: c.x + (r * (c.x - before.x)) / u + (r * (c.x - after.x)) / v,
      y: c.y + (r * (c.y - before.y)) / u + (r * (c.y - after.y)) / v,
    }
  })
}

/** How far an outline grown by `more` reaches over the edge of the floor; 0 or less inside. */
function outOf(floor: FloorShape, outline: Outline, more: number): number {
  let worst = Number.NEGATIVE_INFINITY
  for (const p of along(outline, more)) {
    if (floor.shape === 'rectangle') worst = Math.max(worst, Math.abs(p.x) - floor.width / 2, Math.abs(p.y) - floor.depth / 2)
    else {
      const [a, b] = floor.shape === 'round' ? [floor.diameter / 2, floor.diameter / 2] : [floor.width / 2, floor.depth / 2]
      const share = Math.hypot(p.x / a, p.y / b)
      // Along the ray from the centre; at most a little more than the distance to the edge.
      worst = Math.max(worst, share === 0 ? -Math.min(a, b) : Math.hypot(p.x, p.y) * (1 - 1 / share))
    }
  }
  return worst
}

/** The least height of the vault over an outline. */
function vaultOver(room: FloorRoom, outline: Outline): number {
  const {floor} = room
  let least = room.vaultHeight
  for (const p of along(outline, -forgiven)) {
    const x = p.x / ((floor.shape === 'round' ? floor.diameter : floor.width) / 2)
    const y = floor.shape === 'rectangle' ? 0 : p.y / ((floor.shape === 'round' ? floor.diameter : floor.depth) / 2)
    least = Math.min(least, room.vaultHeight * Math.sqrt(Math.max(0, 1 - x * x - y * y)))
  }
  return least
}
