import {lookUpItem} from '../lexicon/index.js'
import type {Range} from '../lexicon/schema.js'
import {exactly, plus, scaled as scaledBy} from '../measure/range.js'
import type {Receipt} from '../receipt/types.js'
import {type KindFigures, setsAsCustard} from './kind-figures.js'
import {notMixed} from './pieces.js'

/**
 * Flour where the receipt leaves it to the hand (“flour enough to roll it out”), as a share of what wets it in a dough, and of all the rest in
 * anything else. Common practice, no source: doughs are wetted by 55 to 70 % of their flour, cakes hold four tenths of the rest, biscuits as
 * much.
 */
const flourByHand = {dough: {low: 1.4, likely: 1.6, high: 1.8}, batter: {low: 0.4, likely: 0.7, high: 1}} as const
/** … and what wets a dough where that is left to the hand, as a share of its flour. Common practice, no source: see above. */
const wetByHand = {low: 0.5, likely: 0.6, high: 0.75}
/** A dough with less than this share of its flour in it of what wets it and is weighed, its water being left to the hand, is dry. */
const dry = 0.4
const flours: ReadonlySet<string | undefined> = new Set(['flour', 'meal', 'starch'])
/** What a dish is made of, where spices, sugar and a glass of brandy are not. */
const fills: ReadonlySet<string | undefined> = new Set(
  'flour, meal, starch, dairy, egg, fruit, dried fruit, nut, vegetable, pulse, meat, fish, bread, made dish'.split(', '),
)
const wets: ReadonlySet<string | undefined> = new Set(['liquid', 'dairy', 'egg', 'spirit'])

/** So small a share of what its kind weighs at the least is no mixture. Common practice, no source. */
const hardlyAny = 0.25

/** What a receipt's mixture weighs. */
export interface BatchMass {
  /** Weight of the receipt's mixture as written, kg; null where nothing of it can be weighed, or only what seasons it. */
  readonly mass: Range | null
  readonly unweighed: readonly string[]
  /** Something that fills the vessel has no weight: apples of which as many are taken as it needs. */
  readonly open: boolean
  /** Of that, flour or what wets it, of which the receipt gives no amount, kg. */
  readonly byHand: {readonly item: string; readonly kilograms: Range} | null
}

/** What the mixture weighs when the receipt is made once as written. */
export function batchMass(receipt: Receipt, kind: KindFigures): BatchMass {
  let mass = exactly(0)
  let wet = exactly(0)
  let flour = exactly(0)
  let byHand: string | null = null
  let poured: string | null = null
  let open = false
  const unweighed: string[] = []
  for (const {item, amount, grams, millilitres} of receipt.ingredients) {
    const weight = grams ?? millilitres
    const group = lookUpItem(item)?.group
    if (weight === null) {
      open ||= fills.has(group)
      if (amount !== null) unweighed.push(item)
      else if (group === 'flour' || group === 'meal') byHand ??= item
      else if (group === 'liquid' || item === 'milk') poured ??= item
      continue
    }
    mass = plus(mass, scaledBy(weight, 1 / 1000))
    if (wets.has(group)) wet = plus(wet, scaledBy(weight, 1 / 1000))
    if (flours.has(group)) flour = plus(flour, scaledBy(weight, 1 / 1000))
  }
  // What seasons a dish tells nothing of how much there is of it.
  if (!(mass.likely > 0) || (open && mass.likely < hardlyAny * kind.mass.low)) return {mass: null, unweighed, open, byHand: null}
  const filling = kind.dough === undefined ? 'batter' : 'dough'
  const of = filling === 'dough' ? wet : mass
  const floury = flour.likely > 0
  // "Wet it with warm water": a dough is no dry meal.
  if (kind.dough !== undefined && floury && poured !== null && wet.likely < dry * flour.likely) {
    const kilograms = {
      low: Math.max(0, flour.low * wetByHand.low - wet.high),
      likely: flour.likely * wetByHand.likely - wet.likely,
      high: flour.high * wetByHand.high - wet.low,
    }
    return {mass: plus(mass, kilograms), unweighed, open, byHand: {item: poured, kilograms}}
  }
  // Flour for the tin or the board is not what is meant where the rest is no mixture of flour.
  if (byHand === null || floury || !(of.likely > 0) || notFloury(kind)) return {mass, unweighed, open, byHand: null}
  const share = flourByHand[filling]
  const kilograms = {low: of.low * share.low, likely: of.likely * share.likely, high: of.high * share.high}
  return {mass: plus(mass, kilograms), unweighed, open, byHand: {item: byHand, kilograms}}
}

/** What is no mixture of flour. */
const notFloury = (kind: KindFigures): boolean => notMixed.has(kind.id) || setsAsCustard(kind)
