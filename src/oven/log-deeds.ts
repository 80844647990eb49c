import {distance} from 'fastest-levenshtein'
import {deedWords} from '../lexicon/deed-words.js'
import type {DeedWord} from '../lexicon/schema.js'

/** What a log says was done to a dish: "set in", "drawn 10 min late", "not risen"; and what was meant by a slip of the pen. */

/** What may be done to a dish. */
export type Deed = DeedWord['deed']

interface Phrase {
  readonly deed: Deed
  readonly where: DeedWord['where']
  readonly words: string
}

/** Longest first: "in" stands in "in den ofen". */
const phrases: readonly Phrase[] = deedWords
  .flatMap(({deed, where, words}) => words.map((phrase) => ({deed, where, words: phrase})))
  .sort((a, b) => b.words.length - a.words.length)

const isWordEnd = (text: string, at: number): boolean => !/[\p{L}\p{N}]/u.test(text.slice(at, at + 1))

/** What some words begin with, of certain deeds. */
function beginning(words: string, of: (phrase: Phrase) => boolean): {readonly deed: Deed; readonly length: number} | null {
  const small = words.toLowerCase()
  const found = phrases.find((phrase) => of(phrase) && small.startsWith(phrase.words) && isWordEnd(small, phrase.words.length))
  return found ? {deed: found.deed, length: found.words.length} : null
}

/** What the words of a dish's row begin with, and how many characters of them say it; null where nothing was done. */
export const deedOf = (words: string): {readonly deed: Deed; readonly length: number} | null => beginning(words, () => true)

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
      ({where, words}) => where === 'anywhere' || (where === 'at the end' && said.toLowerCase() === words),
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
    if (letters.length < SHORT) return []
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
