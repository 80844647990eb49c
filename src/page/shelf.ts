import {type DBSchema, type IDBPDatabase, openDB} from 'idb'
import type {Morning} from './chain.js'
import type {Change} from './merge.js'

/** A bake day kept in the browser. */
export interface KeptDay {
  readonly id: string
  readonly title: string
  /** Milliseconds since 1970. */
  readonly made: number
  readonly changed: number
}

/** What one step did to one file. `was` and `is` tell whether the file was there before and after. */
export interface FileChange {
  readonly path: string
  readonly was: boolean
  readonly is: boolean
  readonly change: Change
}

/** One thing done, that can be undone. */
export interface KeptStep {
  readonly number?: number
  readonly day: string
  readonly at: number
  /** A word of `words.steps`. */
  readonly what: string
  readonly changes: readonly FileChange[]
  readonly undone: boolean
}

export interface Stored {
  readonly day: string
  readonly path: string
  readonly text: string
}

export interface Shelf extends DBSchema {
  days: {key: string; value: KeptDay}
  files: {key: [string, string]; value: Stored; indexes: {day: string}}
  steps: {key: number; value: KeptStep; indexes: {day: string}}
  /** The day as planned before it began, so that a page opened again at the oven need not plan it again. */
  mornings: {key: string; value: {readonly day: string; readonly morning: Morning}}
}

/** The day changed last; null where there is none. */
export function newest(shelf: readonly KeptDay[]): string | null {
  return [...shelf].sort((a, b) => b.changed - a.changed)[0]?.id ?? null
}

/** Open the shelf, which is made where there is none yet. */
export const openShelf = (): Promise<IDBPDatabase<Shelf>> =>
  openDB<Shelf>('hearthfall', 1, {
    upgrade(db) {
      db.createObjectStore('days', {keyPath: 'id'})
      db.createObjectStore('files', {keyPath: ['day', 'path']}).createIndex('day', 'day')
      db.createObjectStore('steps', {keyPath: 'number', autoIncrement: true}).createIndex('day', 'day')
      db.createObjectStore('mornings', {keyPath: 'day'})
    },
  })
