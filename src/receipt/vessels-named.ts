import {cardinals} from '../lexicon/grammar-words.js'
import type {VesselRow} from '../lexicon/schema.js'
import {vessels} from '../lexicon/vessels.js'
import {type FoundPhrase, phraseAt, phrasesIn, phraseTree} from './phrases.js'
import type {Section, Token} from './section.js'
import type {ReadIngredient} from './types.js'
import {vesselWordsOf} from './vessel.js'

const VESSELS = phraseTree(vessels, (row: VesselRow) => row.spellings)

/** What things are boiled or mixed in first: the vessel baked in where the receipt names no other. */
export const BEFORE_BAKING: ReadonlySet<string> = new Set(['stewpan', 'pudding-basin'])

const WORKED = /^(?:knead\w*|roll\w*|mou?ld\w*|work\w*|floured|pastry|paste|turn|strew|sprinkle)$/
/** Behind "mould" where it is what is done. */
const MOULDED: ReadonlySet<string> = new Set(['into', 'it', 'them', 'up', 'the', 'each', 'in'])
/** Before what a thing is cut into. */
const CUT_TO: ReadonlySet<string> = new Set(['into', 'in', 'apple', 'onion', 'thin'])

const UPON = vesselWordsOf('upon')
/** How many tokens describe what lies under things: "on two well greased". */
const MOST_BETWEEN = 4

/** Whether a vessel's name from token `at` on stands behind "on": "on a sheet", "on two greased tins". */
export function isUpon(tokens: readonly Token[], at: number): boolean {
  for (let i = at - 1; i >= at - MOST_BETWEEN && tokens[i]?.block === tokens[at]!.block && tokens[i]!.kind !== 'mark'; i--)
    if (UPON.has(tokens[i]!.word)) return true
  return false
}

/** Whether a number of cups stands in brackets, and is not said to be baked in: "(about 3 cups)", "(1½ Australian cups)", "(in 6 cups)". */
function isMeasuredBeside(tokens: readonly Token[], at: number): boolean {
  let number = false
  for (let i = at - 1; i >= at - MOST_BETWEEN - 1 && tokens[i]?.block === tokens[at]!.block; i--) {
    const {word, kind} = tokens[i]!
    if (/^(?:in|into)$/.test(word)) return false
    number ||= kind === 'number'
    if (word === '(') return number
  }
  return false
}

/** Whether a number of cups says how much a vessel holds that is named right behind it: "a 12-cup bundt pan". */
function isWhatItHolds(tokens: readonly Token[], at: number): boolean {
  const before = tokens[at - 1]?.word === '-' ? tokens[at - 2] : tokens[at - 1]
  const isNumber = before?.kind === 'number' || (before !== undefined && cardinals[before.word] !== undefined)
  if (!isNumber || before.block !== tokens[at]!.block) return false
  return [1, 2, 3].some((by) => tokens[at + by]?.block === before.block && phraseAt(VESSELS, tokens, at + by) !== null)
}

const COVERS = /^(?:cover|covered|covering|over|wrap|wrapped|tie|tied|protect|lay|top|between)$/
/** Whether what is named at token `at` is laid over the dish: a word for that stands before it in its sentence, and none that it lies beneath. */
function isOverIt(tokens: readonly Token[], at: number): boolean {
  let over = false
  for (let i = at - 1; i >= at - 10 && tokens[i]?.block === tokens[at]!.block && !/^[.;:]$/.test(tokens[i]!.word); i--) {
    if (UPON.has(tokens[i]!.word)) return false
    over ||= COVERS.test(tokens[i]!.word)
  }
  return over
}

const telling = (row: VesselRow): number => (row.shape === 'none' ? 0 : BEFORE_BAKING.has(row.id) ? 1 : 2)

/**
 * The vessels a receipt names to bake in, most telling first: one with known sizes before one without, one to bake in before one to
 * boil or mix in. What an ingredient is measured in
 * is none, nor is the cup of a cup cake.
 */
export function vesselsNamed(section: Section, ingredients: readonly ReadIngredient[]): Array<FoundPhrase<VesselRow>> {
  const {tokens} = section
  const spans = [...ingredients].sort((a, b) => a.start - b.start)
  let next = 0
  const found = phrasesIn(VESSELS, tokens).filter(({from, to}) => {
    const [first, last] = [tokens[from]!, tokens[to - 1]!]
    if (last.stem === 'cup' && tokens[to]?.stem === 'cake') return false
    // "Rub it through a hair sieve"
    if (
      last.stem === 'sieve' &&
      tokens.slice(Math.max(0, from - 3), from).some(({word}) => /^(?:through|thro|thro')$/.test(word))
    )
      return false
    // "Mould it on the board": what dough is worked on.
    if (last.stem === 'board' && tokens.slice(Math.max(0, from - 6), from).some(({word}) => WORKED.test(word))) return false
    // "Roll the paste into a thin sheet", "on a sheet of paste"
    if (to - from === 1 && last.stem === 'sheet' && (!isUpon(tokens, from) || tokens[to]?.word === 'of')) return false
    // "Mould into twenty manchets"
    if (to - from === 1 && /^mou?ld$/.test(first.word) && MOULDED.has(tokens[to]?.word ?? '')) return false
    // "A 12-cup bundt pan": how much the other holds.
    if (last.stem === 'cup' && to - from === 1 && isWhatItHolds(tokens, from)) return false
    // "300 g oats (≈3 cups)": a measure.
    if (last.stem === 'cup' && to - from === 1 && isMeasuredBeside(tokens, from)) return false
    // "Cover the top with a double square of parchment"
    if (last.word === 'parchment' && isOverIt(tokens, from)) return false
    // "| Flour | Cups |": a measure.
    if (last.stem === 'cup' && section.blocks[last.block]!.kind === 'row') return false
    // "Slice the apples into rings"
    if (to - from === 1 && last.stem === 'ring' && CUT_TO.has(tokens[from - 1]?.word ?? '')) return false
    while (next < spans.length && spans[next]!.end <= first.start) next++
    return next === spans.length || spans[next]!.start >= last.end
  })
  return found.sort((a, b) => telling(b.row) - telling(a.row))
}
