import {describe, expect, it} from 'vitest'
import {readOven} from '../src/oven/read.js'
import {check} from '../src/plan/check.js'
import {readDay} from '../src/plan/day.js'
import {makePlan} from '../src/plan/make.js'
import {bearable} from '../src/plan/model.js'
import {translate} from '../src/receipt/translate.js'

/** A short morning at a school with far more on its list than it can have. Invented. */
const {oven} = readOven(
  `---
floor: rectangle 1.2 m x 0.9 m
vault height: 45 cm
mouth: 50 cm x 28 cm
door: oak 40 mm
hearth:
  - firebrick 64 mm
  - sand 10 cm
vault:
  - firebrick 11 cm
  - vermiculite 10 cm
place: outdoors
ambient: 14 °C
fuel: ash, 18 % moisture
start: cold
---

# The school oven
`,
  'oven.md',
)
const pies = `---
vessel: pie plate 12 cm x 3 cm
---
# Small apple pies

Makes 6 small pies.

- 400 g plain flour
- 200 g butter
- 1 kg cooking apples
- 120 g sugar

Bake at 200 °C for 35 minutes.
`
const pasties = `---
year: 1887
place: England
vessel: sheet 40 cm x 30 cm
---
# Cheese pasties

A pound of flour, six ounces of lard, a gill of cold water; half a pound of cheese, one pound of boiled potatoes and an onion. Makes ten pasties. Bake in a hot oven for half an hour.
`
const bread = `---
year: 1840
place: England
vessel: free-standing loaf 10 in
---
# Cottage bread

Take seven pounds of flour, a gill of ale yeast, two ounces of salt, and three pints of warm water. Let it rise two hours, make it up into four loaves, let them stand twenty minutes, and bake them an hour in a quick oven.
`
const receipts = Object.entries({pies, pasties, bread}).flatMap(
  ([name, text]) => translate(text, {file: `receipts/${name}.md`}).receipts,
)
const list = (head: string): string => `---
date: 2027-05-11
people: 30
${head}
hands: 4
---

# Short morning

- [Pies](receipts/pies.md) — 30 pies
- [Pasties](receipts/pasties.md) — 30 sheets
- [Bread](receipts/bread.md) — 4 loaves
`

describe('a day of which all together gives nothing in time', () => {
  it('is planned with what can be had of it, one dish after another', () => {
    const day = readDay(list('fire from: 8:30 am\nserve: 11 am'), 'day.md').day!
    const {plan, problem} = makePlan({day, receipts, oven: oven!})
    const had = plan.loads.flatMap((load) => load.dishes)
    expect(had.length).toBeGreaterThan(0)
    // Within three hours of the meal, or of when it could be had at the soonest, as the rules have it.
    for (const {dish: id, draw} of had) {
      const dish = problem.dishes.find((one) => one.id === id)!
      expect(draw.likely).toBeLessThanOrEqual(day.serve + bearable(problem, dish, day.serve))
    }
    // What bakes nothing is not lit in the evening for the sake of the wood.
    expect(plan.lit).toBeLessThan(day.serve)
    expect(check(problem, plan)).toEqual([])
  }, 120_000)
})
