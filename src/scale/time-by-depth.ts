import type {Range} from '../lexicon/schema.js'
import type {Inferred} from '../receipt/types.js'
import {topArea} from '../receipt/vessel-capacity.js'
import type {KindFigures} from './kind-figures.js'
import {meantFill} from './makes.js'
import {heatedThrough, mayTakeFire, type NeedResult, thickened} from './need.js'
import type {Filled} from './order.js'
import {type Shape, standing, usualShapeOf} from './own-vessel.js'
import {percentOf, span} from './reason-figures.js'
import type {Say} from './sizing.js'
import {timeShare} from './time-share.js'
import {coversSheet} from './tray.js'
import type {Dish, HeatNeed, Vessel} from './types.js'
import {isFlat, isFree, isSheet} from './vessel.js'
import {inHalves, inInches, vesselWritten} from './vessel-written.js'

/**
 * How much thinner a filling may be than the one its time was given for, that the time still goes as the square: below, the surface and not
 * the depth sets the time, and the square would soon leave none: a pie of two minutes. Common practice, no source.
 */
const THINNEST = 0.5

/** What lies less deep than this share of what its time was given for dries before it is done. Common practice, no source. */
const shallow = 0.5

/** Depths that are one to a cook, as a share. */
const sameDepth = 0.01

/** A need whose time was given for another depth. */
export interface TimedByDepth {
  readonly need: HeatNeed
  /** How many times as thick it is as its time was given for, and no less than the rule of time goes. */
  readonly thicker: number
  readonly notes: readonly Inferred[]
}

/**
 * The time of what lies deeper or less deep in its vessel, or is of more or less dough, than its time was given for; what dries soon is told
 * (`scale-thin`).
 *
 * @param dough the stages of its dough; null of what is none, or does not rise
 */
export function timedByDepth(base: NeedResult, dough: Dish['dough'], filled: Filled, say: Say): TimedByDepth {
  const {asked, vessels, each, vessel} = filled
  const {kind, own, written, asWritten, shape} = vessels
  // The receipt's minutes were given for the receipt made once; the kind's for the kind's usual vessel and weight.
  const meant = asked.kind === 'weight' ? meantFill(asWritten) : asWritten.each
  const receipts = {...own, each: meant}
  const kinds = {...usualShapeOf(written, kind), each: kind.mass.likely}
  const rises = dough !== null && kind.dough !== undefined
  const covers = coversSheet(kind, asWritten)
  // The kind's time is not stretched for the depth of a vessel whose size nobody says.
  const deeper = (): boolean =>
    thicknessOf({...own, vessel: standing(own, kind, meant), each: meant}, kinds, kind, {rises, covers}).thicker > 1
  const timedFor = base.ownTime || (own.anySize === true && own.whole === undefined && deeper()) ? receipts : kinds
  const change = thicknessOf({...shape, vessel, each}, timedFor, kind, {rises, covers})
  const thicker = Math.max(THINNEST, change.thicker)
  const asLong = kind.softens === true && thicker < 1
  const slower = kind.softens === true && thicker > 1.05 ? heatedThrough(base.need, thicker) : null
  // Sticks lie loose, and the air goes between.
  const loose = mayTakeFire(kind.cautions)
  if (!asLong && !loose) sayTooThin(change, filled, say)
  const need =
    slower !== null
      ? slower.need
      : Math.abs(thicker - 1) > 0.05 && !asLong && !loose
        ? thickened(base.need, timeShare(thicker, change.was))
        : base.need
  const notes: Inferred[] = []
  if (slower !== null)
    notes.push({
      field: 'time',
      value: minutesOf(need),
      why: `${Math.round((thicker - 1) * 100)} % thicker than its time was given for: it is heated through in ${Math.round(slower.more)} min more, and softens in its own time`,
    })
  else if (need !== base.need) notes.push({field: 'time', value: minutesOf(need), why: whyOtherTime(change, base.need)})
  if (asLong && thicker < 0.95)
    notes.push({
      field: 'time',
      value: minutesOf(need),
      why: 'shallower than its time was given for; it softens in its own time, so the time is kept',
    })
  const assumed = base.ownTime ? undefined : shape.whole?.assumed
  if (assumed === undefined) return {need, thicker, notes}
  const wider = forAnyWeight(need, assumed.mass)
  if (wider.minutes.low === need.minutes.low && wider.minutes.high === need.minutes.high) return {need, thicker, notes}
  const other = notes.filter(({field}) => field !== 'time')
  const why = 'its weight is assumed, and a roast’s time goes as the 2/3 power of it: from that of the least to that of the most'
  return {need: wider, thicker, notes: [...other, {field: 'time', value: minutesOf(wider), why}]}
}

/** The need of what may weigh more or less than it is planned for: its time goes as the 2/3 power of its weight. */
function forAnyWeight(need: HeatNeed, {low, likely, high}: Range): HeatNeed {
  const {minutes} = need
  const by = (mass: number): number => (mass / likely) ** (2 / 3)
  return {
    ...need,
    minutes: {
      low: Math.min(minutes.low, minutes.likely * by(low)),
      likely: minutes.likely,
      high: Math.max(minutes.high, minutes.likely * by(high)),
    },
  }
}

const minutesOf = ({minutes}: HeatNeed): string => `${span(minutes.low, minutes.high)} min`

function whyOtherTime({thicker: found, risen, was}: Thickness, before: HeatNeed): string {
  const thicker = Math.max(THINNEST, found)
  const share = `${percentOf(timeShare(thicker, was))} of ${minutesOf(before)}`
  if (found < THINNEST)
    return `${Math.round((1 - found) * 100)} % thinner than its time was given for: timed as half as thick, so ${share}`
  if (was !== undefined && thicker < 1)
    return `${Math.round((1 - thicker) * 100)} % thinner than its time was given for: the time goes by its surface as well as by the square, so ${share}`
  if (risen === undefined)
    return `${Math.round(Math.abs(thicker - 1) * 100)} % ${thicker > 1 ? 'thicker' : 'thinner'} than its time was given for: the time goes as the square, so ${share}`
  const goes = `what rises grows as thick as the cube root of that, and the time goes as its square, so ${share}`
  return risen.by === 'weight'
    ? `each is ${percentOf(risen.share)} as heavy as its time was given for: ${goes}`
    : `${percentOf(risen.share)} as deep before it rises as its time was given for: ${goes}`
}

/** What is so much less deep than its time was given for that no rule goes so far, or that it dries. */
function sayTooThin({thicker, depth, risen, was}: Thickness, filled: Filled, say: Say): void {
  const {
    item,
    asked: {among},
    vessels: {receipt, shape},
    vessel,
  } = filled
  const asDeep = `“${receipt.title}” is ${Math.round(depth * 100)} % as deep in ${vessel.name} as its time was given for`
  const fitting = was === undefined ? null : fittingVessel(filled, depth)
  const elsewise = fitting ?? 'state a smaller vessel in the receipt’s front matter, make more of it, or stand by it as it bakes'
  if (thicker < THINNEST)
    say(
      'warning',
      'scale-thin',
      `${asDeep}, and no rule of time goes so far; it is timed as half as deep`,
      elsewise,
      item.amountAt?.[0],
    )
  else if (among !== undefined && depth < shallow && !isFree(shape.size)) {
    const fewer = Math.floor((among.count * depth) / shallow)
    say(
      'warning',
      'scale-thin',
      `${asDeep}, and dries soon`,
      fewer > 0 ? `write “in ${fewer} ${vessel.name}”, or ask for more` : 'name a smaller vessel, or ask for more',
      item.amountAt?.[among.word],
    )
  } else if (was !== undefined && depth <= shallow + sameDepth)
    say(
      'warning',
      'scale-thin',
      `${asDeep}: look at it early, and draw it by its sign and not by the clock`,
      elsewise,
      item.amountAt?.[0],
    )
  else if (risen !== undefined && depth < THINNEST && !isFree(shape.size))
    say('warning', 'scale-thin', `${asDeep}, and dries soon`, elsewise, item.amountAt?.[0])
}

/** No tin is offered narrower, m. */
const narrowest = 0.06

/** The day's line with vessels so much smaller that what is in them is as deep as its time was given for; null where it cannot be written. */
function fittingVessel({item, asked, order, vessels: {shape}}: Filled, depth: number): string | null {
  const {size, name} = shape
  if (size.shape === 'crock' || size.shape === 'pie plate' || item.amount === null) return null
  const by = Math.sqrt(depth)
  const {across, length = 0, width = 0} = size
  const inches = inInches(name)
  const less = inHalves(
    {...size, ...(across === undefined ? {length: length * by, width: width * by} : {across: across * by})},
    inches,
  )
  if ((less.across ?? less.width ?? 0) < narrowest) return null
  const tins = `${order.count} ${vesselWritten(less, inches, order.count !== 1)}`
  return asked.vessel === undefined && asked.among === undefined
    ? `write “${item.amount} in ${tins}”, as deep as its time was given for, or ask for more`
    : `write “in ${tins}”, as deep as its time was given for, or ask for more`
}

/** What a filling is beside the one its time was given for. */
interface Thickness {
  /** Of what keeps the depth it is filled to: how deep its time was given for, m. */
  readonly was?: number
  /** How many times as thick heat finds it. */
  readonly thicker: number
  /** How many times as deep it lies in its vessel. */
  readonly depth: number
  /** Of what rises: the share of weight or of depth whose cube root it is as thick as. */
  readonly risen?: {readonly by: 'weight' | 'depth'; readonly share: number}
}

/**
 * How many times as thick a filling is as the one its time was given for. What lies on a sheet in pieces is as thick as ever; a dough that
 * covers it is as deep as there is more of it to the area. Dough rises: a loaf in
 * a tin domes above it or stays below the rim, so in tins as without one a loaf is as thick as the cube root of its weight. A flat pan gives
 * it no such shape: there as the cube root of what lies over the same floor.
 */
function thicknessOf(
  now: Shape & {readonly vessel: Vessel; readonly each: number},
  then: Shape & {readonly each: number},
  kind: KindFigures,
  {rises, covers}: {readonly rises: boolean; readonly covers: boolean},
): Thickness {
  if (now.whole !== undefined) {
    // Alike in shape, so as thick as the cube root of the weight, and a roast's time goes as its 2/3 power.
    const apiece = then.whole === undefined ? now.whole.pieces / now.whole.vessels : 1
    const thicker = Math.cbrt(now.each / apiece / then.each)
    return {thicker, depth: thicker}
  }
  if (isSheet(now.size) || isSheet(then.size)) {
    if (!covers || !isFlat(now.size) || !isFlat(then.size)) return {thicker: 1, depth: 1}
    const share = now.each / topArea(now.size) / (then.each / topArea(then.size))
    return rises ? {thicker: Math.cbrt(share), depth: share, risen: {by: 'depth', share}} : {thicker: share, depth: share}
  }
  const weight = now.each / then.each
  const depth = now.vessel.halfThickness / standing(then, kind, then.each).halfThickness
  const free = [now.size, then.size].filter(isFree).length
  // A loaf without a tin is measured as it comes out.
  if (free === 2) return {thicker: depth, depth}
  if (free === 0 && !rises) return {thicker: depth, depth, was: 2 * standing(then, kind, then.each).halfThickness}
  if (!rises) return {thicker: Math.cbrt(weight), depth: Math.cbrt(weight)}
  const flat = free === 0 && (isFlat(now.size) || isFlat(then.size))
  const share = flat ? depth : weight
  return {thicker: Math.cbrt(share), depth: free === 0 ? depth : Math.cbrt(weight), risen: {by: flat ? 'depth' : 'weight', share}}
}
