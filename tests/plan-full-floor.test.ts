import {describe, expect, it} from 'vitest'
import {readDayFolder} from '../src/cli/day-folder.js'
import {readOven} from '../src/oven/read.js'
import {check} from '../src/plan/check.js'
import {type MadePlan, makePlan} from '../src/plan/make.js'
import {unevenly} from '../src/plan/uneven.js'

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

/**
 * A smaller oven with a wide mouth, its floor cooler there than at the back by more than a bread's own range lets its loaves differ. That they
 * are drawn together all the same, and are not of one colour: common practice, no source.
 */
describe('a small floor filled with bread', () => {
  const day = (amount: string, serve = 13 * 60) => {
    const {wantedBy: _, ...item} = bread
    const small = readOven(
      [
        '---',
        'floor: round 42 in',
        'vault height: 16 in',
        'mouth: 18 in x 11 in',
        'door: oak 2 in',
        'hearth:',
        '  - common brick 4 in',
        '  - sand 6 in',
        'vault:',
        '  - common brick 4 1/2 in',
        '  - clay 4 in',
        '  - sand 6 in',
        'place: indoors',
        'ambient: 58 °F',
        'fuel: oak, 18 % moisture',
        '---',
        '',
        '# A small oven',
        '',
      ].join('\n'),
      'oven.md',
    ).oven!
    return makePlan({
      oven: small,
      day: {...read.day, hands: 1, serve, items: [{...item, amount, wantedBy: null}], spare: []},
      receipts: read.receipts,
    })
  }
  const full = day('10 loaves')

  it('has all of it in at once and in time, rather than by halves', () => {
    expect(full.plan.unplaced).toEqual([])
    expect(full.plan.score.lateMinutes).toBe(0)
    expect(full.plan.loads.map((l) => l.dishes.map((d) => d.count))).toEqual([[10]])
    expect(checked(full)).toEqual([])
    // That the loaves are not of one colour is told where they are drawn.
    const drawn = full.plan.steps.find(({action}) => action === 'draw')!
    expect(drawn.ifBehind).toMatch(/fills the floor: what stands at the back browns first/)
  })

  it('is told so once where it goes in by parts that are drawn together', () => {
    const {plan, problem} = full
    const [load] = plan.loads
    const [dish] = load!.dishes
    const parts = {
      ...load!,
      dishes: [
        {...dish!, count: 4},
        {...dish!, count: 6},
      ],
    }
    expect(unevenly(problem, plan, parts)).toEqual(unevenly(problem, plan, load!))
    expect(unevenly(problem, plan, parts)).toHaveLength(1)
  })

  it('is filled so far as it is one load', () => {
    const {plan, dishes} = day('fill the floor')
    expect(plan.loads).toHaveLength(1)
    expect(dishes.reduce((sum, {count}) => sum + count, 0)).toBeGreaterThanOrEqual(9)
  })

  it('bears no more at the back where it does not stand in all three parts', () => {
    const [load] = full.plan.loads
    const placed = load!.placed.map((p) => (p.zone === 'mouth' ? {...p, zone: 'middle' as const} : p))
    const told = check(full.problem, {...full.plan, loads: [{...load!, placed}]})
    expect(told.map(({rule}) => rule)).toContain('over-baked')
  })
})
