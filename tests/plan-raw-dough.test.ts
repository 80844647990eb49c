import {readFileSync} from 'node:fs'
import {describe, expect, it} from 'vitest'
import {readOven} from '../src/oven/read.js'
import {check} from '../src/plan/check.js'
import {readDay} from '../src/plan/day.js'
import {doughSteps} from '../src/plan/dough-steps.js'
import {doughsOf} from '../src/plan/dough-work.js'
import {makePlan} from '../src/plan/make.js'
import {translate} from '../src/receipt/translate.js'

/**
 * Doughs with raw meat in them, receipts invented. Raw meat stands out of the refrigerator for two hours at most (USDA FSIS, "Danger Zone"), and
 * for four where only time controls it (FDA Food Code 2022, 3-501.19).
 */
const {oven} = readOven(readFileSync('corpus-demo/oven.md', 'utf8'), 'oven.md') as {
  oven: NonNullable<ReturnType<typeof readOven>['oven']>
}
const day = readDay(
  '---\ndate: 2027-03-06\npeople: 6\nserve: 6 pm\nfire from: 5 am\n---\n\n# Saturday\n\n- [Plait](receipts/plait.md) — 1 times\n',
  'day.md',
).day!
const planOf = (filling: string, proving: string) =>
  makePlan({
    day,
    receipts: translate(
      `# Sausage plait\n\n- 500 g flour\n- 10 g dried yeast\n- 300 ml water\n- 500 g ${filling}\n\nMake a dough, and let it rise in a warm place for 1 hour. Roll it out, lay the filling on it, plait it over, and let it prove ${proving}. Bake at 200 °C for 40 minutes.\n`,
      {file: 'receipts/plait.md'},
    ).receipts,
    oven,
    options: {effort: 'quick'},
  })
/** What is said of raw meat at the mixing, the shaping and the proving. */
const saysOf = ({plan}: ReturnType<typeof planOf>): Record<string, string> =>
  Object.fromEntries(
    plan.steps.flatMap(({action, ifAhead}) => (ifAhead !== null && /raw meat/i.test(ifAhead) ? [[action, ifAhead]] : [])),
  )
const warned = ({messages}: ReturnType<typeof planOf>): string[] =>
  messages.filter(({rule}) => rule === 'raw-warm').map(({reason}) => reason)

describe('a dough with raw meat in it', () => {
  it('rises without it, is filled when it is shaped, and stands no longer than that', () => {
    const made = planOf('sausage meat', 'for 30 minutes')
    expect(saysOf(made)).toEqual({
      mix: expect.stringContaining('out of the dough until that is shaped'),
      shape: expect.stringContaining('fill or work in the raw meat or fish now'),
      prove: expect.stringContaining('Two hours in the warm'),
    })
    expect(warned(made)).toEqual([])
    expect(check(made.problem, made.plan)).toEqual([])
  })
  it('is warned of where it proves for more than two hours in the warm, and not in the refrigerator', () => {
    expect(warned(planOf('sausage meat', 'in a warm place for 3 hours'))[0]).toMatch(/stand 3 h.* out of the refrigerator/)
    expect(warned(planOf('sausage meat', 'in the refrigerator for 3 hours'))).toEqual([])
  })
  it('counts no time in the cold, where the oven is late for it, but what it stood before that was told', () => {
    const {problem, plan} = planOf('sausage meat', 'for 30 minutes')
    const [dough] = doughsOf(problem, plan).doughs
    const late = {...dough!, at: dough!.at + 240}
    const raw = (now?: number): string[] => {
      const begun = now === undefined ? problem : {...problem, done: {now, lit: plan.lit, set: [], plan}}
      return doughSteps(begun, [late], () => {})
        .filter(({rule}) => rule === 'raw-warm')
        .map(({reason}) => reason)
    }
    expect(raw()).toEqual([])
    expect(raw(late.shaped + 180)[0]).toMatch(/would stand 3 h/)
  })
  it('but not what has none, or only what is cooked or cured', () => {
    for (const filling of ['cheese', 'ham']) {
      const made = planOf(filling, 'in a warm place for 3 hours')
      expect([saysOf(made), warned(made)]).toEqual([{}, []])
    }
  })
})
