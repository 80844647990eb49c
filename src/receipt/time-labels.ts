import type {Token} from './section.js'
import {timeWordsOf} from './time-parts.js'
import type {TimePhrase} from './types.js'

/** What a time is for by the label before it, in a line of times: "Prep time: 30 min · Rest: 1 h", "Zubereitung: 30 Min. · Ruhezeit: 1 Std." */

const LABELS: ReadonlyArray<readonly [ReadonlySet<string>, TimePhrase['of']]> = [
  [timeWordsOf('label of work'), 'other'],
  [timeWordsOf('label of a wait'), 'stand'],
  [timeWordsOf('label of a rise'), 'rise'],
  [timeWordsOf('label of a bake'), 'bake'],
]

/** What stands between a label and its time. */
const BETWEEN = /^[:|=—-]$/
/** "ca." between them. */
const HEDGES = /^(?:ca|circa|etwa|about|approx|approximately|\.)$/
/** A label of a method too: "Preparation: 30 minutes in the oven …" */
const OF_METHOD = /^(?:zubereitung|vorbereitung|preparation)$/

/** The task that the label before the time in tokens [from, to) names; null where none stands there. */
export function labelTask(tokens: readonly Token[], from: number, to: number): TimePhrase['of'] | null {
  const {block} = tokens[from]!
  const word = (k: number): string => (tokens[k]?.block === block ? tokens[k]!.word : '')
  let first = from
  while (from - first < 2 && HEDGES.test(word(first - 1))) first--
  const marked = BETWEEN.test(word(first - 1))
  let at = marked ? first - 2 : first - 1
  const named = /^(?:time|zeit)$/.test(word(at))
  if (named) at--
  const label = word(at) === 'on' && word(at - 1) === 'hands' ? 'hands-on' : word(at)
  if (label === '' || !(marked || named || /zeit$/.test(label))) return null
  // It stands at the head of its clause.
  const before = tokens[label === 'hands-on' ? at - 2 : at - 1]
  if (before?.block === block && before.kind !== 'mark' && !tokens[at]!.capital) return null
  if (OF_METHOD.test(label) && !named && word(to) !== '' && tokens[to]!.kind !== 'mark' && !tokens[to]!.capital) return null
  return LABELS.find(([words]) => words.has(label))?.[1] ?? null
}

const ALL: ReadonlySet<string> = new Set([
  ...LABELS.flatMap(([words]) => [...words]),
  'cook',
  'cooking',
  'kochzeit',
  'garzeit',
  'time',
])

/** Are tokens [from, to) a line that gives a time by its label, and nothing that goes in? `isUnit`: whether a word is a unit of time. */
export function isTimeLine(tokens: readonly Token[], from: number, to: number, isUnit: (word: string) => boolean): boolean {
  let at = from
  while (at < to && tokens[at]!.kind === 'mark') at++
  if (at >= to || !(ALL.has(tokens[at]!.word) || tokens[at]!.word === 'hands')) return false
  while (at < to && tokens[at]!.kind !== 'number' && at - from < MOST_BEFORE) at++
  return at + 1 < to && tokens[at]!.kind === 'number' && isUnit(tokens[at + 1]!.word)
}
/** Words and marks of a label before its figure. */
const MOST_BEFORE = 8
