import {readFileSync} from 'node:fs'
import {toHtml} from 'hast-util-to-html'
import {describe, expect, it} from 'vitest'
import {readOven} from '../src/oven/read.js'
import {bedtimeAfter, byBedtime, byDayFrom} from '../src/plan/bedtime.js'
import {check} from '../src/plan/check.js'
import {readDay} from '../src/plan/day.js'
import {makePlan} from '../src/plan/make.js'
import {rules} from '../src/plan/rules.js'
import type {Plan, Step} from '../src/plan/types.js'
import {translate} from '../src/receipt/translate.js'
import {makeDishes} from '../src/scale/dishes.js'
import {daySheet} from '../src/sheets/day-sheet.js'
import {stepWords} from '../src/sheets/phrases.js'
import {messageWords} from '../src/sheets/said.js'
import {styleOf} from '../src/sheets/style-of.js'

/**
 * Invented receipts, baked in the evening. That nobody looks into an oven at night, that brown bread, beans and Indian puddings were left in
 * till the morning, and that beans are filled up with boiling water first: common practice, no source. That food is not left under 57 °C: FDA
 * Food Code 2022, 3-501.16.
 */
const oven = readOven(readFileSync('corpus-demo/oven.md', 'utf8'), 'oven.md').oven!
const texts: Readonly<Record<string, string>> = {
  beans: '# Crock beans\n\nMakes 1 crock.\n\n- 1 kg white beans\n- 100 g treacle\n\nBake in a slow oven for 6 hours.',
  brown:
    '# Rye and Indian bread\n\nMakes 1 loaf.\n\n- 500 g rye flour\n- 500 g Indian meal\n- 700 g water\n- 10 g salt\n- 5 g dried yeast\n\nBake in a hot oven 3 or 4 hours.',
  cake: '# Bride cake\n\nMakes 1 cake.\n\n- 450 g flour\n- 450 g butter\n- 450 g sugar\n- 8 eggs\n- 900 g currants\n\nBake in a slow oven for 4 hours.',
}
const bedtime = rules.nightFrom

function planned(lines: Readonly<Record<string, string>>, fireFrom: string, serve: string) {
  const list = Object.entries(lines).map(([name, asks]) => `- [${name}](receipts/${name}.md) — ${asks}`)
  const head = `---\ndate: 2027-06-02\npeople: 10\nserve: ${serve}\nfire from: ${fireFrom}\n---\n\n# An evening\n\n`
  const day = readDay(`${head}${list.join('\n')}\n`, 'day.md').day!
  const receipts = Object.keys(lines).flatMap((name) => translate(texts[name]!, {file: `receipts/${name}.md`}).receipts)
  return makePlan({oven, day, receipts, scaled: makeDishes({day, receipts, oven})})
}

const drawOf = (plan: Plan, id: string): Step => plan.steps.find((s) => s.action === 'draw' && s.dishes.includes(id))!
const entryOf = (plan: Plan, id: string) => plan.loads.flatMap((l) => l.dishes).find((d) => d.dish === id)!
const late = (step: Step): number => (step.words!.ifBehind!.values['late'] as {value: number}).value

describe('what may not be done by bedtime', {timeout: 60_000}, () => {
  const cases = [
    ['beans', '8 am', 'till morning filled', /up to 10:00 pm\. [^.]* fill up with boiling water, cover, and leave in till/],
    ['brown', '10 am', 'till morning', /up to 10:00 pm\. [^.]* not done by 10:00 pm, leave in till the morning\./],
    ['cake', '10 am', 'out by night', /up to 10:00 pm\. [^.]* draw all the same, and bake on in another oven\./],
  ] as const
  it.each(cases)('is looked at till then, and %s lit at %s told of: %s', (id, from, how, english) => {
    const {plan, problem} = planned({[id]: '1 times, wanted by 8 pm'}, from, '8 pm')
    const step = drawOf(plan, id)
    expect(entryOf(plan, id).draw.high).toBeGreaterThan(bedtime)
    expect(late(step)).toBe(bedtime)
    const kept = step.words!.ifBehind!.values['kept'] as {phrases: readonly {id: string}[]}
    expect(kept.phrases.map((one) => one.id)).toContain(how)
    expect(stepWords(step, problem, styleOf({language: 'en'})).ifBehind).toMatch(english)
    expect(stepWords(step, problem, styleOf({language: 'de'})).ifBehind).toMatch(
      /um 22:00 Uhr nicht fertig|um 22:00 nicht fertig/,
    )
    expect(check(problem, plan)).toEqual([])
    // The day sheet has the times of each dish beside its step.
    expect(toHtml(daySheet({plan, problem, oven}, styleOf({language: 'en'})))).toMatch(/ to 10:00 pm: /)
    // The checker wants it told, and misses a time in the night.
    const otherwise = (values: object): Plan => ({
      ...plan,
      steps: plan.steps.map((s) =>
        s === step
          ? {...s, words: {...s.words!, ifBehind: {...s.words!.ifBehind!, values: {...s.words!.ifBehind!.values, ...values}}}}
          : s,
      ),
    })
    const reasons = (one: Plan): string =>
      check(problem, one)
        .map(({reason}) => reason)
        .join('\n')
    expect(reasons(otherwise({late: {unit: 'clock', value: bedtime + 60}}))).toMatch(/another time to look for it/)
    const said = 'its draw does not say what becomes of it where it is not done by night'
    expect(messageWords({severity: 'error', reason: `x: ${said}`}, styleOf({language: 'de'}))).toMatchObject({foreign: false})
    expect(reasons(otherwise({kept: {unit: 'sentences', phrases: []}}))).toMatch(
      /what becomes of it where it is not done by night/,
    )
  })

  it('is looked at for as long as it may take where that is by day', () => {
    const {plan} = planned({brown: '1 times, wanted by 6 pm'}, '8 am', '6 pm')
    const step = drawOf(plan, 'brown')
    expect(late(step)).toBe(entryOf(plan, 'brown').draw.high)
    expect(late(step)).toBeLessThan(bedtime)
    expect(step.ifBehind).not.toContain('morning')
  })

  it('is not left in where food would be lukewarm by the morning', () => {
    const {problem} = planned({beans: '1 times', brown: '1 times', cake: '1 times'}, '8 am', '6 pm')
    const told = (id: string, least: number) => byBedtime(problem.dishes.find((d) => d.id === id)!, least)
    expect([told('beans', 58), told('beans', 56)]).toEqual(['till morning filled', 'out by night'])
    // Bread keeps without warmth, and a cake dries out.
    expect([told('brown', 40), told('cake', 90)]).toEqual(['till morning', 'out by night'])
  })
})

// Bread that may stay in, set in late, is done before the baker is up: nobody looks from three in the morning.
describe('what is done in the night', () => {
  it('is looked for when the baker is up', () => {
    const {problem} = planned({brown: '1 times'}, '8 am', '6 pm')
    expect([2 * 60, 23 * 60, 1440 + 180, 1440 + 420].map((at) => byDayFrom(problem, at))).toEqual([
      5 * 60,
      1440 + 300,
      1440 + 300,
      1440 + 420,
    ])
    expect([9 * 60, 21 * 60 + 55, 22 * 60, 26 * 60].map(bedtimeAfter)).toEqual([bedtime, bedtime, bedtime + 1440, bedtime + 1440])
  })
})
