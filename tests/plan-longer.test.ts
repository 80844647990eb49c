import {describe, expect, it} from 'vitest'
import {readDayFolder} from '../src/cli/day-folder.js'
import {writeClock} from '../src/measure/quantity.js'
import {readLog} from '../src/oven/log.js'
import {loadedAt} from '../src/plan/longer.js'
import {makePlan} from '../src/plan/make.js'
import {changeWords} from '../src/sheets/phrases.js'
import {plainStyle} from '../src/sheets/style.js'
import {styleOf} from '../src/sheets/style-of.js'
import {inOvenNow} from '../src/sheets/to-do.js'

/** What was looked at and not done stays in as long as was said. The demo's invented day; common practice, no source. */
const clock = (minutes: number): string => `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`
const {day, oven, receipts} = readDayFolder('corpus-demo')
const morning = makePlan({oven, day, receipts, options: {effort: 'quick'}})
const bread = (loads: typeof morning.plan.loads): {readonly at: number; readonly out: number} => {
  const load = loads.find(({dishes}) => dishes.some(({dish}) => dish === 'household-bread'))!
  return {at: load.at, out: load.dishes.find(({dish}) => dish === 'household-bread')!.draw.likely}
}
const planned = bread(morning.plan.loads)

/** The day as it stands five minutes after the bread was looked at, at the time that it was to be drawn. */
function lookedAt(said: string, note = ''): ReturnType<typeof makePlan> {
  const {lit, firing} = morning.plan
  const {log} = readLog(
    `---\ndate: ${day.date}\nlit: ${clock(lit)}\nraked: ${clock(lit + firing.burn)}\n---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n| ${clock(planned.at)} | household-bread | set in | |\n| ${clock(planned.out)} | household-bread | ${said} | ${note} |\n`,
    'log.md',
  )
  return makePlan({oven, day, receipts, log, now: planned.out + 5, options: {effort: 'quick'}}, morning)
}

describe('what was looked at and is not done', () => {
  it.each([
    ['needs 25 min more', '', 25],
    ['not done', '', 10],
    ['not done', 'another quarter of an hour', 15],
    ['drawn', 'raw in the middle, put back for 20 minutes', 20],
    ['braucht noch eine halbe Stunde', '', 30],
  ])('“%s” %s: drawn %d minutes later at the soonest', (said, note, minutes) => {
    const {plan, problem, messages} = lookedAt(said, note)
    const {at, out} = bread(plan.loads)
    // Brought up to an opening; the curve is believed a little otherwise by then.
    expect(out).toBeGreaterThanOrEqual(planned.out + minutes - 5)
    expect(problem.done!.set.find(({dish}) => dish === 'household-bread')!.longer).toEqual({
      setIn: planned.at,
      looked: planned.out,
      until: planned.out + minutes,
    })
    expect(messages.filter(({severity}) => severity === 'error')).toEqual([])
    // It was set in when it was set in.
    expect(loadedAt(at, 'household-bread', problem.done)).toBe(planned.at)
    expect(messages.some(({rule, reason}) => rule === 'unlogged' && reason.includes('Household Bread'))).toBe(false)
  })

  it('is told so, in both languages, and from when it stands in the oven', () => {
    const {plan, problem} = lookedAt('needs 25 min more')
    expect(inOvenNow(plan, problem, plainStyle)).toContain(`since ${writeClock(planned.at)}`)
    const styles = [plainStyle, styleOf({language: 'de'})]
    const words = plan.changes!.flatMap((change) => styles.map((style) => changeWords(change, problem, style).what))
    expect(words.join('\n')).toContain('not done when it was looked at at')
    expect(words.join('\n')).toContain('nachgesehen und noch nicht gar')
  })

  it('is drawn when it was to be where it was only said to be in, or looked at long before', () => {
    expect(lookedAt('still in the oven').problem.done!.set.some(({longer}) => longer)).toBe(false)
    const {lit, firing} = morning.plan
    const early = planned.at + 20
    const {log} = readLog(
      `---\ndate: ${day.date}\nlit: ${clock(lit)}\nraked: ${clock(lit + firing.burn)}\n---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n| ${clock(planned.at)} | household-bread | set in | |\n| ${clock(early)} | household-bread | not done | |\n`,
      'log.md',
    )
    const {problem} = makePlan({oven, day, receipts, log, now: early + 5, options: {effort: 'quick'}}, morning)
    expect(problem.done!.set.some(({longer}) => longer)).toBe(false)
  })
})
