import type {Range} from '../lexicon/schema.js'
import type {Receipt} from '../receipt/types.js'
import {holds, plainly, takes} from './holding.js'
import type {KindFigures} from './kind-figures.js'
import {type Makes, makes} from './makes.js'
import type {Shape} from './own-vessel.js'
import {kilograms} from './reason-figures.js'
import {isFree, isSheet, spreadOf} from './vessel.js'
import {inHalves, inInches, vesselName} from './vessel-written.js'

/** A receipt's own vessel where nobody says how deep or how large it is, as what goes into it makes it. */

/** The receipt's vessel, and what the receipt makes in it. */
export interface InOwn {
  readonly written: Shape & {readonly why?: string}
  readonly asWritten: Makes
}

/** A tin no deeper than this share of its width, where only the mixture tells how deep. Common practice, no source. */
const deepest = 0.6

/**
 * A vessel of which only the depth is assumed, and that plainly takes less than the receipt puts into it, as deep as that fills: the receipt
 * bakes in one that is deep enough. As it was where no tin is so deep.
 */
export function deepEnough(
  written: Shape & {readonly why?: string},
  asWritten: Makes,
  receipt: Receipt,
  kind: KindFigures,
  mass: Range | null,
): InOwn {
  const {size} = written
  const times = asWritten.each / takes(size, kind)
  const inches = inInches(written.name)
  const step = inches ? 0.00635 : 0.005
  const height = Math.ceil((size.height * times) / step - 1e-6) * step
  if (written.anyDepth !== true || mass === null || times <= plainly) return {written, asWritten}
  const deep = {...size, height}
  const name = vesselName(deep, inches)
  const shape = {
    ...written,
    size: deep,
    name,
    why: `the receipt says no depth; so deep that its ${kilograms(asWritten.each)} go in`,
  }
  const made = makes(receipt, kind, shape, mass)
  const fits = height <= deepest * (size.across ?? size.width ?? 0) && made.vessels === asWritten.vessels
  return fits ? {written: shape, asWritten: made} : {written, asWritten}
}

/** Less than this share of what fills a vessel is for a smaller one, where only its name is known. Common practice, no source. */
const hardly = 0.5
/** No vessel is taken smaller than that across, m. */
const narrowest = 0.06

/**
 * A vessel of which nobody says the size, as large as what the receipt makes fills it, where the usual one would hardly be filled, or a pot
 * would be filled more than pots are: what is in it boils, and its beans swell.
 *
 * @param batch kilograms of the receipt's mixture made once, null where nothing of it can be weighed; and whether there is more that has no
 *   weight
 */
export function asLargeAsFilled(
  once: InOwn,
  receipt: Receipt,
  kind: KindFigures,
  {mass, open}: {readonly mass: Range | null; readonly open: boolean},
): InOwn {
  const {written, asWritten} = once
  const {size} = written
  const share = asWritten.each / holds(size, kind)
  const pot = size.shape === 'crock' && kind.dough === undefined
  const other = (share < hardly && !open) || (pot && share > 1)
  if (written.anySize !== true || written.tray === true || mass === null || isSheet(size) || isFree(size) || !other) return once
  const inches = inInches(written.name)
  const filled = inHalves(spreadOf(size, share), inches, pot ? 'up' : 'near')
  if ((filled.across ?? filled.width ?? 0) < narrowest) return once
  const shape = {
    ...written,
    size: filled,
    name: vesselName(filled, inches),
    stated: true,
    why: `the receipt says no size; so large that its ${kilograms(asWritten.each)} fill it, in place of ${written.name}`,
  }
  const made = makes(receipt, kind, shape, mass)
  return made.vessels === asWritten.vessels ? {written: shape, asWritten: made} : once
}
