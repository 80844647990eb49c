import {describe, expect, it} from 'vitest'
import {forecast, usualFiring} from '../src/oven/forecast.js'
import {readOven} from '../src/oven/read.js'
import {readDay} from '../src/plan/day.js'
import {needsAt} from '../src/plan/make.js'
import {planDay} from '../src/plan/planner.js'
import {problemOf} from '../src/plan/problem.js'
import {simulator} from '../src/plan/simulator.js'
import type {Plan} from '../src/plan/types.js'
import {translate} from '../src/receipt/translate.js'
import {makeDishes} from '../src/scale/dishes.js'
import type {HeatNeed} from '../src/scale/types.js'
import {unplacedLines} from '../src/sheets/plan-text.js'
import {styleOf} from '../src/sheets/style-of.js'
import {smallDay} from './page-day.js'

const oven = readOven(smallDay.get('oven.md')!, 'oven.md').oven!
const loaf = smallDay.get('receipts/loaf.md')!
const day = readDay(
  smallDay
    .get('day.md')!
    .replace('4 loaves', '2 loaves\n- [Loaf](receipts/loaf.md) — 1 loaf')
    .replace(/.*Cake.*\n/, ''),
  'day.md',
).day!

/** What is asked is that what is offered comes true: no outside fact. The day with its receipt as it is written, on a fire of 80 minutes: two batches of loaves, for which it is too cool. */
function baked(text: string) {
  const {receipts} = translate(text, {file: 'receipts/loaf.md'})
  const input = {oven, day, receipts}
  const {dishes} = makeDishes(input)
  const firing = usualFiring(oven, 80)
  const problem = {...problemOf(input, dishes), firings: [{firing, forecast: forecast(oven, {firing, hours: 22})}]}
  const heatStated = (file: string, celsius: number) => needsAt(input, file, celsius)
  return {input, dishes, problem, plan: planDay(problem, {simulate: simulator(input), heatStated})}
}

const leftOut = (plan: Plan, asked: number): number =>
  asked - plan.loads.flatMap(({dishes}) => dishes).reduce((sum, {count}) => sum + count, 0)

describe('another heat for what has no place', {timeout: 60_000}, () => {
  const {input, dishes, problem, plan} = baked(loaf)
  const ways = plan.unplaced.flatMap(({tried = []}) => tried.filter(({kind}) => kind === 'wider heat'))

  it('is told once for all batches of the receipt, with what to write and where', () => {
    expect(dishes.map(({id}) => id)).toEqual(['loaf', 'loaf-2'])
    const [way, ...more] = ways
    expect(more).toEqual([])
    expect(way!.words.values).toMatchObject({
      dishes: {unit: 'dishes', dishes: ['loaf', 'loaf-2'], whole: true},
      file: 'receipts/loaf.md',
    })
    expect(way!.say).toMatch(
      /^Take Loaf at (\d+) °C \(\d+ °F\) instead \(write “oven: \1 °C” in the front matter of receipts\/loaf\.md\): /,
    )
    const german = unplacedLines(plan, problem, styleOf({language: 'de', clock: 24, degrees: 'C'})).flatMap(
      ({remedies}) => remedies,
    )
    expect(german.join(' ')).toMatch(
      /^Loaf stattdessen bei (\d+) °C \(im Kopf von receipts\/loaf\.md „oven: \1 °C“ schreiben\): /,
    )
  })

  it('comes true when it is written there', () => {
    const {line, celsius: at} = ways[0]!.words.values
    const celsius = typeof at === 'object' && 'value' in at ? at.value : Number.NaN
    const written = baked(loaf.replace('---\n', `---\n${String(line)}\n`))
    const stated = needsAt(input, 'receipts/loaf.md', celsius)
    expect(written.dishes.map(({id, need}) => [id, need])).toEqual([...stated])
    expect(written.dishes[0]!.need.startBest).toBe(celsius)
    expect(leftOut(written.plan, 3)).toBeLessThan(leftOut(plan, 3))
    expect(ways[0]!.say).toContain(`only ${leftOut(written.plan, 3)} of Loaf left out`)
  })

  it('is not offered where only one batch of it could be written down, or nothing is the better for it', () => {
    const simulate = simulator(input)
    const tried = (heatStated: (file: string, celsius: number) => ReadonlyMap<string, HeatNeed>): string[] =>
      planDay(problem, {simulate, heatStated}).unplaced.flatMap(({tried: all = []}) => all.map(({kind}) => kind))
    const one = (file: string, celsius: number) => new Map([...needsAt(input, file, celsius)].slice(0, 1))
    expect(tried(one)).not.toContain('wider heat')
    const asItIs = () => new Map(dishes.map(({id, need}) => [id, need]))
    expect(tried(asItIs)).not.toContain('wider heat')
  })
})
