import {writeClock} from '../measure/quantity.js'
import type {FiringLog, FurtherFire, LogRow} from '../oven/log.js'
import type {Message} from '../receipt/types.js'
import type {Dish} from '../scale/types.js'
import {atTheDoor, BURNS} from './emptied.js'
import {inTurn, isOf, placeIn} from './told.js'

/** What a log has set in while a later fire burned: one of the two times is a slip, for nothing bakes in the flames. */

/** A row of such a log, and the fire after whose raking it is taken to be. */
export interface InFlames {
  readonly row: LogRow
  readonly fire: FurtherFire
  /** When it is taken to have been set in, minutes after midnight. */
  readonly at: number
}

/**
 * A log in which what was set in while a later fire burned went in when that was raked out: as soon as it can have been, where the log does not
 * tell. What was drawn again by then stays as it is written, and so does what is put back (`emptied.ts`).
 */
export function outOfFlames(log: FiringLog): {readonly log: FiringLog; readonly moved: readonly InFlames[]} {
  const moved = (log.further ?? []).flatMap((fire) => {
    const at = fire.raked ?? fire.lit + BURNS
    const within = log.rows.filter((row) => row.at >= fire.lit && row.at < at && atTheDoor.has(row.what))
    return within.flatMap((row): InFlames[] => {
      const only = within.every(({dish, at: then}) => dish !== row.dish || then <= row.at)
      return row.what === 'set in' && row.dish !== undefined && row.back === undefined && only ? [{row, fire, at}] : []
    })
  })
  if (moved.length === 0) return {log, moved}
  const rows = log.rows.map((row): LogRow => {
    const to = moved.find((one) => one.row === row)?.at
    return to === undefined ? row : {...row, at: to, elapsed: row.elapsed === null ? null : row.elapsed + to - row.at}
  })
  return {log: {...log, rows: rows.sort(inTurn)}, moved}
}

/** That it is so taken, told of each row. */
export function toldInFlames(log: FiringLog, moved: readonly InFlames[], dishes: readonly Dish[]): Message[] {
  return moved.flatMap(({row, fire, at}): Message[] => {
    const dish = dishes.find((one) => isOf(row, one))
    if (!dish) return []
    return [
      {
        ...placeIn(log, row.line),
        severity: 'warning',
        rule: 'log-order',
        times: [row.at, fire.lit, at],
        reason: `${dish.title}: logged as set in at ${writeClock(row.at)} while the fire lit at ${writeClock(fire.lit)} burned: taken to have gone in at ${writeClock(at)}`,
        suggest: 'put right when it was set in, or note when the fire was raked out: “raked again”',
      },
    ]
  })
}
