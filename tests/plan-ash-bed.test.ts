import {describe, expect, it} from 'vitest'
import type {AshBed} from '../src/oven/types.js'
import {check} from '../src/plan/check.js'
import {floorGrid} from '../src/plan/floor-grid.js'
import {planDay} from '../src/plan/planner.js'
import type {Plan, PlanProblem} from '../src/plan/types.js'
import {floorMap} from '../src/sheets/floor-map.js'
import {plainStyle} from '../src/sheets/style.js'
import {day, dish, problem} from './plan-fixtures.js'

/** A day on a round floor of 1.07 m with ash left along one side of it: common practice, no source. */
const half = 1.07 / 2
const firings = problem([]).firings.slice(1, 2)
const ashDay = (ashBed: AshBed): PlanProblem =>
  problem([dish('bread', 5), dish('pie', 3), dish('custard', 2)], {firings, ashBed, day: day({serve: 1000})})

/** How far the nearest edge of any vessel stands from the bed, m, by hand from the places told; less than nothing on it. */
function nearest(plan: Plan, p: PlanProblem, {side, width}: AshBed): number {
  const clear = plan.loads.flatMap(({placed}) =>
    placed.map(({dish: id, x, y, turn}) => {
      const {footprint: f} = p.dishes.find((one) => one.id === id)!.vessel
      const across = Math.abs(Math.sin(turn)) > 0.5
      const reach = f.shape === 'circle' ? f.diameter / 2 : ((side === 'back' ? !across : across) ? f.width : f.length) / 2
      return side === 'left' ? x - reach - (width - half) : half - width - reach - (side === 'right' ? x : y)
    }),
  )
  return Math.min(...clear)
}

describe('an ash bed', () => {
  it.each([
    {side: 'left', width: 0.2},
    {side: 'right', width: 0.2},
    {side: 'back', width: 0.2},
  ] as const)('on the $side is kept free, and the checker finds a vessel moved onto it', (bed) => {
    const p = ashDay(bed)
    const plan = planDay(p)
    expect(plan.loads.length).toBeGreaterThan(0)
    expect(check(p, plan)).toEqual([])
    expect(nearest(plan, p, bed)).toBeGreaterThan(-0.002)
    const away = half - 0.14
    const to = {left: {x: -away, y: 0}, right: {x: away, y: 0}, back: {x: 0, y: away}}[bed.side]
    const [first, ...rest] = plan.loads
    const [moved, ...others] = first!.placed
    const onBed: Plan = {...plan, loads: [{...first!, placed: [{...moved!, ...to}, ...others]}, ...rest]}
    const onFloor = (day: PlanProblem): string[] =>
      check(day, onBed).flatMap(({rule, reason}) => (rule === 'floor' && /kept free/.test(reason) ? [reason] : []))
    expect(onFloor(p)).toHaveLength(1)
    const {ashBed: _bed, ...swept} = p
    expect(onFloor(swept)).toEqual([])
  })

  it('leaves so much less floor, and where the mouth opens on it none of it is counted twice', () => {
    const square = {floor: {shape: 'rectangle', depth: 1, width: 0.8}, mouth: {width: 0.6, height: 0.28}} as const
    const swept = floorGrid(square)
    // By hand: 0.8 m² less the strip of 0.6 x 0.1, and a bed of 0.3 x 1 of which 0.2 x 0.1 lies in that strip.
    expect(swept.area).toBeCloseTo(0.8 - 0.06, 2)
    expect(floorGrid({...square, ashBed: {side: 'left', width: 0.3}}).area).toBeCloseTo(0.8 - 0.06 - 0.3 + 0.02, 2)
  })

  it('is drawn on the map, and said', () => {
    const p = ashDay({side: 'left', width: 0.2})
    const plan = planDay(p)
    const drawn = JSON.stringify(floorMap(plan.loads[0]!, plan, p, {style: plainStyle}))
    expect(drawn).toContain('ash-bed')
    expect(drawn).toMatch(/The ash bed, [^"]+ wide, lies on the left; nothing stands there\./)
    const {ashBed: _bed, ...swept} = p
    expect(JSON.stringify(floorMap(plan.loads[0]!, plan, swept, {style: plainStyle}))).not.toMatch(/ash.bed/i)
  })
})
