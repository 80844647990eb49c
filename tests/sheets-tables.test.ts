import {readFileSync} from 'node:fs'
import {parse} from 'csv-parse/sync'
import {describe, expect, it} from 'vitest'
import {items} from '../src/lexicon/index.js'
import {planFile, planFileSchema, planJson, planJsonSchema} from '../src/sheets/plan-json.js'
import {needs} from '../src/sheets/shopping.js'
import {plainStyle} from '../src/sheets/style.js'
import {shoppingCsv, stepsCsv} from '../src/sheets/tables.js'
import {oven, plan, problem} from './fixtures-sheets.js'

type Row = Record<string, string>
const rows = (text: string): Row[] => parse(text, {columns: true}) as Row[]

describe('the tables', () => {
  it('has a row for every step and dish, read back by csv-parse', () => {
    const read = rows(stepsCsv(plan, problem, plainStyle))
    expect(read.length).toBe(plan.steps.reduce((sum, step) => sum + Math.max(1, step.dishes.length), 0))
    const light = read.find((row) => row.action === 'light')!
    expect(light).toMatchObject({date: '2027-06-19', minutes: '320', time: '05:20'})
    const load = read.filter((row) => row.action === 'load' && row.load === '2')
    expect(load.map((row) => row.dish).sort()).toEqual(['Baked beans', 'Gingerbread'])
    expect(Number(load[0]!.celsius_low)).toBeLessThan(Number(load[0]!.celsius_high))
  })

  it('is RFC 4180: CRLF at every line’s end, quotes doubled', () => {
    const text = stepsCsv({...plan, steps: [{...plan.steps[0]!, say: 'Say "soak", then\nwait'}]}, problem, plainStyle)
    expect(text).toContain('"Say ""soak"", then\nwait"')
    expect(text.endsWith('\r\n')).toBe(true)
    expect(rows(text)[0]!.what).toBe('Say "soak", then\nwait')
  })

  it('adds an item up over the dishes of the day, range to range', () => {
    const flour = needs(problem, items).find((need) => need.item === 'flour')!
    expect(flour.grams).toEqual({low: 5300 + 850, likely: 5443 + 907, high: 5600 + 960})
    expect(flour.dishes).toEqual(['Household bread', 'Gingerbread'])
    const row = rows(shoppingCsv(problem, items)).find((other) => other.item === 'flour')!
    expect(Number(row.grams_likely)).toBe(6350)
  })

  it('buys no water', () => {
    const dish = {
      ...problem.dishes[0]!,
      amounts: [{item: 'water', part: '', grams: null, millilitres: {low: 1, likely: 1, high: 1}, kitchen: '1 ml', exact: null}],
    }
    expect(needs({...problem, dishes: [dish]}, items)).toEqual([])
  })
})

describe('the plan as JSON', () => {
  it('keeps to its published schema and says what the plan says', () => {
    const file = planFileSchema.parse(JSON.parse(planJson(plan, problem, oven)))
    expect(file.lit).toBe(plan.lit)
    expect(file.steps.map((step) => step.at)).toEqual(plan.steps.map((step) => step.at))
    expect(file.loads.flatMap((load) => load.dishes.map((dish) => dish.dish))).toEqual(
      plan.loads.flatMap((load) => load.dishes.map((dish) => dish.dish)),
    )
    expect(file.forecast.baking.likely.length).toBe(plan.forecast.baking.likely.length)
  })

  it('refuses what the schema does not allow', () => {
    expect(() => planFile({...plan, lit: Number.NaN}, problem, oven)).toThrow()
    expect(planFileSchema.safeParse({...planFile(plan, problem, oven), format: 2}).success).toBe(false)
  })

  it('publishes the schema it checks by', () => {
    const published = readFileSync(new URL('../docs/schema/plan.schema.json', import.meta.url), 'utf8')
    expect(published, 'run: npx tsx scripts/plan-schema.ts').toBe(planJsonSchema())
  })
})
