import type {FloorShape, OvenSpec} from './types.js'

/** Exponent of Thomsen's formula for the area of an ellipsoid, right to about 1 %. */
const THOMSEN = 1.6075

/** Sizes that the heat model needs, SI. */
export interface OvenGeometry {
  readonly floorArea: number
  /** Inner face of the vault without the mouth. */
  readonly vaultArea: number
  readonly mouthArea: number
  readonly volume: number
  /** Floor area of the back, middle and mouth third of the depth. */
  readonly zoneArea: readonly [number, number, number]
  /** Area of the vault `x` metres out from its inner face, by its inner area: a shell widens outwards. */
  readonly vaultSpread: (x: number) => number
}

/**
 * Depth (mouth to back) and width of a floor.
 *
 * @returns metres
 */
export function floorSize(floor: FloorShape): {depth: number; width: number} {
  return floor.shape === 'round' ? {depth: floor.diameter, width: floor.diameter} : {depth: floor.depth, width: floor.width}
}

/**
 * Area of a floor.
 *
 * @returns m²
 */
export function floorArea(floor: FloorShape): number {
  const {depth, width} = floorSize(floor)
  return floor.shape === 'rectangle' ? depth * width : (Math.PI / 4) * depth * width
}

/**
 * Half the area of an ellipsoid with semi-axes a, b, c (Thomsen's approximation).
 */
function halfEllipsoid(a: number, b: number, c: number): number {
  const p = THOMSEN
  return 2 * Math.PI * (((a * b) ** p + (a * c) ** p + (b * c) ** p) / 3) ** (1 / p)
}

/** Half the perimeter of an ellipse with semi-axes a, b (Ramanujan). */
function halfEllipse(a: number, b: number): number {
  return (Math.PI / 2) * (3 * (a + b) - Math.sqrt((3 * a + b) * (a + 3 * b)))
}

/**
 * Areas and volume of an oven. A round or oval floor carries half an ellipsoid; a rectangle carries a barrel with two upright ends.
 *
 * @returns areas m², volume m³
 */
export function ovenGeometry(oven: OvenSpec): OvenGeometry {
  const {depth, width} = floorSize(oven.floor)
  const h = oven.vaultHeight
  const floor = floorArea(oven.floor)
  const barrel = oven.floor.shape === 'rectangle'
  const shell = (x: number): number =>
    barrel
      ? halfEllipse(width / 2 + x, h + x) * (depth + 2 * x) + Math.PI * (width / 2 + x) * (h + x)
      : halfEllipsoid(depth / 2 + x, width / 2 + x, h + x)
  const mouth = oven.mouth.width * oven.mouth.height
  const inner = shell(0)
  // Circle and ellipse cut at a third of the depth: acos(1/3) − √8/9, by π.
  const end = barrel ? 1 / 3 : (Math.acos(1 / 3) - Math.sqrt(8) / 9) / Math.PI
  return {
    floorArea: floor,
    vaultArea: Math.max(inner - mouth, inner * 0.3),
    mouthArea: mouth,
    volume: barrel ? (Math.PI / 4) * width * h * depth : (2 / 3) * Math.PI * (depth / 2) * (width / 2) * h,
    zoneArea: [floor * end, floor * (1 - 2 * end), floor * end],
    vaultSpread: (x) => shell(x) / inner,
  }
}
