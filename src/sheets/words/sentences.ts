/**
 * What the core says in English, in another language: notes of a conversion, reasons of what is ours, cautions, names of items and vessels.
 * The core's modules know no language, so their sentences are recognised here by the templates they are made from. A sentence without a
 * row is shown as it is and marked as English; `tests/sheets-german.test.ts` fails when one of a table of the lexicon has no row.
 */
export interface Book {
  /** The decimal mark. */
  readonly mark: string
  /** Names by the id of the lexicon's row; after a stroke the plural. */
  readonly items: Readonly<Record<string, string>>
  readonly modern: Readonly<Record<string, string>>
  readonly instead: Readonly<Record<string, {readonly item: string; readonly how: string}>>
  readonly measures: Readonly<Record<string, string>>
  readonly kinds: Readonly<Record<string, string>>
  /** Parts of a receipt that are mixed apart, by the names of the lexicon. */
  readonly parts: Readonly<Record<string, string>>
  readonly cautions: Readonly<Record<string, string>>
  readonly sources: Readonly<Record<string, string>>
  /**
   * An English template and the same in the language. `{n}`, `{n2}` … stand for a figure or a span of figures, `{size}` and `{weight}`
   * for a figure with its unit, any other `{name}` for words. On the other side `{name:text}` is itself a sentence of the book, `{name:item}`, `{name:measure}`, `{name:kind}` and
   * `{name:source}` are names, `{name:noun}` is one where it is known, else as written, `{name:instead}` and `{name:how}` what replaces an item, `{name:list}` items with "and" or commas
   * between, `{name:size}` a vessel's sizes, `{name:quotes}` words in quotation marks, which are put in the language's own.
   */
  readonly sentences: ReadonlyArray<readonly [english: string, other: string]>
  /** The word between the last two of a list. */
  readonly and: string
  /** The marks about quoted words. */
  readonly quotes: readonly [string, string]
  readonly inch: string
}

interface Pattern {
  readonly test: RegExp
  readonly names: readonly string[]
  readonly other: string
}

const patterns = new WeakMap<Book, {readonly exact: ReadonlyMap<string, string>; readonly made: readonly Pattern[]}>()
const known = new WeakMap<Book, Map<string, string | null>>()

const escaped = (text: string): string => text.replace(/[.*+?^$()|[\]\\{}]/g, '\\$&')

/** A template as a pattern. */
function patternOf(english: string, other: string): Pattern {
  const names: string[] = []
  const source = english
    .split(/(\{\w+\})/)
    .map((part) => {
      const name = /^\{(\w+)\}$/.exec(part)?.[1]
      if (name === undefined) return escaped(part)
      names.push(name)
      return /^n\d*$/.test(name) ? '(\\d[\\d ./–]*?)' : /^(?:size|weight)\d*$/.test(name) ? '(\\d[^:;“]*?)' : '(.+?)'
    })
    .join('')
  return {test: new RegExp(`^${source}$`, 's'), names, other}
}

function compiled(book: Book): {readonly exact: ReadonlyMap<string, string>; readonly made: readonly Pattern[]} {
  const before = patterns.get(book)
  if (before) return before
  const exact = new Map(book.sentences.filter(([english]) => !english.includes('{')))
  const made = book.sentences.filter(([english]) => english.includes('{')).map(([english, other]) => patternOf(english, other))
  const all = {exact, made}
  patterns.set(book, all)
  return all
}

/** Singular or plural of a name with a stroke in it. */
export function counted(name: string, count: number): string {
  const [one, many] = name.split('|')
  return count > 1 ? (many ?? one!) : one!
}

/** No sentence of the core is as long as this; a longer text is a user's, and matching it could take a while. */
const LONGEST = 1000

/** A sentence in the language of a book; null where the book has none like it. */
export function inBook(english: string, book: Book): string | null {
  if (english.length > LONGEST) return null
  const memory = known.get(book) ?? new Map<string, string | null>()
  known.set(book, memory)
  const before = memory.get(english)
  if (before !== undefined) return before
  const said = find(english, book)
  if (memory.size > 20_000) memory.clear()
  memory.set(english, said)
  return said
}

function find(english: string, book: Book): string | null {
  const {exact, made} = compiled(book)
  const whole = exact.get(english)
  if (whole !== undefined) return whole
  for (const {test, names, other} of made) {
    const match = test.exec(english)
    if (!match) continue
    const values = new Map(names.map((name, i) => [name, match[i + 1]!]))
    const said = filled(other, values, book)
    if (said !== null) return said
  }
  return null
}

/** A template with its blanks filled; null where a name in it is not known. */
function filled(other: string, values: ReadonlyMap<string, string>, book: Book): string | null {
  let whole = true
  const count = Number(/^[\d.]+$/.exec(values.get('n') ?? '')?.[0] ?? (values.get('n')?.includes(' ') ? 2 : 1))
  const text = other.replace(/\{(\w+)(?::(\w+))?\}/g, (_, name: string, kind: string | undefined) => {
    const value = values.get(name) ?? ''
    const said = kind === undefined ? figures(value, book) : named(value, kind, count, book)
    if (said === null) whole = false
    return said ?? value
  })
  return whole ? text : null
}

function named(value: string, kind: string, count: number, book: Book): string | null {
  if (kind === 'text') return inBook(value, book) ?? figures(value, book)
  if (kind === 'quotes') return figures(value, book).replace(/“([^“”]*)”/g, `${book.quotes[0]}$1${book.quotes[1]}`)
  if (kind === 'size') return figures(value, book).replace(/ in\b/g, ` ${book.inch}`).replaceAll(' x ', ' × ')
  // What a day counts is written in the language it is kept in.
  if (kind === 'noun') return named(value, 'item', count, book) ?? value.replace(/^\p{Ll}/u, (first) => first.toUpperCase())
  if (kind === 'list') {
    const parts = value.split(/, | and /).map((one) => named(one, 'item', 1, book) ?? one)
    return parts.length < 2 ? parts[0]! : `${parts.slice(0, -1).join(', ')} ${book.and} ${parts.at(-1)}`
  }
  if (kind === 'instead') return book.instead[value]?.item ?? null
  if (kind === 'how') return book.instead[value]?.how ?? null
  const table = kind === 'item' ? book.items : kind === 'measure' ? book.measures : kind === 'kind' ? book.kinds : book.sources
  const id = idOf(value, table)
  return id === null ? null : counted(table[id]!, count)
}

/** The id a name stands for, which may be its English plural. */
function idOf(name: string, table: Readonly<Record<string, string>>): string | null {
  for (const one of [
    name,
    name.replace(/ies$/, 'y'),
    name.replace(/ves$/, 'f'),
    name.replace(/ves$/, 'fe'),
    name.replace(/(?<=ch|sh|s|x|o)es$/, ''),
    name.replace(/s$/, ''),
  ])
    if (Object.hasOwn(table, one)) return one
  return null
}

/** Figures with the language's decimal mark, millilitres with its letter. */
function figures(text: string, book: Book): string {
  return text
    .replace(/(\d)\.(?=\d)/g, `$1${book.mark}`)
    .replace(/(\d )mL\b/g, '$1ml')
    .replace(/(\d )L\b/g, '$1l')
}
