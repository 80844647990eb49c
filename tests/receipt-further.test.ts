import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'

/** Invented receipts; how they say that more of a thing goes in: common practice, no source. */
const read = (text: string) =>
  translate(`---\nyear: 1830\nplace: England\n---\n# Loaf\n\n${text}\n`, {file: 'a.md'}).receipts[0]!.ingredients
const told = (text: string): string[] =>
  read(text).map(({item, amount, measure, exact}) => (amount === null ? item : `${exact} ${measure} ${item}`))
const listed = (...lines: string[]): string[] => told(`${lines.map((line) => `- ${line}`).join('\n')}\n\nBake half an hour.`)

describe('more of a thing in prose is a further amount of it', () => {
  it.each([
    ['knead it with two pints more of warm water', '2 pint water'],
    ['knead it with two more pints of warm water', '2 pint water'],
    ['work in half a pound more flour', '1/2 pound flour'],
    ['work in two pounds and a half more flour', '5/2 pound flour'],
    ['put two spoonfuls more of yeast', '2 spoon yeast'],
    ['put four more eggs', '4 count egg'],
    ['put in half a dozen more eggs', '6 count egg'],
    ['put in an egg more, and bake it', '1 count egg'],
    ['put in a further 2 eggs', '2 count egg'],
    ['put in an extra 50 g of butter', '50 gram butter'],
  ])('%s', (words, entry) => {
    expect(told(`Take three pounds of flour, a pint of water and a gill of yeast. Then ${words}.`)).toEqual([
      '3 pound flour',
      '1 pint water',
      '1 gill yeast',
      entry,
    ])
  })

  it.each([
    ['Take a pound of flour. Beat in 3 eggs, then two more.', '2 count egg'],
    ['Take a pound of flour. Beat in 3 eggs and then two more, and bake.', '2 count egg'],
    ['Ein Pfund Mehl. 3 Eier unterrühren, dann noch zwei.', '2 count egg'],
    ['Ein Pfund Mehl. 3 Eier unterrühren, dann 2 weitere.', '2 count egg'],
  ])('so many more of what was just counted: %s', (text, entry) => {
    expect(told(text).slice(1)).toEqual(['3 count egg', entry])
  })

  it('but not where it says how two amounts compare, or how exact one is', () => {
    expect(told('Take a pound of flour and no more than a pint of milk.')).toEqual(['1 pound flour', '1 pint milk'])
    expect(read('Take a pound more or less of flour, and an egg.')[0]).toMatchObject({
      item: 'flour',
      amount: {low: 1, high: 1},
      hedges: ['more or less'],
    })
    expect(told('Take a pound or more of flour, and three ounces, more or less, of butter.')).toEqual([
      '1 pound flour',
      '3 ounce butter',
    ])
    expect(told('Take a pound of flour and an ounce more sugar than butter.')).toEqual(['1 pound flour', 'sugar'])
    expect(told('Take a pound of flour and a pint of milk; let it stand three hours more.')).toEqual([
      '1 pound flour',
      '1 pint milk',
    ])
  })

  it('and what only some bakings want is told and not added', () => {
    const [flour, milk, ...rest] = read('Take a pound of flour and a pint of milk; put a gill more of milk if it is too thick.')
    expect([flour!.item, milk!.amount, rest]).toEqual(['flour', {low: 1, high: 1}, []])
    expect(milk!.notes).toContain('a gill more of milk if it is too thick')
    expect(told('Take a pound of flour, an egg, and a little more flour if it is wanted.')).toEqual([
      '1 pound flour',
      '1 count egg',
      'flour',
    ])
  })
})

describe('more without the name of a thing is of what was last named in a like measure', () => {
  it.each([
    ['add a pint of milk by degrees, then half a pint more, and bake it', ['1 pint milk', '1/2 pint milk']],
    ['add a pint of milk and half a pint more of it. Bake it', ['1 pint milk', '1/2 pint milk']],
    ['add a pint of milk and three eggs, then another half pint, and bake it', ['1 pint milk', '3 count egg', '1/2 pint milk']],
    [
      'add a pint of milk, three ounces of butter and two spoonfuls of yeast, then two ounces more',
      ['1 pint milk', '3 ounce butter', '2 spoon yeast', '2 ounce butter'],
    ],
    ['put in four eggs, one at a time, then add two more, and bake it', ['4 count egg', '2 count egg']],
  ])('%s', (words, entries) => {
    expect(told(`Take a pound of flour; ${words}.`)).toEqual(['1 pound flour', ...entries])
  })

  it('is some of what a list has of it, in German too', () => {
    const [milk, ...rest] = read(
      '- 500 ml milk\n- 200 g flour\n\nMix the flour with 200 ml of the milk, then add 100 ml more. Bake.',
    )
    expect([milk!.notes, rest.map(({item}) => item)]).toEqual([expect.arrayContaining(['100 ml more']), ['flour']])
    const [mehl] = read('- 500 g Mehl\n- 250 ml Milch\n\nMit der Milch verrühren, noch 50 g unterkneten. Backen.')
    expect(mehl!.notes).toContain('noch 50 g')
  })

  it('is told and not added where only some bakings want it', () => {
    const milk = read('Take a pound of flour and a pint of milk; add a gill more if it is too stiff.').filter(
      ({item}) => item === 'milk',
    )
    expect(milk.map(({exact, notes}) => [exact, notes.some((note) => note.includes('a gill more if it is too stiff'))])).toEqual([
      ['1', true],
    ])
  })

  it('is carried as unsure, or as a thing that is not known, where nothing before has a like measure', () => {
    expect(read('Take a pound of flour and six spoonfuls of milk, then half a pint more, and bake it.').at(-1)).toMatchObject({
      item: 'milk',
      measure: 'pint',
      confidence: 0.5,
    })
    expect(read('Take a pound of flour and three eggs, then add half a pint more, and bake it.').at(-1)).toMatchObject({
      item: 'half a pint more',
      known: false,
      exact: '1/2',
      measure: 'pint',
    })
  })

  it('but not of time, of what is bought, or of a comparison', () => {
    expect(told('Take a pound of flour and a pint of milk; bake it an hour, or half an hour more.')).toEqual([
      '1 pound flour',
      '1 pint milk',
    ])
    expect(told('Roast a leg of mutton two hours; for every pound more, allow a quarter of an hour.')).not.toContain(
      '1 pound mutton',
    )
    expect(told('Boil a pint of milk in a basin with an ounce of sugar, pour it into another basin, and bake it.')).toEqual([
      '1 pint milk',
      '1 ounce sugar',
    ])
    expect(told('Take a pound of flour and a pint of milk, a gill more or less.')).toEqual(['1 pound flour', '1 pint milk'])
  })
})

describe('more of a thing in a list', () => {
  it('has its amount', () => {
    expect(
      listed(
        '2 cups milk',
        '1 cup more milk',
        '2 eggs',
        '2 more eggs',
        '1/2 cup more sugar',
        '50 g more butter',
        '1 additional egg',
      ),
    ).toEqual(['2 cup milk', '1 cup milk', '2 count egg', '2 count egg', '1/2 cup sugar', '50 gram butter', '1 count egg'])
    expect(listed('two pounds of flour', 'two pints more of warm water')).toEqual(['2 pound flour', '2 pint water'])
    expect(listed('2 tbsp extra virgin olive oil', '4 extra large eggs')).toEqual(['2 tablespoon salad oil', '4 count egg'])
  })

  it('in German too', () => {
    expect(
      listed(
        '200 g Butter',
        'noch 100 g Butter',
        'weitere 2 Eier',
        '2 weitere Eier',
        '100 g mehr Mehl',
        'noch eine Tasse Milch',
        'eine weitere Tasse Milch',
        '1 Tasse Milch mehr',
        'zusätzlich 50 g Zucker',
        'noch einmal 50 g Zucker',
      ),
    ).toEqual([
      '200 gram butter',
      '100 gram butter',
      '2 count egg',
      '2 count egg',
      '100 gram flour',
      '1 tasse milk',
      '1 tasse milk',
      '1 tasse milk',
      '50 gram sugar',
      '50 gram sugar',
    ])
    expect(listed('200 g Butter', 'etwas mehr Mehl', 'noch etwas Salz')).toEqual(['200 gram butter', 'flour', 'salt'])
  })
})

describe('more of a thing in a step beside a list', () => {
  const list = '- 500 g flour\n- 2 cups milk\n- 7 eggs\n\n'

  it('is some of the list’s where that has more, and so is what the step before puts in', () => {
    const [flour, milk, eggs, ...rest] = read(
      `${list}Mix the flour with 1 cup of milk. Beat in 4 eggs, then 3 more eggs, and 1 cup more milk. Bake half an hour.`,
    )
    expect(rest).toEqual([])
    expect([flour!.amount!.low, milk!.amount!.low, eggs!.amount!.low]).toEqual([500, 2, 7])
    expect(eggs!.notes).toEqual(expect.arrayContaining(['4 eggs', '3 more eggs']))
  })

  it('is beside it where the list has no more than that', () => {
    expect(
      told('- 500 g flour\n- 1 cup milk\n- 1 egg\n\nMix all, then beat in 1 more egg and 2 more cups of milk. Bake.'),
    ).toEqual(['500 gram flour', '1 cup milk', '1 count egg', '1 count egg', '2 cup milk'])
  })

  it('is told and not added where only some bakings want it', () => {
    const eggs = read('- 500 g flour\n- 1 egg\n\nMix all; if it is too stiff, add another egg. Bake half an hour.')
    expect(eggs.map(({item}) => item)).toEqual(['flour', 'egg'])
    expect(eggs[1]!.notes).toContain('if it is too stiff, add another egg')
  })
})

describe('a step beside a list that names an amount of what is on it', () => {
  const list = '- 2 cups flour\n- 2 cups milk\n- 2 tbsp oil\n- 3 eggs\n\n'

  it('has it of the list’s, where that is no less', () => {
    const [flour, milk, oil, eggs, ...rest] = read(
      `${list}Mix the flour with 1 cup of milk and 1 teaspoon of oil. Beat 2 eggs into 3 tablespoons of milk. Bake half an hour.`,
    )
    expect(rest).toEqual([])
    expect([flour!.amount!.low, milk!.amount!.low, oil!.amount!.low, eggs!.amount!.low]).toEqual([2, 2, 2, 3])
    expect(milk!.notes).toEqual(expect.arrayContaining(['1 cup of milk', '3 tablespoons of milk']))
    expect(eggs!.notes).toContain('2 eggs')
  })

  it('also where the list is in parts, and the steps stand behind the last', () => {
    for (const [dough, filling, method] of [
      ['## Dough', '## Filling', '## Method'],
      ['For the dough:', 'For the filling:', ''],
    ])
      expect(
        told(
          `${dough}\n\n- 2 cups flour\n- 2 cups milk\n\n${filling}\n\n- 1 cup cream\n\n${method}\n\nMix the flour with 1 cup of milk. Bake.`,
        ),
      ).toEqual(['2 cup flour', '2 cup milk', '1 cup cream'])
  })

  it('and is beside it where it is more, another thing, or in no measure that tells', () => {
    expect(told(`${list}Mix all with 3 cups of milk. Bake half an hour.`)).toContain('3 cup milk')
    expect(told(`${list}Mix all. Brush with 1 egg yolk. Bake half an hour.`)).toContain('1 count egg yolk')
    expect(told('- 500 g flour\n- 1 pint stock\n\nBake it, and pour over it 4 spoonfuls of gravy.')).toContain('4 spoon gravy')
  })

  it('but prose without a list adds each', () => {
    expect(told('Take a pound of flour and a pint of milk; then beat in half a pint of milk, and bake it.')).toEqual([
      '1 pound flour',
      '1 pint milk',
      '1/2 pint milk',
    ])
  })
})
