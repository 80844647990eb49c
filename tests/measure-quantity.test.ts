import math from 'js-quantities'
import {describe, expect, it} from 'vitest'
import {parseClock, parseDuration, parseLength, parseMass, parseTemperature} from '../src/measure/quantity.js'

const value = <T>(parsed: {ok: true; value: T} | {ok: false; reason: string}): T => {
  if (!parsed.ok) throw new Error(parsed.reason)
  return parsed.value
}

describe('sizes with units', () => {
  // Factors: js-quantities, a second reference library. convert-units carries six figures, so agreement is asked to 1 in a million.
  const lengths: Array<[string, string]> = [
    ['36 in', '36 in'],
    ['9 1/2 inches', '9.5 in'],
    ['91,5 cm', '91.5 cm'],
    ['9½ in', '9.5 in'],
    ['1-1/2 in', '1.5 in'],
    ['91 cm', '91 cm'],
    ['3 ft 6 in', '42 in'],
    ['3 feet and 6 inches', '42 in'],
    ['11\' 10"', '142 in'],
    ['0.45 m', '0.45 m'],
    ['250mm', '250 mm'],
  ]
  it.each(lengths)('%s', (text, reference) => {
    expect(value(parseLength(text)) / math(reference).to('m').scalar).toBeCloseTo(1, 6)
  })
  it('weights', () => {
    expect(value(parseMass('2 lb 4 oz')) / math('36 oz').to('kg').scalar).toBeCloseTo(1, 5)
    expect(value(parseMass('1.5 kg'))).toBe(1.5)
  })
  it('a bare number says which units to write', () => {
    expect(parseLength('36')).toEqual({ok: false, reason: '“36” has no unit', suggest: 'write “36 in” or “36 cm”'})
    expect(parseMass('3')).toMatchObject({ok: false, suggest: 'write “3 lb” or “3 kg”'})
    expect(parseDuration('90')).toMatchObject({ok: false, suggest: 'write “90 min” or “90 h”'})
    expect(parseTemperature('350')).toMatchObject({ok: false, suggest: 'write “350 °F” or “350 °C”'})
  })
  it.each(['', '-3 in', 'wide', '3 stones', '1/0 in', '36 in wide'])('refuses %j', (text) => {
    expect(parseLength(text).ok).toBe(false)
  })
})

describe('times', () => {
  const minutes: Array<[string, number, number]> = [
    ['2 h', 120, 120],
    ['1 h 30 min', 90, 90],
    ['1 1/2 hours', 90, 90],
    ['1-1/2 h', 90, 90],
    ['45-60 min', 45, 60],
    ['45 – 60 min', 45, 60],
    ['3 to 4 hours', 180, 240],
    ['40 min to 1 h', 40, 60],
  ]
  it.each(minutes)('%s', (text, low, high) => {
    expect(value(parseDuration(text))).toEqual({low, high})
  })
  it('refuses a range that runs backwards', () => expect(parseDuration('60-45 min').ok).toBe(false))
  const clock: Array<[string, number]> = [
    ['5 am', 300],
    ['5:30 pm', 1050],
    ['12 am', 0],
    ['12:15 pm', 735],
    ['12 noon', 720],
    ['noon', 720],
    ['midnight', 1440],
    ['17:30', 1050],
    // ISO 8601: the end of a day.
    ['24:00', 1440],
    ['06:05', 365],
    ['tomorrow 8 am', 1920],
    ['next day 6:15 am', 1815],
    ['6:15 am next day', 1815],
    ['21:00 the day before', -180],
    ['4 p.m.', 960],
  ]
  it.each(clock)('%s', (text, at) => expect(value(parseClock(text))).toBe(at))
  it.each(['25:00', '24:30', '5', '13 pm', '4:75 pm', 'soon', ''])('refuses %j', (text) =>
    expect(parseClock(text).ok).toBe(false),
  )
})

describe('temperatures', () => {
  it.each([32, 212, 350, 450])('%d °F against js-quantities', (f) => {
    expect(value(parseTemperature(`${f} °F`))).toBeCloseTo(math(`${f} tempF`).to('tempC').scalar, 9)
  })
  it.each(['180 °C', '180C', '180 degrees Celsius', '180 c.'])('%s', (t) => expect(value(parseTemperature(t))).toBe(180))
  it('below absolute zero is refused', () => expect(parseTemperature('-300 °C').ok).toBe(false))
})
