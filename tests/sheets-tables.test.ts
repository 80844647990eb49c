import {readFileSync} from 'node:fs'
import {parse} from 'csv-parse/sync'
import type {ElementContent, RootContent} from 'hast'
import {describe, expect, it} from 'vitest'
import {items} from '../src/lexicon/index.js'
import {kitchenText} from '../src/measure/round.js'
import type {Plan, PlanProblem} from '../src/plan/types.js'
import {translate} from '../src/receipt/translate.js'
import {makeDishes} from '../src/scale/dishes.js'
import type {Dish} from '../src/scale/types.js'
import {leftOut, leftOutLine} from '../src/sheets/left-out.js'
import {planFile, planFileSchema, planJson, planJsonSchema} from '../src/sheets/plan-json.js'
import {amountToBuy, needs, shoppingSheet} from '../src/sheets/shopping.js'
import {plainStyle} from '../src/sheets/style.js'
import {shoppingCsv, stepsCsv} from '../src/sheets/tables.js'
import {oven, plan, problem} from './fixtures-sheets.js'

type Row = Record<string, string>
const rows = (text: string): Row[] => parse(text, {columns: true}) as Row[]

const text = (...made: readonly (ElementContent | RootContent)[]): string =>
  made.map((node) => (node.type === 'text' ? node.value : 'children' in node ? text(...node.children) : '')).join(' ')

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
    const row = rows(shoppingCsv(plan, problem, items)).find((other) => other.item === 'flour')!
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

describe('what is to be bought', () => {
  it('of which some is wanted for every batch of a dish is wanted for that dish, said once', () => {
    const need = {...needs(problem, items)[0]!, item: 'cayenne', grams: null, pieces: null, millilitres: null}
    const some = (title: string) => ({text: 'cayenne', title})
    const asStands = [some('Scones (1/2)'), some('Scones (2/2)'), some('Pies')]
    expect(amountToBuy({...need, asStands}, plainStyle)).toBe('some for Scones + some for Pies')
    // So many for each batch are as many for each.
    const two = (title: string) => ({text: '2', title})
    expect(amountToBuy({...need, asStands: [two('Scones (1/2)'), two('Scones (2/2)')]}, plainStyle)).toContain(' + ')
  })
})

describe('yeast', () => {
  // Common practice: 3 parts of pressed yeast to 1 of dry. A pint of barm to 19 g: from memory.
  const bake = (yeast: string, amount: string, year = ''): {note: string; problem: PlanProblem} => {
    const text = `${year}# Loaf\n\n- 1 kg flour\n- 650 g water\n- 20 g salt\n- ${yeast}\n\nShape into 2 loaves. Bake at 230 °C for 40 minutes.\n`
    const {receipts} = translate(text, {file: 'receipts/loaf.md'})
    const item = {file: 'receipts/loaf.md', title: 'Loaf', amount, wantedBy: null, line: 5, column: 3}
    const {dishes} = makeDishes({day: {people: 12, items: [item], spare: []}, receipts, oven: {...oven, rules: {}}})
    return {note: receipts[0]!.ingredients[3]!.notes.join(' '), problem: {...problem, dishes}}
  }
  const bought = (made: PlanProblem) => needs(made, items).find(({group}) => group === 'leaven')!

  it.each([
    ['weighed', '20 g fresh yeast', '', 7.2, true],
    ['in German', '42 g Frischhefe', '', 15.1, true],
    ['by the cube', '1 Würfel Hefe', '', 15.1, true],
    ['pressed by name', '20 g compressed yeast', '', 7.2, true],
    ['liquid barm', '1/2 pint barm', '---\nyear: 1829\nplace: Boston\n---\n', 9.5, false],
  ])('%s is so much dry yeast on the handout and on the shopping list', (_, words, year, dry, sold) => {
    const once = bake(words, 'once', year)
    const {instead} = bought(once.problem)
    expect(instead!.grams!.likely).toBeGreaterThan(0.95 * dry)
    expect(instead!.grams!.likely).toBeLessThan(1.05 * dry)
    expect(once.note).toContain(kitchenText(instead!.grams!, 'g'))
    expect(bought(bake(words, '4 times', year).problem).instead!.grams!.likely).toBeCloseTo(4 * instead!.grams!.likely, 3)
    const list = text(...shoppingSheet(plan, once.problem, items, plainStyle)[0]!.children)
    expect(list.includes('no longer sold: use active dry yeast')).toBe(!sold)
    expect(list.includes('sold as fresh yeast; or active dry yeast')).toBe(sold)
  })
})

describe('what the plan has no place for', () => {
  const one = {...plan.unplaced[0]!, dish: 'baked-beans'}
  const [bread, gingerbread, beans] = problem.dishes as [Dish, Dish, Dish]
  const loads = plan.loads.map((load) => ({
    ...load,
    dishes: load.dishes
      .filter(({dish}) => dish !== 'baked-beans')
      .map((entry) => (entry.dish === 'gingerbread' ? {...entry, count: 1} : entry)),
  }))
  const less: Plan = {...plan, loads, unplaced: [one, {...one, dish: 'gingerbread'}]}

  it('is named under the title of the shopping list, at its batch, at what only it needs, and in the table', () => {
    const [list, weighing] = shoppingSheet(less, problem, items, plainStyle).map((sheet) => text(sheet).replace(/\s+/g, ' '))
    expect(list).toContain(
      'The plan has no place for Gingerbread (1 of 2 × square tin 8 in) and Baked beans (1 × crock). Their amounts are in this list.',
    )
    expect(list!.match(/only for what has no place in the plan/g)?.length).toBe(1)
    expect(list).toMatch(/dried beans [^☐]*only for what has no place/)
    expect(weighing).toContain('Gingerbread: 2 × square tin 8 in (no place in the plan for 1 of 2)')
    expect(weighing).toContain('Baked beans: 1 × crock (no place in the plan)')
    expect(weighing).not.toMatch(/Household bread: 6 × free-standing loaf[^(]*\(no place/)
    const table = rows(shoppingCsv(less, problem, items))
    const noPlace = (item: string): string | undefined => table.find((row) => row.item === item)?.no_place
    expect(noPlace('flour')).toBe('Gingerbread')
    expect(noPlace('dried beans')).toBe('Baked beans')
    expect(noPlace('salt')).toBe('')
  })

  it('is told for batches of one dish together', () => {
    const halves = [1, 2].map((n) => ({...bread, id: `household-bread-${n}`, title: `Household bread (${n}/2)`, count: 3}))
    const day = {...problem, dishes: [...halves, gingerbread, beans]}
    const items_ = {...day, day: {...day.day, items: []}}
    const half: Plan = {...plan, loads: [], unplaced: [{...one, dish: 'household-bread-2'}]}
    expect(leftOutLine(half, items_, plainStyle)).toContain('no place for Household bread (3 of 6 × free-standing loaf).')
    const both = {...half, unplaced: [1, 2].map((n) => ({...one, dish: `household-bread-${n}`}))}
    expect(leftOutLine(both, items_, plainStyle)).toContain('no place for Household bread (6 × free-standing loaf).')
  })

  it('counts what has been drawn already as placed, whether the plan still has its load or not', () => {
    const done = {
      now: 800,
      lit: 320,
      set: [{dish: 'gingerbread', count: 1, at: 720, drawn: 765, placed: []}],
      plan,
      doughs: new Map<string, never>(),
    }
    const day = {...problem, done} as unknown as PlanProblem
    for (const some of [loads, []])
      expect([...leftOut({...less, loads: some, unplaced: [{...one, dish: 'gingerbread'}]}, day)]).toEqual([['gingerbread', 1]])
  })

  it('is said nowhere where all has a place', () => {
    const full: Plan = {...plan, possible: true, unplaced: []}
    expect(text(...shoppingSheet(full, problem, items, plainStyle))).not.toContain('no place')
    expect(rows(shoppingCsv(full, problem, items)).every((row) => row.no_place === '')).toBe(true)
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
