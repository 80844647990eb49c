import {readFileSync} from 'node:fs'
import {beforeAll, describe, expect, it} from 'vitest'
import {readLog} from '../src/oven/log.js'
import {readOven} from '../src/oven/read.js'
import {planAgain} from '../src/plan/again.js'
import {asAsked} from '../src/plan/asked.js'
import {readDay} from '../src/plan/day.js'
import {type MadePlan, type MakePlan, makePlan} from '../src/plan/make.js'
import {rules} from '../src/plan/rules.js'
import type {Phrase} from '../src/plan/types.js'
import {translate} from '../src/receipt/translate.js'
import {unplacedLines} from '../src/sheets/plan-text.js'
import {styleOf} from '../src/sheets/style-of.js'
import {smallDay} from './page-day.js'

/** A day of our own whose fire is lit so late that the oven falls to what drying takes in the night. */
const text =
  '---\ndate: 2027-06-19\npeople: 8\nfire from: 9 am\nserve: 6 pm\nhands: 1\n---\n\n# A day with drying\n\n- [Loaf](receipts/loaf.md) — 4 loaves\n- [Apples](receipts/dried-apples.md) — 2 frames\n'
const day = readDay(text, 'day.md').day!
const {oven} = readOven(smallDay.get('oven.md')!, 'oven.md')
const files = new Map([
  ['receipts/loaf.md', smallDay.get('receipts/loaf.md')!],
  ['receipts/dried-apples.md', readFileSync('corpus-demo/receipts/dried-apples.md', 'utf8')],
])
const receipts = day.items.flatMap(({file}) => translate(files.get(file)!, {file}).receipts)
const figure = ({values}: Phrase, name: string): number => (values[name] as {readonly value: number}).value
const input: MakePlan = {oven: oven!, day, receipts}

describe('drying that falls into the night', {timeout: 60_000}, () => {
  let made: MadePlan
  let late: ReturnType<typeof planAgain>
  const again = (rows: string, now?: number): ReturnType<typeof planAgain> => {
    const log = `---\ndate: 2027-06-19\nlit: 12:45 pm\n---\n\n| time | reading | value | note |\n| --- | --- | --- | --- |\n${rows}`
    return planAgain({...input, ...(now === undefined ? {} : {now})}, made.problem, made.plan, readLog(log, 'log.md').log!)
  }
  beforeAll(() => {
    made = makePlan(input)
    late = again('')
  }, 60_000)

  it('has its place on the day as planned', () => {
    expect(asAsked(made.problem, made.plan)).toBe(true)
  })

  it('is told as that, with the hours, and not as want of room', () => {
    const [out, ...more] = late.plan.unplaced
    expect(more).toEqual([])
    expect(out).toMatchObject({dish: 'dried-apples', rule: 'night', conflict: ['dried-apples']})
    const [from, until] = [figure(out!.words!, 'from'), figure(out!.words!, 'until')]
    expect(from).toBeGreaterThanOrEqual(rules.nightFrom)
    expect(until).toBeLessThan(1440 + rules.nightTo)
    const german = unplacedLines(late.plan, late.problem, styleOf({language: 'de', clock: 24, degrees: 'C'}))[0]!
    expect(german.reason).toMatch(/der Ofen ist erst ab 22:\d\d.* dafür recht, in der Nacht/)
    expect(german.remedies.join(' ')).toMatch(/^Die Tür ab \d+:\d\d.* offen lassen.* noch vor der Nacht um 2[01]:\d\d/)
  })

  it('can be set in before the night, in the hotter oven', () => {
    const way = late.plan.unplaced[0]!.tried!.find(({words: {id}}) => id === 'remedy before night')!
    expect(way.works).toBe(true)
    const [at, celsius] = [figure(way.words, 'at'), figure(way.words, 'celsius')]
    expect(at).toBeLessThan(rules.nightFrom)
    expect(celsius).toBeGreaterThan(made.problem.dishes.find(({id}) => id === 'dried-apples')!.need.startHigh)
  })

  it('is set in before the night where the door was left open as it says', () => {
    const way = late.plan.unplaced[0]!.tried!.find(({kind}) => kind === 'door open')!
    expect(way.works).toBe(true)
    const [at, minutes] = [figure(way.words, 'at'), figure(way.words, 'minutes')]
    const clock = `${Math.floor(at / 60)}:${String(at % 60).padStart(2, '0')}`
    const rows = late.plan.loads
      .filter(({at: set}) => set < at)
      .map((l) =>
        l.dishes
          .map((d) => `| ${Math.floor(l.at / 60)}:${String(l.at % 60).padStart(2, '0')} | ${d.dish} | set in | |\n`)
          .join(''),
      )
    const done = again(`${rows.join('')}| ${clock} | door | open ${minutes} min | |\n`, at + minutes)
    expect(done.plan.unplaced).toEqual([])
    const apples = done.plan.loads.filter((l) => l.dishes.some(({dish}) => dish === 'dried-apples'))
    for (const load of apples) expect(load.at).toBeLessThan(rules.nightFrom)
    // Without it the night is in the way still.
    expect(again(rows.join(''), at + minutes).plan.unplaced.map(({rule}) => rule)).toEqual(['night'])
  })
})
