import {phrasesIn} from './phrases.js'
import type {Section} from './section.js'
import {sentenceAt} from './sentences.js'
import {stayPhrases} from './stay-phrases.js'
import type {Span} from './types.js'

const FALLS = stayPhrases('falls')
const AFTER = stayPhrases('after')

/**
 * True where a receipt has a thing baked while the heat falls (“set in at 250 °C, and bake an hour as the oven falls”), so that its time is none
 * of a steady oven. What it leaves in an oven that is turned off, or cools, is the time after the baking.
 *
 * @param cooling the words that leave it in after the bake, if any do
 */
export function bakesFalling({tokens}: Section, cooling: Span | null = null): boolean {
  return phrasesIn(FALLS, tokens).some(({from}) => {
    const {start} = tokens[from]!
    if (cooling !== null && start >= cooling.start && start < cooling.end) return false
    const [first, last] = sentenceAt(tokens, from)
    return phrasesIn(AFTER, tokens, first, last).length === 0
  })
}
