import {expect, it} from 'vitest'
import {fedBy} from '../src/plan/fed.js'
import {floorGrid} from '../src/plan/floor-grid.js'
import {feedsOf, jobsOf} from '../src/plan/model.js'
import type {Dish} from '../src/scale/types.js'
import {day, dish, problem} from './plan-fixtures.js'

/** Whom a dish feeds of the people expected: no outside fact is asked, only that nobody is counted twice. */
const feeding = (id: string, likely: number, more: Partial<Dish> = {}): Dish => ({
  ...dish('bread', 4),
  id,
  title: id,
  feeds: {low: likely, likely, high: likely},
  ...more,
})
const people = 14
const of = (...dishes: readonly Dish[]): readonly number[] => dishes.map(fedBy({dishes, day: {...day(), people}}))

it('no dish feeds more than are expected, nor less than it does', () => {
  expect(of(feeding('a', 44), feeding('b', 9), feeding('c', 14))).toEqual([14, 9, 14])
})

it('the batches of one line feed no more than are expected between them, each by its size; two lines each', () => {
  const batch = (n: number, likely: number): Dish => feeding(`bread-${n}`, likely, {title: `Bread (${n}/2)`})
  const [one, two] = of(batch(1, 30), batch(2, 12))
  expect(one! + two!).toBeCloseTo(people, 9)
  expect(one! / two!).toBeCloseTo(30 / 12, 9)
  expect(of(feeding('a', 20), feeding('b', 20))).toEqual([14, 14])
})

it('parts of a dish share what it feeds', () => {
  const p = problem([feeding('bread', 44)], {day: {...day(), people}})
  const jobs = jobsOf(p, floorGrid(p), new Map([['bread', 2]]))
  expect(jobs.map(feedsOf)).toEqual([7, 7])
})
