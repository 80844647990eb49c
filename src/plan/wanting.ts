import type {Message} from '../receipt/types.js'
import type {Dish} from '../scale/types.js'
import {doseNeeded} from './curve.js'
import {eased, shortest} from './ease.js'
import {lineOf} from './model.js'
import {phrase} from './phrases.js'
import {rules} from './rules.js'
import type {Change, Day, Eased, Phrase, PhraseValue, Plan} from './types.js'

/** What dishes of a day planned again have less than they should: of heat when they are set in and drawn, and in all. */

/** °C less than which is not worth a word. */
const TOLD = 0.5

/** What each dish has less than it should, in words by their id: of parts that want alike the one that wants most. */
export function wantingByDish(loads: Plan['loads'], dishes: ReadonlyMap<string, Dish>): Map<string, Map<string, Phrase>> {
  const out = new Map<string, Map<string, Phrase>>()
  const worst = new Map<Phrase, number>()
  for (const {dish, eased: less} of loads.flatMap((load) => load.dishes)) {
    if (!less) continue
    const mine = out.get(dish) ?? new Map<string, Phrase>()
    out.set(dish, mine)
    for (const [what, lacks] of wantingOf(less, dishes.get(dish))) {
      const told = mine.get(what.id)
      if (told && worst.get(told)! >= lacks) continue
      mine.set(what.id, what)
      worst.set(what, lacks)
    }
  }
  return out
}

/** What a dish has less than it should, in words, and how much that is. */
function wantingOf({start, end, dose}: Eased, dish: Dish | undefined): [Phrase, number][] {
  const out: [Phrase, number][] = []
  const difference = (value: number): PhraseValue => ({unit: 'difference', value})
  if (start >= TOLD) out.push([phrase('eased start', {difference: difference(start)}), start])
  if (end >= TOLD) out.push([phrase('eased end', {difference: difference(end)}), end])
  if (!dish || dose > 1 - rules.doseWanting) return out
  const share = (minutes: number | undefined): number =>
    doseNeeded(dish.need, minutes) / doseNeeded(dish.need) - 2 * rules.doseWanting
  const percent = Math.floor(100 * dose)
  const id =
    dose < share(eased(dish, 'far').enough)
      ? 'eased unfinished'
      : dose < share(shortest(dish.need))
        ? 'eased short'
        : 'eased dose'
  return [...out, [phrase(id, {percent}), 1 - dose]]
}

/** What will come out of the oven underdone is a warning, too: a plan in which every dish has a place is not yet a good one. */
export function unfinished(
  changes: readonly Change[],
  dishes: ReadonlyMap<string, Dish>,
  day: Day,
  cold: ReadonlySet<string>,
): Message[] {
  return changes.flatMap(({dish: id, words}): Message[] => {
    const dish = dishes.get(id ?? '')
    // What is not to be eaten is not to be baked on.
    if (!dish || words?.what.id !== 'eased unfinished' || cold.has(dish.id)) return []
    return [
      {
        ...lineOf(day, dish),
        severity: 'warning',
        rule: 'unfinished',
        reason: `${dish.title}: drawn with ${String(words.what.values['percent'])} % of its heat`,
        suggest: 'bake it on in another oven unless it is done',
      },
    ]
  })
}
