import {distance} from 'fastest-levenshtein'
import type {Link, List, ListItem, Nodes, Paragraph} from 'mdast'
import {toString as textOf} from 'mdast-util-to-string'
import {visit} from 'unist-util-visit'
import {asked} from '../lexicon/asked-words.js'
import {parseClock} from '../measure/quantity.js'
import type {Place} from '../receipt/position.js'
import type {Message} from '../receipt/types.js'
import type {DayItem} from './types.js'

/** The file a list stands in, and how to report what is wrong with it. */
export interface DayText {
  readonly source: string
  readonly place: (offset: number) => Place
  readonly say: (offset: number, rule: string, reason: string, suggest: string, severity?: Message['severity']) => void
  /** The times by which something is wanted, min after midnight, and where they stand. */
  readonly wants: {offset: number; title: string; by: number; hot: boolean}[]
}

/** The first words of what a message is about. */
export const short = (text: string): string => {
  const plain = text.trim().replace(/\s+/g, ' ')
  return plain.length > 40 ? `${plain.slice(0, 39)}…` : plain
}

/** A link's target as a path; as written where it is no good percent-encoding. */
export function decode(url: string): string {
  try {
    return decodeURIComponent(url)
  } catch {
    return url
  }
}

/**
 * Read a list of the day: in each entry a link to a receipt, behind it the amount and "wanted by" a time, or "hot at" one. A list within
 * an entry is read the same way.
 *
 * @param list of the Markdown tree
 * @param into where the entries are added
 * @param text messages go to its `say`, rules `day-link`, `day-line`, `day-wanted`: each at the word at fault
 */
export function readDayList(list: List, into: DayItem[], text: DayText): void {
  for (const item of list.children) readEntry(item, into, text)
}

function readEntry(item: ListItem, into: DayItem[], text: DayText): void {
  const {source, place, say} = text
  const [head, ...below] = item.children
  const line = head?.type === 'paragraph' ? head : null
  const start = (line?.children[0] ?? head ?? item).position?.start.offset ?? 0
  const link = line === null ? null : linkIn(line)
  if (line === null || link === null) {
    sayNoLink(line ?? item, start, text)
    for (const block of item.children) if (block.type === 'list') readDayList(block, into, text)
    return
  }
  const at = link.position?.start.offset ?? start
  const end = link.position?.end.offset ?? at
  const title = textOf(link).trim()
  const target = decode(link.url)
  const opens = source.indexOf('](', link.children.at(-1)?.position?.end.offset ?? at)
  // The target of a link by reference stands elsewhere.
  const targetAt = opens >= 0 && opens < end ? opens + 2 : at
  if (/^[a-z][a-z0-9+.-]*:|^\/|^\\/i.test(target)) {
    const suggest = 'link to a receipt below the day’s folder, such as receipts/name.md'
    say(targetAt, 'day-link', `“${target}” is not a file of this folder`, suggest)
    return
  }
  if (target.split(/[\\/]/).includes('..')) {
    const suggest = 'copy the receipt into the day’s receipts folder and link to it there'
    say(targetAt, 'day-link', `“${target}” leads out of this folder`, suggest)
    return
  }
  const {before, behind} = aroundLink(line, link)
  const unread = (offset: number, reason: string, words: string): void => {
    const suggest = `write an amount behind the link: - [${title}](${link.url}) — 8 loaves`
    // A figure that is passed over would be baked wrong.
    say(offset, 'day-line', reason, suggest, /\d/.test(words) ? 'error' : 'warning')
  }
  if (before !== '') unread(start, `“${short(before)}” before the link is not read`, before)

  const plain = behind.replace(/^\s*(?:[—–:,-]|--)?\s*/, '')
  const words = offsetsOf(plain, source, end)
  const wanted = wantedIn(plain)
  const much = wanted ? plain.slice(0, wanted.index) : plain
  const amount = much.replace(/(?<![,;.\s])[,;.\s]+$/, '').replace(/\s+/g, ' ')
  const countOf = (part: string): number => part.split(/\s+/).filter((word) => word !== '').length
  let wantedBy: number | null = null
  let hot = false
  if (wanted) {
    const {when} = wanted
    hot = wanted.hot
    const clock = parseClock(withoutStop(when))
    const offset = words[countOf(plain.slice(0, plain.length - when.length))] ?? end
    if (clock.ok) {
      wantedBy = clock.value
      text.wants.push({offset, title, by: clock.value, hot})
    } else say(offset, 'day-wanted', clock.reason, clock.suggest)
  }
  const hour = whenIn(amount.split(' '))
  const earliest = notBeforeIn(amount.split(' '))
  if (earliest !== null) {
    const said = amount.split(' ').slice(earliest.at).join(' ')
    say(
      words[earliest.at] ?? end,
      'day-wanted',
      `“${short(said)}” is not planned for: a line says by when a dish is wanted, and not from when`,
      `write “hot at ${earliest.hour}” if it is to come from the oven then, or “wanted by” the latest time that will do`,
    )
  } else if (hour !== null)
    say(
      words[hour] ?? end,
      'day-wanted',
      `“${short(amount.split(' ').slice(hour).join(' '))}” is not read as a time`,
      'write “wanted by” before it, such as “8 loaves, wanted by 1 pm”',
    )
  else if (/(?:^|[\s,;])hot$/i.test(amount))
    say(words[countOf(amount) - 1] ?? end, 'day-wanted', '“hot” says no time', 'write when, such as “hot at 6 pm”')
  const held = words.slice(0, countOf(amount)).map(place)
  into.push({
    file: target.split('#', 1)[0]!,
    title,
    amount: amount || null,
    wantedBy,
    ...(hot && wantedBy !== null ? {hot: true as const} : {}),
    ...place(at),
    targetAt: place(targetAt),
    ...(held.length > 0 ? {amountAt: held} : {}),
  })
  for (const block of below) {
    if (block.type === 'list' && linkIn(block) !== null) readDayList(block, into, text)
    else {
      const words = textOf(block)
      unread(leafOffset(block) ?? at, `“${short(words)}” below “${short(title)}” is not read`, words)
    }
  }
}

/** Text in square brackets, and what stands in brackets behind it. */
const WRITTEN_AS_LINK = /^\[([^[\]\n]{1,200})\](?:\(([^()<>\n]{1,300})\)|\[([^[\]\n]{0,200})\])/

/** An entry that is no link to a receipt: why, where it is written as one. */
function sayNoLink(entry: Nodes, start: number, {source, say}: DayText): void {
  const written = WRITTEN_AS_LINK.exec(source.slice(start, start + 600))
  const [name, target, key] = [written?.[1] ?? '', written?.[2]?.trim(), written?.[3]]
  if (target !== undefined && /\s/.test(target)) {
    const reason = `“${short(target)}” has a space in it, so this is no link and nothing is baked`
    say(start, 'day-link', reason, `write [${name}](<${target}>)`)
  } else if (key !== undefined) {
    const called = key === '' ? name : key
    const reason = `no line says what “[${called}]” links to, so nothing is baked`
    say(start, 'day-link', reason, `write [${name}](receipts/name.md), or a line “[${called}]: receipts/name.md”`)
  } else
    say(
      start,
      'day-link',
      `“${short(textOf(entry))}” links to no receipt`,
      'write - [Name](receipts/name.md) — amount',
      'warning',
    )
}

/** When a line's words want a dish, and where that begins. */
interface Wanted {
  readonly index: number
  readonly hot: boolean
  readonly when: string
}

/** “wanted by 1 pm”, “hot at 6 pm”, „fertig bis 13 Uhr“; “by 1 pm” alone where that is an hour, and no “tin 9 by 5 in”. */
function wantedIn(plain: string): Wanted | null {
  const words = Array.from(plain.matchAll(/\S+/g), ({0: word, index}) => ({
    word: word.toLowerCase().replace(/^[(,;.]|[,;.]$/g, ''),
    index: index!,
  }))
  const at = (k: number): string => words[k]?.word ?? ''
  const restFrom = (k: number): string => (words[k] ? plain.slice(words[k]!.index) : '')
  for (const [i, {word, index}] of words.entries()) {
    let k = asked.wanted.has(word) ? i + 1 : i
    const hot = asked.hot.has(at(k))
    if (hot) k++
    if (k > i && asked.wantedBy.has(at(k)) && restFrom(k + 1) !== '') return {index, hot, when: restFrom(k + 1)}
    const alone = asked.wantedByAlone.has(word) && !isMisspelt(at(i - 1))
    if (alone && parseClock(withoutStop(restFrom(i + 1))).ok) return {index, hot: false, when: restFrom(i + 1)}
  }
  return null
}

const withoutStop = (when: string): string => when.trimEnd().replace(/[.;]$/, '').trimEnd()

/** Offsets in the file of the words behind a link that ends at `end`: mark-up may lie between them. */
function offsetsOf(plain: string, source: string, end: number): number[] {
  let from = end
  return (plain.match(/\S+/g) ?? []).map((word) => {
    const found = source.indexOf(word, from)
    if (found < 0) return from
    from = found + word.length
    return found
  })
}

/** Words that begin a time of day. A time in the amount is one that "wanted by" is missing from, or misspelt before. */
const TIME_WORDS: ReadonlySet<string> = new Set([
  'by',
  'before',
  'till',
  'until',
  'noon',
  'midnight',
  'tomorrow',
  'tonight',
  'am',
  'pm',
])

/** Which word of an amount begins a time of day, with a misspelt "wanted" before it; null where none does. */
function whenIn(words: readonly string[]): number | null {
  const plain = words.map((word) => word.toLowerCase().replace(/(?<![.,;:!?])[.,;:!?]+$/, ''))
  // "A tin 9 by 5 in"
  const isSize = (k: number): boolean => plain[k] === 'by' && /^\d/.test(plain[k - 1] ?? '') && /^\d/.test(plain[k + 1] ?? '')
  let at = plain.findIndex(
    (word, k) => (TIME_WORDS.has(word) && !isSize(k)) || /^\d{1,2}(?:[:.]\d\d)?(?:am|pm)$|^\d{1,2}:\d\d$/.test(word),
  )
  if (at < 0) return null
  if (/^\d/.test(plain[at - 1] ?? '') && /^[ap]m$/.test(plain[at]!)) at--
  if (/^(?:by|at|for)$/.test(plain[at - 1] ?? '')) at--
  const before = plain[at - 1] ?? ''
  if (isMisspelt(before)) at--
  return at
}

/** Where an amount says from when on a dish is wanted (“not before 1 pm”), and that hour; null where it does not. */
function notBeforeIn(words: readonly string[]): {readonly at: number; readonly hour: string} | null {
  const plain = words.map((word) => word.toLowerCase().replace(/^\(|[,;)]$/g, ''))
  for (let at = 0; at < plain.length; at++)
    for (let length = 3; length > 0; length--) {
      if (!asked.notBefore.has(plain.slice(at, at + length).join(' '))) continue
      const hour = words
        .slice(at + length)
        .join(' ')
        .replace(/[,;)]$/, '')
      if (parseClock(hour).ok) return {at, hour}
    }
  return null
}

/** Whether a word is meant for “wanted”. */
const isMisspelt = (word: string): boolean =>
  word !== '' && [...asked.wanted].some((wanted) => distance(wanted, word.toLowerCase()) <= 2)

function linkIn(node: Nodes): Link | null {
  let found: Link | null = null
  visit(node, 'link', (link) => {
    found ??= link
  })
  return found
}

/** Offset of the first words within a block, past its marks. */
function leafOffset(node: Nodes): number | null {
  let found: number | null = null
  visit(node, 'text', (leaf) => {
    found ??= leaf.position?.start.offset ?? null
  })
  return found
}

/** The text of a paragraph before a link in it, and behind it. */
function aroundLink(line: Paragraph, link: Link): {readonly before: string; readonly behind: string} {
  let before = ''
  let behind = ''
  let past = false
  const walk = (node: Nodes): void => {
    if (node === link) past = true
    else if ('children' in node) for (const child of node.children) walk(child)
    else {
      const text = node.type === 'break' ? ' ' : textOf(node)
      if (past) behind += text
      else before += text
    }
  }
  walk(line)
  return {before: before.trim(), behind}
}
