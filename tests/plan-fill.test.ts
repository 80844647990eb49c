import {readFileSync} from 'node:fs'
import {describe, expect, it} from 'vitest'
import {readOven} from '../src/oven/read.js'
import {check} from '../src/plan/check.js'
import {readDay} from '../src/plan/day.js'
import {makePlan} from '../src/plan/make.js'
import {translate} from '../src/receipt/translate.js'
import {makeDishes} from '../src/scale/dishes.js'

/** The demo's oven and receipts; that an oven bakes no more loaves than it has heat for needs no source. */
const text = (name: string): string => readFileSync(`corpus-demo/${name}`, 'utf8')
const {oven} = readOven(text('oven.md'), 'oven.md') as {oven: NonNullable<ReturnType<typeof readOven>['oven']>}
const receipts = ['wholemeal-loaves', 'apple-pies'].flatMap(
  (name) => translate(text(`receipts/${name}.md`), {file: `receipts/${name}.md`}).receipts,
)
const head = '---\ndate: 2027-03-06\npeople: 6\nserve: 1 pm\nfire from: 6 am\n---\n\n# Saturday\n\n'
const loaves = '- [Wholemeal](receipts/wholemeal-loaves.md) — fill the floor'
const dayOf = (list: string) => readDay(`${head}${list}\n`, 'day.md').day!

describe('what is to fill the floor', () => {
  const day = dayOf(`${loaves}\n- [Apple pies](receipts/apple-pies.md) — 1 pie`)
  const [whole] = makeDishes({day, receipts, oven}).dishes
  const made = makePlan({day, receipts, oven, options: {effort: 'quick'}})
  const [bread] = made.dishes

  it('is as many as the oven has heat for, all of them with a place', () => {
    expect(bread!.count).toBeGreaterThan(whole!.count / 3)
    expect(bread!.count).toBeLessThan(whole!.count)
    expect(made.plan.unplaced).toEqual([])
    expect(check(made.problem, made.plan)).toEqual([])
    expect(bread!.sized[0]).toMatchObject({
      value: `${bread!.count} × loaf 9 x 5 x 3 in`,
      why: `${whole!.count} stand on the floor at once, and this day has no heat or no time for more`,
    })
  })
  it('is weighed out for so many', () => {
    const flour = (dish: typeof bread): number => dish!.amounts[0]!.grams!.likely
    expect(flour(bread) / bread!.count).toBeCloseTo(flour(whole) / whole!.count, 6)
  })
  it('is no fewer where a number is asked for: that is an order', () => {
    const order = dayOf(loaves.replace('fill the floor', `${whole!.count} loaves`))
    const {dishes, plan} = makePlan({day: order, receipts, oven, options: {effort: 'quick'}})
    expect(dishes.reduce((sum, {count}) => sum + count, 0)).toBe(whole!.count)
    expect(plan.possible).toBe(false)
  })
  it('is all that stand on it where there is heat for them', () => {
    const few = dayOf('- [Apple pies](receipts/apple-pies.md) — fill the floor')
    const {dishes, plan} = makePlan({day: few, receipts, oven, options: {effort: 'quick'}})
    expect(dishes[0]!.sized[0]!.why).toBe('as many as stand on the floor at once')
    expect(plan.possible).toBe(true)
  })
})
