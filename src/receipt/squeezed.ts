import {fruitParts, partsOf, usedWhole} from '../lexicon/grammar-words.js'
import {fold, lookUpItem} from '../lexicon/index.js'
import type {Item} from '../lexicon/schema.js'
import {type Amount, readAmount} from './amounts.js'
import type {Entries, Mode} from './entries.js'
import type {Exact} from './exact.js'
import {type Noun, partItem, readNoun} from './nouns.js'
import type {Quantity} from './quantities.js'
import {DESCRIBES, ENDER, PREPARED, type View} from './view.js'

/**
 * Fruit that is asked for by its count and used in part: "the juice of 1 lemon and 2 oranges", "zest 1 lemon", "1 lemon, zest and juice".
 */

/** What is asked of a fruit by the fruit's count, at the end of an item's name. */
export const OF_A_FRUIT = / (?:juice|rind|pulp)$/

/** Whether no name follows at `at`: the text of the entry ends there, or goes on with what is done, or with another thing. */
export const endsName = ({tokens, bits}: View, at: number, to: number): boolean =>
  at >= to ||
  tokens[at]!.block !== tokens[at - 1]!.block ||
  tokens[at]!.kind === 'mark' ||
  (bits[at]! & (ENDER | DESCRIBES)) !== 0

export const AND = /^(?:and|&|\+|und)$/
const USED_WHOLE: ReadonlySet<string> = new Set(usedWhole.map(fold))

/** Whether a fruit is squeezed and grated as a rule: its juice has a row of its own. */
export const isSqueezed = ({id, group}: Item): boolean => group === 'fruit' && lookUpItem(`${id} juice`)?.id === `${id} juice`

/** The row of a noun that names such a fruit and nothing of it; null where it does not. */
const squeezedRow = (noun: Noun | null): Item | null =>
  noun !== null && noun.row !== null && noun.item === noun.row.id && isSqueezed(noun.row) ? noun.row : null

/** What is asked of a fruit, and where that is told. */
interface Asked {
  readonly start: number
  readonly next: number
  readonly low: Exact
  readonly high: Exact
  readonly item: string
  readonly row: Item
  readonly hedges: readonly string[]
  readonly confidence: number
}

/** Parts of a fruit as entries, each by the fruit's count. */
export function putParts(entries: Entries, parts: readonly string[], {item, row, hedges, ...asked}: Asked, mode: Mode): void {
  for (const part of parts) {
    const made = partItem(item, part)
    entries.push({...asked, measure: 'count', item: made.item, row: made.row ?? row, hedges: [...hedges]}, mode)
  }
}

interface Fruit {
  readonly amount: Amount
  readonly item: string
  readonly row: Item
  readonly next: number
}

/**
 * “… and 2 oranges” behind "the juice of 1 lemon": the same part of another fruit. `at` is at "and", or at the comma of a row of fruits that
 * ends in "and"; empty where it goes on with something else.
 */
export function fruitsBehind(view: View, at: number, to: number): readonly Fruit[] {
  const {words, tokens} = view
  const last = at < to && AND.test(words[at]!)
  if (at + 1 >= to || (!last && words[at] !== ',') || tokens[at]!.block !== tokens[at - 1]!.block) return []
  const from = /^(?:of|von)$/.test(words[at + 1]!) ? at + 2 : at + 1
  const amount = readAmount(view, from, to)
  // "the rind of two lemons and one of orange"
  const noun = amount === null ? null : readNoun(view, words[amount.next] === 'of' ? amount.next + 1 : amount.next, to, false)
  const row = squeezedRow(noun)
  if (amount === null || noun === null || row === null) return []
  const past = words[noun.next] === ',' ? noun.next + 1 : noun.next
  if (past < to && tokens[past]!.block === tokens[at]!.block && USED_WHOLE.has(fold(words[past]!))) return []
  const fruit = {amount, item: noun.item, row, next: noun.next}
  const more = fruitsBehind(view, noun.next, to)
  return last || more.length > 0 ? [fruit, ...more] : []
}

/** Whether some parts are asked of a fruit by its number alone, "zest 1 lemon", "juice 2 oranges": at `at` is the number. */
export function isAskedOfFruit(view: View, at: number, to: number, parts: readonly string[]): boolean {
  const {words} = view
  if (!parts.every((part) => OF_A_FRUIT.test(` ${part}`)) || NOT_ASKED.test(words[at - 1]!)) return false
  const amount = readAmount(view, at, to)
  return amount !== null && squeezedRow(readNoun(view, amount.next, to, false)) !== null
}

/** Said of the whole fruit, and thrown away: "peel 2 oranges". */
const NOT_ASKED = /^(?:peel|skin|pulp)$/

const OPENS = /^[,(:|–—-]$/
const MOST_PARTS = 3

/**
 * What of a fruit goes in where that stands behind it on a list: "1 lemon, zest and juice", "2 lemons (juice only)", "1 orange, zested and juiced",
 * „1 Zitrone, Saft und abgeriebene Schale“.
 *
 * @returns the parts and the token behind them; null where nothing of the kind stands there, or more does
 */
function partsBehind(view: View, from: number, to: number): {readonly parts: readonly string[]; readonly next: number} | null {
  const {words, bits, tokens} = view
  if (from + 1 > to || !OPENS.test(words[from] ?? '')) return null
  const isOver = (at: number): boolean => at >= to || tokens[at]!.block !== tokens[from]!.block
  const parts: string[] = []
  let k = from + 1
  while (!isOver(k) && parts.length < MOST_PARTS) {
    const start = k
    while (!isOver(k) && k - start < 3 && (LEADS.test(words[k]!) || (bits[k]! & PREPARED && !fruitParts[words[k]!]))) k++
    const part = isOver(k) ? undefined : (fruitParts[words[k]!] ?? fruitPart(words[k]!))
    if (part === undefined) return null
    if (!parts.includes(part)) parts.push(part)
    k++
    if (isOver(k) || !(AND.test(words[k]!) || words[k] === ',')) break
    k++
  }
  if (!isOver(k) && words[k] === 'only') k++
  if (!isOver(k) && words[k] === ')') k++
  return parts.length > 0 && (isOver(k) || (words[from] === '(' && words[k - 1] === ')')) ? {parts, next: k} : null
}

const LEADS =
  /^(?:the|its|grated|finely|freshly|only|davon|die|der|den|dessen|deren|fein|abgeriebene|abgeriebener|geriebene|ausgepresster)$/
/** The part of a fruit that a noun names, where it names one. */
const fruitPart = (word: string): string | undefined => {
  const part = partsOf[word]
  return part !== undefined && OF_A_FRUIT.test(` ${part}`) && !NOT_ASKED.test(word) ? part : undefined
}

/** "1 lemon, zest and juice": its parts as entries, and the token after them; −1 where the fruit is used whole. `at` is where the entry begins. */
export function fruitInParts(entries: Entries, at: number, quantity: Quantity, noun: Noun, to: number): number {
  const row = quantity.measure === 'count' ? squeezedRow(noun) : null
  const found = row === null ? null : partsBehind(entries.view, noun.next, to)
  if (row === null || found === null) return -1
  const {low, high, hedges} = quantity
  putParts(entries, found.parts, {start: at, next: found.next, low, high, item: noun.item, row, hedges, confidence: 0.9}, 'list')
  return found.next
}
