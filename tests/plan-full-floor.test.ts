import {describe, expect, it} from 'vitest'
import {readDayFolder} from '../src/cli/day-folder.js'
import {check} from '../src/plan/check.js'
import {type MadePlan, makePlan} from '../src/plan/make.js'

/** The demo's oven and its household bread, invented. That an ovenful of bread goes in at once: common practice, no source. */
const read = readDayFolder('corpus-demo')
const bread = read.day.items.find((i) => i.file.endsWith('household-bread.md'))!

function bake(amount: string): MadePlan {
  const {wantedBy: _, ...item} = bread
  const day = {...read.day, items: [{...item, amount, wantedBy: null}], spare: []}
  return makePlan({oven: read.oven, day, receipts: read.receipts})
}

const checked = ({plan, problem}: MadePlan): string[] => check(problem, plan).map((v) => v.reason)

describe('a floor filled with bread', () => {
  const full = bake('fill the floor')
  const count = full.dishes[0]!.count

  it('is set in at once, as close as its loaves stand, and drawn at once', () => {
    expect(full.plan.unplaced).toEqual([])
    expect(full.plan.loads.map((l) => l.dishes.map((d) => d.count))).toEqual([[count]])
    expect(new Set(full.plan.loads[0]!.placed.map((p) => p.zone)).size).toBe(3)
    expect(checked(full)).toEqual([])
  })

  it('is baked as late as serves, so that it is fresh', () => {
    const {plan} = full
    const drawn = Math.max(...plan.loads.flatMap((l) => l.dishes.map((d) => d.draw.likely)))
    expect(read.day.serve - drawn).toBeGreaterThanOrEqual(0)
    expect(read.day.serve - drawn).toBeLessThanOrEqual(75)
  })

  it('is followed by the next batch, one dough after the other, where more is wanted than it holds', () => {
    const more = bake(`${count + 8} loaves`)
    expect(more.plan.unplaced).toEqual([])
    expect(checked(more)).toEqual([])
    const batches = more.plan.loads.flatMap((l) => l.dishes.map((d) => d.dish))
    expect(new Set(batches).size).toBe(2)
    // No dough is set in amid another.
    expect(batches.filter((id, i) => id !== batches[i - 1])).toHaveLength(2)
  })
})
