import {set} from './heat-words.js'
import type {Token} from './section.js'
import {sentenceAt} from './sentences.js'

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
export const LEAST = 110

/** Whether a sentence has a word of those. */
const has = (sentence: readonly Token[], words: ReadonlySet<string>): boolean =>
  sentence.some(({word, stem}) => words.has(word) || words.has(stem))

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
  const [first, last] = sentenceAt(tokens, from)
  const sentence = tokens.slice(first, last)
  const figure = from - first
  const cooks = sentence.flatMap(({word}, i) => (COOKS.has(word) ? [Math.abs(i - figure)] : []))
  if (cooks.length === 0 || has(sentence, TO_ITS_OWN_HEAT) || has(sentence, OTHERWISE)) return false
  const reach = Math.min(...cooks) + CLOSE
  return !has(sentence.slice(Math.max(0, figure - reach), figure + reach), FRIES)
}
