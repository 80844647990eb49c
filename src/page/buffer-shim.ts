/** The two things the CSV library asks of Node's Buffer. In a browser nothing is one. */
export const Buffer = {
  isBuffer: (_: unknown): boolean => false,
  from: (bytes: readonly number[]): Uint8Array => Uint8Array.from(bytes),
}
