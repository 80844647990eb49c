import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'

/** Invented lines in the manner of the lists of our day; how they are written: common practice, no source. */
const translated = (...lines: readonly string[]) =>
  translate(`# A dish\n\n${lines.map((line) => `- ${line}`).join('\n')}\n\nBake at 180 °C for 40 minutes.\n`, {file: 'a.md'})
const read = (...lines: readonly string[]): string[] =>
  translated(...lines).receipts[0]!.ingredients.map(({exact, measure, item}) => `${exact ?? '–'} ${measure} ${item}`)
const grams = (line: string): number | undefined => translated(line).receipts[0]!.ingredients[0]?.grams?.likely

describe('a remark in brackets between an amount and its name', () => {
  it.each([
    ['300 g (about 2 medium) carrots', '300 gram carrot'],
    ['500 g (4 large) potatoes', '500 gram potato'],
    ['150 g (3 medium) eggs', '150 gram egg'],
    ['200 g (half a block) butter', '200 gram butter'],
    ['330 g (1½ Australian cups) caster sugar', '330 gram sugar'],
    ['500 g (half wholemeal, half white) flour', '500 gram flour'],
    ['500 g (strong) flour', '500 gram flour'],
    ['2 (large) eggs', '2 count egg'],
    ['300 g (etwa 2 mittelgroße) Karotten', '300 gram carrot'],
    ['300 g (ca. 2 Stück) Karotten', '300 gram carrot'],
  ])('%s', (line, entry) => {
    expect(read(line)).toEqual([entry])
    expect(translated(line).messages).toEqual([])
  })

  it('is kept: as a note, as what it weighs, or as how a measure is filled', () => {
    expect(translated('300 g (about 2 medium) carrots').receipts[0]!.ingredients[0]!.notes).toContain('(about 2 medium)')
    expect(grams('2 (about 300 g) carrots')).toBe(300)
    expect(translated('2 cups (lightly packed) brown sugar').receipts[0]!.ingredients[0]!.hedges).toEqual(['lightly', 'packed'])
  })

  it('an Australian cup is 250 mL', () => {
    // Standards Australia AS 1325: the metric cup of 250 mL. Sugar's density: a row of the lexicon.
    const ratio = grams('2 Australian cups milk')! / grams('500 ml milk')!
    expect(ratio).toBeCloseTo(1, 2)
  })
})

describe('quotation marks are no part of a name', () => {
  it.each([
    ['600 g "00" flour', '600 gram flour'],
    ['600 g “00” flour', '600 gram flour'],
    ['600 g ‘00’ flour', '600 gram flour'],
    ['600 g “strong” bread flour', '600 gram bread flour'],
    ['500 g „Typ 405“ Mehl', '500 gram flour'],
  ])('%s', (line, entry) => expect(read(line)).toEqual([entry]))

  it('and inches and ditto marks are none', () => {
    expect(read('1 9" pie crust')).toEqual(['1 count pie crust'])
    expect(read('2 cups flour', '1 " sugar')).toEqual(['2 cup flour', '1 cup sugar'])
  })
})

describe('how large a thing is, is not how many', () => {
  it.each([
    ['1 unbaked 9-inch pie shell', '1 count pie shell'],
    ['9-inch pie shell', '1 count pie shell'],
    ['unbaked 9-inch pie shell', '1 count pie shell'],
    ['a 9-inch pie shell', '1 count pie shell'],
    ['1 (9-inch) pie crust', '1 count pie crust'],
    ['2 pie crusts, 9-inch', '2 count pie crust'],
    ['1 9- to 10-inch tart shell', '1 count tart shell'],
    ['1 x 23 cm pastry case', '1 count pastry case'],
    ['26 cm Tortenboden', '1 count paste'],
    ['1 fertiger Mürbeteigboden (26 cm)', '1 count paste'],
  ])('%s', (line, entry) => {
    expect(read(line)).toEqual([entry])
    expect(translated(line).messages).toEqual([])
  })
  it('a bought crust is of wheat', () => {
    expect(translated('9-inch pie shell').receipts[0]!.allergens).toContain('wheat')
  })
})

describe('half of what a tin or a jar holds', () => {
  it.each([
    ['half a 340g jar strawberry jam', 170],
    ['half of a 400 g tin tomatoes', 200],
    ['two 400 g tins tomatoes', 800],
    ['half a jar (340 g) jam', 170],
    ['eine halbe 400-g-Dose Tomaten', 200],
    ['zwei 400-g-Dosen Tomaten', 800],
    ['½ Glas (340 g) Marmelade', 170],
    ['1 Dose (400 g) Tomaten', 400],
    ['1/2 Becher (200 g) Sahne', 100],
  ])('%s', (line, weight) => expect(grams(line)).toBeCloseTo(weight, 6))
  it('by measure too', () => expect(read('half a 400 ml tin coconut milk')).toEqual(['200 millilitre coconut milk']))
  it('but a dose of something is no German tin', () => {
    const {measure, measureText} = translate('# Balm\n\nTake a dose of senna tea and a pint of milk. Bake.', {file: 'a.md'})
      .receipts[0]!.ingredients[0]!
    expect([measure, measureText]).not.toContain('tin')
  })
})

describe('pieces, and water that something was cooked in', () => {
  it.each([
    ['125g ball of mozzarella', '125 gram mozzarella'],
    ['2 balls mozzarella (125 g each)', '2 ball mozzarella'],
    ['12 sheets dried lasagne', '12 sheet lasagne'],
    ['12 Platten Lasagne', '12 sheet lasagne'],
    ['2 firm, ripe pears', '2 count pear'],
    ['3 waxy, peeled potatoes', '3 count potato'],
    ['A few thin slices of beef', '– indefinite beef'],
    ['ein paar dünne Scheiben Speck', '– indefinite bacon'],
    ['1 cup potato cooking water', '1 cup potato water'],
    ['1 cup pasta cooking water', '1 cup water'],
    ['200 ml Kartoffelkochwasser', '200 millilitre potato water'],
    ['200 ml Nudelwasser', '200 millilitre water'],
  ])('%s', (line, entry) => {
    expect(read(line)).toEqual([entry])
    expect(translated(line).messages).toEqual([])
  })
  it('a piece of what no row knows is told, not dropped', () => {
    expect(read('3 sprigs blorp')).toEqual(['3 sprig blorp'])
    expect(translated('3 sprigs blorp').messages.map(({rule}) => rule)).toEqual(['item-unknown'])
  })
  it('lasagne is of wheat', () => expect(translated('12 sheets dried lasagne').receipts[0]!.allergens).toContain('wheat'))
})

describe('a part of the dish told in one line', () => {
  it.each([
    ['Zum Bestreichen: 1 Eigelb, 2 EL Milch', 'glaze'],
    ['To glaze: 1 egg yolk, 2 tbsp milk', 'glaze'],
    ['For brushing: 1 egg yolk and 2 tbsp milk', 'glaze'],
    ['Egg wash: 1 egg yolk, 2 tbsp milk', 'glaze'],
    ['Für die Füllung: 1 Eigelb, 2 EL Milch', 'filling'],
  ])('%s', (line, part) => {
    const found = translated('500 g flour', '250 ml milk', line, '5 g salt').receipts[0]!.ingredients
    expect(found.map(({exact, measure, item, part: of}) => `${exact} ${measure} ${item} ${of}`.trim())).toEqual([
      '500 gram flour',
      '250 millilitre milk',
      `1 count egg yolk ${part}`,
      `2 tablespoon milk ${part}`,
      '5 gram salt',
    ])
  })
})
