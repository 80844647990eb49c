import {mixedIn} from '../lexicon/stage-heads.js'
import type {Inferred, Receipt} from '../receipt/types.js'
import type {Filled} from './order.js'
import {notMixed} from './pieces.js'
import {kilograms} from './reason-figures.js'
import {mixtureOf} from './scaled-amounts.js'
import type {Sizing} from './sizing.js'

/** How often one line of a day may fill the floor: every half hour, a day and a night through. Common practice, no source. */
export const mostFloors = 48

/**
 * How well a bowl's size is known, as a share: two loaves of a kilogram go into one of 2 kg, though the receipt made so many times comes to a
 * gram more. Common practice, no source.
 */
const bowlKnown = 0.01

/** An order parted into what is mixed and baked at once. */
export interface Batches {
  /** Vessels of each batch. */
  readonly counts: readonly number[]
  /** How many stand on the floor at once, as far as was looked for. */
  readonly atOnce: number
  readonly notes: readonly Inferred[]
}

/**
 * Part an order into batches as equal as may be, each no more than the bowl mixes and the floor holds.
 *
 * @param fits how many of the vessel stand on the empty floor, the order's number at most; 0 where it does not go in
 * @returns null where it is more than the oven bakes in a day (`scale-amount`); a vessel more than the bowl mixes is told (`scale-bowl`)
 */
export function batchesOf(filled: Filled, fits: number, {day, say}: Pick<Sizing, 'day' | 'say'>): Batches | null {
  const {item, asked, vessels, order, vessel} = filled
  const atOnce = Math.max(fits, order.fills ?? 0)
  const limit = mostAtOnce(filled, Math.max(fits === 0 ? order.count : fits, order.fills ?? 0), {day, say})
  const floors = fits === 0 ? 1 : Math.ceil(order.count / atOnce)
  if (floors > mostFloors) {
    say(
      'error',
      'scale-amount',
      `${order.count} × ${vessel.name} of “${vessels.receipt.title}” fill the floor ${floors} times, more than this oven bakes in a day`,
      'ask for less, or for part of it on another day',
      item.amountAt?.[0],
    )
    return null
  }
  const batches = Math.ceil(order.count / limit)
  const counts: number[] = []
  for (let left = order.count; counts.length < batches; left -= counts.at(-1)!)
    counts.push(Math.ceil(left / (batches - counts.length)))
  if (batches <= 1) return {counts, atOnce, notes: []}
  const of = limit < fits || asked.kind === 'floor' ? 'what the mixing bowl takes' : 'what the floor holds'
  return {counts, atOnce, notes: [{field: 'batches', value: String(batches), why: `at most ${limit} at once: ${of}`}]}
}

/**
 * The share of its weight that the heaviest part of a receipt has: crust and filling are not mixed together. A sour, a sponge or a soaker goes
 * into the dough, and is in the bowl with it.
 */
function largestPart(receipt: Receipt): number {
  const parts = new Map<string, number>()
  for (const {part: named, filling, grams, millilitres} of receipt.ingredients) {
    const part = mixtureOf({part: mixedIn.has(named) ? '' : named, filling})
    parts.set(part, (parts.get(part) ?? 0) + (grams ?? millilitres ?? {likely: 0}).likely)
  }
  const weights = [...parts.values()]
  const all = weights.reduce((sum, one) => sum + one, 0)
  return all > 0 ? Math.max(...weights) / all : 1
}

/** How many one batch may be: what the bowl mixes and what the floor holds. */
function mostAtOnce({vessels: {receipt, kind}, each}: Filled, floor: number, {day, say}: Pick<Sizing, 'day' | 'say'>): number {
  const {bowl} = day
  if (bowl === undefined || notMixed.has(kind.id)) return floor
  const once = each * largestPart(receipt)
  const mixed = Math.floor((bowl / once) * (1 + bowlKnown))
  if (mixed < 1) {
    say(
      'warning',
      'scale-bowl',
      `one vessel of “${receipt.title}” is ${kilograms(once)}, more than the bowl mixes (${kilograms(bowl)})`,
      'mix it in two goes, or use a smaller vessel',
    )
    return 1
  }
  return Math.min(floor, mixed)
}
