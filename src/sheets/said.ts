import {lookUpItem, lookUpSource} from '../lexicon/index.js'
import type {Source} from '../lexicon/schema.js'
import {writeClock} from '../measure/quantity.js'
import type {Message} from '../receipt/types.js'
import type {Dish} from '../scale/types.js'
import {amountsIn, clock, timeOfDay, vesselSize} from './figures.js'
import {plainStyle, type Style} from './style.js'
import {deBook} from './words/de-sentences.js'
import {sayIf} from './words/index.js'
import {type Book, counted, inBook} from './words/sentences.js'

/** What the core says in English, in the languages beside it. */
export const books: Readonly<Record<string, Book>> = {de: deBook}

/** What the core says in the reader's language; null in English, in which it speaks. */
export const bookOf = (style: Style): Book | null => books[style.words['language.code']] ?? null

/** A sentence of the core in the reader's language; as it is where there is none. */
export function inWords(text: string, style: Style): string {
  const book = bookOf(style)
  return book === null ? text : (inBook(text, book) ?? text)
}

/** A reason, or the words after a key of front matter before it; null where the book has none like it. */
function reasonIn(text: string, book: Book): string | null {
  const whole = inBook(text, book)
  if (whole !== null) return whole
  const keyed = /^([a-z][a-z ›]*): (.*)$/s.exec(text)
  const said = keyed ? inBook(keyed[2]!, book) : null
  return said === null ? null : `${keyed![1]}: ${said}`
}

/** Some words with their times of day written as a reader is used to; only those the message names, since a user's words may hold others. */
function withClocks(text: string, times: readonly number[] | undefined, written: (at: number) => string): string {
  if (times === undefined) return text
  return text.replace(/(?:(?:tomorrow|yesterday) )?\d{1,2}:\d\d(?!:?\d)/g, (whole) => {
    const at = times.find((time) => writeClock(time) === whole)
    return at === undefined ? whole : written(at)
  })
}

/** A time of day as it may be written into a file, which takes English alone. */
function clockToWrite(minutes: number, style: Style): string {
  if (style.clock === 24) return writeClock(minutes)
  const day = Math.floor(minutes / 1440)
  const time = timeOfDay(minutes, {...plainStyle, clock: 12})
  return day === 0 ? time : `${day > 0 ? 'tomorrow' : 'yesterday'} ${time}`
}

/** A message of the readers, the planner or the checker in the reader's language; `foreign` where some of it stayed English. */
export function messageWords(
  message: Pick<Message, 'severity' | 'reason' | 'suggest' | 'times'>,
  style: Style,
): {readonly severity: string; readonly reason: string; readonly suggest: string | null; readonly foreign: boolean} {
  const book = bookOf(style)
  const reason = book === null ? message.reason : reasonIn(message.reason, book)
  const suggest = message.suggest === undefined ? null : book === null ? message.suggest : inBook(message.suggest, book)
  const suggested = suggest ?? message.suggest ?? null
  return {
    severity: style.words[`severity.${message.severity}`],
    reason: withClocks(reason ?? message.reason, message.times, (at) => clock(at, style)),
    suggest: suggested === null ? null : withClocks(suggested, message.times, (at) => clockToWrite(at, style)),
    foreign: reason === null || (suggest === null && message.suggest !== undefined),
  }
}

/** The name of a vessel in the reader's language and units. */
export function vesselName(name: string, style: Style): string {
  return inWords(vesselSize(name, style), style)
}

/** An item in the reader's language, by the name the receipt gives it, else of what the lexicon has under that name. */
const itemIn = (name: string, style: Style): string | null =>
  nameIn(bookOf(style)?.items, name) ?? nameIn(bookOf(style)?.items, lookUpItem(name)?.id ?? name)

const nameIn = (table: Readonly<Record<string, string>> | undefined, id: string): string | null =>
  table !== undefined && Object.hasOwn(table, id) ? table[id]! : null

/** An item's name; of more than one where the language has a word for it. */
export function itemName(id: string, style: Style, count = 1): string {
  const name = itemIn(id, style)
  return name === null ? id : counted(name, count)
}

/** Whether an item's name stays English in a text of another language. */
export function foreignItem(id: string, style: Style): boolean {
  return bookOf(style) !== null && itemIn(id, style) === null
}

/** The name of a kind of dish: the id in English. */
export function kindName(id: string, style: Style): string {
  return nameIn(bookOf(style)?.kinds, id) ?? id
}

/** The part of a receipt that is mixed apart; null where it stays in the receipt's own words. */
const partIn = (part: string, style: Style): string | null => nameIn(bookOf(style)?.parts, part)

/** A part of a receipt in the reader's language; in the receipt's own words where it is one of its own. */
export function partName(part: string, style: Style): string {
  return partIn(part, style) ?? part
}

/** Whether the name of a part stays English in a text of another language. */
export function foreignPart(part: string, style: Style): boolean {
  return bookOf(style) !== null && partIn(part, style) === null
}

/** What an item is sold as today. */
export function modernName(id: string, modern: string, style: Style): string {
  return nameIn(bookOf(style)?.modern, id) ?? modern
}

/** What replaces an item and how. */
export function insteadOf(
  id: string,
  english: {readonly item: string; readonly how: string},
  style: Style,
): {readonly item: string; readonly how: string} {
  const book = bookOf(style)
  return book !== null && Object.hasOwn(book.instead, id) ? book.instead[id]! : english
}

/** A caution in the reader's language. */
export function cautionText(caution: {readonly id: string; readonly text: string}, style: Style): string {
  return nameIn(bookOf(style)?.cautions, caution.id) ?? caution.text
}

/** The title of a source; descriptions that are no titles in the reader's language. */
export function sourceTitle(source: Source, style: Style): string {
  return nameIn(bookOf(style)?.sources, source.id) ?? source.title
}

/** Whether a source's line is a foreign title, to be marked as English. */
export function foreignTitle(id: string, style: Style): boolean {
  return bookOf(style) !== null && nameIn(bookOf(style)?.sources, id) === null
}

/** A line of `field: value (why)` of what is ours. */
export function oursLine(one: {readonly field: string; readonly value: string; readonly why: string}, style: Style): string {
  return `${inWords(one.field, style)}: ${oursValue(one, style)} – ${bookOf(style) === null ? titled(one.why) : inWords(one.why, style)}`
}

/** How a dish was brought to its size: a line of each decision, in the units asked for. */
export function sizedLines(dish: Dish, style: Style): string[] {
  return dish.sized.map((one) => amountsIn(oursLine(one, style), style))
}

/** A reason that ends with the id of its source, with the source's title instead. */
const titled = (why: string): string =>
  why.replace(/\(([a-z0-9-]+)\)$/, (whole, id: string) => (lookUpSource(id) ? `(${lookUpSource(id)!.title})` : whole))

/** The value of what is ours: a kind by its name, vessels in the units asked for. */
export function oursValue(one: {readonly field: string; readonly value: string}, style: Style): string {
  if (one.field === 'kind') return kindName(one.value, style)
  if (one.field === 'vessel' || one.field === 'size') return vesselName(one.value, style)
  const [, count, vessel] = /^(\d+ × )(.+)$/s.exec(one.value) ?? []
  return inWords(vessel === undefined ? one.value : `${count}${vesselSize(vessel, style)}`, style)
}

/** Allergens by their plain names in the reader's language. */
export function allergenNames(names: readonly string[], style: Style): string {
  return names.map((name) => sayIf(style.words, `allergen.${name}`, name)).join(', ')
}
