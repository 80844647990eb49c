import {describe, expect, it} from 'vitest'
import {readDayFolder} from '../src/cli/day-folder.js'
import type {FiringLog} from '../src/oven/log.js'
import {type MadePlan, makePlan} from '../src/plan/make.js'
import {planFile, planFileSchema, planJson} from '../src/sheets/plan-json.js'
import {crowdedPlan} from './crowded-day.js'

/** Paths of every key of a value, array places left out. */
function paths(value: unknown, at = ''): Set<string> {
  const out = new Set<string>()
  if (Array.isArray(value)) for (const one of value) for (const path of paths(one, `${at}[]`)) out.add(path)
  else if (typeof value === 'object' && value !== null)
    for (const [key, one] of Object.entries(value)) {
      if (one === undefined) continue
      out.add(`${at}.${key}`)
      for (const path of paths(one, `${at}.${key}`)) out.add(path)
    }
  return out
}

describe('plan.json of real days', () => {
  const read = readDayFolder('corpus-demo')
  const {oven, day, receipts} = read
  const options = {effort: 'quick'} as const
  const demo = makePlan({oven, day, receipts, options})
  const log: FiringLog = {
    date: day.date,
    lit: demo.plan.lit + 40,
    raked: demo.plan.raked + 40,
    wood: demo.plan.firing.wood,
    rows: [],
    readings: [{minutes: demo.plan.ready - demo.plan.lit + 20, kind: 'floor', value: 260}],
    doors: [],
  } as unknown as FiringLog
  const days: Record<string, () => MadePlan> = {
    'the demo': () => demo,
    'a day that does not fit': crowdedPlan,
    'a day planned again': () => makePlan({oven, day, receipts, log, now: demo.plan.ready + 60, options}),
  }
  const seen = new Set<string>()
  for (const [name, make] of Object.entries(days))
    it(`holds everything the plan says: ${name}`, () => {
      const {plan: made, problem} = make()
      // What would help one dish alone is told as what would help the day.
      const plan = {
        ...made,
        unplaced: made.unplaced.map((one) => ({...one, tried: [...(one.tried ?? []), ...(made.ways ?? [])]})),
      }
      const file = planFile(plan, problem, oven)
      const written = paths(file)
      const lost = [...paths(plan)].filter((path) => !written.has(path))
      expect(lost).toEqual([])
      for (const path of written) seen.add(path)
      // Read back, it is what was written, to a thousandth.
      const back = planFileSchema.parse(JSON.parse(planJson(plan, problem, oven)))
      expect(paths(back)).toEqual(written)
      expect(back.score.total).toBeCloseTo(plan.score.total, 2)
      expect(back.fires?.length).toBe(plan.fires?.length)
      expect(back.steps.map(({say}) => say)).toEqual(plan.steps.map(({say}) => say))
    }, 60_000)

  it('has met every part of the schema that days differ in', () => {
    for (const path of [
      '.fires[].lit',
      '.balance[].heat',
      '.left.celsius',
      '.unplaced[].conflict',
      '.unplaced[].tried[].words.id',
      '.unplaced[].words.id',
      '.late[].wanted',
      '.ways[].words.id',
      '.changes[].words.why.id',
      '.suggestions[].words.id',
      '.loads[].dishes[].zone',
      '.steps[].words.say.id',
    ])
      expect([...seen], path).toContain(path)
  })
})
