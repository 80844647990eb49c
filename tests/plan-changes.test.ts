import {beforeAll, describe, expect, it} from 'vitest'
import {type FiringLog, readLog} from '../src/oven/log.js'
import {readOven} from '../src/oven/read.js'
import {planAgain} from '../src/plan/again.js'
import {readDay} from '../src/plan/day.js'
import {type MadePlan, type MakePlan, makePlan} from '../src/plan/make.js'
import type {Plan} from '../src/plan/types.js'
import {translate} from '../src/receipt/translate.js'
import {changeWords} from '../src/sheets/phrases.js'
import {styleOf} from '../src/sheets/style-of.js'
import {smallDay} from './page-day.js'

const day = readDay(smallDay.get('day.md')!, 'day.md').day!
const {oven} = readOven(smallDay.get('oven.md')!, 'oven.md')
const receipts = day.items.flatMap(({file}) => translate(smallDay.get(file)!, {file}).receipts)
const input: MakePlan = {oven: oven!, day, receipts}

const clock = (minutes: number): string => `${Math.floor(minutes / 60)}:${String(Math.round(minutes) % 60).padStart(2, '0')}`

/** The log of a fire so much later and an oven so much hotter than a plan had it. */
function logFor({lit, raked, ready, firing, forecast}: Plan, late: number, hotter: number): FiringLog {
  const floor = forecast.floor.likely[Math.round((ready - lit) / forecast.step)]!
  const text = `---\ndate: 2027-06-19\nlit: ${clock(lit + late)}\nraked: ${clock(raked + late)}\nwood: ${firing.wood.toFixed(1)} kg\n---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n| ${clock(ready + late)} | floor | ${Math.round(floor + hotter)} °C | |\n`
  return readLog(text, 'log.md').log!
}

describe('why a plan moved', {timeout: 60_000}, () => {
  let made: MadePlan
  beforeAll(() => {
    made = makePlan(input)
  }, 60_000)

  const logOf = (late: number, hotter: number): FiringLog => logFor(made.plan, late, hotter)
  const whys = (late: number, hotter: number, language = 'en'): string[] => {
    const {plan, problem} = planAgain({...input, now: made.plan.ready + late}, made.problem, made.plan, logOf(late, hotter))
    const style = styleOf({language, clock: 24, degrees: 'C'})
    expect(plan.changes?.length ?? 0).toBeGreaterThan(0)
    return [...new Set(plan.changes!.filter(({minutes}) => minutes !== 0).map((one) => changeWords(one, problem, style).why))]
  }

  it('is the late fire alone where the oven does as it should so long after lighting', () => {
    expect(whys(30, 0)).toEqual(['the fire was lit 30 min later than planned'])
  })

  it('is the cool oven alone where the fire was lit in time', () => {
    const [why, ...more] = whys(0, -60)
    expect(more).toEqual([])
    expect(why).toMatch(/^the oven is \d+ °C cooler than planned at \d+:\d\d$/)
  })

  it('is both where the fire was lit late and the oven is cooler besides', () => {
    const [why, ...more] = whys(30, -60)
    expect(more).toEqual([])
    expect(why).toMatch(
      /^the fire was lit 30 min later than planned; and allowing for that the oven is \d+ °C cooler than planned at \d+:\d\d$/,
    )
    expect(whys(30, 60)[0]).toMatch(/lit 30 min later.*allowing for that the oven is \d+ °C hotter/)
  })

  it('is both in German too', () => {
    expect(whys(30, -60, 'de')[0]).toMatch(
      /^das Feuer wurde 30 min später angezündet als geplant; und davon abgesehen ist der Ofen um \d+:\d\d (?:Uhr )?\d+ °C kühler als geplant$/,
    )
  })

  it('stands in the plan’s own English as well, for those who take it as data', () => {
    const {plan} = planAgain({...input, now: made.plan.ready + 30}, made.problem, made.plan, logOf(30, -60))
    expect(plan.changes!.some(({why}) => /lit 30 min later than planned; and allowing for that/.test(why))).toBe(true)
  })

  it('is the load that went in late, and no hotter oven, where bread was set in after its time', () => {
    const {plan, problem} = made
    const [load] = plan.loads
    const empty = problem.firings.find((f) => f.firing.burn === plan.firing.burn)!.forecast
    const read = load!.at + 35
    const floor = empty.floor.likely[Math.round((read - plan.lit) / empty.step)]!
    const rows = load!.dishes.map(({dish}) => `| ${clock(load!.at + 40)} | ${dish} | set in | |\n`).join('')
    const text = `---\ndate: 2027-06-19\nlit: ${clock(plan.lit)}\nraked: ${clock(plan.raked)}\nwood: ${plan.firing.wood.toFixed(1)} kg\n---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n| ${clock(read)} | floor | ${floor.toFixed(1)} °C | |\n${rows}`
    const told = (log: string, language: string): string[] => {
      const again = planAgain({...input, now: load!.at + 45}, problem, plan, readLog(log, 'log.md').log!)
      const style = styleOf({language, clock: 24, degrees: 'C'})
      expect(again.plan.changes?.length ?? 0).toBeGreaterThan(0)
      return [...new Set(again.plan.changes!.map((one) => changeWords(one, again.problem, style).why))]
    }
    const names = load!.dishes.map(({dish}) => problem.dishes.find(({id}) => id === dish)!.title).join(' and ')
    expect(told(text, 'en')).toEqual([`${names} went in 40 min later than planned`])
    expect(told(text, 'de').join()).toMatch(/^40 min später eingeschossen als geplant: /)
    // Without a reading too; and what went in when it should is no reason.
    expect(told(text.replace(/.*floor.*\n/, ''), 'en')).toEqual([`${names} went in 40 min later than planned`])
    expect(whys(30, 0).join()).not.toMatch(/went in/)
  })

  it('is the door, where the log has it stand open for long, in English and German', () => {
    const {plan, problem} = made
    const log = {
      ...logOf(0, 0),
      readings: [],
      rows: [],
      doors: [{minutes: plan.ready - plan.lit, kind: 'door' as const, open: 40}],
    }
    const again = planAgain({...input, now: plan.ready + 45}, problem, plan, log)
    const told = (language: string): string[] => [
      ...new Set(again.plan.changes!.map((one) => changeWords(one, again.problem, styleOf({language})).why)),
    ]
    expect(told('en').join()).toContain('the door stood open for 40 min in all')
    expect(told('en').join()).not.toContain('to agree with the log')
    expect(told('de').join()).toContain('die Tür stand insgesamt 40 min offen')
  })

  it('is told by the lighting, and not by the clock, where the fire was lit late and the load went in later than planned all the same', () => {
    const {plan, problem} = made
    const [load] = plan.loads
    const at = load!.at + 10
    const rows = load!.dishes.map(({dish}) => `| ${clock(at)} | ${dish} | set in | |\n`).join('')
    const text = `---\ndate: 2027-06-19\nlit: ${clock(plan.lit + 40)}\nraked: ${clock(plan.raked + 40)}\nwood: ${plan.firing.wood.toFixed(1)} kg\n---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n${rows}`
    const again = planAgain({...input, now: at + 5}, problem, plan, readLog(text, 'log.md').log!)
    const told = (language: string): string =>
      again.plan.changes!.map((one) => changeWords(one, again.problem, styleOf({language, clock: 24, degrees: 'C'})).why).join()
    expect(told('en')).toContain(' went in 30 min sooner after the fire was lit than planned')
    expect(told('en')).not.toContain('earlier than planned')
    expect(told('de')).toContain('nach dem Anzünden 30 min früher eingeschossen als geplant: ')
  })

  it('names the plan that had the load at another hour than the morning’s, where it was late by that', () => {
    const {plan, problem} = made
    const quick = {...input, options: {effort: 'quick' as const}}
    const log = logOf(0, -60)
    const replanned = planAgain({...quick, now: plan.ready}, problem, plan, log).plan
    const [load] = replanned.loads
    const morning = plan.loads.find(({dishes}) => dishes.some(({dish}) => dish === load!.dishes[0]!.dish))!
    // The cool oven had the plan move it, and it went in late by that.
    expect(load!.at).not.toBe(morning.at)
    const late = load!.at + 40
    const rows = load!.dishes.map(({dish}) => `| ${clock(late)} | ${dish} | set in | |\n`).join('')
    const floor = plan.forecast.floor.likely[Math.round((plan.ready - plan.lit) / plan.forecast.step)]!
    const text = `---\ndate: 2027-06-19\nlit: ${clock(plan.lit)}\nraked: ${clock(plan.raked)}\nwood: ${plan.firing.wood.toFixed(1)} kg\n---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n| ${clock(plan.ready)} | floor | ${Math.round(floor - 60)} °C | |\n${rows}`
    const again = planAgain({...quick, now: late + 5}, problem, plan, readLog(text, 'log.md').log!)
    const told = (language: string): string =>
      again.plan
        .changes!.map((one) => changeWords(one, again.problem, styleOf({language, clock: 24, degrees: 'C'})).why)
        .join('\n')
    expect(told('en')).toContain(` went in 40 min later than the plan made at ${clock(plan.ready)} had it`)
    expect(told('en')).not.toContain('later than planned')
    expect(told('de')).toMatch(/40 min später eingeschossen als im Plan von \d/)
    // As data too.
    expect(again.plan.changes!.map(({why}) => why).join('\n')).toMatch(/went in 40 min later than the plan made at/)
  })

  it('is not looked for in wood that the log does not tell of, without a word', () => {
    const {plan, problem} = made
    const log = logOf(0, 0)
    const told = (of: FiringLog): string[] =>
      planAgain({...input, now: plan.ready}, problem, plan, of).plan.messages.flatMap((m) =>
        m.rule === 'wood-unlogged' ? [m.reason] : [],
      )
    expect(told(log)).toEqual([])
    const wood = Math.round(plan.firing.wood)
    expect(told({...log, wood: null})).toEqual([
      `${wood} kg of wood taken to have been burned, as planned; the log does not tell`,
    ])
    // While it burns nobody can tell yet.
    expect(told({...log, wood: null, raked: null})).toEqual([])
  })
})

describe('what comes with less than its heat', {timeout: 60_000}, () => {
  it('is told once of parts of a dish that want alike, by the one that wants most', () => {
    const asked = readDay(
      smallDay
        .get('day.md')!
        .replace('4 loaves', '6 loaves')
        .replace('cake.md)', 'cake.md) — 8 cakes')
        .replace('hands: 1', 'hands: 2'),
      'day.md',
    ).day!
    const big: MakePlan = {...input, day: asked}
    const {plan, problem} = makePlan(big)
    const {plan: again} = planAgain({...big, now: plan.ready}, problem, plan, logFor(plan, 0, -15))
    const parts = again.loads.flatMap(({dishes}) => dishes.filter((d) => d.dish === 'loaf' && d.eased !== undefined))
    expect(parts.length).toBeGreaterThan(1)
    const percents = parts.map(({eased}) => Math.floor(100 * eased!.dose))
    expect(new Set(percents).size).toBeGreaterThan(1)
    const told = again.changes!.filter(({dish, words}) => dish === 'loaf' && words?.what.values['percent'] !== undefined)
    expect(told.map(({words}) => words!.what.values['percent'])).toEqual([Math.min(...percents)])
  })
})
