import {readFileSync} from 'node:fs'
import {describe, expect, it} from 'vitest'
import {readOven} from '../src/oven/read.js'
import {readDay} from '../src/plan/day.js'
import {makePlan} from '../src/plan/make.js'
import {planDay} from '../src/plan/planner.js'
import {inSmallerVessels} from '../src/plan/ways/smaller-vessel.js'
import {translate} from '../src/receipt/translate.js'

/** The demo's oven with a mouth too low for a crock. Invented; what is asked is that what is offered comes true: no outside fact. */
const text = (name: string): string => readFileSync(`corpus-demo/${name}`, 'utf8')
const {oven: demo} = readOven(text('oven.md'), 'oven.md') as {oven: NonNullable<ReturnType<typeof readOven>['oven']>}
const oven = {...demo, mouth: {...demo.mouth, height: 0.16}}
const beans =
  '---\nyear: 1840\nplace: United States\nvessel: crock 9 in x 7 in\nserves: 10\n---\n# Baked beans\n\nA quart of beans, a pound of pork, water to cover. Bake it eight hours in a very hot oven, or overnight. Makes one crock.\n'
const receipts = [
  ...translate(beans, {file: 'receipts/beans.md'}).receipts,
  ...translate(text('receipts/wholemeal-loaves.md'), {file: 'receipts/wholemeal-loaves.md'}).receipts,
]
const head = '---\ndate: 2027-03-06\npeople: 6\nserve: 7 pm\nfire from: 5 am\n---\n\n# Saturday\n\n'
const planned = (list: string) => {
  const day = readDay(`${head}${list}\n`, 'day.md').day!
  return makePlan({day, receipts, oven})
}
const crocks = (amount: string): string => `- [Baked beans](receipts/beans.md) — ${amount}`

describe('a dish whose vessel does not pass the mouth', () => {
  const loaves = '- [Wholemeal](receipts/wholemeal-loaves.md) — 2 loaves'
  it('has the way out that the day be written with one that does, and its place when it is', () => {
    const {plan} = planned(`${crocks('2 crocks')}\n${loaves}`)
    const [out] = plan.unplaced
    expect(out).toMatchObject({dish: 'beans', rule: 'mouth height', tried: [{kind: 'smaller vessel', works: true}]})
    expect(out!.remedies).toHaveLength(1)
    expect(out!.remedies[0]).toMatch(
      /^Write “2 crocks in 3 crocks 9 in x 5 in” for Baked beans in the day, in a vessel that goes in: everything fits/,
    )
    const then = planned(`${crocks('2 crocks in 3 crocks 9 in x 5 in')}\n${loaves}`).plan
    expect(then.unplaced).toEqual([])
  })
  it('takes its place before what is to fill the floor', () => {
    const {problem, plan} = planned(`${crocks('2 crocks')}\n${loaves}`)
    // More loaves than have a place beside them.
    const dishes = problem.dishes.map((dish) => (dish.id === 'beans' ? dish : {...dish, fills: 11, count: 40}))
    const day = {...problem, dishes}
    const way = inSmallerVessels(day, {...plan, loads: []}, [dishes[0]!], {}, planDay).get('beans')!
    expect(way.say).toMatch(/everything fits; with as many of Wholemeal as then have a place\.$/)
  })
  it('has none where no crock of half its size does', () => {
    const deep = receipts.map((one) => ({...one, facts: {...one.facts, vessel: 'crock 9 in x 16 in'}}))
    const day = readDay(`${head}${crocks('2 crocks')}\n`, 'day.md').day!
    const {plan} = makePlan({day, receipts: deep, oven})
    expect(plan.unplaced).toMatchObject([{dish: 'beans', remedies: []}])
  })
})
