import {describe, expect, it} from 'vitest'
import {lookUpKind} from '../src/lexicon/index.js'
import {translate} from '../src/receipt/translate.js'
import type {Receipt} from '../src/receipt/types.js'
import {heatNeed} from '../src/scale/need.js'
import {deBook} from '../src/sheets/words/de-sentences.js'
import {inBook} from '../src/sheets/words/sentences.js'

/** Invented receipts. Old books name the fiercest heat to warn of it, and set light things in when it is gone: common practice, no source. */
const read = (method: string): Receipt =>
  translate(`# Sponge cake\n\n- 6 eggs\n- 200 g sugar\n- 150 g flour\n\n${method}\n`, {file: 'cakes.md'}).receipts[0]!
const sponge = lookUpKind('sponge')!
const needOf = (method: string) => heatNeed(read(method), sponge, 'sponge cake')

describe('a heat that is warned of', () => {
  it.each([
    ['Bake it twenty minutes. Do not put it into a fierce oven.', 'a fierce oven', 232],
    ['Never bake it in a hot oven; twenty minutes will do.', 'a hot oven', 204],
    ['It must not be baked in a very hot oven.', 'a very hot oven', 232],
    ['Bake twenty minutes, but not in a furious heat.', 'a furious heat', 232],
    ['Avoid a hot oven; bake twenty minutes.', 'a hot oven', 204],
    ['Bake twenty minutes. A fierce oven will spoil it.', 'A fierce oven', 232],
    ['It will not bear a hot oven; bake it twenty minutes.', 'a hot oven', 204],
    ['Bake it twenty minutes in no fierce heat.', 'no fierce heat', 232],
  ])('is no heat to bake in: %s', (method, words, most) => {
    expect(read(method).oven.map(({text, against, celsius}) => [text, against, celsius.high])).toEqual([[words, true, most]])
    const {need} = needOf(method)
    expect(need.startHigh).toBeLessThanOrEqual(most)
    expect(need.startBest).toBe(sponge.start.best)
  })

  it('is the end of what its kind would bear', () => {
    const bread = lookUpKind('white bread')!
    const {need, inferred} = heatNeed(read('Bake an hour. Never bake it in a fierce oven.'), bread, 'bread')
    expect(bread.start.high).toBeGreaterThan(232)
    expect(need.startHigh).toBe(232)
    const why = inferred.find(({field, why: reason}) => field === 'oven' && reason.startsWith('no hotter'))!.why
    expect(why).toBe('no hotter: the receipt warns of “a fierce oven”')
    expect(inBook(why, deBook)).toBe('nicht heißer: das Rezept warnt vor „a fierce oven“')
  })

  it.each([
    'Bake it in a quick oven.',
    'Do not bake it till the oven is hot.',
    'Do not be afraid of a hot oven; bake it.',
    'Bake it in a hot oven, and do not open the door.',
    'A hot oven will brown it.',
  ])('and another is not: %s', (method) => {
    expect(read(method).oven.map(({against}) => against)).toEqual([undefined])
  })

  it('leaves the heat said before it as it is', () => {
    expect(needOf('Bake in a moderate oven, but never in a fierce one.').need.startHigh).toBeLessThan(205)
  })
})

describe('a heat that is gone', () => {
  it.each([
    'Bake it. Not to be put in till the loaves have taken off the first minutes of furious heat.',
    'Set it in the oven when the furious heat has gone off.',
    'Put it in the oven after the fierce heat is spent.',
    'Bake it once the bread has taken the fierce heat off the oven.',
    'Bake it in an oven that is past its fierce heat.',
    'Wait until the oven has lost its fierce heat, then bake it.',
  ])('is one that has come down: %s', (method) => {
    expect(read(method).oven.map(({band, celsius}) => [band, celsius])).toEqual([['moderate', {low: 163, high: 204}]])
    expect(needOf(method).need.startHigh).toBeLessThanOrEqual(204)
  })
})
