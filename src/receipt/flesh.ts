import {fleshWords} from '../lexicon/flesh-words.js'
import {fold, itemAt, lookUpItem} from '../lexicon/index.js'
import {wordsUsed} from '../lexicon/row.js'
import type {FleshWord} from '../lexicon/schema.js'
import {type FoundPhrase, phraseAt, phraseTree} from './phrases.js'
import {plainSection, type Section, type Token} from './section.js'
import {headEnd} from './title-head.js'
import type {Ingredient, ReadIngredient} from './types.js'

/** Meat, poultry and fish of a receipt: what goes in raw, and what its title names. */

const CURED: ReadonlySet<string> = new Set(wordsUsed(fleshWords, 'cured'))
const treeOf = (use: 'mock' | 'meatless' | 'other') =>
  phraseTree(
    fleshWords.filter((row) => row.use === use),
    (row) => row.words,
  )
const MOCK = treeOf('mock')
const MEATLESS = treeOf('meatless')
const OTHER = treeOf('other')

/** Meat, poultry or fish by its item or any spelling of it, and not what is only got from them: fat, jelly, a sauce. */
export const isFlesh = (item: string): boolean =>
  /^(?:meat|fish)$/.test(lookUpItem(item)?.group ?? '') && !/suet|marrow|lard|dripping|anchov|feet|isinglass/.test(item)

/** The words of one use in what is said of meat, folded. */
export function fleshWordsOf(use: FleshWord['use']): ReadonlySet<string> {
  return new Set(wordsUsed(fleshWords, use).map(fold))
}

/** The words of an entry as it is written, in lower case. */
export const wordsWritten = (text: string): readonly string[] => text.toLowerCase().split(/[^\p{L}]+/u)

const tokensOf = (text: string): readonly Token[] => plainSection(text).tokens
const foundIn = (tree: typeof MOCK, tokens: readonly Token[]): boolean =>
  tokens.some((_, at) => phraseAt(tree, tokens, at) !== null)

/** Whether the text says that there is no meat in what it tells of: "vegetarian sausages". */
export const saysMeatless = (text: string): boolean => foundIn(MEATLESS, tokensOf(text))

/** Bacon, ham and their like, which are no raw meat. */
export const isCured = (item: string): boolean => CURED.has(lookUpItem(item)?.id ?? '')

/** Whether a thing called by the name of a meat begins at a token: "duck eggs". */
export const isOtherAt = (tokens: readonly Token[], at: number): boolean => phraseAt(OTHER, tokens, at) !== null

type Listed = Pick<Ingredient, 'item' | 'text' | 'amount' | 'cooked'>

/** The meat, poultry and fish that a receipt measures out, raw or cooked, and not cured. Of a title without meat there is none. */
export const measuredFlesh = <One extends Listed>(title: string, ingredients: readonly One[]): readonly One[] => {
  const flesh = ingredients.filter(({item, amount}) => amount !== null && isFlesh(item) && !isCured(item))
  return flesh.length === 0 || saysMeatless(title) ? [] : flesh.filter(({text}) => !saysMeatless(text))
}

/** What a title is not made of: "for roast pork", "without meat". */
const APART: ReadonlySet<string> = new Set(['without', 'for', 'like', 'instead', 'ohne', 'fur', 'zu'])

/** Whether a title names meat, poultry or fish, cured or not, as what the dish is made of: no mock goose, duck eggs or blood oranges. */
export function namesFlesh(title: string): boolean {
  const all = tokensOf(title)
  if (foundIn(MOCK, all) || foundIn(MEATLESS, all)) return false
  const end = all.findIndex(({word}, at) => at > 0 && APART.has(word))
  const tokens = end < 0 ? all : all.slice(0, end)
  const stems = tokens.map(({stem}) => stem)
  for (let at = 0; at < tokens.length; ) {
    const other: FoundPhrase<unknown> | null = phraseAt(OTHER, tokens, at)
    const item = itemAt(stems, at)
    if (other === null && item !== null && isFlesh(item.row.id)) return true
    at = Math.max(at + 1, other?.to ?? 0, at + (item?.length ?? 0))
  }
  return false
}

/** Words of a text that there is meat in it, though it is not named: "bone the birds". */
const OF_MEAT = fleshWordsOf('told of')

/**
 * A title without the meat that the dish is only called by: "Chicken biscuits", "Goose-fat biscuits", where what goes in is all known, there is
 * flour or paste among it, and neither it nor the text has any meat. As it is where the dish may be of that meat.
 */
export function titleWithoutNameOnly(
  {title, tokens, blocks}: Pick<Section, 'title' | 'tokens' | 'blocks'>,
  ingredients: readonly ReadIngredient[],
): string {
  const words = tokensOf(title)
  const isMeat = ({word}: Token): boolean => isFlesh(word)
  if (!words.some(isMeat)) return title
  // "Roast goose", "Lamb with beans": what it is of is what it is.
  if (isMeat(words[headEnd(words) - 1]!)) return title
  const measured = ingredients.filter(({amount}) => amount !== null)
  const floury = measured.some(({item}) => {
    const row = lookUpItem(item)
    return row?.group === 'flour' || /^(?:puff )?paste$/.test(row?.id ?? '')
  })
  // Two things make no dish: the rest of what goes in is not told.
  const told = floury && measured.length > 2
  if (!told || ingredients.some(({item, known}) => !known || isFlesh(item))) return title
  const text = tokens.filter(({block}) => blocks[block]!.kind !== 'heading')
  const stems = text.map(({stem}) => stem)
  for (let at = 0; at < text.length; ) {
    const item = itemAt(stems, at)
    if (OF_MEAT.has(fold(text[at]!.word)) || (item !== null && isFlesh(item.row.id))) return title
    at += item?.length ?? 1
  }
  return words.flatMap((one) => (isMeat(one) ? [] : [one.word])).join(' ')
}
