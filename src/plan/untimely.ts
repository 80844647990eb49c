import type {FiringLog} from '../oven/log.js'
import type {Dish} from '../scale/types.js'
import {partsByDish, take} from './followed.js'
import {type InForce, lastBy} from './in-force.js'
import {setInOf} from './longer.js'
import {rowAt} from './told.js'
import type {PlanProblem} from './types.js'

/** Minutes by which a load has to go in otherwise than at its time to be told as a reason. */
const UNTIMELY = 10

/**
 * What the log says went in most too late, or too soon, by the plan that was followed then: the load's dishes, and by how many minutes. Changes
 * are told against the morning's plan, so where another plan had moved the load by then, the reason has to name that.
 */
export interface Untimely {
  readonly dishes: readonly string[]
  readonly minutes: number
  /** When that plan was made, minutes after midnight, where it had them at another hour than the morning's. */
  readonly made?: number
  /** The fire was lit at another hour than that plan had it, and so the minutes are those from its lighting, and none of the clock's. */
  readonly fromLighting?: true
}

/** The load that the log says went in most off its time; null where all went in about when it should. */
export function untimelyLoad(
  {done}: PlanProblem,
  dishes: ReadonlyMap<string, Dish>,
  log: FiringLog,
  inForce: readonly InForce[],
): Untimely | null {
  const off = done!.set.flatMap((one) => {
    const {dish: id, count, lost, back} = one
    const at = setInOf(one)
    const dish = dishes.get(id)
    if (!dish || lost || back || !rowAt(log, 'set in', at, dish)) return []
    const lateBy = ({plan}: InForce): number | null => {
      const part = take(partsByDish(plan.loads).get(id) ?? [], count, at)
      return part ? at - part.at - (log.lit! - plan.lit) : null
    }
    const followed = lastBy(inForce, at)
    const minutes = lateBy(followed)
    const moved = log.lit !== followed.plan.lit
    return minutes === null ? [] : [{id, at, minutes, moved, morning: lateBy(inForce[0]!), from: followed.from}]
  })
  const worst = off.reduce((most, {minutes}) => (Math.abs(minutes) > Math.abs(most) ? minutes : most), 0)
  if (Math.abs(worst) < UNTIMELY) return null
  const first = off.find(({minutes}) => minutes === worst)!
  const together = off.filter(({at, minutes}) => at === first.at && minutes === worst)
  return {
    dishes: [...new Set(together.map(({id}) => id))],
    minutes: worst,
    ...(first.moved ? {fromLighting: true as const} : {}),
    ...(together.some(({morning}) => morning !== worst) ? {made: first.from} : {}),
  }
}

/**
 * Minutes by which the log has a later fire lit later (+) or earlier (−) than the plan had it that was followed then, of the one that was most off
 * its hour; 0 where that is less than ten. What is noted just before it is lit has the day planned again with a fire whose hour has come: no such
 * plan was to be followed.
 */
export function relitOff({further = []}: FiringLog, inForce: readonly InForce[]): number {
  const off = further.flatMap(({lit}, i): number[] => {
    const planned = ({plan}: InForce): number | undefined => plan.fires?.[1 + i]?.lit
    const followed = inForce.findLast((one) => !one.opening && one.from < Math.min(lit, planned(one) ?? lit))
    const hour = followed && planned(followed)
    return hour === undefined ? [] : [lit - hour]
  })
  const worst = off.reduce((most, one) => (Math.abs(one) > Math.abs(most) ? one : most), 0)
  return Math.abs(worst) < UNTIMELY ? 0 : worst
}
