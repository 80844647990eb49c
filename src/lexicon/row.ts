import type {Item, Range} from './schema.js'

/** A range with its likely value: `span(low, likely, high)`. */
export const span = (low: number, likely: number, high: number): Range => ({low, likely, high})

/** An exact figure. */
export const exactly = (value: number): Range => ({low: value, likely: value, high: value})

/** A list with a comma and a space between, as the tables write spellings. */
export const words = (list: string): string[] => list.split(', ')

/** The words of the rows that are used in one way, in the order of the table. */
export const wordsUsed = <Use>(
  rows: ReadonlyArray<{readonly use: Use; readonly words: readonly string[]}>,
  use: NoInfer<Use>,
): readonly string[] => rows.flatMap((row) => (row.use === use ? row.words : []))

type Given = 'id' | 'group' | 'sources'
/** An item's row as the tables write it: what is left out is empty, and the id is a spelling of itself. */
export type ItemRow = Pick<Item, Given> & Partial<Omit<Item, Given | 'spellings'>> & {readonly spellings?: string}

/** The full rows of a table of items. */
export const itemRows = (rows: readonly ItemRow[]): Item[] =>
  rows.map((row) => ({
    pieces: [],
    allergens: [],
    cautions: [],
    ...row,
    spellings: [row.id, ...(row.spellings === undefined ? [] : words(row.spellings))],
  }))
