import {beforeAll, describe, expect, it} from 'vitest'
import {readDayFolder} from '../src/cli/day-folder.js'
import type {FiringLog} from '../src/oven/log.js'
import {planAgain} from '../src/plan/again.js'
import {asAsked, minutesLate} from '../src/plan/asked.js'
import {type MadePlan, makePlan} from '../src/plan/make.js'
import {planDay} from '../src/plan/planner.js'
import type {FiringOption, Plan, Remedy} from '../src/plan/types.js'
import {burnWays} from '../src/plan/ways/burn-on.js'
import {waysTold} from '../src/sheets/phrases.js'
import {styleOf} from '../src/sheets/style-of.js'
import {problem as dayOf, dish, fires} from './plan-fixtures.js'

/** The demo's day, invented. What is asked is that the plan agrees with itself: no outside fact. */
const read = readDayFolder('corpus-demo')

describe('a fire that still burns', {timeout: 60_000}, () => {
  let made: MadePlan
  beforeAll(() => {
    made = makePlan({oven: read.oven, day: read.day, receipts: read.receipts})
  }, 60_000)

  const MINUTES = 110
  /** Planned again after a floor reading so far off what the plan expects, with the fire burning, or raked out when and after how much wood. */
  const again = (off: number, raked: number | null = null, wood: number | null = null): ReturnType<typeof planAgain> => {
    const {plan, problem} = made
    const value = plan.forecast.floor.likely[Math.round(MINUTES / plan.forecast.step)]! + off
    const log: FiringLog = {
      date: read.day.date,
      lit: plan.lit,
      raked,
      wood,
      rows: [],
      readings: [{minutes: MINUTES, kind: 'floor', value}],
      doors: [],
    }
    return planAgain({oven: read.oven, day: read.day, now: plan.lit + MINUTES + (raked === null ? 0 : 60)}, problem, plan, log)
  }
  const eased = ({plan}: {plan: MadePlan['plan']}): number =>
    plan.loads.reduce((n, load) => n + load.dishes.filter((d) => d.eased).length, 0)

  it('is offered to burn on where the oven is too cool, and what is offered comes true', () => {
    const cool = again(-150)
    const [way, ...more] = cool.plan.ways ?? []
    expect(more).toEqual([])
    expect(way).toMatchObject({kind: 'longer fire', works: true})
    expect(way!.wood).toBeGreaterThan(0)
    expect(eased(cool) + (asAsked(cool.problem, cool.plan) ? 0 : 1)).toBeGreaterThan(0)
    // Wood is burned at the rate at which the plan burns it.
    const {value: minutes} = way!.words.values['minutes'] as {value: number}
    const {firing} = made.plan
    expect(way!.wood).toBeCloseTo((firing.wood * minutes) / firing.burn, 6)
    // Burned so long, with so much more wood, the day is as it was asked for, or as late as the offer says.
    const burned = again(-150, made.plan.raked + minutes, firing.wood + way!.wood)
    const lateIn = ({plan, problem}: typeof cool): number => minutesLate(problem, plan.late ?? [])
    // What is planned once it is raked is sought anew: to ten minutes it is as late as told.
    expect(lateIn(burned) - lateIn(cool) - way!.late).toBeLessThanOrEqual(10)
    expect(lateIn(burned)).toBeLessThanOrEqual(15)
    expect(asAsked(burned.problem, burned.plan)).toBe(lateIn(burned) === 0)
    expect(burned.plan.unplaced).toEqual([])
    expect(eased(burned)).toBe(0)
  })

  it('is said in words, in German too', () => {
    const {plan, problem} = again(-150)
    const told = (language: string): string => waysTold(plan, problem, styleOf({language, clock: 24, degrees: 'C'}))!.lines.join()
    expect(told('en')).toMatch(/^Let the fire burn .+ longer, until \d?\d:\d\d, and note the wood it takes: .*more wood\.$/)
    expect(told('de')).toMatch(/^Das Feuer .+ länger brennen lassen, bis \d?\d:\d\d.*mehr Holz\.$/)
  })

  it('is offered to burn on, or to be raked sooner, where the day could be kept only at quite other hours', () => {
    const [cool] = again(-50).plan.ways ?? []
    expect(cool).toMatchObject({kind: 'longer fire', works: true})
    const [hot] = again(100).plan.ways ?? []
    expect(hot).toMatchObject({kind: 'shorter fire', works: true})
    expect(hot!.wood).toBeLessThan(0)
    for (const one of [cool!, hot!]) expect(one.say).toMatch(/set in within .+ of the hours planned instead of /)
  })

  it('is left to burn as planned where the oven is as planned, and once it is raked is no way out, but another is', () => {
    expect(again(0).plan.ways).toBeUndefined()
    expect(again(-150, made.plan.raked).plan.ways).toMatchObject([{kind: 'second fire'}])
  })
})

describe('what burning on is worth', () => {
  const option: FiringOption = fires()[2]!
  const asked = dayOf([dish('bread', 1), dish('pie', 1)], {firings: [option]})
  const plan = planDay(asked, {effort: 'quick', bare: true})
  const begun = {...asked, done: {now: plan.lit + 60, lit: plan.lit, set: [], plan: null}}
  /** The plan with so much of its heat to everything, and drawn so late. */
  const given = (dose: number, late: number): Plan => ({
    ...plan,
    loads: plan.loads.map((load) => ({
      ...load,
      dishes: load.dishes.map((d) => {
        const {eased: _, ...whole} = d
        const out = asked.day.serve + late
        const draw = late > 0 ? {low: out, likely: out, high: out} : d.draw
        return {...whole, draw, ...(dose < 1 ? {eased: {start: 0, end: 0, dose}} : {})}
      }),
    })),
  })
  /** What is offered for a day that has so much of its heat, where fires that burn on for some minutes would give it other plans. */
  const offered = (now: Plan, of: Readonly<Record<number, Plan>>): Remedy[] => {
    const {firing} = option
    const fire = {
      ought: 60,
      again: false,
      option: (more: number): FiringOption | null =>
        of[more] ? {...option, firing: {...firing, burn: firing.burn + more}} : null,
    }
    return burnWays(begun, now, fire, {}, ({firings: [tried]}) => ({
      ...of[tried!.firing.burn - firing.burn]!,
      firing: {...now.firing, burn: now.firing.burn + tried!.firing.burn - firing.burn},
    }))
  }
  const minutesOf = (ways: readonly Remedy[]): unknown[] => ways.map(({words}) => words.values['minutes'])
  const burning = (value: number) => [{unit: 'minutes', value}]

  it('is told by how much heat is wanting, not only by how many dishes want it', () => {
    const fire = {60: given(1, 50), 90: given(1, 60)}
    expect(minutesOf(offered(given(0.86, 0), fire))).toEqual(burning(60))
    expect(offered(given(0.99, 0), fire)).toEqual([])
  })

  it('is less where a shorter fire gives all of it in time', () => {
    expect(minutesOf(offered(given(0.86, 0), {60: given(1, 90), 30: given(1, 0)}))).toEqual(burning(30))
  })

  it('is said where as many want less of their heat', () => {
    const [way] = offered(given(0.82, 0), {60: given(0.97, 0)})
    expect(way!.say).toContain('2 still with less than all their heat, but nearer to it')
  })
})
