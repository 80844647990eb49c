/** Line and column of an offset, both 1-based; column counts UTF-16 units as vfile and editors do. */
export interface Place {
  readonly line: number
  readonly column: number
}

/**
 * Index a text's lines once, then find places in it.
 *
 * @param source the whole file as read
 * @returns a function from UTF-16 offset (clamped to the text) to its place
 */
export function lineIndex(source: string): (offset: number) => Place {
  // Most texts have nothing to say, and ask for no place.
  let found: number[] | null = null
  return (offset) => {
    if (found === null) {
      found = [0]
      for (let i = source.indexOf('\n'); i >= 0; i = source.indexOf('\n', i + 1)) found.push(i + 1)
    }
    const starts = found
    const at = Math.max(0, Math.min(offset, source.length))
    let low = 0
    let high = starts.length - 1
    while (low < high) {
      const middle = (low + high + 1) >> 1
      if (starts[middle]! <= at) low = middle
      else high = middle - 1
    }
    return {line: low + 1, column: at - starts[low]! + 1}
  }
}
