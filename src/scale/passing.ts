import {readVessel, type VesselShape, type VesselSize} from '../receipt/vessel.js'
import {brimVolume, topArea} from './vessel.js'

/** The way out for a vessel that does not go into the oven: its own shape, made small enough. */

const INCH = 0.0254
const CENTIMETRE = 0.01

/** No side is made less than this share of the vessel's own: below, it is another dish. Common practice, no source. */
const SMALLEST = 0.5

/** Vessels that hold much as theirs did take so much more than their share before there is one more of them. Common practice, no source. */
const FULLER = 1.1

/** Sizes from a vessel's own downwards, in whole units, metres. */
function downFrom(own: number, unit: number): number[] {
  const out = [own]
  for (let n = Math.floor(own / unit - 1e-6); n * unit >= SMALLEST * own && n > 0; n--) out.push(n * unit)
  return out
}

/** How much of a mixture a size takes beside another of its shape: what stands on a sheet goes by its area. */
const roomOf = (size: VesselSize): number => (size.shape === 'sheet' ? topArea(size) : brimVolume(size))

/**
 * The largest vessel of a shape that goes in, no side longer than the given one's and none less than half of it.
 *
 * @param size the vessel that does not go in, metres
 * @param inches whether its sizes are whole inches, else whole centimetres
 * @param goesIn whether one of a size passes the mouth and stands on the floor
 * @returns Null where none so large goes in.
 */
export function passingSize(size: VesselSize, inches: boolean, goesIn: (size: VesselSize) => boolean): VesselSize | null {
  const unit = inches ? INCH : CENTIMETRE
  const {across, length = 0, width = 0, height} = size
  if (size.shape === 'free-standing') {
    const sizes = downFrom(across ?? 0, unit).map((less) => ({...size, across: less, height: (height * less) / (across ?? 1)}))
    return sizes.find(goesIn) ?? null
  }
  const [long, narrow] = [Math.max(length, width), Math.min(length, width)]
  const deep = size.shape === 'sheet' ? [height] : downFrom(height, unit)
  const wide = downFrom(across ?? narrow, unit)
  const far = across !== undefined || size.shape === 'square' ? null : downFrom(long, unit)
  const made = (h: number, w: number, l: number): VesselSize => ({
    shape: size.shape,
    height: h,
    ...(across === undefined ? {length: l, width: w} : {across: w}),
  })
  let best: VesselSize | null = null
  for (const h of deep)
    for (const w of wide) {
      const all = (far ?? [w]).filter((l) => l >= w).map((l) => made(h, w, l))
      const better = all.filter((one) => best === null || roomOf(one) > roomOf(best) * (1 + 1e-9))
      // Where the shortest of them does not go in, no longer one does.
      if (better.length === 0 || !goesIn(all.at(-1)!)) continue
      best = better.find(goesIn) ?? best
    }
  return best
}

/** How many of a smaller vessel hold what so many of the larger do, as full. */
export function asManyOf(smaller: VesselSize, own: VesselSize, count: number): number {
  return Math.max(1, Math.ceil((count * roomOf(own)) / roomOf(smaller) / FULLER - 1e-9))
}

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

/** A vessel as a day's line names it: “crock 9 in x 5 in”, “crocks 9 in x 5 in” of several. */
export function vesselWritten(
  {shape, across, length = 0, width = 0, height}: VesselSize,
  inches: boolean,
  several: boolean,
): string {
  const sides =
    across !== undefined ? [across] : shape === 'square' ? [length] : [Math.max(length, width), Math.min(length, width)]
  const text = (sizes: readonly number[]): string =>
    `${called[shape][several ? 1 : 0]} ${sizes.map((one) => written(one, inches)).join(' x ')}`
  const short = text(sides)
  const read = readVessel(short)
  // Its depth goes without saying where it is the usual one.
  if (shape === 'free-standing' || (read.ok && Math.abs(read.value.height - height) < 1e-6)) return short
  return text([...sides, height])
}

/** Whether a vessel's name gives its sizes in inches. */
export const inInches = (name: string): boolean => /\d ?-?(?:in\b|inch|["”″])/.test(name) || !/cm|mm|\d ?m\b/.test(name)
