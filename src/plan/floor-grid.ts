import {type Ground, groundOf} from '../scale/floor-shape.js'
import type {FloorRoom} from '../scale/types.js'
import type {PlanProblem} from './types.js'

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
export function floorGrid(problem: Pick<PlanProblem, 'floor' | 'mouth' | 'vaultHeight' | 'ashBed'>): FloorGrid {
  const key = JSON.stringify([problem.floor, problem.mouth, problem.vaultHeight, problem.ashBed])
  const found = grids.get(key)
  if (found) return found
  const made = newGrid(problem)
  if (grids.size >= 4) grids.clear()
  grids.set(key, made)
  return made
}

function newGrid(problem: Pick<PlanProblem, 'floor' | 'mouth' | 'vaultHeight' | 'ashBed'>): FloorGrid {
  const room: FloorRoom = {
    floor: problem.floor,
    mouth: problem.mouth,
    vaultHeight: problem.vaultHeight ?? 1.5 * problem.mouth.height,
    ...(problem.ashBed === undefined ? {} : {rules: {ashBed: problem.ashBed}}),
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

/** What is told of a place is a multiple of this, m. */
export const ROUNDED = 1e-4

/** A length as it is told. */
export function rounded(v: number): number {
  return Math.round(v / ROUNDED) / (1 / ROUNDED)
}

/**
 * Which third of the depth a point lies in: 0 back, 1 middle, 2 mouth. The point is taken as it is told, so that what is set in where the
 * plan has it lies in the same third when the day is planned again.
 */
export function zoneAt(grid: FloorGrid, y: number): 0 | 1 | 2 {
  const told = rounded(y)
  return told > grid.depth / 6 ? 0 : told < -grid.depth / 6 ? 2 : 1
}
