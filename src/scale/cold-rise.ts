import {warmDough} from '../lexicon/dough-work.js'
import type {ColdPlace, Range} from '../lexicon/schema.js'
import type {Message, TimePhrase} from '../receipt/types.js'
import type {DoughTimes} from './types.js'

/** Where doughs rise cold: as the receipt says, and with egg or milk in them in the refrigerator once that is longer than food may stand warm. */

/** What proves or rises so long, minutes, stands cold, and waits for the oven so long. Common practice, no source. */
export const coldWait = {from: 360, hold: 240} as const

type Stood = Pick<DoughTimes, 'rise' | 'bulk' | 'prove' | 'cold' | 'bulkIn' | 'proveIn' | 'spoils'>

/** The cold place in which a dough rises in bulk, and minutes in the warm before that; null where all of it is warm. */
export function coldRiseOf({rise, bulk, bulkIn, spoils}: Stood): {readonly place: ColdPlace['id']; readonly warm: number} | null {
  if (!spoils) return bulkIn ?? null
  if (bulkIn === undefined && (bulk?.low ?? rise) <= warmDough.minutes) return null
  return {place: 'refrigerator', warm: Math.min(bulkIn?.warm ?? 0, warmDough.minutes)}
}

/** Where a dough proves cold, shaped: in the place its receipt names, or which is open; null where it proves in the warm. */
export function coldProveOf({prove, cold, proveIn, spoils}: Stood): ColdPlace['id'] | 'cold' | null {
  const cool = cold === true || proveIn !== undefined || (spoils === true && (prove?.low ?? 0) > warmDough.minutes)
  if (!cool) return null
  return spoils ? 'refrigerator' : (proveIn ?? 'cold')
}

/**
 * Minutes for which a dough may stand in the warm, rising and proving together: no limit where nothing in it spoils; else four hours, or no longer
 * than its receipt has it at the least.
 */
export function mostWarm(dough: Stood): number {
  if (!dough.spoils) return Number.POSITIVE_INFINITY
  const rising = coldRiseOf(dough)?.warm ?? dough.bulk?.low ?? dough.rise
  const proving = coldProveOf(dough) === null ? (dough.prove?.low ?? 0) : 0
  return Math.max(warmDough.minutes, rising + proving + warmDough.rounding)
}

/** The cold places of a receipt's risings, from its stretches of time: those of the rising in bulk in their order, and that of the proving. */
export function coldPlacesOf(times: readonly TimePhrase[], bulk: Range | null): Pick<DoughTimes, 'bulkIn' | 'proveIn'> {
  const rises = times.filter(({stage}) => stage === 'rise').slice(0, 3)
  const first = rises.findIndex(({place}) => place !== undefined)
  const proveIn = times.find(({stage, place}) => stage === 'prove' && place !== undefined)?.place
  const warm = rises.slice(0, Math.max(0, first)).reduce((sum, {minutes}) => sum + (minutes.low + minutes.high) / 2, 0)
  return {
    ...(first < 0 || bulk === null
      ? {}
      : {bulkIn: {place: rises[first]!.place!, warm: Math.min(5 * Math.round(warm / 5), bulk.low)}}),
    ...(proveIn === undefined ? {} : {proveIn}),
  }
}

/** That a dough is put into the refrigerator where its receipt names none, or stands longer in the warm than food may; null where it is not. */
export function spoilsWarm(title: string, dough: DoughTimes): Pick<Message, 'reason' | 'suggest'> | null {
  if (!dough.spoils) return null
  const stages = [
    {named: dough.bulkIn?.place, put: coldRiseOf(dough) !== null, low: dough.bulk?.low ?? dough.rise},
    {named: dough.proveIn, put: coldProveOf(dough) !== null, low: dough.prove?.low ?? 0},
  ]
  const moved = stages.find(({named, put, low}) => put && named !== 'refrigerator' && low > warmDough.minutes)
  if (moved)
    return {
      reason: `“${title}”: its dough has egg or milk in it and is to rise for ${hours(moved.low)} or more, and nothing says that it stands in a refrigerator; it is planned there, where it rises more slowly`,
      suggest:
        'look at it in the morning, and give it up to four hours in the warm if it has not risen; or write “in the refrigerator” into the receipt',
    }
  const warm = mostWarm(dough) - warmDough.rounding
  if (warm <= warmDough.minutes) return null
  return {
    reason: `“${title}”: its dough has egg or milk in it and stands for ${hours(warm)} in the warm, longer than the 4 h that such food may`,
    suggest: 'let it rise in the refrigerator, and write that into the receipt',
  }
}

const hours = (minutes: number): string => `${Math.round(minutes / 6) / 10} h`
