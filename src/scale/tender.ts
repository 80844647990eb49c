import {lookUpItem} from '../lexicon/index.js'
import type {Receipt} from '../receipt/types.js'
import type {KindFigures} from './kind-figures.js'
import type {HeatNeed} from './types.js'

/**
 * The sign that a dish is done: its kind's, or where it is a tough cut baked long and slowly, that it is tender (`tender` of its kind), and
 * where a crust baked blind is filled with eggs, that they are set (`set`).
 *
 * @param mass of what is in one vessel, kg, where the receipt weighs no meat
 */
export function signOf(
  {sign, tender, set}: Pick<KindFigures, 'sign' | 'tender' | 'set'>,
  {title, ingredients, tending}: Pick<Receipt, 'title' | 'ingredients' | 'tending'>,
  {minutes, reference}: Pick<HeatNeed, 'minutes' | 'reference'>,
  mass: number,
): string {
  const filled = tending?.some(({does}) => does === 'fill') === true
  if (set !== undefined && filled && ingredients.some(({item}) => lookUpItem(item)?.group === 'egg')) return set.sign
  if (tender === undefined) return sign
  const {slow} = tender
  const words = [title, ...ingredients.map(({text}) => text)].flatMap((text) => text.toLowerCase().split(/[^\p{L}]+/u))
  const tough = words.some((word) => tender.words.includes(word) || tender.endings.some((ending) => word.endsWith(ending)))
  // A receipt's time is of its own piece, however the day divides it.
  const pieces = ingredients.flatMap(({item, grams}) =>
    grams && lookUpItem(item)?.group === 'meat' ? [grams.likely / 1000] : [],
  )
  const piece = pieces.length > 0 ? Math.max(...pieces) : mass
  const long = minutes.likely >= slow.minutes && minutes.likely >= slow.perKilogram * piece
  const slowly = reference >= slow.low && reference <= slow.high
  return (tough && minutes.likely >= tender.minutes) || (long && slowly) ? tender.sign : sign
}
