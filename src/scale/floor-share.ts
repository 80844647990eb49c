import Fraction from 'fraction.js'
import {asked as words} from '../lexicon/asked-words.js'
import {fold} from '../receipt/section.js'
import {numberAt, phraseLength} from './asked-number.js'

/** How much of the floor an amount asks for: 1 is as many as stand on it at once. `range`: the text gives two numbers. */
export type FloorShare = {readonly share: Fraction} | {readonly range: true}

/** What may stand about the floor's name, and says nothing: "the whole of the floor", "der ganze Herd", "half a floor". */
const silent: ReadonlySet<string> = new Set(['of', 'the', 'der', 'die', 'den', 'des', 'dem', 'das'])
const article: ReadonlySet<string> = new Set(['a', 'an'])

/**
 * The share of the floor that an amount names: "fill the floor", "the floor", "an ovenful", "half the floor", "2 floors", "fill the floor
 * twice", „halber Herd“.
 *
 * @param plain in lower case, with single blanks
 * @returns null where it names none
 */
export function floorShare(plain: string): FloorShare | null {
  if (words.floor.has(fold(plain).replace(/^(?:the|den|einen|ein) /, ''))) return {share: new Fraction(1)}
  let all = plain.split(' ')
  if (all[0] === 'to') all = all.slice(1)
  const filling = phraseLength(all, (phrase) => words.floorFill.has(phrase))
  all = all.slice(filling).filter((word) => !silent.has(word))
  const number = numberAt(all.join(' '))
  let share = number?.value ?? new Fraction(1)
  const rest = (number?.rest ?? all.join(' ')).split(' ').map(fold)
  const named = rest.findIndex((_, i) => floorWords(rest, i) > 0)
  if (named < 0) return null
  const end = named + floorWords(rest, named)
  if (!rest.slice(0, named).every((word) => article.has(word) || words.floorWhole.has(word) || words.times.has(word))) return null
  let behind = rest.slice(end)
  while (behind.length > 0 && (words.floorFill.has(behind[0]!) || words.floorWhole.has(behind[0]!))) behind = behind.slice(1)
  if (behind.length > 0) {
    const often = words.soOften.get(behind.join(' '))
    if (often === undefined) return null
    share = share.mul(new Fraction(often))
  }
  if (number !== null && number.high.compare(number.value) > 0) return {range: true}
  return share.compare(0) > 0 ? {share} : null
}

/** How many words at a place name the floor. */
const floorWords = (all: readonly string[], at: number): number =>
  phraseLength(all.slice(at), (phrase) => words.floorNoun.has(phrase))
