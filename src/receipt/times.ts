import {cardinals, fractions} from '../lexicon/grammar-words.js'
import {hedgeAmounts} from '../lexicon/hedge-amounts.js'
import type {TimeWord} from '../lexicon/schema.js'
import {timeSpans, timeUnits, timeWords} from '../lexicon/time-words.js'
import {minutesAtHeat, minutesUnsaid} from './minutes-unsaid.js'
import {type Section, type Token, tokenise} from './section.js'
import {REACH, sentenceHas} from './sentences.js'
import {overAndAbove, perWeight} from './time-by-weight.js'
import {
  ABBREVIATED,
  goesOn,
  isCookedOn,
  isCookTime,
  isLast,
  isPart,
  isSetIn,
  isSince,
  isSummary,
  isTotal,
  MORE,
  RETURNS,
  timeWordsOf,
  WAITS,
} from './time-parts.js'
import {mainTask, TASKS, taskOf, unsaidTask} from './time-task.js'
import type {TimePhrase} from './types.js'

/**
 * Every stretch of time in a receipt, with what it is for: "three quarters of an hour", "from 20 minutes to 1/2 hour", "an hour and a
 * half", "all night". A time given twice is read twice.
 */

/** Words of one use with the fraction that each stands for. */
const fractionsOf = (use: TimeWord['use']): ReadonlyArray<readonly [string, readonly [number, number]]> =>
  timeWords.flatMap(({use: its, words, value}) => {
    if (its !== use || value === undefined) return []
    const [n, d] = value.split('/').map(Number)
    return words.map((word) => [word, [n!, d!]] as const)
  })

/** Minutes of a unit of time. */
const UNITS: Readonly<Record<string, number>> = Object.fromEntries(
  timeUnits.flatMap(({minutes, words}) => words.map((word) => [word, minutes] as const)),
)
const FILLERS = timeWordsOf('filler')
const HEDGES = timeWordsOf('hedge')
const PRIMES = timeWordsOf('prime')
const JOINERS = timeWordsOf('joiner')

interface SpanNode {
  readonly next: Map<string, SpanNode>
  minutes: readonly [number, number] | null
}
const SPAN_TREE: SpanNode = {next: new Map(), minutes: null}
for (const {phrases, minutes} of timeSpans)
  for (const phrase of phrases) {
    let node = SPAN_TREE
    for (const word of phrase.split(' ')) {
      let child = node.next.get(word)
      if (child === undefined) {
        child = {next: new Map(), minutes: null}
        node.next.set(word, child)
      }
      node = child
    }
    node.minutes = minutes
  }

const QUARTERS = timeWordsOf('quarters')

export interface Number_ {
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
const PARTS: Readonly<Record<string, readonly [number, number]>> = {...fractions, ...Object.fromEntries(fractionsOf('part'))}
/** Numbers and a half in one word. */
const AND_HALF: Readonly<Record<string, number>> = Object.fromEntries(
  fractionsOf('number').map(([word, [n, d]]) => [word, n / d]),
)

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
  if (at === i && !/^(?:halfe?|quarter|halben?)$/.test(t.word)) return null
  t = tokens[at]
  if (t?.kind === 'word' && FILLERS.has(t.word)) t = tokens[++at]
  if (t === undefined || t.kind !== 'word' || !Object.hasOwn(PARTS, t.word)) return null
  const [n, d] = PARTS[t.word]!
  // "six quarters of an hour" is how an hour and a half is said of a roast.
  const ofHour = d === 4 && /^(?:of)$/.test(tokens[at + 1]?.word ?? '') && tokens[at + 3]?.word === 'hour'
  return (top * n) / d < 1 || ofHour ? {value: (top * n) / d, end: at + 1} : null
}

/** Minutes of a word for a unit of time; null where it is none. */
export function minutesIn(word: string): number | null {
  return Object.hasOwn(UNITS, word) ? UNITS[word]! : null
}

/** The number that begins at a token, "two", "2 1/2", "a few"; null where none does. */
export function numberAt(tokens: readonly Token[], i: number): Number_ | null {
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
  if (Object.hasOwn(AND_HALF, t.word)) return whole(AND_HALF[t.word]!, i + 1, false, false)
  const cardinal = cardinalAt(tokens, i)
  return cardinal === null ? null : whole(cardinal.value, cardinal.end, false, false)
}

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
export function durationAt(
  tokens: readonly Token[],
  i: number,
  between: boolean,
): {low: number; high: number; end: number} | null {
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
      // "half an hour, or three quarters, according to the thickness"
      const quarters = joiner === 'or' && unit === 60 && first.fraction && next.fraction && !next.figure
      if (
        (comma && !quarters) ||
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

/**
 * The first length of time that some words tell, as a receipt would: "for half an hour", "twenty minutes", "eine Viertelstunde".
 *
 * @param text a few words, no receipt
 * @returns minutes, `low` = `high` unless a range is told; null where they tell of none
 */
export function lengthIn(text: string): {readonly low: number; readonly high: number} | null {
  const tokens: Token[] = []
  const piece = {at: 0, from: 0, to: text.length}
  tokenise({kind: 'paragraph', text, pieces: [piece], start: 0, end: text.length}, 0, tokens)
  for (let i = 0; i < tokens.length; i++) {
    const found = durationAt(tokens, i, false)
    if (found !== null) return {low: found.low, high: found.high}
  }
  return null
}

const FOLLOWS_TIME = timeWordsOf('follows')

const OPENS: ReadonlySet<string> = new Set([...timeWordsOf('opens'), ...Object.keys(AND_HALF)])
const SPAN_OPENS: ReadonlySet<string> = new Set(SPAN_TREE.next.keys())
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
      durationAt(tokens, i, previous === 'between' || previous === 'from') ??
      minutesUnsaid(tokens, i, found.at(-1)?.to ?? -1) ??
      minutesAtHeat(tokens, i)
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
  let waits: boolean | undefined
  /** Do the steps give a wait, beside those of a line that sums them up? */
  const waitElsewhere = (): boolean => {
    waits ??= said.some(({from, to}) => /^(?:rise|stand)$/.test(taskOf(tokens, from, to) ?? '') && !isSummary(tokens, from))
    return waits
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
    if (of === 'stand' && isSetIn(tokens, from)) of = 'bake'
    if ((of === 'rise' || of === 'stand') && isSummary(tokens, from) && waitElsewhere()) of = 'other'
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

/** "Up to 24 hours": the most that it may be. Nobody says how little: the row of `hedge-amounts` does for what is baked. */
function upTo(tokens: readonly Token[], one: Stretch): Stretch {
  if (one.low !== one.high || !isUpTo(tokens, one.from)) return one
  const waits = WAITS.has(taskOf(tokens, one.from, one.to) ?? 'other')
  return {...one, from: one.from - 2, low: one.high * (waits ? LEAST_WAIT : AT_MOST)}
}

/** Of a wait that may last so long, the least share that is likely: dough in the cold, fruit that soaks. From memory. */
const LEAST_WAIT = 0.5
const AT_MOST = hedgeAmounts.find(({phrases}) => phrases.includes('up to'))!.factor.low

/** Join the stretches that are said in two ways: of a night and its hours the figures are the more exact. */
function restated(tokens: readonly Token[], found: readonly Stretch[]): Stretch[] {
  const said: Stretch[] = []
  for (const one of found) {
    const night = said.at(-1)
    const joined =
      night !== undefined && night.byWeight === undefined && one.byWeight === undefined
        ? (upToAfter(tokens, night, one) ?? orNight(tokens, night, one) ?? ofNight(tokens, night, one))
        : null
    if (joined === null) said.push(one)
    else said[said.length - 1] = joined
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

const isNight = ({low, high}: Stretch): boolean => low === 480 && high === 720

/** "8 hours or overnight", "10 hours, or overnight": from the shorter to the longer; what is short before a comma is another way, and null. */
function orNight(tokens: readonly Token[], first: Stretch, second: Stretch): Stretch | null {
  if (!(isNight(first) || isNight(second))) return null
  const comma = tokens[first.to]!.word === ','
  const at = comma ? first.to + 1 : first.to
  if (second.from !== at + 1 || !/^(?:or|oder)$/.test(tokens[at]!.word)) return null
  if (tokens[at]!.block !== tokens[second.from]!.block || (comma && Math.min(first.low, second.low) < LONG)) return null
  return {from: first.from, to: second.to, low: Math.min(first.low, second.low), high: Math.max(first.high, second.high)}
}

/** So long, minutes, is what is said beside a night the night itself. Common practice, no source. */
const LONG = 360

/** Words for where and how it stands, between a night and how long it is. */
const BESIDE_NIGHT = timeWordsOf('beside night')

/** The figures of a night and how long it is, said side by side: "overnight in the fridge for 10 hours", "12 hours overnight"; null where these are no such two. */
function ofNight(tokens: readonly Token[], first: Stretch, second: Stretch): Stretch | null {
  const figures = isNight(first) ? second : isNight(second) ? first : null
  if (figures === null || figures.low < LONG) return null
  if (second.from - first.to > 7 || tokens[first.from]!.block !== tokens[second.from]!.block) return null
  for (let k = first.to; k < second.from; k++)
    if (!/^[,(]$/.test(tokens[k]!.word) && !BESIDE_NIGHT.has(tokens[k]!.word)) return null
  return {...figures, from: first.from, to: second.to}
}

const SKIPS = timeWordsOf('skips')

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
