import {coreHeats} from '../lexicon/core-heats.js'
import {lookUpItem} from '../lexicon/index.js'
import type {CoreHeat} from '../lexicon/schema.js'
import {measuredFlesh, wordsWritten} from '../receipt/flesh.js'
import type {Receipt} from '../receipt/types.js'
import type {KindFigures} from './kind-figures.js'

/** That the middle of a dish is hot enough, where raw meat, poultry or fish is in it and the sign of its kind does not say so. */

type Of = Pick<Receipt, 'title' | 'ingredients' | 'fleshTold'>

/** What its sign says besides, by the least safe temperature of the middle, °C. */
export const coreSigns: Readonly<Record<number, string>> = {
  63: '63 °C at the centre by thermometer',
  74: '74 °C at the centre by thermometer',
}

/** Whether raw meat, poultry or fish goes into it. */
export const holdsRawFlesh = ({title, ingredients, fleshTold = []}: Of): boolean =>
  fleshTold.length > 0 || measuredFlesh(title, ingredients).some(({cooked}) => cooked === undefined)

/**
 * Least safe temperature of the middle, °C, by what meat, poultry or fish is in it (`lexicon/core-heats`). What was cooked and is heated again wants as much:
 * 165 °F for leftovers (USDA FSIS, Safe Minimum Internal Temperature Chart).
 *
 * @returns null where there is none in it, or only what is eaten cold: smoked or tinned fish
 */
export function safeCentre({title, ingredients, fleshTold = []}: Of, kind: Pick<KindFigures, 'safe'>): number | null {
  const flesh = [...measuredFlesh(title, ingredients).filter(({cooked}) => cooked !== 'ready'), ...fleshTold]
  if (flesh.length === 0) return null
  const whole = kind.safe === coreHeats.find(({of}) => of === 'whole cut')?.celsius
  const isOf = ({items, words}: CoreHeat): boolean =>
    (items === undefined && words === undefined) ||
    flesh.some(
      ({item, text}) =>
        items?.includes(lookUpItem(item)?.id ?? '') === true || wordsWritten(text).some((word) => words?.includes(word) === true),
    )
  return coreHeats.find((row) => (row.of === 'any dish' || whole) && isOf(row))?.celsius ?? null
}

/** A sign with the temperature of the middle beside it; in its place where it names a lower one. */
export function signWithCentre(sign: string, celsius: number | null): string {
  const said = celsius === null ? undefined : coreSigns[celsius]
  if (said === undefined) return sign
  if (sign === '') return said
  const named = /(\d{1,3}) °C/.exec(sign)
  if (named === null) return `${sign}; ${said}`
  return Number(named[1]) >= celsius! ? sign : said
}
