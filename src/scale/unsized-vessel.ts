import {foldAll} from '../lexicon/index.js'
import type {Receipt} from '../receipt/types.js'
import {readVessel, type VesselShape, type VesselSize} from '../receipt/vessel.js'
import type {Asked} from './amount-phrase.js'
import {batchMass} from './batch-mass.js'
import {countedAs, madeOf} from './counted.js'
import {takes} from './holding.js'
import type {KindFigures} from './kind-figures.js'
import {makes} from './makes.js'
import {type NamedVessel, namedVessel} from './named-vessel.js'
import {instead} from './other-vessel.js'
import {type Shape, shapeOf, usualShapeOf} from './own-vessel.js'
import {pieceMass} from './pieces.js'
import type {Say} from './sizing.js'
import type {DayAmount} from './types.js'
import {isFree, isSheet} from './vessel.js'
import {inHalves, inInches, vesselName, vesselWritten} from './vessel-written.js'

/** The shape that a day's words name and the receipt's own vessel is not; null where they do not gainsay it. */
function otherShape({shape, of}: NamedVessel, own: VesselSize, kind: KindFigures): VesselShape | null {
  switch (shape) {
    case 'tin':
      return isFree(own) ? 'loaf' : null
    case 'free-standing':
      // Cobs are rolls too.
      return kind.dough === undefined || pieceMass[kind.id] !== undefined || isFree(own) || isSheet(own) ? null : shape
    case 'sheet':
      return own.shape === 'square' || own.shape === 'oblong' || isSheet(own) ? null : shape
    case 'round':
    case 'square':
    case 'oblong':
      // A round loaf is one without a tin; of what stands in none or on a sheet its own shape is told, and no vessel's.
      if (of === 'bread') return shape === 'round' && own.shape === 'loaf' ? 'free-standing' : null
      if (of === 'other' && (isFree(own) || isSheet(own) || own.shape === 'crock')) return null
      // "Oblong tins" are loaf tins of old, and a pie plate is round.
      if ((shape === 'oblong' && own.shape === 'loaf') || (shape === 'round' && own.shape === 'pie plate')) return null
      return own.shape === shape ? null : shape
    default:
      return own.shape === shape ? null : shape
  }
}

/** What a vessel of each shape is called where only its shape is known. */
const plainly: Readonly<Record<VesselShape, string>> = {
  round: 'round tin',
  square: 'square tin',
  oblong: 'oblong tin',
  loaf: 'loaf tin',
  'pie plate': 'pie plate',
  crock: 'crock',
  'free-standing': 'free-standing loaf',
  sheet: 'sheet',
}

/** The usual vessel of a shape: its kind's, else what the shape is taken to measure. */
function usualOf(shape: VesselShape, own: Shape, kind: KindFigures): {readonly size: VesselSize; readonly name: string} | null {
  const ofKind = usualShapeOf(own, kind)
  const usual = readVessel(plainly[shape])
  const size = ofKind.size.shape === shape ? ofKind.size : usual.ok ? usual.value : null
  if (size === null) return null
  const inches = inInches(own.name)
  const name = vesselName(inHalves(size, inches), inches)
  const told = readVessel(name)
  return told.ok ? {size: told.value, name} : null
}

/**
 * What a day asks, in the vessel that its words name without a size where that is another than the receipt's: the usual one of its shape,
 * which is told (`scale-shape`) where the receipt says another. Loaves without a tin need no size, and are of the receipt's dough.
 */
export function inNamedVessel(item: DayAmount, asked: Asked, receipt: Receipt, kind: KindFigures, say: Say): Asked {
  const counted = asked.kind === 'count' ? asked : null
  if (asked.vessel !== undefined || counted?.across !== undefined) return asked
  const said = asked.named ?? counted?.of
  const own = said === undefined ? null : shapeOf(receipt, kind)
  const named = said === undefined ? null : namedVessel(said)
  if (said === undefined || own === null || named === null || itsOwnName(named, item, receipt)) return asked
  const shape = otherShape(named, own.size, kind)
  const usual = shape === null ? null : usualOf(shape, own, kind)
  if (shape === null || usual === null) return asked
  const vessel = {...usual, unsized: true as const}
  if (shape === 'free-standing') return {...asked, vessel}
  const at = item.amountAt?.[item.amountAt.length - said.split(' ').length]
  if (shape === 'sheet' && asked.named === undefined && counted !== null) {
    say(
      'warning',
      'scale-shape',
      `“${said}” does not say how many of “${receipt.title}” stand on each: taken as ${counted.count} × ${own.name}`,
      `write how many of what it makes, such as “${counted.count} ${madeOf(receipt)}”`,
      at,
    )
    return asked
  }
  const filled = counted === null || asked.among !== undefined ? null : filledBy(counted, usual, own, receipt, kind)
  const among = filled === null ? {} : {among: {count: filled, word: 0, filled: true as const}}
  // Where the receipt has no vessel of its own, the usual one is no other than it says.
  if (!own.stated) return {...asked, vessel, ...among}
  const count = asked.among?.count ?? filled ?? counted?.count ?? null
  const sized = vesselWritten(usual.size, inInches(own.name), count !== 1)
  const before =
    filled !== null ? `${counted!.count} ${counted!.of} in ` : counted === null || asked.named !== undefined ? 'in ' : ''
  say(
    'warning',
    'scale-shape',
    `“${said}” says no size, and “${receipt.title}” is written for ${own.name}: taken as ${usual.name}, the usual one`,
    `write the vessel with its sizes, such as “${before}${count === null ? '' : `${count} `}${sized}”`,
    at,
  )
  return {...asked, vessel, ...among}
}

/** A vessel that takes so many times what one of those counted is holds several of them, and is not what was counted. Common practice, no source. */
const severalInOne = 3

/**
 * How many vessels “8 loaves in crocks” fill, where one takes several times what a loaf is: the dough is that of the loaves. Null where each is
 * one of them.
 */
function filledBy(
  {count, of, named}: Extract<Asked, {readonly kind: 'count'}>,
  usual: {readonly size: VesselSize; readonly name: string},
  own: Shape,
  receipt: Receipt,
  kind: KindFigures,
): number | null {
  if (named === undefined || named === of || countedAs(of, receipt, own) === 'cut') return null
  const {mass} = batchMass(receipt, kind)
  const made = makes(receipt, kind, own, mass)
  if (mass === null || made.pieces !== null) return null
  const one = instead(own, {...usual, unsized: true}, kind, made).made.each
  if (one < severalInOne * made.each) return null
  const all = count * made.each
  return Math.max(1, Math.round(all / one), Math.ceil(all / takes(usual.size, kind) - 1e-9))
}

/** Whether the words are those by which the receipt is called, or counts what it makes: "4 tin loaves" of a "Tin Loaf". */
function itsOwnName({by}: NamedVessel, item: DayAmount, {title, serves}: Receipt): boolean {
  const own = new Set([title, item.title, serves?.of ?? ''].flatMap((text) => foldAll(text)))
  return by.every((word) => own.has(word))
}
