import type {Hedge} from '../lexicon/schema.js'
import {clauseAt} from './heat-clause.js'
import type {HeatReadings} from './heat-readings.js'
import {isRunWord, runAt} from './heat-run.js'
import {
  ADJECTIVES,
  ADVERBS,
  BAKES,
  BETWEEN_TIMES,
  COMPARATIVES,
  DETERMINERS,
  HEDGE_CAP,
  HEDGES,
  LEAD_IN,
  LINKS,
  longest,
  NEUTRAL,
  NOT_OVENS,
  STRICT_ADVERBS,
  UNKNOWN_HEAT,
  WARNINGS,
} from './heat-words.js'
import type {Walk} from './walk.js'

/**
 * Heat said of the oven by name: before it, behind it, and by the way a thing is done in it.
 */

/** "stew gently for two hours in the oven": only a time stands between. */
function readAdverbBefore(readings: HeatReadings, preposition: number): boolean {
  const low = readings.floor(preposition, 9)
  for (let k = preposition - 1; k >= low; k--) {
    const t = readings.tokens[k]!
    if (t.kind === 'word' && STRICT_ADVERBS.has(t.word)) {
      if (!t.word.endsWith('ly') || BAKES.has(readings.word(k - 1))) return false
      const adverb = longest(ADVERBS, readings.tokens, k, k + 1)
      if (adverb === null) return false
      readings.put(k, k + 1, adverb.rows, null, 3)
      return true
    }
    if (t.kind === 'mark' || (t.kind === 'word' && !BETWEEN_TIMES.has(t.word))) return false
  }
  return false
}

/** "if the oven be hot", "should the oven be very brisk": it tells what then happens. */
function isConditional(walk: Walk, from: number, oven: number): boolean {
  const low = Math.max(walk.floor(oven, 6), from - 2)
  for (let k = low; k < oven; k++) if (/^(?:if|unless|lest|should|because)$/.test(walk.word(k))) return true
  return false
}

/** "so slow an oven", "rather too hot an oven": the article stands inside. */
function insideArticle(walk: Walk, from: number, to: number): Hedge | null {
  for (let k = from; k < to; k++) if (walk.word(k) === 'too') return HEDGE_CAP
  return null
}

/** The heat of the oven named at token `i`: "a rather slow oven", "let the oven be quick", "stew gently in the oven". */
export function readOven(readings: HeatReadings, i: number): void {
  const tokens = readings.tokens
  const block = tokens[i]!.block
  // What stands before it.
  let j = i
  while (j > 0 && i - j < 10 && tokens[j - 1]!.block === block && isRunWord(readings, j - 1)) j--
  for (let k = Math.max(0, i - 3); k < i; k++) if (NOT_OVENS.has(tokens[k]!.word) && k >= j - 1) return
  if (tokens[j - 1] !== undefined && NOT_OVENS.has(readings.word(j - 1))) return
  // "so slow an oven", "as hot an oven": the article stands behind the word.
  if (j === i && /^an?$/.test(readings.word(i - 1))) {
    let k = i - 1
    while (k > 0 && i - k < 8 && tokens[k - 1]!.block === block && isRunWord(readings, k - 1)) k--
    if (k < i - 1 && /^(?:so|as|too|how|not|rather)$/.test(readings.word(k)) && runAt(readings, k, i - 1) !== null) j = k
  }
  // "the hotter the oven the better"
  if (j === i && readings.word(i - 1) === 'the' && readings.word(i - 3) === 'the' && COMPARATIVES.has(readings.word(i - 2))) {
    const found = longest(ADJECTIVES, tokens, i - 2, i - 1)
    if (found !== null) readings.put(i - 3, i + 1, found.rows, null, 4)
    return
  }
  const run = j < i ? runAt(readings, j, i) : null
  let from = j
  if (run !== null) {
    while (
      from < run.first &&
      (readings.word(from) === ',' || LINKS.has(readings.word(from))) &&
      readings.word(from) !== 'rather'
    )
      from++
    if (tokens[from - 1]?.block === block && DETERMINERS.has(readings.word(from - 1))) from--
    // "rather a slow oven", "not too hot an oven"
    let hedge = run.hedge
    let k = from
    while (k > 0 && from - k < 2 && tokens[k - 1]!.block === block && HEDGES.next?.has(readings.word(k - 1))) k--
    const before = longest(HEDGES, tokens, k, from)
    if (k < from && before !== null && before.end === from && before.rows[0]!.effect !== 'none') {
      hedge ??= before.rows[0]!
      from = k
    }
    const article = insideArticle(readings, from, i)
    if (article !== null) hedge ??= article
    const right = clauseAt(readings, i + 1, i, true)
    const capped = right?.hedge?.effect === 'cap' ? right.hedge : null
    readings.put(
      from,
      Math.max(i + 1, right?.end ?? 0),
      right !== null && capped === null ? right.rows : run.rows,
      capped ?? hedge,
      5,
    )
    return
  }
  const right = clauseAt(readings, i + 1, i, false)
  if (right !== null) {
    let start = i
    const low = readings.floor(i, 7)
    // "not to have the oven too fierce", "let the oven be quick", "take care the oven is hot"
    while (start > low && LEAD_IN.has(readings.word(start - 1))) start--
    while (start < i && /^(?:and|of|it|in|if|when|that|with)$/.test(readings.word(start))) start++
    let hedge = right.hedge
    const warned = readings.near(i, 7, 1, WARNINGS)
    if (right.conditional && !warned) return
    if (warned && hedge === null && right.too) hedge = HEDGE_CAP
    readings.put(start, right.end, right.rows, hedge, 5, [], isConditional(readings, start, i))
    return
  }
  // "Put it in the oven. It must be rather slow."
  const pronoun = /^[.;,:]$/.test(readings.word(i + 1)) ? i + 2 : i + 1
  if (
    tokens[pronoun + 2]?.block === block &&
    /^(?:it|which)$/.test(readings.word(pronoun)) &&
    /^(?:must|should|ought|may)$/.test(readings.word(pronoun + 1))
  ) {
    const said = clauseAt(readings, pronoun + 1, pronoun, false)
    if (said !== null && !said.conditional && readings.word(said.end) !== 'when') {
      readings.put(i, said.end, said.rows, said.hedge, 4)
      return
    }
  }
  // "stew gently in the oven", "let it do in the oven slowly"
  const prepositionAt = DETERMINERS.has(readings.word(i - 1)) ? i - 2 : i - 1
  if (
    /^in(?:to)?$/.test(readings.word(prepositionAt)) &&
    STRICT_ADVERBS.has(readings.word(prepositionAt - 1)) &&
    tokens[prepositionAt - 1]!.block === block
  ) {
    const adverb = longest(ADVERBS, tokens, prepositionAt - 1, prepositionAt)
    if (adverb !== null) readings.put(prepositionAt - 1, i + 1, adverb.rows, null, 3)
  } else if (/^in(?:to)?$/.test(readings.word(prepositionAt)) && readAdverbBefore(readings, prepositionAt)) {
    // read there
  } else if (STRICT_ADVERBS.has(readings.word(i + 1)) && readings.word(i + 1).endsWith('ly') && tokens[i + 1]!.block === block) {
    const adverb = longest(ADVERBS, tokens, i + 1, i + 2)
    if (adverb !== null) readings.put(i, i + 2, adverb.rows, null, 3)
  }
  // "in the oven to dry slowly"
  else if (
    readings.word(i + 1) === 'to' &&
    tokens[i + 3]?.block === block &&
    STRICT_ADVERBS.has(readings.word(i + 3)) &&
    !BAKES.has(readings.word(i + 2))
  ) {
    const adverb = longest(ADVERBS, tokens, i + 3, i + 4)
    if (adverb !== null) readings.put(i, i + 4, adverb.rows, null, 3)
  }
  // "a zestful oven": a word between article and oven that no row knows. It is carried, with every heat it may mean.
  const word = tokens[i - 1]
  if (
    word !== undefined &&
    word.kind === 'word' &&
    word.block === block &&
    i >= 2 &&
    (readings.word(i - 2) === 'a' || readings.word(i - 2) === 'an') &&
    !NEUTRAL.has(word.word) &&
    !HEDGES.next?.has(word.word) &&
    !NOT_OVENS.has(word.word)
  ) {
    readings.unknown.push({text: readings.section.source.slice(word.start, word.end), start: word.start, end: word.end})
    if (!word.capital)
      readings.put(i - 2, i + 1, UNKNOWN_HEAT, null, 1, [`“${word.word}” is no word for heat known here: any heat`])
  }
}
