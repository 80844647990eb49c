import type {VesselShape, VesselSize} from '../receipt/vessel.js'
import type {Vessel} from './types.js'

/**
 * Figures of each shape. Common practice, no source, unless stated.
 *
 * `full`: what it holds to the brim as a share of the cylinder or box of its inside measures: tins narrow downwards. From published
 * US tables of tins, brim-full, in cups (from memory): 9 × 1 1/2 in round 6, 8 × 8 × 2 in square 8, 9 × 9 × 2 in 10, 13 × 9 × 2 in
 * 14–15, 9 × 5 × 3 in loaf 8.
 * `slope`: how far a pie plate's side runs inwards for each metre it goes down.
 * `wall`: thickness of wall and rim. `above`: what stands above the rim: a crown, a lid.
 */
interface ShapeFigures {
  readonly full: number
  readonly wall: number
  readonly above: number
}
const shapes: Readonly<Record<VesselShape, ShapeFigures>> = {
  round: {full: 0.92, wall: 0.004, above: 0.01},
  square: {full: 0.9, wall: 0.004, above: 0.01},
  oblong: {full: 0.9, wall: 0.004, above: 0.01},
  loaf: {full: 0.86, wall: 0.004, above: 0.03},
  'pie plate': {full: 1, wall: 0.008, above: 0.02},
  crock: {full: 0.9, wall: 0.01, above: 0.02},
  'free-standing': {full: 1, wall: 0, above: 0},
  sheet: {full: 1, wall: 0.003, above: 0},
}
/** A pie plate's side runs in by 0.9 of its depth: 9 × 1 1/2 in then holds 4.8 cups; published tables give 4 to 5 (from memory). */
const plateSlope = 0.9
/** Thickness of small goods on a sheet, metres. */
const goodsThick = 0.025

/** Thickness of its wall and bottom, m. */
export const wallOf = ({shape}: VesselSize): number => shapes[shape].wall

/** What lies on it lies as thick as ever. */
export const isSheet = ({shape}: VesselSize): boolean => shape === 'sheet'

/** A loaf that stands without a tin. */
export const isFree = ({shape}: VesselSize): boolean => shape === 'free-standing'

/** What is wide for what it holds: a loaf in it is no loaf's shape, but a slab. */
export const isFlat = ({shape}: VesselSize): boolean =>
  shape === 'round' || shape === 'square' || shape === 'oblong' || shape === 'pie plate' || shape === 'sheet'

/** Area at the top, m². */
export function topArea(size: VesselSize): number {
  return size.across !== undefined ? (Math.PI / 4) * size.across ** 2 : (size.length ?? 0) * (size.width ?? 0)
}

/** What it holds to the brim, m³: prism or cylinder, frustum for a pie plate, spherical cap for a free-standing loaf. */
export function brimVolume(size: VesselSize): number {
  if (size.shape === 'pie plate' && size.across !== undefined) {
    const top = size.across / 2
    const bottom = Math.max(0, top - plateSlope * size.height)
    return ((Math.PI * size.height) / 3) * (top * top + top * bottom + bottom * bottom)
  }
  if (isFree(size) && size.across !== undefined) {
    const r = size.across / 2
    return ((Math.PI * size.height) / 6) * (3 * r * r + size.height * size.height)
  }
  return topArea(size) * size.height * shapes[size.shape].full
}

/**
 * The same in another weight, every side grown as the cube root: a free-standing loaf, for the dough is the same.
 */
export function spreadOf(size: VesselSize, massRatio: number): VesselSize {
  const k = Math.cbrt(massRatio)
  const {shape, across, length = 0, width = 0, height} = size
  return {shape, ...(across === undefined ? {length: length * k, width: width * k} : {across: across * k}), height: height * k}
}

/**
 * How a vessel stands on the floor and how thick its filling is.
 *
 * @param size inside measures
 * @param fill share of its height that is filled before baking (0–1); ignored for loaves without a tin and for sheets
 * @param name what to call it
 */
export function vesselOf(size: VesselSize, fill: number, name: string): Vessel {
  const figures = shapes[size.shape]
  const grown = 2 * figures.wall
  const footprint: Vessel['footprint'] =
    size.across !== undefined
      ? {shape: 'circle', diameter: size.across + grown}
      : {
          shape: 'rectangle',
          length: Math.max(size.length ?? 0, size.width ?? 0) + grown,
          width: Math.min(size.length ?? 0, size.width ?? 0) + grown,
        }
  const narrow = size.across ?? Math.min(size.length ?? 0, size.width ?? 0)
  const deep = isSheet(size) ? goodsThick : isFree(size) ? size.height : size.height * fill
  return {
    name,
    footprint,
    height: size.height + figures.above,
    halfThickness: Math.min(deep, narrow) / 2,
    millilitres: isSheet(size) ? 0 : brimVolume(size) * 1e6 * (isFree(size) ? 1 : fill),
  }
}
