import {asked} from '../lexicon/asked-words.js'
import {fold} from '../lexicon/index.js'
import {statedWords as words} from '../lexicon/yield-words.js'
import type {Token} from './section.js'
import {type Count, count} from './yield-count.js'
import {thingAt} from './yield-nouns.js'
import {MOST} from './yield-openers.js'

/** What follows a yield: its end, what is in brackets behind it, and the pieces that a tray of it is cut into. */

/** What ends a sentence, or its block. */
export const closes = (word: string): boolean => word === '' || /^[.;!]$/.test(word)

/** "Makes 24. Bake …": a stop at `at`, and a new sentence behind it, where "2 lb. loaves" goes on. */
export const endsBehind = (tokens: readonly Token[], at: number): boolean =>
  /^[.;!]$/.test(tokens[at]?.word ?? '') && tokens[at + 1]?.capital === true && thingAt(tokens, at + 1) === ''

/** Whether all the rest of a block, from token `at` on, stands in one bracket. */
export function isBracketed(tokens: readonly Token[], at: number): boolean {
  if (tokens[at]?.word !== '(') return false
  let i = at + 1
  while (tokens[i]?.block === tokens[at]!.block && !/^[()]$/.test(tokens[i]!.word)) i++
  return tokens[i]?.word === ')' && tokens[i + 1]?.block !== tokens[at]!.block
}

/** The pieces behind vessels that a yield counts, from token `at`: ", 20 Stück", "(40 pieces)"; null where it counts no vessels, or nothing in them. */
export function piecesIn(
  tokens: readonly Token[],
  at: number,
  vessels: string,
): {readonly pieces: Count; readonly of: string; readonly end: number} | null {
  const open = tokens[at]
  if (!asked.vessel.has(fold(vessels)) || open === undefined || !/^[,(:]$/.test(open.word)) return null
  const pieces = count(tokens, at + 1)
  const of = pieces === null ? '' : thingAt(tokens, pieces.end)
  if (
    pieces === null ||
    pieces.high <= 1 ||
    pieces.high > MOST ||
    of === '' ||
    words.measures.has(of) ||
    asked.vessel.has(fold(of))
  )
    return null
  const last = tokens[pieces.end]!
  const next = tokens[pieces.end + 1]
  const behind = next?.block === last.block ? next.word : ''
  if (last.block !== open.block || !(open.word === '(' ? behind === ')' : closes(behind))) return null
  return {pieces, of, end: open.word === '(' ? pieces.end + 2 : pieces.end + 1}
}
