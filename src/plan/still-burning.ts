import {forecast, likelyOnly} from '../oven/forecast.js'
import type {OvenRuns} from '../oven/simulate.js'
import type {Firing, Forecast, OvenEvent, OvenParameters, OvenSpec} from '../oven/types.js'
import type {StillBurning} from './remedies.js'
import {rules} from './rules.js'
import type {FiringOption, Plan} from './types.js'

/** Minutes a fire may burn on beyond its plan, and wood needs to burn to coals once it is fed; common practice, no source. */
const BURN_ON = {most: 90, coals: 15} as const
/** Minutes between two feedings of the fire: what was fed by now has burned down by then, so that no flame is raked out. */
const FED = 30

/**
 * How a fire that still burns could go on, and how long it ought to burn for the oven to have the heat at the end of its soak that the plan
 * in hand counts on.
 *
 * @param burning `now`: minutes after lighting; `start`: the fire as it was planned, in the oven as it now is
 * @returns null where it burns as it ought to, to five minutes
 */
export function stillBurning(
  oven: OvenSpec,
  {
    now,
    plan,
    start,
    parameters,
    events,
    runs,
  }: {
    readonly now: number
    readonly plan: Plan
    readonly start: FiringOption
    readonly parameters: OvenParameters
    readonly events: readonly OvenEvent[]
    readonly runs: OvenRuns
  },
): StillBurning | null {
  const {firing} = start
  const fire = (minutes: number): Firing => {
    const burn = firing.burn + minutes
    return {...firing, burn, wood: (firing.wood * burn) / firing.burn}
  }
  const run = (minutes: number, hours: number): Forecast =>
    forecast(oven, {firing: fire(minutes), parameters: likelyOnly(parameters), events, hours, runs})
  const possible = (minutes: number): boolean =>
    minutes !== 0 && minutes <= BURN_ON.most && firing.burn + minutes >= now + (minutes > 0 ? BURN_ON.coals : FED)
  const readyHeat = ({baking, ready, step}: Forecast): number => baking.likely[Math.round(ready / step)]!
  const meant = readyHeat(plan.forecast)
  const has = readyHeat(start.forecast)
  const way = has < meant ? 1 : -1
  let ought = 0
  for (let minutes = way * rules.tick; Math.abs(minutes) <= BURN_ON.most; minutes += way * rules.tick) {
    if (way < 0 && !possible(minutes)) break
    const reached = readyHeat(run(minutes, (firing.burn + minutes + firing.soak) / 60 + 0.25))
    if (way > 0 ? possible(minutes) : reached >= meant) ought = minutes
    if (way * (reached - meant) >= 0) break
  }
  if (ought === 0) return null
  const hours = ((start.forecast.baking.likely.length - 1) * start.forecast.step) / 60
  return {
    ought,
    option: (minutes) => (possible(minutes) ? {...start, firing: fire(minutes), forecast: run(minutes, hours)} : null),
  }
}
