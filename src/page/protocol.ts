import type {Band, Range} from '../lexicon/schema.js'
import type {FiringLog} from '../oven/log.js'
import type {OvenSpec} from '../oven/types.js'
import type {Day, Plan} from '../plan/types.js'
import type {Message} from '../receipt/types.js'
import type {Audience} from '../sheets/handout.js'

/** How figures are shown; the worker makes a `Style` of it. */
export interface Showing {
  readonly language: 'en' | 'de'
  readonly units: 'us' | 'metric' | 'both'
  readonly clock: 12 | 24
  readonly degrees: 'C' | 'F' | 'both'
}

/** One row of the table "old beside new". */
export interface IngredientView {
  readonly text: string
  readonly start: number
  readonly end: number
  readonly today: string
  readonly item: string
  readonly part: string
  readonly notes: readonly string[]
  readonly why: ReadonlyArray<{readonly step: string; readonly source: string | null}>
  readonly sources: readonly string[]
  readonly doubtful: boolean
  readonly known: boolean
  /** The reading in words, to begin a correction with. */
  readonly reading: string
}

/** One receipt as the page shows it; offsets are into the whole file. */
export interface ReceiptView {
  readonly title: string
  readonly start: number
  readonly end: number
  readonly year: number | null
  readonly place: string | null
  readonly serves: string | null
  readonly ingredients: readonly IngredientView[]
  readonly heat: ReadonlyArray<{
    readonly text: string
    readonly start: number
    readonly end: number
    readonly band: string
    readonly degrees: string
    readonly notes: readonly string[]
    readonly sources: readonly string[]
  }>
  readonly times: ReadonlyArray<{
    readonly text: string
    readonly start: number
    readonly end: number
    readonly minutes: string
    readonly of: string
    readonly sources: readonly string[]
  }>
  readonly ours: ReadonlyArray<{readonly field: string; readonly value: string; readonly why: string}>
  readonly cautions: readonly string[]
  readonly allergens: string
}

export interface ReceiptFileView {
  readonly path: string
  /** Titles of all receipts of the file. */
  readonly titles: readonly string[]
  /** The one asked for, and its number. */
  readonly chosen: ReceiptView | null
  readonly index: number
  readonly messages: readonly Message[]
}

/** What was read of the whole folder, for the lists and forms. */
export interface FolderView {
  readonly day: Day | null
  readonly oven: OvenSpec | null
  /** The day's own log as it stands, and what it may call the day's dishes. */
  readonly log: FiringLog | null
  readonly dishes: readonly string[]
  /** Those of the names that are of one dish. */
  readonly alike: readonly (readonly string[])[]
  readonly messages: readonly Message[]
  /** Title of the first receipt of each receipt file, and how many there are. */
  readonly receipts: ReadonlyArray<{
    readonly path: string
    readonly title: string
    readonly count: number
    readonly faults: number
  }>
}

/** A floor map or chart as an SVG text, safe to put into the page: the drawing with the first of what is in it, then the rest in parts. */
export interface Drawing {
  readonly title: string
  readonly svg: readonly string[]
  readonly lines: readonly string[]
}

/** A plan as the page shows it. */
export interface PlanView {
  readonly day: Day
  /** The language of its words. */
  readonly language: Showing['language']
  /** As much of the plan as the page itself reckons with; the rest stays with the worker. */
  readonly plan: Pick<Plan, 'possible' | 'lit' | 'ready'> & {
    readonly loads: ReadonlyArray<{readonly dishes: ReadonlyArray<{readonly dish: string; readonly draw: number}>}>
  }
  /** `amiss`: what is underdone or may not be safe beside the alerts, for who stands at the oven. */
  readonly head: {
    readonly title: string
    readonly alerts: readonly string[]
    readonly lines: readonly string[]
    readonly amiss: readonly string[]
  }
  readonly steps: readonly StepView[]
  /** How often the log tells of each "set in:" and "drawn:" of which this plan, made again, has no step any more; absent in a morning's plan. */
  readonly told?: Readonly<Record<string, number>>
  /** What is behind the day, ticked or not; absent in a morning's plan. */
  readonly soFar?: {readonly now: number; readonly unticked: readonly StepView[]; readonly done: readonly DoneView[]} | null
  readonly score: readonly string[]
  /** What comes of taking up a suggestion. */
  readonly suggestionsNote?: string | undefined
  /** Floor and heat used in each band, and what is left: empty where nothing is baked. */
  readonly balance: readonly string[]
  /** `of` names the batches one by one. */
  readonly unplaced: ReadonlyArray<{
    readonly dish: string
    readonly of: readonly string[]
    readonly reason: string
    readonly remedies: readonly string[]
  }>
  /** What is drawn after it is wanted, and when. */
  readonly late: ReadonlyArray<{readonly dish: string; readonly times: string}>
  /** What would help the day, after a line that leads to it; null where nothing had to be tried. */
  readonly ways: {
    readonly lead: string
    /** `note`: what to note for the rest of the day to be planned so, where that takes no more. */
    readonly lines: ReadonlyArray<{readonly say: string; readonly note: string | null}>
  } | null
  readonly suggestions: readonly string[]
  readonly changes: ReadonlyArray<{readonly dish: string | null; readonly what: string; readonly why: string}>
  /** What past firings and what today's readings say of the oven. */
  readonly believed: readonly string[]
  readonly today: readonly string[]
  readonly dishes: ReadonlyArray<{
    readonly id: string
    readonly title: string
    readonly stem: string
    readonly amount: string
    readonly count?: number
  }>
  /** How each dish was brought to its size, a line of each decision; its batches together. */
  readonly sized: ReadonlyArray<{readonly dish: string; readonly amount: string; readonly lines: readonly string[]}>
  readonly messages: readonly Message[]
  /** Baking temperature every `step` minutes from `lit`, °C. */
  readonly baking: {
    readonly step: number
    readonly lit: number
    readonly low: readonly number[]
    readonly high: readonly number[]
  }
  /** What the answer took the worker, ms: all of it, and by part. */
  readonly took: number
  readonly parts: Readonly<Record<'plan' | 'view', number>>
}

/** The drawings of a plan, which follow it: nobody waits for them to know what to do next. */
export interface Drawings {
  readonly chart: Drawing
  readonly floors: readonly Drawing[]
}

/** What has happened, by the log or, where it does not say, by the plan; `at` in minutes after midnight. */
export interface DoneView {
  readonly action: 'light' | 'rake' | 'load' | 'draw'
  /** Empty: the fire's. */
  readonly dish: string
  readonly at: number
}

/** One line of the day with the words of its language. */
export interface StepView {
  /** Stable from plan to plan: what it is and for whom, not when. */
  readonly key: string
  readonly at: number
  /** What stands for its time, where it is at no hour of its own. */
  readonly when?: string
  readonly action: Plan['steps'][number]['action']
  readonly dishes: readonly string[]
  readonly load: number | null
  readonly say: string
  readonly sign: string
  readonly ahead: string
  readonly behind: string
  readonly degrees: string
  readonly past: boolean
  /** The language of its words, where it is of a plan before the one that is shown. */
  readonly language?: Showing['language']
}

export interface OvenView {
  readonly chart: Drawing
  readonly lines: readonly string[]
  readonly bands: ReadonlyArray<{readonly band: Band; readonly from: number | null; readonly to: number | null}>
}

/** What the page asks of the worker. */
export interface Asks {
  receipt: {ask: {path: string; text: string; index: number; showing: Showing}; answer: ReceiptFileView}
  folder: {ask: {files: ReadonlyMap<string, string>}; answer: FolderView}
  oven: {ask: {files: ReadonlyMap<string, string>; showing: Showing}; answer: OvenView | null}
  plan: {
    /**
     * `quick`: what a cook can wait for at the oven; the full search follows. `day` names the day on the shelf, where the plan of its
     * morning is kept.
     */
    ask: {
      files: ReadonlyMap<string, string>
      showing: Showing
      now: number | null
      quick: boolean
      day: string
    }
    /** The drawings follow the answer. Null: a quick answer was wanted, and the morning's plan is not there to begin from. */
    answer: {ok: true; view: PlanView} | {ok: false; messages: readonly Message[]} | null
  }
  /** Do beforehand whatever a note at the oven would have to wait for. */
  ready: {ask: {files: ReadonlyMap<string, string>; showing: Showing; day: string}; answer: boolean}
  sheets: {
    ask: {files: ReadonlyMap<string, string>; showing: Showing; audience: Audience; now: number | null}
    answer: {ok: true; sheets: ReadonlyMap<string, string>} | {ok: false; messages: readonly Message[]}
  }
  note: {
    /** `at`: the time it was done, minutes after midnight of the date, where the words do not say it and it is not now. */
    ask: {
      files: ReadonlyMap<string, string>
      log: string
      words: string
      at: number | null
      date: string
      /** What the log may call the day's dishes; empty where they are not known. */
      dishes: readonly string[]
      /** Those of the names that are of one dish. */
      alike: readonly (readonly string[])[]
      now: {date: string; minutes: number} | null
      anyway: boolean
    }
    answer: /** `copy`: the file in which the day is kept as it stands; `plain`: kept as the words it is, and the plan takes nothing from it. */
      | {ok: true; text: string; copy: string | null; said: string; plain: boolean; warnings: readonly string[]}
      | {ok: false; reason: string; suggest: string; doubt: boolean}
  }
  /** What a reading would say, before it is written down. */
  sign: {ask: {words: string; showing: Showing}; answer: {range: Range; degrees: string; of: string; means: string} | null}
}

export type Name = keyof Asks

export type Request = {[K in Name]: {readonly id: number; readonly name: K; readonly ask: Asks[K]['ask']}}[Name]

export type Reply =
  | {readonly id: number; readonly answer: unknown}
  | {readonly id: number; readonly progress: number}
  | {readonly id: number; readonly drawings: Drawings}
  | {readonly id: number; readonly failed: string}
