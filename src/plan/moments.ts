import type {FiringLog, LogRow} from '../oven/log.js'
import type {Dish} from '../scale/types.js'
import {rules} from './rules.js'
import {inTurn, toldOf} from './told.js'
import type {Plan} from './types.js'

/** The moments of a day that has begun at which it was planned again, and what the log told then. */

/** Minutes after a reading within which another one has the day planned again before anything could be done about the first. */
const TOGETHER = 15

/** Minutes for which the heat is tested again and again at most before what waits for it is set in. */
const LONG_TESTED = 30

/** Since when the heat has been tested again and again, minutes after midnight; now where it has not been. */
export function testedSince(log: FiringLog, now: number): number {
  const at = log.rows.flatMap((r) => (r.what === 'reading' && r.at <= now ? [r.at] : [])).sort((a, b) => b - a)
  let since = now
  for (const m of at) if (since - m < TOGETHER && now - m <= LONG_TESTED) since = m
  return since
}

/** A row of the log at which the day was planned again. */
export interface Moment {
  readonly row: LogRow
  /** It is the last of an opening, and the day was planned again only where that went otherwise than planned (`wentOtherwise`). */
  readonly opening: boolean
}

/**
 * The readings of the oven that has baked at which the day was planned again before now: those that nothing else was read after for some
 * while, and those after which something was set in. And when a fire to come was decided upon, and one was lit again and raked out; and the last
 * of what was set in and drawn at each opening.
 */
export function momentsOf(log: FiringLog, plan: Plan, now: number): Moment[] {
  const raked = log.raked ?? log.lit! + plan.raked - plan.lit
  const rows = log.rows
    .filter((r) => r.at <= now && (ofFire(r) || ofOpening(r) || (r.what === 'reading' && r.at >= raked)))
    .sort(inTurn)
  return rows.flatMap((row, i): Moment[] => {
    if (ofFire(row)) return now > row.at ? [{row, opening: false}] : []
    const behind = rows.slice(i + 1)
    if (ofOpening(row)) {
      // A plan that was shown was shown, whatever is noted a few minutes later.
      const same = behind[0] !== undefined && ofOpening(behind[0]) && behind[0].at === row.at
      return !same && now > row.at ? [{row, opening: true}] : []
    }
    const next = behind.find((r) => ofFire(r) || r.what === 'reading')?.at ?? now
    const first = behind.find((r) => r.what !== 'drawn')
    return first?.what === 'set in' || (next - row.at >= TOGETHER && now - row.at >= TOGETHER) ? [{row, opening: false}] : []
  })
}

/** Minutes within which what was done was done when the plan had it. */
const ON_TIME = rules.tick

// Of what was taken out for a fire the row of that fire tells.
const ofOpening = ({what, emptied}: LogRow): boolean => what === 'set in' || (what === 'drawn' && !emptied)

/**
 * Whether what the log tells of an opening was otherwise than the plan that was followed had it: at another time, in another number, or of
 * something else. Who notes that is shown the day planned again, and goes on from what that says.
 *
 * @param log as far as it tells by the end of the opening
 * @param since when it was, minutes after midnight
 */
export function wentOtherwise(plan: Plan, log: FiringLog, dishes: readonly Dish[], since: number): boolean {
  const parts = toldOf(plan, log, new Map(dishes.map((dish) => [dish.id, dish])))
  const isOff = (said: number | undefined, planned: number): boolean =>
    said !== undefined && said >= since && Math.abs(said - planned) > ON_TIME
  // What no plan knew of, or was left in when others were drawn, is in until the log says that it is not, whatever a plan has made of it since.
  if (parts.some(({again, saidIn, stays}) => (again === true && (saidIn ?? 0) >= since) || (stays ?? 0) >= since)) return false
  return parts.some(
    ({at, draw, saidIn, saidOut, waits}) =>
      (waits === true && Math.abs(at - since) <= ON_TIME) || isOff(saidIn, at) || isOff(saidOut, draw),
  )
}

/** A row that tells of another fire: that it is to be lit, or was, or is raked out. */
const ofFire = ({again, refired}: LogRow): boolean => again !== undefined || refired === 'lit' || refired === 'raked'

/** The log as it stood when one of its rows was noted. */
export function toldBy(log: FiringLog, last: LogRow): FiringLog {
  const rows = log.rows.filter((r) => inTurn(r, last) <= 0)
  const until = Math.max(...rows.map((r) => r.elapsed ?? r.at - log.lit!))
  const {further: _, ...first} = log
  const further = (log.further ?? []).flatMap((fire) =>
    fire.lit > last.at ? [] : [fire.raked === null || fire.raked <= last.at ? fire : {...fire, raked: null, wood: null}],
  )
  return {
    ...first,
    ...(further.length > 0 ? {further} : {}),
    rows,
    readings: log.readings.filter((r) => r.minutes <= until),
    doors: log.doors.filter((d) => d.minutes <= until),
  }
}
