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
  // What no plan knew of was neither late nor early.
  const planned = parts.filter((part) => !part.again)
  return planned.flatMap(({at: plannedIn, draw, saidIn, saidOut}) =>
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

/** What a plan sets in on one of its fires. */
export interface OnFire {
  /** When it sets in the first of it, in the plan's own times: infinite where there is none. */
  readonly first: number
  /** From when on it can have been set in, by the log. */
  readonly ready: number
}

/** What a plan sets in on its first fire, and on a second; each with when the oven was, or will be, ready to bake by the log. */
export type OnFires = readonly [OnFire, OnFire]

/** What a plan sets in on each fire. @param ready when the oven is ready on each by the log, infinitely early where that is not asked */
export function onFires(parts: readonly Told[], second: SecondHour, ready: readonly [number, number]): OnFires {
  const of = (own: (part: Told) => boolean, at: number): OnFire => {
    const its = parts.filter(own)
    // What the log has in the oven sooner was not kept waiting for the soak, and what is set in behind it was not either.
    const saidIn = its.flatMap((part) => part.saidIn ?? [])
    return {first: Math.min(...its.filter((part) => !part.again).map((part) => part.at)), ready: Math.min(at, ...saidIn)}
  }
  return [of((part) => part.at < second.planned, ready[0]), of((part) => part.at >= second.planned, ready[1])]
}

/**
 * When what a plan has at a time is taken to have been done. A fire lit late moves everything the log does not tell of by as much, and a
 * second one all that comes after it; lit early, it brings nothing forward that waits for its hour. So does what the log says was done late,
 * for what it does not tell of and comes after on the same fire. Until the log tells of something so, a fire that is out later than planned
 * puts off all that is set in on it, and what comes after that, by as much as the first of it would stand in an oven that is not ready.
 *
 * @param late minutes by which the first fire was lit later than planned
 */
export function presumedBy(
  told: readonly ToldTime[],
  late: number,
  second: SecondHour,
  [onFirst, onSecond]: OnFires,
): (planned: number) => number {
  const shiftAt = (planned: number): number => (planned < second.planned ? late : Math.max(0, second.at - second.planned))
  const waitAt = (planned: number): number => {
    const {first, ready} = planned < second.planned ? onFirst : onSecond
    return planned < first ? 0 : Math.max(0, ready - first - shiftAt(first))
  }
  return (planned) => {
    let last: ToldTime | undefined
    for (const one of told)
      if (
        one.planned <= planned &&
        one.planned >= (last?.planned ?? one.planned) &&
        one.planned < second.planned === planned < second.planned
      )
        last = one
    const later = last ? last.at - last.planned - shiftAt(last.planned) : waitAt(planned)
    return planned + shiftAt(planned) + Math.max(0, later)
  }
}
