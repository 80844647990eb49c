import {distance} from 'fastest-levenshtein'
import {germanNames} from '../lexicon/german-names.js'
import {joints, partsOf, soldAs} from '../lexicon/grammar-words.js'
import {fold, lookUpOwnItem} from '../lexicon/index.js'
import type {Item} from '../lexicon/schema.js'
import {linesApart} from './section.js'
import {DESCRIBES, ENDER, itemHere, JOINT, measureHere, NOTFOOD, OFHEAD, PART, PREPARED, type View} from './view.js'

/** The name of an ingredient as it stands in the text. */
export interface Noun {
  readonly start: number
  readonly next: number
  /** The item's id, or its words, singular. */
  readonly item: string
  readonly row: Item | null
  readonly known: boolean
  readonly prepared: string
  /** A name the lexicon lacks was found after a name it has: the reading may have stopped short. */
  readonly doubtful: boolean
}

const SINGULAR: Readonly<Record<string, string>> = {
  loaves: 'loaf',
  leaves: 'leaf',
  halves: 'half',
  calves: 'calf',
  geese: 'goose',
  potatoes: 'potato',
  tomatoes: 'tomato',
  knives: 'knife',
  yelks: 'yolk',
  yolks: 'yolk',
  molasses: 'molasses',
  cloves: 'clove',
  olives: 'olive',
  chives: 'chive',
  endives: 'endive',
  cookies: 'cookie',
  pies: 'pie',
  chillies: 'chilli',
  chilies: 'chili',
}

/** An English noun in the singular, as far as spelling tells. */
export function singular(word: string): string {
  const irregular = SINGULAR[word]
  if (irregular !== undefined) return irregular
  if (
    word.length < 4 ||
    !word.endsWith('s') ||
    word.endsWith('ss') ||
    word.endsWith('us') ||
    word.endsWith('is') ||
    word.endsWith("'s")
  )
    return word
  if (word.endsWith('ies') && word.length > 4) return `${word.slice(0, -3)}y`
  if (/(?:ch|sh|x|ss|z|oe)es$/.test(word)) return word.slice(0, -2)
  if (/(?:ch|sh|x|ss|z)es$/.test(word)) return word.slice(0, -2)
  return word.slice(0, -1)
}

const names = new Map<Item, Map<string, string>>()

/** Is it what German receipts call the row? */
function isGerman(row: Item, written: string): boolean {
  const german = germanNames[row.id]
  const folded = fold(written)
  return german !== undefined && written !== row.id && german.split(', ').some((name) => fold(name) === folded)
}

/**
 * What to call an item the lexicon knows: by its id where the text's words are that name or a spelling of it ("flower", "sallaratus"),
 * else by the text's own words ("barm", "damsons"), which `lookUpItem` finds as well.
 */
function nameOf(row: Item, view: View, from: number, to: number): string {
  let written = view.words[from]!
  for (let i = from + 1; i < to; i++) written += `${view.tokens[i]!.joined ? '-' : ' '}${view.words[i]!}`
  let known = names.get(row)
  if (known === undefined) {
    known = new Map()
    names.set(row, known)
  }
  const seen = known.get(written)
  if (seen !== undefined) return seen
  const parts = written.split(/[ -]/)
  const last = singular(parts[parts.length - 1]!)
  const idParts = row.id.split(/[ -]/)
  const own = written.slice(0, written.length - parts[parts.length - 1]!.length) + last
  const sameHead = idParts.includes(last) || parts.some((p) => singular(p) === idParts[idParts.length - 1])
  const joined = own.replace(/[ -]/g, '')
  const plainId = row.id.replace(/[ -]/g, '')
  const spelling = joined !== plainId && distance(joined, plainId) <= 2 && joined.length > 3
  const name = sameHead || spelling || isGerman(row, written) ? row.id : own
  // A row has few spellings; only their joining may vary.
  if (known.size < 500) known.set(written, name)
  return name
}

/** "Bone-in", "skin on", "boneless": how meat and fish are sold, and no part of their name. The token after it; −1 where none begins. */
export function pastSoldAs({words}: View, at: number, end: number): number {
  const word = words[at] ?? ''
  if (SOLD_AS.has(fold(word))) return at + 1
  return at + 1 < end && SOLD_WITH.test(word) && SOLD_HOW.test(words[at + 1]!) ? at + 2 : -1
}
const SOLD_AS: ReadonlySet<string> = new Set(soldAs.map(fold))
const SOLD_WITH = /^(?:bones?|skins?|rind|shells?|heads?|tails?)$/
const SOLD_HOW = /^(?:in|on|off|out|removed)$/

/** Words kept out of an unknown item's name. */
const describes = (view: View, at: number): boolean => (view.bits[at]! & DESCRIBES) !== 0

/** "1-lb. coffee cans": what was sold in them is no ingredient. */
const isPackaging = ({words}: View, at: number): boolean => words[at] === 'cans'

/** "butter size of an egg": the short form of "the size of an egg" is said of the name, and no part of it. */
const beginsSize = (view: View, at: number): boolean => view.words[at] === 'size' && view.words[at + 1] === 'of'

/** Whether a name stands within a word or two behind "white": "white Lily flour", where "the white and the yolk" names both. */
function isColour(view: View, at: number, end: number): boolean {
  for (let i = at + 1; i < Math.min(end, at + 4); i++) {
    if (view.tokens[i]!.kind !== 'word' || (view.bits[i]! & ENDER && !(view.bits[i]! & PREPARED))) return false
    if (itemHere(view, i) !== null) return true
  }
  return false
}

/** "175 g butter⏎Caramel: …": the next line's label is no part of the name. */
function beginsLabel({words, tokens, section}: View, at: number): boolean {
  if (!tokens[at]!.capital || !linesApart(section, tokens[at - 1]!, tokens[at]!)) return false
  const mark = tokens[at + 1]?.kind === 'word' ? words[at + 2] : words[at + 1]
  return mark === ':' || mark === '='
}

/** Longest name of an ingredient, in words. */
const LONGEST = 9

/**
 * The name of an ingredient at token `at`: words that say how it is got ready, then the longest names the lexicon knows; the last of
 * them is the head ("sifted loaf sugar").
 *
 * @param open whether a name the lexicon does not know may stand (in a list, or after a measure and "of")
 * @param compounds whether a word the lexicon does not know may stand after a name it does (in a list)
 * @returns null where no ingredient is named
 */
export function readNoun(view: View, at: number, end: number, open: boolean, compounds = false, depth = 0): Noun | null {
  const {words, bits, tokens} = view
  let i = at
  while (
    i < end &&
    (words[i] === 'the' || words[i] === 'your' || words[i] === 'that' || words[i] === 'his' || words[i] === 'our')
  )
    i++
  const first = i
  let row: Item | null = null
  let rowStart = -1
  let rowEnd = -1
  let unknownStart = -1
  let unknownEnd = -1
  let lead = first
  // What stood last says how the thing is got ready or sold.
  let said = false
  while (i < end && i - first < LONGEST) {
    const token = tokens[i]!
    if (token.kind === 'mark') {
      // "dry, clean raisins"; "fine, sifted flour"; "raisins (stoned)".
      if (
        token.word === ',' &&
        rowEnd < 0 &&
        unknownStart < 0 &&
        i > first &&
        i + 1 < end &&
        (describes(view, i + 1) || pastSoldAs(view, i + 1, end) > 0 || (said && itemHere(view, i + 1) !== null))
      ) {
        i++
        continue
      }
      break
    }
    if (token.kind === 'number' || (i > first && beginsLabel(view, i))) break
    const sold = pastSoldAs(view, i, end)
    if (sold > 0 && sold < end && rowEnd < 0) {
      said = true
      i = sold
      continue
    }
    said = describes(view, i)
    const found = itemHere(view, i)
    // "White Lily flour", "white or brown": a colour where a name follows, and no part of an egg.
    if (words[i] === 'white' && found?.next === i + 1 && isColour(view, i, end)) {
      i++
      continue
    }
    if (found !== null && found.next <= end) {
      if (rowEnd >= 0 && unknownEnd > rowEnd) break
      // Another name straight after one: the later is the head ("lemon cheese"), unless the first was whole.
      row = found.row
      rowStart = i
      rowEnd = found.next
      i = found.next
      continue
    }
    // "400 g half-cooked chicken"
    if (words[i] === 'half' && rowEnd < 0 && i + 1 < end && tokens[i + 1]!.joined && measureHere(view, i + 1) === null) {
      i++
      continue
    }
    // "milk-and-water" is two names; "heart-of-oak" one word.
    if (
      bits[i]! & ENDER &&
      (!token.joined || words[i] === 'and' || words[i] === 'or') &&
      !(bits[i]! & PREPARED && rowEnd < 0 && unknownStart < 0)
    )
      break
    if (rowEnd >= 0) {
      if ((bits[i]! & NOTFOOD || isPackaging(view, i)) && !beginsSize(view, i)) return null
      if (describes(view, i)) break
      if (words[i]!.endsWith('ing') || (measureHere(view, i) !== null && !token.joined)) break
      if ((!open || !compounds) && !token.joined) break
      if (unknownStart < 0) unknownStart = i
      unknownEnd = i + 1
      i++
      if (unknownEnd - rowEnd >= 2) break
      continue
    }
    if (!describes(view, i)) {
      if (unknownStart < 0) unknownStart = i
      unknownEnd = i + 1
    }
    i++
  }
  lead = first
  if (row === null) {
    if (!open) return null
    // "red or black currants", "neck or loin of mutton": the name stands after the second.
    if ((words[i] === 'or' || words[i] === 'and') && i + 1 < end && i - first <= 2 && i > first && words[i - 1] !== 'salt') {
      const second = readNoun(view, i + 1, end, false)
      if (second !== null && !words[i - 1]!.endsWith('s'))
        return {...second, start: first, prepared: `${words.slice(first, i + 1).join(' ')} ${second.prepared}`.trim()}
    }
    if (unknownStart < 0) return null
    // "sweet-briar" keeps its first word.
    while (lead < unknownStart && describes(view, lead) && !tokens[lead + 1]?.joined) lead++
    let name = words.slice(lead, unknownEnd)
    if (name.length > 5) name = name.slice(-3)
    if (name.length === 0 || name.every((w) => w.length < 2)) return null
    let next = unknownEnd
    let item = [...name.slice(0, -1), singular(name[name.length - 1]!)].join(' ')
    const of = ofTail(view, unknownEnd - 1, next, end, depth)
    if (of !== null) {
      item = `${item} of ${of.name}`
      next = of.next
    }
    // A joint of a known beast is known.
    const beast = of !== null && isPiece(view, unknownEnd - 1) ? of.row : null
    if (beast !== null)
      return {start: first, next, item, row: beast, known: true, prepared: preparedText(view, first, lead), doubtful: false}
    return {start: first, next, item, row: null, known: false, prepared: preparedText(view, first, lead), doubtful: true}
  }
  if (
    rowEnd < end &&
    (bits[rowEnd]! & NOTFOOD || isPackaging(view, rowEnd)) &&
    tokens[rowEnd]!.kind === 'word' &&
    unknownEnd <= rowEnd &&
    !beginsSize(view, rowEnd)
  )
    return null
  if (unknownEnd <= rowEnd && row.group === 'fruit' && rowEnd < end && tokens[rowEnd]!.kind === 'word') {
    // "lemmon peel": spellings of the fruit need no row of their own for its parts.
    const part = partsOf[words[rowEnd]!]
    if (part === 'rind' || part === 'juice' || part === 'pulp') {
      const made = partItem(row.id, part)
      return {
        start: first,
        next: rowEnd + 1,
        item: made.item,
        row: made.row ?? row,
        known: true,
        prepared: preparedText(view, first, rowStart),
        doubtful: false,
      }
    }
  }
  if (unknownEnd > rowEnd) {
    // A compound whose head the lexicon lacks: "walnut catsup".
    const name = words.slice(rowStart, unknownEnd)
    const item = [...name.slice(0, -1), singular(name[name.length - 1]!)].join(' ')
    return {
      start: first,
      next: unknownEnd,
      item,
      row: null,
      known: false,
      prepared: preparedText(view, first, rowStart),
      doubtful: true,
    }
  }
  const of = ofTail(view, rowEnd - 1, rowEnd, end, depth)
  if (of !== null) {
    const id = `${nameOf(row, view, rowStart, rowEnd)} of ${of.name}`
    return {
      start: first,
      next: of.next,
      item: id,
      row,
      known: true,
      prepared: preparedText(view, first, rowStart),
      doubtful: false,
    }
  }
  return {
    start: first,
    next: rowEnd,
    item: nameOf(row, view, rowStart, rowEnd),
    row,
    known: true,
    prepared: preparedText(view, first, rowStart),
    doubtful: false,
  }
}

const preparedText = (view: View, from: number, to: number): string => {
  const said: string[] = []
  for (let i = from; i < to; i++) if (view.tokens[i]!.kind === 'word') said.push(view.words[i]!)
  return said.join(' ')
}

/** A joint or a part, one or several: "fillets of turbot". */
const isPiece = ({words, bits}: View, at: number): boolean =>
  (bits[at]! & (JOINT | PART)) !== 0 || JOINTS.has(singular(words[at]!))
const JOINTS: ReadonlySet<string> = new Set(joints)

/** "of almonds" after a head that takes one ("essence", "round"); null otherwise. */
function ofTail(
  view: View,
  head: number,
  at: number,
  end: number,
  depth: number,
): {name: string; next: number; row: Item | null} | null {
  const {words, bits} = view
  if (words[at] !== 'of' || at + 1 >= end || !(bits[head]! & OFHEAD || isPiece(view, head))) return null
  // "the pulp of the heart of a palm" is as deep as names go.
  const noun = depth > 1 ? null : readNoun(view, at + 1, end, true, false, depth + 1)
  return noun === null ? null : {name: noun.item, next: noun.next, row: noun.row}
}

/** The item that is `part` of another: ("lemon", "rind") → "lemon rind", by the lexicon's id where it has one. */
export function partItem(base: string, part: string): {item: string; row: Item | null} {
  const canonical = partsOf[part] ?? part
  const name = `${base} ${canonical}`
  const row = lookUpOwnItem(name)
  return {item: row?.id ?? name, row}
}
