import {calibrate} from '../oven/calibrate.js'
import {forecast, likelyOnly} from '../oven/forecast.js'
import type {FiringLog} from '../oven/log.js'
import {OvenRuns} from '../oven/simulate.js'
import type {Firing, Forecast, OvenEvent, OvenParameters} from '../oven/types.js'
import type {Dish} from '../scale/types.js'
import {type Curve, curveOf} from './curve.js'
import {firesOf, inOrder} from './events.js'
import {eventsSoFar} from './events-so-far.js'
import {furtherFires, waitFor} from './later-fires.js'
import type {Simulate} from './options.js'
import {simulator} from './simulator.js'
import type {DoneSoFar, Fired, FiringOption, Plan} from './types.js'

/** The oven of a day that has begun, by its readings. Times of events in minutes after lighting. */
export interface OvenSoFar {
  readonly parameters: OvenParameters
  /** What the readings changed, in plain sentences. */
  readonly said: readonly string[]
  readonly runs: OvenRuns
  /** The day's fires as they were, and as they are meant from here. */
  readonly start: FiringOption
  /** The later ones of them that were lit by now. */
  readonly burned: readonly OvenEvent[]
  /** Loads and openings. */
  readonly past: readonly OvenEvent[]
  /** With loads in it that are still to be drawn, whatever was drawn before in its history. */
  readonly simulate: Simulate
  /** After all that was done, and further events. */
  readonly foresee: (events: readonly OvenEvent[]) => Forecast
  /** Minutes by which a fire that is to be lit then waits for what is in the oven (`waitFor`). */
  readonly waits: (minutes: number) => number
}

/** What has been done by now. Times in minutes after midnight. */
interface Done {
  readonly now: number
  readonly log: FiringLog
  /** The first fire. */
  readonly firing: Firing
  /** The plan that was followed. */
  readonly plan: Plan
  /** When its second fire was lit, or will be. */
  readonly secondAt: number
  readonly set: DoneSoFar['set']
  /** Those of the day, by their ids. */
  readonly dishes: ReadonlyMap<string, Dish>
  /** Air outside the oven, °C. */
  readonly ambient: number
  /** Hours that its curve is reckoned for at least. */
  readonly least: number
}

/** The oven as its readings have it after what was done, and the fires that it still has before it: a second one waits for what is in it. */
export function ovenSoFar(input: Fired, {now, log, firing, plan, secondAt, set, dishes, ambient, least}: Done): OvenSoFar {
  const {oven} = input
  const lit = log.lit!
  const baked = set.filter((s) => !s.lost)
  const {past, gone} = eventsSoFar(baked, dishes, lit, log.doors)
  const meant = furtherFires(log, plan, secondAt)
  const burned = firesOf({further: meant}).filter(({minutes}) => minutes < now - lit)
  const {parameters, said} = calibrate(oven, {
    firing,
    readings: log.readings,
    events: inOrder([...past, ...burned]),
    ...(input.parameters ? {prior: input.parameters} : {}),
  })
  const runs = new OvenRuns(oven)
  const empty = simulator({oven, parameters}, runs)
  const hours = Math.max(least, ((plan.forecast.baking.likely.length - 1) * plan.forecast.step) / 60)
  const foresee = (events: readonly OvenEvent[]): Forecast =>
    forecast(oven, {firing, parameters: likelyOnly(parameters), events: inOrder([...past, ...events]), hours, runs})
  const [ahead] = (log.further?.length ?? 0) === 0 && burned.length === 0 ? meant : []
  const inside = baked.filter((s) => s.drawn === null)
  let unfired: Curve | null = null
  const waits = (fire: number): number => {
    if (inside.length === 0) return 0
    unfired ??= curveOf(foresee([]), ambient)
    return waitFor(fire, inside, dishes, lit, unfired)
  }
  const wait = ahead === undefined ? 0 : waits(ahead.minutes)
  const further = wait > 0 ? meant.map((fire) => ({...fire, minutes: fire.minutes + wait})) : meant
  return {
    parameters,
    said,
    runs,
    start: {firing, ...(further.length > 0 ? {further} : {}), forecast: foresee(firesOf({further}))},
    burned,
    past,
    simulate: (option, events, exact) => empty(option, inOrder([...gone, ...events]), exact),
    foresee,
    waits,
  }
}
