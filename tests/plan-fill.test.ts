import {readFileSync} from 'node:fs'
import {describe, expect, it} from 'vitest'
import {readOven} from '../src/oven/read.js'
import {check} from '../src/plan/check.js'
import {readDay} from '../src/plan/day.js'
import {type AtMost, type Filling, floorFilling} from '../src/plan/fill.js'
import {makePlan} from '../src/plan/make.js'
import type {Plan} from '../src/plan/types.js'
import {translate} from '../src/receipt/translate.js'
import {makeDishes} from '../src/scale/dishes.js'
import type {Dish} from '../src/scale/types.js'

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
      why: `${whole!.count} stand on the floor at once, and what else this day bakes leaves no place for more`,
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

describe('how far a floor is filled', () => {
  const line = 9
  const dish = {id: 'loaf', fills: line} as Dish
  const other = {id: 'pie'} as Dish
  /** A day that places so many loaves of those asked for, and pies while there are no more loaves than that. */
  const day =
    (fits: (hands: number, alone: boolean) => number, pies = 99, placedOfMore = (fit: number): number => fit) =>
    (asked: number[]) =>
    (atMost: AtMost | null, {hands = 1, alone = false}: {hands?: number; alone?: true | false} = {}): Filling => {
      const count = atMost?.get(line) ?? 12
      asked.push(count)
      const fit = fits(hands, alone)
      const placed = count <= fit ? count : placedOfMore(fit)
      const out = [...(placed < count ? ['loaf'] : []), ...(!alone && count > pies ? ['pie'] : [])]
      const plan = {
        loads: [{at: 0, dishes: [{dish: 'loaf', count: placed, draw: {likely: 60}}]}],
        unplaced: out.map((id) => ({dish: id})),
      }
      const dishes = [{...dish, count}, ...(alone ? [] : [other])]
      return {dishes, plan: plan as unknown as Plan, late: 0}
    }
  const fill = (made: ReturnType<typeof day>) => {
    const asked: number[] = []
    const found = floorFilling(made(asked))
    return {most: found?.atMost.get(line), limit: found?.limit, plans: asked.length}
  }

  it('is all that stand on it where a plan has a place for them', () => {
    expect(fill(day(() => 12))).toMatchObject({most: undefined, plans: 1})
  })
  it('is more than the first plan placed, where more have a place, and no more than go with the rest of the day', () => {
    expect(
      fill(
        day(
          () => 9,
          99,
          () => 3,
        ),
      ),
    ).toMatchObject({most: 9, limit: 'heat'})
    expect(fill(day(() => 12, 5)).most).toBeLessThanOrEqual(5)
    expect(fill(day(() => 12, 5)).most).toBeGreaterThanOrEqual(3)
    // What has no place with a single loaf either is not put out by the loaves.
    expect(fill(day(() => 12, 0)).most).toBeUndefined()
  })
  it('says what keeps more out', () => {
    expect(fill(day((hands) => (hands > 2 ? 12 : 4)))).toMatchObject({most: 4, limit: 'hands'})
    expect(fill(day((_, alone) => (alone ? 12 : 4)))).toMatchObject({most: 4, limit: 'others'})
    expect(fill(day(() => 4))).toMatchObject({most: 4, limit: 'heat'})
  })
  it('takes few plans', () => {
    for (let fit = 0; fit <= 12; fit++)
      for (const placed of [0, 1, fit >> 1, fit])
        expect(
          fill(
            day(
              () => fit,
              99,
              () => placed,
            ),
          ).plans,
        ).toBeLessThanOrEqual(10)
  })
})
