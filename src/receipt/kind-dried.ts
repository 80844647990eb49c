import {potWork} from '../lexicon/grammar-words.js'
import {itemAt, lookUpItem} from '../lexicon/index.js'
import type {Item} from '../lexicon/schema.js'
import {DRIES, HOTTEST_DRYING, isDriedWarm} from './drying-heat.js'
import type {KindFound} from './kinds.js'
import {plainSection, type Section, type Token} from './section.js'
import {sentenceAt} from './sentences.js'
import type {ReadIngredient} from './types.js'

/** What a receipt that only dries something is: herbs dry in far less heat than fruit. */

const HERBS = 'drying herbs'
const FRUIT = 'drying fruit'
const POT_WORK: ReadonlySet<string> = new Set(potWork)
type Group = Item['group']
const DRIED_AS: ReadonlyMap<Group, string> = new Map([
  ['herb', HERBS],
  ['fruit', FRUIT],
  ['vegetable', FRUIT],
])
/** What is sprinkled on what dries, and tells nothing. */
const BESIDE: ReadonlySet<Group> = new Set(['herb', 'spice', 'salt', 'sugar', 'liquid'])
/** Words of a title beside the drying and what is dried. */
const OF_DRYING =
  /^(?:to|the|a|your|own|and|for|in|of|from|oven|garden|fresh|home|bunch|bunches|leaves|leaf|how|und|im|ofen|aus|dem|garten)$/

/** The kind of what dries by the groups of all that does; null where they are of none, or of several. */
function ofGroups(groups: readonly (Group | undefined)[]): string | null {
  const kinds = new Set(groups.map((group) => (group === undefined ? undefined : DRIED_AS.get(group))))
  const [only] = kinds
  return kinds.size === 1 && only !== undefined ? only : null
}

/** "Drying herbs", "Thyme to dry", "Sage and mint, dried": a title that says nothing but that, and of what. */
export function driedByTitle(title: string): KindFound | null {
  const {tokens} = plainSection(title)
  const stems = tokens.map(({stem}) => stem)
  const groups: (Group | undefined)[] = []
  let dries: Token | null = null
  for (let at = 0; at < tokens.length; ) {
    const token = tokens[at]!
    const found = itemAt(stems, at)
    if (DRIES.has(token.word)) dries = token
    else if (found !== null) groups.push(found.row.group)
    else if (token.kind === 'word' && !OF_DRYING.test(token.word)) return null
    at += found === null || DRIES.has(token.word) ? 1 : found.length
  }
  const id = dries === null ? null : ofGroups(groups)
  return id === null ? null : {id, words: title.toLowerCase(), by: 'title'}
}

/** "Dry in the oven", "at 40 °C leave to dry", "dry with the door ajar": what the drying at token `at` is done in, in its sentence. */
function inWarmth(tokens: readonly Token[], at: number): boolean {
  if (isDriedWarm(tokens, at)) return true
  const [, last] = sentenceAt(tokens, at)
  for (let k = at + 1; k < last; k++) {
    const {kind, word, num, den} = tokens[k]!
    if (/^(?:oven|ofen|backofen|ajar)$/.test(word)) return true
    const sign = tokens[k + 1]?.word ?? ''
    const scale = /^(?:°|degrees?|grad)$/.test(sign) ? (tokens[k + 2]?.word ?? '') : sign
    if (kind === 'number' && den === 1 && (/^[cf]$/.test(scale) || sign === '°'))
      return num <= (scale.startsWith('f') ? HOTTEST_DRYING.f : HOTTEST_DRYING.c)
  }
  return false
}

/** "Dry at 40 °C": by what goes in, where the text dries it in so little heat and has no other use for an oven. */
export function driedByText({tokens}: Section, ingredients: readonly ReadIngredient[]): KindFound | null {
  const at = tokens.findIndex((token, i) => DRIES.has(token.word) && inWarmth(tokens, i))
  // What is preserved in syrup first is no fruit that is dried.
  if (at < 0 || tokens.some(({word}) => POT_WORK.has(word))) return null
  const groups = ingredients.map(({item}) => lookUpItem(item)?.group)
  const main = groups.filter((group) => group === undefined || !BESIDE.has(group))
  const id = ofGroups(main.length > 0 ? main : groups.filter((group) => group === 'herb'))
  return id === null ? null : {id, words: tokens[at]!.word, by: 'text'}
}
