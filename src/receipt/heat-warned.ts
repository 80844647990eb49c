import {heatGone, heatHarms, warnedUses, warningsAgainst} from '../lexicon/grammar-words.js'
import {longest, type Node, tree} from './heat-words.js'
import type {Walk} from './walk.js'

/**
 * Heat that a receipt names to have none of it: “do not put it into a fierce oven”, “a hot oven will spoil it”, “till the bread has taken off
 * the first furious heat”. It is no heat the dish wants.
 */

const phrases = (list: readonly string[]): Node<{readonly phrases: readonly string[]}> => tree([{phrases: list}])
const AGAINST = phrases(warningsAgainst)
const HARMS = phrases(heatHarms)
const GONE = {before: phrases(heatGone.before), later: phrases(heatGone.later), between: new Set(heatGone.between)}
/** What may stand between the warning and the heat: “do not — put it into — a fierce oven”. */
const USES: ReadonlySet<string> = new Set(warnedUses)
/** So many words may stand between, and a phrase of the tables has so many at most. */
const reach = 8
const longestPhrase = 4

/** The end of the phrase of a tree that begins at token `at`; −1 where none does. */
const phraseEnd = (walk: Walk, root: Node<unknown>, at: number, limit: number): number =>
  longest(root, walk.tokens, at, limit)?.end ?? -1

/** Does a phrase of the tree begin at one of the tokens [low, from) with nothing but the words of `between` from its end to `from`? */
function standsBefore(walk: Walk, root: Node<unknown>, between: ReadonlySet<string>, from: number): number {
  const low = walk.floor(from, reach + longestPhrase)
  for (let k = from - 1; k >= low; k--) {
    const end = phraseEnd(walk, root, k, from)
    if (end > 0) {
      let j = end
      while (j < from && between.has(walk.word(j))) j++
      if (j === from) return k
    }
  }
  return -1
}

/**
 * Where it is said that a heat is gone, or has been taken off by what baked before: the tokens from and to.
 *
 * @param from @param to the tokens of the words for heat
 * @returns null where it is not said
 */
export function goneAt(walk: Walk, from: number, to: number): {readonly from: number; readonly to: number} | null {
  const limit = walk.limit(from, to - from + reach)
  const end = phraseEnd(walk, GONE.later, to, limit)
  if (end > 0) return {from, to: end}
  const start = standsBefore(walk, GONE.before, GONE.between, from)
  return start < 0 ? null : {from: start, to}
}

/** Is the heat of the tokens [from, to) one that the receipt warns of? */
export function isWarnedAgainst(walk: Walk, from: number, to: number): boolean {
  if (phraseEnd(walk, HARMS, to, walk.limit(from, to - from + reach)) > 0) return true
  // "In no hot oven": the warning is the first of the words for heat.
  const inside = phraseEnd(walk, AGAINST, from, to)
  return (inside > 0 && walk.word(from) === 'no') || standsBefore(walk, AGAINST, USES, from) >= 0
}
