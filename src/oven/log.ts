import {distance} from 'fastest-levenshtein'
import type {RootContent, Table} from 'mdast'
import {toString as textOf} from 'mdast-util-to-string'
import remarkFrontmatter from 'remark-frontmatter'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import {Temporal} from 'temporal-polyfill'
import {unified} from 'unified'
import * as z from 'zod'
import {logHeads} from '../lexicon/log-heads.js'
import type {LogHead} from '../lexicon/schema.js'
import {parseClock, parseMass, readClock, writeDuration} from '../measure/quantity.js'
import {readDuration} from '../receipt/durations.js'
import {quantity, readFrontMatter} from '../receipt/front-matter.js'
import {lineIndex} from '../receipt/position.js'
import type {Message} from '../receipt/types.js'
import {mostWood} from './fire.js'
import {BURNS, type FireToCome, fireToCome, isDated} from './fire-again.js'
import {backIn, isPutBack, isStillIn, leftIn} from './log-back.js'
import {countAt, countOnly, isAllLost, isDrawnLost, isWholeLoss, lostIn, WHOLE_LOSS} from './log-counts.js'
import {type Deed, deedMeant, deedOf, isDrawnBehind} from './log-deeds.js'
import {dishesLike, isDish, isThing, resemblesDish} from './log-dishes.js'
import {doorTold, isDoor, LOOKED_IN, unclearDoor} from './log-door.js'
import {isFilledSince, isToFill} from './log-filling.js'
import {longerBy} from './log-looked.js'
import {clockText} from './note-clock.js'
import {mainOf, noteWordsOf} from './note-words.js'
import {parseReading, readingKind} from './signs.js'
import type {OvenEvent, OvenSpec, Reading, ReadingKind} from './types.js'

/** The log of a firing: `firings/DATE.md`. Reading it never changes it; `log-append.ts` puts entries into it. */

/** A row of the log's table. Times are minutes after midnight of the log's date, as the clock shows them. */
export interface LogRow {
  readonly line: number
  readonly at: number
  /** True minutes since the fire was lit, with the clocks' change where a zone is known; null where `lit` is not. */
  readonly elapsed: number | null
  readonly what:
    | 'reading'
    | 'mixed'
    | 'shaped'
    | 'not risen'
    | 'not in'
    | 'set in'
    | 'drawn'
    | 'not drawn'
    | 'lost'
    | 'door'
    | 'note'
  readonly kind?: ReadingKind
  readonly value?: number | string
  /** File name of the receipt without `.md`, for what was mixed, shaped, set in or drawn, or has not risen or is not in the oven yet. */
  readonly dish?: string
  /** How many vessels were set in, drawn or not drawn; absent where the row does not say, and means all that were to be. */
  readonly count?: number
  /** The number is of something else than the dish or its vessels by its words: "24 biscuits". */
  readonly pieces?: true
  /** How many vessels were dropped, burnt or else lost: beside those set in, among those drawn. */
  readonly lost?: number
  /** All of it was lost, and `lost` is what the rows before leave of it, or more than any day bakes where they do not tell. */
  readonly whole?: true
  /** What is set in was in the oven before and is put back, by the row's words: “set in again, raw in the middle”. */
  readonly back?: 'again' | 'sure'
  /** What of a dish was not done, and stays in or was put back, while the others were drawn. */
  readonly left?: {readonly count: number; readonly of?: number}
  /** No row of the file: what stood in the oven was taken out, all of it, for a fire that was lit again. */
  readonly emptied?: true
  /** What is not drawn is said to be in the oven, and not only not to be done. */
  readonly still?: true
  /** It was looked at and is not done: for how many minutes more, where the row says so. */
  readonly longer?: {readonly minutes?: number}
  /** It is `out` to be filled, its crust baked blind, or `in` again since: not drawn all the while. */
  readonly filling?: 'out' | 'in'
  /** What stands in the reading's place of a note that is kept as words: the name of a dish, it may be. */
  readonly about?: string
  /** Minutes later (+) or earlier (−) than planned that a dish was done. */
  readonly off?: number
  /** Minutes a door stood open. */
  readonly open?: number
  /** From when it stood open, minutes after midnight of the log's date, where the row says so; else from the row's time. */
  readonly openFrom?: number
  /** What a note says of a fire that is to be lit again. */
  readonly again?: FireToCome
  /** What a note says was done to a fire that was lit again. */
  readonly refired?: 'lit' | 'raked' | 'wood'
  readonly text: string
  readonly note: string
}

/** A fire that was lit again later in the day, times in minutes after midnight of the log's date. */
export interface FurtherFire {
  readonly lit: number
  /** Null while it burns, or where the log does not tell. */
  readonly raked: number | null
  /** kg, where it was weighed. */
  readonly wood: number | null
}

/** One firing as logged. */
export interface FiringLog {
  readonly date: string
  /** Minutes after midnight of the date. */
  readonly lit: number | null
  readonly raked: number | null
  /** kg, where it was weighed. */
  readonly wood: number | null
  /** Fires lit again later in the day; absent where the log tells of none. */
  readonly further?: readonly FurtherFire[]
  readonly rows: readonly LogRow[]
  /** The readings against minutes from lighting. */
  readonly readings: readonly Reading[]
  /** The door's openings, minutes from lighting. */
  readonly doors: readonly OvenEvent[]
}

export interface LogOptions {
  /** IANA zone of the oven; without one no clock changes. */
  readonly zone?: string | null
  /** The present, so that readings in the future can be refused. */
  readonly now?: {readonly date: string; readonly minutes: number}
  /** The day's dishes, as their receipts' files are called: rows of any other are told. */
  readonly dishes?: readonly string[]
  /** The oven, where it is known: more wood than can burn in it is refused. */
  readonly oven?: OvenSpec | null
}

/** A date in front matter, year-month-day. */
export const dateField = (example: string): z.ZodType<string, unknown> =>
  quantity((text) => {
    try {
      if (/^\d{4}-\d{2}-\d{2}$/.test(text) && Temporal.PlainDate.from(text, {overflow: 'reject'})) return {ok: true, value: text}
    } catch {
      // A date that no calendar has.
    }
    return {ok: false, reason: 'this is not a date', suggest: `write year-month-day, such as ${example}`}
  })

const logSchema = z.strictObject({
  date: dateField('2027-06-12'),
  lit: quantity(parseClock).optional(),
  raked: quantity(parseClock).optional(),
  wood: quantity(parseMass).optional(),
})

export const markdown = unified().use(remarkParse).use(remarkFrontmatter).use(remarkGfm)

/** Longest log still of one firing, min: four days. */
const LONGEST = 4 * 1440
/** A time this much earlier than the row above belongs to the next day, min. */
const BACKWARDS = 240
/** Six in the evening, minutes after midnight. */
const EVENING = 1080

/** True minutes between two clock times of a date, with the change of clocks where a zone is known. */
export function elapsedMinutes(date: string, from: number, to: number, zone?: string | null): number {
  if (!zone) return to - from
  const start = Temporal.PlainDate.from(date)
  const at = (minutes: number): number => {
    const days = Math.floor(minutes / 1440)
    const rest = minutes - days * 1440
    const time = Temporal.PlainTime.from({hour: Math.floor(rest / 60), minute: Math.floor(rest % 60)})
    return start.add({days}).toZonedDateTime({timeZone: zone, plainTime: time}).epochMilliseconds / 60000
  }
  return Math.round(at(to) - at(from))
}

const heads = logHeads
  .flatMap(({column, words}) => words.map((text) => ({column, text})))
  .sort((a, b) => b.text.length - a.text.length)

/** Which column each head of a table is of: by the longest words of the lexicon that it begins with; each column is the first of its name. */
function headed(table: Table): Partial<Record<LogHead['column'], number>> {
  const found: Partial<Record<LogHead['column'], number>> = {}
  for (const [i, cell] of (table.children[0]?.children ?? []).entries()) {
    const title = textOf(cell).trim().toLowerCase()
    const head = heads.find(({text}) => title.startsWith(text) && !/^\p{L}/u.test(title.slice(text.length)))
    if (head) found[head.column] ??= i
  }
  return found
}

/** Columns without which a table of a log is not read. */
const NEEDED = ['time', 'reading', 'value'] as const

/** The columns of a log's table; null where it lacks one, or is a table of something else. */
export function columns(table: Table): {time: number; reading: number; value: number; note: number} | null {
  const {time, reading, value, note = -1} = headed(table)
  return time === undefined || reading === undefined || value === undefined ? null : {time, reading, value, note}
}

/** The columns that a table of a log lacks; none of a table of something else, whose heads are no log's and whose rows tell of no time. */
function lacking(table: Table): readonly string[] {
  const found = headed(table)
  const timed = table.children.slice(1).some((row) => row.children.some((cell) => parseClock(textOf(cell)).ok))
  return Object.keys(found).length > 0 || timed ? NEEDED.filter((column) => found[column] === undefined) : []
}

/**
 * Read a firing's log.
 *
 * @param source the file as read
 * @param file its name, for messages
 * @returns the log, or null where its front matter cannot be read, and messages (rules of `readFrontMatter`, and `log-date`, `log-wood`,
 * `log-table`, `log-time`, `log-reading`, `log-future`, `log-scale`, `log-midnight`, `log-order`, `log-dish`); rows that cannot be used are reported and carried as notes
 */
export function readLog(
  source: string,
  file: string,
  options: LogOptions = {},
): {log: FiringLog | null; messages: readonly Message[]} {
  const place = lineIndex(source)
  const front = readFrontMatter(source, file, logSchema)
  const messages: Message[] = [...front.messages]
  const say = (offset: number, severity: Message['severity'], rule: string, reason: string, suggest: string): void => {
    messages.push({file, ...place(offset), severity, rule, reason, suggest})
  }
  if (!front.present && source.trim()) {
    say(
      0,
      'error',
      'log-front-matter',
      'a log begins with front matter, and this file has none',
      'begin with ---, then date: and lit:, then ---',
    )
  }
  const value = front.value
  if (!value) return {log: null, messages}
  const {date} = value
  const lit = value.lit ?? null
  let raked = value.raked ?? null
  if (lit !== null && raked !== null && raked < lit) {
    if (lit - raked > BACKWARDS) raked += 1440
    else say(front.at('raked'), 'error', 'log-order', 'the coals were raked before the fire was lit', 'check “lit” and “raked”')
  }
  const burned = lit === null || raked === null ? null : raked - lit
  if (burned !== null && burned > BURNS.most)
    say(
      front.at('raked'),
      'error',
      'log-order',
      `the coals were raked ${writeDuration(burned)} after the fire was lit`,
      'check “lit” and “raked”, and am and pm; write “evening before 11 pm” of a fire lit in the evening before',
    )
  const named = /(\d{4}-\d{2}-\d{2})\.md$/.exec(file)?.[1]
  if (named !== undefined && named !== date)
    say(
      front.at('date'),
      'error',
      'log-date',
      `the file is the log of ${named} by its name, and this date is ${date}`,
      `write “date: ${named}”, or call the file ${date}.md`,
    )
  const wood = value.wood ?? null
  const most = options.oven ? mostWood(options.oven, burned ?? BURNS.most) : Number.POSITIVE_INFINITY
  if (wood !== null && wood <= 0)
    say(
      front.at('wood'),
      'error',
      'log-wood',
      'no fire burns without wood',
      'write what was weighed, such as “22 kg”, or leave the line out',
    )
  else if (wood !== null && wood > most)
    say(
      front.at('wood'),
      'error',
      'log-wood',
      `${Math.round(wood)} kg of wood cannot have burned in this oven: its mouth feeds ${Math.round(most)} kg with air at the very most`,
      'check the figure and its unit, or leave the line out',
    )
  const rows: LogRow[] = []
  const fireNotes: FireNote[] = []
  // A fire lit in the evening is read after midnight; one lit in the morning may have notes from the small hours before it.
  let previous = lit !== null && lit >= EVENING ? lit : Number.NEGATIVE_INFINITY
  let nextDays = 0
  for (const table of markdown.parse(source).children) {
    if (table.type !== 'table') {
      for (const {offset, text} of loneEntries(source, table))
        say(
          offset,
          'warning',
          'log-line',
          `“${text}” stands in no table, so it is not read`,
          'write it as a row of the table: time, reading, value, note; or leave it to the command `note`',
        )
      continue
    }
    const where = columns(table)
    if (!where) {
      const lacks = lacking(table)
      if (lacks.length > 0)
        say(
          table.children[0]?.children[0]?.children[0]?.position?.start.offset ?? table.position?.start.offset ?? 0,
          'warning',
          'log-table',
          `this table has no column ${lacks.map((column) => `“${column}”`).join(' and ')}, so none of it is read`,
          'head its columns time, reading, value, note',
        )
      continue
    }
    for (const row of table.children.slice(1)) {
      const cell = (i: number): string => (i < 0 || !row.children[i] ? '' : textOf(row.children[i]).trim())
      const offset = (i: number): number => (row.children[i]?.children[0] ?? row.children[i] ?? row).position?.start.offset ?? 0
      const [time, reading, text, note] = [cell(where.time), cell(where.reading), cell(where.value), cell(where.note)]
      if (!time && !reading && !text && !note) continue
      const line = place(row.position?.start.offset ?? 0).line
      const clock = parseClock(time)
      if (!clock.ok) {
        say(offset(where.time), 'warning', 'log-time', clock.reason, clock.suggest)
        continue
      }
      const dated = isDated(time)
      let at = clock.value
      if (!dated) {
        at += nextDays * 1440
        if (at < previous - BACKWARDS) {
          nextDays++
          at += 1440
          say(
            offset(where.time),
            at - previous > NIGHT ? 'warning' : 'info',
            'log-midnight',
            `“${time}” stands below a later time, so it is taken as the next day’s`,
            `write “next day ${time}” if that is so; move the row up if not`,
          )
        }
      } else nextDays = Math.max(0, Math.floor(at / 1440))
      previous = at
      const elapsed = lit === null ? null : elapsedMinutes(date, lit, at, options.zone)
      const basis = {line, at, elapsed, text, note}
      if (options.now && isFuture(date, at, options.now)) {
        say(offset(where.time), 'error', 'log-future', `“${time}” has not come yet`, 'write the time at which it was read')
        rows.push({...basis, what: 'note'})
        continue
      }
      if (elapsed !== null && elapsed > LONGEST) {
        say(
          offset(where.time),
          'warning',
          'log-time',
          `this is ${Math.round(elapsed / 1440)} days after the fire was lit`,
          'begin a new log for a new firing',
        )
        rows.push({...basis, what: 'note'})
        continue
      }
      const words = /^note$/i.test(reading) ? text : `${reading} ${text}`
      const told = fireNote(words, note)
      const meant = told ? null : meantOfFire(words)
      const door = isDoor(reading) ? doorTold(text, at) : null
      if (door) {
        if (door.unclear) {
          const {reason, suggest} = unclearDoor(text)
          say(offset(where.value), 'warning', 'log-reading', reason, suggest)
        }
        rows.push({...basis, what: 'door', open: door.open, ...(door.from === null ? {} : {openFrom: door.from})})
        continue
      }
      const event = told || meant ? null : dishEvent(reading, text, note)
      if (lit !== null && at < lit) {
        const early = beforeFire(time, at, lit, event?.what ?? (readingKind(reading) ? 'reading' : 'note'))
        if (early) say(offset(where.time), early.severity, 'log-order', early.reason, early.suggest)
      }
      if (event?.what === 'set in' && lit !== null && raked !== null && at >= lit && at < raked)
        say(
          offset(where.time),
          'warning',
          'log-order',
          `“${time}” is before the coals were raked out, and something is set in`,
          'check the time, and “raked” in the front matter',
        )
      if (event) {
        const filled = event.what === 'set in' && isFilledSince(rows, event.dish, at)
        rows.push({
          ...basis,
          ...event,
          ...(filled ? {what: 'not drawn' as const, still: true as const, filling: 'in' as const} : {}),
          ...(event.whole && event.what === 'lost' ? leftOf(rows, event.dish) : {}),
        })
        if (event.dish !== undefined && options.dishes !== undefined && !isDish(event.dish, options.dishes))
          say(
            offset(where.reading),
            'warning',
            'log-dish',
            `“${reading}” is no dish of this day, so this row tells of none`,
            `write ${dishesLike(event.dish, options.dishes)}`,
          )
        continue
      }
      const kind = readingKind(reading)
      if (!kind) {
        const isNote = /^note$/i.test(reading)
        const alone = told ? null : fireToCome(words, at)
        // A time or a length may stand in the note beside it; else that is a remark.
        const beside = alone && note !== '' ? fireToCome(`${words} ${note}`, at) : null
        const toCome = beside?.ok ? beside : alone
        if (told) fireNotes.push({...told, at, offset: offset(where.time)})
        if (meant && !toCome)
          say(
            offset(isNote ? where.value : where.reading),
            'warning',
            'log-reading',
            `“${words.trim()}” is kept as words, and tells of no fire`,
            meantWell(meant, at),
          )
        const slip = told || meant || toCome || isNote ? null : deedSlip(reading, text, options.dishes)
        if (slip) say(offset(text === '' ? where.reading : where.value), 'warning', 'log-reading', slip.reason, slip.suggest)
        if (toCome && !toCome.ok)
          say(offset(isNote ? where.value : where.reading), 'warning', 'log-reading', toCome.reason, toCome.suggest)
        rows.push({
          ...basis,
          what: 'note',
          ...(isNote ? {} : {about: reading}),
          ...(toCome?.ok ? {again: toCome.fire} : {}),
          ...(told ? {refired: told.what} : {}),
        })
        continue
      }
      const parsed = parseReading(`${kind} ${text}`)
      if (!parsed.ok) {
        say(offset(where.value), 'warning', 'log-reading', parsed.reason, parsed.suggest)
        rows.push({...basis, what: 'note'})
        continue
      }
      if (parsed.doubt) say(offset(where.value), 'warning', 'log-scale', parsed.doubt.reason, parsed.doubt.suggest)
      rows.push({...basis, what: 'reading', kind, value: parsed.value})
    }
  }
  const readings = rows.flatMap((r): Reading[] =>
    r.what === 'reading' && r.kind && r.value !== undefined && r.elapsed !== null && r.elapsed >= 0
      ? [{minutes: r.elapsed, kind: r.kind, value: r.value, ...(r.note ? {note: r.note} : {})}]
      : [],
  )
  const doors = rows.flatMap((r): OvenEvent[] => {
    const minutes = r.elapsed === null ? -1 : r.elapsed + (r.openFrom ?? r.at) - r.at
    return r.what === 'door' && minutes >= 0 ? [{minutes, kind: 'door', open: r.open ?? LOOKED_IN}] : []
  })
  const further = furtherFires(fireNotes, {lit, raked}, (one, reason, suggest) =>
    say(one.offset, 'warning', 'log-order', reason, suggest),
  )
  const again = further.length > 0 ? {further} : {}
  return {log: {date, lit, raked, wood, ...again, rows, readings, doors}, messages}
}

/** What is to be said of a row from before the fire was lit; null for what may well be done then. */
function beforeFire(
  time: string,
  at: number,
  lit: number,
  what: LogRow['what'],
): {readonly severity: Message['severity']; readonly reason: string; readonly suggest: string} | null {
  const read = readClock(time)
  const bare = read.ok && read.value.bare && at + 720 >= lit
  const suggest = bare ? `write “${clockText(at + 720)}” if that is meant` : 'check the time, and “lit” in the front matter'
  switch (what) {
    case 'set in':
    case 'drawn':
    case 'lost':
      return {severity: 'warning', reason: `“${time}” is before the fire was lit, when nothing is in the oven`, suggest}
    case 'reading':
      return {
        severity: bare ? 'warning' : 'info',
        reason: `“${time}” is before the fire was lit, so the plan takes nothing from this reading`,
        suggest,
      }
    case 'mixed':
    case 'shaped':
    case 'not risen':
      return bare
        ? {severity: 'info', reason: `“${time}” is taken as a time of the morning, before the fire was lit`, suggest}
        : null
    default:
      return null
  }
}

/** “lit again”, “raked again” or “wood again 12 kg” of a row: what was done to a later fire, and when. */
interface FireNote {
  readonly what: 'lit' | 'raked' | 'wood'
  readonly at: number
  readonly wood: number | null
  readonly offset: number
}

/** A row's words as a note of a later fire; null where they are none. */
export function fireNote(words: string, note: string): Pick<FireNote, 'what' | 'wood'> | null {
  const deed = /^(?:(?:the )?fire )?(lit|raked|wood)(?: out)?(?: the (?:fire|coals|oven))?(?: out)? again\b:? ?(.*)$/i.exec(
    words.trim(),
  )
  if (!deed) return refiredIn(words)
  const mass = [deed[2]!, note].map((text) => parseMass(text.replace(/^[\s,]+/, '')))
  return {what: deed[1]!.toLowerCase() as FireNote['what'], wood: mass.find((one) => one.ok)?.value ?? null}
}

const refired = (['lit', 'raked'] as const).flatMap((what) => noteWordsOf(`${what} again`).map((words) => ({what, words})))

/** The same in German. */
function refiredIn(words: string): Pick<FireNote, 'what' | 'wood'> | null {
  const said = mainOf(words.trim()).toLowerCase()
  const found = refired.find((one) => one.words === said)
  return found ? {what: found.what, wood: null} : null
}

/** True where a note's words tell of a fire that was lit again, or is to be. */
export function tellsOfFire(words: string, at: number): boolean {
  return fireNote(words, '') !== null || fireToCome(words, at)?.ok === true
}

/** Minutes between two rows, the second on the next day, above which it is rather the order of the rows that is wrong. Common practice, no source. */
const NIGHT = 12 * 60

/** Letters by which a note may miss what is said of a later fire. */
const SLIP = 2
/** Words that may stand behind what is said to have been done, or to be done: a weight; a time, and how long. */
const BEHIND_DEED = 2
const BEHIND_FIRE = 6

/** What is said of a later fire that a row's words miss by a slip of the pen; null where they are nothing like it. */
function meantOfFire(words: string): string | null {
  const all = words
    .trim()
    .toLowerCase()
    .split(/[\s,:]+/)
  const told = all[0] === 'the' ? all.slice(1) : all
  const deed = told[0] === 'fire' && /^(?:lit|raked|wood)$/.test(told[1] ?? '') ? told.slice(1) : told
  const [first = '', second = '', ...rest] = deed.filter((word, i) => i !== 1 || word !== 'out')
  // Two letters that have changed places are two slips; "late again" and "wood rain" are none.
  const near = distance(second, 'again') <= SLIP && second.startsWith('a')
  const own = ['lit', 'raked', 'wood', 'fire', 'light'].find((one) => near && one[0] === first[0] && distance(first, one) < SLIP)
  const behind = own === 'fire' || own === 'light' ? BEHIND_FIRE : BEHIND_DEED
  return own && rest.length <= behind ? [own, 'again', ...rest].join(' ') : null
}

/** What to write instead of a slip: what was meant, where it can be read so. */
function meantWell(meant: string, at: number): string {
  const read = fireToCome(meant, at)
  return read && !read.ok ? read.suggest : `write “${meant}” if that is meant`
}

/**
 * The later fires that rows tell of, by the clock whatever the order of the rows. A fire lit again while the one before it is not raked is
 * that one put right, and so is a second raking or weight.
 *
 * @param wrong Told of each note that cannot be.
 */
function furtherFires(
  notes: readonly FireNote[],
  {lit, raked}: Pick<FiringLog, 'lit' | 'raked'>,
  wrong: (note: FireNote, reason: string, suggest: string) => void,
): FurtherFire[] {
  const fires: FurtherFire[] = []
  const order = ['lit', 'raked', 'wood']
  const sorted = [...notes].sort((a, b) => a.at - b.at || order.indexOf(a.what) - order.indexOf(b.what))
  for (const note of sorted) {
    const {what, at, wood} = note
    const last = fires.at(-1)
    if (what === 'lit') {
      const least = raked ?? lit
      if (least !== null && at <= least)
        wrong(
          note,
          raked === null ? 'lit again before the fire was lit' : 'lit again before the coals of the first fire were raked out',
          'check the time, and “lit” and “raked” in the front matter',
        )
      else if (last && last.raked === null) fires[fires.length - 1] = {...last, lit: at, wood: wood ?? last.wood}
      else fires.push({lit: at, raked: null, wood})
    } else if (!last)
      wrong(
        note,
        `“${what} again”, and the log tells of no fire lit again before`,
        'note when it was lit, such as “12:05 pm lit again”',
      )
    else if (what === 'raked' && (at <= last.lit || at > last.lit + BURNS.most))
      wrong(note, `raked again ${Math.round(at - last.lit)} min after it was lit again`, 'check both times')
    else fires[fires.length - 1] = {...last, ...(what === 'raked' ? {raked: at} : {}), wood: wood ?? last.wood}
  }
  return fires
}

/** Lines of text that begin with a time of day, as a row of the table does: meant to be read, and not. */
function loneEntries(source: string, node: RootContent): {readonly offset: number; readonly text: string}[] {
  if (node.type === 'list') return node.children.flatMap((item) => item.children.flatMap((child) => loneEntries(source, child)))
  if (node.type !== 'paragraph' || !node.position) return []
  const {start, end} = node.position
  let offset = start.offset!
  return source
    .slice(offset, end.offset)
    .split('\n')
    .flatMap((line) => {
      const at = offset + line.length - line.trimStart().length
      offset += line.length + 1
      const text = line.trim()
      const [first = '', second = '', ...more] = text.split(/\s+/)
      const timed = [`${first} ${second}`, first].find((clock) => /[:.]\d|[ap]m?\b|noon|uhr/i.test(clock) && parseClock(clock).ok)
      const said = timed === undefined ? 0 : more.length + (timed === first ? 1 : 0)
      return said > 0 ? [{offset: at, text}] : []
    })
}

function isFuture(date: string, at: number, now: {date: string; minutes: number}): boolean {
  const days = Temporal.PlainDate.from(date).until(Temporal.PlainDate.from(now.date), {largestUnit: 'days'}).days
  return at > days * 1440 + now.minutes + 1
}

/** How many vessels of a dish the rows tell to be in the oven yet, for one of them that says that all were lost; nothing where they do not tell. */
function leftOf(rows: readonly LogRow[], dish: string | undefined): {readonly lost?: number} {
  let left = 0
  for (const row of rows) {
    if (row.dish !== dish || !/^(?:set in|drawn|lost)$/.test(row.what)) continue
    if (row.what === 'lost') left -= row.lost ?? 0
    else if (row.count === undefined) return {}
    else left += row.what === 'set in' ? row.count : -row.count
  }
  return left > 0 ? {lost: left} : {}
}

/** A dish as it is spoken of in the form of its receipt's file name: "Mutton pies" is mutton-pies. */
export const stemOf = (words: string): string => words.trim().toLowerCase().replace(/\s+/g, '-')

/** Whether it was set in or drawn: all else is done to a dough. */
export const isMoved = (done: {readonly deed: Deed} | null): boolean => done?.deed === 'set in' || done?.deed === 'drawn'

/** What a row of one of the day's dishes says that is not read, though it is near to something done; null for a remark. */
function deedSlip(
  reading: string,
  value: string,
  dishes: readonly string[] = [],
): {readonly reason: string; readonly suggest: string} | null {
  if (!isDish(stemOf(reading).replace(/\.md$/, ''), dishes)) return null
  if (value === '')
    return {
      reason: `nothing is said of “${reading}”`,
      suggest: 'write what was done: “set in”, “drawn”, “mixed”, “shaped” or “not risen”',
    }
  const meant = deedMeant(value)
  return meant === null
    ? null
    : {reason: `“${reading} ${value}” is kept as words, and tells of nothing done`, suggest: `write “${meant}” if that is meant`}
}

/** "household-bread | drawn 10 min late", "mutton-pies | set in 2 of 3"; null for anything else. */
function dishEvent(
  reading: string,
  value: string,
  note: string,
): Pick<
  LogRow,
  'what' | 'dish' | 'count' | 'pieces' | 'lost' | 'whole' | 'off' | 'back' | 'left' | 'still' | 'longer' | 'filling'
> | null {
  // "note | mixed the bread" is the note that it was written as.
  if (readingKind(reading) || /^note$/i.test(reading)) return null
  const dish = stemOf(reading).replace(/\.md$/, '')
  if (!dish) return null
  const work = deedOf(value)
  if (work?.deed === 'not drawn' && isDrawnBehind(`${value.slice(work.length)}, ${note}`)) return {what: 'drawn', dish}
  const forLonger = (): Pick<LogRow, 'longer'> => {
    const minutes = longerBy(value, note)
    return minutes === null ? {} : {longer: {minutes}}
  }
  const looked = (words: string): Pick<LogRow, 'still' | 'longer'> =>
    isStillIn(words, note) ? {still: true, ...forLonger()} : {longer: {}, ...forLonger()}
  if (work && !isMoved(work)) return {what: work.deed, dish, ...(work.deed === 'not drawn' ? looked(value) : {})}
  const loss = lostIn(value)
  if (loss === null && isWholeLoss(value)) return {what: 'lost', dish, lost: WHOLE_LOSS, whole: true}
  const words = loss?.rest ?? value
  const before = countAt(words)
  // "4 pies set in": what is counted may be named.
  const counted = before && /^ (?:[a-z]+ )?/i.exec(before.rest)
  const named = before && counted ? [before.rest.slice(1), before.rest.slice(counted[0].length)] : []
  const after = named.find((rest) => isMoved(deedOf(rest)))
  const waits = named.find((rest) => deedOf(rest)?.deed === 'not drawn')
  if (before && waits !== undefined && !isDrawnBehind(`${waits}, ${note}`))
    return {what: 'not drawn', dish, count: before.count, ...looked(waits)}
  const deed = after ?? words
  const done = deedOf(deed)
  if (!done || !isMoved(done)) return loss && loss.at === 0 && loss.rest === '' ? {what: 'lost', dish, lost: loss.lost} : null
  const behind = deed.slice(done.length)
  const more = after === undefined ? countAt(behind) : null
  const count = (after === undefined ? more?.count : before?.count) ?? countOnly(note)
  // In "9 set in" nothing stands between the number and what was done.
  const thing = after === undefined ? (more?.rest ?? '') : after === named[0] ? '' : counted![0]
  const [of = ''] = /^\p{L}+/u.exec(thing.trim()) ?? []
  const lost = loss?.lost ?? lostIn(note)?.lost
  const drawn = done.deed === 'drawn'
  const whole =
    lost === undefined &&
    (drawn
      ? isDrawnLost(note) || isDrawnLost(more?.rest ?? behind)
      : isAllLost(note) || isAllLost(value.slice(value.search(/[,;]/) + 1).trim()))
  const numbers = {
    ...(count === null ? {} : {count}),
    ...(of === '' || isThing(stemOf(of)) || resemblesDish(stemOf(of), [dish]) ? {} : {pieces: true as const}),
    ...(lost === undefined ? {} : {lost}),
    ...(whole ? {lost: count ?? WHOLE_LOSS, whole: true as const} : {}),
  }
  if (!drawn) {
    const back = backIn(value, note)
    return {what: 'set in', dish, ...numbers, ...(back === null ? {} : {back, ...forLonger()})}
  }
  if (isPutBack(behind, note))
    return {what: 'not drawn', dish, ...(count === null ? {} : {count}), still: true, longer: {}, ...forLonger()}
  if (lost === undefined && !whole && isToFill(value, note))
    return {what: 'not drawn', dish, ...numbers, still: true, filling: 'out'}
  const left = leftIn(more?.rest ?? behind, note)
  // Behind a number the words may name what was drawn: how late it was begins with the next number.
  const late = more ? more.rest.slice(Math.max(0, more.rest.search(/\b(?:about|some|half|an? |\d)/i))) : behind
  const rest = late
    .replace(/^[\s,]+/, '')
    .split(/[,;(]/, 1)[0]!
    .replace(/^(?:about|some)\s+/i, '')
    .replace(/ (?:and(?! (?:an? )?(?:half|quarter)\b)|but) .*/i, '')
    .trimEnd()
  const [side = ''] = /(?:too late|too early|late|later|early|earlier|over|under)$/i.exec(rest) ?? []
  const by = rest.slice(0, rest.length - side.length).trimEnd()
  const size = by === '' ? null : readDuration(by.replace(/too$/, '').trimEnd())
  const sign = /late|over/i.test(side) ? 1 : /earl|under/i.test(side) ? -1 : 0
  return {
    what: 'drawn',
    dish,
    ...numbers,
    ...(left === null ? {} : {left, longer: {}, ...forLonger()}),
    ...(size?.ok && sign !== 0 ? {off: (sign * (size.value.low + size.value.high)) / 2} : {}),
  }
}
