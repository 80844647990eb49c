import type {DishCorrection} from '../oven/learn.js'
import type {FiringLog} from '../oven/log.js'
import {OvenRuns} from '../oven/simulate.js'
import type {Message, Receipt} from '../receipt/types.js'
import {makeDishes} from '../scale/dishes.js'
import type {Dish, HeatNeed} from '../scale/types.js'
import {type PlanAgain, planAgain} from './again.js'
import {hoursLate} from './asked.js'
import {type AtMost, type FillLimit, floorFilling} from './fill.js'
import {twoFires} from './later-fires.js'
import {learnt} from './learnt.js'
import type {PlanOptions} from './options.js'
import {planDay} from './planner.js'
import {hoursOf, problemOf} from './problem.js'
import {simulator} from './simulator.js'
import {tooEarly} from './too-early.js'
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
}

export interface MadePlan {
  readonly plan: Plan
  readonly problem: PlanProblem
  readonly dishes: readonly Dish[]
  readonly spare: readonly Dish[]
  readonly messages: readonly Message[]
  /** What today's readings changed, in plain sentences; empty while there are none. */
  readonly said: readonly string[]
}

/**
 * The whole chain from parsed files to a plan: dishes for the people and the floor, fires, and the day's plan.
 *
 * @returns The plan with the problem it solves. `messages` are those of scaling and planning.
 */
export function makePlan(input: MakePlan): MadePlan {
  const runs = new OvenRuns(input.oven)
  const made = filled(input, input.scaled ?? makeDishes({day: input.day, receipts: input.receipts, oven: input.oven}), runs)
  const {spare, messages} = made
  const dishes = learnt(made.dishes, input.corrections)
  const problem = problemOf(input, dishes, runs)
  const plan = planDay(problem, {...planning(input, dishes, runs), spare})
  const {log} = input
  if (!log || log.lit === null) {
    // Said once: what no fire can have ready is late in every plan.
    const early = tooEarly(problem, plan)
    const told = plan.messages.filter((m) => m.rule !== 'late' || !early.some((e) => e.line === m.line && e.column === m.column))
    const whole = {...plan, messages: [...early, ...told, ...unlit(log ?? null)]}
    return {plan: whole, problem, dishes, spare, messages: [...messages, ...whole.messages], said: []}
  }
  const again = planAgain(input, problem, plan, log, spare)
  return {...again, dishes, spare, messages: [...messages, ...again.plan.messages]}
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
    return {dishes, plan, late: hoursLate(problem, plan)}
  })
  return found === null ? made : dishesWith(found.atMost, found.limit)
}

/** How a day's dishes are planned. */
const planning = (input: MakePlan, dishes: readonly Dish[], runs: OvenRuns): PlanOptions => ({
  ...input.options,
  simulate: simulator(input, runs),
  secondFires: (first) => twoFires(input, dishes, first?.burn ?? null, hoursOf(input.day, dishes), runs),
  heatStated: (file, celsius) => needsAt(input, file, celsius),
})

/** What the dishes of one receipt's file need, by their ids, with another heat, °C, in its front matter. */
export function needsAt(input: MakePlan, file: string, celsius: number): Map<string, HeatNeed> {
  const receipts = input.receipts.map((one) => (one.file === file ? {...one, facts: {...one.facts, oven: `${celsius} °C`}} : one))
  const {dishes} = makeDishes({day: input.day, receipts, oven: input.oven})
  return new Map(learnt(dishes, input.corrections).flatMap((dish) => (dish.file === file ? [[dish.id, dish.need]] : [])))
}
