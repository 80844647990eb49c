import {writeDuration} from '../../measure/quantity.js'
import {bakingAt} from '../../oven/forecast.js'
import {clockText} from '../../oven/note-clock.js'
import {amiss} from '../asked.js'
import {againBurns} from '../burns.js'
import type {Replan} from '../conflict.js'
import type {PlanOptions} from '../options.js'
import {phrase} from '../phrases.js'
import {rules} from '../rules.js'
import type {FiringOption, Plan, PlanProblem, Remedy} from '../types.js'
import {helps, lacksLess, lessThan, spares} from './lack.js'
import {FIRE_AGAIN} from './second-fire.js'
import {beforeLast, type Trial, Trials} from './trials.js'

/** Minutes that a fire burns at the least, and by which such fires differ. Common practice, no source. */
const SHORTEST = 15

/** Minutes within which two fires are lit at the same hour. Common practice, no source. */
const SAME_HOUR = 2 * rules.tick

/** Share of its heat by which what is in the oven may come out with less for another fire: less than anyone can tell. */
const LESS_DONE = 0.02

/**
 * What another fire would do for a day that has begun, whose fire is out, with no other lit yet, and whose oven is too cool for all that was
 * asked for. Tried by planning the rest of the day on it, shortly: lit as soon as what is in the oven now is drawn, when another was to be,
 * and when all is drawn that the plan still has for the day; burning for less where that is heat enough and the first does not have it all in
 * time; and for longer where that leaves something out.
 *
 * @param problem The rest of the day, without such a fire.
 * @param plan The plan for that.
 * @param another The first fire and another, in place of what is to come, lit at a time, minutes after midnight, and burning for so many
 *   minutes; null where it cannot be lit then.
 * @returns The best of them, where less is left out or it is far less late, and nothing that is in the oven comes out with less of its heat;
 *   else nothing.
 */
export function againWays(
  problem: PlanProblem,
  plan: Plan,
  another: (at: number, minutes: number) => FiringOption | null,
  options: PlanOptions,
  replan: Replan,
): Remedy[] {
  // A fire that has something hours after it was wanted is not worth its wood.
  const trials = new Trials(problem, plan, options, replan, null, false, false)
  const {now} = trials
  const worst = Math.max(0, ...amiss(problem, plan).late.map(({drawn, wanted}) => drawn - wanted))
  if (now.out === 0 && worst < FIRE_AGAIN) return []
  const early = ({score}: Plan): number => score.earlyMinutes ?? 0
  const worthIt = ({lack, plan: tried}: Trial): boolean => {
    // What is wanted hot and would have no place is rather had too soon; where all has one, what it comes too soon counts as late.
    const sooner = Math.max(0, early(tried) - early(plan))
    const helpful =
      now.out === 0 ? spares({...lack, late: lack.late + sooner}, now) : helps(lack, now) && lack.without < now.without
    return helpful && wantsInside(tried) <= wantsInside(plan) + LESS_DONE
  }
  const drawn = plan.loads.flatMap(({dishes}) => dishes)
  const soonest = Math.max(
    rules.tick * Math.ceil(problem.done!.now / rules.tick),
    ...drawn.flatMap((d) => (d.alreadyIn ? [d.draw.likely] : [])),
  )
  const toCome = plan.fires?.find((fire) => fire.lit >= soonest)
  /** Another fire than the one that is to come: what is planned already is no way out. */
  const other = (at: number, minutes: number): FiringOption | null => {
    const fire = another(at, minutes)
    return fire && toCome && isSame(fire, plan, toCome) ? null : fire
  }
  const night = rules.nightFrom + 1440 * Math.ceil((soonest - rules.nightFrom) / 1440)
  const last = Math.max(soonest, ...drawn.flatMap((d) => (d.draw.likely < night ? [d.draw.likely] : [])))
  const planned = toCome?.lit ?? soonest
  const hours = [...new Set([soonest, planned, last])]
  const enough = hottestAmiss(problem, plan)
  /** The best so far, or another fire, where that is better. */
  const orWith = (best: Trial | null, fire: FiringOption | null): Trial | null => {
    const tried = fire && trials.plan({firings: [fire]})
    if (!tried || !worthIt(tried)) return best
    const hotter = best !== null && !lessThan(best.lack, tried.lack) && early(tried.plan) < early(best.plan)
    return best === null || lacksLess(tried.lack, best.lack) || hotter ? tried : best
  }
  const hasAll = (best: Trial | null): boolean => best?.lack.out === 0 && early(best.plan) <= early(plan)
  const hourOf = (best: Trial | null): number | undefined => best?.plan.fires?.at(-1)?.lit
  const [usual, ...longer] = rules.fireAgain.burns
  let best: Trial | null = null
  for (const at of hours) if (!hasAll(best)) best = orWith(best, other(at, usual))
  // Where little heat is lacking a shorter fire is ready the sooner, and the oven is not too hot for hours after it.
  if (!best || !hasAll(best) || best.lack.late > now.late) {
    const found = hourOf(best)
    for (const at of found === undefined ? hours : [found]) {
      const shorter = againBurns.flatMap((burn) => (burn < usual ? [other(at, burn)] : []))
      for (const [i, short] of shorter.filter((fire) => heatWhenReady(fire) >= enough).entries())
        if (!hasAll(best) || (i === 0 && found !== undefined)) best = orWith(best, short)
    }
  }
  // An oven hotter than it was believed to be wants less of the fire to come than was planned, and is ready for the rest the sooner.
  const half = toCome ? SHORTEST * Math.round(toCome.firing.burn / 2 / SHORTEST) : 0
  for (const minutes of half >= SHORTEST && half < usual ? [...longer, half] : longer)
    if (!hasAll(best)) best = orWith(best, other(hourOf(best) ?? planned, minutes))
  const fire = best?.plan.fires?.at(-1)
  if (!best || !fire) return []
  const note = `fire again at ${clockText(fire.lit)} for ${writeDuration(fire.firing.burn)}`
  const {phrases} = trials.outcome(best, true)
  const sooner = early(best.plan) - early(plan)
  const hot = sooner > 0 ? [phrase('outcome too soon', {minutes: {unit: 'minutes', value: sooner}})] : []
  const words = phrase('remedy fire again', {
    at: {unit: 'clock', value: fire.lit},
    raked: {unit: 'clock', value: fire.raked},
    outcome: {unit: 'phrases', phrases: beforeLast(phrases, hot)},
    note,
  })
  return [{...trials.remedy('second fire', best.plan, words), note}]
}

/** Whether the last of some fires is one that the plan has already, a few minutes sooner or later. */
function isSame({further}: FiringOption, {lit}: Plan, {lit: at, firing}: NonNullable<Plan['fires']>[number]): boolean {
  const last = further?.at(-1)
  return last !== undefined && last.firing.burn === firing.burn && Math.abs(lit + last.minutes - at) <= SAME_HOUR
}

/** °C by which what is set in first cools an oven that is just hot enough for it: by so much it is fired hotter. */
const LOADED = 20

/** The heat, °C, of which what has no place, or comes late, and is set in hottest, finds enough. */
function hottestAmiss(problem: PlanProblem, plan: Plan): number {
  const ids = new Set([...plan.unplaced, ...amiss(problem, plan).late].map(({dish}) => dish))
  return LOADED + Math.max(0, ...problem.dishes.flatMap(({id, need}) => (ids.has(id) ? [need.startLow] : [])))
}

/** The likely baking heat, °C, when the last of some fires has soaked; none of no fire. */
function heatWhenReady(fires: FiringOption | null): number {
  const last = fires?.further?.at(-1)
  return last ? bakingAt(fires!.forecast, last.minutes + last.firing.burn + last.firing.soak) : Number.NEGATIVE_INFINITY
}

/** Shares of its heat that what is in the oven wants when it is drawn, in all. */
function wantsInside({loads}: Plan): number {
  return loads.flatMap(({dishes}) => dishes).reduce((sum, d) => sum + (d.alreadyIn ? 1 - Math.min(1, d.eased?.dose ?? 1) : 0), 0)
}
