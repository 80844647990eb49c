import type {DishCorrection} from '../oven/learn.js'
import {slugOf} from '../scale/slug.js'
import type {Dish} from '../scale/types.js'

/** Dishes with the times, minutes, that their own past bakings in this oven call for; their receipts' where none is logged. */
export function learnt(dishes: readonly Dish[], corrections: readonly DishCorrection[] = []): Dish[] {
  return dishes.map((dish) => corrected(dish, corrections))
}

function corrected(dish: Dish, corrections: readonly DishCorrection[]): Dish {
  const known = corrections.find((c) => c.dish === slugOf(dish.file))
  const by = Math.round(known?.minutes.likely ?? 0)
  if (known === undefined || by === 0) return dish
  const add = (minutes: number): number => Math.max(5, minutes + by)
  const {low, likely, high} = dish.need.minutes
  return {
    ...dish,
    need: {...dish.need, minutes: {low: add(low), likely: add(likely), high: add(high)}},
    inferred: [
      ...dish.inferred,
      {
        field: 'bake',
        value: `${by > 0 ? '+' : '−'}${Math.abs(by)} min`,
        why: `this oven’s log (${known.notes} ${known.notes === 1 ? 'note' : 'notes'})`,
      },
    ],
  }
}
