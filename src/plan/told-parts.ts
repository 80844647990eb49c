import {share} from './followed.js'
import type {Told} from './told.js'

/** Parts of a dish with what the log tells of them, and vessels taken out of a list of such. */

/** How many vessels some parts are together. */
export const vesselsIn = (parts: readonly {readonly count: number}[]): number => parts.reduce((sum, {count}) => sum + count, 0)

/** Take so many vessels off the front of a list. */
export function taken(parts: Told[], count: number): Told[] {
  const out: Told[] = []
  for (let left = count; left > 0 && parts.length > 0; ) {
    const {waits: _, stays: __, ...part} = parts[0]!
    const [some, rest] = share(part, left)
    left -= some.count
    out.push(some)
    if (rest) parts.splice(0, 1, {...parts[0]!, ...rest})
    else parts.shift()
  }
  return out
}
