import {forecast, likelyOnly, PRIOR, usualFiring} from '../oven/forecast.js'
import {OvenRuns} from '../oven/simulate.js'
import type {Firing, Forecast, OvenEvent} from '../oven/types.js'
import type {Dish} from '../scale/types.js'
import {firstBurns} from './burns.js'
import {twoFires} from './two-fires.js'
import type {Day, Fired, FiringOption, PlanProblem} from './types.js'

/** The day as data: the dishes, and one curve for each length of fire that could serve them. */
export function problemOf(
  input: Fired & {readonly day: Day},
  dishes: readonly Dish[],
  runs = new OvenRuns(input.oven),
): PlanProblem {
  const likely = likelyOnly(input.parameters ?? PRIOR)
  const {day} = input
  const hours = hoursOf(day, dishes)
  const hottest = Math.max(0, ...dishes.map((d) => d.need.startLow))
  const firings: FiringOption[] = []
  const make = (firing: Firing, events: readonly OvenEvent[] = []): Forecast =>
    forecast(input.oven, {firing, parameters: likely, events, hours, runs})
  const burns = firstBurns(input.oven)
  for (const burn of burns) {
    const firing = usualFiring(input.oven, burn)
    const f = make(firing)
    const peak = f.baking.likely[Math.round(f.ready / f.step)] ?? 0
    // A fire too weak for the hottest dish is of no use; one that leaves the oven far too hot only burns wood and time.
    if (peak < hottest && burn < burns.at(-1)!) continue
    firings.push({firing, forecast: f})
    if (peak > hottest + 220) break
  }
  if (day.firings >= 2) firings.push(...twoFires(input, dishes, null, hours, runs))
  return {
    day,
    dishes,
    firings,
    floor: input.oven.floor,
    mouth: input.oven.mouth,
    vaultHeight: input.oven.vaultHeight,
    ...(input.oven.ashBed === undefined ? {} : {ashBed: input.oven.ashBed}),
    ambient: input.oven.ambient,
  }
}

/** Hours of forecast a day needs: to next day's afternoon where something stays overnight, and as long as anything may take. */
export function hoursOf(day: Day, dishes: readonly Dish[]): number {
  const night = dishes.some((d) => d.need.overnight || (d.wantedBy ?? 0) >= 1440 || d.need.startHigh <= 125)
  const last = Math.max(1440 + 14 * 60, day.serve, ...dishes.map(({wantedBy}) => wantedBy ?? 0))
  return night ? Math.ceil((last - day.fireFrom) / 60) : 22
}
