import {lookUpItem} from '../lexicon/index.js'
import type {Caution} from '../lexicon/schema.js'
import type {Section, Token} from './section.js'
import {sentenceAt} from './sentences.js'
import type {ReadIngredient, TimePhrase} from './types.js'

/** Work that a caution asks for before a dish goes in (`first` of its row): whether a receipt asks for it itself. */

const ARTICLES: ReadonlySet<string> = new Set(['the', 'a', 'an', 'your', 'some', 'die', 'das', 'den'])
const NOT: ReadonlySet<string> = new Set(['not', "don't", 'never', 'nicht', 'nie'])
const TIME = /^(?:h|hours?|hrs?|min|mins|minutes?|stunden?|minuten?|-|–|to|or|bis)$/

/**
 * Whether a receipt says the work of a caution's row itself.
 *
 * "Bring to the boil" is no ten minutes, and water, sugar or pork that is boiled is not what harms.
 *
 * @param ingredients what of the receipt raises the caution
 */
export function asksItself(
  {tokens}: Pick<Section, 'tokens'>,
  times: readonly TimePhrase[],
  ingredients: readonly ReadIngredient[],
  {asked, instead, least}: NonNullable<Caution['first']>,
): boolean {
  const does = new Set(asked)
  const needless = new Set(instead)
  return tokens.some((token, i) => {
    if (needless.has(token.word)) return true
    if (!does.has(token.word)) return false
    const before = tokens[i - 1]?.word ?? ''
    if (ARTICLES.has(before) || NOT.has(before)) return false
    if (isOfOther(tokens, i, ingredients)) return false
    const [first, last] = sentenceAt(tokens, i)
    const [from, to] = [tokens[first]!.start, tokens[last - 1]!.end]
    return !times.some((time) => time.of === 'boil' && time.start >= from && time.end <= to && time.minutes.high < least)
  })
}

/** "Boil the sugar", "boil 200 ml of water": said of something else that is known. */
function isOfOther(tokens: readonly Token[], at: number, ingredients: readonly ReadIngredient[]): boolean {
  let k = at + 1
  while (ARTICLES.has(tokens[k]?.word ?? '')) k++
  const next = tokens[k]
  if (next === undefined) return false
  if (next.kind === 'number') return !TIME.test(tokens[k + 1]?.word ?? '')
  const item = lookUpItem(next.word)
  return item !== null && !ingredients.some((one) => one.item === item.id)
}
