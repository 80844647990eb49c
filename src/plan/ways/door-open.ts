import type {Simulate} from '../options.js'
import {phrase} from '../phrases.js'
import type {Remedy} from '../types.js'
import type {Lack} from './lack.js'
import type {Trials} from './trials.js'

/** The oven with its door left open for so long in the evening; minutes after midnight. */
export interface DoorOpen {
  readonly from: number
  readonly minutes: number
  readonly simulate: Simulate
}

/**
 * The door left open in the evening, so that the oven falls for a dish before the night.
 *
 * @param ways For how long, the shortest time first: the first that helps is taken.
 */
export function doorLeftOpen(trials: Trials, ways: readonly DoorOpen[], helpful: (lack: Lack) => boolean): Remedy | null {
  for (const {from, minutes, simulate} of ways) {
    const tried = trials.plan({}, {simulate})
    if (!helpful(tried.lack)) continue
    const words = phrase('remedy door open', {
      minutes: {unit: 'minutes', value: minutes},
      at: {unit: 'clock', value: from},
      outcome: trials.outcome(tried, false),
    })
    return trials.remedy('door open', tried.plan, words)
  }
  return null
}
