import {readVessel, type VesselShape, type VesselSize} from '../receipt/vessel.js'
import {shapeName} from './own-vessel.js'

/** Vessels with their sizes, as a day's line or front matter writes them. */

export const INCH = 0.0254
export const CENTIMETRE = 0.01

/** Sizes are read to the millimetre, a third of an eighth of an inch. */
const NEARLY = 0.3
const EIGHTHS = ['', ' 1/8', ' 1/4', ' 3/8', ' 1/2', ' 5/8', ' 3/4', ' 7/8']
const written = (metres: number, inches: boolean): string => {
  if (!inches) return `${Math.floor((2 * metres) / CENTIMETRE + NEARLY) / 2} cm`
  const eighths = Math.floor((8 * metres) / INCH + NEARLY)
  return `${Math.floor(eighths / 8)}${EIGHTHS[eighths % 8]} in`
}

const called: Readonly<Record<VesselShape, readonly [string, string]>> = {
  round: ['round tin', 'round tins'],
  square: ['square tin', 'square tins'],
  oblong: ['oblong tin', 'oblong tins'],
  loaf: ['loaf tin', 'loaf tins'],
  'pie plate': ['pie plate', 'pie plates'],
  crock: ['crock', 'crocks'],
  'free-standing': ['free-standing loaf', 'free-standing loaves'],
  sheet: ['sheet', 'sheets'],
}

/** The sides of a vessel at its top, the longer first, m. */
const sidesOf = ({shape, across, length = 0, width = 0}: VesselSize): number[] =>
  across !== undefined ? [across] : shape === 'square' ? [length] : [Math.max(length, width), Math.min(length, width)]

/** A vessel as a day's line names it: “crock 9 in x 5 in”, “crocks 9 in x 5 in” of several. */
export function vesselWritten(size: VesselSize, inches: boolean, several: boolean): string {
  const text = (sizes: readonly number[]): string =>
    `${called[size.shape][several ? 1 : 0]} ${sizes.map((one) => written(one, inches)).join(' x ')}`
  const sides = sidesOf(size)
  const short = text(sides)
  const read = readVessel(short)
  // Its depth goes without saying where it is the usual one.
  if (size.shape === 'free-standing' || (read.ok && Math.abs(read.value.height - size.height) < 1e-6)) return short
  return text([...sides, size.height])
}

/** A vessel with all its sizes, as front matter states it: “square 9 in x 2 in”, “free-standing loaf 24 cm”. */
export function vesselName(size: VesselSize, inches: boolean): string {
  const sizes = size.shape === 'free-standing' ? sidesOf(size) : [...sidesOf(size), size.height]
  return `${shapeName(size)} ${sizes.map((one) => written(one, inches)).join(' x ')}`
}

/** A vessel whose sizes are the nearest half inches or half centimetres. */
export function inHalves(size: VesselSize, inches: boolean): VesselSize {
  const half = (inches ? INCH : CENTIMETRE) / 2
  const {shape, across, length = 0, width = 0, height} = size
  const near = (metres: number): number => half * Math.max(1, Math.round(metres / half))
  const sides = across === undefined ? {length: near(length), width: near(width)} : {across: near(across)}
  return {shape, ...sides, height: near(height)}
}

/** Whether a vessel's name gives its sizes in inches. */
export const inInches = (name: string): boolean => /\d ?-?(?:in\b|inch|["”″])/.test(name) || !/cm|mm|\d ?m\b/.test(name)
