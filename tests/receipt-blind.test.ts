import {describe, expect, it} from 'vitest'
import {readDayFolder} from '../src/cli/day-folder.js'
import {kinds} from '../src/lexicon/kinds.js'
import {check} from '../src/plan/check.js'
import {makePlan} from '../src/plan/make.js'
import {tendingOf} from '../src/plan/tending.js'
import type {Plan, PlanProblem} from '../src/plan/types.js'
import {translate} from '../src/receipt/translate.js'
import {makeDishes} from '../src/scale/dishes.js'
import {signIn} from '../src/sheets/phrases.js'
import {styleOf} from '../src/sheets/style-of.js'

/** Invented receipts. That a crust may be baked empty before it is filled: common practice, no source. */
const head = '# Sorrel Tart\n\nMakes one 9-inch tart.\n\n- 200 g flour\n- 100 g butter\n- 3 eggs\n- 300 ml cream\n\n'
const fillOf = (method: string) =>
  translate(`${head}${method}\n`, {file: 'tart.md'}).receipts[0]!.tending?.find(({does}) => does === 'fill')

describe('a crust that is baked blind', () => {
  it('is filled after its own time, in the words of its receipt', () => {
    expect(
      fillOf(
        'Line a 9-inch pie plate. Bake blind for 20 minutes at 190 °C. Pour in the cream and eggs, and bake at 160 °C for 40 minutes.',
      ),
    ).toMatchObject({after: 20, text: expect.stringContaining('Pour in the cream and eggs')})
    expect(
      fillOf(
        'Bake the case blind 15 minutes at 200 °C, take out the beans and bake 5 minutes more. Fill it, and bake at 160 °C for 30 minutes.',
      ),
    ).toMatchObject({after: 20})
    expect(
      fillOf(
        'Den Boden 15 Minuten bei 190 °C blind backen. Die Sahne mit den Eiern darauf gießen und 35 Minuten bei 170 °C backen.',
      ),
    ).toMatchObject({after: 15})
    for (const filled of ['die Füllung eingießen', 'die Füllung hineingeben', 'mit Äpfeln belegen'])
      expect(fillOf(`Den Boden 15 Minuten blind backen, ${filled} und bei 180 °C 35 Minuten backen.`), filled).toMatchObject({
        after: 15,
        text: filled,
      })
  })

  it('is quoted from the beginning of the sentence of its filling to the bake that follows', () => {
    const said = (method: string) => fillOf(method)!.text
    expect(
      said(
        'Bake blind for 15 minutes.\n\nBeat the eggs with the cream and half of the good hard cheese, and pour into the case. Bake for 25 minutes.',
      ),
    ).toBe('Beat the eggs with the cream and half of the good hard cheese, and pour into the case')
    expect(said('Bake blind for 15 minutes. Pour in the custard, return to the oven and bake for 40 minutes.')).toBe(
      'Pour in the custard',
    )
    expect(said('Bake blind for 20 minutes at 190 °C, beat the eggs, pour them in and then bake 40 minutes.')).toBe(
      'beat the eggs, pour them in',
    )
    expect(said('Bake blind for 15 minutes, then fill and bake 25 minutes more.')).toBe('fill')
    expect(said('Den Boden 15 Minuten blind backen. Die Sahne darauf gießen und 35 Minuten backen.')).toBe(
      'Die Sahne darauf gießen',
    )
  })

  it('bakes for both its times, and is done when its filling is', () => {
    const dishIn = (list: string, title = 'Sorrel Tart') => {
      const text = `# ${title}\n\n${list}\n\nLine a 24 cm tart tin.\n\nBake blind for 15 minutes at 190 °C.\n\nFill the case. Bake 25 minutes more.\n`
      const {receipts} = translate(text, {file: 'receipts/a.md'})
      const item = {file: 'receipts/a.md', title, amount: '1 times', wantedBy: null, line: 1, column: 1}
      const floor = {shape: 'round' as const, diameter: 1.07}
      const oven = {floor, mouth: {width: 0.46, height: 0.28}, vaultHeight: 0.41}
      return makeDishes({day: {people: 6, items: [item], spare: []}, receipts, oven}).dishes[0]!
    }
    const row = kinds.find(({id}) => id === 'tarts')!
    const eggs = dishIn('- 200 g flour\n- 100 g butter\n- 3 eggs\n- 300 ml cream')
    expect(eggs.need.minutes.likely).toBe(40)
    expect(eggs.sign).toBe(row.set!.sign)
    expect(signIn('tarts', eggs.sign, styleOf({language: 'de'}))).toMatch(/Füllung am Rand fest/)
    expect(dishIn('- 200 g flour\n- 100 g butter\n- 300 g jam').sign).toBe(row.sign)
  })

  it.each([
    ['an opening that would take a third of its time is left alone', [5], 15],
    ['nor one as near before', [10], 15],
    ['an opening a little later does', [20], 20],
    ['but none that leaves the filling ten minutes less', [25], 15],
    ['of two the nearer that gives it time enough', [10, 15, 20], 15],
  ])('is filled when it has had its time: %s', (_, openings, filled) => {
    const dish = {id: 'tart', need: {minutes: {likely: 40}}, tending: [{words: 'fill it', fills: true, after: 15}]}
    const loads = [{at: 600, dishes: [{dish: 'tart', draw: {likely: 640}}]}]
    const {tended} = tendingOf(
      {dishes: [dish]} as unknown as PlanProblem,
      {loads} as unknown as Plan,
      openings.map((at) => 600 + at),
      () => false,
    )
    expect(tended).toMatchObject([{how: 'fill', at: 600 + filled}])
  })

  it('is not where the filling is not baked, or nothing is baked blind', () => {
    expect(fillOf('Bake blind for 25 minutes at 190 °C. When cold, pour in the cream, and serve.')).toBeUndefined()
    expect(fillOf('Fill the case, and bake at 190 °C for 40 minutes.')).toBeUndefined()
  })

  it('is told of as it bakes: taken out, filled and set in again', () => {
    const read = readDayFolder('corpus-demo')
    const text = `${head}Line a 9-inch pie plate. Bake blind for 20 minutes at 190 °C. Pour in the cream and eggs, and bake at 160 °C for 40 minutes.\n`
    const {receipts} = translate(text, {file: 'receipts/tart.md'})
    const [item] = read.day.items
    const day = {...read.day, items: [{...item!, file: 'receipts/tart.md', amount: '1 tart', wantedBy: null}], spare: []}
    const {plan, problem} = makePlan({oven: read.oven, day, receipts})
    const [load] = plan.loads
    const step = plan.steps.find(({action}) => action === 'tend')!
    expect(step.say).toMatch(/take it out, fill it as the receipt says .*Pour in the cream and eggs/)
    const share = (step.at - load!.at) / (load!.dishes[0]!.draw.likely - load!.at)
    expect(share).toBeGreaterThan(0.2)
    expect(share).toBeLessThan(0.5)
    expect(check(problem, plan)).toEqual([])
  })
})
