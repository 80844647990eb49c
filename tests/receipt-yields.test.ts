import {describe, expect, it} from 'vitest'
import {yieldWords} from '../src/lexicon/yield-words.js'
import {fold, plainSection} from '../src/receipt/section.js'
import {translate} from '../src/receipt/translate.js'
import {readYields} from '../src/receipt/yield-facts.js'
import {makeDishes} from '../src/scale/dishes.js'
import {translationText} from '../src/sheets/translation-text.js'

/** Invented phrases in the usual wording of receipts: common practice, no source. */
describe('a receipt that says how much it makes and how many it feeds', () => {
  it.each(['Makes 2 loaves. Serves 12.', 'Serves 12. Makes 2 loaves.'])('keeps both: %s', (text) => {
    const {serves, feeds} = readYields(plainSection(text))
    expect([serves?.low, serves?.of, feeds?.low, feeds?.of]).toEqual([2, 'loaves', 12, 'persons'])
    expect(text.slice(feeds!.start, feeds!.end)).toBe(feeds!.text)
  })

  it('keeps both in German', () => {
    const {serves, feeds} = readYields(plainSection('Ergibt 2 Brote. Für 12 Personen.'))
    expect([serves?.low, serves?.of, feeds?.low]).toEqual([2, 'loaves', 12])
  })

  it('keeps both where the vessel is what is made', () => {
    const {serves, feeds} = readYields(plainSection('For one 40 x 30 cm tray: enough for 12 people.'))
    expect([serves?.low, serves?.of, feeds?.low]).toEqual([1, 'tray', 12])
  })

  it('takes the people where only a measure is made beside', () => {
    const {serves, feeds} = readYields(plainSection('Makes 3 pints. Serves 6.'))
    expect([serves?.low, serves?.of, feeds]).toEqual([6, 'persons', undefined])
  })

  it('prints both', () => {
    const {receipts, messages} = translate('# Bread\n\nMakes 2 loaves. Serves 12.\n\n- 1 kg flour\n', {file: 'a.md'})
    expect(translationText({format: 1, receipts, messages}, {sources: []})).toContain('Makes 2 loaves; Serves 12')
  })

  it('is scaled by the count and feeds by the people', () => {
    const source =
      '# Bread\n\nMakes 2 loaves. Serves 12.\n\n- 1 kg flour\n- 650 g water\n- 20 g yeast\n\nBake at 230 °C for 40 minutes.\n'
    const {receipts} = translate(source, {file: 'bread.md'})
    const {dishes} = makeDishes({
      day: {
        people: 8,
        items: [{file: 'bread.md', title: 'Bread', amount: '4 loaves', wantedBy: null, line: 1, column: 1}],
        spare: [],
      },
      receipts,
      oven: {floor: {shape: 'round', diameter: 1.07}, mouth: {width: 0.46, height: 0.28}, vaultHeight: 0.41},
    })
    expect(dishes[0]?.count).toBe(4)
    expect(dishes[0]?.times).toBe('2')
    expect(dishes[0]?.feeds.likely).toBeCloseTo(24)
  })
})

describe('a count that only the method gives', () => {
  it.each([
    ['Knead it. Divide into six loaves and prove them.', 6, 'loaves'],
    ['Let it rise, then make it up into four loaves.', 4, 'loaves'],
    ['Shape the dough into two round loaves.', 2, 'loaves'],
    ['Make 12 buns and let rise.', 12, 'buns'],
    ['Knead well, then make two round loaves and bake.', 2, 'loaves'],
    // Words that only describe the vessel stand between: common practice, no source.
    ['Divide the batter between two greased 9-inch cake pans.', 2, 'pans'],
    ['Divide between two (20 cm) sandwich tins.', 2, 'tins'],
    ['Share it between the two prepared tins.', 2, 'tins'],
    ['Pour into two 8-inch round cake pans.', 2, 'pans'],
    ['Pour it into two deep well-buttered 9 x 5 inch loaf pans.', 2, 'pans'],
    ['Turn into two greased and floured loaf tins.', 2, 'tins'],
    ['Spoon into 12 muffin cups.', 12, 'cups'],
    ['Pour into 8 custard cups.', 8, 'cups'],
    ['Spoon the batter into a 12-hole muffin tin.', 12, 'muffins'],
    ['Grease two 6-cup muffin tins.', 12, 'muffins'],
    ['Spoon into a 12-hole tin.', 12, 'pieces'],
    ['Mix. Makes 3 dozen. Bake them on a sheet.', 36, 'pieces'],
    ['Beat well. Makes 24. Bake at once.', 24, 'pieces'],
    ['Beat well. Yield: 24. Bake at once.', 24, 'pieces'],
    ['Divide the dough into 12 equal pieces and shape each into a roll.', 12, 'rolls'],
    ['Divide the batter between two 20 cm tins.', 2, 'tins'],
    ['Make into four cottage loaves.', 4, 'loaves'],
    ['Pour into six ramekins.', 6, 'ramekins'],
    ['Line six tartlet tins with paste, fill them and bake.', 6, 'tins'],
    ['Butter a dozen patty pans and half fill them.', 12, 'pans'],
    ['Grease and line two 20 cm round sandwich tins.', 2, 'tins'],
    ['Zwölf Förmchen einfetten.', 12, 'formchen'],
    ['Den Teig in zwei Laibe teilen.', 2, 'laibe'],
    ['Zu zwei runden Laiben formen.', 2, 'laiben'],
    ['Zu zwei großen Laiben formen.', 2, 'laiben'],
    ['Den Teig in 12 Stücke teilen und zu Brötchen formen.', 12, 'brotchen'],
  ])('%s', (text, low, of) => {
    const {serves} = readYields(plainSection(text as string))
    expect(serves).not.toBeNull()
    expect(serves?.low).toBe(low)
    const english: Record<string, string> = {laibe: 'loaves', laiben: 'loaves', brotchen: 'rolls', formchen: 'tins'}
    expect(serves?.of).toBe(english[of as string] ?? of)
    expect((text as string).slice(serves!.start, serves!.end)).toBe(serves!.text)
  })

  it.each([
    'Divide each half into 6 rolls.',
    'It is cheaper to make two tarts at one time.',
    'Make a cross on the loaf.',
    'Shape into two rolls, chill, and cut them into slices.',
    'Cut the pork into 4 pieces.',
    'Shape each piece into a loaf.',
    'Butter a tin.',
    'Line the tins with two sheets of paper.',
    'Grease a 12-hole tin.',
    'Pour into a 10-cup pan.',
    'Put it in 2 cups of water.',
    'Spread the jam between the two cakes.',
    'Divide the paste into two parts; roll one out.',
  ])('none in: %s', (text) => {
    expect(readYields(plainSection(text)).serves).toBeNull()
  })

  it('yields to what the receipt states', () => {
    expect(readYields(plainSection('Makes 3 loaves. Divide into six loaves.')).serves?.low).toBe(3)
  })
})

/** What a piece of a dough is by its kind: common practice, no source. */
describe('a dough that is divided and whose pieces are not named', () => {
  const read = (title: string, text: string) =>
    translate(`# ${title}\n\n- 1 kg flour\n- 650 g water\n- 20 g yeast\n\nKnead. ${text} Bake at 230 °C for 40 minutes.\n`, {
      file: 'receipts/x.md',
    }).receipts[0]!
  it.each([
    ['Household bread', 'Divide in two, shape and prove.', 2, 'loaves', 'Divide in two'],
    ['Household bread', 'Cut the dough into 3 pieces and mould them.', 3, 'loaves', 'Cut the dough into 3 pieces'],
    ['Household bread', 'Halve the dough and shape it.', 2, 'loaves', 'Halve'],
    ['Pizza', 'Divide into 4. Stretch, top and bake.', 4, 'pizzas', 'Divide into 4'],
    ['Breakfast rolls', 'Divide into 12 and shape.', 12, 'rolls', 'Divide into 12'],
    ['Dinkelbrot', 'In 2 gleich große Stücke teilen.', 2, 'loaves', 'In 2 gleich große Stücke teilen'],
    ['Landbrot', 'Den Teig halbieren und formen.', 2, 'loaves', 'halbieren'],
  ])('%s: %s', (title, text, count, of, words) => {
    const {serves, inferred} = read(title, text)
    expect([serves?.low, serves?.high, serves?.of, serves?.text]).toEqual([count, count, of, words])
    expect(inferred.find(({field}) => field === 'serves')).toEqual({
      field: 'serves',
      value: `${count} ${of}`,
      why: `the receipt states no yield, and says “${words}”: each piece is taken as one`,
    })
  })
  it.each([
    ['Household bread', 'Divide into three, roll into strands and plait.'],
    ['Household bread', 'Divide in two, one larger than the other, and set the smaller on top.'],
    ['Household bread', 'Cut the apples into 4 pieces and knead them in.'],
    ['Household bread', 'Divide each half into 6.'],
    ['Pound cake', 'Divide in two.'],
  ])('is not read in %s: %s', (title, text) => expect(read(title, text).serves).toBeNull())
  it('yields to what is stated', () => expect(read('Household bread', 'Divide in two. Makes 4 loaves.').serves?.low).toBe(4))
})

/** A German household tray is about 40 × 30 cm: common practice, no source. */
describe('a receipt for a tray', () => {
  const dishOf = (source: string, amount: string) =>
    makeDishes({
      day: {
        people: 8,
        items: [{file: 'receipts/x.md', title: 'X', amount, wantedBy: null, line: 1, column: 1}],
        spare: [],
      },
      receipts: translate(source, {file: 'receipts/x.md'}).receipts,
      oven: {floor: {shape: 'round', diameter: 1.07}, mouth: {width: 0.46, height: 0.28}, vaultHeight: 0.41},
    }).dishes[0]!
  const cake = (yields: string): string =>
    `# Apfelkuchen vom Blech\n\n${yields}\n\n- 500 g Mehl\n- 250 ml Milch\n- 1,5 kg Äpfel\n\n30 Minuten bei 200 °C backen.\n`
  it.each(['Für ein Blech', 'Ergibt 1 Backblech', 'Makes one tray.'])('is for that tray, whatever it weighs: %s', (yields) => {
    const dish = dishOf(cake(yields), '2 trays')
    expect([dish.count, dish.times]).toEqual([2, '2'])
    expect(dish.vessel.name).toMatch(/^sheet 40 x 30 cm$/)
  })
  it('fills trays by their size where it says nothing', () => {
    expect(dishOf(cake(''), 'once').count).toBe(1)
  })
})

describe('a yield in few words', () => {
  const made = (text: string): string | null => {
    const {serves} = readYields(plainSection(text))
    return serves === null ? null : `${serves.low === serves.high ? serves.low : `${serves.low}–${serves.high}`} ${serves.of}`
  }
  it.each([
    ['The above makes ten.', '10 pieces'],
    ['This makes six.', '6 pieces'],
    ['These quantities will make eight or nine.', '8–9 pieces'],
    ['The dough makes eight, each the size of a fist.', '8 pieces'],
    ['Makes 6 large or 12 small pasties.', '6 pasties'],
    ['Raise the paste into six small pies, six inches across.', '6 pies'],
    ['Cut in twelve scones.', '12 scones'],
    ['Shape twenty rolls.', '20 rolls'],
    ['Zwölf runde Brötchen formen.', '12 rolls'],
    ['Genug für vier Pizzen.', '4 pizzas'],
    ['Quantity for two quartern loaves.', '2 loaves'],
  ])('%s', (text, yields) => expect(made(text)).toBe(yields))
  it.each([
    'This makes two at once.',
    'It makes one sick.',
    'Eat one, and it makes two of you.',
    'Divide the paste into two pieces.',
    'Divide each half into six pies.',
  ])('but not: %s', (text) => expect(made(text)).toBeNull())
})

describe('a yield of vessels and of what they are cut into', () => {
  it.each([
    ['Für ein Blech, 20 Stück.', '20 pieces in 1'],
    ['Für 2 Bleche (40 Stück)', '40 pieces in 2'],
    ['Ergibt ein Blech (20 Stück).', '20 pieces in 1'],
    ['Makes one tray, 24 squares.', '24 squares in 1'],
    ['For 2 trays (48 pieces)', '48 pieces in 2'],
    // What vessels hold that is not said to be cut is what is made.
    ['Makes 2 loaves, 24 slices.', '2 loaves in undefined'],
    ['Makes one tray, 2 eggs being enough.', '1 tray in undefined'],
    ['Makes 2 tins (12 portions).', '2 tins in undefined'],
  ])('%s', (text, said) => {
    const {serves} = readYields(plainSection(text))
    expect(`${serves?.low} ${serves?.of} in ${serves?.vessels}`).toBe(said)
    expect(text.slice(serves!.start, serves!.end)).toBe(serves!.text)
  })
  it('is no count where something else is counted behind', () => {
    expect(readYields(plainSection('Für ein Blech, 20 Stück Zucker.')).serves).toBeNull()
  })

  it('can be asked for by the piece and by the vessel', () => {
    const source =
      '---\nvessel: sheet 40 cm x 30 cm\n---\n# Zuckerkuchen\n\nFür 2 Bleche (40 Stück).\n\n- 500 g Mehl\n- 250 ml Milch\n- 20 g Hefe\n- 200 g Butter\n\nBei 200 °C 25 Minuten backen.\n'
    const {receipts} = translate(source, {file: 'kuchen.md'})
    const made = (amount: string) => {
      const item = {file: 'kuchen.md', title: 'Kuchen', amount, wantedBy: null, line: 1, column: 1}
      const {dishes, messages} = makeDishes({
        day: {people: 12, items: [item], spare: []},
        receipts,
        oven: {floor: {shape: 'round', diameter: 2}, mouth: {width: 0.8, height: 0.4}, vaultHeight: 0.6},
      })
      expect(messages).toEqual([])
      return dishes.map(({count, times}) => [count, times])
    }
    expect(made('60 Stück')).toEqual([[3, '3/2']])
    expect(made('1 Blech')).toEqual([[1, '1/2']])
  })
})

describe('what suffices of one thing that goes in', () => {
  it.each([
    'A wine-glass full of each is sufficient for three or four pies.',
    'Half an ounce of cloves is enough for two cakes.',
    'Two spoons of good yeast are sufficient for two loaves.',
    'It is cheaper to make two or three tarts at one time.',
  ])('is no yield: %s', (text) => expect(readYields(plainSection(text)).serves).toBeNull())
  it.each([
    ['Six pounds of meal is enough for two loaves.', 2],
    ['This quantity is sufficient for four pies.', 4],
    ['Sufficient for 24 cheesecakes.', 24],
  ])('but of what it is made of it is: %s', (text, low) => expect(readYields(plainSection(text)).serves).toMatchObject({low}))
})

describe('one of what is made', () => {
  it.each([
    ['1 loaf (900g / 2lb tin)', 1],
    ['1 loaf', 1],
    ['12 buns (about 60 g each)', 12],
    ['Pile it on to a tray in a 25 cm circle. Bake it.', 1],
    ['Spread it in a round on the paper.', 1],
  ])('%s', (text, low) => expect(readYields(plainSection(text)).serves).toMatchObject({low}))
  it.each([
    'A loaf (of sugar)',
    'Spread it in a round tin.',
    'Spoon it into a ring mould.',
    'Pipe each in a circle.',
    'Cut it in a round.',
  ])('is not told by “%s”', (text) => expect(readYields(plainSection(text)).serves).toBeNull())
  it('portions of a heading are people and nothing that is made', () => {
    const [one] = translate('# Haferbrei (12 Portionen)\n\n- 100 g Haferflocken\n', {file: 'a.md'}).receipts
    expect([one!.serves?.low, one!.serves?.of, one!.feeds]).toEqual([12, 'persons', undefined])
  })
  it('a heading may say for how many', () => {
    expect(translate('# Morning oats (for 2)\n\n- 100 g oats\n', {file: 'a.md'}).receipts[0]!.serves).toMatchObject({
      low: 2,
      of: 'persons',
    })
  })
})

describe('the rows of words for how much', () => {
  it('are written as a text’s words are compared: folded', () => {
    const all = yieldWords.flatMap(({words}) => words)
    expect(all.filter((word) => fold(word) !== word)).toEqual([])
  })
  it('say no word twice in one row', () => {
    expect(yieldWords.filter(({words}) => new Set(words).size < words.length)).toEqual([])
  })
  it('count people in English and in German', () => {
    const {feeds, serves} = readYields(plainSection('Makes 2 loaves. Serves 12 diners.'))
    expect([serves?.of, feeds?.low]).toEqual(['loaves', 12])
    expect(translate('# Haferbrei (für 2)\n\n- 100 g Haferflocken\n', {file: 'a.md'}).receipts[0]!.serves).toMatchObject({low: 2})
  })
})

/** Invented phrases in the usual wording of receipts: common practice, no source. */
describe('what a receipt is said to be for', () => {
  const bread = (text: string) =>
    translate(`# Bread\n\n${text}\n\n- 1 kg flour\n- 650 g water\n\nKnead it. Bake at 230 °C for 40 minutes.\n`, {file: 'a.md'})
      .receipts[0]!
  it.each([
    ['Quantities for 2 loaves', 2, 'loaves'],
    ['These quantities are for two loaves.', 2, 'loaves'],
    ['The dough is for two loaves of 800 g.', 2, 'loaves'],
    ['This recipe is for two loaves.', 2, 'loaves'],
    ['This receipt is for one large loaf.', 1, 'loaf'],
    ['This recipe is for 4.', 4, 'persons'],
    ['A recipe for two small loaves', 2, 'loaves'],
    ['This is for two loaves, each about 800 g.', 2, 'loaves'],
    ['Two loaves, each about 800 g.', 2, 'loaves'],
    ['For two small loaves, each about 800 g.', 2, 'loaves'],
    ['8 rolls of 90 g', 8, 'rolls'],
    ['For 12 loaves of 1.6 kg dough.', 12, 'loaves'],
    ['Makes 12 loaves of 1.6 kg of dough each.', 12, 'loaves'],
    ['For 12 loaves, 1.6 kg dough each.', 12, 'loaves'],
    ['Für 12 Laibe à 1,6 kg Teig.', 12, 'loaves'],
    ['Ergibt 12 Laibe zu je 1,6 kg Teig.', 12, 'loaves'],
    ['You will get two loaves.', 2, 'loaves'],
    ['You should get 24 biscuits from this.', 24, 'biscuits'],
    ['Two loaves from this amount.', 2, 'loaves'],
    ['Batch: 2 loaves', 2, 'loaves'],
    ['Batch size: 24 rolls', 24, 'rolls'],
    ['Amount: 2 loaves', 2, 'loaves'],
    ['Mengen für 2 Brote', 2, 'loaves'],
    ['Die Mengen sind für zwei Brote.', 2, 'loaves'],
    ['Der Teig ist für zwei Brote zu 800 g.', 2, 'loaves'],
    ['Dieses Rezept ist für zwei Brote.', 2, 'loaves'],
    ['Ein Rezept für zwei kleine Brote', 2, 'loaves'],
    ['Ergibt zwei große Brote.', 2, 'loaves'],
    ['Das ist für zwei Brote, je etwa 800 g.', 2, 'loaves'],
    ['Man erhält 12 Brötchen.', 12, 'rolls'],
    ['Zwei Brote aus dieser Menge.', 2, 'loaves'],
    ['Ansatz: 2 Brote', 2, 'loaves'],
    ['Anzahl: 12 Brötchen', 12, 'rolls'],
    ['Portionen: 12', 12, 'persons'],
  ])('%s', (text, low, of) => {
    const {serves, ingredients} = bread(text)
    expect([serves?.low, serves?.of]).toEqual([low, of])
    // Nothing of it goes in.
    expect(ingredients.map(({item}) => item)).toEqual(['flour', 'water'])
  })

  it.each([
    'Make a sauce for two puddings.',
    'Enough for a while.',
    'Bake for two hours.',
    'This is for two hours.',
    'This is for two.',
    'This is for a pie.',
    'The butter is for two cakes.',
    'The oven is for two loaves.',
    'Half the dough is for two loaves.',
    'The rest of the dough is for two loaves.',
    'The first recipe is for two loaves, the second for four.',
    'See the recipe for two pie crusts.',
    'A recipe for a cake',
    'Get two loaves out of the oven.',
    'To get two loaves into the oven, move the first.',
    'You will get two loaves in at once.',
    'You will get a cake that is heavy.',
    'You will get two cups of juice.',
    'Take two loaves from this batch.',
    'A loaf from this dough keeps a week.',
    'Two loaves from the oven.',
    'Batch: 24',
    'A new batch: 2 loaves went into it.',
    'Die Butter ist für zwei Kuchen.',
    'Eine Soße für zwei Kuchen.',
  ])('but not in: %s', (text) => expect(readYields(plainSection(text)).serves).toBeNull())

  it('keeps what goes in beside a yield by measure', () => {
    const items = (text: string) => bread(text).ingredients.map(({item}) => item)
    expect(items('Set a leaven that is sufficient for three pints of milk.')).toContain('milk')
    expect(items('This is for two loaves. Add an egg to it.')).toContain('egg')
  })
})

/** Invented phrases in the usual wording of receipts: common practice, no source. */
describe('jars and tins with their size', () => {
  it.each([
    ['Bake in four 500 ml jars.', 4, 'jars'],
    ['Divide it between 4 x 500 ml jars.', 4, 'jars'],
    ['Pack it into clean jars (4 x 500 ml jars).', 4, 'jars'],
    ['(4 x 500 ml jars)', 4, 'jars'],
    ['Makes 4 x 500 ml jars.', 4, 'jars'],
    ['Fills four 500 ml jars.', 4, 'jars'],
    ['Fill into four jars of 500 ml.', 4, 'jars'],
    ['Pour into 2 x 20 cm tins.', 2, 'tins'],
    ['Für 2 x 20 cm Springformen.', null, null],
    ['In vier 500-ml-Gläser füllen.', 4, 'jars'],
    ['In 4 Gläser à 500 ml füllen.', 4, 'jars'],
    ['Ergibt vier 500-ml-Gläser.', 4, 'jars'],
    ['(4 Gläser à 500 ml)', 4, 'jars'],
  ])('%s', (text, low, of) => {
    const {serves, ingredients} = translate(`# Pâté\n\n${text}\n`, {file: 'a.md'}).receipts[0]!
    expect([serves?.low ?? null, serves?.of ?? null]).toEqual([low, of])
    expect(ingredients).toEqual([])
  })
  it.each([
    'Add two jars of jam.',
    'Put in two jars of jam.',
    'Pour the milk into two jars of jam.',
    'Use jam (2 x 400 g jars).',
    'Chop the tomatoes (2 x 400 g tins) and boil them.',
  ])('but not in: %s', (text) => expect(readYields(plainSection(text)).serves).toBeNull())
})
