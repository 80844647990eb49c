import {noteLabels, otherWays} from '../lexicon/grammar-words.js'
import {type Draft, key} from './entries.js'
import {linesApart} from './section.js'
import {Phrases, textOf, type View} from './view.js'

/**
 * Footnotes, and notes below a receipt or beside it ("Note:", "Tip:"). What they give as another way of making it (“for a lighter pudding take four eggs”) is not added
 * to what the receipt takes.
 */

const ways = new Phrases(otherWays)
const labels = new Phrases(noteLabels)
/** How many words may stand before the label: "Cook's tip:", "Recipe notes". */
const WORDS_BEFORE = 2
/** Longest label that stands alone in its paragraph, words and marks: "Tips & tricks:". */
const ALONE = 5
const CLOSES = new Set([':', '—', '.', '-'])

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

/** The token after a note's label that begins at `from` ("Note:", "N.B.—", "Tip 2:"); −1 where none stands there. */
function labelEnd({words, tokens, section}: View, from: number, to: number): number {
  let at = from
  while (at < to && at < from + 3 && tokens[at]!.kind === 'mark') at++
  for (let i = at; i <= at + WORDS_BEFORE && i < to && tokens[i]!.kind === 'word'; i++) {
    let end = labels.match(words, i, to)
    if (end < 0) continue
    if (end < to && tokens[end]!.kind === 'number') end++
    if (end >= to) return end
    if (CLOSES.has(words[end]!)) return end + 1
    // "NB the oven must be hot": in capitals it needs no mark.
    return i === at && /^[A-Z]{2}/.test(section.source.slice(tokens[i]!.start, tokens[end - 1]!.end)) ? end : -1
  }
  return -1
}

/** Does the block hold only a label ("Notes", "Tips & tricks"), of what follows it? */
function isLabel(view: View, from: number, to: number): boolean {
  if (to - from > ALONE) return false
  const end = labelEnd(view, from, to)
  return (end >= to && to > from) || labels.match(view.words, from, to) > 0
}

/** A short paragraph without figures or a stop, as a label over a part of a receipt is. */
function isShort({tokens}: View, from: number, to: number): boolean {
  if (to - from > ALONE || to <= from || tokens[to - 1]!.word === '.') return false
  for (let i = from; i < to; i++) if (tokens[i]!.kind === 'number') return false
  return true
}

/** The token at which each block of a receipt begins, and behind the last block the number of tokens. */
function beginnings({tokens, section}: View): number[] {
  const found: number[] = []
  let at = 0
  for (let block = 0; block < section.blocks.length; block++) {
    found.push(at)
    while (at < tokens.length && tokens[at]!.block === block) at++
  }
  return [...found, at]
}

/** A note is called by a sign in the text, or has a label. */
export type NoteKind = 'called' | 'labelled'

/**
 * Which blocks of a receipt are notes, told from the head of their line: "[^1]:", a sign that is called in another block, a label
 * ("Note:"); and what stands under a label that stands alone.
 */
export function noteBlocks(view: View): ReadonlyMap<number, NoteKind> {
  const {blocks} = view.section
  const begins = beginnings(view)
  const notes = new Map<number, NoteKind>()
  const signed = signTest(view)
  let under = false
  for (const [block, {kind}] of blocks.entries()) {
    const [from, to] = [begins[block]!, begins[block + 1]!]
    if (kind === 'heading' || (kind === 'paragraph' && isShort(view, from, to))) {
      under = block > 0 && isLabel(view, from, to)
      continue
    }
    if (kind === 'row' || kind === 'code') continue
    if (under || labelEnd(view, from, to) > 0) notes.set(block, 'labelled')
    else if (signed(block, from)) notes.set(block, 'called')
  }
  return notes
}

/** A test of a block, by its number and its first token: is it a note by its sign? */
function signTest(view: View): (block: number, from: number) => boolean {
  const {source, blocks, start, end} = view.section
  if (!/\[\^|[*†‡§]/.test(source.slice(start, end))) return () => false
  const calls = callsOf(view)
  return (block, from) => {
    const {kind, start: at} = blocks[block]!
    const line = Math.max(start, source.lastIndexOf('\n', at) + 1)
    const head = source.slice(line, at + 40)
    if (/^[ \t]*\[\^[^\]\s]{1,30}\]:/.test(head)) return true
    const sign = /^[ \t]*(?:[-+] )?\\?([*†‡§])/.exec(head)?.[1]
    if (sign === undefined || !(kind === 'item' || SIGNS.has(view.words[from] ?? ''))) return false
    const called = calls.get(sign)
    return called !== undefined && called.size > (called.has(block) ? 1 : 0)
  }
}

/** A note's place in the file, and whether it says that it gives another way. */
export interface NoteSpan {
  readonly start: number
  readonly end: number
  readonly otherWay: boolean
}

/** Every note of a receipt: whole blocks, and those that begin within a block, at a line or a sentence ("… 40 minutes. Note: …"). */
export function noteSpans(view: View): NoteSpan[] {
  const {tokens} = view
  const whole = noteBlocks(view)
  const begins = beginnings(view)
  const found: NoteSpan[] = []
  const put = (from: number, to: number): void => {
    if (from < to) found.push({start: tokens[from]!.start, end: tokens[to - 1]!.end, otherWay: saysOtherWay(view, from, to)})
  }
  for (const [block, {kind}] of view.section.blocks.entries()) {
    const [from, to] = [begins[block]!, begins[block + 1]!]
    if (whole.has(block)) for (const [a, z] of notesOf(view, from, to)) put(a, z)
    else if (kind === 'paragraph' || kind === 'item') {
      const at = inside(view, from, to)
      if (at > 0) put(at, to)
    }
  }
  return found
}

/** The token of a note's label within a block, behind a stop or at the head of a line; −1 where none stands there. */
function inside({words, tokens, section}: View, from: number, to: number): number {
  for (let i = from + 1; i < to; i++) {
    if (!tokens[i]!.capital) continue
    const end = labels.match(words, i, to)
    if (end < 0 || end >= to || (words[end] !== ':' && words[end] !== '—' && words[end + 1] !== '—')) continue
    const before = tokens[i - 1]!
    if (before.word === '.' || before.word === ')' || linesApart(section, before, tokens[i]!)) return i
  }
  return -1
}

/** The notes of a block of notes, token by token: each begins a line with its label. */
export function notesOf(view: View, from: number, to: number): Array<[number, number]> {
  const {words, tokens, section} = view
  const found: Array<[number, number]> = []
  let begins = from
  for (let i = from + 1; i < to; i++) {
    const labelled = words[i] === '[' && words[i + 1] === '^'
    if (labelled && linesApart(section, tokens[i - 1]!, tokens[i]!)) {
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

/** A note as the reader of ingredients met it: tokens from and to, and whether what it names is beside the receipt in any case. */
export interface MetNote {
  readonly from: number
  readonly to: number
  /** It has a label, and stands by a receipt that lists what goes in. */
  readonly beside: boolean
}

/**
 * Takes from the entries what stands in a note as another way: the note says so ("instead", "for a lighter pudding"), it gives an
 * amount of what the receipt's own text has an amount of, or it stands by a list, which is whole without it.
 *
 * @param notes the receipt's notes
 * @param tell called for every note that is left out; of a note beside a list, for those that give amounts
 */
export function withoutOtherWays(
  view: View,
  drafts: readonly Draft[],
  notes: readonly MetNote[],
  tell: (other: OtherWay) => void,
): readonly Draft[] {
  if (notes.length === 0) return drafts
  const noteAt = new Int32Array(view.tokens.length).fill(-1)
  for (const [index, {from, to}] of notes.entries()) noteAt.fill(index, from, to)
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
    const {from, to, beside} = notes[index]!
    const measured = entries.some((draft) => draft.low !== null)
    const other = saysOtherWay(view, from, to) || entries.some((draft) => draft.low !== null && own.has(key(draft)))
    if (!other && !beside) continue
    for (const draft of entries) left.add(draft)
    if (measured || !beside) tell({text: textOf(view, from, to), start: view.tokens[from]!.start})
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
