import {Temporal} from 'temporal-polyfill'
import {parseClock, parseMass, parseTemperature} from '../measure/quantity.js'
import {fireToCome} from './fire-again.js'
import {type FiringLog, fireNote, isMoved, type LogOptions, stemOf, tellsOfFire} from './log.js'
import {countsWritten, dishNotes, lostIn, nameAndCount, numberOf} from './log-counts.js'
import {deedBehind, deedMeant, deedOf, lettersOff, lossEnd, moveAhead, shortMove} from './log-deeds.js'
import {type DayNames, dishesLike, dishMeant, isDish, isNearDish, isThing, resemblesDish} from './log-dishes.js'
import {doorNote, doorTold, unclearDoor} from './log-door.js'
import {type ClockContext, clockText, toldTime} from './note-clock.js'
import {countBehind, countedName} from './note-counts.js'
import {countIn, type FireDeed, fireDeed, mainOf, noteWordsOf, partAtEnd, partsIn, remarkOf, woodNoted} from './note-words.js'
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
      /** From when to when a door stood open, minutes after midnight, where that is said. */
      readonly open?: {readonly from: number; readonly until: number}
      /** °C, count or sign of a reading. */
      readonly read?: {readonly kind: ReadingKind; readonly value: number | string}
    }
  | {readonly what: 'field'; readonly key: 'lit' | 'raked' | 'wood'; readonly value: string}

/** What is known when a note is made. */
export interface NoteOptions extends Pick<LogOptions, 'now' | 'dishes'> {
  readonly date: string
  /** Names of the day's dishes that are of one dish. */
  readonly alike?: DayNames['alike']
  /** The day's log so far. */
  readonly log?: FiringLog | null
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
  const words = countsWritten(text.replace(/\s+/g, ' ').trim())
  if (!words) return {ok: false, reason: 'the note is empty', suggest: example}
  if (words.length > 300)
    return {ok: false, reason: 'the note is too long for a row of the log', suggest: 'write the story below the table by hand'}
  const nowAt = options.now ? minutesNow(options.date, options.now) : null
  const notYet = (time: string): ParsedNote => ({
    ok: false,
    reason: `“${time}” has not come yet`,
    suggest: 'write the time at which it was read',
  })
  const rows = options.log?.rows ?? []
  const context: ClockContext = {
    lit: options.log?.lit ?? null,
    last: rows.length === 0 ? null : Math.max(...rows.map(({at}) => at)),
    now: nowAt,
  }
  // "lit again 12:05 pm": the time stands first in a row.
  const again = /^((?:lit|raked(?: out)?) again),? (?:at )?(\S.*)$/i.exec(words)
  if (again && parseClock(again[2]!).ok) return parseNote(`${again[2]!} ${again[1]!}`, options)
  const deed = fireDeed(words)
  const stated = deed && deed.time !== null && deed.rest === '' ? [deed.deed, deed.time] : null
  const field = stated ?? (deed ? null : /^(lit|raked|wood):? (?!again\b)(.+)$/i.exec(words)?.slice(1))
  const wood = field ? null : woodNoted(words)
  if (wood !== null) return {ok: true, entry: {what: 'field', key: 'wood', value: wood}}
  if (field) {
    const [key, value] = [field[0]!.toLowerCase() as 'lit' | 'raked' | 'wood', field[1]!]
    if (key === 'wood') {
      const mass = parseMass(value)
      return mass.ok ? {ok: true, entry: {what: 'field', key, value}} : mass
    }
    const told = toldTime(value, context, key)
    if (!told.ok) return told
    if (nowAt !== null && told.value.at > nowAt + 1) return notYet(value)
    return {ok: true, entry: {what: 'field', key, value: told.value.time}}
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
      rest = parts.slice(n).join(' ')
      const told = toldTime(head, context, fireDeed(rest)?.deed ?? 'row')
      if (!told.ok) return told
      at = told.value.at
      time = told.value.time
      ambiguous = null
      break
    }
    if (n === 1 && /^\d{1,2}$/.test(head)) ambiguous = clock
  }
  const planned = fireToCome(rest, at ?? Number.NEGATIVE_INFINITY)
  if (planned && !planned.ok) return planned
  const door = doorNote(mainOf(rest))
  const spanned = rest === words && door !== null ? spannedBy(door, at ?? context.last ?? context.lit) : null
  if (spanned !== null) {
    at = spanned
    time = clockText(at)
  } else if (rest === words && !planned) {
    // "loaf 2 set in at 10:15": the time stands last.
    const turned = timeFirst(words)
    const read = turned === null ? null : parseNote(turned, options)
    const told = read?.ok === true && read.entry.what === 'row' && fireNote(read.entry.value, '') !== null
    const dated = read?.ok === true && read.entry.what === 'row' && (at === null || endsInWork(read.entry.value))
    if (read !== null && (!read.ok || told || dated || read.entry.what === 'field' || read.entry.reading !== 'note')) return read
    if (/^\d{1,2}[:.h]\d{2}\b/.test(words)) {
      const clock = parseClock(parts[0]!)
      if (!clock.ok) return clock
    }
  }
  const {dishes} = options
  // "3 gingerbread burnt": three of them, and no hour.
  const names: DayNames = {dishes: dishes ?? [], ...(options.alike ? {alike: options.alike} : {})}
  const countFirst = (said: string): boolean => countBehind(said, names) !== said || dishNotes(said).some((one) => one.counted)
  const counts = ambiguous !== null && (dishes?.length ?? 0) > 0 && countFirst(mainOf(words))
  if (ambiguous && !counts) return {ok: false, ...ambiguous}
  if (at === null)
    return {
      ok: false,
      reason: 'the note has no time',
      suggest: planned ? 'write when it was decided too, such as “12:30 pm fire again at 3:15 pm”' : example,
    }
  if (!rest) return {ok: false, reason: 'the note has a time and nothing else', suggest: example}
  if (nowAt !== null && at > nowAt + 1) return notYet(time)
  const done = fireDeed(rest)
  if (done && done.time === null && done.wood === null && done.rest === '')
    return {ok: true, entry: {what: 'field', key: done.deed, value: time}}
  const base = {what: 'row', at, time} as const
  if (WORDS.test(rest)) return {ok: true, entry: {...base, reading: 'note', value: rest.replace(WORDS, ''), note: ''}}
  const spokenOf = mainOf(rest)
  const note = remarkOf(rest)
  if (door !== null) {
    const {open, said, from, unclear} = doorTold(door, at)
    if (unclear) return {ok: false, ...unclearDoor(door)}
    if (from !== null && nowAt !== null && from + open > nowAt + 1) return notYet(clockText(from + open))
    // A length noted now is of the time until now: nobody knows it before the door is shut.
    const began = from === null && said && nowAt !== null && at >= nowAt - 1 ? at - open : at
    const then = began === at ? base : {...base, at: began, time: clockText(began)}
    const span = {from: from ?? began, until: (from ?? began) + open}
    return {ok: true, entry: {...then, reading: 'door', value: door, note, ...(said ? {open: span} : {})}}
  }
  const first = spokenOf.split(' ')[0]!.replace(/[:,]$/, '')
  const told = readingTold(spokenOf, first, options.log ?? null)
  if (told) {
    const parsed = parseReading(told.words)
    // "Oven not ready yet": no reading, and words to be kept.
    if (!parsed.ok && isOfOven(first) && !/\d/.test(told.words))
      return {ok: true, entry: {...base, reading: 'note', value: rest, note: ''}}
    if (!parsed.ok) return parsed
    if (told.doubt) return {ok: true, entry: {...base, reading: 'note', value: rest, note: '', doubt: told.doubt}}
    return {
      ok: true,
      entry: {
        ...base,
        reading: parsed.kind,
        value: parsed.text,
        note: [told.part, note].filter((one) => one !== '').join(', '),
        read: {kind: parsed.kind, value: parsed.value},
        ...(parsed.doubt ? {doubt: parsed.doubt} : {}),
      },
    }
  }
  const allBut = noteWordsOf('all but').find((one) => spokenOf.toLowerCase().startsWith(`${one} `))
  const left =
    allBut === undefined
      ? undefined
      : spokenOf
          .slice(allBut.length + 1)
          .split(' ', 1)[0]!
          .toLowerCase()
  if (numberOf(left) !== null && dishes !== undefined && dishes.length > 0) {
    const doubt = {
      reason: `“${spokenOf}” does not say how many that is, and would be kept as words`,
      suggest: `write the number and the dish, such as “${dishes[0]!} 4 of 6 drawn”`,
    }
    return {ok: true, entry: {...base, reading: 'note', value: rest, note: '', doubt}}
  }
  const main = countBehind(spokenOf, names)
  const dish = deedBehind(main)
  const {name, count} = nameAndCount(dish ? main.slice(0, dish.end) : '')
  const value = dish ? `${count} ${main.slice(dish.from)}`.trim() : ''
  // "Pies not set in" tells of nothing that was done: it stays in the log as the words it is.
  const row = (named: string, what: string, beside = note): ParsedNote => {
    const reading = stemOf(named)
    const meant = names.dishes.length > 0 ? dishMeant(reading, names) : reading
    const doubt =
      meant === null
        ? {reason: `“${named}” is no dish of this day`, suggest: `write ${dishesLike(reading, names.dishes)}`}
        : undefined
    return {
      ok: true,
      entry: {...base, reading: meant ?? reading, value: what, note: beside, ...(doubt === undefined ? {} : {doubt})},
    }
  }
  if (dishes !== undefined) {
    const slip = dish ? null : slipIn(main, dishes)
    if (slip !== null) {
      const doubt = {reason: `“${main}” would be kept as words, and tells of nothing done`, suggest: `write “${slip}”`}
      return {ok: true, entry: {...base, reading: 'note', value: rest, note: '', doubt}}
    }
    const told = dishNotes(main)
    const named = (one: {readonly dish: string}): boolean => dishMeant(stemOf(one.dish), names) !== null
    const of = told.find(named) ?? told.find(({dish: of}) => isThing(stemOf(of)) || isNearDish(stemOf(of), dishes))
    if (of !== undefined && dishes.length > 0) return row(of.dish, of.value)
    const counted = counts ? told.find((one) => one.counted) : undefined
    if (counted !== undefined) return row(counted.dish, counted.value)
  }
  const bare = name.replace(/^the /i, '')
  const known = names.dishes.length > 0 && dishMeant(stemOf(bare), names) !== null
  // "The rest later" is of nothing of the day's, nor is "supper not ready yet".
  const deedTold = deedOf(value)?.deed
  const stem = stemOf(bare)
  const day = names.dishes
  const meansDish = isThing(stem.split('-').at(-1)!) || resemblesDish(stem, day) || isNearDish(stem, day)
  const onlyWords = !known && (deedTold === 'not in' || (deedTold === 'not drawn' && !meansDish))
  if (dish && !isUndone(name) && !isNotYet(value) && !onlyWords) return row(known ? bare : name, value)
  const loss = dish ? null : lostIn(main)
  const whose = loss?.rest.replace(/:$/, '') ?? ''
  if (loss && loss.at === loss.rest.length && whose !== '' && whose.split(' ').length <= DISH_WORDS && !isUndone(whose))
    return row(whose, main.slice(loss.at).replace(/^[\s:]+/, ''))
  const spoken = inOrOut(main, names)
  if (spoken !== null) return row(spoken.dish, spoken.value, [spoken.note, note].filter((one) => one !== '').join(', '))
  // "flor 400 C": a figure that is passed over would be missed.
  const like = /\d/.test(main) ? kindLike(first) : null
  const doubt = like
    ? {reason: `“${first}” is no reading, and would be kept as words`, suggest: `write “${like}${main.slice(first.length)}”`}
    : undefined
  return {ok: true, entry: {...base, reading: 'note', value: rest, note: '', ...(doubt ? {doubt} : {})}}
}

/** The time by which a note of the door tells from when to when it stood open; null where its own words tell of no time. */
const spannedBy = (door: string, at: number | null): number | null =>
  at !== null && doorTold(door, at).from !== null ? at : null

/** A note's words as `parseReading` takes them: what it reads, the part of the floor behind it, and whether that is asked about. */
interface ReadingTold {
  readonly words: string
  readonly part: string
  readonly doubt?: {readonly reason: string; readonly suggest: string}
}

/** What a note reads, with what it leaves out: a temperature of a part of the floor is the floor's, a bare count an arm's. Null where it reads nothing. */
function readingTold(main: string, first: string, log: FiringLog | null): ReadingTold | null {
  const asked = (words: string): ReadingTold => ({
    words,
    part: '',
    doubt: {reason: `“${main}” would be kept as words, and tells of no reading`, suggest: `write “${words}” if that is meant`},
  })
  const placed = partAtEnd(main)
  const celsius = parseTemperature(placed?.rest ?? main).ok
  if (readingKind(first))
    return placed && !celsius && parseReading(placed.rest).ok ? {words: placed.rest, part: placed.part} : {words: main, part: ''}
  if (celsius) return placed ? {words: `floor ${placed.rest}`, part: placed.part} : asked(`floor ${main}`)
  const count = countIn(main)
  if (count === null) return null
  return log?.rows.some((row) => row.kind === 'arm') ? {words: `arm ${count}`, part: ''} : asked(`arm ${count}`)
}

/** Whether words end in what was done to a dough: a time behind them is when. */
const endsInWork = (words: string): boolean => noteWordsOf('dough worked').some((one) => words.toLowerCase().endsWith(` ${one}`))

/** A note's first word that may tell of the whole oven as well as of its heat. */
const isOfOven = (word: string): boolean => /^(?:oven|ofen)$/i.test(word)

/** Before what is to be kept as words, whatever it could tell. */
const WORDS = /^note: /i

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

/** "mutton pies out brown on one side", "2 gingerbread in", "drew the custards": of one of the day's dishes; null for anything else. */
function inOrOut(main: string, names: DayNames): {dish: string; value: string; note: string} | null {
  const ahead = moveAhead(main)
  const {dishes} = names
  if (ahead !== null && dishMeant(stemOf(ahead.of), names) !== null) return {dish: ahead.of, value: ahead.done, note: ''}
  const words = main.split(' ')
  for (let n = 1; n < words.length; n++) {
    const done = shortMove(words[n]!)
    if (done === null) continue
    const {name, count} = nameAndCount(words.slice(0, n).join(' ').replace(/^the /i, ''))
    const before = /^(\d{1,3}(?: (?:of|von) \d{1,3})?) (\D.*)$/.exec(name)
    const dish = before !== null && count === '' ? before[2]! : name
    const strange = dishMeant(stemOf(dish), names) === null
    // "2 loaves in", "pies out" are of some dish that is not named so; "coals out" is of none.
    const counted = before !== null || count !== ''
    if (
      strange &&
      (dish.split(' ').length > 2 || !(counted || resemblesDish(stemOf(dish), dishes) || isNearDish(stemOf(dish), dishes)))
    )
      continue
    const note = words.slice(n + 1).join(' ')
    return {dish, value: `${before?.[1] ?? count} ${done}`.trim(), note}
  }
  return null
}

/** Whether an entry is kept as the words it is, and tells of nothing that was read or done at the oven. */
export const isPlain = (entry: LogEntry): boolean =>
  entry.what === 'row' && entry.reading === 'note' && !tellsOfFire(entry.value, entry.at)

/** When it was; of a door, from when to when it stood open. */
const spanText = ({at, open}: Extract<LogEntry, {what: 'row'}>): string =>
  open === undefined ? clockText(at) : `${clockText(open.from)}–${clockText(open.until)}`

/** An entry in a line, as it is said back to who wrote it. */
export function entryText(entry: LogEntry): string {
  return entry.what === 'field'
    ? `${entry.key}: ${entry.value}`
    : [spanText(entry), entry.reading, entry.value, entry.note].filter(Boolean).join(' · ')
}

/**
 * The notes in one line that tells of several dishes: "11:40 am beans, pies and gingerbread set in" is three, "12:10 bread out, pies in" two;
 * "8:55 am lit, would not draw" is when it was lit and a remark, "11:55 am raked out 35 kg" the wood too; "floor 230 °C, vault 260 °C, bread
 * in" two readings and a dish.
 *
 * @param dishes names of the day's dishes; all that are named have to be of them
 * @param alike those of them that are of one dish
 * @returns the line alone where it tells of one thing, or of something else
 */
export function notesIn(text: string, dishes: readonly string[], alike?: DayNames['alike']): string[] {
  const names: DayNames = {dishes, ...(alike ? {alike} : {})}
  const words = countsWritten(text.replace(/\s+/g, ' ').trim())
  const parts = words.split(' ')
  let time = ''
  for (let n = Math.min(5, parts.length - 1); n > 0 && time === ''; n--) {
    const head = parts.slice(0, n).join(' ')
    if (parseClock(head.replace(/,$/, '')).ok) time = `${head} `
  }
  const rest = words.slice(time.length)
  const relit = relitIn(rest)
  if (relit !== null) return [`${time}${relit.deed}`, `${time}note: ${relit.before}`]
  const fire = fireDeed(rest)
  if (fire !== null && (fire.wood !== null || fire.rest !== '')) return fireNotes(time, fire, names)
  const first = rest.split(' ')[0]!
  const kind = readingKind(first)
  const places = partsIn(kind === null ? rest : rest.slice(first.length + 1))
  if (places !== null) return places.map(({value, part}) => `${time}${kind ?? 'floor'} ${value}, ${part}`)
  const several = toldIn(rest, names)
  if (several.length > 1) return several.map((one) => `${time}${one}`)
  const each = rest.split(/[,;] /).map((part) => joinedDeeds(part, names))
  const deeds = each.length > 1 && each.every((some) => some.length > 0) ? each.flat() : joinedDeeds(rest, names)
  return deeds.length > 1 ? deeds.map((deed) => `${time}${deed}`) : [text]
}

/** “Both cakes in and 2 of 3 pies out”: what each half tells, where each has a deed of its own; else what they tell together. */
function joinedDeeds(words: string, names: DayNames): string[] {
  const deedsOf = (some: string): string[] => {
    const told = deedsIn(some, names)
    // The number before a name is put behind it when the note is read.
    return told.length === 0 && countBehind(some, names) !== some ? [some] : told
  }
  for (const between of words.matchAll(/ (?:and|und) /gi)) {
    const before = deedsOf(words.slice(0, between.index))
    const behind = before.length > 0 ? joinedDeeds(words.slice(between.index + between[0].length), names) : []
    if (behind.length > 0) return [...before, ...behind]
  }
  return deedsOf(words)
}

/** "Fire went out, lit again": that it was lit again, and what was said before that; null for anything else. */
function relitIn(words: string): {readonly deed: string; readonly before: string} | null {
  for (const between of words.matchAll(/[,;:.] (?:and |und )?| and | und | - | [–—] /gi)) {
    const [before, deed] = [words.slice(0, between.index), words.slice(between.index + between[0].length)]
    if (outs.includes(before.trim().toLowerCase()) && fireNote(deed, '')?.what === 'lit') return {deed, before}
  }
  return null
}

const outs = noteWordsOf('fire out')

/**
 * The readings of some words with what else they tell, "floor 230 °C, vault 260 °C, bread in", each with the remarks behind it; nothing where
 * they do not begin with something told, or tell of no reading.
 */
function toldIn(words: string, names: DayNames): string[] {
  const parts = words.split(/ ?[,;] | [–—-] /).flatMap(readingsApart)
  // “Floor 230, vault 260 °C”: one scale for both.
  const scale = parts.map((part) => FIGURE.exec(part)?.[1] ?? '').find((one) => one !== '') ?? ''
  const told: string[] = []
  let readings = 0
  for (const part of parts) {
    const scaled = scale !== '' && FIGURE.exec(part)?.[1] === '' ? `${part} ${scale}` : part
    const kind = readingKind(part.split(/[ :]/, 1)[0]!)
    // A figure without any scale is read on its own, so that it is asked about.
    const figure = FIGURE.test(part) ? part : undefined
    const reading = kind === null ? undefined : ([part, scaled].find((one) => parseReading(one).ok) ?? figure)
    const deeds = reading === undefined ? deedsIn(part, names) : [reading]
    if (reading !== undefined) readings++
    if (deeds.length === 0 && told.length === 0) return []
    if (deeds.length > 0) told.push(...deeds)
    else told.push(`${told.pop()!}, ${part}`)
  }
  return readings > 0 ? told : []
}

/** A reading's figure, and its scale where one stands behind it. */
const FIGURE = /^\p{L}+:? \d{1,4} ?(°?[cf]|°|)$/iu

/** "Floor 230 °C and vault 260 °C" as both; other words as they are. */
function readingsApart(words: string): string[] {
  const each = words.split(' and ')
  return each.every((one) => readingKind(one.split(/[ :]/, 1)[0]!) !== null) ? each : [words]
}

/** The notes of what was done to the fire: its time, the wood, and what else is said, as the words it is where it tells of nothing done or read. */
function fireNotes(time: string, {deed, time: said, wood, rest}: FireDeed, names: DayNames): string[] {
  const at = said === null ? time : `${said} `
  const told = deedsIn(rest, names)
  const read = readingKind(rest.split(' ')[0]!) !== null && parseReading(mainOf(rest)).ok
  const more = told.length > 0 ? told : rest === '' ? [] : [read ? rest : `note: ${rest}`]
  return [`${at}${deed}`, ...(wood === null ? [] : [`wood ${wood}`]), ...more.map((one) => `${at}${one}`)]
}

/** What was done to each of some dishes, "beans set in", "pies set in"; nothing where they are none of the day's, or nothing was done. */
function deedsIn(words: string, names: DayNames): string[] {
  const ahead = moveAhead(words)
  const after = ahead && (bothOf(ahead.of, names) ?? namesOf(ahead.of, names))
  if (ahead && after) return after.map((name) => `${name} ${ahead.done}`)
  const behind = deedBehind(words)
  if (behind) return deedsOf(words.slice(0, behind.end), words.slice(behind.from), names)
  const each = words.split(' ')
  for (let n = 1; n < each.length; n++) {
    const bare = each.slice(n).map((word) => word.replace(/[,;]$/, ''))
    if (shortMove(bare[0]!) === null && lossEnd(bare, 0) === 0) continue
    const deeds = deedsOf(each.slice(0, n).join(' '), each.slice(n).join(' '), names)
    if (deeds.length > 0) return deeds
  }
  return []
}

/** What was done, said of each dish of a row; nothing where it is not one of dishes alone. */
function deedsOf(row: string, done: string, names: DayNames): string[] {
  const its = bothOf(row, names) ?? namesOf(row, names) ?? []
  return its.map((name) => `${name} ${done}`)
}

/** "Both mutton pies and custards" is two dishes, each whole. */
function bothOf(row: string, names: DayNames): string[] | null {
  const [first = '', ...more] = row.split(' ')
  const two = noteWordsOf('pair').includes(first.toLowerCase()) ? namesOf(more.join(' '), names) : null
  return two?.length === 2 ? two : null
}

/** Names of dishes in a row, "pies, rye and Indian bread and 2 cakes"; null where it is none of only such. */
function namesOf(words: string, names: DayNames): string[] | null {
  const whole = nameOf(words, names)
  if (whole !== null) return [whole]
  // “Rye and Indian bread” is one name, of which “rye” would do.
  for (const between of [...words.matchAll(/,? and |, ?| & /gi)].reverse()) {
    const first = nameOf(words.slice(0, between.index), names)
    const more = first === null ? null : namesOf(words.slice(between.index + between[0].length), names)
    if (first !== null && more !== null) return [first, ...more]
  }
  return null
}

/** One dish's name, with how many of it; null where it is of none. */
function nameOf(words: string, names: DayNames): string | null {
  const name = words.trim().replace(/^the /i, '')
  const counted = countedName(name, names)
  if (counted !== null && dishMeant(stemOf(counted.name), names) !== null) return `${counted.name} ${counted.count}`
  return dishMeant(stemOf(name.replace(/^\d{1,3} /, '')), names) === null ? null : name
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
