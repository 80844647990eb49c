import {phraseAt} from './phrases.js'
import type {Section, Token} from './section.js'
import {sentenceAt} from './sentences.js'
import {stayPhrases} from './stay-phrases.js'
import {isNight, isOven, spanOf, spansOf, standing} from './stays.js'
import type {LeftToCool, TimePhrase} from './types.js'

/** What is left in the oven after it is baked, as that cools or is turned off: no part of its bake. */

const OFF = stayPhrases('off')
const COOLS = stayPhrases('cools')
const LEAVES = stayPhrases('leaves')
const INSIDE = stayPhrases('inside')
const GONE = stayPhrases('gone')
const ALONE = stayPhrases('or')

/** Words at the ends of a clause that are no part of what it says. */
const LINK = /^(?:then|and|when|once|,|dann|und|danach|anschliessend|backen|gebacken)$/
/** Behind the words for it another thing is said. */
const ENDS = /^(?:then|and|before|dann|und|danach|bevor|,)$/

/**
 * The stretches of time with those marked (`cooling`) for which a thing is left in an oven that cools or is turned off after its bake ("then
 * leave in the cooling oven overnight", "turn off the oven and leave to cool inside for an hour"), and the words that say so, with or without
 * a time; null where none do.
 *
 * @param times as `readStays` gives them, in the order of the text
 */
export function readCooling(
  section: Section,
  times: readonly TimePhrase[],
): {readonly times: TimePhrase[]; readonly cooling: LeftToCool | null} {
  const {tokens, source} = section
  const spans = spansOf(tokens, times)
  let cooling: LeftToCool | null = null
  const words = (from: number, to: number): LeftToCool => {
    let [first, last] = [from, to]
    while (first < last - 1 && LINK.test(tokens[first]!.word)) first++
    while (last > first + 1 && LINK.test(tokens[last - 1]!.word)) last--
    return spanOf({tokens, source}, {from: first, to: last})
  }
  let baked = false
  const marked = times.map((time, n): TimePhrase => {
    if (time.of === 'rise' || time.of === 'boil' || time.note === true) return time
    const {from, to} = spans[n]!
    const [first, last] = sentenceAt(tokens, from)
    const before = spans.findLast((span, k) => k < n && times[k]!.of === 'bake' && span.to <= from && span.to > first)
    const clause = clauseOf(tokens, before?.to ?? first, from, to, last)
    const cools =
      saysOff(tokens, clause) ||
      (baked &&
        (offBefore(tokens, clause.from)
          ? isIn(tokens, clause)
          : isIn(tokens, clause) &&
            (saysCools(tokens, clause) || (time.then === true && isNight(tokens, from, to) && has(LEAVES, tokens, clause)))))
    if (!cools || isElse(tokens, clause)) {
      baked ||= time.of === 'bake'
      return time
    }
    cooling ??= {...words(clause.from, clause.to), minutes: time.minutes}
    return {...time, cooling: true, ...(isNight(tokens, from, to) ? {overnight: true} : {})}
  })
  return {times: marked, cooling: cooling ?? untimed(section, spans, words)}
}

interface Clause {
  readonly from: number
  readonly to: number
}

/** The clause round a stretch of time: from the "then" before it, or the bake, to where another thing is said. */
function clauseOf(tokens: readonly Token[], first: number, from: number, to: number, last: number): Clause {
  let start = first
  for (let k = first; k < from; k++) if (/^(?:then|dann|danach)$/.test(tokens[k]!.word)) start = k
  let end = to
  while (end < last && !ENDS.test(tokens[end]!.word)) end++
  return {from: start, to: end}
}

type Tree = ReturnType<typeof stayPhrases>
const has = (row: Tree, tokens: readonly Token[], {from, to}: Clause): boolean => firstOf(row, tokens, {from, to}) !== null

function firstOf(row: Tree, tokens: readonly Token[], {from, to}: Clause): number | null {
  for (let k = from; k < to; k++) if (phraseAt(row, tokens, k) !== null) return k
  return null
}

/** "Turn off the oven", "im ausgeschalteten Ofen": the oven is off, and the thing is in it. */
function saysOff(tokens: readonly Token[], clause: Clause): boolean {
  return has(OFF, tokens, clause) && (isIn(tokens, clause) || (has(LEAVES, tokens, clause) && namesOven(tokens, clause)))
}

const namesOven = (tokens: readonly Token[], {from, to}: Clause): boolean => tokens.slice(from, to).some(isOven)

/** The sentence before turned the oven off: "Turn the oven off. Leave the cake inside an hour." */
function offBefore(tokens: readonly Token[], from: number): boolean {
  const [first] = sentenceAt(tokens, from)
  if (first < 2 || tokens[first - 1]!.block !== tokens[from]!.block) return false
  const [start, end] = sentenceAt(tokens, first - 2)
  return has(OFF, tokens, {from: start, to: end}) && namesOven(tokens, {from: start, to: end})
}

/** The words say that it is in the oven: "in the oven", "inside", "darin". */
function isIn(tokens: readonly Token[], {from, to}: Clause): boolean {
  for (let k = from; k < to; k++) if (inAt(tokens, k)) return true
  return false
}

const inAt = (tokens: readonly Token[], k: number): boolean =>
  (isOven(tokens[k]!) && standing(tokens, k) === 'into') ||
  (phraseAt(INSIDE, tokens, k) !== null && !/^(?:in|im|within)$/.test(tokens[k]!.word))

/** It cools there: "to cool in the oven", "in the cooling oven"; not "in a cool oven", which is a heat. */
function saysCools(tokens: readonly Token[], {from, to}: Clause): boolean {
  for (let k = from; k < to; k++) {
    const found = phraseAt(COOLS, tokens, k)
    if (found === null) continue
    const next = tokens[found.to]
    const heat = tokens[k]!.word === 'cool' && next !== undefined && isOven(next)
    if (!heat) return has(LEAVES, tokens, {from, to}) || /^(?:cool|auskuhlen|abkuhlen|erkalten)$/.test(tokens[k]!.word)
  }
  return false
}

/** It is taken out first, or that is one of two ways: "remove, and cool an hour", "or let it stand in the oven all night". */
function isElse(tokens: readonly Token[], {from, to}: Clause): boolean {
  let gone = false
  for (let k = from; k < to; k++) {
    if (phraseAt(GONE, tokens, k) !== null) gone = true
    else if (inAt(tokens, k)) gone = false
    if (phraseAt(ALONE, tokens, k) !== null) return true
  }
  return gone
}

/** Something has been baked by then: what else is turned off is another oven. */
const baking = (tokens: readonly Token[], before: number): boolean =>
  tokens.slice(0, before).some(({word}) => /^(?:bake|baked|baking|backen|gebacken)$/.test(word))

/** Said of what may be: "if the gas be not turned off". */
const maybe = (tokens: readonly Token[], {from, to}: Clause): boolean =>
  tokens.slice(from, to).some(({word}) => /^(?:if|unless|not|never|wenn|falls|nicht)$/.test(word))

/** Left to cool so without a time: "leave to cool in the turned-off oven". */
function untimed(
  {tokens}: Section,
  spans: readonly Clause[],
  words: (from: number, to: number) => LeftToCool,
): LeftToCool | null {
  for (let k = 0; k < tokens.length; k++) {
    const off = phraseAt(OFF, tokens, k)
    if (off === null && phraseAt(COOLS, tokens, k) === null) continue
    const [first, last] = sentenceAt(tokens, k)
    const start = spans.findLast(({to}) => to > first && to <= k)?.to ?? first
    const end = spans.find(({from}) => from > k && from < last)?.from ?? last
    const clause = clauseOf(tokens, start, k, k + 1, end)
    const whole = off === null ? clause : {from: clause.from, to: end}
    const cools =
      off === null ? isIn(tokens, whole) && has(LEAVES, tokens, whole) && saysCools(tokens, whole) : saysOff(tokens, whole)
    if (cools && !isElse(tokens, whole) && baking(tokens, k) && !maybe(tokens, whole)) return words(whole.from, whole.to)
    k = last - 1
  }
  return null
}
