import {distance} from 'fastest-levenshtein'

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
    .map((dish) => ({dish, off: distance(stem, dish) / Math.max(stem.length, dish.length) - shared(stem, dish)}))
    .sort((a, b) => a.off - b.off)
  const likely = near.filter(({off}) => off < 0.4).slice(0, 3)
  const shown = likely.length > 0 ? likely.map(({dish}) => dish) : dishes.slice(0, MOST_SHOWN)
  return shown.map((dish) => `“${dish}”`).join(' or ')
}

const MOST_SHOWN = 12
