import {isMap, isScalar, isSeq, parseDocument} from 'yaml'

/** A bake day's folder as the command reads it: paths with `/`, and texts. */
export type Folder = ReadonlyMap<string, string>

const FENCE = /^\uFEFF?---[ \t]*\r?\n/

/** Where front matter lies; null where there is none that is closed. */
function span(text: string): {start: number; end: number} | null {
  const open = FENCE.exec(text)
  if (!open) return null
  const close = /^(?:---|\.\.\.)[ \t]*(?:\r?\n|$)/gm
  close.lastIndex = open[0].length
  const found = close.exec(text)
  return found ? {start: open[0].length, end: found.index} : null
}

/** A value of front matter as a form shows it. */
export type Stated = string | readonly string[] | Readonly<Record<string, string>>

/** The front matter of a text as plain words, for a form; faulty YAML gives nothing. */
export function stated(text: string): ReadonlyMap<string, Stated> {
  const at = span(text)
  const out = new Map<string, Stated>()
  if (!at) return out
  const root = parseDocument(text.slice(at.start, at.end), {prettyErrors: false}).contents
  if (!isMap(root)) return out
  for (const pair of root.items) {
    const key = isScalar(pair.key) ? String(pair.key.value) : ''
    if (isScalar(pair.value)) out.set(key, words(pair.value))
    else if (isSeq(pair.value))
      out.set(
        key,
        pair.value.items.map((one) => (isScalar(one) ? words(one) : '')),
      )
    else if (isMap(pair.value))
      out.set(
        key,
        Object.fromEntries(
          pair.value.items.map((one) => [
            isScalar(one.key) ? String(one.key.value) : '',
            isScalar(one.value) ? words(one.value) : '',
          ]),
        ),
      )
  }
  return out
}

/** A scalar as it was written: `7` stays 7 and `1/2` stays 1/2. */
function words(scalar: {value?: unknown; source?: string | undefined}): string {
  return scalar.value === null || scalar.value === undefined ? '' : (scalar.source ?? String(scalar.value))
}

/**
 * A text with keys of its front matter set; everything else, comments too, stays. A value of null takes the key out. Where there is no
 * front matter, it is begun.
 */
export function withStated(text: string, values: Readonly<Record<string, Stated | null>>): string {
  const at = span(text)
  const end = /\r\n/.test(text) ? '\r\n' : '\n'
  const document = parseDocument(at ? text.slice(at.start, at.end) : '', {prettyErrors: false})
  if (document.errors.length > 0 || (document.contents !== null && !isMap(document.contents))) return text
  if (document.contents === null) document.contents = document.createNode({}) as unknown as typeof document.contents
  for (const [key, value] of Object.entries(values)) {
    if (value === null) {
      document.delete(key)
      continue
    }
    const old = document.get(key, true)
    if (typeof value === 'string') {
      const node = document.createNode(plain(value))
      if (isScalar(old)) {
        node.comment = old.comment ?? null
        node.commentBefore = old.commentBefore ?? null
      }
      document.set(key, node)
    } else document.set(key, document.createNode(Array.isArray(value) ? value.map(plain) : value))
  }
  const empty = isMap(document.contents) && document.contents.items.length === 0
  const yaml = empty ? '' : document.toString({lineWidth: 0}).replace(/\n/g, end)
  if (at) return text.slice(0, at.start) + yaml + text.slice(at.end)
  return empty ? text : `---${end}${yaml}---${end}${end}${text.replace(/^\s+/, '')}`
}

/** Bare numbers, truths and lies are written as such; all else as words. */
function plain(value: string): string | number | boolean {
  if (/^(?:0|[1-9]\d{0,8})$/.test(value)) return Number(value)
  if (value === 'true' || value === 'false') return value === 'true'
  return value
}

/** One line of the list in `day.md`. */
export interface DayLine {
  readonly file: string
  readonly title: string
  readonly amount: string
  readonly wanted: string
}

const ENTRY = /^(\s*[-*+]\s+)\[([^\]]*)\]\(<?([^)>]*)>?\)(.*)$/

/** The line that asks for a receipt. */
export function dayLine(line: DayLine): string {
  const title =
    line.title
      .replace(/[[\]\\]/g, '\\$&')
      .replace(/\s+/g, ' ')
      .trim() || line.file
  const after = [line.amount.trim(), line.wanted.trim() ? `wanted by ${line.wanted.trim()}` : ''].filter(Boolean).join(', ')
  return `- [${title}](${encodeURI(line.file).replace(/[()]/g, (c) => (c === '(' ? '%28' : '%29'))})${after ? ` — ${after}` : ''}`
}

/** The text of `day.md` with one line of its list changed (1-based, as the reader gives it), or taken out where `line` is null. */
export function withDayLine(text: string, number: number, line: DayLine | null): string {
  const lines = text.split('\n')
  const old = lines[number - 1]
  if (old === undefined || !ENTRY.test(old.replace(/\r$/, ''))) return text
  const end = old.endsWith('\r') ? '\r' : ''
  if (line === null) lines.splice(number - 1, 1)
  else lines[number - 1] = dayLine(line) + end
  return lines.join('\n')
}

/** The text of `day.md` with a line more: after the last line of its list, or of the list under "Spare". */
export function withDayLineAdded(text: string, line: DayLine, spare: boolean): string {
  const lines = text.replace(/\s+$/, '').split('\n')
  const heading = lines.findIndex((l) => /^#{1,6}\s+spare\b/i.test(l))
  const from = spare ? heading : 0
  const to = spare || heading < 0 ? lines.length : heading
  if (spare && heading < 0) return `${lines.join('\n')}\n\n## Spare\n\n${dayLine(line)}\n`
  let last = -1
  for (let i = from; i < to; i++) if (ENTRY.test(lines[i]!.replace(/\r$/, ''))) last = i
  if (last >= 0) lines.splice(last + 1, 0, dayLine(line))
  else {
    let at = to
    while (at > 0 && lines[at - 1]!.trim() === '') at--
    lines.splice(at, 0, '', dayLine(line), ...(at < lines.length && lines[at]?.trim() !== '' ? [''] : []))
  }
  return `${lines.join('\n')}\n`
}

/** A text with its first heading set to `title`, or begun with it. */
export function withTitle(text: string, title: string): string {
  const at = span(text)
  const bodyAt = at ? text.indexOf('\n', at.end) + 1 || text.length : 0
  const body = text.slice(bodyAt)
  const heading = /^#[ \t]+.*$/m.exec(body)
  const line = `# ${title.replace(/\s+/g, ' ')}`
  if (heading) return text.slice(0, bodyAt) + body.slice(0, heading.index) + line + body.slice(heading.index + heading[0].length)
  return `${text.slice(0, bodyAt)}${at ? '\n' : ''}${line}\n${body.trim() ? `\n${body.replace(/^\n+/, '')}` : ''}`
}

/** The first heading of a text, or nothing. */
export function titleOf(text: string): string {
  const at = span(text)
  return /^#{1,6}[ \t]+(.+?)[ \t]*#*\s*$/m.exec(text.slice(at ? at.end : 0, (at ? at.end : 0) + 20_000))?.[1] ?? ''
}

/** A path below `receipts/` that no file has yet. */
export function freeReceiptPath(folder: Folder, name: string): string {
  const stem =
    name
      .normalize('NFKD')
      .replace(/[\u0300-\u036f]/g, '')
      .replace(/\.(?:md|markdown|txt)$/i, '')
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-+|-+$/g, '')
      .slice(0, 60) || 'receipt'
  let path = `receipts/${stem}.md`
  for (let n = 2; folder.has(path); n++) path = `receipts/${stem}-${n}.md`
  return path
}

/** The receipts of a folder, by name. */
export function receiptPaths(folder: Folder): string[] {
  return [...folder.keys()].filter((path) => /^receipts\/.+\.(?:md|markdown|txt)$/i.test(path)).sort()
}

/** Largest text that is put into a box to be typed in, UTF-16 units, and the longest line of one: more would make a phone stutter. */
export const TYPED = {text: 200_000, line: 20_000} as const
/** Largest text and line that are read at all. A whole cookery book is under 2 MB; no line of one is longer than a page. */
export const READ = {text: 4_000_000, line: 100_000} as const

/** Whether a text keeps within limits. */
export function within(text: string, limits: {readonly text: number; readonly line: number}): boolean {
  if (text.length > limits.text) return false
  let from = 0
  while (text.length - from > limits.line) {
    const end = text.lastIndexOf('\n', from + limits.line)
    if (end < from) return false
    from = end + 1
  }
  return true
}
