import {asked as words} from '../lexicon/asked-words.js'
import {fold, foldAll, lookUpItem, lookUpOwnItem} from '../lexicon/index.js'
import type {Item} from '../lexicon/schema.js'
import {germanYields, statedWords} from '../lexicon/yield-words.js'
import {fold as plainFold} from '../receipt/section.js'
import type {Ingredient, Receipt} from '../receipt/types.js'

/** What a receipt counts among what goes into it, and a day's line by the same noun: “24 apples” of “twelve large apples”. */
export interface CountedItem {
  /** How many the receipt made once has. */
  readonly count: number
  /** The receipt's own words. */
  readonly text: string
  /** Kilograms of one; null where that is not known. */
  readonly each: number | null
}

/** Where the name of an ingredient ends in its own words: “8 chicken thighs (about 1 kg), skin on”. */
const BEHIND_NAME = /[,(;:]/

/** What is bought by the piece, and comes out of no oven by this name unless it was put in so. */
const byThePiece: ReadonlySet<Item['group']> = new Set(['fruit', 'vegetable', 'meat', 'fish', 'egg', 'nut', 'herb', 'spice'])

/** The noun of what a line counts, as written: “thighs” of “chicken thighs of the hen”. */
const nounOf = (of: string): string => of.split(' of ')[0]!.split(' ').at(-1)!

/** Whether a noun counts vessels, what one is cut into or what receipts make, whatever else it is the name of: “6 pies”, “4 loaves”. */
function countsWhatIsMade(noun: string): boolean {
  const one = fold(noun)
  return (
    [words.vessel, words.cut, words.layer].some((nouns) => nouns.has(one)) ||
    statedWords.things.has(noun.toLowerCase()) ||
    germanYields.has(plainFold(noun))
  )
}

const likely = ({amount, grams}: Ingredient): {readonly count: number; readonly grams: number} => ({
  count: amount === null ? 0 : (amount.low + amount.high) / 2,
  grams: grams?.likely ?? 0,
})

/** Whether an ingredient goes by a noun: “thighs” of “8 chicken thighs”, where “chickens” are not. */
function goesBy({text, item, amount}: Ingredient, noun: string): boolean {
  const written = (text.split(BEHIND_NAME)[0] ?? '').split(/[^\p{L}'’-]+/u).filter((word) => word !== '')
  const same = written.filter((word) => fold(word) === fold(noun))
  // Of several things only the last word is in the plural.
  const several = (word: string): boolean => fold(word) !== word.toLowerCase() || word.toLowerCase() === noun.toLowerCase()
  if (same.length > 0) return same.some((word) => several(word) || (amount?.high === 1 && word === written.at(-1)))
  return lookUpItem(noun)?.id === item
}

/** German compounds: „Bratäpfel“ of „6 Äpfel“. */
const endsIn = ({text}: Ingredient, noun: string): boolean => {
  const end = plainFold(noun)
  return text.split(/[^\p{L}]+/u).some((word) => word.length > 3 && end.length > word.length && end.endsWith(plainFold(word)))
}

/**
 * What of a receipt a day's line counts, where it counts what goes in by the piece: it names the dish, or is the heaviest of what goes in and
 * no egg. A noun of what is made, of a vessel or of what one is cut into counts those.
 *
 * @param of the noun of the line, as written
 * @returns null where the receipt counts no such thing
 */
export function countedItem(of: string, {title, ingredients}: Receipt): CountedItem | null {
  const noun = nounOf(of)
  if (noun === '' || countsWhatIsMade(noun)) return null
  const titled = new Set(foldAll(title))
  const counted = ingredients.filter((one) => one.measure === 'count' && one.amount !== null && one.unmeasured !== true)
  const most = Math.max(...ingredients.map((one) => likely(one).grams))
  const main = (one: Ingredient): boolean =>
    likely(one).grams > 0 && likely(one).grams === most && lookUpItem(one.item)?.group !== 'egg'
  const named = (one: Ingredient): boolean => foldAll(one.item).some((word) => titled.has(word)) || titled.has(fold(noun))
  const found = counted.filter(
    (one) => (goesBy(one, noun) && (named(one) || main(one))) || (titled.has(fold(noun)) && endsIn(one, noun)),
  )
  // “Red onions” and “onions” in one receipt: what more of the line's words are said of.
  const said = foldAll(of)
  const shared = ({text}: Ingredient): number => foldAll(text).filter((word) => said.includes(word)).length
  const [best] = found.sort((a, b) => shared(b) - shared(a) || likely(b).count - likely(a).count)
  if (best === undefined || likely(best).count <= 0) return null
  const {count, grams} = likely(best)
  return {count, text: best.text, each: grams === 0 ? null : grams / count / 1000}
}

/**
 * Whether a noun is that of a thing bought by the piece, and not of what comes out: “24 eggs” of a cake, “24 apples” of a pie into which they go
 * by weight. By its name a receipt may call what it makes (“ginger nuts”), where nothing of that name goes in. What the receipt counts of it
 * is for `countedItem`.
 *
 * @param own words by which the day and the receipt call what is made, folded
 */
export function isBoughtByThePiece(of: string, {ingredients, serves}: Receipt, own: ReadonlySet<string>): boolean {
  const noun = nounOf(of)
  const made = fold(serves?.of.split(' ').at(-1) ?? '')
  const item = countsWhatIsMade(noun) || fold(noun) === made ? null : lookUpOwnItem(noun)
  if (item === null || item === undefined || !byThePiece.has(item.group)) return false
  return !own.has(fold(noun)) || ingredients.some((one) => one.item === item.id || goesBy(one, noun))
}
