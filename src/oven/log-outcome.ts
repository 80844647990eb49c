import {outcomeWords} from '../lexicon/outcome-words.js'
import type {OutcomeWord} from '../lexicon/schema.js'
import type {LogRow} from './log.js'
import {countAt} from './log-counts.js'

/** How a dish came out by the row that tells that it was drawn, and why it was drawn off its time, by the lexicon's words. */

/** What a row tells: `mixed` where it is overdone and underdone at once, `plain` where it says nothing of the kind. */
export type Outcome = 'plain' | 'overdone' | 'underdone' | 'mixed' | 'other cause'

type Use = OutcomeWord['use']
const wordsOf = (use: Use): readonly string[] => outcomeWords.flatMap((row) => (row.use === use ? row.words : []))

const negations: ReadonlySet<string> = new Set(wordsOf('negation'))
const hardly: ReadonlySet<string> = new Set([...negations, ...wordsOf('hardly')])
/** The words of each phrase, longest phrase first: "not done" is no "done". */
const phrases: readonly {readonly use: Use; readonly words: readonly string[]}[] = (
  ['overdone', 'underdone', 'pale', 'other cause'] as const
)
  .flatMap((use) => wordsOf(use).map((phrase) => ({use, words: phrase.split(' ')})))
  .sort((a, b) => b.words.length - a.words.length)
const cookedOn = wordsOf('cooked on')

/** The words of a text in small letters, without the marks between them. */
export const wordsIn = (text: string): readonly string[] => text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? []

const clausesOf = ({text, note}: Pick<LogRow, 'text' | 'note'>): string[] =>
  `${text}, ${note}`.split(/[,;:.()]/).map((clause) => clause.trim())

/** How a dish came out: what is said of some of its vessels only ("one pale"), or hardly ("a little dark"), is no judgement of its time. */
export function outcomeOf({text, note}: Pick<LogRow, 'text' | 'note'>): Outcome {
  const uses = new Set(clausesOf({text, note}).flatMap((clause) => (countAt(clause) === null ? usesIn(clause, hardly) : [])))
  const [over, under] = [uses.has('overdone'), uses.has('underdone') || uses.has('pale')]
  if (over && under) return 'mixed'
  if (over) return 'overdone'
  if (under) return 'underdone'
  return uses.has('other cause') ? 'other cause' : 'plain'
}

/**
 * Whether a row says that a dish, or some of its vessels, was not done within. For what has raw meat in it: "a little raw" is raw, and "one raw"
 * as well; "pale" alone is not.
 */
export function saysRaw(row: Pick<LogRow, 'text' | 'note' | 'left'>): boolean {
  // Of what is in the oven yet the row says so as well: "2 of 4 not done".
  const drawn = clausesOf(row).filter((clause) => row.left === undefined || countAt(clause) === null)
  return drawn.some((clause) => usesIn(clause, negations).includes('underdone'))
}

/** Words that may stand before it where a dish was cooked on: "and were then cooked through". */
const LEADING = /^(?:(?:and|but|then|now|since|all|is|are|was|were|und|aber|dann|jetzt|inzwischen|alle|ist|sind|wurde|wurden) )+/

/** Whether a row says that a dish was cooked through since, here or elsewhere: what is said of some of its vessels only does not. */
export function saysCooked(row: Pick<LogRow, 'text' | 'note' | 'left'>): boolean {
  return clausesOf(row).some((clause) => {
    const said = `${wordsIn(clause).join(' ')} `.replace(LEADING, '')
    return cookedOn.some((phrase) => said.startsWith(`${phrase} `))
  })
}

/** What the words of a clause say, but what a word right before them makes no judgement. */
function usesIn(clause: string, spoiling: ReadonlySet<string>): Use[] {
  const words = wordsIn(clause)
  const found: Use[] = []
  for (let i = 0; i < words.length; ) {
    const phrase = phrases.find(({words: said}) => said.every((word, n) => word === words[i + n]))
    if (phrase && !spoiling.has(words[i - 1] ?? '')) found.push(phrase.use)
    i += phrase?.words.length ?? 1
  }
  return found
}
