import {toHtml} from 'hast-util-to-html'
import {describe, expect, it} from 'vitest'
import type {Plan, PlanProblem} from '../src/plan/types.js'
import {daySheet} from '../src/sheets/day-sheet.js'
import {planMarkdown, planText} from '../src/sheets/plan-text.js'
import {plainStyle} from '../src/sheets/style.js'
import {styleOf} from '../src/sheets/style-of.js'
import {oven, plan, problem} from './fixtures-sheets.js'

/** The small day at a minute of it: the bread in the oven from 8:10 am until it is drawn, the rest to come. */
function at(now: number): {plan: Plan; problem: PlanProblem; oven: typeof oven} {
  const loads = plan.loads
    .map((load) => ({...load, dishes: load.dishes.map((d) => (load.at <= now ? {...d, alreadyIn: true} : d))}))
    .filter(({dishes}) => dishes.some(({draw}) => draw.likely > now))
  const made = {
    at: 480,
    action: 'mix' as const,
    dishes: ['gingerbread'],
    load: 2,
    say: 'Gingerbread: make up.',
    sign: null,
    ifAhead: null,
    ifBehind: null,
    celsius: null,
  }
  const steps = [...plan.steps, made]
    .sort((a, b) => a.at - b.at)
    .map((step) => (step.at < now ? {...step, past: true} : step))
    .filter(({action, at}) => action === 'light' || action === 'rake' || action === 'mix' || at >= now)
  const done = {now, lit: plan.lit, set: [], plan}
  return {plan: {...plan, loads, steps}, problem: {...problem, done}, oven}
}

describe('the sheets of a day that has begun', () => {
  it('show what is still to be done, and of what is past the work on what is not set in yet, apart', () => {
    for (const text of [planText(at(500)), planMarkdown(at(500)), toHtml(daySheet(at(500), plainStyle))]) {
      expect(text).not.toContain('Light the fire')
      expect(text).not.toContain('Rake the coals out')
      // The bread is in: nobody asks any more whether its dough was mixed.
      expect(text).not.toContain('Mix the dough')
      const [begun, made, from, draw] = [
        'Begun before this, unless it is done already:',
        'make up',
        'From 8:20 am on:',
        'a straw comes out clean',
      ].map((words) => text.indexOf(words))
      expect(begun).toBeGreaterThan(0)
      expect(made).toBeGreaterThan(begun!)
      expect(from).toBeGreaterThan(made!)
      expect(draw).toBeGreaterThan(from!)
    }
  })

  it('say first what is in the oven, and since when', () => {
    expect(planText(at(500))).toContain('At 8:20 am in the oven: Household bread (since 8:10 am).')
    // Of more than are in it, how many are.
    const {problem: few, ...rest} = at(500)
    const more = {...few, dishes: few.dishes.map((one) => ({...one, count: one.count + 2}))}
    expect(planText({...rest, problem: more}).replace(/\s+/g, ' ')).toMatch(
      /At 8:20 am in the oven: Household bread \(\d+ of \d+, since 8:10 am\)/,
    )
    expect(planText(at(600))).toContain('At 10:00 am nothing is in the oven.')
    const german = planText(at(500), {style: styleOf({language: 'de'})})
    expect(german).toContain('Um 08:20 im Ofen: Household bread (seit 08:10).')
  })

  it('say nothing of it before the oven is ready, nor in the morning, when every step is shown', () => {
    expect(planText(at(plan.ready - 10))).not.toMatch(/(?:is in|in) the oven[:.]/)
    const morning = planText({plan, problem, oven})
    for (const words of ['in the oven:', 'nothing is in the oven', 'Begun before']) expect(morning).not.toContain(words)
    expect(morning).toContain('Light the fire')
  })
})
