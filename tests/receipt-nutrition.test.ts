import {describe, expect, test} from 'vitest'
import {translate} from '../src/receipt/translate.js'

/** What is in a serving, as recipes print it (Regulation (EU) 1169/2011, annex XV, for the order of it): none of it goes in. Invented receipts; that and the rest are common practice, no source. */

const read = (text: string) => translate(text, {file: 'a.md'}).receipts
const CRUMBLE = '# Plum crumble\n\n- 900 g plums\n- 200 g flour\n- 10 g salt\n\nBake at 190 °C for 40 minutes.\n\n'
const ITEMS = ['plum', 'flour', 'salt']

describe('what is in a serving is no ingredient and no yield', () => {
  test.each([
    ['| Nutrition | per serving |\n| --- | --- |\n| Calories | 340 kcal |\n| Fat | 14 g |\n| Sugar | 28 g |'],
    ['| | per serving |\n| --- | --- |\n| Fat | 14 g |\n| Sugar | 28 g |'],
    ['## Nutrition\n\n| | |\n| --- | --- |\n| Fat | 14 g |\n| Sugar | 28 g |'],
    ['## Nutrition facts (per serving)\n\n- Fat 14 g\n- Sugar 28 g'],
    ['**Nutrition per serving**\n\n- Calories: 340\n- Fat: 14 g\n- Sugar: 28 g'],
    ['Nutrition (per 1/8): 210 cal, 8 g fat, 29 g carbs, 6 g protein, 480 mg sodium'],
    ['**Nutrition per serving:** 210 kcal, fat 8 g, sugar 12 g, salt 1.1 g'],
    ['**Per serving:** 210 kcal, 8 g fat'],
    ['Per serving  \n210 kcal  \nFat 8 g  \nSugar 12 g'],
    ['Energy 880 kJ / 210 kcal, fat 8 g, of which saturates 4 g, salt 0.4 g'],
    ['Fat 8 g, sugar 28 g, 340 kcal'],
    ['**Nährwerte pro Portion:** 340 kcal, 14 g Fett, 28 g Zucker'],
    ['Pro Stück: 210 kcal, 8 g Fett'],
    ['## Nährwerte\n\nFett 14 g, Zucker 28 g\n\n- Salz 1 g'],
  ])('%s', (text) => {
    const receipts = read(`${CRUMBLE}${text}\n`)
    expect(receipts.map(({title}) => title)).toEqual(['Plum crumble'])
    expect(receipts[0]!.ingredients.map((one) => one.item)).toEqual(ITEMS)
    expect(receipts[0]!.serves).toBeNull()
  })

  test.each([
    ['Serves 8 (210 kcal each).', 'Serves 8'],
    ['Makes 12 · 210 kcal per piece · 8 g fat', 'Makes 12'],
    ['340 kcal, 14 g fat, sugar 28 g. Serves 6.', 'Serves 6'],
    ['Nutrition: fat 14 g, salt 1 g. Serves 4.', 'Serves 4'],
    ['Für 6 Personen (pro Portion 340 kcal)', 'Für 6 Personen'],
  ])('and the yield beside it stays: %s', (text, serves) => {
    const [receipt] = read(`${CRUMBLE}${text}\n`)
    expect(receipt!.ingredients.map((one) => one.item)).toEqual(ITEMS)
    expect(receipt!.serves?.text).toBe(serves)
  })

  test('a list with a column of energy keeps its amounts, and fat, sugar and salt that go in stay', () => {
    const text =
      '# Rusks\n\n| Flour | 200 g | 700 kcal |\n| --- | --- | --- |\n| Sugar | 50 g | 200 kcal |\n| Salt | 5 g | 0 kcal |\n| Fat | 20 g | 180 kcal |\n'
    expect(read(text)[0]!.ingredients.map((one) => `${one.exact} ${one.item}`)).toEqual([
      '200 flour',
      '50 sugar',
      '5 salt',
      '20 fat',
    ])
  })
})

describe('a number behind “portions” or “serving” that is no yield', () => {
  test.each([
    'Scoop 40 g portions 2 inches apart on a tray.',
    'Scoop 2-tablespoon (40 g) portions 2" apart onto sheet pans.',
    'Per serving: 210.',
    'Set the portions 5 cm apart.',
  ])('%s', (text) => {
    expect(read(`# Cookies\n\n- 280 g flour\n\n${text} Bake 12 minutes.\n`)[0]!.serves).toBeNull()
  })
})

describe('a story above the list', () => {
  const told = (story: string, label: string, end = 'Bake at 190 °C for 40 minutes.') =>
    read(`# Plum crumble\n\n${story}\n\n${label}\n\n- 900 g plums\n- 200 g flour\n\n${end}\n`)[0]!
  const bakes = (receipt: ReturnType<typeof told>): number[] =>
    receipt.times.filter(({of}) => of === 'bake').map((time) => time.minutes.low)

  test.each(['## Ingredients', '**Ingredients**', '**Zutaten (für 4 Personen)**', '## Das brauchst du', '**You’ll need**'])(
    'gives none of what goes in, and none of its times: %s',
    (label) => {
      const receipt = told('I first made this when we had 40 kg of plums and 3 kids. It takes 10 minutes!', label)
      expect(receipt.ingredients.map((one) => `${one.exact} ${one.item}`)).toEqual(['900 plum', '200 flour'])
      expect(bakes(receipt)).toEqual([40])
    },
  )

  test('but a line that says what its time is of stands, and so does one without another below', () => {
    expect(bakes(told('Prep 10 min | Cook 45 min', '## Ingredients', 'Bake until brown.'))).toEqual([45])
    expect(bakes(told('Bake for 35 minutes in a hot oven: that is all.', '## Ingredients', 'Bake until brown.'))).toEqual([35])
  })

  test('without a heading or label for them, what the text says goes in', () => {
    const [receipt] = read('# Plum crumble\n\nTake 900 g of plums and 200 g of flour, and bake 40 minutes.\n')
    expect(receipt!.ingredients.map((one) => one.item)).toEqual(['plum', 'flour'])
  })
})
