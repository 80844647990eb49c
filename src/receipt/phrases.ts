import {fold} from '../lexicon/index.js'
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
        const key = fold(
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

/** The phrases of the rows that are used in one way, as a tree. */
export const phrasesUsed = <Use, Row extends {readonly use: Use; readonly phrases: readonly string[]}>(
  rows: readonly Row[],
  use: Row['use'],
): PhraseTree<Row> =>
  phraseTree(
    rows.filter((row) => row.use === use),
    (row) => row.phrases,
  )

/** The longest phrase that starts at token `at`, inside one block. */
export function phraseAt<Row>(tree: PhraseTree<Row>, tokens: readonly Token[], at: number): FoundPhrase<Row> | null {
  let node = tree
  let best: FoundPhrase<Row> | null = null
  const block = tokens[at]?.block
  for (let i = at; i < tokens.length; i++) {
    const t = tokens[i]!
    if (t.block !== block || t.kind !== 'word') break
    const child = node.next.get(t.stem)
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
    if (!tree.next.has(tokens[i]!.stem)) continue
    const phrase = phraseAt(tree, tokens, i)
    if (phrase === null || phrase.to > to) continue
    found.push(phrase)
    i = phrase.to - 1
  }
  return found
}
