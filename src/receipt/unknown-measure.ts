import type {Entries, Mode} from './entries.js'
import {POURED} from './item-classes.js'
import {type Noun, readNoun} from './nouns.js'
import type {Quantity} from './quantities.js'
import {FILLING, measureHere, type View} from './view.js'

/**
 * A number before a word that no row knows, with a name the lexicon has behind it: "2 xyz. of flour". The word stands where a measure
 * does, so the number is the name's, and the word is told.
 */

/** The measure a text writes and no row knows, and the name it measures. */
export interface UnknownMeasure {
  /** The word as it stands: tokens [from, to). */
  readonly from: number
  readonly to: number
  readonly noun: Noun
}

/** "2 xyz flour": of what is poured or weighed, a word between the number and the name can only be its measure. */
const onlyMeasured = ({words}: View, {row, next}: Noun): boolean =>
  row !== null &&
  (/ juice$/.test(row.id) ||
    ((POURED.has(row.group) || row.group === 'spice') && !row.pieces.some((piece) => piece.measure === 'count'))) &&
  !/[^s]s$/.test(words[next - 1] ?? '')

/** "at 350 F. butter the tin" */
const HEATS = new Set(['f', 'c', 'deg', 'degs', 'degree', 'degrees', 'fahrenheit', 'celsius', 'centigrade', 'grad'])
const ADDS = new Set(['add', 'adding', 'take', 'took'])

/** "add a schooner of ale": in prose "a" before a word no row knows is mostly no amount ("a tureen of melted butter"), unless it is put in. */
const isAdded = ({words}: View, at: number): boolean =>
  ADDS.has(words[at - 1] ?? '') || (words[at - 1] === 'in' && /^(?:stir|beat|put|mix|rub|work|pour)$/.test(words[at - 2] ?? ''))

/**
 * The unknown measure behind the number `quantity`, which counts pieces as long as none is known; the entry begins at token `start`.
 *
 * @returns null where the word is known, or is more likely part of a name ("3 bramley apples")
 */
export function unknownMeasure(
  {view}: Entries,
  start: number,
  quantity: Quantity,
  to: number,
  mode: Mode,
): UnknownMeasure | null {
  const {words, bits, tokens} = view
  let from = quantity.next
  const begins = from
  // "7 heaping tblspns. of meal"
  while (from < begins + 2 && from < to && bits[from]! & FILLING && tokens[from]!.kind === 'word') from++
  const word = tokens[from]
  if (
    from + 1 >= to ||
    word?.kind !== 'word' ||
    HEATS.has(word.word) ||
    bits[from] !== 0 ||
    word.joined ||
    word.block !== tokens[from - 1]!.block
  )
    return null
  if (measureHere(view, from) !== null) return null
  let i = from + 1
  const stop = words[i] === '.' && !tokens[i]!.gap
  if (stop) i++
  if (i >= to || tokens[i]!.block !== word.block) return null
  const of = words[i] === 'of'
  if (!of && (tokens[i]!.kind !== 'word' || (stop && tokens[i]!.capital) || !(quantity.figure || mode === 'list'))) return null
  const at = of ? i + 1 : i
  const noun = readNoun(view, at, to, of && mode === 'list')
  // "of the sugar", "of it": a share of what is there.
  if (noun === null || noun.start !== at || /^(?:the|these|this|your|that|his|our)$/.test(words[at]!)) return null
  if (quantity.article && !(of && onlyMeasured(view, noun) && (mode === 'list' || quantity.fraction || isAdded(view, start))))
    return null
  if (!of && !stop && !onlyMeasured(view, noun)) return null
  return {from: begins, to: stop ? from + 2 : from + 1, noun}
}
