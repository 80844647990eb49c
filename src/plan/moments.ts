import type {FiringLog, LogRow} from '../oven/log.js'
import {inTurn} from './told.js'
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

/**
 * The readings of the oven that has baked at which the day was planned again before now: those that nothing else was read after for some
 * while, and those after which something was set in. And when a fire to come was decided upon, and one was lit again and raked out.
 */
export function momentsOf(log: FiringLog, plan: Plan, now: number): LogRow[] {
  const raked = log.raked ?? log.lit! + plan.raked - plan.lit
  const rows = log.rows
    .filter((r) => r.at <= now && (ofFire(r) || r.what === 'set in' || (r.what === 'reading' && r.at >= raked)))
    .sort(inTurn)
  return rows.filter((row, i) => {
    if (ofFire(row)) return now > row.at
    if (row.what !== 'reading') return false
    const next = rows.slice(i + 1).find((r) => ofFire(r) || r.what === 'reading')?.at ?? now
    return rows[i + 1]?.what === 'set in' || (next - row.at >= TOGETHER && now - row.at >= TOGETHER)
  })
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
