import {SOOT_CLEARS} from '../oven/fire.js'
import type {Forecast} from '../oven/types.js'
import {sample} from './curve.js'
import {phrase} from './phrases.js'
import {rules} from './rules.js'
import type {Load, Phrase} from './types.js'

/** What tells without a thermometer how hot an oven is, in words. */

/** What to look for at a heat, °C: flour (#13493, 1829), paper (F. White, 1932). */
export function signOf(celsius: number): Phrase {
  if (celsius >= 250) return phrase('sign flour scorches')
  if (celsius >= 205) return phrase('sign flour browns', {count: 20})
  if (celsius >= 163) return phrase('sign paper', {colour: {unit: 'word', word: 'golden'}})
  if (celsius >= 121) return phrase('sign paper', {colour: {unit: 'word', word: 'pale brown'}})
  return phrase('sign arm', {count: {unit: 'count', value: 60}})
}

/** Loads before which the heat is tested, by their numbers: all that something is set in with, but those soon after one that was tested for. */
export function testedLoads(loads: readonly Load[]): ReadonlySet<number> {
  const tested = new Set<number>()
  let last = Number.NEGATIVE_INFINITY
  for (const {number, at, dishes} of [...loads].sort((a, b) => a.at - b.at)) {
    if (at - last <= rules.testTells || dishes.every(({alreadyIn}) => alreadyIn === true)) continue
    tested.add(number)
    last = at
  }
  return tested
}

/** What tells that a fire has burned long enough, and that its heat has evened out. */
export interface FireSigns {
  readonly rake: Phrase
  readonly soak: Phrase
}

/**
 * The signs of a fire. Walls that it never makes hot enough for their soot to burn off stay dark however long they are watched: then what tells
 * is the floor, by flour or a thermometer, once the oven is swept and has soaked. The vault is one face to the model and clears at the crown
 * first, so that its mean tells of the walls over the fire.
 *
 * @param forecast of the day, minutes from the lighting of its first fire
 * @param fire when it is lit, raked out and ready, minutes from there
 */
export function fireSigns({vault, floor, baking, step}: Forecast, fire: {lit: number; raked: number; ready: number}): FireSigns {
  const burning = vault.likely.slice(Math.floor(fire.lit / step), Math.ceil(fire.raked / step) + 1)
  if (Math.max(...burning) >= SOOT_CLEARS) return {rake: phrase('sign coals'), soak: phrase('sign floor')}
  const celsius = sample(floor.likely, step, fire.ready)
  const sign = signOf(sample(baking.likely, step, fire.ready))
  return {
    rake: phrase('sign coals dark'),
    soak: phrase('sign floor dark', {
      celsius: {unit: 'celsius', value: celsius},
      sign: {unit: 'sentences', phrases: [sign]},
    }),
  }
}
