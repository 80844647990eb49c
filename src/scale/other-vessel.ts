import Fraction from 'fraction.js'
import type {Inferred} from '../receipt/types.js'
import type {VesselSize} from '../receipt/vessel.js'
import {brimVolume, topArea} from '../receipt/vessel-capacity.js'
import type {NamedWithSize} from './amount-phrase.js'
import {fillingOf, fillOf, fullest, holds, takes} from './holding.js'
import type {KindFigures} from './kind-figures.js'
import type {Makes} from './makes.js'
import {heightUntold, type Shape, shapeName} from './own-vessel.js'
import {coversSheet} from './tray.js'
import {isFlat, isFree, isSheet, spreadOf} from './vessel.js'

/**
 * Another vessel than the receipt's, as the day names it: filled as deep as the receipt's own is (by area), as long as it takes so much;
 * crocks and pie plates as full as they are, and a free-standing loaf by its volume, the cube of its width where no height is stated. From a tin to the bare bricks or
 * back it is filled as is usual for the kind; but loaves without a tin of which no size is said are of the dough of one of the receipt's. Common
 * practice, no source.
 *
 * @returns the vessel; what the receipt makes, counted in such vessels; and the reason to tell
 */
export function instead(
  own: Shape,
  {size: named, name: said, unsized, anyDepth}: NamedWithSize,
  kind: KindFigures,
  made: Makes,
): {readonly shape: Shape; readonly made: Makes; readonly why: Inferred} {
  const from = own.size
  if (own.whole !== undefined) {
    const why = `in place of ${own.name}, as the day asks; what goes in whole lies in it as in that`
    return {
      shape: {size: named, name: said, stated: true, whole: own.whole},
      made,
      why: {field: 'vessel', value: said, why},
    }
  }
  const size = anyDepth === true ? asDeep(named, from) : named
  // A loaf whose height nobody states is as high for its width as the receipt's own.
  const ofItsDough = unsized === true && isFree(size) && !isFree(from)
  const to = ofItsDough
    ? spreadOf(size, made.each / holds(size, kind))
    : isFree(from) && isFree(size) && heightUntold(size)
      ? {...size, height: (from.height * (size.across ?? 0)) / (from.across ?? 1)}
      : size
  const name = ofItsDough ? `${shapeName(to)} ${Math.round(100 * (to.across ?? 0))} cm` : said
  let each = holds(to, kind)
  let how = 'filled as is usual'
  if (ofItsDough) {
    each = made.each
    how = 'of the same dough'
  } else if (isFree(from) && isFree(to)) {
    each = made.each * (brimVolume(to) / brimVolume(from))
    how = 'of the same dough'
  } else if (isSheet(from) && isSheet(to)) {
    each = made.each * (topArea(to) / topArea(from))
    how = 'covered as thickly'
  } else if (isSheet(from) !== isSheet(to) && isFlat(from) && isFlat(to) && coversSheet(kind, made)) {
    const covered = made.each * (topArea(to) / topArea(from))
    each = Math.min(covered, takes(to, kind))
    how = each < covered ? 'filled as high as it may be' : 'covered as thickly'
  } else if (![from, to].some((one) => isFree(one) || isSheet(one))) {
    // The share of its depth that the receipt fills of its own, and of the other vessel to be as deep.
    const share = Math.min(Math.max(1, fullest[fillingOf(from, kind)]), (fillOf(from, kind) * made.each) / holds(from, kind))
    const byVolume = [from, to].some((one) => one.shape === 'crock' || one.shape === 'pie plate')
    const deep = byVolume ? share : (share * from.height) / to.height
    const full = Math.min(deep, fullest[fillingOf(to, kind)])
    each = (holds(to, kind) / fillOf(to, kind)) * full
    how = full < deep ? 'filled as high as it may be' : byVolume ? 'as full' : 'filled as deep'
  }
  // To a hundredth, so that amounts stay fractions that can be read.
  const ratio = Math.max(0.01, Math.round((each / made.each) * 100) / 100)
  const shape: Shape = {size: to, name, stated: true, ...(isFree(to) ? {weighs: ratio * made.each} : {})}
  return {
    shape,
    made: {
      vessels: made.vessels / ratio,
      timesEach: made.timesEach.mul(new Fraction(Math.round(ratio * 100), 100)),
      pieces: made.pieces,
      ...(made.apiece === undefined ? {} : {apiece: made.apiece}),
      each: ratio * made.each,
      usual: ratio * made.usual,
      inferred: made.inferred,
    },
    why: {
      field: 'vessel',
      value: name,
      why: `in place of ${own.name}, as the day asks; ${how}, one takes ${Math.round(ratio * 100)} % of what one of those does`,
    },
  }
}

/** A tin of which the day says no depth: no shallower than the receipt's own, and no deeper for that than half as wide. */
function asDeep(size: VesselSize, own: VesselSize): VesselSize {
  if (own.shape !== 'round' && own.shape !== 'square' && own.shape !== 'oblong') return size
  const widest = size.across ?? size.width ?? 0
  return {...size, height: Math.max(size.height, Math.min(own.height, widest / 2))}
}

/** The receipt's vessel as wide as the day asks, and no deeper than half as wide; null where one size does not tell it. */
export function asWide(
  {size}: Shape,
  {metres, said}: {readonly metres: number; readonly said: string},
): {readonly size: VesselSize; readonly name: string} | null {
  const square = size.shape === 'square'
  if (size.across === undefined && !square) return null
  const height = Math.min(size.height, metres / 2)
  const name = `${shapeName(size)} ${said}`
  return {size: {shape: size.shape, height, ...(square ? {length: metres, width: metres} : {across: metres})}, name}
}
