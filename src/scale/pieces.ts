import type {Range} from '../lexicon/schema.js'

/** Weight of one piece before baking, kg, where a sheet holds many and the receipt does not say how many it makes. Common practice, no source. */
export const pieceMass: Readonly<Record<string, Range>> = {
  rolls: {low: 0.045, likely: 0.06, high: 0.08},
  buns: {low: 0.06, likely: 0.075, high: 0.1},
  muffins: {low: 0.05, likely: 0.065, high: 0.09},
  biscuits: {low: 0.035, likely: 0.05, high: 0.07},
  crackers: {low: 0.006, likely: 0.012, high: 0.03},
  rusks: {low: 0.012, likely: 0.02, high: 0.03},
  'small cakes': {low: 0.015, likely: 0.025, high: 0.04},
  'hard gingerbread': {low: 0.01, likely: 0.018, high: 0.03},
  tarts: {low: 0.035, likely: 0.055, high: 0.08},
  'puff paste': {low: 0.03, likely: 0.045, high: 0.07},
  'cream puffs': {low: 0.02, likely: 0.032, high: 0.05},
}

/** Kinds that are put together in their vessels and come into no mixing bowl. Common practice, no source. */
export const notMixed: ReadonlySet<string> = new Set([
  'beans',
  'stew',
  'baked pasta',
  'roast meat',
  'roast poultry',
  'baked fish',
  'potted',
  'roast vegetables',
  'baked fruit',
  'drying fruit',
  'rusks',
  'rice pudding',
  'jelly',
])

/**
 * How leaven and salt are scaled. Each row is one rule of the trade and says whose it is.
 *
 * Bakers reckon salt and leaven by the weight of the flour ("bakers' percentage"), so both scale with the flour; what changes with
 * size is time, and for chemical leaven depth.
 */
export interface ScaleRule {
  readonly id: string
  /** `batch`: kilograms mixed at once. */
  readonly when: (change: {readonly times: number; readonly thicker: number; readonly batch: number}) => boolean
  readonly items: 'salt' | 'yeast' | 'chemical leaven'
  readonly say: string
  /** The same of a receipt without flour. */
  readonly without?: string
  readonly source: string
}

export const scaleRules: readonly ScaleRule[] = [
  {
    id: 'yeast-large',
    items: 'yeast',
    when: ({times, batch}) => times > 2 && batch >= 6,
    say: 'yeast is kept in proportion to the flour; so large a dough keeps its own warmth and rises sooner, so look at it a fifth of the time early',
    source: 'common-practice',
  },
  {
    id: 'yeast-small',
    items: 'yeast',
    when: ({times, batch}) => times < 1 && batch <= 0.6,
    say: 'yeast is kept in proportion to the flour; a small dough cools and rises more slowly',
    source: 'common-practice',
  },
  {
    id: 'chemical-deep',
    items: 'chemical leaven',
    when: ({thicker}) => thicker > 1.15,
    say: 'leaven is kept in proportion to the flour; in a deeper vessel the middle sets later, and some cooks take a tenth less',
    source: 'common-practice',
  },
  {
    id: 'salt-flour',
    items: 'salt',
    when: ({times}) => times !== 1,
    say: 'salt is kept in proportion to the flour',
    without: 'salt is kept in proportion to the rest',
    source: 'common-practice',
  },
]

/** Salt in bread as a share of the flour: the usual range, and where to ask whether it is meant. Common practice, no source. */
export const saltInBread = {low: 0.012, high: 0.025}
