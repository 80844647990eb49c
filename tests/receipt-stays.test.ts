import {describe, expect, it} from 'vitest'
import {stayWordSchema} from '../src/lexicon/schema.js'
import {sources} from '../src/lexicon/sources.js'
import {stayWords} from '../src/lexicon/stay-words.js'
import {translate} from '../src/receipt/translate.js'
import type {Receipt} from '../src/receipt/types.js'
import {makeDishes} from '../src/scale/dishes.js'
import {translationText} from '../src/sheets/translation-text.js'

/*
 * Sentences written for these tests in the manner of receipts; no published table says which of them leave a thing in the oven. Against
 * the hand-read corpora (English books of 1796, 1829 and 1861, not in this repository): 73 stretches of time name night or morning, 9 of
 * them in the oven by our own reading; 8 of those are found and none of the other 64.
 */
const read = (text: string, title = 'Onions'): Receipt =>
  translate(`# ${title}\n\n- 1 kg onions\n- 100 g butter\n\n${text}\n`, {file: 'receipts/x.md'}).receipts[0]!
const needOf = (receipt: Receipt) =>
  makeDishes({
    day: {
      people: 8,
      items: [{file: 'receipts/x.md', title: 'X', amount: '1 dish', wantedBy: null, line: 1, column: 1}],
      spare: [],
    },
    receipts: [receipt],
    oven: {floor: {shape: 'round', diameter: 1.07}, mouth: {width: 0.46, height: 0.28}, vaultHeight: 0.41},
  }).dishes[0]!.need

describe('words for staying in', () => {
  it('keep to their schema, with sources that exist and ids of their own', () => {
    const known = new Set(sources.map(({id}) => id))
    for (const row of stayWords) {
      stayWordSchema.parse(row)
      expect(known, row.id).toContain(row.source)
      if (row.use === 'state' || row.use === 'share') expect(row.minutes ?? row.share, row.id).toBeDefined()
    }
    expect(new Set(stayWords.map(({id}) => id)).size).toBe(stayWords.length)
  })
})

describe('left in the oven through the night', () => {
  it.each([
    'Set them in the slack oven and leave them overnight.',
    'Put the pot into a cool oven all night.',
    'Bake in a moderate oven an hour. Leave it in till morning.',
    'If the oven is not wanted, leave it in all night.',
    'It is the better for standing all night in a very slow brick oven.',
    'Lay them in a cooling oven, where they may stay till the next day.',
    'Turn off the oven and leave it inside overnight.',
    'Dry them for two nights in a slack oven.',
    'Zugedeckt in den abkühlenden Backofen stellen und über Nacht im Ofen lassen.',
    'Set them in the oven when the bread is drawn. Leave them all night; take them out and turn them.',
  ])('“%s”', (text) => {
    const receipt = read(text)
    expect(receipt.times.filter(({overnight}) => overnight === true)).toHaveLength(1)
    expect(needOf(receipt).overnight).toBe(true)
    // What is left to cool in the night may harm: the caution stays.
    expect(receipt.cautions.map(({id}) => id)).toContain('hot-holding')
  })

  it.each([
    'Let the dough rise overnight. Bake in a hot oven 40 minutes.',
    'Soak them all night in water, then bake in a slow oven an hour.',
    'Bake in a moderate oven an hour, take them out and let them stand overnight.',
    'Stand it by the oven all night, and bake it an hour.',
    'Leave them in a cold oven overnight. Bake an hour.',
    'Put it in the fridge overnight and bake it in a hot oven half an hour.',
    'Bake in a slow oven an hour. Let it lie all night.',
    'Set it near the oven till morning; then bake it an hour.',
    'Bake in a slow oven for an hour; it will keep a fortnight.',
  ])('not: “%s”', (text) => {
    const receipt = read(text)
    expect(receipt.times.filter(({overnight}) => overnight === true)).toEqual([])
    if (text.includes('fridge')) expect(receipt.cautions.map(({id}) => id)).not.toContain('hot-holding')
    expect(needOf(receipt).overnight).toBe(false)
  })

  it('is the baking time where no other is given, on falling heat', () => {
    const need = needOf(read('Put them into a slow oven and leave them there all night.'))
    expect(need).toMatchObject({minutes: {low: 480, likely: 600, high: 720}, falling: true, overnight: true})
    expect(need.endLow).toBeLessThanOrEqual(60)
    // With a time of its own it may stay, and is done by then.
    expect(needOf(read('Bake in a slow oven two hours, and leave them in overnight if need be.'))).toMatchObject({
      minutes: {likely: 120},
      overnight: true,
    })
  })
})

describe('the door kept shut', () => {
  it.each([
    ['Do not open the oven for two hours.', 'Do not open the oven for two hours', 120, 120],
    ['The door must not be opened till an hour has passed.', 'door must not be opened till an hour', 60, 60],
    ['Keep the oven closed for the first half hour.', 'Keep the oven closed for the first half hour', 30, 30],
    ['Never open the oven under 20 to 25 minutes.', 'Never open the oven under 20 to 25 minutes', 20, 25],
    ['Stop the oven, and let it not be opened under four hours.', 'oven, and let it not be opened under four hours', 240, 240],
    ['Bake it twenty minutes without opening the oven.', 'twenty minutes without opening the oven', 20, 20],
    ['Set it in a gentle oven; it must not be opened for two hours.', 'it must not be opened for two hours', 120, 120],
    [
      'Bake it three hours in a slow oven, and it must be neither opened nor jarred for the first two.',
      'oven, and it must be neither opened nor jarred for the first two',
      120,
      120,
    ],
    ['The oven must not be opened until they are well risen.', 'oven must not be opened until they are well risen', 10, 25],
  ])('“%s”', (text, words, low, high) => {
    const {door} = read(text)
    expect(door).toHaveLength(1)
    expect(door![0]).toMatchObject({text: words, minutes: {low, high}})
    for (const {start, end, text: said} of door!) expect(end - start).toBe(said.length)
  })

  it.each([
    ['Bake 40 minutes; do not open the door for the first half of the baking.', 20],
    ['Bake 40 minutes and never open the oven door while baking.', 40],
    ['Bake 40 minutes, and keep the door shut till they are done.', 40],
    ['Bake 40 minutes. Do not open the oven for the first quarter of an hour.', 15],
    ['Bake 40 minutes. Do not open the oven for three hours.', 40],
  ])('a share of the bake: “%s”', (text, minutes) => {
    expect(needOf(read(text)).closed?.likely).toBeCloseTo(minutes, 6)
    expect(needOf(read(text)).minutes.likely).toBe(40)
  })

  it.each([
    'After the oven is cleared, shut the door for ten minutes.',
    'Keep the jars closed in the oven for two hours.',
    'Do not open the door and bake for 40 minutes.',
    'Do not open the oven too soon.',
    'Open the oven door after 20 minutes.',
    'Leave the door open for ten minutes.',
    'Bake it an hour with the door shut.',
  ])('not: “%s”', (text) => {
    expect(read(text).door).toBeUndefined()
    expect(needOf(read(text)).closed).toBeUndefined()
  })

  it('is no baking time, and is shown with its source', () => {
    const receipt = read('Bake in a slow oven. Do not open the oven until they are half done, nor open the door for two hours.')
    expect(receipt.times.map(({of}) => of)).toEqual(['other'])
    const text = translationText({format: 1, receipts: [receipt], messages: []}, {sources, width: 200})
    expect(text).toContain(
      '“Do not open the oven until they are half done”: 50 % of the baking, the door kept shut, from setting in [',
    )
    expect(text).toContain('2 h, the door kept shut, from setting in')
    expect(text).not.toContain('2 h, other')
  })

  it('grows with a thicker vessel as the bake does', () => {
    const loaf = (vessel: string) =>
      needOf(
        translate(
          `---\nvessel: ${vessel}\n---\n# Loaf\n\n- 3 kg flour\n- 2 litres water\n- 20 g yeast\n\nBake 60 minutes; do not open the oven for 30 minutes. Makes 4 loaves.\n`,
          {file: 'receipts/x.md'},
        ).receipts[0]!,
      )
    const need = loaf('loaf 9 x 5 x 3 in')
    expect(need.closed!.likely / need.minutes.likely).toBeCloseTo(0.5, 6)
  })
})
