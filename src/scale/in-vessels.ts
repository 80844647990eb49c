import type {Range} from '../lexicon/schema.js'
import type {Inferred, Receipt} from '../receipt/types.js'
import type {Asked, NamedWithSize} from './amount-phrase.js'
import {type BatchMass, batchMass} from './batch-mass.js'
import {holds, plainly, takes} from './holding.js'
import type {KindFigures} from './kind-figures.js'
import {feedsOf, type Makes, makes} from './makes.js'
import {asWide, instead} from './other-vessel.js'
import {asStated, type Shape, shapeOf, smaller, standing} from './own-vessel.js'
import {kilograms} from './reason-figures.js'
import type {Say, Sizing} from './sizing.js'
import {asTray} from './tray.js'
import type {DayAmount, Vessel} from './types.js'
import {isFree, isSheet, spreadOf} from './vessel.js'
import {inHalves, inInches, vesselName} from './vessel-written.js'
import {tinFor, unweighedWhole, type Whole, wholeOf} from './whole-piece.js'

/** A receipt in the vessels it is baked in on this day. */
export interface InVessels {
  readonly receipt: Receipt
  readonly kind: KindFigures
  /** Weight of its mixture made once, kg; null where nothing of it can be weighed. */
  readonly mass: Range | null
  readonly byHand: BatchMass['byHand']
  /** Its own vessel as it is written or guessed, and as large as its own weights make it. */
  readonly written: Shape & {readonly why?: string}
  readonly own: Shape & {readonly why?: string}
  /** What it makes in its own vessels. */
  readonly asWritten: Makes
  /** The vessel that the day asks for in place of its own, and why that holds so much. */
  readonly other: {readonly shape: Shape; readonly why: Inferred; readonly holds?: Inferred} | null
  /** The vessel it is baked in: the other where there is one. */
  readonly shape: Shape & {readonly why?: string}
  /** What it makes in that. */
  readonly made: Makes
  /** People that one of it feeds. */
  readonly feedsEach: Range
  /** Kilograms that one takes at the most. */
  readonly most: number
  /** One with so many kilograms in it. */
  readonly vesselAt: (each: number) => Vessel
}

/**
 * Put a receipt into its vessels, or into those the day asks for.
 *
 * @returns null where it has none (`scale-vessel`), or one size does not tell the one that is asked for (`scale-amount`); what cannot be weighed
 *   is told (`scale-weight`)
 */
export function inVessels(
  item: DayAmount,
  asked: Asked,
  receipt: Receipt,
  kind: KindFigures,
  {fits, say}: Pick<Sizing, 'fits' | 'say'>,
): InVessels | null {
  const across = asked.kind === 'count' ? asked.across : undefined
  const usual = shapeOf(receipt, kind)
  const elsewhere = asked.vessel !== undefined || across !== undefined
  const {mass, unweighed, open, byHand} = batchMass(receipt, kind)
  const whole = mass === null ? null : wholeOf(receipt, kind.id)
  const guessed =
    usual === null
      ? null
      : whole !== null
        ? withPieces(usual, {...whole, each: mass!.likely / whole.vessels})
        : elsewhere
          ? usual
          : smaller(usual, kind, fits)
  if (guessed === null) {
    say(
      'error',
      'scale-vessel',
      `no vessel is known for “${receipt.title}”`,
      'state one in its front matter: vessel: round 9 in x 2 in',
    )
    return null
  }
  sayAssumedWeight(receipt, kind, whole, say)
  if (unweighed.length > 0 && mass !== null) {
    say('info', 'scale-weight', `${receipt.title}: ${unweighed.join(', ')} cannot be weighed, so its weight is a little low`)
  }
  const first = makes(receipt, kind, guessed, mass)
  const once = whole === null ? deepEnough(guessed, first, receipt, kind, mass) : {written: guessed, asWritten: first}
  const {written, asWritten} = open || whole !== null ? once : smallEnough(once, receipt, kind, mass)
  const own = asStated(written, receipt, kind, asWritten, mass)
  const wide = across === undefined ? undefined : asWide(own, across)
  if (wide === null) {
    say(
      'error',
      'scale-amount',
      `“${item.amount}”: one size does not tell ${own.name}`,
      'write the vessel with its sizes behind the number, such as “2 loaves in loaf tins 9 x 5 x 3 in”',
      item.amountAt?.[0],
    )
    return null
  }
  const named = asked.vessel === undefined ? wide : trayAsked(asked.vessel, receipt, kind)
  const other = named === undefined ? null : {...instead(own, named, kind, asWritten), ...heldBy(asked.vessel)}
  const shape = other?.shape ?? own
  const made = other?.made ?? asWritten
  return {
    receipt,
    kind,
    mass,
    byHand,
    written,
    own,
    asWritten,
    other,
    shape,
    made,
    feedsEach: feedsOf(receipt, kind, made, shape.size),
    most: shape.whole === undefined ? takes(shape.size, kind) : Number.POSITIVE_INFINITY,
    vesselAt: (each) => standing(shape, kind, each),
  }
}

/** How the sizes come about of a vessel that the day tells by what it holds. */
const heldBy = (vessel: NamedWithSize | undefined): {readonly holds?: Inferred} =>
  vessel?.holds === undefined
    ? {}
    : {
        holds: {
          field: 'size',
          value: vessel.name,
          why: `“${vessel.holds.said}” holds ${vessel.holds.brim} to the brim, and is as deep for its width as usual`,
        },
      }

/** The vessel that the day asks for: a sheet as the flat tin that it is to a batter. */
function trayAsked(vessel: NamedWithSize, receipt: Receipt, kind: KindFigures): NamedWithSize {
  const {size} = asTray({size: vessel.size, name: vessel.name, stated: true}, receipt, kind)
  return {...vessel, size}
}

/** That a joint or a bird is planned for a weight that its receipt does not give (`scale-weight`). */
function sayAssumedWeight(receipt: Receipt, kind: KindFigures, whole: Whole | null, say: Say): void {
  const text = whole === null ? unweighedWhole(receipt, kind.id) : whole.assumed?.text
  if (text === undefined || text === null) return
  const {low, likely, high} = whole?.assumed?.mass ?? kind.mass
  say(
    'warning',
    'scale-weight',
    `“${receipt.title}” gives no weight of “${text}”: planned for ${kilograms(likely)}, which may be ${kilograms(low)} to ${kilograms(high)}; size, time and heat go by it`,
    'weigh yours, and write its weight behind it: “of 4 kg”',
  )
}

/** A vessel with what goes in whole in it: as large as that wants where nobody says how large it is. */
function withPieces(usual: Shape, whole: NonNullable<Shape['whole']>): Shape & {readonly why?: string} {
  if (usual.anySize !== true || usual.size.shape !== 'oblong') return {...usual, whole}
  const inches = inInches(usual.name)
  const size = inHalves(tinFor(whole, usual.size), inches)
  const name = vesselName(size, inches)
  return {...usual, size, name, stated: true, whole, why: 'the receipt says no size; so large that what goes in whole lies in it'}
}

/** A tin no deeper than this share of its width, where only the mixture tells how deep. Common practice, no source. */
const deepest = 0.6

/**
 * A vessel of which only the depth is assumed, and that plainly takes less than the receipt puts into it, as deep as that fills: the receipt
 * bakes in one that is deep enough. As it was where no tin is so deep.
 */
function deepEnough(
  written: Shape & {readonly why?: string},
  asWritten: Makes,
  receipt: Receipt,
  kind: KindFigures,
  mass: Range | null,
): Pick<InVessels, 'written' | 'asWritten'> {
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

/** A vessel of which nobody says the size, and that what the receipt makes hardly fills, as large as that does fill. */
function smallEnough(
  {written, asWritten}: Pick<InVessels, 'written' | 'asWritten'>,
  receipt: Receipt,
  kind: KindFigures,
  mass: Range | null,
): Pick<InVessels, 'written' | 'asWritten'> {
  const {size} = written
  const share = asWritten.each / holds(size, kind)
  if (written.anySize !== true || written.tray === true || mass === null || isSheet(size) || isFree(size) || share >= hardly)
    return {written, asWritten}
  const inches = inInches(written.name)
  const small = inHalves(spreadOf(size, share), inches)
  if ((small.across ?? small.width ?? 0) < narrowest) return {written, asWritten}
  const shape = {
    ...written,
    size: small,
    name: vesselName(small, inches),
    stated: true,
    why: `the receipt says no size; so large that its ${kilograms(asWritten.each)} fill it`,
  }
  const made = makes(receipt, kind, shape, mass)
  return made.vessels === asWritten.vessels ? {written: shape, asWritten: made} : {written, asWritten}
}
