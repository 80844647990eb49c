import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'
import {messageWords} from '../src/sheets/said.js'
import {styleOf} from '../src/sheets/style-of.js'

/**
 * Baker's percentages: the flour is 100 %, all else a share of its weight, and the dough the sum of the shares (common practice of the trade,
 * no source). Texts written for these tests; the weights are worked out by hand.
 */
const read = (text: string) => translate(`# A loaf\n\n${text}\n`, {file: 'a.md'})
const entries = (text: string): string[] =>
  read(text).receipts[0]!.ingredients.map(({item, amount, measure, bakersPercent: share}) =>
    [
      item,
      amount === null ? '' : amount.low === amount.high ? amount.low : `${amount.low}–${amount.high}`,
      measure,
      share === undefined ? '' : `${share.low === share.high ? share.low : `${share.low}–${share.high}`} %`,
    ]
      .filter((one) => one !== '')
      .join(' '),
  )
const told = (text: string): string[] =>
  read(text)
    .messages.filter(({rule}) => rule === 'percent')
    .map(({severity, line, column}) => `${severity} ${line}:${column}`)

const bare = '- Flour 100 %\n- Water 70 %\n- Salt 2 %\n- Leaven 28 %\n'
/** The shares come to 200 %: two kilograms of dough have one of flour. */
const ofAKilogram = ['flour 1000 gram 100 %', 'water 700 gram 70 %', 'salt 20 gram 2 %', 'leaven 280 gram 28 %']

describe('how wet a leaven is, is no share of the flour', () => {
  it.each([
    ['- Levain (100% hydration) 20%'],
    ['- Levain (at 100%) 20%'],
    ['- Levain, 100% hydration: 20%'],
    ['- Levain at 100% hydration 20%'],
    ['- 20% levain (100% hydration)'],
    ['- Anstellgut (100 % Hydration) 20 %'],
    ['- Sauerteig (TA 200) 20 %'],
  ])('%s', (line) => {
    // 1.8 kg of dough: 1800 / 1.94 is 927.8 g of flour; of 1 kg of flour, the leaven is 200 g.
    const flour = (weight: string) =>
      read(`- Flour 100 %\n- Water 72 %\n${line}\n- Salt 2 %\n\n${weight}`).receipts[0]!.ingredients
    expect(flour('Total dough weight: 1.8 kg')[0]!.amount!.low).toBeCloseTo(1800 / 1.94, 0)
    expect(flour('Flour weight: 1 kg')[2]!.amount!.low).toBe(200)
  })
})

describe('baker’s percentages with a weight somewhere', () => {
  it.each([
    [`${bare}\nFlour weight: 1 kg`],
    [`${bare}\nTotal flour 1000 g.`],
    [`${bare}\nTotal dough weight: 2 kg`],
    [`${bare}\nMakes 2 kg of dough.`],
    [`${bare}\nMakes two loaves of 1 kg each.`],
    [`${bare}\nDivide into 4 and scale at 500 g.`],
    [`${bare}\nYield: 4 x 500 g loaves`],
    [`${bare}\nTeiggewicht: 2 kg`],
    [`${bare}\nFür 2 Brote, Teigeinlage 1000 g.`],
    [`${bare}\nFür 2 Brote à 1 kg.`],
    ['Flour 100 %, water 70 %, salt 2 %, leaven 28 %. Use 1 kg of flour.'],
    ['Flour 100 %\nWater 70 %\nSalt 2 %\nLeaven 28 %\n\nThe dough weighs 2 kg.'],
    ['- 100 % flour\n- 70% water\n- 2% of salt\n- 28 percent leaven\n\nDough weight 2 kg.'],
    ['- Flour: 100%\n- Water (70%)\n- Salt — 2 %\n- Leaven = 28 % of the flour\n\nDough weight 2 kg.'],
    [
      '| What | % |\n|---|---|\n| Flour | 100 |\n| Water | 70 |\n| Salt | 2 |\n| Leaven | 28 |\n| Total | 200 |\n\nDough weight 2 kg.',
    ],
    [
      '| What | Baker’s % |\n|---|---|\n| Flour | 100 % |\n| Water | 70 % |\n| Salt | 2 % |\n| Leaven | 28 % |\n| Total | 200 % / 2 kg |',
    ],
  ])('%j', (text) => {
    expect(entries(text)).toEqual(ofAKilogram)
    expect(told(text)).toEqual([])
  })

  it('go by what is weighed, where only some of it is', () => {
    expect(entries('- 800 g white flour\n- 200 g rye flour\n- Water 70 %\n- Salt 2 %')).toEqual([
      'flour 800 gram',
      'rye flour 200 gram',
      'water 700 gram 70 %',
      'salt 20 gram 2 %',
    ])
    expect(entries('| What | g | % |\n|---|---|---|\n| Flour | 500 | 100 |\n| Water | | 70 |\n| Salt | | 2 |')).toEqual([
      'flour 500 gram',
      'water 350 gram 70 %',
      'salt 10 gram 2 %',
    ])
  })

  it('of two flours, in German', () => {
    const text =
      '- 60 % Roggenmehl\n- 40 % Weizenmehl\n- 78 % Wasser\n- 2 % Salz\n\nTeiggewicht 1,8 kg. 50 Minuten bei 220 °C backen.'
    expect(entries(text)).toEqual(['rye flour 600 gram 60 %', 'flour 400 gram 40 %', 'water 780 gram 78 %', 'salt 20 gram 2 %'])
  })

  it('keep their ranges', () => {
    expect(entries('- Flour 100 %\n- Water 72–75 %\n- Salt 2 %\n\nFlour weight 1 kg')).toEqual([
      'flour 1000 gram 100 %',
      'water 720–750 gram 72–75 %',
      'salt 20 gram 2 %',
    ])
    // The dough's weight is fixed: with the more water goes the less flour. 1770/1.77 and 1770/1.74; 0.72/1.74 and 0.75/1.77 of 1770.
    expect(entries('- Flour 100 %\n- Water 72 to 75 %\n- Salt 2 %\n\nDough weight 1770 g')[0]).toBe(
      'flour 1000–1017.2 gram 100 %',
    )
    expect(entries('- Flour 100 %\n- Water 72 to 75 %\n- Salt 2 %\n\nDough weight 1770 g')[1]).toBe(
      'water 732.4–750 gram 72–75 %',
    )
  })

  it('say what they were reckoned from, and by what', () => {
    const [flour] = read(`${bare}\nMakes two loaves of 1 kg each.`).receipts[0]!.ingredients
    const step = '100 % of the weight of the flour, reckoned from “2 × 1 kg” of dough in all'
    expect(flour!.notes).toContain(step)
    expect(flour!.why[0]).toEqual({step, source: 'common-practice'})
    expect(flour!.sources).toContain('common-practice')
    expect(flour!.grams).toEqual({low: 1000, likely: 1000, high: 1000})
  })

  it.each([
    'Levain:\n\n- Flour 100 %\n- Water 100 %\n\nDough:\n\n- Flour 100 %\n- Water 70 %\n- Salt 2 %\n- Levain 28 %\n\nFlour weight 1 kg',
    '## Levain\n\n- Flour 100 %\n- Water 100 %\n\n## Dough\n\n- Flour 100 %\n- Water 70 %\n- Salt 2 %\n- Levain 28 %\n\nMakes 2 loaves of 1 kg.',
  ])('of a leaven with a formula of its own go by what the dough has of it: %j', (text) => {
    expect(entries(text)).toEqual([
      'flour 140 gram 100 %',
      'water 140 gram 100 %',
      'flour 1000 gram 100 %',
      'water 700 gram 70 %',
      'salt 20 gram 2 %',
    ])
  })

  it('of the stages of a dough, in a table, are shares of all its flour', () => {
    const text =
      '| | Sour % | Dough % |\n|---|---|---|\n| Rye flour | 20 | 30 |\n| Wheat flour | | 50 |\n| Water | 20 | 50 |\n| Salt | | 2 |\n\nDough weight 1720 g.'
    expect(entries(text)).toEqual([
      'rye flour 200 gram 20 %',
      'rye flour 300 gram 30 %',
      'flour 500 gram 50 %',
      'water 200 gram 20 %',
      'water 500 gram 50 %',
      'salt 20 gram 2 %',
    ])
  })

  it('in prose, before the names', () => {
    expect(entries('Take 100 % bread flour, 72 % water and 2 % salt, for 2 loaves of 870 g.')).toEqual([
      'bread flour 1000 gram 100 %',
      'water 720 gram 72 %',
      'salt 20 gram 2 %',
    ])
  })

  it('know the hydration for the water, where no water is named', () => {
    expect(entries('- 500 g flour\n- 75 % hydration\n- 2 % salt\n- 20 % starter (100 % hydration)')).toEqual([
      'flour 500 gram',
      'water 375 gram 75 %',
      'salt 10 gram 2 %',
      'starter 100 gram 20 %',
    ])
    expect(entries('- 500 g flour\n- 350 g water\n- 10 g salt\n\nHydration: 70 %')).toEqual([
      'flour 500 gram',
      'water 350 gram',
      'salt 10 gram',
    ])
  })
})

describe('baker’s percentages without a weight', () => {
  it('are carried through, and told once', () => {
    expect(entries(bare)).toEqual([
      'flour indefinite 100 %',
      'water indefinite 70 %',
      'salt indefinite 2 %',
      'leaven indefinite 28 %',
    ])
    expect(told(bare)).toEqual(['warning 3:3'])
    const message = read(bare).messages.find(({rule}) => rule === 'percent')!
    expect(message.reason).toContain('“Flour 100 %”')
    expect(message.suggest).toContain('Flour weight: 1 kg')
    expect(messageWords(message, styleOf({language: 'de'})).foreign).toBe(false)
  })
})

describe('a percentage that is no share of the flour', () => {
  it.each([
    ['- 500 g flour (12 % protein)\n- 350 g water', ['flour 500 gram', 'water 350 gram']],
    ['- 500 g flour (100 %)\n- 350 g water (70 %)', ['flour 500 gram', 'water 350 gram']],
    ['- 200 ml cream (35 % fat)\n- 100 g sugar', ['cream 200 millilitre', 'sugar 100 gram']],
    ['- 70 % dark chocolate 50 g\n- 100 g sugar', ['chocolate 50 gram', 'sugar 100 gram']],
    ['- 250 g Quark, 20 %\n- 300 g Mehl', ['quark 250 gram', 'flour 300 gram']],
    ['- 300 g Mehl\n- Milch (3,5 %)', ['flour 300 gram', 'milk indefinite']],
    ['- 100 g starter (100 % hydration)\n- 400 g flour', ['starter 100 gram', 'flour 400 gram']],
  ])('%j', (text, found) => {
    expect(entries(text)).toEqual(found)
    expect(told(text)).toEqual([])
  })
})
