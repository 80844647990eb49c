import type {Hedge, OvenWord} from '../lexicon/schema.js'
import {comparisonAt} from './heat-comparison.js'
import {runAt} from './heat-run.js'
import {
  ADJECTIVES,
  AFTER_ADJECTIVE,
  AFTER_COMMA,
  ALLOWING,
  BE,
  CONDITIONS,
  COPULAS,
  HEAT_NOUNS,
  HEATING,
  HEDGE_CAP,
  HEDGES,
  LINKS_AFTER,
  longest,
  OVENS,
  PREPOSITIONS,
  VERB_TOO,
  WEAK,
  WELL_HEATED,
} from './heat-words.js'
import type {Walk} from './walk.js'

/**
 * What is said of the oven or its heat in the words behind it.
 */

/** Does "not" or "never" stand between the oven and the word said of it? */
function isNegated(walk: Walk, oven: number, at: number): boolean {
  for (let k = oven + 1; k < at; k++) if (/^(?:not|never)$/.test(walk.word(k))) return true
  return false
}

/**
 * What is said of the oven behind it: "should be tolerably brisk", "of a moderate heat", "as hot as for bread", "not too hot".
 *
 * @param at the token at which it may begin
 * @param oven the token of the oven, or of its heat
 * @param known its heat was said before it ("a hot oven"): only a correction counts
 */
export function clauseAt(
  walk: Walk,
  at: number,
  oven: number,
  known: boolean,
): {rows: readonly OvenWord[]; hedge: Hedge | null; end: number; too: boolean; conditional: boolean} | null {
  const tokens = walk.tokens
  if (tokens[at]?.block !== tokens[oven]!.block) return null
  let j = at
  // "Oven: moderate", "Oven—hot"
  const label = !known && OVENS.has(walk.word(oven)) && /^(?::|—|-)$/.test(walk.word(at))
  if (label) j++
  const limit = walk.limit(j < tokens.length ? j : oven, 14)
  let copula = false
  let comma = false
  let too = false
  let negative = false
  if (known) {
    // After "a hot oven" only a correction counts: ", but not too hot", ", not over quick", ", rather slow".
    let k = j
    if (walk.word(k) === ',') k++
    if (!/^(?:but|not|though|yet|nor|rather)$/.test(walk.word(k))) return null
  }
  const before = walk.floor(oven, 6)
  for (let k = before; k < oven; k++) if (/^(?:not|nor|never|no|don't)$/.test(walk.word(k))) negative = true
  const heating = walk.near(oven, 4, 1, HEATING)
  if (heating && /^(?:well|thoroughly|properly)$/.test(walk.word(j)))
    return {rows: WELL_HEATED, hedge: null, end: j + 1, too: false, conditional: false}
  while (j < limit) {
    const word = walk.word(j)
    if (word === ',') {
      const next = walk.word(j + 1)
      if (!AFTER_COMMA.has(next)) {
        // "oven, moderate."
        const alone = longest(ADJECTIVES, tokens, j + 1, limit)
        if (alone === null || alone.end < limit || alone.rows.every((row) => WEAK.has(row.id))) return null
      }
      comma = true
      j++
      continue
    }
    if (BE.has(word)) copula = true
    // "in the oven to keep hot"
    if (/^(?:keep|kept)$/.test(word) && walk.word(j - 1) === 'to') return null
    if (word === 'too') too = true
    if (word === 'not' || word === 'never') negative = true
    // "from the oven and cool": what is joined on by "and" is the next step.
    const run = !known && /^(?:and|or|to)$/.test(word) ? null : runAt(walk, j, Math.min(limit, j + 8))
    if (run !== null) {
      const row = run.rows[0]!
      const word0 = walk.word(run.first)
      for (let k = j; k < run.end; k++) {
        if (walk.word(k) === 'too') too = true
        if (walk.word(k) === 'not') negative = true
      }
      const last = walk.word(j - 1)
      const needsNoun = j > at && PREPOSITIONS.has(last)
      let end = run.end
      let noun = HEAT_NOUNS.has(walk.word(end))
      if (!noun && walk.word(end) === 'and' && HEAT_NOUNS.has(walk.word(end + 2))) noun = true
      if (noun) end++
      if ((needsNoun || /^(?:a|an)$/.test(last)) && !noun) return null
      if (last === 'to' && VERB_TOO.has(word0) && !walk.near(oven, 4, 1, ALLOWING)) return null
      if (WEAK.has(row.id) && !copula && !noun && !heating) return null
      const following = tokens[end]
      if (
        !copula &&
        !noun &&
        following !== undefined &&
        following.block === tokens[oven]!.block &&
        following.kind === 'word' &&
        !AFTER_ADJECTIVE.has(following.word) &&
        // "let the oven cool a little"
        !(VERB_TOO.has(word0) && /^(?:a|down|somewhat)$/.test(following.word) && walk.near(oven, 4, 1, ALLOWING))
      )
        return null
      // "as hot as for bread", "hotter than for pies": the thing compared with says more than the word.
      const compared = comparisonAt(walk, run.first, walk.limit(run.first, 14))
      if (compared !== null) return {rows: compared.rows, hedge: null, end: compared.end, too, conditional: false}
      const hedge = too || (negative && run.hedge === null && isNegated(walk, oven, run.first)) ? HEDGE_CAP : run.hedge
      return {rows: run.rows, hedge, end, too, conditional: too && !negative && walk.near(oven, 6, 1, CONDITIONS)}
    }
    if (word === 'as' || word === 'same' || word === 'fit' || word === 'proper') {
      const compared = comparisonAt(walk, j, limit)
      if (compared !== null) return {rows: compared.rows, hedge: null, end: compared.end, too: false, conditional: false}
    }
    if (heating && /^(?:till|until|well|thoroughly|sufficiently)$/.test(word)) {
      j++
      continue
    }
    const hedge = longest(HEDGES, tokens, j, limit)
    if (hedge !== null) {
      j = hedge.end
      continue
    }
    if (COPULAS.has(word) || LINKS_AFTER.has(word) || (comma && word === 'and')) {
      j++
      continue
    }
    return null
  }
  return null
}
