import {warmDough} from '../lexicon/dough-work.js'
import {lookUpItem} from '../lexicon/index.js'
import type {Range} from '../lexicon/schema.js'
import {exactly, plus} from '../measure/range.js'
import {isSet} from '../receipt/evening.js'
import {raisedBySoda} from '../receipt/kinds.js'
import type {Receipt, TimePhrase} from '../receipt/types.js'
import {coldPlacesOf, coldRiseOf, coldWait} from './cold-rise.js'
import type {KindFigures} from './kind-figures.js'
import type {Dish} from './types.js'

/** A sponge that works longer, minutes, is yeast that is made, and no part of the day. Common practice, no source. */
const longestSponge = 16 * 60
/** One that works so long is that of the evening before, where the receipt has one set then. Common practice, no source. */
const longSponge = 6 * 60
/** What a receipt shapes and lets rise without a time proves so long, minutes, where its kind is not of dough. Common practice, no source. */
const usualProve = 30

/** A dough's times: the receipt's own, in the order it gives them; else its kind's. */
export function doughOf(receipt: Receipt, kind: KindFigures): Dish['dough'] {
  // What is set the evening before is told as the receipt says it, and is no part of the day.
  const {facts, times, untimed = [], evening = []} = receipt
  const overnight = evening.some(({does}) => does === 'set')
  const ofDay = (time: TimePhrase): boolean =>
    time.stage !== 'sponge' ||
    !(time.minutes.low > longestSponge || isSet(evening, time) || (overnight && time.minutes.low >= longSponge))
  // What waits when the sponge has worked is the dough, unless it is a sponge by words of its own: the leaven fed once more.
  const staged = times.map((time) =>
    overnight && ofDay(time) && time.stage === 'sponge' && !time.anew ? {...time, stage: 'rise' as const} : time,
  )
  const of = (stage: TimePhrase['stage']): Range | null => {
    const [first, ...more] = staged
      .filter((time) => time.stage === stage && ofDay(time))
      .slice(0, 3)
      .map(({minutes}) => rangeOf(minutes))
    return first === undefined ? null : more.reduce(plus, first)
  }
  const sponge = of('sponge')
  const rising = facts.rise ? rangeOf(facts.rise) : of('rise')
  const proving = facts.prove ? rangeOf(facts.prove) : of('prove')
  const own = kind.dough
  if (raisedBySoda(receipt.ingredients) && !facts.rise && !facts.prove && !times.some(({of}) => of === 'rise')) return null
  // What is no dough is made one by a time to rise, not by a paste that stands rolled out.
  if (!own && !facts.rise && !facts.prove && !times.some((time) => time.of === 'rise' && time.stage !== undefined)) return null
  const {mix, shape, hold} = own ?? {mix: 20, shape: 10, hold: 30}
  const said = rising !== null || proving !== null || untimed.length > 0
  const usual = (stage: 'rise' | 'prove'): number => (said && !untimed.includes(stage) ? 0 : (own?.[stage] ?? 0))
  const rise = rising?.likely ?? usual('rise')
  const prove = proving ?? exactly(usual('prove') || (untimed.includes('prove') ? usualProve : 0))
  const cold =
    prove.low >= coldWait.from && hold < coldWait.hold
      ? ({cold: true, hold: coldWait.hold, bulkHold: hold} as const)
      : {...(prove.low >= coldWait.from ? ({cold: true} as const) : {}), hold}
  const bulk = rising && rising.high > rising.low ? {bulk: rising} : {}
  const spoils = receipt.ingredients.some(spoilsDough)
  const places = coldPlacesOf(staged, rising)
  const risesCold = coldRiseOf({rise, ...bulk, ...places, ...(spoils ? {spoils} : {})}) !== null
  return {
    ...(sponge ? {sponge} : {}),
    ...(sponge && overnight ? ({again: true} as const) : {}),
    mix,
    rise,
    ...bulk,
    shape,
    ...(prove.high > 0 ? {prove} : {}),
    ...cold,
    ...places,
    ...(risesCold && rise >= coldWait.from ? {bulkHold: Math.max(cold.hold, coldWait.hold)} : {}),
    ...(spoils ? ({spoils: true} as const) : {}),
  }
}

/** Egg or milk that is mixed into the dough, and neither laid on it nor filled in. */
function spoilsDough({item, part}: Receipt['ingredients'][number]): boolean {
  const row = lookUpItem(item)
  return row !== null && /^(?:egg|dairy)$/.test(row.group) && !warmDough.keeps.includes(row.id) && !warmDough.apart.includes(part)
}

/** What keeps for days is used as soon as it is ready, minutes. Common practice, no source. */
const keepsFor = 1440

/** A stretch of time and its middle, to five minutes: nobody works dough to the minute. */
const rangeOf = ({low, high}: {readonly low: number; readonly high: number}): Range => ({
  low,
  likely: low >= keepsFor ? low : Math.min(high, 5 * Math.round((low + high) / 10)),
  high,
})
