import {describe, expect, it} from 'vitest'
import {readHeat} from '../src/receipt/heat.js'
import {plainSection} from '../src/receipt/section.js'
import {readTimes} from '../src/receipt/times.js'
import {translate} from '../src/receipt/translate.js'
import {readYields} from '../src/receipt/yield-facts.js'

/**
 * Misreadings found in receipts written afresh in the manner of old books, of home kitchens and of German households. All texts are
 * invented; how a cook reads such words is common practice, no source.
 */
const read = (text: string, title = 'A receipt') => translate(`# ${title}\n\n${text}\n`, {file: 'a.md'})
const entries = (text: string): string[] =>
  read(text).receipts[0]!.ingredients.map(({exact, measure, item, part}) =>
    [exact ?? '', measure, item, part === '' ? '' : `<${part}>`].filter((one) => one !== '').join(' '),
  )

describe('what goes in', () => {
  it.each([
    // A verb, like the one before it.
    ['Pare and quarter a peck of tart apples. Bake them.', ['1 peck apple']],
    ['Take a quarter of a peck of flour. Bake it.', ['1/4 peck flour']],
    // The second of two names behind one article was given before.
    ['1 cup of butter, 1 do. of brown sugar. Beat the butter and sugar to a cream. Bake.', ['1 cup butter', '1 cup brown sugar']],
    ['| | |\n|---|---|\n| 2 lg. | eggs |\n| 1 cup | milk |', ['2 count egg', '1 cup milk']],
    ['- 3 large | eggs\n- 1 cup milk', ['3 count egg', '1 cup milk']],
    ['- 1 kg floury potatoes (e.g. Maris Piper), sliced\n- 2 eggs', ['1 kilogram potato', '2 count egg']],
    ['- 200 g Käse (z. B. Bergkäse)\n- 2 Eier', ['200 gram cheese', '2 count egg']],
    ['- Flour (tipo 00) 200 g\n- 2 eggs', ['200 gram flour', '2 count egg']],
    // What is for one loaf, and its measure behind.
    ['| What | 1 loaf (g) |\n|---|---|\n| Flour | 300 |\n| Caraway seed | 5 |', ['300 gram flour', '5 gram caraway seed']],
    // A name that no row has, before a German article.
    ['Aus 500 g Mehl und ¼ l Birnenbrühe einen Teig bereiten.', ['500 gram flour', '1/4 litre birnenbruhe']],
    ['- 1 Becher Mehl\n- 2 Eier', ['1 becher flour', '2 count egg']],
  ])('%j', (text, found) => expect(entries(text)).toEqual(found))

  it('a weight behind a comma is that of the joint', () => {
    const [veal] = read('Cut a breast of veal, of about five pounds, in pieces. Bake it.').receipts[0]!.ingredients
    expect(veal!.text).toBe('a breast of veal, of about five pounds')
    expect(veal!.grams!.likely).toBeCloseTo(5 * 453.59237, 0)
  })
  it('whites that are left out are told', () => {
    const [egg] = read('Beat eight eggs, leaving out half the whites. Bake.').receipts[0]!.ingredients
    expect(egg!.notes).toContain('leaving out half the whites')
  })
  it('an Australian tablespoon is told by the fan-forced oven', () => {
    const [seed] = read('- 2 tbs pepitas\n- 500 g plain flour\n\nBake at 200 °C (180 °C fan-forced).').receipts[0]!.ingredients
    expect(seed!.millilitres!.likely).toBe(40)
  })
})

describe('the stages of a dough', () => {
  const list = (first: string, second: string): string =>
    `${first}\n\n- 100 g rye flour\n- 100 g water\n\n${second}\n\n- 400 g flour\n- 10 g salt\n`
  const found = ['100 gram rye flour <leaven>', '100 gram water <leaven>', '400 gram flour', '10 gram salt']
  it.each([
    ['*Levain (Friday night)*', '*Final dough*'],
    ['**Grundsauer** (18–20 Std. bei 24 °C)', '**Hauptteig**'],
    ['Rye sour', 'Dough:'],
  ])('under lines of their own: %s, %s', (first, second) => expect(entries(list(first, second))).toEqual(found))
  it.each(['- Grundsauer', '- all of the sour', '- All the levain'])(
    'and the first is no ingredient of the second: %s',
    (again) => {
      expect(entries(`${list('Grundsauer:', 'Hauptteig:')}${again}\n`)).toEqual(found)
    },
  )
  it('in one block, without a mark', () => {
    expect(entries('Vorteig\n100 g Mehl\n100 g Wasser\n\nHauptteig\n400 g Mehl\n10 g Salz\nVorteig')).toEqual([
      '100 gram flour <sponge>',
      '100 gram water <sponge>',
      '400 gram flour',
      '10 gram salt',
    ])
    expect(entries('Hefeteig:\n500 g Mehl\n1 Ei\n\nStreusel:\n300 g Mehl\n200 g Butter')).toEqual([
      '500 gram flour',
      '1 count egg',
      '300 gram flour <streusel>',
      '200 gram butter <streusel>',
    ])
  })
})

describe('heats, times and yields', () => {
  it('a heat that is lowered is the oven’s, whatever stands behind', () => {
    const text = 'Bake at 240 °C for 20 minutes with steam on the stone, then lower to 210 °C until brown (internal temp 98 °C).'
    expect(readHeat(plainSection(text)).map(({celsius}) => celsius.low)).toEqual([240, 210])
  })
  it('the falling heat of the oven is one in German', () => {
    expect(readHeat(plainSection('In der abfallenden Hitze des Holzofens backen.')).map(({band}) => band)).toEqual(['slow'])
  })
  it('meat that is roasted bakes, where the oven was heated for it', () => {
    const of = (text: string): string[] => readTimes(plainSection(text)).map((time) => time.of)
    expect(
      of('Heat the oven to gas mark 2. Cover with foil and roast for 4 hours. Raise the heat to 200 °C and cook 30 mins more.'),
    ).toEqual(['bake', 'bake'])
    expect(of('Heat the oven. Roast the seeds in a pan for 5 minutes.')).toEqual(['other'])
  })
  it.each(['Makes 2 x 850g loaves', 'Yield: 2 x 1 lb loaves', 'Ergibt 2 x 750 g Brote'])('what is made is named: %s', (text) => {
    expect(readYields(plainSection(text)).serves).toMatchObject({low: 2, of: 'loaves'})
  })
  it.each([
    ['A Veal Pye', 'meat pie'],
    ['Naples Bisket', 'sponge fingers'],
    ['Potted Shad', 'potted'],
  ])('“%s” is %s', (title, kind) => expect(read('A pound of flour. Bake it.', title).receipts[0]!.kind).toBe(kind))
})
