import {woodOvens} from '../lexicon/grammar-words.js'
import {isWanted} from './heat.js'
import type {NoteSpan} from './notes.js'
import {phraseAt, phraseTree} from './phrases.js'
import type {Section} from './section.js'
import {endsSentence} from './sentences.js'
import {spansOf, type TokenSpan} from './stays.js'
import type {OvenPhrase, TimePhrase} from './types.js'

/**
 * A bake that a receipt gives in two ways, each its own heat and its own time: “two minutes at 430 °C, or nine at 250 in a kitchen oven”.
 * The heat of one is never the other's.
 */

const WOOD = phraseTree([woodOvens], (list) => list)
/** So many tokens may stand between a heat and its time, and between the ways. */
const apart = {pair: 6, ways: 8} as const
/** Heats no further apart are the same one, told twice, °C. */
const sameHeat = 12

/** What a way of baking ends at, or the next begins with. */
const WAY_ENDS: ReadonlySet<string> = new Set(['(', ')', ',', 'or', 'oder'])

/** A heat and its time. */
interface Pair extends TokenSpan {
  readonly heat: OvenPhrase
}

/**
 * The ways of baking that are another oven's, of those a receipt joins by “or” or sets in brackets: all but the first, or but the one said of
 * a wood-fired oven.
 *
 * @param oven the heats read, in the order of the text
 * @param times the times read
 * @returns their spans, as notes of another way: offsets into the file
 */
export function otherBakes(section: Section, oven: readonly OvenPhrase[], times: readonly TimePhrase[]): NoteSpan[] {
  const {tokens} = section
  const bakes = times.filter((time) => time.of === 'bake' && !time.cooling)
  const heats = oven.filter((phrase) => isWanted(phrase) && phrase.note !== true)
  if (bakes.length < 2 || heats.length < 2) return []
  const unbroken = (from: number, to: number): boolean => {
    for (let k = from; k < to; k++) if (tokens[k]!.block !== tokens[from]!.block || endsSentence(tokens, k)) return false
    return true
  }
  const told = [
    ...spansOf(tokens, heats).map((at, n) => ({heat: heats[n]!, at})),
    ...spansOf(tokens, bakes).map((at) => ({heat: null, at})),
  ].sort((a, b) => a.at.from - b.at.from)
  const pairs: Pair[] = []
  for (let i = 0; i + 1 < told.length; i++) {
    const one = told[i]!
    const next = told[i + 1]!
    const heat = one.heat ?? next.heat
    const {from, to: end} = one.at
    const {from: start, to} = next.at
    if (heat === null || (one.heat !== null && next.heat !== null)) continue
    if (start - end > apart.pair || tokens[from]!.block !== tokens[start]!.block || !unbroken(end, start)) continue
    pairs.push({heat, from, to})
    i++
  }
  const ofWood = (from: number, to: number): boolean => {
    for (let k = from; k < to; k++) if (phraseAt(WOOD, tokens, k) !== null) return true
    return false
  }
  /** Where the sentence or the bracket that a way stands in ends. */
  const tailOf = ({to}: Pair): number => {
    let k = to
    while (k < tokens.length && k - to < apart.ways && unbroken(to - 1, k + 1) && !WAY_ENDS.has(tokens[k]!.word)) k++
    return k
  }
  const headOf = ({from}: Pair): number => {
    let k = from
    while (k > 0 && from - k < apart.ways && unbroken(k - 1, from) && tokens[k - 1]!.word !== '(') k--
    return k
  }
  const found: NoteSpan[] = []
  for (let i = 0; i + 1 < pairs.length; i++) {
    const first = pairs[i]!
    const second = pairs[i + 1]!
    const firstTail = Math.min(tailOf(first), second.from)
    const between = tokens.slice(first.to, second.from)
    if (between.length > apart.ways || tokens[first.from]!.block !== tokens[second.from]!.block) continue
    if (between.some(({word}) => word === 'then' || word === 'dann')) continue
    const a = first.heat.celsius
    const b = second.heat.celsius
    if (Math.abs(a.low + a.high - b.low - b.high) / 2 <= sameHeat) continue
    const firstWood = ofWood(headOf(first), firstTail)
    const secondWood = ofWood(Math.max(firstTail, headOf(second)), tailOf(second))
    const either = between.some(({word}) => word === 'or' || word === 'oder')
    if (!either && firstWood === secondWood) continue
    const other = secondWood && !firstWood ? first : second
    found.push({start: tokens[other.from]!.start, end: tokens[other.to - 1]!.end, otherWay: true})
    if (other === second) {
      pairs.splice(i + 1, 1)
      i--
    }
  }
  return found
}
