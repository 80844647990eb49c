import {foldAll, lookUpItem, lookUpKind} from '../lexicon/index.js'
import {risingWords} from '../lexicon/rising-words.js'
import {convert} from '../measure/convert.js'
import {measuredFlesh, namesFlesh} from './flesh.js'
import type {KindFound} from './kinds.js'
import {phraseAt, phrasesUsed} from './phrases.js'
import type {Section} from './section.js'
import type {ReadIngredient} from './types.js'

/**
 * What a kind is where meat, poultry or fish goes into it, and what no dough is whatever its title calls its shape: a plait of puff paste is
 * none, nor is a roll of cabbage.
 */

const IN_PASTE = 'sausage rolls'
const LOAF_OF_MEAT = 'meat loaf'
/** Pastes that are bought or made without leaven, and what is made of them with no meat in it. */
const PASTES: ReadonlyMap<string, string> = new Map([
  ['puff paste', 'puff paste'],
  ['paste', 'tarts'],
])
const LEAVENS = phrasesUsed(risingWords, 'leaven')
/** Of those, words that a text has for other things too: "serve as a starter", "wheat germ", "lemon balm". */
const OTHERWISE_USED: ReadonlySet<string> = new Set(['starter', 'sponge', 'spunge', 'germ', 'balm'])
/** One loaf that is named: of several, each is a loaf of bread that is filled. */
const LOAF = /\bloaf\b/i
const CAKES = /\bcakes?$/

/** Its title calls it bread outright, and no shape that much else has. */
const isBread = ({words, by}: KindFound): boolean => by === 'title' && /bread|brot/.test(words)
const folded = (words: string): string => foldAll(words).join(' ')
const groupOf = ({item}: ReadIngredient): string => lookUpItem(item)?.group ?? ''

/** Whether yeast or leaven raises it: among what goes in, as dough that is risen, or by a word of its text. */
function isRaised({tokens}: Section, ingredients: readonly ReadIngredient[]): boolean {
  return (
    ingredients.some(({item}) => item === 'dough' || /^(?:yeast|sourdough)$/.test(lookUpItem(item)?.raises ?? '')) ||
    tokens.some(({word}, at) => !OTHERWISE_USED.has(word) && phraseAt(LEAVENS, tokens, at) !== null)
  )
}

/** What is made, without meat, of the paste that is measured out, or of a title's dish is there in the place of flour; undefined where none is. */
function pasteAmong(ingredients: readonly ReadIngredient[], by: KindFound['by']): string | undefined {
  const flour = ingredients.some((one) => groupOf(one) === 'flour')
  return ingredients.flatMap(({item, amount}) =>
    amount === null && (flour || by === 'text') ? [] : (PASTES.get(lookUpItem(item)?.id ?? '') ?? []),
  )[0]
}

const gramsOf = (some: readonly ReadIngredient[]): number =>
  some.reduce((sum, one) => sum + (convert({...one, year: null, place: null}).grams?.likely ?? 0), 0)

/** Whether it is made of meat or fish: its title says so, or more of that goes in than of sugar. */
function isOfMeat({title}: Section, ingredients: readonly ReadIngredient[]): boolean {
  if (namesFlesh(title)) return true
  const flesh = measuredFlesh(title, ingredients)
  return flesh.length > 0 && gramsOf(ingredients.filter((one) => groupOf(one) === 'sugar')) <= gramsOf(flesh)
}

/** The kind of one loaf of meat or fish that no row names: "Pheasant loaf"; null where it is none. */
export function loafOfMeat(section: Section, ingredients: readonly ReadIngredient[]): string | null {
  if (!LOAF.test(section.title) || isRaised(section, ingredients) || !isOfMeat(section, ingredients)) return null
  return pasteAmong(ingredients, 'title') === undefined ? LOAF_OF_MEAT : IN_PASTE
}

/** @returns null where it is of no kind after all */
export function kindWithMeat(found: KindFound, section: Section, ingredients: readonly ReadIngredient[]): KindFound | null {
  const row = lookUpKind(found.id)
  if (row === null) return found
  const flesh = measuredFlesh(section.title, ingredients)
  if (row.dough !== undefined && !isRaised(section, ingredients)) {
    const paste = pasteAmong(ingredients, found.by)
    if (paste !== undefined) return {...found, id: isOfMeat(section, ingredients) ? IN_PASTE : paste}
    if (flesh.length === 0 || !isOfMeat(section, ingredients) || isBread(found)) return found
    if (LOAF.test(section.title)) return {...found, id: LOAF_OF_MEAT}
    if (!ingredients.some((one) => groupOf(one) === 'flour')) return null
    return row.id === 'flat bread' ? found : {...found, id: IN_PASTE}
  }
  const {withMeat} = row
  // A pie in passing in a text is another dish's.
  const said = found.by === 'title' || row.id === 'puff paste'
  if (
    withMeat !== undefined &&
    said &&
    (withMeat.words?.some((words) => folded(words) === folded(found.words)) ?? true) &&
    isOfMeat(section, ingredients)
  ) {
    const crusted =
      withMeat.crusted !== undefined &&
      (ingredients.length === 0 || ingredients.some(({item}) => /^(?:paste|puff paste|suet|lard|dripping)$/.test(item)))
    return {...found, id: crusted ? withMeat.crusted! : withMeat.kind}
  }
  // "Crab and corn cakes": by the cakes it is no bread.
  if (row.safe === undefined && CAKES.test(found.words) && found.by === 'title' && flesh.length > 0)
    return ingredients.some((one) => groupOf(one) === 'sugar' && one.amount !== null) ? found : null
  return found
}
