import {furtherBefore, furthers, onlyIf} from '../lexicon/grammar-words.js'
import {lookUpMeasure} from '../lexicon/index.js'
import {type Draft, type Entries, key, type Mode} from './entries.js'
import {ratio} from './fixed-ratios.js'
import type {Noun} from './nouns.js'
import type {Quantity} from './quantities.js'
import {ENDER, Phrases, PREPARED, textOf, type View} from './view.js'

/**
 * More of a thing, “two pints more of water”, “2 more eggs”, “weitere 2 Eier”: a further amount of it, beside the one before.
 */

const words = new Set(furthers)
const before = new Phrases(furtherBefore)
const conditions = new Phrases(onlyIf)

/** "an ounce more sugar than butter", "a pound more or less": how two amounts compare, or how exact one is. */
const COMPARES: ReadonlySet<string> = new Set(['than', 'als', 'or', 'oder'])

/** "two pints more of water", "2 more eggs": the quantity with the word that says so behind it, where a name follows; else as it is. */
export function withFurther({words: text, bits, tokens}: View, quantity: Quantity, to: number): Quantity {
  const at = quantity.next
  // "a more delicate cream" compares.
  if (at + 1 >= to || !words.has(text[at]!) || (quantity.article && quantity.measure === 'count')) return quantity
  const after = at + 1
  if (COMPARES.has(text[after]!)) return quantity
  const names = text[after] === 'of' || tokens[after]!.kind === 'word'
  if (!names || (text[after] !== 'of' && bits[after]! & ENDER && !(bits[after]! & PREPARED))) return quantity
  return {...quantity, next: after, hedges: [...quantity.hedges, text[at]!]}
}

/** "two eggs more": the token after the word that says so behind a name that ends at `at`; `at` where none does. */
export const pastFurther = ({words: text}: View, at: number, to: number): number =>
  at < to && words.has(text[at]!) && !(at + 1 < to && COMPARES.has(text[at + 1]!)) ? at + 1 : at

/** Whether the name is compared with another: "an ounce more sugar than butter". */
export const isCompared = ({words: text}: View, {next}: Noun, to: number): boolean =>
  next < to && (text[next] === 'than' || text[next] === 'als')

/** Whether tokens [start, next) of an entry say that it is more of something. */
export function isFurther({words: text}: View, {start, next}: {readonly start: number; readonly next: number}): boolean {
  if (text[start] === 'another' || before.match(text, start, next) > 0) return true
  // "rather more than a pint"
  for (let i = start; i < next; i++) if (words.has(text[i]!) && !(i + 1 < next && COMPARES.has(text[i + 1]!))) return true
  return false
}

/** Behind "more", what stands for the thing named before: "half a pint more of it". */
const OF_THAT = new Phrases(['of it', 'of them', 'of the same', 'of this', 'of that', 'davon'])
/** "for every pound more", "if it weighs a pound more": of what is bought. */
const NOT_PUT_IN = /^(?:every|each|per|for|weighs?|weighing|than|by|je)$/
/** Of a bare number, that it counts what goes in: "then add two more". */
const PUTS_IN = /^(?:add|adding|put|break|beat|drop|work|stir|mix)$/
/** How far before a number such a word may stand, tokens. */
const NEAR = 5

/** A measure that is no vessel too: "pour it into another basin", "into another cup". */
const isStandard = ({measure}: Quantity): boolean =>
  measure !== 'cup' && ['pound', 'pint', 'gram', 'litre', 'teaspoon'].some((one) => ratio(measure, one) !== null)

/** Where a bare “half a pint more” ends: the token after it, −1 where it is none, or a name follows. `quantity` is as it was read. */
function endOfBare({words: text, bits, tokens}: View, at: number, quantity: Quantity, to: number): number {
  const {block} = tokens[at]!
  let next = quantity.next
  if (next < to && words.has(text[next]!)) next++
  else if (text[at] === 'another' ? !isStandard(quantity) : before.match(text, at, next) < 0) return -1
  const that = OF_THAT.match(text, next, to)
  if (that > 0) next = that
  const behind = next < to && tokens[next]!.block === block ? tokens[next]! : undefined
  const ends =
    behind === undefined ||
    (behind.kind === 'mark' && behind.word !== '(') ||
    (behind.kind === 'word' && (bits[next]! & ENDER) !== 0 && !(bits[next]! & PREPARED) && behind.word !== 'of')
  return ends && !COMPARES.has(behind?.word ?? '') ? next : -1
}

/** Between what went in and more of it: "beat in 3 eggs, then two more", „3 Eier unterrühren, dann noch zwei“. */
const THEN = /^(?:then|after|afterwards|finally|dann|danach|zuletzt)$/

/** Whether a number behind which nothing is named counts what goes in. */
function countsWhatGoesIn({view, drafts}: Entries, at: number): boolean {
  const {words: text, tokens, bits} = view
  const last = drafts.at(-1)
  if (last?.low != null && last.measure === 'count' && last.next < at && at - last.next <= NEAR) {
    const between = text.slice(last.next, at)
    const small = between.every((word, i) => THEN.test(word) || word === ',' || (bits[last.next + i]! & ENDER) !== 0)
    if (tokens[last.start]!.block === tokens[at]!.block && small && between.some((word) => THEN.test(word))) return true
  }
  for (let i = at - 1; i >= 0 && at - i <= NEAR && !/^[.,;:!?()]$/.test(text[i]!); i--) if (PUTS_IN.test(text[i]!)) return true
  return false
}

/**
 * Of what a bare “half a pint more” is: the thing last named whose amount is in a measure of the same system, else in one of the same kind; null
 * where none is.
 */
function lastAlike(
  {drafts, amounts}: Entries,
  {measure, dimension}: Quantity,
): {readonly of: Draft; readonly sure: boolean} | null {
  const likes = [
    (one: Draft) => ratio(one.measure, measure) !== null,
    (one: Draft) => measure !== 'count' && lookUpMeasure(one.measure)?.dimension === dimension,
  ]
  for (const [index, like] of likes.entries())
    for (let i = drafts.length - 1; i >= 0; i--) {
      const of = drafts[i]!.low === null ? amounts.get(key(drafts[i]!)) : drafts[i]!
      if (of !== undefined && like(of)) return {of, sure: index === 0}
    }
  return null
}

/**
 * "add a pint of milk, then half a pint more": more of the thing last named in a like measure. Where nothing tells of what, its words are
 * carried as a thing that is not known.
 *
 * @param at the token at which the amount begins
 * @param quantity the amount, as it was read
 * @returns the token after it, −1 where it is none
 */
export function bareFurther(entries: Entries, at: number, quantity: Quantity, to: number, mode: Mode): number {
  const {view} = entries
  if (mode === 'list' || (at > 0 && NOT_PUT_IN.test(view.words[at - 1]!)) || NOT_PUT_IN.test(view.words[at]!)) return -1
  const counted = quantity.measure === 'count'
  if (counted ? !countsWhatGoesIn(entries, at) : !/^(?:mass|volume)$/.test(quantity.dimension)) return -1
  const next = endOfBare(view, at, quantity, to)
  if (next < 0) return -1
  const found = lastAlike(entries, quantity)
  if (found === null && (counted || entries.drafts.length === 0)) return -1
  if (found !== null) {
    const condition = onCondition(entries, at, {...found.of, doubtful: false}, next, to)
    if (condition > 0) return condition
  }
  const {low, high, measure, measureText, notes} = quantity
  const said = quantity.next < to ? view.words[quantity.next] : undefined
  const thing =
    found === null
      ? {item: textOf(view, at, next).replace(/\s+/g, ' ').toLowerCase(), row: null, known: false, confidence: 0.3}
      : {item: found.of.item, row: found.of.row, known: found.of.known, confidence: found.sure ? 0.8 : 0.5}
  entries.push(
    {
      start: at,
      next,
      low,
      high,
      measure,
      measureText,
      hedges: said === undefined || !words.has(said) ? [...quantity.hedges] : [...quantity.hedges, said],
      notes: [...notes],
      ...thing,
    },
    mode,
  )
  return next
}

/** Most tokens of a condition. */
const LONGEST = 24

/**
 * "a gill more of milk, if it is too thick", "if it is not light, add another egg": more that only some bakings want, carried as a note of
 * the amount before and not added to it.
 *
 * @param at the token at which the entry begins
 * @param from the token after the name
 * @returns the token after what is said of it, −1 where it has no condition, or no amount of it stands before
 */
export function onCondition(entries: Entries, at: number, noun: Noun, from: number, to: number): number {
  const {words: text, tokens} = entries.view
  const whole = entries.amounts.get(key(noun))
  if (whole === undefined) return -1
  const {block} = tokens[at]!
  let start = at
  let end = from
  const behind = text[from] === ',' ? from + 1 : from
  if (behind < to && conditions.match(text, behind, to) > 0) {
    end = behind
    while (end < to && end - behind < LONGEST && tokens[end]!.block === block && !/^[.,;:!?()]$/.test(text[end]!)) end++
  } else {
    // Prose without a list tells by its conditions too what goes in.
    if (!entries.listed) return -1
    while (start > 0 && tokens[start - 1]!.block === block && !/^[.;:!?()]$/.test(text[start - 1]!)) start--
    if (at - start > LONGEST || conditions.match(text, start, at) < 0) return -1
  }
  whole.notes = [...whole.notes, textOf(entries.view, start, end).replace(/\s+/g, ' ')]
  return end
}

/** An amount in the smallest of its kind: grams, millilitres or pieces; null where the measure has no one size. */
function size({high, measure}: Draft): {readonly of: string; readonly value: number} | null {
  if (high === null) return null
  if (measure === 'count') return {of: measure, value: high.value}
  const row = lookUpMeasure(measure)
  const one = row?.sizes[0]
  return row === null || row === undefined || one === undefined ? null : {of: row.dimension, value: high.value * one.size.likely}
}

/** The same by what the thing weighs, in grams: "2 tablespoons" beside the list's "1 stick". Null where that is not known. */
function weight(draft: Draft): number | null {
  const {high, measure, row} = draft
  if (high === null || row === null) return null
  const piece = row.pieces.find((one) => one.measure === measure)
  if (piece !== undefined) return high.value * piece.grams.likely
  const amount = size(draft)
  if (amount?.of === 'mass') return amount.value
  return amount?.of === 'volume' && row.density !== undefined ? amount.value * row.density.likely : null
}

/** How far apart two measures of the same amount may come out: a cup of flour is what each cook fills it with. */
const ALIKE = 1.1

/**
 * Whether what a step names of a thing on the list is some of that: no more than the list has of it, in a measure that tells. "1 cup more milk"
 * is so only where the list has more, for something stood before what is more. What the list weighs is what a step counts: "3/4 lb. of veal
 * cutlet", "line the dish with a veal cutlet".
 */
export function isShareOfList(step: Draft, listed: readonly Draft[], further: boolean): boolean {
  const part = size(step)
  const sizes = listed.map(size)
  if (part !== null && sizes.every((one) => one?.of === part.of)) {
    const whole = sizes.reduce((all, one) => all + one!.value, 0)
    return further ? part.value < whole * (1 - 1e-9) : part.value <= whole * (1 + 1e-9)
  }
  if (further) return false
  const [mine, theirs] = [weight(step), listed.map(weight)]
  if (theirs.some((one) => one === null)) return false
  if (mine === null) return step.measure === 'count' && sizes.every((one) => one?.of === 'mass')
  return mine <= theirs.reduce((all: number, one) => all + one!, 0) * ALIKE
}
