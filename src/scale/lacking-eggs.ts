import Fraction from 'fraction.js'
import {lookUpItem} from '../lexicon/index.js'
import type {Range} from '../lexicon/schema.js'
import {less, scaled as scaledBy} from '../measure/range.js'
import type {Ingredient} from '../receipt/types.js'

/** Whole eggs in kilograms of those that lack a part, which are in proportion: twelve yolks with six whites hold six whole eggs. */
function wholeOf({
  exact,
  grams,
  lacks,
}: Ingredient): {readonly whole: Fraction; readonly part: Fraction; readonly grams: Range | null} | null {
  if (lacks === undefined || exact === null) return null
  const part = new Fraction(lacks.count)
  const all = new Fraction(exact)
  const piece = lookUpItem('egg')?.pieces
  const other = lookUpItem(lacks.item)?.pieces
  if (piece === undefined || other === undefined || grams === null) return {whole: all.sub(part), part, grams: null}
  // Of eggs of one time: yolk and white have the same shares of smaller ones.
  const likely = (rows: typeof piece): number => rows.findLast(({measure}) => measure === 'count')?.grams.likely ?? 0
  const rest = part.valueOf() * (likely(piece) - likely(other))
  const whole = all.sub(part).valueOf() * likely(piece)
  return {whole: all.sub(part), part, grams: scaledBy(grams, whole / (whole + rest))}
}

const otherPart = ({lacks}: Ingredient): string => (lacks?.item === 'egg white' ? 'egg yolk' : 'egg white')

/** The whole eggs of eggs that lack a part; any other ingredient as it is. */
export function withoutLacking(ingredient: Ingredient): Ingredient {
  const found = wholeOf(ingredient)
  if (found === null) return ingredient
  if (!(found.whole.valueOf() > 0)) return {...ingredient, item: otherPart(ingredient)}
  return {...ingredient, exact: found.whole.toFraction(), grams: found.grams}
}

/** The yolks, or the whites, that eggs lacking the other part leave beside whole eggs. */
export function restOfEggs(ingredient: Ingredient): Ingredient[] {
  const found = wholeOf(ingredient)
  if (found === null || !(found.part.valueOf() > 0 && found.whole.valueOf() > 0)) return []
  const {grams} = ingredient
  const rest = grams === null || found.grams === null ? null : less(grams, found.grams)
  return [{...ingredient, item: otherPart(ingredient), exact: found.part.toFraction(), grams: rest}]
}
