import {describe, expect, it} from 'vitest'
import {readOven} from '../src/oven/read.js'
import {check} from '../src/plan/check.js'
import {type FloorGrid, floorGrid} from '../src/plan/floor-grid.js'
import {settleLoaded} from '../src/plan/loaded.js'
import {type Job, jobsOf} from '../src/plan/model.js'
import type {Simulate} from '../src/plan/options.js'
import {planDay} from '../src/plan/planner.js'
import {problemOf} from '../src/plan/problem.js'
import {rules} from '../src/plan/rules.js'
import {mostOnFloor} from '../src/plan/seats.js'
import {lateAmongRest, setInMore} from '../src/plan/set-in-more.js'
import {better, goWithout, type Settled} from '../src/plan/settled.js'
import {simulator} from '../src/plan/simulator.js'
import type {FiringOption, Plan, PlanProblem} from '../src/plan/types.js'
import {write} from '../src/plan/written.js'
import type {Dish, HeatNeed} from '../src/scale/types.js'
import {day, dish, fallingOven, problem} from './plan-fixtures.js'

/** What is left out, and what is not, on invented days: that a plan keeps what the planner says of itself is asked, no outside fact. */
const option: FiringOption = fallingOven(120, 300)
const simulate: Simulate = ({forecast}) => forecast
const needing = (id: string, need: Partial<HeatNeed>, more: Partial<Dish> = {}): Dish => {
  const one = dish('pie', 1, {id, title: id, ...more})
  return {...one, need: {...one.need, ...need}}
}
const asked = (dishes: readonly Dish[], more: Partial<PlanProblem> = {}): PlanProblem =>
  problem(dishes, {firings: [option], day: day({hands: 4}), ...more})
const settle = (p: PlanProblem, grid: FloorGrid, jobs: readonly Job[]): Settled => {
  const settled = settleLoaded(p, grid, jobs, {simulate, effort: 'quick'}, simulate, () => {})
  return settled.whole?.() ?? settled
}

describe('of two plans', () => {
  it('the one is better that leaves fewer people without, however many vessels that is', () => {
    const p = asked([
      dish('custard', 12, {feeds: {low: 10, likely: 12, high: 14}}),
      dish('bread', 2, {feeds: {low: 14, likely: 16, high: 20}}),
    ])
    const grid = floorGrid(p)
    const jobs = jobsOf(p, grid)
    const settled = settle(p, grid, jobs)
    expect(settled.unplaced).toEqual([])
    const without = (id: string): Settled => {
      const left = jobs.filter((job) => job.dish.id === id)
      const chosen = settled.found.chosen.map((o, u) => (left.includes(jobs[u]!) ? -1 : o))
      return {...settled, found: {...settled.found, chosen}, unplaced: left.map((job) => ({job, why: 'floor'}))}
    }
    expect(goWithout(without('custard-1'))).toBe(12)
    expect(goWithout(without('bread-1'))).toBe(16)
    for (const [a, b] of [
      ['custard-1', 'bread-1'],
      ['bread-1', 'custard-1'],
    ] as const)
      expect(better(without(a), without(b)).unplaced[0]!.job.dish.id).toBe('custard-1')
  })
})

describe('what would come hours after it is wanted', () => {
  /** An oven one pan wide and deep, in which both want to bake for long. */
  const narrow = {floor: {shape: 'rectangle', depth: 0.62, width: 0.3}, mouth: {width: 0.29, height: 0.28}} as const
  const long = {startLow: 80, startBest: 200, startHigh: 300, endLow: 30, done: 40, minutes: {low: 200, likely: 200, high: 240}}
  const feeding = (likely: number): Partial<Dish> => ({feeds: {low: likely, likely, high: likely}})
  const p = asked([needing('For many', long, feeding(20)), needing('For few', long, feeding(4))], {
    ...narrow,
    day: day({hands: 4, serve: 660}),
  })
  const lateIn = (plan: Plan, id: string): number => {
    const [one] = plan.loads.flatMap((l) => l.dishes.filter((d) => d.dish === id))
    return one!.draw.likely - p.day.serve
  }

  it('is left out in the morning, and is what feeds fewer; a little late it is not', () => {
    const plan = planDay(p)
    expect(plan.unplaced.map((one) => one.dish)).toEqual(['For few'])
    expect(lateIn(plan, 'For many')).toBeLessThan(rules.bearable)
    const later = {...p, day: {...p.day, serve: p.day.serve + 300}}
    const whole = planDay(later)
    expect(whole.unplaced).toEqual([])
    expect(whole.score.lateMinutes).toBeGreaterThan(0)
    expect(check(later, whole)).toEqual([])
  })

  it('is told when it could be had all the same, by a plan that moves nothing else', () => {
    const plan = planDay(p, {simulate})
    const [few] = plan.unplaced
    expect(few!.dish).toBe('For few')
    const late = few!.tried!.find(({kind}) => kind === 'late')!
    expect(late.works).toBe(true)
    expect(late.late).toBeGreaterThan(rules.bearable)
    expect(late.say).toMatch(/^Bake For few all the same, drawn at [\d:]+: everything fits; .* late in all/)
    const grid = floorGrid(p)
    const jobs = jobsOf(p, grid)
    const out = jobs.filter((job) => job.dish.id === 'For few')
    const settled = settle(
      p,
      grid,
      jobs.filter((job) => !out.includes(job)),
    )
    const more = lateAmongRest(p, grid, {...settled, unplaced: out.map((job) => ({job, why: 'time'}))}, 'For few', simulate)
    const whole = write(p, grid, more!, [], null, {simulate, bare: true}, planDay)
    expect(check(p, whole)).toEqual([])
    const rest = write(p, grid, settled, [], null, {simulate, bare: true}, planDay)
    expect(lateIn(whole, 'For many')).toBe(lateIn(rest, 'For many'))
    expect(lateIn(whole, 'For few')).toBeGreaterThan(rules.bearable)
  })

  it('but not for the next morning where it is eaten hot for a meal', () => {
    const evening = (hot: boolean) => {
      const by = 500
      const dishes = p.dishes.map((dish) => (dish.id === 'For few' && hot ? {...dish, hot: true as const} : dish))
      const later = {...p, dishes, day: {...p.day, fireFrom: p.day.fireFrom + by, serve: p.day.serve + by}}
      const few = planDay(later, {simulate}).unplaced.find(({dish}) => dish === 'For few')
      return few!.tried!.some(({kind}) => kind === 'late')
    }
    expect(evening(false)).toBe(true)
    expect(evening(true)).toBe(false)
  })

  it('is not where it could not be had sooner with nothing else in the oven', () => {
    const alone = {...p, dishes: [p.dishes[0]!], day: {...p.day, fireFrom: 700, serve: 720}}
    const plan = planDay(alone)
    expect(plan.unplaced).toEqual([])
    expect(plan.score.lateMinutes).toBeGreaterThan(rules.bearable)
  })

  it('nor once the day has begun', () => {
    const begun = {...p, done: {now: 425, lit: 300, set: [], plan: null}}
    const plan = planDay(begun, {effort: 'quick'})
    expect(plan.unplaced).toEqual([])
    expect(plan.score.lateMinutes).toBeGreaterThan(rules.bearable)
  })
})

describe('of two dishes of which there is a place for one', () => {
  it('that is left out which feeds fewer, though the other comes late', () => {
    const narrow = {floor: {shape: 'rectangle', depth: 0.62, width: 0.3}, mouth: {width: 0.29, height: 0.28}} as const
    const hot = {startLow: 225, startBest: 240, startHigh: 300, endLow: 30, done: 40, minutes: {low: 200, likely: 200, high: 240}}
    const feeding = (likely: number, wantedBy: number): Partial<Dish> => ({feeds: {low: likely, likely, high: likely}, wantedBy})
    const p = asked([needing('For many', hot, feeding(20, 540)), needing('For few', hot, feeding(4, 900))], narrow)
    const plan = planDay(p)
    expect(plan.score.lateMinutes).toBeGreaterThan(0)
    expect(plan.unplaced.map((one) => one.dish)).toEqual(['For few'])
    expect(planDay(p, {bare: true, effort: 'quick'}).unplaced.map((one) => one.dish)).toEqual(['For many'])
  })
})

describe('white bread and what falls from very hot, right at the same time only', () => {
  it('are not set in within the half hour that is due between them', () => {
    const p = asked([
      dish('brown bread', 1, {
        id: 'Falls',
        title: 'Falls',
        need: {...dish('pie', 1).need, startLow: 229.5, startBest: 230, startHigh: 230.5, endLow: 30, falling: true},
      }),
      needing('Crust', {startLow: 229.5, startBest: 230, startHigh: 230.5, endLow: 30}),
    ])
    const plan = planDay(p, {simulate, bare: true})
    expect(check(p, plan)).toEqual([])
    expect(plan.unplaced.length).toBe(1)
  })
})

describe('more of a dish than the oven bakes', () => {
  // The oven is right for it once only, and it goes in in parts of one size.
  const once = {startLow: 229.5, startBest: 230, startHigh: 230.5, endLow: 30}
  const had = ({loads}: Plan): number =>
    loads.reduce((sum, load) => sum + load.dishes.reduce((all, {count}) => all + count, 0), 0)

  it('is baked as far as there is room, and told by how many it is short', () => {
    const most = mostOnFloor(floorGrid(asked([])), dish('pie', 1).vessel)
    const count = Math.floor(1.4 * most)
    const p = asked([needing('Once', once, {count})], {day: day({hands: 12})})
    const parts = had(planDay(p, {simulate, bare: true}))
    const plan = planDay(p, {simulate})
    expect(had(plan)).toBeGreaterThan(parts)
    expect(had(plan)).toBeLessThanOrEqual(most)
    expect(check(p, plan)).toEqual([])
    expect(plan.unplaced).toMatchObject([{dish: 'Once'}])
    expect(plan.unplaced[0]!.reason).toContain(`${count - had(plan)} of `)
    expect(plan.score.leftOut?.vessels).toBe(count - had(plan))
  })

  it('and as it was where that is no more', () => {
    const p = asked([needing('Once', {...once, startLow: 310, startBest: 320, startHigh: 330}, {count: 6})])
    expect(had(planDay(p, {simulate}))).toBe(0)
  })
})

describe('what was left out and has a place after all', () => {
  const oven = readOven(
    `---
floor: rectangle 36 in x 40 in
vault height: 16 in
mouth: 18 in x 10 in
door: oak 2 in
hearth:
  - common brick 2 1/2 in
  - sand 3 in
  - common brick 9 in
vault:
  - common brick 4 1/2 in
  - clay 3 in
  - sand 8 in
place: indoors
ambient: 60 °F
fuel: oak, 18 % moisture
start: cold
---

# An oven
`,
    'oven.md',
  ).oven!
  const laid = (p: PlanProblem, left: string): {plan: Plan; more: Settled} => {
    const grid = floorGrid(p)
    const jobs = jobsOf(p, grid)
    const out = jobs.filter((job) => job.dish.id === left)
    const settled = settle(
      p,
      grid,
      jobs.filter((job) => !out.includes(job)),
    )
    const more = setInMore(p, grid, {...settled, unplaced: out.map((job) => ({job, why: 'floor'}))}, simulate)
    return {more, plan: write(p, grid, more, [], null, {simulate, bare: true}, planDay)}
  }

  it('is set in among the rest, by every rule of the checker, and nothing else is moved', () => {
    const p = asked([dish('bread', 3), dish('gingerbread', 1), dish('custard', 4)])
    const {more, plan} = laid(p, 'custard-1')
    expect(more.unplaced).toEqual([])
    expect(plan.loads.flatMap((l) => l.dishes.map((d) => d.dish))).toContain('custard-1')
    expect(check(p, plan)).toEqual([])
    const rest = planDay({...p, dishes: p.dishes.slice(0, 2)}, {simulate, effort: 'quick', bare: true})
    const timesOf = (some: Plan): unknown =>
      some.loads.flatMap((l) => l.dishes.flatMap((d) => (d.dish === 'custard-1' ? [] : [[d.dish, l.at, d.draw.likely]])))
    expect(timesOf(plan)).toEqual(timesOf(rest))
  })

  it('is judged where its vessels come to stand, which may be elsewhere once its own heat has it drawn later', () => {
    const figures = ([low, best, high, endLow, done]: readonly number[], minutes: number): HeatNeed => ({
      ...dish('gingerbread', 1).need,
      ...{startLow: low!, startBest: best!, startHigh: high!, endLow: endLow!, reference: best!, done: done!},
      minutes: {low: minutes, likely: minutes, high: minutes},
    })
    const of = (
      [id, count, mass, water, feeds]: readonly [string, number, number, number, number],
      need: HeatNeed,
      [height, halfThickness, length, width]: readonly [number, number, number, number?],
      more: Partial<Dish> = {},
    ): Dish =>
      dish('gingerbread', count, {
        ...{id, title: id, mass, water, need, feeds: {low: feeds / 1.5, likely: feeds, high: feeds * 1.4}},
        vessel: {
          ...{name: id, height, halfThickness, millilitres: 1000},
          footprint: width === undefined ? {shape: 'circle', diameter: length} : {shape: 'rectangle', length, width},
        },
        ...more,
      })
    const p = problemOf({oven, day: {...day({hands: 2, serve: 1080}), people: 12}}, [
      of(['ginger', 6, 1.674105, 0.15067, 110], figures([145, 160, 185, 125, 95], 50), [0.0608, 0.015807, 0.3128, 0.2112]),
      of(['tray', 6, 1.1, 0.077, 93], figures([165, 180, 205, 135, 90], 25), [0.0608, 0.01231, 0.2366, 0.2366]),
      of(['muffins', 5, 0.926, 0.11112, 46], figures([176, 191, 216, 161, 95], 20), [0.05, 0.0125, 0.3616, 0.2854], {
        place: 'mouth',
      }),
      of(['stollen', 3, 2.641276, 0.237715, 69], figures([165, 180, 205, 130, 95], 60), [0.05, 0.0125, 0.406, 0.306]),
      of(['sponge', 10, 0.415465, 0.041547, 46], figures([162, 177, 202, 147, 95], 25), [0.0862, 0.007329, 0.2112]),
    ])
    const plan = planDay(p, {simulate: simulator({oven}), bare: true, effort: 'quick'})
    expect(plan.loads.flatMap((load) => load.dishes.map((one) => one.dish))).toContain('ginger')
    expect(check(p, plan)).toEqual([])
  })

  it('waits half an hour where what is set in very hot has just gone in', () => {
    const p = asked([dish('brown bread', 2, {wantedBy: 660}), needing('Pie', {startLow: 195, startBest: 243, startHigh: 247})])
    const {more, plan} = laid(p, 'Pie')
    expect(more.unplaced).toEqual([])
    expect(check(p, plan)).toEqual([])
    const at = (id: string): number => plan.loads.find((l) => l.dishes.some((d) => d.dish === id))!.at
    // The oven is too hot for it before that.
    expect(at('Pie') - at('brown-bread-1')).toBeGreaterThanOrEqual(rules.settleIn.minutes)
  })

  it('and stays out where there is none', () => {
    const p = asked([dish('bread', 3), needing('Hot', {startLow: 310, startBest: 320, startHigh: 330})])
    expect(laid(p, 'Hot').more.unplaced.map(({job}) => job.dish.id)).toEqual(['Hot'])
  })
})

describe('what comes too late to be of use', () => {
  it('is judged by every fire that the day may have, whichever of them are looked at', () => {
    const whole = problem([dish('bread', 2, {wantedBy: 8 * 60})])
    const bears = (day: PlanProblem): number => jobsOf(day, floorGrid(day))[0]!.bears
    const late = {...whole, firings: whole.firings.slice(-1)}
    expect(bears(late)).toBeGreaterThan(bears(whole))
    expect(bears({...late, anyFire: whole.firings})).toBe(bears(whole))
  })
})
