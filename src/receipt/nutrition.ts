import {headingWords} from '../lexicon/heading-words.js'
import {nutritionWords} from '../lexicon/nutrition-words.js'
import {wordsUsed} from '../lexicon/row.js'
import type {NutritionWord} from '../lexicon/schema.js'
import {headingUse, pastNutritionWord} from './heading-words.js'
import {linesApart, type Section, type Token} from './section.js'
import {endsSentence} from './sentences.js'

/**
 * What a recipe says is in a serving of its dish ("Per slice: 210 kcal, 8 g fat"): none of it goes in, and none of it is a yield. It is taken from the
 * tokens that all else reads.
 */

const used = (use: NutritionWord['use']): ReadonlySet<string> => new Set(wordsUsed(nutritionWords, use))
const ENERGY = used('energy')
const NUTRIENTS = used('nutrients')
const SHARES = used('shares')
const SHARED = used('shared')

/** Tokens [from, to) of one line of a block. */
type Line = readonly [from: number, to: number]

/** The section without the tokens of what is in a serving; itself where it says nothing of that. */
export function withoutNutrition(section: Section): Section {
  const {tokens, blocks, source} = section
  const headed = blocks.some(({kind, text}, i) => i > 0 && kind === 'heading' && headingUse(text) === 'nutrition')
  if (!headed && !tokens.some(({word}, i) => ENERGY.has(word) || startsShare(tokens, i) || pastLabel(tokens, i, i + LABEL) > i))
    return section
  const out = new Uint8Array(tokens.length)
  let under = false
  /** The line before told of it. */
  let behind = false
  for (const [from, to] of linesOf(section)) {
    const {kind, text} = blocks[tokens[from]!.block]!
    if (kind === 'heading') {
      under = tokens[from]!.block > 0 && headingUse(text) === 'nutrition'
      behind = under
      if (under) out.fill(1, from, to)
      continue
    }
    let first = from
    while (first < to - 1 && tokens[first]!.kind === 'mark') first++
    const told = under || isTold(tokens, first, to, behind, kind === 'row')
    if (told) out.fill(1, from, under ? to : toldEnd(tokens, first, to))
    behind = told || energyIn(tokens, from, to, out)
  }
  const kept = tokens.filter((_, i) => out[i] === 0)
  return kept.length === tokens.length ? section : {...section, source, tokens: kept}
}

/** The first words of labels: looked up first, since every word of a book is. */
const LABELS: ReadonlySet<string> = new Set(wordsUsed(headingWords, 'nutrition').map((label) => label.split(' ')[0]!))
/** Words of the longest label. */
const LABEL = 4

/** The token behind a word that labels it ("Nutrition", "Nährwerte") at `i`; −1 where none stands there. */
function pastLabel(tokens: readonly Token[], i: number, to: number): number {
  if (!LABELS.has(tokens[i]!.word)) return -1
  const end = pastNutritionWord(tokens.slice(i, Math.min(to, i + LABEL)).map(({word}) => word))
  return end < 0 ? -1 : i + end
}

/** The lines of a section's blocks. */
function* linesOf({tokens, source}: Section): Generator<Line> {
  let from = 0
  for (let i = 1; i <= tokens.length; i++) {
    const token = tokens[i]
    const before = tokens[i - 1]!
    if (token?.block === before.block && !(token.gap && linesApart({source}, before, token))) continue
    yield [from, i]
    from = i
  }
}

/** Is all of the line from `first` to `to` of what is in a serving, by its first words? */
function isTold(tokens: readonly Token[], first: number, to: number, behind: boolean, row: boolean): boolean {
  const {word} = tokens[first]!
  if (pastLabel(tokens, first, to) > first) return true
  if (behind && (NUTRIENTS.has(word) || ENERGY.has(word) || startsShare(tokens, first))) return true
  const rest = tokens.slice(first, to)
  // "Calories: 340", "Calories | 340 kcal"
  if (ENERGY.has(word) && rest.some(({kind}) => kind === 'number')) return true
  return startsShare(tokens, first) && (row ? isHeadOfThem(tokens, to) : rest.some((t) => ENERGY.has(t.word)))
}

/** Where what is told from `first` on ends: before the first sentence that names none of it. "Nutrition: 14 g fat. Serves 4." */
function toldEnd(tokens: readonly Token[], first: number, to: number): number {
  let end = first
  while (end < to) {
    let stop = end
    while (stop < to && !endsSentence(tokens, stop)) stop++
    if (end > first && !tells(tokens, end, stop)) return end
    end = stop + 1
  }
  return to
}

/** Do the tokens [from, to) name any of it? */
function tells(tokens: readonly Token[], from: number, to: number): boolean {
  for (let k = from; k < to; k++)
    if (NUTRIENTS.has(tokens[k]!.word) || ENERGY.has(tokens[k]!.word) || startsShare(tokens, k) || pastLabel(tokens, k, to) > k)
      return true
  return false
}

/** "Per serving", "pro 100 g" at token `i`. */
const startsShare = (tokens: readonly Token[], i: number): boolean =>
  SHARES.has(tokens[i]!.word) && SHARED.has(tokens[i + 1]?.word ?? '')

/** Whether the row that begins at token `at`, past its marks, is one of nutrients: the row before it is their head. */
function isHeadOfThem(tokens: readonly Token[], at: number): boolean {
  let i = at
  while (tokens[i]?.kind === 'mark') i++
  return NUTRIENTS.has(tokens[i]?.word ?? '') || ENERGY.has(tokens[i]?.word ?? '')
}

const PARTED = /^[,;|·•(/)]$/

/** Marks in `out` the clauses about energy in the line [from, to), with those about nutrients beside them. Whether there are any. */
function energyIn(tokens: readonly Token[], from: number, to: number, out: Uint8Array): boolean {
  let found = false
  for (let i = from; i < to; i++) {
    const beside = tokens[i - 1]?.kind === 'number' || (tokens[i + 1]?.word === ':' && tokens[i + 2]?.kind === 'number')
    if (out[i] === 1 || !ENERGY.has(tokens[i]!.word) || i === from || !beside) continue
    found = true
    const parts = (k: number): boolean => PARTED.test(tokens[k]!.word) || endsSentence(tokens, k)
    let start = i
    while (start > from && !parts(start - 1)) start--
    // "… 8 g fat, 12 g sugar, 210 kcal"
    for (;;) {
      if (start - 1 <= from || tokens[start - 1]!.word === '(' || endsSentence(tokens, start - 1)) break
      let a = start - 1
      while (a > from && !parts(a - 1)) a--
      if (!tells(tokens, a, start - 1)) break
      start = a
    }
    let end = i + 1
    while (end < to && !parts(end)) end++
    for (;;) {
      if (end >= to || tokens[end]!.word === ')' || endsSentence(tokens, end)) break
      let z = end + 1
      while (z < to && !parts(z)) z++
      if (!tells(tokens, end + 1, z)) break
      end = z
    }
    out.fill(1, start, end)
    i = end
  }
  return found && out.subarray(from, to).every((one, k) => one === 1 || tokens[from + k]!.kind === 'mark')
}
