/**
 * Numbers from 0 to 1, the same of each seed, so that the same input gives the same floor and the same plan: mulberry32 (public domain), a small
 * generator good enough to choose neighbourhoods.
 */
export function generator(seed: number): () => number {
  let a = seed >>> 0
  return () => {
    a = (a + 0x6d2b79f5) >>> 0
    let t = a
    t = Math.imul(t ^ (t >>> 15), t | 1)
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61)
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

/** Put a list in a random order, in place. */
export function shuffle(list: number[], random: () => number): void {
  for (let i = list.length - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1))
    const t = list[i]!
    list[i] = list[j]!
    list[j] = t
  }
}
