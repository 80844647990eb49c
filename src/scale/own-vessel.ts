import type {Range} from '../lexicon/schema.js'
import type {Inferred, Receipt} from '../receipt/types.js'
import {readVessel, type VesselSize} from '../receipt/vessel.js'
import {fillOf, holds} from './holding.js'
import type {KindFigures} from './kind-figures.js'
import type {Fits} from './sizing.js'
import {asTray} from './tray.js'
import type {Vessel} from './types.js'
import {isFree, isSheet, spreadOf, vesselOf, wallOf} from './vessel.js'
import {type Whole, withWhole} from './whole-piece.js'

/** A vessel with its size, before anything is in it. */
export interface Shape {
  readonly size: VesselSize
  readonly name: string
  /** The receipt itself or its front matter states the vessel. */
  readonly stated: boolean
  /** Its depth is only assumed: nothing in the receipt tells it. */
  readonly anyDepth?: true
  /** Nobody says how large it is: it is the usual one of its name or of its kind. */
  readonly anySize?: true
  /** The vessel its front matter states, where that is none known here: the usual one is taken. */
  readonly unknown?: string
  /** Kilograms in one of this size, where the receipt's own weights tell it; else the kind's do. */
  readonly weighs?: number
  /** A sheet with a rim that a batter is poured into: a flat tin. */
  readonly tray?: true
  /** What goes in whole, and the kilograms in one vessel with the receipt's own of it. */
  readonly whole?: Whole & {readonly each: number}
}

/** Kilograms in a vessel when it is filled as usual: as its receipt's own weights tell, else its kind. */
export const filledWith = ({size, weighs}: Shape, kind: KindFigures): number => weighs ?? holds(size, kind)

/** The receipt's vessel: the one it states, else the one it names, else its kind's usual one; null where none is known. */
export function shapeOf(receipt: Receipt, kind: KindFigures): Shape | null {
  const shape = shapeSaid(receipt, kind)
  return shape === null ? null : asTray(shape, receipt, kind)
}

function shapeSaid(receipt: Receipt, kind: KindFigures): Shape | null {
  const stated = receipt.facts.vessel
  if (stated !== undefined) {
    const read = readVessel(stated)
    // What it is told to hold has been brought to sizes by the receipt's own measures.
    if (read.ok && read.holds === undefined)
      return {size: read.value, name: read.name, stated: true, ...(read.anyDepth ? {anyDepth: true as const} : {})}
  }
  const usual = readVessel(kind.vessel)
  // The reader's guess differs from the kind's only where the receipt names a vessel without its size.
  const guessed = receipt.inferred.find((one) => one.field === 'vessel')
  if (guessed !== undefined && guessed.value !== kind.vessel) {
    const read = readVessel(guessed.value)
    const anyDepth = guessed.depth === undefined ? {} : {anyDepth: true as const}
    const anySize = guessed.size === undefined ? {} : {anySize: true as const}
    if (read.ok) return {size: read.value, name: read.name, stated: true, ...anyDepth, ...anySize}
  }
  if (!usual.ok) return null
  const any = guessed?.size === undefined ? {} : {anySize: true as const}
  return {size: usual.value, name: usual.name, stated: false, ...any, ...(stated === undefined ? {} : {unknown: stated})}
}

/** That the vessel a receipt states is none known here. */
export const unknownVessel = (shape: Shape, unknown: string, kind: KindFigures): Inferred => ({
  field: 'vessel',
  value: shape.name,
  why: `“${unknown}” is no vessel known here; usual for ${kind.title.toLowerCase()}`,
})

/** The vessel the kind's minutes belong to. */
export function usualShapeOf(shape: Shape, kind: KindFigures): Shape {
  const read = readVessel(kind.vessel)
  return read.ok ? {size: read.value, name: read.name, stated: false} : shape
}

/** The vessel with so many kilograms in it: a free-standing loaf spreads, anything else fills deeper. */
export function standing(shape: Shape, kind: KindFigures, each: number): Vessel {
  const {whole} = shape
  if (whole !== undefined)
    return withWhole(vesselOf(shape.size, 1, shape.name), whole, wallOf(shape.size), Math.cbrt(each / whole.each))
  const full = filledWith(shape, kind)
  if (isFree(shape.size)) {
    const size = spreadOf(shape.size, each / full)
    return vesselOf(size, 1, calledBy(shape, size))
  }
  const fill = fillOf(shape.size, kind)
  return vesselOf(shape.size, Math.min(1, (fill * each) / full), shape.name)
}

/** What a vessel's shape is called before its sizes. */
export const shapeName = ({shape}: VesselSize): string => (shape === 'free-standing' ? 'free-standing loaf' : shape)

/** A vessel that is our own guess is taken smaller where the oven cannot take the usual one: by tenths, down to half. */
export function smaller(shape: Shape, kind: KindFigures, fits: Fits): Shape & {readonly why?: string} {
  if (shape.stated || fits(standing(shape, kind, holds(shape.size, kind)), 1) > 0) return shape
  for (const share of [0.9, 0.8, 0.7, 0.6, 0.5]) {
    const {size} = shape
    const less: VesselSize = {
      shape: size.shape,
      height: size.height * share,
      ...(size.across === undefined
        ? {length: (size.length ?? 0) * share, width: (size.width ?? 0) * share}
        : {across: size.across * share}),
    }
    const cm = [less.across ?? less.length, less.width, isSheet(shape.size) || isFree(shape.size) ? undefined : less.height]
    const name = `${shapeName(size)} ${cm
      .filter((one) => one !== undefined)
      .map((one) => Math.round(one * 100))
      .join(' x ')} cm`
    const found: Shape = {size: less, name, stated: true}
    if (fits(standing(found, kind, holds(less, kind)), 1) > 0)
      return {...found, why: `the usual ${shape.name} does not go into this oven`}
  }
  return shape
}

/** A loaf without a tin as large as so many kilograms of dough make it, and called by that size. */
function grownTo<S extends Shape>(shape: S, kind: KindFigures, each: number): S {
  const size = spreadOf(shape.size, each / filledWith(shape, kind))
  return {...shape, size, name: calledBy(shape, size), weighs: each}
}

/** What a loaf without a tin that has grown to a size is called: by whole centimetres, and as it was where that is no other size. */
function calledBy({name, size}: Shape, {across = 0}: VesselSize): string {
  if (!isFree(size) || Math.abs(across - (size.across ?? across)) < sameSize) return name
  const called = /^free-standing [a-z]+ /.exec(name)?.[0] ?? 'free-standing loaf '
  return `${called}${Math.round(100 * across)} cm`
}

/** Sizes of loaves that are one to a cook, m apart. Common practice, no source. */
const sameSize = 0.005

/**
 * A loaf without a tin whose size the front matter states is of that size with the dough of the receipt's own weights in it. Where its
 * height is not stated, that is as much flatter or higher as its dough is less or more than the kind's would be.
 */
export function asStated<S extends Shape>(
  shape: S,
  receipt: Receipt,
  kind: KindFigures,
  made: {readonly each: number; readonly pieces: number | null},
  mass: Range | null,
): S {
  const {size} = shape
  const {vessel} = receipt.facts
  if (!isFree(size) || mass === null || made.pieces !== null) return shape
  if (vessel === undefined || shape.unknown !== undefined) return grownTo(shape, kind, made.each)
  const across = size.across ?? 0
  const height = heightUntold(size)
    ? Math.min(across, Math.max(thinnest, size.height * (made.each / holds(size, kind))))
    : size.height
  return {...shape, size: {...size, height}, weighs: made.each}
}

/** True where a loaf's height is the usual one for its width, as it is where none is stated. */
export function heightUntold({across, height}: VesselSize): boolean {
  const untold = readVessel(`free-standing ${across ?? 0} m`)
  return untold.ok && Math.abs(untold.value.height - height) < 1e-9
}

/** A loaf without a tin is no thinner, m. Common practice, no source. */
const thinnest = 0.01
