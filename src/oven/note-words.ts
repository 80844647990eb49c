import {noteWords} from '../lexicon/note-words.js'
import {wordsUsed} from '../lexicon/row.js'
import type {NoteWord} from '../lexicon/schema.js'
import {parseClock, parseMass, parseTemperature} from '../measure/quantity.js'

/** What a note says of the fire, of a count and of parts of the floor, by the lexicon's words. */

/** The words of a use, longest first. */
export const noteWordsOf = (use: NoteWord['use']): readonly string[] =>
  [...wordsUsed(noteWords, use)].sort((a, b) => b.length - a.length)

const deeds = (['lit', 'raked'] as const)
  .flatMap((deed) => noteWordsOf(deed).map((words) => ({deed, words})))
  .sort((a, b) => b.words.length - a.words.length)
const wood = noteWordsOf('wood')
const counted = noteWordsOf('counted')
const parts = noteWordsOf('part of the floor')

/** Where a note's first remark begins: at a comma, a semicolon or a dash. */
const splitAt = (text: string): RegExpExecArray | null => / ?[,;] | [–—-] /.exec(text)

/** A note as far as its first comma. */
export const mainOf = (text: string): string => text.slice(0, splitAt(text)?.index ?? text.length)

/** A note behind its first comma; empty where there is none. */
export function remarkOf(text: string): string {
  const split = splitAt(text)
  return split === null ? '' : text.slice(split.index + split[0].length)
}

/** What was done to the fire, where a note begins with it. */
export interface FireDeed {
  readonly deed: 'lit' | 'raked'
  /** When, where the words behind it say so. */
  readonly time: string | null
  /** How much wood was burned in all, where the words behind “raked” are a weight. */
  readonly wood: string | null
  /** What else is said; empty where nothing is. */
  readonly rest: string
}

/** Read "lit", "lit the fire, would not draw", "raked out 35 kg" or "lit 8:55 am"; null for words that go on otherwise ("lit again"). */
export function fireDeed(words: string): FireDeed | null {
  const small = words.toLowerCase()
  const found = deeds.find(({words: said}) => small.startsWith(said) && /^(?:$|:? |[,;])/.test(small.slice(said.length)))
  if (!found) return null
  const {deed} = found
  const behind = words.slice(found.words.length)
  const mark = /^(?: ?[,;] ?| [–—-] )/.exec(behind)
  const said = behind.slice(mark?.[0].length ?? 0).replace(/^:? ?/, '')
  const time = mark === null && parseClock(mainOf(said)).ok ? mainOf(said).replace(/^at /i, '') : null
  const more = said === '' ? [] : clauses(time === null ? said : remarkOf(said))
  const at = deed === 'raked' ? more.findIndex((clause) => woodIn(clause) !== null) : -1
  // "Lit up well": what goes on without a mark is another thing, unless it is a weight.
  if (mark === null && said !== '' && time === null && at !== 0) return null
  return {deed, time, wood: at < 0 ? null : woodIn(more[at]!), rest: more.filter((_, i) => i !== at).join(', ')}
}

/** The parts of a remark between its commas. */
function clauses(text: string): string[] {
  const all: string[] = []
  for (let left = text; left !== ''; left = remarkOf(left)) all.push(mainOf(left))
  return all
}

/** A weight of wood, "35 kg", "35 kg of wood" or "wood 35 kg", as a log's head states it; null where the words are none. */
export function woodIn(words: string): string | null {
  const small = words.toLowerCase()
  const ahead = wood.find((word) => small.startsWith(`${word} `))
  const behind = wood.find((word) => small.endsWith(` ${word}`))
  const mass = ahead
    ? words.slice(ahead.length + 1)
    : behind
      ? words.slice(0, words.length - behind.length - 1).replace(/ of$/i, '')
      : words
  return parseMass(mass).ok ? mass : null
}

/** What stands of wood behind the lexicon's words for it, "Holz 43 kg"; null where the words begin otherwise, or with no weight. */
export function woodNoted(words: string): string | null {
  const small = words.toLowerCase()
  const mass = wood.some((word) => small.startsWith(`${word} `) || small.startsWith(`${word}: `))
    ? woodIn(words.replace(':', ''))
    : null
  return mass
}

/** The number of a count, "counted 12", "count of 12"; null where the words are nothing else than that. */
export function countIn(words: string): string | null {
  const small = words.toLowerCase()
  const said = counted.find((phrase) => small.startsWith(`${phrase} `))
  const number = said === undefined ? '' : words.slice(said.length + 1)
  return /^\d{1,3}$/.test(number) ? number : null
}

/** Words that end in a part of the floor: "240 °C left", "floor 240 °C at the back"; null where they do not. */
export function partAtEnd(words: string): {readonly rest: string; readonly part: string} | null {
  const small = words.toLowerCase()
  const part = parts.find((phrase) => small.endsWith(` ${phrase}`))
  if (part === undefined) return null
  const at = words.length - part.length
  return {rest: words.slice(0, at - 1), part: words.slice(at)}
}

/** "240 C left, 225 right" as the temperature of each part; the first's scale serves where another has none. Null for anything else. */
export function partsIn(words: string): {readonly value: string; readonly part: string}[] | null {
  const each = words.split(/[,;] | and /)
  const first = partAtEnd(each[0]!)?.rest ?? ''
  const scale = first.replace(/^\d{1,5}(?:[.,]\d{1,3})?/, '')
  const read = each.map((one) => {
    const told = partAtEnd(one)
    if (told === null) return null
    const value = [told.rest, `${told.rest}${scale}`].find((text) => parseTemperature(text).ok)
    return value === undefined ? null : {value, part: told.part}
  })
  return each.length > 1 && read.every((one) => one !== null) ? read : null
}
