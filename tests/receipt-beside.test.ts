import {readFileSync} from 'node:fs'
import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'

/** What is read besides the milk, eggs and sugar of a custard. */
const read = (text: string): string[] =>
  translate(`# Custards\n\nA quart of milk, six eggs, four ounces of sugar. ${text}\n`, {file: 'a.md'})
    .receipts[0]!.ingredients.slice(3)
    .map(({text: words}) => words)

// Phrases of our own; that custards stand in warm water in the oven, and whey when it is too hot, is common practice, no source.
describe('water that only stands round the dish', () => {
  it.each([
    'Bake in a pan of warm water till set.',
    'Set the cups in a dripping pan half filled with boiling water.',
    'Stand the dish in a tin of cold water.',
    'Place the mould in boiling water that comes halfway up.',
    'Pour in boiling water to reach half way up the sides of the cups.',
    'Pour boiling water round them in the pan.',
    'Fill the outer pan with boiling water.',
    'Bake in a water bath with warm water.',
    'Set in the oven in a deep tin with a little boiling water round it.',
    'Pour a pint of hot water about the cups.',
    'Set them in the oven, in a bain-marie of boiling water.',
    'Put the cups into boiling water, and cover them.',
    'Put the dish in another with boiling water in it.',
    'Wet the mould with cold water and fill it.',
    'Dip the spoon in warm water each time.',
    'Tie over a cloth wrung out of boiling water.',
  ])('is no ingredient: “%s”', (text) => expect(read(text)).toEqual([]))

  it.each([
    ['Mix with cold water.', ['cold water']],
    ['Add a pint of boiling water.', ['a pint of boiling water']],
    ['Put it in a pan with a little water.', ['a little water']],
    ['Dissolve the sugar in half a pint of water, and put in two spoons of rose-water.', ['half a pint of water']],
    ['Throw in a gill of cold water.', ['a gill of cold water']],
    ['Put some in each cup, and fill it up with boiling water.', ['boiling water']],
    ['Fill your cups, and bake. Pour a gill of water over.', ['a gill of water']],
  ])('and what goes in is one: “%s”', (text, words) => expect(read(text)).toEqual(expect.arrayContaining(words)))
})

describe('what a thing turns to or shows', () => {
  it.each([
    'If it stands longer whey will show.',
    'Overbaked, it weeps whey and water.',
    'Bake till a little whey shows at the edge.',
    'Take it out before the whey runs; else it turns to whey and curd.',
    'In too hot an oven it parts into curds and whey.',
    'Beat the whites until they become cream.',
  ])('is no ingredient: “%s”', (text) => expect(read(text).filter((words) => /whey|water|curd$|cream/.test(words))).toEqual([]))

  it.each([
    ['Mix with whey.', 'whey'],
    ['Take a pint of whey.', 'a pint of whey'],
    ['Add whey to make it thin.', 'whey'],
  ])('and what is stirred in is one: “%s”', (text, words) => expect(read(text)).toContain(words))
})

describe('the custards of the demo', () => {
  it('ask for neither water nor whey', () => {
    const text = readFileSync('corpus-demo/receipts/custards.md', 'utf8')
    const items = translate(text, {file: 'custards.md'}).receipts[0]!.ingredients.map(({item}) => item)
    expect(items).toContain('nutmeg')
    expect(items).not.toContain('water')
    expect(items).not.toContain('whey')
  })
})

// Phrases of our own, in the manner of manuscript receipts.
describe('what is enough, and how much that is', () => {
  const entries = (text: string): string[] =>
    translate(`# Fairings\n\n${text}\n`, {file: 'a.md'}).receipts[0]!.ingredients.map(
      ({exact, measure, item}) => `${exact ?? '–'} ${measure} ${item}`,
    )
  it.each([
    ['A pound of treacle, and flour enough, about a quart and a pint, to make a stiff paste.', '3/2 quart flour'],
    ['A pound of treacle, with milk enough to wet it (half a pint, or more).', '1/2 pint milk'],
    ['A pound of treacle, flour sufficient to roll it out, say two pounds.', '2 pound flour'],
  ])('%s', (text, amount) => expect(entries(text)).toEqual(['1 pound treacle', amount]))
  it.each([
    // Another thing's amount, a thickness, a time.
    ['A pound of treacle, and flour enough, two eggs.', ['1 pound treacle', '– indefinite flour', '2 count egg']],
    ['A pound of treacle, flour enough, half a pound of butter.', ['1 pound treacle', '– indefinite flour', '1/2 pound butter']],
    ['A pound of treacle, flour enough, rolled about an inch thick.', ['1 pound treacle', '– indefinite flour']],
  ])('but not in: %s', (text, all) => expect(entries(text)).toEqual(all))
  it('the paste that is made of it is no more of it', () => {
    expect(entries('A pound of flour, half a pound of lard. Make a stiff paste. Raise the paste, and fill it.')).toEqual([
      '1 pound flour',
      '1/2 pound lard',
    ])
  })
})
