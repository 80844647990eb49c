import type {Hedge, OvenWord} from '../lexicon/schema.js'
import {ADJECTIVES, HEDGE_CAP, HEDGES, LINKS, longest, RUN_WORDS, WEAK} from './heat-words.js'
import type {Walk} from './walk.js'

/**
 * A run of heat words and hedges before or behind what they are said of: “rather slow”, “hot, but not too hot”.
 */

/**
 * A run of hedges and heat words in [from, to): "rather slow", "good soaking", "hot, but not too hot".
 * @returns the rows and hedge that carry its meaning, or null where there is no heat word
 */
export function runAt(
  walk: Walk,
  from: number,
  to: number,
): {rows: readonly OvenWord[]; hedge: Hedge | null; end: number; first: number} | null {
  const tokens = walk.tokens
  let main: readonly OvenWord[] | null = null
  let mainHedge: Hedge | null = null
  let pending = null as Hedge | null
  let end = from
  let first = -1
  let alternatives = false
  let i = from
  while (i < to) {
    const adjective = longest(ADJECTIVES, tokens, i, to)
    const hedge = longest(HEDGES, tokens, i, to)
    if (adjective !== null && adjective.end >= (hedge?.end ?? 0)) {
      const capped = pending?.effect === 'cap'
      if (first < 0) first = i
      if (main === null) {
        main = adjective.rows
        mainHedge = pending
      } else if (capped) {
        // "hot, but not too hot": the limit softens what was said first; "brisk, but not fierce" leaves brisk as it is.
        if (adjective.rows[0] === main[0]) mainHedge = pending
      } else if (main.every((row) => WEAK.has(row.id))) {
        main = adjective.rows
        mainHedge = pending
      } else if (adjective.rows.every((row) => WEAK.has(row.id))) {
        // "slow, steady": the weak word adds no heat.
      } else if (alternatives) {
        main = [...main, ...adjective.rows]
      } else {
        main = adjective.rows
        mainHedge = pending ?? mainHedge
      }
      pending = null
      alternatives = false
      i = adjective.end
      end = i
      continue
    }
    if (hedge !== null) {
      const row = hedge.rows[0]!
      if (row.effect !== 'none') pending = pending?.effect === 'cap' && row.effect === 'more' ? pending : row
      i = hedge.end
      continue
    }
    const t = tokens[i]!
    if (t.word === 'too' || (t.word === 'over' && ADJECTIVES.next?.has(walk.word(i + 1)))) {
      pending = HEDGE_CAP
      i++
      continue
    }
    if (LINKS.has(t.word) || t.word === ',' || t.word === '(' || t.word === ')') {
      if (t.word === 'or' || t.word === 'to' || t.word === 'and') alternatives = true
      i++
      continue
    }
    break
  }
  return main === null ? null : {rows: main, hedge: mainHedge, end, first}
}

/** May the word of token `i` belong to such a run? */
export function isRunWord(walk: Walk, i: number): boolean {
  const word = walk.word(i)
  return RUN_WORDS.has(word) || LINKS.has(word) || word === ',' || word === 'too'
}
