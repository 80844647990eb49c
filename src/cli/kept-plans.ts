import {createHash} from 'node:crypto'
import {mkdirSync, readdirSync, readFileSync, rmSync, statSync, utimesSync} from 'node:fs'
import {createRequire} from 'node:module'
import {join, resolve} from 'node:path'
import {deserialize, serialize} from 'node:v8'
import envPaths from 'env-paths'
import type {Corrections} from '../plan/again.js'
import {built} from '../plan/built.js'
import type {MadePlan} from '../plan/make.js'

/**
 * What a command has worked out of a day is kept for the next one: who notes a reading waits only for the rest of the day to be planned, not
 * for its morning's plan to be made once more. It is kept in the user's folder of caches, one file for each bake day, and taken only where
 * this very program would make it of the very same day, oven, receipts and past firings: nothing comes out otherwise for it.
 */

const load = createRequire(import.meta.url)

/** Of so many days the plans are kept at most; those looked at longest ago go first. */
const DAYS = 24

/** What was worked out of a day. */
export interface WorkedOut {
  readonly morning: MadePlan | null
  /** See `planAgain`; what is worked out further is added. */
  readonly known: Corrections
}

/** What is kept of a day, and a way to keep more of it. */
export interface KeptPlans extends WorkedOut {
  /** Keep it; where that cannot be, nothing is kept and nothing said, since all that is lost is time. */
  readonly keep: (morning: MadePlan) => void
}

/** Nothing is kept: what is run from its source may be another program each time. */
export const nothingKept = (): KeptPlans => ({morning: null, known: new Map(), keep: () => undefined})

/**
 * What is kept of the day in a folder.
 *
 * @param from all that the morning's plan is made from, as plain data
 */
export function keptPlans(folder: string, from: unknown): KeptPlans {
  const mark = built()
  if (mark === null) return nothingKept()
  const shelf = join(envPaths('hearthfall', {suffix: ''}).cache, 'plans')
  const file = join(shelf, createHash('sha256').update(resolve(folder)).digest('hex').slice(0, 32))
  const key = createHash('sha256')
    .update(serialize([mark, process.versions.v8, from]))
    .digest()
  const {morning, known} = fetched(file, key)
  const before = known.size
  return {
    morning,
    known,
    keep: (made) => {
      if (morning !== null && known.size === before) return
      try {
        mkdirSync(shelf, {recursive: true, mode: 0o700})
        const {sync} = load('write-file-atomic') as typeof import('write-file-atomic')
        // Not flushed to the disk: what is lost with the power is worked out again.
        sync(file, Buffer.concat([key, serialize({morning: made, known})]), {mode: 0o600, fsync: false})
        forgetOldest(shelf)
      } catch {
        // A home that cannot be written to: the next command works it out itself.
      }
    },
  }
}

/** What a file keeps, if it is of this key. What cannot be read is worked out again. */
function fetched(file: string, key: Buffer): WorkedOut {
  try {
    const bytes = readFileSync(file)
    if (bytes.subarray(0, key.length).equals(key)) {
      const now = new Date()
      utimesSync(file, now, now)
      return deserialize(bytes.subarray(key.length)) as WorkedOut
    }
  } catch {
    // There is none yet, or it is not whole.
  }
  return {morning: null, known: new Map()}
}

function forgetOldest(shelf: string): void {
  const files = readdirSync(shelf).map((name) => join(shelf, name))
  const looked = files.map((file) => ({file, at: statSync(file).mtimeMs})).sort((a, b) => b.at - a.at)
  for (const {file} of looked.slice(DAYS)) rmSync(file, {force: true})
}
