import {timeSpans} from '../lexicon/time-words.js'
import type {Token} from './section.js'

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

/** Words that may begin a span. */
export const SPAN_OPENS: ReadonlySet<string> = new Set(SPAN_TREE.next.keys())

/** A span that is told by a name, "all night", at token `i`: minutes, and the token after it. */
export function spanAt(tokens: readonly Token[], i: number): {low: number; high: number; end: number} | null {
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
