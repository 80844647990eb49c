import {beforeAll, describe, expect, it} from 'vitest'
import {readDayFolder} from '../src/cli/day-folder.js'
import {type MadePlan, makePlan} from '../src/plan/make.js'
import type {Job} from '../src/plan/model.js'
import {overHands} from '../src/plan/proof.js'
import {lived} from './lived-day.js'

/**
 * The demo's day, invented, lived through in an oven that is not as it was believed. Nothing outside is asked but that a day followed to the
 * letter comes to what was asked for.
 */
const read = readDayFolder('corpus-demo')
let made: MadePlan
beforeAll(() => {
  made = makePlan({oven: read.oven, day: read.day, receipts: read.receipts})
})

describe('a day lived through by its plan, the heat tested before everything that is set in', () => {
  it.each([
    [1, 0],
    [1, 20],
    [0.95, 0],
    [1.05, 20],
  ])(
    'has all of it baked, and in time, where the oven stores %f of the heat and is lit %i min late',
    (stored, late) => {
      const {baked, broken} = lived(read, made, stored, late)
      for (const {id, count, title} of made.dishes) {
        const mine = baked.filter(({dish}) => dish === id)
        expect(
          mine.reduce((sum, part) => sum + part.count, 0),
          title,
        ).toBe(count)
        // A cook leaves in what is not done: less than four fifths of the heat is no small matter.
        for (const {share} of mine) expect(share, title).toBeGreaterThan(0.8)
      }
      for (const {dish, drawn} of baked) {
        const {wantedBy, title} = made.dishes.find(({id}) => id === dish)!
        if (wantedBy !== null) expect(drawn - wantedBy, title).toBeLessThanOrEqual(10)
      }
      expect(broken).toEqual([])
    },
    60_000,
  )
})

describe('the hands at one opening', () => {
  it('have no more to do than they have minutes for, what is set in and what is drawn together', () => {
    const job = (handling: number, since: number | null = null): Job => ({handling, since}) as Job
    const jobs = [job(3), job(2), job(2.5), job(4, 500)]
    const took = (draw: number): Parameters<typeof overHands>[1] => [
      {s: 1, e: 9, w: 0},
      {s: 1, e: 12, w: 0},
      {s: 9, e: 14, w: 0},
      {s: -5, e: draw, w: 0},
    ]
    expect(overHands(jobs, took(20), 5)).toEqual([0, 2])
    expect(overHands(jobs, took(20), 5.5)).toEqual([])
    // How long it took to set in what is in the oven is past.
    expect(overHands(jobs, took(14), 6)).toEqual([2, 3])
  })
})
