import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'
import type {Tending} from '../src/receipt/types.js'

/** Invented receipts. */
const read = (method: string): readonly Tending[] | undefined =>
  translate(`# Oat clusters\n\n- 500 g oats\n- 200 g honey\n\n${method}\n`, {file: 'oats.md'}).receipts[0]!.tending

describe('what is done to a thing while it bakes', () => {
  it.each([
    ['Bake at 150 °C for 50 minutes, stirring every 10 minutes.', {does: 'stir', text: 'stirring every 10 minutes', every: 10}],
    ['Bake for 3 hours, stirring every half hour.', {does: 'stir', every: 30}],
    ['Bake at 150 °C for 90 minutes, stirring after the first half hour.', {does: 'stir', after: 30}],
    [
      'Bake for 2 hours, stirring in the skin once after 40 minutes.',
      {text: 'stirring in the skin once after 40 minutes', after: 40},
    ],
    ['Bake for 40 minutes at 180 °C, turning the tray half way.', {does: 'turn', share: 0.5}],
    ['Bake for 40 minutes. Turn the tin halfway through the baking time.', {does: 'turn', share: 0.5}],
    ['Roast in a hot oven for 2 hours, basting every 20 minutes.', {does: 'baste', every: 20}],
    ['40 Minuten bei 150 °C backen, alle 10 Minuten wenden.', {does: 'turn', text: 'alle 10 Minuten wenden', every: 10}],
    ['40 Minuten bei 150 °C backen, nach der Hälfte der Zeit wenden.', {does: 'turn', share: 0.5}],
    ['40 Minuten bei 150 °C backen, dabei alle viertel Stunde umrühren.', {does: 'stir', every: 15}],
  ])('“%s”', (method, tending) => {
    expect(read(method)).toMatchObject([tending])
  })

  it.each([
    ['Bake for 2 hours, stirring after half an hour and again after an hour.', [30, 60]],
    ['Bake for 2 hours. Stir after 20 minutes, then again after another 30 minutes.', [20, 50]],
    ['Bake for 2 hours. Stir after 40 minutes and again after 30 minutes.', [40, 70]],
    ['Bake for 3 hours. Baste after 1 hour, and again after 90 minutes, and again after 2 hours.', [60, 90, 120]],
    ['2 Stunden bei 150 °C backen, nach 30 Minuten und nochmals nach einer Stunde wenden.', [30, 60]],
    ['Bake for 40 minutes. Turn the tin after 20 minutes and then cool.', [20]],
  ])('more than once: “%s”', (method, minutes) => {
    const tending = read(method)!
    expect(tending.map(({after}) => after)).toEqual(minutes)
  })

  it.each([
    ['Bake it two hours in a slow oven, basting it often.', 'basting it often'],
    ['Bake for 40 minutes at 180 °C. Rotate once.', 'Rotate once'],
    ['Bei 180 °C 2 Stunden backen und dabei öfter mit Bratensaft begießen.', 'öfter mit Bratensaft begießen'],
  ])('now and then: “%s”', (method, text) => {
    const [one] = read(method)!
    expect(one!.text).toBe(text)
    expect([one!.every, one!.after, one!.share]).toEqual([undefined, undefined, undefined])
  })

  it.each([
    'Stir the custard over a low heat often until thick, then bake for 40 minutes.',
    'Bake for 40 minutes at 180 °C. Turn out after 10 minutes.',
    'Bake at 220 °C for 20 minutes, then turn the oven down after 20 minutes.',
    'Knead, turning the dough every 10 minutes. Bake for 40 minutes.',
    'Bake at 220 °C for 20 minutes. Stir in the cream after 10 minutes.',
    'Bake for 30 minutes. Meanwhile, stir the sauce often in a saucepan.',
    'Bake the fruit an hour in a slow oven, and turn it every day.',
    'Stir well and bake for 30 minutes.',
  ])('not: “%s”', (method) => {
    expect(read(method)).toBeUndefined()
  })
})
