import {words} from './row.js'
import type {ColdPlace, Kneading, Shaping, WarmDough} from './schema.js'

/** What the work at doughs takes as they grow, and where a dough stands that is to rise through a night. Common practice, no source. */

/** Kneading by hand: a kind's minutes are for doughs up to `upTo` kg; each kilogram beyond is so many minutes more. */
export const kneading: Kneading = {id: 'by hand', upTo: 8, perKilogram: 2, source: 'common-practice'}

/** Shaping takes a kind's minutes, or so many for each vessel where that is more. The last row is for every other vessel. */
export const shapings: readonly Shaping[] = [
  {id: 'a sheet of rolls', vessels: ['sheet', 'board', 'tray'], minutes: 5, source: 'common-practice'},
  {id: 'a loaf', vessels: [], minutes: 2, source: 'common-practice'},
]

/**
 * Places in which a dough rises more slowly than in a warm kitchen, °C, and how many times as slowly, the mildest first. What has egg or
 * milk in it stands through a night in the refrigerator only (5 °C or less: FDA Food Code 2022, 3-501.16(A)(2)).
 */
export const coldPlaces: readonly ColdPlace[] = [
  {id: 'cellar', celsius: {low: 10, high: 15}, slower: {low: 1, high: 3}, source: 'common-practice'},
  {id: 'refrigerator', celsius: {low: 3, high: 5}, slower: {low: 3, high: 8}, safe: true, source: 'common-practice'},
]

/**
 * Minutes for which a dough with egg or milk in it may stand in the warm before it is baked, all its risings together (time as a public health
 * control, four hours: FDA Food Code 2022, 3-501.19(B)); hard cheese is no milk of it, nor is what goes on or into it when it is shaped (common
 * practice, no source). `rounding` is what clock times of five minutes add to its receipt's own.
 */
export const warmDough: WarmDough = {
  id: 'egg or milk',
  minutes: 240,
  rounding: 10,
  keeps: ['cheese', 'parmesan cheese', 'rennet'],
  apart: words(
    'topping, filling, stuffing, glaze, icing, streusel, crumble, custard, cream, garnish, sauce, gravy, dressing, meringue, syrup',
  ),
  source: 'fda-food-code',
}

/** What a note of the log calls doughs whose dish it does not name, in the form of a dish's name. */
export const doughWords: ReadonlySet<string> = new Set(
  words('loaf, loaves, bread, breads, dough, doughs, all-loaves, all-the-loaves, first-loaves, rolls, buns, it, them, all'),
)
