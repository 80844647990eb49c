import {germanYields, statedWords as words} from '../lexicon/yield-words.js'
import type {Token} from './section.js'
import {type Count, count, numberAt} from './yield-count.js'

/** What a yield counts: people, or things with their sizes and kinds before them: "two 800 g loaves", "twelve small mince pies". */

/** How many words may stand between a count and its noun, and go on behind it. */
const REACH = 9
/** How many tokens the figures of a size are at the most. */
const SIZE_REACH = 6

/** The noun that a yield counts, in English; '' where the word at `at` is none. */
export const thingAt = (tokens: readonly Token[], at: number): string => {
  const word = tokens[at]?.word ?? ''
  return words.things.has(word) ? word : (germanYields.get(word) ?? '')
}

/** Whether a word counts people, or what they are served. */
export const isPersons = (word: string): boolean => words.persons.has(word) || germanYields.get(word) === 'persons'

/** "two 800 g loaves", "four 30 cm pizzas", "one (9 x 5-inch) loaf": the token after a size at `at`; `at` where none stands there. */
export function pastSize(tokens: readonly Token[], at: number): number {
  const open = tokens[at]?.word === '('
  let i = open ? at + 1 : at
  const start = i
  // "9 x 5" is a size without its unit.
  let by = false
  while (i < start + SIZE_REACH && tokens[i]?.kind === 'number') {
    i++
    const unit = words.size.units.has(tokens[i]?.word ?? '')
    if (unit) i++
    if (words.size.by.has(tokens[i]?.word ?? '') && tokens[i + 1]?.kind === 'number') {
      i++
      by = true
    } else if (!unit && !by) return at
    else break
  }
  if (i === start) return at
  if (!open) return i
  return tokens[i]?.word === ')' ? i + 1 : at
}

/** The noun behind a count, past what describes it, and the token behind it; `of` is '' where only what describes stands there. */
export function thingBehind(tokens: readonly Token[], c: Count): {readonly of: string; readonly end: number} {
  const block = tokens[c.end - 1]!.block
  const word = (n: number): string => (tokens[n]?.block === block ? tokens[n]!.word : '')
  let of = ''
  let k = c.end
  // "4 x 500 ml jars"
  const times = words.size.times.has(word(k)) ? pastSize(tokens, k + 1) : k
  if (times > k + 1 && thingAt(tokens, times) !== '' && word(times) !== '') k = times
  while (k < c.end + REACH && word(k) !== '') {
    const sized = pastSize(tokens, k)
    if (of === '' && sized > k) {
      k = sized
      continue
    }
    const thing = word(k) === '' ? '' : thingAt(tokens, k)
    if (thing !== '') {
      of = thing
      k++
      continue
    }
    // "6 large or 12 small pasties": the first is read.
    const other = of === '' && word(k) === 'or' && k > c.end ? numberAt(tokens, k + 1) : null
    if (other !== null && words.describing.has(word(other.end))) {
      k = other.end
      continue
    }
    if (of !== '' || !words.describing.has(word(k))) break
    k++
  }
  return {of, end: k}
}

/** "of 800 g each", ", each about 800 g", "à 500 ml", "of 1.6 kg dough", ", 1.6 kg each": the token behind what each of what a yield counts weighs or holds, from token `at`; `at` where nothing says it. */
export function pastEach(tokens: readonly Token[], at: number): number {
  const word = (n: number): string => (tokens[n]?.block === tokens[at]?.block ? (tokens[n]?.word ?? '') : '')
  const comma = word(at) === ','
  let k = comma ? at + 1 : at
  const told = (comma ? words.size.each : words.size.apiece).has(word(k))
  if (!told && !comma) return at
  while (k < at + 3 && words.size.apiece.has(word(k))) k++
  const c = count(tokens, k)
  if (c === null || tokens[c.end - 1]!.kind !== 'number' || !words.size.units.has(word(c.end))) return at
  // "of 1.6 kg of dough": of what it is made of, and nothing that goes in beside it.
  const weighed = c.end + 1
  const dough = word(weighed) === 'of' ? weighed + 1 : weighed
  const end = words.mixtures.has(word(dough)) ? dough + 1 : weighed
  // ", 1.6 kg dough each"
  if (words.size.each.has(word(end))) return end + 1
  return told ? end : at
}
