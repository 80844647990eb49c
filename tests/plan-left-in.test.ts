import {readFileSync} from 'node:fs'
import {describe, expect, it} from 'vitest'
import {readLog} from '../src/oven/log.js'
import {readOven} from '../src/oven/read.js'
import {readDay} from '../src/plan/day.js'
import {makePlan} from '../src/plan/make.js'
import {translate} from '../src/receipt/translate.js'
import {makeDishes} from '../src/scale/dishes.js'
import {planText} from '../src/sheets/plan-text.js'
import {styleOf} from '../src/sheets/style-of.js'

/**
 * Days of one or two dishes on the demo's oven, invented, and logs of what became of them. That cooked food is not eaten after two hours under
 * 57 °C (135 °F): FDA Food Code 2022, 3-501.16(A)(1), and USDA FSIS, "Danger Zone".
 */
const text = (name: string): string => readFileSync(`corpus-demo/${name}`, 'utf8')
const oven = readOven(text('oven.md'), 'oven.md').oven!
const receiptsOf = (names: readonly string[]) =>
  names.flatMap((name) => translate(text(`receipts/${name}.md`), {file: `receipts/${name}.md`}).receipts)

/** A day's plan with a log of these rows. */
function planned(list: readonly string[], rows: readonly string[], serve = '6 pm') {
  const lines = list.map((line) =>
    line.startsWith('#')
      ? line
      : `- [${line.split(' ')[0]}](receipts/${line.split(' ')[0]}.md) — ${line.slice(line.indexOf(' ') + 1)}`,
  )
  const head = `---\ndate: 2027-03-06\npeople: 12\nserve: ${serve}\nfire from: 6 am\n---\n\n# Saturday\n\n`
  const {day} = readDay(`${head}${lines.join('\n')}\n`, 'day.md')
  const receipts = receiptsOf(list.flatMap((line) => (line.startsWith('#') ? [] : [line.split(' ')[0]!])))
  const source = `---\ndate: 2027-03-06\nlit: 6 am\nraked: 8:30 am\nwood: 43 kg\n---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n${rows.map((row) => `| ${row} | |`).join('\n')}\n`
  const {log} = readLog(source, 'firings/2027-03-06.md')
  const made = makePlan({oven, day: day!, receipts, scaled: makeDishes({day: day!, receipts, oven}), log})
  const told = (rule: string) => made.plan.messages.filter((message) => message.rule === rule)
  return {...made, told, readings: log!.readings}
}

const beans = ['baked-beans 1 crock, wanted by tomorrow 8 am']

describe('food left in an oven that is too cool for it', {timeout: 60_000}, () => {
  it('is to come out at once where it will not be done by the morning', () => {
    const {told, plan, problem, readings} = planned(beans, [
      '9:30 pm | baked-beans | set in',
      '9:50 pm | floor | 100 °C',
      '9:51 pm | vault | 96 °C',
    ])
    expect(told('food-raw')).toMatchObject([{severity: 'warning', file: 'day.md'}])
    expect(told('food-raw')[0]!.reason).toMatch(/^baked-beans: will have no more than \d+ % of its heat by/)
    expect(told('food-raw')[0]!.suggest).toMatch(/take it out now, and cook it through/)
    // One thing is said of it, not that it may be baked on in the morning too.
    expect(told('unfinished')).toEqual([])
    for (const [language, words] of [
      ['en', 'take it out now'],
      ['de', 'jetzt herausnehmen'],
    ] as const) {
      const head = planText({plan, problem, oven, readings, believed: []}, {style: styleOf({language})}).slice(0, 900)
      expect(head.replace(/\s+/g, ' '), language).toContain(words)
    }
  })

  it('is not to be eaten without being measured where the oven was found under 57 °C hours later', () => {
    const {told} = planned(beans, [
      '9:30 pm | baked-beans | set in',
      '9:50 pm | floor | 100 °C',
      'next day 4:50 am | floor | 45 °C',
      'next day 4:51 am | vault | 44 °C',
    ])
    expect(told('food-cold')).toMatchObject([{severity: 'warning'}])
    expect(told('food-cold')[0]!.suggest).toMatch(/do not eat it/)
    expect(told('unfinished')).toEqual([])
  })

  it.each([
    ['that is still in', [], /may have been under 57 °C .* in the oven for \d+ h/],
    ['that nobody noted drawing', ['next day 8:30 am | floor | 33 °C'], /taken to have been drawn at .* under 57 °C/],
    ['that is noted as drawn in the morning', ['next day 7:05 am | baked-beans | drawn'], /before it was drawn$/],
  ])('is told of where it was done by the evening and stood in the cold %s', (_, more, words) => {
    const rows = ['12:20 pm | baked-beans | set in', '9 pm | floor | 110 °C', 'next day 7 am | floor | 35 °C', ...more]
    const {told} = planned(beans, rows)
    expect(told('food-cold')).toMatchObject([{severity: 'warning'}])
    expect(told('food-cold')[0]!.reason).toMatch(words)
  })

  it('is nothing to speak of in an oven that does as it should, nor is bread that stands in a cool one', () => {
    const good = planned(beans, ['11:30 am | baked-beans | set in', '11:45 am | floor | 230 °C'])
    const bread = planned(['household-bread 4 loaves'], ['9:30 pm | household-bread | set in', '9:50 pm | floor | 100 °C'])
    for (const {told} of [good, bread]) expect([...told('food-cold'), ...told('food-raw')]).toEqual([])
  })
})

describe('what was forgotten in the oven', {timeout: 60_000}, () => {
  const pies = ['apple-pies 3 pies']
  it('is asked about: drawn hours after it was done, or noted wrongly', () => {
    const {told} = planned(pies, ['11 am | apple-pies | set in', '5 pm | apple-pies | drawn'])
    expect(told('drawn-late')).toMatchObject([{severity: 'warning', file: 'firings/2027-03-06.md', line: 11}])
    expect(told('drawn-late')[0]!.reason).toMatch(/^apple-pies: logged as drawn [3-6] h/)
  })
  it('is not what was drawn about when it was done', () => {
    expect(planned(pies, ['11 am | apple-pies | set in', '11:50 am | apple-pies | drawn']).told('drawn-late')).toEqual([])
  })
})

describe('a dough of which the log does not tell that it was set in', {timeout: 60_000}, () => {
  const bread = ['household-bread 4 loaves']
  const planAt = planned(bread, ['8:40 am | floor | 300 °C']).plan.loads[0]!.at
  const clock = (at: number): string => `${Math.floor(at / 60)}:${String(at % 60).padStart(2, '0')}`
  const inside = ({plan}: ReturnType<typeof planned>): boolean =>
    plan.loads.some(({dishes}) => dishes.some((d) => d.dish === 'household-bread' && d.alreadyIn))
  const later = `${clock(planAt + 15)} | floor | 230 °C`

  it('is taken to be in once its hour has passed', () => {
    expect(inside(planned(bread, [later]))).toBe(true)
  })
  it.each([
    ['was shaped after the hour at which it was to go in', `${clock(planAt + 10)} | household-bread | shaped`],
    ['was shaped after it, by a remark', `${clock(planAt + 10)} | note | shaped the loaves`],
    ['had not risen at its hour', `${clock(planAt)} | household-bread | not risen`],
    ['had not risen at its hour, by a remark', `${clock(planAt)} | note | the household bread has not risen`],
  ])('is to come where it %s', (_, row) => {
    const again = planned(bread, [row, later])
    expect(inside(again)).toBe(false)
    const [load] = again.plan.loads.filter(({dishes}) => dishes.some((d) => d.dish === 'household-bread'))
    expect(load!.at).toBeGreaterThanOrEqual(planAt + 15)
    expect(again.plan.unplaced).toEqual([])
  })
})

describe('a spare receipt that was set in', {timeout: 60_000}, () => {
  it('is told of at its row and at the head of the plan, and is not suggested again', () => {
    const day = ['household-bread 4 loaves', '## Spare\n', 'oat-biscuits 1 sheet']
    const {told, plan, problem, readings} = planned(day, ['11 am | oat-biscuits | set in', '11:05 am | floor | 230 °C'])
    expect(told('spare-set-in')).toMatchObject([{file: 'firings/2027-03-06.md', line: 10, severity: 'warning'}])
    expect(plan.suggestions?.filter(({dish}) => dish === 'oat-biscuits')).toEqual([])
    const head = planText({plan, problem, oven, readings, believed: []}, {style: styleOf({})}).slice(0, 900)
    expect(head.replace(/\s+/g, ' ')).toContain('move its line up into the day’s list')
  })
})
