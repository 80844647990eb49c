import type {IDBPDatabase} from 'idb'
import type {Folder} from './folder.js'
import {changeOf, grown, merge, undone} from './merge.js'
import type {FileChange, KeptDay, KeptStep, Shelf} from './shelf.js'

export type {KeptDay, KeptStep}

/** Most steps that are kept to be undone. */
const STEPS = 400
/** Typing in one file that pauses no longer than this is one step, ms. */
const BREATH = 1200

/** A text as it stood when this tab last saw it kept, and as it should stand now; null: no such file. */
interface Wanted {
  readonly base: string | null
  readonly text: string | null
}

/**
 * The shelf: bake days in IndexedDB.
 *
 * Every write reads what is kept, merges and writes in one transaction, which the browser runs one after the other for all tabs, so
 * that no tab writes over another. It asks for the strict durability, which outlives an empty battery.
 */
export class Keep {
  readonly #db: IDBPDatabase<Shelf>
  readonly #channel: BroadcastChannel | null
  #open: {
    readonly number: number
    readonly day: string
    readonly path: string
    readonly what: string
    readonly base: string | null
    at: number
  } | null = null

  /** Whether the last write only went on with the step that was open. */
  grew = false

  /** @param told called when another tab has changed files of a day */
  constructor(db: IDBPDatabase<Shelf>, told: (day: string) => void) {
    this.#db = db
    this.#channel = 'BroadcastChannel' in globalThis ? new BroadcastChannel('hearthfall') : null
    this.#channel?.addEventListener('message', ({data}: MessageEvent<{day: string}>) => told(data.day))
  }

  days(): Promise<KeptDay[]> {
    return this.#db.getAll('days')
  }

  async files(day: string): Promise<Map<string, string>> {
    const rows = await this.#db.getAllFromIndex('files', 'day', day)
    return new Map(rows.map(({path, text}) => [path, text]))
  }

  steps(day: string): Promise<KeptStep[]> {
    return this.#db.getAllFromIndex('steps', 'day', day)
  }

  /** Put a new day on the shelf. A day that is there already is left as it is. */
  async begin(id: string, title: string, files: Folder): Promise<void> {
    const tx = this.#db.transaction(['days', 'files'], 'readwrite', {durability: 'strict'})
    if (!(await tx.objectStore('days').get(id))) {
      const now = Date.now()
      await tx.objectStore('days').put({id, title, made: now, changed: now})
      for (const [path, text] of files) await tx.objectStore('files').put({day: id, path, text})
    }
    await tx.done
    this.#channel?.postMessage({day: id})
  }

  /** Take a day off the shelf, with its steps. */
  async remove(id: string): Promise<void> {
    const tx = this.#db.transaction(['days', 'files', 'steps', 'mornings'], 'readwrite', {durability: 'strict'})
    await tx.objectStore('days').delete(id)
    await tx.objectStore('mornings').delete(id)
    for (const store of ['files', 'steps'] as const) {
      let cursor = await tx.objectStore(store).index('day').openCursor(id)
      while (cursor) {
        await cursor.delete()
        cursor = await cursor.continue()
      }
    }
    await tx.done
    this.#channel?.postMessage({day: id})
  }

  /**
   * Keep what was changed.
   *
   * @param what the step's name; typing on in the same file under the same name is the same step
   * @returns the texts as kept, which may hold another tab's changes too
   */
  async write(
    day: string,
    title: string,
    wanted: ReadonlyMap<string, Wanted>,
    what: string,
    options: {readonly typing: boolean; readonly marks?: {readonly number: number; readonly undone: boolean}},
  ): Promise<Map<string, string | null>> {
    const tx = this.#db.transaction(['days', 'files', 'steps'], 'readwrite', {durability: 'strict'})
    const days = tx.objectStore('days')
    const files = tx.objectStore('files')
    const steps = tx.objectStore('steps')
    const out = new Map<string, string | null>()
    const changes: FileChange[] = []
    const now = Date.now()
    const put = async (path: string, before: string | null, text: string | null): Promise<void> => {
      if (text === null) await files.delete([day, path])
      else await files.put({day, path, text})
      out.set(path, text)
      const change = changeOf(before ?? '', text ?? '') ?? {at: 0, gone: '', come: ''}
      if (before !== text) changes.push({path, was: before !== null, is: text !== null, change})
    }
    for (const [path, {base, text}] of wanted) {
      const there = (await files.get([day, path]))?.text ?? null
      if (there === base || there === text) {
        await put(path, there, text)
        continue
      }
      // Another tab was here since: both changes, or, where they touch the same words, both texts.
      const both = there === null || text === null || base === null ? null : merge(base, there, text)
      if (both !== null) await put(path, there, both)
      else if (there === null) await put(path, null, text)
      else {
        out.set(path, there)
        if (text !== null) {
          let other = path.replace(/(\.[^.]+)?$/, ' (other window)$1')
          for (let n = 2; await files.getKey([day, other]); n++) other = path.replace(/(\.[^.]+)?$/, ` (other window ${n})$1`)
          await put(other, null, text)
        }
      }
    }
    this.grew = false
    const old = await days.get(day)
    await days.put({id: day, made: old?.made ?? now, title, changed: now})
    if (options.marks) {
      const step = await steps.get(options.marks.number)
      if (step) await steps.put({...step, undone: options.marks.undone})
      this.#open = null
    } else if (changes.length > 0) await this.#record(steps, day, what, changes, options.typing, now)
    await tx.done
    if (out.size > 0) this.#channel?.postMessage({day})
    return out
  }

  async #record(
    steps: {
      get: (key: number) => Promise<KeptStep | undefined>
      put: (step: KeptStep) => Promise<number>
      delete: (key: number) => Promise<void>
      index: (name: 'day') => {getAll: (day: string) => Promise<KeptStep[]>}
    },
    day: string,
    what: string,
    changes: readonly FileChange[],
    typing: boolean,
    now: number,
  ): Promise<void> {
    const one = changes[0]!
    const open = this.#open
    if (
      typing &&
      open &&
      open.day === day &&
      open.path === one.path &&
      open.what === what &&
      changes.length === 1 &&
      now - open.at < BREATH
    ) {
      const step = await steps.get(open.number)
      const before = step?.changes[0]
      // The step grows: from the text it began with to the text as it stands.
      const whole = step && before && !step.undone ? grown(before.change, one.change) : null
      if (step && before && whole) {
        await steps.put({...step, at: now, changes: [{...before, is: one.is, change: whole}]})
        open.at = now
        this.grew = true
        return
      }
    }
    const all = await steps.index('day').getAll(day)
    for (const step of all) if (step.undone && step.number !== undefined) await steps.delete(step.number)
    const kept = all.filter((step) => !step.undone)
    for (const step of kept.slice(0, Math.max(0, kept.length - STEPS + 1)))
      if (step.number !== undefined) await steps.delete(step.number)
    const number = await steps.put({day, at: now, what, changes, undone: false})
    this.#open = typing && changes.length === 1 ? {number, day, path: one.path, what, base: null, at: now} : null
  }

  /**
   * The texts with a step taken back.
   *
   * @returns null where one of them has been changed at the same words since
   */
  static taken(step: KeptStep, files: Folder): Map<string, string | null> | null {
    const out = new Map<string, string | null>()
    for (const {path, was, change} of step.changes) {
      if (!was) {
        out.set(path, null)
        continue
      }
      const back = undone(files.get(path) ?? '', change)
      if (back === null) return null
      out.set(path, back)
    }
    return out
  }

  /** The texts with a step done again. */
  static again(step: KeptStep, files: Folder): Map<string, string | null> | null {
    const out = new Map<string, string | null>()
    for (const {path, is, change} of step.changes) {
      if (!is) {
        out.set(path, null)
        continue
      }
      const forth = undone(files.get(path) ?? '', {at: change.at, gone: change.come, come: change.gone})
      if (forth === null) return null
      out.set(path, forth)
    }
    return out
  }
}
