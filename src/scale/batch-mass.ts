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
  /** Of that, flour of which the receipt gives no amount, kg. */
  readonly flour: {readonly item: string; readonly kilograms: Range} | null
}

/** What the mixture weighs when the receipt is made once as written. */
export function batchMass(receipt: Receipt, kind: KindFigures): BatchMass {
  let mass = exactly(0)
  let wet = exactly(0)
  let floury = false
  let byHand: string | null = null
  let open = false
  const unweighed: string[] = []
  for (const {item, amount, grams, millilitres} of receipt.ingredients) {
    const weight = grams ?? millilitres
    const group = lookUpItem(item)?.group
    if (weight === null) {
      open ||= fills.has(group)
      if (amount !== null) unweighed.push(item)
      else if (group === 'flour' || group === 'meal') byHand ??= item
      continue
    }
    mass = plus(mass, scaledBy(weight, 1 / 1000))
    if (wets.has(group)) wet = plus(wet, scaledBy(weight, 1 / 1000))
    floury ||= flours.has(group)
  }
  // What seasons a dish tells nothing of how much there is of it.
  if (!(mass.likely > 0) || (open && mass.likely < hardlyAny * kind.mass.low)) return {mass: null, unweighed, open, flour: null}
  const filling = kind.dough === undefined ? 'batter' : 'dough'
  const of = filling === 'dough' ? wet : mass
  // Flour for the tin or the board is not what is meant where the rest is no mixture of flour.
  if (byHand === null || floury || !(of.likely > 0) || notFloury(kind)) return {mass, unweighed, open, flour: null}
  const share = flourByHand[filling]
  const kilograms = {low: of.low * share.low, likely: of.likely * share.likely, high: of.high * share.high}
  return {mass: plus(mass, kilograms), unweighed, open, flour: {item: byHand, kilograms}}
}

/** What is no mixture of flour. */
const notFloury = (kind: KindFigures): boolean => notMixed.has(kind.id) || setsAsCustard(kind)
