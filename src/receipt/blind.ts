import {set} from './heat-words.js'
import {phraseAt} from './phrases.js'
import type {Section, Token} from './section.js'
import {sentenceAt} from './sentences.js'
import {stayPhrases} from './stay-phrases.js'
import {spansOf} from './stays.js'
import type {Tending, TimePhrase} from './types.js'

/** A crust that is baked empty first, filled, and baked again. */

const BLIND = stayPhrases('blind')
const FILLS = stayPhrases('fills')
const BAKES = stayPhrases('bakes')
/** Words of a sentence before the filling that are quoted at the most. */
const WORDS = 40
/** What joins the filling to what is done before and after it. */
const JOINS = set('and then und dann danach anschliessend')

/** When a crust is filled, and the times of the receipt, in which the filled bake goes on from the blind one. */
export interface BakedBlind {
  readonly fill: Tending
  readonly times: readonly TimePhrase[]
}

/**
 * When a crust baked blind is filled, and in which words: "Bake blind 20 minutes. Pour in the custard, and bake for 40 minutes". A filling that is not
 * baked is none.
 *
 * @param times its stretches of time, in the order of the text
 */
export function readBlind({tokens, source}: Section, times: readonly TimePhrase[]): BakedBlind | null {
  const blind = tokens.findIndex((_, i) => phraseAt(BLIND, tokens, i) !== null)
  if (blind < 0) return null
  const [first] = sentenceAt(tokens, blind)
  const baked = spansOf(tokens, times).flatMap(({from, to}, n) =>
    times[n]!.of === 'bake' && from >= first ? [{from, to, n, time: times[n]!}] : [],
  )
  const [alone] = baked
  const last = baked.at(-1)
  if (!alone || !last) return null
  for (let i = alone.from + 1; i < last.from; i++) {
    const found = phraseAt(FILLS, tokens, i)
    if (found === null) continue
    const before = baked.filter(({from}) => from < i)
    const next = baked[before.length]!
    const [from, to] = quoted(tokens, i, found.to, {blind: Math.max(before.at(-1)!.to, blind), bakes: next.from})
    const [start, end] = [tokens[from]!.start, tokens[to - 1]!.end]
    const after = before.reduce((sum, {time: {minutes}}) => sum + (minutes.low + minutes.high) / 2, 0)
    const on = new Set(baked.slice(1, before.length + 1).map(({n}) => n))
    return {
      fill: {text: source.slice(start, end), start, end, does: 'fill', after},
      times: times.map((time, n): TimePhrase => {
        const then = on.has(n) && time.total !== true
        return then ? {...time, then} : time
      }),
    }
  }
  return null
}

/**
 * The words of the filling at `i`: its sentence from its beginning, or from where the blind bake is said in it, up to the bake that follows.
 *
 * @param found the token behind the verb
 */
function quoted(
  tokens: readonly Token[],
  i: number,
  found: number,
  {blind, bakes}: {readonly blind: number; readonly bakes: number},
): readonly [number, number] {
  const joins = (k: number): boolean => /^[,;:—–]$/.test(tokens[k]!.word) || JOINS.has(tokens[k]!.word)
  const [first, end] = sentenceAt(tokens, i)
  let from = Math.max(first, i - WORDS)
  // "Bake blind 20 minutes at gas 5, then pour in the custard": what is said of the blind bake ends where that is joined.
  if (blind > from) for (from = Math.min(blind, i); from < i && !joins(from); ) from++
  while (from < i && joins(from)) from++
  let to = Math.min(end, i + WORDS)
  if (bakes < to) {
    to = bakes
    for (let k = bakes - 1; k >= found; k--) if (phraseAt(BAKES, tokens, k) !== null) to = k
    // "Pour it in, return to the oven and bake": the clause of the baking begins behind what joins it.
    let clause = to
    while (clause > found && !joins(clause - 1)) clause--
    if (clause > found) to = clause
  }
  while (to > found && joins(to - 1)) to--
  return [from, Math.max(to, found)]
}
