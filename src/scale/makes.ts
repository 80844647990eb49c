import Fraction from 'fraction.js'
import {asked as words} from '../lexicon/asked-words.js'
import {fold, lookUpMeasure} from '../lexicon/index.js'
import type {Range} from '../lexicon/schema.js'
import {fold as plainFold} from '../receipt/section.js'
import type {Inferred, Receipt, VesselsSaid} from '../receipt/types.js'
import {readVessel, type VesselSize} from '../receipt/vessel.js'
import {brimVolume} from '../receipt/vessel-capacity.js'
import {holds} from './holding.js'
import type {KindFigures} from './kind-figures.js'
import {asStated, type Shape} from './own-vessel.js'
import {pieceMass} from './pieces.js'
import {kilograms} from './reason-figures.js'
import {coversSheet} from './tray.js'
import {isFree, isSheet} from './vessel.js'

/** How many vessels, or pieces, the receipt makes once. */
export interface Makes {
  readonly vessels: number
  /** How many times the receipt is made for one vessel. */
  readonly timesEach: Fraction
  readonly pieces: number | null
  /** How many vessels one of what it makes takes, where its method says more than one: two tins to a cake. */
  readonly apiece?: number
  /** Kilograms in one vessel when the receipt is made as written, and when it is filled as usual. */
  readonly each: number
  readonly usual: number
  readonly inferred: readonly Inferred[]
}

/** Kilograms of loaves, before baking, that lie on one sheet. Common practice, no source: two of two and a half pounds. */
const sheetOfLoaves = 2.5

/** What a receipt makes when it is made once, counted in a vessel. `mass`: of its mixture, kg; null where nothing of it can be weighed. */
export function makes(receipt: Receipt, kind: KindFigures, shape: Shape, mass: Range | null): Makes {
  const made = madeIn(receipt, kind, shape, mass)
  return {...made, timesEach: new Fraction(1, made.vessels)}
}

function madeIn(receipt: Receipt, kind: KindFigures, shape: Shape, mass: Range | null): Omit<Makes, 'timesEach'> {
  const inferred: Inferred[] = []
  const serves = receipt.serves
  const noun = serves === null ? '' : (serves.of.toLowerCase().split(/\s+/).pop() ?? '')
  const persons = countsPeople(noun)
  // "Enough for a quart" counts no vessels.
  const measured = words.measure.has(fold(noun)) || lookUpMeasure(fold(noun))?.dimension === 'mass'
  const yields = serves === null || persons || measured ? null : (serves.low + serves.high) / 2
  const usualEach = shape.stated || !kind.known ? holds(shape.size, kind) : kind.mass.likely
  const said = isSheet(shape.size) || isFree(shape.size) ? undefined : receipt.vessels
  // Far more than goes in is for another vessel than we take it for: one that is mixed in, or for one of many.
  const bears = said !== undefined && (mass === null || mass.likely / said.count < usualEach * 3)
  const shared = (vessels: number, pieces: number | null): Omit<Makes, 'timesEach'> => ({
    vessels,
    pieces,
    each: mass === null ? usualEach : mass.likely / vessels,
    usual: usualEach,
    inferred,
  })
  if (yields !== null && yields > 0 && serves?.vessels !== undefined) {
    return shared(serves.vessels, yields)
  }
  const onSheets = sheetsSaid(receipt, shape)
  if (onSheets !== null && yields !== null && yields > onSheets.count) {
    const most = (ARTICLE.test(onSheets.text) ? looselySaid : plainlySaid) * usualEach
    if (mass === null || mass.likely / onSheets.count <= most) {
      inferred.push(methodSays(onSheets, `${onSheets.count} × ${shape.name}`))
      return shared(onSheets.count, yields)
    }
  }
  // What covers its sheet in one piece lies on as many as its method says, however thick.
  if (onSheets !== null && mass !== null && (yields ?? 1) <= 1 && coversSheet(kind, {pieces: null, vessels: 1})) {
    const most = (ARTICLE.test(onSheets.text) ? looselySaid : plainlySaid) * usualEach
    if (mass.likely / onSheets.count <= most) {
      inferred.push(methodSays(onSheets, `${onSheets.count} × ${shape.name}`))
      return shared(onSheets.count, null)
    }
  }
  const {whole} = shape
  if (whole !== undefined) {
    const value = `${whole.vessels} × ${shape.name}`
    if (said !== undefined && said.count === whole.vessels) inferred.push(methodSays(said, value))
    else if (whole.vessels === whole.pieces) inferred.push({field: 'makes', value, why: 'what goes in whole has a tin each'})
    return {...shared(whole.vessels, null), usual: whole.each}
  }
  const several = said === undefined ? null : apieceOf(yields, noun, said.count, kind)
  if (several !== null && said !== undefined) {
    inferred.push(methodSays(said, `${said.count} × ${shape.name}`))
    return {...shared(said.count, null), apiece: several}
  }
  if (yields !== null && yields > 0) {
    const each = mass === null ? usualEach : mass.likely / yields
    // "12 cakes" out of one pound of flour are small ones on a sheet, not twelve tins.
    if (
      !isSheet(shape.size) &&
      // Billets are laid side by side, on whatever they lie.
      kind.uneaten !== true &&
      // Of what stands in no tin nothing is cut: its pieces are loaves.
      (!words.cut.has(fold(noun)) || isFree(shape.size)) &&
      each < usualEach * 3 &&
      (each > usualEach / 4 || words.vessel.has(fold(noun)))
    )
      return {vessels: Math.max(1, Math.round(yields)), pieces: null, each, usual: usualEach, inferred}
    // "One tray": that is what it is made for, whatever it weighs. "Six tartlet tins" stand on a sheet.
    if (isSheet(shape.size) && words.vessel.has(fold(noun)) && (yields <= 1 || each > usualEach / 4)) {
      return shared(Math.max(1, Math.round(yields)), null)
    }
    // What lies on a sheet in one piece takes one.
    if (isSheet(shape.size) && yields <= 1) return shared(1, 1)
    if (bears) return shared(said.count, yields)
    // Loaves that would stand on the floor by themselves lie several to a sheet.
    const onSheet =
      isSheet(shape.size) && kind.vessel.startsWith('free-standing loaf') ? Math.max(usualEach, sheetOfLoaves) : usualEach
    const sheets = mass === null ? Math.max(1, Math.round(yields / 16)) : Math.max(1, Math.ceil(mass.likely / onSheet - 0.25))
    return shared(sheets, yields)
  }
  if (mass === null) {
    inferred.push({
      field: 'amount',
      value: '1 vessel',
      why: 'nothing that fills it can be weighed; the receipt is taken to fill one vessel',
    })
    return shared(said?.count ?? 1, null)
  }
  const vessels = bears ? said.count : Math.max(1, Math.round(mass.likely / usualEach))
  const weighed = `its ${kilograms(mass.likely)} at about ${kilograms(usualEach)} each`
  const value = `${vessels} × ${asStated(shape, receipt, kind, {each: mass.likely / vessels, pieces: null}, mass).name}`
  if (bears) inferred.push(methodSays(said, value))
  else
    inferred.push({
      field: 'makes',
      value,
      why:
        said === undefined
          ? `the receipt does not say how much it makes; ${weighed}`
          : `its method says “${said.text.replace(/\s+/g, ' ')}”, and that is too small for it; ${weighed}`,
    })
  let pieces: number | null = null
  const piece = pieceMass[kind.id]
  if (isSheet(shape.size) && piece !== undefined) pieces = Math.max(1, Math.round(mass.likely / piece.likely))
  return shared(vessels, pieces)
}

/** The sheets that the method itself has its pieces on, with their size: "all 24 on one baking sheet 40 x 30 cm". Null of any other vessel. */
function sheetsSaid({vessels}: Receipt, {size}: Shape): VesselsSaid | null {
  if (vessels === undefined || !isSheet(size)) return null
  const read = readVessel(vessels.text)
  const same = read.ok && isSheet(read.value) && read.value.length === size.length && read.value.width === size.width
  return same ? vessels : null
}

/** "On a sheet" may be one after another; "on one sheet" is not. */
const ARTICLE = /^(?:an?|your|my|eine[mnr]?|ein)\b/i
/** So many times what its kind has on a sheet lies on each where the receipt says so, and by an article only. Common practice, no source. */
const plainlySaid = 3
const looselySaid = 2

const methodSays = ({text}: VesselsSaid, value: string): Inferred => ({
  field: 'makes',
  value,
  why: `its method says “${text.replace(/\s+/g, ' ')}”`,
})

/**
 * How many vessels one of what a receipt makes takes: "makes 1 cake", and its method has two tins. What is put together from its tins is one,
 * where no count says otherwise. Null where each has one, or several share one.
 *
 * @param yields how many it makes, by `noun`; null where it does not say
 * @param said how many vessels its method bakes in
 */
function apieceOf(yields: number | null, noun: string, said: number, {layered}: KindFigures): number | null {
  const counted = yields === null || words.vessel.has(fold(noun)) ? null : yields
  const each = counted === null ? (layered === true ? said : 1) : said / counted
  return each > 1 && Number.isInteger(each) ? each : null
}

/**
 * Kilograms in a vessel as it is meant to be filled, where an order by weight leaves that open. A receipt that hardly covers the bottom is no
 * guide to it.
 */
export const meantFill = (made: Makes): number => (made.each < 0.4 * made.usual ? made.usual : made.each)

/** Whether a yield's noun counts those who are fed, and nothing that is made. */
export const countsPeople = (of: string): boolean => words.persons.has(plainFold(of))

/** Kilograms before baking of a piece that is one person's: rolls and biscuits weigh less. Common practice, no source. */
const portion = {low: 0.12, high: 0.4} as const

/** A round dish that holds no more, m³, is one person's: a custard cup, a ramekin. Common practice, no source. */
const ownCup = 0.45e-3

/** Whether what a vessel holds is one person's by its size. */
const isOwnCup = (size: VesselSize): boolean => size.shape === 'round' && brimVolume(size) <= ownCup

/** People that one vessel feeds when the receipt is made as written. */
export function feedsOf(receipt: Receipt, kind: KindFigures, made: Makes, size: VesselSize): Range {
  const serves = receipt.facts.serves
  if (serves !== undefined) return {low: serves / made.vessels, likely: serves / made.vessels, high: serves / made.vessels}
  const persons = receipt.feeds ?? receipt.serves
  if (persons !== null && countsPeople(persons.of)) {
    const {low, high} = persons
    return {low: low / made.vessels, likely: (low + high) / 2 / made.vessels, high: high / made.vessels}
  }
  // A pasty or a pie of its own is one to each.
  const piece = made.pieces === null ? 0 : (made.each * made.vessels) / made.pieces
  if (made.pieces !== null && piece >= portion.low && piece <= portion.high) {
    const pieces = made.pieces / made.vessels
    return {low: 0.75 * pieces, likely: pieces, high: 1.25 * pieces}
  }
  if (isOwnCup(size)) return {low: 0.75, likely: 1, high: 1.25}
  // The kind's figure belongs to its usual weight; a smaller or larger vessel feeds in proportion.
  const share = Math.min(3, Math.max(0.3, made.each / kind.mass.likely))
  return {low: kind.feeds.low * share, likely: kind.feeds.likely * share, high: kind.feeds.high * share}
}
