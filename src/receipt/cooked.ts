import {fold, itemAt, lookUpItem} from '../lexicon/index.js'
import {fleshWordsOf, isFlesh} from './flesh.js'
import type {Section, Token} from './section.js'
import type {Ingredient, ReadIngredient} from './types.js'

/** Meat, poultry and fish that goes in cooked, smoked or tinned, by the words of its own entry. */

const COOKED = fleshWordsOf('cooked')
const ROASTED = fleshWordsOf('roasted')
const BEFORE = fleshWordsOf('cooked before')
const SMOKED = fleshWordsOf('smoked')
const TINNED = fleshWordsOf('tinned')
const HALF = fleshWordsOf('half')
const RAW = fleshWordsOf('raw')
const NOT_YET = fleshWordsOf('not yet')
/** Smoked cold and sold raw, and cooked before they are eaten. Common practice, no source. */
const COOKED_AFTER: ReadonlySet<string> = new Set(['haddock', 'haddock fillet', 'cod', 'cod fillet'])
const ENDS = /^[.;:!?|·•]$/

/** How many words behind a thing may say that it is cooked: "pork, boned and boiled tender". */
const MOST_BEHIND = 8

type Cooked = NonNullable<Ingredient['cooked']>

/** What of a receipt says where the words of one thing are. */
export interface Named {
  readonly item: string
  /** Its tokens [from, to), and the source offset up to which what stands behind may be said of it. */
  readonly from: number
  readonly to: number
  readonly until: number
}

/** The tokens of a receipt, and their stems. */
export interface Stemmed {
  readonly tokens: readonly Token[]
  readonly stems: readonly string[]
}

/**
 * Whether meat, poultry or fish is cooked before it goes in: 'heated' by fire, or 'ready' to be eaten as it is.
 *
 * @param roasts whether the receipt is itself the roasting of it
 * @returns null where its words do not say so, or not that it is done
 */
export function saysCooked({tokens, stems}: Stemmed, {item, from, to, until}: Named, roasts: boolean): Cooked | null {
  const word = (i: number): string => fold(tokens[i]?.word ?? '')
  const {block} = tokens[from]!
  let behind = to
  while (behind < to + MOST_BEHIND && tokens[behind]?.block === block && tokens[behind]!.start < until) {
    const other = itemAt(stems, behind)
    if (ENDS.test(word(behind)) || (other !== null && !isFlesh(other.row.id))) break
    behind++
  }
  for (let i = from; i < behind; i++) if (RAW.has(word(i))) return null
  const row = lookUpItem(item)
  const heats = (i: number): boolean => COOKED.has(word(i)) || (!roasts && ROASTED.has(word(i)))
  const keeps = (i: number): boolean =>
    TINNED.has(word(i)) || (row?.group === 'fish' && !COOKED_AFTER.has(row.id) && SMOKED.has(word(i)))
  const inFull = (i: number): boolean => !HALF.has(word(i - 1))
  for (let i = from; i < to; i++) {
    if (!inFull(i)) continue
    if (heats(i) || (BEFORE.has(word(i)) && !(roasts && word(i) === 'roast'))) return 'heated'
    if (keeps(i)) return 'ready'
  }
  for (let i = to; i < behind && !NOT_YET.has(word(i)); i++) {
    if (!inFull(i)) return null
    // "Chicken, boiled potatoes": the potatoes are.
    const next = itemAt(stems, i + 1)
    if (next !== null && !isFlesh(next.row.id)) return null
    if (heats(i)) return 'heated'
    if (keeps(i)) return 'ready'
  }
  return null
}

/**
 * What of a receipt's meat, poultry and fish is cooked before it goes in.
 *
 * @param roasts whether the receipt is itself the roasting of it
 */
export function cookedAmong(
  {tokens}: Pick<Section, 'tokens'>,
  ingredients: readonly ReadIngredient[],
  roasts: boolean,
): ReadonlyMap<ReadIngredient, Cooked> {
  const found = new Map<ReadIngredient, Cooked>()
  const stems = tokens.map(({stem}) => stem)
  for (const one of ingredients) {
    if (!isFlesh(one.item)) continue
    const from = tokens.findIndex(({start}) => start >= one.start)
    if (from < 0) continue
    let to = from
    while (to < tokens.length && tokens[to]!.start < one.end) to++
    const until = Math.min(...ingredients.flatMap(({start}) => (start >= one.end ? [start] : [])))
    const cooked = saysCooked({tokens, stems}, {item: one.item, from, to, until}, roasts)
    if (cooked !== null) found.set(one, cooked)
    else if (one.measure === 'tin') found.set(one, 'ready')
  }
  return found
}
