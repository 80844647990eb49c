import type {FiringLog, FurtherFire, LogRow} from '../oven/log.js'
import {inTurn} from './told.js'

/** What stood in the oven when a later fire was lit in it: the log seldom tells that it was drawn, but nothing bakes on in the flames. */

/** Minutes for which a fire burns at least, where nothing tells how long. Common practice, no source. */
export const BURNS = 15

/** Rows that tell whether something is in the oven. */
export const atTheDoor: ReadonlySet<LogRow['what']> = new Set(['set in', 'drawn', 'not drawn', 'lost', 'not in'])

/**
 * A log with a draw for each dish that it has in the oven when a later fire is lit, and of whose draw it does not tell: at the line of that
 * fire, and marked as `emptied`, for who noted it did not write that. What it has put back while that fire burns is not in yet.
 */
export function emptiedForFires(log: FiringLog): FiringLog {
  let {rows} = log
  for (const fire of log.further ?? []) {
    const taken = takenOut({...log, rows}, fire)
    const back = new Set(taken.flatMap(({putBack}) => putBack ?? []))
    rows = [...rows.filter((row) => !back.has(row)), ...taken.map(({row}) => row)].sort(inTurn)
  }
  return log.further ? {...log, rows} : log
}

/** The same for a second fire of which the log does not tell, and that is taken to have been lit at a time, minutes after midnight. */
export function emptiedForFire(log: FiringLog, lit: number): FiringLog {
  return {...log, rows: emptiedForFires({...log, further: [{lit, raked: null, wood: null}]}).rows}
}

function takenOut(
  {rows, lit: first}: FiringLog,
  {lit, raked}: FurtherFire,
): {readonly row: LogRow; readonly putBack: LogRow | null}[] {
  const fire = rows.find(({refired, at}) => refired === 'lit' && at === lit)
  const dishes = new Set(rows.flatMap(({what, dish, at}) => (what === 'set in' && dish !== undefined && at < lit ? [dish] : [])))
  return [...dishes].flatMap((dish) => {
    const told = rows.filter((row) => row.dish === dish && atTheDoor.has(row.what)).sort(inTurn)
    const last = told.findLast(({at}) => at < lit)!
    const next = told.find(({at}) => at >= lit)
    // Drawn to the last of it; or noted as drawn when the fire burned.
    const isOut = (last.what === 'drawn' && last.count === undefined && !last.left) || last.what === 'not in'
    if (isOut || next?.what === 'drawn' || next?.what === 'lost') return []
    const row: LogRow = {
      line: fire?.line ?? 1,
      at: lit,
      elapsed: fire?.elapsed ?? lit - first!,
      what: 'drawn',
      dish,
      emptied: true,
      text: '',
      note: '',
    }
    const inFlames = next?.what === 'set in' && next.back !== undefined && next.at < (raked ?? lit + BURNS)
    return [{row, putBack: inFlames ? next : null}]
  })
}
