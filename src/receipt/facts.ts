import * as z from 'zod'
import {parseDuration} from '../measure/quantity.js'
import {frontMatterSpan, quantity, readFrontMatter} from './front-matter.js'
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
  'holds heat': z.boolean({error: 'write yes or no as true or false'}).optional(),
  title: z.string().optional(),
  says: z.record(z.string(), z.string()).optional(),
})

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
  const {year, place, serves, vessel, oven, bake, rise} = value
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
      ...(holdsHeat === undefined ? {} : {holdsHeat}),
    },
    title: value.title ?? null,
    says: new Map(Object.entries(value.says ?? {})),
    bodyStart: read.bodyStart,
    messages: read.messages,
    at: (key) => read.at('says', key),
  }
}
