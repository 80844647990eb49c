import {existsSync, mkdirSync, readFileSync} from 'node:fs'
import {basename, dirname, join} from 'node:path'
import lockfile from 'proper-lockfile'
import {Temporal} from 'temporal-polyfill'
import writeFileAtomic from 'write-file-atomic'
import {armCaution} from '../lexicon/signs.js'
import {type LogOptions, readLog} from '../oven/log.js'
import {appendToLog} from '../oven/log-append.js'
import {countAt} from '../oven/log-counts.js'
import {entryText, type LogEntry, notesIn, parseNote} from '../oven/note.js'
import {readOven} from '../oven/read.js'
import {readDay} from '../plan/day.js'
import {copyToMake, itemsNoted, type KeptDay} from '../plan/kept-days.js'
import {inWordsOnly} from '../plan/told-doughs.js'
import type {DayItem} from '../plan/types.js'
import {namesInLog, namesOfEach, slug, slugOf} from '../scale/slug.js'
import type {Given} from './arguments.js'
import {Failure, fileFailure, messageLines, usageFailure} from './failure.js'
import {decodeText, readText} from './files.js'
import {keptFiles} from './logs.js'
import type {Outcome} from './run.js'

/**
 * `hearthfall note DAY-FOLDER "2:15 pm arm 18"`
 *
 * The log is read, added to and renamed into place under a lock: a kill leaves the old log whole, two at once both get in, and what a
 * hand has written stays byte for byte.
 */
export async function runNote(given: Given): Promise<Outcome> {
  const [folder, ...words] = given.positionals as [string, ...string[]]
  const dayFile = join(folder, 'day.md')
  const dayText = readText(dayFile, dayFile, 'day')
  const {day, messages} = readDay(dayText, dayFile)
  if (!day) throw new Failure(messages.filter((m) => m.severity === 'error'))
  const now = present(day.date, day.zone)
  const anyway = given.flag('anyway')
  const said = words.join(' ')
  const firings = join(folder, 'firings')
  const kept = keptDays(firings, day.date)
  // What the day asked for before may be in the oven still.
  const items = itemsNoted(day, kept)
  const dishes = dishNames(folder, items)
  const alike = namesOfEach(items)
  const file = join(firings, `${day.date}.md`)
  const so = existsSync(file) ? readLog(readText(file, file, 'log'), file).log : null
  const entries = notesIn(said, dishes, alike).map((one) => {
    const parsed = parseNote(one, {date: day.date, dishes, alike, log: so, ...(now && !anyway ? {now} : {})})
    if (!parsed.ok)
      throw usageFailure(
        parsed.reason,
        now && !anyway ? `${parsed.suggest}; the day is ${day.date}; --anyway skips the clock` : parsed.suggest,
      )
    const {entry} = parsed
    if (entry.what === 'row' && entry.doubt && !anyway)
      throw usageFailure(entry.doubt.reason, `${entry.doubt.suggest}, or add --anyway if it is true`)
    return entry
  })

  try {
    mkdirSync(dirname(file), {recursive: true})
  } catch {
    throw fileFailure(dirname(file), 'out-unwritable', 'this folder cannot be written', 'check its permissions')
  }
  const release = await lockfile.lock(file, {
    realpath: false,
    stale: 10_000,
    retries: {retries: 40, minTimeout: 25, maxTimeout: 250},
  })
  try {
    const before = existsSync(file) ? readFileSync(file) : null
    const text = before === null || before.length === 0 ? '' : ownText(before, file)
    const ovenFile = join(folder, 'oven.md')
    const oven = existsSync(ovenFile) ? readOven(readText(ovenFile, ovenFile, 'description of the oven'), ovenFile).oven : null
    const checked = readLog(text, file, {oven})
    const errors = checked.messages.filter((m) => m.severity === 'error')
    if (text !== '' && errors.length > 0) throw new Failure(errors)
    const source = entries.reduce((log, entry) => {
      const after = appendToLog(log, entry, {date: day.date})
      if (!after.ok) throw fileFailure(file, 'log-append', after.reason, after.suggest)
      return after.source
    }, text)
    // Read back what the log now says, so that a contradiction is told at once.
    const told = readLog(source, file, {oven})
    // What the log would be refused for by the next note is not written.
    const impossible = told.messages.find((m) => m.severity === 'error')
    if (impossible) throw usageFailure(impossible.reason, impossible.suggest ?? '')
    // Read under the lock: another note may have kept the day meanwhile.
    const copies = keptDays(firings, day.date)
    const copy = copyToMake({
      day,
      kept: copies,
      before: checked.log,
      log: told.log,
      copies: copies.map((one) => basename(one.file)),
      names: dishNames(folder, [...day.items, ...day.spare]),
    })
    // First, so that the log is as it was where the copy cannot be written.
    if (copy !== null) writeFileAtomic.sync(join(firings, copy), dayText)
    writeFileAtomic.sync(file, source)
    const warnings = told.messages.filter((m) => !checked.messages.some((old) => old.reason === m.reason))
    const lines = entries.map((entry) => `Noted in ${file}: ${entryText(entry)}\n`)
    if (copy !== null) lines.push(`Kept the day as ${dayFile} has it now: ${join(firings, copy)}\n`)
    const plain = inWordsOnly(entries)
    const counts = entries.flatMap((entry) => bareSetIn(entry, items) ?? [])
    const arm = entries.some((entry) => entry.what === 'row' && entry.read?.kind === 'arm')
    return {
      out: `${lines.join('')}${plain ? 'In words only: the plan takes nothing from it.\n' : ''}${counts.join('')}${arm ? `${armCaution.title}. ${armCaution.instead}\n` : ''}`,
      err: messageLines(warnings),
      code: 0,
    }
  } finally {
    await release()
  }
}

/**
 * The text of a log that is written into.
 *
 * @throws {Failure} rule `file-encoding` where it is not UTF-8: what a hand has written would not stay byte for byte
 */
function ownText(bytes: Uint8Array, file: string): string {
  const text = decodeText(bytes, file, 'log')
  if (!Buffer.from(text).equals(bytes))
    throw fileFailure(file, 'file-encoding', 'this log is not in UTF-8, in which the note would be written', 'save it in UTF-8')
  return text
}

/** What is said of a set-in without a number, of a dish of which there may be several; null of anything else. */
function bareSetIn(entry: LogEntry, items: readonly DayItem[]): string | null {
  if (entry.what !== 'row' || entry.value !== 'set in') return null
  const item = items.find(({file, title}) => [slugOf(file), slug(title)].includes(entry.reading))
  const asked = item?.amount == null ? null : countAt(item.amount)
  if (!item || asked?.count === 1) return null
  return `Without a number it is all that the plan then has to go in; if it is not, write how many: “${entry.time} ${entry.reading} ${asked?.count ?? 2} set in”.\n`
}

/** The copies of the day; one that cannot be read is an error. */
function keptDays(firings: string, date: string): KeptDay[] {
  return keptFiles(firings, date).map(({path, from}) => {
    const {day, messages} = readDay(readText(path, path, 'copy of the day'), path)
    if (!day) throw new Failure(messages.filter((m) => m.severity === 'error'))
    return {day, from, file: path}
  })
}

/** What the log may call the day's dishes. Titles of a file of several receipts are its headings: no receipt need be read for a note. */
function dishNames(folder: string, items: readonly DayItem[]): string[] {
  const headings = [...new Set(items.map(({file}) => file))].flatMap((file) => {
    const path = join(folder, file)
    const text = existsSync(path) ? readFileSync(path, 'utf8') : ''
    return Array.from(text.matchAll(/^#{1,6} +([^\n]+)$/gm), (m) => ({file, title: m[1]!}))
  })
  return namesInLog(items, headings)
}

/** The present on the bake day's clock; undefined while the day is not today, yesterday or tomorrow, when only a stated time makes sense. */
function present(date: string, zone: string | null): LogOptions['now'] | undefined {
  const here = Temporal.Now.zonedDateTimeISO(zone ?? Temporal.Now.timeZoneId())
  const days = Temporal.PlainDate.from(date).until(here.toPlainDate(), {largestUnit: 'day'}).days
  if (days > 2) return undefined
  return {date: here.toPlainDate().toString(), minutes: here.hour * 60 + here.minute}
}
