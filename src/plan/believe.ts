import {type Calibration, calibrate} from '../oven/calibrate.js'
import {usualFiring} from '../oven/forecast.js'
import {type DishCorrection, type Learnt, learn} from '../oven/learn.js'
import type {FiringLog} from '../oven/log.js'
import type {OvenParameters, OvenSpec, PastReading} from '../oven/types.js'

/** What is believed of an oven on the day: its parameters, what was said of them, and how its dishes differ from their receipts. */
export interface Belief {
  readonly parameters: OvenParameters
  /** Plain sentences: first what past firings taught, then what today's readings changed. */
  readonly said: readonly string[]
  readonly dishes: readonly DishCorrection[]
  readonly learnt: Learnt
  /** Null until today's log holds a fire and a reading. */
  readonly today: Calibration | null
}

/**
 * Put together what the drawing, past firings and today's readings say of an oven.
 *
 * Today's readings correct what earlier firings taught, and those shrink to the drawing where they are few. Today's log counts once it
 * says when the fire was lit and raked out.
 */
export function believe(input: {
  readonly oven: OvenSpec
  readonly past: readonly FiringLog[]
  readonly readings: readonly PastReading[]
  readonly log: FiringLog | null
}): Belief {
  const {oven, log} = input
  const learnt = learn(oven, {logs: input.past, past: input.readings})
  const burn = log?.lit != null && log.raked != null ? log.raked - log.lit : 0
  if (log === null || burn < 5 || log.readings.length === 0) {
    return {parameters: learnt.parameters, said: learnt.said, dishes: learnt.dishes, learnt, today: null}
  }
  const usual = usualFiring(oven, burn)
  const today = calibrate(oven, {
    firing: {...usual, wood: log.wood ?? usual.wood},
    readings: log.readings,
    events: log.doors,
    prior: learnt.parameters,
    cook: learnt.cook,
  })
  return {parameters: today.parameters, said: [...learnt.said, ...today.said], dishes: learnt.dishes, learnt, today}
}
