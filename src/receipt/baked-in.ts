import {pastIngredientsWord} from './heading-words.js'
import type {Section, Token} from './section.js'
import type {TokenSpan} from './stays.js'
import {vesselWordsOf} from './vessel.js'

const INTO = vesselWordsOf('into')
const READY = vesselWordsOf('made ready')
const READY_BY = vesselWordsOf('made ready by')
const PUTS = vesselWordsOf('puts')
const BAKES = vesselWordsOf('bakes')
const WORKS = vesselWordsOf('works')
const PARTS = vesselWordsOf('part of one')
const HOW_READY = vesselWordsOf('how made ready')
const BESIDE_READY = vesselWordsOf('beside made ready')
/** How far behind a vessel the word of baking may stand: "put it in a dish, cover it with a thin paste, and bake it". */
const TILL_BAKED = 30
/** How far before it its verb: "lay the pigeons, seasoned with pepper and salt, in a dish". */
const SINCE_PUT = 20
/** How far before it, with nothing else between, what is done to it: "butter the bottom and sides of a dish". */
const SINCE_READY = 7
/** What ends what is said of a vessel. */
export const ENDS = /^[.;:!?]$/

/** Whether a thing is baked in a vessel that is named without its size. `before`: in such a one things are boiled or mixed, mostly. */
export function isBakedIn({tokens}: Section, {from, to}: TokenSpan, before: boolean): boolean {
  if (isMadeReady(tokens, {from, to}) || isInLabel(tokens, from)) return true
  if (!isInto(tokens, from)) return false
  const verb = worksBefore(tokens, from)
  if (verb === 'works') return false
  if (verb === 'bakes') return true
  if (before) return false
  for (let i = from; i < to; i++) if (READY_BY.has(tokens[i]!.word)) return true
  return isBakedAfter(tokens, to)
}

/** Whether a vessel is made ready, or a word of baking governs it: "bake on a tray". */
export const isBakedFor = ({tokens}: Section, {from, to}: TokenSpan): boolean =>
  isMadeReady(tokens, {from, to}) || (isInto(tokens, from) && worksBefore(tokens, from) === 'bakes')

/** Whether a thing is put into a vessel, or baked in it, or that is made ready. */
export function isFilled({tokens}: Section, {from, to}: TokenSpan): boolean {
  if (isMadeReady(tokens, {from, to}) || isInLabel(tokens, from)) return true
  // "Into two small ramekins"
  let first = from
  while (from - first < MOST_BEFORE && tokens[first - 1]?.block === tokens[from]!.block && !INTO.has(tokens[first - 1]!.word))
    first--
  return isInto(tokens, first) && /^(?:bakes|puts)$/.test(worksBefore(tokens, first) ?? '')
}
/** How many words describe a vessel: "a well buttered shallow". */
const MOST_BEFORE = 4

/** "In", "into", "at the bottom of" before the vessel at token `at`. */
function isInto(tokens: readonly Token[], at: number): boolean {
  const before = tokens[at - 1]
  if (before?.block !== tokens[at]!.block) return false
  return INTO.has(before.word) || (before.word === 'of' && PARTS.has(tokens[at - 2]?.word ?? ''))
}

/** "Butter the bottom and sides of a dish", "have two pans well greased", "eine Form ausbuttern". */
export function isMadeReady(tokens: readonly Token[], {from, to}: TokenSpan): boolean {
  const {block} = tokens[from]!
  const behind = HOW_READY.has(tokens[to]?.word ?? '') ? to + 1 : to
  if (tokens[behind]?.block === block && (READY.has(tokens[behind]!.word) || READY_BY.has(tokens[behind]!.word))) return true
  for (let i = from - 1; i >= from - SINCE_READY && tokens[i]?.block === block; i--) {
    if (READY.has(tokens[i]!.word)) return true
    if (tokens[i]!.word !== ',' && !BESIDE_READY.has(tokens[i]!.word)) return false
  }
  return false
}

/** What is done nearest before token `at`, within its sentence. */
export function worksBefore(tokens: readonly Token[], at: number): 'bakes' | 'puts' | 'works' | null {
  const {block} = tokens[at]!
  for (let i = at - 1; i >= at - SINCE_PUT && tokens[i]?.block === block && !ENDS.test(tokens[i]!.word); i--) {
    const {word} = tokens[i]!
    if (BAKES.has(word)) return 'bakes'
    if (PUTS.has(word)) return 'puts'
    if (WORKS.has(word)) return 'works'
  }
  return null
}

/** Whether token `at` stands in the label over a list: "Ingredients (for a 2 lb loaf tin)", "Zutaten für eine Kastenform". */
export function isInLabel(tokens: readonly Token[], at: number): boolean {
  let first = at
  while (at - first <= LONGEST_LABEL && tokens[first - 1]?.block === tokens[at]!.block) first--
  return at - first <= LONGEST_LABEL && first < at && pastIngredientsWord(tokens.slice(first, at).map(({word}) => word)) > 0
}
/** Words and marks of such a label before what it names. */
const LONGEST_LABEL = 12

/** Whether a word of baking follows token `to` before one of other work. */
function isBakedAfter(tokens: readonly Token[], to: number): boolean {
  for (let i = to; i < to + TILL_BAKED && i < tokens.length; i++) {
    if (BAKES.has(tokens[i]!.word)) return true
    if (WORKS.has(tokens[i]!.word)) return false
  }
  return false
}

/**
 * Whether a vessel that is told by what it holds is one to bake in: things are boiled, mixed and kept by the quart too.
 *
 * @param boils in such a one things are boiled
 */
export function isHeldToBake(section: Section, {from, to}: TokenSpan, boils: boolean): boolean {
  const {tokens} = section
  let first = from
  while (from - first < MOST_BEFORE && tokens[first - 1]?.block === tokens[from]!.block && !INTO.has(tokens[first - 1]!.word))
    first--
  const at = isInto(tokens, first) ? first : from
  return isBakedIn(section, {from: at, to}, boils) || (!boils && isFilled(section, {from: at, to}))
}
