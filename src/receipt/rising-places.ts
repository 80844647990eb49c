import type {ColdPlace} from '../lexicon/schema.js'
import {coldPlaceAt, NOT_THERE, namedPlaceAt, risingWordAt} from './rising-words.js'
import type {Section, Token} from './section.js'
import {endsSentence, sentenceAt} from './sentences.js'
import {spansOf, type TokenSpan} from './stays.js'
import type {TimePhrase} from './types.js'

/** In which cold place a receipt has its dough rise or prove: "overnight in the refrigerator", "8 hours in a cool larder". */

type Place = ColdPlace['id']

const DIVIDES = /^(?:and|or|then|und|oder|dann|,|;|before|bevor|until|bis)$/
/** A wait so long, minutes, is that of the place of the sentence before: "Put it in the fridge. Leave it 12 hours." Common practice, no source. */
const LONG = 360

/** The place that token `k` says something is put in, or that it is chilled; null where it says none. */
const placeAt = (tokens: readonly Token[], k: number, back: boolean): Place | null =>
  // "Refrigerate overnight" stands before its time only.
  back && risingWordAt('chills', tokens, k) !== null && !NOT_THERE.test(tokens[k - 1]?.word ?? '')
    ? 'refrigerator'
    : coldPlaceAt(tokens, k)

const worked = (tokens: readonly Token[], k: number): boolean =>
  (['shapes', 'kneads', 'bakes'] as const).some((use) => risingWordAt(use, tokens, k) !== null)

/** What may stand between a place that notes name and its time. */
const ABOUT = /^(?:for|about|at|least|around|:|ca|etwa)$/
/** What joins a step of notes to the one before. */
const JOINS = /^(?:then|and|und|dann)$/

/** The place that notes name right before a time, "then fridge overnight", or right behind one, "overnight, fridge"; null where they name none. */
function notedPlace(tokens: readonly Token[], from: number, to: number, low: number, high: number): Place | null {
  let end = from
  while (end > low && ABOUT.test(tokens[end - 1]!.word)) end--
  for (let k = end - 1; k >= low && end - k <= 2; k--) {
    const named = namedPlaceAt(tokens, k)
    const before = tokens[k - 1]
    const begins = before === undefined || before.block !== tokens[k]!.block || before.kind === 'mark' || JOINS.test(before.word)
    if (named?.to === end && begins) return named.place
  }
  const k = /^[,(]$/.test(tokens[to]?.word ?? '') ? to + 1 : to
  const named = k < high ? namedPlaceAt(tokens, k) : null
  if (named === null) return null
  const behind = tokens[named.to]
  return behind === undefined || behind.block !== tokens[k]!.block || behind.kind === 'mark' || DIVIDES.test(behind.word)
    ? named.place
    : null
}

/** The place of one stretch of time: inside its words, behind them, or before them in the sentence, none nearer being another's. */
function placeOf(tokens: readonly Token[], spans: readonly TokenSpan[], n: number, minutes: number): Place | null {
  const {from, to} = spans[n]!
  const [first, last] = sentenceAt(tokens, from)
  for (let k = from; k < to; k++) {
    const place = placeAt(tokens, k, false)
    if (place !== null) return place
  }
  const next = Math.min(spans[n + 1]?.from ?? last, last)
  for (let k = to; k < next; k++) {
    // "8 hours, in the fridge", where no other time follows.
    if (DIVIDES.test(tokens[k]!.word) && (k > to || next < last || tokens[k]!.word !== ',')) break
    const place = worked(tokens, k) ? 'other' : placeAt(tokens, k, false)
    if (place === 'other') break
    if (place !== null) return place
  }
  const previous = spans[n - 1]?.to ?? 0
  const noted = notedPlace(tokens, from, to, Math.max(previous, first), last)
  if (noted !== null) return noted
  let start = first
  if (previous > first) {
    // What follows the time before, up to where the next matter begins, is said of that.
    start = previous
    while (start < from && !DIVIDES.test(tokens[start]!.word)) start++
  }
  for (let k = from - 1; k >= start; k--) {
    if (worked(tokens, k)) return null
    const place = placeAt(tokens, k, true)
    if (place !== null) return place
  }
  if (minutes < LONG || previous > first || first === 0 || tokens[first - 1]!.block !== tokens[first]!.block) return null
  const [before] = sentenceAt(tokens, first - 1 > 0 && endsSentence(tokens, first - 1) ? first - 2 : first - 1)
  if (previous > before) return null
  for (let k = first - 1; k >= before; k--) {
    if (worked(tokens, k)) return null
    const place = placeAt(tokens, k, true)
    if (place !== null) return place
  }
  return null
}

/**
 * Mark the waits of a dough that its receipt has in a cold place.
 *
 * @param times the receipt's stretches of time in the order of the text, with their stages
 */
export function withPlaces({tokens}: Section, times: readonly TimePhrase[]): TimePhrase[] {
  if (!times.some(({stage}) => stage === 'rise' || stage === 'prove')) return [...times]
  const spans = spansOf(tokens, times)
  return times.map((time, n) => {
    if (time.stage !== 'rise' && time.stage !== 'prove') return time
    const place = placeOf(tokens, spans, n, time.minutes.low)
    return place === null ? time : {...time, place}
  })
}
