import type {Dish} from '../../scale/types.js'
import type {Conflict, Missing, Replan} from '../conflict.js'
import {fedBy} from '../fed.js'
import type {Hindrance, Nightly} from '../hindered.js'
import {feedsOf, type Job} from '../model.js'
import type {PlanOptions} from '../options.js'
import type {Settled} from '../settled.js'
import type {Plan, PlanProblem, Remedy} from '../types.js'
import {type DoorOpen, doorLeftOpen} from './door-open.js'
import {hoursLater} from './hours-later.js'
import {helps, type Lack} from './lack.js'
import {leftOut} from './leave-out.js'
import {oneMove} from './one-move.js'
import {otherHeat} from './other-heat.js'
import {firesNear, Trials} from './trials.js'

/** How many dishes may be left out for their heat and their places to be worth a trial, and trials of leaving out others for them. */
const FEW = 2
const EXCHANGES = 2

/** Dishes of a day that has begun up to which it is laid out anew to shift one of them aside. */
const FEW_DISHES = 6

/** What is known of dishes that have no place, by their ids. */
export interface Known {
  /** The plan, to be gone on from. */
  readonly from?: Settled | null
  /** What hinders it. */
  readonly hindered?: ReadonlyMap<string, Pick<Hindrance, 'rule'>>
  /** The plan with it set in among the rest, hours after it is wanted; null where it has no place so either. */
  readonly lateWith?: (dish: string) => Plan | null
  /** When it would have its place but for the night. */
  readonly nightly?: ReadonlyMap<string, Pick<Nightly, 'from'>>
  /** How the oven can be let fall for it before the night, the shortest time first. */
  readonly doorOpen?: (job: Job) => readonly DoorOpen[]
}

/**
 * What would give single dishes their place: other heat, being shifted aside for a moment, or another dish left out instead of it. Each is
 * tried by planning the day with it, and offered only where fewer people go without than by the plan.
 *
 * @param conflicts For each dish left out, the dishes with which it does not go together.
 * @param known What is known of the dishes in the plan as it stands.
 */
export function remediesOf(
  problem: PlanProblem,
  plan: Plan,
  missing: readonly Missing[],
  conflicts: ReadonlyMap<string, Pick<Conflict, 'others'>>,
  options: PlanOptions,
  replan: Replan,
  {from = null, hindered = new Map(), lateWith = () => null, nightly = new Map(), doorOpen = () => []}: Known = {},
): Map<string, Remedy[]> {
  const found = new Map<string, Remedy[]>()
  const fed = fedBy(problem)
  // Once the day has begun nobody waits for it to be laid out anew, time after time.
  const trials = new Trials(problem, plan, options, replan, from, problem.done !== undefined)
  const gives = (lack: Lack): boolean => lack.without < trials.now.without && helps(lack, trials.now)
  const near = problem.done ? problem.firings : firesNear(problem, plan)
  const stated = new Set<string>()
  // Of few dishes others are moved for it too; laying many out anew takes longer than a cook waits.
  const anew = problem.done !== undefined && problem.dishes.length <= FEW_DISHES
  let exchanges = 0
  for (const {job, count} of missing) {
    const {dish} = job
    const add = (way: Remedy | null): void => {
      if (way) found.set(dish.id, [...(found.get(dish.id) ?? []), way])
    }
    const late = lateWith(dish.id)
    if (late) add(hoursLater(problem, dish, trials, late))
    const night = nightly.get(dish.id)
    if (night) add(doorLeftOpen(trials, doorOpen(job), gives))
    // What is known to be in its way says what may help.
    const rule = hindered.get(dish.id)?.rule
    const few = missing.length <= FEW
    if (few && rule !== 'hands' && rule !== 'dough') add(otherHeat(problem, dish, trials, options, night, gives, stated))
    if (few && (rule === undefined || rule === 'room')) add(oneMove(problem, dish, trials, {anew}, gives))
    const [other] =
      exchanges++ < EXCHANGES ? lessThanIt(problem, missing, {...job, count}, conflicts.get(dish.id)?.others ?? [], fed) : []
    if (!other) continue
    const {count: out} = other
    const worthIt = (lack: Lack): boolean => gives({...lack, out: lack.out + out, without: lack.without + fed(other)})
    add(leftOut(problem, other.id, trials, near, worthIt))
  }
  return found
}

/** Dishes with which one does not go together and which feed fewer than what is left out of it, those that feed the fewest first. */
function lessThanIt(
  problem: PlanProblem,
  missing: readonly Missing[],
  left: Pick<Job, 'dish' | 'count' | 'fed'>,
  others: readonly string[],
  fed: ReturnType<typeof fedBy>,
): Dish[] {
  if (problem.done) return []
  return others
    .flatMap((id) => problem.dishes.find((d) => d.id === id) ?? [])
    .filter((d) => fed(d) < feedsOf(left) && !missing.some((m) => m.job.dish.id === d.id))
    .sort((a, b) => fed(a) - fed(b))
}
