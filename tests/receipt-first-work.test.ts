import {describe, expect, it} from 'vitest'
import {cautions} from '../src/lexicon/cautions.js'
import {translate} from '../src/receipt/translate.js'
import {inWords} from '../src/sheets/said.js'
import {styleOf} from '../src/sheets/style-of.js'

/**
 * Receipts written for these tests. That kidney beans hold a lectin which ten minutes' hard boiling destroys and a slow oven does not: FDA, Bad
 * Bug Book, phytohaemagglutinin.
 */
const first = (method: string, list = '- 500 g dried red kidney beans\n- 200 g bacon\n- 2 tbsp treacle') =>
  translate(`# Bean pot\n\n${list}\n\n${method}\n`, {file: 'receipts/a.md'})
    .receipts[0]!.cautions.flatMap((one) => one.first ?? [])
    .map(({say}) => say)

describe('work that a caution asks for before the oven', () => {
  it.each([
    'Soak the beans overnight. Drain, put in a crock with the rest, cover, and bake in a slow oven for five hours.',
    'Soak the beans overnight, bring to the boil in fresh water, drain, and bake in a slow oven for five hours.',
    'Soak the beans. Put them in a crock, fill up with boiling water, and bake in a slow oven for five hours.',
    'Soak the beans. Boil the treacle with the mustard and pour it over. Bake in a slow oven for five hours.',
    'Soak the beans. Boil 200 ml of water and pour it over. Bake in a slow oven for five hours.',
    'Soak the beans, boil them five minutes, and bake in a slow oven for five hours.',
    'Soak the beans; you need not simmer them. Bake in a slow oven for five hours.',
    'Soak the beans and do not boil them. Bake in a slow oven for five hours.',
  ])('is told where the receipt does not ask for it: %s', (method) => {
    expect(first(method)).toEqual([expect.stringMatching(/boil them hard for at least ten minutes/)])
  })
  it.each([
    'Soak the beans overnight. Boil them hard for 15 minutes, then bake in a slow oven for five hours.',
    'Soak the beans overnight, parboil them, and bake in a slow oven for five hours.',
    'Soak the beans; cover with fresh water and boil until the skins burst. Bake in a slow oven for five hours.',
    'Use tinned beans in their liquor. Bake in a slow oven for an hour.',
  ])('is not told as ours where it asks for it itself, or it is needless: %s', (method) => {
    expect(first(method)).toEqual([])
  })
  it('is not told where nothing of the receipt raises the caution', () => {
    expect(first('Bake in a slow oven for an hour.', '- 500 g carrots\n- 50 g butter')).toEqual([])
  })
  it('is said in German, for every caution that has any', () => {
    const works = cautions.flatMap((row) => row.first?.say ?? [])
    expect(works.length).toBeGreaterThan(0)
    for (const say of works) expect(inWords(say, styleOf({language: 'de'}))).not.toBe(say)
  })
})
