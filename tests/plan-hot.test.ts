import {describe, expect, it} from 'vitest'
import {readDayFolder} from '../src/cli/day-folder.js'
import {type MadePlan, makePlan} from '../src/plan/make.js'
import {rules} from '../src/plan/rules.js'
import type {Step} from '../src/plan/types.js'
import {makeDishes} from '../src/scale/dishes.js'
import {stepWords} from '../src/sheets/phrases.js'
import {styleOf} from '../src/sheets/style-of.js'

/** The demo's day, invented, with a few of its receipts. That pies of meat are eaten hot: common practice, no source. */
const read = readDayFolder('corpus-demo')
const all = makeDishes({day: read.day, receipts: read.receipts, oven: read.oven})

/** A plan of some of the dishes, on a day whose serving time is as the demo's: 6 pm. */
function planOf(ids: readonly string[], hot = true): MadePlan {
  const dishes = all.dishes.flatMap((dish) => {
    if (!ids.includes(dish.id)) return []
    const {hot: _, ...cold} = dish
    return [hot ? dish : cold]
  })
  return makePlan({oven: read.oven, day: read.day, receipts: read.receipts, scaled: {...all, dishes}})
}

function drawn({plan}: MadePlan, id: string): number {
  return Math.min(...plan.loads.flatMap((l) => l.dishes.flatMap((d) => (d.dish === id ? [d.draw.likely] : []))))
}

/** The step that draws the pies. */
function drawOf({plan}: MadePlan): Step {
  return plan.steps.find((s) => s.action === 'draw' && s.dishes.includes('mutton-pies'))!
}

describe('what is eaten hot', () => {
  const pies = 'mutton-pies'
  const wanted = all.dishes.find((d) => d.id === pies)!.wantedBy!

  it('is known by its kind', () => {
    expect(all.dishes.filter((d) => d.hot).map((d) => d.id)).toEqual(['baked-beans', pies])
  })

  it('is told of nothing where it comes out for its meal', () => {
    const made = planOf([pies])
    const before = wanted - drawn(made, pies)
    expect(before).toBeGreaterThanOrEqual(0)
    expect(before).toBeLessThanOrEqual(rules.keepsHot)
    expect(made.plan.messages.some((m) => m.rule === 'stands')).toBe(false)
    expect(drawOf(made).words!.ifBehind!.id).toBe('behind draw')
  })

  describe('and has to wait for hours', () => {
    const made = planOf(all.dishes.map((d) => d.id))
    const at = drawn(made, pies)

    it('is warned of with its line in the day', () => {
      expect(wanted - at).toBeGreaterThan(rules.coldMinutes)
      const told = made.plan.messages.filter((m) => m.rule === 'stands')
      expect(told.map((m) => [m.severity, m.line])).toEqual([
        ['warning', read.day.items.find((i) => i.file.endsWith(`${pies}.md`))!.line],
      ])
      expect(told[0]!.suggest).toContain('keep it hot')
    })

    it('is told at its draw how to be kept, and by name', () => {
      const step = drawOf(made)
      expect(step.ifBehind).toMatch(/up to .*Mutton pies, wanted at .*57 °C .*74 °C/)
      for (const language of ['en', 'de'] as const) {
        const style = styleOf({language})
        expect(stepWords(step, made.problem, style).ifBehind).toMatch(/57 °C .*74 °C/)
        // Drawn at its latest there is nothing more to be waited for, and as much to be kept hot.
        const {values} = step.words!.ifBehind!
        const last: Step = {...step, at: (values['late'] as {value: number}).value}
        const words = stepWords(last, made.problem, style).ifBehind!
        expect(words).toMatch(/57 °C .*74 °C/)
        expect(words).not.toMatch(/up to|nachsehen, bis/)
      }
    })

    it('and what may be eaten cold is not', () => {
      const cold = planOf(
        all.dishes.map((d) => d.id),
        false,
      )
      expect(cold.plan.messages.some((m) => m.rule === 'stands')).toBe(false)
      expect(drawOf(cold).words!.ifBehind!.id).toBe('behind draw')
    })
  })
})
