import {distance} from 'fastest-levenshtein'
import {fold} from '../lexicon/index.js'
import {vesselWords} from '../lexicon/vessel-words.js'
import {lettersOff} from './log-deeds.js'
import {noteWordsOf} from './note-words.js'

/**
 * Names of dishes in the log: those of the day's receipts, in the form of their files' names. A name is that of a dish also with the
 * number of its batch behind it ("household-bread-2").
 */

/** Whether a name in the form of a file's is that of one of the day's dishes. */
export const isDish = (stem: string, dishes: readonly string[]): boolean =>
  dishes.some((dish) => dish === stem || (stem.startsWith(`${dish}-`) && /^\d+$/.test(stem.slice(dish.length + 1))))

const same = (a: string, b: string): boolean => a === b || `${a}s` === b || a === `${b}s`

/** How many words of a name stand in a dish's. */
const shared = (stem: string, dish: string): number =>
  stem.split('-').filter((word) => word.length > 2 && dish.split('-').some((part) => same(word, part))).length

/** Whether some of the day's dishes have a word of the name in theirs: "pies" of "mutton-pies". */
export const resemblesDish = (stem: string, dishes: readonly string[]): boolean => dishes.some((dish) => shared(stem, dish) > 0)

/** What to write instead of a name that is no dish of the day: the likeliest first, at most three; all where none is likely. */
export function dishesLike(stem: string, dishes: readonly string[]): string {
  const near = dishes
    .map((dish) => {
      const near = shared(stem, dish) + (isNearDish(stem, [dish]) ? 0.5 : 0)
      return {dish, off: distance(stem, dish) / Math.max(stem.length, dish.length) - near}
    })
    .sort((a, b) => a.off - b.off)
  const likely = near.filter(({off}) => off < 0.4).slice(0, 3)
  const shown = likely.length > 0 ? likely.map(({dish}) => dish) : dishes.slice(0, MOST_SHOWN)
  return shown.map((dish) => `“${dish}”`).join(' or ')
}

const MOST_SHOWN = 12

/** What a note may call the day's dishes. */
export interface DayNames {
  readonly dishes: readonly string[]
  /** Those names that are of one dish. */
  readonly alike?: readonly (readonly string[])[]
}

const foldedOf = (stem: string): string[] => stem.split('-').map(fold)

/** Names of the day that have all words of another: "pies" of "mutton-pies". */
function namesWith(stem: string, dishes: readonly string[]): string[] {
  const said = foldedOf(stem)
  return dishes.filter((dish) => said.every((word) => word !== '' && foldedOf(dish).includes(word)))
}

const nameEnds: ReadonlySet<string> = new Set(noteWordsOf('end of a name').map(fold))

/** Names of the day with a German compound of a word in them: „Brot“, and „Brote“, of „Roggenmischbrot“. */
function compoundsOf(stem: string, dishes: readonly string[]): string[] {
  const said = fold(stem)
  if (!nameEnds.has(said)) return []
  const ends = [said, said.replace(/[en]$/, '')]
  return dishes.filter((dish) => foldedOf(dish).some((word) => ends.some((end) => word.endsWith(end))))
}

/** The name of the only dish of the day that a name can be of, as "pies" is of the one sort of pie; null where it is of none, or could be of two. */
export function dishMeant(stem: string, {dishes, alike = []}: DayNames): string | null {
  if (isDish(stem, dishes)) return stem
  const own = namesWith(stem, dishes)
  const found = own.length > 0 ? own : compoundsOf(stem, dishes)
  const [first] = found
  const groups = alike.filter((names) => names.some((name) => found.includes(name)))
  const alone = found.filter((name) => !alike.some((names) => names.includes(name)))
  return first !== undefined && groups.length + alone.length === 1 ? first : null
}

/** Letters of a word from which on two of them may be missed, and those below which none may. */
const LONG = 6
const SHORT = 4

/** Whether a name is near that of one of the day's dishes, or to a word of it: "plumcake", "beens". */
export function isNearDish(stem: string, dishes: readonly string[]): boolean {
  const said = stem.replaceAll('-', '')
  const near = (word: string): boolean =>
    said.length >= SHORT && said[0] === word[0] && lettersOff(said, word) <= (Math.min(said.length, word.length) < LONG ? 1 : 2)
  return dishes.some((dish) => [dish.replaceAll('-', ''), ...dish.split('-').filter((word) => word.length >= SHORT)].some(near))
}

const things: ReadonlySet<string> = new Set(vesselWords.flatMap(({use, words}) => (use === 'thing' ? words : [])))

/** Whether a word names what is baked, whatever its dish: "loaf". */
export const isThing = (stem: string): boolean => things.has(stem)
