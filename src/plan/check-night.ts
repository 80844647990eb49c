import {rules} from './rules.js'
import type {PlanProblem} from './types.js'

/** The checker's own night: when nobody opens the door, works at a dough or a making, or rakes out a fire. Times in minutes after midnight. */

/** Minutes of a day. */
export const DAY = 1440

/** When the baker's day begins: at five, or with the first fire where that may be lit sooner. */
export const woken = ({day}: Pick<PlanProblem, 'day'>): number => Math.min(rules.nightTo, day.fireFrom)

/** Whether it is night at a time, of whatever day. */
export function isNight(problem: Pick<PlanProblem, 'day'>, clock: number): boolean {
  const hour = ((clock % DAY) + DAY) % DAY
  return hour >= rules.nightFrom || hour < woken(problem)
}
