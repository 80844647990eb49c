import {words} from './row.js'
import type {NutritionWord} from './schema.js'

const row = (use: NutritionWord['use'], list: string): NutritionWord => ({
  id: use,
  use,
  words: words(list),
  source: 'common-practice',
})

/** Words of what a recipe says is in a serving of its dish, folded: `src/receipt/nutrition.ts` reads them. */
export const nutritionWords: readonly NutritionWord[] = [
  row(
    'energy',
    'kcal, kcals, kj, cal, cals, calorie, calories, kilocalories, kilojoules, kalorie, kalorien, kilokalorien, kilojoule',
  ),
  row(
    'nutrients',
    'energy, fat, fats, saturates, saturated, unsaturated, trans, carbs, carbohydrate, carbohydrates, sugar, sugars, fibre, fiber, protein, proteins, salt, sodium, cholesterol, potassium, calcium, iron, vitamin, energie, brennwert, fett, gesattigte, fettsauren, kohlenhydrate, kh, zucker, ballaststoffe, eiweiss, eiweiß, salz, natrium, davon, broteinheiten, be',
  ),
  // Of how much of the dish it is said.
  row('shares', 'per, each, pro, je, amount per, angaben pro, angaben je'),
  row(
    'shared',
    'serving, servings, portion, portions, slice, slices, piece, pieces, person, cookie, biscuit, muffin, square, roll, bun, loaf, scone, bar, 100, stuck, scheibe, riegel, keks, brotchen, 1',
  ),
]
