import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {readAsked} from '../src/scale/amount-phrase.js'

const asked = (text: string | null): unknown => {
  const read = readAsked(text, 40)
  if (!read.ok) return read
  return read.value.kind === 'times' ? {kind: 'times', times: read.value.times.toFraction()} : read.value
}

describe('how much a day asks of a receipt', () => {
  const cases: ReadonlyArray<[string | null, object]> = [
    [null, {kind: 'people', people: 40}],
    ['', {kind: 'people', people: 40}],
    ['12 loaves', {kind: 'count', count: 12, of: 'loaves'}],
    ['two loaves', {kind: 'count', count: 2, of: 'loaves'}],
    ['3 crocks', {kind: 'count', count: 3, of: 'crocks'}],
    ['half a dozen pies', {kind: 'count', count: 6, of: 'pies'}],
    ['3 dozen rolls', {kind: 'count', count: 36, of: 'rolls'}],
    ['a dozen of rolls', {kind: 'count', count: 12, of: 'rolls'}],
    ['for 40', {kind: 'people', people: 40}],
    ['For about 25 people', {kind: 'people', people: 25}],
    ['16 servings', {kind: 'people', people: 16}],
    ['for everyone', {kind: 'people', people: 40}],
    ['2 times', {kind: 'times', times: '2'}],
    ['1 1/2 times', {kind: 'times', times: '3/2'}],
    ['2½ times', {kind: 'times', times: '5/2'}],
    ['twice', {kind: 'times', times: '2'}],
    ['double the receipt', {kind: 'times', times: '2'}],
    ['half the receipt', {kind: 'times', times: '1/2'}],
    ['2 batches', {kind: 'times', times: '2'}],
    ['1,5 times', {kind: 'times', times: '3/2'}],
    ['3 kg', {kind: 'weight', kilograms: 3}],
    ['1,5 kg', {kind: 'weight', kilograms: 1.5}],
    ['1.5 kg of dough', {kind: 'weight', kilograms: 1.5}],
    ['fill the floor', {kind: 'floor'}],
    ['Fill the oven.', {kind: 'floor'}],
  ]
  for (const [text, value] of cases) it(`“${text}”`, () => expect(asked(text)).toEqual(value))
  it('a pound is 0.45359237 kg (NIST Handbook 44 App. C)', () => {
    const read = readAsked('10 lb', 40)
    expect(read.ok && read.value.kind === 'weight' && read.value.kilograms).toBeCloseTo(4.5359237, 5)
  })
  it('what it cannot be is said, with what to write', () => {
    for (const text of [
      '12',
      '-3 loaves',
      '0 loaves',
      '2.5 loaves',
      'for 3.5',
      'plenty',
      '1/0 loaves',
      'for',
      'for loaves',
      '999999 loaves',
      'x'.repeat(200),
    ]) {
      const read = readAsked(text, 40)
      expect(read.ok, text).toBe(false)
      if (!read.ok) expect(read.suggest.length).toBeGreaterThan(10)
    }
  })
  it('never throws, and never gives nothing or less', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.stringMatching(/^[0-9a-z ./½-]{0,20}$/)), (text) => {
        const read = readAsked(text, 40)
        if (!read.ok) return
        const v = read.value
        const size =
          v.kind === 'people'
            ? v.people
            : v.kind === 'count'
              ? v.count
              : v.kind === 'times'
                ? v.times.valueOf()
                : v.kind === 'weight'
                  ? v.kilograms
                  : 1
        expect(size).toBeGreaterThan(0)
      }),
      {numRuns: 500},
    )
  })
})
