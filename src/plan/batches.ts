import {scaled} from '../measure/range.js'
import type {Dish} from '../scale/types.js'

/** What batches of one dish have in common. */
export function batchesOf({file, title}: Pick<Dish, 'file' | 'title'>): string {
  return `${file} ${withoutBatch(title)}`
}

/**
 * What batches of one line of a day have in common. Another line may ask for the same dish, in other vessels or for another hour; of what is in no
 * batches each is a line by itself.
 */
export function askedAs(dish: Dish): string {
  const {title, vessel, wantedBy} = dish
  return withoutBatch(title) === title ? dish.id : JSON.stringify([batchesOf(dish), vessel, wantedBy])
}

/** A dish's title without the batch at its end: “Scones (1/2)” and “Scones (2/2)” are both “Scones”. */
export function withoutBatch(title: string): string {
  return title.replace(/ \(\d+\/\d+\)$/, '')
}

/** So many vessels of a dish, which feed as much fewer or more. */
export function withCount(dish: Dish, count: number): Dish {
  return count === dish.count ? dish : {...dish, count, feeds: scaled(dish.feeds, count / dish.count)}
}
