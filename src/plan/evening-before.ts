import {lookUpItem} from '../lexicon/index.js'
import {pluralOf} from '../scale/kitchen.js'
import type {EveningTask} from '../scale/types.js'
import {type PhraseId, phrase} from './phrases.js'
import {rules} from './rules.js'
import type {Phrase, PhraseValue, Plan, PlanProblem} from './types.js'

/** Something that a receipt has done the evening before. */
export interface EveningDeed {
  readonly dish: string
  /** Minutes after midnight of the bake day. */
  readonly at: number
  /** The receipt says no hour: `at` only says where it stands among the rest. */
  readonly untimed: boolean
  readonly say: Phrase
}

/**
 * What the receipts of a plan's dishes have done the evening before each is mixed or set in, in their own words: dried things put to soak,
 * a sponge or leaven set, what stands overnight mixed. Once a dish, though it goes in in several loads.
 *
 * @param mixed when each dish's dough is first mixed, minutes after midnight; null where it has none
 */
export function eveningsOf(problem: PlanProblem, plan: Plan, mixed: (dish: string) => number | null): EveningDeed[] {
  const starts = new Map<string, number>()
  for (const load of plan.loads)
    for (const {dish} of load.dishes) starts.set(dish, Math.min(load.at, mixed(dish) ?? load.at, starts.get(dish) ?? load.at))
  return problem.dishes.flatMap((dish) => {
    const start = starts.get(dish.id)
    if (start === undefined) return []
    return (dish.evening ?? []).map((task): EveningDeed => {
      const hour = task.hour ?? rules.evening
      let at = Math.floor(start / 1440) * 1440 - 1440 + hour
      // What goes in late in the evening, or before dawn, is not soaked that same evening.
      if (start - at - 1440 >= rules.shortNight) at += 1440
      else if (start - at < rules.shortNight) at -= 1440
      return {dish: dish.id, at, untimed: task.hour === undefined, say: said(dish, task)}
    })
  })
}

function said({id, amounts}: PlanProblem['dishes'][number], {does, words, items}: EveningTask): Phrase {
  const dishes: PhraseValue = {unit: 'dishes', dishes: [id]}
  const named = items.flatMap((i) => {
    const one = amounts[i]
    return one === undefined ? [] : [{kitchen: one.kitchen, item: one.item, called: inBulk(one.item)}]
  })
  if (does === 'stand') return phrase(spoilsRaw(amounts) ? 'stand cold over night' : 'stand cool over night', {dishes, words})
  const what: PhraseId = does === 'soak' ? 'soak over night' : 'set over night'
  return named.length === 0
    ? phrase(does === 'soak' ? 'soak over night plain' : 'set over night plain', {dishes, words})
    : phrase(what, {dishes, words, amounts: {unit: 'amounts', amounts: named}})
}

/** Whether egg or milk goes into a dish: raw it is kept at 5 °C or colder (FDA Food Code 2022, 3-501.16(A)(2)). */
const spoilsRaw = (amounts: PlanProblem['dishes'][number]['amounts']): boolean =>
  amounts.some(({item}) => /^(?:egg|dairy)$/.test(lookUpItem(item)?.group ?? ''))

/** Fruits that are taken by the weight or the measure, and not one by one. */
const SMALL_FRUIT = /(?:raisin|currant|sultana|prune|fig|date|apricot|cherry|plum|pear|apple)$/

/** What a weight or a measure is of, in English: many beans, but salt. */
function inBulk(item: string): string {
  const group = lookUpItem(item)?.group
  const many = group === 'pulse' || (group === 'fruit' && SMALL_FRUIT.test(item))
  return many && !item.endsWith('s') ? pluralOf(item, 2).replace(/ys$/, 'ies') : item
}
