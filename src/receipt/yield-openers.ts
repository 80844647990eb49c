import {lookUpItem} from '../lexicon/index.js'
import type {Item} from '../lexicon/schema.js'
import {statedWords as words} from '../lexicon/yield-words.js'
import type {Token} from './section.js'
import {sentenceAt} from './sentences.js'
import {type Count, count} from './yield-count.js'

/** The words that open a yield, and the count behind them: "sufficient for", "this will make", "yield:". */

const {opens} = words

/** More than anybody makes of one receipt. */
export const MOST = 2000
/** How many words may stand between what opens a yield and its count: "sufficient to make up". */
const MOST_LEADING = 6
/** How far before "make" the word stands that makes it no order: "will probably make". */
const NEAR_MAKE = 3

/** What goes into a dish by the spoon or the glass. */
const BESIDE: ReadonlySet<Item['group']> = new Set<Item['group']>([
  'spice',
  'salt',
  'herb',
  'leaven',
  'spirit',
  'sugar',
  'syrup',
  'fat',
  'colour',
  'gelling',
])

/**
 * "A wine-glass full of each is sufficient for three pies", "a quarter of an ounce of cloves is enough for two cakes": said of what goes in, and not of
 * the receipt. `at`: the word that opens a yield.
 */
function isOfOneThing(tokens: readonly Token[], at: number): boolean {
  if (!opens.suffices.has(tokens[at]!.word)) return false
  const [from] = sentenceAt(tokens, at)
  let beside = false
  for (let i = from; i < at; i++) {
    const {word} = tokens[i]!
    if (word === 'each' && tokens[i - 1]?.word === 'of') return true
    const group = lookUpItem(word)?.group
    if (group === undefined) continue
    if (!BESIDE.has(group)) return false
    beside = true
  }
  return beside && words.is.has(tokens[at - 1]!.word)
}

/** "Zutaten für 12 Stück", "Ingredients (for 2 loaves)", or a line of its own: does the "for" at token `at` say how much a receipt is for? */
export function headsLine(tokens: readonly Token[], at: number): boolean {
  const {block} = tokens[at]!
  if (tokens[at - 1]?.block !== block) return true
  const before = tokens[at - 1]!.word === '(' ? at - 2 : at - 1
  return tokens[before]?.block === block && words.heads.has(tokens[before]!.word)
}

/** "this will make two loaves", not "make two pies of it": is the verb at token `at` no order? */
export function tellsYield(tokens: readonly Token[], at: number): boolean {
  // "It is more economical to make two or three at one time": advice.
  if (tokens[at - 1]?.word === 'to' && words.advised.has(tokens[at - 2]?.word ?? '')) return false
  for (let k = at - 1; k >= 0 && k >= at - NEAR_MAKE; k--) if (words.willMake.has(tokens[k]!.word)) return true
  return false
}

/** The count that the word at token `i` opens as a yield, and the token it begins at; null where that word opens none. */
export function openedCount(tokens: readonly Token[], i: number): {readonly c: Count; readonly from: number} | null {
  const {kind, word, block} = tokens[i]!
  if (kind !== 'word' || !opens.any.has(word) || isOfOneThing(tokens, i)) return null
  const next = tokens[i + 1]?.word ?? ''
  if (opens.quantity.has(word) && next !== ':' && !opens.for.has(next)) return null
  if (opens.cuts.has(word) && next !== 'into') return null
  let j = i + 1
  while (j <= i + MOST_LEADING && tokens[j]?.block === block && words.leads.has(tokens[j]!.word)) {
    if (tokens[j]!.word === 'a' && !words.company.has(tokens[j + 1]?.word ?? '')) break
    j++
  }
  if (tokens[j]?.block !== block) return null
  const c = count(tokens, j)
  return c === null || c.high <= 0 || c.high > MOST ? null : {c, from: j}
}
