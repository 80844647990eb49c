import type {DishCorrection} from '../oven/learn.js'
import type {FiringLog} from '../oven/log.js'
import {OvenRuns} from '../oven/simulate.js'
import type {Message, Receipt} from '../receipt/types.js'
import {makeDishes} from '../scale/dishes.js'
import type {DayAmount, Dish, HeatNeed} from '../scale/types.js'
import {type Corrections, type PlanAgain, planAgain} from './again.js'
import {minutesLateIn} from './asked.js'
import {type AtMost, type FillLimit, floorFilling} from './fill.js'
import {askedOtherwise, type KeptDay, morningOf} from './kept-days.js'
import {learnt} from './learnt.js'
import type {PlanOptions} from './options.js'
import {planDay} from './planner.js'
import {hoursOf, problemOf} from './problem.js'
import {simulator} from './simulator.js'
import {tooEarly} from './too-early.js'
import {twoFires, twoFiresNear} from './two-fires.js'
import type {Plan, PlanProblem} from './types.js'
import {unlit} from './unlit.js'

/** Everything parsed that a plan is made from. */
export interface MakePlan extends PlanAgain {
  readonly receipts: readonly Receipt[]
  /** The dishes, where the caller has made them already. */
  readonly scaled?: ReturnType<typeof makeDishes>
  /** What past firings taught of single dishes: minutes to add to their receipts' times. */
  readonly corrections?: readonly DishCorrection[]
  /** The day's own log so far: what is in the oven stays, the rest is planned again. */
  readonly log?: FiringLog | null
  /** The day as it stood since its fire was lit, as far as it was kept: the morning's plan is made of that. */
  readonly kept?: readonly KeptDay[]
}

export interface MadePlan {
  readonly plan: Plan
  readonly problem: PlanProblem
  readonly dishes: readonly Dish[]
  readonly spare: readonly Dish[]
  /** The line of the day that asks for each of the morning's dishes, by their ids. */
  readonly lines: ReadonlyMap<string, DayAmount>
  readonly messages: readonly Message[]
  /** What today's readings changed, in plain sentences; empty while there are none. */
  readonly said: readonly string[]
}

/**
 * The whole chain from parsed files to a plan: dishes for the people and the floor, fires, and the day's plan.
 *
 * @param morning the day's, where the caller has it: made by `morningPlan` of the same, whatever the log said then
 * @param known see `planAgain`
 * @returns The plan with the problem it solves. `messages` are those of scaling and planning.
 */
export function makePlan(given: MakePlan, morning: MadePlan = morningPlan(given), known?: Corrections): MadePlan {
  const {log} = given
  if (log && log.lit !== null) return begun(given, morning, log, known)
  // Said once: what no fire can have ready is late in every plan.
  const early = tooEarly(morning.problem, morning.plan)
  const told = morning.plan.messages.filter(
    (m) => m.rule !== 'late' || !early.some((e) => e.line === m.line && e.column === m.column),
  )
  const plan = {...morning.plan, messages: [...early, ...told, ...unlit(log ?? null)]}
  return {...morning, plan, messages: [...morning.messages, ...plan.messages]}
}

/**
 * A day as it was planned before it began, whatever its log tells.
 *
 * @returns `messages` are those of scaling alone; those of the plan are in it.
 */
export function morningPlan(given: MakePlan): MadePlan {
  const input = {...given, day: morningOf(given)}
  const runs = new OvenRuns(input.oven)
  const made = filled(input, input.scaled ?? makeDishes({day: input.day, receipts: input.receipts, oven: input.oven}), runs)
  const {spare, lines, messages} = made
  const dishes = learnt(made.dishes, input.corrections)
  const problem = problemOf(input, dishes, runs)
  const plan = planDay(problem, {...planning(input, dishes, runs), spare})
  return {plan, problem, dishes, spare, lines, messages, said: []}
}

/**
 * A day that has begun, planned again.
 *
 * @param morning its morning's plan, and the messages of scaling
 * @param known see `planAgain`
 */
export function begun(input: MakePlan, morning: MadePlan, log: FiringLog, known?: Corrections): MadePlan {
  const other = askedOtherwise(input, morning)
  // What is wrong with what was kept is told where it stands; what was doubtful in it was told when it was the day.
  const wrong = morning.messages.filter((m) => m.severity === 'error').map((m) => ({...m, file: input.kept?.[0]?.file ?? m.file}))
  const {asked, spare} = other ?? {asked: undefined, spare: morning.spare}
  const messages = other ? [...wrong, ...other.messages] : morning.messages
  const again = planAgain({...input, ...(asked ? {asked} : {})}, morning.problem, morning.plan, log, spare, known)
  const dishes = other ? again.problem.dishes : morning.dishes
  return {...morning, ...again, dishes, spare, messages: [...messages, ...again.plan.messages]}
}

/**
 * The day's dishes, those that are to fill the floor so many as the day has a place for: it is for the oven to say, and no order that cannot
 * be met.
 */
function filled(input: MakePlan, made: ReturnType<typeof makeDishes>, runs: OvenRuns): ReturnType<typeof makeDishes> {
  if (!made.dishes.some(({fills}) => fills !== undefined)) return made
  const dishesWith = (atMost: AtMost, limit: FillLimit): ReturnType<typeof makeDishes> => {
    const items = input.day.items.map((item) => {
      const most = atMost.get(item.line)
      return most === undefined ? item : {...item, atMost: most, ...(limit === null ? {} : {limit})}
    })
    return makeDishes({day: {...input.day, items}, receipts: input.receipts, oven: input.oven})
  }
  const found = floorFilling((atMost, {hands = input.day.hands, alone = false} = {}) => {
    const some = learnt((atMost === null ? made : dishesWith(atMost, null)).dishes, input.corrections)
    const dishes = alone ? some.filter(({fills}) => fills !== undefined) : some
    const of = {...input, day: {...input.day, hands}}
    const problem = problemOf(of, dishes, runs)
    const plan = planDay(problem, {...planning(of, dishes, runs), bare: true, inTime: true})
    return {dishes, plan, late: minutesLateIn(problem, plan)}
  })
  return found === null ? made : dishesWith(found.atMost, found.limit)
}

/** How a day's dishes are planned. */
const planning = (input: MakePlan, dishes: readonly Dish[], runs: OvenRuns): PlanOptions => ({
  ...input.options,
  simulate: simulator(input, runs),
  secondFires: (first, further) =>
    first && further
      ? twoFiresNear(input, dishes, {firing: first, further}, hoursOf(input.day, dishes), runs)
      : twoFires(input, dishes, first?.burn ?? null, hoursOf(input.day, dishes), runs),
  firesFor: (day, some) => {
    const of = {...input, day}
    return {...planning(of, some, runs), firings: problemOf(of, some, runs).firings}
  },
  heatStated: (file, celsius) => needsAt(input, file, celsius),
})

/** What the dishes of one receipt's file need, by their ids, with another heat, °C, in its front matter. */
export function needsAt(input: MakePlan, file: string, celsius: number): Map<string, HeatNeed> {
  const receipts = input.receipts.map((one) => (one.file === file ? {...one, facts: {...one.facts, oven: `${celsius} °C`}} : one))
  const {dishes} = makeDishes({day: input.day, receipts, oven: input.oven})
  return new Map(learnt(dishes, input.corrections).flatMap((dish) => (dish.file === file ? [[dish.id, dish.need]] : [])))
}
