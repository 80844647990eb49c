import {set} from './heat-words.js'
import type {Token} from './section.js'

/**
 * “Cover and cook at 140 °C for 4 hours”: a pot on the stove is given no degrees, so it stands in the oven. Sugar, jam and deep fat are given
 * them, and what is measured within.
 */

const COOKS = set('cook cooked cooking braise braised braising casserole garen gegart schmoren geschmort kochen braten gebraten')
const AT = set('at bei')
/** Between "at" and its figure. */
const ABOUT = set('about around approximately etwa ca . ( gas mark regulo a')
/** What is boiled to a heat of its own, or fried at one. */
export const TO_ITS_OWN_HEAT = set(
  'jam jelly marmalade conserve preserve chutney syrup sirup candy caramel toffee fudge brittle praline nougat fondant konfiture marmelade gelee karamell doughnut donut',
)
/** What has its own heat outside the oven, and what gives it that. */
const OTHERWISE = set(
  'sugar honey zucker honig deep skillet griddle wok hob stove stovetop burner herd herdplatte thermometer internal inside core centre center kerntemperatur kern innen cooker pressure microwave mikrowelle sous vide steam steamer dampf',
)
/** A step before the oven's, in many a sentence: that of the cooking itself only where it stands close. */
const FRIES = set('fry fried frying fryer frittieren frittiert ausbacken oil fat lard dripping tallow ol fett schmalz pan pfanne')
const CLOSE = 4
/** Less is what is simmered or poached in a water bath with a thermometer, °C. */
const LEAST = 110

/** Whether a sentence has a word of those. */
const has = (sentence: readonly Token[], words: ReadonlySet<string>): boolean =>
  sentence.some(({word, stem}) => words.has(word) || words.has(stem))

const isEnd = ({kind, word}: Token): boolean => kind === 'mark' && /^[.;!?|]$/.test(word)

/** The sentence of a token, by its block and its stops. */
function sentenceOf(tokens: readonly Token[], at: number): readonly Token[] {
  const inside = (token: Token | undefined): boolean => token !== undefined && token.block === tokens[at]!.block && !isEnd(token)
  let from = at
  while (inside(tokens[from - 1])) from--
  let to = at
  while (inside(tokens[to + 1])) to++
  return tokens.slice(from, to + 1)
}

/**
 * Whether a heat in degrees or gas marks is that at which something is cooked in the oven, though none is named.
 *
 * @param from the token of the first figure
 * @param celsius the coolest that is meant, °C
 */
export function isCookedAt(tokens: readonly Token[], from: number, celsius: number): boolean {
  if (celsius < LEAST) return false
  let at = from - 1
  while (ABOUT.has(tokens[at]?.word ?? '')) at--
  const before = tokens[at]
  if (before === undefined || before.block !== tokens[from]!.block || !AT.has(before.word)) return false
  const sentence = sentenceOf(tokens, from)
  const figure = sentence.indexOf(tokens[from]!)
  const cooks = sentence.flatMap(({word}, i) => (COOKS.has(word) ? [Math.abs(i - figure)] : []))
  if (cooks.length === 0 || has(sentence, TO_ITS_OWN_HEAT) || has(sentence, OTHERWISE)) return false
  const reach = Math.min(...cooks) + CLOSE
  return !has(sentence.slice(Math.max(0, figure - reach), figure + reach), FRIES)
}

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
    return isCookedAt(tokens, i, fahrenheit ? ((token.num - 32) * 5) / 9 : token.num)
  }
  for (let i = from - 1; i >= from - BESIDE && tokens[i] !== undefined && !isEnd(tokens[i]!); i--) if (isHeat(i)) return true
  for (let i = to; i < to + BESIDE && tokens[i] !== undefined && !isEnd(tokens[i]!) && tokens[i]!.word !== ','; i++)
    if (isHeat(i)) return true
  return false
}
