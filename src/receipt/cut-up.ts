import {fleshWords} from '../lexicon/flesh-words.js'
import {itemAt, lookUpItem} from '../lexicon/index.js'
import {wordsUsed} from '../lexicon/row.js'
import {isFlesh} from './flesh.js'
import type {Section} from './section.js'
import {spanOf} from './stays.js'
import type {ReadIngredient, Span} from './types.js'
import {vesselWordsOf} from './vessel.js'

const CUT_UP: ReadonlySet<string> = new Set(wordsUsed(fleshWords, 'cut up'))
const CUTS: ReadonlySet<string> = new Set(wordsUsed(fleshWords, 'cuts'))
const BAKES = vesselWordsOf('bakes')
const ENDS = /^[.;:!]$/
const INTO = /^(?:in|into|up)$/
const ARTICLE = /^(?:the|a|an|your)$/

/** How many words behind a thing on a list may say what is done with it: "1 chicken (2 kg), cut by the butcher into". */
const MOST_BEHIND = 12

/** True of a word by which meat, poultry or fish is in pieces: "jointed", "thighs". */
export const saysCutUp = (word: string): boolean => CUT_UP.has(word)

/**
 * Where a receipt has its meat, poultry or fish cut up before it bakes: "1 chicken, jointed", "cut the turkey into joints". Null where it goes
 * in as it is bought.
 */
export function readCutUp(section: Section, ingredients: readonly ReadIngredient[]): Span | null {
  const {tokens, blocks} = section
  const stems = tokens.map(({stem}) => stem)
  const baked = tokens.findIndex(({word, block}) => blocks[block]!.kind !== 'heading' && BAKES.has(word))
  const beforeBaking = baked < 0 ? tokens.length : baked
  for (const {item, end} of ingredients.filter(({item}) => isFlesh(item))) {
    const behind = tokens.findIndex(({start}) => start >= end)
    const block = tokens[behind - 1]?.block
    const next = Math.min(...ingredients.flatMap(({start}) => (start >= end ? [start] : [])))
    for (let i = behind; i >= 0 && i < behind + MOST_BEHIND && tokens[i]?.block === block; i++) {
      if (tokens[i]!.start >= next || ENDS.test(tokens[i]!.word)) break
      if (CUT_UP.has(tokens[i]!.word)) return spanOf(section, {from: i, to: i + 1})
    }
    const row = lookUpItem(item)
    for (let i = 0; i < beforeBaking; i++) {
      if (!CUTS.has(tokens[i]!.word)) continue
      const at = ARTICLE.test(tokens[i + 1]?.word ?? '') ? i + 2 : i + 1
      const named = itemAt(stems, at)
      const to = named === null ? 0 : at + named.length
      if (named?.row.id === row?.id && tokens[to]?.block === tokens[i]!.block && INTO.test(tokens[to]!.word))
        return spanOf(section, {from: i, to: to + 1})
    }
  }
  return null
}
