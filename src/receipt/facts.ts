import * as z from 'zod'
import type {Parsed} from '../measure/quantity.js'
import {readDuration} from './durations.js'
import {frontMatterSpan, inWords, isKeyed, quantity, readFrontMatter} from './front-matter.js'
import type {Message, ReceiptFacts} from './types.js'

/** A receipt's front matter. Every key is optional: it states only what the text leaves out. */
export const factsSchema = z.strictObject({
  year: quantity(parseYear).optional(),
  place: quantity(parsePlace).optional(),
  serves: quantity(parseServes).optional(),
  vessel: inWords('write “round 9 in x 2 in”, “loaf 9 x 5 x 3 in” or “free-standing loaf 22 cm”').optional(),
  oven: quantity(parseHeat).optional(),
  bake: quantity(parseBake).optional(),
  rise: quantity(readDuration).optional(),
  prove: quantity(readDuration).optional(),
  'holds heat': z.boolean({error: 'write yes or no as true or false'}).optional(),
  title: inWords('write the receipt’s name').optional(),
  says: z
    .unknown()
    .superRefine((value, context) => {
      if (typeof value === 'object' && value !== null && !Array.isArray(value)) return
      const suggest = 'write each below it on a line of its own, set in: “  a coffee cup: 1 cup”'
      context.addIssue({code: 'custom', message: 'no words of the text with their reading stand here', params: {suggest}})
    })
    .pipe(z.record(z.string(), inWords('write how these words are to be read, such as “1 cup”')))
    .optional(),
})

const NUMBER = /^[-+]?\d+(?:\.\d+)?$/

function parseYear(text: string): Parsed<number> {
  const year = Number(text)
  const suggest = 'write the year in figures, such as “year: 1829”'
  if (!/^\d{1,4}$/.test(text.trim())) return {ok: false, reason: `“${text}” is not a year`, suggest}
  if (year >= 1300 && year <= 2200) return {ok: true, value: year}
  return {ok: false, reason: `no receipt known here is of the year ${year}`, suggest}
}

function parsePlace(text: string): Parsed<string> {
  if (/\p{L}/u.test(text)) return {ok: true, value: text}
  return {ok: false, reason: `“${text}” is not a place`, suggest: 'write a country or a town, such as “place: United States”'}
}

/** People that a receipt serves: one number, for an amount is reckoned from it. */
function parseServes(text: string): Parsed<number> {
  const plain = text.trim()
  const range = /^(\d{1,5}) ?(?:[-–—]|to|or|bis) ?(\d{1,5})$/.exec(plain)
  if (range !== null)
    return {ok: false, reason: `“${text}” is a range`, suggest: `write one number of people, such as “serves: ${range[1]}”`}
  const suggest = 'write a number of people, such as “serves: 12”'
  if (!NUMBER.test(plain)) return {ok: false, reason: `“${text}” is not a number of people`, suggest}
  const people = Number(plain)
  return people > 0 && people <= 10000 ? {ok: true, value: people} : {ok: false, reason: `it cannot serve ${plain}`, suggest}
}

/** The heat as written: what a number without a scale is of, nobody can tell. */
function parseHeat(text: string): Parsed<string> {
  const plain = text.trim()
  if (plain === '')
    return {ok: false, reason: 'nothing is written here', suggest: 'write “350 °F”, “180 °C”, “gas mark 4” or “a quick oven”'}
  if (!NUMBER.test(plain)) return {ok: true, value: text}
  const reason = `“${text}” does not say of what scale`
  return Number(plain) >= 1 && Number(plain) < 11
    ? {ok: false, reason, suggest: `write “gas mark ${plain}”, or degrees such as “350 °F” or “180 °C”`}
    : {ok: false, reason, suggest: `write “${plain} °F” or “${plain} °C”`}
}

/** How long it bakes: what bakes for no time is not baked. */
function parseBake(text: string): Parsed<{readonly low: number; readonly high: number}> {
  const read = readDuration(text)
  if (!read.ok || read.value.high > 0) return read
  return {ok: false, reason: `nothing bakes for “${text}”`, suggest: 'write “45 min” or “1 h 30 min”, or take the line out'}
}

const KEYS: ReadonlySet<string> = new Set(Object.keys(factsSchema.shape))

/** Lines of keys, or set in below one, or empty, between two rules. */
const BETWEEN_RULES = /(?<=^|\n)-{3,}[ \t]*\r?\n((?:[a-z][a-z ]*:[^\n]*\n|[ \t][^\n]*\n|\r?\n)+)(?=-{3,}[ \t]*(?:\r?\n|$))/g

/**
 * Where front matter for a later receipt of a file begins: a line "---", keys of a receipt, a line "---". One key that is also a word
 * of receipts ("serves: 4") may be a line of its text.
 *
 * @returns offsets of the first key of each
 */
export function laterFacts(source: string, from: number): number[] {
  const found: number[] = []
  for (const block of source.slice(from).matchAll(BETWEEN_RULES)) {
    if (isKeyed(block[1]!, KEYS, ['year', 'place']))
      found.push(from + block.index + block[0].length - block[1]!.trimStart().length)
  }
  return found
}

/** What front matter states, where the Markdown begins, and the readings corrected by hand. */
export interface StatedFacts {
  readonly facts: ReceiptFacts
  readonly title: string | null
  /** Words of the text → how to read them. */
  readonly says: ReadonlyMap<string, string>
  readonly bodyStart: number
  readonly messages: readonly Message[]
  /** Offset of a key of `says`, for messages. */
  readonly at: (key: string) => number
}

/**
 * Read a receipt's front matter.
 *
 * @returns what it states; where it is faulty, nothing of it, and messages with line and column
 */
export function readFacts(source: string, file: string): StatedFacts {
  if (frontMatterSpan(source) === null) return {facts: {}, title: null, says: new Map(), bodyStart: 0, messages: [], at: () => 0}
  const read = readFrontMatter(source, file, factsSchema)
  const value = read.value ?? {}
  const {year, place, serves, vessel, oven, bake, rise, prove} = value
  const holdsHeat = value['holds heat']
  return {
    facts: {
      ...(year === undefined ? {} : {year}),
      ...(place === undefined ? {} : {place}),
      ...(serves === undefined ? {} : {serves}),
      ...(vessel === undefined ? {} : {vessel}),
      ...(oven === undefined ? {} : {oven}),
      ...(bake === undefined ? {} : {bake}),
      ...(rise === undefined ? {} : {rise}),
      ...(prove === undefined ? {} : {prove}),
      ...(holdsHeat === undefined ? {} : {holdsHeat}),
    },
    title: value.title ?? null,
    says: new Map(Object.entries(value.says ?? {})),
    bodyStart: read.bodyStart,
    messages: read.messages,
    at: (key) => read.at('says', key),
  }
}
