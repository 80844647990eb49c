import {span} from '../lexicon/row.js'
import type {Item, Measure, Range} from '../lexicon/schema.js'
import {times} from './range.js'

/** Leavens by chemistry and strength: old alkalis to baking soda by the carbon dioxide each gives, old yeasts to dry yeast by range. */

/** Abridged standard atomic weights, g/mol. IUPAC 2021. */
export const atomicWeights: Readonly<Record<string, number>> = {
  H: 1.008,
  C: 12.011,
  N: 14.007,
  O: 15.999,
  Na: 22.99,
  K: 39.098,
  Al: 26.982,
  S: 32.06,
}

/** Molar mass, g/mol, of a plain formula such as `NaHCO3` or `(NH4)2CO3`. Throws on an element it has no weight for. */
export function molarMass(formula: string): number {
  let at = 0
  const number = (): number => {
    const digits = /^\d+/.exec(formula.slice(at))?.[0] ?? ''
    at += digits.length
    return digits === '' ? 1 : Number(digits)
  }
  const group = (): number => {
    let mass = 0
    while (at < formula.length && formula[at] !== ')') {
      if (formula[at] === '(') {
        at++
        const inner = group()
        at++
        mass += inner * number()
        continue
      }
      const element = /^[A-Z][a-z]?/.exec(formula.slice(at))?.[0] ?? ''
      const weight = atomicWeights[element]
      if (weight === undefined) throw new RangeError(`molarMass: no atomic weight for “${formula.slice(at)}” in ${formula}`)
      at += element.length
      mass += weight * number()
    }
    return mass
  }
  return group()
}

/** What an old alkali is: its formula, the moles of CO₂ a mole gives with acid, the moles of acid it neutralises, and its purity. */
export interface Alkali {
  readonly id: string
  readonly name: string
  readonly formula: string
  readonly gas: number
  readonly acid: number
  readonly purity: Range
}

const PEARL_ASH: Alkali = {
  id: 'pearl-ash',
  name: 'potassium carbonate',
  formula: 'K2CO3',
  gas: 1,
  acid: 2,
  purity: span(0.8, 0.93, 1),
}
const POTASH: Alkali = {...PEARL_ASH, id: 'potash', purity: span(0.55, 0.75, 0.95)}
const POTASSIUM_BICARBONATE: Alkali = {
  id: 'saleratus',
  name: 'potassium bicarbonate',
  formula: 'KHCO3',
  gas: 1,
  acid: 1,
  purity: span(0.95, 1, 1),
}
const SODA: Alkali = {id: 'baking soda', name: 'sodium bicarbonate', formula: 'NaHCO3', gas: 1, acid: 1, purity: span(0.98, 1, 1)}
const BAKER_AMMONIA: Alkali = {
  id: 'sal volatile',
  name: 'ammonium bicarbonate',
  formula: 'NH4HCO3',
  gas: 1,
  acid: 1,
  purity: span(0.9, 1, 1),
}

/** Before this year saleratus was potassium bicarbonate; from the second it was commonly baking soda. From memory. */
const SALERATUS_CHANGES = {from: 1845, to: 1865} as const

/** Grams of baking soda that give the same carbon dioxide with acid as one gram of the alkali. */
function sodaFactor(alkali: Alkali): Range {
  const pure = (molarMass(SODA.formula) * alkali.gas) / molarMass(alkali.formula)
  return {low: pure * alkali.purity.low, likely: pure * alkali.purity.likely, high: pure * alkali.purity.high}
}

/** An old leaven as baking soda. `factor` is grams of soda a gram; `acidFactor` how much more acid the old one took up, gas for gas. */
export interface SodaEquivalent {
  readonly soda: Range
  readonly factor: Range
  readonly acidFactor: number
  readonly why: string
  readonly source: 'iupac-weights'
}

/**
 * Baking soda that does the work of an old alkali, by the carbon dioxide each gives with acid enough; null for what is no alkali.
 * Without acid (sour milk, molasses, cream of tartar) soda gives half as much, by heat alone: 2 NaHCO₃ → Na₂CO₃ + H₂O + CO₂.
 *
 * @param item Item id: pearl-ash, potash, saleratus, sal volatile, baking soda
 * @param grams Grams of it
 * @param year Year of the receipt, which decides what saleratus was
 */
export function asBakingSoda(item: string, grams: Range, year: number | null): SodaEquivalent | null {
  const one = (alkali: Alkali): SodaEquivalent => {
    const factor = sodaFactor(alkali)
    return {
      soda: times(grams, factor),
      factor,
      acidFactor: alkali.acid / alkali.gas,
      why: `${alkali.name} ${alkali.formula} ${molarMass(alkali.formula).toFixed(1)} g/mol, baking soda NaHCO3 ${molarMass(SODA.formula).toFixed(1)} g/mol: a mole of each gives a mole of CO2 with acid`,
      source: 'iupac-weights',
    }
  }
  switch (item) {
    case 'pearl-ash':
      return one(PEARL_ASH)
    case 'potash':
      return one(POTASH)
    case 'sal volatile':
      return one(BAKER_AMMONIA)
    case 'baking soda':
      return one(SODA)
    case 'saleratus': {
      if (year !== null && year < SALERATUS_CHANGES.from) return one(POTASSIUM_BICARBONATE)
      if (year !== null && year > SALERATUS_CHANGES.to) return one(SODA)
      const old = one(POTASSIUM_BICARBONATE)
      const later = one(SODA)
      return {
        ...old,
        factor: {low: old.factor.low, likely: (old.factor.likely + later.factor.likely) / 2, high: later.factor.high},
        soda: {low: old.soda.low, likely: (old.soda.likely + later.soda.likely) / 2, high: later.soda.high},
        why: `saleratus was potassium bicarbonate before about ${SALERATUS_CHANGES.from} and commonly baking soda after ${SALERATUS_CHANGES.to}; the range covers both`,
      }
    }
    default:
      return null
  }
}

/** Old yeasts that were kept and measured as liquids. What their rows are replaced by is grams of dry yeast a millilitre. */
const LIQUID_YEASTS: ReadonlySet<string> = new Set(['yeast', 'emptins'])

/** Brewers' yeast in a pint is liquid; a weight of "yeast" is the compressed kind, sold from about 1868. */
const COMPRESSED_FROM = 1868

/** True of yeast by weight or by the cube: pressed, and no liquid. */
export function isPressed(item: string, measure: Pick<Measure, 'id' | 'dimension'>, year: number | null): boolean {
  return item === 'yeast' && (measure.dimension === 'mass' || measure.id === 'cube') && (year === null || year >= COMPRESSED_FROM)
}

/**
 * Grams of active dry yeast that do the work of an old yeast, by what its row is replaced by: of a liquid one by its volume, of any other by
 * its weight; null where the item is none or its amount is unknown.
 *
 * @param item a yeast's row: that of pressed yeast where `isPressed`
 */
export function asDryYeast(
  {id, raises, replacedBy}: Item,
  grams: Range | null,
  millilitres: Range | null,
): {readonly dry: Range; readonly why: string; readonly source: string} | null {
  if (raises !== 'yeast' || replacedBy === undefined) return null
  const {factor, source} = replacedBy
  if (LIQUID_YEASTS.has(id)) {
    return millilitres === null
      ? null
      : {
          dry: times(millilitres, factor),
          why: `liquid ${id}: ${factor.low}–${factor.high} g of dry yeast does the work of a millilitre; make up the liquid with water`,
          source,
        }
  }
  return grams === null
    ? null
    : {dry: times(grams, factor), why: `${id}: ${factor.low}–${factor.high} of its weight in dry yeast`, source}
}

/** Items sour enough to set soda and pearl-ash working. Common practice, no source. */
const SOUR: ReadonlySet<string> = new Set([
  'sour milk',
  'buttermilk',
  'sour cream',
  'yogurt',
  'whey',
  'molasses',
  'treacle',
  'golden syrup',
  'honey',
  'brown sugar',
  'cream of tartar',
  'tartaric acid',
  'citric acid',
  'muriatic acid',
  'vinegar',
  'lemon juice',
  'orange juice',
  'lime juice',
  'grape juice',
  'cider',
  'wine',
  'beer',
  'apple sauce',
  'emptins',
  'leaven',
])

/** Those of a receipt's items that are sour, each once, in its order. */
export const sourItems = (items: Iterable<string>): string[] => [...new Set(items)].filter((item) => SOUR.has(item))
