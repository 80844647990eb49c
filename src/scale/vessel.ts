import type {VesselShape, VesselSize} from '../receipt/vessel.js'
import {brimVolume} from '../receipt/vessel-capacity.js'
import type {Vessel} from './types.js'

/**
 * Figures of each shape. Common practice, no source, unless stated.
 *
 * `wall`: thickness of wall and rim. `above`: what stands above the rim: a crown, a lid.
 */
interface ShapeFigures {
  readonly wall: number
  readonly above: number
}
const shapes: Readonly<Record<VesselShape, ShapeFigures>> = {
  round: {wall: 0.004, above: 0.01},
  square: {wall: 0.004, above: 0.01},
  oblong: {wall: 0.004, above: 0.01},
  loaf: {wall: 0.004, above: 0.03},
  'pie plate': {wall: 0.008, above: 0.02},
  crock: {wall: 0.01, above: 0.02},
  'free-standing': {wall: 0, above: 0},
  sheet: {wall: 0.003, above: 0},
}
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
