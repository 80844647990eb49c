import type {FiringLog} from '../oven/log.js'

/** How long the first fire of a day that has begun burns. */

/**
 * Minutes that the first fire burned, or will: as the log tells of its raking; else as it was planned to, or until the walls were last looked
 * at before anything was set in, since that is done with the fire in (common practice, no source).
 *
 * @param planned minutes
 */
export function burned(log: FiringLog, planned: number): number {
  const lit = log.lit!
  if (log.raked !== null) return Math.max(1, log.raked - lit)
  const setIn = Math.min(...log.rows.flatMap((row) => (row.what === 'set in' ? [row.at] : [])))
  const looked = log.rows.flatMap((row) => (row.kind === 'walls' && row.at < setIn ? [row.at - lit] : []))
  return Math.max(planned, ...looked)
}
