import {parseClock, parseDuration, parseMass} from '../measure/quantity.js'

/**
 * Numbers of vessels in the log: "set in 2", "2 of 3 set in", "drawn 4, 1 dropped". A number with a unit of time, of a clock or of weight
 * is none ("drawn 10 min late", "set in 2 pm").
 */

const WORDS: readonly string[] = 'one two three four five six seven eight nine ten eleven twelve'.split(' ')

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

/** The whole number that a word is, written in digits or not; null where it is none. */
function numberOf(word: string | undefined): number | null {
  if (word === undefined) return null
  if (/^\d{1,3}$/.test(word)) return Number(word)
  const spelt = WORDS.indexOf(word)
  return spelt < 0 ? null : spelt + 1
}

/** Index of the token behind "of 3", "of the 3" or "of them", where it stands there; the index itself where not. */
function behindOf(tokens: readonly Token[], i: number): number {
  if (tokens[i]?.text !== 'of') return i
  const of = /^(?:the|all)$/.test(tokens[i + 1]?.text ?? '') ? i + 2 : i + 1
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
    return parseDuration(said).ok || parseClock(said).ok || parseMass(said).ok
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

const GONE = /^(?:dropped|lost|burnt|burned|spoilt|spoiled|ruined)\.?$/
/** Words between a number and what became of it, with which nothing is lost. */
const HARDLY = /^(?:a|not|never|slightly|little|lightly|half|nearly|almost|partly|bit)$/

/**
 * How many vessels some words tell to be lost: "1 dropped", "two of them were lost", "one pie burnt". Nothing may stand behind it but a
 * comma or "and", since "2 burnt at the edge" are baked.
 *
 * @returns their number, where that begins, and the words without it; null where none is
 */
export function lostIn(text: string): {readonly lost: number; readonly at: number; readonly rest: string} | null {
  const tokens = tokensOf(text)
  for (const [n, {text: word, from}] of tokens.entries()) {
    const lost = numberOf(word)
    if (lost === null) continue
    let i = behindOf(tokens, n + 1)
    // What is counted may be named.
    const [name, next] = [tokens[i], tokens[i + 1]]
    if (name && next && !isMark(name) && !GONE.test(name.text) && !/^(?:was|were)$/.test(name.text)) {
      if (HARDLY.test(name.text) || parseDuration(`${lost} ${name.text}`).ok) continue
      i++
    }
    if (/^(?:was|were)$/.test(tokens[i]?.text ?? '')) i++
    const gone = tokens[i]
    const behind = tokens[i + 1]
    if (!gone || !GONE.test(gone.text) || !(isMark(behind) || behind!.text === 'and')) continue
    const before = text
      .slice(0, from)
      .trimEnd()
      .replace(/[,;:(]$/, '')
      .trimEnd()
    const after = text.slice(gone.to).replace(/^\)/, '')
    return {lost, at: before.length, rest: `${before}${after}`.trim()}
  }
  return null
}
