import {describe, expect, it} from 'vitest'
import {floorGrid} from '../src/plan/floor-grid.js'
import {placeDay} from '../src/plan/places.js'
import {putOut} from '../src/plan/put-out.js'
import {type Body, blocks, bodyAt, gap, mostOnFloor, type Seats, seatsOf} from '../src/plan/seats.js'
import type {ToPlace} from '../src/plan/standing.js'
import {generator} from '../src/scale/random-numbers.js'
import {dish, problem as problemOf} from './plan-fixtures.js'

/** Places found by putting others out, held against the rules of standing and of lanes pair by pair; no outside fact is asked. */

const grid = floorGrid(problemOf([]))

/** Pairs in the oven together that stand too near, or of which one bars the other's way where it is carried past. */
function wrong(items: readonly ToPlace[], places: ReadonlyArray<readonly Body[] | null>): number {
  const all = items.flatMap((item, i) => (places[i] ?? []).map((body) => ({item, body})))
  let out = 0
  for (const [i, a] of all.entries())
    for (const b of all.slice(i + 1)) {
      if (a.item.from >= b.item.to || b.item.from >= a.item.to) continue
      if (gap(a.body, b.body) < grid.ground.rules.clearance - 1e-6) out++
      const past = (x: typeof a, y: typeof a): boolean => y.item.from < x.item.from || x.item.to < y.item.to
      if (past(a, b) && blocks(grid.ground, b.body, a.body, 1e-6)) out++
      if (past(b, a) && blocks(grid.ground, a.body, b.body, 1e-6)) out++
    }
  return out
}

/** The outlines of a vessel at all of its places. */
const bodiesOf = (seats: Seats): Body[] => Array.from(seats.x, (_, i) => bodyAt(seats, i))

describe('what has no place puts others out of theirs', () => {
  const bread = dish('bread', 1, {id: 'small'})
  const at = (id: string, count: number, from: number, to: number): ToPlace => ({
    dish: {...bread, id},
    first: 1,
    count,
    from,
    to,
    where: 3,
    fits: [true, true, true],
  })

  it('makes room that there is only where what stands is moved together', () => {
    // One vessel in the middle of the floor leaves no room for as many as the floor holds less one; anywhere at the wall it does.
    const most = mostOnFloor(grid, bread.vessel)
    expect(most).toBeGreaterThan(3)
    const seats = seatsOf(grid, bread.vessel)
    const middle = bodiesOf(seats).sort((a, b) => Math.hypot(a.x, a.y) - Math.hypot(b.x, b.y))[0]!
    const items = [at('one', 1, 0, 10), ...Array.from({length: most - 2}, (_, i) => at(`other ${i}`, 1, 0, 10))]
    const places = putOut(grid, [], items, [[middle], ...items.slice(1).map(() => null)], 400)
    expect(places.every((bodies, i) => bodies?.length === items[i]!.count)).toBe(true)
    expect(wrong(items, places)).toBe(0)
  })

  it('never leaves more without a place, breaks no rule, moves nothing that is fixed, and gives what it was given where it finds no better', () => {
    const random = generator(41)
    const pick = (k: number): number => Math.floor(random() * k)
    let mended = 0
    let had = 0
    for (let trial = 0; trial < 30; trial++) {
      const items = Array.from({length: 6 + pick(8)}, (_, i) => {
        const from = pick(20)
        return {...at(`d${i}`, 1 + pick(5), from, from + 8 + pick(20)), fits: [true, true, random() < 0.9] as const}
      })
      const {placed} = placeDay(grid, [], items.slice(0, 3))
      const fixed = placed.length > 0 ? [placed[0]!] : []
      const stood = fixed.map((v) => ({
        from: v.from,
        to: v.to,
        bodies: [bodiesOf(seatsOf(grid, v.vessel)).find((b) => b.x === v.x && b.y === v.y)!],
        shifts: false,
        stood: true,
      }))
      const rest = items.slice(3)
      const none = rest.map(() => null)
      const places = putOut(grid, stood, rest, none, 60)
      const out = places.filter((b) => b === null).length
      had += rest.length
      mended += rest.length - out
      if (out === rest.length) expect(places).toBe(none)
      const held: ToPlace[] = fixed.map((v) => at('fixed', 1, v.from, v.to))
      expect(wrong([...held, ...rest], [...stood.map((g) => g.bodies), ...places])).toBe(0)
      rest.forEach((item, i) => {
        if (places[i]) expect(places[i]!.length).toBe(item.count)
      })
    }
    expect(mended).toBeGreaterThan(had / 3)
  })

  it('is the same every time', () => {
    const items = Array.from({length: 9}, (_, i) => at(`d${i}`, 2, i, i + 12))
    const none = items.map(() => null)
    expect(putOut(grid, [], items, none, 50)).toEqual(putOut(grid, [], items, none, 50))
  })
})
