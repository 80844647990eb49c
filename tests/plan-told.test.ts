import {describe, expect, it} from 'vitest'
import {readDayFolder} from '../src/cli/day-folder.js'
import {type FiringLog, readLog} from '../src/oven/log.js'
import {deedsOf, deedsTold, inside} from '../src/page/deeds.js'
import type {PlanView} from '../src/page/protocol.js'
import {planAgain} from '../src/plan/again.js'
import {amiss} from '../src/plan/asked.js'
import {check} from '../src/plan/check.js'
import {makePlan} from '../src/plan/make.js'
import {byOwnNames} from '../src/plan/own-names.js'
import {planDay} from '../src/plan/planner.js'
import {problemOf} from '../src/plan/problem.js'
import {standingAgain} from '../src/plan/standing-again.js'
import {lossesOf, toldOf} from '../src/plan/told.js'
import type {Load, Plan} from '../src/plan/types.js'
import {drawnBeyond, drawnUnlogged, setInBeyond} from '../src/plan/unlogged.js'
import type {Message} from '../src/receipt/types.js'
import {namesInLog} from '../src/scale/slug.js'
import {changeWords} from '../src/sheets/phrases.js'
import {planHead} from '../src/sheets/plan-text.js'
import {styleOf} from '../src/sheets/style-of.js'
import {inFolder, smallDay} from './page-day.js'
import {day, dish, problem as emptyDay} from './plan-fixtures.js'

/** Numbers of vessels in the log, and what becomes of the rest. Invented days; that plan and log agree is asked, no outside fact. */
const clock = (minutes: number): string => `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`
const logOf = (lit: number, raked: number, rows: readonly (readonly [number, string, string?])[]): FiringLog =>
  readLog(
    `---\ndate: 2027-06-12\nlit: ${clock(lit)}\nraked: ${clock(raked)}\n---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n${rows
      .map(([at, value, note = '']) => `| ${clock(at)} | pies | ${value} | ${note} |\n`)
      .join('')}`,
    'log.md',
  ).log!
const heat = {low: 200, likely: 200, high: 200}
const part = (count: number, out: number): Load['dishes'][number] => ({
  dish: 'pies',
  count,
  draw: {low: out, likely: out, high: out},
  celsiusIn: heat,
  celsiusOut: heat,
})
const load = (number: number, at: number, dishes: readonly Load['dishes'][number][]): Load => ({number, at, dishes, placed: []})
const pies = dish('pie', 8, {id: 'pies', file: 'receipts/pies.md', title: 'Mutton pies'})

describe('a log without a fire', () => {
  it('is said to count for nothing yet, where something was done', () => {
    const {day, oven, receipts} = readDayFolder('corpus-demo')
    const rules = (rows: string, front = ''): string[] => {
      const {log} = readLog(
        `---\ndate: ${day.date}\n${front}---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n${rows}\n`,
        'log.md',
      )
      const few = {...day, items: day.items.slice(0, 1)}
      return makePlan({oven, day: few, receipts, log, options: {effort: 'quick'}}).messages.map(({rule}) => rule)
    }
    expect(rules('| 4:00 am | household-bread | mixed | |')).toContain('log-unlit')
    // Readings, the raking and the wood are of no use either.
    expect(rules('| 11:30 am | floor | 190 °C | |')).toContain('log-unlit')
    expect(rules('', 'raked: 10:50 am\n')).toContain('log-unlit')
    expect(rules('', 'wood: 18 kg\n')).toContain('log-unlit')
    expect(rules('| 4:00 am | note | rain all night | |')).not.toContain('log-unlit')
  })
})

describe('what the log does not tell of', () => {
  it('is thought done in its order: drawn before what was to be drawn after it, and set in where nothing is thought to stand still', () => {
    const {day, oven, receipts} = readDayFolder('corpus-demo')
    const made = makePlan({oven, day, receipts})
    const {plan, problem} = made
    const all = plan.loads.flatMap(({at, dishes}) => dishes.map(({dish: id, draw}) => ({id, at, out: draw.likely})))
    const fileOf = (id: string): string => problem.dishes.find((d) => d.id === id)!.file.replace(/^.*\/|\.md$/g, '')
    // Of three, the first is to be drawn before the third, and the second is set in, long after its time, while the first is in.
    const LATE = 200
    let tried = 0
    for (const first of all)
      for (const third of all) {
        const second = all.filter((z) => z.at > first.at && z.at < first.out).at(-1)
        if (
          !second ||
          third.out <= first.out ||
          third.out > first.out + LATE - 10 ||
          third.id === second.id ||
          third.at > first.at
        )
          continue
        if (first.out > 1440 || third.out > 1440) continue
        tried++
        const rows = [
          [first.at, first.id, 'set in'],
          [third.at, third.id, 'set in'],
          [second.at + LATE, second.id, 'set in'],
          [third.out + 5, third.id, 'drawn'],
        ] as const
        const now = Math.max(...rows.map(([at]) => at))
        const lines = [...rows].sort(([a], [b]) => a - b).map(([at, id, what]) => `| ${clock(at)} | ${fileOf(id)} | ${what} | |`)
        const {log} = readLog(
          `---\ndate: ${day.date}\nlit: ${clock(plan.lit)}\nraked: ${clock(plan.raked)}\n---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n${lines.join('\n')}\n`,
          'log.md',
        )
        const again = planAgain({oven, day, now, options: {effort: 'quick'}}, problem, plan, log!)
        const {set} = again.problem.done!
        const was = `${first.id}, ${second.id}, ${third.id}`
        expect(set.find((s) => s.dish === first.id)?.drawn, was).toBeLessThanOrEqual(third.out + 5)
        // Nothing is thought to stand where something else does.
        const broken = check(again.problem, again.plan).filter(({rule}) => rule === 'overlap')
        expect(broken, was).toEqual([])
      }
    expect(tried).toBeGreaterThan(0)
  }, 60_000)

  it('is in the oven still when something else is drawn long before its hour', () => {
    const {day, oven, receipts} = readDayFolder('corpus-demo')
    const {plan, problem} = makePlan({oven, day, receipts})
    const all = plan.loads.flatMap(({at, dishes}) => dishes.map(({dish: id, draw}) => ({id, at, draw})))
    const fileOf = (id: string): string => problem.dishes.find((d) => d.id === id)!.file.replace(/^.*\/|\.md$/g, '')
    // One that is about to be done, and one that is to come out an hour later.
    const early = all.filter(({draw}) => draw.likely - draw.low >= 10)
    const [own, other] = early.flatMap((one) =>
      all
        .filter((two) => two.id !== one.id && two.at < one.draw.likely - 10 && two.draw.likely > one.draw.likely + 60)
        .map((two) => [one, two] as const),
    )[0]!
    const now = own.draw.likely - 10
    const rows = [
      [own.at, own.id, 'set in'],
      [other.at, other.id, 'set in'],
      [now, other.id, 'drawn'],
    ] as const
    const lines = [...rows].sort(([x], [y]) => x - y).map(([at, id, what]) => `| ${clock(at)} | ${fileOf(id)} | ${what} | |`)
    const {log} = readLog(
      `---\ndate: ${day.date}\nlit: ${clock(plan.lit)}\nraked: ${clock(plan.raked)}\n---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n${lines.join('\n')}\n`,
      'log.md',
    )
    const again = planAgain({oven, day, now, options: {effort: 'quick'}}, problem, plan, log!)
    expect(again.problem.done!.set.find((one) => one.dish === own.id)).toMatchObject({drawn: null})
    const draws = again.plan.steps.filter(({action, dishes}) => action === 'draw' && dishes.includes(own.id))
    expect(draws).not.toEqual([])
  })
})

describe('what something that the log tells of went in too soon for', () => {
  const {day, oven, receipts} = readDayFolder('corpus-demo')
  const {plan, problem} = makePlan({oven, day, receipts})
  const parts = plan.loads.flatMap(({at, dishes}) => dishes.map(({dish: id, draw}) => ({id, at, draw})))
  const fileOf = (id: string): string => problem.dishes.find((d) => d.id === id)!.file.replace(/^.*\/|\.md$/g, '')
  const once = (id: string): boolean => parts.filter((one) => fileOf(one.id) === fileOf(id)).length === 1
  // Alone in its load, so that no other of it is told of, with one that is to be set in once it is drawn.
  const [first, next] = parts
    .filter(({id, at}) => once(id) && parts.filter((one) => one.at === at).length === 1)
    .flatMap((one) => parts.filter((two) => once(two.id) && two.at >= one.draw.likely).map((two) => [one, two] as const))[0]!
  const again = (now: number, ...rows: readonly (readonly [number, string, string])[]): ReturnType<typeof planAgain> => {
    const lines = rows.map(([at, id, what]) => `| ${clock(at)} | ${fileOf(id)} | ${what} | |`).join('\n')
    const text = `---\ndate: ${day.date}\nlit: ${clock(plan.lit)}\nraked: ${clock(plan.raked)}\n---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n${lines}\n`
    return planAgain({oven, day, now, options: {effort: 'quick'}}, problem, plan, readLog(text, 'log.md').log!)
  }
  it('is not thought to have been baked in five minutes', () => {
    const soon = first.at + 5
    const {plan: made, problem: rest} = again(soon, [soon, next.id, 'set in'])
    expect(rest.done!.set.filter(({dish: id}) => id === first.id)).toEqual([])
    const own = made.loads.find(({dishes}) => dishes.some(({dish: id}) => id === first.id))
    expect(own === undefined || own.at >= soon).toBe(true)
    expect(made.messages.filter(({rule}) => rule === 'not-in-unlogged')).toMatchObject([
      {severity: 'warning', times: [first.at, soon]},
    ])
    // Where it can have had its time, it is out by then.
    const late = Math.max(first.draw.likely, next.at)
    const done = again(late, [late, next.id, 'set in'])
    expect(done.problem.done!.set.find(({dish: id}) => id === first.id)!.drawn).toBeLessThanOrEqual(late)
    expect(done.plan.messages.map(({rule}) => rule)).not.toContain('not-in-unlogged')
  })
  it('is told where it is thought to be out before its time, though the log has it only set in', () => {
    const bread = problem.dishes.find(({file}) => file.endsWith('household-bread.md'))!
    const {likely} = bread.need.minutes
    const told = (drawn: number, ...more: readonly string[]): Message[] => {
      const rows = [`| 10:45 | household-bread | set in | |`, `| ${clock(645 + drawn)} | apple-pies | set in | |`, ...more]
      const text = `---\ndate: ${day.date}\nlit: 5:45\nraked: 8:15\n---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n${rows.join('\n')}\n`
      const set = [{dish: bread.id, count: bread.count, at: 645, drawn: 645 + drawn, placed: []}]
      const done = {now: 800, lit: 345, set, plan: null}
      return drawnUnlogged({...problem, done}, new Map([[bread.id, bread]]), readLog(text, 'log.md').log!)
    }
    expect(told(likely - 10)).toMatchObject([{severity: 'warning', rule: 'drawn-unlogged', times: [645 + likely - 10]}])
    expect(told(likely)).toEqual([])
    expect(told(likely - 10, `| ${clock(645 + likely - 10)} | household-bread | drawn | |`)).toEqual([])
  })
  it('is not in until that is noted, where it was noted that it waits', () => {
    const now = first.at + 30
    const inside = (...rows: readonly (readonly [number, string, string])[]): unknown[] =>
      again(now, ...rows).problem.done!.set.flatMap((one) => (one.dish === first.id ? [one.at] : []))
    expect(inside()).toEqual([first.at])
    expect(inside([first.at - 5, first.id, 'not in yet'])).toEqual([])
    expect(inside([first.at - 5, first.id, 'waits'], [first.at + 20, first.id, 'set in'])).toEqual([first.at + 20])
  })
})

describe('a log that calls dishes by their titles', () => {
  const named = (dishes: readonly {id: string; title: string; file: string}[], ...names: readonly string[]): unknown[] => {
    const log = logOf(
      360,
      480,
      names.map((_, i) => [600 + i, 'set in'] as const),
    )
    const rows = log.rows.map((row, i) => ({...row, dish: names[i]!}))
    return byOwnNames({...log, rows}, dishes).rows.map(({dish: one}) => one)
  }
  const loaf = (id: string, title: string, file = 'receipts/loaf.md') => ({id, title, file})
  it('means those of their receipts', () => {
    const day = [
      loaf('loaf', 'Country loaf (1/2)'),
      loaf('loaf-2', 'Country loaf (2/2)'),
      loaf('pies', 'Pies', 'receipts/pies.md'),
    ]
    expect(named(day, 'country-loaf', 'loaf', 'loaf-2', 'pies', 'scones')).toEqual(['loaf', 'loaf', 'loaf-2', 'pies', 'scones'])
  })
  it('tells two lines of one receipt apart', () => {
    const day = [loaf('loaf', 'Dinner loaf'), loaf('loaf-2', 'Supper loaf')]
    expect(named(day, 'dinner-loaf', 'supper-loaf')).toEqual(['loaf', 'loaf-2'])
  })
  it('is no other dish’s name, nor one that two receipts share', () => {
    const day = [
      loaf('loaf', 'Bread'),
      loaf('bread', 'White bread', 'receipts/bread.md'),
      loaf('rye', 'Rye'),
      loaf('x', 'Rye', 'receipts/x.md'),
    ]
    expect(named(day, 'bread', 'rye')).toEqual(['bread', 'rye'])
    expect(named([loaf('a', 'Rye', 'a.md'), loaf('b', 'Rye', 'b.md')], 'rye')).toEqual(['rye'])
  })
  it('is of no unknown dish', () => {
    expect(namesInLog([{file: 'receipts/loaf.md', title: 'Country loaf'}, {file: 'receipts/pies.md'}], [])).toEqual([
      'loaf',
      'pies',
      'country-loaf',
    ])
  })
})

describe('what a log with numbers tells of the parts of a plan', () => {
  /** Four pies at 10:00, two of them drawn before the others; four at 12:00. */
  const plan = {
    loads: [load(1, 600, [part(2, 640), part(2, 650)]), load(2, 720, [part(4, 770)])],
  } as unknown as Plan
  const told = (...rows: readonly (readonly [number, string, string?])[]): unknown[] =>
    toldOf(plan, logOf(360, 480, rows), new Map([['pies', pies]]))
      .map(({count, at, draw, saidIn, saidOut, waits, stays, lostAt}) =>
        [
          count,
          at,
          draw,
          saidIn && `in ${saidIn}`,
          saidOut && `out ${saidOut}`,
          waits && 'waits',
          stays && 'stays',
          lostAt && `lost ${lostAt}`,
        ].filter((v) => v !== undefined),
      )
      .sort(
        (a, b) =>
          Number(a[1]) - Number(b[1]) ||
          Number(a[2]) - Number(b[2]) ||
          Number(b[0]) - Number(a[0]) ||
          String(a).localeCompare(String(b)),
      )

  it('takes a row without a number for all that were planned for one time', () => {
    expect(told([605, 'set in'], [645, 'drawn'])).toEqual([
      [2, 600, 640, 'in 605', 'out 645'],
      [2, 600, 650, 'in 605'],
      [4, 720, 770],
    ])
  })
  it('lets wait what of a load was not set in, until another row tells of it', () => {
    expect(told([605, 'set in 3'])).toEqual([
      [1, 600, 640, 'in 605'],
      [1, 600, 640, 'waits'],
      [2, 600, 650, 'in 605'],
      [4, 720, 770],
    ])
    expect(told([605, 'set in 3'], [625, 'set in']).filter((p) => (p as unknown[]).includes('waits'))).toEqual([])
    expect(told([605, 'set in 2']).flatMap((p) => ((p as unknown[]).includes('waits') ? [(p as unknown[])[0]] : []))).toEqual([2])
    expect(
      told([605, 'set in 0 of 4']).flatMap((p) => ((p as unknown[]).includes('waits') ? [(p as unknown[])[0]] : [])),
    ).toEqual([2, 2])
  })
  it('takes more than one load where the number is of more', () => {
    expect(told([605, 'set in 6'])).toEqual([
      [2, 600, 640, 'in 605'],
      [2, 600, 650, 'in 605'],
      [2, 720, 770],
      [2, 720, 770, 'in 605'],
    ])
  })
  it('leaves in the oven what was not drawn', () => {
    expect(told([605, 'set in 4'], [645, 'drawn 1'])).toEqual([
      [1, 600, 640, 'in 605', 'out 645'],
      [1, 600, 640, 'in 605', 'stays'],
      [2, 600, 650, 'in 605'],
      [4, 720, 770],
    ])
  })
  it('leaves in the oven what was looked at and not drawn, as “0 of 2 drawn” does', () => {
    const rest = [
      [2, 600, 650, 'in 605'],
      [4, 720, 770],
    ]
    for (const said of ['drawn 0 of 2', 'not done yet', 'still in', 'needs 15 min more', 'noch nicht fertig'])
      expect(told([605, 'set in 4'], [645, said]), said).toEqual([[2, 600, 640, 'in 605', 'stays'], ...rest])
    // The plan has it in by then, whatever the log tells of; it has no longer once it is drawn.
    expect(told([645, 'not done yet'])[0]).toEqual([2, 600, 640, 'stays'])
    expect(told([605, 'set in 4'], [645, 'not done'], [655, 'drawn 2'])).toEqual([[2, 600, 640, 'in 605', 'out 655'], ...rest])
    // One of them is not, and so the other is.
    expect(told([605, 'set in 4'], [645, '1 not done'])).toEqual([
      [1, 600, 640, 'in 605'],
      [1, 600, 640, 'in 605', 'stays'],
      ...rest,
    ])
    expect(told([655, 'still in'])).toEqual([
      [2, 600, 640, 'stays'],
      [2, 600, 650, 'stays'],
      [4, 720, 770],
    ])
    // Nothing is in yet: it is the dough that wants longer.
    expect(told([590, 'needs 15 min more'])).toEqual([
      [2, 600, 640],
      [2, 600, 650],
      [4, 720, 770],
    ])
  })
  it('has in the oven what a later row says is in it still, though an earlier one had it drawn', () => {
    const set = [
      [605, 'set in 4'],
      [645, 'drawn 4'],
    ] as const
    const first = [2, 600, 640, 'in 605']
    const second = [2, 600, 650, 'in 605']
    const rest = [4, 720, 770]
    const sorted = (...rows: (readonly [number, string])[]): string[] =>
      told(...set, ...rows)
        .map(String)
        .sort()
    const all = (...parts: (string | number)[][]): string[] => [...parts, rest].map(String).sort()
    const stays = all([...first, 'stays'], [...second, 'stays'])
    for (const said of ['still in the oven', 'not drawn', 'still in, not done', 'noch im Ofen', 'drawn, not done, put back'])
      expect(sorted([650, said]), said).toEqual(stays)
    // What stands on the table may not be done as well.
    expect(sorted([650, 'not done'])).toEqual(all([...first, 'out 645'], [...second, 'out 645']))
    expect(sorted([650, 'still in'], [660, 'drawn 4'])).toEqual(all([...first, 'out 660'], [...second, 'out 660']))
    // Others are in the oven: it is said of those.
    expect(told([605, 'set in 4'], [645, 'drawn 2'], [648, 'still in'])[0]).toEqual([...first, 'out 645'])
  })
  it('takes a lost one out of those not yet set in, or out of the oven', () => {
    expect(told([605, 'set in', '1 dropped'])).toEqual([
      [1, 600, 640, 'in 605'],
      [1, 600, 640, 'lost 605'],
      [2, 600, 650, 'in 605'],
      [4, 720, 770],
    ])
    expect(told([590, '1 dropped'], [605, 'set in 3'])).toContainEqual([1, 600, 640, 'lost 590'])
    expect(told([605, 'set in'], [620, '1 dropped'])).toContainEqual([1, 600, 640, 'in 605', 'out 620'])
  })
  it('takes of “all lost” no more than stands in the oven, or than was to go in next', () => {
    const whole = (...rows: readonly (readonly [number, string, string?])[]): unknown[] =>
      told(...rows).filter((p) => !(p as unknown[]).some((v) => /^(?:out|lost)/.test(String(v))))
    expect(whole([605, 'set in'], [630, 'burnt'])).toEqual([[4, 720, 770]])
    expect(whole([590, 'all dropped'])).toEqual([[4, 720, 770]])
    expect(whole([605, 'set in'], [650, 'drawn, all burnt']).at(-1)).toEqual([4, 720, 770])
    const losses = (...rows: readonly (readonly [number, string, string?])[]): number[] =>
      lossesOf(plan, logOf(360, 480, rows), new Map([['pies', pies]])).map(({lost}) => lost)
    expect(losses([605, 'set in'], [630, 'burnt'])).toEqual([4])
    expect(losses([605, 'set in'], [630, '1 burnt'])).toEqual([1])
    expect(losses([605, 'set in'], [650, 'drawn, burnt'])).toEqual([2])
    expect(losses([605, 'set in'], [650, 'drawn, burnt at the edge'])).toEqual([])
    expect(losses([605, 'set in'])).toEqual([])
  })
  it('has in the oven what was made again after a loss', () => {
    const {low, likely} = pies.need.minutes
    /** How many were made again, and whether the receipt's time says when they are done. */
    const inside = (...rows: readonly (readonly [number, string, string?])[]): unknown[] =>
      (told(...rows) as (string | number)[][]).flatMap(([count, at, draw, ...rest]) =>
        rest.includes('stays') ? [[count, Number(draw) - Number(at) === likely]] : [],
      )
    const all = [
      [605, 'set in'],
      [720, 'set in'],
    ] as const
    expect(inside(...all, [740, 'burnt'], [750, 'set in'])).toEqual([
      [4, true],
      [2, true],
      [2, true],
    ])
    expect(inside(...all, [740, '1 burnt'], [750, '1 set in'])).toEqual([[1, true]])
    expect(inside(...all, [740, '2 burnt'], [750, 'set in again'])).toEqual([[2, true]])
    expect(inside(...all, [740, '2 burnt'], [750, '1 set in'], [760, '1 set in'])).toEqual([
      [1, true],
      [1, true],
    ])
    // No more than was lost, and nothing while there is more of it to be set in.
    expect(inside(...all, [740, '1 burnt'], [750, '3 set in'])).toEqual([[1, true]])
    expect(inside([605, 'set in'], [630, 'burnt'], [700, 'set in'])).toEqual([])
    expect(told(...all, [740, '1 burnt'], [750, '1 set in'], [750 + low, 'drawn 8'])).not.toContainEqual(
      expect.arrayContaining(['stays']),
    )
    const loss = (...rows: readonly (readonly [number, string, string?])[]): unknown[] =>
      lossesOf(plan, logOf(360, 480, rows), new Map([['pies', pies]])).map(({lost, again, againAt}) => [lost, again, againAt])
    expect(loss(...all, [740, '3 burnt'], [750, '2 set in'])).toEqual([[3, 2, 750]])
    expect(loss(...all, [740, '3 burnt'])).toEqual([[3, 0, null]])
    // Burnt a second time, and made a third time.
    const third = inside(...all, [740, '8 burnt'], [750, 'set in'], [770, '8 burnt'], [780, 'set in']) as number[][]
    expect(third.reduce((sum, [count]) => sum + count!, 0)).toBe(8)
  })
  it('has in the oven what no plan had a place for and was set in all the same, as far as the day asks for it', () => {
    const ten = new Map([['pies', {...pies, count: 10}]])
    const {likely} = pies.need.minutes
    const inside = (...rows: readonly (readonly [number, string, string?])[]): unknown[] =>
      toldOf(plan, logOf(360, 480, rows), ten).flatMap(({count, at, draw, saidIn, saidOut, again, stays}) =>
        again || (saidOut !== undefined && saidIn === undefined) ? [[count, at, draw, saidIn, saidOut, stays]] : [],
      )
    // What goes in with the rest is done with it; alone, after its receipt's time, and it stays until that is told.
    expect(inside([605, 'set in 10'])).toEqual([[2, 600, 650, 605, undefined, undefined]])
    expect(inside([605, 'set in'], [720, 'set in'], [730, '1 set in'])).toEqual([[1, 730, 730 + likely, 730, undefined, 730]])
    expect(inside([605, 'set in'], [720, 'set in'], [730, 'set in'])).toEqual([[2, 730, 730 + likely, 730, undefined, 730]])
    expect(inside([605, 'set in 8'])).toEqual([])
    const none = {loads: []}
    expect(toldOf(none, logOf(360, 480, [[605, 'set in']]), ten)).toMatchObject([{count: 10, saidIn: 605, again: true}])
    expect(toldOf(none, logOf(360, 480, [[605, 'not risen']]), ten)).toEqual([])
    // Baked all the same, though nobody noted when it went in.
    expect(toldOf(none, logOf(360, 480, [[700, 'drawn']]), ten)).toMatchObject([{count: 10, at: 700 - likely, saidOut: 700}])
    // The day asks for more since.
    const twelve = [{...pies, count: 12}]
    const told = toldOf(plan, logOf(360, 480, [[605, 'set in 12']]), new Map([['pies', pies]]), twelve)
    expect(told.reduce((sum, part) => sum + (part.saidIn === 605 ? part.count : 0), 0)).toBe(12)
  })
  it('counts no more than the day asks for, and says so', () => {
    const dishes = new Map([['pies', pies]])
    const log = logOf(360, 480, [[605, 'set in 9']])
    expect(toldOf(plan, log, dishes).reduce((sum, part) => sum + (part.saidIn === 605 ? part.count : 0), 0)).toBe(8)
    expect(setInBeyond(dishes, log)).toMatchObject([
      {rule: 'set-in-beyond', line: log.rows[0]!.line, reason: expect.stringMatching(/^Mutton pies: 9 set in .* asks for 8:/)},
    ])
    const beyond = (...rows: readonly (readonly [number, string, string?])[]): number =>
      setInBeyond(dishes, logOf(360, 480, rows)).length
    expect(beyond([605, 'set in 6'], [700, 'set in 3'])).toBe(1)
    expect(beyond([605, 'set in 6'], [700, 'set in 2'])).toBe(0)
    expect(beyond([605, 'set in 8'], [640, '1 burnt'], [700, '1 set in'])).toBe(0)
    expect(beyond([605, 'set in 24 biscuits'])).toBe(0)
    expect(beyond([605, '9 set in'])).toBe(1)
    expect(beyond([605, '9 pies set in'])).toBe(1)
    expect(beyond([605, '24 biscuits set in'])).toBe(0)
  })
  it('tells of more drawn or put back than there are, and takes all there are', () => {
    const dishes = new Map([['pies', pies]])
    const told = (...rows: readonly (readonly [number, string, string?])[]): readonly string[] => {
      const log = logOf(360, 480, rows)
      return [...setInBeyond(dishes, log), ...drawnBeyond(dishes, log)].map(({rule, line, reason}) => `${rule} ${line} ${reason}`)
    }
    expect(told([605, 'set in'], [640, 'drawn 9'], [645, '99 put back'])).toEqual([
      expect.stringMatching(/^drawn-beyond 10 Mutton pies: 9 drawn by the log, and the day asks for 8:/),
      expect.stringMatching(/^drawn-beyond 11 Mutton pies: 99 put back by the log, and the day asks for 8:/),
    ])
    expect(told([605, 'set in'], [640, 'drawn 8'], [645, '8 put back'])).toEqual([])
    expect(told([605, 'set in'], [640, 'drawn 24 biscuits'])).toEqual([])
  })
  it('has in the oven again what was drawn and put back, and takes off its heat what it was outside', () => {
    const {low, likely} = pies.need.minutes
    /** How many are in again, from when on their heat counts, and when they were outside. */
    const back = (...rows: readonly (readonly [number, string, string?])[]): unknown[] =>
      toldOf(plan, logOf(360, 480, rows), new Map([['pies', pies]])).flatMap(({count, saidIn, saidOut, draw, back}) =>
        back && saidOut === undefined ? [[count, saidIn, draw - saidIn!, back.out, back.again]] : [],
      )
    const all = [
      [605, 'set in 4'],
      [720, 'set in 4'],
    ] as const
    // Two of the first load are drawn after less than the shortest time, and are out for five minutes.
    const out = 605 + low - 1
    const drawn = [...all, [out, 'drawn 2']] as const
    const two = [2, 615, likely, out, out + 5]
    expect(back(...drawn)).toEqual([])
    expect(back(...drawn, [out + 5, 'set in again'])).toEqual([two])
    expect(back(...drawn, [out + 5, '2 set in'])).toEqual([two])
    expect(back(...drawn, [out + 5, 'put back'])).toEqual([two])
    expect(back(...drawn, [out + 5, '1 set in', 'raw in the middle'])).toEqual([[1, ...two.slice(1)]])
    expect(back(...drawn, [out + 5, 'wieder eingeschoben'])).toEqual([two])
    // Out for longer than it had been in: all of its heat is gone.
    expect(back(...drawn, [out + low, 'put back'])).toEqual([[2, out + low, likely, out, out + low]])
    // It was done, and nothing says that it is the same: as if it were set in for the first time.
    const done = 605 + low
    expect(back(...all, [done, 'drawn 2'], [done + 5, '2 set in'])).toEqual([[2, done + 5, likely, done, done + 5]])
    expect(back(...all, [done, 'drawn 2'], [done + 5, '2 put back'])).toEqual([[2, 615, likely, done, done + 5]])
    // The next load goes in, or what was lost is made again.
    expect(back([605, 'set in'], [645, 'drawn'], [720, 'set in'])).toEqual([])
    expect(back([605, 'set in 4'], [700, 'drawn 4'], [720, 'set in again'])).toEqual([])
    expect(back(...all, [700, 'drawn 2, 2 burnt'], [730, '2 set in'])).toEqual([])
    // Drawn again, it is out.
    expect(back(...drawn, [out + 5, 'put back'], [800, 'drawn 8'])).toEqual([])
    expect(setInBeyond(new Map([['pies', pies]]), logOf(360, 480, [...drawn, [out + 5, '2 put back']]))).toEqual([])
  })
  it('leaves in what a row of a draw says was not done', () => {
    const rest = [
      [2, 600, 650, 'in 605'],
      [4, 720, 770],
    ]
    const half = [[1, 600, 640, 'in 605', 'out 645'], [1, 600, 640, 'in 605', 'stays'], ...rest]
    for (const note of ['crust pale, 1 of 2 not done', '1 noch nicht fertig', '1 pie put back'])
      expect(told([605, 'set in 4'], [645, 'drawn', note]), note).toEqual(half)
    expect(told([605, 'set in 4'], [645, '1 ausgezogen', '1 noch nicht fertig'])).toEqual(half)
    expect(told([605, 'set in 4'], [645, 'drawn 2', '1 of 2 not done'])).toEqual(half)
    expect(told([605, 'set in 4'], [645, 'drawn', '1 of 2 pale'])[0]).toEqual([2, 600, 640, 'in 605', 'out 645'])
  })
  it('does not take “24 biscuits” for vessels where there are not so many', () => {
    expect(told([605, 'set in 24 biscuits'])).toEqual(told([605, 'set in']))
  })
})

describe('two items of one receipt', () => {
  const more = {...pies, id: 'pies-2'}
  const two = (at: number, count: number, out: number): Load => ({
    ...load(
      2,
      at,
      [part(count, out)].map((one) => ({...one, dish: 'pies-2'})),
    ),
  })
  const plan = {loads: [load(1, 600, [part(8, 640)]), two(720, 8, 770)]} as unknown as Plan
  const told = (log: FiringLog): unknown[] =>
    toldOf(
      plan,
      log,
      new Map([
        ['pies', pies],
        ['pies-2', more],
      ]),
    ).map(({entry, count, saidIn, saidOut, lostAt, waits}) =>
      [entry.dish, count, saidIn, saidOut, lostAt, waits].filter((v) => v !== undefined),
    )
  const rows = (...some: readonly (readonly [number, string, string?])[]): FiringLog => logOf(360, 480, some)

  it('take turns where the log calls them alike', () => {
    expect(told(rows([605, 'set in']))).toEqual([
      ['pies', 8, 605],
      ['pies-2', 8],
    ])
    expect(told(rows([605, 'set in'], [645, 'drawn'], [725, 'set in']))).toEqual([
      ['pies', 8, 605, 645],
      ['pies-2', 8, 725],
    ])
  })
  it('lose what is lost once, not once each', () => {
    const lost = told(rows([605, 'set in'], [610, 'drawn 2, 1 dropped']))
    expect(lost.filter((p) => (p as unknown[])[0] === 'pies-2')).toEqual([['pies-2', 8]])
    const all = told(rows([590, '12 lost']))
    expect(all).toEqual([
      ['pies', 8, 590],
      ['pies-2', 4, 590],
      ['pies-2', 4],
    ])
  })
  it('are told apart by their numbers', () => {
    const log = rows([605, 'set in'])
    const named: FiringLog = {...log, rows: [...log.rows, {...log.rows[0]!, at: 615, dish: 'pies-2'}]}
    expect(told(named)).toEqual([
      ['pies', 8, 605],
      ['pies-2', 8, 615],
    ])
  })
})

describe('a day planned again after numbers in the log', async () => {
  const {oven} = await inFolder(smallDay, async (folder) => readDayFolder(folder))
  const today = day({hands: 2, serve: 1080, items: [{file: 'receipts/pies.md', line: 12, column: 3}] as never})
  const asked = problemOf({oven, day: today}, [{...pies, count: 4, wantedBy: null}])
  const option = asked.firings.at(-1)!
  const problem = {...asked, firings: [option]}
  const lit = today.fireFrom
  const found = planDay(problem, {effort: 'quick'})
  const raked = lit + option.forecast.raked
  const morning = found
  const set = Math.min(...morning.loads.map((l) => l.at))
  const again = (now: number, ...rows: readonly (readonly [number, string, string?])[]): ReturnType<typeof planAgain> =>
    planAgain({oven, day: today, now, options: {effort: 'quick'}}, problem, morning, logOf(lit, raked, rows))
  const loadsOf = ({plan}: ReturnType<typeof planAgain>, within: boolean): number =>
    plan.loads.flatMap((l) => l.dishes.filter((d) => (d.alreadyIn ?? false) === within)).reduce((n, d) => n + d.count, 0)
  const broken = ({plan, problem: rest}: ReturnType<typeof planAgain>): unknown[] => check(rest, plan)

  it('is about four pies that go in at once, as the morning has it', () => {
    expect(morning.loads.map((l) => l.dishes.map((d) => d.count).reduce((a, b) => a + b))).toEqual([4])
  })
  it('has in the oven what it had left out, and every one of what is asked for since', () => {
    // Of four the morning's plan has three.
    const three = {
      ...morning,
      loads: morning.loads.map((l) => ({
        ...l,
        dishes: l.dishes.map((one) => ({...one, count: 3})),
        placed: l.placed.slice(0, 3),
      })),
    }
    const rows = logOf(lit, raked, [[set, 'set in 4']])
    const all = planAgain({oven, day: today, now: set + 10, options: {effort: 'quick'}}, problem, three, rows)
    expect([loadsOf(all, true), loadsOf(all, false)]).toEqual([4, 0])
    const {placed, dishes} = all.plan.loads[0]!
    expect(placed).toHaveLength(4)
    expect(dishes.every(({draw}) => draw.likely > set)).toBe(true)
    expect(all.plan.unplaced).toEqual([])
    expect(broken(all)).toEqual([])
    // All of it takes its heat.
    const few = planAgain({oven, day: today, now: set + 10, options: {effort: 'quick'}}, problem, three, {
      ...rows,
      rows: rows.rows.map((row) => ({...row, count: 3})),
    })
    const at = Math.round((set + 40 - lit) / all.plan.forecast.step)
    expect(all.plan.forecast.baking.likely[at]).toBeLessThan(few.plan.forecast.baking.likely[at]!)
  })
  it('sets in later what was not set in, and says so', () => {
    const part = again(set + 10, [set, 'set in 3 of 4'])
    expect([loadsOf(part, true), loadsOf(part, false)]).toEqual([3, 1])
    expect(broken(part)).toEqual([])
    const [first] = part.plan.loads.filter((l) => l.dishes.some((d) => !d.alreadyIn))
    expect(first!.at).toBeGreaterThanOrEqual(set + 10)
    expect(part.plan.changes!.map((c) => c.what)).toContainEqual(expect.stringMatching(/^set in \d+ min later$/))
    // Without the number all four are in.
    const whole = again(set + 10, [set, 'set in'])
    expect([loadsOf(whole, true), loadsOf(whole, false)]).toEqual([4, 0])
  })
  it('keeps in the oven what was not drawn', () => {
    const out = morning.loads[0]!.dishes[0]!.draw.likely
    const part = again(out + 10, [set, 'set in 4'], [out, '3 drawn'])
    expect([loadsOf(part, true), loadsOf(part, false)]).toEqual([1, 0])
    expect(part.problem.done!.set.map((s) => [s.count, s.drawn])).toEqual([
      [3, out],
      [1, null],
    ])
    expect(broken(part)).toEqual([])
    expect(loadsOf(again(out + 10, [set, 'set in 4'], [out, 'drawn']), true)).toBe(0)
  })
  it('and takes it to be out when it was to be, where others were drawn before that', () => {
    const out = morning.loads[0]!.dishes[0]!.draw.likely
    const at = (now: number): number => loadsOf(again(now, [set, 'set in 4'], [out - 20, '1 drawn']), true)
    expect([at(out - 5), at(out + 60)]).toEqual([3, 0])
  })
  it('does not plan again what was lost, and tells of it', () => {
    const part = again(set + 10, [set, 'set in 3, 1 dropped'])
    expect([loadsOf(part, true), loadsOf(part, false)]).toEqual([3, 0])
    expect(part.plan.possible).toBe(true)
    expect(broken(part)).toEqual([])
    const told = part.plan.changes!.filter((c) => c.words?.what.id === 'lost')
    expect(told).toMatchObject([{dish: 'pies', what: '1 of 4 lost; not planned again'}])
    expect(changeWords(told[0]!, part.problem, styleOf({language: 'de', clock: 24, degrees: 'C'})).what).toContain(
      '1 von 4 verloren',
    )
    // What was lost took no heat from the oven and no opening of its door.
    const without = again(set + 10, [set, 'set in 3'])
    expect(part.plan.forecast.baking.likely[200]).toBeGreaterThanOrEqual(without.plan.forecast.baking.likely[200]! - 1e-6)
  })
  it('has a draw and a place for what was burnt and made again', () => {
    for (const [value, count] of [
      ['burnt', 4],
      ['1 burnt', 1],
    ] as const) {
      const made = set + 30
      const part = again(made + 5, [set, 'set in'], [set + 20, value], [made, 'set in'])
      const own = part.plan.loads.filter(({at}) => at === made)
      expect(own.flatMap(({dishes}) => dishes).map((one) => [one.count, one.alreadyIn])).toEqual([[count, true]])
      expect(own[0]!.placed).toHaveLength(count)
      expect(own[0]!.dishes[0]!.draw.likely).toBeGreaterThan(made)
      expect([loadsOf(part, true), loadsOf(part, false)]).toEqual([4, 0])
      expect(broken(part)).toEqual([])
      const [told] = part.plan.changes!
      expect(told!.what).toMatch(new RegExp(`^${count} of 4 lost; ${count} made again and set in at`))
      expect(changeWords(told!, part.problem, styleOf({language: 'de', clock: 24, degrees: 'C'})).what).toContain('neu gemacht')
      // Nobody said that it was drawn, so it is in the oven however late it is.
      expect(loadsOf(again(made + 300, [set, 'set in'], [set + 20, value], [set + 25, 'drawn'], [made, 'set in']), true)).toBe(
        count,
      )
    }
    const some = again(set + 35, [set, 'set in'], [set + 20, '2 burnt'], [set + 30, '1 set in'])
    expect(some.plan.changes![0]!.what).toMatch(/^2 of 4 lost; 1 made again and set in at .*, the rest not planned again$/)
    expect(broken(some)).toEqual([])
  })

  it('is not held to lack so much heat where nobody knows in which part of the floor it stands', () => {
    const {plan, problem: rest} = again(set + 35, [set, 'set in'])
    const wanting = {start: 0, end: 60, dose: 0.5}
    const rules = (placed: 'where it was' | 'nowhere'): string[] => {
      const away = placed === 'nowhere'
      const loads = plan.loads.map((l) => ({
        ...l,
        dishes: l.dishes.map((d) => ({...d, eased: wanting})),
        placed: away ? [] : l.placed,
      }))
      const stood = rest.done!.set.map((s) => (away ? {...s, placed: []} : s))
      return check({...rest, done: {...rest.done!, set: stood}}, {...plan, loads}).map(({rule}) => rule)
    }
    expect(rules('where it was')).toContain('eased')
    expect(rules('nowhere')).not.toContain('eased')
    expect(rules('nowhere')).toContain('count')
  })

  it('is in nobody’s way where no plan knows of room for it, and that is said', () => {
    const {day, oven, receipts} = readDayFolder('corpus-demo')
    const {plan, problem} = makePlan({oven, day, receipts})
    const [one] = plan.loads.flatMap(({at, dishes}) => dishes.map((d) => ({at, id: d.dish, out: d.draw.likely, count: d.count})))
    const placed = plan.loads.flatMap((load) => load.placed)
    // Set in as planned and lost, and as many again where the whole floor is taken.
    const lost = {
      dish: one!.id,
      count: one!.count,
      at: one!.at,
      drawn: one!.at + 20,
      placed: placed.filter((v) => v.dish === one!.id),
      lost: true as const,
      instead: true as const,
    }
    const rest = plan.loads.flatMap(({at, dishes, placed: all}) =>
      at === one!.at
        ? []
        : dishes
            .slice(0, 1)
            .map((d) => ({dish: d.dish, count: d.count, at: one!.at, drawn: null, placed: all.filter((v) => v.dish === d.dish)})),
    )
    const again = {dish: one!.id, count: one!.count, at: one!.at + 30, drawn: null, placed: lost.placed}
    const stood = standingAgain(problem, [lost, ...rest, again], new Set([again]))
    expect(stood.at(-1)!.placed).toEqual([])
    // Where nothing has its place since, it stands where it stood.
    const free = standingAgain(problem, [lost, again], new Set([again])).at(-1)!
    const seats = (all: readonly {readonly x: number; readonly y: number}[]): string[] =>
      all.map(({x, y}) => `${x.toFixed(3)} ${y.toFixed(3)}`)
    expect(seats(free.placed)).toEqual(seats(lost.placed))
    // What is soon out stands on nothing either.
    const soon = {low: 20, likely: 30, high: 40}
    const short = {...problem, dishes: problem.dishes.map((d) => ({...d, need: {...d.need, minutes: soon}}))}
    const beside = rest.map((r) => ({...r, at: again.at - 10}))
    expect(standingAgain(short, [lost, ...beside, again], new Set([again])).at(-1)!.placed).toEqual([])
  })

  it('keeps to it after a reading, from which on another plan is followed', () => {
    const {forecast} = option
    const at = set + 30
    const floor = Math.round(morning.forecast.floor.likely[Math.round((at - lit) / forecast.step)]!)
    const told = (value: string, ...more: readonly string[]): ReturnType<typeof planAgain> => {
      const rows = [`| ${clock(set)} | pies | ${value} | |`, ...more, `| ${clock(at)} | floor | ${floor} °C | |`].join('\n')
      const text = `---\ndate: 2027-06-12\nlit: ${clock(lit)}\nraked: ${clock(raked)}\n---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n${rows}\n`
      const log = readLog(text, 'log.md').log!
      return planAgain({oven, day: today, now: at + 20, options: {effort: 'quick'}}, problem, morning, log)
    }
    const lost = told('set in 3, 1 dropped')
    expect(lost.problem.done!.set.filter((s) => s.lost).map((s) => s.count)).toEqual([1])
    expect([loadsOf(lost, true), loadsOf(lost, false)]).toEqual([3, 0])
    expect(broken(lost)).toEqual([])
    const row = (minutes: number, what: string): string => `| ${clock(minutes)} | pies | ${what} | |`
    const made = told('set in', row(set + 15, 'burnt'), row(set + 25, 'set in'))
    expect([loadsOf(made, true), loadsOf(made, false)]).toEqual([4, 0])
    expect(made.problem.done!.set.map(({count, instead}) => [count, instead ?? false])).toEqual([
      [4, true],
      [4, false],
    ])
    expect(broken(made)).toEqual([])
  })
})

describe('the checker', () => {
  const front = dish('beans', 1, {id: 'front'})
  const behind = dish('pie', 2, {id: 'behind'})
  const spot = (dish: string, y: number): Load['placed'][number] => ({
    dish,
    number: 1,
    x: 0,
    y,
    turn: 0,
    zone: y > 0 ? 'back' : 'mouth',
  })
  /** One of two pies drawn, or both still in; what stands before them went in since. */
  const faults = (drawn: number | null): string[] => {
    const set = [
      {dish: 'behind', count: 1, at: 600, drawn, placed: [spot('behind', 0.3)]},
      {dish: 'behind', count: 1, at: 600, drawn: null, placed: [spot('behind', 0.3)]},
      {dish: 'front', count: 1, at: 650, drawn: null, placed: [spot('front', -0.1)]},
    ]
    const asked = emptyDay([front, behind], {done: {now: 660, lit: 300, set, plan: null}})
    const loads = [
      {number: 1, at: 600, dishes: [{...part(1, 665), dish: 'behind', alreadyIn: true}], placed: [spot('behind', 0.3)]},
      {number: 2, at: 650, dishes: [{...part(1, 900), dish: 'front', alreadyIn: true}], placed: [spot('front', -0.1)]},
    ]
    return check(asked, {...planDay(asked, {effort: 'quick', bare: true}), loads}).map((v) => v.rule)
  }
  it('does not hold against a plan where the rest of a load stands of which some were drawn', () => {
    expect(faults(null)).toContain('reach')
    expect(faults(640)).not.toContain('reach')
  })
})

describe('the page’s steps', () => {
  const step = (action: string, at: number): object => ({action, at, dishes: ['pies'], past: false})
  const view = (told?: Record<string, number>): PlanView =>
    ({
      steps: [step('load', 640), step('draw', 700)],
      dishes: [{id: 'pies', stem: 'pies', title: 'Pies', amount: '', count: 4}],
      plan: {loads: []},
      ...(told ? {told} : {}),
    }) as unknown as PlanView

  it('has the rest of a load still to be set in, once the plan knows of the first', () => {
    const log = logOf(360, 480, [[605, 'set in 2 of 4']])
    const open = (v: PlanView): string[] => deedsOf(v, log).flatMap((d) => (d.done ? [] : [d.step.action]))
    // Until the plan is made again, the row is of the step that was pressed.
    expect(open(view())).toEqual(['draw'])
    expect(open(view(deedsTold(log.rows)))).toEqual(['load', 'draw'])
  })
  it('has a dish in the oven until all of its vessels are drawn', () => {
    const isIn = (...rows: readonly (readonly [number, string])[]): boolean => inside(view(), logOf(360, 480, rows)).length > 0
    expect(isIn([605, 'set in 4'], [700, 'drawn 2'])).toBe(true)
    expect(isIn([605, 'set in 2'], [620, 'set in 2'], [700, 'drawn'])).toBe(false)
    expect(isIn([605, 'set in'], [700, 'drawn 2'], [710, 'drawn 2'])).toBe(false)
  })
})

describe('what stands in the oven when the fire is lit again', {timeout: 120_000}, () => {
  const {day, oven, receipts} = readDayFolder('corpus-demo')
  const {plan, problem} = makePlan({oven, day, receipts})
  const pies = problem.dishes.find(({id}) => id === 'mutton-pies')!
  const beans = problem.dishes.find(({id}) => id === 'baked-beans')!
  const at = plan.loads.find(({dishes}) => dishes.some(({dish}) => dish === pies.id))!.at
  const inAt = [`| ${clock(at)} | mutton-pies | set in | |`, `| ${clock(at)} | baked-beans | set in | |`]
  // Half of what the pies' receipt gives them at least, so that they are raw still.
  const lit = at + Math.round(pies.need.minutes.low / 2)
  const again = (now: number, ...rows: readonly string[]): ReturnType<typeof planAgain> => {
    const text = `---\ndate: ${day.date}\nlit: ${clock(plan.lit)}\nraked: ${clock(plan.raked)}\n---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n${[...inAt, ...rows].join('\n')}\n`
    const {log} = readLog(text, 'log.md')
    return planAgain({oven, day, now, options: {effort: 'quick'}}, problem, plan, log!)
  }
  const refired = [`| ${clock(lit)} | note | lit again | |`, `| ${clock(lit + 45)} | note | raked again | |`]
  const outOf = ({plan: {messages}}: ReturnType<typeof planAgain>, title: string): string[] =>
    messages.flatMap(({rule, reason, suggest}) =>
      ['drawn-raw', 'out-for-fire'].includes(rule) && reason.startsWith(title) ? [`${rule}: ${reason}: ${suggest}`] : [],
    )

  it('is told at the head of the plan, with how much of its heat it had', () => {
    const out = again(lit + 45, ...refired)
    // FDA Food Code 3-401.11(A)(3): 165 °F for what holds meat.
    expect(outOf(out, pies.title)).toEqual([
      expect.stringMatching(
        /^drawn-raw: .*taken out for the fire at .* with [1-9]\d % of its heat, .*raw meat.* 74 °C \(165 °F\) in the middle$/,
      ),
    ])
    expect(outOf(out, beans.title)).toEqual([
      expect.stringMatching(/^out-for-fire: .* with \d+ % of its heat: .*set it in again/),
    ])
    const {alerts} = planHead({...out, oven}, styleOf({}))
    for (const {title} of [pies, beans]) expect(alerts.join()).toContain(`${title}: taken out for the fire`)
    expect(amiss(out.problem, out.plan).underdone).toEqual(expect.arrayContaining([pies.id, beans.id]))
    // USDA FSIS danger zone: two hours in the warm are the most.
    expect(outOf(again(lit + 125, ...refired), pies.title)).toEqual([
      expect.stringContaining('do not eat it unless it was cooked through'),
    ])
  })

  it.each([
    ['once it is ready', 90],
    ['while it soaks', 55],
  ])('is in it again when it is put back, %s, with all its heat to come', (_, later) => {
    const backAt = lit + later
    const out = again(
      backAt,
      ...refired,
      ...['mutton-pies', 'baked-beans'].map((id) => `| ${clock(backAt)} | ${id} | put back | |`),
    )
    for (const dish of [pies, beans]) {
      expect(outOf(out, dish.title)).toEqual([])
      const load = out.plan.loads.find(({dishes}) => dishes.some(({dish: id}) => id === dish.id))!
      expect(load.at).toBe(backAt)
      expect(load.dishes.find(({dish: id}) => id === dish.id)).toMatchObject({alreadyIn: true, count: dish.count})
    }
    const {draw} = out.plan.loads.flatMap(({dishes}) => dishes).find(({dish: id}) => id === pies.id)!
    // What is drawn at once has baked in nothing.
    expect(draw.likely - backAt).toBeGreaterThan(pies.need.minutes.low / 4)
    expect(check(out.problem, out.plan).filter(({rule}) => rule === 'second fire' || rule === 'dose')).toEqual([])
  })

  it('comes out for a fire that is to be lit without being left in any longer, and what is unfinished is not told to be kept', () => {
    const now = lit - 30
    const out = again(now, `| ${clock(now)} | note | fire again at ${clock(now + 5)} for 45 min | |`)
    const {plan: made, problem: rest} = out
    const draw = made.steps.find(({action, dishes}) => action === 'draw' && dishes.includes(beans.id))!
    expect(made.fires![1]!.lit - draw.at).toBeLessThan(10)
    expect(draw.ifBehind).toMatch(
      /^Not done: out all the same, before the fire is lit\. .*: not done by then: cook through elsewhere/,
    )
    expect(draw.ifBehind).not.toMatch(/look again|may stay in|Done: [^.]*Baked beans/)
    expect(outOf(out, beans.title)).toEqual([expect.stringMatching(/^out-for-fire: .*has to come out for the fire at/)])
    // Told once, and at the head.
    expect(made.messages.filter(({rule, reason}) => rule === 'unfinished' && reason.startsWith(beans.title))).toEqual([])
    expect(check(rest, made).filter(({rule, dish: id}) => rule === 'steps' && id === beans.id)).toEqual([])
  })

  it.each([
    ['at the next opening', 5],
    ['some time later', 25],
  ])('is told alike where the log does not tell that the fire was lit, %s', (_, later) => {
    const now = lit - 30
    const decided = `| ${clock(now)} | note | fire again at ${clock(now + later)} for 45 min | |`
    const fire = again(now, decided).plan.fires![1]!
    const out = (...rows: readonly string[]): string[] => {
      const made = again(fire.lit + 50, decided, ...rows)
      return [pies, beans].flatMap(({title}) => outOf(made, title))
    }
    const told = out(`| ${clock(fire.lit)} | note | lit again | |`)
    // The fire waits for the pies.
    expect(told).toEqual([expect.stringMatching(/^out-for-fire: Baked beans.*taken out for the fire at/)])
    expect(out()).toEqual(told)
  })

  it.each([
    ['until it is raked out', [20], 45, 45],
    ['for as long as one does at the least', [4], null, 15],
    ['no longer than till then, where no raking is told', [23], null, 23],
  ] as const)('has what was set in while it burned in %s', (_, [setIn], raked, from) => {
    const out = again(
      lit + 52,
      `| ${clock(lit)} | note | lit again | |`,
      `| ${clock(lit + setIn)} | indian-pudding | set in | |`,
      ...(raked === null ? [] : [`| ${clock(lit + raked)} | note | raked again | |`]),
    )
    const load = out.plan.loads.find(({dishes}) => dishes.some(({dish, alreadyIn}) => dish === 'indian-pudding' && alreadyIn))!
    expect(load.at).toBe(lit + from)
    expect(out.plan.fires![1]!.raked).toBe(lit + from)
    // It bakes from then on, though the oven was not ready when the minute of the plan began.
    expect(load.dishes[0]!.draw.likely - load.at).toBeGreaterThan(120)
    expect(out.plan.messages.filter(({rule}) => rule.startsWith('checker'))).toEqual([])
    const told = out.plan.messages.filter(({rule}) => rule === 'log-order').map(({reason}) => reason)
    const slip = `Indian pudding: logged as set in at ${clock(lit + setIn)} while the fire lit at ${clock(lit)} burned: taken to have gone in at ${clock(lit + from)}`
    expect(told).toEqual(setIn < from ? [slip] : [])
  })

  it('is not thought to bake in the flames, though it is put back while they burn', () => {
    const out = again(lit + 2, `| ${clock(lit)} | note | lit again | |`, `| ${clock(lit + 2)} | mutton-pies | put back | |`)
    expect(out.plan.loads.flatMap(({dishes}) => dishes).filter(({dish: id, alreadyIn}) => id === pies.id && alreadyIn)).toEqual(
      [],
    )
    expect(outOf(out, pies.title)).toEqual([expect.stringMatching(/^drawn-raw: .*taken out for the fire/)])
  })
})
