import {phraseAt} from './phrases.js'
import type {Section, Token} from './section.js'
import {sentenceAt} from './sentences.js'
import {stayPhrases} from './stay-phrases.js'
import {spanOf} from './stays.js'
import type {Span} from './types.js'

const AJAR = stayPhrases('ajar')
const DOOR = stayPhrases('ajar-door')
const KEEPS = stayPhrases('keeps')
/** Words between the door and how it stands: "the door an inch or two open". */
const NEAR = 8
/** What is said of the time after the baking ("turn the oven off and let them cool with the door ajar"), or of the end of it. */
const AFTERWARDS = /^(?:cold|off|abkuhlen|auskuhlen|erkalten|ausgeschaltet\w*|last|letzten|wait|until|falls|fallen)$/
const DRIED = /^(?:dry|dried|leathery|crisp|brittle|crumbles?|crumbly|crackle|papery|hard|shrivelled|done)$/
const NOT = /^(?:not|never|no|nor|without|don't|nicht|nie)$/

/**
 * The words of a receipt that want the oven's door left a little open while the thing is in it, for the damp to go out: "leaving the door an
 * inch open". Null where it wants nothing of the kind, or only of the time afterwards.
 */
export function readAjar({tokens, source}: Section): Span | null {
  for (let i = 0; i < tokens.length; i++) {
    const door = phraseAt(DOOR, tokens, i)
    if (door === null) continue
    const [first, last] = sentenceAt(tokens, i)
    const open = openAt(tokens, door.from, door.to, first, last)
    if (open === null) continue
    let [from, to] = [Math.min(open.from, door.from), Math.max(open.to, door.to)]
    // From the verb on: "leaving the door …", "with the door …"; "a door open" by itself wants nothing.
    let keeps = -1
    for (let k = from - 1; k >= Math.max(first, from - 4) && keeps < 0; k--)
      if (phraseAt(KEEPS, tokens, k) !== null || GERMAN_KEEPS.test(tokens[k]!.word)) keeps = k
    if (keeps >= 0) from = keeps
    else if (GERMAN_KEEPS.test(tokens[to]?.word ?? '')) to++
    else {
      // "…, the door ajar, overnight", "…, the oven door left open a crack": by itself between commas.
      if (ARTICLE.test(tokens[from - 1]?.word ?? '')) from--
      if (!opensPhrase(tokens, from) || !endsPhrase(tokens, to)) continue
    }
    const words = tokens.slice(first, last).map(({word}) => word)
    // "Until leathery" is how long it dries.
    const dries = words.some((word, k) => word === 'until' && words.slice(k + 1, k + 4).some((next) => DRIED.test(next)))
    if (
      words.some(
        (word, k) =>
          (AFTERWARDS.test(word) && !(word === 'until' && dries) && !(word === 'last' && ofHeat(words, k))) ||
          (/^cool(?:ing)?$/.test(word) && !/^oven/.test(words[k + 1] ?? '')),
      )
    )
      continue
    if (tokens.slice(Math.max(first, from - 3), to).some(({word}) => NOT.test(word))) continue
    return spanOf({tokens, source}, {from, to})
  }
  return null
}

const ARTICLE = /^(?:the|a|its|your|die|eine)$/
/** What else is said of the drying behind a phrase of the door. */
const GOES_ON = /^(?:overnight|all|for|through|throughout|und|and|nachtsuber|uber)$/

/** Whether token `at` begins its block, or stands behind a mark. */
const opensPhrase = (tokens: readonly Token[], at: number): boolean =>
  tokens[at - 1]?.block !== tokens[at]!.block || /^[,.;:(–—]$/.test(tokens[at - 1]!.word)

/** Whether the phrase before token `at` is over there. */
const endsPhrase = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]?.block !== tokens[at - 1]!.block || /^[,.;:)]$/.test(tokens[at]!.word) || GOES_ON.test(tokens[at]!.word)

const GERMAN_KEEPS = /^(?:bei|mit|lassen|gelassen|halten|klemmen|stecken)$/

/** "The last of the heat", "the last of the oven": what it dries in. */
const ofHeat = (words: readonly string[], last: number): boolean =>
  words[last + 1] === 'of' && words.slice(last + 2, last + 4).some((word) => /^(?:heat|oven|warmth|fire)$/.test(word))

/** How the door [from, to) stands, said behind it, or right before it ("with open door", "bei leicht geöffneter Tür"). */
function openAt(
  tokens: readonly Token[],
  from: number,
  to: number,
  first: number,
  last: number,
): {readonly from: number; readonly to: number} | null {
  if (from > first && phraseAt(AJAR, tokens, from - 1) !== null && !/^(?:the|a)$/.test(tokens[from - 1]!.word))
    return {from: from - 1, to: from}
  for (let k = to; k < Math.min(last, to + NEAR); k++) {
    const found = phraseAt(AJAR, tokens, k)
    if (found !== null) {
      let {to: end} = found
      for (let more = phraseAt(AJAR, tokens, end); more !== null && end < last; more = phraseAt(AJAR, tokens, end)) end = more.to
      return {from: found.from, to: end}
    }
    if (/^(?:and|but|then|shut|closed|window|when|und|dann|zu|geschlossen)$/.test(tokens[k]!.word)) return null
  }
  return null
}
