import {useEffect, useState} from 'preact/hooks'
import type {Message} from '../receipt/types.js'
import type {Audience} from '../sheets/handout.js'
import {cached} from './cached.js'
import {FULL, HELD, LAST, LIKES, store, stored} from './device.js'
import type {Held} from './due.js'
import type {Early, Opened} from './early.js'
import {CARRIER, carriedFiles} from './embedded.js'
import {CalledOff, Engine, type Hearing} from './engine.js'
import {type Folder, freeReceiptPath, titleOf} from './folder.js'
import {Keep, type KeptDay, type KeptStep} from './keep.js'
import {rest} from './later.js'
import {merge} from './merge.js'
import type {Asks, Drawings, FolderView, OvenView, PlanView, ReceiptFileView, Showing} from './protocol.js'
import {newest} from './shelf.js'
import {inAPause, painted} from './slices.js'
import {words} from './words.js'

/** Where one can stand on the page. */
export const places = ['receipts', 'oven', 'day', 'plan', 'bake', 'print', 'keep'] as const
export type Place = (typeof places)[number]

/** What this device's user likes; not part of a day. */
export interface Likes {
  readonly showing: Showing
  readonly light: 'device' | 'sun' | 'dark'
  readonly sound: boolean
  readonly shake: boolean
  readonly awake: boolean
  readonly audience: Audience
}

/** The plan and what is happening to it. */
export interface Planning {
  readonly state: 'none' | 'working' | 'made' | 'faults' | 'failed' | 'stopped'
  readonly share: number
  readonly view: PlanView | null
  /** Of this view or, until they have come, of the one before it. */
  readonly drawings: Drawings | null
  /** The folder the view was made from: another means that it is out of date. */
  readonly files: Folder | null
  readonly faults: readonly Message[]
  readonly failed: string
  /** What the last planning moved against the plan before it, and the note it followed. */
  readonly moved: {readonly lines: readonly string[]; readonly because: string} | null
  /** What was due by the plans before this view. */
  readonly held: Held
}

/** A clock set by hand to rehearse a day: minutes of the day at a moment of the real clock. */
export interface Rehearsal {
  readonly minutes: number
  readonly since: number
}

/** Words for the log; `at` in minutes after midnight of the day where they are not of the present. */
export interface Told {
  readonly words: string
  readonly at: number | null
}

export interface State {
  readonly ready: boolean
  readonly place: Place
  readonly day: string
  readonly shelf: readonly KeptDay[]
  readonly files: Folder
  readonly steps: readonly KeptStep[]
  readonly saving: 'kept' | 'keeping' | 'failed' | 'nowhere'
  readonly likes: Likes
  readonly folder: FolderView | null
  /** The files that `folder` was read from. */
  readonly folderFiles: Folder | null
  /** The receipt file and the receipt in it that is being looked at. */
  readonly receipt: {readonly path: string | null; readonly index: number}
  readonly reading: ReceiptFileView | null
  /** The text that `reading` was read from: its places are places in that. */
  readonly readingOf: string
  readonly readingMs: number
  readonly oven: OvenView | null
  readonly planning: Planning
  readonly rehearsal: Rehearsal | null
  /** A short sentence for the status line, read out to those who do not see it. */
  readonly said: string
  /** What was noted last at the oven, while it is the step that would be undone; empty otherwise. */
  readonly noted: string
}

const plainLikes: Likes = {
  showing: {language: 'en', units: 'both', clock: 12, degrees: 'both'},
  light: 'device',
  sound: true,
  shake: true,
  awake: true,
  audience: 'kitchen',
}

const noPlan: Planning = {
  state: 'none',
  share: 0,
  view: null,
  drawings: null,
  files: null,
  faults: [],
  failed: '',
  moved: null,
  held: {steps: [], door: []},
}

function likesOf(text: string | null): Likes {
  try {
    const found = JSON.parse(text ?? '{}') as Partial<Likes>
    return {...plainLikes, ...found, showing: {...plainLikes.showing, ...found.showing}}
  } catch {
    return plainLikes
  }
}

const placeOf = (hash: string): Place => places.find((one) => `#${one}` === hash) ?? 'receipts'

/** Everything the page knows and does. The views read `state` and call the methods. */
export class App {
  state: State = {
    ready: false,
    place: placeOf(location.hash),
    day: '',
    shelf: [],
    files: new Map(),
    steps: [],
    saving: 'kept',
    likes: likesOf(stored(LIKES)),
    folder: null,
    folderFiles: null,
    receipt: {path: null, index: 0},
    reading: null,
    readingOf: '',
    readingMs: 0,
    oven: null,
    planning: noPlan,
    rehearsal: null,
    said: '',
    noted: '',
  }

  readonly #watchers = new Set<() => void>()
  readonly #reader = new Engine()
  readonly #planner = new Engine()
  /** For the quick plan at the oven: never called off, so always warm. */
  readonly #quick = new Engine()
  #keep: Keep | null = null
  /** Texts as this tab last saw them kept. */
  #kept = new Map<string, string>()
  #dirty = new Map<string, {what: string; typing: boolean}>()
  #flushing: Promise<void> | null = null
  #reading = {running: false, again: false}
  #looking = {running: false, again: false, timer: 0}
  #planRun = 0
  #saying = 0

  watch(watcher: () => void): () => void {
    this.#watchers.add(watcher)
    return () => this.#watchers.delete(watcher)
  }

  set(change: Partial<State>): void {
    this.state = {...this.state, ...change}
    for (const watcher of this.#watchers) watcher()
  }

  /** Tell something in passing. It goes away by itself, so that it never lies over a button for long. */
  say(said: string): void {
    this.set({said})
    clearTimeout(this.#saying)
    this.#saying = setTimeout(() => this.set({said: ''}), 6000) as unknown as number
  }

  // — opening —

  /**
   * Open the day that was open last, or the one the page carries.
   *
   * @param early what was asked for before this script was there
   * @returns once there is something to draw
   */
  async start(early: Pick<Early, 'shelf' | 'opened'>): Promise<void> {
    addEventListener('hashchange', () => this.set({place: placeOf(location.hash)}))
    const carried = carriedFiles(document.getElementById(CARRIER)?.textContent ?? '')
    try {
      const opened = await early.opened
      this.#keep = new Keep(await early.shelf, (day) => void this.#heard(day))
      const id = carried ? `carried-${fingerprint(carried)}` : opened.day
      if (carried && id !== null && !opened.shelf.some((one) => one.id === id)) {
        const title = titleOf(carried.get('day.md') ?? '')
        const now = Date.now()
        // It is in the page already: nobody waits for the shelf to take it.
        this.#keep.begin(id, title, carried).catch(() => this.#nowhere())
        this.#show({day: id, files: carried, steps: [], shelf: [...opened.shelf, {id, title, made: now, changed: now}]})
      } else if (id !== null && id !== opened.day) await this.open(id)
      else this.#show(opened)
      // Without this a browser short of room may throw the days away.
      void navigator.storage?.persist?.()
    } catch {
      this.#nowhere()
      this.set({ready: true, day: newId(), files: carried ?? new Map()})
      this.#look()
    }
    this.#reader.warm()
    addEventListener('visibilitychange', () => {
      if (document.visibilityState === 'visible') void this.#heard(this.state.day)
    })
    addEventListener('pagehide', () => void this.flush())
  }

  /** Nothing can be kept. */
  #nowhere(): void {
    this.#keep = null
    this.set({saving: 'nowhere'})
  }

  /** Open a day of the shelf, or begin one under a new id. */
  async open(day: string): Promise<void> {
    await this.flush()
    const keep = this.#keep
    const [files, steps, shelf] = keep ? await Promise.all([keep.files(day), keep.steps(day), keep.days()]) : [new Map(), [], []]
    this.#show({day, files, steps, shelf})
  }

  #show({day, files, steps, shelf}: Opened): void {
    const id = day ?? newId()
    this.#kept = new Map(files)
    store(LAST, id)
    store(FULL, shelf.length > 0 ? 'yes' : '')
    if (this.#planner.busy) this.#planner.stop()
    this.#planRun++
    const path = [...files.keys()].filter((p) => p.startsWith('receipts/')).sort()[0] ?? null
    this.set({
      ready: true,
      day: id,
      files,
      steps,
      shelf,
      folder: null,
      oven: null,
      reading: null,
      receipt: {path, index: 0},
      planning: {...noPlan, held: heldFor(id)},
      rehearsal: null,
      noted: '',
    })
    this.#look()
    this.#read()
    // A page opened again in the middle of a day goes on where it was; on the morning of one, it is ready for the first note.
    if (this.state.place === 'bake' || this.state.place === 'plan') void this.#again()
  }

  async begin(files: Folder = new Map()): Promise<void> {
    const id = newId()
    await this.flush()
    if (files.size > 0) await this.#keep?.begin(id, titleOf(files.get('day.md') ?? ''), files)
    await this.open(id)
    if (!this.#keep) this.set({files})
  }

  async remove(day: string): Promise<void> {
    await this.#keep?.remove(day)
    const shelf = (await this.#keep?.days()) ?? []
    if (day === this.state.day) {
      this.#dirty.clear()
      await this.open(newest(shelf) ?? newId())
    } else this.set({shelf})
  }

  // — editing and keeping —

  /** Begin a receipt and look at it. */
  beginReceipt(text = ''): void {
    const path = freeReceiptPath(this.state.files, 'new-receipt')
    this.edit(new Map([[path, text]]), 'new receipt')
    this.choose(path)
  }

  /** Change files; null takes one away. `what` names the step for undoing; typing is gathered into one step. */
  edit(changes: ReadonlyMap<string, string | null>, what: string, typing = false): void {
    const files = new Map(this.state.files)
    for (const [path, text] of changes) {
      if (text === null) files.delete(path)
      else files.set(path, text)
      this.#dirty.set(path, {what, typing})
    }
    this.set({files, noted: '', saving: this.#keep ? 'keeping' : 'nowhere'})
    void this.flush()
    this.#look()
    if (this.state.receipt.path !== null && changes.has(this.state.receipt.path)) this.#read()
  }

  /** Keep everything that is not kept yet. Called at every key; while one write is under way the next gathers. */
  async flush(): Promise<void> {
    if (!this.#keep) return
    while (this.#flushing) await this.#flushing
    if (this.#dirty.size === 0) return
    this.#flushing = this.#write().finally(() => {
      this.#flushing = null
    })
    await this.#flushing
    if (this.#dirty.size > 0) void this.flush()
  }

  async #write(marks?: {number: number; undone: boolean}): Promise<void> {
    const keep = this.#keep
    if (!keep) return
    const {day, files} = this.state
    const dirty = this.#dirty
    this.#dirty = new Map()
    const wanted = new Map(
      [...dirty.keys()].map((path) => [path, {base: this.#kept.get(path) ?? null, text: files.get(path) ?? null}]),
    )
    const kinds = [...dirty.values()]
    try {
      const title = titleOf(files.get('day.md') ?? '') || firstTitle(files)
      const kept = await keep.write(day, title, wanted, kinds[0]?.what ?? '', {
        typing: kinds.every((one) => one.typing),
        ...(marks ? {marks} : {}),
      })
      store(FULL, 'yes')
      this.#take(kept, new Map([...wanted].map(([path, {text}]) => [path, text])))
      // Typing on in one step changes only that step: the list of them is fetched when it is another list.
      const steps = keep.grew ? this.state.steps : await keep.steps(day)
      const saving = this.#dirty.size > 0 ? 'keeping' : 'kept'
      if (steps !== this.state.steps || saving !== this.state.saving) this.set({saving, steps})
    } catch {
      for (const [path, kind] of dirty) if (!this.#dirty.has(path)) this.#dirty.set(path, kind)
      this.set({saving: 'failed'})
      // A full disk may be emptied again: the next key, and this, try once more.
      setTimeout(() => void this.flush(), 3000)
      throw new Error('not kept')
    }
  }

  /** Take over texts as kept; what was typed meanwhile stays on top. */
  #take(kept: ReadonlyMap<string, string | null>, bases: ReadonlyMap<string, string | null>): void {
    let files: Map<string, string> | null = null
    for (const [path, text] of kept) {
      if (text === null) this.#kept.delete(path)
      else this.#kept.set(path, text)
      const here = this.state.files.get(path) ?? null
      const base = bases.get(path) ?? null
      const now =
        here === base ? text : here === null || base === null || text === null ? here : (merge(base, text, here) ?? here)
      if (now === here) continue
      files ??= new Map(this.state.files)
      if (now === null) files.delete(path)
      else files.set(path, now)
    }
    if (!files) return
    this.set({files})
    this.#look()
    this.#read()
  }

  /** Another tab has written. */
  async #heard(day: string): Promise<void> {
    const keep = this.#keep
    if (!keep || !this.state.ready) return
    if (day === this.state.day) {
      await this.flush().catch(() => {})
      const there = await keep.files(day)
      const bases = new Map<string, string | null>(this.#kept)
      const kept = new Map<string, string | null>(there)
      for (const path of this.#kept.keys()) if (!there.has(path)) kept.set(path, null)
      this.#take(kept, bases)
      this.set({steps: await keep.steps(day)})
    }
    this.set({shelf: await keep.days()})
  }

  /** Take back the last step. */
  async undo(): Promise<void> {
    await this.flush()
    const step = (await this.#steps()).reverse().find((one) => !one.undone)
    if (step) await this.#apply(step, Keep.taken(step, this.state.files), true)
  }

  /** Do again what was last taken back. */
  async redo(): Promise<void> {
    await this.flush()
    const step = (await this.#steps()).find((one) => one.undone)
    if (step) await this.#apply(step, Keep.again(step, this.state.files), false)
  }

  /** The steps with all that typing has added to the last of them. */
  async #steps(): Promise<KeptStep[]> {
    return (await this.#keep?.steps(this.state.day)) ?? []
  }

  async #apply(step: KeptStep, changes: Map<string, string | null> | null, back: boolean): Promise<void> {
    if (!changes) {
      this.say(words.keep.cannotUndo(words.steps[step.what] ?? step.what))
      return
    }
    const files = new Map(this.state.files)
    for (const [path, text] of changes) {
      if (text === null) files.delete(path)
      else files.set(path, text)
      this.#dirty.set(path, {what: step.what, typing: false})
    }
    const {receipt} = this.state
    this.set({
      files,
      noted: '',
      ...(receipt.path !== null && !files.has(receipt.path) ? {receipt: {path: null, index: 0}, reading: null} : {}),
    })
    while (this.#flushing) await this.#flushing
    this.#flushing = this.#write({number: step.number ?? -1, undone: back}).finally(() => {
      this.#flushing = null
    })
    await this.#flushing
    const name = words.steps[step.what] ?? step.what
    this.say(back ? words.keep.undid(name) : words.keep.redid(name))
    this.#look()
    this.#read()
    if (this.state.place === 'bake' || step.what === 'note') void this.plan()
  }

  // — reading —

  /** Look at another receipt. */
  choose(path: string | null, index = 0): void {
    this.set({receipt: {path, index}, ...(path === this.state.receipt.path ? {} : {reading: null})})
    this.#read()
  }

  /** Read the receipt that is looked at; while one reading runs, only the newest text waits. */
  #read(): void {
    if (this.#reading.running) {
      this.#reading.again = true
      return
    }
    const {path, index} = this.state.receipt
    const text = path === null ? undefined : this.state.files.get(path)
    if (path === null || text === undefined) {
      if (this.state.reading) this.set({reading: null})
      return
    }
    this.#reading.running = true
    const from = performance.now()
    this.#reader
      .ask('receipt', {path, text, index, showing: this.state.likes.showing})
      .then((reading) => {
        if (this.state.receipt.path === path) this.set({reading, readingOf: text, readingMs: performance.now() - from})
      })
      .catch((error: unknown) => this.#trouble(error))
      .finally(() => {
        this.#reading.running = false
        if (this.#reading.again) {
          this.#reading.again = false
          this.#read()
        }
      })
  }

  /** Look through the whole folder a moment after the last key. */
  #look(): void {
    clearTimeout(this.#looking.timer)
    this.#looking.timer = setTimeout(() => this.#lookNow(), 250) as unknown as number
  }

  #lookNow(): void {
    if (this.#looking.running) {
      this.#looking.again = true
      return
    }
    this.#looking.running = true
    const {files, day} = this.state
    this.#reader
      .ask('folder', {files})
      .then((folder) => {
        if (day === this.state.day) this.set({folder, folderFiles: files})
        // The day's clock is made before a press waits for it.
        inAPause(() => this.now())
      })
      .catch((error: unknown) => this.#trouble(error))
      .finally(() => {
        this.#looking.running = false
        if (this.#looking.again) {
          this.#looking.again = false
          this.#look()
        }
      })
  }

  #trouble(error: unknown): void {
    if (error instanceof CalledOff) return
    this.say(words.trouble(error instanceof Error ? error.message : String(error)))
  }

  /** How the oven falls; asked when its page is looked at. */
  async askOven(): Promise<void> {
    if (this.#planner.busy) return
    const {files, likes, day} = this.state
    try {
      const oven = await this.#planner.ask('oven', {files, showing: likes.showing})
      if (day === this.state.day) this.set({oven})
    } catch (error) {
      this.#trouble(error)
    }
  }

  // — planning —

  /** Minutes after midnight of the bake day, by its own clock or the one set to rehearse; null while the day is far off. */
  now(): number | null {
    const {rehearsal, folder} = this.state
    if (rehearsal) return rehearsal.minutes + (Date.now() - rehearsal.since) / 60_000
    return folder?.day ? minutesOf(folder.day.date, folder.day.zone) : null
  }

  /** Plan as soon as the page stands, if the morning's plan is kept: then there is little to wait for. */
  async #again(): Promise<void> {
    const {files, likes, day} = this.state
    try {
      if (await this.#quick.ask('ready', {files, showing: likes.showing, day})) if (day === this.state.day) await this.plan()
    } catch (error) {
      this.#trouble(error)
    }
  }

  /**
   * Make the plan, or what is left of it. A plan under way is called off first. On a day that has begun a quick plan comes first, and the
   * full search, on its own worker, puts it right if it finds better.
   */
  async plan(because = ''): Promise<void> {
    void this.flush().catch(() => {})
    if (this.#planner.busy) this.#planner.stop()
    const run = ++this.#planRun
    const {files, likes, planning, day} = this.state
    const {view: before} = planning
    this.set({planning: {...planning, state: 'working', share: 0, faults: [], failed: ''}})
    const dated = this.state.folder?.day?.date
    const date =
      dated ??
      rest()
        .stated(files.get('day.md') ?? '')
        .get('date')
    const begun = (files.get(`firings/${String(date)}.md`) ?? '').trim() !== ''
    const at = begun ? this.now() : null
    const now = at === null ? null : Math.floor(at)
    const put = (found: NonNullable<Asks['plan']['answer']>, state: 'made' | 'working'): void => {
      if (run !== this.#planRun) return
      if (!found.ok) {
        this.set({planning: {...this.state.planning, state: 'faults', faults: found.messages}})
        return
      }
      const {view} = found
      const settled = state === 'made'
      const told = because === '' || !before ? null : {lines: rest().moved(before, view, likes.showing, settled), because}
      const {view: shown, held: was} = this.state.planning
      const present = this.now()
      const held = shown?.soFar && present !== null ? rest().heldOf(shown, was, present) : was
      if (held !== was) store(HELD, JSON.stringify({day, held}))
      this.set({planning: {...this.state.planning, state, view, files, faults: [], failed: '', moved: told, held}})
      if (settled) {
        // What nobody may miss is told to who looks elsewhere on the page as well.
        const [first] = [...view.head.alerts, ...view.head.amiss]
        const done = view.late.length > 0 ? words.plan.doneLate : words.plan.done
        this.say(first ?? (view.plan.possible ? done : words.plan.doneInPart))
      }
    }
    const drawings = (drawn: Drawings): void => {
      if (run === this.#planRun) this.set({planning: {...this.state.planning, drawings: drawn}})
    }
    const progress = (share: number): void => {
      if (run === this.#planRun) this.set({planning: {...this.state.planning, share}})
    }
    try {
      const ask = {files, showing: likes.showing, now, day}
      if (begun) {
        const quick = await this.#quick.ask('plan', {...ask, quick: true}, {drawings})
        if (quick) put(quick, 'working')
        if ((quick && !quick.ok) || run !== this.#planRun) return
        // What is to be done now is on the page before the full search takes the processor.
        await new Promise((resolve) => setTimeout(resolve, 100))
        if (run !== this.#planRun) return
      }
      const found = await this.#planner.ask('plan', {...ask, quick: false}, {progress, drawings})
      if (found) put(found, 'made')
      // The plan is drawn before its rest is rehearsed: both at once would be slow on a device of few cores.
      if (found?.ok && !begun)
        void painted().then(() =>
          inAPause(() => {
            if (run === this.#planRun) void this.#quick.ask('ready', {files, showing: likes.showing, day}).catch(() => {})
          }),
        )
    } catch (error) {
      if (run !== this.#planRun) return
      if (error instanceof CalledOff) this.set({planning: {...this.state.planning, state: 'stopped'}})
      else
        this.set({
          planning: {...this.state.planning, state: 'failed', failed: error instanceof Error ? error.message : String(error)},
        })
    }
  }

  /** Call the planning off. */
  stopPlan(): void {
    this.#planner.stop()
  }

  async sheets(): Promise<ReadonlyMap<string, string> | readonly Message[]> {
    const {files, likes} = this.state
    const found = await this.#planner.ask('sheets', {files, showing: likes.showing, audience: likes.audience, now: null})
    return found.ok ? found.sheets : found.messages
  }

  // — the log —

  /** Write a note, or several as one step, into the day's log and plan the rest again. */
  async note(
    text: string | readonly Told[],
    {anyway = false, replan = true}: {readonly anyway?: boolean; readonly replan?: boolean} = {},
  ): Promise<
    | {readonly ok: true; readonly said: string}
    | {readonly ok: false; readonly reason: string; readonly suggest: string; readonly doubt: boolean}
  > {
    const day = this.state.folder?.day
    if (!day) return {ok: false, reason: words.bake.noDay, suggest: '', doubt: false}
    const path = `firings/${day.date}.md`
    const at = this.now()
    const log = this.state.files.get(path) ?? ''
    const told: string[] = []
    const warnings: string[] = []
    let only = ''
    /** Whether the plan takes anything from it. */
    let counts = false
    let written = log
    const {files: asked} = this.state
    const copies = new Map<string, string>()
    for (const one of typeof text === 'string' ? [{words: text, at: null}] : text) {
      const answer = await this.#reader.ask('note', {
        files: asked,
        log: written,
        ...one,
        date: day.date,
        dishes: this.state.folder?.dishes ?? [],
        alike: this.state.folder?.alike ?? [],
        now: at === null ? null : {date: day.date, minutes: Math.floor(at)},
        anyway,
      })
      if (!answer.ok) return answer
      written = answer.text
      if (answer.copy !== null) copies.set(answer.copy, asked.get('day.md') ?? '')
      told.push(answer.said)
      if (answer.plain) only = words.bake.onlyWords(typeof text === 'string' ? text : '')
      else counts = true
      warnings.push(...answer.warnings)
    }
    const here = this.state.files.get(path) ?? ''
    const noted = told.join('; ')
    this.edit(new Map([[path, here === log ? written : (merge(log, here, written) ?? written)], ...copies]), 'note')
    this.set({noted: only === '' ? words.bake.noted(noted) : `${words.bake.noted(noted)} ${only}`})
    this.say([words.bake.noted(noted), ...warnings].join(' '))
    if (replan || counts) void this.plan(noted)
    else {
      const {planning, files} = this.state
      this.set({planning: {...planning, files}})
    }
    this.#lookNow()
    return {ok: true, said: noted}
  }

  ask: Engine['ask'] = (name, question, hearing?: Hearing) => this.#reader.ask(name, question, hearing)

  like(change: Partial<Likes>): void {
    const likes = {...this.state.likes, ...change}
    store(LIKES, JSON.stringify(likes))
    this.set({likes})
    if (change.showing) {
      this.#read()
      if (this.state.planning.view) void this.plan()
    }
  }
}

/** What was still to be done of a day when the page was left. */
function heldFor(day: string): Held {
  try {
    const kept = JSON.parse(stored(HELD) || '{}') as {day?: unknown; held?: Held}
    if (kept.day === day && kept.held) return kept.held
  } catch {
    // What cannot be read is not held.
  }
  return noPlan.held
}

function firstTitle(files: Folder): string {
  for (const text of files.values()) {
    const title = titleOf(text)
    if (title) return title
  }
  return ''
}

const newId = (): string => `day-${Date.now().toString(36)}-${Math.random().toString(36).slice(2, 8)}`

/** FNV-1a of a folder: tells one carried day from another. */
function fingerprint(files: Folder): string {
  let hash = 0x811c9dc5
  for (const [path, text] of [...files].sort(([a], [b]) => (a < b ? -1 : 1)))
    for (const part of [path, text])
      for (let i = 0; i < part.length; i++) hash = Math.imul(hash ^ part.charCodeAt(i), 0x01000193) >>> 0
  return hash.toString(16)
}

/** A clock of a zone: the first of a browser takes it as long as drawing a page. */
const clockOf = cached(
  4,
  (zone: string | null) => zone ?? '',
  (zone) =>
    new Intl.DateTimeFormat('en-GB', {
      ...(zone ? {timeZone: zone} : {}),
      year: 'numeric',
      month: '2-digit',
      day: '2-digit',
      hour: '2-digit',
      minute: '2-digit',
      second: '2-digit',
      hourCycle: 'h23',
    }),
)

/** The present on the day's clock: minutes after midnight of `date`; null from a day before it to more than two days after. */
export function minutesOf(date: string, zone: string | null, at = new Date()): number | null {
  // No zone is so far from another that it matters here.
  if (Math.abs(at.getTime() - Date.parse(`${date}T12:00:00Z`)) > 4 * 86_400_000) return null
  const parts = Object.fromEntries(
    clockOf(zone)
      .formatToParts(at)
      .map(({type, value}) => [type, value]),
  )
  const days = Math.round(
    (Date.parse(`${parts.year}-${parts.month}-${parts.day}T00:00:00Z`) - Date.parse(`${date}T00:00:00Z`)) / 86_400_000,
  )
  if (!(days >= -1 && days <= 2)) return null
  return days * 1440 + Number(parts.hour) * 60 + Number(parts.minute) + Number(parts.second) / 60
}

/** What was said of a file, as long as it is of the text that stands there now. */
export function messagesOf(state: State, path: string): readonly Message[] {
  if (state.folderFiles?.get(path) !== state.files.get(path)) return []
  return state.folder?.messages.filter((m) => m.file === path) ?? []
}

export const app = new App()

/** The state, and a new drawing whenever it changes. */
export function useApp(): State {
  const [, draw] = useState({})
  useEffect(() => app.watch(() => draw({})), [])
  return app.state
}
