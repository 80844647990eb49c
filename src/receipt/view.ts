import {
  bundles,
  cardinals,
  enders,
  fillings,
  fractions,
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
import {fold, foldAll, itemAt, items, measureAt, measures} from '../lexicon/index.js'
import type {Item, Measure} from '../lexicon/schema.js'
import type {Section, Token} from './section.js'

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

const classes = new Map<string, number>()
const vocabulary = new Set<string>()
const mark = (list: Iterable<string>, bit: number): void => {
  for (const phrase of list) for (const word of phrase.split(/[ -]/)) if (word !== '') flag(word, bit)
}
const flag = (word: string, bit: number): void => {
  classes.set(word, (classes.get(word) ?? 0) | bit)
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
firsts(indefinites, VAGUE)
only(notEntering, NOTIN)
only(
  'another,every,each,per,the,ditto,do,same,equal,as,twice,double,its,their,half,from,between,both,that,this,size,weight,like,of,pair,brace'.split(
    ',',
  ),
  OPENER,
)

for (const row of measures)
  for (const spelling of row.spellings) {
    const parts = foldAll(spelling)
    for (const part of parts) vocabulary.add(part)
  }
for (const row of items) for (const spelling of row.spellings) for (const part of foldAll(spelling)) vocabulary.add(part)
for (const word of classes.keys()) vocabulary.add(fold(word))

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

const cache = new Map<string, Known>()
/** So that no text can make the cache grow without end. */
const CACHE_LIMIT = 20000

function know(word: string): Known {
  const seen = cache.get(word)
  if (seen !== undefined) return seen
  const folded = fold(word)
  const known: Known = {
    folded,
    bits: classes.get(word) ?? 0,
    longS: vocabulary.has(folded) && !EITHER.has(word) ? null : withLongS(word),
  }
  if (cache.size >= CACHE_LIMIT) cache.clear()
  cache.set(word, known)
  return known
}

/** "fugar" → "sugar": f for a long s where that makes a word we know. A long s never ends a word. */
function withLongS(word: string): string | null {
  if (word.length < 3 || word.length > 16) return null
  const at: number[] = []
  for (let i = 0; i < word.length - 1 && at.length < 4; i++) if (word.charCodeAt(i) === 102) at.push(i)
  if (at.length === 0) return null
  for (let chosen = (1 << at.length) - 1; chosen > 0; chosen--) {
    const letters = word.split('')
    at.forEach((place, k) => {
      if (chosen & (1 << k)) letters[place] = 's'
    })
    const tried = letters.join('')
    if (vocabulary.has(fold(tried))) return tried
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
  for (const token of section.tokens) {
    if (token.kind === 'mark') {
      if (!token.gap && before !== null && before.kind === 'word' && before.block === token.block) {
        if (token.word === '.' && ABBREVIATIONS.has(before.word)) continue
        if (token.word === "'") continue
      }
      tokens.push(token)
      words.push(token.word)
      folded.push(NO_WORD)
      bits.push(0)
    } else if (token.kind === 'number') {
      tokens.push(token)
      words.push(token.word)
      folded.push(NO_WORD)
      bits.push(OPENER)
    } else {
      const known = know(token.word)
      let word = token.word
      let fold = known.folded
      let bit = known.bits
      if (known.longS !== null) {
        if (EITHER.has(token.word)) doubtful.push(tokens.length)
        else {
          longS++
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
export const measureHere = (view: View, at: number): {row: Measure; next: number} | null => rowHere(view, at, measureAt)

/** The longest item that begins at token `at`, and the token after it. */
export const itemHere = (view: View, at: number): {row: Item; next: number} | null => rowHere(view, at, itemAt)

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
