import {describe, expect, it} from 'vitest'
import {lookUpItem} from '../src/lexicon/index.js'
import {kinds} from '../src/lexicon/kinds.js'
import {ovenFoods} from '../src/lexicon/oven-foods.js'
import {readAjar} from '../src/receipt/ajar.js'
import {plainSection} from '../src/receipt/section.js'
import {translate} from '../src/receipt/translate.js'

/** Invented receipts in the usual wording; that yeast and sourdough loaves keep different times is common practice, no source. */
const read = (text: string) => translate(text, {file: 'a.md'}).receipts[0]!
const loaf = (title: string, leaven: string): string =>
  `# ${title}\n\n- 800 g flour\n- 520 g water\n- 16 g salt\n${leaven}\n\nKnead, shape and bake at 230 °C for 45 minutes.\n`

describe('a name that leaves the leaven open', () => {
  it.each([
    ['Country loaf', '- 7 g instant yeast', 'white bread'],
    ['Country loaf', '- 150 g sourdough starter', 'sourdough bread'],
    ['Country loaf', '- 150 g sourdough starter\n- 2 g dried yeast', 'sourdough bread'],
    ['Pain de campagne', '- 20 g fresh yeast', 'white bread'],
    ['Sourdough loaf', '- 7 g dried yeast', 'sourdough bread'],
    ['Bread', '- 150 g sourdough starter', 'sourdough bread'],
    ['Bread', '- 20 g fresh yeast', 'white bread'],
    ['Bread', '', 'white bread'],
  ])('%s with %s is %s', (title, leaven, kind) => {
    expect(read(loaf(title, leaven)).kind).toBe(kind)
  })

  it('says by what it went', () => {
    const {inferred} = read(loaf('Country loaf', '- 7 g instant yeast'))
    expect(inferred.find(({field}) => field === 'kind')?.why).toBe('“country loaf” in the title, raised by yeast')
  })

  it('names a kind that there is', () => {
    const ids = new Set(kinds.map(({id}) => id))
    for (const {leavened} of kinds) if (leavened !== undefined) expect(ids).toContain(leavened.kind)
  })
})

/** Common practice, no source: what bakers call these. */
describe('a title', () => {
  const kindOf = (title: string, list = '- 500 g flour\n- 20 g yeast'): string | null =>
    read(`# ${title}\n\n${list}\n\nBake 40 minutes.\n`).kind
  it.each([
    // The sponge is how the bread is made, and no cake.
    ['Cottage Bread by Sponge and Dough', 'white bread'],
    ['Bread by the sponge', 'white bread'],
    ['Sponge cake', 'sponge'],
    ['Jelly Roll', 'sponge'],
    ['Zitronentarte', 'tarts'],
    ['Tarte au citron', 'tarts'],
    ['Tin loaf', 'white bread'],
    ['Two tin loaves', 'white bread'],
    ['Harvest loaf', 'white bread'],
    ['Kürbiskernbrot', 'white bread'],
    ['Roggenvollkornbrot', 'rye bread'],
    ['Dinkelvollkornbrot', 'wholemeal bread'],
    ['Laugenbrezeln', 'rolls'],
    ['Kräuterbraten', 'roast meat'],
    ['Kartoffelgratin', 'roast vegetables'],
    ['Getrocknete Apfelringe', 'drying fruit'],
    ['Quince Marmalade dried in Cakes', 'drying fruit'],
    ['Ginger-Bread Nuts', 'hard gingerbread'],
    ['Weihnachtsgans', 'roast poultry'],
    // What stands last is the dish.
    ['Roast Chicken Pie', 'meat pie'],
    ['Baked apple pudding', 'pudding'],
    ['Baked custard pudding', 'custard'],
    ['White bread rolls', 'rolls'],
    ['Apfelstrudel', 'fruit pie'],
    ['70 % Rye', 'rye bread'],
    ['Bea’s 70% rye', 'rye bread'],
    ['100% Wholemeal', 'wholemeal bread'],
    ['70 percent rye', 'rye bread'],
  ])('“%s” is %s', (title, kind) => expect(kindOf(title)).toBe(kind))

  it.each([
    ['Apfelkuchen vom Blech', 'tray cakes', 'raised tray cake'],
    ['Nusskuchen', 'pound cake', 'raised cake'],
    ['Plum cake', 'fruit cake', 'raised cake'],
    ['Gingerbread', 'gingerbread', 'raised cake'],
  ])('“%s” is %s, and where yeast raises it %s', (title, kind, raised) => {
    expect(kindOf(title, '- 500 g flour\n- 2 tsp baking powder')).toBe(kind)
    expect(kindOf(title)).toBe(raised)
  })

  it('with yeast in its list has the stages of a dough', () => {
    const plums = '# Zwetschgenkuchen\n\n- 400 g Mehl\n- 1 Würfel Hefe\n- 1 kg Zwetschgen\n\nAuf dem Blech 35 Minuten backen.\n'
    expect(read(plums).inferred.map(({field}) => field)).toEqual(expect.arrayContaining(['rise', 'prove']))
  })

  it('soda cake is bread, or a cake where sugar goes into it', () => {
    expect(kindOf('Soda Cake', '- 1 lb flour\n- 1 teaspoon soda\n- 1 pint buttermilk')).toBe('soda bread')
    expect(kindOf('Soda Cake', '- 1 lb flour\n- 1 teaspoon sugar\n- 1 pint buttermilk')).toBe('soda bread')
    expect(kindOf('Soda Cake', '- 1 lb flour\n- 1/2 lb sugar\n- 4 oz butter\n- 3 eggs')).toBe('pound cake')
  })

  it('a loaf without leaven is a cake where it is sweet, and else nothing known', () => {
    expect(kindOf('Lemon loaf', '- 200 g flour\n- 150 g sugar\n- 3 eggs')).toBe('pound cake')
    expect(kindOf('Lentil loaf', '- 200 g lentils\n- 3 eggs')).toBeNull()
  })
})

describe('a title and a text that name no dish', () => {
  const kind = (list: string, title = 'Rye', method = 'Knead, let it rise, and bake 45 minutes.') =>
    read(`# ${title}\n\n${list}\n\n${method}\n`).inferred.find(({field}) => field === 'kind')
  it.each([
    ['- 500 g rye flour\n- 10 g salt\n- 20 g yeast', 'rye bread'],
    ['- 200 g rye flour\n- 600 g flour\n- 20 g yeast', 'white bread'],
    ['- 3 cups wholemeal flour\n- 1 cup flour\n- 2 teaspoons dried yeast', 'wholemeal bread'],
    ['- 700 g bread flour\n- 150 g starter', 'sourdough bread'],
    ['- 500 g flour\n- 20 g yeast\n- 100 g sugar\n- 100 g butter', 'raised cake'],
  ])('are told by the ingredients: %s is %s', (list, value) => {
    expect(kind(list)?.value).toBe(value)
  })
  it('and what told it is said', () => {
    expect(kind('- 500 g rye flour\n- 20 g yeast')?.why).toBe(
      'neither title nor text names a dish; told by its rye flour and yeast',
    )
  })
  it('where only a heat in degrees says that it is baked', () => {
    const list = '- 1 kg flour\n- 650 g water\n- 20 g yeast'
    expect(kind(list, 'Saturday', '230 °C for 50 minutes.')?.value).toBe('white bread')
    expect(kind(list, 'Saturday', 'Fry in fat at 180 °C.')).toBeUndefined()
    expect(kind(list, 'Saturday', 'Boil it.')).toBeUndefined()
  })
  it('but not without leaven, without a weight of flour, or of what is not baked', () => {
    expect(kind('- 500 g rye flour\n- 10 g salt')).toBeUndefined()
    expect(kind('- rye flour\n- 20 g yeast')).toBeUndefined()
    expect(kind('- 500 g rye flour\n- 20 g yeast', 'Rye', 'Mix and bottle it.')).toBeUndefined()
    expect(kind('- 300 g flour\n- 20 g yeast\n- 1 kg mutton', 'Supper')).toBeUndefined()
  })
})

describe('what keeps without warmth', () => {
  const warm = (text: string): boolean => read(text).cautions.some(({id}) => id === 'hot-holding')
  it('is not told to be kept warm', () => {
    expect(
      warm('# Meringues\n\n- 4 egg whites\n- 225 g sugar\n\nBake in a slack oven, and leave them in the oven overnight.\n'),
    ).toBe(false)
    expect(warm(`${loaf('Rye bread', '- 100 g sourdough starter')}\nLet the sponge stand overnight.\n`)).toBe(false)
  })
  it('but a crock is', () => {
    expect(warm('# Baked beans\n\n- 500 g beans\n\nBake in a slow oven, and leave them in the oven overnight.\n')).toBe(true)
  })
})

describe('a door that is to stand a little open', () => {
  it.each([
    ['Dry them in a very cool oven for 8 hours, leaving the door an inch open.', 'leaving the door an inch open'],
    ['Dry them with the oven door slightly ajar.', 'with the oven door slightly ajar'],
    ['Keep the door propped open with a spoon.', 'Keep the door propped open'],
    ['Bei leicht geöffneter Ofentür trocknen.', 'Bei leicht geöffneter Ofentür'],
    ['Die Tür einen Spalt offen lassen.', 'Tür einen Spalt offen lassen'],
    ['Dry it in the slack oven, the door ajar, overnight.', 'the door ajar'],
    ['Dry it overnight in the slack oven, the door left open a crack.', 'the door left open a crack'],
    ['Dry it with the door a little open.', 'with the door a little open'],
    ['Dry it in the last of the heat, the oven door ajar.', 'the oven door ajar'],
    ['Dry it in a slack oven. Door ajar all night.', 'Door ajar'],
    ['Über Nacht trocknen, die Tür einen Spalt offen.', 'Tür einen Spalt offen'],
    ['Bei angelehnter Tür trocknen.', 'Bei angelehnter Tür'],
  ])('%s', (text, words) => {
    expect(readAjar(plainSection(text))?.text).toContain(words)
  })
  it.each([
    'Do not open the door for an hour.',
    'Turn the oven off and let them cool with the door ajar.',
    'Keep the door shut while the window is open.',
    'Never leave the door open.',
    'Dry it overnight, the door shut.',
    'It is enough that the door ajar lets the damp out.',
  ])('not in: %s', (text) => {
    expect(readAjar(plainSection(text))).toBeNull()
  })
})

describe('a title that says of a food only that it comes from the oven', () => {
  const titled = (title: string) => read(`# ${title}\n\n- 500 g flour\n\nPut it in the oven for two hours.\n`).kind
  it.each([
    ['Weiße Bohnen aus dem Ofen', 'beans'],
    ['Lentils from the oven, with bacon', 'beans'],
    ['Lachs aus dem Backofen', 'baked fish'],
    ['Ofenlachs', 'baked fish'],
    ['Oven-baked cod', 'baked fish'],
    ['Rindfleisch mit Zwiebeln aus dem Holzofen', 'roast meat'],
    ['Oven duck', 'roast poultry'],
    ['Möhren aus dem Ofen', 'roast vegetables'],
    ['Äpfel aus dem Ofen', 'baked fruit'],
    // What has a name of its own keeps it.
    ['Brot aus dem Ofen', 'white bread'],
    ['Oven-dried tomatoes', 'drying fruit'],
  ])('%s: %s', (title, kind) => expect(titled(title)).toBe(kind))
  it.each(['Weiße Bohnen', 'Brown butter from the oven', 'Lachs'])('is no kind without a food or an oven: %s', (title) => {
    expect(titled(title)).toBeNull()
  })
  it('rows name only kinds and items that exist', () => {
    for (const {kind, items = []} of ovenFoods) {
      expect(kinds.map(({id}) => id)).toContain(kind)
      expect(items.filter((id) => lookUpItem(id)?.id !== id)).toEqual([])
    }
  })
})

describe('what stands by itself', () => {
  const vessel = (text: string) => read(text).inferred.find(({field}) => field === 'vessel')
  const short = (makes: string, method: string, title = 'Hillside shortbread') =>
    `# ${title}\n\n${makes}\n\n- 300 g flour\n- 200 g butter\n- 100 g sugar\n\n${method}\n`

  it.each([
    ['Makes 24 biscuits.', 'Cut out and bake on a sheet 25 minutes.', 'sheet 16 x 12 in'],
    ['Makes 24 biscuits.', 'Bake on two greased sheets 25 minutes.', 'sheet 16 x 12 in'],
    ['Makes 24 biscuits.', 'Bake on tins 25 minutes.', 'sheet 16 x 12 in'],
    ['Ergibt 24 Stück.', 'Auf ein Blech legen und 25 Minuten backen.', 'sheet 40 x 30 cm'],
    // Nothing is named, but they are pieces by their name or by what is done.
    ['Makes 24 biscuits.', 'Bake 25 minutes.', 'sheet 16 x 12 in'],
    ['', 'Cut out with a cutter and bake 25 minutes.', 'sheet 16 x 12 in'],
    // And no paste that is rolled out.
    ['Makes 8 wedges.', 'Roll into a sheet, fold it and bake it in a round 40 minutes.', 'round 8 in x 1 in'],
    ['Makes 8 wedges.', 'Bake 40 minutes.', 'round 8 in x 1 in'],
  ])('%s %s: %s', (makes, method, value) => {
    expect(vessel(short(makes, method))?.value).toBe(value)
  })

  it('on a sheet, whatever it was mixed in', () => {
    const scones = '# Hill scones\n\nMakes 12.\n\n- 450 g flour\n- 250 ml milk\n\nMix in a basin, cut out and bake 12 minutes.\n'
    expect(vessel(scones)?.value).toBe('sheet 16 x 12 in')
    const pasties =
      '# Turnip pasties\n\nMakes 6.\n\n- 500 g flour\n- 250 g lard\n- 600 g beef\n\nFill, crimp and bake 50 minutes.\n'
    expect(read(pasties).kind).toBe('pasties')
    expect(vessel(pasties)?.value).toBe('sheet 16 x 12 in')
    expect(read('# Venison pasty\n\n- 1 kg venison\n\nBake in a deep dish three hours.\n').kind).toBe('meat pie')
  })

  it.each(['Hefezopf', 'Butterstollen', 'Mohnstriezel', 'Challah', 'Plaited loaf', 'Milk twist', 'Sweet plait'])(
    'on the floor: %s',
    (title) => {
      const loaf = `# ${title}\n\n- 500 g flour\n- 250 ml milk\n- 20 g fresh yeast\n- 80 g sugar\n\nBake 35 minutes.\n`
      expect(vessel(loaf)?.value).toMatch(/^free-standing loaf /)
      expect(kinds.find(({id}) => id === read(loaf).kind)?.sign).toMatch(/sounds hollow/)
    },
  )

  it('and herbs have a sign of their own', () => {
    const herbs = read('# Dried herbs\n\nLay a pound of fresh sage on two sheets, and dry it in the slack oven overnight.\n')
    expect(herbs.kind).toBe('drying herbs')
    expect(kinds.find(({id}) => id === herbs.kind)?.sign).toMatch(/crumble between the fingers/)
  })
})

/** Common practice, no source. */
describe('bread that goes into a dish', () => {
  const pudding =
    'Cut half a loaf of bread in dice, pour over it 2 quarts of milk, 6 eggs and half a pound of sugar; cover with paste and bake 1 hour.\n'

  it('does not make a bread of it', () => {
    expect(read(`# A supper dish\n\n${pudding}`).kind).toBeNull()
    expect(read(`# A whitpot\n\n${pudding}`).kind).toBe('pudding')
    expect(
      read(
        '# For Sundays\n\nTake 2 pounds of flour and half a pint of yeast. Make the loaf of bread round, and bake it an hour.\n',
      ).kind,
    ).toBe('white bread')
  })

  it('nor is what is done on a griddle baked, whatever its text calls it', () => {
    const fritters = '# Fritters\n\nMix a pint of milk, 2 eggs and flour. Grease the griddle; small cakes are best baked thin.'
    expect(read(fritters).inferred.find(({field}) => field === 'kind')?.value).toBe('not baked')
    expect(read(`${fritters} Or bake them in a hot oven.`).kind).not.toBe('not baked')
  })
})
