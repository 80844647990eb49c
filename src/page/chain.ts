import {type FiringLog, readLog} from '../oven/log.js'
import {readOven} from '../oven/read.js'
import type {OvenSpec, PastReading} from '../oven/types.js'
import {believe} from '../plan/believe.js'
import {readDay} from '../plan/day.js'
import {type MadePlan, type MakePlan, makePlan, planAgain} from '../plan/make.js'
import type {Day} from '../plan/types.js'
import {translate} from '../receipt/translate.js'
import type {Message, Receipt, Translation} from '../receipt/types.js'
import {type Folder, READ, within} from './folder.js'

/** A bake day's folder as read: what could be read, and what is wrong with the rest. */
export interface FolderRead {
  readonly day: Day | null
  readonly oven: OvenSpec | null
  /** Readings of earlier firings stated in oven.md. */
  readonly readings: readonly PastReading[]
  /** Every receipt of every file linked, in the order of the links. */
  readonly receipts: readonly Receipt[]
  /** The text of each receipt file, by its name as linked. */
  readonly texts: ReadonlyMap<string, string>
  /** The day's own log, and those of earlier firings, oldest first. */
  readonly log: FiringLog | null
  readonly past: readonly FiringLog[]
  readonly messages: readonly Message[]
}

const kept = new Map<string, {readonly text: string; readonly translation: Translation}>()

/** One receipt file read; the same text is read once. */
export function readReceiptFile(path: string, text: string): Translation {
  const before = kept.get(path)
  if (before?.text === text) return before.translation
  const translation: Translation = within(text, READ)
    ? translate(text, {file: path})
    : {
        format: 1,
        receipts: [],
        messages: [
          {
            file: path,
            line: 1,
            column: 1,
            severity: 'error',
            rule: 'file-large',
            reason: 'this text, or one line of it, is too long to be a receipt',
            suggest: 'split it into receipts of a few pages, with line breaks',
          },
        ],
      }
  if (kept.size > 400) kept.clear()
  kept.set(path, {text, translation})
  return translation
}

/** Read a whole folder, as the command does: every error in every file is found. */
export function readFolder(files: Folder): FolderRead {
  const messages: Message[] = []
  const dayRead = readDay(files.get('day.md') ?? '', 'day.md')
  messages.push(...dayRead.messages)
  const ovenRead = readOven(files.get('oven.md') ?? '', 'oven.md')
  messages.push(...ovenRead.messages)
  const {day} = dayRead
  const texts = new Map<string, string>()
  const receipts: Receipt[] = []
  for (const item of [...(day?.items ?? []), ...(day?.spare ?? [])]) {
    if (texts.has(item.file)) continue
    const text = files.get(item.file)
    if (text === undefined || text.trim() === '') {
      messages.push({
        file: 'day.md',
        line: item.line,
        column: item.column,
        severity: 'error',
        rule: 'receipt-missing',
        reason: text === undefined ? `there is no receipt ${item.file}` : `the receipt ${item.file} is empty`,
        suggest: 'put the receipt there, or take the line out',
      })
      continue
    }
    texts.set(item.file, text)
    const read = readReceiptFile(item.file, text)
    receipts.push(...read.receipts)
    messages.push(...read.messages)
  }
  const past: FiringLog[] = []
  let log: FiringLog | null = null
  if (day)
    for (const path of [...files.keys()].filter((p) => /^firings\/\d{4}-\d{2}-\d{2}\.md$/.test(p)).sort()) {
      const own = path === `firings/${day.date}.md`
      if (!own && path > `firings/${day.date}.md`) continue
      const text = files.get(path) ?? ''
      if (text.trim() === '') continue
      const read = readLog(text, path, {zone: day.zone})
      // A fault in an old log is told and the log left out; a fault in the day's own must be put right first.
      messages.push(...read.messages.map((m) => (m.severity === 'error' && !own ? {...m, severity: 'warning' as const} : m)))
      if (!read.log) continue
      if (own) log = read.log
      else past.push(read.log)
    }
  return {day, oven: ovenRead.oven, readings: ovenRead.readings, receipts, texts, log, past, messages}
}

/** A plan, or why there can be none yet. */
export type Planned =
  | {
      readonly ok: true
      readonly read: FolderRead & {readonly day: Day; readonly oven: OvenSpec}
      readonly made: MadePlan
      /** What past firings and today's readings say of the oven, in plain sentences. */
      readonly believed: readonly string[]
    }
  | {readonly ok: false; readonly messages: readonly Message[]}

/**
 * Plan a folder, as the command does.
 *
 * @param options `now`, minutes after midnight of the day, where part of it has already happened; `morning`, the day as it was planned
 * before it began, where it is known; `effort` for the rest of the day
 */
export function planFolder(
  files: Folder,
  options: Pick<NonNullable<MakePlan['options']>, 'progress' | 'cancelled' | 'effort'> & {
    readonly now?: number
    readonly morning?: Morning | null
  } = {},
): Planned {
  const read = readFolder(files)
  const errors = read.messages.filter((m) => m.severity === 'error')
  const {day, oven} = read
  if (errors.length > 0 || !day || !oven) return {ok: false, messages: errors}
  if (day.items.length === 0)
    return {
      ok: false,
      messages: [
        {
          file: 'day.md',
          line: 1,
          column: 1,
          severity: 'error',
          rule: 'day-link',
          reason: 'the day asks for no receipt yet',
          suggest: 'put a receipt on the day’s list',
        },
      ],
    }
  const {now, morning: known, effort, ...watch} = options
  // What past firings taught; today's readings are put to it when the rest of the day is planned.
  const taught = believe({oven, past: read.past, readings: read.readings, log: null})
  const input = {oven, day, receipts: read.receipts, parameters: taught.parameters, options: watch}
  const key = JSON.stringify(
    [...files].filter(([path]) => path !== `firings/${day.date}.md`).sort(([a], [b]) => (a < b ? -1 : 1)),
  )
  if (morning?.key !== key) morning = known?.key === key ? known : {key, made: makePlan(input)}
  const {made} = morning
  const {log} = read
  if (!log || log.lit === null) return {ok: true, read: {...read, day, oven}, made, believed: taught.said}
  const again = planAgain(
    {...input, options: {...watch, ...(effort ? {effort} : {})}, ...(now === undefined ? {} : {now})},
    made.problem,
    made.plan,
    log,
    made.spare,
  )
  const {said} = log.readings.length > 0 ? believe({oven, past: read.past, readings: read.readings, log}) : taught
  // The messages of the morning's plan are of what has been planned anew since.
  const messages = made.messages.slice(0, made.messages.length - made.plan.messages.length)
  return {
    ok: true,
    read: {...read, day, oven},
    made: {...made, ...again, messages: [...messages, ...again.plan.messages]},
    believed: said,
  }
}

/** The day as it was planned before it began, and what it was planned from. */
export interface Morning {
  readonly key: string
  readonly made: MadePlan
}

/** `makePlan` would plan it at every note again, and a note changes nothing of it. */
let morning: Morning | null = null

/** The day as last planned before it began, to be kept for another time. */
export const lastMorning = (): Morning | null => morning
