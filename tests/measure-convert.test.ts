import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {items, lookUpItem, lookUpMeasure, lookUpSource, measures} from '../src/lexicon/index.js'
import {mixedNumber, readExact, timesExact} from '../src/measure/amount.js'
import {convert, type Given} from '../src/measure/convert.js'
import {asLargeEggs, eggGrams, LARGE_EGG, largeEggsFor} from '../src/measure/eggs.js'
import {asBakingSoda, asDryYeast, molarMass, sourItems} from '../src/measure/leaven.js'
import {exactly} from '../src/measure/range.js'
import {kitchenRange, kitchenText, usMeasure} from '../src/measure/round.js'
import {today} from '../src/measure/today.js'

const ask = (amount: string, measure: string, item: string, more: Partial<Given> = {}): ReturnType<typeof convert> => {
  const value = readExact(amount)?.valueOf() ?? Number.NaN
  return convert({amount: {low: value, high: value}, exact: amount, measure, item, year: null, place: null, hedges: [], ...more})
}

describe('conversion', () => {
  it('keeps a pound exact', () => {
    expect(ask('5/2', 'pound', 'flour').grams).toEqual({low: 1133.98, likely: 1133.98, high: 1133.98})
    expect(ask('1', 'pound', 'flour').notes).toEqual([])
  })

  it('multiplies ranges end by end', () => {
    const got = ask('2', 'cup', 'flour', {year: 2010, place: 'us'})
    const flour = items.find((item) => item.id === 'flour')?.density
    expect(got.grams?.low).toBeCloseTo(2 * 236.588 * (flour?.low ?? 0), 1)
    expect(got.grams?.high).toBeCloseTo(2 * 236.588 * (flour?.high ?? 0), 1)
  })

  it('takes both ends of a range in the text', () => {
    const got = convert({
      amount: {low: 6, high: 8},
      exact: '6',
      exactHigh: '8',
      measure: 'ounce',
      item: 'butter',
      year: 1829,
      place: 'Boston',
      hedges: [],
    })
    expect(got.grams).toEqual({low: 170.097, likely: 198.447, high: 226.796})
  })

  it('leaves an indefinite amount as it stands', () => {
    expect(
      convert({amount: null, exact: null, measure: 'indefinite', item: 'salt', year: null, place: null, hedges: []}),
    ).toEqual({
      grams: null,
      millilitres: null,
      sources: [],
      why: [],
      notes: [],
    })
  })

  it('says what it does not know instead of guessing', () => {
    expect(ask('1', 'cup', 'wug', {year: 2010, place: 'us'})).toMatchObject({
      grams: null,
      notes: [expect.stringMatching(/wug: not in the lexicon/)],
    })
    expect(ask('1', 'wug', 'flour')).toMatchObject({
      grams: null,
      millilitres: null,
      notes: [expect.stringMatching(/wug: a measure not in the lexicon/)],
    })
    expect(ask('1', 'pennyworth', 'saffron')).toMatchObject({grams: null, notes: [expect.stringMatching(/price/)]})
  })

  it('shows the chain from words to result, each figure with its source', () => {
    const got = ask('3', 'teacup', 'sugar', {year: 1840, place: 'Boston', measureText: 'tea-cupfuls'})
    const steps = got.why.map((each) => each.step)
    expect(steps[0]).toBe('3 teacup of sugar, written “tea-cupfuls”')
    expect(steps.some((step) => /1 teacup is .* mL.*year 1840, place Boston/.test(step))).toBe(true)
    expect(steps.some((step) => /sugar weighs .* g\/mL/.test(step))).toBe(true)
    expect(steps.at(-1)).toMatch(/^so .* g .*mL/)
    // A table of 1837 for loosely filled sugar; today’s density comes from USDA SR28.
    expect(got.sources).toContain('pg-9624')
    expect(ask('3', 'cup', 'sugar', {year: 2010, place: 'Boston'}).sources).toContain('usda-sr28')
  })

  it('weighs pieces: lemons, slices, blades, sticks of butter', () => {
    expect(ask('2', 'count', 'lemon').grams).toMatchObject({low: 168, high: 280})
    expect(ask('3', 'blade', 'mace').grams).not.toBeNull()
    // USDA SR28: a stick of butter is 113 g, a quarter of a pound.
    expect(ask('1', 'stick', 'butter', {year: 2010, place: 'us'}).grams?.likely).toBeCloseTo(113.4, 1)
  })

  it('reads a quartern of flour as 3 1/2 lb, and of milk as a gill', () => {
    expect(ask('1', 'quartern', 'flour', {year: 1861, place: 'London'}).grams?.likely).toBeCloseTo(1588, 0)
    expect(ask('1', 'quartern', 'milk', {year: 1861, place: 'London'}).millilitres?.likely).toBeCloseTo(142.065, 2)
  })

  it('widens a spoonful of a dry thing before level measures, but not of a liquid', () => {
    const old = ask('1', 'tablespoon', 'flour', {year: 1829, place: 'us'})
    expect(old.millilitres?.high ?? 0).toBeGreaterThan(25)
    const milk = ask('1', 'tablespoon', 'milk', {year: 1829, place: 'us'})
    expect(milk.millilitres?.high ?? 0).toBeLessThan(18)
  })

  it('lets a hedge widen the range, and heaps only what can be heaped', () => {
    expect(ask('1', 'pound', 'sugar', {hedges: ['about']}).grams).toEqual({low: 408.233, likely: 453.592, high: 498.952})
    expect(ask('1', 'pound', 'sugar', {hedges: ['heaped']}).grams?.high).toBeCloseTo(453.592, 2)
    const level = ask('1', 'cup', 'flour', {year: 2010, place: 'us', hedges: ['level']})
    expect(ask('1', 'cup', 'flour', {year: 2010, place: 'us', hedges: ['heaped']}).grams?.likely ?? 0).toBeGreaterThan(
      (level.grams?.likely ?? 0) * 1.5,
    )
  })

  it('names what replaces a thing no longer sold', () => {
    expect(ask('1', 'ounce', 'isinglass').notes.join(' ')).toMatch(/gelatine/)
    expect(ask('1', 'pound', 'loaf sugar').notes.join(' ')).toMatch(/granulated or caster sugar/)
    expect(ask('1', 'gill', 'sack', {year: 1750, place: 'England'}).notes.join(' ')).toMatch(/sherry/)
  })

  it('never throws, keeps low ≤ likely ≤ high, and names only sources that exist, for any measure and item', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...measures.map((row) => row.id), 'no such measure'),
        fc.constantFrom(...items.map((row) => row.id), 'no such item'),
        fc.integer({min: 1, max: 400}),
        fc.integer({min: 1, max: 16}),
        fc.option(fc.integer({min: 1600, max: 2030})),
        fc.option(fc.constantFrom('us', 'England', 'Australia', 'France', 'nowhere')),
        fc.array(fc.constantFrom('about', 'heaped', 'scant', 'good', 'level', 'wug'), {maxLength: 2}),
        (measure, item, n, d, year, place, hedges) => {
          const got = convert({amount: {low: n / d, high: n / d}, exact: `${n}/${d}`, measure, item, year, place, hedges})
          for (const range of [got.grams, got.millilitres]) {
            if (range === null) continue
            expect(range.low).toBeGreaterThan(0)
            expect(range.low).toBeLessThanOrEqual(range.likely)
            expect(range.likely).toBeLessThanOrEqual(range.high)
          }
          expect(got.sources.filter((id) => lookUpSource(id) === null)).toEqual([])
        },
      ),
      {numRuns: 500},
    )
  })

  it('is linear in the amount', () => {
    fc.assert(
      fc.property(fc.integer({min: 1, max: 50}), fc.integer({min: 2, max: 9}), (n, by) => {
        const once = ask(String(n), 'cup', 'sugar', {year: 2010, place: 'us'}).grams
        const more = ask(String(n * by), 'cup', 'sugar', {year: 2010, place: 'us'}).grams
        expect((more?.likely ?? 0) / (once?.likely ?? 1)).toBeCloseTo(by, 3)
      }),
      {numRuns: 50},
    )
  })
})

describe('leavens', () => {
  // IUPAC abridged standard atomic weights 2021: H 1.008, C 12.011, N 14.007, O 15.999, Na 22.990, K 39.098, S 32.06, Al 26.982.
  // Molar masses below are the sums, as in the CRC Handbook to 0.01 g/mol: tolerance 0.02.
  it.each([
    ['NaHCO3', 84.007],
    ['K2CO3', 138.205],
    ['KHCO3', 100.115],
    ['Na2CO3', 105.988],
    ['CO2', 44.009],
    ['NH4HCO3', 79.055],
    ['(NH4)2CO3', 96.086],
    ['KAl(SO4)2', 258.19],
    ['KHC4H4O6', 188.177],
  ])('%s weighs %d g/mol', (formula, want) => expect(Math.abs(molarMass(formula) - want)).toBeLessThan(0.02))

  it('refuses an element it has no weight for', () => expect(() => molarMass('XeF2')).toThrow(/Xe/))

  it('one part of pure pearl-ash gives the gas of 0.61 of baking soda, and of old pearl-ash less', () => {
    const got = asBakingSoda('pearl-ash', exactly(10), 1829)
    expect(got?.factor.high).toBeCloseTo(84.007 / 138.205, 3)
    expect(got?.soda.likely).toBeGreaterThan(5)
    expect(got?.soda.likely).toBeLessThan(6.1)
    expect(got?.acidFactor).toBe(2)
  })

  it('saleratus is potassium bicarbonate early, baking soda late, and either between', () => {
    expect(asBakingSoda('saleratus', exactly(10), 1840)?.factor.likely).toBeCloseTo(84.007 / 100.115, 3)
    expect(asBakingSoda('saleratus', exactly(10), 1880)?.factor.likely).toBe(1)
    const between = asBakingSoda('saleratus', exactly(10), null)
    expect(between?.factor.low).toBeLessThan(0.85)
    expect(between?.factor.high).toBe(1)
  })

  it('says in the notes how much soda or dry yeast does the work', () => {
    expect(ask('1', 'teaspoon', 'pearl-ash', {year: 1829, place: 'Boston'}).notes.join(' ')).toMatch(/g.* of baking soda/)
    expect(ask('1', 'gill', 'emptins', {year: 1796, place: 'Hartford'}).notes.join(' ')).toMatch(/dry yeast/)
  })

  it('says what sour thing the soda works on, or that there is none', () => {
    const note = (sour?: readonly string[]): string =>
      ask('1', 'teaspoon', 'saleratus', {year: 1840, place: 'Boston', sour}).notes.join(' ')
    expect(note(sourItems(['flour', 'molasses', 'sour milk', 'molasses']))).toMatch(/with the molasses and sour milk to work on/)
    expect(note(sourItems(['flour', 'milk']))).toMatch(/nothing sour stands in this receipt/)
    expect(note()).toMatch(/with acid \(sour milk/)
  })

  it('takes yeast by the gill as liquid and by the ounce, late, as pressed', () => {
    // Common practice: pressed to dry yeast as 3 to 1, or 2.5 to 1.
    const pressed = ask('1', 'ounce', 'yeast', {year: 1890, place: 'London'}).notes.join(' ')
    expect(pressed).toMatch(/1\d?(\.\d)? g .*dry yeast|9(\.\d)? g .*dry yeast/)
    // A cube of 42 g is pressed yeast: 14 to 21 g of dry.
    expect(ask('1', 'cube', 'yeast', {year: null, place: null}).notes.join(' ')).toMatch(/ 1[3-9](\.\d)? g .*dry yeast/)
    expect(today(lookUpItem('yeast')!, exactly(30), null, lookUpMeasure('gram')!, 1890)?.why).toMatch(/pressed/)
    expect(asDryYeast(lookUpItem('yeast')!, null, exactly(118))?.dry.likely).toBeCloseTo(4.7, 1)
    expect(asDryYeast(lookUpItem('flour')!, exactly(30), null)).toBeNull()
  })
})

describe('eggs', () => {
  // Project Gutenberg 9624 (1837): ten eggs weigh a pound. USDA SR28 item 01123: a large egg is 50 g out of its shell.
  it('ten eggs of 1837 are about eight large eggs today', () => {
    expect(largeEggsFor(10, 1837)).toBe(8)
    const range = asLargeEggs(eggGrams(10, 1837))
    expect(range.low).toBeLessThan(8)
    expect(range.high).toBeGreaterThan(8)
    expect(ask('10', 'count', 'egg', {year: 1837, place: 'Boston'}).notes.join(' ')).toMatch(/about 8 large eggs today/)
  })
  it('eggs of a modern receipt are eggs', () => {
    expect(largeEggsFor(3, 2010)).toBe(3)
    expect(eggGrams(1, null)).toEqual(LARGE_EGG)
    expect(ask('3', 'count', 'egg', {year: 2010}).notes).toEqual([])
    expect(ask('3', 'count', 'egg', {year: 2010, hedges: ['large']}).grams).toEqual(ask('3', 'count', 'egg', {year: 2010}).grams)
    expect(ask('3', 'count', 'onion', {hedges: ['large']}).grams?.likely ?? 0).toBeGreaterThan(
      ask('3', 'count', 'onion').grams?.likely ?? 0,
    )
  })
  // USDA AMS 56: a dozen large eggs weigh at least 24 oz, less than 27, in the shell; 88 % of an egg is not shell.
  it('a large egg of the US standard lies in the range', () => {
    const inShell = [(24 * 28.3495) / 12, (27 * 28.3495) / 12] as const
    expect(inShell[0] * 0.88).toBeGreaterThanOrEqual(LARGE_EGG.low)
    expect(inShell[1] * 0.88).toBeLessThanOrEqual(LARGE_EGG.high + 0.2)
  })
})

describe('exact amounts', () => {
  it('are read and written as fractions', () => {
    expect(mixedNumber('5/2')).toBe('2 1/2')
    expect(mixedNumber('5/2', {glyphs: true})).toBe('2½')
    expect(mixedNumber('1/3', {glyphs: true})).toBe('⅓')
    expect(mixedNumber('3')).toBe('3')
    expect(mixedNumber('some')).toBe('some')
    expect(timesExact('5/2', '4/5')).toBe('2')
    expect(timesExact('x', 2)).toBeNull()
    expect(readExact('1/0')).toBeNull()
  })
})

describe('rounding', () => {
  it('shows no more digits than the range supports', () => {
    fc.assert(
      fc.property(fc.double({min: 0.5, max: 20000, noNaN: true}), fc.double({min: 0, max: 0.6, noNaN: true}), (likely, width) => {
        const range = {low: likely * (1 - width), likely, high: likely * (1 + width)}
        const got = kitchenRange(range)
        expect(got.low).toBeLessThanOrEqual(got.likely)
        expect(got.likely).toBeLessThanOrEqual(got.high)
        if (range.low !== range.high) {
          expect(got.low).toBeLessThanOrEqual(range.low + 1e-6)
          expect(got.high).toBeGreaterThanOrEqual(range.high - 1e-6)
        }
        // Significant digits: a range of ±5 % or more is told in at most three figures.
        const digits = String(got.likely).replace('.', '').replace(/^0+/, '').replace(/0+$/, '')
        if (width >= 0.05) expect(digits.length).toBeLessThanOrEqual(3)
        if (width >= 0.25) expect(digits.length).toBeLessThanOrEqual(2)
      }),
      {numRuns: 500},
    )
  })
  it('never rounds something to nothing', () =>
    expect(kitchenRange({low: 0.01, likely: 0.02, high: 0.03}).likely).toBeGreaterThan(0))
  it('prints what a kitchen can weigh', () => {
    expect(kitchenText(exactly(453.592), 'g')).toBe('454 g')
    expect(kitchenText(exactly(2267.96), 'g')).toBe('2.27 kg')
    expect(kitchenText({low: 99.4, likely: 124.9, high: 146.7}, 'g')).toBe('125 g (95–150)')
    expect(kitchenText({low: 99.4, likely: 124.9, high: 146.7}, 'g', {bounds: false})).toBe('125 g')
  })
  it('names the nearest US cup or spoon', () => {
    expect([0.6, 5, 15, 30, 60, 80, 118, 237, 355, 473, 1000, 0].map(usMeasure)).toEqual([
      '1/8 tsp',
      '1 tsp',
      '1 tbsp',
      '2 tbsp',
      '1/4 cup',
      '1/3 cup',
      '1/2 cup',
      '1 cup',
      '1 1/2 cups',
      '2 cups',
      '4 1/4 cups',
      '',
    ])
  })
})
