import {span, words} from './row.js'
import type {Range} from './schema.js'

/** What the hedge beside an amount does to it, as a factor. `volume` hedges speak of how a spoon or cup is filled. */
export interface HedgeAmount {
  readonly phrases: readonly string[]
  readonly factor: Range
  readonly of: 'any' | 'volume'
  readonly source: string
}

export const hedgeAmounts: readonly HedgeAmount[] = [
  {
    phrases: words(
      'about, near, roughly, approximately, approx, circa, ca, etwa, ungefahr, rund, around, say, perhaps, some, or so, more or less',
    ),
    factor: span(0.9, 1, 1.1),
    of: 'any',
    source: 'memory',
  },
  {
    phrases: words(
      'nearly, almost, not quite, scarcely, hardly, barely, rather less than, a little less than, something less than, somewhat less than, less than, under, rather under, scant, scanty, short, bare',
    ),
    factor: span(0.8, 0.92, 1),
    of: 'any',
    source: 'memory',
  },
  {phrases: words('not more than, no more than, at most, up to'), factor: span(0.8, 1, 1), of: 'any', source: 'memory'},
  {phrases: words('not less than, no less than, at least, upwards of'), factor: span(1, 1.05, 1.25), of: 'any', source: 'memory'},
  {
    phrases: words(
      'rather more than, a little more than, something more than, somewhat more than, more than, over, rather over, better than, rather better than, above',
    ),
    factor: span(1, 1.08, 1.25),
    of: 'any',
    source: 'memory',
  },
  {
    phrases: words('good, generous, liberal, full, brimming, fully, good-sized'),
    factor: span(1, 1.08, 1.2),
    of: 'any',
    source: 'memory',
  },
  {
    phrases: words('heaped, heaping, heaped-up, gehauft, gehaufter, gehaufte'),
    factor: span(1.4, 1.75, 2.2),
    of: 'volume',
    source: 'memory',
  },
  {phrases: words('rounded, rounding'), factor: span(1.2, 1.5, 1.8), of: 'volume', source: 'memory'},
  {phrases: words('large, great, big, largest'), factor: span(1, 1.2, 1.4), of: 'any', source: 'memory'},
  {phrases: words('small, smallish, smallest, little'), factor: span(0.7, 0.85, 1), of: 'any', source: 'memory'},
  {
    phrases: words('level, levelled, leveled, even, smooth, gestr, gestrichen, gestrichener, gestrichene'),
    factor: span(1, 1, 1),
    of: 'volume',
    source: 'common-practice',
  },
]
