import type {Mode} from './entries.js'
import {readNoun} from './nouns.js'
import type {Quantity} from './quantities.js'
import {DESCRIBES, FILLING, measureHere, textOf, type View} from './view.js'

/**
 * What stands between an amount and the name it governs: a remark in brackets, “300 g (about 2 medium) carrots”, “2 cups (packed) sugar”,
 * and how large a thing is, “1 unbaked 9-inch pie shell”, “1 (23 cm) pastry case”.
 */

/** How many tokens a remark may have. */
const LONGEST = 14

/** The token after a bracket at `at` that closes in the same block; −1 where it does not, or another stands in it. */
function pastBracket({words, tokens}: View, at: number, to: number): number {
  for (let i = at + 1; i < to && i - at <= LONGEST && tokens[i]!.block === tokens[at]!.block && words[i] !== '('; i++)
    if (words[i] === ')') return i + 1
  return -1
}

const isNumber = ({tokens}: View, at: number, to: number): boolean => at < to && tokens[at]!.kind === 'number'

/** The token after “9-inch”, “23 cm”, “9"”, “9 x 13 inch”, “9- to 10-inch” at `at`; −1 where no size stands there. */
export function pastSize(view: View, at: number, to: number): number {
  const {words, tokens} = view
  if (!isNumber(view, at, to)) return -1
  let i = at + 1
  if (i < to && words[i] === '"' && !tokens[i]!.gap) i++
  else if (i < to && measureHere(view, i)?.row.dimension === 'length') i = measureHere(view, i)!.next
  const sized = i > at + 1
  // "9- to 10-inch"
  const joint = i + 1 < to && words[i] === '-' && words[i + 1] === 'to' ? i + 1 : i
  const more = joint < to && /^(?:x|×|by|to|bis|-|—)$/.test(words[joint]!) ? pastSize(view, joint + 1, to) : -1
  return more > 0 ? more : sized && i <= to ? i : -1
}

/** The token after a size and the words that say what the thing is like: “unbaked 9-inch”, “(23 cm)”. −1 where none stands at `at`. */
function pastLike(view: View, at: number, to: number): number {
  // "1 x 23 cm pastry case"
  let i = /^[x×]$/.test(view.words[at] ?? '') ? at + 1 : at
  while (i < to && i - at < 3 && view.bits[i]! & (DESCRIBES | FILLING)) i++
  if (view.words[i] !== '(') return pastSize(view, i, to)
  const size = pastSize(view, i + 1, to)
  return size > 0 && view.words[size] === ')' ? size + 1 : -1
}

/**
 * The quantity with what stands between it and the name among its own tokens, and kept as its note; as it was where nothing does.
 *
 * @param at the token behind the quantity, its measure and what it is sold in
 * @returns the quantity, whose `next` is the token after what was passed
 */
export function withBetween(view: View, quantity: Quantity, at: number, to: number, mode: Mode): Quantity {
  if (at >= to) return quantity
  const {words, bits, tokens} = view
  const counted = quantity.measure === 'count'
  const size = mode === 'list' && counted ? pastLike(view, at, to) : -1
  if (size < 0 && counted && quantity.article) return quantity
  const next = size > 0 ? size : words[at] === '(' ? pastBracket(view, at, to) : -1
  if (next < 0 || next >= to || tokens[next]!.kind !== 'word' || tokens[next]!.block !== tokens[at]!.block) return quantity
  const noun = readNoun(view, words[next] === 'of' ? next + 1 : next, to, mode === 'list', mode === 'list')
  // In prose, only what is certainly a name: "bake 40 minutes (a large loaf longer)".
  if (noun === null || (mode !== 'list' && (!noun.known || !(quantity.figure && !counted)))) return quantity
  if (size < 0) {
    const filled: string[] = []
    for (let i = at + 1; i < next - 1; i++) if (tokens[i]!.kind === 'word' && bits[i]! & FILLING) filled.push(words[i]!)
    // "2 cups (lightly packed) sugar": how it is filled.
    if (filled.length === next - at - 2) return {...quantity, next, hedges: [...quantity.hedges, ...filled]}
  }
  // "a 9-inch pie shell" is one, as "1 pie shell" is.
  return {
    ...quantity,
    next,
    article: quantity.article && size < 0,
    notes: [...quantity.notes, textOf(view, at, next).replace(/\s+/g, ' ')],
  }
}
