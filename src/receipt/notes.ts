import {otherWays} from '../lexicon/grammar-words.js'
import {textOf} from './amounts.js'
import {type Draft, key} from './entries.js'
import {Phrases, type View} from './view.js'

/**
 * Footnotes and notes under a receipt. What they give as another way of making it (“for a lighter pudding take four eggs”) is not added
 * to what the receipt takes.
 */

const ways = new Phrases(otherWays)

/** Signs that call a note in the text, and stand before it below. */
const SIGNS = new Set(['*', '†', '‡', '§'])

/** Blocks in which each sign stands behind a word. */
function callsOf({tokens, section}: View): ReadonlyMap<string, ReadonlySet<number>> {
  const calls = new Map<string, Set<number>>()
  for (let i = 1; i < tokens.length; i++) {
    const {word, gap, block, end} = tokens[i]!
    if (!SIGNS.has(word) || gap || tokens[i - 1]!.block !== block || section.source[end] === word) continue
    const blocks = calls.get(word) ?? new Set()
    calls.set(word, blocks.add(block))
  }
  return calls
}

/**
 * Which blocks of a receipt are notes, told from the head of their line: "[^1]:", or a sign that is called in another block.
 *
 * @returns a test of a block, by its number and its first token
 */
export function noteTest(view: View): (block: number, from: number) => boolean {
  const {source, blocks, start, end} = view.section
  if (!/\[\^|[*†‡§]/.test(source.slice(start, end))) return () => false
  const calls = callsOf(view)
  return (block, from) => {
    const {kind, start: at} = blocks[block]!
    if (kind === 'heading' || kind === 'row' || kind === 'code') return false
    const line = Math.max(start, source.lastIndexOf('\n', at) + 1)
    const head = source.slice(line, at + 40)
    if (/^[ \t]*\[\^[^\]\s]{1,30}\]:/.test(head)) return true
    const sign = /^[ \t]*(?:[-+] )?\\?([*†‡§])/.exec(head)?.[1]
    if (sign === undefined || !(kind === 'item' || SIGNS.has(view.words[from] ?? ''))) return false
    const called = calls.get(sign)
    return called !== undefined && called.size > (called.has(block) ? 1 : 0)
  }
}

/** The notes of a block of notes, token by token: each begins a line with its label. */
export function notesOf(view: View, from: number, to: number): Array<[number, number]> {
  const {words, tokens, section} = view
  const found: Array<[number, number]> = []
  let begins = from
  for (let i = from + 1; i < to; i++) {
    const labelled = words[i] === '[' && words[i + 1] === '^'
    if (labelled && section.source.slice(tokens[i - 1]!.end, tokens[i]!.start).includes('\n')) {
      found.push([begins, i])
      begins = i
    }
  }
  found.push([begins, to])
  return found.map(([a, z]) => {
    if (SIGNS.has(words[a]!)) return [a + 1, z]
    // The figure of "[^1]:" is no amount.
    if (words[a] !== '[') return [a, z]
    let i = a
    while (i < z && i < a + 8 && words[i] !== ']') i++
    return [Math.min(z, words[i + 1] === ':' ? i + 2 : i + 1), z]
  })
}

/** A note that gives another way, and the words it says it in. */
export interface OtherWay {
  readonly text: string
  readonly start: number
}

/**
 * Takes from the entries what stands in a note as another way: the note says so ("instead", "for a lighter pudding"), or it gives an
 * amount of what the receipt's own text has an amount of.
 *
 * @param notes the receipt's notes, as tokens from and to
 * @param tell called for every note that is left out
 */
export function withoutOtherWays(
  view: View,
  drafts: readonly Draft[],
  notes: ReadonlyArray<readonly [number, number]>,
  tell: (other: OtherWay) => void,
): readonly Draft[] {
  if (notes.length === 0) return drafts
  const noteAt = new Int32Array(view.tokens.length).fill(-1)
  for (const [index, [from, to]] of notes.entries()) noteAt.fill(index, from, to)
  const own = new Set<string>()
  const said = new Map<number, Draft[]>()
  for (const draft of drafts) {
    const note = noteAt[draft.start]!
    if (note < 0) {
      if (draft.low !== null) own.add(key(draft))
    } else {
      const others = said.get(note)
      if (others === undefined) said.set(note, [draft])
      else others.push(draft)
    }
  }
  const left = new Set<Draft>()
  for (const [index, entries] of said) {
    const [from, to] = notes[index]!
    if (!(saysOtherWay(view, from, to) || entries.some((draft) => draft.low !== null && own.has(key(draft))))) continue
    for (const draft of entries) left.add(draft)
    tell({text: textOf(view, from, to), start: view.tokens[from]!.start})
  }
  return left.size === 0 ? drafts : drafts.filter((draft) => !left.has(draft))
}

function saysOtherWay({words}: View, from: number, to: number): boolean {
  for (let i = from; i < to; i++) if (ways.match(words, i, to) > 0) return true
  return false
}

const LONGEST = 240

/** The words of a note on one line, cut where they are long. */
export const noteWords = (text: string): string => {
  const line = text.replace(/\s+/g, ' ')
  return line.length > LONGEST ? `${line.slice(0, line.lastIndexOf(' ', LONGEST))} …` : line
}
