import {pasteWork} from '../lexicon/grammar-words.js'
import {readAmount} from './amounts.js'
import type {Entries, Mode} from './entries.js'
import {greases} from './greasing.js'
import {pastTaste, vague} from './indefinite-words.js'
import {GENERAL, MADE} from './item-classes.js'
import {likened, sizeOf} from './likened-sizes.js'
import {type Noun, pastSoldAs, readNoun} from './nouns.js'
import {DESCRIBES, ENDER, FILLING, itemHere, measureHere, NOTFOOD, OPENER, PART, type View} from './view.js'

/**
 * Names without an amount: “a little salt”, “and pepper”, and a bare name in a list or in prose.
 */

/** "in the shape of a pear": what a thing only looks like. */
export const LOOKS = new Set([
  'shape',
  'form',
  'figure',
  'appearance',
  'colour',
  'color',
  'likeness',
  'thickness',
  'length',
  'breadth',
  'consistency',
  'consistence',
  'fashion',
  'manner',
])

/** After "a little salt": "and pepper". The token after the last. */
function moreNames(entries: Entries, at: number, to: number, mode: Mode, bare: boolean): number {
  const {words} = entries.view
  let i = pastTaste(entries.view, at, to)
  while (i + 1 < to && (words[i] === 'and' || words[i] === '&')) {
    if (readAmount(entries.view, i + 1, to) !== null) break
    const noun = readNoun(entries.view, i + 1, to, false)
    if (noun === null || noun.start !== i + 1) break
    const size = sizeOf(entries.view, noun.next, to)
    if (size !== null) break
    entries.push(
      {
        start: i + 1,
        next: pastTaste(entries.view, noun.next, to),
        item: noun.item,
        row: noun.row,
        known: noun.known,
        prepared: noun.prepared,
        bare,
        confidence: 0.75,
      },
      mode,
    )
    i = pastTaste(entries.view, noun.next, to)
  }
  return i
}

/** „ein paar dünne Scheiben Speck“: no “of” stands before the name. */
const isGermanPiece = (word: string): boolean => /^(?:scheiben?|zweige?|stangel)$/.test(word)

/** "a little salt", "some flour", "sugar enough": the token after it, else −1. */
export function vagueEntry(entries: Entries, at: number, to: number, mode: Mode): number {
  const {words} = entries.view
  const next = vague.match(words, at, to)
  if (next < 0) return -1
  let i = next
  // "a few slices of ham", "a few thin slices of beef", "any kind of jam": no count, but the piece is named.
  let like = i
  while (
    like < to &&
    like - i < 3 &&
    entries.view.bits[like]! & (FILLING | DESCRIBES) &&
    measureHere(entries.view, like) === null
  )
    like++
  const cut = like < to ? measureHere(entries.view, like) : null
  const piece = cut !== null && (words[cut.next] === 'of' || isGermanPiece(words[like]!)) ? cut : measureHere(entries.view, i)
  if (
    piece !== null &&
    (words[piece.next] === 'of' || isGermanPiece(words[piece.next - 1]!)) &&
    piece.row.dimension !== 'mass' &&
    piece.next < to
  )
    i = piece.next
  else if (
    (words[i] === 'kind' || words[i] === 'sort' || words[i] === 'remains' || words[i] === 'grains') &&
    words[i + 1] === 'of'
  )
    i++
  if (words[i] === 'of') i++
  const noun = readNoun(entries.view, i, to, mode === 'list', mode === 'list')
  if (noun === null) return -1
  if (mode !== 'list' && noun.row?.group === 'fat' && greases(entries.view, at)) return noun.next
  if (noun.row?.group === 'made dish' && mode !== 'list' && !/paste|puff/.test(noun.item)) return -1
  const size = sizeOf(entries.view, noun.next, to)
  if (size !== null) {
    likened(entries, {start: at, next: size.next, size, noun, confidence: 0.92}, mode)
    return size.next
  }
  entries.push(
    {
      start: at,
      next: pastTaste(entries.view, noun.next, to),
      item: noun.item,
      row: noun.row,
      known: noun.known,
      prepared: noun.prepared,
      hedges: [words.slice(at, next).join(' ')],
      confidence: 0.8,
    },
    mode,
  )
  return moreNames(entries, noun.next, to, mode, false)
}

/** "Make a very stiff paste": what is made of the rest, where "cover with a thin paste" is one more thing. */
function isMade({words, bits}: View, at: number): boolean {
  let i = at - 1
  while (i > at - 5 && i >= 0 && (bits[i]! & DESCRIBES || /^(?:stiff|very|pretty|tolerable|fine)$/.test(words[i]!))) i--
  return /^an?$/.test(words[i] ?? '') && /^(?:make|makes|making|made|form|forms)$/.test(words[i - 1] ?? '')
}

const PASTE_WORK: ReadonlySet<string> = new Set(pasteWork)
/** How far before a crust the word stands that tells it goes on the dish: "put over it all a crust". */
const LAID = 6

/** "Cover with a crust", "lay a good crust over it", "put on the top crust": paste that goes on a dish. "A crust of crumbs" is none. */
function isLaidOn({words, tokens, bits}: View, at: number, {row, next}: Noun): boolean {
  if (!/^(?:paste|puff paste)$/.test(row?.id ?? '') || words[next] === 'of') return false
  let before = at - 1
  while (before > at - 4 && before >= 0 && (bits[before]! & DESCRIBES || WHICH_CRUST.test(words[before]!))) before--
  // "The crust" is one that was told of.
  if (!/^an?$/.test(words[before] ?? '') && !WHICH_CRUST.test(words[at - 1] ?? '')) return false
  for (let i = at - 1; i >= 0 && i >= at - 1 - LAID && tokens[i]!.block === tokens[at]!.block; i--) {
    if (tokens[i]!.kind === 'mark' && words[i] !== ',') return false
    if (PASTE_WORK.has(words[i]!)) return true
  }
  return false
}
const WHICH_CRUST = /^(?:top|upper|under|lower|bottom|second)$/

/** Does a bare name in prose stand for something that goes into the mixture? */
function goesIn(view: View, at: number, noun: Noun, to: number): boolean {
  const {words, bits} = view
  const row = noun.row
  if (row === null) return false
  if (row.group === 'made dish' && !/paste|puff|crust/.test(row.id)) return false
  const after = words[noun.next]
  const word = words[at]
  // "Cream 1/2 lb. butter": a verb.
  if (word === 'cream' && noun.next === at + 1 && view.tokens[at]!.capital && (bits[noun.next] ?? 0) & OPENER) return false
  // "beet 14 eggs", "beet them well": how old books spell the verb.
  if (
    word === 'beet' &&
    noun.next === at + 1 &&
    ((bits[noun.next] ?? 0) & OPENER || /^(?:it|them|well|up|all)$/.test(after ?? ''))
  )
    return false
  // "butter the dish", "flour your board": a verb.
  if (
    (word === 'butter' ||
      word === 'flour' ||
      word === 'oil' ||
      word === 'lard' ||
      word === 'ice' ||
      word === 'rasp' ||
      word === 'cream' ||
      word === 'core') &&
    noun.next === at + 1 &&
    !(after === 'the' && words[noun.next + 1] === 'weight') &&
    (after === 'the' ||
      after === 'your' ||
      after === 'a' ||
      after === 'them' ||
      after === 'it' ||
      after === 'some' ||
      after === 'pans' ||
      after === 'or')
  )
    return false
  if (noun.next < to && bits[noun.next]! & NOTFOOD) return false
  if (row.group === 'fat' && greases(view, at)) return false
  const before = words[at - 1]
  // "let them boil till they turn white"
  if (word === 'white' && noun.next === at + 1 && noun.start === at && before !== 'the' && before !== 'and' && before !== 'with')
    return false
  if (before === 'make' || before === 'making') return false
  // "Make a stiff paste"
  if (row.group === 'made dish' && (isMade(view, at) || (after === 'made' && /^(?:with|of)$/.test(words[noun.next + 1] ?? ''))))
    return false
  if (isLaidOn(view, at, noun)) return true
  if (before === 'a' || before === 'an' || MADE.has(after ?? '') || GENERAL.has(noun.item) || row.group === 'bread') return false
  if (before === '-' || view.tokens[at]!.joined) return false
  if (row.id === 'water')
    return before === 'with' || before === 'and' || before === 'cold' || before === 'boiling' || before === 'warm'
  return true
}

/** "water, blood warm", "the thickness of cream": a name that only says how warm or how thick another thing is. */
function comparison(view: View, at: number, next: number): boolean {
  const {words} = view
  if (words[at - 1] === 'of' && LOOKS.has(words[at - 2] ?? '')) return true
  if (words[next] !== 'warm' && words[next] !== 'heat') return false
  const before = words[at - 1] === ',' ? words[at - 2] : words[at - 1]
  return words[at] === 'blood' || (words[at] === 'milk' && before === 'water')
}

/** A name by itself: in a list an entry; in prose a candidate, unless `quiet`. The token after it, −1 where no name begins. */
export function bareName(entries: Entries, at: number, to: number, mode: Mode, quiet: boolean): number {
  const {words, bits, tokens, section} = entries.view
  const first = tokens[at]!
  if (first.kind !== 'word') return -1
  // "Lamb shoulder, bone in", "chicken thighs, skin on": how it is sold.
  const sold = mode === 'list' ? pastSoldAs(entries.view, at, to) : -1
  if (sold > 0 && (sold === to || tokens[sold]!.kind === 'mark')) return sold
  if (mode !== 'list') {
    if (bits[at]! & ENDER) return -1
    const found = itemHere(entries.view, at)
    if (found === null) return -1
    const longer = measureHere(entries.view, at)
    if (longer !== null && longer.next > found.next) return longer.next
  } else if (bits[at]! & ENDER && itemHere(entries.view, at) === null) return -1
  const startsEntry =
    at === 0 ||
    tokens[at - 1]!.block !== first.block ||
    tokens[at - 1]!.kind === 'mark' ||
    words[at - 1] === 'and' ||
    words[at - 1] === 'or' ||
    words[at - 1] === '&'
  const open = mode === 'list' && startsEntry
  const noun = readNoun(entries.view, at, to, open, mode === 'list')
  if (noun === null) {
    // "bread pan": past both words.
    const found = itemHere(entries.view, at)
    return found === null ? -1 : found.next
  }
  const {next} = noun
  if (comparison(entries.view, at, next)) return next
  const size = sizeOf(entries.view, next, to)
  if (size !== null) {
    likened(entries, {start: at, next: size.next, size, noun, confidence: 0.9}, mode)
    return size.next
  }
  const after = pastTaste(entries.view, next, to)
  const tasted = after > next
  if (mode === 'list') {
    // "1 lemon, zest and juice": of the entry before.
    if (
      next === at + 1 &&
      bits[at]! & PART &&
      noun.start === at &&
      at > 0 &&
      tokens[at - 1]!.block === first.block &&
      words[at - 1] !== '.' &&
      entries.last !== null &&
      entries.last.measure === 'count'
    )
      return next
    // What follows a comma after an entry with an amount may only say how it is got ready.
    if (!noun.known && !startsEntry) return next
    // After the first name of a line, a word the lexicon lacks says how the thing is got ready.
    if (
      !noun.known &&
      at > 0 &&
      tokens[at - 1]!.block === first.block &&
      first.block !== entries.runInBlock &&
      section.blocks[first.block]!.kind !== 'paragraph'
    )
      return next
    if (!noun.known && section.blocks[first.block]!.kind !== 'item' && noun.next - noun.start > 4) return next
    if (words[at - 1] === 'in' || words[at - 1] === 'with' || words[at - 1] === 'from' || words[at - 1] === 'for') return next
  } else if (!tasted && (quiet || !goesIn(entries.view, at, noun, to))) return next
  const {item, row, known, prepared} = noun
  // In a list a name is an entry by where it stands; in prose only what is said of it makes it one.
  const listed = mode === 'list'
  const bare = listed || !tasted
  const confidence = listed ? (known ? 0.8 : 0.5) : tasted ? 0.8 : 0.6
  entries.push({start: at, next: after, item, row, known, prepared, bare, confidence}, mode)
  return after
}
