import type {Item} from '../lexicon/schema.js'
import {NOTFOOD, type View} from './view.js'

/**
 * Names in a receipt's prose that do not go into the mixture: water that only stands round the dish or wets a tool, and what a thing turns
 * to or shows when it is done or spoilt ("till whey shows"). Common practice, no source: custards stand in warm water in the oven, and
 * part into curd and whey where it is too hot.
 */

/** How far back and forth words are looked at. */
const BACK = 12

/** Words that may stand between a preposition and the water. */
const OF_WATER = new Set(
  'the,a,an,little,some,hot,warm,boiling,scalding,cold,tepid,lukewarm,luke,simmering,fresh,clean,more,very,just'.split(','),
)
/** Vessels that hold a bath, beside those of `NOTFOOD`. */
const BATHS = new Set(
  'bath,baths,marie,saucepan,saucepans,stewpan,stewpans,stew-pan,skillet,bason,basons,roaster,vessel,tureen,dripping-pan,full,another'.split(
    ',',
  ),
)
/** What is done with a dish, not with what goes into it. */
const STOOD = new Set(
  'set,sets,setting,stand,stands,standing,stood,place,placed,placing,bake,baked,baking,plunge,plunged,float,floating'.split(','),
)
const THROWN = new Set('throw,throwing,thrown,put,putting,pour,stir,stirred,drop,beat,mix,work,add'.split(','))
const BATH_MEASURES = new Set(['tin', 'pan', 'pot', 'tub', 'pail', 'basin', 'bowl', 'dish', 'kettle', 'saucer'])
const PARTLY = new Set(['half', 'nearly', 'partly', 'well', 'parts', 'quarter', 'quarters', 'thirds'])
const FILLS = new Set(['fill', 'filled', 'fills', 'filling'])
const WETS = new Set(
  'wet,wetted,wetting,rinse,rinsed,rinsing,dip,dipped,dipping,wring,wrung,wash,washed,scald,scalded'.split(','),
)
const TOOLS = new Set('hand,hands,finger,fingers,towel,napkin,shape,form,spatula,slice,paddle,peel'.split(','))
const COMES = new Set(['come', 'comes', 'coming', 'reach', 'reaches', 'reaching', 'rise', 'rises', 'rising'])
const HALFWAY = new Set(['half', 'halfway', 'half-way', 'way', 'side', 'sides'])
const ROUND = new Set(['round', 'around', 'about'])
const ROUND_WHAT = new Set(['them', 'it', 'the', 'your', 'each', 'this', 'these', 'that', 'him'])
const TURNS = new Set(
  'turn,turns,turned,turning,run,runs,go,goes,gone,change,changes,changed,part,parts,separate,separates'.split(','),
)
const BECOMES = new Set(['become', 'becomes', 'becoming', 'became'])
/** Before whey that is stirred in. */
const STIRRED = new Set(['with', 'add', 'adding', 'in', 'or', 'use', 'using', 'pour', 'take', 'some'])

/** A name as found: its tokens are [start, next). */
export interface Named {
  readonly start: number
  readonly next: number
  readonly row: Item | null
  /** Null where the text does not say how much of it. */
  readonly low: object | null
  /** The measure's id, where it does. */
  readonly measure: string
}

/** Does this name of the prose stay outside the mixture? */
export function staysOutside(view: View, named: Named): boolean {
  const id = named.row?.id
  if (named.low === null && turnedTo(view, named.start)) return true
  if (id === 'water') return roundTheDish(view, named) || wetsTool(view, named)
  return id === 'whey' && named.low === null && showing(view, named)
}

/** "turns to oil", "becomes cream", "parts into whey and curd". */
function turnedTo({words}: View, start: number): boolean {
  const before = words[start - 1] ?? ''
  if (BECOMES.has(before) || (before === 'and' && words[start - 2] === 'whey')) return true
  return (before === 'to' || before === 'into') && TURNS.has(words[start - 2] ?? '')
}

/** Whey by itself is a sign, unless something is mixed with it. */
function showing({words}: View, {start, next}: Named): boolean {
  if (words[next] === 'show' || words[next] === 'shows' || words[next] === 'runs' || words[next] === 'stands') return true
  for (let i = start - 1; i >= 0 && i > start - 4; i--)
    if (words[i] === 'till' || words[i] === 'until' || words[i] === 'if' || words[i] === 'lest') return true
  return words[start] === 'whey' && !STIRRED.has(words[start - 1] ?? '')
}

/** The last token before water and its adjectives, −1 where the sentence begins. */
function beforeWater({words, tokens}: View, start: number): number {
  let i = start - 1
  while (i >= 0 && tokens[i]!.block === tokens[start]!.block && OF_WATER.has(words[i]!)) i--
  return i >= 0 && tokens[i]!.block === tokens[start]!.block ? i : -1
}

/** Looks back through the sentence for a word; its token, −1 where there is none near. */
function back({words, tokens}: View, from: number, is: (word: string, at: number) => boolean): number {
  for (let i = from; i >= 0 && i > from - BACK && tokens[i]!.block === tokens[from]!.block; i--) {
    const word = words[i]!
    if (word === '.' || word === ';') return -1
    if (is(word, i)) return i
  }
  return -1
}

const isVessel = ({words, bits}: View, at: number): boolean => at >= 0 && ((bits[at]! & NOTFOOD) !== 0 || BATHS.has(words[at]!))

/** "a pan of warm water", "a tin half filled with boiling water", "set them in cold water", "water to come half way up their sides". */
function roundTheDish(view: View, {start, next, low, measure}: Named): boolean {
  const {words} = view
  const at = beforeWater(view, start)
  const before = words[at]
  if (words[next] === 'bath') return true
  if (ROUND.has(words[next] ?? '') && ROUND_WHAT.has(words[next + 1] ?? '')) return true
  if (
    words.slice(next, next + 4).some((word) => COMES.has(word)) &&
    words.slice(next, next + 8).some((word) => HALFWAY.has(word))
  )
    return true
  if (before === 'of') return isVessel(view, at - 1)
  if (before === 'with') {
    if (words[at - 1] === 'bath' || (words[next] === 'in' && words[next + 1] === 'it' && isVessel(view, at - 1))) return true
    const fill = back(view, at - 1, (word) => FILLS.has(word))
    if (fill < 0) return false
    for (let i = fill + 1; i < at; i++) if (isVessel(view, i)) return true
    return isVessel(view, PARTLY.has(words[fill - 1] ?? '') ? fill - 2 : fill - 1)
  }
  if (before !== 'in' && before !== 'into' && before !== 'over') return false
  // "throw in cold water": put to the rest. "In a pint of water" it is boiled; in a tin of it, it stands.
  if (THROWN.has(words[at - 1] ?? '') || (low !== null && !BATH_MEASURES.has(measure))) return false
  if (back(view, at - 1, (word) => word === 'pour' || word === 'poured') >= 0) return false
  if (back(view, at - 1, (word) => STOOD.has(word)) >= 0) return true
  return isVessel(view, at - 1) && back(view, at - 1, (word) => word === 'put') >= 0
}

/** "wet the mould with cold water", "dip the spoon in hot water", "a cloth wrung out of boiling water". */
function wetsTool(view: View, {start}: Named): boolean {
  const {words} = view
  const at = beforeWater(view, start)
  const before = words[at]
  if (before !== 'with' && before !== 'in' && before !== 'into' && before !== 'of') return false
  const wet = back(view, at - 1, (word) => WETS.has(word))
  if (wet < 0) return false
  for (let i = Math.max(0, wet - 2); i < at; i++) if (isVessel(view, i) || TOOLS.has(words[i]!)) return true
  return false
}
