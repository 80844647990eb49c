import {lookUpItem} from '../lexicon/index.js'
import type {Item, Measure, Range} from '../lexicon/schema.js'
import {asBakingSoda, asDryYeast, isPressed, type SodaEquivalent} from './leaven.js'
import {times} from './range.js'

/** What does the work of so much of an item today. */
export interface Today {
  /** What it is to a shop, an item's id: yeast by weight is pressed yeast. */
  readonly as: string
  /** What does its work, and how much of it; null where that is not known. */
  readonly item: string
  readonly grams: Range | null
  readonly how: string
  /** Id of a row of `lexicon/sources`. */
  readonly source: string
  /** It is sold still, and the other does as well. */
  readonly sold?: true
}

/** That, with the reckoning it rests on. */
export interface Reckoned {
  readonly today: Today
  readonly by: 'soda' | 'dry yeast' | 'row'
  /** Step of the chain of reasons, without its source; null where none is reckoned. */
  readonly why: string | null
  readonly soda: SodaEquivalent | null
}

/**
 * What does the work of an amount today: alkalis by the gas they give, yeasts by what they raise, anything else by its row. The notes of a
 * receipt and the shopping list both take it from here.
 *
 * @param measure the measure it was given in, by which pressed yeast is told from liquid
 * @param year of the receipt
 * @returns null where nothing replaces it
 */
export function today(
  item: Item,
  grams: Range | null,
  millilitres: Range | null,
  measure: Pick<Measure, 'id' | 'dimension'>,
  year: number | null,
): Reckoned | null {
  const pressed = isPressed(item.id, measure, year)
  const row = (pressed ? lookUpItem('compressed yeast') : null) ?? item
  const instead = row.replacedBy
  if (instead === undefined) return null
  const {factor, source} = instead
  const as = (amount: Range | null, of: string): Today => ({
    as: row.id,
    item: instead.item,
    grams: amount,
    how: instead.how,
    source: of,
    ...(instead.sold === true ? {sold: true} : {}),
  })
  const soda = grams === null || instead.item !== 'baking soda' ? null : asBakingSoda(row.id, grams, year)
  if (soda !== null) return {today: as(soda.soda, soda.source), by: 'soda', why: soda.why, soda}
  const yeast = asDryYeast(row, grams, millilitres)
  if (yeast !== null) {
    const why = pressed ? `yeast by weight is pressed yeast: ${factor.low}–${factor.high} of its weight in dry yeast` : yeast.why
    return {today: as(yeast.dry, yeast.source), by: 'dry yeast', why, soda: null}
  }
  const known = grams !== null && factor.high > 0 ? times(grams, factor) : null
  return {today: as(known, source), by: 'row', why: null, soda: null}
}
