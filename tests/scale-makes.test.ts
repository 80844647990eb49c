import {describe, expect, it} from 'vitest'
import {askedWords} from '../src/lexicon/asked-words.js'
import {germanYields} from '../src/lexicon/yield-words.js'
import {translate} from '../src/receipt/translate.js'
import type {Receipt, Yield} from '../src/receipt/types.js'
import {THINGS} from '../src/receipt/yields.js'
import {makeDishes} from '../src/scale/dishes.js'
import {countsPeople} from '../src/scale/makes.js'

/** Whom a yield's noun counts: the rows of the lexicon by which a day's line says it too. Invented receipts. */
const oven = {floor: {shape: 'round' as const, diameter: 1.2}, mouth: {width: 0.5, height: 0.3}, vaultHeight: 0.5}

describe('who is fed', () => {
  it('is told by the lexicon’s rows, English and German, however they are written', () => {
    const rows = askedWords.filter(({use}) => use === 'persons').flatMap(({words}) => words)
    expect(rows.filter((word) => !countsPeople(word))).toEqual([])
    expect(['Persons', 'Gäste', 'Portionen'].filter((word) => !countsPeople(word))).toEqual([])
  })

  it('and by no word for what is made', () => {
    expect([...THINGS].filter(countsPeople)).toEqual([])
    expect(new Set([...germanYields.values()].filter(countsPeople))).toEqual(new Set(['persons']))
  })

  it('and counts no vessels, whatever language the yield’s noun is in', () => {
    const text =
      '# Plum cake\n\n- 250 g flour\n- 200 g sugar\n- 200 g butter\n- 4 eggs\n- 300 g plums\n\nBake it an hour. Serves 20.\n'
    const receipt: Receipt = translate(text, {file: 'receipts/x.md'}).receipts[0]!
    const madeOf = (of: string) => {
      const serves: Yield = {...receipt.serves!, of}
      const item = {file: 'receipts/x.md', title: 'Plum cake', amount: 'for 40', wantedBy: null, line: 5, column: 3}
      return makeDishes({day: {people: 40, items: [item], spare: []}, receipts: [{...receipt, serves}], oven}).dishes
    }
    expect(receipt.serves).toMatchObject({low: 20, of: 'persons'})
    for (const of of ['persons', 'Gäste', 'guests'])
      expect(madeOf(of)).toMatchObject([{count: 2, times: '2', feeds: {low: 40, high: 40}}])
    // Twenty cakes are none of them.
    expect(madeOf('cakes')[0]!.times).not.toBe('2')
  })
})
