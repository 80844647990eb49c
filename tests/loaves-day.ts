import {translate} from '../src/receipt/translate.js'
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

/** What a day makes of an amount of a receipt, in an oven so large that everything goes in; invented. */
export const oneLine = (text: string, amount: string): ReturnType<typeof makeDishes> =>
  makeDishes({
    day: {
      people: 12,
      items: [{file: 'receipts/x.md', title: 'It', amount, wantedBy: null, line: 5, column: 3}],
      spare: [],
    },
    receipts: translate(text, {file: 'receipts/x.md'}).receipts,
    oven: {floor: {shape: 'round', diameter: 2.2}, mouth: {width: 0.8, height: 0.4}, vaultHeight: 0.6},
  })

/** A receipt of two loaves, 800 g of dough to each, baked 40 minutes in such a vessel; invented. */
export const loavesIn = (vessel: string): string => `---
vessel: ${vessel}
---
# Wheaten bread

Makes 2 loaves.

- 950 g flour
- 620 g water
- 20 g salt
- 10 g yeast

Knead. Let it rise 2 hours, shape, and prove 1 hour. Bake at 220 °C for 40 minutes.
`
