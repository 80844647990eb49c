import {dryingVerbs, pattedDry} from '../lexicon/grammar-words.js'
import {INSIDE_WORDS, set} from './heat-words.js'
import type {Token} from './section.js'
import {isStop, REACH, sentenceAt} from './sentences.js'

/** The heat that something dries in, whether it stands before the drying or behind it. */

/** What is done to dry something. */
export const DRIES: ReadonlySet<string> = new Set(dryingVerbs)
const PATTED: ReadonlySet<string> = new Set(pattedDry)
/**
 * The hottest that dries and bakes nothing, and the least: herbs dry at 35 to 45 °C, and below 30 a warm room does it, and no oven. °C and °F.
 * Common practice, no source.
 */
export const HOTTEST_DRYING = {c: 100, f: 210} as const
export const LEAST_DRYING = {c: 30, f: 86} as const
const BEHIND =
  /^(?:at|about|around|between|in|on|it|them|the|these|for|with|overnight|until|till|very|gently|slowly|out|off|completely|them|bei|im|mit|die|den|sie|nun|dann|lassen|,|\()$/
/** Of an oven, where a heat beside it is neither a dough's nor a milk's. */
const OF_OVEN = set('oven ofen backofen door ajar tur ofentur backofentur')
/** Rooms that are warm, and a dough that rises in them. */
const ELSEWHERE = set(
  'rise rises proof kitchen attic loft cupboard sun teig milch wasser hefe gehen zimmer raum raumtemperatur sonne',
)

/** Whether degrees at token `k` are a warmth that dries: 30 to 100 °C, 86 to 210 °F. */
function isWarmth(tokens: readonly Token[], k: number): boolean {
  const {kind, num, den, block} = tokens[k]!
  if (kind !== 'number' || den !== 1) return false
  const word = (i: number): string => (tokens[i]?.block === block ? tokens[i]!.word : '')
  const sign = word(k + 1)
  const scale = /^(?:°|degrees?|grad)$/.test(sign) ? word(k + 2) : sign
  if (!/^[cf℃℉]$/.test(scale) && !/^(?:°|grad)$/.test(sign)) return false
  const of = /^[f℉]/.test(scale) ? 'f' : 'c'
  return num >= LEAST_DRYING[of] && num <= HOTTEST_DRYING[of]
}

/** "Dry them", "leave to dry", "4 Stunden trocknen": but neither "the dry yeast" nor "pat dry with a cloth". */
function isDrying(tokens: readonly Token[], k: number): boolean {
  const {word, block} = tokens[k]!
  if (!DRIES.has(word)) return false
  const before = tokens[k - 1]?.block === block ? tokens[k - 1]!.word : ''
  if (PATTED.has(before) || /^(?:be|is|are)$/.test(before) !== (word === 'dried') || /^(?:quite|the|a|of)$/.test(before))
    return false
  const next = tokens[k + 1]
  return next === undefined || next.block !== block || next.kind === 'number' || isStop(next) || BEHIND.test(next.word)
}

const hasAny = (tokens: readonly Token[], from: number, to: number, words: ReadonlySet<string>): boolean =>
  tokens.slice(from, to).some(({word}) => words.has(word))

/** Whether the tokens [from, to) name what has a warmth of its own: a milk, a room, a dough. */
const isElsewhere = (tokens: readonly Token[], from: number, to: number): boolean =>
  hasAny(tokens, from, to, INSIDE_WORDS) || hasAny(tokens, from, to, ELSEWHERE)

/**
 * The token of the drying that the heat at token `at` is for; −1 where it is for none. It stands in the same sentence, behind the heat or
 * before it, "at 40 °C leave to dry"; in the clause before or behind, "dry 3 hours; 40 °C is enough"; or in the sentence beside one of an
 * oven, "the oven at 40 °C, its door ajar. Dry 3 hours". What has a warmth of its own must not stand between.
 */
export function dryingOf(tokens: readonly Token[], at: number): number {
  const [first, last] = sentenceAt(tokens, at, REACH)
  // "Cool to 35 °C"
  if (/^(?:to|auf)$/.test(tokens[at - 1]?.word ?? '') && !hasAny(tokens, first, last, OF_OVEN)) return -1
  for (let k = at - 1; k >= first; k--) if (isDrying(tokens, k)) return isElsewhere(tokens, k + 1, at) ? -1 : k
  for (let k = at + 1; k < last; k++) if (isDrying(tokens, k)) return isElsewhere(tokens, first, k) ? -1 : k
  if (isElsewhere(tokens, first, last)) return -1
  const ofOven = hasAny(tokens, first, last, OF_OVEN)
  const joins = (k: number): boolean => ofOven || tokens[k]?.word === ';'
  if (first > 0 && joins(first - 1)) {
    const end = isStop(tokens[first - 1]!) ? first - 1 : first
    const [from] = end > 0 ? sentenceAt(tokens, end - 1, REACH) : [end]
    for (let k = end - 1; k >= from; k--) if (isDrying(tokens, k)) return isElsewhere(tokens, k + 1, end) ? -1 : k
  }
  if (last < tokens.length && joins(last)) {
    const from = isStop(tokens[last]!) ? last + 1 : last
    const [, end] = from < tokens.length ? sentenceAt(tokens, from, REACH) : [from, from]
    for (let k = from; k < end; k++) if (isDrying(tokens, k)) return isElsewhere(tokens, from, k) ? -1 : k
  }
  return -1
}

/** Whether the drying at token `k` is done in a warmth that the text tells. */
export function isDriedWarm(tokens: readonly Token[], k: number): boolean {
  const [from, to] = [Math.max(0, k - 2 * REACH), Math.min(tokens.length, k + 2 * REACH)]
  for (let at = from; at < to; at++) if (isWarmth(tokens, at) && dryingOf(tokens, at) === k) return true
  return false
}
