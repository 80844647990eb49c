import {set} from './heat-words.js'
import type {Token} from './section.js'

/** Where a sentence of a receipt begins and ends. */

/** How far back a sentence is looked through, tokens. */
export const REACH = 40

export const isStop = (t: Token): boolean =>
  t.kind === 'mark' &&
  (t.word === '.' || t.word === ';' || t.word === '·' || t.word === '•' || t.word === '?' || t.word === '!' || t.word === '|')

/** Words cut short before a figure: "min. 3 hours" is at least so long. */
const CUT_SHORT = set('min max approx ca abt')

/** A stop after an abbreviation or a label ("Time.—") does not end the sentence for our purpose. */
export const endsSentence = (tokens: readonly Token[], k: number): boolean =>
  isStop(tokens[k]!) && tokens[k + 1]?.word !== '—' && !isCutShort(tokens, k)

/**
 * The tokens [from, to) of the sentence that token `at` stands in.
 *
 * @param reach how many tokens it may reach to each side
 */
export function sentenceAt(tokens: readonly Token[], at: number, reach = Number.POSITIVE_INFINITY): readonly [number, number] {
  const {block} = tokens[at]!
  let first = at
  while (first > 0 && at - first < reach && tokens[first - 1]!.block === block && !endsSentence(tokens, first - 1)) first--
  let last = at + 1
  while (last < tokens.length && last - at < reach && tokens[last]!.block === block && !endsSentence(tokens, last)) last++
  return [first, last]
}

/** "Chill min. 3 hours": the stop at `k` is the abbreviation's, and "min." with no figure before it no minutes. */
const isCutShort = (tokens: readonly Token[], k: number): boolean =>
  tokens[k]!.word === '.' &&
  !tokens[k]!.gap &&
  CUT_SHORT.has(tokens[k - 1]?.word ?? '') &&
  tokens[k - 2]?.kind !== 'number' &&
  tokens[k + 1]?.kind === 'number'

export function sentenceHas(tokens: readonly Token[], at: number, words: ReadonlySet<string>): boolean {
  const [first, last] = sentenceAt(tokens, at, REACH)
  for (let k = first; k < last; k++) if (words.has(tokens[k]!.word)) return true
  return false
}
