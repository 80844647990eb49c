import {risingWordAt} from './rising-words.js'
import type {Section, Token} from './section.js'
import {endsSentence, sentenceAt} from './sentences.js'
import {spansOf} from './stays.js'
import {isSaidNight} from './time-task.js'
import type {EveningBefore, TimePhrase} from './types.js'

/** What stands a night before it is baked and is no dough: "mix all, let it stand all night, and next day bake it". */

/** How long a night and a day are at the most, minutes. */
const LONGEST = 1440
/** One case or another way, and nothing that is always done. */
const NOT_ALWAYS = /^(?:not|never|or|if|unless|may|can|nicht|oder|wenn|falls|kann)$/

/**
 * The nights that a mixture stands before its baking, in the receipt's words from where their sentence begins to the end of the clause. A dough's nights are its
 * risings, and none of these; nor is what is left in the oven, or what `evening` has already.
 *
 * @param times the receipt's stretches of time in the order of the text, with the stages of its dough
 * @param evening what else the receipt has done the evening before
 */
export function standingNights(
  {tokens, source}: Section,
  times: readonly TimePhrase[],
  evening: readonly EveningBefore[],
): EveningBefore[] {
  if (times.some(({stage}) => stage !== undefined)) return []
  const bake = times.findIndex(({of}) => of === 'bake')
  const spans = spansOf(tokens, times)
  return times.slice(0, Math.max(0, bake)).flatMap(({of, overnight, note, minutes}, n): EveningBefore[] => {
    const {from, to} = spans[n]!
    if (of !== 'stand' || overnight || note || minutes.high > LONGEST || !isSaidNight(tokens, from, to)) return []
    const [first] = sentenceAt(tokens, from)
    const [start, end] = [tokens[first]!.start, tokens[clauseEnd(tokens, to) - 1]!.end]
    if (evening.some((one) => one.start < end && one.end > start)) return []
    const said = tokens.slice(first, from)
    if (said.some(({word}) => NOT_ALWAYS.test(word)) || !isMade(tokens, first, from)) return []
    return [{text: source.slice(start, end), start, end, does: 'stand', items: []}]
  })
}

/** How many words behind the night are quoted at the most. */
const BEHIND = 6

/** Where the clause of a night that ends before `to` ends: "overnight in the refrigerator", "über Nacht stehen lassen". */
function clauseEnd(tokens: readonly Token[], to: number): number {
  let k = to
  while (k < to + BEHIND && tokens[k]?.block === tokens[to - 1]!.block && tokens[k]!.kind === 'word') k++
  return k
}

/** Whether something is mixed in the sentence [first, from), or in the one before it: "Mix the batter. Leave overnight." */
function isMade(tokens: readonly Token[], first: number, from: number): boolean {
  const {block} = tokens[first]!
  let k = from - 1
  for (let stops = 0; k >= 0 && tokens[k]!.block === block; k--) {
    if (risingWordAt('worked', tokens, k) !== null) return true
    if (k < first && endsSentence(tokens, k) && ++stops > 1) return false
  }
  return false
}
