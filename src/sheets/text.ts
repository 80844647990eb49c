/** Plain text for a terminal: wrapping and columns. Widths are in characters. */

/** Lines of at most `width` characters, broken at blanks; a longer word stands alone. */
export function wrap(text: string, width: number): string[] {
  const lines: string[] = []
  let line = ''
  for (const word of text.split(/\s+/).filter(Boolean)) {
    if (line === '') line = word
    else if (line.length + 1 + word.length <= width) line += ` ${word}`
    else {
      lines.push(line)
      line = word
    }
    while (line.length > width) {
      lines.push(line.slice(0, width))
      line = line.slice(width)
    }
  }
  if (line !== '' || lines.length === 0) lines.push(line)
  return lines
}

/** `text` wrapped with `first` before its first line and as many blanks before the others. */
export function hanging(first: string, text: string, width: number): string[] {
  return wrap(text, Math.max(10, width - first.length)).map((line, i) => (i === 0 ? first : ' '.repeat(first.length)) + line)
}

/** Rows of cells in columns of the given widths, each cell wrapped; two blanks between. */
export function columns(rows: ReadonlyArray<readonly string[]>, widths: readonly number[]): string[] {
  const lines: string[] = []
  for (const row of rows) {
    const cells = row.map((cell, i) => wrap(cell, widths[i] ?? 10))
    const height = Math.max(...cells.map((cell) => cell.length))
    for (let i = 0; i < height; i++)
      lines.push(
        cells
          .map((cell, column) => (cell[i] ?? '').padEnd(widths[column] ?? 10))
          .join('  ')
          .trimEnd(),
      )
  }
  return lines
}

/** Control characters but line feed and tab, which a receipt could use to write on the terminal. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is taken out
const controls = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/g

/** Text of a user's file made safe for a terminal: no escape sequence in it can take effect. */
export function printable(text: string): string {
  return text.replace(controls, '')
}

/** Bold on a terminal that shows it; the words alone otherwise. */
export function bold(text: string, colour: boolean): string {
  return colour ? `\u001b[1m${text}\u001b[22m` : text
}

/** Text inside Markdown: characters that would start mark-up, an HTML tag or a table cell are escaped. */
export function markdownText(text: string): string {
  return printable(text)
    .replace(/[\\`*_{}[\]<>#|~]/g, '\\$&')
    .replace(/&/g, '&amp;')
    .split('\n')
    .map((line, i) => (i === 0 ? line : line.trimStart()))
    .map((line, i, all) => (i === all.length - 1 ? line : line.trimEnd()))
    .filter((line, i, all) => line !== '' || i === 0 || i === all.length - 1)
    .join(' ')
    .replace(/^(\s*)([-+]|\d+[.)])(\s)/, '$1\\$2$3')
}

/** A Markdown table. Cells are escaped by the caller (`markdownText`). */
export function markdownTable(head: readonly string[], rows: ReadonlyArray<readonly string[]>): string {
  const line = (cells: readonly string[]): string => `| ${cells.map((cell) => cell.replace(/\n/g, ' ')).join(' | ')} |`
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n')
}
