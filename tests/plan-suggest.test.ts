import {describe, expect, it} from 'vitest'
import {forecast} from '../src/oven/forecast.js'
import {readOven} from '../src/oven/read.js'
import type {OvenEvent} from '../src/oven/types.js'
import {readDay} from '../src/plan/day.js'
import {makePlan} from '../src/plan/make.js'
import {translate} from '../src/receipt/translate.js'
import type {Dish} from '../src/scale/types.js'
import {dishTitle} from '../src/sheets/heat-data.js'

/** A small oven of cob that falls fast: what goes in beside the plan is felt by all the rest. Invented. */
const {oven} = readOven(
  `---
floor: round 80 cm
vault height: 38 cm
mouth: 38 cm x 24 cm
door: steel 3 mm
hearth:
  - firebrick 64 mm
  - sand 5 cm
vault:
  - cob 12 cm
place: outdoors
ambient: 10 °C
fuel: beech, 20 % moisture
start: cold
---

# Garden oven
`,
  'oven.md',
)
const texts: Readonly<Record<string, string>> = {
  loaves: `# Country loaves

Makes 2 loaves.

- 1 kg flour
- 650 g water
- 20 g salt
- 7 g dried yeast

Knead, let it rise 2 hours, shape into two round loaves, prove 40 minutes and bake at 230 °C for 40 minutes.
`,
  cake: `---
vessel: loaf 9 x 5 x 3 in
---
# Plain butter cake

Serves 10. Makes 1 cake.

- 225 g butter
- 225 g sugar
- 4 eggs
- 250 g flour

Bake at 170 °C for 60 minutes.
`,
  pudding: `# Apple crumble

Serves 6

- 1 kg cooking apples
- 100 g sugar
- 200 g flour
- 120 g butter

Bake at 190 °C for 40 minutes, in a 9-inch square dish.
`,
  oats: `# Granola

- 500 g rolled oats
- 150 g almonds
- 120 g honey
- 80 ml oil

Spread on a tray and bake at 140 °C for 40 minutes.
`,
}
const receipts = Object.entries(texts).flatMap(([name, text]) => translate(text, {file: `receipts/${name}.md`}).receipts)
const day = readDay(
  `---
date: 2027-04-10
people: 10
fire from: 7 am
serve: 8 pm
---

# Saturday

- [Loaves](receipts/loaves.md) — 2 loaves
- [Cake](receipts/cake.md) — 1 cake

## Spare

- [Crumble](receipts/pudding.md) — 8 dishes
- [Cake again](receipts/cake.md) — 2 cakes
- [Granola](receipts/oats.md)
`,
  'day.md',
).day!

describe('a spare receipt for idle floor', () => {
  const {plan, problem, spare} = makePlan({day, receipts, oven: oven!})
  const suggestions = plan.suggestions ?? []
  const spared = new Map(spare.map((dish) => [dish.id, dish]))

  it('is suggested in no more vessels than there is room for, by its title', () => {
    expect(suggestions.length).toBeGreaterThan(0)
    for (const one of suggestions) {
      const dish = spared.get(one.dish)!
      if (one.count !== undefined) {
        expect(one.count).toBeLessThan(dish.count)
        expect(one.say).toMatch(new RegExp(`^${one.count} of \\d+ of `))
      }
      expect(one.draw).toBeGreaterThan(one.at)
      expect(day.spare.map(({title}) => title)).toContain(dishTitle(problem, one.dish))
    }
    // Eight dishes of 23 cm never stand on a floor of 80.
    expect(suggestions.find(({dish}) => dish === 'pudding')?.count ?? 1).toBeLessThan(5)
  })

  it('is set in before the meal, not hours after all is drawn', () => {
    for (const one of suggestions) expect(one.at).toBeLessThanOrEqual(day.serve)
  })

  it('takes no heat that the rest needs: each still has its dose a quarter of an hour later (design §4, on a forecast of its own)', () => {
    const load = (dish: Dish, count: number, at: number): OvenEvent[] => [
      {minutes: at - plan.lit, kind: 'door', open: 2},
      {
        minutes: at - plan.lit,
        kind: 'load',
        mass: count * dish.mass,
        water: count * dish.water,
        bake: dish.need.minutes.likely,
      },
    ]
    const stays = plan.loads.flatMap(({at, dishes}) =>
      dishes.map(({dish, count, draw}) => ({dish: problem.dishes.find(({id}) => id === dish)!, count, at, draw: draw.likely})),
    )
    const events = stays.flatMap(({dish, count, at}) => load(dish, count, at))
    const likely = {low: 1, likely: 1, high: 1}
    const curve = (more: OvenEvent[]): readonly number[] =>
      forecast(oven!, {
        firing: plan.firing,
        parameters: {stored: likely, loss: likely, coupling: likely},
        events: [...events, ...more].sort((a, b) => a.minutes - b.minutes),
        hours: 20,
      }).baking.likely
    for (const one of suggestions) {
      const extra = spared.get(one.dish)!
      const baking = curve(load(extra, one.count ?? extra.count, one.at))
      for (const {dish, at, draw} of [...stays, {dish: extra, at: one.at, draw: one.draw}]) {
        let dose = 0
        for (let m = at; m < draw + 15; m++) dose += Math.max(0, baking[Math.round((m - plan.lit) / 5)]! - dish.need.done)
        // Parts of the floor differ by some degrees from the mean.
        expect(
          dose / ((dish.need.reference - dish.need.done) * dish.need.minutes.likely),
          `${dish.title} beside ${one.dish}`,
        ).toBeGreaterThan(0.9)
      }
    }
  })
})
