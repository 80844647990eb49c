import {statedWords} from '../lexicon/yield-words.js'
import type {Section} from './section.js'
import type {Yield} from './types.js'
import {pastEach} from './yield-nouns.js'
import {yieldAt} from './yield-phrases.js'

/** Which of the yields that a receipt states count. */

/** Tokens behind the people within which a count of what is made is of the same receipt ("Serves 12. Makes two loaves."). */
const NEAR_PEOPLE = 40

/** What a receipt states of how much comes of it, each with the words it stands in; null where it says nothing of the kind. */
export interface StatedYields {
  /** The first that counts what is made, and the first of those that count it in no measure ("makes two loaves", not "three pints"). */
  readonly made: Yield | null
  readonly counted: Yield | null
  /** The first that counts people. */
  readonly persons: Yield | null
}

/** The tokens in which a receipt says how much it makes or how many it feeds, by the number and by no measure: what is counted there does not go in. */
export function statedTokens(section: Section): ReadonlySet<number> {
  const {tokens} = section
  const stated = new Set<number>()
  for (let i = 0; i < tokens.length; i++) {
    const said = yieldAt(section, i)
    if (said === null || statedWords.measures.has(said.found.of)) continue
    let to = i
    while (to < tokens.length && tokens[to]!.start < said.found.end) to++
    // "For 12 loaves of 1.6 kg dough": so much of it is in each.
    const end = pastEach(tokens, to)
    for (let k = i; k < end; k++) stated.add(k)
  }
  return stated
}

/**
 * Read what one receipt states of how much it makes, and of how many it feeds: "Makes 2 loaves. Serves 12." says both.
 *
 * @param section the receipt's blocks and tokens
 */
export function statedYields(section: Section): StatedYields {
  let made: Yield | null = null
  let counted: Yield | null = null
  let persons: Yield | null = null
  /** Said without a word for people. */
  let few: Yield | null = null
  let toldAt = 0
  for (let i = 0; i < section.tokens.length; i++) {
    const said = yieldAt(section, i)
    if (said === null) continue
    const {counts, found} = said
    if (counts === 'few') few ??= found
    else if (counts === 'persons') {
      if (persons === null) toldAt = i
      persons ??= found
    }
    // A section may hold a second receipt: a count far behind the people of the first is not of the same.
    else if (persons === null || i <= toldAt + NEAR_PEOPLE) {
      made ??= found
      if (!statedWords.measures.has(found.of)) counted ??= found
    }
  }
  return {made, counted, persons: persons ?? few}
}
