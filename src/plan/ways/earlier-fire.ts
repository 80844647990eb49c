import {phrase} from '../phrases.js'
import type {FiringOption, Plan, PlanProblem, Remedy} from '../types.js'
import {helps, lessThan} from './lack.js'
import type {Trial, Trials} from './trials.js'

/** Minutes by which a fire may be lit earlier, in steps of half an hour, and within which it is lit as early as it may be. */
const EARLIER = {step: 30, most: 240} as const

/**
 * The fire lit earlier, where the plan lights it about as early as it may be.
 *
 * @param near Fires to try it with.
 * @param worst Minutes late, of what is latest.
 */
export function earlierFire(
  {day}: PlanProblem,
  {lit}: Plan,
  trials: Trials,
  near: readonly FiringOption[],
  worst: number,
): Remedy | null {
  if (lit > day.fireFrom + EARLIER.step) return null
  const whole = trials.now.out === 0
  const sooner = (minutes: number): Pick<PlanProblem, 'day'> => ({day: {...day, fireFrom: day.fireFrom - minutes}})
  const shortly = (minutes: number) => ({minutes, ...trials.plan({firings: near, ...sooner(minutes)}, {sooner: minutes})})
  const earnestly = (minutes: number, tried?: Trial) => ({
    minutes,
    ...(trials.inEarnest(sooner(minutes)) ?? tried ?? shortly(minutes)),
  })
  const step = (minutes: number): number =>
    Math.min(
      EARLIER.most,
      EARLIER.step * Math.floor(day.fireFrom / EARLIER.step),
      EARLIER.step * Math.ceil(minutes / EARLIER.step),
    )
  const isWhole = ({lack}: Trial): boolean => lack.out === 0 && lack.late === 0
  const first = step(worst > 0 ? worst : 2 * EARLIER.step)
  if (first <= 0) return null
  let best = shortly(first)
  const good = isWhole(best)
  const next = step(good ? first / 2 : 2 * first)
  if (next !== first) {
    const other = shortly(next)
    if (good ? !lessThan(best.lack, other.lack) : lessThan(other.lack, best.lack)) best = other
  }
  best = earnestly(best.minutes, best)
  const further = step(2 * best.minutes)
  // Where something is left out each such plan takes as long as the day's own.
  if (!isWhole(best) && further !== best.minutes && (whole || !helps(best.lack, trials.now))) {
    const other = earnestly(further)
    // Nobody rises sooner than need be.
    const between = step((best.minutes + further) / 2)
    const midway = whole && isWhole(other) && between < further ? earnestly(between) : null
    if (lessThan(other.lack, best.lack)) best = midway && isWhole(midway) ? midway : other
  }
  if (!helps(best.lack, trials.now) || best.plan.lit >= day.fireFrom) return null
  return trials.remedy(
    'earlier fire',
    best.plan,
    phrase('remedy earlier fire', {
      minutes: {unit: 'minutes', value: best.minutes},
      from: {unit: 'clock', value: day.fireFrom - best.minutes},
      at: {unit: 'clock', value: best.plan.lit},
      outcome: trials.outcome(best, false),
    }),
  )
}
