import {describe, expect, it} from 'vitest'
import {readDayFolder} from '../src/cli/day-folder.js'
import {writeClock} from '../src/measure/quantity.js'
import {type FiringLog, readLog} from '../src/oven/log.js'
import {planAgain} from '../src/plan/again.js'
import {makePlan} from '../src/plan/make.js'
import {onFires, presumedBy} from '../src/plan/presumed.js'
import type {Told} from '../src/plan/told.js'
import type {Plan} from '../src/plan/types.js'
import {makeDishes} from '../src/scale/dishes.js'
import {messageWords} from '../src/sheets/said.js'
import {styleOf} from '../src/sheets/style-of.js'
import {inFolder, smallDay} from './page-day.js'

/**
 * A fire that is out later than planned, or that was lit sooner, on an invented day. That coals are raked out and the heat evens out before
 * bread goes in: common practice, no source.
 */
describe('what the log does not tell of is not thought set in before the oven is ready', () => {
  const made = inFolder(smallDay, async (folder) => {
    const {day, oven, receipts} = readDayFolder(folder)
    const scaled = makeDishes({day, receipts, oven})
    return {...makePlan({scaled, oven, day, receipts}), input: {day, oven}}
  })
  const logOf = (head: string, rows: readonly string[] = []): FiringLog =>
    readLog(
      `---\ndate: 2027-06-19\n${head}\n---\n\n| time | reading | value |\n| --- | --- | --- |\n${rows.map((row) => `| ${row} |\n`).join('')}`,
      'firings/2027-06-19.md',
    ).log!
  const setIn = (plan: Plan): number[] => plan.loads.map(({at}) => at)
  const soak = (plan: Plan): number => plan.firing.soak
  const faults = (plan: Plan): string[] => plan.messages.flatMap(({rule}) => (rule.startsWith('checker') ? [rule] : []))

  it.each([
    [0, 25, '| walls | white', 10],
    [0, 55, '| floor | 290 °C', 20],
    [0, 25, '| note | a windy morning', 25],
    [-35, -10, '| floor | 290 °C', 20],
    [-35, -35, '| walls | white', 40],
  ])('lit %s and raked %s min off the plan, at a row “%s” %s min after the raking', async (lit, raked, row, behind) => {
    const {plan: morning, problem, input} = await made
    const out = morning.raked + raked
    const log = logOf(`lit: ${writeClock(morning.lit + lit)}\nraked: ${writeClock(out)}`, [`${writeClock(out + behind)} ${row}`])
    const {plan, problem: rest} = planAgain(input, problem, morning, log)
    expect(rest.done!.set).toEqual([])
    expect(Math.min(...setIn(plan))).toBeGreaterThanOrEqual(out + soak(morning))
    expect(faults(plan)).toEqual([])
  })

  it('and by the clock alone, once that has come', async () => {
    const {plan: morning, problem, input} = await made
    const log = logOf(`lit: ${writeClock(morning.lit)}\nraked: ${writeClock(morning.raked + 40)}`)
    const ready = morning.raked + 40 + soak(morning)
    const first = Math.min(...setIn(morning)) - morning.ready
    const at = (now: number) => planAgain({...input, now}, problem, morning, log).problem.done!.set.map((one) => one.at)
    expect(at(ready)).toEqual([])
    const then = at(ready + first + 15)
    expect(then.length).toBeGreaterThan(0)
    expect(Math.min(...then)).toBeGreaterThanOrEqual(ready)
  })

  it('while the walls are looked at and no raking is logged', async () => {
    const {plan: morning, problem, input} = await made
    const looked = morning.ready + 20
    const log = logOf(`lit: ${writeClock(morning.lit)}`, [`${writeClock(looked)} | walls | white`])
    const {plan, problem: rest} = planAgain(input, problem, morning, log)
    expect(rest.done!.set).toEqual([])
    expect(plan.ready).toBe(looked + soak(morning))
    const message = plan.messages.find(({rule}) => rule === 'raking-unlogged')!
    expect(message).toMatchObject({severity: 'warning', file: 'firings/2027-06-19.md', times: [looked]})
    expect(messageWords(message, styleOf({language: 'de'})).foreign).toBe(false)
    // With a raking logged, or when looked at in time, nothing is to be said.
    const told = logOf(`lit: ${writeClock(morning.lit)}\nraked: ${writeClock(morning.raked)}`, [
      `${writeClock(looked)} | walls | white`,
    ])
    const soon = logOf(`lit: ${writeClock(morning.lit)}`, [`${writeClock(morning.raked - 10)} | walls | white`])
    for (const other of [told, soon])
      expect(planAgain(input, problem, morning, other).plan.messages.map(({rule}) => rule)).not.toContain('raking-unlogged')
  })
})

describe('when what a plan has is taken to have been done', () => {
  const never = {planned: Number.POSITIVE_INFINITY, at: Number.POSITIVE_INFINITY}
  const part = (at: number, saidIn?: number): Told =>
    ({at, draw: at + 60, ...(saidIn === undefined ? {} : {saidIn})}) as unknown as Told
  const by = (parts: readonly Told[], ready: number, late = 0) => {
    const told = parts.flatMap(({at, saidIn}) => (saidIn === undefined ? [] : [{planned: at, at: saidIn, setIn: true}]))
    return presumedBy(told, late, never, onFires(parts, never, [ready, 0]))
  }

  it('all of a fire waits as long as the first that is set in on it', () => {
    const presumed = by([part(650), part(700)], 675)
    expect([650, 700, 710, 900].map(presumed)).toEqual([675, 725, 735, 925])
    // What is done before the first is set in was done before anyone knew of it.
    expect(presumed(500)).toBe(500)
  })
  it('lit sooner, too, and not at all where it is set in later than that', () => {
    expect([650, 700].map(by([part(650), part(700)], 630, -35))).toEqual([630, 680])
    expect([650, 700].map(by([part(650), part(700)], 640))).toEqual([650, 700])
  })
  it('and no longer than the log has something in the oven', () => {
    const presumed = by([part(650, 655), part(700)], 675)
    expect([650, 700].map(presumed)).toEqual([655, 705])
    // Of the second only: the first was in by then.
    expect([650, 700, 800].map(by([part(650), part(700, 700), part(800)], 675))).toEqual([675, 700, 800])
    expect([650, 660, 800].map(by([part(650), part(660, 660), part(800)], 675))).toEqual([660, 660, 800])
  })
  it('on a second fire by that one', () => {
    const second = {planned: 800, at: 800}
    const parts = [part(650), part(900)]
    const presumed = presumedBy([], 0, second, onFires(parts, second, [600, 930]))
    expect([650, 900, 1000].map(presumed)).toEqual([650, 930, 1030])
  })
})
