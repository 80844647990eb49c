import Fraction from 'fraction.js'
import type {Inferred} from '../receipt/types.js'
import type {Asked} from './amount-phrase.js'
import {mostFloors} from './batches.js'
import {countedAs, vesselsOf} from './counted.js'
import {type CountedItem, countedItem} from './counted-item.js'
import type {InVessels} from './in-vessels.js'
import {meantFill} from './makes.js'
import {kilograms, percentOf, span} from './reason-figures.js'
import type {DayAmount, Vessel} from './types.js'
import {isSheet} from './vessel.js'
import {inWholePieces} from './whole-piece.js'

/** How many vessels are asked for, and how many times that makes the receipt. */
export interface Order {
  readonly count: number
  readonly times: Fraction
  /** Pieces asked for, where the order was in pieces. */
  readonly pieces: number | null
  readonly why: Inferred | null
  /** Of what is to fill the floor: how many stand on it at once. */
  readonly fills?: number
}

/** An order that cannot be made, and what to write instead. */
export interface Unread {
  readonly reason: string
  readonly suggest?: string
}

/** An order as it stands in its vessels. */
export interface Filled {
  readonly item: DayAmount
  readonly asked: Asked
  readonly vessels: InVessels
  readonly order: Order
  /** Kilograms in each, and the vessel with so much in it. */
  readonly each: number
  readonly vessel: Vessel
}

type AskedAs<K extends Asked['kind']> = Extract<Asked, {readonly kind: K}>

/**
 * What the day asks as whole vessels.
 *
 * @param floor how many of the vessel stand on the empty floor; asked only if needed
 */
export function orderOf(
  asked: Asked,
  vessels: InVessels,
  floor: () => number,
  item: Pick<DayAmount, 'amount' | 'atMost' | 'limit'>,
): Order | Unread {
  switch (asked.kind) {
    case 'people':
      return forPeople(asked.people, vessels)
    case 'count':
      return asked.each === undefined ? inNumber(asked, vessels) : ofWeightEach(asked, asked.each, vessels, item.amount)
    case 'times':
      return soOften(asked.times, vessels)
    case 'weight':
      return byWeight(asked, vessels, item.amount)
    case 'floor':
      return fillingTheFloor(floor(), asked.share ?? new Fraction(1), vessels, item)
  }
}

/** So many vessels as full as the receipt has them, and one more for what is over: of what takes several, as many more as finish the last. */
function whole(vessels: number, {made}: InVessels, apiece = 1): Order {
  const count = apiece * Math.max(1, Math.ceil(vessels / apiece - 1e-9))
  return {count, times: made.timesEach.mul(count), pieces: null, why: null}
}

function forPeople(people: number, vessels: InVessels): Order {
  const {feedsEach, shape} = vessels
  const order = whole(people / feedsEach.likely, vessels, vessels.made.apiece)
  return {
    ...order,
    why: {
      field: 'count',
      value: `${order.count} × ${shape.name}`,
      why: `for ${people} at about ${Math.round(feedsEach.likely * 10) / 10} to each; ${span(Math.floor(order.count * feedsEach.low), Math.ceil(order.count * feedsEach.high))} would be fed`,
    },
  }
}

const unweighed: Unread = {reason: 'nothing in this receipt can be weighed, so it cannot be made by weight'}

/** What so many kilograms out of the oven weigh before it. */
const unbaked = (baked: number, {kind}: InVessels): number => baked / (1 - kind.waterLoss.likely)

/** What is less than this share of what one vessel takes is nothing that anybody bakes, but a slip of the unit. Common practice, no source. */
const leastShare = 1 / 50

const nextToNothing = (amount: string | null, {made, shape}: InVessels): Unread => ({
  reason: `“${amount}” is next to nothing: ${kilograms(meantFill(made))} goes into one ${shape.name}`,
  suggest: 'write how much in kg, g, lb or oz, such as “3 kg”, or how many, such as “2 times”',
})

const goesOff = ({kind: {waterLoss}}: InVessels): string =>
  `${Math.round(waterLoss.low * 100)}–${percentOf(waterLoss.high)} of its weight goes off in the oven`

/** “Six 4-lb loaves”, “12 rolls of 80 g”. */
function ofWeightEach(
  asked: AskedAs<'count'>,
  {kilograms: said, baked}: NonNullable<AskedAs<'count'>['each']>,
  vessels: InVessels,
  amount: string | null,
): Order | Unread {
  const {mass, made, shape, receipt} = vessels
  const item = countedItem(asked.of, receipt)
  if (item !== null) return ofItemsEach(asked, item, said, vessels)
  if (mass === null) return unweighed
  const each = baked ? unbaked(said, vessels) : said
  const times = new Fraction(each * asked.count).div(new Fraction(mass.likely)).simplify(0.0005)
  const as = countedAs(asked.of, receipt, shape, made.apiece)
  if (made.pieces === null && !isSheet(shape.size) && each < leastShare * made.each) return nextToNothing(amount, vessels)
  const apart = as !== 'vessels' && isSheet(shape.size)
  const apiece = as === 'pieces' ? (made.apiece ?? 1) : 1
  const count = apart ? Math.max(1, nearest((each * asked.count) / meantFill(made))) : apiece * asked.count
  return {
    count,
    times,
    pieces: apart ? asked.count : null,
    why: {
      field: 'count',
      value: `${count} × ${vessels.vesselAt((each * asked.count) / count).name}`,
      why: baked
        ? `${asked.count} ${asked.of} of ${kilograms(said)} when baked: ${kilograms(each)} each of mixture before baking, for ${goesOff(vessels)}`
        : `${asked.count} ${asked.of} of ${kilograms(each)} each before baking`,
    },
  }
}

/** “24 apples of 200 g”: what is bought by the piece is weighed as it goes in. */
function ofItemsEach(asked: AskedAs<'count'>, {count, each}: CountedItem, said: number, vessels: InVessels): Order | Unread {
  if (each === null)
    return {
      reason: `what one of the ${asked.of} of this receipt weighs is not known`,
      suggest: `write “${asked.count} ${asked.of}”`,
    }
  const times = new Fraction(said * asked.count).div(new Fraction(each * count)).simplify(0.0005)
  return inPieces(asked, times, vessels)
}

/** “2 tins”, “36 rolls”, “24 slices”. */
function inNumber(asked: AskedAs<'count'>, vessels: InVessels): Order | Unread {
  const {made, shape, receipt} = vessels
  const as = countedAs(asked.of, receipt, shape, made.apiece)
  const item = made.pieces !== null && as === 'pieces' ? null : countedItem(asked.of, receipt)
  if (item !== null) return inPieces(asked, new Fraction(asked.count).div(new Fraction(item.count)), vessels)
  if (made.pieces === null && as === 'cut') return untold(asked)
  if (as === 'pieces' && made.apiece !== undefined) return inSeveral(asked, made.apiece, vessels)
  // Two focaccie are two sheets; thirty pasties are not thirty.
  if (made.pieces === null && as === 'pieces' && isSheet(shape.size) && asked.count > 4 * Math.max(1, made.vessels))
    return untold(asked, isSheet(shape.size))
  if (as === 'vessels' || made.pieces === null) return whole(asked.count, vessels)
  return inPieces(asked, new Fraction(asked.count).div(new Fraction(made.pieces).simplify(0.001)), vessels)
}

/** So many pieces, with which the receipt is made so many times, in the vessels that takes. */
function inPieces(asked: AskedAs<'count'>, times: Fraction, {made, shape}: InVessels): Order {
  const count = Math.max(1, Math.ceil(times.valueOf() * made.vessels - 0.15))
  return {
    count,
    times,
    pieces: asked.count,
    why: {
      field: 'count',
      value: `${count} × ${shape.name}`,
      why:
        asked.count < count
          ? `${asked.count} ${asked.of}, in ${count} ${isSheet(shape.size) ? 'sheets' : 'vessels'}`
          : `${asked.count} ${asked.of}, ${Math.ceil(asked.count / count)} to a ${isSheet(shape.size) ? 'sheet' : 'vessel'}`,
    },
  }
}

/** “2 cakes” of two tins each. */
function inSeveral({count, of}: AskedAs<'count'>, apiece: number, vessels: InVessels): Order {
  const order = whole(count * apiece, vessels, apiece)
  const why = `${count} ${of}, in ${order.count} vessels`
  return {...order, why: {field: 'count', value: `${order.count} × ${vessels.shape.name}`, why}}
}

/** That a receipt does not say how many of its pieces a vessel holds. */
const untold = ({count, of}: AskedAs<'count'>, onSheets = false): Unread => ({
  reason: `“${count} ${of}”: the receipt does not say how many it makes`,
  suggest: onSheets
    ? `write “2 sheets” or “for ${count}”, or in the receipt “Makes 12 ${of}”`
    : `write “2 tins” or “for ${count}”, or in the receipt “Makes 12 ${of}”`,
})

function soOften(times: Fraction, {made}: InVessels): Order {
  const count = Math.max(1, Math.ceil(times.valueOf() * made.vessels - 0.1))
  return {count, times, pieces: made.pieces === null ? null : Math.round(times.valueOf() * made.pieces), why: null}
}

/** “3 kg”, “6 lb of dough”, “6 lb of bread”. */
function byWeight(asked: AskedAs<'weight'>, vessels: InVessels, amount: string | null): Order | Unread {
  const {mass, made, most} = vessels
  if (mass === null) return unweighed
  const all = asked.baked === undefined ? asked.kilograms : unbaked(asked.kilograms, vessels)
  const times = new Fraction(all).div(new Fraction(mass.likely)).simplify(0.0005)
  if (all < leastShare * meantFill(made)) return nextToNothing(amount, vessels)
  const count = Math.max(1, nearest(all / meantFill(made)), Math.ceil(all / most - 1e-9))
  const before = `${kilograms(all)} of mixture before baking, ${kilograms(all / count)} in each`
  return {
    count,
    times,
    pieces: null,
    why: {
      field: 'count',
      value: `${count} × ${vessels.vesselAt(all / count).name}`,
      why: asked.baked === undefined ? before : `${kilograms(asked.kilograms)} when baked: ${before}, for ${goesOff(vessels)}`,
    },
  }
}

/** The whole number nearest by its ratio: one and a half tins' worth is rather three quarters in each of two than half as much again in one. */
function nearest(vessels: number): number {
  const fewer = Math.floor(vessels)
  return vessels * vessels > fewer * (fewer + 1) ? fewer + 1 : fewer
}

/** What keeps more than so many out, of what is to fill the floor. */
const noMore = {
  heat: 'this day has no heat or no time for more',
  hands: 'this day has no hands for more',
  others: 'what else this day bakes leaves no place for more',
} as const

function fillingTheFloor(
  stand: number,
  share: Fraction,
  vessels: InVessels,
  {amount, atMost, limit}: Pick<DayAmount, 'amount' | 'atMost' | 'limit'>,
): Order | Unread {
  const {name} = vessels.shape
  if (stand === 0) return {reason: `${name} does not go into this oven`}
  if (share.compare(1) > 0) return moreThanFull(stand, share, vessels, amount ?? '')
  const fills = Math.max(1, Math.floor(share.valueOf() * stand + 1e-9))
  const count = Math.min(fills, atMost ?? fills)
  const asked = share.equals(1)
    ? `${stand} stand on the floor at once`
    : `${fills} of ${stand} that stand on the floor at once are asked for`
  const full = share.equals(1) ? 'as many as stand on the floor at once' : asked
  return {
    ...whole(count, vessels),
    fills,
    why: {
      field: 'count',
      value: `${count} × ${name}`,
      why: count < fills ? `${asked}, and ${limit === undefined ? 'the plan has a place for so many' : noMore[limit]}` : full,
    },
  }
}

/** That more than one floor full is asked for: each is a load of its own, so it is asked for by number. */
function moreThanFull(stand: number, share: Fraction, {receipt, shape, made}: InVessels, amount: string): Unread {
  const noun = isSheet(shape.size) ? 'sheets' : made.pieces === null ? vesselsOf(receipt) : 'tins'
  const all = Math.ceil(share.valueOf() * stand - 1e-9)
  return {
    reason: `“${amount}” is more than stands on the floor at once, which is ${stand} × ${shape.name}`,
    suggest:
      share.compare(mostFloors) > 0
        ? 'write “fill the floor”, or how many'
        : `write “fill the floor” for one load, or “${all} ${noun}” for as many as that`,
  }
}

/** An order in so many vessels as the day says: they share what is asked for, however full that makes them. */
export function orderAmong(asked: Asked, many: number, order: Order, vessels: InVessels): Order {
  const {made, feedsEach, asWritten, receipt, shape} = vessels
  // “2 pies in 1 oblong tin” is what two of its own vessels hold, and 2 cakes of two tins each what four do.
  const ownVessels = (counted: AskedAs<'count'>): number =>
    counted.count * (countedAs(counted.of, receipt, shape, made.apiece) === 'pieces' ? (made.apiece ?? 1) : 1)
  const times =
    asked.kind === 'people'
      ? new Fraction((made.timesEach.valueOf() * asked.people) / feedsEach.likely).simplify(0.005)
      : asked.kind === 'count' && order.pieces === null
        ? asWritten.timesEach.mul(ownVessels(asked))
        : order.times
  const each = massIn(vessels, times, many)
  return {
    count: many,
    times,
    pieces: order.pieces,
    why: {
      field: 'count',
      value: `${many} × ${vessels.vesselAt(each).name}`,
      why:
        asked.among?.filled === true
          ? `as many as that fills, with ${kilograms(each)} in each`
          : `as many as the day says, with ${kilograms(each)} in each`,
    },
  }
}

/** An order of what goes in whole, which is not divided: as many as it takes; of a weight, as near to it as may be. */
export function wholePiecesOf(asked: Asked, order: Order, {shape: {whole, name}}: InVessels): Order {
  if (whole?.counted !== true || (asked.kind === 'count' && asked.each !== undefined)) return order
  const found = inWholePieces(whole, order.times, asked.kind === 'weight')
  if (Math.abs(found.times.div(order.times).valueOf() - 1) < 0.01 && found.count === order.count) return order
  const count = asked.among === undefined ? found.count : Math.min(asked.among.count, found.pieces)
  const why = `what goes in whole is not divided: ${found.pieces} of it`
  return {...order, count, times: found.times, why: {field: 'count', value: `${count} × ${name}`, why}}
}

/** Kilograms in each of so many vessels that share the receipt made so many times. */
const massIn = ({mass, made}: InVessels, times: Fraction, count: number): number =>
  mass === null ? made.each : (mass.likely * times.valueOf()) / count

/** The order in its vessels, each as full as that makes it. */
export function filledWithOrder(item: DayAmount, asked: Asked, vessels: InVessels, order: Order): Filled {
  const each = massIn(vessels, order.times, order.count)
  return {item, asked, vessels, order, each, vessel: vessels.vesselAt(each)}
}
