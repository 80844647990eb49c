import {describe, expect, it} from 'vitest'
import type {Settled} from '../src/plan/settled.js'
import {type Look, onShortest, type Promised, type Road, type Ways} from '../src/plan/shortest.js'
import {fires} from './plan-fixtures.js'

/** Which fires are tried, in what order, and what is taken; the layouts themselves stand aside. No outside fact is asked. */

interface Told {
  /** Price of a short look, what the search promises and leaves out, and what the day comes to; null where it comes to none. */
  readonly price: number
  readonly promise: number
  readonly out: number
  readonly total: number | null
  /** What the layouts found break. */
  readonly violation?: number
  /** What the promise itself comes to; absent where it does not hold. */
  readonly held?: number
}

/** The climb over fires of which all this is known; the fires promised, laid out and followed, by number, the shortest first. */
function climb(told: readonly Told[], large = true) {
  const options = [...fires()].sort((a, b) => a.firing.burn - b.firing.burn).slice(0, told.length)
  const looks = options.map((option, index): Look => ({option, index, layout: null as never, price: Number.POSITIVE_INFINITY}))
  const asked: number[] = []
  const laid: number[] = []
  const followed: number[] = []
  const tried: number[] = []
  let share = 0
  const settledAt = (total: number): Settled => ({total, unplaced: [], model: {jobs: []}}) as unknown as Settled
  const ways: Ways = {
    look: (look) => {
      look.price = told[look.index]!.price
    },
    promised: (look, how): Promised => {
      if (!how) asked.push(look.index)
      const {promise, out} = told[look.index]!
      return {look, price: promise, out, laid: [], lit: 0}
    },
    held: ({look}) => {
      tried.push(look.index)
      const {held} = told[look.index]!
      return held === undefined ? null : settledAt(held)
    },
    lay: ({look}): Road[] => {
      laid.push(look.index)
      return [{look, laid: [], lit: 0, price: 1, violation: told[look.index]!.violation ?? 0}]
    },
    longer: (road) => [{...road, price: 2}],
    follow: ({look}) => {
      followed.push(look.index)
      const {total} = told[look.index]!
      return total === null ? null : settledAt(total)
    },
    large,
    tick: (done) => {
      expect(done).toBeGreaterThanOrEqual(share)
      expect(done).toBeLessThanOrEqual(1)
      share = done
    },
  }
  return {best: onShortest(looks, ways)[0]?.total ?? null, asked, tried, laid, followed}
}

describe('the shortest fire that holds the day', () => {
  const hopeless: Told = {price: 900, promise: 50, out: 7, total: 10}
  const usual: readonly Told[] = [
    hopeless,
    {price: 700, promise: 150, out: 4, total: 12},
    {price: 400, promise: 170, out: 1, total: 180},
    {price: 300, promise: 200, out: 0, total: 210},
    {price: 350, promise: 240, out: 0, total: 250},
  ]

  it('is the one of which the search promises most, however dear it looked', () => {
    const {best, asked, laid} = climb(usual)
    expect(best).toBe(180)
    // From the fire that looks best downwards, until the search leaves far too much out; nothing shorter or longer is asked of.
    expect(asked).toEqual([3, 2, 1])
    expect(laid).toEqual([2])
  })

  it('is the next where the most promising comes to no plan', () => {
    const {best, laid} = climb(usual.map((t, i) => (i === 2 ? {...t, total: null} : t)))
    expect(laid).toEqual([2, 3])
    expect(best).toBe(210)
  })

  it('is a longer one only where none of these holds the day', () => {
    const {best, asked} = climb(usual.map((t, i) => (i === 2 || i === 3 ? {...t, total: null} : t)))
    expect(asked).toEqual([3, 2, 1, 4])
    expect(best).toBe(250)
  })

  it('is looked for on another fire beside a plan where that promises much less', () => {
    const dear = usual.map((t, i) => (i === 2 ? {...t, total: 300} : t))
    expect(climb(dear, false)).toMatchObject({best: 210, laid: [2, 3]})
  })

  it('is taken as it was promised where that holds, and nothing else is laid out', () => {
    const holds = usual.map((t, i) => (i === 2 ? {...t, held: 185} : t))
    expect(climb(holds)).toMatchObject({best: 185, tried: [2], laid: [], followed: []})
    // Where the most promising does not, it is asked for another promise, and then the next.
    expect(climb(usual.map((t, i) => (i === 3 ? {...t, held: 190} : t)))).toMatchObject({best: 190, tried: [2, 2, 3], laid: []})
  })

  it('is laid out on another fire all the same where that promises much less than what held', () => {
    const dear = usual.map((t, i) => (i === 3 ? {...t, held: 215} : t))
    expect(climb(dear, false)).toMatchObject({best: 180, tried: [2, 2, 3], laid: [2]})
    // On a large day a plan in time is enough.
    expect(climb(dear)).toMatchObject({best: 215, laid: []})
  })

  it('is none where what is laid out breaks too much, and none is followed then', () => {
    const broken = usual.map((t) => ({...t, violation: 40}))
    expect(climb(broken)).toMatchObject({best: null, followed: []})
    // A little too much is looked at for longer.
    expect(climb(usual.map((t) => ({...t, violation: 12})))).toMatchObject({best: null, followed: []})
    expect(climb(usual.map((t) => ({...t, violation: 7}))).followed.length).toBeGreaterThan(0)
  })

  it('may lack a place for two on a small day, which is soon tried', () => {
    const two = usual.map((t, i) => (i === 2 ? {...t, out: 2} : t))
    expect(climb(two, false).best).toBe(180)
    expect(climb(two, true).best).toBe(210)
  })
})
