import * as z from 'zod'
import {parseDuration} from '../measure/quantity.js'
import {frontMatterSpan, isKeyed, quantity, readFrontMatter} from './front-matter.js'
import type {Message, ReceiptFacts} from './types.js'

/** A receipt's front matter. Every key is optional: it states only what the text leaves out. */
export const factsSchema = z.strictObject({
  year: z.number({error: 'write the year in figures, such as 1829'}).int().min(1300).max(2200).optional(),
  place: z.string().optional(),
  serves: z.number({error: 'write a number of people'}).positive().max(10000).optional(),
  vessel: z.string().optional(),
  oven: z.string().optional(),
  bake: quantity(parseDuration).optional(),
  rise: quantity(parseDuration).optional(),
  prove: quantity(parseDuration).optional(),
  'holds heat': z.boolean({error: 'write yes or no as true or false'}).optional(),
  title: z.string().optional(),
  says: z.record(z.string(), z.string()).optional(),
})

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
