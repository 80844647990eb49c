import type {Link, List, Root} from 'mdast'
import {toString as textOf} from 'mdast-util-to-string'
import remarkFrontmatter from 'remark-frontmatter'
import remarkParse from 'remark-parse'
import {Temporal} from 'temporal-polyfill'
import {unified} from 'unified'
import {visit} from 'unist-util-visit'
import * as z from 'zod'
import {parseClock, parseMass, writeClock} from '../measure/quantity.js'
import {quantity, readFrontMatter} from '../receipt/front-matter.js'
import {lineIndex} from '../receipt/position.js'
import type {Message} from '../receipt/types.js'
import type {Day, DayItem} from './types.js'

/** A whole number of people, hands or fires. */
const count = (what: string, most: number, example: number): z.ZodType<number, string | number> =>
  quantity((text) => {
    const suggest = `write a whole number from 1 to ${most}, such as “${what}: ${example}”`
    if (!/^[+-]?\d+$/.test(text.trim())) return {ok: false, reason: `“${text}” is not a whole number`, suggest}
    const value = Number(text)
    return value >= 1 && value <= most ? {ok: true, value} : {ok: false, reason: `there cannot be ${value}`, suggest}
  })

const daySchema = z.strictObject({
  date: z
    .string({error: 'write a date such as 2027-06-19'})
    .refine(isDate, {error: 'this is not a date', params: {suggest: 'write year-month-day, such as 2027-06-19'}}),
  zone: z
    .string()
    .refine(isZone, {error: 'this is not a time zone', params: {suggest: 'write an IANA name such as America/New_York'}})
    .optional(),
  people: count('people', 5000, 40),
  'fire from': quantity(parseClock),
  serve: quantity(parseClock),
  hands: count('hands', 20, 2).default(1),
  firings: count('firings', 6, 2).default(1),
  bowl: quantity(parseMass).optional(),
})

function isDate(text: string): boolean {
  try {
    return Temporal.PlainDate.from(text, {overflow: 'reject'}) !== null && /^\d{4}-\d{2}-\d{2}$/.test(text)
  } catch {
    return false
  }
}

function isZone(text: string): boolean {
  try {
    return Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(text) !== null
  } catch {
    return false
  }
}

const markdown = unified().use(remarkParse).use(remarkFrontmatter)

/**
 * Read `day.md`: who is coming and when, and what is to be baked.
 *
 * The receipts are the links of its lists; what follows a link is the amount ("12 loaves", "for 40") and "wanted by" a time. A list
 * under a heading that begins with "Spare" holds receipts to fill idle hot floor with.
 *
 * @param source the file as read
 * @param file its name, for messages
 * @returns the day, or null with messages (rules of `readFrontMatter`, and `day-front-matter`, `day-link`, `day-wanted`, `day-serve`)
 */
export function readDay(source: string, file: string): {day: Day | null; messages: readonly Message[]} {
  const place = lineIndex(source)
  const front = readFrontMatter(source, file, daySchema)
  const messages: Message[] = [...front.messages]
  const say = (offset: number, rule: string, reason: string, suggest: string, severity: Message['severity'] = 'error'): void => {
    messages.push({file, ...place(offset), severity, rule, reason, suggest})
  }
  if (!front.present) {
    say(
      0,
      'day-front-matter',
      source.trim() ? 'a day begins with front matter, and this file has none' : 'this file is empty',
      'begin with ---, then date:, people:, fire from: and serve:, then ---',
    )
  }

  const tree = markdown.parse(source)
  let title = ''
  let spare = false
  const items: DayItem[] = []
  const spares: DayItem[] = []
  const wants: {at: number; title: string; by: number}[] = []
  for (const node of tree.children) {
    if (node.type === 'heading') {
      const text = textOf(node).trim()
      if (!title && node.depth === 1) title = text
      spare = /^spare\b/i.test(text)
    } else if (node.type === 'list') readList(node, spare ? spares : items)
  }

  function readList(list: List, into: DayItem[]): void {
    for (const item of list.children) {
      const link = linkIn(item as unknown as Root)
      const start = item.position?.start.offset ?? 0
      if (!link) {
        say(
          start,
          'day-link',
          `“${textOf(item).trim().slice(0, 40)}” links to no receipt`,
          'write - [Name](receipts/name.md) — amount',
          'warning',
        )
        continue
      }
      const at = link.position?.start.offset ?? start
      const target = decode(link.url)
      if (/^[a-z][a-z0-9+.-]*:|^\/|^\\/i.test(target)) {
        say(
          at,
          'day-link',
          `“${target}” is not a file of this folder`,
          'link to a receipt below the day’s folder, such as receipts/name.md',
        )
        continue
      }
      if (target.split(/[\\/]/).includes('..')) {
        say(
          at,
          'day-link',
          `“${target}” leads out of this folder`,
          'copy the receipt into the day’s receipts folder and link to it there',
        )
        continue
      }
      const rest = textOf(item).trim().slice(textOf(link).trim().length)
      const after = rest.replace(/^\s*(?:[—–:-]|--)?\s*/, '')
      const wanted = /(?:wanted|ready|needed)\s+(?:by|at|for)\s+(.+)$/is.exec(after)
      let wantedBy: number | null = null
      if (wanted) {
        const clock = parseClock(wanted[1]!.trimEnd().replace(/[.;]$/, '').trimEnd())
        if (clock.ok) {
          wantedBy = clock.value
          wants.push({at, title: textOf(link).trim(), by: clock.value})
        } else say(at, 'day-wanted', clock.reason, clock.suggest)
      }
      const amount = (wanted ? after.slice(0, wanted.index) : after).replace(/(?<![,;.\s])[,;.\s]+$/, '').replace(/\s+/g, ' ')
      into.push({file: target.split('#', 1)[0]!, title: textOf(link).trim(), amount: amount || null, wantedBy, ...place(at)})
    }
  }

  if (!front.value || messages.some((m) => m.severity === 'error')) return {day: null, messages}
  const value = front.value
  const serve = value.serve
  const fireFrom = value['fire from']
  if (serve <= fireFrom) {
    say(
      front.at('serve'),
      'day-serve',
      'serving time is before the first fire',
      'write a later time; the next day is “tomorrow 1 pm”',
    )
    return {day: null, messages}
  }
  for (const {at, title: what, by} of wants)
    if (by <= fireFrom)
      say(
        at,
        'day-wanted',
        `“${what}” is wanted by ${writeClock(by)}, before the first fire at ${writeClock(fireFrom)}`,
        by >= 0
          ? `write a later time, “wanted by ${writeClock(by + 1440)}” if it is for the next day, or an earlier “fire from”`
          : 'write a later time: what is wanted then has to be baked the day before',
      )
  if (messages.some((m) => m.severity === 'error')) return {day: null, messages}
  return {
    day: {
      title: title || 'Bake day',
      date: value.date,
      zone: value.zone ?? null,
      people: value.people,
      fireFrom,
      serve,
      hands: value.hands,
      firings: value.firings,
      ...(value.bowl === undefined ? {} : {bowl: value.bowl}),
      items,
      spare: spares,
    },
    messages,
  }
}

function linkIn(node: Root): Link | null {
  let found: Link | null = null
  visit(node, 'link', (link) => {
    found ??= link
  })
  return found
}

function decode(url: string): string {
  try {
    return decodeURIComponent(url)
  } catch {
    return url
  }
}
