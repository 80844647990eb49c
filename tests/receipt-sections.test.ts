import fc from 'fast-check'
import {describe, expect, test} from 'vitest'
import {cutByHeading} from '../src/receipt/cuts.js'
import {type Token, tokenise} from '../src/receipt/section.js'
import {readBlocks, readSections} from '../src/receipt/sections.js'
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

/** Headings as cooks write them: common practice, no source. */
describe('headings under a title', () => {
  const titles = (source: string): string[] => [...readSections(source, 'a.md', 0, {})].map((section) => section.title)
  const LIST = '- 500 g flour\n- 325 g water\n- 10 g salt\n'

  test.each([
    'Bake',
    'Baking',
    'Schedule',
    'Timeline',
    'Assembly',
    'How to make it',
    'Let’s bake!',
    'Mix & knead',
    'Shape the loaves',
    'Step 1: make the dough',
    'Day 2',
    'Zeitplan',
    'So geht’s:',
    'So wird’s gemacht',
    'Ablauf',
    'Backen',
    'Am Backtag',
    'Nutrition (per slice)',
    'Nährwerte pro Portion',
  ])('“%s” is a part of the receipt above it', (heading) => {
    expect(titles(`# Plain loaf\n\n${LIST}\n## ${heading}\n\nBake at 230 °C for 35 minutes.\n`)).toEqual(['Plain loaf'])
  })

  test.each([
    'What you need',
    'What you need (1 loaf)',
    'You’ll need:',
    'Zutaten für 4 Personen:',
    'Zutaten (26-cm-Springform)',
    'Das brauchst du',
    'Ingredients for 2 loaves',
  ])('“%s” takes no title', (heading) => {
    expect(titles(`# Plain loaf\n\n## ${heading}\n\n${LIST}\n## Method\n\nBake 35 minutes.\n`)).toEqual(['Plain loaf'])
  })

  test('a title with its ingredients under a heading keeps what stands under headings of any other words', () => {
    const source = `# Lemon cake\n\nMy aunt’s.\n\n## Ingredients\n\n${LIST}\n## A word on lemons\n\nBuy them unwaxed.\n\n## Into the tin\n\nBake 35 minutes.\n`
    expect(titles(source)).toEqual(['Lemon cake'])
    expect(titles(source.replace('# Lemon cake\n\nMy aunt’s.\n\n', ''))).toEqual(['A'])
  })

  test('lists under headings of their own, and what is made of them all, are one dish', () => {
    const source = `# Lasagne\n\nServes 6\n\n## Ragù\n\n- 500 g minced beef\n- 1 onion\n\n## Weiße Soße\n\n- 60 g butter\n- 900 ml milk\n\n## To assemble\n\n- 12 sheets of lasagne\n\n### Method\n\n1. Bake 40 minutes.\n`
    expect(titles(source)).toEqual(['Lasagne'])
  })

  test('a list with nothing said of what is done with it goes on under the next heading', () => {
    expect(titles(`# Oat squares\n\nMakes 12.\n\n${LIST}\n## On Saturday\n\nStir it all and bake 35 minutes.\n`)).toEqual([
      'Oat squares',
    ])
  })

  test.each([
    ['each with its own list and method', `## Rye\n\n${LIST}\nBake an hour.\n\n## Spelt\n\n${LIST}\nBake an hour.\n`],
    [
      'each with headings of its own',
      `## Rye\n\n### Ingredients\n\n${LIST}\n### Method\n\nBake.\n\n## Spelt\n\n### Ingredients\n\n${LIST}\n### Let’s go\n\nBake.\n`,
    ],
    ['titles and ingredients by turns', `## Rye\n\n## Ingredients\n\n${LIST}\n## Spelt\n\n## Ingredients\n\n${LIST}`],
    ['in prose', '## Rye\n\nTake 2 lb of rye flour, and bake.\n\n## Spelt\n\nTake 2 lb of spelt flour, and bake.\n'],
    ['bare lists', `## Rye\n\n${LIST}\n## Spelt\n\n${LIST}`],
    ['below a word about flour', `## Ingredients\n\nBuy good flour.\n\n## Rye\n\nTake 2 lb.\n\n## Spelt\n\nTake 2 lb.\n`],
  ])('a book of receipts, %s, stays one', (_, text) => {
    expect(titles(`# My breads\n\nThe breads I bake.\n\n${text}`).filter((title) => title !== 'My breads')).toEqual([
      'Rye',
      'Spelt',
    ])
  })

  test('what names another dish is its receipt, and so is what has its own list and method', () => {
    const first = `# Apple pie\n\n## Ingredients\n\n${LIST}\n## Method\n\nBake 35 minutes.\n\n`
    expect(titles(`${first}## Plum pie\n\nAs above, of plums.\n`)).toEqual(['Apple pie', 'Plum pie'])
    expect(titles(`${first}## About this pie\n\nIt is old.\n`)).toEqual(['Apple pie'])
    expect(titles(`${first}## Quick rusks\n\n- 500 g flour\n- 2 eggs\n\nBake them twice, 20 minutes.\n`)).toEqual([
      'Apple pie',
      'Quick rusks',
    ])
  })
})

test('a list under a heading of its own word is that part; the levain that a schedule builds is the list’s', () => {
  const parts = (text: string): string[] =>
    translate(text, {file: 'a.md'}).receipts.flatMap(({ingredients}) =>
      ingredients.map((one) => `${one.item} ${one.part}`.trim()),
    )
  expect(
    parts(
      '# Lasagne\n\n## Ragù\n\n- 500 g beef\n\n## Method\n\n1. Fry 2 minutes.\n\n## Weiße Soße\n\n- 60 g butter\n\n## Bake\n\nBake.\n',
    ),
  ).toEqual(['beef Ragù', 'butter Weiße Soße'])
  expect(
    parts(
      '# Bread\n\n- 800 g flour\n- 200 g levain\n\n## Schedule\n\n- **Day 1, 9 pm** – build the levain: 50 g ripe starter, 100 g flour.\n- Bake 40 minutes.\n',
    ),
  ).toEqual(['flour', 'levain'])
})

describe('two dishes in one text', () => {
  const white = '- 500 g flour\n- 300 g water\n- 10 g salt\n\nKnead, and bake at 220 °C for 40 minutes.'
  const brown = '- 500 g wholemeal flour\n- 350 g water\n- 10 g salt\n\nKnead, and bake at 210 °C for 50 minutes.'
  const told = (text: string) => translate(`# Two breads\n\n${text}\n`, {file: 'a.md'})

  test('are two receipts under headings of their own', () => {
    const {receipts, messages} = told(`## White loaf\n\n${white}\n\n## Brown loaf\n\n${brown}`)
    expect(receipts.map(({title, ingredients}) => [title, ingredients.length])).toEqual([
      ['White loaf', 3],
      ['Brown loaf', 3],
    ])
    expect(messages).toEqual([])
  })

  test.each([
    ['**White loaf**', '**Brown loaf**'],
    ['White loaf:', 'Brown loaf:'],
    ['## For the white loaf', '## For the brown loaf'],
    ['### Dough 1', '### Dough 2'],
  ])('are told of, where they are read as one: %s, %s', (first, second) => {
    const {receipts, messages} = told(`${first}\n\n${white}\n\n${second}\n\n${brown}`)
    expect(receipts.map(({ingredients}) => ingredients.length)).toEqual([6])
    expect(messages).toMatchObject([{line: 13, severity: 'warning', rule: 'dishes-two'}])
  })

  test('and so in German', () => {
    const {messages} = told(
      '## Für das Weißbrot\n\n- 500 g Mehl\n- 300 g Wasser\n\nBei 220 °C 40 Minuten backen.\n\n## Für das Vollkornbrot\n\n- 500 g Vollkornmehl\n- 350 g Wasser\n\nBei 210 °C 50 Minuten backen.',
    )
    expect(messages).toMatchObject([{line: 12, rule: 'dishes-two'}])
  })

  test('but not a case and its filling, nor a dough in two stages', () => {
    const tart =
      '**Case**\n\n- 200 g flour\n- 100 g butter\n- 1 egg\n\nLine a tin and bake blind for 15 minutes.\n\n**Filling**\n\n- 300 ml milk\n- 3 eggs\n\nPour in and bake for 30 minutes.'
    expect(told(tart).messages.filter(({rule}) => rule === 'dishes-two')).toEqual([])
    const stages = `**Sponge**\n\n- 200 g flour\n- 200 g water\n\nLet it stand overnight.\n\n**Dough**\n\n${white}`
    expect(told(stages).messages.filter(({rule}) => rule === 'dishes-two')).toEqual([])
  })

  test('lists with names of dishes under the heading of the ingredients are of one receipt', () => {
    const {receipts} = told(
      '## Ingredients\n\n### White loaf\n\n- 500 g flour\n- 300 g water\n\n### Brown loaf\n\n- 500 g wholemeal flour\n- 350 g water\n\n## Method\n\nKnead each, and bake at 220 °C for 40 minutes.',
    )
    expect(receipts.map(({title, ingredients, times}) => [title, ingredients.length, times.length])).toEqual([
      ['Two breads', 4, 1],
    ])
  })
})
