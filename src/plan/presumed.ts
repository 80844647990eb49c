import type {Told} from './told.js'

/** When what the log does not tell of is taken to have been done. Times in minutes after midnight. */

/** Minutes by which a later fire may have been lit before its hour, or an opening been before its own. */
export const ABOUT_THEN = 30

/** Something of which the log tells, and when it was planned for. */
export interface ToldTime {
  readonly planned: number
  readonly at: number
  /** A setting in; else a draw. */
  readonly setIn: boolean
}

/** When the parts of a plan were set in and drawn of which the log tells that. */
export function toldTimes(parts: readonly Told[]): ToldTime[] {
  return parts.flatMap(({at: plannedIn, draw, saidIn, saidOut}) =>
    (
      [
        [saidIn, plannedIn, true],
        [saidOut, draw, false],
      ] as const
    ).flatMap(([at, planned, setIn]) => (at === undefined ? [] : [{planned, at, setIn}])),
  )
}

/** The hour of a second fire: infinite where there is none. */
export interface SecondHour {
  /** In the plan's own times, from when on it counts on that fire's heat. */
  readonly planned: number
  /** When it was lit, or will be. */
  readonly at: number
}

/**
 * When what a plan has at a time is taken to have been done. A fire lit late moves everything the log does not tell of by as much, and a
 * second one all that comes after it; lit early, it brings nothing forward that waits for its hour. So does what the log says was done late,
 * for what it does not tell of and comes after on the same fire.
 *
 * @param late minutes by which the first fire was lit later than planned
 */
export function presumedBy(told: readonly ToldTime[], late: number, second: SecondHour): (planned: number) => number {
  const shiftAt = (planned: number): number => (planned < second.planned ? late : Math.max(0, second.at - second.planned))
  return (planned) => {
    let last: ToldTime | undefined
    for (const one of told)
      if (
        one.planned <= planned &&
        one.planned >= (last?.planned ?? one.planned) &&
        one.planned < second.planned === planned < second.planned
      )
        last = one
    const later = last ? last.at - last.planned - shiftAt(last.planned) : 0
    return planned + shiftAt(planned) + Math.max(0, later)
  }
}
