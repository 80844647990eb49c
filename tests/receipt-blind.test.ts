import {describe, expect, it} from 'vitest'
import {readDayFolder} from '../src/cli/day-folder.js'
import {check} from '../src/plan/check.js'
import {makePlan} from '../src/plan/make.js'
import {translate} from '../src/receipt/translate.js'

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
