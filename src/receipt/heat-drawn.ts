import type {HeatReadings} from './heat-readings.js'
import {
  AFTER,
  AFTER_ADJECTIVE,
  DETERMINERS,
  DONE,
  DRAWABLE,
  DRAWN,
  longest,
  OVEN_OR_BAKE,
  SETS_IN,
  SETS_IN_STRICT,
} from './heat-words.js'

/**
 * Heat told by what was drawn before: “after the bread is drawn”, “when the pies come out”.
 */

/** "the bread being drawn", "that bread hath been newly drawn out of": `i` is at "drawn". */
export function readDrawn(readings: HeatReadings, i: number): void {
  let verb = i
  while (verb > 0 && i - verb < 4 && /^(?:being|been|newly|just|lately|hath|has|have|had)$/.test(readings.word(verb - 1))) verb--
  if (verb === i) return
  const low = readings.floor(i, 9)
  for (let k = low; k < verb; k++) {
    const things = longest(AFTER, readings.tokens, k, i)
    if (things === null || things.end !== verb || !readings.near(i, 20, 20, SETS_IN)) continue
    readings.put(DETERMINERS.has(readings.word(k - 1)) && k > low ? k - 1 : k, i + 1, things.rows, null, 4, [
      'by what the drawn goods leave in the brick',
    ])
    return
  }
}

/** "after the bread is drawn", "when the pies come out", "as soon as the batch is out": `i` is at "after", "when", "soon" or "once". */
export function readAfter(readings: HeatReadings, i: number): void {
  const tokens = readings.tokens
  const lead = readings.word(i)
  const limit = readings.limit(i, 13)
  let j = i + 1
  if (lead === 'soon') {
    if (readings.word(j) !== 'as') return
    j++
  }
  let drawing = /^(?:drawing|taking|withdrawing|removing)$/.test(readings.word(j))
  if (drawing) j++
  else {
    // "after you have drawn the bread"
    let k = j
    while (k < j + 3 && /^(?:you|they|we|she|have|has|had|i)$/.test(readings.word(k))) k++
    if (k > j && /^(?:drawn|draw|removed|remove|taken|take|withdrawn)$/.test(readings.word(k))) {
      drawing = true
      j = k + 1
    }
  }
  if (drawing && readings.word(j) === 'out') j++
  const determined = DETERMINERS.has(readings.word(j))
  let things = longest(AFTER, tokens, j, limit)
  if (things === null && determined) things = longest(AFTER, tokens, j + 1, limit)
  if (things === null) {
    // "after the wheaten bread", "when the first batch of bread": one unknown word may stand between.
    const k = j + (determined ? 2 : 1)
    things = longest(AFTER, tokens, k, limit)
    if (things === null) return
  }
  let end = things.end
  if (readings.word(end) === 'of' && DRAWABLE.has(readings.word(end + 1))) end += 2
  const id = things.rows[0]!.id
  let from = i
  if (lead === 'soon' && readings.word(i - 1) === 'as') from--
  if (lead === 'when' && /^(?:even|just)$/.test(readings.word(i - 1))) from--
  if (drawing) {
    if (readings.word(end) === 'out') end++
    readings.put(from, end, things.rows, null, 5, ['by what the drawn goods leave in the brick'])
    return
  }
  let k = end
  while (
    k < limit &&
    /^(?:is|are|be|was|were|has|have|been|hath|being|all|just|comes?|taken|shall|coming|both|it|done)$/.test(readings.word(k))
  )
    k++
  const verb = readings.word(k)
  const moved = /^(?:comes?|taken|coming)$/.test(readings.word(k - 1))
  const oven = readings.near(i, 25, 18, SETS_IN)
  if (k > end && (DRAWN.has(verb) || (moved && verb === 'out'))) {
    if (!oven) return
    // "When the bread is taken out of the oven, rub it": what is done to the bread itself.
    if (lead === 'when' && readings.word(k) === 'out' && readings.word(k + 1) === 'of') return
    let stop = k + 1
    if (verb !== 'out' && readings.word(stop) === 'out') stop++
    readings.put(from, stop, things.rows, null, 5, ['by what the drawn goods leave in the brick'])
  } else if (
    k > end &&
    DONE.has(verb) &&
    lead !== 'when' &&
    (id === 'after-bread' || id === 'after-brown-bread' || id === 'after-all')
  ) {
    if (readings.near(i, 20, 15, SETS_IN_STRICT))
      readings.put(from, k + 1, things.rows, null, 4, ['by what the drawn goods leave in the brick'])
  } else if (k > end && /^(?:baked|done)$/.test(readings.word(k - 1)) && lead !== 'when' && id === 'after-bread') {
    if (readings.near(i, 20, 15, SETS_IN_STRICT))
      readings.put(from, k, things.rows, null, 4, ['by what the drawn goods leave in the brick'])
  } else if (k === end && lead === 'after' && readings.near(i, 6, 1, OVEN_OR_BAKE)) {
    const next = tokens[end]
    if (next === undefined || next.kind === 'mark' || next.block !== tokens[i]!.block || AFTER_ADJECTIVE.has(next.word))
      readings.put(from, end, things.rows, null, 4, ['by what the drawn goods leave in the brick'])
  }
}
