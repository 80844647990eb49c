import {lookUpMeasure} from '../lexicon/index.js'
import type {Measure} from '../lexicon/schema.js'
import {readAmount, readQuantity, textOf} from './amounts.js'
import type {Entries} from './entries.js'
import {readNoun} from './nouns.js'
import {ITEM, measureHere, type View} from './view.js'

/**
 * Tables whose heads name the measure of a column: “| Ingredient | Grams | % |”.
 */

/** Column heads of a table: the measure each names, null for others. */
export type Heads = ReadonlyArray<Measure | null>

/** The cells of a row, as token indices from and to. */
function cellsOf({words}: View, from: number, to: number): Array<[number, number]> {
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
  return cellsOf(view, from, to).map(([a, z]) => {
    // "Grams", "Weight (g)", "g", but not "cups of it" or "%".
    for (let i = a; i < z; i++) {
      if (words[i] === '%') return null
      const found = measureHere(view, i)
      if (found === null || found.next > z) continue
      const {dimension, id} = found.row
      const closes = found.next === z || tokens[found.next]!.kind === 'mark'
      return closes && lookUpMeasure(id) !== null && (dimension === 'mass' || dimension === 'volume') ? found.row : null
    }
    return null
  })
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
