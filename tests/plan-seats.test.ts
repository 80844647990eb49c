import {describe, expect, it} from 'vitest'
import {floorGrid} from '../src/plan/floor-grid.js'
import {
  type Body,
  barred,
  blocks,
  bodyAt,
  bodyOf,
  candidates,
  gap,
  isSet,
  mostOnFloor,
  ordered,
  type Seats,
  seatsOf,
  styles,
} from '../src/plan/seats.js'
import {generator} from '../src/scale/random-numbers.js'
import type {Vessel} from '../src/scale/types.js'

// Which places a standing vessel bars is solved for each row of them; here every place is asked, one by one.

const floors = [
  {floor: {shape: 'round', diameter: 1.5}, mouth: {width: 0.5, height: 0.35}},
  {floor: {shape: 'oval', width: 1.1, depth: 1.6}, mouth: {width: 0.4, height: 0.3}},
  {floor: {shape: 'rectangle', width: 0.9, depth: 1.2}, mouth: {width: 0.45, height: 0.3}},
  {floor: {shape: 'round', diameter: 0.7}, mouth: {width: 0.45, height: 0.25}},
] as const

function vessel(footprint: Vessel['footprint'], height: number): Vessel {
  return {...({} as Vessel), footprint, height}
}

/** The outlines of a vessel at all of its places. */
const bodiesOf = (seats: Seats): Body[] => Array.from(seats.x, (_, i) => bodyAt(seats, i))

describe('places of a vessel', () => {
  for (const [f, room] of floors.entries())
    it(`are barred by what stands, floor ${f + 1}: what is solved for a row is what each of its places tells`, () => {
      const grid = floorGrid({...room, vaultHeight: 0.5})
      const random = generator(5 + f)
      const size = (): number => 0.08 + 0.3 * random()
      const some = (): Vessel =>
        random() < 0.5
          ? vessel({shape: 'circle', diameter: size()}, 0.08)
          : vessel({shape: 'rectangle', length: size(), width: size()}, 0.08)
      let seen = 0
      for (let i = 0; i < 60; i++) {
        const seats = seatsOf(grid, some())
        const others = bodiesOf(seatsOf(grid, some()))
        if (seats.x.length === 0 || others.length === 0) continue
        const other: Body =
          random() < 0.7
            ? others[Math.floor(random() * others.length)]!
            : bodyOf(some(), {x: (random() - 0.5) * grid.width, y: (random() - 0.5) * grid.depth, turn: 0})
        for (const [passes, isPassed] of [
          [false, false],
          [true, false],
          [false, true],
          [true, true],
        ] as const) {
          const bits = barred(seats, other, (passes ? 1 : 0) + (isPassed ? 2 : 0))
          const clear = grid.ground.rules.clearance - 1e-9
          const wrong = bodiesOf(seats).filter((c, k) => {
            const is =
              gap(c, other) < clear || (passes && blocks(grid.ground, other, c)) || (isPassed && blocks(grid.ground, c, other))
            seen += is ? 1 : 0
            return is !== isSet(bits, k)
          })
          expect(wrong).toEqual([])
        }
      }
      expect(seen).toBeGreaterThan(1000)
    })

  it('are each taken once, those of the part asked for before the others', () => {
    const grid = floorGrid({...floors[0], vaultHeight: 0.5})
    const seats = seatsOf(grid, vessel({shape: 'rectangle', length: 0.25, width: 0.1}, 0.08))
    for (const style of styles)
      for (let where = 0; where <= 3; where++) {
        const order = [...ordered(seats, style, where)]
        expect([...order].sort((a, b) => a - b)).toEqual([...seats.x.keys()])
        const inPart = order.map((i) => (where < 3 && isSet(seats.zones[where]!, i) ? 1 : 0))
        expect(inPart.lastIndexOf(1)).toBe(inPart.filter((x) => x === 1).length - 1)
      }
  })

  it('that are open are asked in the order of filling, however many there are', () => {
    const grid = floorGrid({...floors[0], vaultHeight: 0.5})
    const seats = seatsOf(grid, vessel({shape: 'circle', diameter: 0.2}, 0.08))
    const random = generator(23)
    for (const share of [0, 0.002, 0.01, 0.05, 0.3, 1])
      for (const style of styles)
        for (let where = 0; where <= 3; where++) {
          const open = new Int32Array(seats.words)
          let count = 0
          for (let i = 0; i < seats.x.length; i++)
            if (random() < share) {
              open[i >> 5]! |= 1 << (i & 31)
              count++
            }
          const inOrder = [...ordered(seats, style, where)].filter((i) => isSet(open, i))
          expect([...candidates(seats, open, style, where, 1)].filter((i) => isSet(open, i))).toEqual(inOrder)
          expect(candidates(seats, open, style, where, count + 1)).toHaveLength(0)
        }
  })

  it('hold as many plates as stand side by side', () => {
    // Three plates of 0.25 m, an inch apart and half an inch from the walls, take up 0.825 m, and four inches are free at the mouth. So
    // flat a plate is nowhere too high for the vault.
    const grid = floorGrid({
      floor: {shape: 'rectangle', width: 0.825, depth: 0.925},
      mouth: {width: 0.4, height: 0.3},
      vaultHeight: 50,
    })
    expect(mostOnFloor(grid, vessel({shape: 'circle', diameter: 0.25}, 0))).toBe(9)
    expect(mostOnFloor(grid, vessel({shape: 'circle', diameter: 0.26}, 0))).toBeLessThan(9)
  })
})
