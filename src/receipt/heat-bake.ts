import {cardinals} from '../lexicon/grammar-words.js'
import type {Hedge} from '../lexicon/schema.js'
import {readCompany} from './heat-comparison.js'
import type {HeatReadings} from './heat-readings.js'
import {isRunWord, runAt} from './heat-run.js'
import {
  ADJECTIVES,
  ADVERB_STOPS,
  ADVERBS,
  AFTER_ADJECTIVE,
  AS_FOR,
  DETERMINERS,
  HEAT_NOUNS,
  HEDGES,
  longest,
  OVENS,
} from './heat-words.js'

/**
 * Heat said of the baking: “bake it gently”, “a slow baking”, “bake it as you do manchet”.
 */

/** The heat of the word for baking at token `i`. */
export function readBake(readings: HeatReadings, i: number): void {
  const tokens = readings.tokens
  const block = tokens[i]!.block
  const limit = readings.limit(i, 11)
  let hedged: Hedge | null = null
  for (let j = i + 1; j < limit; j++) {
    const word = readings.word(j)
    if (word === ',' || tokens[j]!.kind === 'mark') {
      const added = word === ',' ? longest(ADVERBS, tokens, j + 1, limit) : null
      if (added !== null && (readings.word(added.end - 1).endsWith('ly') || added.end === limit)) continue
      break
    }
    // "bake it as you do manchet"
    if (word === 'as' && /^(?:you|ye|they|we|she)$/.test(readings.word(j + 1))) {
      let k = j + 2
      while (k < j + 6 && /^(?:would|do|did|use|to|bake|commonly|usually|a|an|your|other)$/.test(readings.word(k))) k++
      const goods = k > j + 2 ? longest(AS_FOR, tokens, k, limit) : null
      if (goods !== null) {
        readings.put(i, goods.end, goods.rows, null, 4, ['heat by comparison with another baking'])
        break
      }
    }
    if (ADVERB_STOPS.has(word)) break
    if (OVENS.has(word) && !DETERMINERS.has(readings.word(j - 1))) break
    const adverb = longest(ADVERBS, tokens, j, limit)
    if (adverb !== null) {
      const next = tokens[adverb.end]
      const nextWord = next?.block === block ? next.word : ''
      if (HEAT_NOUNS.has(nextWord) || (nextWord !== '' && ADJECTIVES.next?.has(nextWord))) break
      if ((word === 'hot' || word === 'fast') && next !== undefined && next.block === block && next.kind === 'word') break
      if (
        !word.endsWith('ly') &&
        next !== undefined &&
        next.block === block &&
        next.kind === 'word' &&
        !AFTER_ADJECTIVE.has(nextWord) &&
        // "bake quick fifteen minutes"
        !(Object.hasOwn(cardinals, nextWord) || /^(?:a|an|about|half|three)$/.test(nextWord))
      )
        break
      readings.put(j - i <= 5 ? i : j, adverb.end, adverb.rows, hedged, 4)
      break
    }
    const hedge = longest(HEDGES, tokens, j, limit)
    if (hedge !== null && hedge.rows[0]!.effect !== 'none') {
      hedged = hedge.rows[0]!
      j = hedge.end - 1
      continue
    }
    if (word === 'with' && readCompany(readings, j, limit)) break
  }
  // "requires a gentle baking"
  if (tokens[i]!.word === 'baking') {
    let j = i
    while (j > 0 && i - j < 6 && tokens[j - 1]!.block === block && isRunWord(readings, j - 1)) j--
    const run = j < i && /^an?$/.test(readings.word(j - 1)) ? runAt(readings, j, i) : null
    if (run !== null) {
      readings.put(j - 1, i + 1, run.rows, run.hedge, 4)
      return
    }
  }
  // "slow baking", "gently baked", "baked in a slow heat" has its own reading
  const previous = readings.word(i - 1)
  if (tokens[i - 1]?.block === block && ADVERBS.next?.has(previous) && !/^(?:easily|evenly|softly|tenderly)$/.test(previous)) {
    const plain = !previous.endsWith('ly')
    if (previous !== 'hot' && previous !== 'fast' && (!plain || tokens[i]!.word === 'baking')) {
      const adverb = longest(ADVERBS, tokens, i - 1, i)
      if (adverb !== null) readings.put(i - 1, i + 1, adverb.rows, null, 3)
    }
  }
}
