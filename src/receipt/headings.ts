/** Where the headings of a file stand, found without parsing it. */

export interface Heading {
  readonly at: number
  /** Offset of its end, with the line under an underlined one. */
  readonly end: number
  readonly depth: number
  /** As it stands, with its mark-up. */
  readonly text: string
}

/** Is `from`–`to` white space? */
export function isBlank(source: string, from: number, to: number): boolean {
  for (let i = from; i < to; i++) {
    const c = source.charCodeAt(i)
    if (c !== 32 && c !== 10 && c !== 13 && c !== 9 && c !== 0xfeff) return false
  }
  return true
}

/** The headings of a file in order: `#` headings and underlined ones, not inside fenced code. Time is linear in the file. */
export function findHeadings(source: string, from: number): Heading[] {
  const found: Heading[] = []
  let fence = ''
  let lastStart = -1
  let lastEnd = -1
  let beforeBlank = true
  let at = from
  while (at < source.length) {
    let end = source.indexOf('\n', at)
    if (end < 0) end = source.length
    let first = at
    while (first < end && source.charCodeAt(first) === 32 && first - at < 4) first++
    const c = source.charCodeAt(first)
    const indented = first - at >= 4 || c === 9
    if (first >= end || c === 13) {
      lastStart = -1
      beforeBlank = true
    } else if ((c === 96 || c === 126) && !indented && source.startsWith(c === 96 ? '```' : '~~~', first)) {
      const mark = source.slice(first, first + 3)
      if (fence === '') fence = mark
      else if (fence === mark) fence = ''
      lastStart = -1
      beforeBlank = false
    } else if (fence !== '') {
      lastStart = -1
    } else if (c === 35 && !indented) {
      let depth = first
      while (depth < end && source.charCodeAt(depth) === 35) depth++
      const after = source.charCodeAt(depth)
      if (depth - first <= 6 && (depth >= end || after === 32 || after === 9 || after === 13))
        found.push({at, end, depth: depth - first, text: source.slice(first, Math.min(end, first + 200))})
      lastStart = -1
      beforeBlank = true
    } else if ((c === 61 || c === 45) && !indented && lastStart >= 0 && beforeBlank && isRule(source, first, end, c)) {
      found.push({
        at: lastStart,
        depth: c === 61 ? 1 : 2,
        end,
        text: source.slice(lastStart, Math.min(lastEnd, lastStart + 200)),
      })
      lastStart = -1
      beforeBlank = true
    } else {
      // Only a paragraph of one line is taken for an underlined heading: old texts rule off whole paragraphs with dashes.
      beforeBlank = lastStart < 0 && beforeBlank
      const starts = c === 45 || c === 42 || c === 62 || c === 124 || c === 60 || c === 43
      lastStart = starts || indented ? -1 : at
      lastEnd = end
      if (lastStart < 0) beforeBlank = false
    }
    at = end + 1
  }
  return found
}

function isRule(source: string, from: number, to: number, c: number): boolean {
  let i = from
  while (i < to && source.charCodeAt(i) === c) i++
  if (i - from < 2) return false
  return isBlank(source, i, to)
}
