import {doneness} from '../lexicon/doneness.js'
import {itemAt} from '../lexicon/index.js'
import type {Doneness} from '../lexicon/schema.js'
import {type FoundPhrase, phrasesIn, phraseTree} from './phrases.js'
import {linesApart, type Section, type Token} from './section.js'
import type {DoneSign, ReadIngredient} from './types.js'

/** The signs by which a receipt says that a thing is done: "till golden brown", "a straw comes out clean". */

const DONE = phraseTree(doneness, (row: Doneness) => row.phrases)

/** Signs that are colours, and may be a thing's own. */
const COLOURS: ReadonlySet<string> = new Set(['light-brown', 'golden', 'brown', 'dark-brown', 'pale'])

/** Longest line of a list, words and marks. */
const LINE = 20

/** Whether the words are of a thing's name or of how it goes in: "golden syrup", "light brown sugar", "browned butter", "butter, browned". */
function isOfIngredient({tokens, source}: Section, {row, from, to}: FoundPhrase<Doneness>, starts: ReadonlySet<number>): boolean {
  const {block} = tokens[from]!
  const here = (k: number): Token | null => (tokens[k]?.block === block ? tokens[k]! : null)
  // "Golden syrup", "browned butter", with nothing between; but "as thick as cream" says how it looks.
  let end = to
  while (end < to + 3 && here(end)?.kind === 'word' && !here(end)!.capital) end++
  for (let k = from; k <= to && k < end && COLOURS.has(row.id); k++) {
    const found = itemAt(
      tokens.slice(k, end).map(({stem}) => stem),
      0,
    )
    if (found !== null && k + found.length > to) return true
  }
  // A line of the list, which begins with its entry.
  let first = from
  const begins = (k: number): boolean => here(k - 1) === null || linesApart({source}, tokens[k - 1]!, tokens[k]!)
  while (from - first < LINE && !begins(first)) first--
  while (tokens[first]!.kind === 'mark' && first < from) first++
  if (!starts.has(tokens[first]!.start)) return false
  for (let k = first; k < from; k++) if (/^[.;]$/.test(tokens[k]!.word) || WORK.test(tokens[k]!.word)) return false
  return true
}
/** What is done till a sign shows. */
const WORK = /^(?:till|until|bake|baked|bakes|cook|roast|bis|backen)$/

/** The signs of a receipt, in the order of its text; colours of what goes in are none. */
export function signsOf(section: Section, ingredients: readonly ReadIngredient[]): DoneSign[] {
  const {tokens, source} = section
  const starts = new Set(ingredients.map(({start}) => start))
  return phrasesIn(DONE, tokens)
    .filter((phrase) => !isOfIngredient(section, phrase, starts))
    .map(({row, from, to}) => {
      const start = tokens[from]!.start
      const end = tokens[to - 1]!.end
      return {
        text: source.slice(start, end),
        start,
        end,
        id: row.id,
        means: row.means,
        ...(row.centre === undefined ? {} : {centre: row.centre}),
      }
    })
}
