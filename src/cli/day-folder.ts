import {existsSync, realpathSync, statSync} from 'node:fs'
import {join, sep} from 'node:path'
import {type FiringLog, readLog} from '../oven/log.js'
import {readOven} from '../oven/read.js'
import type {OvenSpec, PastReading} from '../oven/types.js'
import {readDay} from '../plan/day.js'
import {itemsNoted, type KeptDay} from '../plan/kept-days.js'
import type {Day, DayItem} from '../plan/types.js'
import {translate} from '../receipt/translate.js'
import type {Message, Receipt} from '../receipt/types.js'
import {namesInLog} from '../scale/slug.js'
import {Failure, fileFailure} from './failure.js'
import {namesIn, readText, type Told} from './files.js'
import {keptFiles, readLogs} from './logs.js'

/** A bake day as read from its folder. */
export interface DayFolder {
  readonly folder: string
  readonly day: Day
  readonly oven: OvenSpec
  /** Readings of earlier firings stated in oven.md. */
  readonly readings: readonly PastReading[]
  /** Every receipt of every file linked, in the order of the links. */
  readonly receipts: readonly Receipt[]
  /** The text of each receipt file, by its name as linked. */
  readonly sources: ReadonlyMap<string, string>
  /** The day's own log, null where there is none yet, and those of earlier firings, oldest first. */
  readonly log: FiringLog | null
  readonly past: readonly FiringLog[]
  /** The day as it stood since its fire was lit, as far as it was kept. */
  readonly kept: readonly KeptDay[]
  readonly messages: readonly Message[]
}

/**
 * Read a bake day's folder whole: every error in every file is found before any is reported.
 *
 * @throws {Failure} with all errors; rules of the readers, and `day-folder`, `receipt-missing`
 */
export function readDayFolder(folder: string): DayFolder {
  const messages: Message[] = []
  const told: Told = (message) => messages.push(message)
  const attempt = <T>(run: () => T): T | null => {
    try {
      return run()
    } catch (error) {
      if (!(error instanceof Failure)) throw error
      messages.push(...error.messages)
      return null
    }
  }
  if (!existsSync(folder))
    throw fileFailure(
      folder,
      'day-folder',
      'there is no such folder',
      'name the folder of a bake day, with day.md and oven.md in it',
    )
  if (!statSync(folder).isDirectory())
    throw fileFailure(folder, 'day-folder', 'this is a file, not the folder of a bake day', 'name the folder it lies in')
  const dayFile = join(folder, 'day.md')
  if (!existsSync(dayFile)) {
    throw fileFailure(
      dayFile,
      'day-folder',
      'this folder has no day.md',
      'write day.md: date, people, fire from and serve in front matter, then a list of links to receipts',
    )
  }
  const dayText = attempt(() => readText(dayFile, dayFile, 'day', told))
  const dayRead = dayText === null ? null : readDay(dayText, dayFile)
  if (dayRead) messages.push(...dayRead.messages)

  const ovenFile = join(folder, 'oven.md')
  const ovenText = attempt(() => readText(ovenFile, ovenFile, 'description of the oven', told))
  const oven = ovenText === null ? null : readOven(ovenText, ovenFile)
  if (oven) messages.push(...oven.messages)

  const sources = new Map<string, string>()
  const receipts: Receipt[] = []
  const home = realpathSync(folder)
  const kept = dayRead?.day ? (attempt(() => keptDays(folder, dayRead.day!, attempt, messages)) ?? []) : []
  const asked = [
    ...[...(dayRead?.day?.items ?? []), ...(dayRead?.day?.spare ?? [])].map((item) => ({item, of: dayFile})),
    ...kept.flatMap(({day, file}) => day.items.map((item) => ({item, of: join(folder, file)}))),
  ]
  for (const {item, of} of asked) {
    if (sources.has(item.file)) continue
    const text = attempt(() => readReceipt(folder, home, of, item, told))
    if (text === null) continue
    sources.set(item.file, text)
    const read = translate(text, {file: item.file})
    receipts.push(...read.receipts)
    messages.push(...read.messages.map((m) => ({...m, file: join(folder, m.file)})))
  }

  // A log is the day's by its date, so without that none can be read; whatever else is wrong, they are.
  const day = dayRead?.day
  const logs = day ? attempt(() => logsOf(folder, day, oven?.oven ?? null, kept, receipts)) : null
  if (logs) messages.push(...logs.messages)

  // A folder that cannot be listed is met wherever something is looked for in it.
  const placed = messages.flatMap((m) =>
    m.severity === 'error' ? [[`${m.file}:${m.line}:${m.column} ${m.reason}`, m] as const] : [],
  )
  const errors = [...new Map(placed).values()]
  if (errors.length > 0 || !day || !oven?.oven || !logs) throw new Failure(errors)
  return {
    folder,
    day,
    oven: oven.oven,
    readings: oven.readings,
    receipts,
    sources,
    log: logs.log,
    past: logs.past,
    kept,
    messages,
  }
}

/** The day's own log and those before it, with what is wrong in them. */
function logsOf(
  folder: string,
  day: Day,
  oven: OvenSpec | null,
  kept: readonly KeptDay[],
  receipts: readonly Receipt[],
): Pick<DayFolder, 'log' | 'past' | 'messages'> {
  const past = readLogs(join(folder, 'firings'), {before: day.date, zone: day.zone, oven})
  const file = join(folder, 'firings', `${day.date}.md`)
  const dishes = namesInLog(itemsNoted(day, kept), receipts)
  const told: Message[] = []
  const own = existsSync(file)
    ? readLog(
        readText(file, file, 'log', (message) => told.push(message)),
        file,
        {zone: day.zone, dishes, oven},
      )
    : null
  return {log: own?.log ?? null, past: past.logs, messages: [...past.messages, ...told, ...(own?.messages ?? [])]}
}

/** The day as it was kept beside its log; a copy that cannot be read is an error, as a log is. */
function keptDays(folder: string, {date}: Day, attempt: <T>(run: () => T) => T | null, messages: Message[]): KeptDay[] {
  const told: Told = (message) => messages.push(message)
  return keptFiles(join(folder, 'firings'), date).flatMap(({path, name, from}) => {
    const text = attempt(() => readText(path, path, 'copy of the day', told))
    if (text === null) return []
    const read = readDay(text, path)
    messages.push(...read.messages.filter((m) => m.severity === 'error'))
    return read.day ? [{day: read.day, from, file: `firings/${name}`}] : []
  })
}

function readReceipt(folder: string, home: string, dayFile: string, item: DayItem, told: Told): string {
  const path = join(folder, item.file)
  const wrong = (reason: string, suggest: string): Failure =>
    new Failure([
      {
        file: dayFile,
        ...(item.targetAt ?? {line: item.line, column: item.column}),
        severity: 'error',
        rule: 'receipt-missing',
        reason,
        suggest,
      },
    ])
  if (!existsSync(path)) {
    const beside = namesIn(join(folder, 'receipts'), 'receipts').filter((n) => n.endsWith('.md'))
    const want = item.file.split('/').pop() ?? ''
    const near = beside.find((n) => n.toLowerCase() === want.toLowerCase()) ?? beside.find((n) => n[0] === want[0])
    throw wrong(
      `there is no receipt ${item.file}`,
      near ? `is it receipts/${near}?` : 'put the receipt there, or take the line out',
    )
  }
  const real = realpathSync(path)
  if (real !== home && !real.startsWith(home + sep))
    throw wrong(`${item.file} leads out of this folder`, 'copy the receipt into the day’s receipts folder')
  return readText(path, path, 'receipt', told)
}
