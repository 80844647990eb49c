import {headingUse} from './heading-words.js'
import {isIngredientsLabel} from './list-signs.js'
import type {Section} from './section.js'
import {TASKS} from './time-task.js'
import type {TimePhrase} from './types.js'
import type {View} from './view.js'

/** What stands above a receipt's list, where a heading or label tells that its ingredients begin: a story, and short lines about the dish. */

/** The first token of the list under the first heading or label for the ingredients; 0 where the receipt has none, or begins with it. */
export function listBegins(view: View): number {
  const {tokens, section} = view
  let from = 0
  while (from < tokens.length) {
    const {block} = tokens[from]!
    let to = from
    while (to < tokens.length && tokens[to]!.block === block) to++
    const {kind, text} = section.blocks[block]!
    if (kind === 'heading' ? from > 0 && headingUse(text) === 'ingredients' : isIngredientsLabel(view, from, to)) return from
    from = to
  }
  return 0
}

/** Whether the time that begins at token `at` says what it is of: "Cook 40 min", "Backzeit: 35 Min.". */
function isLabelled({tokens}: Section, at: number): boolean {
  const before = tokens[at - 1]
  if (before === undefined || before.block !== tokens[at]!.block) return false
  return before.word === ':' || before.word === '|' || /(?:time|zeit)$/.test(before.word) || TASKS.has(before.word)
}

/**
 * The times of a receipt without those that only its story tells of ("It takes 10 minutes!"): from the list on, the receipt gives others for the same.
 *
 * @param times in the order of the text
 */
export function withoutStory(view: View, times: readonly TimePhrase[]): TimePhrase[] {
  const {section} = view
  const begins = listBegins(view)
  if (begins === 0) return [...times]
  const {tokens} = section
  const start = tokens[begins]!.start
  return times.filter((time) => {
    if (time.start >= start || !times.some((other) => other.start > start && other.of === time.of)) return true
    const at = tokens.findIndex((token) => token.start >= time.start)
    return at < 0 || isLabelled(section, at)
  })
}
