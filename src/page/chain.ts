import type {LoadOf} from '../oven/learn.js'
import {type FiringLog, readLog} from '../oven/log.js'
import {readOven} from '../oven/read.js'
import type {OvenSpec, PastReading} from '../oven/types.js'
import type {Corrections} from '../plan/again.js'
import {type Belief, believe, loadsOf} from '../plan/believe.js'
import {built} from '../plan/built.js'
import {nothingAsked, readDay} from '../plan/day.js'
import {copyToMake, itemsNoted, type KeptDay, keptAmong, morningOf, notChangeable} from '../plan/kept-days.js'
import {type MadePlan, type MakePlan, makePlan, morningPlan} from '../plan/make.js'
import type {Day} from '../plan/types.js'
import {translate} from '../receipt/translate.js'
import type {Message, Receipt, Translation} from '../receipt/types.js'
import {makeDishes} from '../scale/dishes.js'
import {namesInLog} from '../scale/slug.js'
import type {Dish} from '../scale/types.js'
import {cached, fingerprint} from './cached.js'
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
  /** The day as it stood since its fire was lit, as far as it was kept. */
  readonly kept: readonly KeptDay[]
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

const dayAs = cached(
  8,
  (text: string, file: string) => `${file}\n${text}`,
  (text, file) => readDay(text, file),
)
const dayOf = (text: string): ReturnType<typeof readDay> => dayAs(text, 'day.md')
const ovenOf = cached(
  4,
  (text: string) => text,
  (text) => readOven(text, 'oven.md'),
)
const logOf = cached(
  60,
  (path: string, zone: string | null, text: string, dishes: readonly string[] | null, oven: string) =>
    `${path}\n${zone}\n${dishes?.join(',')}\n${text}\n${oven}`,
  (path, zone, text, dishes, oven) => readLog(text, path, {zone, ...(dishes === null ? {} : {dishes}), oven: ovenOf(oven).oven}),
)

const ovenText = (files: Folder): string => files.get('oven.md') ?? ''

/** The oven of a folder; null where it cannot be read. */
export const ovenIn = (files: Folder): OvenSpec | null => ovenOf(ovenText(files)).oven

/** Read a whole folder, as the command does: every error in every file is found. A text that has not changed is not read again. */
export function readFolder(files: Folder): FolderRead {
  const messages: Message[] = []
  const dayRead = dayOf(files.get('day.md') ?? '')
  messages.push(...dayRead.messages)
  const ovenRead = ovenOf(ovenText(files))
  messages.push(...ovenRead.messages)
  const {day} = dayRead
  const texts = new Map<string, string>()
  const receipts: Receipt[] = []
  const kept = day === null ? [] : keptIn(files, day.date, messages)
  const asked = [
    ...[...(day?.items ?? []), ...(day?.spare ?? [])].map((item) => ({item, of: 'day.md'})),
    ...kept.flatMap((one) => one.day.items.map((item) => ({item, of: one.file}))),
  ]
  for (const {item, of} of asked) {
    if (texts.has(item.file)) continue
    const text = files.get(item.file)
    if (text === undefined || text.trim() === '') {
      messages.push({
        file: of,
        ...(item.targetAt ?? {line: item.line, column: item.column}),
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
      const read = logOf(path, day.zone, text, own ? namesInLog(itemsNoted(day, kept), receipts) : null, ovenText(files))
      // A fault in an old log is told and the log left out; a fault in the day's own must be put right first.
      messages.push(...read.messages.map((m) => (m.severity === 'error' && !own ? {...m, severity: 'warning' as const} : m)))
      if (!read.log || (!own && read.messages.some((m) => m.severity === 'error'))) continue
      if (own) log = read.log
      else past.push(read.log)
    }
  return {day, oven: ovenRead.oven, readings: ovenRead.readings, receipts, texts, log, past, kept, messages}
}

/** The copies of a day beside its log; one that cannot be read is an error. */
export function keptIn(files: Folder, date: string, messages: Message[] = []): KeptDay[] {
  const names = [...files.keys()].flatMap((path) => (path.startsWith(FIRINGS) ? [path.slice(FIRINGS.length)] : []))
  return keptAmong(names, date).flatMap(({name, from}) => {
    const file = `${FIRINGS}${name}`
    const read = dayAs(files.get(file) ?? '', file)
    messages.push(...read.messages.filter((m) => m.severity === 'error'))
    return read.day ? [{day: read.day, from, file}] : []
  })
}

const FIRINGS = 'firings/'

/**
 * The file in which the day is to be kept as it stands when something is noted (see `copyToMake`); null where there is none to write.
 *
 * @param before the day's log before the note, and `after` with it
 * @param names what the log may call the dishes of the day
 */
export function copyIn(files: Folder, before: string, after: string, names: readonly string[]): string | null {
  const {day} = dayOf(files.get('day.md') ?? '')
  if (day === null) return null
  const path = `${FIRINGS}${day.date}.md`
  const logIn = (text: string): FiringLog | null => readLog(text, path, {zone: day.zone}).log
  const kept = keptIn(files, day.date)
  const copies = kept.map(({file}) => file.slice(FIRINGS.length))
  const copy = copyToMake({day, kept, before: logIn(before), log: logIn(after), copies, names})
  return copy === null ? null : `${FIRINGS}${copy}`
}

/** A plan, or why there can be none yet. */
export type Planned =
  | {
      readonly ok: true
      readonly read: Whole
      readonly made: MadePlan
      /** What past firings say of the oven and, on the day, what its readings do, in plain sentences. */
      readonly believed: readonly string[]
      readonly today: readonly string[]
    }
  | {readonly ok: false; readonly messages: readonly Message[]}

/** A folder of which day and oven could be read. */
type Whole = FolderRead & {readonly day: Day; readonly oven: OvenSpec}

/** The dishes of the day's morning: of every file but the day's own log. */
const scaledOf = cached(
  2,
  (files: Folder, {day}: Whole) => morningKey(files, day.date),
  (_, read) => makeDishes({day: morningOf(read), receipts: read.receipts, oven: read.oven}),
)

/** What past firings taught: all of the folder that it stands on is in the key; of the dishes only what a past load of them took. */
const taughtBy = cached(
  4,
  (files: Folder, read: Whole, dishes: readonly Dish[]) =>
    fingerprint([
      ovenText(files),
      read.day.date,
      read.day.zone ?? '',
      ...dishes.flatMap((d) => [d.file, `${d.count} ${d.mass} ${d.water} ${d.need.minutes.likely}`]),
      ...logTexts(files),
    ]),
  (_, read, dishes): Belief => believe({oven: read.oven, past: read.past, readings: read.readings, log: null, dishes}),
)

/** What the loads of the folder's logs took, where its day can be read whole; null where a usual load has to do. */
export function loadsIn(files: Folder, read: FolderRead): LoadOf | null {
  const {day, oven} = read
  if (!day || !oven || (read.past.length === 0 && !read.log)) return null
  if (read.messages.some((m) => m.severity === 'error')) return null
  const {dishes, spare} = scaledOf(files, {...read, day, oven})
  return loadsOf([...dishes, ...spare])
}

function logTexts(files: Folder): string[] {
  const day = dayOf(files.get('day.md') ?? '').day
  const own = `firings/${day?.date ?? ''}.`
  return [...files.keys()]
    .filter((path) => path.startsWith(FIRINGS) && !path.startsWith(own))
    .sort()
    .flatMap((path) => [path, files.get(path) ?? ''])
}

/**
 * What a morning's plan was made from: every file but the day's own log, with the day as it stood when its fire was lit, and this version of
 * the planner.
 */
export function morningKey(files: Folder, date: string): string {
  const own = `${FIRINGS}${date}.`
  const from = morningFile(files, date)
  return fingerprint([
    built() ?? '',
    ...[...files.keys()]
      .filter((path) => !path.startsWith(own))
      .sort()
      .flatMap((path) => [path, files.get(path === 'day.md' ? from : path) ?? '']),
  ])
}

/** The file that has the day as its morning's plan was made of it. */
const madeOf = ({day, kept, log}: Pick<Whole, 'day' | 'kept' | 'log'>): string =>
  kept[0] && morningOf({day, kept, log}) !== day ? kept[0].file : 'day.md'

/** The same of a folder that is not read. */
function morningFile(files: Folder, date: string): string {
  const {day} = dayOf(files.get('day.md') ?? '')
  const kept = keptIn(files, date)
  const path = `${FIRINGS}${date}.md`
  if (day === null || kept.length === 0) return 'day.md'
  const {log} = logOf(path, day.zone, files.get(path) ?? '', null, ovenText(files))
  return madeOf({day, kept, log})
}

/**
 * Plan a folder, as the command does.
 *
 * What stands on texts that have not changed is not worked out again: after a note only the log is read, the oven put to its readings
 * once, and the rest of the day planned.
 *
 * @param options `now`, minutes after midnight of the day, where part of it has already happened; `effort`, for
 * the rest of the day
 */
export function planFolder(
  files: Folder,
  options: Pick<NonNullable<MakePlan['options']>, 'progress' | 'cancelled' | 'effort'> & {
    readonly now?: number
  } = {},
): Planned {
  const read = readFolder(files)
  const errors = read.messages.filter((m) => m.severity === 'error')
  const {day, oven} = read
  if (errors.length > 0 || !day || !oven) return {ok: false, messages: errors}
  const cannot = [...nothingAsked(day, 'day.md', read.messages), ...notChangeable(read as Whole, 'day.md')]
  if (cannot.length > 0) return {ok: false, messages: cannot}
  const {now, effort, ...watch} = options
  // What past firings taught; today's readings are put to it when the rest of the day is planned.
  const scaled = scaledOf(files, {...read, day, oven})
  const taught = taughtBy(files, {...read, day, oven}, [...scaled.dishes, ...scaled.spare])
  const input = {
    scaled,
    oven,
    day,
    receipts: read.receipts,
    parameters: taught.parameters,
    corrections: taught.dishes,
    options: watch,
  }
  const key = morningKey(files, day.date)
  if (morning?.key !== key) morning = {key, made: morningPlan({...input, day: morningOf(read as Whole)})}
  if (followed.key !== key) followed = {key, known: new Map()}
  const {made} = morning
  const of = madeOf({...read, day})
  const wrong = made.messages.flatMap((m) => (m.severity === 'error' && m.rule.startsWith('scale-') ? [{...m, file: of}] : []))
  if (wrong.length > 0) return {ok: false, messages: wrong}
  const again = makePlan(
    {
      ...input,
      kept: read.kept,
      log: read.log,
      options: {...watch, ...(effort ? {effort} : {})},
      ...(now === undefined ? {} : {now}),
    },
    made,
    followed.known,
  )
  const amiss = again.messages.filter((m) => m.severity === 'error' && m.rule.startsWith('scale-'))
  if (amiss.length > 0) return {ok: false, messages: amiss}
  return {ok: true, read: {...read, day, oven}, made: again, believed: taught.said, today: again.said}
}

/** The day as it was planned before it began, and what it was planned from. */
export interface Morning {
  readonly key: string
  readonly made: MadePlan
}

/** It would be planned at every note again, and a note changes nothing of it. */
let morning: Morning | null = null

/** How the day of a morning's plan was put right so far, for its next note. */
let followed: {readonly key: string; readonly known: Corrections} = {key: '', known: new Map()}

/** The day as last planned before it began, to be kept for another time. */
export const lastMorning = (): Morning | null => morning

/** Whether the day before it began is planned already, and only the rest of it would have to be. */
export function knowsMorning(files: Folder): boolean {
  const {day} = dayOf(files.get('day.md') ?? '')
  return day !== null && morning?.key === morningKey(files, day.date)
}

/** Take over a morning's plan that was kept, if it is of this folder and of this version of the planner. */
export function recallMorning(files: Folder, kept: Morning): void {
  const {day} = dayOf(files.get('day.md') ?? '')
  if (day !== null && kept.key === morningKey(files, day.date)) morning = kept
}
