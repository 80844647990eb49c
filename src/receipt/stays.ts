import type {StayWord} from '../lexicon/schema.js'
import {type FoundPhrase, phraseAt} from './phrases.js'
import type {Section, Token} from './section.js'
import {endsSentence, sentenceAt} from './sentences.js'
import {stayPhrases} from './stay-phrases.js'
import {minutesIn, numberAt} from './time-numbers.js'
import type {DoorRule, Span, TimePhrase} from './types.js'

/**
 * How long a thing stays in the oven beyond its baking time: what is left in through the night, and the door that is to be kept shut.
 */

const TREES = {
  night: stayPhrases('night'),
  better: stayPhrases('better'),
  inside: stayPhrases('inside'),
  into: stayPhrases('into'),
  beside: stayPhrases('beside'),
  elsewhere: stayPhrases('elsewhere'),
  opens: stayPhrases('opens'),
  shut: stayPhrases('shut'),
  keeps: stayPhrases('keeps'),
  door: stayPhrases('door'),
  never: stayPhrases('never'),
  until: stayPhrases('until'),
  during: stayPhrases('during'),
  state: stayPhrases('state'),
  share: stayPhrases('share'),
} as const
type Use = keyof typeof TREES
/** Stems a rule about the door begins at: nearly every word of a book is none. */
const RULE_STEMS: ReadonlySet<string> = new Set([...TREES.opens.next.keys(), ...TREES.shut.next.keys()])

const at = (use: Use, tokens: readonly Token[], k: number): FoundPhrase<StayWord> | null => phraseAt(TREES[use], tokens, k)
const is = (use: Use, token: Token | undefined): boolean =>
  token !== undefined && token.kind === 'word' && TREES[use].next.get(token.stem)?.row != null
/** Whether a word is the oven's. */
export const isOven = (token: Token): boolean => is('door', token) && !token.word.startsWith('door')

/** How many words a clause may reach back and on, and how far a preposition stands before its oven ("in a very slow brick oven"). */
const REACH = {back: 60, on: 25, preposition: 5, near: 8} as const

/** The stretches of time of a receipt as `readTimes` gives them, with the nights spent in the oven marked, and the rules about the door. */
export interface Stays {
  readonly times: TimePhrase[]
  readonly door: readonly DoorRule[]
}

/** "It is all the better for remaining in the oven over night": whether the sentence before token `from` says that the thing gains by it. */
function isBetter(tokens: readonly Token[], from: number): boolean {
  const [first] = sentenceAt(tokens, from, REACH.on)
  for (let k = first; k < from; k++) if (at('better', tokens, k) !== null) return true
  return false
}

/**
 * Read what a receipt says of staying in the oven.
 *
 * A night counts where the sentence says that the thing is in the oven ("leave them in the slack oven overnight"), not where it rises,
 * soaks or stands elsewhere. A time that the door is kept shut is no baking time: its `of` becomes `other`.
 *
 * @param section the receipt's blocks and tokens
 * @param times its stretches of time, in the order of the text
 */
export function readStays(section: Section, times: readonly TimePhrase[]): Stays {
  const {tokens, source} = section
  const spans = spansOf(tokens, times)
  const door: DoorRule[] = []
  const shutTimes = new Set<number>()
  for (let i = 0; i < tokens.length; i++) {
    if (!RULE_STEMS.has(tokens[i]!.stem)) continue
    const from = ruleAt(tokens, i)
    if (from === null) continue
    const after = lengthAfter(tokens, from.to, spans)
    const length = after ?? lengthBefore(tokens, from, spans)
    if (length === null) continue
    // "Bake it, with the door shut, for an hour" says how long it bakes too.
    const bakes = after === null || tokens[from.from]!.word === 'with'
    if (length.time !== null && !bakes) shutTimes.add(length.time)
    const [start, end] = [tokens[Math.min(from.from, length.from)]!.start, tokens[Math.max(from.to, length.to) - 1]!.end]
    const said =
      length.said !== undefined
        ? {low: length.said, high: length.said}
        : length.time === null
          ? null
          : times[length.time]!.minutes
    const {row} = length
    door.push({
      text: source.slice(start, end),
      start,
      end,
      ...(said !== null ? {minutes: {low: said.low, likely: (said.low + said.high) / 2, high: said.high}} : {}),
      ...(row?.minutes !== undefined ? {minutes: row.minutes} : {}),
      ...(row?.share !== undefined ? {share: row.share} : {}),
      sources: row === null ? [] : [row.source],
    })
    i = Math.max(from.to, length.to) - 1
  }
  const marked = times.map((time, n): TimePhrase => {
    if (shutTimes.has(n)) return {...time, of: 'other'}
    const {from, to} = spans[n]!
    return time.of !== 'rise' && isNight(tokens, from, to) && isInOven(tokens, from, to)
      ? {...time, overnight: true, ...(isBetter(tokens, from) ? {better: true as const} : {})}
      : time
  })
  return {times: marked, door}
}

/** Tokens [from, to). */
export interface TokenSpan {
  readonly from: number
  readonly to: number
}

/** The words that some tokens are. */
export function spanOf({tokens, source}: Pick<Section, 'tokens' | 'source'>, {from, to}: TokenSpan): Span {
  const [start, end] = [tokens[from]!.start, tokens[to - 1]!.end]
  return {text: source.slice(start, end), start, end}
}

/** The tokens of each stretch of the text, which run in its order. */
export function spansOf(tokens: readonly Token[], stretches: readonly Span[]): TokenSpan[] {
  let k = 0
  return stretches.map(({start, end}) => {
    while (k < tokens.length && tokens[k]!.start < start) k++
    let to = k
    while (to < tokens.length && tokens[to]!.start < end) to++
    return {from: k, to}
  })
}

/** Whether words of tokens [from, to) are the night. */
export function isNight(tokens: readonly Token[], from: number, to: number): boolean {
  for (let k = from; k < to; k++) if (at('night', tokens, k) !== null) return true
  return false
}

/** Whether the words round a stretch of time say that the thing is in the oven all through it. */
function isInOven(tokens: readonly Token[], from: number, to: number): boolean {
  const {block} = tokens[from]!
  const leftIn = is('inside', tokens[from - 1]) || isDrawnAfter(tokens, to)
  let sentence = true
  for (let k = from - 1; k >= 0 && k > from - REACH.back && tokens[k]!.block === block; k--) {
    if (endsSentence(tokens, k)) {
      if (sentence && isInOvenAfter(tokens, to)) return true
      sentence = false
      // "Leave it in all night" is said of the oven of the sentence before; "let it stand all night" of any place.
      if (!leftIn) return false
    }
    const token = tokens[k]!
    if (isOven(token)) {
      const stands = standing(tokens, k)
      return stands === 'into' || (stands === null && leftIn)
    }
    if (is('elsewhere', token)) return sentence && isInOvenAfter(tokens, to)
  }
  return sentence && isInOvenAfter(tokens, to)
}

/** "Leave them all night; take them out": they were in it. */
function isDrawnAfter(tokens: readonly Token[], to: number): boolean {
  const {block} = tokens[to - 1]!
  for (let k = to; k < to + REACH.near && tokens[k + 2]?.block === block; k++)
    if (/^(?:take|draw|taken)$/.test(tokens[k]!.word)) return tokens[k + 1]!.word === 'out' || tokens[k + 2]!.word === 'out'
  return false
}

/** "… all night in a slack oven". */
function isInOvenAfter(tokens: readonly Token[], to: number): boolean {
  const block = tokens[to - 1]!.block
  for (let k = to; k < tokens.length && k <= to + REACH.preposition && tokens[k]!.block === block; k++) {
    const token = tokens[k]!
    if (token.kind === 'mark' || token.word === 'and' || token.word === 'then') return false
    if (isOven(token)) return standing(tokens, k) === 'into'
  }
  return false
}

/** How a thing stands to the oven at `k`, by the preposition before it: within, beside, or not said. A cold oven is a cupboard. */
export function standing(tokens: readonly Token[], k: number): 'into' | 'beside' | null {
  for (let j = k - 1; j >= 0 && j >= k - REACH.preposition && tokens[j]!.block === tokens[k]!.block; j--) {
    const token = tokens[j]!
    if (token.kind === 'mark' && token.word !== ',') return null
    if (token.word === 'cold') return 'beside'
    if (is('into', token)) return 'into'
    if (is('beside', token)) return 'beside'
  }
  return null
}

/** A rule about the door whose words end before `to`: "do not open the oven", "the door must not be opened", "keep the door shut". */
function ruleAt(tokens: readonly Token[], i: number): TokenSpan | null {
  const opens = at('opens', tokens, i)
  if (opens !== null) {
    const never = lastBefore(tokens, i, (k) => is('never', tokens[k]))
    if (never === null) return null
    const object = nextAfter(tokens, opens.to, 4, (k) => is('door', tokens[k]))
    const subject = lastBefore(tokens, i, (k) => is('door', tokens[k])) ?? meantBefore(tokens, i, never)
    // "Do not open it": the words begin with the verb, wherever its oven is named.
    const from = object !== null || tokens[opens.to]?.word === 'it' ? never : Math.min(subject ?? never, never)
    if (object === null && subject === null) return null
    return {
      from: /^(?:do|must|should)$/.test(tokens[from - 1]?.word ?? '') ? from - 1 : from,
      to: object === null ? opens.to : lastDoor(tokens, object) + 1,
    }
  }
  const shut = at('shut', tokens, i)
  if (shut === null) return null
  const door = lastBefore(tokens, i, (k) => is('door', tokens[k]))
  if (door === null) return null
  const first = /^doors?$/.test(tokens[door]!.word) && isOven(tokens[door - 1] ?? tokens[door]!) ? door - 1 : door
  const keeps = lastBefore(tokens, first, (k) => is('keeps', tokens[k]))
  if (keeps === null || (standing(tokens, first) !== null && tokens[keeps]!.word !== 'with')) return null
  return {from: keeps, to: shut.to}
}

/** "…, in a gentle oven; it must be neither opened nor shaken": where `it` is said of the oven of the clause before. */
function meantBefore(tokens: readonly Token[], i: number, never: number): number | null {
  const passive = lastBefore(tokens, i, (k) => k > never - 2 && tokens[k]!.word === 'be')
  const it = passive === null ? null : lastBefore(tokens, Math.min(passive, never), (k) => tokens[k]!.word === 'it')
  const clause = it === null ? undefined : tokens[it - 1]
  if (it === null || clause?.kind !== 'mark' || clause.word === '.' || clause.block !== tokens[it]!.block) return null
  const oven = lastBefore(tokens, it - 1, (k) => is('door', tokens[k]))
  // The words of the rule begin with what it says.
  return oven === null ? null : it
}

const lastDoor = (tokens: readonly Token[], k: number): number => (is('door', tokens[k + 1]) ? k + 1 : k)

/** The nearest token before `i` that passes, within the sentence. */
function lastBefore(tokens: readonly Token[], i: number, passes: (k: number) => boolean): number | null {
  for (let k = i - 1; k >= 0 && k >= i - REACH.near && tokens[k]!.block === tokens[i]!.block && !endsSentence(tokens, k); k--)
    if (passes(k)) return k
  return null
}

function nextAfter(tokens: readonly Token[], from: number, most: number, passes: (k: number) => boolean): number | null {
  for (let k = from; k < tokens.length && k < from + most && tokens[k]!.block === tokens[from - 1]!.block; k++) {
    if (tokens[k]!.kind === 'mark') return null
    if (passes(k)) return k
  }
  return null
}

interface Length {
  /** Index among the stretches of time. */
  readonly time: number | null
  readonly row: StayWord | null
  readonly from: number
  readonly to: number
  /** Where its unit is left to the stretch before it: minutes. */
  readonly said?: number
}

/** Words that may stand between "for" and the time it governs. */
const BEFORE_TIME: ReadonlySet<string> = new Set([
  'the',
  'first',
  'at',
  'least',
  'about',
  'a',
  'another',
  'full',
  'after',
  'some',
  'next',
])

/** How long the door stays shut: the first stretch of time, state or share of the baking behind the rule, in its own clause. */
function lengthAfter(tokens: readonly Token[], from: number, spans: readonly TokenSpan[]): Length | null {
  const block = tokens[from - 1]!.block
  let until = false
  for (let k = from; k < tokens.length && k < from + REACH.on && tokens[k]!.block === block; k++) {
    const token = tokens[k]!
    if (endsSentence(tokens, k) || token.word === 'but' || token.word === 'then' || (token.word === 'and' && !until)) return null
    const time = spans.findIndex((span) => span.from <= k && k < span.to)
    if (time >= 0) {
      let j = spans[time]!.from - 1
      while (j >= from && BEFORE_TIME.has(tokens[j]!.word)) j--
      const governed = j < from || is('until', tokens[j]) || is('during', tokens[j]) || until
      return governed ? {time, row: null, ...spans[time]!} : null
    }
    if (tokens[k - 1]!.word === 'first') {
      const short = unitUnsaid(tokens, k, spans)
      if (short !== null) return short
    }
    const share = at('share', tokens, k)
    if (share !== null && !spans.some((span) => span.from < share.to && share.to <= span.to)) {
      // "For the first half of an hour" is read as a time.
      return {time: null, ...share}
    }
    until ||= is('until', token)
    const state = until ? at('state', tokens, k) : null
    if (state !== null) return {time: null, ...state}
  }
  return null
}

/** "Bake it three hours and a half …, for the first two": so many of what the stretch of time before them was told in. */
function unitUnsaid(tokens: readonly Token[], k: number, spans: readonly TokenSpan[]): Length | null {
  const number = numberAt(tokens, k)
  const before = spans.findLast(({to}) => to <= k)
  const next = number === null ? undefined : tokens[number.end]
  const ends = next === undefined || next.kind === 'mark' || next.block !== tokens[k]!.block
  if (number === null || !ends || before === undefined || tokens[before.from]!.block !== tokens[k]!.block) return null
  for (let j = before.from; j < before.to; j++) {
    const unit = minutesIn(tokens[j]!.word)
    if (unit !== null) return {time: null, row: null, from: k, to: number.end, said: number.low * unit}
  }
  return null
}

/** "Bake it twenty minutes without opening the oven": the stretch of time right before the rule. */
function lengthBefore(tokens: readonly Token[], rule: TokenSpan, spans: readonly TokenSpan[]): Length | null {
  if (tokens[rule.from]!.word !== 'without' || is('during', tokens[rule.to]) || is('until', tokens[rule.to])) return null
  const time = spans.findIndex(({to}) => to <= rule.from && to >= rule.from - 2)
  return time < 0 || tokens[spans[time]!.from]!.block !== tokens[rule.from]!.block ? null : {time, row: null, ...spans[time]!}
}
