import type {Inferred} from '../receipt/types.js'
import type {KindFigures} from './kind-figures.js'
import {meantFill} from './makes.js'
import {mayTakeFire, type NeedResult, thickened} from './need.js'
import type {Filled} from './order.js'
import {type Shape, standing, usualShapeOf} from './own-vessel.js'
import {percentOf, span} from './reason-figures.js'
import type {Say} from './sizing.js'
import type {HeatNeed, Vessel} from './types.js'
import {isFree, isSheet} from './vessel.js'

/**
 * How much thinner a filling may be than the one its time was given for, that the time still goes as the square: below, the surface and not
 * the depth sets the time, and the square would soon leave none. Common practice, no source.
 */
const THINNEST = 0.25

/** What lies less deep than this share of what its time was given for dries before it is done. Common practice, no source. */
const shallow = 0.5

/** A need whose time was given for another depth. */
export interface TimedByDepth {
  readonly need: HeatNeed
  /** How many times as thick it is as its time was given for, and no less than the rule of time goes. */
  readonly thicker: number
  readonly notes: readonly Inferred[]
}

/** The time of what lies deeper or less deep in its vessel than its time was given for; what dries soon is told (`scale-thin`). */
export function timedByDepth(base: NeedResult, filled: Filled, say: Say): TimedByDepth {
  const {asked, vessels, each, vessel} = filled
  const {kind, own, written, asWritten, shape} = vessels
  // The receipt's minutes were given for the receipt made once; the kind's for the kind's usual vessel and weight.
  const meant = asked.kind === 'weight' ? meantFill(asWritten) : asWritten.each
  const timedFor = base.ownTime ? {...own, each: meant} : {...usualShapeOf(written, kind), each: kind.mass.likely}
  const depth = depthRatio({...shape, vessel, each}, timedFor, kind)
  const thicker = Math.max(THINNEST, depth)
  const asLong = kind.softens === true && thicker < 1
  // Sticks lie loose, and the air goes between.
  const loose = mayTakeFire(kind.cautions)
  if (!asLong && !loose) sayTooThin(depth, filled, say)
  const need = Math.abs(thicker - 1) > 0.05 && !asLong && !loose ? thickened(base.need, thicker) : base.need
  const notes: Inferred[] = []
  if (need !== base.need) notes.push({field: 'time', value: minutesOf(need), why: whyOtherTime(depth, base.need)})
  if (asLong && thicker < 0.95)
    notes.push({
      field: 'time',
      value: minutesOf(need),
      why: 'shallower than its time was given for; it softens in its own time, so the time is kept',
    })
  return {need, thicker, notes}
}

const minutesOf = ({minutes}: HeatNeed): string => `${span(minutes.low, minutes.high)} min`

function whyOtherTime(depth: number, before: HeatNeed): string {
  const thicker = Math.max(THINNEST, depth)
  const share = `${percentOf(thicker * thicker)} of ${minutesOf(before)}`
  return depth < THINNEST
    ? `${Math.round((1 - depth) * 100)} % thinner than its time was given for: timed as a quarter as thick, so ${share}`
    : `${Math.round(Math.abs(thicker - 1) * 100)} % ${thicker > 1 ? 'thicker' : 'thinner'} than its time was given for: the time goes as the square, so ${share}`
}

/** What is so much less deep than its time was given for that no rule goes so far, or that it dries in so many vessels as the day says. */
function sayTooThin(depth: number, {item, asked: {among}, vessels: {receipt, shape}, vessel}: Filled, say: Say): void {
  if (depth < THINNEST)
    say(
      'warning',
      'scale-thin',
      `“${receipt.title}” is ${Math.round(depth * 100)} % as deep in ${vessel.name} as its time was given for, and no rule of time goes so far; it is timed as a quarter as deep`,
      'state a smaller vessel in the receipt’s front matter, make more of it, or stand by it as it bakes',
      item.amountAt?.[0],
    )
  else if (among !== undefined && depth < shallow && !isFree(shape.size)) {
    const fewer = Math.floor((among.count * depth) / shallow)
    say(
      'warning',
      'scale-thin',
      `“${receipt.title}” is ${Math.round(depth * 100)} % as deep in ${vessel.name} as its time was given for, and dries soon`,
      fewer > 0 ? `write “in ${fewer} ${vessel.name}”, or ask for more` : 'name a smaller vessel, or ask for more',
      item.amountAt?.[among.word],
    )
  }
}

/**
 * How many times as thick a filling is as the one its time was given for. What stands on a sheet is as thick as ever. A loaf in a tin and one
 * without are told apart by their weight, as the cube root: dough fills half its tin before it rises, and a loaf on the bricks is measured as
 * it comes out.
 */
function depthRatio(
  now: Shape & {readonly vessel: Vessel; readonly each: number},
  then: Shape & {readonly each: number},
  kind: KindFigures,
): number {
  if (isSheet(now.size) || isSheet(then.size)) return 1
  if (isFree(now.size) !== isFree(then.size)) return Math.cbrt(now.each / then.each)
  return now.vessel.halfThickness / standing(then, kind, then.each).halfThickness
}
