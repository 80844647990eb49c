/** Bytes of a text file: UTF-8, UTF-16 where it says so at its head, or else the usual encoding of old text files of Western Europe. */

/** Control characters that no text has, and bytes that Windows-1252 leaves undefined (WHATWG Encoding Standard, index windows-1252). */
const noText = (byte: number): boolean =>
  byte < 9 || (byte > 13 && byte < 32) || byte === 127 || [0x81, 0x8d, 0x8f, 0x90, 0x9d].includes(byte)

/** A file's text, and how it was read. */
export interface Decoded {
  readonly text: string
  /** The file does not say its encoding, and its bytes are not UTF-8: read as Windows-1252. */
  readonly guessed: boolean
  /** Its bytes are of no encoding that is read here; its text then has U+FFFD in it. */
  readonly broken: boolean
}

/**
 * A file's text. What is no text at all is `broken`, or has U+0000 in it.
 *
 * @param keepMark keep a byte order mark, as U+FEFF, so that offsets are those of the file as read
 */
export function decoded(bytes: Uint8Array, keepMark = false): Decoded {
  const as = (encoding: string, fatal = false): string => new TextDecoder(encoding, {fatal, ignoreBOM: keepMark}).decode(bytes)
  const read = (text: string): Decoded => ({text, guessed: false, broken: false})
  const [first, second] = bytes
  if (first === 0xff && second === 0xfe) return read(as('utf-16le'))
  if (first === 0xfe && second === 0xff) return read(as('utf-16be'))
  try {
    return read(as('utf-8', true))
  } catch {
    return bytes.some(noText)
      ? {text: as('utf-8'), guessed: false, broken: true}
      : {text: as('windows-1252'), guessed: true, broken: false}
  }
}
