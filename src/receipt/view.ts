import {
  bundles,
  cardinals,
  enders,
  fillings,
  fractions,
  furtherBefore,
  hedges,
  indefinites,
  joints,
  notEntering,
  notFood,
  ofHeads,
  partsOf,
  preparations,
  stepVerbs,
} from '../lexicon/grammar-words.js'
import {beginsItem, beginsMeasure, fold, isFoodWord, itemAt, measureAt} from '../lexicon/index.js'
import type {Item, Measure} from '../lexicon/schema.js'
import {quotationMarks} from './quotation.js'
import {fold as plainWord, type Section, type Token} from './section.js'

/** Classes of words, as bits: one look-up a word tells all of them. */
export const CARDINAL = 1
export const FRACTION = 2
export const BUNDLE = 4
export const ARTICLE = 8
export const ENDER = 16
export const PREPARED = 32
export const FILLING = 64
export const PART = 128
export const OFHEAD = 256
export const JOINT = 512
export const VERB = 1024
export const NOTFOOD = 2048
/** May begin an amount, a hedge, or a phrase that stands for an amount. */
export const OPENER = 4096
/** May begin words for no amount ("a little"). */
export const VAGUE = 8192
export const MEASURE = 16384
export const ITEM = 32768
export const NOTIN = 65536
/** Says how a thing is got ready, or ends like a participle or adverb. */
export const DESCRIBES = 131072

const classes = new Map<string, number>()
/** Folded words of the classes; those of measures and items the lexicon knows. */
const grammar = new Set<string>()
const mark = (list: Iterable<string>, bit: number): void => {
  for (const phrase of list) for (const word of phrase.split(/[ -]/)) if (word !== '') flag(word, bit)
}
/** A word of a text has no umlauts when it comes here (`section.ts`), and a table may write them. */
const flag = (word: string, bit: number): void => {
  const plain = plainWord(word)
  classes.set(plain, (classes.get(plain) ?? 0) | bit)
}
const only = (list: Iterable<string>, bit: number): void => {
  for (const word of list) if (!word.includes(' ') && !word.includes('-')) flag(word, bit)
}
const firsts = (list: Iterable<string>, bit: number): void => {
  for (const phrase of list) flag(phrase.split(/[ -]/)[0]!, bit)
}

only(Object.keys(cardinals), CARDINAL | OPENER)
only(Object.keys(fractions), FRACTION | OPENER)
only(Object.keys(bundles), BUNDLE | OPENER)
only(['a', 'an'], ARTICLE | OPENER)
only(enders, ENDER)
mark(preparations, PREPARED)
mark(fillings, FILLING)
only(Object.keys(partsOf), PART | OPENER)
only(ofHeads, OFHEAD)
only(joints, JOINT | OPENER)
only(stepVerbs, VERB)
only(notFood, NOTFOOD)
firsts(hedges, OPENER)
firsts(furtherBefore, OPENER)
firsts(indefinites, VAGUE)
only(notEntering, NOTIN)
only(
  'another,every,each,per,pro,jedes,jeden,jede,the,ditto,do,same,equal,as,twice,double,its,their,half,bigness,bignesse,from,between,both,that,this,size,weight,like,of,pair,brace'.split(
    ',',
  ),
  OPENER,
)

for (const word of classes.keys()) grammar.add(fold(word))
const isWord = (folded: string): boolean => isFoodWord(folded) || grammar.has(folded)

/** What a word is: its folded form and its classes. */
interface Known {
  readonly folded: string
  readonly bits: number
  /** Read with f as a long s: the word is not one otherwise. */
  readonly longS: string | null
}

/** Words that are also words with an f: they are read with s only in a text that has other long s. */
const EITHER = new Set([
  'fix',
  'fat',
  'fold',
  'fell',
  'fame',
  'fin',
  'fun',
  'fit',
  'foon',
  'fee',
  'fine',
  'few',
  'fift',
  'fuch',
  'fo',
  'fome',
  'feven',
  'fide',
  'feed',
  'feeds',
  'foft',
  'foal',
  'fair',
  'foup',
  'fauces',
])

const describes = (word: string): boolean =>
  ((classes.get(word) ?? 0) & PREPARED) !== 0 ||
  (word.length > 4 && (word.endsWith('ed') || word.endsWith('ly') || word.endsWith("'d")))

const cache = new Map<string, Known>()
/** So that no text can make the cache grow without end. */
const CACHE_LIMIT = 60000

function know(word: string): Known {
  const seen = cache.get(word)
  if (seen !== undefined) return seen
  const folded = fold(word)
  const known: Known = {
    folded,
    bits:
      (classes.get(word) ?? 0) |
      (describes(word) ? DESCRIBES : 0) |
      (beginsMeasure(folded) ? MEASURE : 0) |
      (beginsItem(folded) ? ITEM : 0),
    longS: isWord(folded) && !EITHER.has(word) ? null : withLongS(word),
  }
  if (cache.size >= CACHE_LIMIT) cache.clear()
  cache.set(word, known)
  return known
}

/** Spellings of before 1750, by rule: "creame", "egges", "raysins", "cloues", "iuice", "brandie", "sackk". */
function modernised(word: string): string | null {
  if (word.length < 4) return null
  const plain = word.endsWith('s') ? word.slice(0, -1) : word
  const tries = plain === word ? [] : [plain]
  if (plain.endsWith('e')) {
    if (plain.endsWith('ie')) tries.push(`${plain.slice(0, -2)}y`)
    tries.push(plain.slice(0, -1))
    if (plain.at(-2) === plain.at(-3)) tries.push(plain.slice(0, -2))
  }
  for (const base of tries) if (base.length > 2 && isFoodWord(base)) return base
  if (!/[yuvi]/.test(plain)) return null
  if (tries.length === 0) tries.push(plain)
  for (const base of tries) {
    for (const tried of [base.replace(/y(?=[a-z])/g, 'i'), base.replace(/u(?=[aeiou])/g, 'v'), base.replace(/^i(?=[aeou])/, 'j')])
      if (tried !== base && tried.length > 2 && isFoodWord(fold(tried))) return tried
  }
  return null
}

/** "fugar" → "sugar": f for a long s where that makes a word we know. A long s never ends a word. */
function withLongS(word: string): string | null {
  if (word.length < 3 || word.length > 16) return null
  const old = modernised(word)
  if (old !== null) return old
  const at: number[] = []
  for (let i = 0; i < word.length - 1 && at.length < 4; i++) if (word.charCodeAt(i) === 102) at.push(i)
  if (at.length === 0) return null
  for (let chosen = (1 << at.length) - 1; chosen > 0; chosen--) {
    const letters = word.split('')
    at.forEach((place, k) => {
      if (chosen & (1 << k)) letters[place] = 's'
    })
    const tried = letters.join('')
    if (isWord(fold(tried))) return tried
  }
  return null
}

/** Stands where a mark or a number is: part of no spelling. */
export const NO_WORD = '\u0000'

/** Abbreviations whose full stop ends no sentence, beside the measures. */
const ABBREVIATIONS = new Set([
  'do',
  'doz',
  'dozn',
  'no',
  'approx',
  'ca',
  'lg',
  'lge',
  'med',
  'sm',
  'wt',
  'lb',
  'lbs',
  'oz',
  'ozs',
  'pt',
  'pts',
  'qt',
  'qts',
  'gal',
  'gals',
  'tbsp',
  'gestr',
  'env',
  'pdr',
  'tablesp',
  'tablesps',
  'tsp',
  'tbs',
  'dr',
  'drs',
  'drm',
  'fl',
  'gr',
  'grs',
  'pd',
  'pds',
  'pk',
  'bu',
  'cwt',
  'dwt',
  'gm',
  'gms',
  'kg',
  'ml',
  'cl',
  'dl',
  'st',
  'dsp',
  'dstsp',
  'teasp',
  'tbls',
  'tblsp',
  'tsps',
  'tbsps',
  'pkg',
  'pkt',
  'g',
  'c',
  'l',
  't',
  'pnd',
  'pnds',
  'qrt',
  'qrts',
  'pnt',
  'pnts',
  'pks',
  'bbl',
  'bbls',
  'hhd',
  'tb',
  'tbspn',
  'tspn',
  'sp',
  'cp',
  'grms',
  'kgs',
  'mls',
  'cc',
  'ltr',
  'ltrs',
  'pkgs',
  'dwts',
  'pwt',
  'cwts',
  'drms',
  'gtt',
  'onz',
  'ib',
  'ibs',
  'pck',
  'pckg',
  'msp',
  'el',
  'tl',
  'msk',
  'tsk',
  'pfd',
])

/**
 * A section's tokens as the grammar walks them: stops of abbreviations and apostrophes of possessives left out, each word with its
 * folded form and classes beside it.
 */
export interface View {
  readonly section: Section
  readonly tokens: Token[]
  /** The word, long s restored; a mark as itself. */
  readonly words: string[]
  /** Folded words for the lexicon; `NO_WORD` for marks and numbers. */
  readonly folded: string[]
  readonly bits: number[]
}

/** Make the view of a section. */
export function makeView(section: Section): View {
  const tokens: Token[] = []
  const words: string[] = []
  const folded: string[] = []
  const bits: number[] = []
  let longS = 0
  const doubtful: number[] = []
  let before: Token | null = null
  const {tokens: all, blocks} = section
  const quotation = quotationMarks(all)
  for (let at = 0; at < all.length; at++) {
    const token = all[at]!
    if (token.kind === 'mark') {
      if (quotation.has(at)) continue
      // "flour ..... 8 oz": the dots lead from the name to its amount, as a cell's border does.
      const led = token.word === '.' || token.word === '…' ? pastLeader(all, at) : -1
      if (led > 0) {
        tokens.push({...token, word: '|', end: all[led - 1]!.end})
        words.push('|')
        folded.push(NO_WORD)
        bits.push(0)
        before = token
        at = led - 1
        continue
      }
      // "2 | cups | flour": the border between a figure and its measure's own cell.
      if (token.word === '|' && blocks[token.block]!.kind === 'row' && isBeforeMeasure(all, at)) continue
      if (!token.gap && before !== null && before.kind === 'word' && before.block === token.block) {
        if (token.word === '.' && ABBREVIATIONS.has(before.word)) continue
        if (token.word === "'") continue
      }
      tokens.push(token)
      words.push(token.word)
      folded.push(NO_WORD)
      bits.push(0)
    } else if (isFlourType(all, at)) continue
    else if (token.kind === 'number') {
      tokens.push(token)
      words.push(token.word)
      folded.push(NO_WORD)
      bits.push(OPENER)
    } else {
      const whole = cutWord(before, token)
      if (whole !== null) {
        const at = tokens.length - 1
        const known = know(whole)
        before = {...tokens[at]!, word: whole, end: token.end}
        tokens[at] = before
        words[at] = whole
        folded[at] = known.folded
        bits[at] = known.bits
        continue
      }
      const known = know(token.word)
      let word = token.word
      let fold = known.folded
      let bit = known.bits
      if (known.longS !== null) {
        if (EITHER.has(token.word)) doubtful.push(tokens.length)
        else {
          if (token.word.includes('f')) longS++
          word = known.longS
          const other = know(word)
          fold = other.folded
          bit = other.bits
        }
      }
      tokens.push(token)
      words.push(word)
      folded.push(fold)
      bits.push(bit)
    }
    before = token
  }
  if (longS >= 2)
    for (const at of doubtful) {
      const word = know(words[at]!).longS!
      const other = know(word)
      words[at] = word
      folded[at] = other.folded
      bits[at] = other.bits
    }
  return {section, tokens, words, folded, bits}
}

const TYPES = /^(?:t|type|typ|tipo)$/

/** "500 g T55 flour", "Typ 405", "tipo 00": the sort of a flour, and no amount. The word and the figure are both left out. */
function isFlourType(tokens: readonly Token[], at: number): boolean {
  const {kind, word, capital, block} = tokens[at]!
  if (kind === 'word') {
    const next = tokens[at + 1]
    if (!TYPES.test(word) || next?.block !== block || next.kind !== 'number') return false
    // "500 g tipo 00, 375 g water": the word stands for the flour.
    if (/^typ|^tipo/.test(word) && standsAlone(tokens, at)) return false
    return word === 't' ? capital && !next.gap && /^\d{2,3}$/.test(next.word) : /^(?:\d{3,4}|0{1,2})$/.test(next.word)
  }
  if (kind !== 'number') return false
  if (word === '00') return true
  const before = tokens[at - 1]
  if (before?.block !== block || before.kind !== 'word' || !TYPES.test(before.word)) return false
  return isFlourType(tokens, at - 1) || (/^typ|^tipo/.test(before.word) && standsAlone(tokens, at - 1))
}

/** Whether no word of flour stands before a sort or behind it. */
function standsAlone(tokens: readonly Token[], at: number): boolean {
  const [sort, after] = [tokens[at + 1], tokens[at + 2]]
  // "Flour (tipo 00)"
  const before = tokens[at - 1]?.word === '(' ? tokens[at - 2] : tokens[at - 1]
  if (sort === undefined || !/^(?:\d{3,4}|0{1,2})$/.test(sort.word)) return false
  const named =
    before?.kind === 'word' &&
    before.block === sort.block &&
    isFoodWord(fold(before.word)) &&
    measureAt([fold(before.word)]) === null
  return !named && (after === undefined || after.block !== sort.block || after.kind === 'mark')
}

/** How many dots lead. */
const LEADER = 3

/** The token after a row of dots at `at` that leads to an amount in the same line; −1 where none does. */
function pastLeader(tokens: readonly Token[], at: number): number {
  const {block} = tokens[at]!
  let end = at
  let dots = 0
  while (end < tokens.length && tokens[end]!.block === block && (tokens[end]!.word === '.' || tokens[end]!.word === '…')) {
    dots += tokens[end]!.word === '…' ? LEADER : 1
    end++
  }
  const next = tokens[end]
  return dots >= LEADER && at > 0 && tokens[at - 1]!.block === block && next?.kind === 'number' && next.block === block ? end : -1
}

/** Does the table's border at `at` stand between a cell that is only a figure and one that is only a measure? */
function isBeforeMeasure(tokens: readonly Token[], at: number): boolean {
  const {block} = tokens[at]!
  const here = (k: number): Token | undefined => (tokens[k]?.block === block ? tokens[k] : undefined)
  if (here(at - 1)?.kind !== 'number') return false
  let first = at - 1
  while (here(first - 1) !== undefined && (here(first - 1)!.kind === 'number' || /^(?:-|—|to)$/.test(here(first - 1)!.word)))
    first--
  if (here(first - 1) !== undefined && here(first - 1)!.word !== '|') return false
  let end = at + 1
  while (here(end) !== undefined && here(end)!.word !== '|') end++
  if (end === at + 1 || end - at > 4) return false
  const unit: string[] = []
  for (let k = at + 1; k < end; k++) {
    // "2 | 100 g": an amount of its own.
    if (tokens[k]!.kind === 'number') return false
    if (tokens[k]!.kind === 'word') unit.push(fold(tokens[k]!.word))
  }
  return unit.length > 0 && measureAt(unit, 0)?.length === unit.length
}

/** A word cut by a line's end: "but-⏎ter" is one word where only the whole makes one. */
function cutWord(before: Token | null, token: Token): string | null {
  if (!token.joined || !token.gap || before === null || before.kind !== 'word' || before.block !== token.block) return null
  const whole = before.word + token.word
  return isWord(fold(whole)) && !(isWord(fold(before.word)) && isWord(fold(token.word))) ? whole : null
}

/** The longest row that begins at token `at` and ends in its block, and the token after it. */
function rowHere<Row>(
  view: View,
  at: number,
  look: (folded: readonly string[], at: number) => {row: Row; length: number} | null,
): {row: Row; next: number} | null {
  const first = view.folded[at]
  if (first === undefined || first === NO_WORD) return null
  const found = look(view.folded, at)
  if (found === null) return null
  const {block} = view.tokens[at]!
  if (view.tokens[at + found.length - 1]!.block === block) return {row: found.row, next: at + found.length}
  let end = at + 1
  while (view.tokens[end]!.block === block) end++
  const inBlock = look(view.folded.slice(at, end), 0)
  return inBlock === null ? null : {row: inBlock.row, next: at + inBlock.length}
}

/** The longest measure that begins at token `at`, and the token after it. */
export const measureHere = (view: View, at: number): {row: Measure; next: number} | null =>
  view.bits[at]! & MEASURE && !isDegree(view, at) ? rowHere(view, at, measureAt) : null

/** "240 C falling": nobody takes so many cups. Common practice, no source. */
const MOST_CUPS = 60
const isDegree = ({words, tokens}: View, at: number): boolean => {
  const before = tokens[at - 1]
  return words[at] === 'c' && tokens[at]!.capital && before?.kind === 'number' && before.num > MOST_CUPS * before.den
}

/** The longest item that begins at token `at`, and the token after it. */
export function itemHere(view: View, at: number): {row: Item; next: number} | null {
  if (!(view.bits[at]! & ITEM)) return null
  const found = rowHere(view, at, itemAt)
  if (found === null || found.next > at + 1) return found
  // A word that is more often something else ("time", "must", "light") is an item only as the row itself spells it.
  const bit = view.bits[at]!
  if (bit & ENDER && !(view.words[at] === 'roll' && at > 0 && view.bits[at - 1]! & (CARDINAL | ARTICLE))) return null
  return bit & (PREPARED | FILLING) && !found.row.spellings.includes(view.words[at]!) ? null : found
}

/** Phrases by their first word, longest first: for word lists of more than one word. */
export class Phrases {
  private readonly byFirst = new Map<string, string[][]>()

  constructor(list: readonly string[]) {
    for (const phrase of list) {
      const parts = phrase.split(/[ -]/)
      const group = this.byFirst.get(parts[0]!) ?? []
      group.push(parts)
      this.byFirst.set(parts[0]!, group)
    }
    for (const group of this.byFirst.values()) group.sort((a, b) => b.length - a.length)
  }

  /** The token after the longest phrase at `at`; -1 where none begins there. */
  match(words: readonly string[], at: number, end: number): number {
    const group = this.byFirst.get(words[at] ?? '')
    if (group === undefined) return -1
    for (const parts of group) {
      if (at + parts.length > end) continue
      let i = 1
      while (i < parts.length && words[at + i] === parts[i]) i++
      if (i === parts.length) return at + parts.length
    }
    return -1
  }
}

/** The source's own words from token `from` up to token `to`. */
export const textOf = (view: View, from: number, to: number): string =>
  from >= to ? '' : view.section.source.slice(view.tokens[from]!.start, view.tokens[to - 1]!.end)
