import {describe, expect, it} from 'vitest'
import {risingWords} from '../src/lexicon/rising-words.js'
import {risingWordSchema} from '../src/lexicon/schema.js'
import {sources} from '../src/lexicon/sources.js'
import {translate} from '../src/receipt/translate.js'
import type {Receipt} from '../src/receipt/types.js'
import {styleOf} from '../src/sheets/style-of.js'
import {timesShown} from '../src/sheets/translation-text.js'
import {twoLoaves} from './loaves-day.js'

/*
 * Sentences written for these tests in the manner of receipts; which wait is which is common practice, no source.
 */
const read = (text: string, title = 'Wheaten bread', facts = ''): Receipt =>
  translate(`${facts}# ${title}\n\n- 1 kg flour\n- 600 g water\n- 20 g salt\n- 20 g fresh yeast\n\n${text}\n`, {
    file: 'receipts/x.md',
  }).receipts[0]!
const stages = ({times, untimed}: Receipt): Array<[string, number, number] | string> => [
  ...times.flatMap(({stage, minutes}): Array<[string, number, number]> => (stage ? [[stage, minutes.low, minutes.high]] : [])),
  ...(untimed ?? []),
]
const doughOf = (receipt: Receipt) => twoLoaves(receipt).dishes[0]!.dough

// What rises on the sheet or in the tin that it is put on proves there: common practice, no source.
describe('a dough that is put on its sheet', () => {
  it.each([
    'Mix, let it rise for 18 hours. Stretch on to an oiled sheet and leave to rise for 2 hours, dimple, bake 22 minutes.',
    'Mix, leave to rise 18 hours. Tip on to an oiled sheet, leave 2 hours, dimple, bake 22 minutes.',
    'Mix, leave to rise 18 hours. Ease it on to a floured tray and leave for 2 hours. Bake 22 minutes.',
    'Mischen, 18 Stunden gehen lassen. Auf ein geöltes Blech ziehen, 2 Stunden auf dem Blech gehen lassen, 22 Minuten backen.',
    'Mischen, 18 Stunden gehen lassen und in die Form drücken. 2 Stunden in der Form gehen lassen, 22 Minuten backen.',
  ])('proves there: %s', (text) => {
    expect(stages(read(text))).toEqual([
      ['rise', 1080, 1080],
      ['prove', 120, 120],
    ])
  })
})

// Pieces that are formed, filled or wrapped prove before the oven as shaped loaves do: common practice, no source.
describe('a dough that is formed, filled or wrapped', () => {
  it.each([
    'Form 12 buns and let rise 45 minutes.',
    'Fill the buns and leave 45 minutes.',
    'Stuff the buns and leave them 45 minutes.',
    'Make it into parcels and let rise 45 minutes.',
    'Wrap it round the sausages and let rise 45 minutes.',
    'Stretch it over the tin and leave it 45 minutes.',
    'Half fill two 1 lb tins; leave till full, about 45 minutes.',
    'Taschen füllen und 45 Minuten gehen lassen.',
  ])('proves: %s', (text) => {
    expect(stages(read(`Knead. Let the dough rise 2 hours. ${text} Bake at 220 °C for 20 minutes.`))).toEqual([
      ['rise', 120, 120],
      ['prove', 45, 45],
    ])
  })

  it.each(['Shape and chill overnight.', 'Shape. Chill for 8 to 12 hours.'])('proves in the cold: %s', (text) => {
    expect(stages(read(`Knead. Let the dough rise 2 hours. ${text} Bake at 220 °C for 20 minutes.`))).toEqual([
      ['rise', 120, 120],
      ['prove', 480, 720],
    ])
  })

  it.each([
    'Mix to form a dough and leave it to rise 2 hours. Wrap the dough round with a cloth and leave it 1 hour.',
    'Fill a tin with water. Let the dough rise 2 hours. It will form a skin. Leave it 1 hour.',
    'Knead. Stretch it over itself and leave it 2 hours. Let it rise 1 hour.',
  ])('is not shaped by what only sounds so: %s', (text) => {
    expect(stages(read(`${text} Bake at 220 °C for 20 minutes.`))).toEqual([
      ['rise', 120, 120],
      ['rise', 60, 60],
    ])
  })

  it('leaves alone what is chilled by name', () => {
    expect(stages(read('Knead. Let rise 2 hours. Shape, prove 30 minutes. Chill the cream overnight. Bake 20 minutes.'))).toEqual(
      [
        ['rise', 120, 120],
        ['prove', 30, 30],
      ],
    )
  })
})

// The size of the tin says no more of the dough than “a tin”: common practice, no source.
describe('a dough that is put into a tin whose size is written', () => {
  it.each([
    'Knead, prove 2 hours. Tip into an oiled 30 × 20 × 4 cm tin, stretch, prove 45 minutes. Bake 25 minutes.',
    'Knead, prove 2 hours. Turn into a 9 in tin and leave 45 minutes. Bake 25 minutes.',
    'Knead, prove 2 hours. Turn into a 2 lb (900 g) greased loaf tin and leave 45 minutes. Bake 25 minutes.',
    'Knead, prove 2 hours. Press it into a greased 33 x 23 cm / 13 x 9 inch tin, prove 45 minutes. Bake 25 minutes.',
  ])('proves there: %s', (text) => {
    expect(stages(read(text))).toEqual([
      ['rise', 120, 120],
      ['prove', 45, 45],
    ])
  })
})

// The second of two risings is the last where its own words call it so: common practice, no source.
describe('a rising that is called the second or the final one', () => {
  it.each([
    'Knead. First rise 2 hours. Second rise in the tin 45 minutes. Bake 35 minutes.',
    'Knead. First rise 2 hours, second rise 45 minutes. Bake 35 minutes.',
    'Knead and let rise for 2 hours, then allow 45 minutes for the second rise. Bake 35 minutes.',
    'Knead. Leave for 2 hours. Final proof 45 minutes. Bake 35 minutes.',
    'Kneten, 2 Stunden gehen lassen. Stückgare 45 Minuten. 35 Minuten backen.',
  ])('proves: %s', (text) => {
    expect(stages(read(text))).toEqual([
      ['rise', 120, 120],
      ['prove', 45, 45],
    ])
  })
  it('is another rising in bulk where the shaping stands behind it, or no other is told', () => {
    expect(stages(read('Knead. First rise 1 hour. Second rise 1 hour. Shape and prove 45 minutes. Bake 35 minutes.'))).toEqual([
      ['rise', 60, 60],
      ['rise', 60, 60],
      ['prove', 45, 45],
    ])
    expect(stages(read('Knead. Second rise 1 hour. Bake 35 minutes.'))).toEqual([['rise', 60, 60]])
  })
})

// A night and its hours, said side by side, are one rising: common practice, no source.
describe('a night and how long it is', () => {
  it.each<[string, number, number]>([
    ['Knead, rise overnight in the refrigerator for 10 hours.', 600, 600],
    ['Knead, rise overnight (8 to 12 hours).', 480, 720],
    ['Knead, rise overnight, at least 8 hours.', 480, 480],
    ['Knead, rise for 10 hours, or overnight.', 480, 720],
    ['Knead, rise 12 hours overnight.', 720, 720],
    ['Knead, leave to rise 10 hours in the fridge, or overnight.', 600, 600],
    ['Kneten, über Nacht, mindestens 10 Stunden, gehen lassen.', 600, 600],
    ['Kneten, im Kühlschrank über Nacht (mindestens 10 Stunden) gehen lassen.', 600, 600],
  ])('is one rising: %s', (text, low, high) => {
    expect(stages(read(`${text} Shape, prove 45 minutes. Bake 40 minutes.`))).toEqual([
      ['rise', low, high],
      ['prove', 45, 45],
    ])
  })
  it('is two where an hour stands before it, and another way where the hour is “or overnight”', () => {
    expect(stages(read('Knead, rise 1 hour, then overnight for 10 hours. Shape, prove 45 minutes. Bake 40 minutes.'))).toEqual([
      ['rise', 60, 60],
      ['rise', 600, 600],
      ['prove', 45, 45],
    ])
    expect(stages(read('Knead, rise 2 hours, or overnight. Shape, prove 45 minutes. Bake 40 minutes.'))).toEqual([
      ['rise', 120, 120],
      ['prove', 45, 45],
    ])
  })
})

// What is made with a sponge is the dough, and a leaven fed once more is another sponge: common practice, no source.
describe('the dough that is made with a sponge', () => {
  const behind = 'shape and prove 45 minutes. Bake 40 minutes.'
  const three = [
    ['sponge', 120, 120],
    ['rise', 60, 60],
    ['prove', 45, 45],
  ]
  it.each([
    'Make the dough with the sponge, leave to rise for 1 hour,',
    'Make a dough with the sponge and the rest of the flour; leave 1 hour,',
    'Make up the flour with the sponge and leave it 1 hour,',
    'Mix the sponge with the rest of the flour and leave it for 1 hour,',
    'Mix the remaining flour into the sponge, let rise 1 hour,',
    'Den Hauptteig mit dem Vorteig ansetzen, 1 Stunde gehen lassen,',
  ])('has a rising of its own: %s', (text) => {
    const made = read(`Make a sponge with the yeast and a third of the flour, and leave it for 2 hours. ${text} ${behind}`)
    expect(stages(made)).toEqual(three)
    expect(doughOf(made)).toMatchObject({sponge: {likely: 120}, rise: 60, prove: {likely: 45}})
  })
  const night = 'Mix the sponge the evening before and leave it overnight, 10 to 14 hours.'
  it('is the only thing to rise on the day, where the sponge stood through the night', () => {
    for (const text of [
      'Make the dough with the sponge, leave to rise for 1 hour,',
      'Add the rest to the sponge, leave 1 hour, knead,',
    ]) {
      const made = doughOf(read(`${night} ${text} ${behind}`))
      expect([text, made]).toEqual([text, expect.objectContaining({rise: 60, prove: {low: 45, likely: 45, high: 45}})])
      expect(made).not.toHaveProperty('sponge')
    }
  })
  it('waits for a leaven that is fed once more', () => {
    const made = read(
      `${night} Feed the sponge with a third of the flour, and leave it 3 hours. Make the dough, rise 1 hour, ${behind}`,
    )
    expect(doughOf(made)).toMatchObject({sponge: {likely: 180}, again: true, rise: 60})
    expect(doughOf(read(`Set a sponge and leave it 2 hours. Make the dough, rise 1 hour, ${behind}`))).not.toHaveProperty('again')
  })
})

// An autolyse is flour and water alone: common practice, no source.
describe('flour that is wetted before its leaven goes in', () => {
  const rest = 'Knead. Let rise 2 hours. Shape into two loaves, prove 1 hour. Bake 40 minutes.'
  it.each([
    `Refresh the levain in the evening. Mix flour and water, rest 40 minutes. Add levain and salt. ${rest}`,
    `The yeast should be fresh. Mix the flour and water and leave 40 minutes. Then work in the yeast and the salt. ${rest}`,
    `Crumble the yeast. Mix flour and water, autolyse 40 minutes. ${rest}`,
  ])('is no sponge: %s', (text) => {
    expect(stages(read(text))).toEqual([
      ['rise', 40, 40],
      ['rise', 120, 120],
      ['prove', 60, 60],
    ])
    expect(doughOf(read(text))).not.toHaveProperty('sponge')
  })
  it('where the leaven is in what waits, it is one', () => {
    const text = `Mix the yeast with half the flour and the water, leave 40 minutes. Add the rest of the flour and the salt. ${rest}`
    expect(stages(read(text))[0]).toEqual(['sponge', 40, 40])
  })
})

describe('words for rising', () => {
  it('keep to their schema, with sources that exist and ids of their own', () => {
    const known = new Set(sources.map(({id}) => id))
    for (const row of risingWords) {
      expect(() => risingWordSchema.parse(row)).not.toThrow()
      expect(known).toContain(row.source)
    }
    expect(new Set(risingWords.map(({id}) => id)).size).toBe(risingWords.length)
  })
})

describe('the stages of a dough', () => {
  const cases: ReadonlyArray<readonly [string, ReadonlyArray<[string, number, number] | string>]> = [
    [
      'Knead. Let it rise 2 hours. Mould it into loaves, let them stand 20 minutes, and bake an hour.',
      [
        ['rise', 120, 120],
        ['prove', 20, 20],
      ],
    ],
    ['Knead, and let it rise three hours. Bake it an hour in a hot oven.', [['rise', 180, 180]]],
    [
      'Knead. Rise two hours. Shape, prove 45 minutes in the tins and bake 40 minutes.',
      [
        ['rise', 120, 120],
        ['prove', 45, 45],
      ],
    ],
    [
      'Knead. When it has risen 2 hours put it in tins, leave 45 minutes and bake 40 minutes.',
      [
        ['rise', 120, 120],
        ['prove', 45, 45],
      ],
    ],
    ['Knead. Shape into two loaves, place in tins and let rise 1 hour. Bake 40 minutes.', [['prove', 60, 60]]],
    ['Knead. Let rise until doubled. Shape, put in greased tins and let rise 45 min. Bake 40 min.', [['prove', 45, 45], 'rise']],
    ['Knead. Let rise 1 hour. Divide, shape, cover and let rise until doubled. Bake 40 min.', [['rise', 60, 60], 'prove']],
    [
      'Mix to a rough dough and rest 30 minutes. Bulk ferment 4–5 h, folding twice. Preshape, rest 20 minutes, shape, and prove overnight in the fridge, 12 to 16 hours. Bake 45 min.',
      [
        ['rise', 30, 30],
        ['rise', 240, 300],
        ['rise', 20, 20],
        ['prove', 720, 960],
      ],
    ],
    [
      'Stir the yeast into a pint of the water, beat in flour to a batter, and leave it an hour and a half by the hearth. Add the rest, knead it, and let it rise an hour. Mould it up and bake it an hour.',
      [
        ['sponge', 90, 90],
        ['rise', 60, 60],
      ],
    ],
    [
      'Set a sponge over night. In the morning knead in the rest, let it rise two hours, make it into loaves, and bake them an hour.',
      [
        ['sponge', 480, 720],
        ['rise', 120, 120],
      ],
    ],
    [
      'Knead it. To rise an hour the first time, three quarters of an hour the second, shaped.',
      [
        ['rise', 60, 60],
        ['rise', 45, 45],
      ],
    ],
    [
      'Make it into loaves. Bake in a hot oven 1 hour. Time.—To rise an hour the first time, three quarters of an hour the second; to be baked 1 hour.',
      [
        ['rise', 60, 60],
        ['prove', 45, 45],
      ],
    ],
    [
      'Alles kneten und 2 Stunden gehen lassen. Zu einem Laib formen und weitere 45 Minuten gehen lassen. 50 Minuten backen.',
      [
        ['rise', 120, 120],
        ['prove', 45, 45],
      ],
    ],
    // A sponge by another name.
    [
      'Make a poolish with some of the flour and water; leave it 5 hours. Mix the dough. Bulk 2 hours. Shape, prove 1 hour. Bake 35 minutes.',
      [
        ['sponge', 300, 300],
        ['rise', 120, 120],
        ['prove', 60, 60],
      ],
    ],
    [
      'Start the biga 16 hours ahead. Then make the dough, ferment it 2 hours, shape and prove 50 minutes. Bake 35 minutes.',
      [
        ['sponge', 960, 960],
        ['rise', 120, 120],
        ['prove', 50, 50],
      ],
    ],
    // A part of the receipt to itself.
    [
      'For the biga: stir some of the flour and water to a stiff dough; leave 16 hours. Mix in the rest and leave 2 hours. Shape, prove 1 hour. Bake 40 minutes.',
      [
        ['sponge', 960, 960],
        ['rise', 120, 120],
        ['prove', 60, 60],
      ],
    ],
    [
      'For the biga:\n\n- 150 g flour\n- 90 g water\n\nMix and leave 16 hours.\n\nFor the dough:\n\n- 350 g flour\n\nMix and leave 2 hours. Shape, prove 1 hour. Bake 40 minutes.',
      [
        ['sponge', 960, 960],
        ['rise', 120, 120],
        ['prove', 60, 60],
      ],
    ],
    [
      'Levain (evening before): 50 g starter, 100 g flour, 100 g water. 10–12 hours.\n\nMix all, bulk 4 hours. Shape, prove 1 hour. Bake 40 minutes.',
      [
        ['sponge', 600, 720],
        ['rise', 240, 240],
        ['prove', 60, 60],
      ],
    ],
    [
      'Vorteig: 150 g Mehl, 150 g Wasser, 12 Stunden bei Raumtemperatur.\n\nHauptteig: alles kneten, 90 Minuten Stockgare. Formen, 60 Minuten Stückgare. 50 Minuten backen.',
      [
        ['sponge', 720, 720],
        ['rise', 90, 90],
        ['prove', 60, 60],
      ],
    ],
    [
      'Stir the poolish and leave overnight. Mix the dough with the poolish and let it ferment 2 hours. Shape and prove 45 minutes. Bake 35 minutes.',
      [
        ['sponge', 480, 720],
        ['rise', 120, 120],
        ['prove', 45, 45],
      ],
    ],
    // A long wait of a yeasted dough, though nothing says that it is shaped; the title's tray shapes nothing.
    ['Stir all together and leave 12 to 18 hours. Bake 45 minutes.', [['rise', 720, 1080]]],
    // By the fire, while the oven heats, within the wait said before, and no longer than.
    [
      'Knead it well, and let it lie by the fire an hour. Make it up into loaves; let them prove while the oven heats, half an hour. Bake 40 minutes.',
      [
        ['rise', 60, 60],
        ['prove', 30, 30],
      ],
    ],
    [
      'Mix. Leave 4 hours, with folds in the first two hours. Shape, and prove in the fridge up to 24 hours. Bake 45 minutes.',
      [
        ['rise', 240, 240],
        ['prove', 720, 1440],
      ],
    ],
    // Another way, and what waits long whatever is said of it.
    [
      'Knead. Let rise 1 hour (or overnight in the fridge). Shape into 12 rolls. Prove 30 minutes, or up to 1 hour. Bake 20 minutes.',
      [
        ['rise', 60, 60],
        ['prove', 30, 30],
      ],
    ],
    [
      'Stir together. Cover and leave 12 to 18 hours at room temperature. Shape into a ball, and let it rise 2 hours. Bake 30 minutes.',
      [
        ['rise', 720, 1080],
        ['prove', 120, 120],
      ],
    ],
    // Folds are no baking; what is chilled and is dough rises.
    [
      'Mix and rest 30 minutes. Stretch and fold four times over 3 hours. Shape, refrigerate overnight, and bake 45 minutes.',
      [
        ['rise', 30, 30],
        ['rise', 180, 180],
        ['prove', 480, 720],
      ],
    ],
    [
      'Knead. Let rise 1 hour, then chill the dough overnight. Shape, put in a tin, let rise 2 to 2 1/2 hours. Bake 35 minutes.',
      [
        ['rise', 60, 60],
        ['rise', 480, 720],
        ['prove', 120, 150],
      ],
    ],
    // What stands after baking, what soaks, and flour that is put into a pan.
    [
      'Knead. Let rise 2 hours. Shape and prove 30 minutes. Bake 40 minutes. Let stand in the tin 10 minutes.',
      [
        ['rise', 120, 120],
        ['prove', 30, 30],
      ],
    ],
    ['Soak some currants 2 hours. Knead them in and let it rise 1 hour. Bake 40 minutes.', [['rise', 60, 60]]],
    ['Put the flour into a deep pan, mix all and let it rise two hours. Bake it an hour.', [['rise', 120, 120]]],
  ]
  it.each(cases)('%s', (text, expected) => {
    expect(stages(read(text))).toEqual(expected)
  })

  it('are not shaped by a tray in the title', () => {
    expect(
      stages(read('Stir, cover and leave 12 hours. Tip it out, leave 2 hours. Bake 25 minutes.', 'Focaccia in a tray')),
    ).toEqual([
      ['rise', 720, 720],
      ['rise', 120, 120],
    ])
  })

  it('are none of a sponge cake’s', () => {
    const tipsy = translate(
      '# Tipsy cake\n\n- 1 sponge cake\n- 200 ml wine\n\nLet it soak up the wine, and leave it 2 hours.\n',
      {
        file: 'receipts/x.md',
      },
    ).receipts[0]!
    expect(stages(tipsy)).toEqual([])
  })

  it('are not those of a paste without leaven', () => {
    const tart = translate(
      '# Tarts\n\n- 500 g flour\n- 400 g butter\n\nRoll out the paste, let it stand 1 hour, and bake 20 minutes.\n',
      {
        file: 'receipts/x.md',
      },
    ).receipts[0]!
    expect(stages(tart)).toEqual([])
  })
})

describe('the times of a translation', () => {
  it('say which wait is the sponge’s, and which the shaped dough’s', () => {
    const receipt = read(
      'Set a sponge and let it stand an hour. Knead it up, let it rise 2 hours, shape it, let it stand 20 minutes, bake an hour.',
    )
    const of = (language: string) => timesShown(receipt, styleOf({language})).map((line) => line.of)
    expect(of('en')).toEqual(['the sponge', 'rising', 'proving, shaped', 'baking'])
    expect(of('de').slice(0, 3)).toEqual(['Vorteig', 'gehen', 'Stückgare'])
  })
})

describe('the dough of a dish', () => {
  it('has its receipt’s own times, to five minutes', () => {
    expect(doughOf(read(cases().both))).toMatchObject({rise: 120, prove: {low: 20, likely: 20, high: 20}})
    expect(doughOf(read(cases().plain))).not.toHaveProperty('prove')
    expect(doughOf(read('Knead. Let rise 60–75 min. Shape and prove 30–45 min. Bake 40 min.'))).toMatchObject({
      rise: 70,
      prove: {low: 30, likely: 40, high: 45},
    })
  })
  it('has its kind’s where the text says only that it rises, and says so', () => {
    const receipt = read('Knead. Let rise until doubled. Shape, put in tins and let rise 45 min. Bake 40 min.')
    const usual = doughOf(read('Bake 40 min.'))!
    expect(usual.prove!.likely).toBeGreaterThan(0)
    expect(doughOf(receipt)).toMatchObject({rise: usual.rise, prove: {likely: 45}})
    expect(receipt.inferred.map(({field}) => field)).toContain('rise')
    expect(receipt.inferred.map(({field}) => field)).not.toContain('prove')
  })
  it('proves as long as front matter says', () => {
    expect(doughOf(read('Bake 40 min.', 'Wheaten bread', '---\nrise: 3 h\nprove: 50 min\n---\n\n'))).toMatchObject({
      rise: 180,
      prove: {likely: 50},
    })
  })
  it('that proves through the night stands cold, and waits for the oven', () => {
    expect(doughOf(read('Knead. Rise 2 h. Shape, and prove overnight. Bake 40 min.'))!.hold).toBeGreaterThan(usualHold())
    expect(doughOf(read('Knead. Rise 2 h. Shape, and prove overnight. Bake 40 min.'))!.cold).toBe(true)
    expect(doughOf(read(cases().both))).not.toHaveProperty('cold')
  })
  it('is none where soda raises it', () => {
    const soda = (more: string) =>
      translate(
        `# Brown bread\n\n- 500 g rye meal\n- 300 ml buttermilk\n- 1 tsp baking soda\n${more}\nBake an hour in a slow oven.\n`,
        {
          file: 'receipts/x.md',
        },
      ).receipts[0]!
    expect(doughOf(soda(''))).toBe(null)
    expect(soda('').inferred.map(({field}) => field)).not.toContain('rise')
    expect(doughOf(soda('- 20 g fresh yeast\n'))).not.toBe(null)
  })
  it('has the night of a sponge in one step, that of the evening before', () => {
    const night = read(
      'Make a poolish the evening before with some of the flour; leave it 12 hours. Mix the dough. Rise 2 hours. Bake 40 min.',
    )
    expect(night.evening?.map(({does}) => does)).toEqual(['set'])
    expect(doughOf(night)).not.toHaveProperty('sponge')
    expect(read('Rise 2 h. Bake 40 min.', 'Bread, a sponge set at night')).not.toHaveProperty('evening')
  })
  it('has no sponge of a day and a night: that is yeast being made', () => {
    const made = doughOf(read('Leave the yeast to stand for a day and night. Knead, rise 2 h. Bake 40 min.'))!
    expect(made).not.toHaveProperty('sponge')
    expect(made.rise).toBe(120)
  })
})

const cases = () => ({
  both: 'Knead. Let it rise 2 hours. Mould it into loaves, let them stand 20 minutes, and bake an hour.',
  plain: 'Knead, and let it rise three hours. Bake it an hour in a hot oven.',
})
const usualHold = (): number => doughOf(read(cases().plain))!.hold
