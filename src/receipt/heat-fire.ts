import {clauseAt} from './heat-clause.js'
import type {HeatReadings} from './heat-readings.js'
import {isRunWord, runAt} from './heat-run.js'
import {
  AS_FOR,
  BAKEN,
  BE,
  BRATEN,
  CONTEXT_BAKES,
  COPULAS,
  DETERMINERS,
  DRIES,
  FIXED,
  LINKS,
  longest,
  OVEN_OR_BAKE,
  OVENS,
  POT_WORDS,
  PREPOSITIONS,
  UPON,
} from './heat-words.js'
import type {Walk} from './walk.js'

/**
 * Heat said of the fire, the stove or the heat itself where the receipt bakes, and the lexicon’s whole phrases.
 */

/** A German word for baking so many tokens about token `i`, past stops too: "bei mittlerer Hitze ca. 40 Min. backen". */
function bakesNear({tokens}: Walk, i: number, reach: number): boolean {
  return tokens.slice(Math.max(0, i - reach), i + reach).some(({block, word}) => block === tokens[i]!.block && BAKEN.has(word))
}

/** The sentence before walk one bakes. */
function followsBaking(walk: Walk, i: number): boolean {
  const low = walk.floor(i, 40)
  return low > 1 && walk.tokens[low - 1]!.block === walk.tokens[i]!.block && walk.near(low - 2, 25, 1, CONTEXT_BAKES)
}

/** A phrase of the lexicon that says a heat as a whole, from token `i` on. */
export function readFixed(readings: HeatReadings, i: number): void {
  const found = longest(FIXED, readings.tokens, i, readings.limit(i, 9))
  if (found === null) return
  const row = found.rows[0]!
  if (row.id === 'heat-subsides' && !readings.near(i, 60, 60, OVEN_OR_BAKE) && !followsBaking(readings, i)) return
  // "Bei mittlerer Hitze" is said of a pot as well.
  if (/^(?:mittel)?hitze/.test(row.id) && readings.near(i, 12, 12, POT_WORDS)) return
  const bakes = bakesNear(readings, i, 14) && (readings.near(i, 12, 12, OVENS) || !readings.near(i, 12, 12, BRATEN))
  if (row.id.startsWith('hitze') && !bakes) return
  readings.put(i, found.end, found.rows, null, 4)
}

/** American books of the 1870s bake "in a hot stove"; what stands on one is boiled. */
export function isBakingStove(walk: Walk, i: number): boolean {
  return !walk.near(i, 7, 1, UPON) && !walk.near(i, 12, 12, POT_WORDS) && walk.near(i, 14, 12, DRIES)
}

/** "bake with a slow fire", "in the oven when the fire is low": not a fire that something hangs before or stands over. `i` is at "fire". */
export function readFire(readings: HeatReadings, i: number): void {
  const tokens = readings.tokens
  const block = tokens[i]!.block
  if (readings.near(i, 10, 8, UPON) || readings.near(i, 12, 8, POT_WORDS) || !readings.near(i, 12, 8, OVEN_OR_BAKE)) return
  let j = i
  while (j > 0 && i - j < 6 && tokens[j - 1]!.block === block && isRunWord(readings, j - 1)) j--
  const determined = tokens[j - 1]?.block === block && DETERMINERS.has(readings.word(j - 1))
  const run = j < i ? runAt(readings, j, i) : null
  if (run !== null) {
    if (determined && readings.word(j - 2) === 'with') readings.put(j - 1, i + 1, run.rows, run.hedge, 3)
    return
  }
  if (!determined || j !== i || !BE.has(readings.word(i + 1)) || !readings.near(i, 12, 8, OVENS)) return
  const right = clauseAt(readings, i + 1, i, false)
  if (right !== null && !right.conditional) readings.put(i - 1, right.end, right.rows, right.hedge, 3)
}

/** "a moderate heat", "the heat should be gentle" where the sentence bakes: `i` is at "heat", "temperature" or "stove". */
export function readHeatNoun(readings: HeatReadings, i: number): void {
  const tokens = readings.tokens
  const stove = readings.word(i) === 'stove'
  if (FIXED.next?.has(readings.word(i))) readFixed(readings, i)
  const block = tokens[i]!.block
  const baking = readings.near(i, 40, 40, CONTEXT_BAKES) || followsBaking(readings, i)
  // In a receipt that bakes, heat is the oven's unless the sentence has a pot in it.
  if (readings.near(i, baking ? 12 : 60, baking ? 6 : 60, POT_WORDS)) return
  // "at bread heat", "a biscuit heat"
  if (!stove) {
    for (let k = Math.max(readings.floor(i, 4), i - 3); k < i; k++) {
      const goods = longest(AS_FOR, tokens, k, i)
      if (goods === null || goods.end !== i) continue
      readings.put(DETERMINERS.has(readings.word(k - 1)) ? k - 1 : k, i + 1, goods.rows, null, 5, [
        'heat by comparison with another baking',
      ])
      return
    }
  }
  let noun = i
  if (readings.word(i - 1) === 'of' && /^degrees?$/.test(readings.word(i - 2))) noun = i - 2
  else if (/^an?$/.test(readings.word(i - 1)) && i >= 3 && /^(?:so|as|too)$/.test(readings.word(i - 3))) noun = i - 1
  let j = noun
  while (j > 0 && noun - j < 8 && tokens[j - 1]!.block === block && isRunWord(readings, j - 1)) j--
  const run = j < noun ? runAt(readings, j, noun) : null
  if (run !== null) {
    if (stove && (run.rows[0]!.band === 'hot' || !readings.near(i, 14, 4, DRIES))) return
    let from = j
    while (from < run.first && (readings.word(from) === ',' || LINKS.has(readings.word(from)))) from++
    if (tokens[from - 1]?.block === block && DETERMINERS.has(readings.word(from - 1))) from--
    readings.put(from, i + 1, run.rows, run.hedge, 3)
    return
  }
  if (stove) return
  // "as much heat as flour bread"
  if (/^(?:as|than)$/.test(readings.word(i + 1))) {
    let k = i + 2
    while (k < i + 5 && (DETERMINERS.has(readings.word(k)) || readings.word(k) === 'for')) k++
    const found = longest(AS_FOR, tokens, k, readings.limit(i, 10))
    if (found !== null) {
      let from = i
      while (
        from > 0 &&
        i - from < 4 &&
        tokens[from - 1]!.block === block &&
        /^(?:about|as|much|the|same|more|less|rather)$/.test(readings.word(from - 1))
      )
        from--
      readings.put(from, found.end, found.rows, null, 6, ['heat by comparison with another baking'])
      return
    }
  }
  // "the heat (of the oven) should be …"; the verb "heat the oven" is the oven's own clause.
  if (!DETERMINERS.has(readings.word(i - 1))) return
  let at = i + 1
  if (readings.word(at) === 'of' && DETERMINERS.has(readings.word(at + 1)) && OVENS.has(readings.word(at + 2))) at += 3
  if (!COPULAS.has(readings.word(at)) || PREPOSITIONS.has(readings.word(at))) return
  const right = clauseAt(readings, at, i, false)
  if (right !== null && !right.conditional) readings.put(i - 1, right.end, right.rows, right.hedge, 3)
}
