import {distance} from 'fastest-levenshtein'
import {deedWords} from '../lexicon/deed-words.js'
import type {DeedWord} from '../lexicon/schema.js'
import {timeUnits} from '../lexicon/time-words.js'
import {readDuration} from '../receipt/durations.js'

/**
 * What a log says was done to a dish: "set in", "drawn 10 min late", "not risen"; what became of it, "burnt"; and what was meant by a slip of
 * the pen.
 */

/** What may be done to a dish. */
export type Deed = Exclude<DeedWord['deed'], 'lost'>
/** What is done to it at the oven. */
export type Move = 'set in' | 'drawn'

interface Phrase {
  readonly deed: Deed
  readonly where: DeedWord['where']
  readonly words: string
}

/** Longest first: "in" stands in "in den ofen". */
const phrases: readonly Phrase[] = deedWords
  .flatMap(({deed, where, words}) => (deed === 'lost' ? [] : words.map((phrase) => ({deed, where, words: phrase}))))
  .sort((a, b) => b.words.length - a.words.length)

/** The words of each phrase that tells of a loss, longest phrase first. */
const losses: readonly (readonly string[])[] = deedWords
  .flatMap(({deed, words}) => (deed === 'lost' ? words : []))
  .sort((a, b) => b.length - a.length)
  .map((phrase) => phrase.split(' '))

const isWordEnd = (text: string, at: number): boolean => !/[\p{L}\p{N}]/u.test(text.slice(at, at + 1))

/** What some words begin with, of certain deeds. */
function beginning(words: string, of: (phrase: Phrase) => boolean): {readonly deed: Deed; readonly length: number} | null {
  const small = words.toLowerCase()
  for (const phrase of phrases) {
    const {deed, where, words: said} = phrase
    if (!of(phrase) || !small.startsWith(said) || !isWordEnd(small, said.length)) continue
    const more = where === 'with a time' ? timeEnd(small.slice(said.length)) : 0
    if (more !== null) return {deed, length: said.length + more}
  }
  return null
}

/** Words beside a length of time that say it is to come on top. */
const ON_TOP = /^(?:more|longer|yet|another|about|some|noch|mehr|länger|etwa|ca\.|weitere)$/
/** What may stand behind it: where that is spent. */
const WHERE_SPENT = /^(?:in the oven|in there|im ofen|drin)?(?:$|[,;.(])/
/** Units of time, "quarter of an hour" among them, and what may stand before one. */
const units: ReadonlySet<string> = new Set(timeUnits.flatMap(({id, words}) => [id, ...words]))
const PART = /^(?:half an? |an? |half |eine halbe |eine |halbe )/
/** Words that a length of time has at most, with those. */
const LENGTH_WORDS = 7

/**
 * Where a length of time ends that some words begin with, "15 min more", "another 10 minutes in the oven", "noch eine Viertelstunde".
 *
 * @returns characters to its end; null where they begin with none, or where more is said of it ("20 minutes kneading")
 */
function timeEnd(words: string): number | null {
  const all = Array.from(words.matchAll(/[^\s,;()]+/g), (m) => ({text: m[0], to: m.index + m[0].length}))
  for (let n = Math.min(LENGTH_WORDS, all.length); n > 0; n--) {
    const {to} = all[n - 1]!
    if (!WHERE_SPENT.test(words.slice(to).trimStart())) continue
    const said = all.slice(0, n).flatMap(({text}) => (ON_TOP.test(text) ? [] : [text.replace(/\.$/, '')]))
    const length = said.join(' ')
    if (readDuration(length).ok || units.has(length.replace(PART, ''))) return to
  }
  return null
}

/** What the words of a dish's row begin with, and how many characters of them say it; null where nothing was done. */
export const deedOf = (words: string): {readonly deed: Deed; readonly length: number} | null => beginning(words, () => true)

/** Whether words behind what is said of a dish tell that it was drawn all the same: ", drawn for want of time", " but taken out". */
export const isDrawnBehind = (words: string): boolean =>
  words.split(/[,;(]| (?:but|and|aber|und) /).some((clause) => deedOf(clause.trim())?.deed === 'drawn')

const moveOf = (deed: Deed): Move | null => (deed === 'set in' || deed === 'drawn' ? deed : null)

/** What was done to the dishes named behind it: "drew the custards"; null where the words begin with nothing of the kind. */
export function moveAhead(words: string): {readonly done: Move; readonly of: string} | null {
  const found = beginning(words, ({deed, where}) => where !== 'short' && moveOf(deed) !== null)
  const done = found && moveOf(found.deed)
  const of = found ? words.slice(found.length).replace(/^:? (?:the )?/i, '') : ''
  return done && of !== '' ? {done, of} : null
}

/** What was done to a dish by a short word, "in" or "out"; null where it is none. */
export function shortMove(word: string): Move | null {
  const found = phrases.find(({where, words}) => where === 'short' && words === word.toLowerCase())
  return found ? moveOf(found.deed) : null
}

/** What was done at the oven, at the end of some words: from which word on; null where they end in nothing of the kind. */
export function moveAtEnd(words: readonly string[]): {readonly from: number; readonly done: Move} | null {
  const small = words.map((word) => word.toLowerCase())
  for (let from = Math.max(0, small.length - 3); from < small.length; from++) {
    const said = small.slice(from).join(' ')
    const found = phrases.find(({deed, where, words: all}) => where !== 'of a dish' && all === said && moveOf(deed) !== null)
    const done = found && moveOf(found.deed)
    if (done) return {from, done}
  }
  return null
}

/** The index behind the words that tell of a loss at `at`; `at` where none do. */
export function lossEnd(words: readonly string[], at: number): number {
  const word = (i: number): string => (words[i] ?? '').toLowerCase().replace(/\.$/, '')
  return at + (losses.find((phrase) => phrase.every((part, i) => part === word(at + i)))?.length ?? 0)
}

/**
 * Where what was done begins in a note, behind a name: "mutton pies set in".
 *
 * @returns from where the name ends, and where it begins; null where the note tells of no deed
 */
export function deedBehind(note: string): {readonly end: number; readonly from: number} | null {
  for (let end = 1; end < note.length; end++) {
    const gap = note.startsWith(': ', end) ? 2 : note[end] === ' ' ? 1 : 0
    if (gap === 0) continue
    const said = note.slice(end + gap)
    const found = beginning(
      said,
      ({where, words}) =>
        where === 'anywhere' || where === 'with a time' || (where === 'at the end' && said.toLowerCase() === words),
    )
    if (found) return {end, from: end + gap}
  }
  return null
}

/** Words that may stand behind what was done: how late, or how many. */
const BEHIND = 5
/** Letters from which on a phrase may be missed by two of them, and those below which it may not be missed at all. */
const LONG = 8
const SHORT = 5

/**
 * What a dish's row or note means that misses it by a slip of the pen: "drawnn 5 min late" is "drawn 5 min late".
 *
 * @returns the words put right; null where they are nothing like it
 */
export function deedMeant(words: string): string | null {
  const all = words.trim().split(/\s+/)
  const [head] = /^\d{1,3}$/.test(all[0] ?? '') ? all.splice(0, 1) : []
  const tried = phrases.flatMap((phrase) => {
    const letters = phrase.words.replaceAll(' ', '')
    if (letters.length < SHORT || phrase.where === 'with a time') return []
    const count = phrase.words.split(' ').length
    return [count - 1, count, count + 1].flatMap((n) => {
      const said = all.slice(0, n)
      const behind = all.slice(n)
      const off = n > 0 && said.length === n ? slips(said, letters) : Number.POSITIVE_INFINITY
      const most = letters.length < LONG ? 1 : 2
      const room = phrase.where === 'at the end' ? 0 : BEHIND
      return off <= most && behind.length <= room
        ? [{off, meant: [...(head ? [head] : []), phrase.words, ...behind].join(' ')}]
        : []
    })
  })
  tried.sort((a, b) => a.off - b.off)
  return tried[0]?.meant ?? null
}

/** Letters by which a word, or some run together, misses another; two that have changed places are one slip of the pen. */
export const lettersOff = (wrong: string, right: string): number => distance(wrong, right) - (sameLetters(wrong, right) ? 1 : 0)

/** Letters by which some words miss a phrase. A short word that is another one is no slip of it. */
function slips(said: readonly string[], letters: string): number {
  const wrong = said.join('').toLowerCase()
  const last = said.at(-1)!.toLowerCase()
  if (wrong[0] !== letters[0] || (last.length === 2 && !sameLetters(last, letters.slice(-2)))) return Number.POSITIVE_INFINITY
  return lettersOff(wrong, letters)
}

const sameLetters = (one: string, other: string): boolean => [...one].sort().join('') === [...other].sort().join('')
