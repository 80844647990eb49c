import {describe, expect, it} from 'vitest'
import {readDayFolder} from '../src/cli/day-folder.js'
import {check} from '../src/plan/check.js'
import {keptAmong, notChangeable} from '../src/plan/kept-days.js'
import {type MadePlan, makePlan} from '../src/plan/make.js'
import {COPY, dayWith, folderWith, LOG, logWith} from './kept-day.js'
import {inFolder} from './page-day.js'

/** What is asked for is changed once the fire is lit. That a plan agrees with itself is asked: no outside fact. */

/** So it is planned: the loaves at 9:55 till 10:55, the cakes at 10:55 till 11:55, the puddings at 11:55. */
const SO_FAR = ['9:55 | loaf | set in', '10:55 | loaf | drawn', '10:55 | cake | set in']

const planned = (
  day: string,
  rows: readonly string[] | null,
  more: Iterable<readonly [string, string]> = [],
): Promise<MadePlan> =>
  inFolder(folderWith(day, [...(rows === null ? [] : [[LOG, logWith(...rows)] as const]), ...more]), async (folder) => {
    const {oven, day, receipts, log, kept} = readDayFolder(folder)
    return makePlan({oven, day, receipts, log, kept})
  })
const kept = [[COPY, dayWith()]] as const
const changed = (day: string, rows: readonly string[] = SO_FAR): Promise<MadePlan> => planned(day, rows, kept)
/** The plan's loads: what, how many, when set in and drawn, whether in already. */
const loadsOf = ({plan}: MadePlan): string[] =>
  plan.loads.flatMap(({at, dishes}) =>
    dishes.map(
      ({dish, count, draw, zone, alreadyIn}) => `${dish} ${count} ${at} ${draw.likely} ${zone}${alreadyIn ? ' in' : ''}`,
    ),
  )
const told = ({plan}: MadePlan): string[] => (plan.changes ?? []).map(({what}) => what)
const reasons = ({plan}: MadePlan): string => (plan.changes ?? []).map(({why}) => why).join('\n')

describe('a day changed since its fire was lit', {timeout: 120_000}, () => {
  it('is planned as ever where the kept day asks for the same', async () => {
    const without = await planned(dayWith(), SO_FAR)
    const remarked = dayWith().replace('# A day\n', '# A day\n\nIt may rain.\n')
    for (const [copy, day] of [
      [dayWith(), dayWith()],
      [dayWith(), remarked],
    ] as const) {
      const {plan} = await planned(day, SO_FAR, [[COPY, copy]])
      expect(plan).toEqual(without.plan)
    }
  })

  it('has no past but its own: nothing in the oven moves, and no fire was lit late', async () => {
    const before = await planned(dayWith(), SO_FAR)
    // When it is drawn may follow what else the door is opened for.
    const inside = ({plan}: MadePlan): unknown =>
      plan.loads.filter(({dishes}) => dishes.some((one) => one.alreadyIn)).map(({at, placed}) => ({at, placed}))
    expect(inside(before)).toMatchObject([{at: 655, placed: [{dish: 'cake'}, {dish: 'cake'}]}])
    for (const day of [
      dayWith({pudding: null}),
      dayWith({pudding: '3 puddings'}),
      dayWith({loaf: null}),
      dayWith({}, 'bowl: 9 kg\n').replace('serve: 4 pm', 'serve: 6 pm'),
    ]) {
      const after = await changed(day)
      expect(inside(after)).toEqual(inside(before))
      expect(after.plan.lit).toBe(before.plan.lit)
      expect(reasons(after)).not.toMatch(/lit .* (?:later|earlier)/)
      expect(after.problem.done!.set).toEqual(before.problem.done!.set)
      expect(check(after.problem, after.plan)).toEqual([])
    }
  })

  it('drops what is not asked for any more and not in, and says so', async () => {
    const after = await changed(dayWith({pudding: null}))
    expect(loadsOf(after).some((load) => load.startsWith('pudding'))).toBe(false)
    expect(told(after)[0]).toBe('Pudding: no longer asked for, and not set in')
    expect(after.plan.possible).toBe(true)
  })

  it('bakes what is in till it is done, whoever asks for it', async () => {
    const before = await planned(dayWith(), SO_FAR)
    const after = await changed(dayWith({cake: null}))
    expect(loadsOf(after)).toEqual(loadsOf(before))
    expect(told(after)[0]).toBe('no longer asked for; it is in, and stays till it is done')
  })

  it('takes what nobody asks for as set in only where the log says so', async () => {
    const after = await changed(dayWith({cake: null}), ['9:55 | loaf | set in', '10:55 | loaf | drawn', '11:25 | vault | 200 °C'])
    expect(after.problem.done!.set.map(({dish}) => dish)).toEqual(['loaf'])
  })

  it('says nothing of what is struck off after it was drawn', async () => {
    expect(told(await changed(dayWith({loaf: null}))).join()).not.toMatch(/asked/)
  })

  it('makes all of it anew where none is made yet, and only the difference where some is', async () => {
    const more = await changed(dayWith({pudding: '3 puddings'}))
    expect(more.problem.dishes.map(({id, count}) => `${id} ${count}`)).toEqual(['loaf 4', 'cake 2', 'pudding 3'])
    expect(told(more)[0]).toBe('3 asked for instead of 2')
    // Mixed by now, and in at 9:55.
    const loaves = await changed(dayWith({loaf: '6 loaves'}), ['9:30 | note | shaped loaf'])
    expect(loaves.problem.dishes.map(({id, count}) => `${id} ${count}`)).toEqual(['loaf 4', 'loaf-2 2', 'cake 2', 'pudding 2'])
    const [amount] = loaves.problem.dishes[1]!.amounts
    expect(amount!.grams!.likely).toBeCloseTo(1000, 0)
    expect(check(loaves.problem, loaves.plan)).toEqual([])
  })

  it('finds a place for one more of what is not made yet, as the morning would have, though the plan in hand has none', async () => {
    const oven =
      '---\nfloor: oval 100 cm x 85 cm\nvault height: 42 cm\nmouth: 48 cm x 28 cm\ndoor: steel 3 mm\nhearth:\n  - fire brick 6 cm\n  - sand 10 cm\nvault:\n  - fire brick 6 cm\n  - clay 4 cm\n  - mineral wool 10 cm\nplace: outdoors\nambient: 12 °C\nfuel: birch, 20 % moisture\nstart: cold\n---\n\n# Garden oven\n'
    const bake =
      '# Vegetable bake\n\nServes 6\n\n- 500 g aubergines\n- 800 g chopped tomatoes\n- 50 g butter\n- 50 g flour\n- 600 ml milk\n- 150 g mozzarella\n\nLayer all in a 20 x 30 cm dish. Bake at 200 °C for 40 minutes.\n'
    const slab =
      '# Slab cake\n\nServes 16\n\n- 300 g flour\n- 350 g sugar\n- 225 g butter\n- 4 eggs\n- 240 ml buttermilk\n- 2 tsp baking powder\n\nSpread in a 33 x 23 cm tin and bake at 175 °C for 30 to 35 minutes.\n'
    const day = (cakes: string): string =>
      `---\ndate: 2027-06-19\npeople: 12\nfire from: 8 am\nserve: 4 pm\n---\n\n# Cakes\n\n- [Bake](receipts/bake.md) — 2 dishes, wanted by 2 pm\n- [Slab](receipts/slab.md) — ${cakes}, wanted by 4 pm\n`
    const files = [
      ['oven.md', oven],
      ['receipts/bake.md', bake],
      ['receipts/slab.md', slab],
      [
        LOG,
        '---\ndate: 2027-06-19\nlit: 11:00 am\n---\n\n| time | what | value |\n| - | - | - |\n| 11:10 am | note | one more |\n',
      ],
    ] as const
    const made = await planned(day('2 cakes'), null, [...files, [COPY, day('1 cake')]])
    expect(made.problem.dishes.map(({id, count}) => `${id} ${count}`)).toEqual(['bake 2', 'slab 2'])
    expect(made.plan.unplaced).toEqual([])
    expect(check(made.problem, made.plan)).toEqual([])
  })

  it('makes up what is asked for more when the rest has just gone in, from then on', async () => {
    const {plan, problem} = await changed(dayWith({cake: '3 cakes'}))
    const now = 10 * 60 + 55
    const third = plan.loads.filter(({dishes}) => dishes.some(({dish, alreadyIn}) => dish.startsWith('cake') && !alreadyIn))
    expect(third).toHaveLength(1)
    const made = plan.steps.filter(({action, load, past}) => action === 'mix' && load === third[0]!.number && past !== true)
    expect(made).toHaveLength(1)
    expect(made[0]!.at).toBeGreaterThanOrEqual(now)
    expect(third[0]!.at).toBeGreaterThan(made[0]!.at)
    expect(check(problem, plan)).toEqual([])
  })

  it('makes fewer where fewer are asked for, and no fewer than are in', async () => {
    const fewer = await changed(dayWith({cake: '1 cake', pudding: '1 pudding'}))
    expect(fewer.problem.dishes.map(({id, count}) => `${id} ${count}`)).toEqual(['loaf 4', 'cake 2', 'pudding 1'])
    expect(check(fewer.problem, fewer.plan)).toEqual([])
  })

  it('plans what is asked for anew as not set in, till the log says it is', async () => {
    const pie = '- [Pie](receipts/pie.md) — 1 pie\n'
    const receipt = [
      'receipts/pie.md',
      '---\nyear: 1840\nplace: United States\n---\n\n# Pie\n\nA pound of flour, half a pound of butter, two pounds of apples.\nBake it in a slow oven an hour. It makes one pie.\n',
    ] as const
    const after = await planned(`${dayWith()}${pie}`, SO_FAR, [...kept, receipt])
    expect(after.problem.done!.set.some(({dish}) => dish === 'pie')).toBe(false)
    expect(loadsOf(after).filter((load) => load.startsWith('pie'))).toHaveLength(1)
    expect(told(after)).toContain('not asked for before')
    expect(check(after.problem, after.plan)).toEqual([])

    // Kept again since it was changed: from then on it is planned so, and what is set in stands where that plan had it.
    const copies = [...kept, receipt, [COPY.replace('.md', '-1055.md'), `${dayWith()}${pie}`] as const]
    const rows = [...SO_FAR, '11:55 | cake | drawn', '11:56 | vault | 190 °C', '12:00 | pie | set in', '12:00 | pudding | set in']
    const later = await planned(`${dayWith()}${pie}`, rows, copies)
    expect(later.problem.done!.set.find(({dish}) => dish === 'pie')).toMatchObject({at: 720, drawn: null, count: 1})
    expect(later.problem.done!.set.find(({dish}) => dish === 'pie')!.placed).toHaveLength(1)
    expect(check(later.problem, later.plan)).toEqual([])
  })

  it('has its curve reckoned for as long as what is asked for now may take', async () => {
    const after = await changed(dayWith({pudding: '2 puddings, wanted by tomorrow 8 am'}))
    const {forecast, lit} = after.plan
    expect(lit + (forecast.baking.likely.length - 1) * forecast.step).toBeGreaterThan(1440 + 480)
    expect(check(after.problem, after.plan)).toEqual([])
  })

  it('is refused where a fire or a full floor is asked for anew', async () => {
    const refused = (day: string): Promise<string[]> =>
      inFolder(folderWith(day, [[LOG, logWith(...SO_FAR)], ...kept]), async (folder) =>
        notChangeable(readDayFolder(folder), 'day.md').map(({line, rule, suggest}) => `${line} ${rule} ${suggest}`),
      )
    expect(await refused(dayWith({}, 'firings: 2\n'))).toEqual([expect.stringMatching(/^1 day-lit write “firings: 1” again/)])
    expect(await refused(dayWith({cake: 'fill the floor'}))).toEqual([expect.stringMatching(/^12 day-lit write how many/)])
    expect(await refused(dayWith({cake: '5 cakes'}))).toEqual([])
  })
})

describe('the copies of a day', () => {
  it('stand in the order of their hours, and are of one date', () => {
    const names = ['2027-06-19.day-2510.md', '2027-06-19.day-0905.md', '2027-06-19.md', '2027-06-20.day.md', '2027-06-19.day.md']
    expect(keptAmong(names, '2027-06-19')).toEqual([
      {name: '2027-06-19.day.md', from: Number.NEGATIVE_INFINITY},
      {name: '2027-06-19.day-0905.md', from: 545},
      {name: '2027-06-19.day-2510.md', from: 1510},
    ])
  })
})
