import {cardinals, fractions} from '../lexicon/grammar-words.js'
import {hedgeAmounts} from '../lexicon/hedge-amounts.js'
import {itemAt} from '../lexicon/index.js'
import {tasks} from '../lexicon/oven-words.js'
import type {Section, Token} from './section.js'
import {overAndAbove, perWeight} from './time-by-weight.js'
import type {TimePhrase} from './types.js'

/**
 * Every stretch of time in a receipt, with what it is for: "three quarters of an hour", "from 20 minutes to 1/2 hour", "an hour and a
 * half", "all night". A time given twice is read twice.
 */

/** Minutes of a unit of time. */
const UNITS: Readonly<Record<string, number>> = {
  hour: 60,
  hours: 60,
  "hour's": 60,
  "hours'": 60,
  houre: 60,
  houres: 60,
  hower: 60,
  howers: 60,
  howre: 60,
  howres: 60,
  hr: 60,
  hrs: 60,
  h: 60,
  minute: 1,
  minutes: 1,
  "minute's": 1,
  minits: 1,
  minits_: 1,
  minnits: 1,
  minets: 1,
  mins: 1,
  min: 1,
  '′': 1,
  "'": 1,
  day: 1440,
  days: 1440,
  dayes: 1440,
  daies: 1440,
  "day's": 1440,
  night: 720,
  nights: 720,
  minuten: 1,
  stunde: 60,
  stunden: 60,
  sekunden: 1 / 60,
  sek: 1 / 60,
  std: 60,
  seconds: 1 / 60,
  secs: 1 / 60,
  sec: 1 / 60,
  s: 1 / 60,
  week: 10080,
  weeks: 10080,
  fortnight: 20160,
}
/** Only right behind a figure: "2 h", "20m". */
const ABBREVIATED = new Set(['h', 'hr', 'hrs', 'min', 'mins', 'sec', 'secs', 's', 'std'])
const FILLERS = new Set([
  'good',
  'full',
  'long',
  'whole',
  'entire',
  'clear',
  'short',
  'scant',
  'bare',
  'brisk',
  'more',
  'further',
  'additional',
  'other',
  'large',
])
const HEDGES = new Set([
  'about',
  'nearly',
  'near',
  'almost',
  'quite',
  'full',
  'fully',
  'least',
  'most',
  'exactly',
  'scarcely',
  'barely',
  'just',
  'approximately',
  'approx',
  'around',
  'for',
  'another',
  'over',
  'perhaps',
  'say',
  'only',
])
const PRIMES = new Set(['′', "'"])
const JOINERS = new Set(['to', 'bis', 'or', '-', '—', 'till', 'until'])

/** How long words without a number last, minutes. From memory: a night of 8 to 12 hours. */
const SPANS: ReadonlyArray<readonly [string, number, number]> = [
  ['all night', 480, 720],
  ['all the night', 480, 720],
  ['all night long', 480, 720],
  ['overnight', 480, 720],
  ['over night', 480, 720],
  ['over the night', 480, 720],
  ['through the night', 480, 720],
  ['during the night', 480, 720],
  ['a whole night', 480, 720],
  ['the whole night', 480, 720],
  ['one night', 480, 720],
  ['a night', 480, 720],
  ['uber nacht', 480, 720],
  ['till morning', 480, 720],
  ['until morning', 480, 720],
  ['till the morning', 480, 720],
  ['until the morning', 480, 720],
  ['till next morning', 480, 720],
  ['till the next morning', 480, 720],
  ['until next morning', 480, 720],
  ['until the next morning', 480, 720],
  ['till the following morning', 480, 720],
  ['until the following morning', 480, 720],
  ['from night till morning', 480, 720],
  ['from night to morning', 480, 720],
  ['till next day', 720, 1440],
  ['till the next day', 720, 1440],
  ['until next day', 720, 1440],
  ['until the next day', 720, 1440],
  ['till the following day', 720, 1440],
  ['until the following day', 720, 1440],
  ['till to morrow', 720, 1440],
  ['all day', 480, 720],
  ['all the day', 480, 720],
  ['a whole day', 480, 1440],
  ['all day long', 480, 720],
  ['half a day', 360, 720],
  ['half the day', 360, 720],
  ['a day and a night', 1440, 1440],
  ['a night and a day', 1440, 1440],
  ['day and night', 1440, 1440],
]
interface SpanNode {
  readonly next: Map<string, SpanNode>
  minutes: readonly [number, number] | null
}
const SPAN_TREE: SpanNode = {next: new Map(), minutes: null}
for (const [phrase, low, high] of SPANS) {
  let node = SPAN_TREE
  for (const word of phrase.split(' ')) {
    let child = node.next.get(word)
    if (child === undefined) {
      child = {next: new Map(), minutes: null}
      node.next.set(word, child)
    }
    node = child
  }
  node.minutes = [low, high]
}

const QUARTERS: ReadonlySet<string> = new Set(['quarters', 'quarter', 'qrs', 'qr'])

interface Number_ {
  readonly low: number
  readonly high: number
  readonly end: number
  /** Below one: "half", "3/4". */
  readonly fraction: boolean
  /** It is only the article. */
  readonly article: boolean
  /** It stands in figures. */
  readonly figure: boolean
}

interface Term {
  /** Minutes where `unit` is not null, else the bare number. */
  readonly low: number
  readonly high: number
  readonly unit: number | null
  readonly end: number
  readonly article: boolean
  readonly fraction: boolean
  readonly figure: boolean
}

const PLAIN: Readonly<Record<string, number>> = cardinals
const PARTS: Readonly<Record<string, readonly [number, number]>> = fractions

function cardinalAt(tokens: readonly Token[], i: number): {value: number; end: number} | null {
  const t = tokens[i]
  if (t === undefined || t.kind !== 'word' || !Object.hasOwn(PLAIN, t.word)) return null
  const value = PLAIN[t.word]!
  const next = tokens[i + 1]
  if (next !== undefined && next.kind === 'word' && next.block === t.block) {
    const and = tokens[i + 2]
    // "five and twenty", "twenty five"
    if (
      value < 10 &&
      next.word === 'and' &&
      and !== undefined &&
      Object.hasOwn(PLAIN, and.word) &&
      PLAIN[and.word]! % 10 === 0 &&
      PLAIN[and.word]! >= 20 &&
      PLAIN[and.word]! < 100
    )
      return {value: value + PLAIN[and.word]!, end: i + 3}
    if (value >= 20 && value % 10 === 0 && value < 100 && Object.hasOwn(PLAIN, next.word) && PLAIN[next.word]! < 10)
      return {value: value + PLAIN[next.word]!, end: i + 2}
  }
  return {value, end: i + 1}
}

/** "half", "a quarter", "three quarters", "one half", "3/4": below one. */
function fractionAt(tokens: readonly Token[], i: number): {value: number; end: number} | null {
  let t = tokens[i]
  if (t === undefined) return null
  if (t.kind === 'number') {
    if (t.den === 1 && t.num < 4 && QUARTERS.has(tokens[i + 1]?.word ?? ''))
      return {value: t.num / 4, end: tokens[i + 2]?.word === '.' ? i + 3 : i + 2}
    return t.den > 1 && t.num < t.den ? {value: t.num / t.den, end: i + 1} : null
  }
  if (t.kind !== 'word') return null
  let top = 1
  let at = i
  if (t.word === 'a' || t.word === 'an') at++
  else if (Object.hasOwn(PLAIN, t.word) && PLAIN[t.word]! < 10) {
    top = PLAIN[t.word]!
    at++
  }
  if (at === i && t.word !== 'half' && t.word !== 'quarter' && t.word !== 'halfe') return null
  t = tokens[at]
  if (t?.kind === 'word' && FILLERS.has(t.word)) t = tokens[++at]
  if (t === undefined || t.kind !== 'word' || !Object.hasOwn(PARTS, t.word)) return null
  const [n, d] = PARTS[t.word]!
  return (top * n) / d < 1 ? {value: (top * n) / d, end: at + 1} : null
}

function numberAt(tokens: readonly Token[], i: number): Number_ | null {
  const t = tokens[i]
  if (t === undefined) return null
  const whole = (value: number, end: number, figure: boolean, article: boolean): Number_ => {
    // "one and a half", "two and three quarters"
    if (tokens[end]?.word === 'and' && !article) {
      const part = fractionAt(tokens, end + 1)
      if (part !== null && tokens[end + 1]?.kind === 'word') {
        const after = tokens[part.end]
        // "one and a half hours", "one and a quarter, or two hours"
        if (after !== undefined && (Object.hasOwn(UNITS, after.word) || JOINERS.has(after.word) || after.word === ','))
          return {low: value + part.value, high: value + part.value, end: part.end, fraction: false, article: false, figure}
      }
    }
    return {low: value, high: value, end, fraction: false, article, figure}
  }
  if (t.kind === 'number') {
    if (t.den === 0) return null
    const quarters = fractionAt(tokens, i)
    if (t.den === 1 && quarters !== null)
      return {low: quarters.value, high: quarters.value, end: quarters.end, fraction: true, article: false, figure: true}
    if (t.num < t.den) return {low: t.num / t.den, high: t.num / t.den, end: i + 1, fraction: true, article: false, figure: true}
    return whole(t.num / t.den, i + 1, true, false)
  }
  if (t.kind !== 'word') return null
  const part = fractionAt(tokens, i)
  if (part !== null) return {low: part.value, high: part.value, end: part.end, fraction: true, article: false, figure: false}
  if (t.word === 'a' || t.word === 'an') {
    const next = tokens[i + 1]
    if (next?.word === 'few') return {low: 2, high: 5, end: i + 2, fraction: false, article: false, figure: false}
    if (next?.word === 'couple' && tokens[i + 2]?.word === 'of')
      return {low: 2, high: 2, end: i + 3, fraction: false, article: false, figure: false}
    return {low: 1, high: 1, end: i + 1, fraction: false, article: true, figure: false}
  }
  if (t.word === 'another') return {low: 1, high: 1, end: i + 1, fraction: false, article: true, figure: false}
  if (t.word === 'some') return {low: 2, high: 6, end: i + 1, fraction: false, article: true, figure: false}
  if (t.word === 'several') return {low: 3, high: 6, end: i + 1, fraction: false, article: false, figure: false}
  if (t.word === 'few') return {low: 2, high: 5, end: i + 1, fraction: false, article: false, figure: false}
  const cardinal = cardinalAt(tokens, i)
  return cardinal === null ? null : whole(cardinal.value, cardinal.end, false, false)
}

/** How far back a sentence is looked through, tokens. */
const REACH = 40

/** "40′" and "40'" are minutes; "6′ 2″" and "6′ × 4′" feet, and a stroke may close a quotation or stand before an s. */
function isMinutes(tokens: readonly Token[], i: number, at: number, number: Number_): boolean {
  const {word, gap, block} = tokens[at]!
  const next = tokens[at + 1]?.block === block ? tokens[at + 1]! : undefined
  if (
    !number.figure ||
    gap ||
    /^[x×]$/.test(tokens[i - 1]?.word ?? '') ||
    next?.kind === 'number' ||
    /^[x×]$/.test(next?.word ?? '')
  )
    return false
  if (word === '′') return true
  if (number.fraction || number.low < 3 || number.high > 240 || (next?.kind === 'word' && !next.gap)) return false
  for (let k = i - 1; k >= 0 && k > i - REACH && tokens[k]!.block === block; k--)
    if (tokens[k]!.word === word && (tokens[k]!.gap || k === 0) && tokens[k + 1]?.gap === false) return false
  return true
}

/**
 * "Bake 90 s" and "for 90 s" are of time: something is done so long. "15s. 6d." and "a turbot of 12 s." are shillings (from memory), "the
 * 90s" years.
 */
function isSeconds(tokens: readonly Token[], i: number, at: number, number: Number_): boolean {
  const {block, capital} = tokens[at]!
  const word = (k: number): string => (tokens[k]?.block === block ? tokens[k]!.word : '')
  const behind = word(at + 1) === '.' ? tokens[at + 2] : tokens[at + 1]
  const paid = behind?.block === block && (behind.kind === 'number' || behind.word === 'd')
  if (capital || paid || number.fraction || number.high > 600 || /^(?:the|their|his|her|my|in|£|\/)$/.test(word(i - 1)))
    return false
  for (let k = i - 5; k < i; k++) if (/^(?:costs?|price|shillings?)$/.test(word(k))) return false
  if (/^(?:for|about|another|further|nur|etwa)$/.test(word(i - 1))) return true
  if (/^(?:at|bei)$/.test(word(at + 1)) && tokens[at + 2]?.kind === 'number') return true
  for (let k = i - 6; k < at + 4; k++) if (TASKS.has(word(k))) return true
  return false
}

/** Whether a word is the "ish" of "15-ish minutes", "15ish", "an hour-ish". */
const isIsh = (token: Token | undefined): boolean => token?.word === 'ish'

/** A number with its unit and what is added to it; or the bare number, whose unit may follow later. */
function termAt(tokens: readonly Token[], i: number): Term | null {
  const number = numberAt(tokens, i)
  if (number === null) return null
  const block = tokens[i]!.block
  const behind = isIsh(tokens[number.end]) && tokens[number.end]!.block === block ? number.end + 1 : number.end
  const bare: Term = {
    low: number.low,
    high: number.high,
    unit: null,
    end: behind,
    article: number.article,
    fraction: number.fraction,
    figure: number.figure,
  }
  let j = behind
  const here = (k: number): Token | undefined => (tokens[k]?.block === block ? tokens[k] : undefined)
  if (here(j)?.kind === 'word' && FILLERS.has(tokens[j]!.word)) j++
  if (number.fraction) {
    if (here(j)?.word === 'of') j++
    if (here(j)?.word === 'a' || here(j)?.word === 'an' || here(j)?.word === 'the' || here(j)?.word === 'one') j++
    if (here(j)?.kind === 'word' && FILLERS.has(tokens[j]!.word)) j++
  }
  const word = here(j)
  if (word === undefined || !Object.hasOwn(UNITS, word.word)) return bare
  if (PRIMES.has(word.word) && !isMinutes(tokens, i, j, number)) return bare
  // "12 std muffins" are of the usual size, "2 Std." hours.
  if (word.word === 'std' && (here(j + 1)?.word !== '.' || tokens[j + 1]!.gap)) return bare
  if (word.word === 's' && !isSeconds(tokens, i, j, number)) return bare
  if (word.word === 'night' && number.low > 1) return bare
  if (ABBREVIATED.has(word.word) && !(number.figure || word.word.length > 1)) return bare
  const unit = UNITS[word.word]!
  // "hold it a few seconds" is no stretch of baking.
  if (unit < 1 && number.low < 10) return bare
  // "a minute quantity", "a day old"
  if (
    number.article &&
    (word.word === 'minute' || word.word === 'min') &&
    here(j + 1)?.kind === 'word' &&
    /^(?:quantity|portion|pieces?|bits?|dice)$/.test(tokens[j + 1]!.word)
  )
    return bare
  let low = number.low * unit
  let high = number.high * unit
  let end = j + 1
  if (ABBREVIATED.has(word.word) && here(end)?.word === '.' && !tokens[end]!.gap) end++
  if (isIsh(here(end))) end++
  // "an hour and a half", "two hours and three quarters", "1 hour 20 minutes", "an hour and ten minutes"
  let k = end
  const and = here(k)?.word === 'and' || here(k)?.word === '&'
  if (and) k++
  else if (here(k)?.word === ',') k++
  const more = numberAt(tokens, k)
  if (more !== null && here(k) !== undefined && unit <= 1440) {
    let l = more.end
    const joined = here(l)
    if (more.fraction && and) {
      // "an hour and half an hour" is no form in use; "and a half of sugar" is not of time.
      if (here(l)?.word === 'of' && UNITS[here(l + 1)?.word ?? ''] === undefined && !/^(?:an|a)$/.test(here(l + 1)?.word ?? '')) {
        // not of time
      } else if (joined !== undefined && Object.hasOwn(UNITS, joined.word) && UNITS[joined.word]! < unit) {
        low += more.low * UNITS[joined.word]!
        high += more.high * UNITS[joined.word]!
        end = l + 1
      } else {
        low += more.low * unit
        high += more.high * unit
        end = l
        if (
          here(end)?.word === 'of' &&
          /^(?:an|a)$/.test(here(end + 1)?.word ?? '') &&
          here(end + 2) !== undefined &&
          UNITS[tokens[end + 2]!.word] === unit
        )
          end += 3
      }
    } else if (
      !more.article &&
      joined !== undefined &&
      Object.hasOwn(UNITS, joined.word) &&
      UNITS[joined.word]! < unit &&
      (and || k === end || unit === 60)
    ) {
      low += more.low * UNITS[joined.word]!
      high += more.high * UNITS[joined.word]!
      l++
      end = l
      if (ABBREVIATED.has(joined.word) && here(end)?.word === '.' && !tokens[end]!.gap) end++
    } else if (/^(?:h|hr|hrs)$/.test(word.word) && k === j + 1 && isMinutesBare(tokens[k]!, joined)) {
      low += more.low
      high += more.high
      end = l
    }
  }
  return {low, high, unit, end, article: false, fraction: number.fraction, figure: number.figure}
}

/** "1 h 10", "1h05": two figures right behind the hour, and nothing that makes them a measure, a heat or a range. */
const isMinutesBare = (figures: Token, next: Token | undefined): boolean =>
  /^[0-5]\d$/.test(figures.word) &&
  (next === undefined || (next.kind === 'mark' ? /^[.,;:)|!]$/.test(next.word) : FOLLOWS_TIME.has(next.word)))

/** A whole stretch from token `i`: a term, or a range of two. Minutes. */
function durationAt(tokens: readonly Token[], i: number, between: boolean): {low: number; high: number; end: number} | null {
  const first = termAt(tokens, i)
  if (first === null) return null
  const block = tokens[i]!.block
  const here = (k: number): Token | undefined => (tokens[k]?.block === block ? tokens[k] : undefined)
  let low = first.low
  let high = first.high
  let unit = first.unit
  let end = first.end
  const bare: Array<readonly [number, number]> = unit === null ? [[first.low, first.high]] : []
  for (let rounds = 0; rounds < 3; rounds++) {
    let j = end
    let comma = false
    if (here(j)?.word === ',') {
      comma = true
      j++
    }
    // "8 and up to 24 hours"
    if (unit === null && /^(?:and|und)$/.test(here(j)?.word ?? '') && isUpTo(tokens, j + 3)) j++
    const upTo = unit === null && here(j) !== undefined && isUpTo(tokens, j + 2)
    if (upTo) j++
    const joiner = upTo ? 'to' : (here(j)?.word ?? '')
    if (comma && unit === null && !JOINERS.has(joiner)) {
      // "six, seven, or eight minutes"
      const listed = numberAt(tokens, j)
      if (listed === null || listed.article || !/^(?:,|or)$/.test(here(listed.end)?.word ?? '')) break
      bare.push([listed.low, listed.high])
      end = listed.end
      continue
    }
    if (!(JOINERS.has(joiner) || (joiner === 'and' && between))) break
    if (comma && joiner !== 'or') break
    j++
    // "20- to 25-minute"
    if (joiner === '-' && here(j)?.word === 'to') j++
    if (joiner === 'or' || joiner === 'to')
      while (/^(?:from|even|perhaps|about|nearly|at|most|rather|for)$/.test(here(j)?.word ?? '')) j++
    if (here(j) === undefined) break
    const next = termAt(tokens, j)
    if (next === null || next.article) break
    if (next.unit === null) {
      // "an hour or two", "1 hour to 1-1/2": the unit of the first; but not "an hour, or two loaves".
      if (unit === null) {
        if (comma && joiner !== 'or') break
        bare.push([next.low, next.high])
        end = next.end
        continue
      }
      const after = here(next.end)
      const number = next.low * unit
      if (
        comma ||
        (after !== undefined && after.kind === 'word' && !FOLLOWS_TIME.has(after.word)) ||
        number <= high ||
        next.low > 90
      )
        break
      high = number
      end = next.end
      break
    }
    if (unit === null) {
      low = Math.min(...bare.map(([a]) => a * next.unit!), next.low)
      high = Math.max(...bare.map(([, b]) => b * next.unit!), next.high)
      unit = next.unit
      end = next.end
      continue
    }
    if (comma && next.unit === null) break
    low = Math.min(low, next.low)
    high = Math.max(high, next.high)
    unit = next.unit
    end = next.end
  }
  return unit === null ? null : {low, high, end}
}

const FOLLOWS_TIME = new Set([
  'in',
  'will',
  'before',
  'after',
  'at',
  'is',
  'to',
  'for',
  'and',
  'or',
  'if',
  'until',
  'till',
  'according',
  'on',
  'by',
  'it',
  'with',
  'then',
  'they',
  'when',
  'longer',
  'as',
  'according',
  'should',
  'must',
  'may',
  'over',
  'near',
  'previous',
  'previously',
  'accordingly',
  'only',
  'not',
  'but',
])

const set = (list: string): ReadonlySet<string> => new Set(list.split(' '))
const OPENS = set('a an half halfe quarter few several another some')
const SPAN_OPENS: ReadonlySet<string> = new Set(SPAN_TREE.next.keys())
const TASKS = new Map(Object.entries(tasks))

const isStop = (t: Token): boolean =>
  t.kind === 'mark' &&
  (t.word === '.' || t.word === ';' || t.word === '·' || t.word === '•' || t.word === '?' || t.word === '!' || t.word === '|')
/** Words cut short before a figure: "min. 3 hours" is at least so long. */
const CUT_SHORT = set('min max approx ca abt')
/** A stop after an abbreviation or a label ("Time.—") does not end the sentence for our purpose. */
export const endsSentence = (tokens: readonly Token[], k: number): boolean =>
  isStop(tokens[k]!) && tokens[k + 1]?.word !== '—' && !isCutShort(tokens, k)

/**
 * The tokens [from, to) of the sentence that token `at` stands in.
 *
 * @param reach how many tokens it may reach to each side
 */
export function sentenceAt(tokens: readonly Token[], at: number, reach = Number.POSITIVE_INFINITY): readonly [number, number] {
  const {block} = tokens[at]!
  let first = at
  while (first > 0 && at - first < reach && tokens[first - 1]!.block === block && !endsSentence(tokens, first - 1)) first--
  let last = at + 1
  while (last < tokens.length && last - at < reach && tokens[last]!.block === block && !endsSentence(tokens, last)) last++
  return [first, last]
}

/** "Chill min. 3 hours": the stop at `k` is the abbreviation's, and "min." with no figure before it no minutes. */
const isCutShort = (tokens: readonly Token[], k: number): boolean =>
  tokens[k]!.word === '.' &&
  !tokens[k]!.gap &&
  CUT_SHORT.has(tokens[k - 1]?.word ?? '') &&
  tokens[k - 2]?.kind !== 'number' &&
  tokens[k + 1]?.kind === 'number'

interface Stretch {
  readonly from: number
  readonly to: number
  readonly low: number
  readonly high: number
  readonly byWeight?: {readonly grams: number; readonly over: {readonly low: number; readonly high: number}}
}

/**
 * Read the stretches of time of one receipt.
 *
 * @param section the receipt's blocks and tokens
 * @returns phrases in the order of the text, minutes; `low` = `high` unless the text gives a range
 */
export function readTimes(section: Section): TimePhrase[] {
  const {tokens, source} = section
  const found: Stretch[] = []
  for (let i = 0; i < tokens.length; i++) {
    const t = tokens[i]!
    if (t.kind === 'mark') continue
    if (t.kind === 'word') {
      if (SPAN_OPENS.has(t.word)) {
        const span = spanAt(tokens, i)
        if (span !== null) {
          found.push({from: i, to: span.end, low: span.low, high: span.high})
          i = span.end - 1
          continue
        }
      }
      if (!OPENS.has(t.word) && !Object.hasOwn(PLAIN, t.word)) continue
    }
    const previous = tokens[i - 1]?.word ?? ''
    const duration =
      durationAt(tokens, i, previous === 'between' || previous === 'from') ?? minutesUnsaid(tokens, i, found.at(-1)?.to ?? -1)
    if (duration === null) continue
    let from = i
    let to = duration.end
    if (!SKIPS.has(previous) || tokens[i - 1]!.block !== t.block) {
      from = widenLeft(tokens, i)
      to = widenRight(tokens, to)
      const last = found.at(-1)
      const over = last?.byWeight === undefined ? -1 : overAndAbove(tokens, last.to, from, to)
      const per = over > 0 ? null : perWeight(tokens, to)
      if (last?.byWeight !== undefined && over > 0)
        found[found.length - 1] = {
          ...last,
          to: over,
          byWeight: {...last.byWeight, over: {low: duration.low, high: duration.high}},
        }
      else if (per === null) found.push({from, to, low: duration.low, high: duration.high})
      else {
        const byWeight = {grams: per.grams, over: {low: 0, high: 0}}
        found.push({from, to: per.end, low: duration.low, high: duration.high, byWeight})
        i = per.end - 1
        continue
      }
    }
    i = duration.end - 1
  }
  const said = restated(tokens, found).map((one) => (one.byWeight === undefined ? upTo(tokens, one) : one))
  let bakeSaid: boolean | undefined
  const besideBake = (): boolean => {
    bakeSaid ??= said.some(({from, to}) => taskOf(tokens, from, to) === 'bake')
    return bakeSaid
  }
  let before: {of: TimePhrase['of']; to: number; minutes: number} | null = null
  let baked = -1
  let last: TimePhrase['of'] | null = null
  let cooks: TimePhrase['of'] | null | undefined
  const times = said.map(({from, to, low, high, byWeight}): TimePhrase => {
    const inTitle = tokens[from]!.block === 0 && section.blocks[0]!.kind === 'heading'
    let of: TimePhrase['of'] | null = inTitle ? 'other' : taskOf(tokens, from, to)
    if (of === null) {
      if (cooks === undefined) cooks = mainTask(tokens)
      of = unsaidTask(section, from, to, low, besideBake) ?? cooks ?? last ?? 'other'
    } else if (of === 'bake' || of === 'boil') last = of
    const start = tokens[from]!.start
    const end = tokens[to - 1]!.end
    if (byWeight !== undefined) {
      const minutes = {low: tidy(low), high: tidy(high)}
      const task = of === 'boil' ? 'boil' : 'bake'
      return {text: source.slice(start, end), start, end, minutes, of: 'other', byWeight: {...byWeight, minutes, of: task}}
    }
    if ((of === 'rise' || of === 'stand') && isSummary(tokens, from)) of = 'other'
    const again = MORE.has(tokens[from]!.word) && (sentenceHas(tokens, from, RETURNS) || isCookedOn(tokens, from))
    if (of === 'stand' && baked > 0 && again) of = 'bake'
    if (of === 'bake' && baked > 0 && isLast(tokens, from)) of = 'other'
    const resumed = before?.of === 'bake' || (baked > 0 && MORE.has(tokens[from]!.word))
    const part = before !== null && isPart(tokens, before, {of, from, to, minutes: high})
    if (part) of = 'other'
    const then = of === 'bake' && resumed && goesOn(tokens, baked, from, to)
    const total = of === 'bake' && isTotal(tokens, from, to)
    if (!part) before = {of, to, minutes: high}
    if (of === 'bake') baked = to
    return {
      text: source.slice(start, end),
      start,
      end,
      minutes: {low: tidy(low), high: tidy(high)},
      of,
      ...(then && !total ? {then} : {}),
      ...(total ? {total} : {}),
    }
  })
  // Where another time is the baking's, these are not.
  const same = (n: number): boolean =>
    times.some(({of, minutes}, k) => k !== n && of === 'bake' && minutes.high === times[n]!.minutes.high)
  const aside = said.map(
    ({from}, n) => times[n]!.of === 'bake' && ((isCookTime(tokens, from) && !same(n)) || isSince(tokens, from)),
  )
  const bakes = times.some(({of}, n) => of === 'bake' && !aside[n])
  return times.map((time, n): TimePhrase => (bakes && aside[n] ? {...time, of: 'other'} : time))
}

/** "Cook: 3 h", "Cooking time: 3 h": all of the cooking, with what is boiled before. */
function isCookTime(tokens: readonly Token[], from: number): boolean {
  const {block} = tokens[from]!
  const word = (k: number): string => (tokens[k]?.block === block ? tokens[k]!.word : '')
  const at = word(from - 1) === ':' || word(from - 1) === '|' ? from - 2 : from - 1
  return (
    /^(?:cook|cooking|kochzeit|garzeit)$/.test(word(at) === 'time' ? word(at - 1) : word(at)) &&
    (word(from - 1) !== 'cook' || isSummary(tokens, from))
  )
}

/** "When it has been in the oven half an hour": when something is done to it. */
function isSince(tokens: readonly Token[], from: number): boolean {
  const {block} = tokens[from]!
  for (let k = from - 1; k > from - 9 && tokens[k]?.block === block && tokens[k]!.kind === 'word'; k--)
    if (
      /^(?:when|after)$/.test(tokens[k]!.word) &&
      /^(?:it|they)$/.test(tokens[k + 1]!.word) &&
      /^ha(?:s|ve)$/.test(tokens[k + 2]!.word)
    )
      return true
  return false
}

/** "20 minutes at 220 °C, then 30 at 180": figures whose unit is that of the time before, which ended at `before`. */
function minutesUnsaid(tokens: readonly Token[], i: number, before: number): {low: number; high: number; end: number} | null {
  const {kind, block, den, num} = tokens[i]!
  if (kind !== 'number' || den !== 1 || num < 2 || num > 90 || before < 1 || i - before > 12) return null
  if (tokens[before - 1]!.block !== block || !/^(?:min|mins|minutes?|\.)$/.test(tokens[before - 1]!.word)) return null
  let then = false
  for (let k = before; k < i; k++) then ||= tokens[k]!.word === 'then' || tokens[k]!.word === 'another'
  if (!then) return null
  const second = tokens[i + 1]?.word === '-' || tokens[i + 1]?.word === 'to' ? tokens[i + 2] : undefined
  const range = second?.kind === 'number' && second.den === 1 && second.num > num && second.num <= 90
  const end = range ? i + 3 : i + 1
  const next = tokens[end + (/^(?:more|longer|further)$/.test(tokens[end]?.word ?? '') ? 1 : 0)]
  if (next === undefined || next.block !== block || !/^(?:at|in)$/.test(next.word)) return null
  return {low: num, high: range ? second.num : num, end}
}

/** "Up to 24 hours": the most that it may be. Nobody says how little: the row of `hedge-amounts` does for what is baked. */
function upTo(tokens: readonly Token[], one: Stretch): Stretch {
  if (one.low !== one.high || !isUpTo(tokens, one.from)) return one
  const waits = WAITS.has(taskOf(tokens, one.from, one.to) ?? 'other')
  return {...one, from: one.from - 2, low: one.high * (waits ? LEAST_WAIT : AT_MOST)}
}

/** Of a wait that may last so long, the least share that is likely: dough in the cold, fruit that soaks. From memory. */
const LEAST_WAIT = 0.5
const AT_MOST = hedgeAmounts.find(({phrases}) => phrases.includes('up to'))!.factor.low

/** "overnight in the fridge, 12 to 16 hours" is one stretch, and the figures are the more exact. */
function restated(tokens: readonly Token[], found: readonly Stretch[]): Stretch[] {
  const said: Stretch[] = []
  for (const one of found) {
    const night = said.at(-1)
    const last =
      night !== undefined && night.byWeight === undefined && one.byWeight === undefined ? upToAfter(tokens, night, one) : null
    // "8 hours or overnight" is one stretch too.
    if (last !== null) said[said.length - 1] = last
    else if (night !== undefined && isOrNight(tokens, night, one))
      said[said.length - 1] = {
        from: night.from,
        to: one.to,
        low: Math.min(night.low, one.low),
        high: Math.max(night.high, one.high),
      }
    else if (night?.low === 480 && night.high === 720 && one.low >= 360 && saysAgain(tokens, night.to, one.from))
      said[said.length - 1] = {...one, from: night.from}
    else said.push(one)
  }
  return said
}

/** "8 hours, and up to 24", "8 Stunden bis zu 2 Tage": from the first to the second; null where they are no such two. */
function upToAfter(tokens: readonly Token[], first: Stretch, second: Stretch): Stretch | null {
  const near = second.from - first.to
  if (near < 2 || near > 9 || tokens[first.to]!.block !== tokens[second.from]!.block || !isUpTo(tokens, second.from)) return null
  for (let k = first.to; k < second.from - 2; k++)
    if (!/^(?:,|and|und|\(|in|the|a|at|im|refrigerator|fridge|kuhlschrank|cellar|cool|cold|place)$/.test(tokens[k]!.word))
      return null
  return first.low < second.high ? {from: first.from, to: second.to, low: first.low, high: second.high} : null
}

/** Whether "up to" stands before token `at`. */
const isUpTo = (tokens: readonly Token[], at: number): boolean => {
  const [first, second] = [tokens[at - 2], tokens[at - 1]]
  if (first === undefined || first.block !== tokens[at]?.block) return false
  return (first.word === 'up' && second!.word === 'to') || (first.word === 'bis' && second!.word === 'zu')
}

const isOrNight = (tokens: readonly Token[], first: Stretch, second: Stretch): boolean =>
  [first, second].some(({low, high}) => low === 480 && high === 720) &&
  first.byWeight === undefined &&
  second.byWeight === undefined &&
  second.from === first.to + 1 &&
  tokens[first.to]!.word === 'or' &&
  tokens[first.to]!.block === tokens[second.from]!.block

/** Only a mark and words for where and how much between two times: they are one. */
function saysAgain(tokens: readonly Token[], from: number, to: number): boolean {
  if (to - from > 6 || to <= from || tokens[from]!.block !== tokens[to]!.block) return false
  let mark = false
  for (let k = from; k < to; k++) {
    const {word} = tokens[k]!
    if (word === ',' || word === '(') mark = true
    else if (!/^(?:in|the|a|for|about|refrigerator|fridge|cellar|cool|cold|place|or)$/.test(word)) return false
  }
  return mark
}

/** Before a time of baking that goes on, whatever else was done between: "boil the glaze 10 minutes, … give it another 10 minutes". */
const MORE = set('another further additional')
/** "Return them to dry for another half hour": into the oven. */
const RETURNS = set('return')
/** "Drop them in and cook for another 20 minutes": on, and not at rest. */
const isCookedOn = (tokens: readonly Token[], from: number): boolean =>
  [1, 2].some((back) => tokens[from - back]?.block === tokens[from]!.block && tokens[from - back]!.word === 'cook')

/** "The last 15 minutes at 220 °C": a sentence about part of what was said before. */
function isLast(tokens: readonly Token[], from: number): boolean {
  const [the, last] = [tokens[from - 2], tokens[from - 1]]
  if (the?.block !== tokens[from]!.block || !/^(?:last|final|letzten)$/.test(last!.word)) return false
  return /^(?:the|die|den)$/.test(the.word) && (tokens[from - 3]?.block !== the.block || endsSentence(tokens, from - 3))
}

/** "Prep 40 min · Cook 20 min · plus 2 hrs proving": the sum of what the steps say one by one. */
function isSummary(tokens: readonly Token[], from: number): boolean {
  const {block} = tokens[from]!
  for (let k = from - 1; k > from - REACH && tokens[k]?.block === block; k--) {
    if (/^(?:prep|preparation)$/.test(tokens[k]!.word)) return true
    if (tokens[k]!.word === '.' && !ABBREVIATED.has(tokens[k - 1]?.word ?? '')) return false
  }
  return false
}
const GOES_ON = set('then another further additional uncover uncovered lid deckel weitere weiteren dann danach schluss')
/** Words between two times that make the second another case, or part of the first. */
const OTHER_CASE = set('if or even unless every each turning')

/** Whether a time of baking goes on where the one before it ended. */
function goesOn(tokens: readonly Token[], before: number, from: number, to: number): boolean {
  if (from - before > 25 || tokens[before - 1]!.block !== tokens[from]!.block) return false
  let on = false
  for (let k = before; k < to; k++) {
    const {word} = tokens[k]!
    if (k < from && OTHER_CASE.has(word)) return false
    on ||= GOES_ON.has(word)
  }
  if (on) return true
  // "ten minutes more", but "ten minutes longer, if very deep"
  if (!/^(?:more|longer|further)$/.test(tokens[to]?.word ?? '')) return false
  return tokens[to + 1]?.word !== 'if' && tokens[to + 2]?.word !== 'if'
}

/** "altogether 75 minutes", "75 minutes in all", "a total of 75 minutes". */
function isTotal(tokens: readonly Token[], from: number, to: number): boolean {
  const word = (k: number): string => (tokens[k]?.block === tokens[from]!.block ? tokens[k]!.word : '')
  const [one, two] = [word(from - 1), word(from - 2)]
  return (
    one === 'altogether' ||
    one === 'total' ||
    (one === 'of' && two === 'total') ||
    (/^(?:all|total)$/.test(one) && two === 'in') ||
    word(to) === 'altogether' ||
    (word(to) === 'in' && /^(?:all|total)$/.test(word(to + 1)))
  )
}

/** Intervals and ages are no stretch of baking. */
const SKIPS = set('every each per past alle jede')

/** Minutes to a thousandth: thirds of an hour are exact, the rest is noise of the division. */
const tidy = (minutes: number): number => Math.round(minutes * 1000) / 1000

function spanAt(tokens: readonly Token[], i: number): {low: number; high: number; end: number} | null {
  let node = SPAN_TREE
  let best: {low: number; high: number; end: number} | null = null
  for (let j = i; j < tokens.length && tokens[j]!.block === tokens[i]!.block; j++) {
    const child = node.next.get(tokens[j]!.word)
    if (child === undefined) break
    node = child
    if (node.minutes !== null) best = {low: node.minutes[0], high: node.minutes[1], end: j + 1}
  }
  return best
}

/** "about", "at least", "rather more than", "from": hedges belong to the phrase, and leave the figure as it is. */
function widenLeft(tokens: readonly Token[], i: number): number {
  let from = i
  const block = tokens[i]!.block
  while (from > 0 && i - from < 4 && tokens[from - 1]!.block === block) {
    const word = tokens[from - 1]!.word
    if (word === 'than' && /^(?:more|less|better|longer)$/.test(tokens[from - 2]?.word ?? '')) {
      from -= 2
      if (/^(?:rather|not|no|little|something|somewhat)$/.test(tokens[from - 1]?.word ?? '')) from--
      continue
    }
    if (word === 'from' || word === 'between' || (HEDGES.has(word) && word !== 'for')) {
      from--
      if ((word === 'least' || word === 'most') && tokens[from - 1]?.word === 'at') from--
      continue
    }
    break
  }
  return from
}

/** "or rather longer", "or more", "at least", "or so". */
function widenRight(tokens: readonly Token[], end: number): number {
  let j = end
  const block = tokens[end - 1]!.block
  const word = (k: number): string => (tokens[k]?.block === block ? tokens[k]!.word : '')
  if (word(j) === ',') j++
  if (word(j) === 'or') {
    let k = j + 1
    while (/^(?:rather|a|little|somewhat|even|perhaps)$/.test(word(k))) k++
    if (/^(?:longer|more|so|thereabouts|less|better|upwards)$/.test(word(k))) return k + 1
  }
  if (word(j) === 'at' && /^(?:least|most)$/.test(word(j + 1))) return j + 2
  return end
}

/** What it is for, by the words around it; null where none says. */
function taskOf(tokens: readonly Token[], from: number, to: number): TimePhrase['of'] | null {
  const block = tokens[from]!.block
  // "prove overnight in the fridge": what is said just before it.
  const close = /^(?:for|about|,)$/.test(tokens[from - 1]?.word ?? '') ? from - 2 : from - 1
  if (tokens[close]?.block === block && PROVES.has(tokens[close]!.word)) return 'rise'
  // "Start the biga 16 hours ahead"
  if (/^(?:ahead|beforehand)$/.test(tokens[to]?.word ?? '') && tokens[to]!.block === block) return 'stand'
  if (isOfTheCook(tokens, from) || isHeatingUp(tokens, from) || isMoment(tokens, from) || isUntil(tokens, from, to))
    return 'other'
  let hot: boolean | undefined
  const inHeat = (): boolean => {
    hot ??= besideHeat(tokens, from, to, WARM) || sentenceHas(tokens, from, OVEN)
    return hot
  }
  if (isFolded(tokens, from) && isTotal(tokens, from, to)) return 'stand'
  // Behind it: "an hour will bake it", "1 hour to bake", "half an hour's baking", "20 minutes in a hot oven".
  const ended = tokens[to - 1]!.word === '.' && tokens[to]?.capital === true
  for (let k = to; k < tokens.length && !ended && k < to + 6 && tokens[k]!.block === block; k++) {
    const t = tokens[k]!
    if (
      endsSentence(tokens, k) ||
      t.word === ',' ||
      t.word === 'and' ||
      t.word === 'then' ||
      t.word === 'und' ||
      t.word === 'dann' ||
      t.word === 'before' ||
      t.word === 'after' ||
      t.word === 'while' ||
      t.word === 'whilst' ||
      t.word === '(' ||
      // "bake it five hours with a moderate fire"
      (t.word === 'fire' && tokens.slice(Math.max(to, k - 3), k).some(({word}) => word === 'with'))
    )
      break
    const task = taskAt(tokens, k, inHeat)
    if (task !== undefined && t.word !== 'light' && t.word !== 'brown') {
      if (/^(?:to|will|for|in|of|its|their|the|a|'s|quick|slow|moderate|hot)$/.test(tokens[k - 1]!.word) || k === to) return task
      // "1 ½ Stunden aufs Doppelte aufgehen lassen": the German verb ends its clause.
      if (GERMAN_ENDS.has(t.word)) return task
      break
    }
  }
  for (let k = from - 1; k >= 0 && k > from - REACH && tokens[k]!.block === block; k--) {
    if (endsSentence(tokens, k)) break
    const task = taskAt(tokens, k, inHeat)
    if (task === undefined || tokens[k]!.word === 'light') continue
    // "taking off the scum as it rises": no dough.
    if (task === 'rise' && rising.has(tokens[k]!.word) && scums(tokens, k)) continue
    return task
  }
  // "Time: an hour before a brisk fire": roasted.
  if (!ended && inTheRoom(tokens, to, block)) return isLabelled(tokens, from) ? 'other' : 'stand'
  const early = tokens[to]?.word === 'before' && tokens[to]!.block === block
  let puts = false
  for (let k = to; k < tokens.length && !ended && k < to + 14 && tokens[k]!.block === block; k++) {
    if (endsSentence(tokens, k)) break
    if (early && CLAUSE.has(tokens[k]!.word) && !puts) break
    puts ||= SETS.has(tokens[k]!.word)
    const task = taskAt(tokens, k, inHeat)
    // "Half an hour before the dough is ready heat the oven" is no baking, "an hour before dinner put it into the oven" is.
    if (early && !puts) continue
    if (task === 'rise' && rising.has(tokens[k]!.word) && scums(tokens, k)) continue
    if (task === 'bake' || task === 'rise' || task === 'boil') return task
  }
  if (early && !isLabelled(tokens, from)) return 'other'
  return besideHeat(tokens, from, to) ? 'bake' : null
}

const GERMAN_ENDS = set(
  'gehen aufgehen ruhen stehen quellen reifen kneten backen ruhren schlagen kochen abkuhlen auskuhlen einweichen rosten trocknen dorren schmoren anbraten grillen garen braten ziehen einkochen einkocheln',
)

/** "folding at 30, 60 and 90 min": when, and not how long. */
function isMoment(tokens: readonly Token[], from: number): boolean {
  const {block} = tokens[from]!
  let last = tokens[from]!
  let k = from - 1
  let several = false
  while (k > 0 && tokens[k]!.block === block && /^(?:,|and|&)$/.test(tokens[k]!.word)) {
    while (/^(?:,|and|&)$/.test(tokens[k]!.word)) k--
    const number = tokens[k]!
    if (number.kind !== 'number' || last.kind !== 'number' || number.num >= last.num) return false
    several = true
    last = number
    k--
  }
  return several && tokens[k]?.block === block && /^(?:at|after)$/.test(tokens[k]!.word)
}

const COOKS_OWN = set('prep preparation total active inactive')

/** "Prep time: 15 min", "Total: 2 h": the cook's time, and none of the oven's. */
function isOfTheCook(tokens: readonly Token[], from: number): boolean {
  const {block} = tokens[from]!
  const before = tokens[from - 1]
  // "Prep 15 min | Cook 50 min"
  if (before?.block === block && /^(?:prep|preparation|vorbereitung)$/.test(before.word)) return true
  if (!/^[:|—-]$/.test(before?.word ?? '')) return false
  const at = tokens[from - 2]?.word === 'time' ? from - 3 : from - 2
  return tokens[at]?.block === block && COOKS_OWN.has(tokens[at]!.word)
}

const HEATS_UP = set('heat preheat warm vorheizen')
/** What follows these is set in, or done meanwhile. */
const SETS_IN = set('bake baked baking cook put place set slide transfer then and while meanwhile dough loaf')

/** "Heat a Dutch oven in a 475-degree oven for 30 minutes": the pot is heated, and nothing baked. */
function isHeatingUp(tokens: readonly Token[], from: number): boolean {
  const {block} = tokens[from]!
  for (let k = from - 1; k >= 0 && k > from - 2 * REACH && tokens[k]!.block === block; k--) {
    const {word} = tokens[k]!
    if (endsSentence(tokens, k) || SETS_IN.has(word) || word === ',' || word === '—') return false
    if (HEATS_UP.has(word)) return k === 0 || tokens[k - 1]!.block !== block || tokens[k - 1]!.kind !== 'word'
  }
  return false
}

/** A fire that roasts what is before it. */
const ROASTING = /^(?:brisk|clear|sharp|quick|strong|great|fierce)$/

/** "… at room temperature", "near the fire", "in a warm place" stands behind it. */
function inTheRoom(tokens: readonly Token[], to: number, block: number): boolean {
  for (let k = to; k < to + 6 && tokens[k]?.block === block && tokens[k]!.kind === 'word'; k++) {
    const {word} = tokens[k]!
    const next = tokens[k + 1]?.word ?? ''
    if (
      /^(?:rt|raumtemperatur|zimmertemperatur)$/.test(word) ||
      (word === 'room' && /^temp/.test(next)) ||
      (word === 'fire' && !ROASTING.test(tokens[k - 1]!.word) && isBesideFire(tokens, k))
    )
      return true
    if (/^(?:warm|cool|cold|draughty|dry)$/.test(word) && /^(?:place|corner|spot|room|cellar|larder|pantry|cupboard)$/.test(next))
      return true
  }
  return false
}

function sentenceHas(tokens: readonly Token[], at: number, words: ReadonlySet<string>): boolean {
  const [first, last] = sentenceAt(tokens, at, REACH)
  for (let k = first; k < last; k++) if (words.has(tokens[k]!.word)) return true
  return false
}

const SETS = set('put set place')
/** After "before": a clause, and no meal or hour ("before it is put in the oven"). */
const CLAUSE = set('it they you is are be being')
/** "within a quarter of an hour of setting it in the oven": how long before. */
const isUntil = (tokens: readonly Token[], from: number, to: number): boolean =>
  tokens[from - 1]?.word === 'within' && tokens[to]?.word === 'of' && /ing$/.test(tokens[to + 1]?.word ?? '')

/** The task of the word at `k`. A pound is beaten only where it is no weight, and steam let into the oven steams nothing. */
function taskAt(tokens: readonly Token[], k: number, inHeat: () => boolean = () => false): TimePhrase['of'] | undefined {
  const {word} = tokens[k]!
  if (ROASTS.has(word) && inHeat()) return 'bake'
  const before = tokens[k - 1]
  if (word === 'pound' && (before?.kind === 'number' || WEIGHS.has(before?.word ?? '') || tokens[k]!.joined)) return undefined
  // "Three hours in a soaking heat", "in a cool oven"
  if ((word === 'soaking' || word === 'cool' || word === 'cooling') && /^(?:heat|oven)$/.test(tokens[k + 1]?.word ?? ''))
    return 'bake'
  // "Brown the beef in batches": in a pan.
  if (word === 'brown' && (before === undefined || before.block !== tokens[k]!.block || isStop(before)) && isVerb(tokens, k))
    return inHeat() ? 'bake' : 'other'
  // "The night before": when.
  if (word === 'before' && /^(?:night|day|evening)$/.test(before?.word ?? '')) return undefined
  if (word === 'steam' && /^(?:with|without|no|some|\/)$/.test(before?.word ?? '')) return undefined
  // "bake till set": how one sees that it is done.
  if (word === 'set' && /^(?:till|until|is|are|just|nearly|firmly|quite|well)$/.test(before?.word ?? '')) return undefined
  // "150 g boiling water" goes in; what is put into boiling water boils.
  if (word === 'boiling' && /^(?:g|grams?|ml|l|cups?|pints?|quarts?|gills?|oz)$/.test(before?.word ?? '')) return undefined
  // "Cool on baking sheets for 2 minutes"
  if (word === 'baking' && BAKED_ON.has(tokens[k + 1]?.word ?? '')) return undefined
  // "Bake straight from the fridge"
  if (
    COLD_PLACE.has(word) &&
    (before?.word === 'from' || (before?.word === 'the' && /^(?:from|of)$/.test(tokens[k - 2]?.word ?? '')))
  )
    return undefined
  if (OVEN.has(word) && isHeated(tokens, k)) return 'other'
  if (OVEN.has(word) && isGettingHot(tokens, k)) return undefined
  if (isBesideFire(tokens, k)) return undefined
  // "until the fruit bubbles": how one sees that it is done.
  if (word === 'bubble' && saysUntil(tokens, k)) return undefined
  if (SALTS.has(word)) return isVerb(tokens, k) ? 'stand' : undefined
  return TASKS.get(word)
}

/** "While the oven heats", "till the oven is hot": something else is done so long. */
function isGettingHot(tokens: readonly Token[], oven: number): boolean {
  const {block} = tokens[oven]!
  let hot = false
  for (let k = oven + 1; k <= oven + 4 && tokens[k]?.block === block && tokens[k]!.kind === 'word'; k++)
    hot ||= GETS_HOT.has(tokens[k]!.word)
  if (!hot) return false
  for (let k = oven - 1; k >= oven - 4 && tokens[k]?.block === block; k--) if (MEANWHILE.has(tokens[k]!.word)) return true
  return false
}

const GETS_HOT = set('heats heating heat warms warming hot aufheizt heizt vorheizt heiß heiss')
const MEANWHILE = set('while whilst as till until during bis wahrend')

/** "By the fire", "before a good fire": where it stands, and nothing that is done to it. */
function isBesideFire(tokens: readonly Token[], k: number): boolean {
  const {word, block} = tokens[k]!
  const at = (i: number): string => (tokens[i]?.block === block ? tokens[i]!.word : '')
  if (word === 'before') return at(k + 1) === 'fire' || at(k + 2) === 'fire' || (at(k + 3) === 'fire' && at(k + 1) === 'a')
  if (word !== 'fire') return false
  for (let i = k - 1; i >= k - 4 && at(i) !== ''; i--) {
    if (/^(?:by|before|near|beside|round|from|behind)$/.test(at(i))) return true
    if (at(i) === 'of' && /^(?:side|front|corner|warmth)$/.test(at(i - 1))) return true
  }
  return false
}

function saysUntil(tokens: readonly Token[], k: number): boolean {
  const {block} = tokens[k]!
  for (let i = k - 1; i >= k - 6 && tokens[i]?.block === block; i--) if (/^(?:till|until)$/.test(tokens[i]!.word)) return true
  return false
}

const SALTS = set('salt sugar')
/** "Salt the onions", "and salt them": a clause begins, and what follows is its object. */
const isVerb = (tokens: readonly Token[], k: number): boolean => {
  const before = tokens[k - 1]
  const opens =
    before === undefined ||
    before.block !== tokens[k]!.block ||
    before.kind === 'mark' ||
    /^(?:and|then|or|to|first)$/.test(before.word)
  return opens && /^(?:the|them|your|it|each|these)$/.test(tokens[k + 1]?.word ?? '')
}

/** By the fire or in the pan, but with the oven's heat beside them baking. */
const ROASTS = set('roast roasted roasting schmoren braten anbraten grillen garen trocknen dorren rosten')
const COLD_PLACE = set('fridge refrigerator freezer refrigerated')
const BAKED_ON = set('sheet sheets tray trays pan pans tin tins dish dishes paper parchment powder soda stone')

const OVEN = set('oven ovens ouen backofen ofen')

/** "Preheat the Dutch oven 1 hr": the oven is heated, and nothing baked. */
function isHeated(tokens: readonly Token[], oven: number): boolean {
  const {block} = tokens[oven]!
  for (let k = oven - 1; k >= 0 && k >= oven - 4 && tokens[k]!.block === block && tokens[k]!.kind === 'word'; k--) {
    const {word} = tokens[k]!
    if (word.startsWith('preheat')) return true
    // "heat the oven", but "in a quick well heat oven"
    if (word === 'heat' || word === 'heating') return /^(?:the|your|up)$/.test(tokens[k + 1]!.word)
    if (word === 'in' || word === 'into') return false
  }
  return false
}

const WEIGHS: ReadonlySet<string> = new Set([...Object.keys(PLAIN), ...'a an per the each every half quarter of'.split(' ')])

const PROVES = set('prove proved proof ferment')
const rising = set('rise rises rising')
const SCUM = set('scum froth surface')

/** Whether it is scum that rises at `k`. */
function scums(tokens: readonly Token[], k: number): boolean {
  for (let i = k - 1; i >= 0 && i > k - 10 && !isStop(tokens[i]!); i--) if (SCUM.has(tokens[i]!.word)) return true
  return SCUM.has(tokens[k + 3]?.word ?? '')
}

/** No baking of so many minutes is left without a word for it. */
const LONGEST_UNSAID = 1440

/**
 * What a time is for that stands among no words of a task, where that is not what the receipt mainly does: the title's ("Overnight rolls",
 * "Twenty-minute scones"), a night, days.
 */
function unsaidTask(
  {tokens}: Section,
  from: number,
  to: number,
  low: number,
  besideBake: () => boolean,
): TimePhrase['of'] | null {
  if (NIGHTS.has(tokens[to - 1]!.word) && low >= 480) return 'stand'
  if (isKeptWarm(tokens, from, to)) return 'stand'
  if (isOfAPan(tokens, from, to, besideBake)) return 'other'
  if (isOfSponge(tokens, from)) return 'stand'
  if (isOnTheStove(tokens, from) || isFolded(tokens, from)) return 'other'
  if (low < LONGEST_UNSAID) return null
  return isLabelled(tokens, from) ? null : 'other'
}

/** Verbs of a step on the stove, where what they are said of is an ingredient. */
const PAN_VERBS = set('cook cooked cooking soften reduce heat warm')
const WHOLES: ReadonlySet<string> = new Set(['bread', 'made dish', 'other'])

/** "cook the onions 40 minutes", "cook in a pan, 40 minutes over a low heat": a step before the baking, on the stove. */
function isOfAPan(tokens: readonly Token[], from: number, to: number, besideBake: () => boolean): boolean {
  const {block} = tokens[from]!
  const within = (k: number): boolean => tokens[k]?.block === block && !endsSentence(tokens, k)
  let first = from
  while (first > 0 && from - first < REACH && within(first - 1)) first--
  let last = to
  while (last < to + 8 && within(last)) last++
  let verb = -1
  for (let k = first; k < from; k++) if (PAN_VERBS.has(tokens[k]!.word)) verb = k
  if (verb < 0) return false
  for (let k = verb; k < last; k++) {
    const {word} = tokens[k]!
    if (/^(?:in|on)$/.test(word) && tokens.slice(k, k + 4).some((t) => t.word === 'pan' || t.word === 'stove')) return true
    if (/^over$/.test(word) && tokens.slice(k, k + 4).some((t) => /^(?:heat|flame|fire)$/.test(t.word))) return true
  }
  for (let k = verb + 1; k < from; k++) {
    if (tokens[k]!.kind !== 'word') continue
    const found = itemAt(
      tokens.slice(k, from).map(({stem}) => stem),
      0,
    )
    // "Preheat the oven. Cook the chicken 40 minutes": the baking itself, where no other time is.
    if (found !== null) return !WHOLES.has(found.row.group) && besideBake()
  }
  return false
}

const SPONGES = set('biga poolish levain preferment vorteig sauerteig starter')

/** "Levain (evening before): 50 g starter, 100 g flour, 10–12 hours", "build the levain the night before, 10–12 h": nothing of it is baked. */
function isOfSponge(tokens: readonly Token[], from: number): boolean {
  const head = (first: number, within: number): boolean => {
    for (let k = first; k < from && k < first + within && tokens[k]!.block === tokens[from]!.block; k++)
      if (SPONGES.has(tokens[k]!.word)) return within > 3 || /^[:(—]$/.test(tokens[k + 1]?.word ?? '')
    return false
  }
  const [first] = sentenceAt(tokens, from)
  let block = first
  while (block > 0 && tokens[block - 1]!.block === tokens[from]!.block) block--
  return head(first, HEAD) || head(block, 3)
}

/** How far from the head of its sentence a sponge is named. */
const HEAD = 5

/** "Fold every half hour for the first two hours": how long it is worked. */
function isFolded(tokens: readonly Token[], from: number): boolean {
  for (let k = sentenceAt(tokens, from, REACH)[0]; k < from; k++)
    if (/^(?:fold|folds|folding|falten|dehnen)$/.test(tokens[k]!.word) && !/^(?:in|into|through)$/.test(tokens[k + 1]!.word))
      return true
  return false
}

const STOVE = set('glaze icing syrup sauce caramel juice juices guss glasur sirup sauce soße sosse')
/** What is done with them to a thing that bakes on. */
const PUTS_ON = set('with brush spread coat pour paint glaze baste return bestreichen bepinseln')

/** "Glaze: 20 minutes", "make the syrup, 10 minutes": of what is never baked, but not "brush with the glaze and give it 10 minutes". */
function isOnTheStove(tokens: readonly Token[], from: number): boolean {
  const [first] = sentenceAt(tokens, from, REACH)
  let thing = -1
  for (let k = first; k < from; k++) if (STOVE.has(tokens[k]!.word)) thing = k
  if (thing < 0) return false
  for (let k = first; k < from; k++) if (k !== thing && PUTS_ON.has(tokens[k]!.word)) return false
  return !MORE.has(tokens[from]!.word) && (tokens[thing]!.word !== 'glaze' || !isVerb(tokens, thing))
}

/** "(16 h, 22 °C)": at a heat that bakes nothing. */
function isKeptWarm(tokens: readonly Token[], from: number, to: number): boolean {
  const {block} = tokens[from]!
  for (let k = Math.max(0, from - 5); k < to + 4 && k < tokens.length; k++) {
    const {kind, num, den} = tokens[k]!
    if (tokens[k]!.block !== block || (k >= from && k < to) || kind !== 'number' || den !== 1 || num > WARM) continue
    if (tokens[k + 1]?.word === '°' || (tokens[k + 1]?.word === 'c' && tokens[k + 1]!.capital)) return true
  }
  return false
}

/** No dough is kept hotter and nothing baked cooler, °C. */
const WARM = 60

/** "Time.—" or "Cooking time:" stands before it in the sentence. */
function isLabelled(tokens: readonly Token[], from: number): boolean {
  const {block} = tokens[from]!
  for (let k = from - 1; k >= 0 && k > from - REACH && tokens[k]!.block === block && !endsSentence(tokens, k); k--)
    if (tokens[k]!.word === 'time') return true
  return false
}

const NIGHTS = set('night overnight morning')

/** Whether a heat of the oven stands close to the time: "Gas 2 for 4 hours", "425° 15 min.". */
function besideHeat(tokens: readonly Token[], from: number, to: number, least = LEAST_HEAT): boolean {
  const {block} = tokens[from]!
  const heat = (k: number): boolean => {
    const {kind, word, num, den} = tokens[k]!
    const next = tokens[k + 1]
    if (next === undefined || next.block !== block) return false
    if (word === 'gas') return next.kind === 'number' || next.word === 'mark'
    if (kind !== 'number' || den !== 1 || num < least || num > 550) return false
    return /^(?:°|℃|℉|degrees?)$/.test(next.word) || (/^[cf]$/.test(next.word) && (next.capital || !next.gap))
  }
  for (let k = from - 1; k >= 0 && k > from - 13 && tokens[k]!.block === block && !endsSentence(tokens, k); k--)
    if (heat(k)) return true
  for (let k = to; k < to + 5 && tokens[k]?.block === block && !endsSentence(tokens, k); k++) if (heat(k)) return true
  return false
}

/** Degrees of either scale that are an oven's and no dough's or milk's. */
const LEAST_HEAT = 130

interface Said {
  readonly of: TimePhrase['of']
  readonly to: number
  /** At the most. */
  readonly minutes: number
}

/** Whether a time is part of the one said before it: of the baking, or of a wait, whose rest goes on without being said again. */
function isPart(tokens: readonly Token[], before: Said, time: Said & {readonly from: number}): boolean {
  if (time.of === 'bake' && before.of === 'bake') return isWithin(tokens, before.to, time.from)
  if (!WAITS.has(before.of) || !WAITS.has(time.of) || time.minutes >= before.minutes) return false
  return isWithin(tokens, before.to, time.from) || isWorkedAt(tokens, before.to, time.from)
}

const WAITS: ReadonlySet<TimePhrase['of']> = new Set(['rise', 'stand', 'other'])
const WORKS = set('fold folds folding folded knock knocking knocked turn turns turning punch punching stretch dehnen falten')

/** "Leave 3 hours, with a fold after 1 hour": when it is worked, and no wait of its own. */
function isWorkedAt(tokens: readonly Token[], before: number, from: number): boolean {
  if (!/^(?:after|at|nach)$/.test(tokens[from - 1]?.word ?? '') || tokens[before - 1]!.block !== tokens[from]!.block) return false
  for (let k = before; k < from; k++) if (endsSentence(tokens, k) || tokens[k]!.word === 'then') return false
  return tokens.slice(before, from).some(({word}) => WORKS.has(word))
}

/** "45 minutes, the first 10 with steam", "4 hours, with folds in the first two hours", "dropping to 210 °C after the first 10": part of the time before it, which ended at `before`. */
function isWithin(tokens: readonly Token[], before: number, from: number): boolean {
  if (!/^(?:first|last|final|ersten|letzten)$/.test(tokens[from - 1]?.word ?? '')) return false
  if (!/^(?:the|den|die)$/.test(tokens[from - 2]?.word ?? '')) return false
  if (tokens[before - 1]!.block !== tokens[from]!.block) return false
  for (let k = before; k < from; k++) if (endsSentence(tokens, k) || tokens[k]!.word === 'then') return false
  return true
}

/** Where a time stands alone ("Time: 1 hour"): baking if the receipt bakes, else boiling if it boils. */
function mainTask(tokens: readonly Token[]): TimePhrase['of'] | null {
  let boils = false
  for (const t of tokens) {
    const task = TASKS.get(t.word)
    if (task === 'bake' && t.word !== 'brown') return 'bake'
    if (task === 'boil') boils = true
  }
  return boils ? 'boil' : null
}
