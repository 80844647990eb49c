import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'
import type {Receipt} from '../src/receipt/types.js'
import {coldProveOf, coldRiseOf, mostWarm} from '../src/scale/cold-rise.js'
import {twoLoaves} from './loaves-day.js'

/*
 * Sentences written for these tests in the manner of receipts; that doughs rise slowly in a refrigerator or a cellar: common practice, no source.
 * That what has egg or milk in it stands at 5 °C or colder, or for four hours at most: FDA Food Code 2022, 3-501.16(A)(2), 3-501.19(B).
 */
const plain = '- 1 kg flour\n- 650 g water\n- 20 g salt\n- 7 g dry yeast\n'
const rich = '- 500 g flour\n- 6 eggs\n- 50 ml milk\n- 10 g salt\n- 10 g dry yeast\n'
const read = (text: string, list = plain): Receipt =>
  translate(`# Tin loaves\n\nMakes 2 loaves.\n\n${list}\n${text}\n`, {file: 'receipts/x.md'}).receipts[0]!
const doughOf = (receipt: Receipt) => twoLoaves(receipt).dishes[0]!.dough!
const places = ({times}: Receipt): string[] => times.flatMap(({stage, place}) => (stage ? [`${stage} ${place ?? '-'}`] : []))

describe('where a dough rises', () => {
  it.each<[string, string[]]>([
    [
      'Knead. Leave to rise in the refrigerator overnight, 8 to 12 hours. Shape and prove for 2 hours.',
      ['rise refrigerator', 'prove -'],
    ],
    ['Knead. Leave to rise overnight in the refrigerator. Shape and prove for 2 hours.', ['rise refrigerator', 'prove -']],
    ['Mix the dough and let it rise 8 hours, in a cool larder. Shape and prove for 2 hours.', ['rise cellar', 'prove -']],
    ['Mix the dough and let it stand in a cool place for 10 hours. Shape and prove for 2 hours.', ['rise cellar', 'prove -']],
    [
      'Knead and put the dough into the bottom of the fridge. Leave it 12 hours. Shape, prove 1 hour.',
      ['rise refrigerator', 'prove -'],
    ],
    ['Knead, cover the dough and refrigerate overnight. Shape and prove for 2 hours.', ['rise refrigerator', 'prove -']],
    [
      'Knead. Let rise 1 hour in the warm, then in the fridge overnight. Shape, prove 1 hour.',
      ['rise -', 'rise refrigerator', 'prove -'],
    ],
    [
      'Knead. Let rise 1 hour, then put it in the fridge overnight. Shape, prove 1 hour.',
      ['rise -', 'rise refrigerator', 'prove -'],
    ],
    // Notes name the place by itself.
    ['Knead. Rise 1 1/2 - 2 hours then fridge overnight. Shape, prove 3 hrs.', ['rise -', 'rise refrigerator', 'prove -']],
    ['Knead. Rise 1 hour, fridge for 12 hours. Shape, prove 2 hours.', ['rise -', 'rise refrigerator', 'prove -']],
    ['Knead. Rise 1 hour. Fridge overnight. Shape, prove 2 hours.', ['rise -', 'rise refrigerator', 'prove -']],
    ['Knead. Leave to rise overnight, fridge. Shape, prove 2 hours.', ['rise refrigerator', 'prove -']],
    ['Knead. Leave to rise overnight (fridge). Shape, prove 2 hours.', ['rise refrigerator', 'prove -']],
    [
      'Knead. 1 Std. gehen lassen, dann Kühlschrank über Nacht. Formen, 2 Stunden gehen lassen.',
      ['rise -', 'rise refrigerator', 'prove -'],
    ],
    ['Knead. Let it rise 1 hour, shape it and put it in the fridge to prove overnight.', ['rise -', 'prove refrigerator']],
    ['Knead. Let it rise 2 hours. Shape, and prove in the fridge overnight, 8 to 14 hours.', ['rise -', 'prove refrigerator']],
    ['Take the butter out of the refrigerator, knead it in and let rise 8 hours. Shape, prove 1 hour.', ['rise -', 'prove -']],
    ['Knead. Let it rise 8 hours, not in the refrigerator. Shape, prove 1 hour.', ['rise -', 'prove -']],
    ['Den Teig kneten und über Nacht im Kühlschrank gehen lassen. Formen, 1 Stunde Stückgare.', ['rise refrigerator', 'prove -']],
    ['Den Teig kneten und 10 Stunden im Keller gehen lassen. Formen, 1 Stunde Stückgare.', ['rise cellar', 'prove -']],
    ['Knead well, cover, and put in the refrigerator overnight. Shape, prove 1 hour.', ['rise refrigerator', 'prove -']],
    ['Knead, cover, and place overnight in the refrigerator. Shape, prove 1 hour.', ['rise refrigerator', 'prove -']],
    ['Knead and store in the pantry overnight. Shape, prove 1 hour.', ['rise cellar', 'prove -']],
    ['Knead well, cover, and leave in a cool larder overnight. Shape, prove 1 hour.', ['rise cellar', 'prove -']],
    [
      'Mix the evening before and leave in a cool cellar overnight. In the morning shape it and prove 1 hour.',
      ['rise cellar', 'prove -'],
    ],
    ['Knead and cover overnight. Shape, prove 1 hour.', ['rise -', 'prove -']],
    ['Knead. Shape, cover and put in the refrigerator overnight.', ['prove refrigerator']],
    ['Alles verkneten und über Nacht in den Kühlschrank stellen. Formen, 1 Stunde Stückgare.', ['rise refrigerator', 'prove -']],
    ['Alles verkneten. Über Nacht im Kühlschrank lassen. Formen, 1 Stunde Stückgare.', ['rise refrigerator', 'prove -']],
    ['Kneten und über Nacht in die Speisekammer stellen. Formen, 1 Stunde Stückgare.', ['rise cellar', 'prove -']],
  ])('%s', (text, expected) => {
    expect(places(read(`${text} Bake 40 minutes.`))).toEqual(expected)
  })

  it('is told of no working: eggs beaten an hour in the cellar rise not', () => {
    const text = 'Knead. Beat the eggs one hour in the cellar, add them, let rise 2 hours. Shape, prove 1 hour.'
    expect(places(read(`${text} Bake 40 minutes.`))).toEqual(['rise -', 'prove -'])
  })

  it('is the oven of nothing that is put there for the night', () => {
    const {times} = translate(
      '# Mürbeteig\n\n- 300 g Mehl\n- 200 g Butter\n\nÜber Nacht in den Kühlschrank legen. Bei 180 °C 20 Minuten backen.\n',
      {file: 'receipts/x.md'},
    ).receipts[0]!
    expect(times.map(({of, minutes}) => [of, minutes.low])).toEqual([
      ['stand', 480],
      ['bake', 20],
    ])
  })
})

describe('a dough that rises cold', () => {
  const night = 'Leave to rise in the refrigerator overnight, 8 to 12 hours. Shape and prove for 2 to 3 hours. Bake 40 minutes.'
  it('waits in its place as what proves cold does', () => {
    const dough = doughOf(read(`Knead. ${night}`))
    expect(dough).toMatchObject({
      rise: 600,
      bulk: {low: 480, high: 720},
      bulkIn: {place: 'refrigerator', warm: 0},
      prove: {low: 120, high: 180},
      bulkHold: 240,
    })
    expect([coldRiseOf(dough)!.place, coldProveOf(dough), mostWarm(dough)]).toEqual(['refrigerator', null, Infinity])
    const {hold} = doughOf(read('Knead. Leave to rise 2 hours. Shape, prove 1 hour. Bake 40 minutes.'))
    expect(dough.hold).toBe(hold)
  })
  it('may stand warm first', () => {
    const dough = doughOf(
      read('Knead. Let rise 1 hour, then put it in the fridge overnight. Shape, prove 1 hour. Bake 40 minutes.'),
    )
    expect(dough).toMatchObject({rise: 660, bulkIn: {place: 'refrigerator', warm: 60}})
  })
  it('with egg or milk in it stands in the refrigerator, and in the warm for four hours at most', () => {
    const of = (text: string) => {
      const {dishes, messages} = twoLoaves(read(`Knead. ${text} Bake 40 minutes.`, rich))
      const dough = dishes[0]!.dough!
      return [
        coldRiseOf(dough)?.place,
        coldProveOf(dough),
        mostWarm(dough),
        messages.filter(({rule}) => rule === 'scale-spoils').length,
      ]
    }
    expect(of(night)).toEqual(['refrigerator', null, 240, 0])
    expect(of('Leave to rise overnight in a cool place. Shape, prove 1 hour.')).toEqual(['refrigerator', null, 240, 1])
    expect(of('Leave to rise overnight, 8 to 12 hours. Shape, prove 1 hour.')).toEqual(['refrigerator', null, 240, 1])
    expect(of('Leave to rise 2 hours. Shape and prove overnight, 8 to 12 hours.')).toEqual([undefined, 'refrigerator', 240, 1])
    expect(of('Leave to rise 2 hours. Shape and prove in the fridge overnight.')).toEqual([undefined, 'refrigerator', 240, 0])
    expect(of('Leave to rise 2 hours. Shape and prove 5 hours.')).toEqual([undefined, 'refrigerator', 240, 1])
    expect(of('Leave to rise 2 hours. Shape and prove 1 hour.')).toEqual([undefined, null, 240, 0])
    expect(of('Leave to rise 3 hours. Shape and prove 2 hours.')).toEqual([undefined, null, 310, 1])
    const dough = doughOf(read('Knead. Leave to rise overnight, 8 to 12 hours. Shape, prove 1 hour. Bake 40 minutes.'))
    expect([coldRiseOf(dough), mostWarm(dough)]).toEqual([null, Infinity])
  })
})

describe('what of a dough spoils', () => {
  const night = 'Knead. Leave to rise overnight. Shape and prove for 2 hours.'
  const spoils = (list: string): boolean => doughOf(read(night, list)).spoils === true

  it('is what is mixed into it', () => {
    expect(spoils(`${plain}- 2 eggs\n`)).toBe(true)
    expect(spoils(`${plain}\nTopping\n\n- 200 g sour cream\n- 2 eggs\n`)).toBe(false)
    expect(spoils(`Dough\n\n${plain}- 100 ml milk\n\nFilling\n\n- 50 g raisins\n`)).toBe(true)
  })

  it('is no hard cheese', () => {
    expect(spoils(`${plain}- 100 g grated cheese\n`)).toBe(false)
    expect(spoils(`${plain}- 100 g cream cheese\n`)).toBe(true)
  })
})
