import type {LogRow} from '../oven/log.js'
import type {Dish} from '../scale/types.js'
import type {Told} from './told.js'
import {isLeftOut} from './told-left-out.js'
import {taken, vesselsIn} from './told-parts.js'

/** What the log says was drawn and set in again, since it was not done. */

/** How many vessels a row tells to be set in again. */
export interface BackIn {
  readonly count: number
  /** What heat they had counts: else it is as if they were set in for the first time. */
  readonly credit: boolean
}

type NeedOf = (part: Told) => Dish['need']

/** What was drawn last first. */
const byDraw = (told: readonly Told[]): Told[] =>
  told.filter(({saidOut, gone}) => saidOut !== undefined && !gone).sort((a, b) => b.saidOut! - a.saidOut!)

/** How long a part was in the oven, min: by the log or, where that does not tell when it was set in, by the plan. */
const stayOf = ({saidIn, saidOut, at}: Told): number => Math.max(0, saidOut! - (saidIn ?? at))

/**
 * What a row of something set in tells to be put back. Words that say so ("put back", "raw in the middle") are believed; without any it is what is
 * more than waits to be set in for the first time, or to be made again after a loss.
 *
 * @param said the row's number; null where it has none
 * @param told the parts of what it is of, as the rows before it have them
 * @returns null where it tells of nothing put back
 */
export function putBackBy(row: LogRow, said: number | null, told: readonly Told[], needOf: NeedOf): BackIn | null {
  const drawn = byDraw(told)
  const [last] = drawn
  if (!last) return null
  const lastOut = vesselsIn(drawn.filter(({saidOut}) => saidOut === last.saidOut))
  const short = stayOf(last) < needOf(last).minutes.low
  const sure = row.back === 'sure' || (row.back === 'again' && short)
  const open = told.filter((part) => part.saidIn === undefined && part.saidOut === undefined && !part.gone)
  // What no plan has a place for waits as well, unless the row says that it is another's turn.
  const waiting = vesselsIn(open) + vesselsIn(told.filter(({gone}) => gone === 'lost'))
  const planned = waiting - vesselsIn(open.filter(isLeftOut))
  const wanted = sure ? (said ?? lastOut) : said === null ? (planned > 0 ? 0 : lastOut) : said - waiting
  const count = Math.min(wanted, vesselsIn(drawn))
  return count > 0 ? {count, credit: sure || short} : null
}

/**
 * What a row has in the oven still, though an earlier one had it drawn: the later row counts, and the other was a slip of the pen.
 *
 * @param said the row's number; null where it has none
 * @param inside the parts that are in the oven, as the rows before it have them
 * @param done those that are out, of which they are taken
 */
export function inAfterAll(row: LogRow, said: number | null, inside: readonly Told[], done: Told[]): Told[] {
  if (!row.still) return []
  const here = vesselsIn(inside.filter((part) => !part.waits && (part.saidIn ?? part.at) <= row.at))
  const drawn = byDraw(done)
  const [last] = drawn
  const lastOut = vesselsIn(drawn.filter(({saidOut}) => saidOut === last?.saidOut))
  const out = done.filter((part) => !drawn.includes(part))
  const these = taken(drawn, said === null ? (here > 0 ? 0 : lastOut) : said - here)
  done.splice(0, done.length, ...out, ...drawn)
  return these.map(({saidOut: _, ...part}): Told => ({...part, stays: row.at}))
}

/** That what a row tells of was looked at and is not done. */
export const longerFrom = ({at, longer}: LogRow): Pick<Told, 'longer'> => (longer === undefined ? {} : {longer: {at, ...longer}})

/**
 * The vessels that stand in the oven again, taken out of those that were drawn. A minute outside is taken to cost as much as one in the oven gave:
 * what was out for as long as it had been in begins anew. Common practice, no source. So does what was out while a fire burned: a stay that began
 * before it would have been in the flames.
 *
 * @param done the parts that are out, of which they are taken
 * @param fires when later fires were lit, minutes after midnight
 */
export function standsAgain(
  row: LogRow,
  {count, credit}: BackIn,
  done: Told[],
  {needOf, fires}: {readonly needOf: NeedOf; readonly fires: readonly number[]},
): Told[] {
  const drawn = byDraw(done)
  const out = done.filter((part) => !drawn.includes(part))
  const these = taken(drawn, count)
  done.splice(0, done.length, ...out, ...drawn)
  return these.map((part): Told => {
    const {saidOut, ...like} = part
    const fired = fires.some((lit) => lit >= saidOut! && lit <= row.at)
    const had = credit && !fired ? Math.max(0, stayOf(part) - (row.at - saidOut!)) : 0
    const at = row.at - had
    const {minutes} = needOf(part)
    const draw = {low: at + minutes.low, likely: at + minutes.likely, high: at + minutes.high}
    return {
      ...like,
      at,
      draw: draw.likely,
      entry: {...part.entry, draw},
      saidIn: at,
      again: true,
      stays: row.at,
      back: {out: saidOut!, again: row.at},
      ...longerFrom(row),
    }
  })
}
