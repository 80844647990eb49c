import {words} from './row.js'
import type {Place} from './schema.js'

/** A word beside a measure that says whose it is ("an imperial pint", "2 US cups"), whatever the rest of the receipt is read by. */
export interface MeasureSystem {
  readonly id: string
  /** Lower case; the stops of an abbreviation stand by themselves, as the reader sees them. */
  readonly words: readonly string[]
  /** The place in whose rows of `measures.ts` the size is looked up. */
  readonly place: Place
}

/** Common practice, no source: which word names which country's measures. The sizes are those of the measure's own rows. */
export const measureSystems: readonly MeasureSystem[] = [
  {id: 'US', words: words('us, u . s ., u . s, american'), place: 'us'},
  {id: 'imperial', words: words('imperial, uk, u . k ., u . k, british'), place: 'uk'},
  {id: 'Australian', words: words('australian, aus'), place: 'au'},
  {id: 'metric', words: words('metric'), place: 'eu'},
]
