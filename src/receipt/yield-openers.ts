import {lookUpItem} from '../lexicon/index.js'
import type {Item} from '../lexicon/schema.js'
import {statedWords as words} from '../lexicon/yield-words.js'
import type {Token} from './section.js'
import {endsSentence, sentenceAt} from './sentences.js'
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

/** How many words name what a yield is said of: "all the above quantities". */
const MOST_SUBJECT = 6

const beginsLine = (tokens: readonly Token[], at: number): boolean => tokens[at - 1]?.block !== tokens[at]!.block

/** Whether token `at` begins a line or a sentence. */
export const beginsSentence = (tokens: readonly Token[], at: number): boolean =>
  beginsLine(tokens, at) || endsSentence(tokens, at - 1)

/**
 * The receipt itself ("these quantities"), or what is mixed or pointed at ("the dough", "this"), where they are all that stands before token `to` in its
 * sentence, or in its line with `begins`; null where something else does.
 */
function subjectBefore(tokens: readonly Token[], to: number, begins = beginsSentence): 'receipt' | 'mixture' | null {
  let subject: 'receipt' | 'mixture' | null = null
  for (let k = to - 1; k >= Math.max(0, to - MOST_SUBJECT); k--) {
    const {word} = tokens[k]!
    if (words.receipts.has(word)) subject = 'receipt'
    else if (words.subjects.has(word) || words.pointing.has(word)) subject ??= 'mixture'
    else if (!words.articles.has(word)) return null
    if (begins(tokens, k)) return subject
  }
  return null
}

/**
 * What the "for" at token `at` is said of: a `line` of its own or the head of a list ("Zutaten für 12 Stück", "Ingredients (for 2 loaves)"), a
 * `title` ("A recipe for two small loaves"), the `receipt` ("These quantities are for") or its `mixture` ("The dough is for"). Null where it is said of
 * anything else: "a sauce for two puddings".
 */
export function saidFor(tokens: readonly Token[], at: number): 'line' | 'title' | 'receipt' | 'mixture' | null {
  const {block} = tokens[at]!
  if (tokens[at - 1]?.block !== block) return 'line'
  const before = tokens[at - 1]!.word === '(' ? at - 2 : at - 1
  if (tokens[before]?.block === block && words.heads.has(tokens[before]!.word)) return 'line'
  if (words.are.has(tokens[at - 1]!.word)) return subjectBefore(tokens, at - 1)
  return subjectBefore(tokens, at, beginsLine) === 'receipt' ? 'title' : null
}

/** "from this amount", "aus diesem Teig": the token behind it, from token `at`; `at` where nothing of the kind is said. */
export function pastFrom(tokens: readonly Token[], at: number): number {
  const {block} = tokens[at - 1]!
  const word = (n: number): string => (tokens[n]?.block === block ? tokens[n]!.word : '')
  if (!words.from.has(word(at))) return at
  let k = at + 1
  let pointed = false
  for (; words.pointing.has(word(k)) || words.articles.has(word(k)); k++) pointed ||= words.pointing.has(word(k))
  if (!pointed) return at
  // "from this."
  return words.subjects.has(word(k)) ? k + 1 : /^[.;!]?$/.test(word(k)) ? k : at
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
  const label = opens.labels.has(word)
  const tail = label && words.labelTails.has(next) ? 1 : 0
  if (label && (tokens[i + 1 + tail]?.word !== ':' || !beginsSentence(tokens, i))) return null
  if (opens.gets.has(word) && (tokens[i - 1]?.block !== block || !words.gets.has(tokens[i - 1]!.word))) return null
  if (opens.quantity.has(word) && next !== ':' && !opens.for.has(next)) return null
  if (opens.cuts.has(word) && next !== 'into') return null
  let j = i + 1 + tail
  while (j <= i + MOST_LEADING && tokens[j]?.block === block && words.leads.has(tokens[j]!.word)) {
    if (tokens[j]!.word === 'a' && !words.company.has(tokens[j + 1]?.word ?? '')) break
    j++
  }
  if (tokens[j]?.block !== block) return null
  const c = count(tokens, j)
  return c === null || c.high <= 0 || c.high > MOST ? null : {c, from: j}
}
