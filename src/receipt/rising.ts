import {risingWords} from '../lexicon/rising-words.js'
import {type RisingUse, risingWordAt} from './rising-words.js'
import type {Section, Token} from './section.js'
import {endsSentence, isStop, sentenceAt} from './sentences.js'
import {spansOf} from './stays.js'
import {isSummary} from './time-parts.js'
import {isSaidNight} from './time-task.js'
import type {TimePhrase} from './types.js'

/** The stages of a dough: its sponge, its rising in bulk, and how long it proves when it is shaped. */

const at = risingWordAt

/** Words for what is chilled to rise slowly, where fruit or milk would be chilled or soaked. */
const DOUGHS: ReadonlySet<string> = new Set(risingWords.find(({id}) => id === 'chilled')!.phrases)

/** How many words behind "into" its piece or vessel stands: "into two large well buttered tins". */
const REACH = 6
/** A wait before the dough is kneaded that is shorter, minutes, wets the flour and is no sponge. Common practice, no source. */
const SPONGE = 30
/** What waits so long before the shaping, minutes, is the dough, whatever its words. Common practice, no source. */
const LONG = 60
/** A night, minutes, at the least. */
const NIGHT = 480
/** No dough waits longer, minutes: what does is yeast or vinegar. Common practice, no source. */
const LONGEST = 4320
/** How many words before a wait its sponge, its yeast or its dough is named. */
const NEAR = 80

/** A receipt's stretches of time with the stages of its dough, and the risings that it says no time of. */
export interface Rising {
  readonly times: TimePhrase[]
  readonly untimed: ReadonlyArray<'rise' | 'prove'>
}

/**
 * Tell the stages of a dough apart by the order of the text: what waits behind the last shaping before the baking proves; what waits before
 * the kneading, yeast being named just before, is a sponge; the rest rises in bulk. Nothing is marked where nothing rises.
 *
 * @param section the receipt's blocks and tokens
 * @param times its stretches of time, in the order of the text
 */
export function readRising(section: Section, times: readonly TimePhrase[]): Rising {
  const {tokens} = section
  const leaven = tokens.findIndex((_, k) => at('leaven', tokens, k) !== null && !isCake(tokens[k + 1]))
  const rises = times.some(({of}) => of === 'rise')
  if (leaven === -1 && !rises) return {times: [...times], untimed: []}

  const spans = spansOf(tokens, times)
  const starts = spans.map(({from}) => from)
  const lastRise = times.reduce((last, {of}, n) => (of === 'rise' ? starts[n]! : last), Math.max(0, leaven))
  const firstRise = starts[times.findIndex(({of}) => of === 'rise')] ?? -1
  const bakes = bakeFrom(tokens, times, starts, lastRise)
  // "Focaccia in a tray" is no shaping of it.
  const titled = (k: number): boolean => tokens[k]!.block === 0 && section.blocks[0]!.kind === 'heading'
  const shaped = lastWhere(tokens, bakes, (k) => !titled(k) && isShaping(tokens, k))
  const dough = shaped ?? bakes
  const kneaded = lastWhere(tokens, dough, (k) => at('kneads', tokens, k) !== null)
  const firstKneaded = tokens.findIndex((_, k) => k > leaven && at('kneads', tokens, k) !== null)

  const ofLabel = underSpongeLabel(section, times, starts)
  // "Knead and cover overnight": nobody works a dough all night, and one night is told once.
  const rests = times.findIndex(
    ({of, minutes}, n) => of !== 'other' && of !== 'bake' && minutes.low >= NIGHT && !soaks(tokens, starts[n]!),
  )
  const isWorkedNight = (n: number): boolean => {
    const [time, k] = [times[n]!, starts[n]!]
    const said = time.of === 'other' && rests === -1 && !titled(k) && isSaidNight(tokens, k, spans[n]!.to)
    return (
      said &&
      k > leaven &&
      !isSummary(tokens, k) &&
      saidBefore(tokens, sentenceAt(tokens, k)[0], k, (j) => at('worked', tokens, j) !== null)
    )
  }

  // The second of two risings is the last where it is called so; of one alone its words tell nothing.
  const firstWait =
    starts[times.findIndex(({of, minutes}) => of === 'rise' || (of === 'stand' && minutes.low >= LONG))] ?? tokens.length

  const marked = times.map((time, n): TimePhrase => {
    const k = starts[n]!
    if (ofLabel.has(n)) return {...time, stage: 'sponge', anew: true}
    const stands = time.of === 'stand' || isWorkedNight(n)
    const waits = time.of === 'rise' || (stands && leaven !== -1 && !time.overnight && !soaks(tokens, k))
    if (!waits || time.note || k >= bakes || isOther(tokens, k)) return time
    const stood = time.of === 'other' ? ({of: 'stand'} as const) : {}
    if (shaped !== null && k > shaped) return {...time, ...stood, stage: 'prove'}
    if (shaped === null && k > firstWait && isLastRising(tokens, k, spans[n]!.to)) return {...time, ...stood, stage: 'prove'}
    const before = kneaded !== null && k < kneaded && (firstKneaded === -1 || k < firstKneaded)
    const own = isOfSponge(tokens, k)
    const works = !isAutolyse(tokens, k) && ((before && (near('leaven', tokens, k) || near('sponge', tokens, k))) || own)
    if (works && time.minutes.low >= SPONGE) return {...time, ...stood, stage: 'sponge', ...(own ? {anew: true as const} : {})}
    // A wait that is no rising by its own words counts where it is the dough that waits.
    const made = shaped !== null && [firstKneaded, firstRise].some((from) => from !== -1 && k > from)
    // "Stir together, cover and leave 12 to 18 hours" is no wait for anything else.
    const long = leaven !== -1 && k > leaven && time.minutes.low >= LONG && time.minutes.high <= LONGEST
    return time.of === 'rise' || made || long || near('dough', tokens, k) ? {...time, ...stood, stage: 'rise'} : time
  })

  // "An hour the first time, three quarters of an hour the second", behind the method: all but the last are before the shaping.
  const proving = marked.flatMap((time, n) => (time.stage === 'prove' && time.of === 'rise' ? [n] : []))
  const last = proving.at(-1)
  if (last !== undefined && !marked.some((time) => time.stage === 'rise'))
    for (const n of proving)
      if (n !== last && sentenceAt(tokens, starts[n]!)[1] > starts[last]!) marked[n] = {...marked[n]!, stage: 'rise'}

  const timed = (stage: 'rise' | 'prove'): boolean => marked.some((time) => time.stage === stage)
  const says = (from: number, to: number): boolean => {
    for (let k = from; k < to; k++) if (at('rises', tokens, k) !== null && tokens[k - 1]?.word !== 'a') return true
    return false
  }
  const untimed: ('rise' | 'prove')[] = []
  if (shaped !== null) {
    if (!timed('rise') && says(Math.max(leaven, 0), shaped)) untimed.push('rise')
    if (!timed('prove') && says(shaped, bakes)) untimed.push('prove')
  }
  return {times: marked, untimed}
}

/** Where the baking begins: the first word or time of it behind the last rising, else behind the first leaven; else the end. */
function bakeFrom(tokens: readonly Token[], times: readonly TimePhrase[], starts: readonly number[], after: number): number {
  for (let k = after + 1; k < tokens.length; k++) {
    if (at('bakes', tokens, k) !== null) return k
    if (times.some(({of}, n) => of === 'bake' && starts[n] === k)) return k
  }
  return tokens.length
}

/** A sponge cake that is soaked or sliced raises nothing. */
const isCake = (next: Token | undefined): boolean => /^(?:cakes?|biscuits?|fingers?|rusks?)$/.test(next?.word ?? '')

function lastWhere(tokens: readonly Token[], before: number, holds: (k: number) => boolean): number | null {
  for (let k = Math.min(before, tokens.length) - 1; k >= 0; k--) if (tokens[k]!.kind === 'word' && holds(k)) return k
  return null
}

/** "Shape into two loaves", "mould it up", "into rounds", "into buttered tins": but not "of the shape of a pear", nor flour into a pan. */
function isShaping(tokens: readonly Token[], k: number): boolean {
  const {block} = tokens[k]!
  if (at('shapes', tokens, k) !== null) return !/^(?:the|a|any|this|that|in)$/.test(tokens[k - 1]?.word ?? '')
  if (isForming(tokens, k) || isWrapping(tokens, k)) return true
  if (at('into', tokens, k) === null || isDative(tokens, k)) return false
  let reached = 0
  for (let j = k + 1; j < tokens.length && reached < REACH && tokens[j]!.block === block; j++) {
    // "Into an oiled 30 × 20 × 4 cm tin", "into a 9 in tin", "into a 2 lb (900 g) tin"
    if (isOfSize(tokens, j)) continue
    if (tokens[j]!.kind === 'mark') return false
    reached++
    if (at('pieces', tokens, j) !== null) return tokens[k]!.word !== 'to' && !/^(?:in|on)$/.test(tokens[k]!.word)
    // "Mix to form a dough"
    if (tokens[k]!.word === 'to' && tokens[j]!.word === 'form') return false
    if (at('vessels', tokens, j) !== null) return !takesMixed(tokens, k) && !risesThere(tokens, k)
    if (at('into', tokens, j) !== null) return false
  }
  return false
}

/**
 * "Form 12 buns", "fill the buns", "half fill two 1 lb tins", "Taschen füllen": but neither "fill a tin with water" nor "in a form".
 */
function isForming(tokens: readonly Token[], k: number): boolean {
  const found = at('forms', tokens, k)
  if (found === null || ARTICLE.test(tokens[k - 1]?.word ?? '')) return false
  const isOfDough = (j: number): boolean =>
    at('pieces', tokens, j) !== null || (at('vessels', tokens, j) !== null && at('forms', tokens, j) === null)
  const [first, last] = sentenceAt(tokens, k)
  // The German verb stands last in its clause.
  if (/en$|t$/.test(tokens[k]!.word))
    for (let j = k - 1; j >= Math.max(first, k - REACH) && tokens[j]!.kind !== 'mark'; j--)
      if (at('pieces', tokens, j) !== null) return true
  let reached = 0
  for (let j = found.to; j < last && reached < REACH; j++) {
    if (isOfSize(tokens, j)) continue
    if (tokens[j]!.kind === 'mark' || at('into', tokens, j) !== null || at('rises', tokens, j) !== null) return false
    reached++
    if (!isOfDough(j)) continue
    for (let i = j + 1; i < last && tokens[i]!.kind !== 'mark'; i++) if (at('mixed', tokens, i) !== null) return false
    return true
  }
  return false
}
const ARTICLE = /^(?:the|a|an|in|into|die|der|den|einer|eine|will|gefettete|gefetteten)$/

/** "Wrap it round the sausages", "stretch the dough over the tin": but not "wrap it round with a cloth", "fold it over itself". */
function isWrapping(tokens: readonly Token[], k: number): boolean {
  if (at('wraps', tokens, k) === null) return false
  let object = k + 1
  if (/^(?:the|each|your)$/.test(tokens[object]?.word ?? '')) object++
  if (!/^(?:it|them|dough|pieces?|strips?|one)$/.test(tokens[object]?.word ?? '')) return false
  const around = at('around', tokens, object + 1)
  if (around === null || tokens[around.to]?.kind !== 'word' || tokens[around.to]!.word === 'with') return false
  const [, last] = sentenceAt(tokens, k)
  for (let j = around.to; j < last && j < around.to + REACH && tokens[j]!.kind !== 'mark'; j++) {
    if (at('cloth', tokens, j) !== null) return false
    if (/^(?:and|then)$/.test(tokens[j]!.word)) break
  }
  return true
}

const SIZE_MARK = /^[×x*/"”″'′()–-]$/
const SIZE_UNIT = /^(?:cm|mm|inch|inches|in|ins|by|x|lb|lbs|pound|kg|g|litre|liter|pint|quart)$/

/** A figure of a vessel's size, or the mark or the unit beside one. */
const isOfSize = (tokens: readonly Token[], j: number): boolean =>
  tokens[j]!.kind === 'number' ||
  ((SIZE_MARK.test(tokens[j]!.word) || SIZE_UNIT.test(tokens[j]!.word)) &&
    [tokens[j - 1], tokens[j + 1], tokens[j - 2]].some((near) => near?.kind === 'number' && near.block === tokens[j]!.block))

/** How far behind a time its rising may be named: "45 minutes for the second rise". */
const NAMED_BEHIND = 5

/** "Second rise in the tin 45 minutes", "45 minutes for the final proof": a rising that its own words call the last. */
function isLastRising(tokens: readonly Token[], k: number, to: number): boolean {
  const [from, end] = sentenceAt(tokens, k)
  for (let j = k - 1; j >= from; j--) {
    if (at('proves', tokens, j) !== null) return true
    if (at('rises', tokens, j) !== null && /^(?:first|bulk|erste)$/.test(tokens[j - 1]?.word ?? '')) break
  }
  if (!/^(?:for|as|fur|als)$/.test(tokens[to]?.word ?? '')) return false
  for (let j = to; j < Math.min(end, to + NAMED_BEHIND); j++) if (at('proves', tokens, j) !== null) return true
  return false
}

const ACCUSATIVE = /^(?:die|das|den|ein|eine|einen)$/

/** "Auf dem Blech", "in der Form": where it stands, and nothing that is put there. */
const isDative = (tokens: readonly Token[], k: number): boolean =>
  /^(?:in|auf)$/.test(tokens[k]!.word) && /^(?:dem|der|einem|einer)$/.test(tokens[k + 1]?.word ?? '')

/** Whether what stands before "in the tins" rises there, and nothing behind its rising puts it there. */
function risesThere(tokens: readonly Token[], k: number): boolean {
  // "1 Stunde gehen lassen und in die Form drücken"
  if (!/^(?:in|on)$/.test(tokens[k]!.word) || ACCUSATIVE.test(tokens[k + 1]?.word ?? '')) return false
  for (let j = k - 1; j >= sentenceAt(tokens, k)[0]; j--) {
    if (at('puts', tokens, j) !== null) return false
    if (at('rises', tokens, j) !== null) return true
  }
  return false
}

/** Whether flour, milk or their like goes into the vessel, by the words of the sentence before. */
const takesMixed = (tokens: readonly Token[], k: number): boolean =>
  saidBefore(tokens, sentenceAt(tokens, k)[0], k, (j) => at('mixed', tokens, j) !== null)

/** How many tokens a line may have that only names a part: "Biga (the night before)". */
const LINE = 8
/** Words before the name of a part: "for the biga". */
const OF_PART = /^(?:for|fur|the|den|die|das|der|a|your|1|2)$/

/** What the words at `k` head, where they are a label: "For the biga:", "Vorteig (am Abend vorher)", "Dough | 500 g"; null where they are none. */
function labelAt({tokens, blocks}: Section, k: number, lengths: readonly number[]): 'sponge' | 'main' | 'other' | null {
  const {block} = tokens[k]!
  const opens = tokens[k - 1]?.block !== block
  if (!opens && (tokens[k - 1]!.kind !== 'mark' || !endsSentence(tokens, k - 1))) return null
  const line = lengths[block]! <= LINE
  const heads = line && (blocks[block]!.kind === 'heading' || tokens[k + lengths[block]! - 1]?.word === ':')
  let from = k
  while (from < k + 3 && tokens[from]?.block === block && OF_PART.test(tokens[from]!.word)) from++
  if (tokens[from]?.block !== block) return null
  const sponge = at('sponge', tokens, from)
  const named = at('main', tokens, from) ?? sponge
  if (named === null) return opens && heads ? 'other' : null
  const next = tokens[named.to]
  const closed = next === undefined || next.block !== block ? line : /^[:(—=|]$/.test(next.word)
  const of = from > k && /^(?:for|fur)$/.test(tokens[k]!.word)
  if (!closed && !of) return null
  return sponge === null ? 'main' : 'sponge'
}

/** Which of the times are the wait of a sponge that has a part of the receipt to itself: the first under its label, and those of its sentence. */
function underSpongeLabel(section: Section, times: readonly TimePhrase[], starts: readonly number[]): ReadonlySet<number> {
  const {tokens} = section
  const found = new Set<number>()
  const lengths: number[] = []
  for (const {block} of tokens) lengths[block] = (lengths[block] ?? 0) + 1
  let under = false
  let last = -1
  let n = 0
  for (let k = 0; k < tokens.length && n < times.length; k++) {
    const label = labelAt(section, k, lengths)
    if (label !== null) {
      under = label === 'sponge'
      last = -1
    }
    if (starts[n] !== k) continue
    const {of, minutes, note} = times[n]!
    const waits = (of === 'rise' || of === 'stand') && !note && minutes.low >= SPONGE && !soaks(tokens, k)
    if (waits && under && (last < 0 || sentenceAt(tokens, k)[0] <= last)) {
      found.add(n)
      last = k
    }
    while (n < times.length && starts[n]! <= k) n++
  }
  return found
}

/** Whether what waits is a sponge just set: "make a poolish; leave it 12 hours". Behind the dough or its kneading it is the dough that waits. */
function isOfSponge(tokens: readonly Token[], k: number): boolean {
  const {block} = tokens[k]!
  for (let j = k - 1; j >= 0 && j >= k - NEAR && tokens[j]!.block === block; j--) {
    if (at('main', tokens, j) !== null || at('kneads', tokens, j) !== null) return false
    if (at('sponge', tokens, j) === null) continue
    // "Make a sponge", "begin with the poolish"; but "make the dough with the sponge", "make up the flour with the sponge" are of the dough.
    for (let i = j - 1; i >= 0 && i >= j - REACH && tokens[i]!.block === block && !endsSentence(tokens, i); i--) {
      if (at('main', tokens, i) !== null) return false
      const found = at('sets', tokens, i)
      if (found !== null && !hasWith(tokens, found.to + 1, j)) return true
    }
    // "Stir the poolish and leave it", "den Vorteig verrühren", but not "mix the flour with the poolish", "mix the sponge with the rest".
    if (waits(tokens, j, k)) return true
    for (let i = j + 1; i < k && !endsSentence(tokens, i); i++) if (at('rest', tokens, i) !== null) return false
    const verb = /^(?:the|a|your|den)$/.test(tokens[j - 1]?.word ?? '') ? j - 2 : j - 1
    if (tokens[verb]?.block === block && at('stirs', tokens, verb) !== null) return true
    if (WITH.test(tokens[verb]?.word ?? '') || tokens[j - 1]?.word === 'dem') return false
    for (let i = j + 1; i < k; i++) if (at('stirs', tokens, i) !== null) return true
    return false
  }
  return false
}

const WITH = /^(?:with|mit|into|to|zu|zum)$/
const hasWith = (tokens: readonly Token[], from: number, to: number): boolean =>
  tokens.slice(from, to).some(({word}) => WITH.test(word))

/** How near behind a wait its leaven is added, tokens. */
const ADDED = 30
/** A sponge that is added is what waited. */
const WAITED = /^(?:sponge|spunge|vorteig)$/

/**
 * "Mix flour and water, rest 40 minutes. Add the levain": flour that is wetted before its leaven goes in, and no sponge. The sentence of the
 * wait names flour and no leaven, and what follows adds it.
 */
function isAutolyse(tokens: readonly Token[], k: number): boolean {
  const [from, to] = sentenceAt(tokens, k)
  let floury = false
  for (let j = from; j < to; j++) {
    if (at('autolyse', tokens, j) !== null) return true
    if (at('leaven', tokens, j) !== null || at('sponge', tokens, j) !== null) return false
    floury ||= /^(?:flour|meal|mehl)$/.test(tokens[j]!.word)
  }
  if (!floury) return false
  for (let j = to; j < to + ADDED && tokens[j]?.block === tokens[k]!.block; j++) {
    if (at('leaven', tokens, j) === null || WAITED.test(tokens[j]!.word)) continue
    const [first, last] = sentenceAt(tokens, j)
    for (let i = Math.max(first, to); i < last; i++) if (at('adds', tokens, i) !== null) return true
  }
  return false
}

/** "Let the sour stand 14 hours", "den Vorteig 12 Stunden reifen lassen": whether it is the sponge at `j` that waits, in one sentence with the time. */
function waits(tokens: readonly Token[], j: number, k: number): boolean {
  const [from, to] = sentenceAt(tokens, k)
  if (j < from) return false
  const before = /^(?:the|your|this|den|die|das)$/.test(tokens[j - 1]?.word ?? '') ? j - 2 : j - 1
  if (before >= from && at('lets', tokens, before) !== null) return true
  if (!/^(?:den|der|die)$/.test(tokens[j - 1]?.word ?? '') || j - 1 !== from) return false
  for (let i = k; i < to && i < tokens.length; i++) if (at('lets', tokens, i) !== null) return true
  return false
}

/** Whether a wait is another way, "1 hour, or overnight in the fridge", "or up to an hour". */
function isOther(tokens: readonly Token[], k: number): boolean {
  let j = k - 1
  while (j > k - 4 && /^(?:\(|for|up|to|about|bis|zu|etwa|uber)$/.test(tokens[j]?.word ?? '')) j--
  return /^(?:or|oder)$/.test(tokens[j]?.word ?? '')
}

/** Whether a wait is one of soaking or chilling, and of no dough, by the words of its sentence before it. */
function soaks(tokens: readonly Token[], k: number): boolean {
  const said = (holds: (j: number) => boolean): boolean => saidBefore(tokens, sentenceAt(tokens, k)[0], k, holds)
  // "In a cool larder" is where something stands.
  const cools = (j: number): boolean =>
    at('soaks', tokens, j) !== null && at('cellar', tokens, j) === null && !isShapedChilled(tokens, j)
  return said(cools) && !said((j) => DOUGHS.has(tokens[j]!.word))
}

/** "Shape and chill overnight", "Shape. Chill for 8 hours": what is chilled and not named was just shaped. */
function isShapedChilled(tokens: readonly Token[], k: number): boolean {
  const next = tokens[k + 1]
  if (at('chills', tokens, k) === null || next === undefined) return false
  if (next.kind === 'word' && !/^(?:it|them|for|overnight|in|at|until|till|up|all|covered|a|an)$/.test(next.word)) return false
  const [first] = sentenceAt(tokens, k)
  const from = first === k ? k - NEAR : first
  for (let j = k - 1; j >= Math.max(0, from); j--) {
    if (tokens[j]!.kind === 'word' && isShaping(tokens, j)) return true
    // What stands between in another sentence may be chilled as well.
    if (first === k && j < k - 1 && isStop(tokens[j]!)) return false
  }
  return false
}

/** Whether words of a use stand just before a wait, in its block. */
const near = (use: RisingUse, tokens: readonly Token[], k: number): boolean =>
  saidBefore(tokens, k - NEAR, k, (j) => at(use, tokens, j) !== null)

/** Whether one of the tokens [from, k) in the block of `k` holds. */
function saidBefore(tokens: readonly Token[], from: number, k: number, holds: (j: number) => boolean): boolean {
  for (let j = k - 1; j >= Math.max(0, from) && tokens[j]!.block === tokens[k]!.block; j--) if (holds(j)) return true
  return false
}
