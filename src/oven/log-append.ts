import type {Table} from 'mdast'
import {frontMatterSpan} from '../receipt/front-matter.js'
import {columns, markdown, readLog} from './log.js'
import type {LogEntry} from './note.js'

/** Entries put into a log's file, of which every other byte stays as it was. */

const HEAD = ['| time | reading | value | note |', '| --- | --- | --- | --- |']

/** A cell's text on one line, with bars escaped. */
function cellText(text: string): string {
  return text
    .replace(/[\r\n\t]+/g, ' ')
    .replace(/\|/g, '\\|')
    .trim()
}

/** What front matter states for a key, with any comment behind it; null where it has no such line, or nothing in it. */
function statedIn(yaml: string, key: string): string | null {
  for (const line of yaml.split(/[\r\n]/)) {
    if (!line.startsWith(key)) continue
    const rest = line.slice(key.length).trimStart()
    const value = rest.startsWith(':') ? rest.slice(1).trim() : ''
    if (value !== '') return value
  }
  return null
}

/** The log with the entry, or why it cannot be put there. */
export type Appended =
  | {readonly ok: true; readonly source: string}
  | {readonly ok: false; readonly reason: string; readonly suggest: string}

/**
 * Put an entry into a log, a row where its time belongs among the others. One line is inserted; every other byte stays as it was, with the file's own line ends.
 *
 * @param source the log as it stands now; empty: a new log is begun
 * @param entry from `parseNote`
 * @param options `date` of the log, for a new one
 * @returns the new text
 */
export function appendToLog(source: string, entry: LogEntry, options: {date: string}): Appended {
  const end = /\r\n/.test(source) ? '\r\n' : '\n'
  let text = source
  if (!text.trim()) text = `---\ndate: ${options.date}\n---\n\n${HEAD.join('\n')}\n`
  if (entry.what === 'field') {
    const span = frontMatterSpan(text)
    if (!span) text = `---${end}date: ${options.date}${end}---${end}${end}${text}`
    const at = frontMatterSpan(text)!
    if (!at.closed)
      return {ok: false, reason: 'the front matter of the log is never closed', suggest: 'put a line with --- after the last key'}
    const yaml = text.slice(at.start, at.end)
    const there = statedIn(yaml, entry.key)
    if (there !== null) {
      const comment = there.search(/\s#/)
      if ((comment < 0 ? there : there.slice(0, comment).trimEnd()) === entry.value) return {ok: true, source: text}
      return {
        ok: false,
        reason: `the log says already “${entry.key}: ${there}”`,
        suggest:
          entry.key === 'wood'
            ? 'change it in the file by hand if it is wrong; write “1 pm wood again 12 kg” of a second fire'
            : `change it in the file by hand if it is wrong; write “${entry.key} again ${entry.value}” of a second fire`,
      }
    }
    const line = `${entry.key}: ${cellText(entry.value)}${end}`
    return {ok: true, source: text.slice(0, at.end) + line + text.slice(at.end)}
  }
  const row = `| ${[entry.time, entry.reading, entry.value, entry.note].map(cellText).join(' | ')} |`.replace(/\|\s+\|$/, '| |')
  const tables = markdown.parse(text).children.filter((n): n is Table => n.type === 'table' && columns(n) !== null)
  const last = tables.at(-1)
  if (!last) {
    const gap = text.endsWith(`${end}${end}`) || text === '' ? '' : text.endsWith('\n') ? end : end + end
    return {ok: true, source: text + gap + HEAD.join(end) + end + row + end}
  }
  const later = rowAfter(text, tables, entry.at)
  const table = later?.table ?? last
  const where = columns(table)!
  const width = table.children[0]!.children.length
  const standard = where.time === 0 && where.reading === 1 && where.value === 2 && (where.note === 3 || where.note < 0)
  const cells = Array.from({length: width}, () => '')
  cells[where.time] = cellText(entry.time)
  cells[where.reading] = cellText(entry.reading)
  cells[where.value] = cellText(entry.note && where.note < 0 ? `${entry.value}, ${entry.note}` : entry.value)
  if (where.note >= 0) cells[where.note] = cellText(entry.note)
  const line = standard && width === 4 ? row : `| ${cells.join(' | ')} |`
  if (later) return {ok: true, source: `${text.slice(0, later.offset)}${line}${end}${text.slice(later.offset)}`}
  const at = table.position?.end.offset ?? text.length
  return {ok: true, source: `${text.slice(0, at)}${end}${line}${text.slice(at)}`}
}

/** The first row of the log that is later than a time, where its line begins: rows stand in their order of time. Null where none is. */
function rowAfter(text: string, tables: readonly Table[], at: number): {readonly table: Table; readonly offset: number} | null {
  const {log} = readLog(text, 'log.md')
  const line = log?.rows.find((one) => one.at > at)?.line
  if (line === undefined) return null
  for (const table of tables)
    for (const {position} of table.children)
      if (position?.start.line === line) return {table, offset: text.lastIndexOf('\n', position.start.offset! - 1) + 1}
  return null
}
