import {fold, itemAt, lookUpItem} from '../lexicon/index.js'
import {fleshWordsOf, isFlesh} from './flesh.js'
import type {Section, Token} from './section.js'
import {spanOf} from './stays.js'
import type {ReadIngredient, Span} from './types.js'
import {vesselWordsOf} from './vessel.js'

const CUT_UP = fleshWordsOf('cut up')
const CUTS = fleshWordsOf('cuts')
const OUTSIDE = fleshWordsOf('outside')
const SCORED = fleshWordsOf('scored')
const BAKES = vesselWordsOf('bakes')
const ENDS = /^[.;:!]$/
const INTO = /^(?:in|into|up)$/
const ARTICLE = /^(?:the|a|an|your)$/

/** How many words behind a thing on a list may say what is done with it: "1 chicken (2 kg), cut by the butcher into". */
const MOST_BEHIND = 12

const CLAUSE_ENDS = /^[.;:!,()—]$/
const AND = /^(?:and|und|&)$/

/**
 * Whether what is cut by the word at `at` is only the outside of a piece that stays whole: "skin cut in diamonds", "the fat cut off".
 *
 * @param from the first token that may say of what
 */
function cutsOutside(tokens: readonly Token[], from: number, at: number): boolean {
  const {block} = tokens[at]!
  for (let i = at - 1; i >= from && !CLAUSE_ENDS.test(tokens[i]!.word) && !AND.test(tokens[i]!.word); i--)
    if (OUTSIDE.has(fold(tokens[i]!.word))) return true
  for (let i = at + 1; i < tokens.length && i <= at + MOST_BEHIND && tokens[i]!.block === block; i++) {
    const {word} = tokens[i]!
    if (CLAUSE_ENDS.test(word)) return false
    if (SCORED.has(fold(word))) return true
    if (/^(?:off|away)$/.test(word)) return !/^(?:the|bones?)$/.test(tokens[i + 1]?.word ?? '')
  }
  return false
}

/** True of a word by which meat, poultry or fish is in pieces: "jointed", "thighs". */
export const saysCutUp = (word: string): boolean => CUT_UP.has(fold(word))

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
      if (CUT_UP.has(fold(tokens[i]!.word)) && !cutsOutside(tokens, behind, i)) return spanOf(section, {from: i, to: i + 1})
    }
    const row = lookUpItem(item)
    for (let i = 0; i < beforeBaking; i++) {
      if (!CUTS.has(fold(tokens[i]!.word))) continue
      const at = ARTICLE.test(tokens[i + 1]?.word ?? '') ? i + 2 : i + 1
      const named = itemAt(stems, at)
      const to = named === null ? 0 : at + named.length
      if (
        named?.row.id === row?.id &&
        tokens[to]?.block === tokens[i]!.block &&
        INTO.test(tokens[to]!.word) &&
        !cutsOutside(tokens, to, to)
      )
        return spanOf(section, {from: i, to: to + 1})
    }
  }
  return null
}
