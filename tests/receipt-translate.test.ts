import {readdirSync, readFileSync, statSync} from 'node:fs'
import {join} from 'node:path'
import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {readHeat} from '../src/receipt/heat.js'
import {vfileMessage} from '../src/receipt/messages.js'
import {plainSection} from '../src/receipt/section.js'
import {readTimes} from '../src/receipt/times.js'
import {translate} from '../src/receipt/translate.js'
import type {Span, Translation} from '../src/receipt/types.js'
import {readYields} from '../src/receipt/yield-facts.js'

const receipt = `---
year: 1829
place: us
---
# Spiced cake

Take a pound of flour, half a pound of butter, six eggs, and a tea-cup of milk. Bake it in a *rather slow* oven an hour and a half, till a
straw comes out clean. Sufficient for 8 persons.
`

const spans = (t: Translation): Span[] =>
  t.receipts.flatMap((r) => [
    ...r.ingredients,
    ...r.oven,
    ...r.times,
    ...(r.signs ?? []),
    ...(r.serves === null ? [] : [r.serves]),
  ])

const holds = (source: string): void => {
  const t = translate(source, {file: 'a.md'})
  for (const span of spans(t)) {
    expect(span.start).toBeGreaterThanOrEqual(0)
    expect(span.end).toBeLessThanOrEqual(source.length)
    expect(source.slice(span.start, span.end)).toBe(span.text)
  }
  for (const r of t.receipts) {
    for (const time of r.times) expect(time.minutes.low).toBeLessThanOrEqual(time.minutes.high)
    for (const heat of r.oven) expect(heat.celsius.low).toBeLessThanOrEqual(heat.celsius.high)
    for (const one of r.ingredients) {
      if (one.amount !== null) expect(one.amount.low).toBeLessThanOrEqual(one.amount.high)
      for (const range of [one.grams, one.millilitres]) {
        if (range === null) continue
        expect(range.low).toBeLessThanOrEqual(range.likely)
        expect(range.likely).toBeLessThanOrEqual(range.high)
      }
    }
  }
  for (const message of t.messages) {
    expect(message.line).toBeGreaterThanOrEqual(1)
    expect(message.column).toBeGreaterThanOrEqual(1)
  }
  expect(JSON.parse(JSON.stringify(t)).format).toBe(1)
}

describe('translate', () => {
  const t = translate(receipt, {file: 'cake.md'})
  const one = t.receipts[0]!

  it('keeps the contract of design §3', () => {
    expect(t.format).toBe(1)
    expect(t.receipts).toHaveLength(1)
    expect(one).toMatchObject({file: 'cake.md', title: 'Spiced cake', line: 5, year: 1829, place: 'us'})
    const flour = one.ingredients.find((i) => i.item.includes('flour'))!
    expect(flour.amount).toEqual({low: 1, high: 1})
    expect(flour.measure).toBe('pound')
    // NIST Handbook 44, App. C: the pound is 453.59237 g exactly.
    expect(flour.grams!.likely).toBeCloseTo(453.59, 1)
    expect(flour.sources.length).toBeGreaterThan(0)
    expect(flour.why.length).toBeGreaterThan(0)
  })

  it('reads heat through emphasis, time, yield and the sign that it is done', () => {
    expect(one.oven.map((phrase) => phrase.text)).toEqual(['a *rather slow* oven'])
    expect(one.oven[0]!.band).toBe('slow')
    expect(one.times.map((time) => [time.minutes.low, time.of])).toEqual([[90, 'bake']])
    expect(one.serves).toMatchObject({low: 8, high: 8, of: 'persons'})
    expect(one.signs?.map((sign) => sign.id)).toEqual(['straw-clean'])
  })

  it('fills only what is left out, and says why', () => {
    const fields = one.inferred.map((field) => field.field)
    expect(fields).toContain('kind')
    expect(fields).not.toContain('oven')
    expect(fields).not.toContain('bake')
    expect(fields).not.toContain('serves')
    for (const field of one.inferred) expect(field.why.length).toBeGreaterThan(5)
    const bare = translate('# Gingerbread\n\nA pound of flour and half a pint of molasses.\n', {file: 'g.md'}).receipts[0]!
    expect(bare.kind).toBe('gingerbread')
    expect(bare.inferred.map((field) => field.field)).toEqual(expect.arrayContaining(['oven', 'bake', 'vessel', 'serves']))
  })

  it('front matter leaves nothing to fill', () => {
    const stated = translate(
      '---\nserves: 6\nvessel: square 9 x 9 x 2 in\noven: a quick oven\nbake: 40 min\n---\n# Gingerbread\n\nA pound of flour.\n',
      {file: 'g.md'},
    ).receipts[0]!
    expect(stated.inferred.map((field) => field.field)).toEqual(['kind'])
  })

  it('an old spelling in the title names the same kind of dish', () => {
    for (const title of ['Johny Cake, or Hoe Cake', 'Johnny-cake', 'Jonny Cake'])
      expect(translate(`# ${title}\n\nThree pints of Indian meal.\n`, {file: 'j.md'}).receipts[0]!.kind).toBe('corn bread')
  })

  // Common practice, no source: cup cake was measured by cups and baked in tins or small pans; a cupcake is one of a dozen in papers.
  it.each([
    ['Cup Cake', 'Bake in a tin in a moderate oven.', 'pound cake'],
    ['CUP-CAKE', 'Bake it in shallow tins, in a quick oven.', 'pound cake'],
    ['Mrs. Bell’s Cup Cake, without Eggs', 'Bake it.', 'pound cake'],
    ['Chocolate Cup Cake', 'Line a bun tin with twelve paper cases and bake 18 minutes at 180 °C.', 'muffins'],
    ['Vanilla Cup Cakes', 'Bake 18 minutes.', 'muffins'],
    ['Lemon Cupcakes', 'Bake 18 minutes.', 'muffins'],
    ['Cupcake', 'Bake 18 minutes.', 'muffins'],
    ['Cup Custards', 'Bake in a slow oven.', 'custard'],
    // Common practice, no source: what a title means though its last word is that of another kind.
    ['Banana Bread', 'Bake 50 minutes.', 'pound cake'],
    ['Sausage Rolls', 'Bake 25 minutes.', 'sausage rolls'],
    ['Shepherd’s Pie', 'Bake 40 minutes.', 'baked pasta'],
    ['Breakfast Cakes', 'Bake.', 'buns'],
    ['Walnut Brownies', 'Bake 25 minutes.', 'tray cakes'],
    ['Lasagne', 'Bake 40 minutes.', 'baked pasta'],
  ])('“%s” (%s) is of the kind %s', (title, text, kind) => {
    const made = translate(`# ${title}\n\nA cup of butter, a cup and a half of sugar, four cups of flour, five eggs. ${text}\n`, {
      file: 'a.md',
    })
    expect(made.receipts[0]!.kind).toBe(kind)
  })

  it('a vessel whose size the text states is of that size, whatever the kind of dish; its depth is ours where none is said', () => {
    const vessel = (text: string): readonly string[] | undefined => {
      const {receipts} = translate(`# Made Up\n\n- 200 g butter\n- 1 9-inch pie crust\n\n${text}\n`, {file: 'a.md'})
      const found = receipts[0]!.inferred.find(({field}) => field === 'vessel')
      return found === undefined ? undefined : [found.value, found.why]
    }
    const own = 'and no depth; its depth: common-practice'
    for (const [text, value, why] of [
      ['Bake in an 8-inch square pan.', 'square 8 x 8 x 2 in', `the receipt says “8-inch square pan” ${own}`],
      ['Layer in a 30 x 20 x 6 cm dish. Bake.', 'oblong 30 x 20 x 6 cm', 'the receipt says “30 x 20 x 6 cm dish”'],
      ['Grease a 9 x 13-inch pan.', 'oblong 9 x 13 x 2 in', `the receipt says “9 x 13-inch pan” ${own}`],
      ['Line a 2lb loaf tin (23 x 13 cm).', 'loaf 23 x 13 x 7.6 cm', `the receipt says “loaf tin (23 x 13 cm)” ${own}`],
      ['Line two 20cm/8in\nsandwich tins.', 'round 20 x 3.7 cm', `the receipt says “20cm/8in sandwich tins” ${own}`],
      ['Bake in a round tin, 24,5 cm across.', 'round 24.5 x 7.6 cm', `the receipt says “round tin, 24,5 cm across” ${own}`],
      ['Bake in a 30 x 20 cm dish, 6 cm deep.', 'oblong 30 x 20 x 6 cm', 'the receipt says “30 x 20 cm dish, 6 cm deep”'],
      ['Bake in a dish 30 x 20 cm and 6 cm deep.', 'oblong 30 x 20 x 6 cm', 'the receipt says “dish 30 x 20 cm and 6 cm deep”'],
      [
        'Bake in a round tin nine inches across by three deep.',
        'round 9 x 3 in',
        'the receipt says “round tin nine inches across by three deep”',
      ],
      ['Use an eight-inch cake tin.', 'round 8 x 3 in', `the receipt says “eight-inch cake tin” ${own}`],
      // Whose depth it is: the row's of its kind (from memory).
      [
        'In einer Tarteform (28 cm) backen.',
        'round 28 x 3 cm',
        'the receipt says “Tarteform (28 cm)” and no depth; its depth: memory',
      ],
      ['Take a tin, nine inches square.', 'square 9 x 9 x 2 in', `the receipt says “tin, nine inches square” ${own}`],
      ['In einer Springform (26 cm, 7 cm hoch) backen.', 'round 26 x 7 cm', 'the receipt says “Springform (26 cm, 7 cm hoch)”'],
      // Common practice, no source.
      ['In einer 26er Springform backen.', 'round 26 x 6.4 cm', `the receipt says “26er Springform” ${own}`],
      ['In einer 24er-Springform backen.', 'round 24 x 6.4 cm', `the receipt says “24er-Springform” ${own}`],
    ] as const)
      expect(vessel(text), text).toEqual([value, why])
    expect(vessel('Roll 1/2 inch thick and cut 3-inch rounds on a sheet.')).toBeUndefined()
  })
  it('a word that is no unit in the size of a vessel is named, and no size is read', () => {
    const told = (text: string): string[] =>
      translate(`# Made Up\n\n- 200 g butter\n\n${text}\n`, {file: 'a.md'}).messages.flatMap(({rule, reason}) =>
        rule === 'vessel-unknown' ? [reason] : [],
      )
    const said = (word: string, words: string): string[] => [
      `“${word}” in “${words}” is no unit of length: the size of the vessel is not read`,
    ]
    expect(told('Bake in a tin 26 cm x 7 zonks for an hour.')).toEqual(said('zonks', 'tin 26 cm x 7 zonks'))
    expect(told('Bake in a tin 26 zonks x 7 cm for an hour.')).toEqual(said('zonks', 'tin 26 zonks x 7 cm'))
    expect(told('Bake in a 26 zonk tin for an hour.')).toEqual(said('zonk', '26 zonk tin'))
    for (const text of [
      'Bake in a 12 hole tin.',
      'Bake in a 2 quart dish.',
      'Bake in 2 buttered tins.',
      'Bake in a 23 cm springform tin.',
      'Bake in a tin 26 cm across and set it on the floor.',
    ])
      expect(told(text), text).toEqual([])
  })
  it('what has a shape of its own is as wide as the text says', () => {
    const vessel = (title: string, text: string): string | undefined =>
      translate(`# ${title}\n\n- 1 kg flour\n- 1 kg mutton\n\n${text}\n`, {file: 'a.md'}).receipts[0]!.inferred.find(
        ({field}) => field === 'vessel',
      )?.value
    expect(vessel('Mutton pies', 'Raise the paste into six small pies, six inches across. Bake.')).toBe('round 6 x 3 in')
    expect(vessel('Household bread', 'Make two loaves about eight inches across. Bake.')).toBe('free-standing loaf 8 in')
    expect(vessel('Household bread', 'Cut the loaf 2 inches across the top. Bake.')).toBe('free-standing loaf 24 cm')
  })
  it('what is baked by the sheetful is dropped upon a flat tin', () => {
    const {receipts} = translate('# Breakfast Cakes\n\nA quart of flour, a gill of yeast. Drop it upon a tin and bake.\n', {
      file: 'a.md',
    })
    const found = receipts[0]!.inferred.find(({field}) => field === 'vessel')
    expect(found?.value).toBe('sheet 16 x 12 in')
    expect(found?.why).toMatch(/says “tin” and no size; usual for buns/)
  })

  it.each([
    // A loaf's tin is a loaf tin, a quartern loaf large, and the dish of a roast holds it.
    ['Household bread', '1 kg flour', 'Put it in tins.', 'loaf 9 x 5 x 3 in'],
    ['Household bread', '1 kg flour', 'Make it up in quartern loaves.', 'free-standing loaf 30 cm'],
    ['Seed cake', '1 kg flour', 'Put it in a tin.', 'round 8 in x 3 in'],
    ['Roast leg of mutton', '4 kg mutton', 'Set it in a dish.', 'oblong 14 x 10 x 3 in'],
    // A long loaf tin is no wider than the usual one.
    ['Stuten', '500 g Mehl', 'In eine Kastenform (30 cm) geben.', 'loaf 30 x 12.7 x 7.6 cm'],
    ['Apfelkuchen', '500 g Mehl', 'Auf dem Blech ausrollen.', 'sheet 40 x 30 cm'],
    ['Reisauflauf', '200 g Reis', 'In eine Auflaufform füllen.', 'oblong 30 x 20 x 6 cm'],
  ])('%s of %s: “%s” is %s', (title, item, text, vessel) => {
    const {inferred} = translate(`# ${title}\n\n- ${item}\n\n${text} Bake 40 minutes.\n`, {file: 'a.md'}).receipts[0]!
    expect(inferred.find(({field}) => field === 'vessel')?.value).toBe(vessel)
  })
  // A yield that names the size of what is made: common practice, no source.
  it.each([
    ['Makes one 9-inch cake.', 1, 'round 9 x 3 in'],
    ['Makes 1 (9-inch) pie.', 1, 'round 9 x 3 in'],
    ['Makes one 8-inch square cake.', 1, 'square 8 x 8 x 3 in'],
    ['Makes a 9x13-inch cake.', 1, 'oblong 9 x 13 x 3 in'],
    ['Makes two 9 x 5 inch loaves.', 2, 'loaf 9 x 5 x 3 in'],
    ['Yield: 1 (9x5-inch) loaf', 1, 'loaf 9 x 5 x 3 in'],
    ['For a 23 cm round tin.', 1, 'round 23 x 7.6 cm'],
    ['Für eine 26-cm-Springform.', 1, 'round 26 x 6.4 cm'],
    ['Für eine Springform von 26 cm Durchmesser.', 1, 'round 26 x 6.4 cm'],
    ['Für eine Springform Ø 26 cm', 1, 'round 26 x 6.4 cm'],
    ['Für 2 Kastenformen von 30 cm.', 2, 'loaf 30 x 12.7 x 7.6 cm'],
    ['Ergibt einen Kuchen von 26 cm Durchmesser.', 1, 'round 26 x 7.6 cm'],
    ['Ergibt eine Torte (26 cm Durchmesser).', 1, 'round 26 x 7.6 cm'],
  ])('“%s” is %d of %s', (made, count, vessel) => {
    const {inferred, serves} = translate(
      `# Plain cake\n\n${made}\n\n- 250 g flour\n- 200 g butter\n\nMix and bake at 180 °C for 40 minutes.\n`,
      {file: 'a.md'},
    ).receipts[0]!
    expect(inferred.find(({field}) => field === 'vessel')?.value).toBe(vessel)
    expect(serves).toMatchObject({low: count, high: count})
  })

  it('is baked in the dish, not in what it was boiled in', () => {
    const {receipts} = translate('# Rice Pudding\n\nBoil a pint of milk in a stewpan. Line the dish and bake.\n', {file: 'a.md'})
    expect(receipts[0]!.inferred.find(({field}) => field === 'vessel')?.why).toMatch(/“dish”/)
  })
  it('what an ingredient is measured in is no vessel to bake in, nor is the cup of a cup cake', () => {
    const vessel = (text: string): string | undefined =>
      translate(text, {file: 'a.md'}).receipts[0]!.inferred.find(({field}) => field === 'vessel')?.why
    expect(vessel('# Plain Cake\n\n- 1 cup butter\n- 2 cups sugar\n\nBake 40 minutes.\n')).toMatch(/names no vessel/)
    expect(vessel('# Cup Cake\n\nA tea cup of butter, two tea cups of flour. Bake.\n')).toMatch(/names no vessel/)
    expect(vessel('# Cup Cake\n\nA tea cup of butter, two of flour. Bake it in tins.\n')).toMatch(/“tins”/)
    expect(vessel('# Custards in Cups\n\nA quart of milk, six eggs. Bake.\n')).toMatch(/“Cups”/)
    expect(vessel('# Custards\n\nA cup of milk, two eggs. Fill your cups and bake.\n')).toMatch(/“cups”/)
  })

  it('carries the other way of an ingredient as its note', () => {
    const one = translate('# Focaccia\n\n- 5 g dried yeast (or 15 g fresh yeast)\n- 500 g flour\n', {file: 'f.md'}).receipts[0]!
    expect(one.ingredients.map((i) => i.text)).toEqual(['5 g dried yeast', '500 g flour'])
    expect(one.ingredients[0]!.notes).toContain('or 15 g fresh yeast')
  })

  it('sends no user to a source file', () => {
    const {messages} = translate('# Stew\n\n- 2 lb zedoarine\n- 1 oz pearl-ash\n', {file: 's.md'})
    expect(messages.length).toBeGreaterThan(0)
    expect(JSON.stringify(messages)).not.toMatch(/src\//)
  })

  it('names the allergens of Regulation (EU) 1169/2011, annex II', () => {
    expect(one.allergens).toEqual(expect.arrayContaining(['egg', 'milk', 'wheat']))
  })
  // What each is made of: common practice, no source; that it is to be named: the same annex.
  it.each([
    ['100 g tahini', ['sesame']],
    ['100 g almond butter', ['nuts']],
    ['2 tbsp za’atar', ['sesame']],
    ['60 g mixed seeds', ['sesame']],
    ['60 g Saaten', ['sesame']],
    ['1 tsp nigella seeds', []],
  ])('of %s: %j', (line, allergens) => {
    const {receipts} = translate(`# Crackers\n\n- ${line}\n\nBake 20 minutes at 180 °C.\n`, {file: 'x.md'})
    expect(receipts[0]!.allergens ?? []).toEqual(allergens)
    expect(receipts[0]!.ingredients.map(({known}) => known ?? true)).toEqual([true])
  })

  it('raises cautions by items, and by words, with a source', () => {
    const iced = translate('# Icing\n\nBeat the whites of two eggs with half a pound of sugar for the icing; use it raw.\n', {
      file: 'i.md',
    }).receipts[0]!
    expect(iced.cautions.map((caution) => caution.id)).toContain('raw-egg')
    const cake = one.cautions.map((caution) => caution.id)
    expect(cake).not.toContain('raw-egg')
    const crock = translate('# Beans\n\nA quart of beans. Leave the crock in the oven all night.\n', {file: 'b.md'}).receipts[0]!
    expect(crock.cautions.map((caution) => caution.id)).toContain('hot-holding')
    const dough = translate('# Bread\n\nA quart of flour. Let it rise over night. Bake an hour.\n', {file: 'b.md'}).receipts[0]!
    expect(dough.cautions.map((caution) => caution.id)).not.toContain('hot-holding')
    for (const caution of [...iced.cautions, ...crock.cautions]) expect(caution.source.length).toBeGreaterThan(0)
  })

  it('an unknown word is listed once, with every place, and carried through', () => {
    const text = '# Cake\n\n- 2 oz. zanthoblum\n- 1 lb. flour\n- 3 oz. zanthoblum\n\nBake in a zestful oven.\n'
    const odd = translate(text, {file: 'z.md'})
    const unknown = odd.messages.filter((m) => m.rule === 'item-unknown')
    expect(unknown).toHaveLength(1)
    expect(unknown[0]).toMatchObject({line: 3, severity: 'warning'})
    expect(unknown[0]!.reason).toMatch(/2 times, on lines 3, 5/)
    expect(odd.receipts[0]!.ingredients.filter((i) => i.text.includes('zanthoblum'))).toHaveLength(2)
    expect(odd.messages.find((m) => m.rule === 'heat-unknown')).toMatchObject({line: 7, column: 11})
  })

  it('temperatures that disagree are reported where they stand', () => {
    const odd = translate('# Cake\n\nBake at 350 °F (220 °C) for an hour.\n', {file: 'z.md'})
    expect(odd.messages.find((m) => m.rule === 'heat-disagrees')).toMatchObject({line: 3, column: 9, severity: 'warning'})
    const even = translate('# Cake\n\nBake at 350 °F (180 °C), gas 4, for an hour.\n', {file: 'z.md'})
    expect(even.messages.filter((m) => m.rule === 'heat-disagrees')).toEqual([])
  })

  it('front matter that is no heat is told', () => {
    const odd = translate('---\noven: blue\n---\n# Cake\n\nA pound of flour.\n', {file: 'z.md'})
    expect(odd.messages.find((m) => m.rule === 'heat-unknown')).toMatchObject({line: 2, column: 7})
  })

  it('a vessel that is none known here is told where it stands', () => {
    const told = (vessel: string) =>
      translate(`---\nyear: 1850\nvessel: ${vessel}\n---\n# Cake\n\nA pound of flour.\n`, {file: 'z.md'}).messages.filter(
        (m) => m.rule === 'vessel-unknown',
      )
    expect(told('bucket')).toMatchObject([
      {line: 3, column: 9, severity: 'warning', reason: 'vessel: “bucket” is no vessel known here'},
    ])
    expect(told('bucket 9 in x 8 in')).toMatchObject([{line: 3, column: 9, reason: expect.stringContaining('“bucket”')}])
    for (const fine of [
      'round 9 in x 2 in',
      '9 in x 8 in deep',
      '9-inch square tin',
      'loaf 9 x 5 x 3 in',
      '2 lb loaf tin',
      '24 cm',
    ])
      expect(told(fine), fine).toEqual([])
  })

  it('a book is read a heading at a time', () => {
    const book = translate('# One\n\nBake in a quick oven.\n\n# Two\n\nBake in a slow oven.\n', {file: 'book.md'})
    expect(book.receipts.map((r) => [r.title, r.oven[0]?.band])).toEqual([
      ['One', 'hot'],
      ['Two', 'slow'],
    ])
  })
})

const phrase = fc.constantFrom(
  'a quick oven',
  'not too hot',
  'oven',
  'the',
  'of',
  'a',
  'bake',
  '350',
  '°F',
  '°',
  'degrees',
  'gas mark',
  '1/2',
  '1-1/2',
  '½',
  'hour',
  'and',
  'or',
  'to',
  'an hour and',
  'half',
  'quarter',
  'from',
  'between',
  'twenty',
  'five',
  'minutes',
  'till',
  'next day',
  'all night',
  'after',
  'bread',
  'is drawn',
  'as hot as for',
  'sufficient for',
  'makes',
  'serves',
  'persons',
  'loaves',
  'fan',
  '/',
  '(',
  ')',
  '*',
  '_',
  '**',
  '&frac12;',
  '&amp;',
  '\\*',
  '-',
  '--',
  '\n',
  '\n\n',
  '# ',
  '- ',
  '| ',
  '.',
  ',',
  ';',
  'flour',
  'eggs',
  'pound',
  'lb.',
  'tea-cup',
  '\u017flow',
  '\ud83c\udf5e',
  '\u0000',
  '\u00ad',
  '999999999999999999',
  '0/0',
  '1/0',
)

describe('any text', () => {
  it('of receipt words in any order keeps every offset', () => {
    // What has been found so, by chance.
    for (const text of ['and and an hour and', 'a Becher 1/2 Becher']) holds(text)
    fc.assert(
      fc.property(fc.array(phrase, {maxLength: 40}), (parts) => holds(parts.join(' '))),
      {numRuns: 150},
    )
  })

  it('of any characters keeps every offset', () => {
    fc.assert(fc.property(fc.string({unit: 'binary', maxLength: 200}), holds), {numRuns: 100})
    fc.assert(fc.property(fc.string({unit: 'grapheme', maxLength: 200}), holds), {numRuns: 100})
  })

  it('of any front matter keeps every offset', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.constantFrom('oven', 'bake', 'year', 'vessel', 'serves', 'says', 'x'), fc.string({maxLength: 20})), {
          maxLength: 5,
        }),
        (pairs) => holds(`---\n${pairs.map(([k, v]) => `${k}: ${v}`).join('\n')}\n---\n# Cake\n\nBake in a quick oven.\n`),
      ),
      {numRuns: 60},
    )
  })

  // Again where another job took the processor in the shorter run.
  it('long runs of the same words take time in proportion', {retry: 2}, () => {
    for (const word of [
      'a very ',
      'oven ',
      '1/2 to ',
      'as hot as ',
      'after the ',
      'not too hot, ',
      'one and ',
      'bake it with ',
      'to be ',
      '350 °F (',
    ]) {
      const best = (n: number): number => {
        const section = plainSection(word.repeat(n))
        let least = Number.POSITIVE_INFINITY
        for (let run = 0; run < 5; run++) {
          const from = process.cpuUsage().user
          readHeat(section)
          readTimes(section)
          readYields(section)
          least = Math.min(least, (process.cpuUsage().user - from) / 1000)
        }
        return least
      }
      best(2000)
      // Eight times the text: linear is 8, quadratic 64. Room is left for a busy machine.
      expect(best(16_000) / Math.max(0.5, best(2000)), word).toBeLessThan(40)
    }
  })
})

describe('messages', () => {
  it('follow vfile-message', () => {
    const made = vfileMessage({
      file: 'a.md',
      line: 3,
      column: 4,
      severity: 'warning',
      rule: 'item-unknown',
      reason: 'odd',
      suggest: 'write it',
    })
    expect(made).toMatchObject({
      ruleId: 'item-unknown',
      source: 'hearthfall',
      fatal: false,
      line: 3,
      column: 4,
      reason: 'odd',
      expected: ['write it'],
    })
    expect(vfileMessage({file: 'a.md', line: 1, column: 1, severity: 'error', rule: 'yaml', reason: 'bad'}).fatal).toBe(true)
    expect(vfileMessage({file: 'a.md', line: 1, column: 1, severity: 'info', rule: 'x', reason: 'y'}).fatal).toBeUndefined()
  })

  it('every rule in the source is documented', () => {
    const files = (folder: string): string[] =>
      readdirSync(folder).flatMap((name) => {
        const path = join(folder, name)
        return statSync(path).isDirectory() ? files(path) : path.endsWith('.ts') ? [path] : []
      })
    const documented = readFileSync('docs/messages.md', 'utf8')
    const missing = new Set<string>()
    for (const file of files('src').filter((path) => !path.includes('lexicon'))) {
      const text = readFileSync(file, 'utf8')
      for (const [, rule] of text.matchAll(
        /'((?:key|file|out|log|item|reading|says|receipt|scale)-[a-z-]+|yaml|heat-(?:unknown|disagrees)|day-(?:folder|front-matter|link|wanted|serve)|oven-(?:drawing|front-matter|mouth|reading))'/g,
      ))
        if (!documented.includes(`\`${rule}\``)) missing.add(`${rule} in ${file}`)
    }
    expect([...missing]).toEqual([])
  })
})

describe('measures that name their own system', () => {
  // Weights and Measures Act 1985, sch. 1 (gallon 4.54609 L); NIST Handbook 44 App. C (US gallon 231 in³); metric cup and spoon: common practice.
  const cases: ReadonlyArray<readonly [string, string, number]> = [
    ['1 imperial pint milk', 'pint', 568.26],
    ['1 UK pint ale', 'pint', 568.26],
    ['1 pint (imperial) milk', 'pint', 568.26],
    ['1 US pint cream', 'pint', 473.18],
    ['1 U.S. pint cream', 'pint', 473.18],
    ['2 US cups sugar', 'cup', 2 * 236.588],
    ['2 metric cups flour', 'cup', 500],
    ['2 level metric tablespoons honey', 'tablespoon', 30],
    ['8 US fl oz water', 'fluid ounce', 236.588],
  ]
  for (const frame of ['', 'year: 1829\nplace: us\n', 'year: 1860\nplace: England\n', 'year: 1990\nplace: Australia\n'])
    it(`are read as said, in a receipt of ${frame.replace(/\n/g, ' ') || 'no year or place'}`, () => {
      for (const [line, measure, millilitres] of cases) {
        const source = `---\nserves: 4\n${frame}---\n# Pudding\n\n- 200 g suet\n- ${line}\n`
        const one = translate(source, {file: 'a.md'}).receipts[0]!.ingredients[1]!
        expect(one.measure, line).toBe(measure)
        expect(one.known, line).toBe(true)
        expect(one.millilitres?.low, line).toBeCloseTo(millilitres, 0)
        expect(one.millilitres?.high, line).toBeCloseTo(millilitres, 0)
        expect(
          one.why.some(({step}) => step.includes('the receipt says')),
          line,
        ).toBe(true)
      }
    })

  it('level spoons are spoons', () => {
    const one = translate('# Cake\n\n- 200 g flour\n- 2 level tablespoons sugar\n', {file: 'a.md'}).receipts[0]!.ingredients[1]!
    expect(one).toMatchObject({measure: 'tablespoon', item: 'sugar', hedges: ['level']})
  })
})

describe('a weight said beside a count or a measure', () => {
  const read = (line: string): Translation['receipts'][number]['ingredients'] =>
    translate(`# Dinner\n\n- 200 g suet\n- ${line}\n`, {file: 'a.md'}).receipts[0]!.ingredients.slice(1)

  it.each([
    ['1 chicken (about 1.8 kg)', 1, 'count', 1620, 1980],
    ['2 onions (300 g)', 2, 'count', 300, 300],
    ['2 onions, chopped (300 g)', 2, 'count', 300, 300],
    ['2 onions, 300 g', 2, 'count', 300, 300],
    ['2 eggs (100 g)', 2, 'count', 100, 100],
    ['2 chickens (1.5 kg each)', 2, 'count', 3000, 3000],
    ['3 apples (1 lb)', 3, 'count', 453.592, 453.592],
    ['3 apples (1 lb/450 g)', 3, 'count', 453.592, 453.592],
    ['1 cup (120 g) flour', 1, 'cup', 120, 120],
    ['1 cup sugar (200 g)', 1, 'cup', 200, 200],
    ['2 tins (400 g) tomatoes', 2, 'tin', 800, 800],
    ['2 tins (800 g in all) tomatoes', 2, 'tin', 800, 800],
  ])('“%s” weighs what it says', (line, amount, measure, low, high) => {
    const all = read(line)
    expect(all).toHaveLength(1)
    const one = all[0]!
    expect(one).toMatchObject({measure, amount: {low: amount, high: amount}})
    expect(one.grams?.low).toBeCloseTo(low, 0)
    expect(one.grams?.high).toBeCloseTo(high, 0)
    expect(one.sources).toContain('receipt')
  })

  it('a weighed tin is read as before, and a weight first stays the amount', () => {
    expect(read('1 (400 g) tin tomatoes')[0]).toMatchObject({measure: 'gram', exact: '400', notes: ['1 (400 g) tin']})
    expect(read('8 oz/225 g butter')[0]).toMatchObject({measure: 'ounce', exact: '8'})
    expect(read('8 oz (225 g) butter')[0]).not.toHaveProperty('stated')
  })

  it.each([
    ['| flour | 1 cup | 120 g |\n| eggs | 2 | 100 g |', ['1 cup flour 120', '2 count egg 100']],
    [
      '| Ingredient | Volume | Weight |\n|---|---|---|\n| flour | 1 cup | 120 g |\n| salt | 1 tsp | 6 g |\n| eggs | 2 | about 100 g |',
      ['1 cup flour 120', '1 teaspoon salt 6', '2 count egg 100'],
    ],
    [
      '| Zutat | Menge | Gewicht |\n|---|---|---|\n| Mehl | 1 Tasse | 120 g |\n| Eier | 2 | 110 g |',
      ['1 tasse flour 120', '2 count egg 110'],
    ],
    ['| Weight | Volume | What |\n|---|---|---|\n| 100 g | 1/2 cup | sugar |', ['0.5 cup sugar 100']],
    // The head tells what the figures are.
    ['| Zutat | Tassen | g |\n|---|---|---|\n| Mehl | 1 | 120 |', ['1 tasse flour 120']],
    ['| flour | 1 cup | |\n|---|---|---|\n| sugar | 1 cup | 200 g |', ['1 cup flour —', '1 cup sugar 200']],
  ])('in a column of its own: %j', (table, entries) => {
    const {ingredients} = translate(`# Cake\n\n${table}\n`, {file: 'a.md'}).receipts[0]!
    expect(
      ingredients.map(
        (one) => `${one.amount?.low} ${one.measure} ${one.item} ${one.stated === undefined ? '—' : one.grams?.likely}`,
      ),
    ).toEqual(entries)
  })

  it('what is only for a part of it, or of another thing, is not its weight', () => {
    expect(read('2 onions (100 g for the sauce)')[0]).not.toHaveProperty('stated')
    expect(read('2 onions, 100 g butter').map((one) => [one.item, one.grams?.likely === 100])).toEqual([
      ['onion', false],
      ['butter', true],
    ])
    expect(read('5 g dried yeast (or 15 g fresh yeast)')[0]!.grams?.likely).toBe(5)
  })

  it('in prose too', () => {
    const one = translate('# Duck\n\nTake a duck (about 5 lb) and roast it.\n', {file: 'a.md'}).receipts[0]!.ingredients[0]!
    expect(one.text).toBe('a duck (about 5 lb)')
    expect(one.grams?.likely).toBeCloseTo(5 * 453.592, -1)
  })
})

describe('notes below a receipt', () => {
  const read = (text: string): {items: (string | null)[][]; told: string[]} => {
    const {receipts, messages} = translate(text, {file: 'a.md'})
    return {
      items: receipts[0]!.ingredients.map((one) => [one.exact, one.item]),
      told: messages.filter((one) => one.rule === 'note-other-way').map((one) => `${one.line}: ${one.reason}`),
    }
  }
  const own = [
    ['6', 'egg'],
    ['4', 'flour'],
  ]
  const receipt = (mark: string, note: string): string =>
    `# A pudding\n\nTake six eggs and four ounces of flour.${mark} Bake half an hour in a moderate oven.\n\n${note}\n`

  it.each([
    ['[^1]', '[^1]: For a lighter pudding take four eggs, and two ounces of flour less.'],
    ['[^1]', '[^1]: Four eggs and two ounces of flour are enough.'],
    ['[^a]', '[^a]: Some use a pound of suet.'],
    ['*', '\\* For a lighter pudding take four eggs.'],
    ['*', '* For a lighter pudding take four eggs.'],
    ['†', '† You may use a spoonful of brandy.'],
  ])('another way is not added, and is told: %s … %s', (mark, note) => {
    const {items, told} = read(receipt(mark, note))
    expect(items).toEqual(own)
    expect(told).toHaveLength(1)
    expect(told[0]).toContain(note.replace(/^\S+ /, ''))
    expect(told[0]).toMatch(/^5: /)
  })

  it('what a note only adds goes in, and each note is judged by itself', () => {
    const {items, told} = read(receipt('[^1] [^2]', '[^1]: The rind of one lemon, grated.\n[^2]: Or take three eggs.'))
    expect(items).toEqual([...own, ['1', 'lemon rind']])
    expect(told).toHaveLength(1)
  })

  it('in a file with tables too, and a note of one word is read', () => {
    const table =
      '# A pudding\n\n| what | how much |\n|---|---|\n| flour | 4 oz |\n| eggs[^1] | 6 |\n\n[^1]: Take four eggs instead.\n'
    expect(read(table).told).toHaveLength(1)
    expect(read(table).items).toEqual([
      ['4', 'flour'],
      ['6', 'egg'],
    ])
    expect(read(receipt('[^1]', '[^1]: Lard.')).items.map(([, item]) => item)).toContain('lard')
  })

  it('what stands in a labelled note by a list is not added, and is told where it gives amounts', () => {
    const list = '# Buns\n\n- 500 g flour\n- 10 g salt\n\nBake 20 minutes.\n\n'
    for (const note of ['Variation: fold in 50 g cheese.', 'Tip: 2 eggs make it richer.', '## Notes\n\n- Add 100 g currants.']) {
      const {items, told} = read(list + note)
      expect(items.map(([, item]) => item)).toEqual(['flour', 'salt'])
      expect(told).toHaveLength(1)
    }
    expect(read(`${list}Note: serve with butter.`)).toMatchObject({told: []})
  })

  it('a list with stars for bullets is a list', () => {
    const {items, told} = read('# A pudding\n\n* 6 eggs\n* 4 oz flour\n* 2 larger apples\n')
    expect(items).toHaveLength(3)
    expect(told).toEqual([])
  })
})

describe('heats and times in a note', () => {
  const read = (text: string): {bakes: string[]; heats: string[]; told: string[]} => {
    const {receipts, messages} = translate(text, {file: 'a.md'})
    const {times, oven} = receipts[0]!
    return {
      bakes: times.filter((time) => time.of === 'bake').map((time) => time.text),
      heats: oven.filter((heat) => heat.condition !== true).map((heat) => heat.text),
      told: messages.filter((one) => one.rule === 'note-other-way').map((one) => one.reason),
    }
  }
  const body = '# Loaf\n\n- 500 g flour\n- 300 g water\n\nLet rise 1 hour. Bake at 220 °C for 35 minutes.\n\n'

  it.each([
    'Note: for a crustier loaf bake at 240 °C for 25 minutes.',
    'NB in a fan oven bake 30 minutes at 200 °C fan.',
    'N.B.—In tins it bakes 50 minutes in a slow oven.',
    'Tip 2: bake rolls 15 minutes at 230 °C.',
    'Cook’s tip: bake rolls 15 minutes at 230 °C.',
    '**Variation:** bake it 45 minutes at 200 °C.',
    'Storage: it keeps 3 days; freshen it 10 minutes at 180 °C in the oven.',
    'Notes\n\n- For rolls bake 15 minutes at 230 °C.',
    '## Tips & tricks\n\nDouble the batch and bake 70 minutes at 200 °C.',
    'Anmerkung: Brötchen bei 230 °C 15 Minuten backen.',
  ])('are of another way: %s', (note) => {
    const {bakes, heats, told} = read(body + note)
    expect(bakes).toEqual(['35 minutes'])
    expect(heats).toEqual(['220 °C'])
    expect(told).toHaveLength(1)
  })

  it('also within a paragraph, and called by a sign', () => {
    expect(read('# Loaf\n\nBake it 40 minutes in a hot oven. Note: with a fan 30 minutes are enough.\n').bakes).toEqual([
      '40 minutes',
    ])
    const signed = read(
      '# Cake\n\nTake six eggs.* Bake it an hour in a moderate oven.\n\n* Some bake it three hours in a slow oven.\n',
    )
    expect(signed.bakes).toEqual(['an hour'])
    expect(signed.heats).toEqual(['a moderate oven'])
  })

  it('serve where the receipt has none, and that is told', () => {
    const {bakes, heats, told} = read('# Loaf\n\n- 500 g flour\n\nBake till done.\n\nNote: it takes about 1 hour at 200 °C\n')
    expect(bakes).toEqual(['about 1 hour'])
    expect(heats).toEqual(['200 °C'])
    expect(told).toHaveLength(1)
    expect(told[0]).toContain('serves')
  })

  it('degrees explain the receipt’s own word', () => {
    const {heats} = read('# Loaf\n\nBake in a quick oven.* It takes an hour.\n\n* About 220 °C in the oven.\n')
    expect(heats).toEqual(['a quick oven', '220 °C'])
  })

  it('“Note that …” is the receipt’s own', () => {
    expect(read('# Loaf\n\nKnead it.\n\nNote that it bakes 40 minutes.\n\nBake in a hot oven.\n').told).toEqual([])
  })
})

describe('a fraction in one cell of a table, what it is of in the next', () => {
  const read = (row: string): (string | null)[][] =>
    translate(`# Pudding\n\n| how much | what |\n|---|---|\n| 4 oz | flour |\n| ${row} |\n| 6 | eggs |\n`, {
      file: 'a.md',
    }).receipts[0]!.ingredients.map((one) => [one.exact, one.measure, one.item])

  it.each([
    ['half | a nutmeg', '1/2', 'count', 'nutmeg'],
    ['1/2 | a nutmeg', '1/2', 'count', 'nutmeg'],
    ['half | of a nutmeg', '1/2', 'count', 'nutmeg'],
    ['half | nutmeg', '1/2', 'count', 'nutmeg'],
    ['half | a pound of sugar', '1/2', 'pound', 'sugar'],
    ['three quarters | of a pound of sugar', '3/4', 'pound', 'sugar'],
    ['half a pound | sugar', '1/2', 'pound', 'sugar'],
  ])('| %s |', (row, exact, measure, item) => {
    expect(read(row)).toEqual([
      ['4', 'ounce', 'flour'],
      [exact, measure, item],
      ['6', 'count', 'egg'],
    ])
  })
})

describe('times by weight', () => {
  const read = (text: string): {times: unknown[]; told: string[]} => {
    const {receipts, messages} = translate(`# Roast\n\n${text}\n`, {file: 'a.md'})
    return {
      times: receipts[0]!.times.map((one) => [one.text, one.minutes.low, one.minutes.high, one.of]),
      told: messages.filter((one) => one.rule === 'time-by-weight').map((one) => one.severity),
    }
  }

  it.each([
    ['- 1 chicken (2 kg)\n\nRoast 20 minutes per 500 g.', '20 minutes per 500 g', 80, 80],
    ['- 4 lb beef\n\nBake it a quarter of an hour to the pound.', 'a quarter of an hour to the pound', 60, 60],
    ['- 4 lb beef\n\nRoast 20 minutes a pound, and 20 minutes over.', '20 minutes a pound, and 20 minutes over', 100, 100],
    [
      '- 4 lb beef\n\nRoast 15–20 minutes for every pound plus 20 minutes.',
      '15–20 minutes for every pound plus 20 minutes',
      80,
      100,
    ],
    ['- 2 chickens (3 kg)\n\nRoast 20 min/500 g.', '20 min/500 g', 60, 60],
  ])('are worked out for the weight that is stated: %s', (text, words, low, high) => {
    expect(read(text)).toEqual({times: [[words, low, high, 'bake']], told: ['info']})
  })

  it('are no time of baking where no weight is stated, and say so', () => {
    expect(read('- 1 chicken\n\nBake 20 minutes per 500 g.')).toEqual({
      times: [['20 minutes per 500 g', 20, 20, 'other']],
      told: ['warning'],
    })
  })

  it('a time for a loaf of a pound is its own', () => {
    const {times, told} = read('- 1 lb beef\n\nBake half an hour to a pound loaf.')
    expect(times).toEqual([['half an hour', 30, 30, expect.any(String)]])
    expect(told).toEqual([])
  })
})
