import {phraseAt} from './phrases.js'
import type {Section} from './section.js'
import {sentenceAt} from './sentences.js'
import {stayPhrases} from './stay-phrases.js'
import {spansOf} from './stays.js'
import type {Tending, TimePhrase} from './types.js'

/** A crust that is baked empty first, filled, and baked again. */

const BLIND = stayPhrases('blind')
const FILLS = stayPhrases('fills')
/** Words to either side of the filling that are quoted. */
const WORDS = 8

/**
 * When a crust baked blind is filled, and in which words: "Bake blind 20 minutes. Pour in the custard, and bake for 40 minutes". A filling that is not
 * baked is none.
 *
 * @param times its stretches of time, in the order of the text
 */
export function readBlind({tokens, source}: Section, times: readonly TimePhrase[]): Tending | null {
  const blind = tokens.findIndex((_, i) => phraseAt(BLIND, tokens, i) !== null)
  if (blind < 0) return null
  const [first] = sentenceAt(tokens, blind)
  const baked = spansOf(tokens, times).flatMap(({from}, n) =>
    times[n]!.of === 'bake' && from >= first ? [{from, time: times[n]!}] : [],
  )
  const [alone] = baked
  const last = baked.at(-1)
  if (!alone || !last) return null
  for (let i = alone.from + 1; i < last.from; i++) {
    const found = phraseAt(FILLS, tokens, i)
    if (found === null) continue
    const [from, end] = sentenceAt(tokens, i)
    // "Pour in the custard, and bake for 40 minutes": the words before the baking.
    const to = Math.max(found.to, Math.min(end, last.from < end ? i + WORDS : end))
    const [start, stop] = [tokens[Math.max(from, i - WORDS)]!.start, tokens[Math.min(to, end) - 1]!.end]
    const after = baked.reduce((sum, {from: at, time: {minutes}}) => sum + (at < i ? (minutes.low + minutes.high) / 2 : 0), 0)
    return {text: source.slice(start, stop), start, end: stop, does: 'fill', after}
  }
  return null
}
