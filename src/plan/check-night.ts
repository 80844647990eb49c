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

/** The time itself where it is by day, or else the first minute of a day after it. */
export function dayFrom(problem: Pick<PlanProblem, 'day'>, clock: number): number {
  let at = clock
  while (isNight(problem, at)) at = at % 1 === 0 ? at + 1 : Math.ceil(at)
  return at
}

/** When the next night begins after a time. */
export function nextNight(clock: number): number {
  const evening = DAY * Math.floor(clock / DAY) + rules.nightFrom
  return evening > clock ? evening : evening + DAY
}
