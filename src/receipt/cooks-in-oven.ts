import {isCookedAt, LEAST, TO_ITS_OWN_HEAT} from './cooked-at.js'
import {celsiusOfFahrenheit, DegreeReader} from './degrees.js'
import type {Section, Token} from './section.js'

/** Whether a receipt that names no oven cooks at an oven's heat, “cook at gas 2 for 4 hours”. */
export function cooksInOven(section: Section): boolean {
  const {tokens, blocks} = section
  // "Cook at 118 °C" in a toffee's text is the sugar's.
  if (
    tokens.some(
      ({word, stem, block}) => blocks[block]!.kind === 'heading' && [word, stem].some((one) => TO_ITS_OWN_HEAT.has(one)),
    )
  )
    return false
  const reader = new DegreeReader(section)
  return tokens.some(({kind, word}, i) => {
    if (kind !== 'number' && word !== 'gas' && word !== 'mark') return false
    const read = reader.degrees(i, false)
    return read?.ofOven === true && isCookedAt(tokens, read.from, read.low)
  })
}

/** A time beside the heat stands before these. */
const isEnd = ({kind, word}: Token): boolean => kind === 'mark' && /^[.;!?|]$/.test(word)
/** How far a time stands from its heat at most, in words. */
const BESIDE = 8

/** Whether a time of tokens [from, to) stands beside such a heat: "cook at 140 °C for 4 hours", "cook for 4 hours at gas 2". */
export function isTimeCookedAt(tokens: readonly Token[], from: number, to: number): boolean {
  const isHeat = (i: number): boolean => {
    const token = tokens[i]
    if (token?.kind !== 'number' || token.den !== 1 || token.block !== tokens[from]!.block) return false
    if (/^(?:gas|mark)$/.test(tokens[i - 1]?.word ?? '')) return isCookedAt(tokens, i, LEAST)
    const unit = [1, 2].map((n) => tokens[i + n]?.word ?? '')
    if (!/^(?:°|℃|℉|c|f|degrees?|deg|grad)$/.test(unit[0]!)) return false
    const fahrenheit = unit.some((word) => /^(?:f|℉|fahrenheit)$/.test(word))
    return isCookedAt(tokens, i, fahrenheit ? celsiusOfFahrenheit(token.num) : token.num)
  }
  for (let i = from - 1; i >= from - BESIDE && tokens[i] !== undefined && !isEnd(tokens[i]!); i--) if (isHeat(i)) return true
  for (let i = to; i < to + BESIDE && tokens[i] !== undefined && !isEnd(tokens[i]!) && tokens[i]!.word !== ','; i++)
    if (isHeat(i)) return true
  return false
}
