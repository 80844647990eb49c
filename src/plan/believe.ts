import {type Calibration, calibrate} from '../oven/calibrate.js'
import {type DishCorrection, firingOf, type Learnt, type LoadOf, learn, pastFiring} from '../oven/learn.js'
import type {FiringLog} from '../oven/log.js'
import type {OvenParameters, OvenSpec, PastReading} from '../oven/types.js'
import {readAsked} from '../scale/amount-phrase.js'
import {slugOf} from '../scale/slug.js'
import type {Dish} from '../scale/types.js'
import {byOwnNames} from './own-names.js'

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
  /** The day's dishes, spare ones too: a past load of the same receipt took as much heat a vessel. */
  readonly dishes?: readonly Dish[]
}): Belief {
  const {oven, log} = input
  const loadOf = loadsOf(input.dishes ?? [])
  const past = input.past.map((one) => byOwnNames(one, input.dishes ?? []))
  const learnt = learn(oven, {logs: past, past: input.readings, loadOf})
  const burn = log?.lit != null && log.raked != null ? log.raked - log.lit : 0
  if (log === null || burn < 5 || log.readings.length === 0) {
    return {parameters: learnt.parameters, said: learnt.said, dishes: learnt.dishes, learnt, today: null}
  }
  const told = pastFiring(oven, log, loadOf)
  const today = calibrate(oven, {
    firing: firingOf(oven, burn, log.wood),
    readings: told?.readings ?? log.readings,
    events: told?.events ?? log.doors,
    prior: learnt.parameters,
    cook: learnt.cook,
  })
  return {parameters: today.parameters, said: [...learnt.said, ...today.said], dishes: learnt.dishes, learnt, today}
}

/** What the loads of past firings took, for those that are dishes of this day too: as many vessels as the log says, or as today. */
export function loadsOf(dishes: readonly Dish[]): LoadOf {
  return (name, text) => {
    const same = dishes.filter((d) => slugOf(d.file) === name)
    const dish = same[0]
    if (!dish) return null
    const today = same.reduce((n, d) => n + d.count, 0)
    const words = text.trimStart().replace(/^(?:set|put)?\s*in\b/i, '')
    const said = words.search(/\b(?:\d|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|dozen)/i)
    const amount = words
      .slice(Math.max(0, said))
      .replace(/[,;.(].*$/s, '')
      .replace(/ (?:set|put) in\b.*$/is, '')
    const read = said < 0 ? null : readAsked(amount.trim(), 1)
    const asked = read?.ok ? read.value : null
    const bake = dish.need.minutes.likely
    if (asked?.kind === 'weight') return {mass: asked.kilograms, water: (dish.water / dish.mass) * asked.kilograms, bake}
    // "24 biscuits" are pieces, and on how many sheets is not said: then it is today's load.
    const vessels = asked?.kind === 'count' && asked.count <= 4 * today ? asked.count : today
    return {mass: dish.mass * vessels, water: dish.water * vessels, bake}
  }
}
