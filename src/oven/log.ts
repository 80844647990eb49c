import {distance} from 'fastest-levenshtein'
import type {RootContent, Table} from 'mdast'
import {toString as textOf} from 'mdast-util-to-string'
import remarkFrontmatter from 'remark-frontmatter'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import {Temporal} from 'temporal-polyfill'
import {unified} from 'unified'
import * as z from 'zod'
import {parseClock, parseDuration, parseMass} from '../measure/quantity.js'
import {frontMatterSpan, quantity, readFrontMatter} from '../receipt/front-matter.js'
import {lineIndex} from '../receipt/position.js'
import type {Message} from '../receipt/types.js'
import {BURNS, type FireToCome, fireToCome, isDated} from './fire-again.js'
import {
  countAt,
  countOnly,
  dishNotes,
  isAllLost,
  isDrawnLost,
  isWholeLoss,
  lostIn,
  nameAndCount,
  WHOLE_LOSS,
} from './log-counts.js'
import {type Deed, deedBehind, deedMeant, deedOf, lettersOff, lossEnd, moveAhead, shortMove} from './log-deeds.js'
import {dishesLike, isDish, resemblesDish} from './log-dishes.js'
import {DAY_KINDS, parseReading, readingKind} from './signs.js'
import type {OvenEvent, Reading, ReadingKind} from './types.js'

/**
 * The log of a firing: `firings/DATE.md`. Reading it never changes it; appending to it inserts one line and leaves every other byte as
 * it was.
 */

/** A row of the log's table. Times are minutes after midnight of the log's date, as the clock shows them. */
export interface LogRow {
  readonly line: number
  readonly at: number
  /** True minutes since the fire was lit, with the clocks' change where a zone is known; null where `lit` is not. */
  readonly elapsed: number | null
  readonly what: 'reading' | 'mixed' | 'shaped' | 'not risen' | 'set in' | 'drawn' | 'lost' | 'door' | 'note'
  readonly kind?: ReadingKind
  readonly value?: number | string
  /** File name of the receipt without `.md`, for what was mixed, shaped, set in or drawn, or has not risen yet. */
  readonly dish?: string
  /** How many vessels were set in or drawn; absent where the row does not say, and means all that were to be. */
  readonly count?: number
  /** How many vessels were dropped, burnt or else lost: beside those set in, among those drawn. */
  readonly lost?: number
  /** All of it was lost, and `lost` is what the rows before leave of it, or more than any day bakes where they do not tell. */
  readonly whole?: true
  /** Minutes later (+) or earlier (−) than planned that a dish was done. */
  readonly off?: number
  /** Minutes a door stood open. */
  readonly open?: number
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
}

const day = z.string().refine(
  (text) => {
    try {
      return /^\d{4}-\d{2}-\d{2}$/.test(text) && Temporal.PlainDate.from(text, {overflow: 'reject'}) !== null
    } catch {
      return false
    }
  },
  {error: 'this is not a date', params: {suggest: 'write year-month-day, such as 2027-06-12'}},
)

const logSchema = z.strictObject({
  date: day,
  lit: quantity(parseClock).optional(),
  raked: quantity(parseClock).optional(),
  wood: quantity(parseMass).optional(),
})

const markdown = unified().use(remarkParse).use(remarkFrontmatter).use(remarkGfm)

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

function columns(table: Table): {time: number; reading: number; value: number; note: number} | null {
  const titles = table.children[0]?.children.map((c) => textOf(c).trim().toLowerCase()) ?? []
  const find = (re: RegExp): number => titles.findIndex((t) => re.test(t))
  const found = {
    time: find(/^(time|when|clock)/),
    reading: find(/^(reading|what|sign)/),
    value: find(/^value|^result/),
    note: find(/^note|^remark/),
  }
  return found.time >= 0 && found.reading >= 0 && found.value >= 0 ? found : null
}

/**
 * Read a firing's log.
 *
 * @param source the file as read
 * @param file its name, for messages
 * @returns the log, or null where its front matter cannot be read, and messages (rules of `readFrontMatter`, and `log-table`, `log-time`,
 * `log-reading`, `log-future`, `log-scale`, `log-midnight`, `log-order`, `log-dish`); rows that cannot be used are reported and carried as notes
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
      const titles = table.children[0]?.children.map((c) => textOf(c).trim().toLowerCase()) ?? []
      if (titles.some((t) => /^(?:time|clock|reading|value)/.test(t)))
        say(
          table.children[0]?.children[0]?.children[0]?.position?.start.offset ?? table.position?.start.offset ?? 0,
          'warning',
          'log-table',
          'this table lacks a column “time”, “reading” or “value”, so none of it is read',
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
      const event = told || meant ? null : dishEvent(reading, text, note)
      if (event) {
        rows.push({...basis, ...event, ...(event.whole && event.what === 'lost' ? leftOf(rows, event.dish) : {})})
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
        rows.push({...basis, what: 'note', ...(toCome?.ok ? {again: toCome.fire} : {}), ...(told ? {refired: told.what} : {})})
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
  const doors = rows.flatMap((r): OvenEvent[] =>
    r.what === 'door' && r.elapsed !== null && r.elapsed >= 0 ? [{minutes: r.elapsed, kind: 'door', open: r.open ?? 2}] : [],
  )
  const further = furtherFires(fireNotes, {lit, raked}, (one, reason, suggest) =>
    say(one.offset, 'warning', 'log-order', reason, suggest),
  )
  const again = further.length > 0 ? {further} : {}
  return {log: {date, lit, raked, wood: value.wood ?? null, ...again, rows, readings, doors}, messages}
}

/** “lit again”, “raked again” or “wood again 12 kg” of a row: what was done to a later fire, and when. */
interface FireNote {
  readonly what: 'lit' | 'raked' | 'wood'
  readonly at: number
  readonly wood: number | null
  readonly offset: number
}

/** A row's words as a note of a later fire; null where they are none. */
function fireNote(words: string, note: string): Pick<FireNote, 'what' | 'wood'> | null {
  const deed = /^(?:(?:the )?fire )?(lit|raked|wood)(?: out)?(?: the (?:fire|coals|oven))?(?: out)? again\b:? ?(.*)$/i.exec(
    words.trim(),
  )
  if (!deed) return null
  const mass = [deed[2]!, note].map((text) => parseMass(text.replace(/^[\s,]+/, '')))
  return {what: deed[1]!.toLowerCase() as FireNote['what'], wood: mass.find((one) => one.ok)?.value ?? null}
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
const isMoved = (done: {readonly deed: Deed} | null): boolean => done?.deed === 'set in' || done?.deed === 'drawn'

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

/** "household-bread | drawn 10 min late", "mutton-pies | set in 2 of 3", "door | open 4 min"; null for anything else. */
function dishEvent(
  reading: string,
  value: string,
  note: string,
): Pick<LogRow, 'what' | 'dish' | 'count' | 'lost' | 'whole' | 'off' | 'open'> | null {
  if (/^door$/i.test(reading)) {
    const open = value.search(/\d/)
    const minutes = open < 0 ? null : parseDuration(value.slice(open))
    return {what: 'door', open: minutes?.ok ? minutes.value.high : 2}
  }
  // "note | mixed the bread" is the note that it was written as.
  if (readingKind(reading) || /^note$/i.test(reading)) return null
  const dish = stemOf(reading).replace(/\.md$/, '')
  if (!dish) return null
  const work = deedOf(value)
  if (work && !isMoved(work)) return {what: work.deed, dish}
  const loss = lostIn(value)
  if (loss === null && isWholeLoss(value)) return {what: 'lost', dish, lost: WHOLE_LOSS, whole: true}
  const words = loss?.rest ?? value
  const before = countAt(words)
  // "4 pies set in": what is counted may be named.
  const counted = before && /^ (?:[a-z]+ )?/i.exec(before.rest)
  const named = before && counted ? [before.rest.slice(1), before.rest.slice(counted[0].length)] : []
  const after = named.find((rest) => isMoved(deedOf(rest)))
  const deed = after ?? words
  const done = deedOf(deed)
  if (!done || !isMoved(done)) return loss && loss.at === 0 && loss.rest === '' ? {what: 'lost', dish, lost: loss.lost} : null
  const behind = deed.slice(done.length)
  const more = after === undefined ? countAt(behind) : null
  const count = (after === undefined ? more?.count : before?.count) ?? countOnly(note)
  const lost = loss?.lost ?? lostIn(note)?.lost
  const drawn = done.deed === 'drawn'
  const whole =
    lost === undefined &&
    (drawn
      ? isDrawnLost(note) || isDrawnLost(more?.rest ?? behind)
      : isAllLost(note) || isAllLost(value.slice(value.search(/[,;]/) + 1).trim()))
  const numbers = {
    ...(count === null ? {} : {count}),
    ...(lost === undefined ? {} : {lost}),
    ...(whole ? {lost: count ?? WHOLE_LOSS, whole: true as const} : {}),
  }
  if (!drawn) return {what: 'set in', dish, ...numbers}
  // Behind a number the words may name what was drawn: how late it was begins with the next number.
  const late = more ? more.rest.slice(Math.max(0, more.rest.search(/\b(?:about|some|half|an? |\d)/i))) : behind
  const rest = late
    .replace(/^[\s,]+/, '')
    .split(/[,;(]/, 1)[0]!
    .replace(/^(?:about|some)\s+/i, '')
    .replace(/ (?:and|but) .*/i, '')
    .trimEnd()
  const [side = ''] = /(?:too late|too early|late|later|early|earlier|over|under)$/i.exec(rest) ?? []
  const by = rest.slice(0, rest.length - side.length).trimEnd()
  const size = by === '' ? null : parseDuration(by.replace(/too$/, '').trimEnd())
  const sign = /late|over/i.test(side) ? 1 : /earl|under/i.test(side) ? -1 : 0
  return {
    what: 'drawn',
    dish,
    ...numbers,
    ...(size?.ok && sign !== 0 ? {off: (sign * (size.value.low + size.value.high)) / 2} : {}),
  }
}

/** Something to put into the log. */
export type LogEntry =
  | {
      readonly what: 'row'
      /** Minutes after midnight of the log's date. */
      readonly at: number
      readonly time: string
      readonly reading: string
      readonly value: string
      readonly note: string
      /** Asked about; the entry stands as written. */
      readonly doubt?: {readonly reason: string; readonly suggest: string}
      /** °C, count or sign of a reading. */
      readonly read?: {readonly kind: ReadingKind; readonly value: number | string}
    }
  | {readonly what: 'field'; readonly key: 'lit' | 'raked' | 'wood'; readonly value: string}

/** What is known when a note is made. */
export interface NoteOptions extends Pick<LogOptions, 'now' | 'dishes'> {
  readonly date: string
}

/** The entry, or what is wrong with the words. */
export type ParsedNote =
  | {readonly ok: true; readonly entry: LogEntry}
  | {readonly ok: false; readonly reason: string; readonly suggest: string}

/** "2:15 pm" of minutes after midnight, with "next day" before it where it is. */
export function clockText(minutes: number): string {
  const days = Math.floor(minutes / 1440)
  const m = Math.round(minutes - days * 1440)
  const hour = Math.floor(m / 60)
  const text = `${hour % 12 === 0 ? 12 : hour % 12}:${String(m % 60).padStart(2, '0')} ${hour < 12 ? 'am' : 'pm'}`
  return days > 0 ? `next day ${text}` : days < 0 ? `evening before ${text}` : text
}

/**
 * Read a note as spoken: "2:15 pm arm 18", "vault 320 °C, at the crown", "household-bread drawn 10 min late",
 * "mutton pies 4 set in", "apple pies: 1 dropped", "lit 6:10 am", "wood 22 kg", "12:05 pm lit again".
 *
 * @param text the words
 * @param options `date` of the log; `now`, the time where none is given, and the latest that can be noted; `dishes` of the day, where
 * they are known: "gingerbread out" is then read too, and a name that is none of them is doubted
 * @returns an entry for `appendToLog`
 */
export function parseNote(text: string, options: NoteOptions): ParsedNote {
  const example = 'write a time and a reading, such as “2:15 pm arm 18” or “9 am floor 300 °C”'
  const words = text.replace(/\s+/g, ' ').trim()
  if (!words) return {ok: false, reason: 'the note is empty', suggest: example}
  if (words.length > 300)
    return {ok: false, reason: 'the note is too long for a row of the log', suggest: 'write the story below the table by hand'}
  const nowAt = options.now ? minutesNow(options.date, options.now) : null
  const notYet = (time: string): ParsedNote => ({
    ok: false,
    reason: `“${time}” has not come yet`,
    suggest: 'write the time at which it was read',
  })
  // "lit again 12:05 pm": the time stands first in a row.
  const again = /^((?:lit|raked(?: out)?) again),? (?:at )?(\S.*)$/i.exec(words)
  if (again && parseClock(again[2]!).ok) return parseNote(`${again[2]!} ${again[1]!}`, options)
  const field = /^(lit|raked|wood):? (?!again\b)(.+)$/i.exec(words) ?? null
  if (field) {
    const key = field[1]!.toLowerCase() as 'lit' | 'raked' | 'wood'
    const parsed = key === 'wood' ? parseMass(field[2]!) : parseClock(field[2]!)
    if (!parsed.ok) return parsed
    if (key !== 'wood' && nowAt !== null && parsed.value > nowAt + 1) return notYet(field[2]!)
    return {ok: true, entry: {what: 'field', key, value: field[2]!}}
  }
  const parts = words.split(' ')
  // Long before its day the present is no time of it.
  let at = nowAt === null || nowAt < -1440 ? null : nowAt
  let time = at === null ? '' : clockText(at)
  let rest = words
  let ambiguous: {reason: string; suggest: string} | null = null
  for (let n = Math.min(5, parts.length); n > 0; n--) {
    const head = parts.slice(0, n).join(' ').replace(/,$/, '')
    const clock = parseClock(head)
    if (clock.ok) {
      at = clock.value
      time = head
      rest = parts.slice(n).join(' ')
      ambiguous = null
      break
    }
    if (n === 1 && /^\d{1,2}$/.test(head)) ambiguous = clock
  }
  const planned = fireToCome(rest, at ?? Number.NEGATIVE_INFINITY)
  if (planned && !planned.ok) return planned
  if (rest === words && !planned) {
    // "loaf 2 set in at 10:15": the time stands last.
    const turned = timeFirst(words)
    const read = turned === null ? null : parseNote(turned, options)
    const told = read?.ok === true && read.entry.what === 'row' && fireNote(read.entry.value, '') !== null
    if (read !== null && (!read.ok || told || read.entry.what === 'field' || read.entry.reading !== 'note')) return read
    if (/^\d{1,2}[:.h]\d{2}\b/.test(words)) {
      const clock = parseClock(parts[0]!)
      if (!clock.ok) return clock
    }
  }
  const {dishes} = options
  // "3 gingerbread burnt": three of them, and no hour.
  const counts = ambiguous !== null && (dishes?.length ?? 0) > 0 && dishNotes(mainOf(words)).some((one) => one.counted)
  if (ambiguous && !counts) return {ok: false, ...ambiguous}
  if (at === null)
    return {
      ok: false,
      reason: 'the note has no time',
      suggest: planned ? 'write when it was decided too, such as “12:30 pm fire again at 3:15 pm”' : example,
    }
  if (!rest) return {ok: false, reason: 'the note has a time and nothing else', suggest: example}
  if (nowAt !== null && at > nowAt + 1) return notYet(time)
  // A bare "lit" or "raked" with the time before it.
  const done = /^(lit|raked)(?: out)?$/i.exec(rest)
  if (done) return {ok: true, entry: {what: 'field', key: done[1]!.toLowerCase() as 'lit' | 'raked', value: time}}
  // The words have single blanks between them by now.
  const split = splitAt(rest)
  const main = mainOf(rest)
  const note = split ? rest.slice(split.index + split[0].length) : ''
  const first = main.split(' ')[0]!.replace(/[:,]$/, '')
  const base = {what: 'row', at, time} as const
  if (readingKind(first)) {
    const parsed = parseReading(main)
    if (!parsed.ok) return parsed
    return {
      ok: true,
      entry: {
        ...base,
        reading: parsed.kind,
        value: parsed.text,
        note,
        read: {kind: parsed.kind, value: parsed.value},
        ...(parsed.doubt ? {doubt: parsed.doubt} : {}),
      },
    }
  }
  const door = /^door(?: was| stood)? (open.*|shut.*)$/i.exec(main)
  if (door) return {ok: true, entry: {...base, reading: 'door', value: door[1]!, note}}
  const dish = deedBehind(main)
  const {name, count} = nameAndCount(dish ? main.slice(0, dish.end) : '')
  const value = dish ? `${count} ${main.slice(dish.from)}`.trim() : ''
  // "Pies not set in" tells of nothing that was done: it stays in the log as the words it is.
  const row = (named: string, what: string, beside = note): ParsedNote => {
    const reading = stemOf(named)
    const strange = dishes !== undefined && dishes.length > 0 && !isDish(reading, dishes)
    const doubt = strange
      ? {reason: `“${named}” is no dish of this day`, suggest: `write ${dishesLike(reading, dishes)}`}
      : undefined
    return {ok: true, entry: {...base, reading, value: what, note: beside, ...(doubt === undefined ? {} : {doubt})}}
  }
  if (dishes !== undefined) {
    const slip = dish ? null : slipIn(main, dishes)
    if (slip !== null) {
      const doubt = {reason: `“${main}” would be kept as words, and tells of nothing done`, suggest: `write “${slip}”`}
      return {ok: true, entry: {...base, reading: 'note', value: rest, note: '', doubt}}
    }
    const told = dishNotes(main)
    const of = told.find((one) => isDish(stemOf(one.dish), dishes))
    if (of !== undefined) return row(of.dish, of.value)
    const counted = counts ? told.find((one) => one.counted) : undefined
    if (counted !== undefined) return row(counted.dish, counted.value)
  }
  if (dish && !isUndone(name) && !isNotYet(value)) return row(name, value)
  const loss = dish ? null : lostIn(main)
  const whose = loss?.rest.replace(/:$/, '') ?? ''
  if (loss && loss.at === loss.rest.length && whose !== '' && whose.split(' ').length <= DISH_WORDS && !isUndone(whose))
    return row(whose, main.slice(loss.at).replace(/^[\s:]+/, ''))
  const spoken = inOrOut(main, dishes ?? [])
  if (spoken !== null) return row(spoken.dish, spoken.value, [spoken.note, note].filter((one) => one !== '').join(', '))
  // "flor 400 C": a figure that is passed over would be missed.
  const like = /\d/.test(main) ? kindLike(first) : null
  const doubt = like
    ? {reason: `“${first}” is no reading, and would be kept as words`, suggest: `write “${like}${main.slice(first.length)}”`}
    : undefined
  return {ok: true, entry: {...base, reading: 'note', value: rest, note: '', ...(doubt ? {doubt} : {})}}
}

/** A note on one of the day's dishes with a slip in what was done to it put right; null where there is none. */
function slipIn(main: string, dishes: readonly string[]): string | null {
  const words = main.split(' ')
  for (let n = words.length - 1; n > 0; n--) {
    const [name, behind] = [words.slice(0, n).join(' '), words.slice(n).join(' ')]
    const {name: bare} = nameAndCount(name.replace(/^(?:the|\d{1,3}) /i, ''))
    const meant = isDish(stemOf(bare.replace(/:$/, '')), dishes) ? deedMeant(behind) : null
    if (meant !== null) return `${name} ${meant}`
  }
  return null
}

/** The reading that a miswritten word is nearest to; null where it is near none. */
function kindLike(word: string): string | null {
  const kinds: readonly string[] = [...DAY_KINDS, 'door']
  const off = (kind: string): number => lettersOff(word.toLowerCase(), kind)
  const best = kinds.reduce((near, kind) => (off(kind) < off(near) ? kind : near))
  return off(best) <= Math.floor(best.length / 3) ? best : null
}

const splitAt = (text: string): RegExpExecArray | null => / ?[,;] | [–—-] /.exec(text)

/** A note as far as its first comma. */
const mainOf = (text: string): string => text.slice(0, splitAt(text)?.index ?? text.length)

/** "mutton pies out brown on one side", "2 gingerbread in", "drew the custards": of one of the day's dishes; null for anything else. */
function inOrOut(main: string, dishes: readonly string[]): {dish: string; value: string; note: string} | null {
  const ahead = moveAhead(main)
  if (ahead !== null && isDish(stemOf(ahead.of), dishes)) return {dish: ahead.of, value: ahead.done, note: ''}
  const words = main.split(' ')
  for (let n = 1; n < words.length; n++) {
    const done = shortMove(words[n]!)
    if (done === null) continue
    const {name, count} = nameAndCount(words.slice(0, n).join(' ').replace(/^the /i, ''))
    const before = /^(\d{1,3}) (.+)$/.exec(name)
    const dish = before !== null && count === '' ? before[2]! : name
    const strange = !isDish(stemOf(dish), dishes)
    // "2 loaves in", "pies out" are of some dish that is not named so; "coals out" is of none.
    const counted = before !== null || count !== ''
    if (strange && (dish.split(' ').length > 2 || !(counted || resemblesDish(stemOf(dish), dishes)))) continue
    const note = words.slice(n + 1).join(' ')
    return {dish, value: `${before?.[1] ?? count} ${done}`.trim(), note}
  }
  return null
}

/** An entry in a line, as it is said back to who wrote it. */
export function entryText(entry: LogEntry): string {
  return entry.what === 'field'
    ? `${entry.key}: ${entry.value}`
    : [clockText(entry.at), entry.reading, entry.value, entry.note].filter(Boolean).join(' · ')
}

/**
 * The notes in one line that tells of several dishes: "11:40 am beans, pies and gingerbread set in" is three, "12:10 bread out, pies in" two.
 *
 * @param dishes names of the day's dishes; all that are named have to be of them
 * @returns the line alone where it tells of one thing, or of something else
 */
export function notesIn(text: string, dishes: readonly string[]): string[] {
  const words = text.replace(/\s+/g, ' ').trim()
  const parts = words.split(' ')
  let time = ''
  for (let n = Math.min(5, parts.length - 1); n > 0 && time === ''; n--) {
    const head = parts.slice(0, n).join(' ')
    if (parseClock(head.replace(/,$/, '')).ok) time = `${head} `
  }
  const rest = words.slice(time.length)
  const each = rest.split(/[,;] /).map((part) => deedsIn(part, dishes))
  const deeds = each.length > 1 && each.every((some) => some.length > 0) ? each.flat() : deedsIn(rest, dishes)
  return deeds.length > 1 ? deeds.map((deed) => `${time}${deed}`) : [text]
}

/** What was done to each of some dishes, "beans set in", "pies set in"; nothing where they are none of the day's, or nothing was done. */
function deedsIn(words: string, dishes: readonly string[]): string[] {
  const ahead = moveAhead(words)
  const after = ahead && namesOf(ahead.of, dishes)
  if (ahead && after) return after.map((name) => `${name} ${ahead.done}`)
  const behind = deedBehind(words)
  if (behind) return deedsOf(words.slice(0, behind.end), words.slice(behind.from), dishes)
  const each = words.split(' ')
  for (let n = 1; n < each.length; n++) {
    const bare = each.slice(n).map((word) => word.replace(/[,;]$/, ''))
    if (shortMove(bare[0]!) === null && lossEnd(bare, 0) === 0) continue
    const deeds = deedsOf(each.slice(0, n).join(' '), each.slice(n).join(' '), dishes)
    if (deeds.length > 0) return deeds
  }
  return []
}

/** What was done, said of each dish of a row; nothing where it is not one of dishes alone. */
const deedsOf = (row: string, done: string, dishes: readonly string[]): string[] =>
  (namesOf(row, dishes) ?? []).map((name) => `${name} ${done}`)

/** Names of dishes in a row, "pies, rye and Indian bread and 2 cakes"; null where it is none of only such. */
function namesOf(words: string, dishes: readonly string[]): string[] | null {
  const whole = nameOf(words, dishes)
  if (whole !== null) return [whole]
  for (const between of words.matchAll(/,? and |, ?| & /gi)) {
    const first = nameOf(words.slice(0, between.index), dishes)
    const more = first === null ? null : namesOf(words.slice(between.index + between[0].length), dishes)
    if (first !== null && more !== null) return [first, ...more]
  }
  return null
}

/** One dish's name, with how many of it; null where it is of none. */
function nameOf(words: string, dishes: readonly string[]): string | null {
  const name = words.trim().replace(/^the /i, '')
  return isDish(stemOf(name.replace(/^\d{1,3} /, '')), dishes) ? name : null
}

/** Words with the time of day at their end, or behind what was done, put first; null where no time stands there. */
function timeFirst(words: string): string | null {
  const parts = words.split(' ')
  for (let n = Math.min(4, parts.length - 1); n > 0; n--) {
    const tail = parts.slice(parts.length - n).join(' ')
    if (/\d/.test(tail) && parseClock(tail.replace(/^at /, '')).ok)
      return `${tail.replace(/^at /, '')} ${parts
        .slice(0, parts.length - n)
        .join(' ')
        .replace(/,? at$|,$/, '')}`
  }
  const behind = / (?:set in|in|drawn|out) (?:at )?(?=\d)/i.exec(words)
  if (behind === null) return null
  const from = behind.index + behind[0].length
  const rest = words.slice(from).split(' ')
  for (let n = Math.min(2, rest.length - 1); n > 0; n--) {
    const time = rest.slice(0, n).join(' ')
    if (parseClock(time).ok) return `${time} ${words.slice(0, from).replace(/ (?:at )?$/i, '')} ${rest.slice(n).join(' ')}`
  }
  return null
}

/** Words that a dish's name has at most before "1 dropped": more are a sentence. */
const DISH_WORDS = 4

/** Words before "set in" or "drawn", and behind it, that say it did not happen; and words that may stand between. */
const NEGATIONS = /^(?:not|never|cannot|nothing|none|neither|nobody|nicht|nie|kein|keine|.*n['’]t)$/i
const BETWEEN: ReadonlySet<string> = new Set(['yet', 'been', 'being', 'be', 'to', 'all', 'quite', 'noch', 'ganz'])
const NOT_YET = /^[:,]? (?:not yet|not at all|never|noch nicht|no$)/i

/** Whether a note says that what it names did not happen: "set in not yet". */
function isNotYet(value: string): boolean {
  const deed = deedOf(value)
  return deed !== null && isMoved(deed) && NOT_YET.test(value.slice(deed.length))
}

/** Whether the words before an event end in a negation. */
function isUndone(name: string): boolean {
  const last = name.split(' ').findLast((word) => !BETWEEN.has(word.toLowerCase()))
  return last !== undefined && NEGATIONS.test(last)
}

function minutesNow(date: string, now: {date: string; minutes: number}): number {
  return Temporal.PlainDate.from(date).until(Temporal.PlainDate.from(now.date), {largestUnit: 'days'}).days * 1440 + now.minutes
}

const HEAD = ['| time | reading | value | note |', '| --- | --- | --- | --- |']

/** A cell's text on one line, with bars escaped. */
function cellText(text: string): string {
  return text
    .replace(/[\r\n\t]+/g, ' ')
    .replace(/\|/g, '\\|')
    .trim()
}

/** What front matter states for a key, with any comment behind it; null where it has no such line, or nothing in it. */
function statedIn(yaml: string, key: string): string | null {
  for (const line of yaml.split(/[\r\n]/)) {
    if (!line.startsWith(key)) continue
    const rest = line.slice(key.length).trimStart()
    const value = rest.startsWith(':') ? rest.slice(1).trim() : ''
    if (value !== '') return value
  }
  return null
}

/** The log with the entry, or why it cannot be put there. */
export type Appended =
  | {readonly ok: true; readonly source: string}
  | {readonly ok: false; readonly reason: string; readonly suggest: string}

/**
 * Put an entry into a log. One line is inserted; every other byte stays as it was, with the file's own line ends.
 *
 * @param source the log as it stands now; empty: a new log is begun
 * @param entry from `parseNote`
 * @param options `date` of the log, for a new one
 * @returns the new text
 */
export function appendToLog(source: string, entry: LogEntry, options: {date: string}): Appended {
  const end = /\r\n/.test(source) ? '\r\n' : '\n'
  let text = source
  if (!text.trim()) text = `---\ndate: ${options.date}\n---\n\n${HEAD.join('\n')}\n`
  if (entry.what === 'field') {
    const span = frontMatterSpan(text)
    if (!span) text = `---${end}date: ${options.date}${end}---${end}${end}${text}`
    const at = frontMatterSpan(text)!
    if (!at.closed)
      return {ok: false, reason: 'the front matter of the log is never closed', suggest: 'put a line with --- after the last key'}
    const yaml = text.slice(at.start, at.end)
    const there = statedIn(yaml, entry.key)
    if (there !== null) {
      const comment = there.search(/\s#/)
      if ((comment < 0 ? there : there.slice(0, comment).trimEnd()) === entry.value) return {ok: true, source: text}
      return {
        ok: false,
        reason: `the log says already “${entry.key}: ${there}”`,
        suggest:
          entry.key === 'wood'
            ? 'change it in the file by hand if it is wrong; write “1 pm wood again 12 kg” of a second fire'
            : `change it in the file by hand if it is wrong; write “${entry.key} again ${entry.value}” of a second fire`,
      }
    }
    const line = `${entry.key}: ${cellText(entry.value)}${end}`
    return {ok: true, source: text.slice(0, at.end) + line + text.slice(at.end)}
  }
  const row = `| ${[entry.time, entry.reading, entry.value, entry.note].map(cellText).join(' | ')} |`.replace(/\|\s+\|$/, '| |')
  const tables = markdown.parse(text).children.filter((n): n is Table => n.type === 'table' && columns(n) !== null)
  const table = tables.at(-1)
  if (!table) {
    const gap = text.endsWith(`${end}${end}`) || text === '' ? '' : text.endsWith('\n') ? end : end + end
    return {ok: true, source: text + gap + HEAD.join(end) + end + row + end}
  }
  const where = columns(table)!
  const width = table.children[0]!.children.length
  const standard = where.time === 0 && where.reading === 1 && where.value === 2 && (where.note === 3 || where.note < 0)
  const cells = Array.from({length: width}, () => '')
  cells[where.time] = cellText(entry.time)
  cells[where.reading] = cellText(entry.reading)
  cells[where.value] = cellText(entry.note && where.note < 0 ? `${entry.value}, ${entry.note}` : entry.value)
  if (where.note >= 0) cells[where.note] = cellText(entry.note)
  const line = standard && width === 4 ? row : `| ${cells.join(' | ')} |`
  const at = table.position?.end.offset ?? text.length
  return {ok: true, source: `${text.slice(0, at)}${end}${line}${text.slice(at)}`}
}
