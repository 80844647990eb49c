/** What was made of a text is made once: the last `most` of them are kept, the one longest unasked goes first. */
export function cached<A extends readonly unknown[], T>(
  most: number,
  keyOf: (...from: A) => string,
  make: (...from: A) => T,
): (...from: A) => T {
  const kept = new Map<string, T>()
  return (...from) => {
    const key = keyOf(...from)
    const before = kept.get(key)
    kept.delete(key)
    const made = before ?? make(...from)
    kept.set(key, made)
    const [oldest] = kept.keys()
    if (kept.size > most && oldest !== undefined) kept.delete(oldest)
    return made
  }
}

/** 64 bits of FNV-1a over texts, in two halves: tells one folder from another. */
export function fingerprint(texts: Iterable<string>): string {
  let one = 0x811c9dc5
  let two = 0x01000193
  for (const text of texts) {
    for (let i = 0; i < text.length; i++) {
      const c = text.charCodeAt(i)
      one = Math.imul(one ^ c, 0x01000193)
      two = Math.imul(two ^ c, 0x5bd1e995) ^ (two >>> 13)
    }
    // Between texts stands what no text holds, so that words moved from one to the next are another folder.
    one = Math.imul(one ^ 0x1ffff, 0x01000193)
    two = Math.imul(two ^ text.length, 0x5bd1e995)
  }
  return `${(one >>> 0).toString(16)}-${(two >>> 0).toString(16)}`
}
