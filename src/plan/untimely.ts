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

/** A later fire that was not lit as planned: by how many minutes later (+) or earlier (−), or at what time, after midnight, where none was planned. */
export type Relit = {readonly off: number} | {readonly at: number}

/**
 * The later fire that the log has lit most off the hour that the plan then followed had it, or that no plan had; null where all were lit about
 * when they were to be. What is noted just before it is lit has the day planned again with a fire whose hour has come: no such plan was to be
 * followed.
 */
export function relitOff({further = []}: FiringLog, inForce: readonly InForce[]): Relit | null {
  const all = further.flatMap(({lit}, i): Relit[] => {
    const planned = ({plan}: InForce): number | undefined => plan.fires?.[1 + i]?.lit
    const before = inForce.filter((one) => !one.opening && one.from < lit)
    if (before.every((one) => planned(one) === undefined)) return [{at: lit}]
    const followed = before.findLast((one) => one.from < Math.min(lit, planned(one) ?? lit))
    const hour = followed && planned(followed)
    return hour === undefined || Math.abs(lit - hour) < UNTIMELY ? [] : [{off: lit - hour}]
  })
  const by = (one: Relit): number => ('at' in one ? Number.POSITIVE_INFINITY : Math.abs(one.off))
  return all.reduce<Relit | null>((worst, one) => (worst === null || by(one) > by(worst) ? one : worst), null)
}
