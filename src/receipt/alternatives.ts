import {readAmount} from './amounts.js'
import {taste, vague} from './indefinite-words.js'
import {type Noun, readNoun} from './nouns.js'
import type {View} from './view.js'

/**
 * Two names over one amount: the one instead of the other (“butter or lard”), or both mixed (“of mace and cinnamon”).
 */

/** "or lard", ", or currants": the token after an alternative without an amount of its own, else −1. */
export function alternativeAt(view: View, at: number, to: number): number {
  const {words} = view
  let i = at
  if (words[i] === ',') i++
  if (words[i] !== 'or' || i + 1 >= to) return -1
  if (readAmount(view, i + 1, to) !== null) return -1
  const noun = readNoun(view, i + 1, to, false)
  if (noun === null || words[noun.next] === 'of') return -1
  // "or sugar to your taste" goes in by itself.
  return taste.match(words, noun.next, to) > 0 ? -1 : noun.next
}

/** "of mace and cinnamon": a second name of the same sort that shares the amount. */
export function mixture(view: View, first: Noun, at: number, to: number): Noun | null {
  const {words} = view
  if ((words[at] !== 'and' && words[at] !== '&') || at + 1 >= to) return null
  // "and two onions", "and several onions": an amount of its own.
  if (readAmount(view, at + 1, to) !== null || vague.match(words, at + 1, to) > 0) return null
  const noun = readNoun(view, at + 1, to, false)
  if (noun === null || noun.row === null || first.row === null) return null
  if (words[at + 1] === 'the') return null
  const group = first.row.group
  const alike = noun.row.group === group && group !== 'egg'
  const milkAndWater = /milk|cream|wine|vinegar/.test(first.item) && /water/.test(noun.item)
  if (!alike && !milkAndWater) return null
  // "and salt to taste" goes in by itself.
  if (taste.match(words, noun.next, to) > 0) return null
  if (noun.row.id === 'salt' || first.row.id === 'salt') return null
  return noun
}
