import {readFileSync} from 'node:fs'
import {describe, expect, it} from 'vitest'
import {readOven} from '../src/oven/read.js'
import {check} from '../src/plan/check.js'
import {readDay} from '../src/plan/day.js'
import {spoils} from '../src/plan/left-in.js'
import {makePlan} from '../src/plan/make.js'
import {dueOf} from '../src/plan/model.js'
import {translate} from '../src/receipt/translate.js'
import {makeDishes} from '../src/scale/dishes.js'

/**
 * Receipts of our own. That only what dries, or is left in overnight, has the whole night: common practice, no source. That cooked food of milk
 * does not keep in the warm: FDA Food Code 2022, 3-501.16.
 */
const oven = readOven(readFileSync('corpus-demo/oven.md', 'utf8'), 'oven.md').oven!
const texts: Readonly<Record<string, string>> = {
  meringue:
    '# Meringue round\n\nMakes 1 sheet.\n\n- 4 egg whites\n- 220 g caster sugar\n\nShape on a sheet. Bake at 90 °C for 90 minutes.',
  rice: '# Slow rice\n\nMakes 1 dish.\n\n- 150 g pudding rice\n- 1.5 l milk\n- 80 g sugar\n\nBake in a dish at 95 °C for 2 hours.',
  gingerbread:
    '---\noven: 180 °F\n---\n\n# Gingerbread\n\nMakes 1 tin.\n\n- 300 g flour\n- 200 g treacle\n- 1 egg\n- 5 g soda\n\nBake for half an hour.',
  dried: '# Dried apples\n\nMakes 1 sheet.\n\n- 2 kg apples\n\nDry on sheets in a slack oven for 8 hours.',
  thyme: '# Dried thyme\n\nMakes 1 sheet.\n\n- 200 g thyme\n\nDry in the oven at 50 °C for 90 minutes.',
  wood: '# Wood for the next firing\n\nMakes 1 sheet.\n\nLay it in the oven when all else is drawn.',
  night: '# Stewed quinces\n\nMakes 1 dish.\n\n- 1 kg quinces\n- 200 g sugar\n\nLeave them in the oven at 95 °C overnight.',
}

function made(asks: Readonly<Record<string, string>>) {
  const list = Object.entries(asks).map(([name, much]) => `- [${name}](receipts/${name}.md) — ${much}`)
  const head = '---\ndate: 2027-06-02\npeople: 10\nserve: 6 pm\nfire from: 5 am\n---\n\n# A day\n\n'
  const day = readDay(`${head}${list.join('\n')}\n`, 'day.md').day!
  const receipts = Object.keys(asks).flatMap((name) => translate(texts[name]!, {file: `receipts/${name}.md`}).receipts)
  return {day, receipts, scaled: makeDishes({day, receipts, oven})}
}

describe('what a slack oven bakes', {timeout: 60_000}, () => {
  const {dishes} = made(Object.fromEntries(Object.keys(texts).map((name) => [name, '1 times']))).scaled
  const of = (id: string) => dishes.find((dish) => dish.id === id)!

  it('is for the meal, unless it dries, stays in overnight, or nobody eats it', () => {
    for (const id of ['meringue', 'rice', 'gingerbread']) {
      expect(of(id).need.startHigh, id).toBeLessThanOrEqual(125)
      expect(dueOf(of(id), 1080), id).toBe(1080)
    }
    for (const id of ['dried', 'thyme', 'wood', 'night']) expect(dueOf(of(id), 1080), id).toBeNull()
    expect(of('thyme').need.overnight).toBe(false)
  })

  it('and milk and rice in it spoil as they do in any other', () => {
    expect(spoils(of('rice'))).toBe(true)
    expect(spoils(of('dried'))).toBe(false)
  })

  it('is drawn before the meal, in a plan that the checker finds whole', () => {
    const {day, receipts, scaled} = made({gingerbread: '1 times'})
    const {plan, problem} = makePlan({oven, day, receipts, scaled})
    expect(plan.unplaced).toEqual([])
    expect(Math.max(...plan.loads.flatMap((load) => load.dishes.map(({draw}) => draw.likely)))).toBeLessThanOrEqual(1080)
    expect(check(problem, plan)).toEqual([])
  })
})
