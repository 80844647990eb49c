import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {type Token, tokenise} from '../src/receipt/section.js'
import {cutByHeading, readBlocks, readSections} from '../src/receipt/sections.js'
import {translate} from '../src/receipt/translate.js'

const line = fc.constantFrom(
  'Take two pounds of flour, &c.',
  'a gill of milk &amp; one egg',
  'Bake it *gently* in a _slow_ oven.',
  '*Mode.*—Warm the milk.',
  '**For the paste**',
  '*Time*: an hour',
  '*Time*s',
  '*To be done.*Then',
  '*one* and *two*',
  '***Both***',
  '**not closed*',
  '4 oz rice  ',
  'a pint of milk   ',
  'one space ',
  '- 2 cups flour',
  '- 3 eggs, beaten',
  '+ butter',
  '* salt',
  '1. Mix.',
  '12) Bake it.',
  '350. INGREDIENTS.--4 eggs',
  '# Seed cake',
  '## Method ##',
  '####### no heading',
  '#no heading',
  '> as she said',
  '    1 quart of milk',
  '  1 pint of cream',
  '\tindented',
  '| flour | 2 lb. |',
  '| --- | --- |',
  '===',
  '---',
  '* * *',
  'a line with a stop at its end  ',
  'half a \\* pound',
  '<b>bold</b> flour',
  '[link]: /x',
  'see [link]',
  '`code`',
  '',
  '',
  '',
  ' ',
)
const markdown = fc.array(line, {maxLength: 25}).map((lines) => lines.join('\n'))

const shape = (source: string, all: boolean): unknown =>
  readBlocks(source, 0, source.length, all).map((b) => {
    const tokens: Token[] = []
    tokenise(b, 0, tokens)
    return {kind: b.kind, text: b.text, from: b.pieces[0]?.from, tokens: tokens.map((t) => `${t.word} ${t.start}–${t.end}`)}
  })

describe('cutting a file into receipts', () => {
  test('plain text read as it stands gives the blocks that remark gives', () => {
    fc.assert(
      fc.property(markdown, (source) => {
        expect(shape(source, false)).toEqual(shape(source, true))
      }),
      {
        numRuns: 400,
        // A link's definition in one stretch of the text, and its brackets in another.
        examples: [['Take flour, &c.\n[link]: /x\n\nTake flour, &c.\n\n[link]: /x']],
      },
    )
  })

  test('lines between bars are rows, with no line under their head, and keep their places', () => {
    const source = '# Rolls\n\n| Flour | 500 g |\n  |Wasser|1/4 l|  \n\n| not a row\nof a table |\n'
    const blocks = readBlocks(source, 0, source.length, true)
    expect(blocks.map(({kind, text}) => [kind, text])).toEqual([
      ['heading', 'Rolls'],
      ['row', 'Flour | 500 g'],
      ['row', 'Wasser | 1/4 l'],
      ['paragraph', expect.stringContaining('not a row')],
    ])
    expect(blocks.map(({start, end}) => source.slice(start, end))[2]).toBe('|Wasser|1/4 l|')
    const [section] = readSections(source, 'x.md', 0, {})
    const told = section!.tokens.map((t) => source.slice(t.start, t.end))
    for (const word of ['Flour', '500', 'Wasser']) expect(told).toContain(word)
  })

  test('an “&c.” before an entity keeps its place', () => {
    const source = '&c. &amp; sugar'
    const [section] = readSections(source, 'x.md', 0, {})
    expect(section!.tokens.map((t) => source.slice(t.start, t.end))).toEqual(['&', 'c', '.', '&amp;', 'sugar'])
  })

  test('any text: cuts cover it without gap or overlap, and every piece stands where it says', () => {
    fc.assert(
      fc.property(fc.oneof(markdown, fc.string({unit: 'binary', maxLength: 300})), (source) => {
        let at = 0
        for (const cut of cutByHeading(source, 0)) {
          expect(cut.start).toBe(at)
          at = cut.end
        }
        expect(at).toBe(source.length)
        for (const section of readSections(source, 'x.md', 0, {}))
          for (const token of section.tokens) {
            expect(token.start).toBeGreaterThanOrEqual(section.start)
            expect(token.end).toBeLessThanOrEqual(section.end)
            expect(token.start).toBeLessThanOrEqual(token.end)
          }
      }),
      {numRuns: 150},
    )
  })

  test('one receipt a heading; headings of parts stay with their receipt', () => {
    const source =
      '# Apple pie\n\n## Ingredients\n\n- 2 lb apples\n\n### For the crust\n\n- flour\n\n## Method\n\nBake.\n\n# Seed cake\n\nFlour.\n'
    const sections = [...readSections(source, 'x.md', 0, {})]
    expect(sections.map((s) => s.title)).toEqual(['Apple pie', 'Seed cake'])
    expect(sections.map((s) => s.line)).toEqual([1, 15])
  })

  test('a text without a heading is one receipt, named after its file', () => {
    expect([...readSections('Take a pint of milk.', 'in/apple-pie.md', 0, {})].map((s) => s.title)).toEqual(['Apple pie'])
  })

  test('underlined headings, but no heading inside fenced code', () => {
    const source = 'Rusks\n=====\n\nFlour.\n\n```\n# not a heading\n```\n\nBuns\n----\n\nSugar.\n'
    expect([...readSections(source, 'x.md', 0, {})].map((s) => s.title)).toEqual(['Rusks', 'Buns'])
  })
})

describe('headings that name a part and no receipt', () => {
  const titles = (text: string): string[] => translate(text, {file: 'nut-bread.md'}).receipts.map((one) => one.title)
  test.each([
    [
      'Best bread ever!\n\n### Ingredients\n\n- 500 g flour\n\n### Instructions\n\nBake 1 hour.\n\n### Notes\n\nIt keeps.\n',
      ['Nut bread'],
    ],
    ['## Ingredients\n\n- 500 g flour\n\n## Method\n\nBake 1 hour.\n', ['Nut bread']],
    ['# Rye\n\n- 500 g flour\n\n# Tips & tricks\n\nDouble it.\n\n# Buns\n\n- 1 kg flour\n', ['Rye', 'Buns']],
    ['# Rye\n\n- 500 g flour\n\n# Baker’s notes\n\nDouble it.\n', ['Rye']],
    ['Some words first.\n\n# Rye\n\n- 500 g flour\n', ['Nut bread', 'Rye']],
  ])('%#', (text, expected) => expect(titles(text)).toEqual(expected))
})

/** Headings of parts as modern receipts have them: common practice, no source. */
test.each([
  ['Country bread', 'Biga', 'Final dough'],
  ['Country bread', 'For the levain', 'For the dough'],
  ['Bauernbrot', 'Vorteig', 'Hauptteig'],
  ['Pflaumenkuchen', 'Für den Teig', 'Belag'],
  ['Pflaumenkuchen', 'Zutaten', 'Zubereitung'],
])('%s with “%s” and “%s” under it is one receipt', (title, first, second) => {
  const source = `# ${title}\n\n## ${first}\n\n- 150 g flour\n\n## ${second}\n\n- 350 g flour\n\nBake 40 minutes.\n`
  expect([...readSections(source, 'a.md', 0, {})].map((section) => section.title)).toEqual([title])
})

describe('the stages of one dough under headings of their own', () => {
  test.each([
    ['Sour', 'leaven'],
    ['Rye sour (the evening before)', 'leaven'],
    ['Levain — 8 pm', 'leaven'],
    ['Flying sponge', 'sponge'],
    ['Anfrischsauer', 'leaven'],
    ['Brühstück (am Vorabend)', 'soaker'],
  ])('“%s” is a part of the receipt above it', (heading, part) => {
    const text = `# Rye bread\n\nMakes 2 loaves.\n\n## ${heading}\n\n- 200 g rye flour\n- 200 g water\n\n## Final dough: next morning\n\n- 800 g flour\n`
    const {receipts} = translate(text, {file: 'a.md'})
    expect(receipts.map(({ingredients}) => ingredients.map((one) => `${one.item} ${one.part}`))).toEqual([
      [`rye flour ${part}`, `water ${part}`, 'flour dough'],
    ])
  })
})
