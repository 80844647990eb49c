import type {Inferred} from '../receipt/types.js'
import type {InVessels} from './in-vessels.js'
import type {Filled} from './order.js'
import {filledWith, unknownVessel} from './own-vessel.js'
import {kilograms} from './reason-figures.js'

/** What was decided for a dish, to be shown as ours. */
export interface SizeNotes {
  /** All of it, with what was supplied where the receipt is silent. */
  readonly inferred: readonly Inferred[]
  /** What comes of the size. */
  readonly sized: readonly Inferred[]
}

/**
 * What was decided when an order was brought into its vessels.
 *
 * @param heat what was supplied of heat and time
 */
export function sizeNotes(filled: Filled, heat: readonly Inferred[]): SizeNotes {
  const {vessels, order} = filled
  const {receipt, byHand, made} = vessels
  const counted = [...made.inferred, ...(order.why === null ? [] : [order.why])]
  const replaced = inPlace(vessels)
  const inferred = withVessel([...receipt.inferred, ...counted], replaced, vessels)
  if (byHand !== null)
    inferred.push({
      field: byHand.item,
      value: `about ${kilograms(byHand.kilograms.likely)}`,
      why: 'the receipt gives no amount of it; reckoned from the rest, for the receipt made once, to know how much it makes',
    })
  const sized = [
    ...replaced,
    ...grown(filled),
    ...stands(filled),
    ...(byHand === null ? [] : inferred.filter((one) => one.field === byHand.item)),
    ...counted,
  ]
  for (const one of heat) if (!inferred.some((other) => other.field === one.field)) inferred.push(one)
  return {inferred, sized}
}

/** Why the vessel stands in the place of the receipt's own; nothing where it does not. */
function inPlace({other, shape, written, kind}: InVessels): readonly Inferred[] {
  if (other !== null) return other.holds === undefined ? [other.why] : [other.why, other.holds]
  return shape.unknown === undefined ? [] : [unknownVessel(written, shape.unknown, kind)]
}

/** The same with why it is in its vessel, in place of the reader's guess where there is another reason. */
function withVessel(inferred: readonly Inferred[], replaced: readonly Inferred[], {other, shape, kind}: InVessels): Inferred[] {
  const guess = inferred.findIndex((one) => one.field === 'vessel')
  const others = inferred.filter((_, i) => i !== guess)
  if (other !== null) return [...others, ...replaced]
  if (shape.why !== undefined) return [...others, {field: 'vessel', value: shape.name, why: shape.why}]
  if (shape.unknown !== undefined) return [...inferred, ...replaced]
  if (shape.stated || guess >= 0) return [...inferred]
  return [...inferred, {field: 'vessel', value: shape.name, why: `the receipt names none; usual for ${kind.title.toLowerCase()}`}]
}

/** How high what goes in whole stands. */
function stands({vessels: {shape, made}, vessel, each}: Filled): readonly Inferred[] {
  const {whole} = shape
  if (whole === undefined) return []
  const one = whole.mass * (each / made.each)
  const cm = Math.round(vessel.height * 100)
  const {assumed} = whole
  return [
    ...(assumed === undefined
      ? []
      : [
          {
            field: 'weight',
            value: `${kilograms(assumed.mass.low)} to ${kilograms(assumed.mass.high)}`,
            why: `the receipt gives no weight of “${assumed.text}”: what one weighs as a rule (${assumed.sources.join(', ')}); planned for ${kilograms(whole.mass)}`,
          },
        ]),
    {
      field: 'height',
      value: `${cm} cm`,
      why: `what goes in whole is of ${kilograms(one)} each, and with it ${vessel.name} stands so high`,
    },
  ]
}

/** Why a loaf without a tin is of another size than the receipt's. */
function grown({vessels: {other, shape, own, written, kind}, vessel, each}: Filled): readonly Inferred[] {
  const usual = other?.shape ?? (own.name === written.name ? own : written)
  if (vessel.name === usual.name || shape.whole !== undefined) return []
  return [
    {
      field: 'size',
      value: vessel.name,
      why: `as large as ${kilograms(each)} of dough make it; ${usual.name} is of ${kilograms(filledWith(usual, kind))}`,
    },
  ]
}
