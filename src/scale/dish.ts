import Fraction from 'fraction.js'
import {lookUpItem} from '../lexicon/index.js'
import {scaled as scaledBy} from '../measure/range.js'
import type {EveningBefore, LeftToCool, Tending} from '../receipt/types.js'
import {holdsRawFlesh, safeCentre, signWithCentre} from './core-heat.js'
import type {Filled} from './order.js'
import {saltAndLeaven} from './salt-and-leaven.js'
import {scaled} from './scaled-amounts.js'
import type {SizeNotes} from './size-notes.js'
import type {Sizing} from './sizing.js'
import {signOf} from './tender.js'
import type {TimedByDepth} from './time-by-depth.js'
import type {Dish, EveningTask} from './types.js'

const coreOf = (celsius: number | null): Pick<Dish, 'core'> => (celsius === null ? {} : {core: celsius})

/** What one batch of an order is made a dish of. */
export interface Batch {
  readonly filled: Filled
  readonly timed: TimedByDepth
  readonly notes: SizeNotes
  /** The stages of its dough. */
  readonly dough: Dish['dough']
  /** How many vessels of it. */
  readonly count: number
  /** Which batch, from 1, of how many. */
  readonly number: number
  readonly of: number
  /** How many of its vessel stand on the floor at once. */
  readonly atOnce: number
}

/** The dish of one batch: what to weigh out, what it needs of the oven, whom it feeds. Salt beyond all measure is told (`scale-salt`). */
export function dishOf(batch: Batch, {name, used, say}: Pick<Sizing, 'name' | 'used' | 'say'>): Dish {
  const {filled, timed, notes, count} = batch
  const {item, vessels, order, each, vessel} = filled
  const {receipt, kind, made, feedsEach} = vessels
  const times = order.times.mul(new Fraction(count, order.count))
  const number = (used.get(name) ?? 0) + 1
  used.set(name, number)
  const called = item.title === '' ? receipt.title : item.title
  const ajar = receipt.ajar?.text.replace(/\s+/g, ' ')
  // Of other kinds than the dry ones the open door is often said of a part of the time.
  if (number === 1 && ajar !== undefined && kind.dry !== true)
    say(
      'warning',
      'scale-ajar',
      `“${receipt.title}” wants the door open (“${ajar}”), and the plan reckons with it shut`,
      'open it yourself where it matters, and expect it a little later',
    )
  const weighed = scaled(receipt, times)
  // "Water to cover" weighs too: a vessel with such a liquid is taken to weigh what its kind does.
  const heavy = receipt.ingredients.some((one) => one.amount === null && lookUpItem(one.item)?.group === 'liquid')
    ? Math.max(each, kind.mass.low)
    : each
  const sized = [
    ...notes.sized,
    ...weighed.notes,
    ...saltAndLeaven(receipt, kind, {times: times.valueOf(), thicker: timed.thicker, batch: each * count}, say),
  ]
  return {
    id: number === 1 ? name : `${name}-${number}`,
    title: batch.of > 1 ? `${called} (${batch.number}/${batch.of})` : called,
    file: item.file,
    kind: kind.id,
    vessel,
    ...(vessels.own.name === vessel.name ? {} : {ownVessel: vessels.own.name}),
    count,
    ...(order.fills === undefined ? {} : {fills: item.line}),
    atOnce: batch.atOnce,
    times: times.toFraction(),
    need: timed.need,
    place: kind.place,
    mass: heavy,
    water: heavy * kind.waterLoss.likely,
    wantedBy: item.wantedBy,
    dough: batch.dough,
    sign: signWithCentre(signOf(kind, receipt, timed.need, each), safeCentre(receipt, kind)),
    ...(holdsRawFlesh(receipt) ? {raw: true as const, ...coreOf(safeCentre(receipt, kind))} : {}),
    ...(kind.dry === true || kind.keeps === true ? {keeps: true as const} : {}),
    ...(kind.hot === true || item.hot === true ? {hot: true as const} : {}),
    ...(item.hot === true ? {wantedHot: true as const} : {}),
    ...(kind.crust === true ? {crust: true as const} : {}),
    ...(receipt.evening === undefined ? {} : {evening: receipt.evening.map(eveningTask)}),
    ...(kind.dry === true && ajar !== undefined ? {ajar} : {}),
    ...(receipt.cooling === undefined ? {} : {cooling: coolingTask(receipt.cooling)}),
    ...(receipt.tending === undefined ? {} : {tending: receipt.tending.map(tendingTask)}),
    // What is in the vessels feeds, not how many they are: half a receipt in one vessel feeds half as many.
    feeds: scaledBy(feedsEach, made.vessels * times.valueOf()),
    inferred: [...notes.inferred, ...sized.filter((one) => !notes.inferred.includes(one))],
    sized,
    cautions: [...new Set([...receipt.cautions.map((caution) => caution.id), ...kind.cautions])],
    ...(receipt.cautions.some((caution) => caution.first !== undefined)
      ? {first: receipt.cautions.flatMap((caution) => caution.first ?? [])}
      : {}),
    amounts: weighed.amounts,
  }
}

const coolingTask = ({text, minutes}: LeftToCool): NonNullable<Dish['cooling']> => ({
  words: text.replace(/\s+/g, ' '),
  ...(minutes === undefined ? {} : {minutes: minutes.low}),
})

const tendingTask = ({does, text, every, after, share}: Tending): NonNullable<Dish['tending']>[number] => ({
  words: text.replace(/\s+/g, ' '),
  ...(does === 'fill' ? {fills: true as const} : {}),
  ...(every === undefined ? {} : {every}),
  ...(after === undefined ? {} : {after}),
  ...(share === undefined ? {} : {share}),
})

const eveningTask = ({does, text, items, hour}: EveningBefore): EveningTask => ({
  does,
  words: text.replace(/\s+/g, ' '),
  items,
  ...(hour === undefined ? {} : {hour}),
})
