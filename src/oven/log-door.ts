import {cardinals} from '../lexicon/grammar-words.js'
import {plainLetters} from '../lexicon/index.js'
import {type ClockRead, parseDuration, readClock} from '../measure/quantity.js'
import {lengthIn} from '../receipt/time-lengths.js'
import {noteWordsOf} from './note-words.js'

/** What a log tells of the door: for how long it stood open, and from when. */

/** Minutes that a door is open of which nobody says for how long. Common practice, no source. */
export const LOOKED_IN = 2

/** How long a door stood open, or that this is not understood. */
export interface DoorTold {
  /** Minutes. */
  readonly open: number
  /** The length is stated. */
  readonly said: boolean
  /** From when, minutes after midnight, where the words say so. */
  readonly from: number | null
  /** A length is told that is not understood. */
  readonly unclear: boolean
}

const doors = noteWordsOf('door')
const shut = noteWordsOf('door shut')
const opened = noteWordsOf('door opened')
const moves = [...opened, ...shut].sort((a, b) => b.length - a.length)
const left = noteWordsOf('door left')

/** Whether a row is of the door. */
export const isDoor = (reading: string): boolean => doors.includes(reading.trim().toLowerCase())

/** A note of the door, "door was open half an hour": what was done to it, as a row's value has it; null for any other note. */
export function doorNote(words: string): string | null {
  const small = words.toLowerCase()
  // "Left the door open", "opened the door for a minute".
  const verb = [...left, ...opened].find((word) => doors.some((name) => small.startsWith(`${word} ${name}`)))
  const from = verb === undefined ? 0 : verb.length + 1
  const door = doors.find((name) => small.startsWith(`${name} `, from) || small.startsWith(`${name}: `, from))
  if (door === undefined) return null
  let done = words.slice(from + door.length).replace(/^:? /, '')
  for (let word = leftAt(done); word !== undefined; word = leftAt(done)) done = done.slice(word.length + 1)
  const said = done.toLowerCase()
  if (moves.some((move) => said === move || said.startsWith(`${move} `))) return done
  if (verb !== undefined && opened.includes(verb)) return `${verb} ${done}`
  // “Tür stand 20 min offen”: for how long stands before what it was.
  const last = opened.find((move) => said.endsWith(` ${move}`))
  const length = last === undefined ? '' : done.slice(0, done.length - last.length - 1)
  return last !== undefined && (parseDuration(length).ok || lengthIn(length) !== null) ? `${last} ${length}` : null
}

/** What some words begin with that only says how the door was left. */
const leftAt = (words: string): string | undefined =>
  moves.some((move) => words.toLowerCase() === move) ? undefined : left.find((word) => words.toLowerCase().startsWith(`${word} `))

/**
 * Read "open 4 min", "open for half an hour", "open 10:50 to 11:20", "since 10:50", "offen eine Viertelstunde".
 *
 * @param value of a row of the door
 * @param at minutes after midnight of the row, by which a time in the words is known to be of the morning or the afternoon
 */
export function doorTold(value: string, at: number): DoorTold {
  const words = value.split(/[;(]|, /, 1)[0]!
  const told = spanIn(words, at)
  if (told !== null) return told
  const figures = words.search(/\d/)
  const plain = figures < 0 ? null : parseDuration(words.slice(figures))
  const length = plain?.ok ? plain.value : lengthIn(words)
  // The longer of a range: an oven that has lost more is not baked in too soon.
  if (length !== null) return {open: length.high, said: true, from: null, unclear: false}
  return {open: LOOKED_IN, said: false, from: null, unclear: !isShut(words) && words.split(' ').some(isOfTime)}
}

/** "Shut at 11:20" tells of no length. */
const isShut = (words: string): boolean => shut.some((word) => words.toLowerCase().startsWith(word))

/** Words that a length would have: a figure, a number or a unit; "by one of the boys" is none. */
function isOfTime(word: string): boolean {
  const plain = plainLetters(word.toLowerCase())
  return /\d|[¼½¾]|^(?:min|hour|stunde|viertel)/.test(plain) || (cardinals[plain] ?? 1) > 1
}

/** "10:50 to 11:20", "since 10:50", "till 11:20"; null where no time of day is told. */
function spanIn(words: string, at: number): DoorTold | null {
  const [ahead = '', behind] = words.split(/ (?:to|till|until|bis|and|und) | ?[–—-] ?/)
  const start = clockIn(ahead.split(' ').slice(-2), -1)
  const end = behind === undefined ? null : clockIn(behind.split(' ').slice(0, 2), 1)
  const from = start && (end !== null || / (?:since|seit|from|von|ab) /i.test(` ${ahead}`)) ? near(start, at) : end ? at : null
  if (from === null) return null
  // An end before its beginning is the next hour of the same name.
  const until = end ? near(end, start ? from : at) : at
  return until < from
    ? {open: LOOKED_IN, said: false, from: null, unclear: true}
    : {open: until - from, said: true, from, unclear: false}
}

/** A time of day at the end (−1) or the beginning (1) of two words at most, such as "10:50 am"; null for "10", which may be anything. */
function clockIn(words: readonly string[], side: 1 | -1): ClockRead | null {
  const tried = words.length > 1 ? [words, side === 1 ? words.slice(0, 1) : words.slice(1)] : [words]
  for (const some of tried) {
    const read = readClock(some.join(' '))
    if (read.ok) return read.value
  }
  return null
}

/** The time of that name that is nearest to another. */
function near({minutes, bare, dated}: ClockRead, at: number): number {
  const every = bare ? 720 : 1440
  return dated ? minutes : minutes + every * Math.round((at - minutes) / every)
}

/** What is said of a door whose length is not understood. */
export const unclearDoor = (value: string): {readonly reason: string; readonly suggest: string} => ({
  reason: `for how long the door was open is not understood: “${value}”`,
  suggest: 'write “open 20 min” or “open half an hour”',
})
