import {describe, expect, it} from 'vitest'
import {readDayFolder} from '../src/cli/day-folder.js'
import {check} from '../src/plan/check.js'
import {type MadePlan, makePlan} from '../src/plan/make.js'
import {rules, weights} from '../src/plan/rules.js'
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

describe('what is eaten hot', () => {
  const pies = 'mutton-pies'
  const wanted = all.dishes.find((d) => d.id === pies)!.wantedBy!

  it('is known by its kind', () => {
    expect(all.dishes.filter((d) => d.hot).map((d) => d.id)).toEqual(['baked-beans', pies])
  })

  it('comes out for its meal, and the fire is lit for that', () => {
    const made = planOf([pies])
    const before = wanted - drawn(made, pies)
    expect(before).toBeGreaterThanOrEqual(0)
    expect(before).toBeLessThanOrEqual(rules.keepsHot)
    expect(made.plan.score.earlyMinutes).toBeUndefined()
    expect(made.plan.messages.some((m) => m.rule === 'stands')).toBe(false)
  })

  it('has the fire lit later, and goes in later, than what may be eaten cold', () => {
    // The pudding stays for hours and is to be drawn before the night, or stays in through it.
    const ids = [pies, 'indian-pudding']
    const [hot, cold] = [planOf(ids), planOf(ids, false)]
    expect(hot.plan.unplaced).toEqual([])
    expect(drawn(hot, pies)).toBeGreaterThan(drawn(cold, pies))
    expect(wanted - drawn(hot, pies)).toBeLessThanOrEqual(rules.keepsHot)
    expect(cold.plan.score.earlyMinutes).toBeUndefined()
    for (const made of [hot, cold]) expect(check(made.problem, made.plan)).toEqual([])
  })

  describe('and has to wait for hours', () => {
    const made = planOf(all.dishes.map((d) => d.id))
    const at = drawn(made, pies)

    it('has its price', () => {
      const {score} = made.plan
      const early = made.plan.loads.flatMap(({dishes}) =>
        dishes.map(({dish, draw}) => {
          const {hot, wantedBy} = made.problem.dishes.find(({id}) => id === dish)!
          const before = wantedBy === null ? 0 : wantedBy - draw.likely
          // After four hours it is cooled and heated through again, however long it waits: FDA Food Code 2022, 3-501.19(B).
          return hot ? Math.max(0, Math.min(240, before) - 60) : 0
        }),
      )
      const sum = early.reduce((a, b) => a + b, 0)
      expect(sum).toBeGreaterThan(0)
      expect(score.earlyMinutes).toBe(sum)
      const {misfit, openings, idle, wood} = score
      const parts = weights.misfit * misfit + weights.opening * openings + weights.idle * idle + weights.wood * wood
      expect(score.total).toBeCloseTo(parts + weights.early * sum, 6)
    })

    it('is checked', () => {
      const {score} = made.plan
      const broken = check(made.problem, {...made.plan, score: {...score, earlyMinutes: score.earlyMinutes! - 5}})
      expect(broken.map((v) => v.rule)).toEqual(['score'])
    })

    it('is warned of with its line in the day', () => {
      expect(wanted - at).toBeGreaterThan(rules.coldMinutes)
      const told = made.plan.messages.filter((m) => m.rule === 'stands')
      expect(told.map((m) => [m.severity, m.line])).toEqual([
        ['warning', read.day.items.find((i) => i.file.endsWith(`${pies}.md`))!.line],
      ])
      expect(told[0]!.suggest).toContain('keep it hot')
    })

    it('is told at its draw how to be kept', () => {
      const step = made.plan.steps.find((s) => s.action === 'draw' && s.dishes.includes(pies))!
      expect(step.ifBehind).toMatch(/Mutton pies, wanted at .*57 °C .*74 °C/)
      for (const language of ['en', 'de'] as const) {
        expect(stepWords(step, made.problem, styleOf({language})).ifBehind).toMatch(/57 °C .*74 °C/)
      }
    })
  })
})
