import type {Dish} from '../scale/types.js'
import {rules} from './rules.js'
import type {Plan, PlanProblem} from './types.js'

/** What keeps the hands of a day busy beside the doughs: the fire and the door. */

/** Minutes of work from a clock time on. */
export interface Task {
  readonly from: number
  readonly minutes: number
  /** Other work is put down for a moment for it. */
  readonly brief?: true
}

/** What of a plan the hands have to do with: its fires, and when what is set in and drawn. */
export interface Hours extends Pick<Plan, 'fires'> {
  readonly loads: ReadonlyArray<{
    readonly number: number
    readonly at: number
    readonly dishes: ReadonlyArray<{
      readonly dish: string
      readonly count: number
      readonly alreadyIn?: boolean
      readonly draw: {readonly likely: number}
    }>
  }>
}

/** The pairs of hands of a day and what they do. Times in minutes after midnight. */
export class Hands {
  readonly #pairs: number
  readonly #tasks: Task[]

  constructor(pairs: number, tasks: readonly Task[]) {
    this.#pairs = pairs
    this.#tasks = [...tasks]
  }

  /** The same work with so many pairs. */
  with(pairs: number): Hands {
    return new Hands(pairs, this.#tasks)
  }

  take(task: Task): void {
    this.#tasks.push(task)
  }

  giveBack(task: Task): void {
    const at = this.#tasks.indexOf(task)
    if (at >= 0) this.#tasks.splice(at, 1)
  }

  /** Minutes of work from a time on for which no pair of hands is free; with `brief` those too that something else takes for a moment only. */
  wanting(from: number, minutes: number, brief = false): number {
    const here = this.#tasks.filter((t) => (brief || !t.brief) && t.from < from + minutes && t.from + t.minutes > from)
    if (here.length < this.#pairs) return 0
    const points = [from, from + minutes, ...here.flatMap((t) => [t.from, t.from + t.minutes])]
      .filter((t) => t >= from && t <= from + minutes)
      .sort((a, b) => a - b)
    let sum = 0
    for (let i = 1; i < points.length; i++) {
      const [begin, end] = [points[i - 1]!, points[i]!]
      if (here.filter((t) => t.from <= begin && t.from + t.minutes >= end).length >= this.#pairs) sum += end - begin
    }
    return sum
  }

  /** Minutes of all hands that nothing takes from a time on, in so many minutes; what takes a moment only is not counted. */
  spare(from: number, minutes: number): number {
    const taken = this.#tasks.reduce(
      (sum, t) => (t.brief ? sum : sum + Math.max(0, Math.min(t.from + t.minutes, from + minutes) - Math.max(t.from, from))),
      0,
    )
    return Math.max(0, this.#pairs * minutes - taken)
  }

  /** Whether a pair of hands is free from a time on for so many minutes. */
  free(from: number, minutes: number): boolean {
    return this.wanting(from, minutes) === 0
  }
}

/** Minutes of hands to set in, or draw, one vessel of a dish. */
export function handlingOf(dish: Dish): number {
  return dish.mass > rules.heavy ? rules.handlingHeavy : rules.handlingLight
}

/** When the fires of a plan are fed, minutes after midnight. */
export function fedAt({lit, firing}: NonNullable<Plan['fires']>[number]): number[] {
  const {every} = rules.fireWork
  const feeds = Math.max(0, Math.ceil(firing.burn / every) - 1)
  return Array.from({length: feeds}, (_, i) => lit + (i + 1) * every)
}

/** The work of a plan at its fires and its door. */
export function fireAndDoor(plan: Hours, byId: ReadonlyMap<string, Dish>): Task[] {
  const {light, feed, rake} = rules.fireWork
  const fires = (plan.fires ?? []).flatMap((fire): Task[] => [
    {from: fire.lit, minutes: light},
    ...fedAt(fire).map((from): Task => ({from, minutes: feed, brief: true})),
    {from: fire.raked, minutes: rake},
  ])
  const door = new Map<number, number>()
  for (const load of plan.loads)
    for (const d of load.dishes) {
      const dish = byId.get(d.dish)
      if (!dish) continue
      const each = d.count * handlingOf(dish)
      if (!d.alreadyIn) door.set(load.at, (door.get(load.at) ?? 0) + each)
      door.set(d.draw.likely, (door.get(d.draw.likely) ?? 0) + each)
    }
  const openings = [...door].flatMap(([from, minutes]): Task[] => {
    const pairs = Math.max(1, Math.ceil(minutes / rules.tick))
    return Array.from({length: pairs}, () => ({from, minutes: Math.min(rules.tick, minutes)}))
  })
  return [...fires, ...openings]
}

/** Minutes after midnight at which the baker's day begins. */
export function wake({day}: PlanProblem): number {
  return Math.min(rules.nightTo, day.fireFrom)
}

/** Minutes by which work from a time on reaches into the night, at the end where that is less; 0 where all of it is done by day. */
export function intoNight(problem: PlanProblem, from: number, minutes: number): number {
  const start = from - 1440 * Math.floor(from / 1440)
  const rises = wake(problem)
  const early = start < rises ? rises - start : 0
  const asleep = 1440 - rules.nightFrom
  const late = start < rises ? start + asleep + minutes : start + minutes - rules.nightFrom
  return early > 0 ? Math.min(early, late) : Math.max(0, late)
}
