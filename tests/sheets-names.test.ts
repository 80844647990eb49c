import {expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'
import {makeDishes} from '../src/scale/dishes.js'
import {dishTitle} from '../src/sheets/heat-data.js'
import {oven, problem} from './fixtures-sheets.js'

it.each(['tea_cup', 'Tea Cake 1829', 'tea-cup', 'tea-2'])(
  'a spare receipt that stands in the day as well is called by its title, whatever its file %s is called',
  (name) => {
    const file = `receipts/${name}.md`
    const {receipts} = translate(
      '# A Cake of Tea-cups\n\n- 300 g flour\n- 200 g sugar\n- 150 g butter\n- 3 eggs\n\nBake in a round 20 cm x 8 cm tin at 180 °C for 1 hour.\n',
      {file},
    )
    const item = {file, title: 'Cup cake', amount: 'once', wantedBy: null, line: 5, column: 3}
    const spares = [{...item, title: 'More cup cake', line: 9}]
    const made = makeDishes({day: {people: 6, items: [item], spare: spares}, receipts, oven})
    const day = {...problem.day, items: [{...problem.day.items[0]!, ...item}], spare: spares}
    const [spare] = made.spare
    expect(spare!.id).toMatch(/-2$/)
    expect(dishTitle({...problem, day, dishes: made.dishes}, spare!.id)).toBe('More cup cake')
    expect(dishTitle({...problem, day, dishes: made.dishes}, made.dishes[0]!.id)).toBe('Cup cake')
  },
)
