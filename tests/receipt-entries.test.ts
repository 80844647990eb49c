import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'

/** Texts written for these tests in the manner of household receipts; what each says is by hand. */
const read = (text: string): string[] =>
  translate(`# A receipt\n\n${text}\n`, {file: 'a.md'}).receipts[0]!.ingredients.map(({exact, measure, item, part}) =>
    `${exact ?? ''} ${measure} ${item}${part === '' ? '' : ` [${part}]`}`.trim(),
  )
const one = (text: string): {notes: readonly string[]; text: string; stated: number | undefined} => {
  const {notes, text: words, stated} = translate(`# A receipt\n\n${text}\n`, {file: 'a.md'}).receipts[0]!.ingredients[0]!
  return {notes, text: words, stated: stated?.amount.low}
}

describe('lines of a name with its amount behind it', () => {
  const four = ['500 gram flour', '320 gram water', '10 gram salt']
  it.each([
    'Flour 500 g\nWater 320 g\nSalt 10 g',
    'Flour: 500 g\nWater: 320 g\nSalt: 10 g',
    'flour ..... 500 g\nwater ... 320 g\nsalt …… 10 g',
    'Flour - 500 g\nWater - 320 g\nSalt - 10 g',
    '- Flour: 500 g\n- Water: 320 g\n- Salt: 10 g',
  ])('%j', (text) => expect(read(`${text}\n\nBake 40 minutes.`)).toEqual(four))

  it('wrapped prose that ends a line with an amount is prose', () => {
    expect(read('Take of sugar one pound\nand beat it with the whites of\nsix eggs; bake it in a hoop.')).toEqual([
      '1 pound sugar',
      '6 count egg white',
    ])
  })
})

describe('tables', () => {
  it.each([
    // The measure heads the column.
    [
      '| Ingredient | Grams | Baker’s % |\n|---|---|---|\n| Flour | 450 | 90 |\n| Starter (100%) | 100 | 20 |',
      ['450 gram flour', '100 gram starter'],
    ],
    ['| | Weight (g) | oz |\n|---|---|---|\n| Flour | 500 | 17.6 |\n| eggs | 2 | |', ['500 gram flour', '2 count egg']],
    // The measure has a column of its own.
    [
      '| Qty | Unit | What |\n|---|---|---|\n| 2 | cups | flour |\n| 4–5 | Tbsp | ice water |\n| 3 | | eggs |',
      ['2 cup flour', '4 tablespoon water', '3 count egg'],
    ],
    ['| What | Qty | Unit |\n|---|---|---|\n| flour | 2 | cups |\n| salt | 1/2 | tsp |', ['2 cup flour', '1/2 teaspoon salt']],
    // A name with more said of it, and an amount with its size.
    [
      '| item | amount |\n|---|---|\n| butter, softened | 225 g |\n| glacé cherries, rinsed & chopped | 50g |\n| eggs | 4 large |\n| salt, fine | a little |',
      ['225 gram butter', '50 gram glace cherry', '4 count egg', 'indefinite salt'],
    ],
    [
      '| Zutat | Menge |\n|---|---|\n| Butter, weich | 225 g |\n| Eier (zimmerwarm) | 4 große |\n| Mehl, gesiebt | ca. 300 g |',
      ['225 gram butter', '4 count egg', '300 gram flour'],
    ],
    // A row that is an entry is no head.
    ['| flour | 4 oz |\n|---|---|\n| sugar | 2 oz |', ['4 ounce flour', '2 ounce sugar']],
  ])('%j', (text, entries) => expect(read(text)).toEqual(entries))
})

describe('a table with a column for each size', () => {
  const told = (text: string) =>
    translate(`# A receipt\n\n${text}\n`, {file: 'a.md'}).messages.filter(({rule}) => rule === 'table-columns')
  it('reads the first, and tells of the other', () => {
    const text = '| | 8-inch | 10-inch |\n|---|---|---|\n| flour | 200 g | 320 g |\n| eggs | 4 | 6 |'
    expect(read(text)).toEqual(['200 gram flour', '4 count egg'])
    expect(told(text)).toHaveLength(1)
    expect(told(text)[0]).toMatchObject({line: 5, severity: 'warning'})
    expect(told(text)[0]!.reason).toContain('(“8-inch”, “10-inch”)')
  })
  it.each([
    '| What | small (g) | large (g) |\n|---|---|---|\n| Flour | 200 | 320 |',
    '| What | 4 people | 8 people |\n|---|---|---|\n| Flour | 200 g | 400 g |',
  ])('%j', (text) => expect(told(text)).toHaveLength(1))
  it.each([
    '| What | Grams | Ounces |\n|---|---|---|\n| Flour | 200 | 7 |',
    '| What | Metric | US |\n|---|---|---|\n| Flour | 200 g | 1 1/2 cups |\n| Eggs | 2 | 2 |',
    '| Ingredient | Grams | Baker’s % |\n|---|---|---|\n| Flour | 450 | 90 |\n| Salt | 9 | 2 |',
    '| | Weight (g) | oz |\n|---|---|---|\n| Flour | 500 | 17.6 |',
  ])('is none in: %j', (text) => expect(told(text)).toEqual([]))
})

describe('what is said of an entry beside it', () => {
  it.each([
    ['- 2 onions (100 g for the sauce)', ['2 count onion'], '(100 g for the sauce)'],
    ['- 3 eggs (1 for the glaze)', ['3 count egg'], '(1 for the glaze)'],
    ['- 500 g flour (50 g reserved)', ['500 gram flour'], '(50 g reserved)'],
    ['- 900 g flour (800 white, 100 rye)', ['900 gram flour'], '(800 white, 100 rye)'],
    ['- 900 g flour (800 g wheat, 100 g rye)', ['900 gram flour'], '(800 g wheat, 100 g rye)'],
    ['- 80 g yolks (4)', ['80 gram egg yolk'], '(4)'],
    ['Take 5 eggs (leave out 2 whites).', ['5 count egg'], 'leave out 2 whites'],
    ['Beat ten eggs, leaving out four of the whites.', ['10 count egg'], 'leaving out four of the whites'],
    ['Beat ten eggs, but half the whites.', ['10 count egg'], 'but half the whites'],
  ])('%s', (text, entries, note) => {
    expect(read(text)).toEqual(entries)
    expect(one(text).notes).toContain(note)
  })

  it.each([
    ['- 200 g butter, plus 20 g for the tin', ['200 gram butter', '20 gram butter']],
    ['- 30 g olive oil + 40 g for the pan', ['30 gram salad oil', '40 gram salad oil']],
    ['- 1 egg, plus 1 for glazing', ['1 count egg', '1 count egg']],
    ['- 500 g flour, plus extra for dusting', ['500 gram flour']],
  ])('more of it: %s', (text, entries) => expect(read(text)).toEqual(entries))

  it.each([
    ['Roast a turkey of 12 lbs.', 12],
    ['Take a ham of about ten pounds weight, and soak it.', 10],
    ['Take a fowl weighing four pounds.', 4],
    ['Take two ducks of 5 lb each.', 5],
  ])('what it weighs: %s', (text, pounds) => {
    expect(one(text).stated).toBe(pounds)
    expect(read(text)).toHaveLength(1)
  })
})

describe('forms of an entry', () => {
  it.each([
    ['- finely grated zest of 1 lemon', ['1 count lemon rind']],
    ['- thinly pared rind of one orange', ['1 count orange rind']],
    ['- finely grated zest and juice of 2 lemons', ['2 count lemon rind', '2 count lemon juice']],
    ['One teaspoon heaping of soda.', ['1 teaspoon baking soda']],
    ['- 1/2 c each: rye meal, corn meal, graham flour', ['1/2 cup rye meal', '1/2 cup indian meal', '1/2 cup wholemeal flour']],
    [
      'To a pound of flour and three ounces of salt put as much water, blood-warm, as will make a dough.',
      ['1 pound flour', '3 ounce salt', 'indefinite water'],
    ],
    ['- 1 cup sour milk\n\nSteam it in two 1-lb. coffee cans.', ['1 cup sour milk']],
    ['- 3/4 cup each white and brown sugar', ['3/4 cup sugar', '3/4 cup brown sugar']],
    ['- 1/4 lb. each candied citron, orange & lemon peel', ['1/4 pound citron', '1/4 pound orange rind', '1/4 pound lemon peel']],
    ['- Zest + juice of ½ lemon', ['1/2 count lemon rind', '1/2 count lemon juice']],
    ['Makes two loaves (approx. 1¾ lb each)\n\n- 1 kg flour', ['1 kilogram flour']],
    [
      'Soaker: 200 g flour, 5 g salt\nFinal: all of the soaker, 50 g flour',
      ['200 gram flour [soaker]', '5 gram salt [soaker]', '50 gram flour [final]'],
    ],
    ['Rasp the rolls.', []],
    ['- 1 teaspoon (heaped) bread soda', ['1 teaspoon baking soda']],
    ['- caraways (optional), 1 tblsp.', ['1 tablespoon caraway seed']],
    ['- pinch salt', ['1 pinch salt']],
    ['- 2 packets Lebkuchengewürz', ['2 packet spice']],
    ['- je 100 g Mandeln und Haselnüsse', ['100 gram almond', '100 gram hazelnut']],
    [
      'Dry: 250 g flour, 5 g salt\nWet: 2 eggs, 240 ml milk',
      ['250 gram flour [dry]', '5 gram salt [dry]', '2 count egg', '240 millilitre milk'],
    ],
    // A stretch of time and a time of day are no entries.
    ['- 500 g flour\n\n1. 08:00 mix, autolyse 30 min\n2. 08:30 fold every 30 min', ['500 gram flour']],
    // Many weights in a paragraph are no index.
    [
      'Base: 250g plain flour, 75g caster sugar, 175g butter\nCaramel: 100g butter, 100g light muscovado sugar\nTopping: 200g plain or milk chocolate, broken, and 30 g butter, 40 g honey, 50 g raisins',
      [
        '250 gram flour [base]',
        '75 gram sugar [base]',
        '175 gram butter [base]',
        '100 gram butter [caramel]',
        '100 gram brown sugar [caramel]',
        '200 gram chocolate [topping]',
        '30 gram butter [topping]',
        '40 gram honey [topping]',
        '50 gram raisin [topping]',
      ],
    ],
  ])('%j', (text, entries) => expect(read(text)).toEqual(entries))
})

describe('weights told by another weight', () => {
  it.each([
    ['Take a pound of quinces and their weight of sugar.', ['1 pound quince', '1 pound sugar']],
    ['To two pounds of apples put half their weight in sugar.', ['2 pound apple', '1 pound sugar']],
    ['Take a pound of plums and their own weight in sugar.', ['1 pound plum', '1 pound sugar']],
    // Of which of the two is not said.
    [
      'Take a pound of plums, two pounds of pears, and their weight in sugar.',
      ['1 pound plum', '2 pound pear', 'indefinite sugar'],
    ],
    ['Take six eggs and their weight in sugar.', ['6 count egg', '6 weight of an egg sugar']],
    [
      'Weigh four eggs in the shell; take the same weight of flour, of sugar and of butter.',
      ['4 count egg', '4 weight of an egg flour', '4 weight of an egg sugar', '4 weight of an egg butter'],
    ],
    [
      '5 eggs, weighed in their shells, the same weight in butter, sugar and flour.',
      ['5 count egg', '5 weight of an egg butter', '5 weight of an egg sugar', '5 weight of an egg flour'],
    ],
    ['The weight of six eggs in flour and sugar.', ['6 weight of an egg flour', '6 weight of an egg sugar']],
    // Each has its own.
    ['The weight of six eggs in flour, butter the weight of four.', ['6 weight of an egg flour', '4 weight of an egg butter']],
    ['Take of almonds half a pound, and an equal weight of sugar.', ['1/2 pound almond', '1/2 pound sugar']],
  ])('%s', (text, entries) => expect(read(text)).toEqual(entries))

  // Common practice, no source.
  it('what is bought roast has its amount, and a step that roasts has none', () => {
    expect(read('- 2 oz roast hazelnuts\n- 1 lb cold roast chicken\n\nRoast the hazelnuts ten minutes in the oven.')).toEqual([
      '2 ounce hazelnut',
      '1 pound chicken',
    ])
  })

  it('a measure of what is poured tells no weight', () => {
    expect(read('- 1 pint milk, and the same weight of sugar')).toEqual(['1 pint milk', 'indefinite sugar'])
  })
})

describe('household receipts in German', () => {
  it('their spoons, pinches and packets, and the usual names', () => {
    const list =
      '- 375 g Mehl\n- 1 Pck. Trockenhefe\n- 1 Prise Salz\n- 2 EL Öl\n- 1 TL Zimt\n- 1 Msp. Backpulver\n- 3 Eßlöffel Zucker\n- 1 Päckchen Trockenhefe\n- 200 ml lauwarme Milch\n- 2 Eier\n- 1 Pfund Äpfel\n- etwas Butter'
    expect(read(list)).toEqual([
      '375 gram flour',
      '1 packet dry yeast',
      '1 pinch salt',
      '2 tablespoon salad oil',
      '1 teaspoon cinnamon',
      '1 point of a knife baking powder',
      '3 tablespoon sugar',
      '1 packet dry yeast',
      '200 millilitre milk',
      '2 count egg',
      '1 pfund apple',
      'indefinite butter',
    ])
  })

  it('a Pfund is half a kilogram', () => {
    // Common practice, no source: the pound of the German customs union of 1858.
    const {grams} = translate('# Brot\n\n- 1 Pfund Mehl\n', {file: 'a.md'}).receipts[0]!.ingredients[0]!
    expect(grams?.likely).toBe(500)
  })

  // Common practice, no source: the oven's words in German cookery books.
  it.each([
    ['Bei Mittelhitze 40 Minuten backen.', ['Mittelhitze moderate']],
    ['Bei guter Mittelhitze 3/4 Stunde backen.', ['guter Mittelhitze moderate']],
    ['Bei mittlerer Hitze ca. 40 Min. backen.', ['mittlerer Hitze moderate']],
    ['Bei starker Hitze 20 Minuten backen.', ['starker Hitze hot']],
    ['Bei fallender Hitze 1 Std. backen.', ['fallender Hitze slow']],
    ['In einem mäßig heißen Ofen backen.', ['mäßig heißen Ofen moderate']],
    ['Im sehr heissen Backofen backen.', ['sehr heissen Backofen hot']],
    ['Im abgekühlten Ofen backen.', ['abgekühlten Ofen slow']],
    ['Die Gans im Ofen bei starker Hitze 20 Minuten braten.', ['starker Hitze hot']],
    ['Den Braten bei Mittelhitze eine Stunde backen.', ['Mittelhitze moderate']],
    // The heat of a pot.
    ['Zwiebeln bei mittlerer Hitze braten. Im Ofen backen.', []],
    ['Auf dem heißen Herd rühren, dann backen.', []],
    ['Butter bei mittlerer Hitze im Topf schmelzen. Den Kuchen 40 Minuten backen.', []],
    ['Zwiebeln bei starker Hitze anbraten, dann 20 Minuten backen.', []],
    [
      'Bei schwacher Hitze rühren, bis es dick ist. Abkühlen lassen. Auf die Torte streichen und diese eine Stunde stehen lassen. Backen.',
      [],
    ],
  ])('the heat of “%s”', (text, said) => {
    const {oven} = translate(`# Kuchen\n\n${text}\n`, {file: 'a.md'}).receipts[0]!
    expect(oven.map((one) => `${one.text} ${one.band}`)).toEqual(said)
  })

  it('the oven, with Umluft', () => {
    const {oven, times} = translate('# Kuchen\n\nBackofen auf 180° vorheizen (Umluft 160°). 45 Min. backen.\n', {file: 'a.md'})
      .receipts[0]!
    expect(oven.map(({celsius}) => celsius)).toEqual([
      {low: 180, high: 180},
      {low: 180, high: 180},
    ])
    expect(times.map(({of}) => of)).toEqual(['bake'])
  })

  it.each([
    ['½ tsk salt', '1/2 teaspoon salt'],
    ['1 msk brandy', '1 tablespoon brandy'],
    ['1 c. à soupe rum', '1 tablespoon rum'],
  ])('spoons of other countries: %s', (text, entry) => expect(read(`- ${text}`)).toEqual([entry]))
})

describe('what a scan or a mill writes', () => {
  it.each([
    ['l lb. of flour, I lb. sugar, 1 Ib. of butter', ['1 pound flour', '1 pound sugar', '1 pound butter']],
    ['l0 drops essence of lemon', ['10 drop essence of lemon']],
    ['2O eggs', ['20 count egg']],
    ['1l milk', ['1 litre milk']],
    ['500 g T55 flour', ['500 gram flour']],
    ['500 g Typ 405 Mehl', ['500 gram flour']],
    ['500 g 00 flour', ['500 gram flour']],
    ['2 T sugar', ['2 tablespoon sugar']],
  ])('%s', (text, entries) => expect(read(`- ${text}`)).toEqual(entries))

  it('“I pound the sugar” is no pound', () => expect(read('I pound the sugar and I cup my hands.')).toEqual(['indefinite sugar']))

  it('a brifk oven', () => {
    const {oven} = translate('# Cakes\n\nBake them in a brifk oven 2O minutes.\n', {file: 'a.md'}).receipts[0]!
    expect(oven[0]?.known).not.toBe(false)
    expect(oven[0]?.band).toBe('hot')
  })
})

describe('a number of what nobody counts', () => {
  const told = (text: string): number =>
    translate(`# A receipt\n\n${text}\n`, {file: 'a.md'}).messages.filter(({rule}) => rule === 'measure-unknown').length
  it.each(['- 2 glugs oil', '- 3 rounded spatulas honey', '| what | how much |\n|---|---|\n| Water | 320 |'])(
    'is told: %j',
    (text) => expect(told(text)).toBe(1),
  )
  it.each(['- 2 eggs', '- 4 figs', '- 1 tsp oil', '- 3 bay leaves', '- 2 large onions'])('is none in: %s', (text) =>
    expect(told(text)).toBe(0),
  )
})

describe('the kind of a pie', () => {
  it.each([
    ['Chicken and leek pie', 'meat pie'],
    ['Apple pie', 'fruit pie'],
  ])('%s', (title, kind) =>
    expect(translate(`# ${title}\n\nBake it an hour in a hot oven.\n`, {file: 'a.md'}).receipts[0]!.kind).toBe(kind),
  )
  it('what is set in to dry off dries no fruit', () => {
    const text = '# Indian Loaf\n\n- 2 cups corn meal\n\nSteam 3 hours, then set in the oven 20 minutes to dry off.\n'
    expect(translate(text, {file: 'a.md'}).receipts[0]!.kind).not.toBe('drying fruit')
  })
})

/** Common practice, no source: a levain in the list is built of what the method gives for it, and a sponge is set of the list's own flour. */
describe('a sponge that is set in the method', () => {
  it('is built of what the list has', () => {
    const text =
      '- 900 g strong white\n- 200 g levain\n- 720 g water\n\nBuild the levain the night before: 25 g starter, 90 g flour, 90 g water. Bake 40 minutes.'
    expect(read(text)).toEqual(['900 gram strong white', '200 gram levain', '720 gram water'])
    const {ingredients} = translate(`# Bread\n\n${text}\n`, {file: 'a.md'}).receipts[0]!
    expect(ingredients[1]!.notes).toEqual(['25 g starter', '90 g flour', '90 g water'])
    expect(ingredients[0]!.grams?.likely).toBe(900)
  })
  it('takes its share of the list', () => {
    expect(
      read('- 500 g flour\n- 350 g water\n- 5 g yeast\n\nFor the biga stir 150 g flour and 90 g water. Bake 40 minutes.'),
    ).toEqual(['500 gram flour', '350 gram water', '5 gram yeast'])
    const {ingredients} = translate(
      '# Bread\n\n- 500 g flour\n- 350 g water\n\nFor the biga stir 150 g flour and 90 g water.\n',
      {
        file: 'a.md',
      },
    ).receipts[0]!
    expect(ingredients.map(({notes}) => notes)).toEqual([['150 g flour'], ['90 g water']])
  })
  it('has its own where the list has none of it', () => {
    expect(read('- 500 g flour\n- 350 g water\n\nFor the poolish stir 2 g yeast and 90 g milk. Bake 40 minutes.')).toEqual([
      '500 gram flour',
      '350 gram water',
      '2 gram yeast',
      '90 gram milk',
    ])
  })
})

describe('German words about an amount', () => {
  it.each([
    ['- ca. 200 g Mehl', '200 gram flour', 'ca'],
    ['- etwa 3 EL Öl', '3 tablespoon salad oil', 'etwa'],
    ['- ungefähr 100 g Zucker', '100 gram sugar', 'ungefahr'],
    ['- rund 2 kg Äpfel', '2 kilogram apple', 'rund'],
  ])('%s is about so much', (text, entry, hedge) => {
    expect(read(text)).toEqual([entry])
    expect(translate(`# X\n\n${text}\n`, {file: 'a.md'}).receipts[0]!.ingredients[0]!.hedges).toEqual([hedge])
  })
  it('stand before a weight in brackets', () => {
    const {text, stated} = one('- 1 Gans (ca. 4,5 kg)')
    expect([text, stated]).toEqual(['1 Gans (ca. 4,5 kg)', 4.5])
  })
  it('a piece’s weight in the method is no ingredient', () => {
    expect(read('- 500 g Mehl\n\nIn 10 Stücke à 85 g teilen. 15 Minuten backen.')).toEqual(['500 gram flour'])
  })
})

it('what a cake is as large as does not go in', () => {
  expect(
    read('Take two pounds of flour and a pound of butter. Make it into cakes the size of a French roll, and bake them.'),
  ).toEqual(['2 pound flour', '1 pound butter'])
})

// That what a dough is shaped into is no part of it, and a sheet of 40 × 30 cm takes two dozen small rolls: common practice, no source.
describe('what a dough is made into', () => {
  const listed = '- 500 g flour\n- 300 ml milk\n- 7 g dry yeast\n\nMix, let rise 1 hour. '
  const three = ['500 gram flour', '300 millilitre milk', '7 gram dry yeast']
  it.each([
    'Shape into 24 rolls on a baking sheet and bake 12 minutes.',
    'Divide the dough into about 24 even rolls, prove 30 minutes and bake 12 minutes.',
    'Form 24 rolls and bake them 12 minutes.',
    'Make up into 24 rolls, and bake them 12 minutes.',
  ])('does not go in: %s', (text) => {
    expect(read(listed + text)).toEqual(three)
    expect(read(`Mix a pound of flour with a gill of barm. ${text}`)).toEqual(['1 pound flour', '1 gill barm'])
  })
  it('nor does what a receipt with a list of its own is called by', () => {
    const rolls = translate(`# Bridge rolls\n\n${listed}Set the 24 rolls on a sheet and bake 12 minutes.\n`, {file: 'a.md'})
    expect(rolls.receipts[0]!.ingredients.map(({item}) => item)).toEqual(['flour', 'milk', 'dry yeast'])
  })
  it('what is cut up does', () => {
    expect(read('Cut 6 rolls in slices, and lay a pound of apples between. Bake half an hour.')).toContain('6 count roll')
  })
})

/** Common practice, no source. */
describe('amounts of nothing, or less', () => {
  const told = (text: string): string[] =>
    translate(`# Gingerbread\n\n${text}\n`, {file: 'a.md'})
      .messages.filter(({rule}) => rule === 'amount-none')
      .map(({line, column}) => `${line}:${column}`)
  it.each([
    ['- 0 g flour\n- 200 g treacle\n- 2 eggs', ['3:3']],
    ['- 200 g flour\n- -2 g soda\n- 2 eggs', ['4:4']],
    ['- 200 g flour\n- −2 g soda\n- 2 eggs', ['4:4']],
    ['Take a pint of treacle, two eggs, and -5 tea-cups of flour. Bake it.', ['3:40']],
  ])('are told: %j', (text, places) => expect(told(text)).toEqual(places))
  it.each([
    '-200 g flour\n-300 g treacle\n-2 eggs',
    '- flour -200 g\n- treacle -300 g\n- eggs -2',
    '- 200 g flour\n- 2 -3 eggs\n- 300 g treacle',
  ])('a dash is no minus: %j', (text) => expect(told(text)).toEqual([]))
})

describe('what a step names of what the list gives is not counted again', () => {
  it.each([
    // By its weight, where the measures differ: a stick of butter is eight tablespoons.
    [
      '- 1 stick plus 2 Tbs. butter, divided\n- 1/3 cup flour',
      'Melt 1 stick butter. Toss the crumbs with 2 Tbs. melted butter.',
      'butter',
      1,
    ],
    ['- 350 g flour\n- 2 eggs', 'Stir in 2 cups flour. Bake.', 'flour', 1],
    // What the list weighs, a step counts.
    ['- 3/4 lb. of veal cutlet\n- 3 partridges', 'Line the dish with a veal cutlet. Bake.', 'veal cutlet', 1],
    // More than the list has is more.
    ['- 2 tbsp butter\n- 350 g flour', 'Melt 1 stick butter. Bake.', 'butter', 2],
  ])('%j, %j', (list, step, item, times) => {
    expect(read(`${list}\n\n${step}`).filter((entry) => entry.endsWith(item))).toHaveLength(times)
  })
})

describe('what is struck out does not go in', () => {
  it.each([
    ['- ~~2 cups cornmeal~~ 1½ cups cornmeal\n- 2 eggs', ['3/2 cup cornmeal', '2 count egg']],
    ['- <del>2 eggs</del> 3 eggs\n- 5 g salt', ['3 count egg', '5 gram salt']],
    ['- ~~100 g butter~~\n- 5 g salt', ['5 gram salt']],
    // One tilde is “about”.
    ['- ~200 g sugar, ~10 g salt\n- ~~2 eggs~~ 3 eggs', ['200 gram sugar', '10 gram salt', '3 count egg']],
  ])('%j', (list, entries) => expect(read(`${list}\n\nBake.`)).toEqual(entries))
})

it('“beet” before what is beaten is the verb', () => {
  expect(read('Stir in one pound butter, interim beet 14 eggs, and bake. Beet them well.')).toEqual([
    '1 pound butter',
    '14 count egg',
  ])
})
