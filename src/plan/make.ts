import {forecast, PRIOR, usualFiring} from '../oven/forecast.js'
import type {Firing, Forecast, OvenEvent, OvenParameters, OvenSpec} from '../oven/types.js'
import type {Message, Receipt} from '../receipt/types.js'
import {makeDishes} from '../scale/dishes.js'
import type {Dish} from '../scale/types.js'
import {type PlanOptions, planDay} from './planner.js'
import type {Day, FiringOption, Plan, PlanProblem} from './types.js'

/** Everything parsed that a plan is made from. */
export interface MakePlan {
  readonly oven: OvenSpec
  readonly day: Day
  readonly receipts: readonly Receipt[]
  /** From readings; the drawing's own where absent. */
  readonly parameters?: OvenParameters
  readonly options?: Pick<PlanOptions, 'effort' | 'progress' | 'cancelled'>
}

export interface MadePlan {
  readonly plan: Plan
  readonly problem: PlanProblem
  readonly dishes: readonly Dish[]
  readonly spare: readonly Dish[]
  readonly messages: readonly Message[]
}

/** Lengths of fire considered, min. */
const burns = [45, 60, 75, 90, 105, 120, 135, 150, 180, 210, 240, 300] as const

/**
 * The whole chain from parsed files to a plan: dishes for the people and the floor, fires, and the day's plan.
 *
 * @returns The plan with the problem it solves. `messages` are those of scaling and planning.
 */
export function makePlan(input: MakePlan): MadePlan {
  const {dishes, spare, messages} = makeDishes({day: input.day, receipts: input.receipts, oven: input.oven})
  const problem = problemOf(input, dishes)
  const plan = planDay(problem, {
    ...input.options,
    simulate: simulator(input),
    spare,
    secondFires: (p) => twoFires(input, dishes, p.firing.burn),
  })
  return {plan, problem, dishes, spare, messages: [...messages, ...plan.messages]}
}

/** The falling oven with a plan's loads in it, for `planDay`. */
export function simulator(input: Pick<MakePlan, 'oven' | 'parameters'>): NonNullable<PlanOptions['simulate']> {
  const likely = likelyOnly(input.parameters ?? PRIOR)
  return (option: FiringOption, events: readonly OvenEvent[], exact: boolean): Forecast =>
    forecast(input.oven, {
      firing: option.firing,
      parameters: exact ? (input.parameters ?? PRIOR) : likely,
      events,
      hours: (option.forecast.baking.likely.length * option.forecast.step) / 60,
    })
}

function likelyOnly(p: OvenParameters): OvenParameters {
  const at = (v: number): {low: number; likely: number; high: number} => ({low: v, likely: v, high: v})
  return {stored: at(p.stored.likely), loss: at(p.loss.likely), coupling: at(p.coupling.likely)}
}

/** The day as data: the dishes, and one curve for each length of fire that could serve them. */
export function problemOf(input: MakePlan, dishes: readonly Dish[]): PlanProblem {
  const likely = likelyOnly(input.parameters ?? PRIOR)
  const {day} = input
  const hours = hoursOf(day, dishes)
  const hottest = Math.max(0, ...dishes.map((d) => d.need.startLow))
  const firings: FiringOption[] = []
  const make = (firing: Firing, events: readonly OvenEvent[] = []): Forecast =>
    forecast(input.oven, {firing, parameters: likely, events, hours})
  for (const burn of burns) {
    const firing = usualFiring(input.oven, burn)
    const f = make(firing)
    const peak = f.baking.likely[Math.round(f.ready / f.step)] ?? 0
    // A fire too weak for the hottest dish is of no use; one that leaves the oven far too hot only burns wood and time.
    if (peak < hottest && burn < 300) continue
    firings.push({firing, forecast: f})
    if (peak > hottest + 220) break
  }
  if (day.firings >= 2) firings.push(...twoFires(input, dishes, null))
  return {
    day,
    dishes,
    firings,
    floor: input.oven.floor,
    mouth: input.oven.mouth,
    vaultHeight: input.oven.vaultHeight,
    ambient: input.oven.ambient,
  }
}

/** Hours after the first fire's soak at which a second is lit, and how long it burns: enough to choose from. */
const second = {after: [150, 240, 330], burns: [60, 90, 120]} as const

/**
 * Fires in two: the first, and a second lit some hours after it.
 *
 * @param first Minutes of the first fire, or null for several.
 */
function twoFires(
  input: Pick<MakePlan, 'oven' | 'parameters' | 'day'>,
  dishes: readonly Dish[],
  first: number | null,
): FiringOption[] {
  const parameters = likelyOnly(input.parameters ?? PRIOR)
  const hours = hoursOf(input.day, dishes)
  const out: FiringOption[] = []
  for (const burn of first === null ? [120, 150, 180] : [Math.min(first, 180)]) {
    const firing = usualFiring(input.oven, burn)
    for (const after of second.after)
      for (const again of first === null ? second.burns.slice(1, 2) : second.burns.slice(0, 2)) {
        const minutes = Math.ceil((burn + firing.soak + after) / 5) * 5
        const further = [{minutes, firing: usualFiring(input.oven, again)}]
        const events: OvenEvent[] = further.map((f) => ({minutes: f.minutes, kind: 'fire', firing: f.firing}))
        out.push({firing, further, forecast: forecast(input.oven, {firing, parameters, events, hours})})
      }
  }
  return out
}

/** Hours of forecast a day needs: to next day's afternoon where something stays overnight. */
function hoursOf(day: Day, dishes: readonly Dish[]): number {
  const night = dishes.some((d) => d.need.overnight || (d.wantedBy ?? 0) >= 1440 || d.need.startHigh <= 125)
  return night ? Math.ceil((1440 + 14 * 60 - day.fireFrom) / 60) : 22
}
