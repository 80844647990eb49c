import {lookUpItem} from '../lexicon/index.js'
import type {Section} from './section.js'
import type {ReadIngredient, TimePhrase} from './types.js'

/** How many things two lists have both of, at the least, where each is of a dish of its own: the flour and the salt of two breads. */
const BOTH = 2

/** What a thing is to a dish: one flour is as good as another. */
const partOf = (item: string): string => (lookUpItem(item)?.group === 'flour' ? 'flour' : item)

/**
 * The first entry of a second list that is of another dish by all signs: it has things of the first again, with amounts, and each list has its
 * bake below it. Null where there is none; a tart's case and its filling share little.
 */
export function secondDish(
  section: Section,
  ingredients: readonly ReadIngredient[],
  times: readonly TimePhrase[],
): ReadIngredient | null {
  const listed = ingredients.filter(
    (one) =>
      one.amount !== null &&
      section.blocks.some((block) => /^(?:item|row)$/.test(block.kind) && block.start <= one.start && one.start < block.end),
  )
  const bakes = times.filter(({of}) => of === 'bake')
  const [first] = bakes
  if (first === undefined) return null
  const before = listed.filter(({start}) => start < first.start)
  const behind = listed.filter(({start}) => start >= first.start)
  const [begins] = behind
  if (begins === undefined || !bakes.some(({start}) => start > behind.at(-1)!.start)) return null
  const had = new Set(before.map(({item}) => partOf(item)))
  const again = new Set(behind.map(({item}) => partOf(item)).filter((part) => had.has(part)))
  return again.size >= BOTH ? begins : null
}
