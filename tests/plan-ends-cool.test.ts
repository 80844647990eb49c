import {describe, expect, it} from 'vitest'
import {readDayFolder} from '../src/cli/day-folder.js'
import {readLog} from '../src/oven/log.js'
import {check} from '../src/plan/check.js'
import {makePlan} from '../src/plan/make.js'

/**
 * What is in the oven and will end too cool waits for the heat it wants, and no longer: with all its heat it is drawn. The demo's invented
 * day; common practice, no source.
 */
const {day, oven, receipts} = readDayFolder('corpus-demo')
const morning = makePlan({oven, day, receipts})

/** The day at an hour, min after midnight, by a log. */
function dayAt(now: number, lit: string, raked: string, rows: readonly string[]): ReturnType<typeof makePlan> {
  const table = ['| time | reading | value | note |', '| --- | --- | --- | --- |', ...rows].join('\n')
  const {log} = readLog(`---\ndate: ${day.date}\nlit: ${lit}\nraked: ${raked}\n---\n\n${table}\n`, 'log.md')
  return makePlan({oven, day, receipts, log, now}, morning)
}

describe('what is in the oven and ends too cool', () => {
  it.each([
    {
      now: 865,
      lit: '6:20',
      raked: '9:15',
      dish: 'light-cake',
      rows: [
        '| 9:55 | floor | 291 °C | |',
        '| 11:25 | household-bread | set in | |',
        '| 12:05 | household-bread | drawn raw | |',
        '| 12:20 | mutton-pies | set in | |',
        '| 12:40 | floor | 157 °C | |',
        '| 12:45 | gingerbread | set in | 3 of them |',
        '| 13:00 | baked-beans | set in | |',
        '| 13:25 | light-cake | set in | |',
        '| 13:55 | mutton-pies | drawn | |',
        '| 14:00 | light-cake | drawn 1 | |',
      ],
    },
  ])('$dish at $now is drawn when it has its heat', ({now, lit, raked, dish, rows}) => {
    const {plan, problem, messages} = dayAt(now, lit, raked, rows)
    expect(messages.filter(({severity}) => severity === 'error')).toEqual([])
    expect(check(problem, plan)).toEqual([])
    const entry = plan.loads.flatMap(({dishes}) => dishes).find((e) => e.dish === dish && e.alreadyIn)!
    expect(entry.eased!.end).toBeGreaterThan(0)
    expect(entry.eased!.dose).toBeGreaterThan(0.85)
  })
})
