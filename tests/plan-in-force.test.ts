import {beforeAll, describe, expect, it} from 'vitest'
import {readDayFolder} from '../src/cli/day-folder.js'
import {readLog} from '../src/oven/log.js'
import {planAgain} from '../src/plan/again.js'
import {type MadePlan, makePlan} from '../src/plan/make.js'

/**
 * The demo's day lived on: what was shown at a note is what is followed from then on, whatever minute it is looked at again. An invented day;
 * that nobody shapes a dough in the past is common practice, no source.
 */
const read = readDayFolder('corpus-demo')
const at = (clock: string): number => {
  const [, hours, minutes] = /^(\d+):(\d\d)$/.exec(clock)!
  return Number(hours) * 60 + Number(minutes)
}
type Again = ReturnType<typeof planAgain>
const toCome = ({plan}: Again): string[] =>
  plan.loads.flatMap((load) =>
    load.dishes.flatMap(({dish, count, alreadyIn}) => (alreadyIn ? [] : [`${load.at} ${dish} ${count}`])),
  )
const clock = (minutes: number): string => `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`

describe('a plan that is followed', {timeout: 120_000}, () => {
  let made: MadePlan
  beforeAll(() => {
    made = makePlan({oven: read.oven, day: read.day, receipts: read.receipts})
  }, 60_000)
  const again = (head: string, rows: readonly string[], now: string): Again => {
    const table = `| time | reading | value | note |\n| --- | --- | --- | --- |\n${rows.map((row) => `${row}\n`).join('')}`
    const {log} = readLog(`---\ndate: ${read.day.date}\n${head}\n---\n\n${table}`, 'firings/log.md')
    return planAgain({oven: read.oven, day: read.day, now: at(now), options: {effort: 'quick'}}, made.problem, made.plan, log!)
  }
  const late = 'lit: 6:32\nraked: 9:05'
  const begun = [
    '| 9:08 | floor | 370 °C | |',
    '| 9:35 | rye-and-indian-bread | set in | |',
    '| 11:02 | household-bread | set in | |',
  ]

  it('stays as it was shown at the last note, whenever it is looked at till then', () => {
    const shown = again(late, begun, '11:03')
    const first = Math.min(...shown.plan.loads.filter((l) => l.dishes.some((d) => !d.alreadyIn)).map((l) => l.at))
    for (const now of [at('11:04'), first - 1]) expect(toCome(again(late, begun, clock(now)))).toEqual(toCome(shown))
    // What is then set in as it says leaves nothing else out.
    const next = shown.plan.loads.find((load) => load.at === first)!
    const rows = next.dishes.filter((d) => !d.alreadyIn).map(({dish}) => `| ${clock(first)} | ${dish} | set in | |`)
    const followed = again(late, [...begun, ...rows], clock(first + 1))
    const out = ({plan}: Again): string[] => plan.unplaced.map(({dish}) => dish)
    expect(out(followed)).toEqual(out(shown))
    // And none of it is thought in the oven before its time.
    expect(followed.problem.done!.set.map(({dish}) => dish).sort()).toEqual(
      [...shown.problem.done!.set, ...next.dishes.filter((d) => !d.alreadyIn)].map(({dish}) => dish).sort(),
    )
  })

  it('is not moved for the minutes in which an opening is due', () => {
    const [first] = made.plan.loads
    const head = `lit: ${clock(made.plan.lit)}\nraked: ${clock(made.plan.raked)}`
    const due = toCome(again(head, [], clock(first!.at)))
    for (const minutes of [1, 4]) expect(toCome(again(head, [], clock(first!.at + minutes)))).toEqual(due)
  })

  it('has no dough shaped and nothing made up in the past that was not to be by then', () => {
    const head = `lit: ${clock(made.plan.lit)}\nraked: ${clock(made.plan.raked)}`
    const now = made.plan.loads[0]!.at - 5
    // The oven is a good deal cooler than planned: everything would rather go in sooner.
    const cool = again(head, [`| ${clock(now)} | arm | 16 | |`], clock(now))
    const begunBy = new Set(
      made.plan.steps.filter((step) => step.at <= now).flatMap(({action, dishes}) => dishes.map((dish) => `${action} ${dish}`)),
    )
    const past = cool.plan.steps.filter(({action, at: when}) => /^(?:mix|shape)$/.test(action) && when < now)
    for (const {action, dishes} of past) for (const dish of dishes) expect(begunBy).toContain(`${action} ${dish}`)
    for (const {dough, id} of made.problem.dishes) {
      if (!dough || begunBy.has(`shape ${id}`)) continue
      const shaped = cool.plan.steps.filter(({action, dishes}) => action === 'shape' && dishes.includes(id))
      for (const {at: when} of shaped) expect(when, id).toBeGreaterThanOrEqual(now)
    }
  })
})
