import {cautions} from './cautions.js'
import {fleshNames} from './flesh-names.js'
import {fleshWords} from './flesh-words.js'
import {hedgeAmounts} from './hedge-amounts.js'
import {items} from './items.js'
import {kinds} from './kinds.js'
import {measures} from './measures.js'
import {places} from './places.js'
import {wordsUsed} from './row.js'
import type {Caution, DishKind, Item, Measure, Place, Source} from './schema.js'
import {sources} from './sources.js'

export {cautions, hedgeAmounts, items, kinds, measures, places, sources}

/** A row found in a run of words, and how many of the words it took. */
export interface Found<Row> {
  readonly row: Row
  readonly length: number
}

const IRREGULAR: ReadonlyMap<string, string> = new Map([
  ['loaves', 'loaf'],
  ['leaves', 'leaf'],
  ['halves', 'half'],
  ['calves', 'calf'],
  ['knives', 'knife'],
  ['shelves', 'shelf'],
  ['potatoes', 'potato'],
  ['tomatoes', 'tomato'],
  ['mangoes', 'mango'],
  ['geese', 'goose'],
  ['yelk', 'yolk'],
  ['yelks', 'yolk'],
  ['yolke', 'yolk'],
  ['yolkes', 'yolk'],
])

const HYPHEN = /[-‐‑–]/
const HYPHEN_OR_OTHER_SPACE = /[-‐‑–\t\n\r\u00a0]/
const BETWEEN = /[\s\-‐‑–]+/
const FOREIGN = /[^ -~’‐‑–]/
/** Folds already made: a book has few different words. */
const folds = new Map<string, string>()
const MOST_FOLDS = 50_000

/**
 * A word in the form the tables are keyed by: lower case, no stops, apostrophes or hyphens, plural folded to singular. Both sides of
 * a lookup are folded, so a fold need not be a word ("molasses" → "molass").
 */
export function fold(word: string): string {
  let folded = folds.get(word)
  if (folded === undefined) {
    folded = HYPHEN.test(word) ? foldAll(word).join('') : foldPlain(plainLetters(word.toLowerCase()).replace(/['’.]/g, ''))
    if (folds.size >= MOST_FOLDS) folds.clear()
    folds.set(word, folded)
  }
  return folded
}

/** A word without accents, ligatures and the long s. */
export const plainLetters = (word: string): string =>
  FOREIGN.test(word)
    ? word.normalize('NFD').replace(/\p{M}/gu, '').replace(/æ/g, 'ae').replace(/œ/g, 'oe').replace(/ſ/g, 's')
    : word

function foldPlain(plain: string): string {
  const irregular = IRREGULAR.get(plain)
  if (irregular !== undefined) return irregular
  if (plain.length < 4 || !plain.endsWith('s')) return plain
  if (plain.endsWith('ies') && plain.length > 4) return `${plain.slice(0, -3)}y`
  if (plain.endsWith('ss') || plain.endsWith('us')) return plain
  return /(?:ch|sh|x|ss)es$/.test(plain) ? plain.slice(0, -2) : plain.slice(0, -1)
}

/** The folded words of a phrase: split at spaces and hyphens. */
export function foldAll(phrase: string): string[] {
  const parts: string[] = []
  for (const word of phrase.split(HYPHEN_OR_OTHER_SPACE.test(phrase) ? BETWEEN : ' ')) {
    const folded = word === '' ? '' : fold(word)
    if (folded !== '') parts.push(folded)
  }
  return parts
}

/**
 * Rows by their spellings. Keys are folded words joined without a space, so that "rose-water", "rose water" and "rosewater" meet;
 * `longest` says for a first word how many words to try.
 */
interface Table<Row> {
  readonly rows: Map<string, Row>
  readonly longest: Map<string, number>
  /** Every beginning of a key, at a word's end: a look-up stops where no key goes on. */
  readonly begins: Set<string>
  /** Every word of a spelling. */
  readonly words: Set<string>
}

function table<Row>(rows: readonly Row[], spellings: (row: Row) => readonly string[]): Table<Row> {
  const byKey = new Map<string, Row>()
  const longest = new Map<string, number>()
  const begins = new Set<string>()
  const words = new Set<string>()
  for (const row of rows) {
    for (const spelling of spellings(row)) {
      const parts = foldAll(spelling)
      for (const part of parts) words.add(part)
      const key = parts.join('')
      if (!byKey.has(key)) byKey.set(key, row)
      const first = parts[0] ?? ''
      if ((longest.get(first) ?? 0) < parts.length) longest.set(first, parts.length)
      if (parts.length > 1 && !longest.has(key)) longest.set(key, 1)
      let begin = ''
      for (let i = 0; i + 1 < parts.length; i++) {
        begin += parts[i]
        begins.add(begin)
      }
    }
  }
  return {rows: byKey, longest, begins, words}
}

function longestMatch<Row>(from: Table<Row>, folded: readonly string[], at: number): Found<Row> | null {
  const first = folded[at]
  if (first === undefined) return null
  const most = from.longest.get(first)
  if (most === undefined) return null
  const end = Math.min(most, folded.length - at)
  let key = first
  let found = from.rows.get(key)
  let taken = 1
  for (let length = 2; length <= end && from.begins.has(key); length++) {
    key += folded[at + length - 1]
    const row = from.rows.get(key)
    if (row !== undefined) {
      found = row
      taken = length
    }
  }
  return found === undefined ? null : {row: found, length: taken}
}

const measureTable = table(measures, (row) => row.spellings)
const itemTable = table(items, (row) => row.spellings)

/** Whether a folded word begins a measure's spelling, or is one written as one word. */
export const beginsMeasure = (folded: string): boolean => measureTable.longest.has(folded)

/** Whether a folded word begins an item's spelling, or is one written as one word. */
export const beginsItem = (folded: string): boolean => itemTable.longest.has(folded)

/** Whether a folded word stands in a spelling of a measure or an item. */
export const isFoodWord = (folded: string): boolean => measureTable.words.has(folded) || itemTable.words.has(folded)

/** The longest measure whose spelling begins at word `at` of words already folded by `fold`; null where none does. */
export const measureAt = (folded: readonly string[], at = 0): Found<Measure> | null => longestMatch(measureTable, folded, at)

/** The longest item whose spelling begins at word `at` of words already folded by `fold`; null where none does. */
export const itemAt = (folded: readonly string[], at = 0): Found<Item> | null => longestMatch(itemTable, folded, at)

/** The longest measure at the start of plain words ("tea-cupfuls", "of", "milk"). */
export const measureOf = (words: readonly string[]): Found<Measure> | null => measureAt(words.map(fold))

/** The longest item at the start of plain words ("loaf-sugar", "pounded"). */
export const itemOf = (words: readonly string[]): Found<Item> | null => itemAt(words.map(fold))

const byId = <Row extends {readonly id: string}>(rows: readonly Row[]): Map<string, Row> =>
  new Map(rows.map((row) => [row.id, row]))
const measuresById = byId(measures)
const itemsById = byId(items)
const sourcesById = byId(sources)
const cautionsById = byId(cautions)
const kindsById = byId(kinds)

/** A measure by its canonical name ("tablespoon"). */
export const lookUpMeasure = (id: string): Measure | null => measuresById.get(id) ?? null

/**
 * An item by its id, or by any whole spelling of it. A name that no row has is that meat or fish whose word it holds (`lexicon/flesh-names`), without
 * the weights of a piece: “lamb cushion” is lamb.
 */
export const lookUpItem = (name: string): Item | null => lookUpOwnItem(name) ?? itemOfFlesh(name)

/** An item by its id, or by any whole spelling of it, and by no more than that. */
export const lookUpOwnItem = (name: string): Item | null =>
  itemsById.get(name) ?? itemTable.rows.get(foldAll(name).join('')) ?? null

const itemsAlone: ReadonlyMap<string, Item> = new Map(
  items.flatMap((row) => (row.alone ?? []).map((name): [string, Item] => [foldAll(name).join(''), row])),
)

/** What a name that stands by itself in a list means in doubt (“8 thighs”); null where it means nothing so. */
export const itemAlone = (name: string): Item | null => itemsAlone.get(foldAll(name).join('')) ?? null

/** A source by its id. */
export const lookUpSource = (id: string): Source | null => sourcesById.get(id) ?? null

/** A caution by its id. */
export const lookUpCaution = (id: string): Caution | null => cautionsById.get(id) ?? null

/** A kind of dish by its id. */
export const lookUpKind = (id: string): DishKind | null => kindsById.get(id) ?? null

const placesByWord = new Map(places.flatMap((row) => row.words.map((word) => [word, row.place] as const)))
const placesByCode = new Map(places.flatMap((row) => (row.codes ?? []).map((code) => [code, row.place] as const)))

/**
 * Whose measures a `place:` line means: "Hartford, Connecticut" is `us`. Its parts are tried from the last, the widest, to the first;
 * null where none is known.
 */
export function lookUpPlace(text: string): Place | null {
  const parts = text
    .toLowerCase()
    .replaceAll('.', ' ')
    .split(/[,;()/]/)
    .map((part) => part.trim().replace(/\s+/g, ' '))
  for (const part of parts.reverse()) {
    const whole = placesByWord.get(part) ?? (parts.length === 1 ? placesByCode.get(part) : undefined)
    if (whole !== undefined) return whole
    const said = part.split(' ')
    for (let length = Math.min(3, said.length); length > 0; length--) {
      for (let at = 0; at + length <= said.length; at++) {
        const place = placesByWord.get(said.slice(at, at + length).join(' '))
        if (place !== undefined) return place
      }
    }
  }
  return null
}

const fleshByWord = new Map(fleshNames.flatMap(({id, words}) => words.map((word) => [foldAll(word).join(' '), id] as const)))
/** The longest first: „wildschwein“ before „wild“. */
const fleshStems = fleshNames
  .flatMap(({id, stems = []}) => stems.map((stem) => ({id, stem: plainLetters(stem)})))
  .sort((a, b) => b.stem.length - a.stem.length)
const noFlesh: ReadonlySet<string> = new Set(wordsUsed(fleshWords, 'no flesh').map(fold))
const noFleshEnds = [...noFlesh]
const otherThings = wordsUsed(fleshWords, 'other').map((phrase) => foldAll(phrase).join(' '))

const namesOfFlesh = new Map<string, Item | null>()
/** So that no text can make it grow without end. */
const MOST_NAMES = 5000

/** What is known of a meat or fish that only a word of its name tells: all but what one of it weighs. */
function itemOfFlesh(name: string): Item | null {
  const known = namesOfFlesh.get(name)
  if (known !== undefined) return known
  const found = readFleshName(name)
  if (namesOfFlesh.size >= MOST_NAMES) namesOfFlesh.clear()
  namesOfFlesh.set(name, found)
  return found
}

const isFleshRow = (row: Item): boolean => row.group === 'meat' || row.group === 'fish'

function readFleshName(name: string): Item | null {
  const parts = foldAll(name)
  const found = fleshAmong(parts)
  const row = found === null ? undefined : itemsById.get(found.id)
  if (found === null || row === undefined) return null
  const text = ` ${parts.join(' ')} `
  if (otherThings.some((phrase) => text.includes(` ${phrase} `))) return null
  const of = parts.indexOf('of')
  const head = itemTable.rows.get(of > 0 ? parts[of - 1]! : parts.at(-1)!)
  const ofIt =
    parts.some((part) => noFlesh.has(part)) ||
    (found.stem !== undefined && noFleshEnds.some((end) => found.part.slice(found.stem!.length).endsWith(end)))
  // "Lamb's lettuce", "coconut meat": another thing by its own name.
  const another =
    (head !== undefined && !isFleshRow(head)) ||
    (row.id === 'meat' && parts.some((part) => !isFleshRow(itemTable.rows.get(part) ?? row)))
  if (!ofIt && !another) return {...row, pieces: []}
  // Fish sauce is no fish, and is none for whoever must not have fish.
  return ofIt && row.group === 'fish' ? {...row, group: 'made dish', pieces: [], cautions: []} : null
}

interface FleshNamed {
  readonly id: string
  readonly part: string
  /** What a compound begins with: „Rindergulasch“. */
  readonly stem?: string
}

/** The item whose word is among the words of a name, the last of them: “chicken and ham”; “goat cutlet” is of the goat. */
function fleshAmong(parts: readonly string[]): FleshNamed | null {
  let general: FleshNamed | null = null
  for (let i = parts.length - 1; i >= 0; i--) {
    const part = parts[i]!
    const id = (i > 0 ? fleshByWord.get(`${parts[i - 1]} ${part}`) : undefined) ?? fleshByWord.get(part)
    const stem = id === undefined ? fleshStems.find(({stem}) => part.startsWith(stem)) : undefined
    const found = id !== undefined ? {id, part} : stem === undefined ? null : {...stem, part}
    if (found !== null && found.id !== 'meat') return found
    general ??= found
  }
  return general
}
