import {potWork} from '../lexicon/grammar-words.js'
import {kinds, lookUpItem, lookUpKind, lookUpOwnItem} from '../lexicon/index.js'
import {kindsByItems} from '../lexicon/kinds-by-items.js'
import {germanOvens, ovenFoods, ovens} from '../lexicon/oven-foods.js'
import type {DishKind, Item} from '../lexicon/schema.js'
import {convert} from '../measure/convert.js'
import {cooksInOven} from './cooks-in-oven.js'
import {isFlesh, namesFlesh, titleWithoutNameOnly} from './flesh.js'
import {driedByText, driedByTitle} from './kind-dried.js'
import {kindWithMeat, loafOfMeat} from './kind-with-meat.js'
import {type FoundPhrase, phrasesIn, phraseTree} from './phrases.js'
import {plainSection, type Section, type Token} from './section.js'
import {headEnd} from './title-head.js'
import type {ReadIngredient} from './types.js'
import {BY_HAND} from './vessel.js'

/** Which row of `lexicon/kinds` a receipt is, and the words that say so. */
export interface KindFound {
  readonly id: string
  readonly words: string
  /** The title says it, or only the text; or only what goes in tells it, and `words` are those things. */
  readonly by: 'title' | 'text' | 'items'
  /** The leaven among the ingredients that decided between two kinds of bread. */
  readonly leaven?: 'yeast' | 'sourdough'
}

const TREE = phraseTree(kinds, (row: DishKind) => row.words)
const TITLES = phraseTree(kinds, (row: DishKind) => [...row.words, ...(row.titles ?? [])])
/** Ids of kinds that never see the oven. */
const UNBAKED: ReadonlySet<string> = new Set(kinds.filter((row) => row.vessel === 'none').map((row) => row.id))
/** Words of a text, beside the phrases of the rows, that settle a kind no title names; the most frequent wins. */
const BAKES: ReadonlySet<string> = new Set([
  'bake',
  'baked',
  'baking',
  'oven',
  'ovens',
  'ouen',
  'backen',
  'gebacken',
  'ofen',
  'backofen',
  'load',
  'loaded',
])

/**
 * The kind of dish a receipt is. A title is read head first: in "Apple pudding with a crust" the pudding counts, in "Plum cake, without
 * eggs" the cake. A receipt whose title says nothing is taken by its text, and then by what goes in, if it bakes at all.
 *
 * @param ingredients what goes in: a pie of meat is a meat pie
 * @returns null where nothing tells
 */
export function kindOf(given: Section, ingredients: readonly ReadIngredient[] = []): KindFound | null {
  const title = titleWithoutNameOnly(given, ingredients)
  // "Sausage rolls": the dish's own name.
  const whole = title === given.title || byTitle(given.title)?.words.includes(' ') === true
  const section = whole ? given : {...given, title}
  const said = byName(section, ingredients)
  const named = cutOnes(
    section,
    littleOnes(section, said === null ? null : kindWithMeat(said, section, ingredients)),
    ingredients,
  )
  const sweet = named === null ? undefined : lookUpKind(named.id)?.sweetened
  const found =
    named !== null && sweet?.words.includes(named.words) && ingredients.some(isSweetening) ? {...named, id: sweet.kind} : named
  const other = found === null ? undefined : lookUpKind(found.id)?.leavened
  if (found === null || other === undefined || (other.words !== undefined && !other.words.includes(found.words))) return found
  // Of a cake, yeast beside soda is none, or another way of raising it.
  if (lookUpKind(found.id)?.dough === undefined && raisersOf(ingredients).has('soda')) return found
  return leavenOf(ingredients) === other.by ? {...found, id: other.kind, leaven: other.by} : found
}

/** "Little raised pork pies" are made and baked otherwise than one to cut from. */
function littleOnes({title}: Section, found: KindFound | null): KindFound | null {
  const little = found === null ? undefined : lookUpKind(found.id)?.little
  if (found === null || little === undefined || found.by !== 'title' || !found.words.endsWith('s')) return found
  const word = title
    .toLowerCase()
    .split(/[^\p{L}]+/u)
    .find((one) => little.words.includes(one))
  return word === undefined ? found : {...found, id: little.kind, words: `${word} ${found.words}`}
}

/** Gingerbread that is rolled out and cut is no cake from a tin: it is thin, and bakes as biscuits do. With yeast it is another thing. */
function cutOnes({tokens, blocks}: Section, found: KindFound | null, ingredients: readonly ReadIngredient[]): KindFound | null {
  const id = found === null ? undefined : lookUpKind(found.id)?.cutOut
  if (found === null || id === undefined || ingredients.some(isLeaven)) return found
  const [first] = phrasesIn(BY_HAND, tokens)
  // "When cold, cut it into cakes": what is baked whole.
  const baked = tokens.findIndex(({word, block}) => /^(?:bakes?|baked|oven)$/.test(word) && blocks[block]!.kind !== 'heading')
  return first === undefined || (baked !== -1 && first.from > baked) ? found : {...found, id}
}

/** A spoon of sugar feeds the yeast or browns the crust; more makes a cake. Common practice, no source. */
const isSweetening = ({item, measure, amount}: ReadIngredient): boolean =>
  lookUpItem(item)?.group === 'sugar' && amount !== null && !/spoon|pinch|count/.test(measure)

/** What raises the ingredients, by their rows. */
const raisersOf = (ingredients: readonly Pick<ReadIngredient, 'item'>[]): ReadonlySet<Item['raises']> =>
  new Set(ingredients.map(({item}) => lookUpItem(item)?.raises))

/** The one leaven of a bread; null where there is none, or both. */
function leavenOf(ingredients: readonly ReadIngredient[]): 'yeast' | 'sourdough' | null {
  const raisers = raisersOf(ingredients)
  const sour = raisers.has('sourdough')
  return sour === raisers.has('yeast') ? null : sour ? 'sourdough' : 'yeast'
}

/** Whether what raises it is soda or its like alone: it is set in as soon as it is mixed. */
export function raisedBySoda(ingredients: readonly Pick<ReadIngredient, 'item'>[]): boolean {
  const raisers = raisersOf(ingredients)
  return raisers.has('soda') && !raisers.has('yeast') && !raisers.has('sourdough')
}

/** "Everyday loaf", "Harvest loaf": a bread, where yeast or leaven raises it; a "lemon loaf" without is a cake. */
const LOAF = /\bloa(?:f|ves)\b/i
const PLAIN_LOAF = 'white bread'

const isLeaven = ({item}: ReadIngredient): boolean => /^(?:yeast|sourdough)$/.test(lookUpItem(item)?.raises ?? '')

/** The kind that the ingredients alone tell, of what yeast or leaven raises; null where none does, or their weights are not known. */
function byItems(ingredients: readonly ReadIngredient[]): KindFound | null {
  const leaven = ingredients.find(isLeaven)
  if (leaven === undefined) return null
  const weighed = ingredients.flatMap((one) => {
    const row = lookUpItem(one.item)
    const grams = row === null ? null : convert({...one, year: null, place: null}).grams
    return row === null || grams === null ? [] : [{row, grams: grams.likely}]
  })
  const sum = (is: (row: Item) => boolean): number => weighed.reduce((mass, {row, grams}) => mass + (is(row) ? grams : 0), 0)
  const whole = sum(({id, group}) => group !== 'liquid' && group !== 'spirit' && id !== 'milk')
  for (const {kind, main, of, beside = []} of kindsByItems) {
    const isMain = ({group}: Item): boolean => main.groups.includes(group)
    const isTelling = (item: Item): boolean => isMain(item) && (of === undefined || of.items.includes(item.id))
    const mass = sum(isMain)
    if (mass <= 0 || mass < main.share * whole || sum(isTelling) < (of?.share ?? 0) * mass) continue
    if (!beside.every(({groups, toMain}) => sum(({group}) => groups.includes(group)) >= toMain * mass)) continue
    const [first] = weighed.filter(({row}) => isTelling(row)).sort((a, b) => b.grams - a.grams)
    return {id: kind, words: `${first!.row.id} and ${leaven.item}`, by: 'items'}
  }
  return null
}

function byName(section: Section, ingredients: readonly ReadIngredient[]): KindFound | null {
  const title = section.title === '' ? null : byTitle(section.title)
  let bakes = false
  for (const token of section.tokens) if (BAKES.has(token.word)) bakes = true
  bakes ||= cooksInOven(section)
  if (OTHERWISE.test(section.title) && (!bakes || isOnGriddle(section)))
    return {id: UNBAKED_ID, words: section.title, by: 'title'}
  if (title === null) {
    const food = fromOven(section.title)
    if (food !== null) return food
    const loaf = LOAF.exec(section.title)
    if (loaf !== null) {
      const meat = loafOfMeat(section, ingredients)
      if (meat !== null) return {id: meat, words: loaf[0].toLowerCase(), by: 'title'}
      const raised = ingredients.some(isLeaven)
      const id = raised ? PLAIN_LOAF : ingredients.some(isSweetening) ? MEASURED_CAKE : null
      if (id !== null) return {id, words: loaf[0].toLowerCase(), by: 'title'}
    }
    const dried = driedByTitle(section.title)
    if (dried !== null) return dried
    const told = bakes ? byText(section, ingredients) : null
    // "Leave to dry" says that of herbs as well as of fruit.
    if (told !== null && told.id !== DRYING_FRUIT) return told
    return driedByText(section, ingredients) ?? told ?? (bakes || isFired(section) ? byItems(ingredients) : null)
  }
  if (CUP_CAKE.test(title.words)) return {...title, id: inPapers(section, title.words) ? SMALL_CAKES : MEASURED_CAKE}
  const flesh =
    GENERIC.test(title.words) &&
    (ingredients.some((one) => one.amount !== null && isFlesh(one.item)) ||
      (/^pies?$/.test(title.words) && namesFlesh(section.title)))
  if (flesh) {
    // "Chicken pie", "Fish cake": the filling tells what the plain word does not.
    return /^pies?$/.test(title.words) ? {...title, id: MEAT_PIE} : null
  }
  // "Herbs to dry": of fruit, by no more than its "to dry".
  return title.id === DRYING_FRUIT ? (driedByTitle(section.title) ?? title) : title
}
const DRYING_FRUIT = 'drying fruit'

/** "230 °C, 50 minutes" without a word of baking: a heat in degrees, and nothing of a pot or a pan. */
function isFired({tokens}: Section): boolean {
  let degrees = false
  for (const {word} of tokens) {
    if (NOT_FIRED.has(word)) return false
    if (/^(?:°|℃|℉|degrees?|grad|regulo)$/.test(word)) degrees = true
  }
  return degrees
}
/** Fritters “baked quite thin” on a griddle or in a spider: what stands on the fire, with no word of an oven. */
function isOnGriddle({tokens}: Section): boolean {
  let griddle = false
  for (const {word} of tokens) {
    if (OVEN.test(word)) return false
    griddle ||= GRIDDLES.has(word)
  }
  return griddle
}
const OVEN = /oven|ouen|ofen/
const GRIDDLES: ReadonlySet<string> = new Set(['griddle', 'spider', 'girdle', 'bakestone'])
const NOT_FIRED: ReadonlySet<string> = new Set(potWork)

/** Dishes named by the way they are cooked, other than in the oven. */
const OTHERWISE =
  /\b(?:boil(?:ed)?|fried|fry|stew(?:ed)?|broil(?:ed)?|hash(?:ed)?|fricassee[ds]?|curried|curry|steamed|poached|hasty|fritters?|pancakes?)\b/i
/**
 * Cup cake was a plain cake, measured by cups (common practice, 1820s–70s); a cupcake is one of a dozen in papers. In two words it is the
 * first, unless many are named or the text has what the second is baked in.
 */
const CUP_CAKE = /^cup[- ]cakes?$/
const MEASURED_CAKE = 'pound cake'
const SMALL_CAKES = 'muffins'
const PAPERS: ReadonlySet<string> = new Set(['liner', 'muffin', 'cupcake'])
const CASES: ReadonlySet<string> = new Set(['paper', 'cake', 'bun', 'muffin'])

function inPapers({tokens}: Section, words: string): boolean {
  if (words.endsWith('s')) return true
  return tokens.some(({stem}, i) => PAPERS.has(stem) || (stem === 'case' && CASES.has(tokens[i - 1]?.stem ?? '')))
}
const GENERIC = /^(?:pies?|cakes?)$/
const MEAT_PIE = 'meat pie'
/** The row of what never sees the oven. */
export const UNBAKED_ID = 'not baked'
/** Kinds that are baked only: what is boiled of them is a step. */
const NEVER_BOILED: ReadonlySet<string> = new Set(
  'beans,stew,baked pasta,roast meat,roast poultry,baked fish,potted,roast vegetables,baked fruit,drying fruit,drying herbs,granola,meat pie,pasties,sausage rolls,meat loaf,souffle'.split(
    ',',
  ),
)

/** Is it of a kind that is mostly baked, and boiled or steamed as well: a pudding, a brown bread? */
export function mayBeBoiled(section: Section, ingredients: readonly ReadIngredient[]): boolean {
  const kind = kindOf(section, ingredients)
  if (kind === null || kind.by !== 'title') return /\bdumplings?\b/i.test(section.title)
  return kind.id === UNBAKED_ID ? /\b(?:boiled|steamed)\b/i.test(section.title) : !NEVER_BOILED.has(kind.id)
}

const titles = new Map<string, KindFound | null>()
/** So that no text can make the cache grow without end. */
const CACHE_LIMIT = 5000

function byTitle(title: string): KindFound | null {
  const known = titles.get(title)
  if (known !== undefined) return known
  // The lexicon's phrases are words of today: "70 % rye" is read as "70 percent rye", and a pye as a pie.
  const {tokens} = plainSection(title.replaceAll('%', ' percent ').replace(OLD_PIE, 'pi$1'))
  const end = headEnd(tokens)
  const head = phrasesIn(TITLES, tokens, 0, end)
  // "Lamb with beans" is lamb, though no kind is named by it.
  const flesh =
    head.length === 0 && end < tokens.length && tokens.slice(0, end).some(({word}) => word !== 'light' && isFlesh(word))
  const found = head.length > 0 || flesh ? head : phrasesIn(TITLES, tokens)
  let best: FoundPhrase<DishKind> | null = null
  for (const phrase of found) {
    const better =
      best === null ||
      phrase.to - phrase.from > best.to - best.from ||
      (phrase.to - phrase.from === best.to - best.from && phrase.to > best.to)
    if (better) best = phrase
  }
  // "Roast chicken pie": what stands before the name of a dish tells what it is made of.
  for (let of = best; of !== null; of = found.find(({from}) => from === best!.to) ?? null) best = of
  const result: KindFound | null =
    best === null
      ? compound(tokens, end)
      : {
          id: best.row.id,
          words: tokens
            .slice(best.from, best.to)
            .map((t) => t.word)
            .join(' '),
          by: 'title',
        }
  if (titles.size >= CACHE_LIMIT) titles.clear()
  titles.set(title, result)
  return result
}

const OVENS: ReadonlySet<string> = new Set([...ovens, ...germanOvens])
const OVEN_FIRST = [...germanOvens].sort((a, b) => b.length - a.length)
/** Words of the longest food that a title names: "dried white beans". */
const LONGEST_FOOD = 3

/** "Salmon from the oven", "Ofenlachs": a food that a row of `lexicon/oven-foods` has, and no more said of it than that. */
function fromOven(title: string): KindFound | null {
  const {tokens} = plainSection(title)
  const end = headEnd(tokens)
  for (let k = end - 1; k >= 0; k--) {
    const {word} = tokens[k]!
    const first = OVEN_FIRST.find((oven) => word.startsWith(oven) && word.length > oven.length)
    const kind = first === undefined ? null : kindOfFood(word.slice(first.length))
    if (kind !== null) return {id: kind, words: word, by: 'title'}
  }
  if (!tokens.some(({word}) => OVENS.has(word))) return null
  for (let to = end; to > 0; to--)
    for (let from = Math.max(0, to - LONGEST_FOOD); from < to; from++) {
      const food = tokens.slice(from, to).map(({word}) => word)
      const kind = kindOfFood(food.join(' '))
      if (kind !== null) return {id: kind, words: food.join(' '), by: 'title'}
    }
  return null
}

function kindOfFood(name: string): string | null {
  const item = lookUpOwnItem(name)
  if (item === null) return null
  return ovenFoods.find(({items = [], groups = []}) => items.includes(item.id) || groups.includes(item.group))?.kind ?? null
}

const OLD_PIE = /\bpy(es?)\b/gi

const ENDINGS = kinds
  .flatMap(({id, endings = []}) => endings.map((ending) => ({id, ending})))
  .sort((a, b) => b.ending.length - a.ending.length)

/** "Kürbiskernbrot": what a German compound ends in, of the last word before token `end` that has such an end. */
function compound(tokens: readonly Token[], end: number): KindFound | null {
  for (let k = end - 1; k >= 0; k--) {
    const {word} = tokens[k]!
    const found = ENDINGS.find(({ending}) => word.endsWith(ending))
    if (found !== undefined) return {id: found.id, words: word, by: 'title'}
  }
  return null
}

const NOT_THE_DISH: ReadonlySet<string> = new Set([
  'crumb',
  'crumbs',
  'sauce',
  'tin',
  'pan',
  'dish',
  'plate',
  'cloth',
  'flour',
  'and',
  'or',
  'dough',
  'fat',
  'grease',
  'dripping',
  'stock',
  'broth',
])
/** Before a dish that only tells of the oven, or of when. */
const COMPANY: ReadonlySet<string> = new Set(['with', 'as', 'like', 'after', 'before'])
/** Two mentions of a plain word among the first, or one of a phrase. */
const LEAST_SCORE = 4

function byText(section: Section, ingredients: readonly ReadIngredient[]): KindFound | null {
  const votes = new Map<string, {score: number; words: string}>()
  // "Half a loaf of bread in dices": a bread with an amount goes in.
  const goesIn = ingredients.filter(({amount, item}) => amount !== null && lookUpItem(item)?.group === 'bread')
  const found = phrasesIn(TREE, section.tokens).filter(({from, to}) => {
    const {start} = section.tokens[from]!
    const {end} = section.tokens[to - 1]!
    return !goesIn.some((one) => one.start <= start && one.end >= end)
  })
  found.forEach((phrase, index) => {
    if (UNBAKED.has(phrase.row.id)) return
    const length = phrase.to - phrase.from
    // "Set it in with brown bread", "as hot as for bread": another dish's oven.
    const [last, before] = [section.tokens[phrase.from - 1]?.word ?? '', section.tokens[phrase.from - 2]?.word ?? '']
    if (COMPANY.has(last === 'for' ? before : last)) return
    // "bread crumbs", "cake tin": the word is not the dish.
    if (length === 1 && NOT_THE_DISH.has(section.tokens[phrase.to]?.word ?? '')) return
    // "to dry off": what is steamed is set in the oven for a while.
    if (/^dry(?:ing)?$/.test(section.tokens[phrase.to - 1]!.word) && section.tokens[phrase.to]?.word === 'off') return
    // Longer phrases and earlier ones tell more.
    const score = length * length * (index < 3 ? 2 : 1)
    const vote = votes.get(phrase.row.id)
    if (vote === undefined) {
      const words = section.tokens
        .slice(phrase.from, phrase.to)
        .map((t) => t.word)
        .join(' ')
      votes.set(phrase.row.id, {score, words})
    } else vote.score += score
  })
  // One plain word in passing names no dish.
  let best: {id: string; score: number; words: string} | null = null
  for (const [id, vote] of votes)
    if (vote.score >= LEAST_SCORE && (best === null || vote.score > best.score)) best = {id, ...vote}
  return best === null ? null : {id: best.id, words: best.words, by: 'text'}
}
