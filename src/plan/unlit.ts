import type {FiringLog} from '../oven/log.js'
import type {Message} from '../receipt/types.js'
import {placeIn} from './told.js'

/**
 * What was done or read while the log does not tell when the fire was lit: the day begins with the fire, and nothing is reckoned from before.
 *
 * @returns a warning of rule `log-unlit`, at the first such row, or at the log's head where that alone tells of the fire
 */
export function unlit(log: FiringLog | null): Message[] {
  if (!log) return []
  const read = log.rows.find(({what}) => what === 'reading')
  const done = log.rows.find(({what}) => what !== 'note' && what !== 'reading')
  const stated = log.raked !== null || log.wood !== null
  const row = done ?? read
  if (!row && !stated) return []
  return [
    {
      ...placeIn(log, row?.line),
      severity: 'warning',
      rule: 'log-unlit',
      reason:
        read || stated
          ? 'the log does not tell when the fire was lit, so the plan is the morning’s: no reading is used, and nothing that was done, until it is written when it was lit'
          : 'the log does not tell when the fire was lit, so the plan is the morning’s and knows nothing of what was done',
      suggest: 'note when it is lit, such as “lit 8:30 am”; what was mixed before then counts',
    },
  ]
}
