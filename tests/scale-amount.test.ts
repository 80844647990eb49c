import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'
import {readAsked} from '../src/scale/amount-phrase.js'
import {makeDishes} from '../src/scale/dishes.js'
import {loavesIn, oneLine} from './loaves-day.js'

const asked = (text: string | null): unknown => {
  const read = readAsked(text, 40)
  if (!read.ok) return read
  const {value} = read
  if (value.kind === 'floor' && value.share !== undefined) return {kind: 'floor', share: value.share.toFraction()}
  return value.kind === 'times' ? {kind: 'times', times: value.times.toFraction()} : value
}

describe('how much a day asks of a receipt', () => {
  const cases: ReadonlyArray<[string | null, object]> = [
    [null, {kind: 'people', people: 40}],
    ['', {kind: 'people', people: 40}],
    ['12 loaves', {kind: 'count', count: 12, of: 'loaves'}],
    ['two loaves', {kind: 'count', count: 2, of: 'loaves'}],
    ['3 crocks', {kind: 'count', count: 3, of: 'crocks'}],
    ['half a dozen pies', {kind: 'count', count: 6, of: 'pies'}],
    ['3 dozen rolls', {kind: 'count', count: 36, of: 'rolls'}],
    ['a dozen of rolls', {kind: 'count', count: 12, of: 'rolls'}],
    ['for 40', {kind: 'people', people: 40}],
    ['For about 25 people', {kind: 'people', people: 25}],
    ['16 servings', {kind: 'people', people: 16}],
    ['for everyone', {kind: 'people', people: 40}],
    ['2 times', {kind: 'times', times: '2'}],
    ['1 1/2 times', {kind: 'times', times: '3/2'}],
    ['2½ times', {kind: 'times', times: '5/2'}],
    ['twice', {kind: 'times', times: '2'}],
    ['double the receipt', {kind: 'times', times: '2'}],
    ['half the receipt', {kind: 'times', times: '1/2'}],
    ['2 batches', {kind: 'times', times: '2'}],
    ['1,5 times', {kind: 'times', times: '3/2'}],
    ['3 kg', {kind: 'weight', kilograms: 3}],
    ['1,5 kg', {kind: 'weight', kilograms: 1.5}],
    ['1.5 kg of dough', {kind: 'weight', kilograms: 1.5}],
    ['fill the floor', {kind: 'floor'}],
    ['Fill the oven.', {kind: 'floor'}],
    // Of the floor a baker has one, and so many stand on it: common practice, no source.
    ...[
      'the floor',
      'a floor',
      '1 floor',
      'one full floor',
      'a full oven',
      'an ovenful',
      'the whole of the floor',
      'den Herd voll',
      'eine Ofenfüllung',
      'den ganzen Ofen füllen',
    ].map((text): [string, object] => [text, {kind: 'floor'}]),
    ['half the floor', {kind: 'floor', share: '1/2'}],
    ['fill half the floor', {kind: 'floor', share: '1/2'}],
    ['half an oven', {kind: 'floor', share: '1/2'}],
    ['two thirds of the floor', {kind: 'floor', share: '2/3'}],
    ['halber Herd', {kind: 'floor', share: '1/2'}],
    ['zwei Drittel des Herds', {kind: 'floor', share: '2/3'}],
    ['2 floors', {kind: 'floor', share: '2'}],
    ['two ovenfuls', {kind: 'floor', share: '2'}],
    ['3 hearths', {kind: 'floor', share: '3'}],
    ['fill the floor twice', {kind: 'floor', share: '2'}],
    ['zwei Ofenfüllungen', {kind: 'floor', share: '2'}],
    // What is only called after the oven is counted.
    ['2 oven cakes', {kind: 'count', count: 2, of: 'oven cakes'}],
    ['3 Böden', {kind: 'count', count: 3, of: 'böden'}],
    // In words, as they are counted: common practice, no source.
    ['one and a half times', {kind: 'times', times: '3/2'}],
    ['half as much again', {kind: 'times', times: '3/2'}],
    ['half of the receipt', {kind: 'times', times: '1/2'}],
    ['two and a half dozen loaves', {kind: 'count', count: 30, of: 'loaves'}],
    ['a dozen and a half loaves', {kind: 'count', count: 18, of: 'loaves'}],
    ['2 score loaves', {kind: 'count', count: 40, of: 'loaves'}],
    ['three score and ten rolls', {kind: 'count', count: 70, of: 'rolls'}],
    ['a hundred rolls', {kind: 'count', count: 100, of: 'rolls'}],
    ['a hundred and twenty-four rolls', {kind: 'count', count: 124, of: 'rolls'}],
    ['two hundred rolls', {kind: 'count', count: 200, of: 'rolls'}],
    ['one hundred and twenty rolls', {kind: 'count', count: 120, of: 'rolls'}],
    ['twenty four rolls', {kind: 'count', count: 24, of: 'rolls'}],
    ['twenty-four rolls', {kind: 'count', count: 24, of: 'rolls'}],
    ['four and twenty rolls', {kind: 'count', count: 24, of: 'rolls'}],
    ['one and a half kg', {kind: 'weight', kilograms: 1.5}],
    ['about 12 loaves', {kind: 'count', count: 12, of: 'loaves'}],
    // German
    ['6 Pfund', {kind: 'weight', kilograms: 3}],
    ['1,5 kg Teig', {kind: 'weight', kilograms: 1.5}],
    ['zwei Laibe', {kind: 'count', count: 2, of: 'laibe'}],
    ['fünfundzwanzig Brötchen', {kind: 'count', count: 25, of: 'brötchen'}],
    ['sieben Brote', {kind: 'count', count: 7, of: 'brote'}],
    ['ein halbes Dutzend Brote', {kind: 'count', count: 6, of: 'brote'}],
    ['für 40 Personen', {kind: 'people', people: 40}],
    ['für alle', {kind: 'people', people: 40}],
    ['anderthalb Rezepte', {kind: 'times', times: '3/2'}],
    ['das doppelte Rezept', {kind: 'times', times: '2'}],
    ['2-mal', {kind: 'times', times: '2'}],
    // Of what is baked, not of what it is made of.
    ['3 kg of bread', {kind: 'weight', kilograms: 3, baked: 'bread'}],
    ['3 kg Brot', {kind: 'weight', kilograms: 3, baked: 'brot'}],
    ['8 loaves of 900 g', {kind: 'count', count: 8, of: 'loaves', each: {kilograms: 0.9, baked: true}}],
    ['8 loaves of 900 g dough', {kind: 'count', count: 8, of: 'loaves', each: {kilograms: 0.9, baked: false}}],
    ['2 x 400 g loaves', {kind: 'count', count: 2, of: 'loaves', each: {kilograms: 0.4, baked: true}}],
    ['the whole receipt', {kind: 'times', times: '1'}],
    ['as written', {kind: 'times', times: '1'}],
    ['wie im Rezept', {kind: 'times', times: '1'}],
    ['2 1/2', {kind: 'times', times: '5/2'}],
    ['a baker’s dozen rolls', {kind: 'count', count: 13, of: 'rolls'}],
    // In the receipt's own vessels.
    ['24 rolls on 2 sheets', {kind: 'count', count: 24, of: 'rolls', named: 'sheets', among: {count: 2, word: 3}}],
    ['24 Brötchen auf 2 Blechen', {kind: 'count', count: 24, of: 'brötchen', named: 'blechen', among: {count: 2, word: 3}}],
    ['2 Brote zu 1 kg', {kind: 'count', count: 2, of: 'brote', each: {kilograms: 1, baked: true}}],
  ]
  for (const [text, value] of cases) it(`“${text}”`, () => expect(asked(text)).toEqual(value))
  it('a pound is 0.45359237 kg (NIST Handbook 44 App. C)', () => {
    const read = readAsked('10 lb', 40)
    expect(read.ok && read.value.kind === 'weight' && read.value.kilograms).toBeCloseTo(4.5359237, 5)
  })
  it('“twenty four-pound loaves” are twenty, and a pound is 0.45359237 kg', () => {
    const read = readAsked('twenty four-pound loaves', 40)
    const counted = read.ok && read.value.kind === 'count' ? read.value : null
    expect(counted).toMatchObject({count: 20, of: 'loaves'})
    expect(counted?.each?.kilograms).toBeCloseTo(1.81437, 4)
  })
  it('a width in a word is as one in figures; an inch is 2.54 cm', () => {
    for (const text of ['2 ten-inch pies', 'two 10-inch pies', '2 10″ pies', '2 pies, 10 inches across']) {
      const read = readAsked(text, 40)
      const counted = read.ok && read.value.kind === 'count' ? read.value : null
      expect(counted, text).toMatchObject({count: 2, of: 'pies'})
      expect(counted?.across?.metres, text).toBeCloseTo(0.254, 4)
    }
  })
  it('what cannot be read to its end is an error at its word, and never cut', () => {
    const faults: ReadonlyArray<readonly [string, string, number?]> = [
      ['twenty pies and a half', '“half” in “twenty pies and a half” is not read', 4],
      ['12 half loaves', '“half” in “12 half loaves” is not read', 1],
      ['8 loaves and six rolls', '“six” in “8 loaves and six rolls” is not read', 3],
      ['8 to 10 loaves', '“8 to 10 loaves” is a range'],
      ['6 lb rolls', '“6 lb rolls” may be a weight or a number'],
      ['6 inch pies', '“6 inch pies” says a size and no number'],
      // Eighteen of something, and not eighteen times the receipt.
      ['1½ dozen', '“1½ dozen” does not say of what'],
      ['fill the floor in 3 tins', '“fill the floor in 3 tins” is to fill the floor, and says in how many vessels', 4],
      ['over 12 loaves', '“over 12 loaves” is not an amount'],
      ['1 to 2 floors', '“1 to 2 floors” is a range'],
      ['0 floors', '“0 floors” is nothing to bake'],
    ]
    for (const [text, reason, word] of faults) {
      const read = readAsked(text, 40)
      expect(read, text).toMatchObject({ok: false, reason, ...(word === undefined ? {} : {word})})
    }
    expect(readAsked('half a pie', 40)).toMatchObject({ok: false, suggest: 'write “1 pie”'})
    expect(readAsked('6 lb rolls', 40)).toMatchObject({suggest: 'write “6 lb of rolls” or “6 rolls of 1 lb”'})
  })
  it('what it cannot be is said, with what to write', () => {
    for (const text of [
      '12',
      '-3 loaves',
      '0 loaves',
      '2.5 loaves',
      'for 3.5',
      'plenty',
      '1/0 loaves',
      'for',
      'for loaves',
      '999999 loaves',
      'x'.repeat(200),
    ]) {
      const read = readAsked(text, 40)
      expect(read.ok, text).toBe(false)
      if (!read.ok) expect(read.suggest.length).toBeGreaterThan(10)
    }
  })
  it.each(['2.5', '2.5 loaves', 'for 2 1/2', 'for 3.5', '12', '8 to 10 loaves', 'half a pie'])(
    'what is offered instead of “%s” can itself be read',
    (text) => {
      const read = readAsked(text, 40)
      const offered = read.ok ? [] : [...read.suggest.matchAll(/“([^”]*)”/g)].map(([, one]) => one!)
      expect(offered.length).toBeGreaterThan(0)
      for (const one of offered) expect(readAsked(one, 40), one).toMatchObject({ok: true})
    },
  )
  it.each(['for half the people', 'half the people'])('“%s” is told how many those are', (text) =>
    expect(readAsked(text, 21)).toMatchObject({ok: false, suggest: 'write how many that is: “for 11”'}),
  )
  it('people that come in parts are rounded up', () =>
    expect(readAsked('for 2 1/2', 40)).toMatchObject({suggest: 'write “for 3”'}))
  it('never throws, and never gives nothing or less', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.stringMatching(/^[0-9a-z ./½-]{0,20}$/)), (text) => {
        const read = readAsked(text, 40)
        if (!read.ok) return
        const v = read.value
        const size =
          v.kind === 'people'
            ? v.people
            : v.kind === 'count'
              ? v.count
              : v.kind === 'times'
                ? v.times.valueOf()
                : v.kind === 'weight'
                  ? v.kilograms
                  : 1
        expect(size).toBeGreaterThan(0)
      }),
      {numRuns: 500},
    )
  })
})

// What a pair, a few or a share of a unit says: common practice, no source.
describe('an amount that says less than a number, or in no measure that is read', () => {
  it.each([
    '6 half-pound loaves',
    '24 half-pint cups',
    '2 half-sheet trays',
    'a few pies',
    'ein paar Tassen',
    '6 quarts of batter',
    'a stone of dough',
  ])('is refused with what to write: %s', (text) => {
    const read = readAsked(text, 12)
    expect(read).toMatchObject({ok: false})
    expect((read as {suggest: string}).suggest).toMatch(/^write /)
  })
  it.each([
    ['a pair of pies', 2],
    ['half a dozen rolls', 6],
    ['24 cups', 24],
    ['2 plates', 2],
    ['6 coffee cups', 6],
  ])('is none of these: %s', (text, count) => {
    expect(readAsked(text, 12)).toMatchObject({ok: true, value: {kind: 'count', count}})
  })
})

/** Sticks laid in to season for the next firing: common practice, no source. */
describe('wood to dry', () => {
  const wood = [
    ...translate(
      '# To season wood for the next fire\n\nLay eighteen billets of split ash on the floor when the oven is slack, and leave them overnight, the door ajar.\n\nMakes 18 billets\n',
      {file: 'receipts/wood.md'},
    ).receipts,
  ]
  const made = (amount: string | null) =>
    makeDishes({
      day: {
        people: 30,
        items: [{file: 'receipts/wood.md', title: 'Wood', amount, wantedBy: null, line: 9, column: 3}],
        spare: [],
      },
      receipts: wood,
      oven: {floor: {shape: 'round', diameter: 1.07}, mouth: {width: 0.46, height: 0.28}, vaultHeight: 0.41},
    })

  it('is as much as its receipt says where the day states no amount, whoever comes', () => {
    const {dishes, messages} = made(null)
    expect(messages.filter(({severity}) => severity === 'error')).toEqual([])
    expect(dishes.map(({count}) => count)).toEqual([1])
  })

  it('is counted in billets', () => {
    const {dishes, messages} = made('36 billets')
    expect(messages).toEqual([])
    expect(dishes.reduce((sum, {count}) => sum + count, 0)).toBe(2)
  })
})

describe('an amount that nobody bakes', () => {
  const told = (text: string, amount: string) => oneLine(text, amount).messages.filter(({rule}) => rule === 'scale-amount')
  const loaves = loavesIn('free-standing loaf 22 cm')
  it.each(['4 g', '3 g of bread', '8 loaves of 4 g'])('“%s” is refused as a slip of the unit', (amount) => {
    expect(told(loaves, amount)).toMatchObject([{severity: 'error', line: 5}])
    expect(told(loaves, amount)[0]!.reason).toContain(`“${amount}” is next to nothing`)
    expect(oneLine(loaves, amount).dishes).toEqual([])
  })
  it.each(['400 g', '2 loaves of 100 g', '3 kg'])('“%s” is not', (amount) => expect(told(loaves, amount)).toEqual([]))
  it('nor is one said in two ways: “2 times, 3 kg”', () =>
    expect(readAsked('2 times, 3 kg', 40)).toMatchObject({ok: false, suggest: 'write “2 times” or “3 kg”'}))
})
