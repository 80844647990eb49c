import {fold as foldWord} from '../lexicon/index.js'
import type {Token} from './section.js'

/** Phrases by their words, plurals folded: a walk of the tokens finds the longest that starts at one. */
export interface PhraseTree<Row> {
  readonly next: Map<string, PhraseTree<Row>>
  row: Row | null
}

/** A phrase found at tokens [from, to). */
export interface FoundPhrase<Row> {
  readonly row: Row
  readonly from: number
  readonly to: number
}

const cache = new Map<string, string>()
/** So that no text can make the cache grow without end. */
const CACHE_LIMIT = 20000

/** A word with its plural folded, as the lexicon keys them. */
export function singular(word: string): string {
  let folded = cache.get(word)
  if (folded === undefined) {
    folded = foldWord(word)
    if (cache.size >= CACHE_LIMIT) cache.clear()
    cache.set(word, folded)
  }
  return folded
}

/**
 * Build a tree of phrases. Where two rows share a phrase the first keeps it.
 *
 * @param rows the rows
 * @param phrases a row's phrases, words parted by spaces or hyphens
 */
export function phraseTree<Row>(rows: readonly Row[], phrases: (row: Row) => readonly string[]): PhraseTree<Row> {
  const root: PhraseTree<Row> = {next: new Map(), row: null}
  for (const row of rows) {
    for (const phrase of phrases(row)) {
      let node = root
      for (const word of phrase.split(/[\s-]+/)) {
        const key = singular(
          word
            .normalize('NFKD')
            .replace(/[\u0300-\u036f]/g, '')
            .replace(/’/g, "'"),
        )
        if (key === '') continue
        let child = node.next.get(key)
        if (child === undefined) {
          child = {next: new Map(), row: null}
          node.next.set(key, child)
        }
        node = child
      }
      if (node !== root) node.row ??= row
    }
  }
  return root
}

/** The longest phrase that starts at token `at`, inside one block. */
export function phraseAt<Row>(tree: PhraseTree<Row>, tokens: readonly Token[], at: number): FoundPhrase<Row> | null {
  let node = tree
  let best: FoundPhrase<Row> | null = null
  const block = tokens[at]?.block
  for (let i = at; i < tokens.length; i++) {
    const t = tokens[i]!
    if (t.block !== block || t.kind !== 'word') break
    const child = node.next.get(singular(t.word))
    if (child === undefined) break
    node = child
    if (node.row !== null) best = {row: node.row, from: at, to: i + 1}
  }
  return best
}

/** Every phrase in the tokens, longest first at each place, none overlapping. */
export function phrasesIn<Row>(
  tree: PhraseTree<Row>,
  tokens: readonly Token[],
  from = 0,
  to = tokens.length,
): Array<FoundPhrase<Row>> {
  const found: Array<FoundPhrase<Row>> = []
  for (let i = from; i < to; i++) {
    if (tokens[i]!.kind !== 'word') continue
    const phrase = phraseAt(tree, tokens, i)
    if (phrase === null || phrase.to > to) continue
    found.push(phrase)
    i = phrase.to - 1
  }
  return found
}
