import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'

/** Invented receipts in the styles that people paste: common practice, no source. */
const read = (text: string) => translate(text, {file: 'a.md'}).receipts[0]!
const entries = (text: string): string[] =>
  read(text).ingredients.map(
    ({exact, measure, item, part}) => `${part === '' ? '' : `${part}: `}${exact ?? '–'} ${measure} ${item}`,
  )
const times = (text: string): string[] => read(text).times.map(({text: words, of}) => `${words}: ${of}`)
const bread = (method: string): string => `# Bread\n\n- 1 kg flour\n- 650 g water\n\n${method}\n`

describe('a table of baker’s percentages', () => {
  const table = `# Campagne

| Ingredient | Baker's % | Weight |
|---|---|---|
| Bread flour | 90 % | 900 g |
| Water | 76 % | 760 g |
| Levain (100 % hydration) | 20 % | 200 g |
| **Total** | **186 %** | **1860 g** |

Bake at 240 °C for 45 minutes.
`
  it('is read by its weights, without the sum', () => {
    expect(entries(table)).toEqual(['900 gram bread flour', '760 gram water', '200 gram levain'])
  })
})

describe('what comes out of the cold', () => {
  const text = bread('Bake straight from the fridge in a covered pot at 245 °C for 20 minutes, then 25 minutes at 220 °C.')
  it('is baked at the heat that is said, and for as long', () => {
    expect(read(text).oven.map(({text: words}) => words)).toEqual(['245 °C', '220 °C'])
    expect(times(text).every((time) => time.endsWith(': bake'))).toBe(true)
  })
  it('but the heat of the fridge is none of the oven', () => {
    expect(read(bread('Prove it in the fridge at 4 °C for 12 hours.')).oven).toEqual([])
  })
})

describe('German receipts', () => {
  it('say what a time is for at the end of the clause', () => {
    expect(times(bread('Kneten, zugedeckt 1 ½ Stunden aufs Doppelte aufgehen lassen. Bei 200 °C 45 Minuten backen.'))).toEqual([
      '1 ½ Stunden: rise',
      '45 Minuten: bake',
    ])
    expect(times(bread('Den Teig bei Zimmertemperatur 12 Stunden reifen lassen. Bei 200 °C 45 Minuten backen.'))[0]).toBe(
      '12 Stunden: rise',
    )
  })
  it('have parts under their names, and lists under “Zutaten”', () => {
    const text =
      '# Bauernbrot\n\nFür 2 Brote à 1 kg\n\nSauerteig (am Vorabend)\n\n- 250 g Roggenmehl\n\nHauptteig\n\n- 500 g Roggenmehl\n- ½ Würfel Hefe\n\nBacken.\n'
    expect(entries(text)).toEqual(['leaven: 250 gram rye flour', '500 gram rye flour', '1/2 cube yeast'])
    // A cube of German fresh yeast is 42 g: common practice, no source.
    expect(read(text).ingredients[2]!.grams!.likely).toBeCloseTo(21)
    expect(read(text).serves).toMatchObject({low: 2, of: 'loaves'})
    const zopf =
      '# Butterzopf\n\nZutaten für 1 Zopf:\n1 kg Zopfmehl\n120 g Butter, weich\n6 dl Milch\n\nBei 200 °C 45 Minuten backen.\n'
    expect(entries(zopf)).toEqual(['1 kilogram flour', '120 gram butter', '6 decilitre milk'])
    expect(read(zopf).kind).toBe('white bread')
  })
})

describe('a meal of a joint', () => {
  const text =
    '# Lamb shoulder with beans\n\n- 1.8 kg lamb shoulder, bone in\n- 400 g dried beans, soaked overnight\n\nCover and bake at 150 °C for 4 hours.\n'
  it('is what its title begins with, not what it is served with', () => {
    expect(read(text).kind).toBe('roast meat')
    expect(read('# Rabbit with bread\n\n- 1 kg rabbit\n\nBake at 150 °C for 2 hours.\n').kind).not.toBe('white bread')
  })
  it('has no bone for an ingredient, and its beans are put to soak', () => {
    expect(read(text).ingredients).toHaveLength(2)
    expect(read(text).evening?.map(({does, items}) => [does, items])).toEqual([['soak', [1]]])
  })
})

describe('how much, in the words of old and home receipts', () => {
  it('“a dozen and half of wigs” are 18', () => {
    expect(
      read('# Wiggs\n\nTake a pound of flour and a gill of yest; make it into a dozen and half of wiggs. Bake half an hour.')
        .serves,
    ).toMatchObject({
      low: 18,
      of: 'wiggs',
    })
  })
  it('“Makes 16 fingers”', () => {
    expect(read('# Shortbread\n\nMakes 16 fingers\n\n- 6 oz flour\n- 4 oz butter\n\nBake 40 minutes.').serves).toMatchObject({
      low: 16,
      of: 'fingers',
    })
  })
  it('“as much milk just warm as will make it a paste” is no amount of the entry before', () => {
    expect(
      entries(
        '# Wigs\n\nTake a pound of flour, four spoonfuls of sack, and as much milk just warm as will make it into a paste. Bake.',
      ),
    ).toContain('– indefinite milk')
  })
  it('“Prep 15 min” is the cook’s time', () => {
    expect(times('# Loaf\n\nPrep 15 min | Cook 50 min\n\n- 225 g flour\n\nBake for 50 minutes.\n')).toEqual([
      '15 min: other',
      '50 min: bake',
      '50 minutes: bake',
    ])
  })
})

describe('a night in water', () => {
  const ids = (text: string): string[] => read(text).cautions.map(({id}) => id)
  it('keeps nothing warm, and meat in it wants the cold', () => {
    const ham = ids('# To bake a Ham\n\nSoak your ham all night in water; bake it in a quick oven four hours.')
    expect(ham).not.toContain('hot-holding')
    expect(ham).toContain('danger-zone')
    expect(ids('# Peas\n\n- 500 g dried peas\n\nSoak the peas over night. Bake in a slow oven.')).not.toContain('danger-zone')
  })
})

describe('what only helps to make it', () => {
  it('is no vessel: “rub it through a hair sieve”', () => {
    const {inferred} = read('# Pease pudding\n\n- 1 pint peas\n\nRub them through a hair sieve and bake in a dish half an hour.')
    expect(inferred.find(({field}) => field === 'vessel')?.why).not.toContain('sieve')
  })
})

describe('what a thing is cut into', () => {
  it('is no vessel: “slice the apples into rings”', () => {
    const vessel = (text: string): string | undefined => read(text).inferred.find(({field}) => field === 'vessel')?.value
    expect(vessel('# Dried apples\n\n- 2 kg apples\n\nSlice the apples into rings and dry in a slack oven for 8 hours.')).toMatch(
      /^sheet/,
    )
    expect(vessel('# Muffins\n\n- 2 lb flour\n\nPour into buttered rings and bake in a quick oven.')).toMatch(/^round 3 1\/2/)
  })
})

describe('a table of the stages of a dough', () => {
  const rye = `# Weekend rye

| | Sour | Dough | Total |
|---|---|---|---|
| Rye flour | 300 g | 500 g | 800 g |
| Water | 300 g | 280 g | 580 g |
| Starter | 30 g | | 30 g |
| Sour | | 630 g | |
| Salt | | 16 g | 16 g |

Let the sour stand 14 hours. Mix all to a dough, rest 30 minutes, shape, prove one hour and bake 55 minutes.
`
  it('is read stage by stage, without its sums, and the sour once', () => {
    expect(entries(rye)).toEqual([
      'leaven: 300 gram rye flour',
      '500 gram rye flour',
      'leaven: 300 gram water',
      '280 gram water',
      'leaven: 30 gram starter',
      '16 gram salt',
    ])
    expect(read(rye).ingredients[0]!.notes).toContain('Sour 630 g')
    expect(translate(rye, {file: 'a.md'}).messages).toEqual([])
  })
  it('and its times', () => {
    expect(read(rye).times.map(({stage, of}) => stage ?? of)).toEqual(['sponge', 'rise', 'prove', 'bake'])
  })
  it('with the measure in its heads, and in German', () => {
    expect(
      entries(
        '# Mischbrot\n\n| Zutat | Vorteig (g) | Hauptteig (g) |\n|---|---|---|\n| Weizenmehl | 200 | 600 |\n| Hefe | 2 | 10 |\n\nBacken.\n',
      ),
    ).toEqual(['sponge: 200 gram flour', '600 gram flour', 'sponge: 2 gram yeast', '10 gram yeast'])
  })
  it('but two sizes are still two sizes', () => {
    const sizes = '# Cake\n\n| | Small | Large |\n|---|---|---|\n| Flour | 200 g | 400 g |\n\nBake.\n'
    expect(entries(sizes)).toEqual(['200 gram flour'])
    expect(translate(sizes, {file: 'a.md'}).messages.map(({rule}) => rule)).toEqual(['table-columns'])
  })
  it('and sour cream is no sour', () => {
    const text = bread('Add 20 g yeast. Knead. Let the sour cream stand 2 hours. Let rise 1 hour and bake 40 minutes.')
    expect(read(text).times.map(({stage}) => stage)).not.toContain('sponge')
  })
})

describe('a label that stands alone', () => {
  it.each([
    '# Plate pie\n\nfor the paste\n8 oz flour\n4 oz lard\n\nfor the filling\n1 lb currants\n\nBake.\n',
    '# Plate pie\n\n- for the paste\n- 8 oz flour\n- 4 oz lard\n- for the filling\n- 1 lb currants\n\nBake.\n',
    '# Plate pie\n\nFor the paste\n\n- 8 oz flour\n- 4 oz lard\n\nFor the filling\n\n- 1 lb currants\n\nBake.\n',
  ])('sets the part: %s', (text) => {
    expect(entries(text)).toEqual(['paste: 8 ounce flour', 'paste: 4 ounce lard', 'filling: 1 pound currant'])
  })
  it('in German too', () => {
    expect(entries('# Zwiebelkuchen\n\n- für den Teig\n- 500 g Mehl\n- für den Belag\n- 1 kg Zwiebeln\n\nBacken.\n')).toEqual([
      '500 gram flour',
      'topping: 1 kilogram onion',
    ])
  })
  it('and what goes in for a purpose is an entry', () => {
    expect(entries('# Pie\n\n- 8 oz flour\n- butter for the tin\n- for frying: 1 lb lard\n\nBake.\n')).toContain('1 pound lard')
  })
})

describe('what a first look at other people’s receipts found', () => {
  it('what is made is nothing that goes in', () => {
    const rolls = '# Rolls\n\n- 3 lb flour\n- 1 oz yeast\n\nKnead, divide into eighteen rolls, and bake. Mould up.\n'
    expect(entries(rolls)).toEqual(['3 pound flour', '1 ounce yeast'])
    expect(read(rolls).serves).toMatchObject({low: 18, of: 'rolls'})
  })
  it('scored pieces are whole, and to mould is no mould', () => {
    const {serves, inferred} = read(
      '# Manchets\n\n- 3 lb flour\n- 1 oz yeast\n\nMould into twenty manchets, cut round the waist, and bake in a hot oven.\n',
    )
    expect(serves).toMatchObject({low: 20, of: 'manchets'})
    expect(inferred.find(({field}) => field === 'vessel')?.why).toContain('names no vessel')
  })
  it('a label over the whole list, or over lines, is no thing', () => {
    expect(entries('# Napfkuchen\n\nZutaten: 500 g Mehl, 3 Eier.\n\nBacken.\n')).toEqual(['500 gram flour', '3 count egg'])
    expect(entries('# Streuselkuchen\n\nTeig:\n500 g Mehl\n1 Ei\n\nStreusel:\n200 g Zucker\n\nBacken.\n')).toEqual([
      '500 gram flour',
      '1 count egg',
      'streusel: 200 gram sugar',
    ])
    expect(entries('# Hardtack\n\nFor a class of 24.\n\n4 cups flour, 2 teaspoons salt. Bake.\n')).toEqual([
      '4 cup flour',
      '2 teaspoon salt',
    ])
  })
  it('a brand is no white of eggs, and a sort alone is flour', () => {
    expect(entries('# Biscuits\n\n2 cups White Lily flour, 1 cup buttermilk. Bake.\n')).toEqual([
      '2 cup flour',
      '1 cup buttermilk',
    ])
    const {ingredients} = read('# Focaccia\n\n500 g tipo 00, 375 g water. Bake.\n')
    expect(ingredients.map(({grams}) => grams?.likely)).toEqual([500, 375])
    expect(read('# Focaccia\n\n500 g tipo 00, 375 g water. Bake.\n').allergens).toEqual(['wheat'])
  })
  it('rind and juice in German', () => {
    expect(entries('# Kuchen\n\n- abgeriebene Schale einer Zitrone\n- Saft von 2 Zitronen\n\nBacken.\n')).toEqual([
      '1 count lemon rind',
      '2 count lemon juice',
    ])
  })
  it('an American tin has its inches without a word, and a large one centimetres', () => {
    const vessel = (text: string) =>
      read(`# Made Up\n\n- 200 g butter\n\n${text}\n`).inferred.find(({field}) => field === 'vessel')
    expect(vessel('Bake in a 9x13 pan.')?.value).toBe('oblong 9 x 13 x 2 in')
    expect(vessel('Bake in a 9x13 pan.')?.why).toBe(
      'the receipt says “9x13 pan”, read in inches, and no depth; its depth: common-practice',
    )
    expect(vessel('Bake in a 20 x 30 glass dish.')?.value).toBe('oblong 20 x 30 x 5 cm')
    expect(vessel('Yield: two 9x5 loaves. Bake.')?.value).toBe('loaf 9 x 5 x 3 in')
    expect(vessel('Cut 2 x 3 strips on a dish.')).toBeUndefined()
  })
  it('the heat inside a loaf is none of the oven', () => {
    expect(read(bread('Bake at 350F 35–40 min, to 190F internal.')).oven.map(({text}) => text)).toEqual(['350F'])
    expect(read(bread('Bei 230 °C 50 Min. backen, bis die Kerntemperatur 96 °C beträgt.')).oven.map(({text}) => text)).toEqual([
      '230 °C',
    ])
  })
  it('degrees in German words are an oven’s', () => {
    expect(
      times('# Schweinebraten\n\n1,5 kg Schweineschulter.\n\nBei 160 Grad 2 Stunden braten, zuletzt 20 Minuten bei 220 Grad.\n'),
    ).toEqual(['2 Stunden: bake', '20 Minuten: bake'])
  })
  it('what is scaled is shaped', () => {
    expect(
      read(bread('Add 20 g yeast. Bulk rise 3 hours. Scale at 900 g. Proof 90 minutes. Bake 40 min.')).times.map(
        ({stage}) => stage,
      ),
    ).toEqual(['rise', 'prove', undefined])
  })
  it('another bread’s oven makes no bread of it', () => {
    const {kind, inferred} = read(
      '# To bake Quinces\n\nLay a dozen quinces in a pot, and let it stand in the oven with brown bread all night.\n',
    )
    expect(kind).toBe('baked fruit')
    expect(inferred.map(({field}) => field)).not.toContain('bake')
    expect(
      read('# A good dish\n\nA dozen quinces. Bake with brown bread, or after white bread, or as household bread.\n').kind,
    ).toBeNull()
  })
  it.each([
    ['Hardtack', 'crackers'],
    ['Haricots in a jar', 'beans'],
    ['Gedörrte Birnen', 'drying fruit'],
    ['Pain rustique', 'white bread'],
  ])('“%s” is %s', (title, kind) => expect(read(`# ${title}\n\n- 1 lb flour\n\nBake an hour.\n`).kind).toBe(kind))
  it('a row of amounts is not all soaked', () => {
    const {evening, ingredients} = read(
      '# Christmas cake\n\n200 g butter, 4 eggs, 200 g flour, 500 g raisins soaked overnight in 100 ml brandy, 50 g almonds. Bake 3 hours.\n',
    )
    expect(evening!.flatMap(({items}) => items.map((i) => ingredients[i]!.item))).toEqual(['raisin'])
  })
  it('degrees are no cups', () => {
    expect(entries(bread('Bake 45 min at 240 C falling to 220 C.'))).toEqual(['1 kilogram flour', '650 gram water'])
    expect(entries('# Cake\n\n- 2 C flour\n\nBake.\n')).toEqual(['2 cup flour'])
  })
  it('ten of 350 g are ten', () => {
    expect(read('# Ciabatta\n\nYield 10 x 350 g\n\n- 2 kg flour\n\nBake.\n').serves).toMatchObject({low: 10, of: 'pieces'})
  })
  it('a door by itself between commas', () => {
    expect(read('# Dried apples\n\nPut 5 lb apples in the oven, door ajar, overnight until leathery.\n').ajar?.text).toBe(
      'door ajar',
    )
  })
})
