import {fold, itemAt, lookUpItem} from '../lexicon/index.js'
import {saysCooked} from './cooked.js'
import {fleshWordsOf, isCured, isFlesh, isOtherAt, saysMeatless} from './flesh.js'
import type {Section, Token} from './section.js'
import {sentenceAt} from './sentences.js'
import {spanOf} from './stays.js'
import type {FleshTold, ReadIngredient, Span} from './types.js'

/** Raw meat, poultry and fish that only the text says goes in, without an amount: "lay in the chicken". */

const PUTS_IN = fleshWordsOf('puts in')
const LAST = fleshWordsOf('puts in last')
const BESIDE = fleshWordsOf('beside')
const OF_IT = fleshWordsOf('of it')
const ARTICLE = /^(?:the|a|an|your|this|der|die|das|des|dem|den)$/
/** Spellings of meat for what of it is no meat to eat, or is of paste. */
const NO_MEAT = /^(?:bones?|trimmings?)$/

/** How many words before a meat say how it is: "the cold roast chicken". */
const MOST_BEFORE = 3

/** Whether a clause puts in what its tokens [at, to) name. */
function isPutIn(tokens: readonly Token[], at: number, to: number): boolean {
  const [first, last] = sentenceAt(tokens, at)
  const word = (i: number): string => fold(tokens[i]!.word)
  for (let i = at - 1; i >= first; i--) {
    if (BESIDE.has(word(i))) return false
    if (PUTS_IN.has(word(i))) return true
  }
  for (let i = to; i < last && !BESIDE.has(word(i)); i++) if (LAST.has(word(i))) return true
  return false
}

/** Whether the words beside it make it no meat: "chicken broth", "in the shape of a fish". */
function isOfIt(tokens: readonly Token[], at: number, to: number): boolean {
  const word = (i: number): string => fold(tokens[i]?.word ?? '')
  if (NO_MEAT.test(word(at)) || OF_IT.has(word(to))) return true
  const before = ARTICLE.test(word(at - 1)) ? at - 2 : at - 1
  return word(before) === 'of' && OF_IT.has(word(before - 1))
}

/**
 * The raw meat, poultry and fish that a receipt's text has put in, and of which its ingredients tell nothing: neither how much, nor that it is
 * cooked or none. Once each item.
 *
 * @param cooked those of the ingredients that go in cooked
 */
export function fleshTold(
  section: Section,
  title: string,
  ingredients: readonly ReadIngredient[],
  cooked: ReadonlyMap<ReadIngredient, unknown>,
): readonly FleshTold[] {
  if (saysMeatless(title)) return []
  const {tokens, blocks} = section
  const listed = ingredients.filter((one) => isFlesh(one.item) && (one.amount !== null || cooked.has(one)))
  const isListed = (id: string): boolean =>
    /^(?:meat|fish|game)$/.test(id)
      ? listed.length > 0
      : listed.some(({item}) => (lookUpItem(item)?.id ?? '').split(/[ -]/).some((part) => id.split(/[ -]/).includes(part)))
  const stems = tokens.map(({stem}) => stem)
  const found = new Map<string, FleshTold>()
  /** The clause that puts in the raw meat of an item at tokens [at, to); null where it does not. */
  const putIn = (item: string, at: number, to: number): Span | null => {
    if (isOtherAt(tokens, at) || isOfIt(tokens, at, to) || !isPutIn(tokens, at, to)) return null
    const [first, last] = sentenceAt(tokens, at)
    const named = {item, from: Math.max(first, at - MOST_BEFORE), to, until: Number.POSITIVE_INFINITY}
    if (saysCooked({tokens, stems}, named, false) !== null) return null
    const clause = spanOf(section, {from: first, to: last})
    return saysMeatless(clause.text) ? null : clause
  }
  for (let at = 0; at < tokens.length; ) {
    const item = blocks[tokens[at]!.block]!.kind === 'heading' ? null : itemAt(stems, at)
    const to = at + (item?.length ?? 1)
    const id = item?.row.id
    if (id !== undefined && !found.has(id) && isFlesh(id) && !isCured(id) && !isListed(id)) {
      const clause = putIn(id, at, to)
      if (clause !== null) found.set(id, {item: id, ...clause})
    }
    at = to
  }
  return [...found.values()]
}
