/** Rows of bits, 32 in a number. */

/** How many bits of a row are set (Warren, Hacker's Delight, §5-1). */
export function countBits(bits: Int32Array): number {
  let count = 0
  for (let i = 0; i < bits.length; i++) {
    let v = bits[i]!
    if (v === 0) continue
    v -= (v >>> 1) & 0x55555555
    v = (v & 0x33333333) + ((v >>> 2) & 0x33333333)
    count += (((v + (v >>> 4)) & 0x0f0f0f0f) * 0x01010101) >>> 24
  }
  return count
}

/** The first set bit of a row of bits, from one on; −1 where there is none. */
export function nextBit(bits: Int32Array, from: number): number {
  let i = from >> 5
  if (i >= bits.length) return -1
  let word = bits[i]! & (-1 << (from & 31))
  while (word === 0) {
    i++
    if (i >= bits.length) return -1
    word = bits[i]!
  }
  return (i << 5) + 31 - Math.clz32(word & -word)
}

/** True where no bit of a row is set. */
export function isEmpty(bits: Int32Array): boolean {
  return bits.every((word) => word === 0)
}
