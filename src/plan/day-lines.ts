import {distance} from 'fastest-levenshtein'
import type {Link, List, ListItem, Nodes, Paragraph} from 'mdast'
import {toString as textOf} from 'mdast-util-to-string'
import {visit} from 'unist-util-visit'
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
    const what = short(textOf(line ?? item))
    say(start, 'day-link', `“${what}” links to no receipt`, 'write - [Name](receipts/name.md) — amount', 'warning')
    for (const block of item.children) if (block.type === 'list') readDayList(block, into, text)
    return
  }
  const at = link.position?.start.offset ?? start
  const end = link.position?.end.offset ?? at
  const title = textOf(link).trim()
  const target = decode(link.url)
  const targetAt = source.indexOf('](', link.children.at(-1)?.position?.end.offset ?? at) + 2
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
  const wanted = /(?:\b(?:wanted|ready|needed)\s+(?<hot>hot\s+)?|\b(?<alone>hot\s+))(?:by|at|for)\s+(?<when>.+)$/is.exec(plain)
  const asked = wanted ? plain.slice(0, wanted.index) : plain
  const amount = asked.replace(/(?<![,;.\s])[,;.\s]+$/, '').replace(/\s+/g, ' ')
  const countOf = (part: string): number => part.split(/\s+/).filter((word) => word !== '').length
  let wantedBy: number | null = null
  let hot = false
  if (wanted) {
    const when = wanted.groups!['when']!
    hot = (wanted.groups!['hot'] ?? wanted.groups!['alone']) !== undefined
    const clock = parseClock(when.trimEnd().replace(/[.;]$/, '').trimEnd())
    const offset = words[countOf(plain.slice(0, plain.length - when.length))] ?? end
    if (clock.ok) {
      wantedBy = clock.value
      text.wants.push({offset, title, by: clock.value, hot})
    } else say(offset, 'day-wanted', clock.reason, clock.suggest)
  }
  const hour = whenIn(amount.split(' '))
  if (hour !== null)
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
  let at = plain.findIndex((word) => TIME_WORDS.has(word) || /^\d{1,2}(?:[:.]\d\d)?(?:am|pm)$|^\d{1,2}:\d\d$/.test(word))
  if (at < 0) return null
  if (/^\d/.test(plain[at - 1] ?? '') && /^[ap]m$/.test(plain[at]!)) at--
  if (/^(?:by|at|for)$/.test(plain[at - 1] ?? '')) at--
  const before = plain[at - 1] ?? ''
  if (before !== '' && ['wanted', 'ready', 'needed'].some((word) => distance(word, before) <= 2)) at--
  return at
}

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
