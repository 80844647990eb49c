import {readAmount} from './amounts.js'
import {percentAt} from './baker-percent.js'
import {pastSize} from './between.js'
import {isLabelLine, isPartAlone} from './dish-parts.js'
import {pastIngredientsWord} from './heading-words.js'
import {vague} from './indefinite-words.js'
import {readNoun} from './nouns.js'
import {readQuantity} from './quantities.js'
import {linesApart} from './section.js'
import {ENDER, itemHere, measureHere, PART, PREPARED, VERB, type View} from './view.js'
import {yieldAt} from './yield-phrases.js'

/**
 * What tells a list of ingredients from prose: run-in headings, lines that begin with an amount or a name, and an index by its page numbers.
 */

/** Tokens of the longest label over a list of ingredients. */
const LONGEST_LABEL = 30

/** The token behind the bracket that opens at `at`; −1 where it does not close. */
function pastBracket({words}: View, at: number, to: number): number {
  const close = words.indexOf(')', at)
  return close < 0 || close >= to || close - at > LONGEST_LABEL ? -1 : close + 1
}

/** The token behind the yield stated at token `at`: "for 2 loaves", "makes one 9-inch cake"; −1 where none is. */
function pastYield({section, tokens}: View, at: number, to: number): number {
  const said = yieldAt(section, at)
  if (said === null) return -1
  let end = at
  while (end < to && tokens[end]!.start < said.found.end) end++
  return end
}

/**
 * Is this line no more than the label over a list of ingredients, with how much they make or what it is baked in? "Ingredients", "You will need:",
 * "Ingredients (one 9 x 13 in pan)", "Ingredients — makes one 9-inch cake", "Zutaten für 4 Personen:".
 */
export function isIngredientsLabel(view: View, from: number, to: number): boolean {
  const {words, tokens} = view
  if (to - from > LONGEST_LABEL) return false
  let at = from
  while (at < to && tokens[at]!.kind === 'mark') at++
  const past = pastIngredientsWord(words.slice(at, to))
  if (past < 0) return false
  at += past
  while (at < to && tokens[at]!.kind === 'mark' && words[at] !== '(') at++
  if (at < to) at = words[at] === '(' ? pastBracket(view, at, to) : pastYield(view, at, to)
  if (at < 0) return false
  while (at < to && tokens[at]!.kind === 'mark') at++
  return at >= to
}

/** "INGREDIENTS.—", "1303. INGREDIENTS:", "Ingredients (serves 4):" at the start of a block: the token after it, else −1. */
export function runInStart(view: View, from: number, to: number): number {
  const {words, tokens} = view
  let i = from
  while (i < to && i - from < 4 && (tokens[i]!.kind === 'number' || tokens[i]!.kind === 'mark')) i++
  if (i >= to || (words[i] !== 'ingredients' && words[i] !== 'ingredient' && words[i] !== 'materials')) return -1
  if (isIngredientsLabel(view, i, to)) return -1
  let j = words[i + 1] === '(' ? pastBracket(view, i + 1, to) : i + 1
  if (j < 0) return -1
  const marks = j
  while (j < to && j - marks < 4 && tokens[j]!.kind === 'mark' && words[j] !== '|') j++
  return j > marks && j < to ? j : -1
}

/** The lines of a block as the text breaks them: token indices from and to. */
export function linesOf(view: View, from: number, to: number): Array<[number, number]> {
  const {tokens, section} = view
  const found: Array<[number, number]> = []
  let start = from
  for (let i = from + 1; i < to; i++) {
    const token = tokens[i]!
    if (!token.gap || token.joined) continue
    if (linesApart(section, tokens[i - 1]!, token)) {
      found.push([start, i])
      start = i
    }
  }
  found.push([start, to])
  return found
}

/** Does a step of the method follow in the line, or more than a list would hold? */
function hasVerb(view: View, from: number, to: number): boolean {
  const {bits, words} = view
  for (let i = from; i < to; i++)
    if (bits[i]! & VERB && !(bits[i]! & PREPARED) && (words[i - 1] === '.' || words[i - 1] === ';')) return true
  return to - from > 16
}

/** Longest label before the amounts of a part, words: "Für die Füllung". */
const LABEL = 3

/** "Zum Bestreichen: 1 Eigelb, 2 EL Milch", "Egg wash: 1 egg": what a part of the dish takes, told in one line. "Fold in: 100 g sugar" is a step. */
function isLabelled(view: View, from: number, to: number): boolean {
  const {words, bits, tokens} = view
  let i = from
  while (i < to && i - from < LABEL && tokens[i]!.kind === 'word') i++
  if (i === from || i + 1 >= to || words[i] !== ':' || bits[from]! & VERB || !tokens[from]!.capital) return false
  const quantity = readQuantity(view, i + 1, to)
  if (quantity === null || quantity.article) return false
  const noun = readNoun(view, words[quantity.next] === 'of' ? quantity.next + 1 : quantity.next, to, false)
  return noun !== null && !hasVerb(view, noun.next, to)
}

/** Does this line look like one of a list of ingredients? */
export function looksListed(view: View, from: number, to: number): boolean {
  const {words, bits, tokens} = view
  if (from >= to) return false
  if (to - from > 45) return false
  let i = from
  while (i < to && tokens[i]!.kind === 'mark') i++
  if (i >= to) return false
  // "08:00 mix": a time of day.
  if (tokens[i]!.kind === 'number' && words[i + 1] === ':' && tokens[i + 2]?.kind === 'number' && !tokens[i + 2]!.gap)
    return false
  if (/^(?:zutaten|ingredients)$/.test(words[i]!) && words[to - 1] === ':') return false
  const amount = readAmount(view, i, to)
  if (amount !== null || percentAt(view, i, to) !== null) return true
  if (isLabelled(view, i, to)) return true
  if (bits[i]! & PART && (words[i + 1] === 'of' || words[i + 1] === 'and')) return true
  // "unbaked 9-inch pie shell"
  let sized = i
  while (sized < to && sized - i < 3 && bits[sized]! & PREPARED) sized++
  if (sized > i && pastSize(view, sized, to) > 0) return true
  // "pound flour": a measure that is a verb too.
  const measure = bits[i]! & VERB && !tokens[i]!.capital ? measureHere(view, i) : null
  if (measure !== null && measure.next < to && to - i <= 4 && itemHere(view, measure.next) !== null) return true
  if (bits[i]! & VERB && !(itemHere(view, i) !== null && to - i <= 4)) return false
  if (vague.match(words, i, to) > 0) return true
  if (words[i] === 'the' && bits[i + 1] !== undefined && bits[i + 1]! & PART) return true
  const noun = readNoun(view, i, to, false)
  if (noun === null)
    return to - i <= 6 && !words.slice(i, to).some((_, k) => bits[i + k]! & VERB) && readNoun(view, i, to, true) !== null
  return noun.start - i <= 3 && !hasVerb(view, noun.next, to)
}

/** Wrapped prose breaks its lines in the middle of a phrase; lists do not. */
function endsClean(view: View, to: number): boolean {
  const {bits} = view
  return !(bits[to - 1]! & ENDER)
}

/** Longest line of a name with its amount behind it, words. */
const NAMED = 9

/** "Flour 500 g", "butter .... 2 oz": a name, and an amount that ends the line. */
function amountBehind(view: View, from: number, to: number): boolean {
  const {tokens} = view
  if (to - from > NAMED || tokens[from]!.kind !== 'word') return false
  const noun = readNoun(view, from, to, false)
  if (noun === null) return false
  for (let i = noun.next; i < to; i++) {
    if (tokens[i]!.kind === 'mark') continue
    const share = percentAt(view, i, to)
    if (share !== null) return share.next >= to
    const quantity = readQuantity(view, i, to)
    if (quantity === null) return false
    return quantity.next >= to || (quantity.next === to - 1 && tokens[to - 1]!.kind === 'mark')
  }
  return false
}

/** Are these lines of one block a list of ingredients? Half must begin with an amount, three in four look like entries. */
export function mostlyListed(view: View, all: ReadonlyArray<readonly [number, number]>): boolean {
  const lines = all.filter(([from, to]) => !isPartAlone(view, from, to) && !isLabelLine(view, from, to))
  let good = 0
  let amounts = 0
  for (const [from, to] of lines) {
    if (to - from > 24) continue
    const amount = readAmount(view, from, to) !== null || percentAt(view, from, to) !== null
    if ((amount && endsClean(view, to)) || amountBehind(view, from, to)) amounts++
    if (looksListed(view, from, to)) good++
  }
  return amounts >= 1 && amounts * 2 >= lines.length && good * 4 >= lines.length * 3
}

/** An index or a bill of fare: names and page numbers, no amounts. */
export function isIndex(view: View, from: number, to: number): boolean {
  const {tokens} = view
  if (to - from < 40) return false
  let pages = 0
  for (let i = from; i < to; i++) {
    const {kind, den, num} = tokens[i]!
    if (kind === 'number' && den === 1 && num > 24 && !(i + 1 < to && measureHere(view, i + 1) !== null)) pages++
  }
  return pages * 12 > to - from
}
