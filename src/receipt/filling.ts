import {lookUpItem} from '../lexicon/index.js'
import type {Item} from '../lexicon/schema.js'
import type {Section} from './section.js'
import {endsSentence} from './sentences.js'
import type {Ingredient} from './types.js'

/**
 * Paste and filling of a dish whose receipt writes both as one: which of its ingredients go into the filling. The paste is what stands about
 * its flour: up to what a pie is filled with, and in prose to the end of the sentence by which it has its liquid.
 */

type Group = Item['group']
type Marked = Ingredient & {filling?: true}

const FLOURS: ReadonlySet<Group | undefined> = new Set<Group>(['flour', 'meal', 'starch'])
const LIQUIDS: ReadonlySet<Group | undefined> = new Set<Group>(['liquid', 'dairy', 'egg', 'spirit'])
const FILLS: ReadonlySet<Group | undefined> = new Set<Group>([
  'meat',
  'fish',
  'fruit',
  'dried fruit',
  'vegetable',
  'pulse',
  'made dish',
])
/** Liquids that wet no paste. */
const POURED: ReadonlySet<string> = new Set(['stock'])

/** What is less than this share of the flour flavours a paste (the rind of a lemon) and fills no pie. Common practice, no source. */
const FLAVOUR = 0.2

const weightOf = ({grams, millilitres}: Ingredient): number | null => grams?.likely ?? millilitres?.likely ?? null

/**
 * Mark what goes into the filling, in place.
 *
 * @param section where the ingredients stand
 * @param ingredients of a dish of paste and filling; those of a part with a name are left as they are
 */
export function markFilling(section: Section, ingredients: readonly Ingredient[]): void {
  const all: readonly Marked[] = ingredients.filter(({part}) => part === '').sort((a, b) => a.start - b.start)
  const groups = all.map(({item}) => lookUpItem(item)?.group)
  const flours = all.flatMap((one, i) => (FLOURS.has(groups[i]) ? [{i, weight: weightOf(one) ?? 0}] : []))
  if (flours.length === 0) return
  const flour = flours.reduce((most, one) => (one.weight > most.weight ? one : most))
  const fills = (i: number): boolean => {
    if (POURED.has(all[i]!.item)) return true
    const weight = weightOf(all[i]!)
    return FILLS.has(groups[i]) && (weight === null || weight > FLAVOUR * flour.weight)
  }
  let wet = false
  /** The last ingredient of the paste on the way from its flour. */
  const reach = (step: 1 | -1): number => {
    let last = flour.i
    for (let i = last + step; i >= 0 && i < all.length && !fills(i); i += step) {
      const [left, right] = step > 0 ? [all[last]!, all[i]!] : [all[i]!, all[last]!]
      if (wet && sentenceEnds(section, left.end, right.start)) break
      wet ||= LIQUIDS.has(groups[i])
      last = i
    }
    return last
  }
  const to = reach(1)
  const from = reach(-1)
  for (const [i, one] of all.entries()) if (i < from || i > to) one.filling = true
}

/** True where a sentence of prose ends between two places of the source; in a list every line may have its stop. */
function sentenceEnds({tokens, blocks}: Section, from: number, to: number): boolean {
  for (let k = 0; k < tokens.length && tokens[k]!.start < to; k++) {
    const {start, block} = tokens[k]!
    if (start >= from && endsSentence(tokens, k) && blocks[block]?.kind === 'paragraph') return true
  }
  return false
}
