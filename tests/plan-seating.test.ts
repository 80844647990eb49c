import {describe, expect, it} from 'vitest'
import {readDayFolder} from '../src/cli/day-folder.js'
import {anneal} from '../src/plan/anneal.js'
import {floorGrid} from '../src/plan/floor-grid.js'
import {makePlan} from '../src/plan/make.js'
import {type Settling, settleIn} from '../src/plan/places.js'
import {Seating} from '../src/plan/seating.js'
import {blocks, bodyOf, gap} from '../src/plan/seats.js'
import type {Standing, ToPlace} from '../src/plan/standing.js'
import {generator} from '../src/scale/random-numbers.js'
import {dish, layoutOn, problem as problemOf} from './plan-fixtures.js'

/**
 * The true floor under a layout. What is placed is held against the rules of standing and of lanes, pair by pair; the demo is invented,
 * and no outside fact is asked.
 */

/** Pairs that stand too near, or of which one bars the other's way to the mouth. */
function wrongPairs(grid: ReturnType<typeof floorGrid>, standing: readonly Standing[]): string[] {
  const out: string[] = []
  for (const [i, a] of standing.entries())
    for (const b of standing.slice(i + 1)) {
      if (a.from >= b.to || b.from >= a.to) continue
      const [c, d] = [bodyOf(a.vessel, a), bodyOf(b.vessel, b)]
      const clear = grid.ground.rules.clearance - 1e-6
      // What is set in or drawn alone is carried past what stands.
      const past = (x: Standing, y: Standing): boolean => y.from < x.from || x.to < y.to
      if (gap(c, d) < clear) out.push(`${a.dish} ${a.number} and ${b.dish} ${b.number} too near`)
      if (past(a, b) && blocks(grid.ground, d, c, 1e-6)) out.push(`${b.dish} ${b.number} bars ${a.dish} ${a.number}`)
      if (past(b, a) && blocks(grid.ground, c, d, 1e-6)) out.push(`${a.dish} ${a.number} bars ${b.dish} ${b.number}`)
    }
  return out
}

describe('a day of which most stands already', () => {
  const kinds = ['bread', 'brown bread', 'beans', 'pie', 'gingerbread', 'sponge', 'custard'] as const
  const grid = floorGrid(problemOf([]))
  const random = generator(17)
  const pick = (k: number): number => Math.floor(random() * k)
  const item = (i: number): ToPlace => {
    const from = pick(40)
    return {
      dish: dish(kinds[pick(kinds.length)]!, 1 + pick(3), {id: `d${i}`}),
      first: 1,
      count: 1 + pick(2),
      from,
      to: from + 4 + pick(30),
      where: pick(4),
      fits: [true, random() < 0.9, random() < 0.8],
    }
  }
  const settled = (day: readonly Settling[], give = true): Settling[] => {
    const vessels = settleIn(grid, [], day, give)!
    return day.map((d, i) => ({...d, vessels: vessels[i]!, stays: vessels[i] !== null}))
  }

  it('keeps the rules of standing and of lanes whatever moves, and what need not move keeps its place', () => {
    let kept = 0
    let moves = 0
    for (let trial = 0; trial < 12; trial++) {
      let day = settled(Array.from({length: 4 + pick(4)}, (_, i) => ({item: item(i), vessels: null, stays: false})))
      for (let move = 0; move < 8; move++) {
        const which = pick(day.length)
        const before = day
        const moved = {...item(which), dish: day[which]!.item.dish, count: day[which]!.item.count}
        day = settled(
          day.map((d, i) => (i === which ? {item: moved, vessels: d.vessels, stays: false} : d)),
          move % 2 === 0,
        )
        for (const d of day) if (d.vessels) expect(d.vessels.length).toBe(d.item.count)
        const standing = day.flatMap((d) => d.vessels ?? [])
        for (const d of day) for (const v of d.vessels ?? []) expect([v.from, v.to]).toEqual([d.item.from, d.item.to])
        expect(wrongPairs(grid, standing)).toEqual([])
        moves++
        if (day.every((d, i) => i === which || d.vessels === before[i]!.vessels)) kept++
      }
    }
    expect(kept).toBeGreaterThan(moves / 2)
  })
})

describe('a day with more than the floor holds', () => {
  it('is given up once more find no place than are wanted, and else says which', () => {
    const grid = floorGrid(problemOf([]))
    const day = Array.from({length: 14}, (_, i): Settling => {
      const item: ToPlace = {
        dish: dish('bread', 4, {id: `d${i}`}),
        first: 1,
        count: 4,
        from: i % 3,
        to: 20,
        where: 3,
        fits: [true, true, true],
      }
      return {item, vessels: null, stays: false}
    })
    for (const give of [false, true]) {
      const all = settleIn(grid, [], day, give)!
      const out = all.filter((vessels) => vessels === null).length
      expect(out).toBeGreaterThan(1)
      expect(out).toBeLessThan(day.length)
      expect(settleIn(grid, [], day, give, 0)).toBeNull()
      const enough = settleIn(grid, [], day, give, out)!
      expect(enough.filter((vessels) => vessels === null).length).toBeLessThanOrEqual(out)
      expect(
        wrongPairs(
          grid,
          enough.flatMap((vessels) => vessels ?? []),
        ),
      ).toEqual([])
    }
  })
})

describe('a layout', () => {
  const read = readDayFolder('corpus-demo')
  const {problem} = makePlan({oven: read.oven, day: read.day, receipts: read.receipts, options: {effort: 'quick'}})

  it('has the same curve however its dishes came to where they are', () => {
    const {jobs, layout} = layoutOn(problem, read.oven)
    layout.begin()
    const random = generator(29)
    for (let move = 0; move < 400; move++) {
      const u = Math.floor(random() * jobs.length)
      if (random() < 0.1) layout.takeOut(u)
      else layout.set(u, Math.max(0, layout.s[u]! + Math.floor(random() * 31) - 15), layout.w[u]!)
    }
    const reached = Float64Array.from(layout.celsius)
    layout.recompute()
    for (const [k, celsius] of layout.celsius.entries()) expect(reached[k]).toBeCloseTo(celsius, 6)
  })

  it('annealed anew is another, and keeps its own limits as the first does', () => {
    const {layout} = layoutOn(problem, read.oven)
    layout.begin()
    const light = {firstLit: problem.day.fireFrom, lastLit: problem.day.fireFrom + 600}
    const how = {...light, rounds: 2000, heat: 60, cool: 0.3, strict: [2, 30]} as const
    const first = anneal(layout, {...how, seed: 3})
    const same = anneal(layout, {...how, seed: 4})
    expect(same.cost + 60 * same.violation).toBeLessThanOrEqual(first.cost + 60 * first.violation + 1e-6)
    layout.restore(first.laid, first.lit)
    const other = anneal(layout, {...how, seed: 4, anew: true})
    expect(other.laid).not.toEqual(first.laid)
    layout.judge()
    expect([layout.cost, layout.violation]).toEqual([other.cost, other.violation])
  })
})

describe('a layout annealed on the true floor', () => {
  it('comes out with a place for everything that it says has one, no dearer than it went in', () => {
    const read = readDayFolder('corpus-demo')
    const {problem} = makePlan({oven: read.oven, day: read.day, receipts: read.receipts, options: {effort: 'quick'}})
    const {grid, jobs, layout} = layoutOn(problem, read.oven)
    layout.begin()
    const light = {firstLit: problem.day.fireFrom, lastLit: problem.day.fireFrom + 600}
    anneal(layout, {...light, rounds: 3000, heat: 60, cool: 0.3, seed: 3, strict: [2, 30]})
    layout.trustFloor()
    const seating = new Seating(grid, jobs, layout)
    const first = seating.refused()
    layout.judge()
    const dear = layout.cost + 60 * (layout.violation + 1.5 * first)
    anneal(layout, {...light, rounds: 2000, heat: 12, cool: 0.3, seed: 5, strict: [20, 60], seating})
    const refused = seating.refused()
    seating.keep()
    expect(layout.cost + 60 * (layout.violation + 1.5 * refused)).toBeLessThanOrEqual(dear + 1e-6)
    const seats = jobs.map((_, u) => seating.vessels(u))
    expect(seats.filter((s) => s === null)).toHaveLength(refused)
    expect(
      wrongPairs(
        grid,
        seats.flatMap((s) => s ?? []),
      ),
    ).toEqual([])
    // What was kept can be brought back.
    const back = seating.save()
    layout.set(0, layout.s[0]! + 1, layout.w[0]!)
    layout.judge()
    seating.refused()
    seating.keep()
    back()
    expect(jobs.map((_, u) => seating.vessels(u))).toEqual(seats)
  })
})
