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
  shortbread: {low: 0.015, likely: 0.025, high: 0.04},
  gingerbread: {low: 0.015, likely: 0.025, high: 0.05},
  'sponge fingers': {low: 0.008, likely: 0.015, high: 0.03},
  'small raised pies': {low: 0.18, likely: 0.26, high: 0.4},
  'sausage rolls': {low: 0.05, likely: 0.09, high: 0.16},
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
  'drying herbs',
  'rusks',
  'rice pudding',
  'not baked',
])
