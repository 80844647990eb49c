import {partNames, partsAlone} from '../lexicon/grammar-words.js'
import {stageHeads} from '../lexicon/stage-heads.js'
import type {Entries, Mode} from './entries.js'
import {readNoun} from './nouns.js'
import {readQuantity} from './quantities.js'
import {linesApart} from './section.js'
import {CARDINAL, VERB, type View} from './view.js'

/**
 * The parts of a dish that a receipt gives ingredients for by themselves: the crust, the icing, the sauce.
 */

const FOR = /^(?:for|fur)$/
const ARTICLES = /^(?:the|a|an|den|die|das)$/

const STAGES: ReadonlyMap<string, string> = new Map(
  stageHeads.flatMap(({part, words}) => words.map((word) => [word, part] as const)),
)

/** The part of the receipt that a stage's name stands for, in tokens [from, to); null where they name none. "Sour (g)", "1st sour". */
export function stageIn({words, tokens}: View, from: number, to: number): string | null {
  const said: string[] = []
  for (let i = from; i < to && !/^[(:,%—]$/.test(words[i]!); i++)
    if (tokens[i]!.kind === 'word' && words[i] !== 'the') said.push(words[i]!)
  return STAGES.get(said.join(' ')) ?? null
}

/** Stages' names that alone on a line may be anything else. */
const SAY_LITTLE: ReadonlySet<string> = new Set(['final', 'build', 'mash', 'scald', 'ansatz', 'refreshment'])

/** The name of a part in a few words ("For the icing"), else ''. */
export function partIn(view: View, from: number, to: number): string {
  const {words} = view
  const stage = from < to && !(to - from === 1 && SAY_LITTLE.has(words[from]!)) ? stageIn(view, from, to) : null
  if (stage !== null) return stage === '' ? 'dough' : stage
  for (let i = to - 1; i >= from; i--) {
    const name = partNames[words[i]!]
    if (name !== undefined) return name
  }
  const isFor = FOR.test(words[from] ?? '')
  const start = isFor ? from + 1 : from
  if (counts(view, start)) return ''
  const skip = ARTICLES.test(words[start] ?? '') ? start + 1 : start
  return isFor || words[from] === 'the' ? words.slice(skip, Math.min(to, skip + 3)).join(' ') : ''
}

/** The part that a label or heading over a list names behind "for": "Zutaten für den Teig", but not "Ingredients for a cake"; else ''. */
export function partOfList(view: View, from: number, to: number): string {
  for (let i = from + 1; i < to; i++) {
    if (!FOR.test(view.words[i]!)) continue
    const part = partIn(view, i, to)
    return WHOLES.has(part) ? '' : part
  }
  return ''
}

/** "For 4 pizzas", "For one 2 kg loaf": how much it makes, and no part. */
const counts = ({tokens, bits, words}: View, at: number): boolean =>
  tokens[at]?.kind === 'number' ||
  (bits[at]! & CARDINAL) !== 0 ||
  /^(?:class|party|family|group|company|crowd)$/.test(words[at + 1] ?? '')

/** What the dish itself is called, and none of its parts. */
const WHOLES: ReadonlySet<string> = new Set(['cake', 'pudding'])

const PARTS_ALONE: ReadonlySet<string> = new Set(partsAlone)

/** The stage that is all the words of a line [from, to) name: none in "Levain 28 %". */
const stageAlone = (view: View, from: number, to: number): string | null =>
  view.tokens.slice(from, to).some(({kind}) => kind === 'number') ? null : stageIn(view, from, to)

/** Tokens of the longest line that may name a part, with when it is mixed behind the name. */
const LONGEST_LINE = 20

/** The end of a name that a line [from, to) may hold: before its last mark, and before "(am Vorabend)", which says when. */
function nameEnd({words, tokens}: View, from: number, to: number): number {
  if (words[to - 1] === ')' || words[to - 2] === ')') {
    const open = words.indexOf('(', from + 1)
    if (open > from && open < to) return open
  }
  return tokens[to - 1]!.kind === 'mark' ? to - 1 : to
}

/** Is this line a heading? "For the crust:" sets the part; "Ingredients:" alone says nothing. */
export function partLine(entries: Entries, from: number, to: number): boolean {
  const {words} = entries.view
  if (to - from > LONGEST_LINE) return false
  const closed = words[to - 1] === ':' || words[to - 1] === '—'
  const stop = nameEnd(entries.view, from, to)
  if (stop <= from || stop - from > 6) return false
  const stage = stageAlone(entries.view, from, stop)
  if (stage !== null && (closed || stop - from > 1 || !SAY_LITTLE.has(words[from]!))) {
    entries.part = stage
    return true
  }
  // "Zutaten für 1 Zopf:", "Ingredients for 2 loaves:"
  if (/^(?:zutaten|ingredients)$/.test(words[from]!)) {
    const part = partOfList(entries.view, from, stop)
    if (closed || part !== '') {
      entries.part = part
      return true
    }
  }
  if (FOR.test(words[from]!) && counts(entries.view, from + 1) && partIn(entries.view, from, stop) === '') return true
  if (FOR.test(words[from]!) || (closed && stop - from <= 4)) {
    const part = partIn(entries.view, from, stop)
    if (part !== '') {
      entries.part = WHOLES.has(part) || part === 'dough' ? '' : part
      return true
    }
  }
  // "Streusel" over a list, without a mark: a word that names nothing one buys.
  if (stop - from <= 2 && PARTS_ALONE.has(words[stop - 1]!)) {
    const part = partIn(entries.view, from, stop)
    entries.part = part === 'dough' ? '' : part
    return true
  }
  return /^(?:ingredients?|method|directions?|zutaten|zubereitung)$/.test(words[from]!) && stop === from + 1
}

/** "For the paste" alone on its line, without an amount: a label, where "for frying" and "for the tin: butter" name what goes in. */
export function isPartAlone({words, bits}: View, from: number, to: number): boolean {
  if (!FOR.test(words[from]!) || !ARTICLES.test(words[from + 1] ?? '') || to - from < 3 || to - from > 6) return false
  for (let i = from + 2; i < to; i++) if (bits[i]! & VERB || words[i] === ',' || (words[i] === ':' && i + 1 < to)) return false
  return true
}

/** "Teig:", "Streusel:" alone on its line: the name of a part that is mixed apart. */
export const isLabelLine = (view: View, from: number, to: number): boolean => {
  const {words} = view
  if (words[to - 1] === ':' && to - from <= 3 && partNames[words[to - 2] ?? ''] !== undefined) return true
  // "Vorteig", "Final dough (next morning)" over its lines, without a mark.
  const stop = to - from <= LONGEST_LINE ? nameEnd(view, from, to) : from
  if (stop <= from || stop - from > LABEL) return false
  return PARTS_ALONE.has(words[stop - 1]!) || (stageAlone(view, from, stop) ?? 'final') !== 'final'
}

/** A line of a list that is no more than the name of a part that was given: "- Grundsauer", "- all of the levain". */
export function isPartAgain({view, drafts}: Entries, from: number, to: number): boolean {
  const {words, tokens} = view
  let at = from
  while (at < to && (tokens[at]!.kind === 'mark' || ALL_OF.test(words[at]!))) at++
  const stop = at < to ? nameEnd(view, at, to) : at
  if (stop <= at || stop - at > LABEL) return false
  const stage = stageAlone(view, at, stop)
  return stage !== null && stage !== '' && drafts.some((one) => one.part === stage && one.inList)
}
const ALL_OF = /^(?:all|of|the|your|whole|entire|der|den|das|die|gesamte[rn]?|ganze[rn]?)$/

/** Longest label of a part within a text, words: "Second dough". */
const LABEL = 3

/**
 * "Caramel: 100 g butter, …", "Base = 1 cup flour": a label before an amount with a name of its own sets the part, where "Flour: 500 g" is
 * an entry. The token after the label's mark, else −1.
 */
export function partLabel(entries: Entries, at: number, to: number): number {
  const {view} = entries
  const {words, tokens, bits} = view
  let mark = at
  while (mark < to && mark < at + LABEL && tokens[mark]!.kind === 'word') mark++
  if (mark === at || (words[mark] !== ':' && words[mark] !== '=') || mark + 1 >= to || !tokens[at]!.capital) return -1
  // "Final dough: all of the sponge, …"
  if (words[mark + 1] === 'all') {
    entries.part = partIn(view, at, mark) || words.slice(at, mark).join(' ')
    return mark + 1
  }
  const quantity = readQuantity(view, mark + 1, to)
  if (quantity === null) return -1
  // "Eggs: 2 large", and not "Egg wash: 1 egg".
  const labelled = quantity.measure === 'count' ? readNoun(view, at, mark, false) : null
  if (labelled !== null && labelled.next === mark) return -1
  const from = words[quantity.next] === 'of' ? quantity.next + 1 : quantity.next
  const noun = from < to ? readNoun(view, from, to, true) : null
  // "Flour: 500 g⏎Water: 320 g"
  if (noun?.known !== true || linesApart(view.section, tokens[from - 1]!, tokens[noun.start]!)) return -1
  // "Fold in:" is a step, of no part by itself.
  if (bits[at]! & VERB) {
    entries.part = ''
    return mark + 1
  }
  // "Zutaten: 500 g Mehl, …": of the whole.
  if (/^(?:zutaten|ingredients?|you|sie)$/.test(words[at]!)) {
    entries.part = ''
    return mark + 1
  }
  const name = partIn(view, at, mark)
  entries.part = name === '' ? words.slice(at, mark).join(' ') : name
  return mark + 1
}

/** "For the forcemeat," / "For icing:" in a list: sets the part. The token after it, else −1. */
export function partPrefix(entries: Entries, at: number, to: number, mode: Mode): number {
  const {words, tokens} = entries.view
  let i = at
  if (words[i] === 'for') i++
  else if (words[i] === 'to' && words[i + 1] === 'make') i += 2
  else return -1
  if (words[i] === 'the' || words[i] === 'a' || words[i] === 'an') i++
  const name = partNames[words[i]!]
  if (name === undefined || i >= to) return -1
  const mark = tokens[i + 1]
  const closed = mark === undefined || i + 1 >= to || mark.kind === 'mark'
  if (mode === 'list' && closed) {
    entries.part = name
    return i + 1
  }
  if (mode !== 'list' && (name === 'icing' || name === 'glaze' || name === 'crust' || name === 'sauce' || name === 'filling')) {
    entries.part = name
    return i + 1
  }
  return -1
}
