import type {StayWord} from '../lexicon/schema.js'
import {stayWords} from '../lexicon/stay-words.js'
import {phrasesIn, phraseTree} from './phrases.js'
import type {Section} from './section.js'
import {sentenceAt} from './sentences.js'

const tree = (use: StayWord['use']) =>
  phraseTree(
    stayWords.filter((row) => row.use === use),
    (row) => row.phrases,
  )
const FALLS = tree('falls')
const AFTER = tree('after')

/**
 * True where a receipt has a thing baked while the heat falls (“set in at 250 °C, and bake an hour as the oven falls”), so that its time is none
 * of a steady oven. What it leaves in an oven that is turned off is the time after the baking.
 */
export function bakesFalling({tokens}: Section): boolean {
  return phrasesIn(FALLS, tokens).some(({from}) => {
    const [first, last] = sentenceAt(tokens, from)
    return phrasesIn(AFTER, tokens, first, last).length === 0
  })
}
