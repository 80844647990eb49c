import {type Ground, groundOf, halfAxes, headroom, usableArea} from '../scale/floor-shape.js'
import type {Dish, Placed} from '../scale/types.js'
import type {Report} from './check.js'
import type {Load, Plan, PlanProblem} from './types.js'

/** The checker's own reading of the floor: where vessels stand, how far apart, and what is in whose way. Metres. */

/** Metres that are rounding, not a break. */
export const METRES = 0.002

const grounds = new WeakMap<PlanProblem, Ground>()

/** The floor as it is. */
export function groundIn(problem: PlanProblem): Ground {
  const known = grounds.get(problem)
  if (known) return known
  const {floor, mouth, vaultHeight, ashBed} = problem
  const made = groundOf({
    floor,
    mouth,
    vaultHeight: vaultHeight ?? 1.5 * mouth.height,
    ...(ashBed === undefined ? {} : {rules: {ashBed}}),
  })
  grounds.set(problem, made)
  return made
}

/** Floor that vessels may use, m². */
export function areaOf({floor, mouth, vaultHeight, ashBed}: PlanProblem): number {
  return usableArea({
    floor,
    mouth,
    vaultHeight: vaultHeight ?? 1.5 * mouth.height,
    ...(ashBed === undefined ? {} : {rules: {ashBed}}),
  })
}

/** A footprint as a polygon or a circle. */
export type Outline =
  | {readonly kind: 'disc'; readonly x: number; readonly y: number; readonly r: number}
  | {readonly kind: 'box'; readonly points: readonly [number, number][]}

export function outline(dish: Dish, placed: Placed): Outline {
  const f = dish.vessel.footprint
  if (f.shape === 'circle') return {kind: 'disc', x: placed.x, y: placed.y, r: f.diameter / 2}
  const c = Math.cos(placed.turn)
  const s = Math.sin(placed.turn)
  const points = (
    [
      [-1, -1],
      [1, -1],
      [1, 1],
      [-1, 1],
    ] as const
  ).map(([i, j]): [number, number] => {
    const u = (i * f.length) / 2
    const v = (j * f.width) / 2
    return [placed.x + u * c - v * s, placed.y + u * s + v * c]
  })
  return {kind: 'box', points}
}

function pointToSegment(px: number, py: number, a: readonly [number, number], b: readonly [number, number]): number {
  const dx = b[0] - a[0]
  const dy = b[1] - a[1]
  const l2 = dx * dx + dy * dy
  const t = l2 === 0 ? 0 : Math.max(0, Math.min(1, ((px - a[0]) * dx + (py - a[1]) * dy) / l2))
  return Math.hypot(px - a[0] - t * dx, py - a[1] - t * dy)
}

function holds(points: readonly [number, number][], x: number, y: number): boolean {
  let sign = 0
  for (let i = 0; i < points.length; i++) {
    const a = points[i]!
    const b = points[(i + 1) % points.length]!
    const cross = (b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0])
    if (Math.abs(cross) < 1e-12) continue
    if (sign === 0) sign = Math.sign(cross)
    else if (Math.sign(cross) !== sign) return false
  }
  return true
}

/** Least distance between two outlines, m; 0 or less where they meet. Boxes standing square to each other are measured along the axes. */
export function distance(a: Outline, b: Outline): number {
  if (a.kind === 'disc' && b.kind === 'disc') return Math.hypot(a.x - b.x, a.y - b.y) - a.r - b.r
  if (a.kind === 'disc') return discToBox(a, b as Extract<Outline, {kind: 'box'}>)
  if (b.kind === 'disc') return discToBox(b, a)
  let best = Number.POSITIVE_INFINITY
  for (const [p, q] of [
    [a.points, b.points],
    [b.points, a.points],
  ] as const)
    for (const [x, y] of p) {
      if (holds(q, x, y)) return -0.001
      for (let i = 0; i < q.length; i++) best = Math.min(best, pointToSegment(x, y, q[i]!, q[(i + 1) % q.length]!))
    }
  const centre = (o: readonly [number, number][]): [number, number] => [
    o.reduce((s, p) => s + p[0], 0) / o.length,
    o.reduce((s, p) => s + p[1], 0) / o.length,
  ]
  const ca = centre(a.points)
  const cb = centre(b.points)
  if (holds(b.points, ca[0], ca[1]) || holds(a.points, cb[0], cb[1])) return -0.001
  // Crossed boxes with no corner inside one another.
  for (let i = 0; i < a.points.length; i++)
    for (let j = 0; j < b.points.length; j++)
      if (crosses(a.points[i]!, a.points[(i + 1) % 4]!, b.points[j]!, b.points[(j + 1) % 4]!)) return -0.001
  return best
}

function crosses(
  a: readonly [number, number],
  b: readonly [number, number],
  c: readonly [number, number],
  d: readonly [number, number],
): boolean {
  const side = (p: readonly [number, number], q: readonly [number, number], r: readonly [number, number]): number =>
    (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0])
  return side(a, b, c) * side(a, b, d) < -1e-15 && side(c, d, a) * side(c, d, b) < -1e-15
}

function discToBox(d: Extract<Outline, {kind: 'disc'}>, b: Extract<Outline, {kind: 'box'}>): number {
  if (holds(b.points, d.x, d.y)) return -d.r
  let best = Number.POSITIVE_INFINITY
  for (let i = 0; i < b.points.length; i++)
    best = Math.min(best, pointToSegment(d.x, d.y, b.points[i]!, b.points[(i + 1) % b.points.length]!))
  return best - d.r
}

/** One vessel on the floor: it passes the mouth, stands inside the wall under the vault, and its zone is the one it stands in. */
export function checkStanding(problem: PlanProblem, dish: Dish, placed: Placed, at: number, bad: Report): void {
  const ground = groundIn(problem)
  const f = dish.vessel.footprint
  const across = f.shape === 'circle' ? f.diameter : Math.min(f.length, f.width)
  if (across > problem.mouth.width + METRES)
    bad('mouth', dish.id, at, across - problem.mouth.width, `${dish.title}: wider than the mouth`)
  if (dish.vessel.height > problem.mouth.height + METRES)
    bad('mouth', dish.id, at, dish.vessel.height - problem.mouth.height, `${dish.title}: higher than the mouth`)
  const {a, b} = halfAxes(problem.floor)
  const share = headroom(ground, dish.vessel.height)
  const o = outline(dish, placed)
  // The rim of the vessel, point by point, against the wall at the vessel's height.
  const rim: [number, number][] =
    o.kind === 'box'
      ? [...o.points]
      : Array.from({length: 72}, (_, i): [number, number] => [
          o.x + o.r * Math.cos((i * Math.PI) / 36),
          o.y + o.r * Math.sin((i * Math.PI) / 36),
        ])
  let worst = 0
  for (const [x, y] of rim) {
    const u = Math.abs(x) / (a * (ground.round || share === 0 ? share || 1e-9 : share))
    const v = Math.abs(y) / (ground.round ? b * (share || 1e-9) : b)
    const over = ground.round ? (Math.hypot(u, v) - 1) * Math.min(a, b) : Math.max((u - 1) * a, (v - 1) * b)
    worst = Math.max(worst, over)
  }
  if (worst > METRES)
    bad('floor', dish.id, at, worst, `${dish.title} ${placed.number}: ${Math.round(worst * 1000)} mm into the wall`)
  for (const box of ground.keptFree)
    if (rim.some(([x, y]) => x > box.x0 + METRES && x < box.x1 - METRES && y > box.y0 + METRES && y < box.y1 - METRES))
      bad('floor', dish.id, at, 0, `${dish.title} ${placed.number}: on what is kept free`)
  const zone = placed.y > b / 3 ? 'back' : placed.y < -b / 3 ? 'mouth' : 'middle'
  if (zone !== placed.zone && Math.min(Math.abs(placed.y - b / 3), Math.abs(placed.y + b / 3)) > METRES)
    bad('zone', dish.id, at, 0, `${dish.title} ${placed.number}: at the ${zone}, not the ${placed.zone}`)
}

/**
 * True when `front` meets the strip `behind` sweeps on its way out, walked in steps of 5 mm; where the two are further apart than that, as
 * many steps at once as cannot bring them together.
 */
export function inWay(problem: PlanProblem, front: Dish, frontAt: Placed, behind: Dish, behindAt: Placed): boolean {
  const ground = groundIn(problem)
  const f = behind.vessel.footprint
  const sideways = f.shape === 'circle' ? f.diameter / 2 : Math.abs(Math.sin(behindAt.turn)) > 0.5 ? f.width / 2 : f.length / 2
  const play = Math.max(0, problem.mouth.width / 2 - sideways)
  const goalX = Math.max(-play, Math.min(play, behindAt.x))
  const goalY = Math.min(behindAt.y, ground.opening)
  const length = Math.hypot(goalX - behindAt.x, goalY - behindAt.y)
  const n = Math.max(1, Math.ceil(length / 0.005))
  const still = outline(front, frontAt)
  for (let i = 0; i <= n; ) {
    const x = behindAt.x + ((goalX - behindAt.x) * i) / n
    const y = behindAt.y + ((goalY - behindAt.y) * i) / n
    const apart = distance(outline(behind, {...behindAt, x, y}), still)
    if (apart < -METRES / 2) return true
    i += length === 0 ? 1 : Math.max(1, Math.floor((apart * n) / length))
  }
  return false
}

/** Share of a plain lattice of a vessel that is taken to stand on the floor at least, however it is laid. */
const LATTICE = 0.75

/** How much floor vessels of each dish can be reckoned with. */
export class Shares {
  /** Floor that vessels may use, m². */
  readonly area: number
  readonly #problem: PlanProblem
  /** Most vessels of each dish in one load. */
  readonly #together = new Map<string, number>()
  readonly #each = new Map<Dish, readonly [number, number]>()

  constructor(problem: PlanProblem, {loads}: Pick<Plan, 'loads'>) {
    this.area = areaOf(problem)
    this.#problem = problem
    for (const {placed} of loads) {
      const here = new Map<string, number>()
      for (const {dish} of placed) here.set(dish, (here.get(dish) ?? 0) + 1)
      for (const [id, count] of here) this.#together.set(id, Math.max(count, this.#together.get(id) ?? 1))
    }
  }

  /**
   * The least and most floor, m², of a set-in: what its vessels cover, and their share of a floor full of them, on which as many stand as a load
   * of the plan has, or as a plain lattice of them does.
   */
  of(dish: Dish, {count}: Pick<Load['dishes'][number], 'count'>): readonly [number, number] {
    let each = this.#each.get(dish)
    if (!each) {
      const f = dish.vessel.footprint
      const own = f.shape === 'circle' ? (Math.PI * f.diameter ** 2) / 4 : f.length * f.width
      const most = Math.max(1, LATTICE * latticeOf(this.#problem, dish), this.#together.get(dish.id) ?? 1)
      each = [own, this.area / most]
      this.#each.set(dish, each)
    }
    return [Math.min(this.area, count * each[0]), Math.min(this.area, count * each[1])]
  }
}

/** Vessels of a dish in a plain lattice on the floor. */
function latticeOf(problem: PlanProblem, {vessel: {footprint: f, height}}: Dish): number {
  const ground = groundIn(problem)
  const {a, b} = halfAxes(problem.floor)
  const [wide, deep] = (f.shape === 'circle' ? [f.diameter, f.diameter] : [f.width, f.length]).map(
    (size) => size + ground.rules.clearance,
  ) as [number, number]
  const share = headroom(ground, height)
  const inside = (x: number, y: number): boolean =>
    ground.round ? Math.hypot(x / a, y / b) <= share : Math.abs(x) <= a * share && Math.abs(y) <= b
  let count = 0
  for (let x = -a; x + wide <= a; x += wide)
    for (let y = -b; y + deep <= b; y += deep) {
      const stands = inside(x, y) && inside(x + wide, y) && inside(x, y + deep) && inside(x + wide, y + deep)
      if (stands && ground.keptFree.every((box) => x + wide <= box.x0 || x >= box.x1 || y + deep <= box.y0 || y >= box.y1))
        count++
    }
  return count
}
