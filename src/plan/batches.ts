import type {Dish} from '../scale/types.js'

/** What batches of one dish have in common. */
export function batchesOf({file, title}: Pick<Dish, 'file' | 'title'>): string {
  return `${file} ${withoutBatch(title)}`
}

/** A dish's title without the batch at its end: “Scones (1/2)” and “Scones (2/2)” are both “Scones”. */
export function withoutBatch(title: string): string {
  return title.replace(/ \(\d+\/\d+\)$/, '')
}
