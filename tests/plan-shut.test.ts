import {describe, expect, it} from 'vitest'
import {readDayFolder} from '../src/cli/day-folder.js'
import {check} from '../src/plan/check.js'
import {floorGrid} from '../src/plan/floor-grid.js'
import {type MadePlan, makePlan} from '../src/plan/make.js'
import {disturbances, jobsOf, modelOf, programOf} from '../src/plan/model.js'
import {costOf} from '../src/plan/proof.js'
import {weights} from '../src/plan/rules.js'
import {search} from '../src/plan/search.js'
import {missing, State} from '../src/plan/search-state.js'
import {makeDishes} from '../src/scale/dishes.js'
import {dish, problem} from './plan-fixtures.js'

/** The demo's day, invented, with one receipt that wants the door kept shut: common practice, no source. */
const read = readDayFolder('corpus-demo')
const scaled = makeDishes({day: read.day, receipts: read.receipts, oven: read.oven})

function keptShut(id: string, minutes: number): MadePlan {
  const closed = {low: minutes, likely: minutes, high: minutes}
  const dishes = scaled.dishes.map((d) => (d.id === id ? {...d, need: {...d.need, closed}} : d))
  return makePlan({
    oven: read.oven,
    day: read.day,
    receipts: read.receipts,
    scaled: {...scaled, dishes},
    options: {effort: 'quick'},
  })
}

/** Openings within so many minutes after a dish is set in, by the plan's own loads. */
function openedAfter({plan}: MadePlan, id: string, minutes: number): number[] {
  const opened = new Set(plan.loads.flatMap((l) => [l.at, ...l.dishes.map((d) => d.draw.likely)]))
  const from = plan.loads.flatMap((l) => (l.dishes.some((d) => d.dish === id) ? [l.at] : []))
  return from.flatMap((at) => [...opened].filter((t) => t > at && t < at + minutes))
}

describe('a door that a receipt wants kept shut', () => {
  const shut = 40

  it('is opened for nothing else where that can be', () => {
    const without = makePlan({oven: read.oven, day: read.day, receipts: read.receipts, scaled, options: {effort: 'quick'}})
    // One whose window another dish falls into, but for the last of them.
    const {id} = scaled.dishes.find((d) => openedAfter(without, d.id, shut).length > 0)!
    const made = keptShut(id, shut)
    expect(made.plan.unplaced).toEqual([])
    expect(openedAfter(made, id, shut)).toEqual([])
    expect(made.plan.score.disturbed).toBeUndefined()
    // The day says so when it goes in, and has nobody look before.
    const kept = made.plan.steps.filter((s) => s.words?.say.id === 'keep shut' && s.dishes.includes(id))
    const set = made.plan.loads.filter((l) => l.dishes.some((d) => d.dish === id)).map((l) => l.at)
    expect(kept.map((s) => s.at)).toEqual(set)
    const looks = made.plan.steps.flatMap(({words}) => {
      const early = words?.ifAhead?.values['early']
      return typeof early === 'object' && early.unit === 'clock' ? [early.value] : []
    })
    expect(looks.length).toBeGreaterThan(0)
    for (const at of set) expect(looks.filter((t) => t > at && t < at + shut)).toEqual([])
    expect(check(made.problem, made.plan)).toEqual([])
  })

  it('is told of where it has to be opened, and counted', () => {
    // All day long: something else has to go in or come out.
    const made = keptShut('indian-pudding', 600)
    const opened = openedAfter(made, 'indian-pudding', 600)
    expect(made.plan.unplaced).toEqual([])
    expect(opened.length).toBeGreaterThan(0)
    expect(made.plan.score.disturbed).toBe(opened.length)
    const told = made.plan.messages.filter((m) => m.rule === 'door-shut')
    expect(told.length).toBe(opened.length)
    // Beside the step that opens it the one that keeps it shut says so.
    const step = made.plan.steps.find((one) => one.words?.say.id === 'keep shut but')
    expect(step?.words?.say.values['opened']).toEqual({unit: 'clock', value: Math.min(...opened)})
    expect(told[0]!.line).toBe(read.day.items.find((i) => i.file.endsWith('indian-pudding.md'))!.line)
    expect(check(made.problem, made.plan)).toEqual([])
    const {disturbed: _, ...score} = made.plan.score
    expect(check(made.problem, {...made.plan, score}).map((v) => v.rule)).toEqual(['score'])
  })

  it('may be opened when the dish goes in and once its time is over', () => {
    const dish = {at: 600, shut: 20}
    expect(disturbances([dish], [600, 605, 620, 580]).map((d) => d.at)).toEqual([605])
  })
})

describe('the search on given curves', () => {
  it('pays for each opening while a receipt wants the door kept shut, as the plan’s score does', () => {
    const long = (id: string) => ({...dish(id, 1), need: {...dish(id, 1).need, closed: {low: 600, likely: 600, high: 600}}})
    const p = problem([long('fruit cake'), dish('pie', 2), dish('gingerbread', 1), dish('sponge', 1), dish('biscuits', 2)])
    const grid = floorGrid(p)
    const jobs = jobsOf(p, grid)
    const model = modelOf(p, programOf(p, 2, jobs, grid, null, false), jobs, grid, 360)
    let paid = 0
    for (const seed of [1, 2, 3, 4]) {
      // Few rounds: what comes of many opens the door for nothing.
      const found = search(model, {rounds: seed, seed})
      expect(found.unplaced).toBe(0)
      expect(found.cost).toBeCloseTo(costOf(model, found.chosen), 6)
      const state = new State(model)
      state.load(found.chosen)
      for (const u of [1, 0, 3]) state.add(u, state.remove(u))
      expect(state.cost).toBeCloseTo(costOf(model, found.chosen), 6)
      for (const [u] of jobs.entries()) {
        // One put back among the rest costs what it is said to.
        state.remove(u)
        const before = state.cost - missing
        const {o, cost} = state.best(u)
        state.add(u, o)
        expect(state.cost - before).toBeCloseTo(cost, 6)
        paid = Math.max(paid, cost)
      }
    }
    expect(paid).toBeGreaterThan(weights.shut)
  })
})
