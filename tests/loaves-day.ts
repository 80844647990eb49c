import type {Receipt} from '../src/receipt/types.js'
import {makeDishes} from '../src/scale/dishes.js'

/** What a day makes of two loaves of a receipt, in an oven of a usual size; invented. */
export const twoLoaves = (receipt: Receipt): ReturnType<typeof makeDishes> =>
  makeDishes({
    day: {
      people: 8,
      items: [{file: 'receipts/x.md', title: 'X', amount: '2 loaves', wantedBy: null, line: 1, column: 1}],
      spare: [],
    },
    receipts: [receipt],
    oven: {floor: {shape: 'round', diameter: 1.07}, mouth: {width: 0.46, height: 0.28}, vaultHeight: 0.41},
  })
