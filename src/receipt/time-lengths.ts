import {type Token, tokenise} from './section.js'
import {REACH} from './sentences.js'
import {FILLERS, JOINERS, type Number_, numberAt, UNITS} from './time-numbers.js'
import {ABBREVIATED, timeWordsOf} from './time-parts.js'
import {TASKS} from './time-task.js'

const FOLLOWS_TIME = timeWordsOf('follows')

const PRIMES = timeWordsOf('prime')

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

/** Whether "up to" stands before token `at`; in German "bis zu". */
export const isUpTo = (tokens: readonly Token[], at: number): boolean => {
  const [first, second] = [tokens[at - 2], tokens[at - 1]]
  if (first === undefined || first.block !== tokens[at]?.block) return false
  return (first.word === 'up' && second!.word === 'to') || (first.word === 'bis' && second!.word === 'zu')
}
