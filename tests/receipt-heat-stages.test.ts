import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'

/**
 * Heats and times as modern receipts write them short: a mark and degrees in one, a heat without its degree sign, minutes without their unit,
 * and the heat within what is baked. Written for these tests, read by hand; common practice, no source, but where one is named.
 */
const read = (text: string) => translate(`# Pie\n\n- 500 g apples\n\n${text}\n`, {file: 'a.md'}).receipts[0]!
const heats = (text: string): string[] =>
  read(text).oven.map(({text: said, celsius: {low, high}}) => `${said}: ${[...new Set([low, high].map(Math.round))].join('–')}`)
const bakes = (text: string): Array<readonly [number, number, boolean]> =>
  read(text)
    .times.filter(({of}) => of === 'bake')
    .map(({minutes: {low, high}, then}) => [low, high, then === true] as const)

describe('a gas mark and degrees with nothing between', () => {
  // Mark 5 is 375 °F, which is 190.6 °C (NIST SP 811, B.8): the two agree.
  it.each([
    ['Bake at gas mark 5/190°C for 40 minutes.', 'gas mark 5/190°C: 190–191'],
    ['Bake at gas mark 5/190 for 40 minutes.', 'gas mark 5/190: 190–191'],
    ['Bake in a preheated oven, Gas Mark 5/375°F/190°C, for 40 minutes.', 'Gas Mark 5/375°F/190°C: 190–191'],
    ['Bake at 190°C/gas mark 5 for 40 minutes.', '190°C/gas mark 5: 190–191'],
    ['Bake at gas 4/5 for 40 minutes.', 'gas 4/5: 177–191'],
    ['Bake at gas 1/4 for 40 minutes.', 'gas 1/4: 107'],
  ])('%s', (text, heat) => {
    expect(heats(text)).toEqual([heat])
    expect(bakes(text)).toEqual([[40, 40, false]])
  })

  it('says where the two do not agree', () => {
    const {notes} = read('Bake at gas mark 5/230°C for 40 minutes.').oven[0]!
    expect(notes?.some((note) => note.includes('the temperatures disagree'))).toBe(true)
  })
})

describe('a heat without its degree sign', () => {
  it.each([
    ['Bake at 425 for 15 minutes, then reduce to 350 and bake 35 minutes more.', ['425: 218', '350: 177']],
    ['Bake at 425° for 15 minutes, then reduce heat to 350 for 35 minutes.', ['425°: 218', '350: 177']],
    ['Bake at 425 for 15, then turn the oven down to 350 for 35 minutes.', ['425: 218', '350: 177']],
    ['Bake at 425 for 15 minutes. Lower the heat to 350; bake 35 minutes.', ['425: 218', '350: 177']],
  ])('%s', (text, found) => {
    expect(heats(text)).toEqual(found)
    expect(bakes(text)).toEqual([
      [15, 15, false],
      [35, 35, true],
    ])
  })

  it.each([
    'Bake at 425°F for 15 minutes. Lower the heat to 350°F and bake 35 minutes.',
    'Bake at 425°F for 15 minutes.\n\nReduce the oven to 350°F. Bake 35 minutes.',
    '1. Bake at 425°F for 15 minutes.\n2. Turn down to gas 4 and bake 35 minutes.',
    'Bei 220 °C 15 Minuten backen. Die Hitze auf 180 °C reduzieren und 35 Minuten backen.',
    'Bei 220 °C 15 Minuten backen. Die Hitze auf 180 °C zurückschalten und 35 Minuten backen.',
    'Bei 180 °C 15 Minuten backen. Die Hitze auf 220 °C erhöhen und 35 Minuten backen.',
  ])('and what bakes at it bakes on: %s', (text) => {
    expect(bakes(text)).toEqual([
      [15, 15, false],
      [35, 35, true],
    ])
  })

  it('but not where another batch is baked, or the tin is turned', () => {
    expect(bakes('Bake 15 minutes. Turn the tin. Bake the other cakes 35 minutes.').map(([, , then]) => then)).toEqual([
      false,
      false,
    ])
  })

  it('is what the oven heats to', () => {
    expect(heats('Put the skillet in the oven while it heats to 450. Bake 20 minutes.')).toEqual(['450: 232'])
  })

  it.each([
    'Boil the cider to reduce to 350 ml. Bake at 180 °C for 30 minutes.',
    'Reduce to 200 g of sauce. Bake at 180 °C for 30 minutes.',
    'Boil until it is reduced to 250, that is by half. Bake at 180 °C for 30 minutes.',
  ])('and no amount: %s', (text) => {
    expect(heats(text).filter((heat) => !heat.startsWith('250'))).toEqual(['180 °C: 180'])
  })
})

describe('minutes without their unit', () => {
  it.each([
    ['Bake at 425 for 15, then at 350 for 30 minutes.', [15, 15]],
    ['Bake at 200 °C for 35-40.', [35, 40]],
    ['Bake at 350° for 30 until brown.', [30, 30]],
  ])('stand right behind the heat: %s', (text, [low, high]) => {
    expect(bakes(text)[0]).toEqual([low, high, false])
  })

  it.each([
    'Bake at 200 °C for 12 people.',
    'Bake at 200 °C for 2.',
    'This is for 15. Bake at 200 °C.',
    'Make it for 30, and bake.',
  ])('but not where something else is counted: %s', (text) => expect(bakes(text)).toEqual([]))
})

describe('a heat within what is baked', () => {
  it.each([
    'Bake at 220 °C for 40 minutes, until the chicken reaches 74 °C.',
    'Bake at 220 °C for 40 minutes, until chicken reaches 165°F.',
    'Bake at 220 °C for 40 minutes, till it registers 75 °C.',
    'Bake at 220 °C until it is 96 °C inside, 40 minutes.',
    'Bake at 220 °C until 75 °C in the thickest part, 40 minutes.',
  ])('is no oven’s: %s', (text) => expect(heats(text)).toEqual(['220 °C: 220']))

  it('but the oven’s own is', () => {
    expect(heats('Wait until the oven reaches 100 °C, then dry the apples 3 hours.')).toEqual(['100 °C: 100'])
  })
})

describe('an hour in quarters', () => {
  it.each([
    ['Bake half an hour, or three quarters, according to the thickness of the cake.', 30, 45],
    ['Bake half an hour or three quarters.', 30, 45],
    ['Bake it six quarters of an hour.', 90, 90],
    ['Bake it five quarters of an hour.', 75, 75],
  ])('%s', (text, low, high) => expect(bakes(text)).toEqual([[low, high, false]]))
})
