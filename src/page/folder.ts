/** A bake day's folder as the command reads it: paths with `/`, and texts. */
export type Folder = ReadonlyMap<string, string>

const FENCE = /^\uFEFF?---[ \t]*\r?\n/

/** Where front matter lies; null where there is none that is closed. */
export function span(text: string): {start: number; end: number} | null {
  const open = FENCE.exec(text)
  if (!open) return null
  const close = /^(?:---|\.\.\.)[ \t]*(?:\r?\n|$)/gm
  close.lastIndex = open[0].length
  const found = close.exec(text)
  return found ? {start: open[0].length, end: found.index} : null
}

/** One line of the list in `day.md`. */
export interface DayLine {
  readonly file: string
  readonly title: string
  readonly amount: string
  /** The time by which it is wanted, or “hot at” one. */
  readonly wanted: string
}

const HOT = /^hot\s+(?:by|at|for)\s/i

/** The line that asks for a receipt. */
export function dayLine(line: DayLine): string {
  const title =
    line.title
      .replace(/[[\]\\]/g, '\\$&')
      .replace(/\s+/g, ' ')
      .trim() || line.file
  const wanted = line.wanted.trim()
  const by = wanted === '' ? '' : HOT.test(wanted) ? wanted : `wanted by ${wanted}`
  const after = [line.amount.trim(), by].filter(Boolean).join(', ')
  return `- [${title}](${encodeURI(line.file).replace(/[()]/g, (c) => (c === '(' ? '%28' : '%29'))})${after ? ` — ${after}` : ''}`
}

const LISTED = /^\s*[-*+]\s+\[((?:\\.|[^\]\\])*)\]\(<?([^)>]*)>?\)\s*(?:[—–:-]+)?\s*(.*)$/

/** A line of the list, where it stands and under which heading. */
export interface Listed extends DayLine {
  readonly line: number
  readonly spare: boolean
}

/**
 * The lines of the day's list as they stand in the text, for the form. What they mean is read by `readDay`; here they are only cut into
 * the boxes one types in.
 */
export function listed(text: string): Listed[] {
  let spare = false
  return text.split('\n').flatMap((raw, i): Listed[] => {
    const line = raw.replace(/\r$/, '')
    if (/^#{1,6}\s/.test(line)) spare = /^#{1,6}\s+spare\b/i.test(line)
    const m = LISTED.exec(line)
    if (!m) return []
    const after = m[3]!.trim()
    const wanted =
      /(?:^|[,;]?\s*)(?:(?:wanted|ready|needed)\s+(?:by|at|for)\s+|\b(?:(?:wanted|ready|needed)\s+)?(?=hot\s+(?:by|at|for)\s))(.+?)\s*[.;]?$/is.exec(
        after,
      )
    const amount = (wanted ? after.slice(0, wanted.index) : after).replace(/[,;.\s]+$/, '')
    let file = m[2]!
    try {
      file = decodeURI(file).replace(/%28/g, '(').replace(/%29/g, ')')
    } catch {
      // An address that cannot be decoded is a name as it stands.
    }
    return [{file, title: m[1]!.replace(/\\(.)/g, '$1'), amount, wanted: wanted?.[1] ?? '', line: i + 1, spare}]
  })
}

/** The text of `day.md` with one line of its list changed (1-based, as the reader gives it), or taken out where `line` is null. */
export function withDayLine(text: string, number: number, line: DayLine | null): string {
  const lines = text.split('\n')
  const old = lines[number - 1]
  if (old === undefined || !LISTED.test(old.replace(/\r$/, ''))) return text
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
  for (let i = from; i < to; i++) if (LISTED.test(lines[i]!.replace(/\r$/, ''))) last = i
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

/** Whether a file of this name is a text that may be taken in. */
export const isText = (name: string): boolean => /\.(?:md|markdown|txt)$/i.test(name) && !/(?:^|\/)(?:__MACOSX\/|\._)/.test(name)
