import {words} from './row.js'
import type {StageHead} from './schema.js'

/**
 * What heads the columns of a table that gives the stages of one dough beside one another, folded: `part` is the part of the receipt that
 * the column's amounts belong to, empty for the dough itself. Common practice, no source.
 */
export const stageHeads: readonly StageHead[] = [
  {
    id: 'sour',
    part: 'leaven',
    words: words(
      'sour, rye sour, full sour, first sour, second sour, sourdough, leaven, levain, starter, build, refreshment, sauer, sauerteig, roggensauer, weizensauer, grundsauer, vollsauer, anfrischsauer',
    ),
    source: 'common-practice',
  },
  {
    id: 'sponge',
    part: 'sponge',
    words: words(
      'sponge, flying sponge, poolish, biga, preferment, pre-ferment, ferment, pate fermentee, vorteig, hefevorteig, hefestuck, hefeansatz, ansatz, dampfl',
    ),
    source: 'common-practice',
  },
  {
    id: 'soaker',
    part: 'soaker',
    words: words('soaker, scald, mash, quellstuck, bruhstuck, kochstuck'),
    source: 'common-practice',
  },
  {
    id: 'dough',
    part: '',
    words: words('dough, main dough, final dough, bread dough, final, final mix, main mix, teig, hauptteig, brotteig, endteig'),
    source: 'common-practice',
  },
]

/** Parts of a receipt that are mixed into its dough, and are no more than it: the sour, the sponge, the soaker, by any of their names. */
export const mixedIn: ReadonlySet<string> = new Set(stageHeads.flatMap(({part, words: names}) => [part, ...names]))
