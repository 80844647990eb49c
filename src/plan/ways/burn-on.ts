import type {Replan} from '../conflict.js'
import {dueOf} from '../model.js'
import type {PlanOptions} from '../options.js'
import {phrase} from '../phrases.js'
import {rules} from '../rules.js'
import {SOONER, type StillBurning} from '../still-burning.js'
import type {PhraseValue, Plan, PlanProblem, Remedy} from '../types.js'
import {type Lack, lacking, lacksLess} from './lack.js'
import {beforeLast, type Trial, Trials} from './trials.js'

/** Minutes by which a set-in may move before it is worth another fire to keep the hours, and by how much nearer they then have to be. */
const HOURS = {off: 45, nearer: 20} as const

/** Minutes by which what is wanted by some hour is set in furthest off the time at which the plan in hand has it, the delay of the fire allowed for. */
function offHours({done, day, dishes}: PlanProblem, plan: Plan): number {
  const before = done?.plan
  if (!before) return 0
  const wanted = new Set(dishes.flatMap((dish) => (dueOf(dish, day.serve) === null ? [] : [dish.id])))
  const first = (of: Plan): Map<string, number> => {
    const at = new Map<string, number>()
    for (const load of of.loads)
      for (const d of load.dishes) if (wanted.has(d.dish)) at.set(d.dish, Math.min(load.at, at.get(d.dish) ?? load.at))
    return at
  }
  const was = first(before)
  const late = plan.lit - before.lit
  return Math.max(0, ...Array.from(first(plan), ([dish, at]) => Math.abs(at - late - (was.get(dish) ?? at - late))))
}

/**
 * What letting the fire burn on, or raking it out sooner, would do for a day whose fire still burns and which will not be as it was asked
 * for, or hours off what was planned. Tried by planning the rest of the day on such a fire, shortly, twice: for as long as it ought to burn,
 * and then for less where that gave everything its heat, and for more where it did not.
 *
 * @param problem The rest of the day, on the fire as it was planned.
 * @param plan The plan for that.
 * @returns The better of the two, where it helps; else nothing.
 */
export function burnWays(
  problem: PlanProblem,
  plan: Plan,
  {ought, again, option}: StillBurning,
  options: PlanOptions,
  replan: Replan,
): Remedy[] {
  const trials = new Trials(problem, plan, options, replan)
  const {now} = trials
  const whole = (lack: Lack): boolean => lack.out === 0 && lacking(lack) === 0
  const off = offHours(problem, plan)
  if (whole(now) && off < HOURS.off) return []
  const fireOf = ({fires, ...first}: Plan): Pick<Plan, 'firing' | 'raked'> => (again ? fires!.at(-1)! : first)
  const burning = (minutes: number): (Trial & {readonly minutes: number; readonly off: number}) | null => {
    const fire = option(rules.tick * Math.round(minutes / rules.tick))
    if (!fire) return null
    const trial = trials.plan({firings: [fire]})
    return {...trial, minutes: fireOf(trial.plan).firing.burn - fireOf(plan).firing.burn, off: offHours(problem, trial.plan)}
  }
  let best = burning(ought)
  if (!best) return []
  const good = whole(best.lack)
  // What has all its heat and is late is late for the fire: a shorter one may do, as where all is well.
  const hot = best.lack.out === 0 && best.lack.wanting === 0
  const other = burning((ought > 0 ? hot : !good) ? ought / 2 : ought * 1.5)
  if (other && other.minutes !== best.minutes) {
    const asGood = !lacksLess(best.lack, other.lack) && other.off < Math.max(best.off, HOURS.off)
    if (good ? asGood : lacksLess(other.lack, best.lack)) best = other
  }
  // Ready sooner with less heat, a later fire may do more for its day than with the heat it ought to have.
  const sooner = again && !lacksLess(best.lack, now) ? (burning(-SOONER) ?? burning(-SOONER / 2)) : null
  if (sooner && lacksLess(sooner.lack, best.lack)) best = sooner
  const nearer = off >= HOURS.off && best.off <= off - HOURS.nearer
  if (!lacksLess(best.lack, now) && !(nearer && !lacksLess(now, best.lack))) return []
  const {phrases} = trials.outcome(best, false)
  const minutes = (value: number): PhraseValue => ({unit: 'minutes', value})
  const hours = nearer ? [phrase('outcome hours', {minutes: minutes(best.off), before: minutes(off)})] : []
  const longer = best.minutes > 0
  const words = phrase(longer ? 'remedy longer fire' : 'remedy shorter fire', {
    minutes: minutes(Math.abs(best.minutes)),
    at: {unit: 'clock', value: fireOf(best.plan).raked},
    outcome: {unit: 'phrases', phrases: beforeLast(phrases, hours)},
  })
  return [trials.remedy(longer ? 'longer fire' : 'shorter fire', best.plan, words)]
}
