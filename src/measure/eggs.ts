import {span} from '../lexicon/row.js'
import type {Range} from '../lexicon/schema.js'
import {over, scaled} from './range.js'

/** Eggs by weight: ten eggs of 1837 weighed a pound in the shell; a dozen large eggs today weigh 24 oz or more. */

/** Share of an egg that is not shell. USDA SR28 gives 50 g for a large egg of 56.7 g in the shell. */
export const OUT_OF_SHELL: Range = span(0.86, 0.88, 0.9)

/** One egg in its shell, g, ten to a pound (Project Gutenberg 9624, 1837), and its spread, from memory. */
export const EGG_1837_IN_SHELL: Range = span(42, 45.359237, 51)

/** One large egg out of its shell today, g. USDA SR28, item 01123; large eggs by USDA AMS 56 weigh 56.7–63.8 g in the shell. */
export const LARGE_EGG: Range = span(48, 50, 56)

/** The last year whose eggs were small. From memory: eggs grew with the breeds of the later century. */
export const SMALL_EGGS_TO = 1899

/** Large eggs of today that weigh as much as so many grams of egg out of the shell. */
export const asLargeEggs = (grams: Range): Range => over(grams, LARGE_EGG)

/** Grams out of the shell of so many eggs of a year; today's large eggs where it is not known. */
export function eggGrams(count: number, year: number | null): Range {
  if (year === null || year > SMALL_EGGS_TO) return scaled(LARGE_EGG, count)
  return {
    low: count * EGG_1837_IN_SHELL.low * OUT_OF_SHELL.low,
    likely: count * EGG_1837_IN_SHELL.likely * OUT_OF_SHELL.likely,
    high: count * EGG_1837_IN_SHELL.high * OUT_OF_SHELL.high,
  }
}

/** Large eggs to break for so many eggs of a year, to the half egg: ten of 1837 are eight today. */
export function largeEggsFor(count: number, year: number | null): number {
  if (year === null || year > SMALL_EGGS_TO) return count
  return Math.max(0.5, Math.round((eggGrams(count, year).likely / LARGE_EGG.likely) * 2) / 2)
}
