import {Temporal} from 'temporal-polyfill'
import {parseClock, parseMass} from '../measure/quantity.js'
import {fireToCome} from './fire-again.js'
import {fireNote, isMoved, type LogOptions, stemOf} from './log.js'
import {dishNotes, lostIn, nameAndCount} from './log-counts.js'
import {deedBehind, deedMeant, deedOf, lettersOff, lossEnd, moveAhead, shortMove} from './log-deeds.js'
import {dishesLike, isDish, resemblesDish} from './log-dishes.js'
import {clockText} from './note-clock.js'
import {DAY_KINDS, parseReading, readingKind} from './signs.js'
import type {ReadingKind} from './types.js'

/** Notes as they are spoken or typed during the day, on their way into the log. */

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
