import {describe, expect, it} from 'vitest'
import {floorGrid, zoneAt} from '../src/plan/floor-grid.js'
import {placeDay, placeOne, vesselsOf} from '../src/plan/places.js'
import type {Seat, Standing, ToPlace} from '../src/plan/standing.js'
import {generator} from '../src/scale/random-numbers.js'
import {dish, problem as problemOf} from './plan-fixtures.js'

/** Places of a plan that hangs on the wall, of which one dish has to leave its own for the heat. No outside fact is asked. */
const grid = floorGrid(problemOf([]))
const bread = dish('bread', 1, {id: 'small'})
const at = (v: Seat): string => `${v.x} ${v.y} ${v.turn}`

describe('the places of the plan before', () => {
  it('are all kept but those of what has to leave its own, where it finds others', () => {
    const random = generator(77)
    const pick = (k: number): number => Math.floor(random() * k)
    let kept = 0
    let keptElse = 0
    let tried = 0
    for (let trial = 0; trial < 300; trial++) {
      const items = Array.from({length: 4 + pick(4)}, (_, i): ToPlace => {
        const from = pick(20)
        return {
          dish: {...bread, id: `d${i}`},
          first: 1,
          count: 1 + pick(3),
          from,
          to: from + 8 + pick(20),
          where: pick(4),
          fits: [true, true, true],
        }
      })
      const {placed, refused} = placeDay(grid, [], items)
      if (refused.length > 0) continue
      const [leaver] = items
      const zones = new Set(vesselsOf(leaver!, placed).map((v) => zoneAt(grid, v.y)))
      const moved: ToPlace = {...leaver!, fits: [!zones.has(0), !zones.has(1), !zones.has(2)]}
      const others = items.slice(1)
      const standing = others.flatMap((item) => vesselsOf(item, placed))
      if (!placeOne(grid, standing, moved)) continue
      tried++
      const day = [moved, ...others]
      const known = new Map(day.map((item, i): [ToPlace, readonly Seat[]] => [item, vesselsOf(items[i]!, placed)]))
      const same = (now: readonly Standing[]): number =>
        others.filter((item) => {
          const before = vesselsOf(item, placed).map(at)
          return vesselsOf(item, now).every((v) => before.includes(at(v)))
        }).length
      const hung = placeDay(grid, [], day, known, true)
      expect(hung.refused).toEqual([])
      expect(same(hung.placed)).toBe(others.length)
      kept += others.length
      keptElse += same(placeDay(grid, [], day, known).placed)
    }
    expect(tried).toBeGreaterThan(10)
    expect(keptElse).toBeLessThan(kept)
  })
})
