/** Bytes of a text file: UTF-8, UTF-16 where it says so at its head, or else the usual encoding of old text files of Western Europe. */

/** Control characters that no text has, and bytes that Windows-1252 leaves undefined (WHATWG Encoding Standard, index windows-1252). */
const noText = (byte: number): boolean =>
  byte < 9 || (byte > 13 && byte < 32) || byte === 127 || [0x81, 0x8d, 0x8f, 0x90, 0x9d].includes(byte)

/** A file's text, and whether its encoding had to be guessed. What is no text at all has U+0000 or U+FFFD in it. */
export function decoded(bytes: Uint8Array): {readonly text: string; readonly guessed: boolean} {
  const [first, second] = bytes
  if (first === 0xff && second === 0xfe) return {text: new TextDecoder('utf-16le').decode(bytes), guessed: false}
  if (first === 0xfe && second === 0xff) return {text: new TextDecoder('utf-16be').decode(bytes), guessed: false}
  try {
    return {text: new TextDecoder('utf-8', {fatal: true}).decode(bytes), guessed: false}
  } catch {
    if (bytes.some(noText)) return {text: new TextDecoder().decode(bytes), guessed: false}
    return {text: new TextDecoder('windows-1252').decode(bytes), guessed: true}
  }
}
