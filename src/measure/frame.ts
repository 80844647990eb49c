import {type FrameRow, frameRows} from '../lexicon/frame-words.js'

/** The year and place a receipt's measures are read by, stated or told from its words. */
export interface Frame {
  readonly year: number | null
  readonly place: string | null
  /** What was not stated but told from the text, and by what: "a modern American receipt: it says “°F”, “all-purpose”". Null if nothing. */
  readonly told: string | null
}

/** What `frameOf` looks at. */
export interface FrameInput {
  readonly year: number | null
  readonly place: string | null
  readonly ingredients: ReadonlyArray<{
    readonly text: string
    readonly measure: string
    readonly measureText?: string
    readonly item: string
  }>
  readonly oven: ReadonlyArray<{readonly text: string}>
}

/** The year a modern receipt is read by: any after the measures last changed would do. */
export const MODERN_YEAR = 2000
const COUNTRY = {us: 'America', uk: 'England', au: 'Australia'} as const
const DEMONYM = {us: 'American ', uk: 'British ', au: 'Australian '} as const

const isLetter = (text: string, at: number): boolean => {
  const c = text.charCodeAt(at)
  return (c >= 97 && c <= 122) || c >= 0xc0
}

/** Where a word stands in a text as a word of its own, in the plural too: "tsp" is not in "dessertspoonful". −1 where it does not. */
function wordAt(text: string, word: string): number {
  for (let at = text.indexOf(word); at >= 0; at = text.indexOf(word, at + 1)) {
    let end = at + word.length
    if (text.charCodeAt(end) === 115) end++
    if (!(isLetter(word, 0) && isLetter(text, at - 1)) && !(isLetter(word, word.length - 1) && isLetter(text, end))) return at
  }
  return -1
}

/** What the rows are looked up in, each made once a receipt. */
interface Said {
  /** Each measure, and the word by which the receipt says it. */
  readonly measures: ReadonlyMap<string, string>
  readonly items: ReadonlySet<string>
  readonly words: string
  readonly oven: readonly string[]
}

/** The first of a row's words that the receipt says, as it is to be quoted. */
function found(row: FrameRow, said: Said): string | null {
  for (const word of row.words) {
    switch (row.in) {
      case 'measure':
        if (said.measures.has(word)) return said.measures.get(word)!
        break
      case 'item':
        if (said.items.has(word)) return word
        break
      case 'oven': {
        const phrase = said.oven.find((text) => wordAt(text.toLowerCase(), word) >= 0)
        if (phrase !== undefined) return phrase.replace(/\s+/g, ' ')
        break
      }
      default:
        if (wordAt(said.words, word) >= 0) return word
    }
  }
  return null
}

/**
 * The frame of a receipt. What the front matter states stands. Without a year, a receipt with modern words (grams, °F, gas mark,
 * "all-purpose flour") and no old ones is read as modern; without a place, such a receipt is American, British or Australian if its words
 * are of one country only. Anything else stays open, and the ranges cover it.
 */
export function frameOf(input: FrameInput): Frame {
  const {year, place} = input
  if (year !== null && place !== null) return {year, place, told: null}
  if (year !== null && year < 1900) return {year, place, told: null}
  const said: Said = {
    measures: new Map([...input.ingredients].reverse().map(({measure, measureText}) => [measure, measureText ?? measure])),
    items: new Set(input.ingredients.map((one) => one.item)),
    words: input.ingredients
      .map((one) => one.text)
      .join('\n')
      .toLowerCase(),
    oven: input.oven.map((one) => one.text),
  }
  const signs = (says: FrameRow['says']): string[] =>
    frameRows.filter((row) => row.says === says).flatMap((row) => found(row, said) ?? [])
  const modern = signs('modern')
  if (year === null && (modern.length === 0 || signs('old').length > 0)) return {year, place, told: null}
  const by = {us: signs('us'), uk: signs('uk'), au: signs('au')}
  // British and Australian receipts have most of their words in common.
  const british = by.au.length > 0 ? 'au' : by.uk.length > 0 ? 'uk' : null
  const american = by.us.length > 0 ? 'us' : null
  const country = place !== null || (american && british) ? null : (american ?? british)
  if (year !== null && country === null) return {year, place, told: null}
  const words = [...new Set([...(country === null ? [] : by[country]), ...(year === null ? modern : [])])].slice(0, 3)
  return {
    year: year ?? MODERN_YEAR,
    place: place ?? (country === null ? null : COUNTRY[country]),
    told: `read as a ${year === null ? 'modern ' : ''}${country === null ? '' : DEMONYM[country]}receipt, for it says ${words.map((word) => `“${word}”`).join(', ')}`,
  }
}
