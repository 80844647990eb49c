import {cardinals} from '../lexicon/grammar-words.js'
import {plainLetters} from '../lexicon/index.js'
import {noteWords} from '../lexicon/note-words.js'
import {wordsUsed} from '../lexicon/row.js'
import type {NoteWord} from '../lexicon/schema.js'
import {parseClock, parseMass} from '../measure/quantity.js'
import {readDuration} from '../receipt/durations.js'
import {lossEnd, moveAtEnd} from './log-deeds.js'
import {isThing} from './log-dishes.js'

/**
 * Numbers of vessels in the log: "set in 2", "2 of 3 set in", "drawn 4, 1 dropped". A number with a unit of time, of a clock or of weight
 * is none ("drawn 10 min late", "set in 2 pm").
 */

/** A word or a mark of some words, and where it stands. */
interface Token {
  readonly text: string
  readonly from: number
  readonly to: number
}

function tokensOf(text: string): Token[] {
  return Array.from(text.matchAll(/[^\s,;:()]+|[,;:()]/g), (m) => ({
    text: m[0].toLowerCase(),
    from: m.index,
    to: m.index + m[0].length,
  }))
}

const wordsOfUse = (use: NoteWord['use']): ReadonlySet<string> => new Set(wordsUsed(noteWords, use))
const pairs = wordsOfUse('pair')
const ofs = wordsOfUse('of')
const alls = wordsOfUse('of all')
const outs = wordsOfUse('of it out')

/** Whether a word stands between a number and whose it is, "of"; and one that may stand behind that, "the". */
export const isOfWord = (word: string | undefined): boolean => ofs.has((word ?? '').toLowerCase())
export const isAllWord = (word: string | undefined): boolean => alls.has((word ?? '').toLowerCase())

/** The whole number that a word is, written in digits or not; null where it is none. */
export function numberOf(word: string | undefined): number | null {
  if (word === undefined) return null
  if (/^\d{1,3}$/.test(word)) return Number(word)
  if (pairs.has(word.toLowerCase())) return 2
  return cardinals[plainLetters(word)] ?? null
}

/** "2/6 loaves" and "2 out of 6 loaves" as "2 of 6 loaves"; other words, and fractions of a measure or a time, as they are. */
export function countsWritten(words: string): string {
  const out = words.replace(/(?<=^| )(\d{1,3}) out of (?:the )?(?=\d)/i, '$1 of ')
  const slash = /(?<=^|\p{L} )(\d{1,3})\/(\d{1,3}) (\p{L}+)/u.exec(out)
  if (slash === null) return out
  const [all, some, of, word] = slash
  const isPart = readDuration(`${some}/${of} ${word}`).ok || parseMass(`${some}/${of} ${word}`).ok
  return isPart || Number(some) > Number(of) ? out : out.replace(all, `${some} of ${of} ${word}`)
}

/** Index of the token behind "of 3", "of the 3" or "of them", where it stands there; the index itself where not. */
function behindOf(tokens: readonly Token[], i: number): number {
  // "2 out of 6"
  const at = outs.has(tokens[i]?.text ?? '') ? i + 1 : i
  if (!isOfWord(tokens[at]?.text)) return i
  const of = isAllWord(tokens[at + 1]?.text) ? at + 2 : at + 1
  return numberOf(tokens[of]?.text) !== null || tokens[of]?.text === 'them' ? of + 1 : i
}

/** Words behind a number that make it another thing than a count. */
const OTHERWISE =
  /^(?:late|later|early|earlier|over|under|too|o['’]clock|degrees?|°[cf]?|per|%|half|quarters?|[¼½¾]|\d{1,3}\/\d{1,3})$/
const SIDE = /^(?:too|late|later|early|earlier|over|under)$/
const isMark = (token: Token | undefined): boolean => token === undefined || /^[,;()]/.test(token.text)

/** Whether a number and the words behind it are a time, a clock or a weight. */
function isQuantity(text: string, number: Token, behind: readonly Token[]): boolean {
  const [first, second] = behind
  if (first === undefined || isMark(first)) return false
  if (OTHERWISE.test(first.text) || (first.text === 'and' && /^an?$/.test(second?.text ?? ''))) return true
  const end = behind.findIndex((token) => isMark(token) || SIDE.test(token.text))
  const last = behind[(end < 0 ? behind.length : end) - 1] ?? first
  return [first, last].some(({to}) => {
    const said = text.slice(number.from, to)
    return readDuration(said).ok || parseClock(said).ok || parseMass(said).ok
  })
}

/**
 * A number of vessels at the beginning of some words.
 *
 * @returns the number, 0 included, and the words behind it; null where they begin with none
 */
export function countAt(text: string): {readonly count: number; readonly rest: string} | null {
  const tokens = tokensOf(text)
  let i = 0
  while (/^[,:]$/.test(tokens[i]?.text ?? '')) i++
  if (/^(?:all|only|just)$/.test(tokens[i]?.text ?? '')) i++
  const number = tokens[i]
  const count = numberOf(number?.text)
  if (!number || count === null) return null
  // "Drawn, 2 pale": all were drawn, and two of them are pale.
  const apart = tokens[0]?.text === ','
  const behind = behindOf(tokens, i + 1)
  const of = behind > i + 1
  if (!of && (isQuantity(text, number, tokens.slice(i + 1)) || (apart && !isMark(tokens[i + 1])))) return null
  return {count, rest: text.slice(tokens[behind - 1]!.to)}
}

/** A note that is a number of vessels and nothing more, as far as its first comma: "2 of 3". */
export function countOnly(text: string): number | null {
  const found = countAt(text)
  return found && isMark(tokensOf(found.rest)[0]) ? found.count : null
}

/**
 * A name with a number of vessels behind it: "mutton pies 4", "apple pies: 2 of 6".
 *
 * @returns the number as written; empty where there is none
 */
export function nameAndCount(words: string): {readonly name: string; readonly count: string} {
  const tokens = tokensOf(words)
  for (let i = Math.max(1, tokens.length - 5); i < tokens.length; i++) {
    const {from} = tokens[i]!
    const found = /^(?:\d|\p{L})/u.test(words.slice(from)) ? countAt(words.slice(from)) : null
    if (found?.rest === '') return {name: words.slice(0, from).replace(/:? $/, ''), count: words.slice(from)}
  }
  return {name: words, count: ''}
}

/** Words between a number and what became of it, with which nothing is lost. */
const HARDLY =
  /^(?:a|not|never|slightly|little|lightly|half|nearly|almost|partly|bit|nicht|nie|leicht|etwas|halb|fast|beinahe|teilweise)$/

/**
 * How many vessels some words tell to be lost: "1 dropped", "two of them were lost", "one pie burnt", "burnt 3". Nothing may stand behind it but a
 * comma or "and", since "2 burnt at the edge" are baked.
 *
 * @returns their number, where that begins, and the words without it; null where none is
 */
export function lostIn(text: string): {readonly lost: number; readonly at: number; readonly rest: string} | null {
  const tokens = tokensOf(text)
  const texts = tokens.map((token) => token.text)
  const isLast = (i: number): boolean => isMark(tokens[i]) || texts[i] === 'and'
  const found = (lost: number, from: number, end: number): {lost: number; at: number; rest: string} => {
    const before = text
      .slice(0, tokens[from]!.from)
      .trimEnd()
      .replace(/[,;:(]$/, '')
      .trimEnd()
    const after = text.slice(tokens[end - 1]!.to).replace(/^\)/, '')
    return {lost, at: before.length, rest: `${before}${after}`.trim()}
  }
  for (const [n, word] of texts.entries()) {
    const told = lossEnd(texts, n)
    const fewer = told > n && !HARDLY.test(texts[n - 1] ?? '') ? numberOf(texts[told]) : null
    if (fewer !== null && isLast(behindOf(tokens, told + 1))) return found(fewer, n, behindOf(tokens, told + 1))
    const lost = numberOf(word)
    if (lost === null) continue
    let i = behindOf(tokens, n + 1)
    // What is counted may be named.
    const [name, next] = [tokens[i], tokens[i + 1]]
    if (name && next && !isMark(name) && lossEnd(texts, i) === i && !/^(?:was|were)$/.test(name.text)) {
      if (HARDLY.test(name.text) || readDuration(`${lost} ${name.text}`).ok) continue
      i++
    }
    if (/^(?:was|were)$/.test(tokens[i]?.text ?? '')) i++
    const end = lossEnd(texts, i)
    if (end > i && isLast(end)) return found(lost, n, end)
  }
  return null
}

const BE = /^(?:is|are|was|were|got)$/i
const ALL = /^(?:all|whole|entire|completely|altogether)$/i
/** Said of the whole beside it: "the whole batch of it". */
const LOT = /^(?:the|batch|lot|load|of|it|them)$/i

/** The index behind "all", "the whole batch of", "the lot" at `at`; `at` where none of them stands there. */
function behindAll(words: readonly string[], at: number): number {
  let i = at
  if (/^the$/i.test(words[i] ?? '') && /^(?:whole|entire|lot)$/i.test(words[i + 1] ?? '')) i++
  if (!ALL.test(words[i] ?? '') && !(i > at && /^lot$/i.test(words[i] ?? ''))) return at
  i++
  while (LOT.test(words[i] ?? '')) i++
  return i
}

const wordsOf = (text: string): string[] => text.split(' ').filter((word) => word !== '')

/** Whether some words tell that all is lost: "burnt", "all burnt", "was ruined"; not "burnt at the edge" or "slightly burnt". */
export function isWholeLoss(text: string): boolean {
  const words = wordsOf(text.split(/[,;(]/)[0]!)
  let i = behindAll(words, 0)
  if (BE.test(words[i] ?? '')) i++
  i = behindAll(words, i)
  const end = lossEnd(words, i)
  if (end === i) return false
  return end === words.length || (end + 1 === words.length && ALL.test(words[end]!))
}

/**
 * Whether what is said of a dish that was drawn tells that it is lost: "burnt", "10 min late, burnt", "late and burnt", "burnt, thrown away".
 *
 * @param text a note, or the words behind "drawn" and its number
 */
export function isDrawnLost(text: string): boolean {
  const [first = '', ...clauses] = text.split(/[,;()]/)
  const [deed = '', ...also] = first.split(/ (?:and|but) |^and /)
  const late = deed.trim() === '' || /(?:late|later|early|earlier|over|under)$/i.test(deed.trimEnd())
  return [deed, ...(late ? also : []), ...clauses].some((clause) => isWholeLoss(clause.trim().replace(/^and /, '')))
}

/** Whether they say "all" of it. */
export const isAllLost = (text: string): boolean =>
  isWholeLoss(text) && wordsOf(text).some((word) => ALL.test(word) || /^lot$/i.test(word))

/** More than any day bakes: what is lost as a whole, where the log does not tell how much that was. */
export const WHOLE_LOSS = 1000

/** What a note says of a dish, with the dish's words first or behind: "3 gingerbread burnt", "the gingerbread burnt", "dropped 2 pies". */
export interface DishNote {
  readonly dish: string
  /** As a row's value has it: "3 burnt", "burnt", "2 set in". */
  readonly value: string
  /** The number stands first: it could be an hour too. */
  readonly counted: boolean
}

/** What was done, at the end of some words: from which word on, and as a row's value has it. */
function deedAt(words: readonly string[]): {readonly from: number; readonly deed: string} | null {
  const gone = words.findIndex((_, i) => lossEnd(words, i) === words.length)
  if (gone >= 0) return {from: gone, deed: words.slice(gone).join(' ').toLowerCase()}
  const move = moveAtEnd(words)
  return move && {from: move.from, deed: move.done}
}

const singles = wordsOfUse('single')

/** Whether a word says that it is one of them: "a loaf". */
const isSingle = (word: string | undefined): boolean => singles.has((word ?? '').toLowerCase())

/** What a note says of some dish, as far as its form tells; the name may be of anything. */
export function dishNotes(main: string): DishNote[] {
  const words = wordsOf(main)
  const found: DishNote[] = []
  const name = (from: number, to: number): string => {
    const start = /^the$/i.test(words[from] ?? '') ? from + 1 : from
    return words.slice(start, to).join(' ').replace(/:$/, '')
  }
  const add = (from: number, to: number, value: string, counted: boolean): void => {
    const dish = name(from, to)
    // "gingerbread 3 burnt" has its number behind, and names no batch.
    if (dish === '' || numberOf(dish.split(' ').at(-1)!.toLowerCase()) !== null) return
    found.push({dish, value, counted})
    // "A loaf of sourdough", „ein Laib Roggenbrot“.
    const [thing = '', ...own] = dish.split(' ')
    const its = /^(?:of|von|vom)$/i.test(own[0] ?? '') ? own.slice(1) : own
    if (isThing(thing.toLowerCase()) && its.length > 0) found.push({dish: its.join(' ').replace(/^the /i, ''), value, counted})
  }
  const first = numberOf(words[0]?.toLowerCase())
  const deed = deedAt(words)
  if (deed !== null) {
    let to = deed.from
    while (to > 0 && (BE.test(words[to - 1]!) || ALL.test(words[to - 1]!))) to--
    if (first !== null) add(/^of$/i.test(words[1] ?? '') ? 2 : 1, to, `${words[0]!} ${deed.deed}`, true)
    else if (isSingle(words[0])) add(1, to, `1 ${deed.deed}`, false)
    else if (lossEnd(deed.deed.split(' '), 0) > 0) add(behindAll(words, 0), to, deed.deed, false)
  }
  const end = lossEnd(words, 0)
  const gone = words.slice(0, end).join(' ').toLowerCase()
  // "Black bread" has its colour before it.
  if (end > 0 && gone !== 'black') {
    const lost = numberOf(words[end]?.toLowerCase())
    if (isSingle(words[end])) add(end + 1, words.length, `1 ${gone}`, false)
    else if (lost === null) add(behindAll(words, end), words.length, gone, false)
    else add(/^of$/i.test(words[end + 1] ?? '') ? end + 2 : end + 1, words.length, `${words[end]!} ${gone}`, false)
  }
  return found
}
