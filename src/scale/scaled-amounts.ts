import Fraction from 'fraction.js'
import {lookUpItem, lookUpMeasure} from '../lexicon/index.js'
import type {Item, Range} from '../lexicon/schema.js'
import {scaled as scaledBy} from '../measure/range.js'
import type {Inferred, Ingredient, Receipt} from '../receipt/types.js'
import {type KitchenInput, kitchenAmounts} from './kitchen.js'
import {restOfEggs, withoutLacking} from './lacking-eggs.js'
import type {Dish} from './types.js'

/** What an ingredient is mixed with: the part it is written under, and of one written as a whole its paste or its filling. */
export const mixtureOf = ({part, filling}: {readonly part: string; readonly filling?: true | undefined}): string =>
  filling ? `${part} filling` : part

/** The receipt's ingredients so many times, exactly and in kitchen measures. */
export function scaled(receipt: Receipt, times: Fraction): {amounts: Dish['amounts']; notes: Inferred[]} {
  const rest = receipt.ingredients.flatMap(restOfEggs)
  const weighed = [...receipt.ingredients.map(withoutLacking), ...rest]
  const inputs = weighed.map((ingredient) => kitchenInput(ingredient, times))
  const lines = kitchenAmounts(inputs)
  const notes: Inferred[] = []
  const amounts = weighed.map((ingredient, i) => {
    const input = inputs[i]!
    const line = lines[i]!
    if (line.choice !== null)
      notes.push({field: input.group === 'egg' ? 'eggs' : ingredient.item, value: line.text, why: line.choice})
    return {
      item: ingredient.item,
      part: ingredient.part,
      grams: input.grams,
      millilitres: input.millilitres,
      kitchen: line.text,
      exact: input.amount === null ? null : `${exactText(input)} ${input.measure}`,
      ...(ingredient.today === undefined
        ? {}
        : {today: {...ingredient.today, grams: multiplied(ingredient.today.grams, times.valueOf())}}),
    }
  })
  return {amounts, notes}
}

const multiplied = (range: Range | null, k: number): Range | null => (range === null ? null : scaledBy(range, k))

const exactText = (input: KitchenInput): string =>
  input.amountHigh === null ? input.amount!.toFraction() : `${input.amount!.toFraction()} to ${input.amountHigh.toFraction()}`

function kitchenInput(ingredient: Ingredient, times: Fraction): KitchenInput {
  const k = times.valueOf()
  const item: Item | null = lookUpItem(ingredient.item)
  const {reckoned} = ingredient
  const written = ingredient.exact ?? reckoned
  const exact = written === undefined ? null : new Fraction(written).mul(times)
  const high = ingredient.exactHigh === undefined ? null : new Fraction(ingredient.exactHigh).mul(times)
  const dimension = lookUpMeasure(ingredient.measure)?.dimension
  return {
    text: ingredient.text,
    item: ingredient.item,
    group: item?.group ?? null,
    part: mixtureOf(ingredient),
    amount: exact,
    amountHigh: high !== null && exact !== null && high.equals(exact) ? null : high,
    measure: reckoned === undefined ? ingredient.measure : 'count',
    ...(ingredient.unmeasured === true && ingredient.measureText !== undefined ? {written: ingredient.measureText} : {}),
    byNumber: dimension === 'count' || ingredient.measure === 'count' || reckoned !== undefined,
    byWeight: dimension === 'mass' || dimension === 'comparison' || dimension === 'weight-of-piece',
    today:
      item?.group === 'egg'
        ? (item.pieces.find((piece) => piece.measure === 'count' && (piece.from ?? 0) >= 1900)?.grams.likely ?? null)
        : null,
    grams: multiplied(ingredient.grams, k),
    millilitres: multiplied(ingredient.millilitres, k),
  }
}
