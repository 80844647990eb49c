import {describe, expect, it} from 'vitest'
import {lookUpKind} from '../src/lexicon/index.js'
import {translate} from '../src/receipt/translate.js'
import type {Receipt} from '../src/receipt/types.js'
import {heatNeed} from '../src/scale/need.js'

/** Invented receipts. What is left in the oven as it cools after the bake is no part of the bake: common practice, no source. */
const read = (method: string, title = 'Almond meringues'): Receipt =>
  translate(`# ${title}\n\n- 3 egg whites\n- 180 g sugar\n\n${method}\n`, {file: 'sweets.md'}).receipts[0]!
const needOf = (method: string, kind = 'meringue') => heatNeed(read(method), lookUpKind(kind)!, kind).need

describe('left in the oven after the bake', () => {
  it.each([
    ['Bake at 110 °C for 80 minutes, then leave in the cooling oven overnight.', 'leave in the cooling oven overnight', 480],
    [
      'Bake at 130 °C for 1 hour. Turn off the oven and leave it inside to cool overnight.',
      'Turn off the oven and leave it inside to cool overnight',
      480,
    ],
    ['Bake at 110 °C for 80 minutes, then leave in the oven till morning.', 'leave in the oven till morning', 480],
    [
      'Bake at 160 °C for 55 minutes. Leave to cool in the oven with the door ajar for 1 hour, then chill overnight.',
      'Leave to cool in the oven with the door ajar for 1 hour',
      60,
    ],
    [
      'Bake at 160 °C for 55 minutes, turn off the oven and leave for half an hour.',
      'turn off the oven and leave for half an hour',
      30,
    ],
    ['Bake at 160 °C for 55 minutes. Turn the oven off. Leave them inside for 2 hours.', 'Leave them inside for 2 hours', 120],
    [
      'Bei 160 °C 55 Minuten backen. Den Ofen ausschalten und 30 Minuten darin stehen lassen.',
      'Den Ofen ausschalten und 30 Minuten darin stehen lassen',
      30,
    ],
    ['Bei 110 °C 80 Minuten backen, dann über Nacht im Ofen lassen.', 'über Nacht im Ofen lassen', 480],
  ])('“%s”', (method, words, low) => {
    const {cooling, times} = read(method)
    expect(cooling).toMatchObject({text: words, minutes: {low}})
    expect(cooling!.end - cooling!.start).toBe(words.length)
    expect(times.filter((time) => time.cooling).map(({minutes}) => minutes.low)).toEqual([low])
    // Its dose is that of the bake alone.
    const [bake] = times.filter((time) => time.of === 'bake' && !time.cooling)
    expect(needOf(method).minutes.likely).toBe(bake!.minutes.low)
  })

  it.each([
    [
      'Bake at 110 °C for 1 hour. Switch off the oven and leave to go cold inside.',
      'Switch off the oven and leave to go cold inside',
    ],
    ['Bei 110 °C 90 Minuten backen und im ausgeschalteten Ofen auskühlen lassen.', 'im ausgeschalteten Ofen auskühlen lassen'],
  ])('without a time: “%s”', (method, words) => {
    expect(read(method).cooling).toEqual({text: words, start: expect.any(Number), end: expect.any(Number)})
  })

  it.each([
    'Bake at 160 °C for 1 hour. Turn off the oven, take them out and cool for 30 minutes on a rack.',
    'Bake at 160 °C for 40 minutes. Remove from the oven and leave to cool for 1 hour.',
    'Bake an hour. If the gas oven be not turned off, and things are left inside, it costs much.',
    'Bake for an hour in a cool oven.',
    'Bake half an hour in a hot oven, then two hours in a cooling oven.',
    'Bake four hours, or let it stand in the oven all night.',
    'Put them into a slow oven and leave them there all night.',
    'Bei 160 °C 60 Minuten backen. Aus dem Ofen nehmen und 1 Stunde abkühlen lassen.',
  ])('not: “%s”', (method) => {
    expect(read(method).cooling).toBeUndefined()
    expect(read(method).times.some((time) => time.cooling)).toBe(false)
  })

  it('is borne through the night, till the oven is cold where it keeps without warmth', () => {
    const night = 'Bake at 110 °C for 80 minutes, then leave in the cooling oven overnight.'
    expect(needOf(night)).toMatchObject({overnight: true, cools: true, held: true, minutes: {likely: 80}})
    expect(needOf(night).endLow).toBeLessThan(30)
    expect(needOf(night).longest).toBeGreaterThan(240)
    // What holds egg and curd may stay, and keeps to the rules for warm food.
    const cake = needOf('Bake at 160 °C for 55 minutes. Turn off the oven and leave inside overnight.', 'custard')
    expect(cake.overnight).toBe(true)
    expect(cake.cools).toBeUndefined()
    expect(needOf('Bake at 160 °C for 55 minutes. Leave to cool in the oven for 1 hour.', 'custard')).toMatchObject({
      overnight: false,
      minutes: {likely: 55},
      longest: 70,
    })
    // A night in the refrigerator is none in the oven.
    expect(
      needOf(
        'Bake at 160 °C for 55 minutes. Leave to cool in the oven with the door ajar for 1 hour, then chill overnight.',
        'custard',
      ).overnight,
    ).toBe(false)
  })

  it('is no falling heat that it bakes on', () => {
    expect(read('Bake at 110 °C for 80 minutes, then leave in the cooling oven overnight.').falls).toBeUndefined()
  })
})

describe('what remains in the oven through the night after its bake', () => {
  const bread = 'Bake three or four hours in a very hot oven.'
  it('may stay its whole night, till the oven is cold where it keeps without warmth', () => {
    const need = needOf(`${bread} It is all the better for remaining in the oven over night.`, 'brown bread')
    expect(need).toMatchObject({overnight: true, remains: true, cools: true, longest: 720, minutes: {low: 180, high: 240}})
    expect(need.endLow).toBe(20)
    expect(needOf(bread, 'brown bread').remains).toBeUndefined()
  })

  it('and no night elsewhere, nor one that is the whole bake', () => {
    expect(needOf(`Let it rise over night. ${bread}`, 'brown bread').remains).toBeUndefined()
    expect(needOf('Bake four hours, or leave it in the oven over night.', 'brown bread').remains).toBeUndefined()
    expect(needOf('Leave it in the slack oven overnight.', 'brown bread').remains).toBeUndefined()
  })
})
