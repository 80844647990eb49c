import {Exact, ONE} from './exact.js'

/** Fixed ratios within one system, in the smallest unit named: stacked amounts ("a pound and five ounces") add exactly. */
const RATIOS: Readonly<Record<string, readonly [string, number]>> = {
  stone: ['mass', 224 * 16],
  pound: ['mass', 16 * 16],
  ounce: ['mass', 16],
  drachm: ['mass', 1],
  gallon: ['capacity', 32],
  quart: ['capacity', 8],
  pint: ['capacity', 4],
  gill: ['capacity', 1],
  bushel: ['dry', 4],
  peck: ['dry', 1],
  cup: ['spoons', 48],
  tablespoon: ['spoons', 3],
  teaspoon: ['spoons', 1],
  stick: ['spoons', 24],
  kilogram: ['metric mass', 1000],
  gram: ['metric mass', 1],
  litre: ['metric volume', 1000],
  decilitre: ['metric volume', 100],
  centilitre: ['metric volume', 10],
  millilitre: ['metric volume', 1],
}

/** How many of measure `to` one of measure `from` is; null where the ratio is not fixed. */
export function ratio(from: string, to: string): Exact | null {
  if (from === to) return ONE
  const a = RATIOS[from]
  const b = RATIOS[to]
  return a === undefined || b === undefined || a[0] !== b[0] ? null : Exact.of(a[1], b[1])
}

/** Whether a measure is of spoons and cups, whose words count too where no figure stands before them. */
export const isSpoons = (measure: string): boolean => RATIOS[measure]?.[0] === 'spoons'
