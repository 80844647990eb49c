import {describe, expect, it} from 'vitest'
import {coldPlaces} from '../src/lexicon/dough-work.js'
import {check} from '../src/plan/check.js'
import {planDay} from '../src/plan/planner.js'
import {rules} from '../src/plan/rules.js'
import type {Plan, PlanProblem, Step} from '../src/plan/types.js'
import type {Dish, DoughTimes} from '../src/scale/types.js'
import {stepWords} from '../src/sheets/phrases.js'
import {books} from '../src/sheets/said.js'
import {styleOf} from '../src/sheets/style-of.js'
import {inBook} from '../src/sheets/words/sentences.js'
import {day, dish, fallingOven, problem} from './plan-fixtures.js'

/*
 * Invented doughs with sponges. That nobody gets up to set one who need not, and that a sponge in the cold works some times as slowly: common
 * practice, no source. That egg and milk stand overnight at 5 °C or colder: FDA Food Code 2022, 3-501.16(A)(2).
 */
const oven = fallingOven(120, 300)
const simulate = (): typeof oven.forecast => oven.forecast
const range = (low: number, high: number) => ({low, likely: (low + high) / 2, high})
const bread = (dough: DoughTimes, more: Partial<Dish> = {}): Dish =>
  dish('bread', 2, {id: 'bread', title: 'Bread', dough, ...more})
const staged: DoughTimes = {mix: 20, rise: 60, shape: 15, prove: range(15, 15), hold: 30}
const asked = (dishes: readonly Dish[], fireFrom = 300): PlanProblem =>
  problem(dishes, {day: day({fireFrom, hands: 1}), firings: [oven]})
const plan = (p: PlanProblem): Plan => planDay(p, {simulate, effort: 'quick'})
const step = ({steps}: Plan, action: Step['action']): Step => steps.find((s) => s.load !== null && s.action === action)!
const reasons = (p: PlanProblem, made: Plan): string[] => check(p, made).map(({reason}) => reason)
const drawn = ({loads}: Plan): number => Math.max(...loads.flatMap(({dishes}) => dishes.map(({draw}) => draw.likely)))
const byNight = (at: number): boolean => {
  const hour = at - 1440 * Math.floor(at / 1440)
  return hour >= rules.nightFrom || hour < rules.nightTo
}
// As soon as there is bread at all, from a fire that may be lit at five; with a sponge that would be set at ten past four for it.
const first = plan(asked([bread(staged)]))
const soonest = drawn(first)
const WORKS = step(first, 'mix').at - rules.setSponge - 250
const sponged: DoughTimes = {...staged, sponge: range(WORKS, WORKS)}

describe('a sponge that would be set in the night', () => {
  it('has the day put off where it is wanted later, as far as that leaves it time', () => {
    const offs = [0, 20, 40, 50, 60, 70, 80, 90]
    const made = offs.map((off) => {
      const p = asked([bread(sponged, {wantedBy: soonest + off})])
      const one = plan(p)
      expect(reasons(p, one)).toEqual([])
      expect([off, one.score.lateMinutes, one.score.wood]).toEqual([off, 0, first.score.wood])
      return one
    })
    for (const [i, one] of made.entries()) {
      const spare = soonest + offs[i]! - drawn(one)
      const wanting = rules.nightTo - (step(one, 'mix').at - rules.setSponge - WORKS)
      const cold = one.messages.some(({rule}) => rule === 'cold-rise')
      // Neither got up for, nor left in the cold, where all of it could be so much later.
      expect([offs[i], cold, byNight(step(one, 'sponge').at)]).toEqual([offs[i], spare < wanting, false])
    }
    expect(made.map(({messages}) => messages.some(({rule}) => rule === 'cold-rise'))).toEqual(
      expect.arrayContaining([true, false]),
    )
  })

  it('is set the evening before and works in the cold where it is wanted at once, which is said and warned of', () => {
    const p = asked([bread(sponged, {wantedBy: soonest})])
    const made = plan(p)
    expect(reasons(p, made)).toEqual([])
    const {at, words, say} = step(made, 'sponge')
    expect(at + rules.setSponge).toBeLessThanOrEqual(rules.nightFrom - 1440)
    const place = coldPlaces.find(({id}) => words!.say.id === (id === 'refrigerator' ? 'sponge cold' : 'sponge cool'))!
    const works = step(made, 'mix').at - at - rules.setSponge
    expect(works).toBeGreaterThanOrEqual(place.slower.low * WORKS)
    expect(works).toBeLessThanOrEqual(place.slower.high * WORKS)
    expect(say).toMatch(/^Bread: set the sponge the evening before: .* works slowly until /)
    expect(stepWords(step(made, 'sponge'), p, styleOf({language: 'de'})).say).toMatch(/^Bread: Vorteig am Vorabend ansetzen: /)
    const warned = made.messages.find(({rule}) => rule === 'cold-rise')!
    expect(warned.reason).toMatch(/^Bread: its sponge works .* through the night, .* longer than it is meant to/)
    expect([inBook(warned.reason, books.de!), inBook(warned.suggest!, books.de!)]).not.toContain(null)
    // Unsaid, unwarned of or too long, it is no sound plan.
    const saying = (id: string): Plan => ({
      ...made,
      steps: made.steps.map((s) => (s.action === 'sponge' ? {...s, words: {...s.words!, say: {...s.words!.say, id}}} : s)),
    })
    expect(reasons(p, saying('sponge'))).toContain(`Bread: its sponge works ${works} min and is spent`)
    expect(reasons(p, {...made, messages: []})).toContain(
      `Bread: its sponge works ${works - WORKS} min too long, and nothing warns of it`,
    )
    const rich = asked([bread({...sponged, spoils: true}, {wantedBy: soonest})])
    expect(reasons(rich, saying('sponge cool'))).toContain(
      'Bread: there is egg or milk in it, and its sponge stands through the night in no refrigerator',
    )
    expect(step(plan(rich), 'sponge').words!.say.id).toBe('sponge cold')
  })

  it('is found by the checker where its ranges let it be set by day', () => {
    const wide = {...sponged, sponge: range(60, 240)}
    const p = asked([bread(wide)], 420)
    const made = plan(p)
    expect(reasons(p, made)).toEqual([])
    const works = step(made, 'mix').at - rules.setSponge - (rules.nightTo - rules.tick)
    expect(works).toBeLessThanOrEqual(rules.spongeHolds * 240)
    const night: Plan = {
      ...made,
      steps: made.steps.map((s) => (s.action === 'sponge' ? {...s, at: rules.nightTo - rules.tick} : s)),
    }
    expect(check(p, night).map(({rule}) => rule)).toEqual(['night'])
  })
})

describe('a dough for which a night in the cold is to be had', () => {
  // Work that reaches into the night for 25 minutes cost as much as five hours more in the cold.
  it('is mixed the evening before, and not half an hour before the day begins', () => {
    const short: DoughTimes = {mix: 25, rise: 90, shape: 15, prove: range(45, 45), hold: 30}
    for (const fireFrom of [180, 210, 240, 270, 300]) {
      const p = asked([bread(short, {wantedBy: fireFrom + 200})], fireFrom)
      const made = plan(p)
      expect(reasons(p, made)).toEqual([])
      const mix = made.steps.find((s) => s.load !== null && (s.action === 'mix' || s.action === 'evening before'))!
      expect([fireFrom, mix.at >= fireFrom || mix.at + 25 <= rules.nightFrom - 1440]).toEqual([fireFrom, true])
    }
  })
})
