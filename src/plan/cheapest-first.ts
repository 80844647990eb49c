/**
 * Put choices in order, the cheapest first; of those that cost the same, the one that stood first.
 *
 * Merged from the bottom up (Knuth, The Art of Computer Programming vol. 3, 5.2.4, algorithm S): a typed array's own `sort` calls its
 * comparison for every pair, which takes three times as long, and most lists are in order already.
 *
 * @param choices Indices of `cost`; put in order in place.
 * @returns `choices`
 */
export function cheapestFirst(choices: Uint32Array, cost: Float64Array): Uint32Array {
  if (isInOrder(choices, cost)) return choices
  let from: Uint32Array = choices
  let to: Uint32Array = new Uint32Array(choices.length)
  for (let width = 1; width < choices.length; width *= 2) {
    for (let low = 0; low < choices.length; low += 2 * width) merge(from, to, cost, low, width)
    ;[from, to] = [to, from]
  }
  if (from !== choices) choices.set(from)
  return choices
}

function isInOrder(choices: Uint32Array, cost: Float64Array): boolean {
  for (let i = 1; i < choices.length; i++) if (cost[choices[i]!]! < cost[choices[i - 1]!]!) return false
  return true
}

/** Two neighbouring runs of at most so many, each in order, as one. */
function merge(from: Uint32Array, to: Uint32Array, cost: Float64Array, low: number, width: number): void {
  const middle = Math.min(low + width, from.length)
  const end = Math.min(middle + width, from.length)
  let left = low
  let right = middle
  for (let k = low; k < end; k++)
    to[k] = left < middle && (right >= end || cost[from[left]!]! <= cost[from[right]!]!) ? from[left++]! : from[right++]!
}
