import {describe, expect, it} from 'vitest'
import {warmDough} from '../src/lexicon/dough-work.js'
import {check} from '../src/plan/check.js'
import {planDay} from '../src/plan/planner.js'
import {rules} from '../src/plan/rules.js'
import type {Plan, PlanProblem, Step} from '../src/plan/types.js'
import type {Dish, DoughTimes} from '../src/scale/types.js'
import {stepWords} from '../src/sheets/phrases.js'
import {books} from '../src/sheets/said.js'
import {styleOf} from '../src/sheets/style-of.js'
import {inBook} from '../src/sheets/words/sentences.js'
import {day, dish, fallingOven, problem} from './plan-fixtures.js'

/*
 * Invented doughs that their receipts have in the cold. That they rise slowly there: common practice, no source. That egg and milk stand at 5 °C
 * or colder, or for four hours at most: FDA Food Code 2022, 3-501.16(A)(2), 3-501.19(B).
 */
const oven = fallingOven(120, 300)
const simulate = (): typeof oven.forecast => oven.forecast
const range = (low: number, high: number) => ({low, likely: (low + high) / 2, high})
const asked = (dough: DoughTimes, fireFrom = 300): PlanProblem => {
  const bread: Dish = dish('bread', 2, {id: 'bread', title: 'Bread', dough})
  return problem([bread], {day: day({fireFrom, hands: 1}), firings: [oven]})
}
const plan = (p: PlanProblem): Plan => planDay(p, {simulate, effort: 'quick'})
const steps = (made: Plan, action: Step['action']): Step[] => made.steps.filter((s) => s.action === action && s.load !== null)
const reasons = (p: PlanProblem, made: Plan): string[] => check(p, made).map(({reason}) => reason)
const saying = (made: Plan, from: string, id: string): Plan => ({
  ...made,
  steps: made.steps.map((s) => (s.words?.say.id === from ? {...s, words: {...s.words, say: {...s.words.say, id}}} : s)),
})

const night: DoughTimes = {
  mix: 20,
  rise: 600,
  bulk: range(480, 720),
  bulkIn: {place: 'refrigerator', warm: 0},
  bulkHold: 240,
  shape: 10,
  prove: range(60, 90),
  hold: 30,
}

describe('a dough that its receipt has in the cold', () => {
  it('is mixed the evening before and stands in the place that is said', () => {
    for (const [place, words, kuehl] of [
      ['refrigerator', /set it in the refrigerator \(3–5 °C/, 'Kühlschrank'],
      ['cellar', /stand it in a cellar or larder of 10–15 °C/, 'Keller'],
    ] as const) {
      const p = asked({...night, bulkIn: {place, warm: 0}})
      const made = plan(p)
      expect(reasons(p, made)).toEqual([])
      const [mix, rise] = [steps(made, 'mix')[0]!, steps(made, 'rise')[0]!]
      expect(mix.at + 20).toBeLessThanOrEqual(rules.nightFrom - 1440)
      expect(rise.say).toMatch(words)
      expect(stepWords(rise, p, styleOf({language: 'de'})).say).toContain(kuehl)
      // As its receipt has it, so nothing is warned of, and it is left there where the oven is late.
      expect(made.messages.map(({rule}) => rule)).not.toContain('cold-rise')
      expect(rise.ifBehind).toMatch(/leave it in the cold/)
      const id = place === 'cellar' ? 'rise cool' : 'rise cold'
      expect(reasons(p, saying(made, id, 'rise'))).toContain(`Bread: its dough is to rise in a ${place}, and no step says so`)
    }
  })

  it('goes there when it has risen warm first', () => {
    const p = asked({...night, rise: 660, bulk: range(540, 780), bulkIn: {place: 'refrigerator', warm: 60}})
    const made = plan(p)
    expect(reasons(p, made)).toEqual([])
    const [warm, cold, ...more] = steps(made, 'rise')
    expect(more).toEqual([])
    expect([warm!.words!.say.id, cold!.words!.say.id]).toEqual(['rise', 'rise cold'])
    expect(cold!.at - warm!.at).toBe(60)
  })

  it('is set there before the night, where its range allows it, and the checker asks for that', () => {
    const p = asked({...night, rise: 600, bulk: range(400, 800), bulkIn: {place: 'refrigerator', warm: 60}})
    const made = plan(p)
    expect(reasons(p, made)).toEqual([])
    const cold = steps(made, 'rise')[1]!
    expect(cold.words!.say.id).toBe('rise cold')
    expect(cold.at).toBeLessThanOrEqual(rules.nightFrom - 1440)
    // Three quarters of an hour later it is mixed by day still, and somebody gets up to cover it.
    const before = steps(made, 'shape')[0]!.at
    const later = {
      ...made,
      steps: made.steps.map((s) => (s.load !== null && s.at < before && s.dishes.includes('bread') ? {...s, at: s.at + 45} : s)),
    }
    expect(reasons(p, later)).toContain('Bread: its dough is worked at night, and could be by day')
  })

  it('proves in the place that is said', () => {
    const proves = {...night, rise: 60, bulk: range(60, 60), prove: range(480, 720), cold: true, hold: 240} as const
    const {bulkIn: _, ...shaped} = proves
    for (const [proveIn, id] of [
      ['refrigerator', 'prove in refrigerator'],
      ['cellar', 'prove in cellar'],
    ] as const) {
      const p = asked({...shaped, proveIn})
      const made = plan(p)
      expect(reasons(p, made)).toEqual([])
      expect(steps(made, 'prove').map(({words}) => words?.say.id)).toEqual([id])
      expect(reasons(p, saying(made, id, 'prove cold'))).toContain(
        `Bread: its dough is to prove in a ${proveIn}, and no step says so`,
      )
    }
    const p = asked(shaped)
    expect(steps(plan(p), 'prove').map(({words}) => words?.say.id)).toEqual(['prove cold'])
  })
})

describe('a dough with egg or milk in it', () => {
  const rich = (dough: Partial<DoughTimes>): DoughTimes => ({mix: 20, rise: 60, shape: 10, hold: 30, ...dough, spoils: true})
  const {bulkIn: _, ...untold} = night

  it('stands in the refrigerator wherever it waits longer than four hours', () => {
    const doughs: ReadonlyArray<readonly [DoughTimes, string]> = [
      [rich(untold), 'rise cold'],
      [rich({rise: 600}), 'rise cold'],
      [rich({...night, bulkIn: {place: 'cellar', warm: 0}}), 'rise cold'],
      [rich({prove: range(480, 720), cold: true}), 'prove in refrigerator'],
      [rich({prove: range(300, 330)}), 'prove in refrigerator'],
    ]
    for (const [dough, id] of doughs) {
      const p = asked(dough)
      const made = plan(p)
      expect(reasons(p, made)).toEqual([])
      expect(made.steps.map(({words}) => words?.say.id)).toContain(id)
      // The checker finds it where it stands warm, whichever stage that is, and where it stands in no refrigerator.
      const warm = saying(made, id, id === 'rise cold' ? 'rise' : 'prove')
      expect(reasons(p, warm)).toContainEqual(expect.stringMatching(/has egg or milk in it, and stands for \d+ min in the warm/))
      const cellar = saying(made, id, id === 'rise cold' ? 'rise cool' : 'prove cold')
      expect(reasons(p, cellar)).toContain(
        'Bread: its dough has egg or milk in it, and no step says that it stands in a refrigerator',
      )
    }
  })

  it('is not left for what it holds in the warm beyond that', () => {
    // Its ranges and what it holds come to more.
    const dough = rich({rise: 150, bulk: range(120, 180), prove: range(60, 120), hold: 60})
    for (const fireFrom of [300, 420, 540]) {
      const p = asked(dough, fireFrom)
      const made = plan(p)
      expect(reasons(p, made)).toEqual([])
      const at = (action: Step['action']): number => steps(made, action)[0]!.at
      if (steps(made, 'mix').length > 0) expect(at('load') - at('mix') - 20 - 10).toBeLessThanOrEqual(warmDough.minutes)
    }
  })

  it('is told of in German', () => {
    for (const said of [
      '“Brioche”: its dough has egg or milk in it and is to rise for 8 h or more, and nothing says that it stands in a refrigerator; it is planned there, where it rises more slowly',
      '“Brioche”: its dough has egg or milk in it and stands for 5.5 h in the warm, longer than the 4 h that such food may',
      'look at it in the morning, and give it up to four hours in the warm if it has not risen; or write “in the refrigerator” into the receipt',
      'let it rise in the refrigerator, and write that into the receipt',
    ])
      expect(inBook(said, books.de!)).not.toBe(null)
  })
})
