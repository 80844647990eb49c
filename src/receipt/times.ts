import {hedgeAmounts} from '../lexicon/hedge-amounts.js'
import {minutesAtHeat, minutesUnsaid} from './minutes-unsaid.js'
import type {Section, Token} from './section.js'
import {sentenceHas} from './sentences.js'
import {overAndAbove, perWeight} from './time-by-weight.js'
import {durationAt, isUpTo} from './time-lengths.js'
import {AND_HALF, PLAIN} from './time-numbers.js'
import {
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
import {SPAN_OPENS, spanAt} from './time-spans.js'
import {mainTask, taskOf, unsaidTask} from './time-task.js'
import type {TimePhrase} from './types.js'

/**
 * Every stretch of time in a receipt, with what it is for: "three quarters of an hour", "from 20 minutes to 1/2 hour", "an hour and a
 * half", "all night". A time given twice is read twice.
 */

const HEDGES = timeWordsOf('hedge')
const OPENS: ReadonlySet<string> = new Set([...timeWordsOf('opens'), ...Object.keys(AND_HALF)])

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
