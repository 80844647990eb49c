import type {StayWord} from '../lexicon/schema.js'
import {stayWords} from '../lexicon/stay-words.js'
import {type PhraseTree, phrasesUsed} from './phrases.js'

/** The lexicon's words about staying in the oven that are used in one way, as a tree of their phrases. */
export const stayPhrases = (use: StayWord['use']): PhraseTree<StayWord> => phrasesUsed(stayWords, use)
