import {fallenTo} from '../lexicon/grammar-words.js'
import {OVENS} from './heat-words.js'
import type {Walk} from './walk.js'

/**
 * Degrees that the oven has come down to when a thing is set in: “leave it in the oven when that has cooled to about 60 °C”.
 */

const FALLEN: ReadonlySet<string> = new Set(fallenTo.verbs)
const WHEN: ReadonlySet<string> = new Set(fallenTo.when)
const DRAWN_FROM: ReadonlySet<string> = new Set(fallenTo.drawn)
/** How far before the degrees their verb stands, and how far behind them in German; and how far the “when” and the oven, tokens. */
const reach = {before: 6, behind: 3, sentence: 16} as const

/**
 * Are the degrees of tokens [from, to) such? Not those to which a thing drawn from the oven has cooled.
 */
export function isFallenTo(walk: Walk, from: number, to: number): boolean {
  const low = walk.floor(from, reach.before)
  const high = walk.limit(from, to - from + reach.behind)
  let verb = false
  for (let k = low; k < high; k++) if (FALLEN.has(walk.word(k))) verb = true
  if (!verb) return false
  const start = walk.floor(from, reach.sentence)
  const end = walk.limit(from, to - from + reach.sentence)
  let when = false
  let oven = false
  for (let k = start; k < end; k++) {
    if (k < from && WHEN.has(walk.word(k))) when = true
    if (OVENS.has(walk.word(k))) oven = true
    if (DRAWN_FROM.has(walk.word(k))) return false
  }
  return when && oven
}
