import {expect, it} from 'vitest'
import {check} from '../src/plan/check.js'
import {planDay} from '../src/plan/planner.js'
import type {PlanProblem} from '../src/plan/types.js'
import {waysOf} from '../src/plan/ways/of-day.js'
import type {HeatNeed} from '../src/scale/types.js'
import {day, dish, fallingOven, problem} from './plan-fixtures.js'

/** Set in within a narrow range, and baked for so long to within two minutes. */
const need = (startLow: number, startBest: number, startHigh: number, minutes: number): HeatNeed => ({
  startLow,
  startBest,
  startHigh,
  endLow: 90,
  done: 80,
  reference: startBest - 40,
  minutes: {low: minutes - 5, likely: minutes, high: minutes + 2},
  falling: false,
  overnight: false,
})

/**
 * A day of two dishes on one lane, the second baked for so many minutes. The first may only be set in hotter than the second, and either stands
 * in the other's way, whichever is in front. Invented; no outside fact.
 */
const ofTwo = (minutes: number): PlanProblem =>
  problem(
    [
      dish('pie', 1, {id: 'first', title: 'First', need: need(205, 220, 240, 115)}),
      dish('pie', 1, {id: 'second', title: 'Second', need: need(120, 185, 195, minutes), wantedBy: 690}),
    ],
    {
      floor: {shape: 'rectangle', width: 0.27, depth: 0.7},
      mouth: {width: 0.26, height: 0.28},
      firings: [fallingOven(60, 260)],
      day: day({fireFrom: 360, serve: 620}),
    },
  )

it('offers the one move by which what goes in second and comes out second has its place in an oven of one lane', () => {
  const asked = ofTwo(190)
  const plan = planDay(asked)
  expect(plan.unplaced.map((one) => one.dish)).toEqual(['second'])
  const [way, ...more] = plan.unplaced[0]!.tried!
  expect(more).toEqual([])
  expect(way).toMatchObject({kind: 'one move', works: true})
  expect(way!.say).toMatch(/^Shift Second aside for a moment at \d+:\d\d, to reach First: everything fits/)
  // Counted: with that dish out of the way for a moment nothing but the reach is wanting, at one opening, the one that is told.
  const moved = planDay(
    {...asked, dishes: asked.dishes.map((d) => (d.id === 'second' ? {...d, shifts: true} : d))},
    {effort: 'quick', bare: true},
  )
  expect(moved.unplaced).toEqual([])
  const broken = check(asked, moved)
  expect(new Set(broken.map(({rule}) => rule))).toEqual(new Set(['reach']))
  const at = {unit: 'clock', value: broken[0]!.at}
  expect(new Set(broken.map((one) => one.at)).size).toBe(1)
  expect(way!.words.values['at']).toEqual(at)
})

it('offers the one move by which what comes late for it is had in time', () => {
  const asked = ofTwo(150)
  const plan = planDay(asked)
  expect(plan.unplaced).toEqual([])
  expect(plan.late).toMatchObject([{dish: 'second', wanted: 690}])
  const late = plan.score.lateMinutes
  expect(late).toBeGreaterThanOrEqual(60)
  const way = waysOf(asked, plan, {}, planDay).find(({kind}) => kind === 'one move')
  expect(way?.late).toBe(-late)
  expect(way!.say).toMatch(
    /^Shift (?:First|Second) aside for a moment at \d+:\d\d, to reach (?:First|Second): nothing comes late/,
  )
})
