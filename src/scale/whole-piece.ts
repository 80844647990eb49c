import Fraction from 'fraction.js'
import {lookUpItem} from '../lexicon/index.js'
import type {Range, WholePiece} from '../lexicon/schema.js'
import {wholePieces} from '../lexicon/whole-pieces.js'
import {scaled} from '../measure/range.js'
import {saysCutUp} from '../receipt/cut-up.js'
import {isFlesh, wordsWritten} from '../receipt/flesh.js'
import type {Ingredient, Receipt} from '../receipt/types.js'
import type {VesselSize} from '../receipt/vessel.js'
import type {Vessel} from './types.js'

/** A bird, a joint or a fish that goes into the oven whole: it is as high as it is whatever it lies in, and is not shared out among tins. */
export interface Whole {
  /** How many the receipt has when it is made once, and in how many tins they lie. */
  readonly pieces: number
  readonly vessels: number
  /** The receipt counts them; else it weighs what is taken for one. */
  readonly counted: boolean
  /** Kilograms of one. */
  readonly mass: number
  /** The receipt gives no weight of it: its words, the kilograms one may have, and the ids of the sources of those. */
  readonly assumed?: {readonly text: string; readonly mass: Range; readonly sources: readonly string[]}
  /** Sides of one, metres. */
  readonly length: number
  readonly width: number
  readonly height: number
}

/**
 * What of a receipt would go in whole but for its weight, which neither it nor a table gives: "a haunch of venison".
 *
 * @param kind id of its kind
 * @returns its words; null where there is none
 */
export function unweighedWhole({ingredients, cutUp}: Receipt, kind: string): string | null {
  if (cutUp !== undefined || ingredients.some((one) => one.grams !== null && isFlesh(one.item))) return null
  const one = ingredients.find((one) => one.grams === null && rowOf(kind, one) !== null)
  return one === undefined ? null : one.text.replace(/\s+/g, ' ')
}

/** More than this of one thing lie several to a tin. Common practice, no source. */
const mostPieces = 12

const rowOf = (kind: string, {item, text}: Ingredient): WholePiece | null => {
  const said = wordsWritten(text)
  if (said.some(saysCutUp)) return null
  const id = lookUpItem(item)?.id ?? ''
  const among = (words: readonly string[] | undefined): boolean => words?.some((word) => said.includes(word)) === true
  const holds = ({items, words}: WholePiece): boolean =>
    items === undefined && words === undefined ? isFlesh(item) : items?.includes(id) === true || among(words)
  return wholePieces.find((row) => row.kinds.includes(kind) && holds(row) && !among(row.apart)) ?? null
}

/**
 * What of a receipt goes in whole: the heaviest of its meat, poultry or fish, where its kind is baked so and it is large enough.
 *
 * @param kind id of its kind
 * @returns null where nothing does, or its weight or its number is not told
 */
export function wholeOf({ingredients, vessels, serves, cutUp}: Receipt, kind: string): Whole | null {
  if (cutUp !== undefined) return null
  const weighed = ingredients.flatMap((one) => {
    const row = one.grams === null || one.amount === null ? null : rowOf(kind, one)
    return row === null ? [] : [{one, row, kilograms: one.grams!.likely / 1000}]
  })
  const heaviest = weighed.reduce<(typeof weighed)[number] | null>(
    (most, next) => (most === null || next.kilograms > most.kilograms ? next : most),
    null,
  )
  if (heaviest === null) return null
  const {one, row, kilograms} = heaviest
  const {low, high} = one.amount!
  const counted = one.measure === 'count'
  if (counted && (low !== high || !Number.isInteger(low) || low > mostPieces)) return null
  if (!counted && kilograms > (row.byWeight ?? 0)) return null
  const pieces = counted && row.together !== true ? low : 1
  const mass = kilograms / pieces
  if (pieces < 1 || mass < row.least) return null
  const said = serves?.vessels ?? vessels?.count ?? pieces
  const k = Math.cbrt(mass)
  return {
    pieces,
    vessels: said < pieces && pieces % said === 0 ? said : pieces,
    counted,
    mass,
    ...(counted && one.stated === undefined
      ? {assumed: {text: one.text.replace(/\s+/g, ' '), mass: scaled(one.grams!, 1 / (1000 * pieces)), sources: one.sources}}
      : {}),
    length: row.length * k,
    width: row.width * k,
    height: row.height * k,
  }
}

/** How far a tin stands out round what lies in it, m. Common practice, no source. */
const round = 0.02

/** The sides of what lies in one tin, metres: several side by side. */
export const lyingIn = ({pieces, vessels, length, width}: Whole): {readonly length: number; readonly width: number} => {
  const across = (width * pieces) / vessels
  return {length: Math.max(length, across), width: Math.min(length, across)}
}

/** The tin that it takes, no deeper than the usual one. */
export function tinFor(whole: Whole, {height}: VesselSize): VesselSize {
  const {length, width} = lyingIn(whole)
  return {shape: 'oblong', length: length + 2 * round, width: width + 2 * round, height}
}

/**
 * A tin as it stands with what goes in whole in it: as high as that is, and no narrower.
 *
 * @param tin the tin by itself
 * @param bottom how high what lies in it lies above the floor, metres
 * @param k how many times as long, wide and high one is as the receipt's
 */
export function withWhole(tin: Vessel, whole: Whole, bottom: number, k: number): Vessel {
  const {length, width} = lyingIn(whole)
  const {footprint} = tin
  return {
    ...tin,
    footprint:
      footprint.shape === 'circle'
        ? {shape: 'circle', diameter: Math.max(footprint.diameter, length * k)}
        : {
            shape: 'rectangle',
            length: Math.max(footprint.length, length * k),
            width: Math.max(footprint.width, width * k),
          },
    height: Math.max(tin.height, bottom + whole.height * k),
    halfThickness: (whole.height * k) / 2,
  }
}

/**
 * An order in whole pieces: no half of a bird is roasted.
 *
 * @param times how many times the receipt is asked for
 * @param nearest whether as near as may be is meant, and not enough
 * @returns how many pieces, in how many tins, and how many times the receipt that is
 */
export function inWholePieces(
  {pieces, vessels}: Whole,
  times: Fraction,
  nearest: boolean,
): {readonly pieces: number; readonly count: number; readonly times: Fraction} {
  const asked = times.valueOf() * pieces
  const all = Math.max(1, nearest ? Math.round(asked) : Math.ceil(asked - slightly))
  return {pieces: all, count: Math.ceil((all * vessels) / pieces - 1e-9), times: new Fraction(all, pieces)}
}

/** So little of a piece more is no other piece. Common practice, no source. */
const slightly = 0.1
