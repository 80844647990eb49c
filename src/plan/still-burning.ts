import {bakingAt, forecast, likelyOnly} from '../oven/forecast.js'
import type {OvenRuns} from '../oven/simulate.js'
import type {Firing, Forecast, OvenEvent, OvenParameters, OvenSpec} from '../oven/types.js'
import {firesOf, inOrder} from './events.js'
import {rules} from './rules.js'
import type {FiringOption, Plan} from './types.js'

/** Minutes a fire may burn on beyond its plan, and wood needs to burn to coals once it is fed; common practice, no source. */
const BURN_ON = {most: 90, coals: 15} as const
/** Minutes between two feedings of the fire: what was fed by now has burned down by then, so that no flame is raked out. */
const FED = 30

/** A fire that still burns, as it could go on. */
export interface StillBurning {
  /** Minutes by which it ought to burn for longer than planned, to bring the oven to the heat it was to have; less than 0 where it ought to be raked sooner. */
  readonly ought: number
  /** It is the last of the day's fires that burns, not the first. */
  readonly again: boolean
  /** The fire with so many minutes more, or fewer; null where it can be neither fed nor raked then. */
  readonly option: (minutes: number) => FiringOption | null
}

/** Minutes sooner that a later fire is tried to be raked. */
export const SOONER = 30
/** Minutes more that a later fire is tried with where it has the heat it ought to and can burn no shorter. */
const LONGER = 30

/**
 * How a fire that still burns could go on, and how long it ought to burn for the oven to have the heat at the end of its soak that the plan
 * in hand counts on.
 *
 * @param burning `now`: minutes after lighting; `start`: the fire as it was planned, in the oven as it now is; `again`: it is the last of
 *   `start.further` that burns; `events`: loads and openings, and of later fires those that do not burn now
 * @returns null where it burns as it ought to, to five minutes, and is the day's first
 */
export function stillBurning(
  oven: OvenSpec,
  {
    now,
    plan,
    start,
    again,
    parameters,
    events,
    runs,
  }: {
    readonly now: number
    readonly plan: Plan
    readonly start: FiringOption
    readonly again: boolean
    readonly parameters: OvenParameters
    readonly events: readonly OvenEvent[]
    readonly runs: OvenRuns
  },
): StillBurning | null {
  const last = again ? start.further!.at(-1)! : {minutes: 0, firing: start.firing}
  const {firing} = last
  const option = (minutes: number): Omit<FiringOption, 'forecast'> => {
    const burn = firing.burn + minutes
    const fire: Firing = {...firing, burn, wood: (firing.wood * burn) / firing.burn}
    const {forecast: _, ...rest} = start
    return again ? {...rest, further: [...start.further!.slice(0, -1), {...last, firing: fire}]} : {...rest, firing: fire}
  }
  const run = (minutes: number, hours: number): Forecast => {
    const {firing: first, further} = option(minutes)
    const burning = again ? firesOf({further: further!.slice(-1)}) : []
    const all = inOrder([...events, ...burning])
    return forecast(oven, {firing: first, parameters: likelyOnly(parameters), events: all, hours, runs})
  }
  const possible = (minutes: number): boolean =>
    minutes !== 0 && minutes <= BURN_ON.most && last.minutes + firing.burn + minutes >= now + (minutes > 0 ? BURN_ON.coals : FED)
  const readyAt = (minutes: number): number => last.minutes + firing.burn + minutes + firing.soak
  const fires = plan.fires ?? [plan]
  const meantFire = fires[again ? (start.further?.length ?? 0) : 0]
  // A fire that no plan has is to give what it gives.
  const has = bakingAt(start.forecast, readyAt(0))
  const meant = meantFire ? bakingAt(plan.forecast, meantFire.ready - plan.lit) : has
  const way = has < meant ? 1 : -1
  let ought = 0
  for (let minutes = way * rules.tick; Math.abs(minutes) <= BURN_ON.most; minutes += way * rules.tick) {
    if (way < 0 && !possible(minutes)) break
    const reached = bakingAt(run(minutes, readyAt(minutes) / 60 + 0.25), readyAt(minutes))
    if (way > 0 ? possible(minutes) : reached >= meant) ought = minutes
    if (way * (reached - meant) >= 0) break
  }
  // A later fire has its own hour: with the heat that it ought to have it may still be ready too late, or be too small for what nobody planned.
  if (ought === 0 && again) ought = [-SOONER, -SOONER / 2, LONGER].find(possible) ?? 0
  if (ought === 0) return null
  const hours = ((start.forecast.baking.likely.length - 1) * start.forecast.step) / 60
  return {
    ought,
    again,
    option: (minutes) => (possible(minutes) ? {...option(minutes), forecast: run(minutes, hours)} : null),
  }
}
