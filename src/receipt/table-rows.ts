import {lookUpMeasure} from '../lexicon/index.js'
import type {Measure} from '../lexicon/schema.js'
import {readAmount} from './amounts.js'
import {headsPercent, percentAt, percentCell} from './baker-percent.js'
import {stageIn} from './dish-parts.js'
import type {BakersShare, Entries} from './entries.js'
import {readNoun} from './nouns.js'
import {readQuantity} from './quantities.js'
import {ITEM, itemHere, measureHere, textOf, type View} from './view.js'

/**
 * Tables whose heads name the measure of a column, “| Ingredient | Grams | % |”, or the stages of one dough: “| | Sour | Dough |”.
 */

/** Column heads of a table: the measure each names, null for others. */
export type Heads = ReadonlyArray<Measure | null>

/** The cells of a row, as token indices from and to. */
export function cellsOf({words}: View, from: number, to: number): Array<[number, number]> {
  const cells: Array<[number, number]> = []
  let start = from
  for (let i = from; i < to; i++)
    if (words[i] === '|') {
      cells.push([start, i])
      start = i + 1
    }
  cells.push([start, to])
  return cells
}

/** Names of what a table's columns hold. */
const HEADS =
  /^(?:ingredients?|items?|amounts?|quantity|qty|measures?|units?|weights?|what|how|name|zutat|zutaten|menge|einheit)$/

/**
 * The heads of a table, where tokens [from, to) are its first row; null where that row is an entry itself.
 *
 * A row without a figure heads the table, and so does one that names its columns.
 */
export function headsOf(view: View, from: number, to: number): Heads | null {
  const {words, tokens} = view
  let figures = false
  for (let i = from; i < to; i++) figures ||= tokens[i]!.kind === 'number'
  if (figures && !HEADS.test(words[from] ?? '') && !(words[from] === '|' && namesNothing(view, from, to))) return null
  return measuresOf(view, from, to)
}

/** The measure each cell of the heads' row names. */
function measuresOf(view: View, from: number, to: number): Heads {
  const {words, tokens} = view
  return cellsOf(view, from, to).map(([a, z]) => {
    // "Grams", "Weight (g)", "g", but not "cups of it" or "%".
    for (let i = a; i < z; i++) {
      if (words[i] === '%') return null
      const found = measureHere(view, i)
      if (found === null || found.next > z) continue
      const {dimension, id} = found.row
      // "1 loaf (g)": what the column is for, and its measure behind.
      if (dimension === 'count') continue
      const closes = found.next === z || tokens[found.next]!.kind === 'mark'
      return closes && lookUpMeasure(id) !== null && (dimension === 'mass' || dimension === 'volume') ? found.row : null
    }
    return null
  })
}

/** The columns of a table that gives a dough's stages beside one another. */
export interface Stages {
  /** Column by column: the part its amounts are, null for the names, sums and anything else. */
  readonly parts: ReadonlyArray<string | null>
  readonly heads: Heads
  /** Column by column: its figures are baker's percentages. */
  readonly percents: readonly boolean[]
}

/** The stages that the heads in tokens [from, to) name; null where they name fewer than two, as "Dough | Filling" does. */
export function stagesOf(view: View, from: number, to: number): Stages | null {
  const parts = cellsOf(view, from, to).map(([a, z]) => (a < z ? stageIn(view, a, z) : null))
  if (new Set(parts.filter((part) => part !== null)).size < 2) return null
  const percents = cellsOf(view, from, to).map(([a, z]) => headsPercent(view, a, z))
  return {parts, heads: measuresOf(view, from, to), percents}
}

/** A row of a dough's stages: an entry for every stage that has an amount in it. False where it names nothing. */
export function readByStages(entries: Entries, {parts, heads, percents}: Stages, from: number, to: number): boolean {
  const {view} = entries
  const cells = cellsOf(view, from, to)
  const named = cells.find(([a, z], column) => (parts[column] ?? null) === null && a < z && view.tokens[a]!.kind === 'word')
  if (named === undefined) return false
  const stage = stageIn(view, ...named)
  const noun = readNoun(view, named[0], named[1], true, true)
  if (noun === null && stage === null) return false
  let read = false
  for (const [column, [a, z]] of cells.entries()) {
    const part = parts[column] ?? null
    if (part === null || a >= z) continue
    const percent = percents[column] === true ? percentCell(view, a, z) : percentAt(view, a, z)
    const quantity = percent === null ? readQuantity(view, a, z) : null
    if (percent === null && (quantity === null || quantity.article)) continue
    // "Sour | | 630 g": all of the other column, and nothing more that goes in.
    const whole =
      stage === null || (stage === part && noun !== null) ? undefined : entries.drafts.find((draft) => draft.part === stage)
    if (whole !== undefined) {
      whole.notes = [...whole.notes, textOf(view, Math.min(named[0], a), z).replaceAll('|', ' ').replace(/\s+/g, ' ')]
      read = true
      continue
    }
    if (noun === null) return false
    const measure = quantity?.measure === 'count' ? (heads[column]?.id ?? 'count') : quantity?.measure
    entries.push(
      {
        // The first stage's entry has the row's name in its words, and the next ones their amounts.
        start: read ? a : Math.min(named[0], a),
        next: read ? z : Math.max(noun.next, z),
        low: quantity?.low ?? null,
        high: quantity?.high ?? null,
        ...(measure === undefined ? {} : {measure}),
        measureText: quantity?.measureText ?? '',
        ...(percent === null ? {} : {percent: {low: percent.low, high: percent.high}, bare: true}),
        item: noun.item,
        row: noun.row,
        known: noun.known,
        prepared: noun.prepared,
        hedges: [...(quantity?.hedges ?? [])],
        part,
        notes: read ? [`${noun.item}, of this stage`] : [],
        confidence: noun.known ? 0.9 : 0.7,
      },
      'list',
    )
    read = true
  }
  // "Sour | | all": of a stage that was given.
  return read || (stage !== null && entries.drafts.some((draft) => draft.part === stage))
}

/** "| | 8-inch | 10-inch |": sizes, and no ingredient. */
function namesNothing({bits}: View, from: number, to: number): boolean {
  for (let i = from; i < to; i++) if (bits[i]! & ITEM) return false
  return true
}

/** Amounts of the same thing in one row, in two columns of one measure: of another size of the dish, and no conversion. */
export interface Columns {
  /** Cell by cell, as token indices from and to. */
  readonly first: readonly [number, number]
  readonly other: readonly [number, number]
  /** Their places in the row. */
  readonly at: readonly [number, number]
}

/** Two columns of a row that give the same thing's amount for two sizes; null where there are none. */
export function columnsOf(view: View, heads: Heads | null, from: number, to: number): Columns | null {
  const found: Array<{cell: [number, number]; column: number; measure: string; low: number}> = []
  for (const [column, cell] of cellsOf(view, from, to).entries()) {
    const [a, z] = cell
    if (a >= z || view.tokens[a]!.kind !== 'number') continue
    const quantity = readQuantity(view, a, z)
    if (quantity === null || quantity.next < z) continue
    const measure = quantity.measure === 'count' ? (heads?.[column]?.id ?? 'count') : quantity.measure
    const same = found.find((one) => one.measure === measure && one.low !== quantity.low.value)
    if (same !== undefined) return {first: same.cell, other: cell, at: [same.column, column]}
    found.push({cell, column, measure, low: quantity.low.value})
  }
  return null
}

/** The words of the head of each column, where tokens [from, to) are the heads' row. */
export const headWords = (view: View, from: number, to: number): string[] =>
  cellsOf(view, from, to).map(([a, z]) => textOf(view, a, z).replace(/\s+/g, ' '))

/** The first column of a table that is headed as one of percentages, where tokens [from, to) are the heads' row; −1 where none is. */
export const percentColumn = (view: View, from: number, to: number): number =>
  cellsOf(view, from, to).findIndex(([a, z]) => headsPercent(view, a, z))

/**
 * A row under the head of a column of baker's percentages, `column`: an entry where nothing else in it is an amount. Where there is more,
 * the share is given back, for the entry that is read of the rest.
 */
export function readPercent(entries: Entries, column: number, from: number, to: number): 'read' | BakersShare | null {
  const {view} = entries
  const cells = cellsOf(view, from, to)
  const cell = cells[column]
  const share = cell === undefined || cell[0] >= cell[1] ? null : percentCell(view, ...cell)
  if (cell === undefined || share === null) return null
  const others = cells.filter(([a, z], at) => at !== column && a < z)
  if (others.some(([a, z]) => readQuantity(view, a, z) !== null)) return share
  const named = others.find(([a]) => view.tokens[a]!.kind === 'word')
  const noun = named === undefined ? null : readNoun(view, named[0], named[1], true, true)
  if (named === undefined || noun === null) return null
  const {item, row, known, prepared} = noun
  entries.push(
    {
      start: Math.min(named[0], cell[0]),
      next: Math.max(noun.next, cell[1]),
      item,
      row,
      known,
      prepared,
      percent: share,
      bare: true,
      notes: ['the sign is the head of the table’s column'],
      confidence: known ? 0.9 : 0.6,
    },
    'list',
  )
  return 'read'
}

/** So few grams of what is counted nobody weighs. */
const FEW = 6

/** A row's entry by its table's heads: the first column with a measure and a bare figure. True where it was read. */
export function readByHeads(entries: Entries, heads: Heads, from: number, to: number): boolean {
  const {view} = entries
  const {tokens} = view
  const cells = cellsOf(view, from, to)
  for (const [column, cell] of cells.entries()) {
    const measure = heads[column]
    if (measure === undefined || measure === null) continue
    const [a, z] = cell
    const amount = a < z ? readAmount(view, a, z) : null
    if (amount === null || amount.next < z || amount.article) continue
    for (const [other, [b, y]] of cells.entries()) {
      if (other === column || b >= y || tokens[b]!.kind === 'number' || (heads[other] ?? null) !== null) continue
      const noun = readNoun(view, b, y, true, true)
      if (noun === null) continue
      // "eggs | 2" in a column of grams: two of them.
      const row = noun.row
      if (row?.pieces.some((piece) => piece.measure === 'count') === true && amount.high.value <= FEW) return false
      entries.push(
        {
          start: Math.min(b, a),
          next: Math.max(noun.next, z),
          low: amount.low,
          high: amount.high,
          measure: measure.id,
          item: noun.item,
          row: noun.row,
          known: noun.known,
          prepared: noun.prepared,
          hedges: [...amount.hedges],
          notes: ['the measure is the head of the table’s column'],
          confidence: noun.known ? 0.9 : 0.7,
        },
        'list',
      )
      return true
    }
  }
  return false
}

/** Words that may stand behind an amount in its cell: "4 large", "225 g softened". */
const MOST_BEHIND = 3

/** The amount that is all of a cell but for words that describe: "225 g", "4 large"; null where it holds anything else. */
function amountCell(view: View, a: number, z: number): NonNullable<ReturnType<typeof readQuantity>> | null {
  const {tokens} = view
  const quantity = a < z ? readQuantity(view, a, z) : null
  if (quantity === null || quantity.article || z - quantity.next > MOST_BEHIND) return null
  for (let i = quantity.next; i < z; i++) if (tokens[i]!.kind !== 'word' || itemHere(view, i) !== null) return null
  return quantity
}

/**
 * A row of a name, with what is said of it, in one cell and its amount in another: "butter, softened | 225 g", "eggs | 4 large". True where it was
 * read.
 */
export function readByCells(entries: Entries, from: number, to: number): boolean {
  const {view} = entries
  const {tokens} = view
  const cells = cellsOf(view, from, to).filter(([a, z]) => a < z)
  const named = cells.find(([a, z]) => tokens[a]!.kind === 'word' && amountCell(view, a, z) === null)
  const noun = named === undefined ? null : readNoun(view, named[0], named[1], true, true)
  if (named === undefined || noun === null) return false
  for (const cell of cells) {
    const quantity = cell === named ? null : amountCell(view, ...cell)
    if (quantity === null) continue
    const said = [textOf(view, noun.next, named[1]), textOf(view, quantity.next, cell[1])].map((words) =>
      words.replace(/^[\s,;]+/, ''),
    )
    entries.push(
      {
        start: Math.min(named[0], cell[0]),
        next: Math.max(cell[0] < named[0] ? noun.next : named[1], cell[1]),
        low: quantity.low,
        high: quantity.high,
        measure: quantity.measure,
        measureText: quantity.measureText,
        item: noun.item,
        row: noun.row,
        known: noun.known,
        prepared: [noun.prepared, ...said].filter((words) => words !== '').join(', '),
        hedges: [...quantity.hedges],
        notes: [...quantity.notes],
        confidence: noun.known ? 0.9 : 0.7,
      },
      'list',
    )
    return true
  }
  return false
}
