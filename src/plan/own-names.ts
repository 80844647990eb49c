import type {FiringLog} from '../oven/log.js'
import {slug, slugOf} from '../scale/slug.js'
import type {Dish} from '../scale/types.js'
import {withoutBatch} from './batches.js'

/** What a log calls the dishes of a day. Stands apart from `told.ts`, so that the page's own script reads no log. */

/**
 * A log whose rows call the dishes by their own names, where they call them by the titles that the day gives them: by their receipt's, or
 * where another line of the day asks for that too, by the dish's. A title that is another dish's name, or that two receipts share, is left.
 *
 * @param dishes those of the day, `file` being the receipt's
 */
export function byOwnNames(log: FiringLog, dishes: readonly Pick<Dish, 'id' | 'title' | 'file'>[]): FiringLog {
  const known = new Set(dishes.flatMap(({id, file}) => [id, slugOf(file)]))
  const titled = new Map<string, Pick<Dish, 'id' | 'title' | 'file'>[]>()
  for (const dish of dishes) {
    const title = slug(withoutBatch(dish.title))
    titled.set(title, [...(titled.get(title) ?? []), dish])
  }
  const own = (name: string): string => {
    const of = known.has(name) ? [] : (titled.get(name) ?? [])
    const [first] = of
    if (!first || of.some(({file}) => file !== first.file)) return name
    const whole = dishes.every((dish) => dish.file !== first.file || of.includes(dish))
    return whole || of.length > 1 ? slugOf(first.file) : first.id
  }
  return {...log, rows: log.rows.map((row) => (row.dish === undefined ? row : {...row, dish: own(row.dish)}))}
}
