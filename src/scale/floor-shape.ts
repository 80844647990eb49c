import type {FloorShape} from '../oven/types.js'
import type {FloorRoom, FloorRules, Placed} from './types.js'

/**
 * What is kept free where the oven does not say. Common practice, no source: an inch between vessels, so that heat comes round each
 * and a peel can lift it; four inches inside the mouth, where the door draws cold air over the floor.
 */
export const usualRules: FloorRules = {clearance: 0.025, mouthFree: 0.1}

/** A rectangle parallel to the floor's axes, metres. */
export interface Box {
  readonly x0: number
  readonly x1: number
  readonly y0: number
  readonly y1: number
}

/** A floor as the packer sees it: half-axes, the opening, and what is kept free. Origin at the centre, y towards the back, metres. */
export interface Ground {
  readonly round: boolean
  /** Half the width and half the depth. */
  readonly a: number
  readonly b: number
  readonly vaultHeight: number
  readonly mouth: {readonly width: number; readonly height: number}
  /** y of the opening: where the mouth's full width first meets the floor. */
  readonly opening: number
  readonly keptFree: readonly Box[]
  readonly rules: FloorRules
}

/** Half the width and half the depth of a floor, metres. */
export function halfAxes(floor: FloorShape): {a: number; b: number} {
  return floor.shape === 'round' ? {a: floor.diameter / 2, b: floor.diameter / 2} : {a: floor.width / 2, b: floor.depth / 2}
}

/** Area of a floor, m². */
export function floorArea(floor: FloorShape): number {
  const {a, b} = halfAxes(floor)
  return floor.shape === 'rectangle' ? 4 * a * b : Math.PI * a * b
}

/** Area of the floor that vessels may use: without the strip at the mouth and the ash bed, m². */
export function usableArea(room: FloorRoom): number {
  const ground = groundOf(room)
  const free = ground.keptFree.reduce((sum, box) => sum + boxOnFloor(ground, box), 0)
  return Math.max(0, floorArea(room.floor) - free)
}

/** Area of the part of a box that lies on the floor, by strips (midpoint rule, 64 strips), m². */
function boxOnFloor(ground: Ground, box: Box): number {
  const y0 = Math.max(box.y0, -ground.b)
  const y1 = Math.min(box.y1, ground.b)
  if (y1 <= y0) return 0
  let area = 0
  const h = (y1 - y0) / 64
  for (let i = 0; i < 64; i++) {
    const y = y0 + (i + 0.5) * h
    const half = ground.round ? ground.a * Math.sqrt(Math.max(0, 1 - (y / ground.b) ** 2)) : ground.a
    area += h * Math.max(0, Math.min(box.x1, half) - Math.max(box.x0, -half))
  }
  return area
}

/** The floor with its opening and what is kept free. */
export function groundOf(room: FloorRoom): Ground {
  const rules = {...usualRules, ...room.rules}
  const {a, b} = halfAxes(room.floor)
  const round = room.floor.shape !== 'rectangle'
  const half = Math.min(room.mouth.width / 2, a)
  const opening = round ? -b * Math.sqrt(1 - (half / a) ** 2) : -b
  const keptFree: Box[] = []
  const bed = rules.ashBed
  const wide = bed?.side === 'back' ? 0 : (bed?.width ?? 0)
  // Where a wide mouth opens on the ash bed too, that is the bed's: what is kept free twice is no less floor for it.
  const strip = {
    x0: bed?.side === 'left' ? Math.max(-half, wide - a) : -half,
    x1: bed?.side === 'right' ? Math.min(half, a - wide) : half,
  }
  if (rules.mouthFree > 0 && strip.x1 > strip.x0) keptFree.push({...strip, y0: -b, y1: opening + rules.mouthFree})
  if (bed !== undefined && bed.width > 0) {
    if (bed.side === 'back') keptFree.push({x0: -a, x1: a, y0: b - bed.width, y1: b})
    else if (bed.side === 'left') keptFree.push({x0: -a, x1: -a + bed.width, y0: -b, y1: b})
    else keptFree.push({x0: a - bed.width, x1: a, y0: -b, y1: b})
  }
  return {round, a, b, vaultHeight: room.vaultHeight, mouth: room.mouth, opening, keptFree, rules}
}

/**
 * The share of the floor's width (and, under a dome, of its depth) over which the vault is at least `height` high: the vault is taken
 * as half an ellipse springing from the floor, x²/a² + z²/H² = 1. An oven with upright walls has more room.
 */
export function headroom(ground: Ground, height: number): number {
  return height >= ground.vaultHeight ? 0 : Math.sqrt(1 - (height / ground.vaultHeight) ** 2)
}

/** The third of the floor's depth a centre lies in. */
export function zoneOf(floor: FloorShape, y: number): Placed['zone'] {
  const {b} = halfAxes(floor)
  return y > b / 3 ? 'back' : y < -b / 3 ? 'mouth' : 'middle'
}

/**
 * The point of an ellipse (half-axes a, b) nearest to a point, by fixed steps on the centre of curvature (the evolute); four steps
 * give it to 1e-6 of the axes for the ovals of ovens (b/a from 0.4 to 2.5).
 */
export function nearestOnEllipse(a: number, b: number, x: number, y: number): {x: number; y: number} {
  const px = Math.abs(x)
  const py = Math.abs(y)
  if (a === b) {
    const d = Math.hypot(px, py)
    return d === 0 ? {x: 0, y: b} : {x: (x / d) * a, y: (y / d) * a}
  }
  let tx = Math.SQRT1_2
  let ty = Math.SQRT1_2
  for (let i = 0; i < 5; i++) {
    const ex = ((a * a - b * b) / a) * tx ** 3
    const ey = ((b * b - a * a) / b) * ty ** 3
    const r = Math.hypot(a * tx - ex, b * ty - ey)
    const q = Math.hypot(px - ex, py - ey)
    if (q === 0) break
    tx = Math.min(1, Math.max(0, (((px - ex) * r) / q + ex) / a))
    ty = Math.min(1, Math.max(0, (((py - ey) * r) / q + ey) / b))
    const t = Math.hypot(tx, ty)
    tx /= t
    ty /= t
  }
  return {x: Math.sign(x || 1) * a * tx, y: Math.sign(y || 1) * b * ty}
}
