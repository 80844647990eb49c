import {packFloor} from '../scale/floor.js'
import {type Ground, groundOf, headroom, nearestOnEllipse} from '../scale/floor-shape.js'
import type {Dish, FloorItem, FloorRoom, Placed, Vessel} from '../scale/types.js'
import {zoneNames} from './rules.js'
import {generator} from './search.js'
import type {PlanProblem} from './types.js'

/**
 * Places on the floor through the day. Origin at the floor's centre, y towards the back, the mouth at the least y; metres.
 * The rules of standing and of lanes are those of `scale/floor`; this placer works through the day, load by load, on a lattice.
 */

/** The floor as the placer sees it. */
export interface FloorGrid {
  readonly ground: Ground
  readonly room: FloorRoom
  readonly depth: number
  readonly width: number
  /** Usable area, m²: the floor less what is kept free. */
  readonly area: number
  /** Usable area of back, middle and mouth, m²: thirds of the depth. */
  readonly zones: readonly [number, number, number]
  readonly step: number
}

/** A vessel that stands, or will stand, on the floor. `from` and `to` are the clock times it is set in and drawn. */
export interface Standing {
  readonly dish: string
  readonly number: number
  readonly vessel: Vessel
  readonly x: number
  readonly y: number
  readonly turn: number
  readonly from: number
  readonly to: number
}

/** Vessels to place at one opening of the door. */
export interface ToPlace {
  readonly dish: Dish
  readonly first: number
  readonly count: number
  readonly from: number
  readonly to: number
  /** Zone the model chose: 0 back … 2 mouth, 3 across. */
  readonly where: number
  /** Zones in which its heat is right. */
  readonly fits: readonly [boolean, boolean, boolean]
}

/** Area of the floor nearer the mouth than `y`, less what is kept free, m² (strips, midpoint rule). */
function areaBelow(ground: Ground, y: number): number {
  const strips = 96
  const top = Math.min(ground.b, y)
  const h = (top + ground.b) / strips
  if (h <= 0) return 0
  let area = 0
  for (let i = 0; i < strips; i++) {
    const at = -ground.b + (i + 0.5) * h
    const half = ground.round ? ground.a * Math.sqrt(Math.max(0, 1 - (at / ground.b) ** 2)) : ground.a
    let free = 2 * half
    for (const box of ground.keptFree)
      if (at > box.y0 && at < box.y1) free -= Math.max(0, Math.min(half, box.x1) - Math.max(-half, box.x0))
    area += h * Math.max(0, free)
  }
  return area
}

const grids = new Map<string, FloorGrid>()

/** Prepare a floor; the last few are kept, since a day is planned on the same floor many times. */
export function floorGrid(problem: Pick<PlanProblem, 'floor' | 'mouth' | 'vaultHeight'>): FloorGrid {
  const key = JSON.stringify([problem.floor, problem.mouth, problem.vaultHeight])
  const found = grids.get(key)
  if (found) return found
  const made = newGrid(problem)
  if (grids.size >= 4) grids.clear()
  grids.set(key, made)
  return made
}

function newGrid(problem: Pick<PlanProblem, 'floor' | 'mouth' | 'vaultHeight'>): FloorGrid {
  const room: FloorRoom = {
    floor: problem.floor,
    mouth: problem.mouth,
    vaultHeight: problem.vaultHeight ?? 1.5 * problem.mouth.height,
  }
  const ground = groundOf(room)
  const total = areaBelow(ground, ground.b)
  const mouth = areaBelow(ground, -ground.b / 3)
  const middle = areaBelow(ground, ground.b / 3) - mouth
  const depth = 2 * ground.b
  const width = 2 * ground.a
  return {
    ground,
    room,
    depth,
    width,
    area: total,
    zones: [total - mouth - middle, middle, mouth],
    step: Math.max(0.01, Math.min(depth, width) / 60),
  }
}

/** Which third of the depth a point lies in: 0 back, 1 middle, 2 mouth. */
export function zoneAt(grid: FloorGrid, y: number): 0 | 1 | 2 {
  return y > grid.depth / 6 ? 0 : y < -grid.depth / 6 ? 2 : 1
}

/** Half extents of a vessel across and along the depth, m, when turned by 0 or a quarter. */
function halves(vessel: Vessel, turned: boolean): {hx: number; hy: number; round: boolean} {
  const f = vessel.footprint
  if (f.shape === 'circle') return {hx: f.diameter / 2, hy: f.diameter / 2, round: true}
  return turned ? {hx: f.width / 2, hy: f.length / 2, round: false} : {hx: f.length / 2, hy: f.width / 2, round: false}
}

interface Body {
  readonly x: number
  readonly y: number
  readonly hx: number
  readonly hy: number
  readonly round: boolean
}

/** True when a body stands on the floor, under enough vault and clear of what is kept free. */
function inside(ground: Ground, b: Body, height: number): boolean {
  const share = headroom(ground, height)
  const a0 = ground.a * share
  const b0 = ground.round ? ground.b * share : ground.b
  const c = ground.rules.clearance / 2
  const hx = b.hx + c
  const hy = b.hy + c
  for (const box of ground.keptFree) {
    const dx = Math.max(0, box.x0 - b.x, b.x - box.x1)
    const dy = Math.max(0, box.y0 - b.y, b.y - box.y1)
    if (b.round ? Math.hypot(dx, dy) < b.hx - 1e-9 : dx < b.hx - 1e-9 && dy < b.hy - 1e-9) return false
  }
  if (!ground.round) return Math.abs(b.x) + hx <= a0 + 1e-9 && Math.abs(b.y) + hy <= b0 + 1e-9
  if (a0 <= 0) return false
  if (!b.round) return ((Math.abs(b.x) + hx) / a0) ** 2 + ((Math.abs(b.y) + hy) / b0) ** 2 <= 1 + 1e-9
  if (a0 === b0) return Math.hypot(b.x, b.y) + hx <= a0 + 1e-9
  if ((b.x / a0) ** 2 + (b.y / b0) ** 2 > 1) return false
  const near = nearestOnEllipse(a0, b0, b.x, b.y)
  return Math.hypot(near.x - b.x, near.y - b.y) >= hx - 1e-9
}

/** Free distance between two bodies, m; negative where they overlap. */
function gap(a: Body, b: Body): number {
  if (a.round && b.round) return Math.hypot(a.x - b.x, a.y - b.y) - a.hx - b.hx
  const dx = Math.abs(a.x - b.x)
  const dy = Math.abs(a.y - b.y)
  if (!a.round && !b.round) return Math.max(dx - a.hx - b.hx, dy - a.hy - b.hy)
  const circle = a.round ? a : b
  const box = a.round ? b : a
  const ox = Math.max(0, dx - box.hx)
  const oy = Math.max(0, dy - box.hy)
  if (ox === 0 && oy === 0) return -circle.hx
  return Math.hypot(ox, oy) - circle.hx
}

/**
 * True when `other` stands in the lane of `body`: the strip its footprint sweeps straight out, or slantwise to the nearest point of the
 * opening it passes through (the rule of `scale/floor`).
 */
function blocks(ground: Ground, other: Body, body: Body): boolean {
  const play = Math.max(0, ground.mouth.width / 2 - body.hx)
  const exitX = Math.min(play, Math.max(-play, body.x))
  const exitY = Math.min(body.y, ground.opening)
  if (other.y - other.hy >= body.y + body.hy) return false
  const ax = body.x
  const ay = body.y
  const dx = exitX - ax
  const dy = exitY - ay
  if (other.round && body.round) {
    const length2 = dx * dx + dy * dy
    const t = length2 < 1e-12 ? 0 : Math.max(0, Math.min(1, ((other.x - ax) * dx + (other.y - ay) * dy) / length2))
    return Math.hypot(other.x - (ax + t * dx), other.y - (ay + t * dy)) < body.hx + other.hx
  }
  // Boxes: the segment against the box grown by the other's half size; for a circle the grown corner is a little generous.
  const hx = other.hx + body.hx
  const hy = other.hy + body.hy
  let t0 = 0
  let t1 = 1
  for (const [p, d, c, h] of [
    [ax, dx, other.x, hx],
    [ay, dy, other.y, hy],
  ] as const) {
    if (Math.abs(d) < 1e-12) {
      if (Math.abs(p - c) >= h) return false
      continue
    }
    let a = (c - h - p) / d
    let b = (c + h - p) / d
    if (a > b) [a, b] = [b, a]
    t0 = Math.max(t0, a)
    t1 = Math.min(t1, b)
    if (t0 >= t1) return false
  }
  return true
}

function bodyOf(s: Standing): Body {
  const h = halves(s.vessel, Math.abs(Math.sin(s.turn)) > 0.5)
  return {x: s.x, y: s.y, ...h}
}

const fits = new WeakMap<FloorGrid, Map<string, readonly Body[]>>()

/** Candidate bodies for a vessel, deepest first. */
function candidates(grid: FloorGrid, vessel: Vessel): readonly Body[] {
  let mine = fits.get(grid)
  if (!mine) {
    mine = new Map()
    fits.set(grid, mine)
  }
  const f = vessel.footprint
  const key = `${vessel.height} ${f.shape === 'circle' ? f.diameter : `${f.length} ${f.width}`}`
  const found = mine.get(key)
  if (found) return found
  const out: Body[] = []
  const wall = grid.ground.rules.clearance / 2
  const turns = f.shape === 'circle' || f.length === f.width ? [false] : [true, false]
  for (const turned of turns) {
    const h = halves(vessel, turned)
    // Rows are laid off from the edge the vessel can reach, so that equal vessels close up exactly.
    const top = grid.depth / 2 - wall - h.hy
    const side = grid.width / 2 - wall - h.hx
    const rows = Math.floor((2 * top) / grid.step + 1e-9)
    const columns = Math.floor((2 * side) / grid.step + 1e-9)
    for (let i = 0; i <= rows; i++)
      for (let j = 0; j <= columns; j++) {
        const body: Body = {x: -side + j * grid.step, y: top - i * grid.step, ...h}
        if (inside(grid.ground, body, vessel.height)) out.push(body)
      }
    // The exact centre line, for floors on which one more row depends on it.
    for (let i = 0; i <= rows; i++) {
      const body: Body = {x: 0, y: top - i * grid.step, ...h}
      if (inside(grid.ground, body, vessel.height)) out.push(body)
    }
  }
  mine.set(key, out)
  return out
}

const counts = new WeakMap<FloorGrid, Map<string, number>>()

/** How many of one vessel the placer can stand on the empty floor; 0 where not even one fits or it does not pass the mouth. */
export function mostOnFloor(grid: FloorGrid, vessel: Vessel): number {
  let mine = counts.get(grid)
  if (!mine) {
    mine = new Map()
    counts.set(grid, mine)
  }
  const f = vessel.footprint
  const key = `${vessel.height} ${f.shape === 'circle' ? f.diameter : `${f.length} ${f.width}`}`
  const found = mine.get(key)
  if (found !== undefined) return found
  let best = 0
  for (const style of strictStyles) {
    const chosen: Body[] = []
    const bodies = candidates(grid, vessel)
    const clear = grid.ground.rules.clearance - 1e-9
    let last = 0
    next: for (const i of ordered(grid, vessel, style, 3)) {
      const c = bodies[i]!
      // What stood in the way of the last candidate most often stands in the way of the next.
      if (chosen.length > 0 && gap(c, chosen[last]!) < clear) continue
      for (let o = 0; o < chosen.length; o++)
        if (gap(c, chosen[o]!) < clear) {
          last = o
          continue next
        }
      chosen.push(c)
      last = chosen.length - 1
    }
    best = Math.max(best, chosen.length)
  }
  mine.set(key, best)
  return best
}

/** Ways of filling a floor, tried in turn: row by row from the back, round the wall, from the left side, towards the mouth. */
const styles = ['rows', 'wall', 'left', 'front', 'sides'] as const
type Style = (typeof styles)[number]
const strictStyles: readonly Style[] = ['rows', 'wall', 'sides']

function scorer(grid: FloorGrid, style: Style): (b: Body, where: number) => number {
  const {depth, width} = grid
  const deep = (b: Body): number => -b.y / depth
  const wall = (b: Body): number =>
    !grid.ground.round ? -Math.max(Math.abs(b.x) / width, Math.abs(b.y) / depth) : -Math.hypot(b.x / width, b.y / depth) * 2
  const zone = (b: Body, where: number): number => (where > 2 ? 0 : Math.abs(zoneAt(grid, b.y) - where) * 10)
  switch (style) {
    case 'rows':
      return (b, w) => zone(b, w) + deep(b) + b.x * 0.01
    case 'wall':
      return (b, w) => zone(b, w) + wall(b) + deep(b) * 0.1 + b.x * 0.01
    case 'left':
      return (b, w) => zone(b, w) + b.x / width + deep(b) * 0.1
    case 'front':
      return (b, w) => zone(b, w) - deep(b) + Math.abs(b.x) * 0.1
    case 'sides':
      return (b, w) => zone(b, w) - Math.abs(b.x) / width + deep(b) * 0.3
  }
}

/**
 * Place one load among what already stands. Nothing that stands is moved; nothing is put where it blocks the way of something drawn
 * earlier; every new vessel can be carried to its place.
 *
 * @param standing Vessels in the oven after the draws of this opening.
 * @param load What is set in now.
 * @returns The new vessels, or the dish for which no place was found and how many of it found one.
 */
export function placeLoad(
  grid: FloorGrid,
  standing: readonly Standing[],
  load: readonly ToPlace[],
): {ok: true; placed: Standing[]} | {ok: false; dish: string; first: number; found: number} {
  let worst = {dish: load[0]?.dish.id ?? '', first: load[0]?.first ?? 1, found: 0}
  let score = -1
  // Latest drawn first, so that it gets the depth; large before small.
  const bySize = (a: ToPlace, b: ToPlace): number => footprintArea(b.dish.vessel) - footprintArea(a.dish.vessel)
  const orders: ((a: ToPlace, b: ToPlace) => number)[] = [
    (a, b) => b.to - a.to || a.where - b.where || bySize(a, b) || compare(a.dish.id, b.dish.id),
    (a, b) => b.to - a.to || bySize(a, b) || a.where - b.where || compare(a.dish.id, b.dish.id),
    (a, b) => bySize(a, b) || b.to - a.to || compare(a.dish.id, b.dish.id),
  ]
  const opens = new Map(load.map((item) => [item, openFor(grid, standing, item)]))
  for (const [item, open] of opens) {
    if (open.free.every((word) => word === 0)) return {ok: false, dish: item.dish.id, first: item.first, found: 0}
  }
  const tried = new Set<string>()
  for (const strict of [true, false])
    for (const order of orders) {
      const sorted = [...load].sort(order)
      const key = `${strict} ${sorted.map((l) => load.indexOf(l)).join(' ')}`
      if (tried.has(key)) continue
      tried.add(key)
      for (const style of strict ? strictStyles : styles) {
        const result = tryPlace(
          grid,
          sorted.map((l) => opens.get(l)!),
          style,
          strict,
        )
        if (result.ok) return result
        if (result.total > score) {
          score = result.total
          worst = {dish: result.dish, first: result.first, found: result.found}
        }
      }
    }
  const pushed = packed(grid, standing, load)
  return pushed ? {ok: true, placed: pushed} : {ok: false, ...worst}
}

/** The slower packer of `scale/floor`, which can push vessels apart: for loads the lattice cannot close up. */
function packed(grid: FloorGrid, standing: readonly Standing[], load: readonly ToPlace[]): Standing[] | null {
  // Pushing apart is slow and only pays on a floor filled at once: elsewhere the lattice has the last word.
  if (standing.length > 0 || load.length > 2) return null
  const key = load.map((l) => [l.dish.id, l.first, l.count, l.to - l.from, l.where, l.fits].join(' ')).join(';')
  let mine = packings.get(grid)
  if (!mine) {
    mine = new Map()
    packings.set(grid, mine)
  }
  let found = mine.get(key)
  if (found === undefined) {
    found = packedNow(grid, load)
    mine.set(key, found)
  }
  const shift = load[0]!.from
  return found === null ? null : found.map((v) => ({...v, from: v.from + shift, to: v.to + shift}))
}

const packings = new WeakMap<FloorGrid, Map<string, Standing[] | null>>()

function packedNow(grid: FloorGrid, load: readonly ToPlace[]): Standing[] | null {
  const items: FloorItem[] = []
  const start = load[0]!.from
  for (const l of load)
    for (let i = 0; i < l.count; i++)
      items.push({
        dish: l.dish.id,
        number: l.first + i,
        footprint: l.dish.vessel.footprint,
        height: l.dish.vessel.height,
        in: 0,
        out: l.to - start,
        place: l.where > 2 ? 'any' : zoneNames[l.where as 0 | 1 | 2],
      })
  const result = packFloor({...grid.room, items}, {effort: items.length > 60 ? 'quick' : 'full', moves: false})
  if ('conflict' in result) return null
  const out: Standing[] = []
  for (const p of result.placed) {
    const l = load.find((i) => i.dish.id === p.dish && p.number >= i.first && p.number < i.first + i.count)
    if (!l) continue
    if (!l.fits[zoneAt(grid, p.y)]) return null
    out.push({dish: p.dish, number: p.number, vessel: l.dish.vessel, x: p.x, y: p.y, turn: p.turn, from: 0, to: l.to - start})
  }
  return out
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0
}

function footprintArea(v: Vessel): number {
  return v.footprint.shape === 'circle' ? v.footprint.diameter ** 2 : v.footprint.length * v.footprint.width
}

/** For one dish of a load: which candidates what already stands leaves open. */
interface Open {
  readonly item: ToPlace
  readonly bodies: readonly Body[]
  /** A bit a candidate. */
  readonly free: Int32Array
}

function openFor(grid: FloorGrid, standing: readonly Standing[], item: ToPlace): Open {
  const seats = seatsOf(grid, item.dish.vessel)
  const free = inZones(seats, item.fits)
  for (const s of standing) bar(free, barred(grid, seats, bodyStanding(s), true, s.to < item.to))
  return {item, bodies: seats.bodies, free}
}

/** The `nth` vessel of an item (from 0) where a body stands. */
function standingAt(item: ToPlace, nth: number, body: Body): Standing {
  const {vessel} = item.dish
  const f = vessel.footprint
  return {
    dish: item.dish.id,
    number: item.first + nth,
    vessel,
    x: body.x,
    y: body.y,
    turn: f.shape === 'rectangle' && body.hx !== f.length / 2 ? Math.PI / 2 : 0,
    from: item.from,
    to: item.to,
  }
}

function tryPlace(
  grid: FloorGrid,
  load: readonly Open[],
  style: Style,
  strict: boolean,
): {ok: true; placed: Standing[]} | {ok: false; dish: string; first: number; found: number; total: number} {
  const fresh: {body: Body; to: number}[] = []
  const placed: Standing[] = []
  const clear = grid.ground.rules.clearance - 1e-9
  for (const {item, bodies, free} of load) {
    let found = 0
    next: for (const i of ordered(grid, item.dish.vessel, style, item.where)) {
      if (found === item.count) break
      if (!isSet(free, i)) continue
      const c = bodies[i]!
      if (strict && item.where <= 2 && zoneAt(grid, c.y) !== item.where) continue
      for (const o of fresh) if (gap(c, o.body) < clear) continue next
      for (const o of fresh) {
        if (o.to > item.to && blocks(grid.ground, o.body, c)) continue next
        if (o.to < item.to && blocks(grid.ground, c, o.body)) continue next
      }
      fresh.push({body: c, to: item.to})
      placed.push(standingAt(item, found, c))
      found++
    }
    if (found < item.count) return {ok: false, dish: item.dish.id, first: item.first, found, total: placed.length}
  }
  return {ok: true, placed}
}

/** Orders in which the vessels of a whole day are given their places. */
const dayOrders: readonly ((a: ToPlace, b: ToPlace) => number)[] = [
  (a, b) => a.where - b.where || b.to - b.from - (a.to - a.from),
  (a, b) => b.to - b.from - (a.to - a.from) || a.where - b.where,
  (a, b) => footprintArea(b.dish.vessel) * b.count - footprintArea(a.dish.vessel) * a.count,
  (a, b) => b.to - a.to || a.from - b.from,
]

/**
 * Place a whole day at once: what stays long or stands deep is given its place with what comes later in mind, which load by load cannot.
 * What finds no place is put first in the next trial (squeaky wheel: Joslin & Clements, J. Artificial Intelligence Research 10 (1999)
 * 353–373).
 *
 * @param fixed Vessels already in the oven, which stay where they are.
 * @param known Places of an earlier plan, kept where they still serve.
 * @returns The places, and the dishes that found none in the best trial.
 */
export function placeDay(
  grid: FloorGrid,
  fixed: readonly Standing[],
  day: readonly ToPlace[],
  known: ReadonlyMap<ToPlace, readonly Placed[]> = new Map(),
): {placed: Standing[]; refused: ToPlace[]} {
  let best: {placed: Standing[]; refused: ToPlace[]} | null = null
  // A day planned again has its places: it is soon seen whether they will do, and the plan can move instead.
  const again = known.size > 0
  if (again) {
    // Where each was meant to stand comes first: a day planned again should not be laid out anew. What finds no place is given one
    // before the others, which then keep theirs where they still can.
    let items = [...day].sort((a, b) => (known.has(b) ? 1 : 0) - (known.has(a) ? 1 : 0) || dayOrders[0]!(a, b) || a.from - b.from)
    for (let i = 0; i < mended; i++) {
      const result = tryDay(grid, fixed, items, dayStyles[i % dayStyles.length]!, known)
      if (result.refused.length === 0) return result
      if (!best || result.refused.length < best.refused.length) best = result
      items = [...result.refused, ...items.filter((item) => !result.refused.includes(item))]
    }
  }
  for (const order of dayOrders) {
    let items = [...day].sort((a, b) => order(a, b) || a.from - b.from || compare(a.dish.id, b.dish.id) || a.first - b.first)
    for (const style of again ? dayStyles.slice(0, 2) : dayStyles) {
      const result = tryDay(grid, fixed, items, style)
      if (result.refused.length === 0) return result
      if (!best || result.refused.length < best.refused.length) best = result
      items = [...result.refused, ...items.filter((i) => !result.refused.includes(i))]
    }
  }
  // Other orders, disturbed at random (a fixed seed), the refused always first.
  const random = generator(97)
  const pick = (k: number): number => Math.floor(random() * k)
  for (let i = 0; i < (again ? disturbed / 4 : disturbed) && best; i++) {
    const refused = best.refused
    const rest = day.filter((item) => !refused.includes(item))
    rest.sort(
      (a, b) => dayOrders[i % dayOrders.length]!(a, b) || a.from - b.from || compare(a.dish.id, b.dish.id) || a.first - b.first,
    )
    for (let swap = 0; swap < 3 && rest.length > 1; swap++) {
      const a = pick(rest.length)
      const b = pick(rest.length)
      const t = rest[a]!
      rest[a] = rest[b]!
      rest[b] = t
    }
    const at = pick(1 + Math.min(3, rest.length))
    const result = tryDay(grid, fixed, [...rest.slice(0, at), ...refused, ...rest.slice(at)], styles[pick(styles.length)]!)
    if (result.refused.length < best.refused.length) best = result
    if (best.refused.length === 0) break
  }
  return best ?? {placed: [], refused: []}
}

/** Trials that keep the places of an earlier plan. */
const mended = 12
/** Disturbed orders tried before a dish is refused. */
const disturbed = 40
const dayStyles: readonly Style[] = ['rows', 'wall', 'sides', 'rows', 'left']

function tryDay(
  grid: FloorGrid,
  fixed: readonly Standing[],
  items: readonly ToPlace[],
  style: Style,
  known: ReadonlyMap<ToPlace, readonly Placed[]> = new Map(),
): {placed: Standing[]; refused: ToPlace[]} {
  const clear = grid.ground.rules.clearance - 1e-9
  const placed: Standing[] = []
  const refused: ToPlace[] = []
  const bodies = new Map<Standing, Body>(fixed.map((f) => [f, bodyStanding(f)]))
  for (const item of items) {
    const seats = seatsOf(grid, item.dish.vessel)
    // What shares its time, and who passes whom: `passes`, it is carried in or out while the other stands; `isPassed`, the other is.
    const near: {body: Body; passes: boolean; isPassed: boolean}[] = []
    for (const [o, body] of bodies)
      if (o.from < item.to && item.from < o.to)
        near.push({body, passes: o.from < item.from || item.to < o.to, isPassed: item.from < o.from || o.to < item.to})
    const mine: Standing[] = []
    const chosen: Body[] = []
    const before = known.get(item)?.map((p) => bodyKept(p, item.dish.vessel))
    const free = (c: Body): boolean =>
      item.fits[zoneAt(grid, c.y)] &&
      near.every(
        ({body, passes, isPassed}) =>
          gap(c, body) >= clear && !(passes && blocks(grid.ground, body, c)) && !(isPassed && blocks(grid.ground, c, body)),
      )
    if (before !== undefined && before.length === item.count && before.every(free))
      for (const c of before) {
        chosen.push(c)
        mine.push(standingAt(item, mine.length, c))
      }
    else {
      const open = inZones(seats, item.fits)
      for (const {body, passes, isPassed} of near) bar(open, barred(grid, seats, body, passes, isPassed))
      for (const i of ordered(grid, item.dish.vessel, style, item.where)) {
        if (mine.length === item.count) break
        if (!isSet(open, i)) continue
        const c = seats.bodies[i]!
        chosen.push(c)
        mine.push(standingAt(item, mine.length, c))
        if (mine.length < item.count) bar(open, barred(grid, seats, c, false, false))
      }
    }
    if (mine.length < item.count) {
      refused.push(item)
      continue
    }
    mine.forEach((m, i) => {
      placed.push(m)
      bodies.set(m, chosen[i]!)
    })
  }
  return {placed, refused}
}

/** The places of one vessel as rows of bits. */
interface Seats {
  readonly bodies: readonly Body[]
  readonly words: number
  /** Those in the back, the middle and the mouth. */
  readonly zones: readonly Int32Array[]
  /** Those that a body bars, by who is carried past whom: the same few bodies come again and again. */
  readonly barred: Map<Body, (Int32Array | undefined)[]>
}

const seatings = new WeakMap<readonly Body[], Seats>()
/** Bodies remembered for one vessel. */
const MOST = 3000

function seatsOf(grid: FloorGrid, vessel: Vessel): Seats {
  const bodies = candidates(grid, vessel)
  const found = seatings.get(bodies)
  if (found) return found
  const words = (bodies.length + 31) >> 5
  const zones = [0, 1, 2].map(() => new Int32Array(words))
  bodies.forEach((b, i) => {
    zones[zoneAt(grid, b.y)]![i >> 5]! |= 1 << (i & 31)
  })
  const made: Seats = {bodies, words, zones, barred: new Map()}
  seatings.set(bodies, made)
  return made
}

/** The places in the parts of the floor whose heat is right. */
function inZones(seats: Seats, fits: readonly boolean[]): Int32Array {
  const open = new Int32Array(seats.words)
  for (let z = 0; z < 3; z++) if (fits[z]) for (let w = 0; w < open.length; w++) open[w]! |= seats.zones[z]![w]!
  return open
}

function bar(open: Int32Array, bits: Int32Array): void {
  for (let w = 0; w < open.length; w++) open[w]! &= ~bits[w]!
}

function isSet(bits: Int32Array, i: number): boolean {
  return ((bits[i >> 5]! >> (i & 31)) & 1) === 1
}

/**
 * The places that a body bars.
 *
 * @param passes The vessel is carried in or out while the other stands.
 * @param isPassed The other is carried in or out while the vessel stands.
 */
function barred(grid: FloorGrid, seats: Seats, other: Body, passes: boolean, isPassed: boolean): Int32Array {
  const how = (passes ? 1 : 0) + (isPassed ? 2 : 0)
  let mine = seats.barred.get(other)
  if (!mine) {
    if (seats.barred.size >= MOST) seats.barred.clear()
    mine = []
    seats.barred.set(other, mine)
  }
  const found = mine[how]
  if (found) return found
  const clear = grid.ground.rules.clearance - 1e-9
  const bits = new Int32Array(seats.words)
  const {bodies} = seats
  for (let i = 0; i < bodies.length; i++) {
    const c = bodies[i]!
    if (gap(c, other) < clear || (passes && blocks(grid.ground, other, c)) || (isPassed && blocks(grid.ground, c, other)))
      bits[i >> 5]! |= 1 << (i & 31)
  }
  mine[how] = bits
  return bits
}

const bodiesStanding = new WeakMap<Standing, Body>()
const bodiesKept = new WeakMap<Placed, Body>()

/** One body for a vessel that stands, so that what it bars is reckoned once. */
function bodyStanding(s: Standing): Body {
  let body = bodiesStanding.get(s)
  if (!body) {
    body = bodyOf(s)
    bodiesStanding.set(s, body)
  }
  return body
}

function bodyKept(p: Placed, vessel: Vessel): Body {
  let body = bodiesKept.get(p)
  if (!body) {
    body = {x: p.x, y: p.y, ...halves(vessel, Math.abs(Math.sin(p.turn)) > 0.5)}
    bodiesKept.set(p, body)
  }
  return body
}

/** Every scorer's value lies above −`SHIFT`; values nearer than 1/`FINE` are alike. */
const SHIFT = 4
const FINE = 1e9
const orderings = new WeakMap<FloorGrid, Map<string, Int32Array>>()

/** Numbers of the candidates in the order one way of filling takes them. */
function ordered(grid: FloorGrid, vessel: Vessel, style: Style, where: number): Int32Array {
  let mine = orderings.get(grid)
  if (!mine) {
    mine = new Map()
    orderings.set(grid, mine)
  }
  const f = vessel.footprint
  const key = `${style} ${where} ${vessel.height} ${f.shape === 'circle' ? f.diameter : `${f.length} ${f.width}`}`
  const found = mine.get(key)
  if (found) return found
  const value = scorer(grid, style)
  const bodies = candidates(grid, vessel)
  const {length} = bodies
  // Numbers sort many times faster than bodies: the value in thousand-millionths, then the candidate's own number.
  const keys = new Float64Array(length)
  for (let i = 0; i < length; i++) keys[i] = Math.round((value(bodies[i]!, where) + SHIFT) * FINE) * length + i
  keys.sort()
  const list = Int32Array.from(keys, (k) => k % length)
  mine.set(key, list)
  return list
}

/** The vessel as the plan shows it. */
export function placedOf(grid: FloorGrid, s: Standing): Placed {
  return {dish: s.dish, number: s.number, x: round3(s.x), y: round3(s.y), turn: s.turn, zone: zoneNames[zoneAt(grid, s.y)]}
}

function round3(v: number): number {
  return Math.round(v * 1e4) / 1e4
}
