import {beforeAll, describe, expect, it} from 'vitest'
import {readDayFolder} from '../src/cli/day-folder.js'
import {partNames} from '../src/lexicon/grammar-words.js'
import {cautions, items, kinds, measures, sources} from '../src/lexicon/index.js'
import {ovenWords} from '../src/lexicon/oven-words.js'
import {sources as allSources} from '../src/lexicon/sources.js'
import type {FiringLog} from '../src/oven/log.js'
import {type MadePlan, makePlan} from '../src/plan/make.js'
import {translate} from '../src/receipt/translate.js'
import {length} from '../src/sheets/figures.js'
import {ovenText} from '../src/sheets/oven-text.js'
import {books, foreignItem, itemName, vesselName} from '../src/sheets/said.js'
import {sheets} from '../src/sheets/sheets.js'
import {kitchenSpan, partMark} from '../src/sheets/spoken.js'
import {makeStyle} from '../src/sheets/style.js'
import {styleOf} from '../src/sheets/style-of.js'
import {translationMarkdown, translationText} from '../src/sheets/translation-text.js'
import {de} from '../src/sheets/words/de.js'
import {inBook} from '../src/sheets/words/sentences.js'
import {crowdedPlan} from './crowded-day.js'

void ovenText

/** Words of English prose that are no German ones. */
const english =
  /\b(?:the|and|with|of|for|oven|is|are|be|to|from|by|it|its|not|this|that|at|or|when|until|than|minutes|hours|people|load|draw|heat|use|set|first|more|less|one)\b/i

const book = books.de!

describe('what a receipt calls by another name than the lexicon', () => {
  const german = styleOf({language: 'de', units: 'us'})
  it('goes by the German name of what it is', () => {
    expect(itemName('rye meal', german)).toBe('Roggenmehl')
    expect(foreignItem('rye meal', german)).toBe(false)
    expect(foreignItem('eye of newt', german)).toBe(true)
  })
  it('and an amount in US units is marked as no English', () => {
    expect(kitchenSpan('825 g', german)).toMatchObject({tagName: 'span', properties: {}})
  })
})

describe('the German tables', () => {
  const german = styleOf({language: 'de'})
  const missing = (ids: readonly string[], table: Readonly<Record<string, unknown>>): string[] =>
    ids.filter((id) => !Object.hasOwn(table, id))
  it('name every item, measure, kind and caution of the lexicon', () => {
    expect(
      missing(
        items.map(({id}) => id),
        book.items,
      ),
    ).toEqual([])
    expect(
      missing(
        items.filter(({modern}) => modern).map(({id}) => id),
        book.modern,
      ),
    ).toEqual([])
    expect(
      missing(
        items.filter(({replacedBy}) => replacedBy).map(({id}) => id),
        book.instead,
      ),
    ).toEqual([])
    expect(
      missing(
        measures.map(({id}) => id),
        book.measures,
      ),
    ).toEqual([])
    expect(
      missing(
        kinds.map(({id}) => id),
        book.kinds,
      ),
    ).toEqual([])
    expect(
      missing(
        cautions.map(({id}) => id),
        book.cautions,
      ),
    ).toEqual([])
  })
  it('name every part of a receipt that is mixed apart', () => {
    expect(missing(Object.values(partNames), book.parts)).toEqual([])
    expect(partMark('crust', german)).toMatchObject([{tagName: 'em', properties: {lang: 'de'}, children: [{value: 'Kruste: '}]}])
    // A receipt's own word stays, and is marked as English.
    expect(partMark('caramel', german)).toMatchObject([{properties: {lang: 'en'}, children: [{value: 'caramel: '}]}])
    expect(partMark('', german)).toEqual([])
    const pie = translate('# Apple pie\n\nFor the crust:\n\n- 500 g flour\n\nFor the filling:\n\n- 6 apples\n', {file: 'pie.md'})
    const said = translationText(pie, {sources, style: german})
    expect(said).toContain('Kruste:')
    expect(said).not.toMatch(/^(?:crust|filling):/m)
    expect(translationMarkdown(pie, {sources, style: german})).toMatch(/\| Kruste.*\n.*Füllung/)
  })
  it('have one word for the inch, in lengths and in vessels', () => {
    const us = styleOf({language: 'de', units: 'us'})
    expect(length(0.508, us)).toBe('20 Zoll')
    expect(vesselName('round 9 in x 2 in', us)).toBe('runde Form 9 Zoll × 2 Zoll')
    expect(length(0.508, styleOf({units: 'us'}))).toBe('20 in')
  })
  it('name no row that is not there', () => {
    const ids = (rows: readonly {readonly id: string}[]): Set<string> => new Set(rows.map(({id}) => id))
    for (const [table, rows] of [
      [book.items, ids(items)],
      [book.modern, ids(items)],
      [book.instead, ids(items)],
      [book.measures, ids(measures)],
      [book.kinds, ids(kinds)],
      [book.cautions, ids(cautions)],
      [book.sources, ids(allSources)],
    ] as const)
      expect(Object.keys(table).filter((id) => !rows.has(id))).toEqual([])
  })
  it('say every note of a measure, a piece and a word for heat', () => {
    const notes = [
      ...measures.flatMap(({note, sizes}) => [note, ...sizes.map((size) => size.note)]),
      ...items.flatMap(({pieces}) => pieces.map(({note}) => note)),
      ...ovenWords.map(({note}) => note),
    ].filter((note) => note !== undefined)
    expect([...new Set(notes)].filter((note) => inBook(note, book) === null)).toEqual([])
  })
  it('keep the figures of a caution: every temperature of the English stands in the German', () => {
    for (const {id, harm, instead} of cautions)
      for (const [figure] of `${harm} ${instead}`.matchAll(/\d+(?= °[CF])/g)) expect(book.cautions[id], id).toContain(figure)
  })
  it('have no template twice and no blank that the English side lacks', () => {
    const sides = book.sentences.map(([one]) => one)
    expect(sides.filter((one, i) => sides.indexOf(one) !== i)).toEqual([])
    for (const [one, other] of book.sentences) {
      const names = new Set([...one.matchAll(/\{(\w+)\}/g)].map((match) => match[1]))
      for (const [, name] of other.matchAll(/\{(\w+)(?::\w+)?\}/g)) expect(names.has(name), other).toBe(true)
    }
  })
})

describe('a sentence of the core in German', () => {
  const said = (text: string): string | null => inBook(text, book)
  it('is said with its figures, decimal commas and names', () => {
    expect(said('1.4 litres')).toBe('1,4 l')
    expect(said('13 egg yolks')).toBe('13 Eigelb')
    expect(said('8 eggs')).toBe('8 Eier')
    expect(said('1 egg')).toBe('1 Ei')
    expect(said('21 g of egg yolk (beat 2 egg yolks and weigh)')).toBe('21 g Eigelb (2 Eigelb verquirlen und abwiegen)')
    expect(said('3 blades (about 2 g)')).toBe('3 Blätter (etwa 2 g)')
    expect(said('1 tablespoon and 1 1/2 teaspoons')).toBe('1 Esslöffel und 1 1/2 Teelöffel')
    expect(said('round 9 in x 4 in')).toBe('runde Form 9 Zoll × 4 Zoll')
    expect(
      said('sour milk: use cultured buttermilk (measure for measure; pasteurised milk goes bad rather than sour)'),
    ).toContain('Sauermilch: Buttermilch nehmen')
  })
  it('is not looked for in a text far longer than any sentence, however like one it is', () => {
    expect(said(`“${'a” is read as “b”; '.repeat(40)}” is not a time of day`)).not.toBeNull()
    expect(said(`“${'a” is read as “b”; '.repeat(400)}” is not a time of day`)).toBeNull()
  })
  it('is none where a name in it is not known, so that it is shown as written', () => {
    expect(said('3 wibbles')).toBeNull()
    expect(said('a sentence nobody says')).toBeNull()
  })
})

/** What a page says in German: without style, data of a drawing, words marked as English, quotations and names of the user's files. */
function german(content: string, own: readonly string[]): string {
  let text = content
    .replace(/<style[\s\S]*?<\/style>|<head>[\s\S]*?<\/head>|<metadata[\s\S]*?<\/metadata>/g, ' ')
    .replace(/<(blockquote|th|span|em|strong|td|ul)\b[^>]*\blang="en"[^>]*>[\s\S]*?<\/\1>/g, ' ')
    .replace(/<[^>]+>/g, ' ')
    .replace(/„[^“]*“|“[^”]*”/g, ' ')
    .replace(/https?:\S+/g, ' ')
    .replaceAll('&#x27;', '’')
  for (const name of own) text = text.replaceAll(name, ' ')
  return text
}

function left(made: ReadonlyMap<string, string>, own: readonly string[]): string[] {
  return [...made]
    .filter(([path]) => /\.(?:html|md|txt|svg|ics)$/.test(path))
    .flatMap(([path, content]) => {
      const plain = path.endsWith('.ics')
        ? content
            .replace(/\r\n /g, '')
            .split('\r\n')
            .filter((line) => /^(?:SUMMARY|DESCRIPTION)/.test(line))
            .join('\n')
            .replace(/^(?:SUMMARY|DESCRIPTION)[^:]*:/gm, '')
            .replace(/\\n/g, '\n')
            .replace(/\\([,;])/g, '$1')
        : content.replace(/\s+/g, ' ')
      return german(plain, own)
        .split(/(?<=[.:;!?|])\s|\n/)
        .filter((sentence) => english.test(sentence))
        .map((sentence) => `${path}: ${sentence.trim().slice(0, 160)}`)
    })
}

describe('the German sheets', () => {
  const read = readDayFolder('corpus-demo')
  const own = [
    read.day.title,
    read.oven.name,
    ...read.day.items.map(({title}) => title),
    ...read.day.spare.map(({title}) => title),
    ...read.receipts.map(({title}) => title),
    ...read.receipts.flatMap(({place}) => place ?? []),
  ].sort((a, b) => b.length - a.length)
  const written = (made: MadePlan, audience: 'class' | 'visitors', believed: readonly string[] = []): Map<string, string> =>
    sheets(
      {
        plan: made.plan,
        problem: made.problem,
        oven: read.oven,
        receipts: read.receipts,
        texts: read.sources,
        sources: allSources,
        items,
        believed,
      },
      {language: 'de', audience},
    )
  const told = [
    '4 past firings: this oven takes 7 % more heat from its fire and loses heat 48 % more slowly than its drawing suggests.',
    'Arm count: 4 pairs with a thermometer put one count at 0.8 s.',
    'mutton-pies: allow 7 min more than the receipt (1 note).',
    'Your oven took 10 % less heat from its fire than we thought.',
    'That is about 25 min less hot time (above 205 °C, 400 °F).',
    'The oven gives about 25 min less hot time (above 205 °C, 400 °F) than was expected.',
    'One reading does not fit the others (floor at 310 °C, 80 °C above the rest): it is kept, but counts for little. Read it again if you can.',
    'The reading does not fit what is believed of this oven (floor at 150 °C, 80 °C below what it should have): it is kept, but counts for little. Read it again if you can.',
  ]
  let demo: MadePlan
  beforeAll(() => {
    demo = makePlan({oven: read.oven, day: read.day, receipts: read.receipts})
  }, 300_000)

  it('hold no English of ours on a whole day', () => {
    expect(left(written(demo, 'class', told), own)).toEqual([])
  })

  it('hold none where a dish has no place, and say why and what would help', () => {
    const made = crowdedPlan()
    expect(made.plan.unplaced.length).toBeGreaterThan(0)
    for (const unplaced of made.plan.unplaced) expect(unplaced.words, unplaced.reason).toBeDefined()
    const sheetsMade = written(made, 'visitors')
    expect(left(sheetsMade, own)).toEqual([])
    expect(sheetsMade.get('day.html')).toContain(de['plan.unplaced'])
  }, 300_000)

  it('hold none when the day is planned again, and say what moved', () => {
    const lit = demo.plan.lit + 40
    const log: FiringLog = {
      file: 'firings/2027-10-02.md',
      date: read.day.date,
      lit,
      raked: demo.plan.raked + 40,
      wood: demo.plan.firing.wood,
      rows: [],
      readings: [{minutes: demo.plan.ready - demo.plan.lit + 20, kind: 'floor', value: 260}],
      doors: [],
      messages: [],
    } as unknown as FiringLog
    const made = makePlan({oven: read.oven, day: read.day, receipts: read.receipts, log, now: demo.plan.ready + 60})
    expect(made.plan.changes?.length ?? 0).toBeGreaterThan(0)
    const sheetsMade = written(made, 'visitors', made.said)
    expect(left(sheetsMade, own)).toEqual([])
    expect(sheetsMade.get('day.html')).toContain(de['plan.changes'])
  }, 300_000)

  it('say suggestions and changes by the clock and in the degrees that were asked for', () => {
    const made = sheets(
      {plan: demo.plan, problem: demo.problem, oven: read.oven, receipts: [], texts: new Map(), sources: allSources, items},
      {language: 'en', clock: 12, degrees: 'F'},
    )
    const text = made.get('day.txt')!
    for (const suggestion of demo.plan.suggestions ?? []) expect(suggestion.words).toBeDefined()
    expect(text).not.toMatch(/\b(?:1[3-9]|2[0-3]):\d\d\b/)
    for (const line of text.split('\n').filter((one) => /Expect|Test the heat|too hot for it|cooler than/.test(one)))
      expect(line).not.toContain('°C')
  })

  it('end a sentence with one full stop where its last word is “vorm.” or “nachm.”', () => {
    const made = sheets(
      {
        plan: demo.plan,
        problem: demo.problem,
        oven: read.oven,
        receipts: read.receipts,
        texts: read.sources,
        sources: allSources,
        items,
      },
      {language: 'de', clock: 12, audience: 'class'},
    )
    // Amtliche Regelung der deutschen Rechtschreibung, § 103 (from memory).
    expect(made.get('day.txt')).toMatch(/ bis [\d:]+\svorm\.(?!\.)/)
    for (const [path, text] of made) expect(text.match(/.{0,40}(?:vorm|nachm)\.\..{0,20}/)?.[0], path).toBeUndefined()
  })

  it('translate a receipt’s notes, ours, cautions, allergens and sources as well', () => {
    const text = [...read.sources].map(([file, source]) =>
      translationText(translate(source, {file}), {sources, style: makeStyle({words: de, clock: 24}), why: true}),
    )
    expect(text.join('\n')).not.toMatch(/Shelf|not in our lexicon/)
  })
})
