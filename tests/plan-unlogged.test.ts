import {describe, expect, it} from 'vitest'
import type {FiringLog, LogRow} from '../src/oven/log.js'
import type {PlanProblem} from '../src/plan/types.js'
import {goneUnlogged} from '../src/plan/unlogged.js'
import {messageWords} from '../src/sheets/said.js'
import {styleOf} from '../src/sheets/style-of.js'
import {dish, problem} from './plan-fixtures.js'

/** An invented day of which bread and pies were to be baked in the morning. No outside fact. */
const at = (hours: number, minutes = 0): number => hours * 60 + minutes
const [bread, pies, cake] = [dish('bread', 4), dish('pie', 2), dish('gingerbread', 1)] as const
const asked = problem([bread, pies, cake])
const byId = new Map(asked.dishes.map((d) => [d.id, d]))

/** What is said where bread was in from eleven to twelve and pies from ten past eleven to one, by the plan, and the log has these rows. */
function said(rows: readonly Partial<LogRow>[], set = ['bread'], told: readonly string[] = []) {
  const all = [
    {dish: bread.id, count: 4, at: at(11), drawn: at(12), placed: []},
    {dish: pies.id, count: 2, at: at(11, 10), drawn: at(13), placed: []},
  ].filter(({dish: id}) => set.some((name) => id.startsWith(name)))
  const rest = {...asked, done: {now: at(15), lit: at(6), set: all}} as unknown as PlanProblem
  const log = {
    date: '2027-06-24',
    lit: at(6),
    raked: at(8),
    wood: 40,
    rows: rows.map((row, i) => ({line: 9 + i, elapsed: 0, text: '', note: '', ...row})),
    readings: [],
    doors: [],
  } as unknown as FiringLog
  return goneUnlogged(rest, byId, log, new Set(told))
}

describe('what is taken to have been baked of which the log tells nothing', () => {
  const cakeIn = {what: 'set in', dish: cake.id, at: at(12, 30)} as const

  it('is told of for the rest of the day', () => {
    expect(said([cakeIn])).toMatchObject([
      {
        severity: 'warning',
        rule: 'gone-unlogged',
        file: 'day.md',
        reason: `${bread.title}: taken to have been set in at 11:00 and drawn at 12:00; the log tells of neither`,
        times: [at(11), at(12)],
      },
    ])
  })
  it('in one line where there are more', () => {
    const [message, ...more] = said([cakeIn], ['bread', 'pie'])
    expect(more).toEqual([])
    expect(message!.reason).toBe(
      `2 dishes are taken to have been set in and drawn, and the log tells of neither: ${bread.title} (11:00–12:00); ${pies.title} (11:10–13:00)`,
    )
    expect(messageWords(message!, styleOf({language: 'de'})).reason).toMatch(/^2 Gerichte wohl eingeschossen und ausgezogen/)
  })
  it('but not where the log tells when it was set in or drawn', () => {
    expect(said([{what: 'set in', dish: bread.id, at: at(11)}, cakeIn])).toEqual([])
    expect(said([{what: 'drawn', dish: bread.id, at: at(12)}, cakeIn])).toEqual([])
  })
  it('nor where it tells of no dish since', () => {
    expect(said([])).toEqual([])
    expect(said([{what: 'reading', at: at(12, 30)}])).toEqual([])
    expect(said([{...cakeIn, at: at(9)}])).toEqual([])
  })
  it('nor where something is said of it that matters more', () => {
    expect(said([cakeIn], ['bread'], [bread.id])).toEqual([])
  })
})
