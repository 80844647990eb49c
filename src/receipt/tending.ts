import {type FoundPhrase, phraseAt} from './phrases.js'
import type {Section, Token} from './section.js'
import {sentenceAt} from './sentences.js'
import {stayPhrases} from './stay-phrases.js'
import {spansOf} from './stays.js'
import {minutesIn, numberAt} from './time-numbers.js'
import type {Tending, TimePhrase} from './types.js'

/** What a receipt has done to a thing while it bakes: stirred, turned, basted. */

const DOES = {stir: stayPhrases('stirs'), turn: stayPhrases('turns'), baste: stayPhrases('bastes')} as const
const OFTEN = stayPhrases('often')
const HALF = stayPhrases('half-way')
const EVERY = stayPhrases('every')
const AGAIN = stayPhrases('again')
const BAKES = stayPhrases('bakes')
const OTHER = stayPhrases('elsewhere-tended')

/** Words that may stand between what is done and when, to either side. */
const NEAR = 9
/** Nothing is tended seldomer while it bakes, minutes. */
const LONGEST = 360

/**
 * What a receipt asks to be done to a thing at times within its bake: "stirring every 10 minutes", "turn the tray half way through", "baste it
 * often", "nach der Hälfte der Zeit wenden". Only what is said with a when or a how often, behind the baking in its sentence or in the
 * sentence after; what is stirred on the hob is none.
 *
 * @param times its stretches of time, in the order of the text
 */
export function readTending({tokens, source}: Section, times: readonly TimePhrase[]): Tending[] {
  const spans = spansOf(tokens, times)
  const baking = (from: number, to: number): boolean => {
    for (let k = from; k < to; k++) if (phraseAt(BAKES, tokens, k) !== null) return true
    return spans.some((span, n) => times[n]!.of === 'bake' && span.from >= from && span.to <= to)
  }
  const found: Tending[] = []
  for (let i = 0; i < tokens.length; i++) {
    const deed = deedAt(tokens, i)
    if (deed === null) continue
    const [first, last] = sentenceAt(tokens, i)
    const when = whenNear(tokens, i, first, last)
    if (when === null || saysOther(tokens, first, last)) continue
    const before = first > 1 && tokens[first - 1]!.block === tokens[i]!.block ? sentenceAt(tokens, first - 2)[0] : first
    const starts = Math.min(i, when.from)
    if (!baking(first, starts) && !(baking(before, first) && !saysOther(tokens, before, first))) continue
    const from = starts
    const to = Math.max(i + 1, when.to)
    const [start, end] = [tokens[from]!.start, tokens[to - 1]!.end]
    const text = source.slice(start, end)
    for (const said of [when.said, ...when.again]) found.push({text, start, end, does: deed, ...said})
    i = to - 1
  }
  return found
}

const PARTICLE = /^(?:in|into|out|off|down|up|on|onto|over|to|through|together|brown|golden)$/
const NO_OBJECT = /^(?:oven|heat|temperature|gas|ofen|hitze|temperatur|backofen)$/

/** What is done at a token; "stir in the honey", "turn off the oven" and "turn out" are none. */
function deedAt(tokens: readonly Token[], i: number): Tending['does'] | null {
  for (const does of ['stir', 'turn', 'baste'] as const) {
    const verb = phraseAt(DOES[does], tokens, i)
    if (verb === null) continue
    const next = tokens[verb.to]?.word ?? ''
    const object = [tokens[verb.to + 1]?.word ?? '', next].some((word) => NO_OBJECT.test(word))
    return object || (does !== 'baste' && PARTICLE.test(next) && !(does === 'turn' && next === 'over')) ? null : does
  }
  return null
}

interface When {
  readonly from: number
  readonly to: number
  readonly said: Pick<Tending, 'every' | 'after' | 'share'>
  /** The times after the first. */
  readonly again: readonly Pick<Tending, 'after'>[]
}

/** When, or how often, beside a deed within its sentence: the nearest that is said. */
function whenNear(tokens: readonly Token[], i: number, first: number, last: number): When | null {
  let best: When | null = null
  // "Stirring once after 30 minutes": a time says more than a number of times.
  const gap = ({from, to, said}: When): number => (from > i ? from - i : i - to) + (Object.keys(said).length > 0 ? 0 : NEAR)
  for (let k = Math.max(first, i - NEAR); k < Math.min(last, i + NEAR); k++) {
    const when = whenAt(tokens, k, last)
    if (when !== null && (best === null || gap(when) < gap(best))) best = when
    if (when !== null) k = when.to - 1
  }
  return best
}

function whenAt(tokens: readonly Token[], k: number, last: number): When | null {
  const half = within(phraseAt(HALF, tokens, k), last)
  if (half !== null) return {from: k, to: half.to, said: {share: 0.5}, again: []}
  const often = within(phraseAt(OFTEN, tokens, k), last)
  if (often !== null) return {from: k, to: often.to, said: {}, again: []}
  if (within(phraseAt(EVERY, tokens, k), last) !== null) {
    const length = lengthAt(tokens, k + 1, last)
    // "Turn the fruit every day": where it stands.
    return length === null || length.minutes > LONGEST ? null : {from: k, to: length.to, said: {every: length.minutes}, again: []}
  }
  if (/^(?:after|nach)$/.test(tokens[k]!.word)) {
    const length = lengthAt(tokens, k + 1, last)
    if (length === null) return null
    const said = {after: length.minutes}
    return {from: k, said, ...againAfter(tokens, length, last)}
  }
  return null
}

/** What follows a time: "and again after an hour", "and then after another 20 minutes". Minutes from setting in, each later than the one before. */
function againAfter(tokens: readonly Token[], first: Length, last: number): Pick<When, 'to' | 'again'> {
  const again: {readonly after: number}[] = []
  let {to, minutes: since} = first
  for (;;) {
    const joined = within(phraseAt(AGAIN, tokens, tokens[to]?.word === ',' ? to + 1 : to), last)
    if (joined === null || !/^(?:after|nach)$/.test(tokens[joined.to]?.word ?? '')) return {to, again}
    const next = lengthAt(tokens, joined.to + 1, last)
    if (next === null) return {to, again}
    // "After 20 minutes and again after 15", "after another 30": counted on from the time before.
    since = next.more || next.minutes <= since ? since + next.minutes : next.minutes
    to = next.to
    again.push({after: since})
  }
}

const within = <Row>(found: FoundPhrase<Row> | null, last: number): FoundPhrase<Row> | null =>
  found !== null && found.to <= last ? found : null

const MORE = /^(?:another|further|weitere|weiteren|weiterer)$/
const PARTS: Readonly<Record<string, number>> = {half: 0.5, halbe: 0.5, halben: 0.5, viertel: 0.25, dreiviertel: 0.75}

interface Length {
  readonly minutes: number
  readonly to: number
  /** "Another", "further": so long from the time before. */
  readonly more: boolean
}

/** "10 minutes", "the first half hour", "another quarter of an hour": minutes, the middle of a range. */
function lengthAt(tokens: readonly Token[], from: number, last: number): Length | null {
  let k = from
  let more = false
  for (; k < last; k++)
    if (MORE.test(tokens[k]!.word)) more = true
    else if (!/^(?:a|the|first|about|den|der|die|ersten|erste|etwa|ca)$/.test(tokens[k]!.word)) break
  // "Alle halbe Stunde": the German word for a part stands before its unit as any other.
  const part = PARTS[tokens[k]?.word ?? '']
  const number = part === undefined ? numberAt(tokens, k) : {low: part, high: part, end: k + 1}
  const at = number?.end ?? k
  let unit = at
  while (unit < Math.min(last, at + 3) && /^(?:of|an|a|-)$/.test(tokens[unit]!.word)) unit++
  const minutes = unit < last ? minutesIn(tokens[unit]!.word) : null
  if (minutes === null) return null
  // "Every hour": one.
  return {minutes: (number === null ? 1 : (number.low + number.high) / 2) * minutes, to: unit + 1, more}
}

/** "Over a low heat", "in a frying pan": no oven. */
function saysOther(tokens: readonly Token[], from: number, to: number): boolean {
  for (let k = from; k < to; k++) if (phraseAt(OTHER, tokens, k) !== null) return true
  return false
}
