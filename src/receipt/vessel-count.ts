import {cardinals} from '../lexicon/grammar-words.js'
import {measureOf} from '../lexicon/index.js'
import {ENDS, isBakedIn, isMadeReady, worksBefore} from './baked-in.js'
import type {Section, Token} from './section.js'
import {spanOf, type TokenSpan} from './stays.js'
import type {ReadIngredient, Span, VesselsSaid} from './types.js'
import {vesselWordsOf} from './vessel.js'
import {vesselsHeld} from './vessel-held.js'
import {placeStated} from './vessel-sizes.js'
import {BEFORE_BAKING, vesselsNamed} from './vessels-named.js'

const ARTICLES = vesselWordsOf('article')
const DEFINITE = vesselWordsOf('definite')
const SEVERAL = vesselWordsOf('several')
const APART = vesselWordsOf('apart')
const INTO = vesselWordsOf('into')
const TIMES = vesselWordsOf('times')
const LENGTHS: ReadonlySet<string> = new Set([...vesselWordsOf('unit'), ...vesselWordsOf('long unit')])

/** How many tokens describe a vessel at the most: "a well greased and floured 30 x 20 cm (12 x 8 inch) roasting". */
const MOST_DESCRIBING = 16

const SMALL_TINS = vesselWordsOf('small tins')
const HOLES = vesselWordsOf('holes')
const EITHER = vesselWordsOf('either number')
const NUMBERED = vesselWordsOf('numbered')

/** A vessel as the method names it. `count`: null where it is more than one and no number says how many. */
interface Mention extends TokenSpan {
  readonly count: number | null
  readonly definite: boolean
}

/**
 * How many vessels the method bakes in: "line a 9-inch pie plate" is one, "in two deep dishes" two. What a thing is only mixed or boiled in
 * is none. Where the mentions of a receipt do not agree, or one of them is of several ("in small tins"), nothing tells it.
 */
export function vesselsSaid(section: Section, ingredients: readonly ReadIngredient[]): VesselsSaid | null {
  const mentions = mentionsIn(section, ingredients)
  const told = mentions.filter(({count, definite}) => count !== null && !(definite && count === 1))
  const [first] = told.length > 0 ? told : mentions
  if (first === undefined || first.count === null) return null
  const {count} = first
  const agrees = (one: Mention): boolean => one.definite || one.count === count
  // "The tins" are the two that were named before.
  const many = mentions.some((one) => one.count === null && !(one.definite && count > 1))
  if (many || !mentions.every(agrees)) return null
  return {...spanOf(section, first), count}
}

/** The first vessel that a method bakes in several of and says no number of: "divide between sandwich tins"; null where there is none. */
export function vesselsUncounted(section: Section, ingredients: readonly ReadIngredient[]): Span | null {
  const several = mentionsIn(section, ingredients).find(({count, definite}) => count === null && !definite)
  return several === undefined ? null : spanOf(section, several)
}

/** The vessels a method bakes in, in its order but for one with its size, which comes first. */
function mentionsIn(section: Section, ingredients: readonly ReadIngredient[]): readonly Mention[] {
  const {tokens} = section
  const sized = placeStated(section, ingredients) ?? placeHeld(section, ingredients)
  const mentions: Mention[] = []
  if (sized !== null) {
    const one = mentionAt(section, sized.noun, sized.from, sized.to, true)
    if (one !== null && (isMadeReady(tokens, one) || worksBefore(tokens, one.from) !== 'works')) mentions.push(one)
  }
  for (const {row, from, to} of vesselsNamed(section, ingredients)) {
    if (row.shape === 'none' || row.shape === 'free-standing') continue
    if (sized !== null && from < sized.to && sized.from < to) continue
    const one = mentionAt(section, to - 1, from, to, false)
    if (one === null || !isBakedIn(section, one, BEFORE_BAKING.has(row.id))) continue
    if (row.shape !== 'sheet') mentions.push(one)
    // Small tins stand on a sheet, and are no count of what is baked in one dish.
    else if (SMALL_TINS.has(tokens[to - 1]!.word)) mentions.push({...one, count: null, definite: false})
  }
  return mentions
}

/** The tokens of the first vessel that is told by what it holds; null where none is. */
function placeHeld(
  section: Section,
  ingredients: readonly ReadIngredient[],
): {readonly noun: number; readonly from: number; readonly to: number} | null {
  const [held] = vesselsHeld(section, ingredients)
  return held === undefined ? null : {noun: held.name.to - 1, from: held.from, to: held.to}
}

/** A vessel whose noun is token `noun`, and the number or article before it; null where it stands in a heading or without either. */
function mentionAt({tokens, blocks}: Section, noun: number, first: number, to: number, sized: boolean): Mention | null {
  const {block, word, stem} = tokens[noun]!
  if (blocks[block]!.kind === 'heading') return null
  const several = SEVERAL.has(word) || (stem !== '' && stem !== word)
  const behind = tokens[noun + 1]?.block === block ? tokens[noun + 1]!.word : ''
  if (APART.has(behind) || (behind === 'or' && cardinals[tokens[noun + 2]?.word ?? ''] === 2))
    return {count: null, definite: false, from: first, to}
  for (let i = noun - 1; i >= noun - MOST_DESCRIBING && tokens[i]?.block === block; i--) {
    const token = tokens[i]!
    const from = Math.min(i, first)
    if (ENDS.test(token.word) || INTO.has(token.word)) {
      // "9 in": the unit of a size.
      if (token.word === 'in' && tokens[i - 1]?.kind === 'number' && i > first) continue
      break
    }
    if (APART.has(token.word)) return {count: null, definite: false, from, to}
    if (ARTICLES.has(token.word)) return {count: several ? null : 1, definite: false, from, to}
    if (DEFINITE.has(token.word)) {
      // "The two dishes"
      const next = numberAt(tokens, i + 1)
      return {count: next ?? (several ? null : 1), definite: true, from, to}
    }
    const number = numberAt(tokens, i)
    if (number !== null) {
      const range = EITHER.has(tokens[i - 1]?.word ?? '')
      const definite = DEFINITE.has(tokens[i - 1]?.word ?? '')
      return {count: range || !several ? null : number, definite, from: definite ? from - 1 : from, to}
    }
  }
  // "Into greased 9-inch square pan": of one with its size the article may be left out.
  if (several) return {count: null, definite: false, from: first, to}
  return sized ? {count: 1, definite: false, from: first, to} : null
}

/** A whole number of vessels at token `at`; null where none stands there, or it is of a size ("9-inch", "2-quart", "12 hole"). */
function numberAt(tokens: readonly Token[], at: number): number | null {
  const token = tokens[at]
  if (token === undefined) return null
  const value = token.kind === 'number' ? token.num / token.den : cardinals[token.word]
  if (value === undefined || !Number.isInteger(value) || value < 2) return null
  const {word = '', joined = false} = tokens[at + 1] ?? {}
  if (joined || LENGTHS.has(word) || TIMES.has(word) || measureOf([word]) !== null) return null
  if (TIMES.has(tokens[at - 1]?.word ?? '') || NUMBERED.has(tokens[at - 1]?.word ?? '')) return null
  return token.kind === 'number' && HOLES.has(word) ? null : value
}
