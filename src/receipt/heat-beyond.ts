import {celsiusOfFahrenheit, celsiusOfGasMark, HOTTEST} from './degrees.js'
import type {Section, Token} from './section.js'
import type {Span} from './types.js'

/**
 * Heats that no oven bakes at: "900 °C", "gas mark 19". They are no reading of the oven's heat, in the receipt's own text or in a note,
 * and may not be lost without a word.
 */

/** °C of the figure at `at` with its scale behind it; null where it is no heat. */
function celsiusAt(tokens: readonly Token[], at: number): {celsius: number; end: number} | null {
  const {block, num, den} = tokens[at]!
  const here = (k: number): Token | undefined => (tokens[k]?.block === block ? tokens[k] : undefined)
  if (den !== 1) return null
  let k = at + 1
  const degree = /^(?:°|degrees?|deg|grad)$/.test(here(k)?.word ?? '')
  if (degree) k++
  const scale = here(k)
  const sign = scale?.word === '℃' || scale?.word === '℉'
  const named = scale !== undefined && /^(?:[cf]|celsius|centigrade|fahrenheit)$/.test(scale.word)
  // "900 c." is as likely cups.
  if (named && !degree && scale.word.length === 1 && !(scale.capital && tokens[at + 1]!.word === scale.word)) return null
  if (!sign && !named) return degree ? {celsius: celsiusOfFahrenheit(num), end: k} : null
  const fahrenheit = scale.word === '℉' || scale.word.startsWith('f')
  return {celsius: fahrenheit ? celsiusOfFahrenheit(num) : num, end: k + 1}
}

/** Heats beyond any oven, in the order of the text. */
export function heatsBeyond({tokens, source}: Section): Span[] {
  const found: Span[] = []
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i]!
    let end = -1
    if (token.kind === 'number') {
      const read = celsiusAt(tokens, i)
      if (read !== null && read.celsius > HOTTEST) end = read.end
    } else if (token.word === 'gas' && tokens[i + 1]?.word === 'mark' && tokens[i + 2]?.kind === 'number') {
      const {num, den, block} = tokens[i + 2]!
      if (block === token.block && den > 0 && celsiusOfGasMark(num / den) === null) end = i + 3
    }
    if (end < 0) continue
    found.push({
      text: source.slice(token.start, tokens[end - 1]!.end),
      start: token.start,
      end: tokens[end - 1]!.end,
    })
    i = end - 1
  }
  return found
}
