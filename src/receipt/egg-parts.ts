import {readAmount} from './amounts.js'
import type {Draft, Entries} from './entries.js'
import {Exact, HALF} from './exact.js'
import {textOf} from './view.js'

/** Whole eggs of which some whites or yolks are left out: "twelve eggs, but half the whites", "with but six whites". */
export interface LackingPart {
  readonly item: 'egg white' | 'egg yolk'
  readonly count: Exact
  /** The receipt's words. */
  readonly text: string
}

/** Words from the eggs to what is left of them. */
const LINKS = /^(?:,|\(|—|but|with|only|just|using)$/
/** How far behind the eggs it may begin, tokens. */
const NEAR = 4

/**
 * "but half the whites", ", half the whites", "with but six whites", "only four of the whites" behind eggs: so many go in. `at` is at the first
 * of these words; the token after them, else −1.
 */
export function fewerParts(entries: Entries, at: number, to: number): number {
  const {words, tokens} = entries.view
  const eggs = entries.drafts.at(-1)
  if (eggs === undefined || !isWhole(eggs) || eggs.next > at || at - eggs.next > NEAR) return -1
  if (tokens[eggs.start]!.block !== tokens[at]!.block) return -1
  for (let k = eggs.next; k < at; k++) if (!LINKS.test(words[k]!)) return -1
  let i = at
  while (i < to && LINKS.test(words[i]!)) i++
  const half = words[i] === 'half'
  const amount = half || i >= to ? null : readAmount(entries.view, i, to)
  if (!half && (amount === null || amount.article || !amount.low.equals(amount.high))) return -1
  i = half ? i + 1 : amount!.next
  while (i < to && /^(?:of|the|their)$/.test(words[i]!)) i++
  const part = partAt(words[i])
  if (part === null || i >= to) return -1
  const end = words[i + 1] === 'of' && /^eggs?$/.test(words[i + 2] ?? '') ? i + 3 : i + 1
  const kept = half ? eggs.low!.times(HALF) : amount!.low
  if (kept.value >= eggs.low!.value) return -1
  lack(eggs, part, less(eggs.low!, kept), textOf(entries.view, at, end))
  return end
}

/** The part of eggs that a word names, as an item; null where it names none. */
export function partAt(word: string | undefined): LackingPart['item'] | null {
  if (/^whites?$/.test(word ?? '')) return 'egg white'
  return /^(?:yolks?|yelks?)$/.test(word ?? '') ? 'egg yolk' : null
}

const less = (whole: Exact, part: Exact): Exact => whole.plus(part.times(Exact.of(-1)))

/** A count of whole eggs, of which nothing is left out yet. */
export const isWhole = ({item, measure, low, high, lacks}: Draft): boolean =>
  item === 'egg' && measure === 'count' && low !== null && high !== null && low.equals(high) && lacks === undefined

/** Notes at eggs that so many whites or yolks of them are left out. */
export function lack(eggs: Draft, item: LackingPart['item'], count: Exact, text: string): void {
  const said = text.replace(/\s+/g, ' ')
  eggs.lacks = {item, count, text: said}
  eggs.notes = [...eggs.notes, said]
}
