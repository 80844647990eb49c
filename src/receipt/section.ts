import {fold as foldPlural} from '../lexicon/index.js'
import type {ReceiptFacts} from './types.js'

/**
 * One receipt of a file, cut up for the readers: its blocks of prose with the mark-up taken out, and one flat row of tokens over them.
 * The ingredient grammar and the readers of heat, times and yields all walk the same tokens, so the text is scanned once.
 */
export interface Section {
  /** The whole file as read. */
  readonly source: string
  readonly file: string
  readonly title: string
  /** 1-based line of the title. */
  readonly line: number
  /** The receipt's own text: `source.slice(start, end)`. */
  readonly start: number
  readonly end: number
  /** What the front matter states, for this receipt. */
  readonly facts: ReceiptFacts
  readonly blocks: readonly Block[]
  readonly tokens: readonly Token[]
}

/** What a block of text is in the Markdown. A table gives one block a row, its cells parted by a `|` mark. */
export type BlockKind = 'heading' | 'paragraph' | 'item' | 'row' | 'quote' | 'code'

/** A stretch of plain text that stands unbroken in the source: `text` offset `at` is source offset `from`. */
export interface Piece {
  readonly at: number
  readonly from: number
  /** Source offset of its end. Where `to - from` differs from the text's length (an entity, an escape), the piece is not divisible. */
  readonly to: number
}

/** A block with its mark-up taken out: emphasis, links and entities read as a reader sees them. */
export interface Block {
  readonly kind: BlockKind
  /** Plain text. Line breaks are kept as `\n`. */
  readonly text: string
  /** In order of `at`; the first has `at` 0 unless the block is empty. */
  readonly pieces: readonly Piece[]
  /** Source offsets of the block. */
  readonly start: number
  readonly end: number
}

/** One word, number or mark, with its place in the *source*. */
export interface Token {
  readonly kind: 'word' | 'number' | 'mark'
  /**
   * A word in lower case without accents, long s as s, apostrophes straight; a mark as its character, where every dash longer than a
   * hyphen is `—`, every hyphen that joins figures is `-` and ditto marks are `"`. A hyphen inside a word is no token: see `joined`.
   */
  readonly word: string
  /** A word as the lexicon keys it, plurals folded; empty for numbers and marks. */
  readonly stem: string
  /** Source offsets. */
  readonly start: number
  readonly end: number
  /** Index into `blocks`. */
  readonly block: number
  /** A number as an exact fraction `num / den`: `1-1/2`, `1½`, `1 1/2`, `2.5` are one token each. Zero for words and marks. */
  readonly num: number
  readonly den: number
  /** White space (or the start of the block) stands before it. */
  readonly gap: boolean
  /** A hyphen joins it to the word before: "tea-cup" is `tea` and a joined `cup`. */
  readonly joined: boolean
  /** Its first letter is a capital. */
  readonly capital: boolean
}

const VULGAR: Readonly<Record<string, readonly [number, number]>> = {
  '½': [1, 2],
  '⅓': [1, 3],
  '⅔': [2, 3],
  '¼': [1, 4],
  '¾': [3, 4],
  '⅕': [1, 5],
  '⅖': [2, 5],
  '⅗': [3, 5],
  '⅘': [4, 5],
  '⅙': [1, 6],
  '⅚': [5, 6],
  '⅐': [1, 7],
  '⅛': [1, 8],
  '⅜': [3, 8],
  '⅝': [5, 8],
  '⅞': [7, 8],
  '⅑': [1, 9],
  '⅒': [1, 10],
}

const isDigit = (c: number): boolean => c >= 48 && c <= 57
const isAsciiLetter = (c: number): boolean => (c >= 97 && c <= 122) || (c >= 65 && c <= 90)
const isLetter = (c: number): boolean =>
  isAsciiLetter(c) || (c >= 0xc0 && c !== 0xd7 && c !== 0xf7 && c <= 0x24f) || c === 0x17f || (c >= 0xfb00 && c <= 0xfb06)
const isApostrophe = (c: number): boolean => c === 39 || c === 0x2019 || c === 0x2018
const isSpace = (c: number): boolean => c === 32 || c === 10 || c === 9 || c === 13 || c === 0xa0 || c === 0x202f || c === 0x2009

/** Whether a line of the file ends between two tokens. */
export const linesApart = ({source}: Pick<Section, 'source'>, before: Token, next: Token): boolean =>
  source.slice(before.end, next.start).includes('\n')

/** A word as the lexicon spells it: lower case, no accents, long s and joined letters as plain letters, straight apostrophes. */
export function fold(word: string): string {
  let plain = true
  for (let i = 0; i < word.length; i++) if (word.charCodeAt(i) > 127) plain = false
  if (plain) return word.toLowerCase()
  return word
    .replace(/ſ/g, 's')
    .normalize('NFKD')
    .replace(/[\u0300-\u036f]/g, '')
    .replace(/[\u2018\u2019]/g, "'")
    .replace(/[æÆ]/g, 'ae')
    .replace(/[œŒ]/g, 'oe')
    .toLowerCase()
}

/** One string object for all that read alike: engines compare such strings, and look them up, by address. */
const intern = (word: string): string => Object.keys({[word]: 0})[0]!

interface Spelt {
  readonly word: string
  readonly stem: string
}
const spelled = new Map<string, Spelt>()
/** So that no text can make the table grow without end. */
const MOST_SPELLED = 60_000

/** `fold`, remembered: a text has few words and says them often. */
function spell(raw: string): Spelt {
  const seen = spelled.get(raw)
  if (seen !== undefined) return seen
  const word = intern(fold(raw))
  const made = {word, stem: intern(foldPlural(word))}
  if (spelled.size >= MOST_SPELLED) spelled.clear()
  spelled.set(intern(raw), made)
  return made
}

/**
 * Cut a block's text into tokens.
 *
 * @param block the block
 * @param index its place among the section's blocks, written into every token
 * @param into the row of tokens to add to
 */
export function tokenise(block: Block, index: number, into: Token[]): void {
  const {text, pieces} = block
  const size = text.length
  let piece = 0
  /** Source offset of a text offset; the token's start, or with `last` the end after the character before it. */
  const startOf = (at: number): number => {
    while (piece + 1 < pieces.length && pieces[piece + 1]!.at <= at) piece++
    const p = pieces[piece]
    if (p === undefined) return block.start
    const length = (pieces[piece + 1]?.at ?? size) - p.at
    return p.to - p.from === length ? p.from + at - p.at : p.from
  }
  const endOf = (at: number): number => {
    let k = piece
    while (k + 1 < pieces.length && pieces[k + 1]!.at < at) k++
    const p = pieces[k]
    if (p === undefined) return block.end
    const length = (pieces[k + 1]?.at ?? size) - p.at
    return p.to - p.from === length ? p.from + at - p.at : p.to
  }
  let gap = true
  let joined = false
  const put = (
    kind: Token['kind'],
    word: string,
    stem: string,
    from: number,
    to: number,
    num: number,
    den: number,
    capital: boolean,
  ): void => {
    const start = startOf(from)
    into.push({kind, word, stem, start, end: endOf(to), block: index, num, den, gap, joined, capital})
    gap = false
    joined = false
  }
  let i = 0
  while (i < size) {
    const c = text.charCodeAt(i)
    if (isSpace(c)) {
      gap = true
      i++
      continue
    }
    const misread = misreadFigure(text, i)
    if (misread !== null) {
      const {value, end} = misread
      put('number', text.slice(i, end), '', i, end, value, 1, false)
      i = end
      continue
    }
    if (isLetter(c)) {
      let j = i + 1
      while (j < size) {
        const d = text.charCodeAt(j)
        if (isLetter(d)) j++
        else if (isApostrophe(d) && j + 1 < size && isLetter(text.charCodeAt(j + 1))) j += 2
        else break
      }
      const {word, stem} = spell(text.slice(i, j))
      put('word', word, stem, i, j, 0, 0, (c >= 65 && c <= 90) || (c >= 0xc0 && c <= 0xde))
      i = j
      // A hyphen between letters, also over a line's end, joins two words.
      const h = text.charCodeAt(i)
      if ((h === 45 || h === 0x2010 || h === 0x2011 || h === 0xad) && text.charCodeAt(i + 1) !== 45) {
        let k = i + 1
        while (k < size && isSpace(text.charCodeAt(k))) k++
        if (k < size && (k === i + 1 || text.charCodeAt(i + 1) === 10) && isLetter(text.charCodeAt(k))) {
          gap = k > i + 1
          joined = true
          i = k
        }
      }
      continue
    }
    if (isDigit(c) || VULGAR[text[i]!] !== undefined) {
      const n = readNumber(text, i)
      put('number', text.slice(i, n.end), '', i, n.end, n.num, n.den, false)
      i = n.end
      // "2-quart", "9-inch": the hyphen joins figure and word.
      if (text.charCodeAt(i) === 45 && i + 1 < size && isLetter(text.charCodeAt(i + 1))) {
        joined = true
        i++
      }
      continue
    }
    let j = i + 1
    let word = text[i]!
    if (c === 45 || c === 0x2010 || c === 0x2011 || c === 0x2013 || c === 0x2014 || c === 0x2015 || c === 0x2212) {
      while (j < size && (text.charCodeAt(j) === 45 || (text.charCodeAt(j) >= 0x2010 && text.charCodeAt(j) <= 0x2015))) j++
      word = c === 0x2014 || c === 0x2015 || j - i > 1 ? '—' : '-'
    } else if (c === 0x201c || c === 0x201d || c === 0x3003 || c === 0x2033) word = '"'
    else if (isApostrophe(c)) word = "'"
    else if (c === 0xba || c === 0x2da) word = '°'
    else if (c === 0x2044) word = '/'
    else if (c >= 0xd800 && c <= 0xdbff && j < size) {
      j++
      word = text.slice(i, j)
    }
    put('mark', word, '', i, j, 0, 0, false)
    i = j
  }
}

/** Behind a lone l or I: a measure, which makes it the figure 1. Verbs ("I pound", "I cup") are none of these. */
const MEASURE_BEHIND =
  /^[lI] (?:[lI]bs?|lbs?|ozs?|pts?|qts?|pints?|quarts?|gills?|tbsps?|tsps?|teaspoon\w*|tablespoon\w*|cups? of)\b/
const FIGURES_WITH_LETTERS = /^(?:[lI][\dO]{1,3}|\d{1,3}O+)(?![\p{L}\d])/u

/**
 * A figure that a scan read as a letter: "l lb." and "I oz." are 1, "l0" is 10, "2O" is 20. Not "1l", a litre.
 *
 * @returns null where none stands at `i`
 */
function misreadFigure(text: string, i: number): {value: number; end: number} | null {
  const c = text.charCodeAt(i)
  const one = c === 108 || c === 73
  if (!one && !(isDigit(c) && text.indexOf('O', i) > 0 && text.indexOf('O', i) < i + 4)) return null
  if (i > 0 && (isLetter(text.charCodeAt(i - 1)) || isDigit(text.charCodeAt(i - 1)) || /[.,/'’-]/.test(text[i - 1]!))) return null
  const found = FIGURES_WITH_LETTERS.exec(text.slice(i, i + 8))?.[0]
  if (found !== undefined) return {value: Number(found.replace(/^[lI]/, '1').replace(/O/g, '0')), end: i + found.length}
  return one && MEASURE_BEHIND.test(text.slice(i, i + 16)) ? {value: 1, end: i + 1} : null
}

/** Figures from `i`: digits, thousands, a decimal part, a fraction, a mixed number. `num / den` is exact. */
function readNumber(text: string, i: number): {num: number; den: number; end: number} {
  const digits = (from: number): number => {
    let j = from
    while (j < text.length && isDigit(text.charCodeAt(j))) j++
    return j
  }
  const alone = VULGAR[text[i]!]
  if (alone !== undefined) return {num: alone[0], den: alone[1], end: i + 1}
  let end = digits(i)
  const comma = decimalComma(text, i, end, digits)
  if (comma !== null) return comma
  let whole = text.slice(i, end)
  while (text[end] === ',' && digits(end + 1) === end + 4 && whole.length <= 9) {
    whole += text.slice(end + 1, end + 4)
    end += 4
  }
  // Beyond 15 digits a double is no longer exact; such a figure is no amount.
  if (whole.length > 15) return {num: 0, den: 0, end}
  const n = Number(whole)
  const slash = (at: number): {num: number; den: number; end: number} | null => {
    const top = digits(at)
    if (top === at || top - at > 4 || (text[top] !== '/' && text[top] !== '⁄')) return null
    const bottom = digits(top + 1)
    if (bottom === top + 1 || bottom - top > 5) return null
    const den = Number(text.slice(top + 1, bottom))
    return den === 0 ? null : {num: Number(text.slice(at, top)), den, end: bottom}
  }
  const fraction = slash(i)
  if (fraction !== null && fraction.end > end) return fraction
  const vulgarAt = (at: number): {num: number; den: number; end: number} | null => {
    const v = VULGAR[text[at] ?? '']
    return v === undefined ? null : {num: v[0], den: v[1], end: at + 1}
  }
  let at = end
  let part = vulgarAt(at)
  if (part === null && (text[at] === '-' || text[at] === ' ' || text[at] === '&' || text[at] === '\u00a0' || text[at] === '+')) {
    at++
    if (text[at - 1] === ' ' && (text[at] === '&' || text[at] === '+')) at++
    if (text[at] === ' ') at++
    part = slash(at) ?? vulgarAt(at)
    if (part !== null && part.num >= part.den) part = null
  }
  if (part !== null) return {num: n * part.den + part.num, den: part.den, end: part.end}
  if ((text[end] === '.' || text[end] === '·') && digits(end + 1) > end + 1 && digits(end + 1) - end <= 7) {
    const stop = digits(end + 1)
    const den = 10 ** (stop - end - 1)
    if (whole.length + stop - end <= 15) return {num: n * den + Number(text.slice(end + 1, stop)), den, end: stop}
  }
  return {num: n, den: 1, end}
}

/** Behind three figures after a comma: a weight or volume of which nobody takes a thousand, so that "1,500 kg" is a kilogram and a half. */
const LARGE_MEASURE = /^[ \u00a0]?(?:kg|kilo\w*|l|lit(?:re|er)s?)\b/i

/**
 * The comma as a decimal sign, as in much of Europe: "1,5 kg", "0,125 l", "1,500 kg". Three figures after it are thousands
 * ("1,500 g") unless a nought or a large measure says otherwise; "2,3 or 4" and "1,2,3" are lists.
 */
function decimalComma(
  text: string,
  i: number,
  end: number,
  digits: (from: number) => number,
): {num: number; den: number; end: number} | null {
  if (text[end] !== ',' || end - i > 4 || (text[i - 1] === ',' && i > 1 && isDigit(text.charCodeAt(i - 2)))) return null
  const stop = digits(end + 1)
  const places = stop - end - 1
  if (places === 0 || places > 3 || (text[stop] === ',' && isDigit(text.charCodeAt(stop + 1)))) return null
  if (places === 3 && text.slice(i, end) !== '0' && !LARGE_MEASURE.test(text.slice(stop, stop + 12))) return null
  if (/^,? or \d/.test(text.slice(stop, stop + 6))) return null
  const den = 10 ** places
  return {num: Number(text.slice(i, end)) * den + Number(text.slice(end + 1, stop)), den, end: stop}
}

/**
 * Put a section together and tokenise its blocks.
 *
 * @param parts everything but the tokens
 */
export function makeSection(parts: Omit<Section, 'tokens'>): Section {
  const tokens: Token[] = []
  for (let i = 0; i < parts.blocks.length; i++) tokenise(parts.blocks[i]!, i, tokens)
  return {...parts, tokens}
}

/** A section of plain text, without Markdown: for tests and for phrases that stand alone, such as front matter's `oven`. */
export function plainSection(text: string, facts: ReceiptFacts = {}): Section {
  const blocks: Block[] =
    text === '' ? [] : [{kind: 'paragraph', text, pieces: [{at: 0, from: 0, to: text.length}], start: 0, end: text.length}]
  return makeSection({source: text, file: '', title: '', line: 1, start: 0, end: text.length, facts, blocks})
}
