import {describe, expect, it} from 'vitest'
import {items} from '../src/lexicon/index.js'
import {kinds} from '../src/lexicon/kinds.js'
import {sources as allSources} from '../src/lexicon/sources.js'
import {phrases} from '../src/plan/phrases.js'
import {glossary, termsIn} from '../src/sheets/glossary.js'
import {phraseBooks, signBooks} from '../src/sheets/phrases.js'
import {languages, sheets} from '../src/sheets/sheets.js'
import {en, type WordKey} from '../src/sheets/words/en.js'
import {gingerbread, gingerbreadText, oven, plan, problem, sources} from './fixtures-sheets.js'

const places = (text: string): string[] => [...text.matchAll(/\{(\w+)\}/g)].map((match) => match[1]!).sort()

describe('the words of every language', () => {
  for (const [code, words] of Object.entries(languages)) {
    it(`${code} has every word, none empty, each with the same places`, () => {
      expect(Object.keys(words).sort()).toEqual(Object.keys(en).sort())
      for (const key of Object.keys(en) as WordKey[]) {
        expect(words[key].trim(), key).not.toBe('')
        expect(places(words[key]), key).toEqual(places(en[key]))
      }
    })
    it(`${code} has every phrase of the planner, each with the same places`, () => {
      const book = phraseBooks[code]!
      expect(Object.keys(book).sort()).toEqual(Object.keys(phrases).sort())
      for (const [id, template] of Object.entries(phrases)) expect(places(book[id]!), id).toEqual(places(template))
    })
  }

  it('really are another language: no sentence of the German sheets is the English one', () => {
    const same = (Object.keys(en) as WordKey[]).filter(
      (key) => languages.de![key] === en[key] && /[a-z]{4,} [a-z]{3,}/i.test(en[key].replace(/\{\w+\}/g, '')),
    )
    expect(same).toEqual([])
  })

  it('leaves no place unfilled on any sheet', () => {
    for (const language of Object.keys(languages)) {
      const made = sheets(
        {plan, problem, oven, receipts: [gingerbread], texts: new Map([[gingerbread.file, gingerbreadText]]), sources, items},
        {language},
      )
      for (const [path, content] of made)
        if (!path.endsWith('.json'))
          expect(content.replace(/<style>[\s\S]*?<\/style>/, ''), `${language} ${path}`).not.toMatch(
            /\{[a-z]\w*\}|undefined|\[object|NaN/,
          )
    }
  })

  it('writes every word where the sheets are made, none in the code of a sheet', () => {
    const made = sheets(
      {plan, problem, oven, receipts: [gingerbread], texts: new Map([[gingerbread.file, gingerbreadText]]), sources, items},
      {language: 'de'},
    )
    const day = made.get('day.html')!
    for (const word of ['Ready', 'Wood', 'Readings', 'Take care', 'Saturday']) expect(day, word).not.toContain(word)
  })
})

describe('words for the lexicon', () => {
  it('has the sign of every kind of dish in every language beside English', () => {
    for (const [code, book] of Object.entries(signBooks)) for (const {id} of kinds) expect(book[id], `${code} ${id}`).toBeTruthy()
  })
  it('has a plain word for every allergen of every item', () => {
    for (const name of new Set(items.flatMap((item) => item.allergens)))
      expect(Object.keys(en), name).toContain(`allergen.${name}`)
  })
})

describe('the word list', () => {
  it('finds the old words of a text and no part of another word', () => {
    expect(termsIn('half a gill of brandy, a tea-cupful of barm').map(({term}) => term)).toEqual([
      'gill',
      'tea-cup',
      'yeast, barm',
    ])
    expect(termsIn('the gillyflower and the barman')).toEqual([])
    expect(termsIn('two gills').map(({term}) => term)).toEqual(['gill'])
  })
  it('names each word so that it is found in the text that holds it', () => {
    // “slit” once stood for “blanch”: a term shares a word with the spellings it is found by.
    const stems = (text: string): string[] => text.split(/[ ,]+/).map((word) => word.slice(0, 4))
    for (const {term, spellings} of glossary)
      expect(
        spellings.some((one) => stems(one).some((word) => stems(term).includes(word))),
        term,
      ).toBe(true)
  })
  it('names a known source in every row, in two languages', () => {
    const ids = new Set(allSources.map(({id}) => id))
    for (const row of glossary) {
      expect(ids.has(row.source), row.term).toBe(true)
      expect(row.en.length * row.de.length).toBeGreaterThan(0)
      for (const spelling of row.spellings) expect(spelling).toBe(spelling.toLowerCase())
    }
  })
})
