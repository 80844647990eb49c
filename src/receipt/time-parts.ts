import {wordsUsed} from '../lexicon/row.js'
import type {TimeWord} from '../lexicon/schema.js'
import {timeWords} from '../lexicon/time-words.js'
import {CHANGES} from './heat-words.js'
import type {Token} from './section.js'
import {endsSentence, REACH} from './sentences.js'
import type {TimePhrase} from './types.js'

/**
 * How the stretches of time of a receipt stand to each other: a baking that goes on, the whole of one, a part of what was said before, and
 * what a line of sums says of all.
 */

/** Words of one use. */
export const timeWordsOf = (use: TimeWord['use']): ReadonlySet<string> => new Set(wordsUsed(timeWords, use))

/** Only right behind a figure: "2 h", "20m". */
export const ABBREVIATED = timeWordsOf('abbreviated')

/** "Cook: 3 h", "Cooking time: 3 h": all of the cooking, with what is boiled before. */
export function isCookTime(tokens: readonly Token[], from: number): boolean {
  const {block} = tokens[from]!
  const word = (k: number): string => (tokens[k]?.block === block ? tokens[k]!.word : '')
  const at = word(from - 1) === ':' || word(from - 1) === '|' ? from - 2 : from - 1
  return (
    /^(?:cook|cooking|kochzeit|garzeit)$/.test(word(at) === 'time' ? word(at - 1) : word(at)) &&
    (word(from - 1) !== 'cook' || isSummary(tokens, from))
  )
}

/** "Set it in when the bread is drawn, and leave it four hours": it is left in the oven. */
export function isSetIn(tokens: readonly Token[], from: number): boolean {
  const {block} = tokens[from]!
  if (!/^(?:it|them)$/.test(tokens[from - 1]?.word ?? '') || tokens[from - 2]?.word !== 'leave') return false
  for (let k = from - 3; k > from - REACH && tokens[k]?.block === block && !endsSentence(tokens, k); k--)
    if (
      tokens[k]!.word === 'in' &&
      /^(?:it|them)$/.test(tokens[k - 1]!.word) &&
      /^(?:set|put|slide)$/.test(tokens[k - 2]?.word ?? '')
    )
      return /^(?:when|as|after|while|,|and|then)$/.test(tokens[k + 1]!.word)
  return false
}

/** "When it has been in the oven half an hour": when something is done to it. */
export function isSince(tokens: readonly Token[], from: number): boolean {
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

/** Before a time of baking that goes on, whatever else was done between: "boil the glaze 10 minutes, … give it another 10 minutes". */
export const MORE = timeWordsOf('more')

/** "Return them to dry for another half hour": into the oven. */
export const RETURNS = timeWordsOf('returns')

/** "Drop them in and cook for another 20 minutes": on, and not at rest. */
export const isCookedOn = (tokens: readonly Token[], from: number): boolean =>
  [1, 2].some((back) => tokens[from - back]?.block === tokens[from]!.block && tokens[from - back]!.word === 'cook')

/** "The last 15 minutes at 220 °C": a sentence about part of what was said before. */
export function isLast(tokens: readonly Token[], from: number): boolean {
  const [the, last] = [tokens[from - 2], tokens[from - 1]]
  if (the?.block !== tokens[from]!.block || !/^(?:last|final|letzten)$/.test(last!.word)) return false
  return /^(?:the|die|den)$/.test(the.word) && (tokens[from - 3]?.block !== the.block || endsSentence(tokens, from - 3))
}

const PREPARES: ReadonlySet<string> = new Set(timeWordsOf('label of work'))

/** "Prep 40 min · Cook 20 min · plus 2 hrs proving": the sum of what the steps say one by one. */
export function isSummary(tokens: readonly Token[], from: number): boolean {
  const {block} = tokens[from]!
  for (let k = from - 1; k > from - REACH && tokens[k]?.block === block; k--) {
    if (
      PREPARES.has(tokens[k]!.word) &&
      (k + 1 === from || /^(?:time|:|\||—|-)$/.test(tokens[k + 1]!.word) || /^prep/.test(tokens[k]!.word))
    )
      return true
    if (tokens[k]!.word === '.' && !ABBREVIATED.has(tokens[k - 1]?.word ?? '')) return false
  }
  return false
}

const GOES_ON = timeWordsOf('goes on')

/** Words between two times that make the second another case, or part of the first. */
const OTHER_CASE = timeWordsOf('other case')

/** Whether a time of baking goes on where the one before it ended. */
export function goesOn(tokens: readonly Token[], before: number, from: number, to: number): boolean {
  const apart = tokens[from]!.block - tokens[before - 1]!.block
  if (from - before > 25 || apart > 1) return false
  let on = isChangedBetween(tokens, before, from)
  // The next step of a method goes on only where it says that the oven is made cooler or hotter for it.
  if (apart === 1 && !on) return false
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

const WHAT_CHANGES = /^(?:heat|temperature|oven|temp|hitze|temperatur|ofen)$/
const FIGURE = /^\d{3}$/

/** "Lower the heat to 350 °F and bake 35 minutes", "turn it down to gas 4, 35 minutes": the same things bake on at another heat. */
function isChangedBetween(tokens: readonly Token[], before: number, from: number): boolean {
  for (let k = before; k < from; k++) {
    if (!CHANGES.has(tokens[k]!.word)) continue
    // The German verb stands behind: "die Hitze auf 200 °C reduzieren".
    let l = k
    while (l > before && l > k - 8 && tokens[l - 1]!.block === tokens[k]!.block && !endsSentence(tokens, l - 1)) l--
    for (; l < from && l < k + 8 && tokens[l]!.block === tokens[k]!.block && !endsSentence(tokens, l); l++) {
      const {word} = tokens[l]!
      if (WHAT_CHANGES.test(word)) return true
      if (/^(?:to|auf)$/.test(word) && (FIGURE.test(tokens[l + 1]!.word) || tokens[l + 1]!.word === 'gas')) return true
    }
  }
  return false
}

/** "altogether 75 minutes", "75 minutes in all", "a total of 75 minutes". */
export function isTotal(tokens: readonly Token[], from: number, to: number): boolean {
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

interface Said {
  readonly of: TimePhrase['of']
  readonly to: number
  /** At the most. */
  readonly minutes: number
}

/** Whether a time is part of the one said before it: of the baking, or of a wait, whose rest goes on without being said again. */
export function isPart(tokens: readonly Token[], before: Said, time: Said & {readonly from: number}): boolean {
  if (time.of === 'bake' && before.of === 'bake')
    return isWithin(tokens, before.to, time.from) || (time.minutes < before.minutes && isCoveredAfter(tokens, before.to, time))
  if (!WAITS.has(before.of) || !WAITS.has(time.of) || time.minutes >= before.minutes) return false
  return isWithin(tokens, before.to, time.from) || isWorkedAt(tokens, before.to, time.from)
}

export const WAITS: ReadonlySet<TimePhrase['of']> = new Set(['rise', 'stand', 'other'])

const COVERS = timeWordsOf('covers')

/** "Bake 30 minutes; after 20 minutes cover it": when, of the time before. */
function isCoveredAfter(
  tokens: readonly Token[],
  before: number,
  {from, to}: {readonly from: number; readonly to: number},
): boolean {
  const {block} = tokens[from]!
  if (tokens[before - 1]!.block !== block || from - before > 8 || !/^(?:after|nach)$/.test(tokens[from - 1]!.word)) return false
  return tokens.slice(to, to + 3).some((token) => token.block === block && COVERS.has(token.word))
}

const WORKS = timeWordsOf('works')

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
