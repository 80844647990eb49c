import type {Dish} from '../scale/types.js'
import type {Hands} from './hands.js'
import {notMadeBefore} from './made-by.js'
import {isMadeUp, makingOf} from './making-time.js'
import {isNight} from './model.js'
import {rules} from './rules.js'
import type {Plan, PlanProblem} from './types.js'

/** When what has no dough is made up: counted back from its load, by the hands that are free. Times in minutes after midnight. */

/** What is made up one after the other for a load. */
export interface MadeUp {
  readonly dishes: readonly string[]
  readonly load: number
  /** When it is set in. */
  readonly at: number
  readonly from: number
  /** Before the night, to be kept cool until it is set in. */
  readonly evening: boolean
}

/** What has to be made up while the hands are full; or is set in at a time before which it cannot be made up by day, and would not keep till then. */
export interface LateMaking {
  readonly dish: Dish
  readonly at: number
}

/** A dish to be made up for one load. */
interface Task {
  readonly dish: Dish
  readonly load: number
  readonly at: number
  /** Minutes of hands. */
  readonly minutes: number
  /** Minutes that it may wait. */
  readonly waits: number
  /** It is not begun before. */
  readonly soonest: number
  /** Minutes that have no hour yet. */
  left: number
  from: number
  to: number
}

/** Tasks of one load that are so near each other are told together, minutes. */
const NEAR = 15

/**
 * Making up shares the hands with doughs, fires and the door, and is put down for them. What may not wait is given the last free minutes
 * before its load, and what may is made before that; what would be made at night, the evening before; where that does
 * not keep, which a plan avoids (`madeRightBefore`), that is told.
 *
 * @param hands the hands of the day with all their other work
 */
export function makingsOf(
  problem: PlanProblem,
  plan: Plan,
  hands: Hands,
): {made: MadeUp[]; late: LateMaking[]; stale: LateMaking[]} {
  const tasks = tasksOf(problem, plan)
  const spare = new Map<number, number>()
  const isSoon = ({waits}: Task): boolean => waits <= rules.soon
  for (const some of [tasks.filter(isSoon), tasks.filter((task) => !isSoon(task))])
    for (const mine of byLoad(some)) fill(problem, mine, hands, spare)
  const made: MadeUp[] = []
  const late: LateMaking[] = []
  const stale: LateMaking[] = []
  for (const mine of byLoad(tasks)) {
    const {load, at} = mine[0]!
    const tell = (group: readonly Task[], from: number, evening: boolean): void => {
      made.push({dishes: group.map(({dish}) => dish.id), load, at, from, evening})
    }
    const evening = mine.filter(({left, from}) => left > 0 && isNight(problem, from - rules.tick))
    if (evening.length > 0) tell(evening, eveningFor(problem, evening), true)
    for (const one of evening) if (isSoon(one)) stale.push({dish: one.dish, at})
    const byDay = mine.filter((task) => !evening.includes(task)).sort((a, b) => a.from - b.from || a.to - b.to)
    for (const {dish, left, from, to, waits} of byDay) if (left > 0 || at - to > waits) late.push({dish, at: from})
    let group: Task[] = []
    for (const task of byDay) {
      if (group.length > 0 && task.from > Math.max(...group.map(({to}) => to)) + NEAR) {
        tell(group, group[0]!.from, false)
        group = []
      }
      group.push(task)
    }
    if (group.length > 0) tell(group, group[0]!.from, false)
  }
  return {made, late, stale}
}

/** What is to be made up, that of the last load first, and of a load what may wait least. */
function tasksOf(problem: PlanProblem, plan: Plan): Task[] {
  const byId = new Map(problem.dishes.map((d) => [d.id, d]))
  return [...plan.loads]
    .sort((a, b) => b.at - a.at)
    .flatMap(({number, at, dishes}) => {
      const counts = new Map<string, number>()
      for (const {dish, count, alreadyIn} of dishes) if (!alreadyIn) counts.set(dish, (counts.get(dish) ?? 0) + count)
      return Array.from(counts)
        .flatMap(([id, count]): Task[] => {
          const dish = byId.get(id)
          if (!dish || !isMadeUp(dish)) return []
          const {minutes, waits} = makingOf(dish, count)
          // What is set in by now is made up, whatever the plan thought of it.
          const soonest = Math.min(rules.tick * Math.ceil(notMadeBefore(problem, dish) / rules.tick), at - rules.tick)
          return [{dish, load: number, at, minutes, waits, soonest, left: minutes, from: at, to: at}]
        })
        .sort((a, b) => a.waits - b.waits || b.minutes - a.minutes)
    })
}

function byLoad(tasks: readonly Task[]): Task[][] {
  const loads = new Map<number, Task[]>()
  for (const task of tasks) loads.set(task.load, [...(loads.get(task.load) ?? []), task])
  return [...loads.values()]
}

/** Gives the tasks of one load the last minutes before it for which hands are free, one pair to each at a time. */
function fill(problem: PlanProblem, tasks: readonly Task[], hands: Hands, spare: Map<number, number>): void {
  const {at} = tasks[0]!
  for (let t = at - rules.tick; t >= at - rules.madeUpBefore && !isNight(problem, t); t -= rules.tick) {
    let free = spare.get(t) ?? hands.spare(t, rules.tick)
    const open = tasks.filter(({left, soonest}) => left > 0 && t >= soonest)
    if (open.length === 0) return
    for (const task of open) {
      const minutes = Math.min(free, task.left, rules.tick)
      if (minutes > 0 && task.left === task.minutes) task.to = t + rules.tick
      // Where hands are wanting it is as late as it could be begun.
      task.from = t
      task.left -= minutes
      free -= minutes
    }
    spare.set(t, free)
  }
}

/** When what goes in too early in the morning to be made up by day is made up: last thing before the night. */
function eveningFor(problem: PlanProblem, tasks: readonly Task[]): number {
  let end = tasks[0]!.from - rules.tick
  while (isNight(problem, end - rules.tick)) end -= rules.tick
  return end - tasks.reduce((sum, {minutes}) => sum + minutes, 0)
}
