import {outcomeWords} from '../lexicon/outcome-words.js'
import type {OutcomeWord} from '../lexicon/schema.js'
import type {LogRow} from './log.js'
import {countAt} from './log-counts.js'

/** How a dish came out by the row that tells that it was drawn, and why it was drawn off its time, by the lexicon's words. */

/** What a row tells: `mixed` where it is overdone and underdone at once, `plain` where it says nothing of the kind. */
export type Outcome = 'plain' | 'overdone' | 'underdone' | 'mixed' | 'other cause'

/** The words of each phrase, longest phrase first: "not done" is no "done". */
const phrases: readonly {readonly use: OutcomeWord['use']; readonly words: readonly string[]}[] = outcomeWords
  .flatMap(({use, words}) => (use === 'hardly' ? [] : words.map((phrase) => ({use, words: phrase.split(' ')}))))
  .sort((a, b) => b.words.length - a.words.length)
const hardly: ReadonlySet<string> = new Set(outcomeWords.flatMap(({use, words}) => (use === 'hardly' ? words : [])))

/** How a dish came out: what is said of some of its vessels only ("one pale"), or hardly ("a little dark"), is no judgement of its time. */
export function outcomeOf({text, note}: Pick<LogRow, 'text' | 'note'>): Outcome {
  const uses = new Set(`${text}, ${note}`.split(/[,;:.()]/).flatMap(usesIn))
  const [over, under] = [uses.has('overdone'), uses.has('underdone')]
  if (over && under) return 'mixed'
  if (over) return 'overdone'
  if (under) return 'underdone'
  return uses.has('other cause') ? 'other cause' : 'plain'
}

function usesIn(clause: string): OutcomeWord['use'][] {
  if (countAt(clause.trim()) !== null) return []
  const words = clause.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? []
  const found: OutcomeWord['use'][] = []
  for (let i = 0; i < words.length; ) {
    const phrase = phrases.find(({words: said}) => said.every((word, n) => word === words[i + n]))
    if (phrase && !hardly.has(words[i - 1] ?? '')) found.push(phrase.use)
    i += phrase?.words.length ?? 1
  }
  return found
}
