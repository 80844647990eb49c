import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {check} from '../src/plan/check.js'
import {wheresOf} from '../src/plan/choices.js'
import {floorGrid} from '../src/plan/floor-grid.js'
import {jobsOf} from '../src/plan/model.js'
import {PlanCancelled} from '../src/plan/options.js'
import {planDay} from '../src/plan/planner.js'
import type {FiringOption, Plan, PlanProblem} from '../src/plan/types.js'
import {day, dish, fallingOven, problem, randomDay} from './plan-fixtures.js'

/** The day without what the plan left out, and the plan as a plan for that day. */
function withoutLeftOut(p: PlanProblem, plan: Plan): {problem: PlanProblem; plan: Plan} {
  const baked = new Map<string, number>()
  for (const l of plan.loads) for (const d of l.dishes) baked.set(d.dish, (baked.get(d.dish) ?? 0) + d.count)
  return {
    problem: {...p, dishes: p.dishes.flatMap((d) => (baked.has(d.id) ? [{...d, count: baked.get(d.id)!}] : []))},
    plan: {...plan, possible: true, unplaced: []},
  }
}

const start = (plan: Plan, id: string): number => plan.loads.find((l) => l.dishes.some((d) => d.dish === id))!.at
const drawn = (plan: Plan, id: string): number => plan.loads.flatMap((l) => l.dishes).find((d) => d.dish === id)!.draw.likely

describe('a planned day', () => {
  it('keeps every rule, or names what to leave out so that the rest does, on 2,000 random days', () => {
    let impossible = 0
    fc.assert(
      fc.property(fc.integer({min: 1, max: 1e9}), fc.integer({min: 1, max: 5}), (seed, n) => {
        const p = randomDay(seed, n)
        const plan = planDay(p, {effort: 'quick'})
        if (plan.possible) expect(check(p, plan)).toEqual([])
        else {
          impossible++
          expect(plan.unplaced.length).toBeGreaterThan(0)
          const rest = withoutLeftOut(p, plan)
          expect(check(rest.problem, rest.plan)).toEqual([])
        }
      }),
      {numRuns: 2000, seed: 1829},
    )
    expect(impossible).toBeLessThan(600)
  }, 600_000)

  it('is the same plan, byte for byte, for the same day', () => {
    const p = randomDay(7, 9)
    expect(JSON.stringify(planDay(p))).toBe(JSON.stringify(planDay(randomDay(7, 9))))
  })

  it('of no dishes is an empty plan that says so', () => {
    const plan = planDay(problem([]))
    expect(plan.possible).toBe(true)
    expect(plan.loads).toEqual([])
    expect(plan.steps).toEqual([])
    expect(plan.messages.map((m) => m.rule)).toContain('no-dish')
  })

  it('tells its progress, and stops when told to', () => {
    const seen: number[] = []
    planDay(problem([dish('bread', 2)]), {progress: (s) => seen.push(s)})
    expect(seen[0]).toBe(0)
    expect(seen[seen.length - 1]).toBe(1)
    expect([...seen].sort((a, b) => a - b)).toEqual(seen)
    expect(() => planDay(problem([dish('bread', 2)]), {cancelled: () => true})).toThrow(PlanCancelled)
  })

  it('says how far from the best it can be, with a bound that lies under it', () => {
    const plan = planDay(randomDay(11, 8, {day: day({serve: 900})}))
    expect(plan.score.bound).not.toBeNull()
    expect(plan.score.bound!).toBeLessThanOrEqual(plan.score.total)
    expect(plan.score.gap!).toBeGreaterThanOrEqual(0)
  })

  it('uses a second fire where the day has two, and keeps the oven empty while it burns', () => {
    const one = fallingOven(120, 285)
    const again = fallingOven(90, 260)
    // After the second fire's soak the oven falls as it did after the first.
    const at = 540
    const baking = one.forecast.baking.likely.map((t, i) => {
      const m = i * 5 - at
      return m < 0 ? t : again.forecast.baking.likely[Math.floor(m / 5)]!
    })
    const band = {low: baking.map((t) => t - 8), likely: baking, high: baking.map((t) => t + 8)}
    const both = {firing: one.firing, further: [{minutes: at, firing: again.firing}], forecast: {...one.forecast, baking: band}}
    const p = problem([dish('bread', 8), dish('bread', 8, {id: 'bread-2', wantedBy: 1080})], {
      day: day({firings: 2, serve: 700}),
      firings: [both],
    })
    const plan = planDay(p)
    expect(check(p, plan)).toEqual([])
    expect(plan.fires).toHaveLength(2)

    // What one fire can do needs no second, whatever the day allows.
    const alone = {firing: one.firing, forecast: one.forecast}
    const few = planDay({...p, dishes: [dish('bread', 4)], firings: [alone, both]})
    expect(few.possible).toBe(true)
    expect(few.fires).toHaveLength(1)

    // A second fire found only for the fire that one would be is lit as well; and one that helps nothing is not.
    const much = [dish('bread', 14), dish('bread', 14, {id: 'bread-2'}), dish('bread', 14, {id: 'bread-3', wantedBy: 1080})]
    const cold = {...both, further: [{minutes: at + 5, firing: again.firing}], forecast: one.forecast}
    const on = (further: FiringOption, asked: typeof p = {...p, dishes: much, firings: [alone, cold]}) =>
      planDay(asked, {secondFires: () => [further]})
    const once = planDay({...p, dishes: much, firings: [alone]})
    expect(once.possible).toBe(false)
    const twice = on(both)
    expect(twice.fires).toHaveLength(2)
    expect(twice.unplaced.length).toBeLessThan(once.unplaced.length)
    // Nor one after which nothing is set in: here it burns when all is drawn.
    const late = {...both, further: [{minutes: 20 * 60, firing: again.firing}], forecast: one.forecast}
    expect(on(late).fires).toHaveLength(1)
    const never = on({...cold, further: [{minutes: at + 10, firing: again.firing}]})
    expect(never.fires).toHaveLength(1)
    expect(never.unplaced.length).toBeLessThanOrEqual(once.unplaced.length)
  })
})

describe('period practice, Project Gutenberg #13493 (1829)', () => {
  const p = problem([dish('brown bread', 2), dish('beans', 1), dish('bread', 4), dish('pie', 2)], {day: day({serve: 900})})
  const plan = planDay(p)
  it('white bread and pies are not set in until brown bread and beans have been in half an hour', () => {
    expect(plan.possible).toBe(true)
    expect(start(plan, 'bread-1') - start(plan, 'brown-bread-1')).toBeGreaterThanOrEqual(30)
    expect(start(plan, 'pie-1') - start(plan, 'brown-bread-1')).toBeGreaterThanOrEqual(30)
  })
  it('common loaves take about three quarters of an hour', () => {
    const took = drawn(plan, 'bread-1') - start(plan, 'bread-1')
    expect(took).toBeGreaterThanOrEqual(35)
    expect(took).toBeLessThanOrEqual(70)
  })
  it('brown bread stays three hours or more', () => {
    // A baked dose in a hot start is reached sooner; it stays in while the oven is shut for the rest.
    expect(drawn(plan, 'brown-bread-1') - start(plan, 'brown-bread-1')).toBeGreaterThanOrEqual(60)
  })
  it('a longer fire is burned for brown bread and beans than for flour bread alone', () => {
    const alone = planDay(problem([dish('bread', 4)], {day: day({serve: 900})}))
    expect(plan.firing.burn).toBeGreaterThanOrEqual(alone.firing.burn)
  })
})

describe('a baker reading the plan', () => {
  const p = problem(
    [
      dish('bread', 6),
      dish('brown bread', 2),
      dish('beans', 2, {wantedBy: 1440 + 480}),
      dish('pie', 3),
      dish('biscuits', 1),
      dish('sponge', 2),
      dish('custard', 3),
      dish('fruit cake', 1),
    ],
    {day: day({serve: 1000})},
  )
  const plan = planDay(p)
  it('finds no custard at bread heat and no bread in a cooling oven', () => {
    for (const load of plan.loads)
      for (const d of load.dishes) {
        if (d.dish.startsWith('custard')) expect(d.celsiusIn.likely).toBeLessThan(165)
        if (d.dish.startsWith('bread')) expect(d.celsiusIn.likely).toBeGreaterThan(195)
      }
  })
  it('finds nothing drawn in the night and nothing standing in the way', () => {
    expect(check(p, plan)).toEqual([])
  })
  it('finds every step in order, from lighting to the last draw', () => {
    const actions = plan.steps.map((s) => s.action)
    expect(actions.indexOf('light')).toBeLessThan(actions.indexOf('rake'))
    expect(actions.indexOf('rake')).toBeLessThan(actions.indexOf('load'))
    expect(actions[actions.length - 1]).toBe('draw')
  })
  it('finds a reason and a remedy for what cannot be baked', () => {
    const {need} = dish('bread', 4)
    /** The bread's receipt with another heat in its front matter: as far under and over it as it has now, for as long. */
    const heatStated = (_: string, celsius: number) => {
      const moved = celsius - need.startBest
      const {startLow, startBest, startHigh, endLow, reference} = need
      const to = {startLow: startLow + moved, startBest: startBest + moved, startHigh: startHigh + moved}
      return new Map([['bread-1', {...need, ...to, endLow: endLow + moved, reference: reference + moved}]])
    }
    const cold = problem([dish('bread', 4), dish('custard', 1)], {firings: [fallingOven(45, 170)]})
    const none = planDay(cold)
    expect(none.possible).toBe(false)
    expect(none.unplaced.map((u) => u.dish)).toEqual(['bread-1'])
    expect(none.unplaced[0]!.conflict).toEqual(['bread-1'])
    expect(none.unplaced[0]!.reason).toMatch(/200 °C/)
    // Nothing would do in so cold an oven, and that it is left out need not be offered.
    expect(none.unplaced[0]!.tried).toEqual([])
    const [out] = planDay(problem([dish('bread', 4), dish('custard', 1)], {firings: [fallingOven(45, 195)]}), {
      heatStated,
    }).unplaced
    expect(out!.dish).toBe('bread-1')
    expect(out!.tried!.map((r) => [r.kind, r.works])).toEqual([['wider heat', true]])
    expect(out!.remedies[0]).toMatch(
      /^Take Bread at 1[789][05] °C .* instead \(write “oven: 1[789][05] °C” in the front matter of receipts\/bread\.md\): everything fits\.$/,
    )
  })
  it('finds a vessel too wide for the mouth named', () => {
    const none = planDay(problem([dish('biscuits', 1)], {mouth: {width: 0.2, height: 0.28}}))
    expect(none.unplaced[0]!.rule).toBe('mouth width')
  })
})

describe('a dish whose heat is narrower than the floor is even', () => {
  const pie = dish('pie', 2, {})
  const pies = (low: number, high: number) => {
    const need = {...pie.need, startLow: low, startBest: (low + high) / 2, startHigh: high}
    const p = problem([{...pie, need}], {floor: {shape: 'round', diameter: 0.78}, mouth: {width: 0.4, height: 0.25}})
    const grid = floorGrid(p)
    return jobsOf(p, grid).map((job) => ({count: job.count, wheres: wheresOf(job, grid)}))
  }
  it('goes in in parts that stand in one part of the floor each, since it has no place across all', () => {
    const wide = pies(170, 240)
    expect(wide).toEqual([{count: 2, wheres: [3]}])
    const narrow = pies(204, 214)
    expect(narrow).toHaveLength(2)
    for (const {count, wheres} of narrow) {
      expect(count).toBe(1)
      expect(wheres).not.toEqual([3])
    }
  })
})
