import {forecast, likelyOnly, PRIOR} from '../oven/forecast.js'
import {OvenRuns} from '../oven/simulate.js'
import type {Forecast, OvenEvent} from '../oven/types.js'
import type {Simulate} from './options.js'
import type {Fired, FiringOption} from './types.js'

/** The falling oven with a plan's loads in it, for `planDay`. */
export function simulator(input: Fired, runs = new OvenRuns(input.oven)): Simulate {
  const likely = likelyOnly(input.parameters ?? PRIOR)
  return (option: FiringOption, events: readonly OvenEvent[], exact: boolean): Forecast =>
    forecast(input.oven, {
      firing: option.firing,
      parameters: exact ? (input.parameters ?? PRIOR) : likely,
      events,
      hours: (option.forecast.baking.likely.length * option.forecast.step) / 60,
      runs,
    })
}
