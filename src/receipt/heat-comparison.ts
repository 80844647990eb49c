import type {OvenWord} from '../lexicon/schema.js'
import {bandOf} from './degrees.js'
import type {HeatReadings} from './heat-readings.js'
import {
  AS_FOR,
  BAKES,
  COMPARATIVES,
  DETERMINERS,
  EATEN_WITH_BREAD,
  HEATED,
  LIKENESS,
  longest,
  type Match,
  NEGATIVES,
  OVENS,
  SETS_IN,
  UNKNOWN_HEAT,
  WITH,
} from './heat-words.js'
import type {Walk} from './walk.js'

/**
 * Heat told by another baking: “as hot as for bread”, “as you do manchet”, and what bakes in its company.
 */

/** "Hotter than for bread": by how much. From memory. */
const COMPARATIVE_CELSIUS = 20

/** "then" was written for "than": "hotter then for pies". */
function isLikeness(walk: Walk, i: number): boolean {
  const word = walk.word(i)
  return LIKENESS.has(word) || (word === 'then' && COMPARATIVES.has(walk.word(i - 1)))
}

/** From a word of heat or likeness on: "… as for bread", "… enough for pies", "… as you do for biscuits". */
export function comparisonAt(walk: Walk, at: number, limit: number): Match<OvenWord> | null {
  const tokens = walk.tokens
  let likeness = false
  for (let j = at; j < Math.min(limit, at + 10); j++) {
    const word = walk.word(j)
    if (isLikeness(walk, j)) likeness = true
    if (!likeness) continue
    if (word === 'for' || ((word === 'bake' || word === 'bakes') && /^(?:to|will|would)$/.test(walk.word(j - 1)))) {
      let k = j + 1
      while (k < limit && (DETERMINERS.has(walk.word(k)) || walk.word(k) === 'baking' || walk.word(k) === 'common')) {
        const direct = longest(AS_FOR, tokens, k, limit)
        if (direct !== null) return direct
        k++
      }
      const found = longest(AS_FOR, tokens, k, limit)
      if (found !== null) return found
      return null
    }
    if (word === ',' && j > at + 1) return null
  }
  return null
}

/** "an oven as hot as for marchpane": goods no row knows. `i` is at "for". */
function unknownGoods(walk: Walk, i: number, heat: number, limit: number): Match<OvenWord> | null {
  if (walk.word(i) !== 'for' || walk.word(i - 1) !== 'as' || !OVENS.has(walk.word(heat)) || i + 1 >= limit) return null
  let k = i + 1
  if (DETERMINERS.has(walk.word(k))) k++
  if (walk.tokens[k]?.kind !== 'word' || k >= limit) return null
  return {rows: UNKNOWN_HEAT, end: k + 1}
}

/** "for" or "bake" at token `i`: the end of a comparison whose oven or heat stands before it. */
export function readAsFor(readings: HeatReadings, i: number): void {
  const tokens = readings.tokens
  const low = readings.floor(i, 9)
  let likeness = -1
  let heat = -1
  for (let k = i - 1; k >= low; k--) {
    const word = readings.word(k)
    if (likeness < 0 && i - k <= 7 && isLikeness(readings, k)) likeness = k
    if (OVENS.has(word) || HEATED.has(word)) heat = k
    else if (BAKES.has(word) && i - k <= 5) heat = k
  }
  if (likeness < 0 || heat < 0) return
  const limit = readings.limit(i, 8)
  const found = comparisonAt(readings, likeness, limit) ?? unknownGoods(readings, i, heat, limit)
  if (found === null || found.end <= i) return
  const said = OVENS.has(readings.word(likeness - 1)) ? readings.word(likeness - 2) : readings.word(likeness - 1)
  const hotter = /^(?:hotter|quicker|brisker|fiercer|warmer)$/.test(said)
  const cooler =
    /^(?:cooler|slower|slacker|gentler)$/.test(said) ||
    (readings.word(likeness - 2) === 'so' && readings.near(likeness - 2, 5, 1, NEGATIVES))
  const shift = hotter ? COMPARATIVE_CELSIUS : cooler ? -COMPARATIVE_CELSIUS : 0
  const rows =
    shift === 0
      ? found.rows
      : found.rows.map((row) => {
          const celsius = {low: row.celsius.low + shift, high: row.celsius.high + shift}
          return {...row, celsius, band: bandOf(celsius.low, celsius.high)}
        })
  let from = Math.min(heat, likeness)
  if (DETERMINERS.has(readings.word(from - 1)) && tokens[from - 1]!.block === tokens[i]!.block) from--
  readings.put(from, found.end, rows, null, rows === UNKNOWN_HEAT ? 2 : 6, ['heat by comparison with another baking'])
}

/** "bake it with brown bread", "in with the bread": `i` is at "with". Was there such company? */
export function readCompany(readings: HeatReadings, i: number, limit: number): boolean {
  let k = i + 1
  while (k < limit && DETERMINERS.has(readings.word(k))) k++
  const things = longest(WITH, readings.tokens, k, limit)
  if (things === null) return false
  const next = readings.word(things.end)
  if (/^(?:crumbs?|sauce|dough|sugar|paste|cut|sippets|crust|under|over|round)$/.test(next)) return false
  // "with bread and butter", but "with the bread, and let it stay"
  if (next === 'and' && (EATEN_WITH_BREAD.has(readings.word(things.end + 1)) || !readings.near(i, 12, 1, SETS_IN))) return false
  readings.put(i, things.end, things.rows, null, 4, ['baked in company'])
  return true
}
