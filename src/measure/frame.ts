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
  readonly ingredients: ReadonlyArray<{readonly text: string; readonly measure: string; readonly item: string}>
  readonly oven: ReadonlyArray<{readonly text: string}>
}

/** The year a modern receipt is read by: any after the measures last changed would do. */
export const MODERN_YEAR = 2000
const COUNTRY = {us: 'America', uk: 'England'} as const
const DEMONYM = {us: 'American ', uk: 'British '} as const

/** The first of a row's words that the receipt says, as it is to be quoted. */
function found(row: FrameRow, input: FrameInput): string | null {
  for (const word of row.words) {
    switch (row.in) {
      case 'measure':
        if (input.ingredients.some((one) => one.measure === word)) return word
        break
      case 'item':
        if (input.ingredients.some((one) => one.item === word)) return word
        break
      case 'oven': {
        const phrase = input.oven.find((one) => one.text.toLowerCase().includes(word))
        if (phrase !== undefined) return phrase.text.replace(/\s+/g, ' ')
        break
      }
      default:
        if (input.ingredients.some((one) => one.text.toLowerCase().includes(word))) return word
    }
  }
  return null
}

/**
 * The frame of a receipt. What the front matter states stands. Without a year, a receipt with modern words (grams, °F, gas mark,
 * "all-purpose flour") and no old ones is read as modern; without a place, such a receipt is American or British if its words are of
 * one country only. Anything else stays open, and the ranges cover it.
 */
export function frameOf(input: FrameInput): Frame {
  const {year, place} = input
  if (year !== null && place !== null) return {year, place, told: null}
  if (year !== null && year < 1900) return {year, place, told: null}
  const signs = (says: FrameRow['says']): string[] =>
    frameRows.filter((row) => row.says === says).flatMap((row) => found(row, input) ?? [])
  const modern = signs('modern')
  if (year === null && (modern.length === 0 || signs('old').length > 0)) return {year, place, told: null}
  const us = place === null ? signs('us') : []
  const uk = place === null ? signs('uk') : []
  const country = us.length > 0 && uk.length === 0 ? 'us' : uk.length > 0 && us.length === 0 ? 'uk' : null
  if (year !== null && country === null) return {year, place, told: null}
  const by = [...new Set([...(country === 'us' ? us : country === 'uk' ? uk : []), ...(year === null ? modern : [])])].slice(0, 3)
  return {
    year: year ?? MODERN_YEAR,
    place: place ?? (country === null ? null : COUNTRY[country]),
    told: `read as a ${year === null ? 'modern ' : ''}${country === null ? '' : DEMONYM[country]}receipt, for it says ${by.map((word) => `“${word}”`).join(', ')}`,
  }
}
