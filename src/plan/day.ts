import {distance} from 'fastest-levenshtein'
import type {Root, RootContent} from 'mdast'
import {toString as textOf} from 'mdast-util-to-string'
import remarkFrontmatter from 'remark-frontmatter'
import remarkParse from 'remark-parse'
import {Temporal} from 'temporal-polyfill'
import {unified} from 'unified'
import {visit} from 'unist-util-visit'
import * as z from 'zod'
import {parseClock, parseMass, writeClock} from '../measure/quantity.js'
import {dateField} from '../oven/log.js'
import {isKeyed, quantity, readFrontMatter} from '../receipt/front-matter.js'
import {lineIndex} from '../receipt/position.js'
import type {Message} from '../receipt/types.js'
import {type DayText, decode, readDayList, short} from './day-lines.js'
import type {Day, DayItem} from './types.js'

/** Fires the planner lays out in one day. */
const MOST_FIRES = 2
/** A heading over receipts that only fill idle hot floor. */
const SPARE = /^spare\b/i

/** A whole number of people, hands or fires, up to `most`; a message says `told`. */
const count = (what: string, most: number, example: number, told = most): z.ZodType<number, unknown> =>
  quantity((text) => {
    const suggest = `write a whole number from 1 to ${told}, such as “${what}: ${example}”`
    if (!/^[+-]?\d+$/.test(text.trim())) return {ok: false, reason: `“${text}” is not a whole number`, suggest}
    const value = Number(text)
    return value >= 1 && value <= most ? {ok: true, value} : {ok: false, reason: `there cannot be ${value}`, suggest}
  })

const daySchema = z.strictObject({
  date: dateField('2027-06-19'),
  zone: quantity((text) =>
    isZone(text)
      ? {ok: true, value: text}
      : {ok: false, reason: 'this is not a time zone', suggest: 'write an IANA name such as America/New_York'},
  ).optional(),
  people: count('people', 5000, 40),
  'fire from': quantity(parseClock),
  serve: quantity(parseClock),
  hands: count('hands', 20, 2).default(1),
  firings: count('firings', 6, 2, MOST_FIRES).default(1),
  bowl: quantity(parseMass).optional(),
})

const KEYS: ReadonlySet<string> = new Set(Object.keys(daySchema.shape))
const isRule = (line: string): boolean => line.length >= 3 && /^-+$/.test(line)

/**
 * Whether a heading or a paragraph is what Markdown makes of another day's front matter further down: the day's keys, with a line "---"
 * before or behind them. One key other than the date may be a note.
 */
function isFrontMatter(text: string, before: string): boolean {
  const lastLine = (lines: string): string => lines.slice(lines.lastIndexOf('\n') + 1).trim()
  return isKeyed(text, KEYS, ['date']) && (isRule(lastLine(text)) || isRule(lastLine(before.trimEnd())))
}

function isZone(text: string): boolean {
  try {
    return Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(text) !== null
  } catch {
    return false
  }
}

const markdown = unified().use(remarkParse).use(remarkFrontmatter)

/** A text whose links by reference (“[Pies][p]”, and “[p]: receipts/pies.md” below) are links as any other; those that nothing is said of stay. */
function withLinks(tree: Root): Root {
  const targets = new Map<string, string>()
  visit(tree, 'definition', ({identifier, url}) => {
    if (!targets.has(identifier)) targets.set(identifier, url)
  })
  visit(tree, 'linkReference', (node, index, parent) => {
    const url = targets.get(node.identifier)
    if (url === undefined || parent === undefined || index === undefined) return
    const {children, position} = node
    parent.children[index] = {type: 'link', url, children, ...(position ? {position} : {})}
  })
  return tree
}

/**
 * Read `day.md`: who is coming and when, and what is to be baked.
 *
 * The receipts are the links of its lists; what follows a link is the amount ("12 loaves", "for 40") and "wanted by" a time. A list
 * under a heading that begins with "Spare" holds receipts to fill idle hot floor with.
 *
 * @param source the file as read
 * @param file its name, for messages
 * @returns the day, or null with messages (rules of `readFrontMatter`, and `day-front-matter`, `day-firings`, `day-second`, `day-heading`,
 * `day-link`, `day-line`, `day-wanted`, `day-serve`)
 */
export function readDay(source: string, file: string): {day: Day | null; messages: readonly Message[]} {
  const place = lineIndex(source)
  const front = readFrontMatter(source, file, daySchema)
  const messages: Message[] = [...front.messages]
  const say = (
    offset: number,
    rule: string,
    reason: string,
    suggest: string,
    severity: Message['severity'] = 'error',
    times?: readonly number[],
  ): void => {
    messages.push({file, ...place(offset), severity, rule, reason, suggest, ...(times ? {times} : {})})
  }
  if (!front.present) {
    say(
      0,
      'day-front-matter',
      source.trim() ? 'a day begins with front matter, and this file has none' : 'this file is empty',
      'begin with ---, then date:, people:, fire from: and serve:, then ---',
    )
  }

  if (front.value && front.value.firings > MOST_FIRES)
    say(
      front.at('firings'),
      'day-firings',
      `${front.value.firings} fires cannot be planned: at most ${MOST_FIRES} are`,
      `write “firings: ${MOST_FIRES}”, and plan what is left as another day`,
      'warning',
    )

  const tree = withLinks(markdown.parse(source))
  let title = ''
  let spare = false
  let unknown: {readonly text: string; readonly offset: number} | null = null
  const items: DayItem[] = []
  const spares: DayItem[] = []
  const wants: DayText['wants'] = []
  for (const node of tree.children) {
    const [from, to] = [node.position?.start.offset ?? 0, node.position?.end.offset ?? 0]
    const words = node.type === 'heading' || node.type === 'paragraph'
    if (words && isFrontMatter(source.slice(from, to), source.slice(front.bodyStart, from))) {
      say(
        from,
        'day-second',
        'the front matter of another day begins here, and one day.md holds one day',
        'write one folder with its own day.md for each day: move these keys, and the list below them, there',
      )
      break
    }
    if (node.type === 'heading') {
      const text = textOf(node).trim()
      const named = !title && node.depth === 1
      if (named) title = text
      spare = SPARE.test(text)
      unknown = named || spare || text === '' ? null : {text, offset: node.children[0]?.position?.start.offset ?? 0}
    } else if (node.type === 'list') {
      const into = spare ? spares : items
      const before = into.length
      readDayList(node, into, {source, place, say, wants})
      if (unknown !== null && into.length > before) sayHeading(unknown)
      unknown = null
    } else sayLoose(node)
  }

  function sayHeading({text, offset}: {readonly text: string; readonly offset: number}): void {
    const near = distance(text.split(/\s/, 1)[0]!.toLowerCase(), 'spare') <= 2
    say(
      offset,
      'day-heading',
      `the heading “${short(text)}” sets nothing apart: what is below it is baked like the rest`,
      near
        ? 'write “## Spare” over what is only to fill idle floor'
        : 'write “## Spare” if it is only to fill idle floor; take the heading out if not',
      'warning',
    )
  }

  /** A link that stands in no list, or in one that is quoted, asks for nothing. */
  function sayLoose(node: RootContent): void {
    const quoted = node.type === 'blockquote'
    visit(node, 'link', (link) => {
      const target = decode(link.url)
      if (!/\.(?:md|markdown|txt)(?:#|$)/i.test(target) || /^[a-z][a-z0-9+.-]*:/i.test(target)) return
      say(
        link.position?.start.offset ?? 0,
        'day-link',
        quoted
          ? `“${short(textOf(link))}” stands behind “>”, as a quotation, so it is not baked`
          : `“${short(textOf(link))}” stands in no list, so it is not baked`,
        quoted ? 'begin its line with “- ” and no “>” if it is to be baked' : 'begin its line with “- ” if it is to be baked',
        'warning',
      )
    })
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
      fireFrom === 1440
        ? 'midnight ends the day: write “fire from: 0:00” if it is to begin with the day'
        : 'write a later time; the next day is “tomorrow 1 pm”',
    )
    return {day: null, messages}
  }
  for (const {offset, title: what, by, hot} of wants)
    if (by <= fireFrom)
      say(
        offset,
        'day-wanted',
        `“${what}” is wanted by ${writeClock(by)}, before the first fire at ${writeClock(fireFrom)}`,
        by >= 0
          ? `write a later time, “${hot ? 'hot at' : 'wanted by'} ${writeClock(by + 1440)}” if it is for the next day, or an earlier “fire from”`
          : 'write a later time: what is wanted then has to be baked the day before',
        'error',
        [by, fireFrom, by + 1440],
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

/**
 * What a day that asks for nothing is told before it is planned: a fire for no dish would only burn wood. Such a day can be read, and its
 * oven logged, all the same.
 *
 * @param file the day's file, for the message
 * @param messages what was said of the day's files when they were read
 * @returns what keeps each of its links from being one to bake, as errors (rule `day-link`), or one error of the whole (`day-empty`); none where
 * the day has a dish to bake
 */
export function nothingAsked(day: Day, file: string, messages: readonly Message[]): Message[] {
  if (day.items.length > 0) return []
  const lines = messages.filter((m) => m.rule === 'day-link' && m.file === file)
  if (lines.length > 0) return lines.map((m) => ({...m, severity: 'error'}))
  return [
    {
      file,
      line: 1,
      column: 1,
      severity: 'error',
      rule: 'day-empty',
      reason: 'the day asks for no receipt yet',
      suggest: 'put a receipt on the day’s list: - [Name](receipts/name.md)',
    },
  ]
}
